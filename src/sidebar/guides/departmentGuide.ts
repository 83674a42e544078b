import { texts } from '../texts.ts';
import type { Guide } from './guide.ts';

const { views } = texts;

export const departmentGuide: Guide = {
  title: 'For a department',
  about: 'Handing a lesson on, keeping it up to date, and making it your own.',
  parts: [
    {
      title: 'Share a lesson with colleagues',
      lines: [
        `“${views.share}” in the sidebar leads you through it: copy the file, empty the copy, copy it once more, and give out that last one. A file keeps its history, so the one that students worked in is never the one to pass on.`,
        'A colleague makes a copy from yours, with plan, checks and script, and has no need of a terminal.',
      ],
    },
    {
      title: 'Bring a file up to date',
      lines: [
        'Each file has its own script. To bring one up to date, replace the three files of its script with the new ones, or push them, then open the sidebar and build again. What people typed is kept.',
        'An older sheet goes on checking until it is built again, with the letters and rows it was built with.',
      ],
    },
    {
      title: 'Put it into your language',
      lines: [
        'Every text that people read stands in a table of its room: errors, lab texts, words of the workbook, texts of the sidebar. A translation replaces those files and touches nothing else.',
        'Wording and links of your own for any hint go into the Help sheet of a file, with no code at all; they win over ours.',
      ],
    },
    {
      title: 'An activity of your own',
      lines: [
        'An activity is one file: the numbers that a team is given, and the list of its steps. A worked example stands in DEVELOPERS.md, and a test goes through it with twelve teams.',
        'Steps can be calculated, measured, put in order, chosen or told. Checks, hints, key and preparation follow from what the steps name.',
      ],
    },
    {
      title: 'Before you rely on it',
      lines: [
        'Try it once from a student’s account. Some schools do not let functions run for students, and then no check appears; the guide for a first lesson says what to set.',
        'Let whoever is responsible for safety read the cautions of the substances you use. Where our data comes from, and where it is in doubt, stands in Prepare for each substance.',
      ],
    },
  ],
};
