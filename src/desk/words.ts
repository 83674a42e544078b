import type { LateSent } from '../host/calls.ts';
import type { BuildQuestion } from './building/questions.ts';

/** Every text for people that the desk makes: labels of a build, questions, problems. */
export const deskWords = {
  keptName: (name: string, stamp: string) => `${name}, kept ${stamp}`,
  /** Of a sheet that is put away with its lesson, with the day on which that was begun. */
  awayName: (name: string, day: string) => `${name}, ${day === '' ? 'earlier lesson' : `lesson of ${day}`}`,
  /** The name of a sheet that is in use again. */
  nameBefore: (name: string) => name.replace(/(, (earlier lesson|lesson of \d{4}-\d\d-\d\d)( \d+)?)+$/, ''),
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
    putAside: (className: string) => `setting ${className} aside`,
    putAway: (name: string) => `putting away the lesson before, ${name}`,
    remove: (name: string) => `removing ${name}`,
  },
  newerFile: {
    says: 'This file was built by a newer version of Labrow than this sidebar, so nothing was read or changed.',
    advice: 'Bring the script of this file up to date, then open the sidebar again.',
  },
  olderSheets:
    'These sheets are from an earlier version of Labrow. They still check. Build once to bring them up to date: what people typed goes along.',
  otherBuilding: {
    says: 'Another build in this file has not finished, so nothing was started.',
    advice: 'Open Plan in the sidebar and press “Continue building”, then press this again.',
  },
  lessonNotAway: {
    says: 'No lesson {received} is put away in this file: it may be open already.',
    advice: 'Look at the list again.',
  },
  noSample: {
    says: 'There is no sample to remove beside a lesson of your own.',
    advice: 'Build your own lesson first.',
  },
  nothingBuilding: {
    says: 'This file does not say what is left to build.',
    advice: 'Check the plan, then press build.',
  },
  question: (asked: BuildQuestion): string =>
    asked.about === 'next lesson'
      ? `This begins the next lesson: “${asked.from}” became “${asked.to}”. ${asked.where
          .map(({ className, cells }) => `${className}: ${cells === 1 ? '1 entry' : `${cells} entries`}.`)
          .join(' ')}`
      : asked.about === 'same day'
        ? `${asked.classes.join(', ')}: a lesson was begun today already.`
        : asked.about === 'sample'
          ? `The sample is in this file: ${asked.classes.join(', ')}.`
          : deskWords.buildQuestion(asked),
  buildQuestion: (asked: Extract<BuildQuestion, { about: 'names' | 'typed' }>): string =>
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
    says: 'The same key is in more than one line of the Plan: {received}.',
    advice: 'Give one of these lines another key, then build.',
  },
  lessonThere: {
    says: 'This file already has a lesson: {received}.',
    advice: 'Make a new file from the template and build the sample there.',
  },
  lessonOf: (teams: number) => (teams === 1 ? 'a Plan with 1 team' : `a Plan with ${teams} teams`),
  planUnfinished: {
    says: 'The Plan is not finished yet.',
    advice: 'Press build once more; it goes on where it stopped.',
  },
  headingMissing: (name: string) => ({
    says: `The Plan has no heading “${name}” above its numbers.`,
    advice: 'Type it there again, or build from the sidebar.',
  }),
  classUnknown: {
    says: '{received} is not a class that has been built.',
    advice: 'Choose one from the list, or build it.',
  },
  classUnreadable: {
    says: 'The sheet of {where} can’t be read: its hidden marks are no longer in columns K and L.',
    advice: 'Undo what moved the columns, or build the class again: entries are kept.',
  },
  late: ({ carried, left, away, own }: LateSent): string =>
    [
      ...(away > 0
        ? [
            `${away === 1 ? '1 cell was' : `${away} cells were`} typed into the lesson before while it was put away. Open that lesson again to see ${away === 1 ? 'it' : 'them'}: nothing is lost.`,
          ]
        : []),
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
      ...own.map(
        ({ sheet, cells }) =>
          `The build could not bring along what is your own in “${sheet}”, or looks at an old sheet there: ${firstOf(cells)}.`,
      ),
    ].join(' '),
  cleared: (classes: readonly string[]) =>
    `${classes.join(', ')}: people, absences, links and times were cleared and do not come back; entries do.`,
  overChecks: ({ className, cells }: { readonly className: string; readonly cells: readonly string[] }) =>
    `${className}, ${firstOf(cells)}: what was typed over a check there is in a note on its cell now.`,
  inTheWay: ({
    cell,
    text,
    team,
    ofOne,
  }: {
    readonly cell: string;
    readonly text: string;
    readonly team: string;
    /** Where the page writes the checks, only the one in that cell is missing. */
    readonly ofOne: boolean;
  }) =>
    `${cell} holds “${text}”, so ${ofOne ? `a check of ${team}` : `the checks of ${team}`} cannot show. “Check again” moves it into a note on that cell.`,
  noLesson: {
    says: 'There is nothing to prepare yet: this file has no Plan with an activity.',
    advice: 'Plan a lesson in the sidebar and build it, or build the sample class.',
  },
  keyUnconfirmed: {
    says: 'The key was not written, since you did not say yes to the warning.',
    advice: 'Press the button again, and read the warning first.',
  },
  record: {
    rows: {
      says: 'The record of the day did not arrive whole, so nothing was saved.',
      advice: 'Open Record again in the sidebar.',
    },
    headings: {
      says: 'The Record sheet has lost some of its headings, so nothing was saved.',
      advice: 'Undo the change to them; what you wrote stays in the sidebar.',
    },
    named: {
      says: '{where} has the name {received} in it, and the Record sheet is for everyone.',
      advice: 'Say “one team” instead; names may stay in the text that you copy.',
    },
    tooLong: { says: '{where} has {received} characters; 2000 is the most.', advice: 'Shorten it.' },
  },
  share: {
    noLesson: {
      says: 'There is nothing to empty: this file has no Plan.',
      advice: 'Open the copy that you made of a lesson.',
    },
  },
  teams: {
    noLesson: {
      says: 'This file has no lesson yet, so no team or class can join.',
      advice: 'Plan and build the lesson first.',
    },
    unknown: {
      says: 'The Plan has no team with the key {received}.',
      advice: 'Look again in the sidebar and choose a team from the list.',
    },
  },
  practice: {
    noNumbers: {
      says: 'There are no more numbers for {where} that no team has: the glassware allows only these.',
      advice: 'Add a flask or a pipette in the plan and build again, then press once more.',
    },
    building: {
      says: 'A build is under way in this file, so no practice block was added.',
      advice: 'Let it finish, or go on with it under Plan, then press again.',
    },
  },
  ownHelp: {
    noColumns: {
      says: 'This Plan was built before teams could have help of their own, so nothing was changed.',
      advice: 'Build the table again: what was typed stays.',
    },
    level: { says: '{received} is no help level.', advice: 'Choose 0, 1, 2 or 3, or leave it to the lesson.' },
    tooLong: (longest: number) => ({
      says: `The task for {where} has {received} characters; ${longest} is the most.`,
      advice: 'Make it one short sentence or question.',
    }),
  },
  exit: {
    none: {
      says: 'This lesson has no exit questions.',
      advice: 'Set how many in the plan, under checks and hints, and build again.',
    },
    forLesson: {
      says: 'The Plan shows the checks of exit questions to every class.',
      advice: 'Set “show exit checks” to no there, and press again for one class.',
    },
  },
  noClassSheet: { says: 'No class has a sheet yet.', advice: 'Build the lesson first.' },
  noPoll: {
    says: 'This file has no Poll sheet.',
    advice: 'Build the lesson again to get one; what was typed stays.',
  },
  members: {
    shape: {
      says: 'The names did not arrive whole, so nothing was saved.',
      advice: 'Open Teams again in the sidebar and try once more.',
    },
    changed: {
      says: 'Somebody has just changed the “Who” cell of this team, so nothing was written.',
      advice: 'Look again, then change it.',
    },
    tooMany: (most: number) => ({
      says: `There are {received} people in {where}; ${most} is the most.`,
      advice: 'Make it two teams.',
    }),
    long: (longest: number) => ({
      says: `{received} in {where} has more than ${longest} characters.`,
      advice: 'A first name or initials are enough.',
    }),
    twice: { says: '{received} is in {where} twice.', advice: 'Add a letter to one of the two names.' },
    sameTwice: (name: string) => `“${name}”`,
    namesIn: (team: string) => team,
  },
  teamUnknown: {
    says: 'This class has no team with the key {received}.',
    advice: 'Look at the class again and choose a team from the list.',
  },
  setupProblems: {
    shape: {
      says: 'The plan did not arrive whole, so nothing was built.',
      advice: 'Open the sidebar again and try once more.',
    },
    activity: { says: '{received} is not an activity from the list.', advice: 'Choose one in the sidebar.' },
    given: { says: '“{where}” is blank.', advice: 'Fill it in: every team’s numbers start from it.' },
    sizes: {
      says: '{received} can’t be the {where} on the shelf.',
      advice: 'Type their sizes in mL, such as 100 and 250.',
    },
    balance: {
      says: '{received} can’t be the readability or the range of a balance.',
      advice: 'Type both in g, such as 0.01 and 220.',
    },
    className: { says: 'A class has no name.', advice: 'Type one, such as Second period.' },
    classTwice: { says: 'Two classes are called {received}.', advice: 'Change one of the names.' },
    noClasses: { says: 'The lesson has no class yet.', advice: 'Add a class and its teams.' },
    noTeams: { says: '{where} has no team yet.', advice: 'Add a team.' },
    teamName: { says: 'A team in {where} has no name.', advice: 'Type one, or remove the team.' },
    teamTwice: { says: 'Two teams in {where} are called {received}.', advice: 'Change one of the names.' },
    tooMany: {
      says: 'One file can hold 200 teams, and here are {received}.',
      advice: 'Use a second file for some of the classes.',
    },
  },
} as const;

const firstOf = (cells: readonly string[]): string => `${cells.slice(0, 9).join(', ')}${cells.length > 9 ? ' …' : ''}`;
