import type { BuildQuestion } from './building/questions.ts';

/** Every text for people that the desk makes: labels of a build, questions, problems. */
export const deskWords = {
  keptName: (name: string, stamp: string) => `${name}, kept ${stamp}`,
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
  classNumber: (number: number) => `Class ${number}`,
  teamNumber: (number: number) => `Team ${number}`,
  /** Enough for several classes, so that no two classes begin with the same names. */
  teamNamesToStart: (
    'Basalt Quartz Granite Slate Marble Pumice Gneiss Chert Flint Schist Gabbro Diorite ' +
    'Chalk Jasper Agate Onyx Opal Garnet Topaz Beryl Calcite Gypsum Galena Pyrite ' +
    'Mica Talc Amber Jet Shale Tuff Obsidian Dolomite Andesite Zircon Olivine Fluorite ' +
    'Malachite Azurite Sandstone Limestone Feldspar Magnetite Hematite Travertine Corundum Serpentine Rhyolite Tourmaline'
  ).split(' '),
  buildLabels: {
    plan: 'Plan',
    help: 'Help',
    prepare: 'Prepare',
    progress: 'Progress',
    poll: 'Poll',
    putAside: (className: string) => `keeping ${className} aside`,
  },
  nothingBuilding: {
    expected: 'a build that was begun',
    where: 'going on',
    received: 'a file in which none is under way',
    advice: 'Look at the plan and press build.',
  },
  question: (asked: BuildQuestion) =>
    asked.about === 'names'
      ? asked.pairs
          .map(({ kind, from, to, className }) =>
            kind === 'class' ? `“${from}” became “${to}”.` : `“${from}” of ${className} became “${to}”.`,
          )
          .join(' ')
      : asked.where
          .map(({ className, team, cells }) => `${className}, ${team}: ${cells === 1 ? '1 cell' : `${cells} cells`}.`)
          .join(' '),
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
  late: ({ carried, left }: { readonly carried: number; readonly left: number }): string =>
    [
      ...(carried > 0
        ? [
            `${carried === 1 ? '1 cell was' : `${carried} cells were`} typed into an old sheet meanwhile and copied here.`,
          ]
        : []),
      ...(left > 0
        ? [
            `${left === 1 ? '1 cell was' : `${left} cells were`} typed into an old sheet meanwhile and left there: here the row holds something else or is gone. Look at the end of the tabs.`,
          ]
        : []),
    ].join(' '),
  inTheWay: ({ cell, text, team }: { readonly cell: string; readonly text: string; readonly team: string }) =>
    `${cell} holds “${text}”, so the checks of ${team} cannot show. “Check again” moves it into a note on that cell.`,
  noLesson: {
    expected: 'a Plan with an activity',
    where: 'what to prepare',
    advice: 'Plan a lesson in the sidebar and build it, or build the sample class.',
  },
  keyUnconfirmed: {
    expected: 'a yes to the warning',
    where: 'the key in a sheet',
    advice: 'Press the button again and read what it says first.',
  },
  record: {
    rows: { expected: 'the entries of the day', where: 'the record', advice: 'Open the Record again in the sidebar.' },
    headings: {
      expected: 'its headings in one row',
      where: 'the Record sheet',
      received: 'a sheet without some of them',
      advice: 'Undo the change to the headings; what you wrote stays in the sidebar.',
    },
    named: {
      expected: 'words without names',
      advice: 'Say “one team” there; names may stand in the text that you copy.',
    },
    tooLong: { expected: 'at most 2000 characters', advice: 'Shorten it.' },
  },
  share: {
    noLesson: {
      expected: 'a file with a Plan',
      where: 'emptying it',
      received: 'one without',
      advice: 'Open the copy that was made from a lesson.',
    },
  },
  teams: {
    noLesson: {
      expected: 'a lesson that has been built',
      where: 'a late team or another class',
      received: 'a file without one',
      advice: 'Plan and build it first.',
    },
    unknown: {
      expected: 'a team of the Plan',
      where: 'the team',
      advice: 'Look again in the sidebar and choose one from the list.',
    },
    columnTaken: {
      expected: 'the heading “today” behind the numbers',
      where: 'the Plan',
      advice: 'Type that heading there, or leave the column empty.',
    },
  },
  noPoll: {
    expected: 'a Poll sheet',
    where: 'the poll',
    received: 'a file without one',
    advice: 'Build the table again to get one; what is typed stays.',
  },
  members: {
    shape: {
      expected: 'names and who is absent',
      where: 'the team',
      advice: 'Open Teams again in the sidebar and try once more.',
    },
    changed: {
      expected: 'the names as the sidebar has read them',
      where: 'the team',
      received: 'another text in its cell “Who”',
      advice: 'Somebody wrote there meanwhile, and it was left alone. Look again, then change it.',
    },
    tooMany: (most: number) => ({ expected: `at most ${most} people`, advice: 'Make it two teams.' }),
    long: (longest: number) => ({
      expected: `names of at most ${longest} letters`,
      advice: 'A first name or initials are enough.',
    }),
    twice: { expected: 'a different name for each person', advice: 'Add a letter to one of the two.' },
    sameTwice: (name: string) => `“${name}” twice`,
    namesIn: (team: string) => `the names in ${team}`,
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
