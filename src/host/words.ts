/** Every text for people that the host code shows: menu, progress of a build, problems. */
export const hostWords = {
  title: 'Labrow',
  menu: {
    openSidebar: 'Open the sidebar',
    buildSample: 'Build a sample class',
    checkAgain: 'Check again',
  },
  protection: 'Labrow: a reminder before anything but the tinted cells is changed',
  keptName: (name: string, stamp: string) => `${name}, kept ${stamp}`,
  sampleBuilt: 'The sample class is ready. Everything in it is invented.',
  checkedAgain: (renewed: number) =>
    renewed === 0 ? 'Every check is there already.' : `Entered again: ${renewed} of the checks.`,
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
  firstClass: 'First class',
  teamNumber: (number: number) => `Team ${number}`,
  refused: {
    expected: 'the file to take the change',
    where: 'this step',
    advice: 'Nothing that was typed is lost. Wait a moment and press the button again.',
  },
  buildLabels: {
    plan: 'Plan',
    help: 'Help',
    progress: 'Progress',
    putAside: (className: string) => `keeping ${className} aside`,
  },
  keyTwice: {
    expected: 'each key in one line of the Plan',
    where: 'building again',
    advice: 'Give one of these lines another key in the Plan, then build.',
  },
  lessonThere: {
    expected: 'a file without a lesson',
    where: 'the sample class',
    advice: 'Make a new spreadsheet from the template and build the sample there.',
  },
  lessonOf: (teams: number) => `a Plan with ${teams} teams`,
  planUnfinished: {
    expected: 'a finished Plan',
    where: 'the build',
    advice: 'Press build once more; it goes on where it stopped.',
  },
  headingMissing: (name: string) => ({
    expected: `the heading “${name}”`,
    where: 'the lines of the Plan',
    advice: 'Type the heading again above its numbers, or build from the sidebar.',
  }),
  classUnknown: {
    expected: 'a class that has been built',
    where: 'the class',
    advice: 'Choose one from the list, or build it.',
  },
  classUnreadable: {
    expected: 'the marks of a class sheet in columns K and L',
    advice: 'Undo what moved the columns, or build the class again: what was typed is copied.',
  },
  pageTitles: {
    labels: 'Labels to print',
    key: 'The key, for the teacher',
    paper: 'A table on paper',
    period: 'The period in minutes',
    particles: 'Particles',
  },
  pageUnknown: {
    expected: 'a page of this script',
    where: 'the page to open',
    advice: 'Close the sidebar, open it again from the menu and press the button once more.',
  },
  teamUnknown: {
    expected: 'a team of this class',
    where: 'the team',
    advice: 'Read the class again and choose one from the list.',
  },
  setupProblems: {
    shape: { expected: 'a whole plan', where: 'the build', advice: 'Open the sidebar again and try once more.' },
    activity: { expected: 'an activity from the list', where: 'the activity', advice: 'Choose one in the sidebar.' },
    given: { expected: 'a value', advice: 'Fill it in; every team starts from it.' },
    sizes: { expected: 'sizes in mL, such as 100 and 250,', advice: 'Say what is on the shelf.' },
    balance: {
      expected: 'a mass in g, such as 0.01,',
      where: 'the balance',
      advice: 'Say what the balance reads to and holds.',
    },
    className: { expected: 'a name', where: 'each class', advice: 'Type one, such as Second period.' },
    classTwice: { expected: 'a different name', where: 'each class', advice: 'Change one of the two.' },
    noClasses: { expected: 'at least one class', where: 'the lesson', advice: 'Add a class and its teams.' },
    noTeams: { expected: 'at least one team', advice: 'Add a team.' },
    teamName: { expected: 'a name for each team', advice: 'Type one, or remove the team.' },
    teamTwice: { expected: 'a different name for each team', advice: 'Change one of the two.' },
    tooMany: { expected: 'at most 200 teams', where: 'one file', advice: 'Use a second file for some of the classes.' },
  },
} as const;
