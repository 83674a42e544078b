// Texts of the self-check’s page. What was found, what it means and what to do are the desk’s own words.
export const selfCheckTexts = {
  title: 'Try this file out',
  about: [
    'Finds out in about two minutes whether lessons will work with this file and this account, and says in plain words what is different here.',
    'It makes a sheet named “Selfcheck” for the time and takes it away again. Nothing else in the file is changed.',
    'Run it once as the teacher and once from a student’s account before the first class.',
  ],
  role: 'Who is trying it out?',
  roles: { teacher: 'The teacher', student: 'A student’s account' },
  start: 'Try it out',
  trying: (title: string, number: number, of: number) => `${number} of ${of}: ${title} …`,
  beginning: 'Making a sheet to try things out in …',
  typeTitle: 'Now you',
  type: (cells: string) =>
    `The sheet “Selfcheck” is in view. Type any number into each of its ten tinted cells, ${cells.replace(':', ' to ')}, one below the other, as fast as you can. Then come back here.`,
  typed: 'I have typed them',
  notTyped: 'Leave this out',
  counting: 'Counting …',
  askTitle: 'What only you can see',
  askAbout: 'Answer what you can try; leave out the rest.',
  openPage: 'Open a page over the sidebar',
  finish: 'Finish and show the report',
  leave: 'Leave marks for a copy, and finish',
  leaveAbout:
    'With marks left, make a copy of the file and try that out too: it tells what a copy brings along. The marks go with the next run.',
  finishing: 'Taking the sheet away …',
  report: 'The report',
  reportAbout: 'It holds no names, no entries and no address. Send it to whoever helps you with Labrow.',
  copy: 'Copy the report',
  again: 'Try once more',
  goOn: 'An earlier try was not finished: its answers are below.',
  page: {
    title: 'A page to try',
    words: [
      'This page lies over the spreadsheet, as pages to print and to project do.',
      'Press “Print this page” to see whether the window for printing opens, then close it. Then close this page.',
    ],
    close: 'Close this page',
  },
} as const;
