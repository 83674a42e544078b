import { restWords } from '../workbook/restWords.ts';
import { deskSheetName } from '../workbook/scratchSheet.ts';

const putAway = 'Put away. Typing here is kept, not checked.';

/** Every text for people that the host code shows: menu, titles of pages, refusals. */
export const hostWords = {
  title: 'Labrow',
  menu: {
    openSidebar: 'Open the sidebar',
    buildSample: 'Build a sample class',
    checkAgain: 'Check again',
    selfCheck: 'Try this file out',
  },
  deskSheet: {
    name: deskSheetName,
    why: 'Whoever may change this sheet is shown the teacher’s part of the Labrow sidebar. To let a colleague in, add them under Protected sheets and ranges.',
    protection: 'Labrow: who is the teacher',
  },
  protection: 'Labrow: warns before anything but a tinted cell is changed',
  /** Whether a sheet bears a dated name that it got when it was kept, with or without a number behind it. */
  isKeptName: (name: string) => /, kept \d{4}-\d\d-\d\d/.test(name),
  /** Whether a sheet bears the name that it got when it was put away with its lesson. */
  isAwayName: (name: string) => /, lesson of /.test(name),
  /** In a sheet that was put aside. All of it fits the two lines of the headings. */
  kept: {
    alone: 'Kept as it was, and no longer checked.',
    withLink: 'Kept as it was, and no longer checked. Click here for the sheet in use.',
    checks: restWords.checks,
    before: (word: string) => `${restWords.before}${word}`,
  },
  /** In a sheet of a lesson that was put away. */
  away: {
    alone: putAway,
    withLink: `${putAway} Click here for the lesson in use.`,
  },
  /** In a note on the cell. */
  movedAside: (text: string) => `Typed in this cell, where a check has to show: “${text}”`,
  inTheWay: ({ cell, text }: { readonly cell: string; readonly text: string }) =>
    `${cell} held “${text}”, which kept checks from showing. It is in a note on that cell now.`,
  checkedAgain: ({
    renewed,
    missing,
    moved,
  }: {
    readonly renewed: number;
    readonly missing: readonly number[];
    readonly moved: readonly string[];
  }): string =>
    [
      ...moved,
      ...(moved.length > 0 && missing.length === 0 ? [] : [hostWords.checksEntered({ renewed, missing })]),
    ].join(' '),
  checksEntered: ({ renewed, missing }: { readonly renewed: number; readonly missing: readonly number[] }): string =>
    missing.length > 0
      ? 'Some checks are missing. Open the sidebar and press “Check again” in Class now: it puts them back.'
      : renewed === 0
        ? 'No check is stuck.'
        : renewed === 1
          ? '1 stuck check restarted.'
          : `${renewed} stuck checks restarted.`,
  refused: {
    says: 'The spreadsheet did not take this change. It said {received}.',
    advice: 'Nothing you typed is lost. Wait a moment, then press the button again.',
  },
  busy: {
    says: 'Something else is being written to this file just now, so nothing was done.',
    advice: 'Wait a moment, then press the button again.',
  },
  changed: {
    says: 'Somebody has just changed {where}, so nothing was written.',
    advice: 'Look again, then press the button once more.',
  },
  theSheet: (name: string) => `the sheet “${name}”`,
  theBuild: 'the build that is under way',
  aSheetGone: 'a sheet that is no longer there',
  olderPage: {
    says: 'This sidebar is from another version than the script of the file.',
    advice: 'Close it and open it again from the menu.',
  },
  oddWish: {
    says: 'The script did not understand what the sidebar asked for.',
    advice: 'Close the sidebar, open it again from the menu and press the button once more.',
  },
  notOurs: {
    says: 'Nothing was written: {received} was to be changed.',
    advice: 'Look again in the sidebar, then press the button once more.',
  },
  notTeacher: 'This part is for the teacher of the class.',
  pageTitles: {
    preparation: 'What to prepare',
    labels: 'Labels to print',
    key: 'The key, for the teacher',
    paper: 'A table on paper',
    period: 'The period in minutes',
    done: 'Steps done by team',
    particles: 'Particles',
    links: 'Links for students',
    cover: 'For a cover teacher',
    guide: 'A guide to print',
    trial: 'A page to try',
  },
  pageUnknown: {
    says: 'There is no page called {received}.',
    advice: 'Close the sidebar, open it again from the menu and press the button once more.',
  },
  share: {
    name: {
      says: '{received} is not the name of this file.',
      advice: 'Is this the copy? Then type its name exactly as shown above. Never empty the file that the class uses.',
    },
    noLesson: {
      says: 'There is nothing to empty: this file has no Plan.',
      advice: 'Open the copy that you made of a lesson.',
    },
    notWritten: {
      says: 'The new sheet {where} was not written in full, so nothing was removed.',
      advice: 'Press the button once more.',
    },
  },
} as const;
