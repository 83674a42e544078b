import { texts } from '../texts.ts';
import type { Guide } from './guide.ts';

const { views } = texts;

export const teacherGuide: Guide = {
  title: 'Your first lesson, in ten minutes',
  about: 'For a teacher who opens the file for the first time.',
  parts: [
    {
      title: 'Before the lesson',
      steps: [
        'In the spreadsheet, open the menu Labrow and choose to open the sidebar.',
        `In “${views.plan}”, choose the activity and the substance. The lesson that is set at the start is a good first one: make a solution from a solid, then dilute it.`,
        'Type the names of your classes and how many teams each has. Everything else can stay as it is.',
        'Build the table. Every team now has rows and numbers of its own.',
        `In “${views.prepare}”, print the list for the lab, the labels and the key. Read the cautions, and the safety data sheet of every substance.`,
        'Share the file so that your students may edit it, and send them the link. Share it with school accounts only.',
        'Try it once yourself in a private window or from a student’s account: type a number in a team’s row and see that a check appears.',
      ],
    },
    {
      title: 'In the lesson',
      lines: [
        'Each team finds its name at the top of its class’s sheet and types in its own rows. Beside each entry it reads at once whether that row is right and, if not, what to look at.',
        `Keep “${views.classNow}” open. It says which team to talk to first, and about what. Progress is the sheet for the projector: it says how far each team is, and nothing that would embarrass anybody.`,
        `“${views.teams}” adds a team that comes late and marks who is absent. Nobody else’s rows move.`,
        'A team that is stuck asks for help in its row: 1 for the idea, 2 for the relation, 3 for the set-up with its own numbers. No hint gives the answer.',
        'Where a substance has the signal word Danger, two short questions stand below the cautions, about a splash and about leftovers. The bench rows open once both answers are right. Under “Safety and evidence” in the plan you can ask them always or never.',
        `At the bell, “Close at the bell” in “${views.classNow}” stops the open rows from asking and notes in the Record where teams go on. The same button opens them again next time.`,
        'Change a number in the Plan sheet, and the checks and hints of that team follow at once.',
      ],
    },
    {
      title: 'After the lesson',
      lines: [
        `“${views.particles}” shows what the numbers mean: equal volumes before and after the dilution, as a page to project.`,
        `“${views.poll}” asks the class how it went, in four short statements.`,
        `“${views.record}” writes the day’s entry for your school. Read it, change what you like, keep it.`,
        `“${texts.next.button}” in “${views.plan}” begins the next one for the classes that you tick. Teams and their people go along; the lesson before is put away with all entries, and “${texts.next.earlier}” brings it back.`,
      ],
    },
    {
      title: 'What your students see',
      lines: [
        'The sheet of their class, the Poll and Progress. No answers, no key, no list of slips: those are in your sidebar and on your paper only.',
        'The words of a check: on target, close (right but for rounding), follows (right from an earlier row that needs another look), not yet, blank, unreadable, and next time for a row that was open at the bell. Each stands beside a sentence that says what to look at.',
        'Students install nothing and are asked for nothing.',
      ],
    },
    {
      title: 'What protection does not do',
      lines: [
        'Protected cells warn before they are changed. They guard against accidents, not against intent: whoever may edit the file can also edit another team’s rows.',
        'This is for practice and not for tests. Our functions answer whoever types them into a cell, and whoever may edit a file can read the script that belongs to it.',
        'Checks look at numbers, not at the bench. The safety data sheet, local rules and your school’s own assessment decide what is done, and who does it.',
      ],
    },
  ],
};
