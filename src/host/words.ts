import { deskSheetName } from '../workbook/scratchSheet.ts';

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
  protection: 'Labrow: a reminder before anything but the tinted cells is changed',
  /** Whether a sheet bears a dated name that it got when it was kept, with or without a number behind it. */
  isKeptName: (name: string) => /, kept \d{4}-\d\d-\d\d/.test(name),
  /** In a sheet that was put aside. */
  kept: {
    alone: 'Kept as it was. What is typed here is no longer checked.',
    withLink: 'Kept as it was. What is typed here is no longer checked. Click here for the sheet in use.',
    checks: 'Checks are off',
    before: (word: string) => `then: ${word}`,
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
      ? 'Some checks are gone from their cells. Open the sidebar and press “Check again” in Class now: it puts them back.'
      : renewed === 0
        ? 'Every check is there already.'
        : `Entered again: ${renewed} of the checks.`,
  problem: ({
    expected,
    where,
    received,
    advice,
  }: {
    expected: string;
    where: string;
    received: string;
    advice: string;
  }) => `Expected ${expected} for ${where}, received ${received}. ${advice}`,
  refused: {
    expected: 'the file to take the change',
    where: 'this step',
    advice: 'Nothing that was typed is lost. Wait a moment and press the button again.',
  },
  busy: {
    expected: 'the file to be free',
    where: 'this step',
    received: 'one in which something else is being written',
    advice: 'Nothing was done. Wait a moment and press the button again.',
  },
  changed: {
    expected: 'the file as the sidebar has read it',
    received: 'another one',
    advice: 'Somebody changed it meanwhile, so nothing was written. Look again and press once more.',
  },
  theSheet: (name: string) => `the sheet “${name}”`,
  theBuild: 'the build that is under way',
  aSheetGone: 'a sheet that is no longer there',
  olderPage: {
    expected: 'a sidebar of the same version as the script',
    where: 'this button',
    received: 'another version',
    advice: 'Close the sidebar and open it again from the menu.',
  },
  oddWish: {
    expected: 'a call that the sidebar makes',
    where: 'the script',
    received: 'one of another shape',
    advice: 'Close the sidebar, open it again from the menu and press the button once more.',
  },
  notOurs: {
    expected: 'a sheet that was built here',
    where: 'the cells to write',
    advice: 'Look again in the sidebar, then press once more.',
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
    guide: 'A guide to print',
    trial: 'A page to try',
  },
  pageUnknown: {
    expected: 'a page of this script',
    where: 'the page to open',
    advice: 'Close the sidebar, open it again from the menu and press the button once more.',
  },
  share: {
    name: {
      expected: 'the name of this file',
      where: 'emptying it',
      advice: 'Is this the copy? Then type its name as it stands above. If it is the class’s file, leave it.',
    },
    noLesson: {
      expected: 'a file with a Plan',
      where: 'emptying it',
      received: 'one without',
      advice: 'Open the copy that was made from a lesson.',
    },
    notWritten: {
      expected: 'a new sheet that holds what is to stay',
      received: 'one that differs',
      advice: 'Nothing was removed. Press the button once more.',
    },
  },
} as const;
