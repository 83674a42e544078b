// Every text of the sidebar that people read, in the order of the page. A translation replaces this file.
import type { NamePair } from '../desk/building/questions.ts';
import type { TwoReadings } from './arithmetic/pointNumbers.ts';
import { selfCheckTexts } from './selfCheckTexts.ts';

const units = (unit: string) => (unit === '' || unit === '%' ? 'a number' : `a number in ${unit}`);
const examples: Readonly<Record<string, string>> = {
  mL: '250, 1/4 L or 3 * 200 mL',
  g: '2.50 or 250 mg',
  mol: '0.02 or 20 mmol',
  'mol/L': '0.3 or 300 mmol/L',
  'g/mL': '1.18 or 1180 kg/m^3',
  '%': '98 or 37.2',
};
const such = (unit: string) => `such as ${examples[unit] ?? '0.25 or 1/4'}`;
const count = (number: number, one: string, more: string) => `${number} ${number === 1 ? one : more}`;

/** Facts in one line; none begins with the sign between them. */
export const listed = (facts: readonly string[]) => facts.join('\u00a0· ');

interface PollCounts {
  readonly answers: number;
  readonly fromStudents: number;
  readonly fromTeams: number;
}
interface KindWords {
  readonly symbol: string;
  readonly charge: number;
  readonly perUnit: number;
  readonly shape: keyof typeof shapeWords;
}
const shapeWords = {
  round: 'round',
  square: 'square',
  sixfold: 'six-sided',
  pointed: 'standing on a point',
  whole: 'long and rounded',
} as const;

export const texts = {
  title: 'Labrow',
  /** The moments of the day that the views are for. */
  moments: {
    label: 'Moments of the day',
    before: 'Before class',
    inClass: 'In class',
    after: 'After class',
    more: 'More',
  },
  views: {
    label: 'Views of this moment',
    plan: 'Plan',
    prepare: 'Prepare',
    sheets: 'Sheets',
    classNow: 'Class now',
    particles: 'Particles',
    poll: 'Poll',
    teams: 'Teams',
    record: 'Record',
    share: 'Share',
    help: 'Help',
  },

  pages: {
    bar: 'This page',
    print: 'Print this page',
    back: 'Back to the sidebar',
    reading: 'Reading the Plan …',
    preparation: 'What to prepare for the day',
    labels: {
      title: 'Labels',
      about:
        'For containers other than the supplier’s own. Cut them out and tape them on, or print on sticky paper. Check each one against the safety data sheet first. Hazard statements are quoted from CLP Annex III; their sources are under Prepare.',
      which: 'Which labels',
      all: 'All labels',
      date: 'Date on the labels',
      made: (date: string) => `Made ${date}`,
      noSignal: 'Signal word not known',
      initials: 'Initials',
    },
    key: {
      title: 'The key',
      warning: 'For the teacher only. It is in no sheet of the file: keep the paper to yourself.',
      sameForAll: 'The same for every team',
      orders: 'Orders of work',
      orderInWords: 'One order that works',
      letters: 'Letters by team',
      team: 'Team',
      notes: 'Good to know',
    },
    paper: {
      title: 'A table on paper',
      about: 'For a team without a device. It has the team’s own numbers and no answers.',
      which: 'Which team',
      all: 'Every team, one sheet each',
      ruleTitle: 'Check yourself.',
      rule: 'Add up the digits of your result. Then find a number of the same size in this list, and add what stands behind it. The last figure of the sum should be the check figure of the row.',
      ruleExample: (result: string, like: string) =>
        `An example that is nobody’s result: for ${result}, 2 + 5 + 4 = 11. It is like ${like}, so add 2. That makes 13: check figure 3.`,
      ruleLimit: 'A wrong result can still match, 1 time in 10. So say how you got there.',
      like: (number: string) => `like ${number}:`,
      add: (figure: number) => `+ ${figure}`,
      headings: ['What to find', 'Your result', 'Unit', 'Check figure'],
      write: 'room to write',
      figures: (figures: readonly string[]) => figures.join(' or '),
      otherwise: {
        figure: 'Show it to your teacher.',
        calculated: 'Comes from your own reading: show it to your teacher.',
        measured: 'Show your teacher before you go on.',
        ordered: 'Compare with another team. Why this order?',
        chosen: 'Give your reason to another team.',
        told: 'Your own words.',
        ticked: 'Tick when all of you have read them.',
      } as Readonly<Record<string, string>> & { readonly figure: string; readonly calculated: string },
      doneCount: (steps: number) => `Steps done: ____ of ${steps}. This is a count, not a grade.`,
    },
    period: {
      title: 'The period in minutes',
      total: 'Total minutes',
      unit: 'min',
      hint: 'The steps share the total. The minutes to begin with are common practice; change the total to suit your class.',
      outside: ({
        least,
        most,
        received,
      }: {
        readonly least: number;
        readonly most: number;
        readonly received: string;
      }) => `“${received}” does not work here. Type a whole number of minutes from ${least} to ${most}.`,
      one: 'One period',
      numbered: (number: number) => `Period ${number}`,
      headings: ['From – to', 'What', 'Minutes'],
      span: (from: number, to: number) => `${from} – ${to}`,
    },
    done: {
      title: 'Steps done by team',
      about: 'How many steps each team has on target. This is a count, not a grade.',
      caption: (className: string, clock: string) => `${className}, at ${clock}`,
      headings: ['Team', 'Steps done'],
    },
    links: {
      title: 'Find your sheet',
      scan: 'Scan the picture, or open the link.',
    },
    cover: {
      title: 'For a cover teacher',
      what: 'What',
      where: 'Where it stands',
      at: (date: string, clock: string) => `${date}, ${clock}`,
      forWhom: (classes: readonly string[]) => classes.join('; '),
      classTeams: (name: string, teams: number) => `${name}: ${count(teams, 'team', 'teams')}`,
      headings: ['Class', 'Rows done', 'Working on', 'Talk to first'],
      rows: (done: number, all: number) => `${done} of ${all}`,
      open: (title: string, teams: number) => `${title}\u00a0(${teams})`,
      noneOpen: 'nothing',
      nobody: 'nobody just now',
      more: (teams: number) => `${count(teams, 'more team', 'more teams')}.`,
      openNote: 'In brackets: how many teams are at that row.',
      run: 'How it runs',
      runText: [
        'Teams open the sheet of their class and type in their own white boxes. Each row checks itself and says what to look at. Ask, do not tell: “What does your row say?”',
        'Nothing is handed in and nothing is marked. A team that asks for help chooses 1, 2 or 3 in its row.',
        'Bench work only if your school lets you supervise it. If not, teams do the calculations and questions, and leave the bench for another day.',
      ],
      cautions: 'Cautions',
      safety: 'Read the safety data sheets first. Local rules and your school’s own risk assessment decide.',
      waste: 'Waste',
      ready: 'Have ready',
      withSpare: 'For all classes, with spare.',
      amount: (what: string, amount: string) => `${what}: ${amount}`,
      write: 'Write down for me',
      writeHeadings: ['Class', 'Who was missing', 'How far they got', 'Spills, breakages, hard steps'],
    },
  },

  prepare: {
    title: 'Prepare the day',
    about: 'For all classes together, from the Plan as it is now. For your eyes only.',
    reading: 'Working out what you need …',
    done: 'Done',
    what: 'What',
    needed: 'Needed',
    spare: 'With spare',
    washing: 'Glassware is for the class that needs most, and is washed between classes.',
    ready: (what: string) => `${what} is ready`,
    sections: {
      day: 'The day',
      solids: 'Solids to weigh out',
      stocks: 'Stocks the teams make',
      make: 'Make in advance',
      lay: 'Set out',
      balance: 'Balances',
      water: 'Water',
      cautions: 'Cautions',
      disposal: 'Waste',
      sources: 'Sources of the hazard data',
    } as Readonly<Record<string, string>>,
    printTitle: 'To print',
    print: {
      preparation: 'This list',
      labels: 'Labels',
      paper: 'A table on paper',
      period: 'The period in minutes',
      done: 'Steps done by team',
      cover: 'For a cover teacher',
      key: 'The key',
    },
    sheetTitle: 'The Prepare sheet',
    sheetAbout:
      'The same list for everyone: masses and volumes are rounded up, so that they tell no answer. It follows the Plan while this view is open, and warns when it is out of date.',
    sheetWrite: 'Update the Prepare sheet',
    writing: 'Writing the Prepare sheet …',
    written: 'The Prepare sheet is up to date.',
    broughtUp: 'The Plan has changed. This list and the Prepare sheet are up to date again.',
    notBroughtUp: (problem: string) => `The Plan has changed, but the Prepare sheet could not be updated. ${problem}`,
    every: 'Updates every 20 s.',
    keyTitle: 'The key',
    keyAbout: 'It is in no sheet of the file. Check that nobody can see your screen.',
    keyShow: 'Show the key here',
    keyHide: 'Hide the key',
    keyReading: 'Working out the key …',
    keyTeam: 'Team',
    keyHeadings: ['Step', 'Answer', 'Note'],
    keyToSheet: 'Write the key to a sheet …',
    keyWarning:
      'Everyone who can edit this file can read all its sheets, hidden ones too, and the history keeps what you delete. Write the key to a new sheet anyway?',
    keyYes: 'Yes, write it',
    keyNo: 'No, keep it out of the file',
    keyWriting: 'Writing the key …',
    keyWritten: (name: string) => `The key is in the sheet “${name}”. Delete that sheet before you share the file.`,
  },

  sheets: {
    title: 'Sheets and links',
    reading: 'Reading which sheets there are …',
    working: 'Asking the spreadsheet …',
    none: 'No class has been built yet. Plan one and build it first.',
    teachersTitle: 'Your sheets',
    teachersAbout:
      'Students see the class sheets first, then Poll and Progress. Building keeps your own sheets hidden, unless you are in one of them.',
    open: (name: string) => `Open ${name}`,
    shown: (name: string) => `${name} is in front now. Everybody can see its tab until you hide it again.`,
    hide: 'Hide my sheets',
    hidden: 'Your sheets are hidden.',
    noSecret: 'Hidden is not secret: assume that anyone who can edit this file can show a hidden sheet and read it.',
    linksTitle: 'Links for students',
    linksAbout: 'Each link opens the sheet of that class. The next lesson has another: print anew then.',
    sharing:
      'Share the file with school accounts only. Labrow cannot see how it is shared: check “Share” in the spreadsheet yourself.',
    addressOf: (name: string) => `Link for ${name}`,
    copy: 'Copy the link',
    picture: (name: string) => `Picture to scan: the link for ${name}`,
    project: (name: string) => `Project the link for ${name}`,
    printAll: 'Print all links',
  },

  opening: 'Reading the lesson …',
  stillWaiting: 'Still waiting for the spreadsheet. You can leave this open.',
  tryAgain: 'Try again',

  calls: {
    noHost: 'This page works inside the spreadsheet. Open it from the Labrow menu there.',
    timedOut: (seconds: number) =>
      `No answer from the spreadsheet for ${seconds} seconds. Nothing you typed here is lost. Check your connection, then try again.`,
    failed: 'The spreadsheet could not do that just now. Nothing you typed here is lost. Try again in a moment.',
    severalAccounts:
      'The spreadsheet did not let us in. This often happens when you are signed in to several accounts at once: see “Several accounts” under Help.',
    tooBusy: 'The spreadsheet is busy. Wait half a minute, then try again.',
    tooLong:
      'The spreadsheet stopped because the work took too long. What is done so far is kept. Try again to continue.',
    notTeacher:
      'Your rows and their checks work without it. Do you teach here too? Then ask the owner of the file to let you in: under Protected sheets and ranges, for the sheet “Labrow teacher”.',
    oddAnswer:
      'The spreadsheet gave an answer that this page does not understand. Close the sidebar and open it again from the Labrow menu.',
  },

  field: {
    unit: (unit: string) => `in ${unit}`,
    meaning: (text: string, unit: string) => `= ${text}${unit === '' ? '' : ` ${unit}`}`,
    tooLong: (longest: number) => `This is too long. Use at most ${longest} characters.`,
    twoWays: ({ typed, readings }: TwoReadings) =>
      `“${typed}” could be ${readings[0]} or ${readings[1]}. Type it one of those two ways.`,
    notAboveZero: (typed: string) => `“${typed}” is not above 0. Type the amount you want.`,
    notFinite: (typed: string) => `“${typed}” has no finite result. Look for a division by 0 or a digit too many.`,
    unread: (typed: string, unit: string) => `We cannot read “${typed}”. Type ${units(unit)}, ${such(unit)}.`,
    millions: ({ part, meant }: { readonly part: string; readonly meant: string }) =>
      `“${part}” with a capital M means a million ${part.slice(1)}. Did you mean ${meant}? Type it that way.`,
    unknownUnit: (part: string, unit: string) =>
      `We do not know the unit “${part}”. Type ${units(unit)}, ${such(unit)}.`,
    unlikeKinds: (typed: string, unit: string) =>
      `“${typed}” adds different kinds of quantity. Give each part its unit, ${such(unit)}.`,
    wrongKind: ({ typed, unit, kind }: { readonly typed: string; readonly unit: string; readonly kind: string }) =>
      `“${typed}” is ${kind}. Type ${units(unit)}, ${such(unit)}.`,
    kinds: {
      number: 'a pure number',
      mL: 'a volume',
      g: 'a mass',
      mol: 'an amount',
      'mol/L': 'a concentration',
      'g/mL': 'a density',
      'g/mol': 'a molar mass',
      cm: 'a length',
      s: 'a time',
      K: 'a temperature',
      other: 'another kind of quantity',
    },
    missing: (label: string) => `Type ${label} here.`,
    notChosen: (label: string) => `Choose ${label} here.`,
  },

  /** Lessons of the file: the next one, and those put away. */
  next: {
    begins: ({ from, to }: { from: string; to: string }) =>
      `“${from}” becomes “${to}”, and students have already typed. So this begins the next lesson for:`,
    entries: ({ className, cells }: { className: string; cells: number }) =>
      `${className}: ${count(cells, 'entry', 'entries')} so far`,
    stays: 'The lesson so far is put away with all its entries. You can open it again.',
    yes: 'Begin the next lesson',
    no: 'No, go back',
    sameDay: (classes: readonly string[]) => `${classes.join(', ')} began a lesson today already. Begin another one?`,
    sameDayYes: 'Yes, another one today',
    button: 'Next lesson',
    title: 'The next lesson',
    forClasses: 'For which classes',
    teamsGoAlong: 'Teams and the people in them go along.',
    newClasses: 'New classes',
    noClass: 'Tick a class.',
    teams: (teams: number) => count(teams, 'team', 'teams'),
    numbers: 'New numbers',
    numbersHint: 'Otherwise teams keep the numbers of last time.',
    people: (cells: number) =>
      `Clear people, absences, links and times from the lesson before: ${count(cells, 'cell', 'cells')}`,
    peopleHint: 'Otherwise they stay. What is cleared does not come back with that lesson.',
    build: 'Build the next lesson',
    back: 'Back to the plan',
    lesson: 'Lesson',
    earlier: 'Open an earlier one',
    earlierTitle: 'Earlier lessons',
    earlierAbout: 'With all their entries. Opening one puts away what its classes are in now.',
    none: 'No lesson has been put away yet.',
    open: (classes: readonly string[]) => `Open it for ${classes.join(', ')}`,
    reading: 'Looking for the lessons …',
    count: (entries: number) => count(entries, 'entry', 'entries'),
    begun: (day: string) => (day === '' ? 'begun earlier' : `begun ${day}`),
  },

  plan: {
    title: 'Plan and build',
    titleAgain: 'Plan and build again',
    sample: {
      about: 'New here? Try a sample class first; everybody in it is invented.',
      button: 'Build a sample class',
      ask: ({ classes, answers, rows }: { classes: readonly string[]; answers: number; rows: number }) =>
        `The sample is still in this file: ${[
          ...classes,
          ...(answers > 0 ? [count(answers, 'poll answer', 'poll answers')] : []),
          ...(rows > 0 ? [`${count(rows, 'row', 'rows')} in the Record`] : []),
        ].join(', ')}. Remove it now?`,
      remove: 'Build and remove the sample',
      keep: 'Build and keep the sample',
      over: 'The sample can go now, with its poll answers and its rows in the Record.',
      out: 'Remove the sample',
    },
    again: 'Building again keeps everything that was typed. Teams keep their rows.',
    halfBuilt: (percent: number) => `The table is ${percent} percent built. What is there is kept.`,
    goOn: 'Continue building',
    draftKept: 'Your earlier changes are still here. They are not in the Plan sheet yet.',
    fromSheet: 'Use the Plan sheet instead',
    sheetChanged: 'The Plan sheet has changed since this page read it. Which one do you want?',
    fromHere: 'Build with what is here',
    names: {
      ask: 'Students have already typed in these rows, so please tell us first:',
      pair: ({ kind, from, to, className }: NamePair) =>
        kind === 'class'
          ? `“${from}” is gone from the plan and “${to}” is new. Is it the same class?`
          : `“${from}” is gone from ${className} and “${to}” is new. Is it the same team?`,
      same: 'Yes, the same with a new name',
      other: 'No, a different one',
    },
    typed: {
      ask: (cells: number) =>
        `This plan has no row for ${count(cells, 'cell', 'cells')} that students filled in. A copy is kept in a sheet behind the others, but the table will not show them:`,
      where: ({ className, team, cells }: { className: string; team: string; cells: number }) =>
        `${className}, ${team}: ${count(cells, 'cell', 'cells')}`,
      yes: (cells: number) => `Yes, put ${count(cells, 'cell', 'cells')} aside`,
      no: 'No, change the plan first',
    },
    comparing: 'Reading the Plan sheet …',
    sheetProblems: 'Please look at these in the sheets:',
    activity: 'Activity',
    solute: 'Substance',
    pickSolute: 'Choose a substance',
    pickIon: 'Choose an ion',
    noIon: 'This substance gives no ions that can be counted here, so the row about one ion is left out.',
    otherFormula: 'Another formula …',
    formula: 'Formula',
    formulaHint: 'Such as Na2SO4 or CuSO4·5H2O.',
    molarMass: (gramsPerMole: string) => `= ${gramsPerMole} g/mol`,
    asInBottle:
      'For the substance as it comes in the bottle. Each team reads the cautions for the strength it handles.',
    plannerCaution: 'Why we do not suggest it:',
    cautionsMore: 'What to wear, and what to do with leftovers',
    unlisted: 'Not in our list, so we cannot tell you its hazards. That does not mean it is harmless.',
    defer:
      'Before anyone weighs or pours: read the safety data sheet, and follow local rules and your school’s risk assessment.',
    setAlready: 'Already set. Open a line to change it.',
    numbers: 'Numbers',
    numbersHint: 'The teams’ numbers start from these. Sums with units work too, such as 3 * 200 mL or 1/4 L.',
    numberSet: ({ name, typed, unit }: { readonly name: string; readonly typed: string; readonly unit: string }) =>
      `${name} ${typed.replace(/ /g, '\u00a0')}${/[a-z%]$/i.test(typed) ? '' : `\u00a0${unit}`}`,
    numbersOwn: 'different for each team',
    numbersSame: 'the same for every team',
    optional: 'optional',
    ownNumbers: 'Give each team its own numbers',
    ownNumbersHint: 'Close to the ones above, equally difficult, and possible with your glassware.',
    classes: 'Classes and teams',
    classNumber: (number: number) => `Class ${number}`,
    classCount: 'Number of classes',
    className: 'Class name',
    teamCount: 'Teams',
    teamNames: 'Team names, one per line',
    teamNamesFold: 'Team names:',
    removeClass: (name: string) => `Remove ${name}`,
    removed: (name: string) =>
      `${name === '' ? 'The class' : name} is out of the plan. A sheet that was already built stays in the file.`,
    putBack: 'Put it back',
    shelf: 'Glassware and balance',
    shelfHint: 'The teams’ numbers are chosen to fit these.',
    shelfSet: ({
      flasks,
      pipettes,
      balance,
      glassware,
    }: {
      readonly flasks: string;
      readonly pipettes: string;
      readonly balance: string;
      readonly glassware: string;
    }) =>
      listed([
        `flasks ${flasks}\u00a0mL`,
        `pipettes ${pipettes}\u00a0mL`,
        `balance to ${balance}\u00a0g`,
        `class\u00a0${glassware}`,
      ]),
    notOnShelf: ({ size, sizes }: { readonly size: string; readonly sizes: string }) =>
      `You have no ${size} mL flask (${sizes}). Choose one of these, or add it under “Glassware and balance”.`,
    flasks: 'Volumetric flasks',
    pipettes: 'Pipettes',
    sizesHint: 'Sizes in mL, with commas or spaces between them.',
    sizesHintComma: 'Sizes in mL, with semicolons or spaces between them.',
    balanceReads: 'Balance reads to',
    balanceMax: 'Balance weighs up to',
    glasswareClass: 'Glassware class',
    glasswareClasses: { A: 'A (more accurate)', B: 'B' },
    glasswareStandard: 'Tolerances from',
    checks: 'Checks and hints',
    checksSet: ({
      figures,
      help,
      allowance,
      mark,
    }: {
      readonly figures: string;
      readonly help: string;
      readonly allowance: string;
      readonly mark: string;
    }) =>
      listed([
        `${figures}\u00a0significant figures`,
        `help up to level\u00a0${help}`,
        `${allowance}\u00a0% for handling`,
        `decimal ${mark}`,
      ]),
    figures: 'Significant figures',
    checksFrom: 'Checks come from',
    checksFroms: { formulas: 'formulas in the sheet', sidebar: 'this sidebar, while it is open' },
    checksFromHint:
      'Choose the sidebar only if checks stay empty or show an error on a student’s account. Help says how to find out.',
    weightDecimals: 'Decimal places of atomic weights',
    chlorine: 'Chlorine in your table of atomic weights',
    decimalMark: 'Decimal mark',
    decimalMarks: { point: 'point (0.5)', comma: 'comma (0,5)' },
    judgeFigures: 'Check the number of figures',
    judgeFiguresHint: 'A right value with the wrong number of figures then counts as close.',
    exitQuestions: 'Exit question',
    exitQuestionsHint:
      'At the end of the lesson, each student of a team answers one with numbers of their own. You see counts, never names.',
    exitSeats: [
      'none',
      'for 1 student of each team',
      'for 2 students of each team',
      'for 3 students of each team',
      'for 4 students of each team',
    ],
    showExit: 'Show the checks of exit questions at once',
    showExitHint: 'Otherwise answers are kept until you show a class its checks, in “Class now”.',
    helpLevel: 'Highest help level',
    helpLevels: ['0 · none', '1 · the idea', '2 · plus the relation', '3 · plus the set-up with their numbers'],
    allowance: 'Allowance for handling',
    allowanceHint: 'Extra error allowed in a bench reading, on top of glassware and balance.',
    safety: 'Safety and evidence',
    safetySet: ({
      questions,
      also,
      evidence,
    }: {
      readonly questions: string;
      readonly also: string;
      readonly evidence: boolean;
    }) =>
      listed([
        questions === 'never'
          ? 'no safety questions'
          : `safety questions ${questions === 'always' ? questions : 'where it says Danger'}`,
        also === '' ? 'cautions in English' : `cautions also in ${also}`,
        evidence ? 'with rows for evidence' : 'no rows for evidence',
      ]),
    safetyQuestions: 'Two questions before the bench',
    safetyQuestionsWhen: {
      'for Danger': 'where it says Danger',
      always: 'always',
      never: 'never',
    },
    safetyQuestionsHint:
      'What to do if it splashes, and where leftovers go. Danger is the signal word of the substance. Bench rows open once both answers are right. Also asked for a substance that our list does not have.',
    cautionsAlso: 'Cautions in a second language',
    cautionsOnce: 'none',
    cautionsAlsoHint: 'Above the teams and on labels, below the English text.',
    evidence: 'Ask for evidence',
    evidenceHint:
      'Rows for both balance readings, one thing that the team saw, and a link to a picture. Ask for pictures without faces and voices.',
    bench: 'Time and bench work',
    benchSet: ({ periods, staffDilute }: { readonly periods: number; readonly staffDilute: boolean }) =>
      listed([
        count(periods, 'period', 'periods'),
        `${staffDilute ? 'staff' : 'students'} dilute concentrated acids and bases`,
      ]),
    periods: 'Periods',
    dilutionFrom: 'Calculate the dilution from',
    dilutionFroms: { nominal: 'the planned molarity', real: 'the stock the team really made' },
    dilutionFromHint: 'For activities that make a stock first. Build again after a change.',
    reagentMaker: 'Who dilutes concentrated acids and bases',
    reagentMakers: { staff: 'staff; students calculate and watch', students: 'students, with you beside them' },
    reagentMakerHint: 'The cautions row tells each team.',
    reagentWarning:
      'Concentrated acids and bases burn skin and eyes within seconds. Change this only if your local rules, the safety data sheet and your school’s risk assessment allow it for this class.',
    reagentConfirm: 'They allow it: students dilute',
    seed: 'Seed',
    seedHint: 'Any whole number. The same seed gives the same numbers again.',
    preview: 'See the teams’ numbers',
    previewing: 'Working out the teams’ numbers …',
    previewTitle: 'The teams’ numbers',
    previewAbout: 'Nothing is written yet. These go into the Plan sheet when you build.',
    previewTeam: 'Team',
    previewSame: 'The same for every team',
    materials: {
      heading: 'Materials and waste, all teams together',
      solid: (formula: string, purity: string) => (purity === '' ? formula : `${formula}, ${purity} %`),
      bottle: (formula: string, percent: string) => `${formula}, ${percent} % bottle`,
      grams: (amount: string) => `${amount} g`,
      millilitres: (amount: string) => `${amount} mL`,
      litres: (amount: string) => `${amount} L`,
      made: 'Solution made',
      used: 'Solution used',
      waste: 'Waste',
      mostly: ({ used, made }: { used: string; made: string }) =>
        `Most of the solution is thrown away: only ${used} L of ${made} L is used.`,
      smallerFlasks: ({ flask, made, waste }: { flask: string; made: string; waste: string }) =>
        `With ${flask} mL flasks, teams would make ${made} L and throw away ${waste} L. To do that, type ${flask} for the flask.`,
      readyStock: 'To make less, add a smaller flask, or choose “A dilution”, where all teams share one stock.',
      sameNumbers: ({ solutions, waste }: { solutions: number; waste: string }) =>
        `Staff make ${solutions} different solutions. With the same numbers for every team it would be one per class, and ${waste} L of waste.`,
    },
    otherNumbers: 'Try other numbers',
    remarks: 'Good to know',
    stale: 'You have changed the plan since. Look at the numbers again before you build.',
    build: 'Build the table',
    buildAgain: 'Build the table again',
    needLook: (number: number, first: string) =>
      `Please check ${count(number, 'field', 'fields')}. The first is ${first}.`,
    noClasses: 'Add a class first.',
    classNameMissing: 'Give the class a name, such as Second period.',
    classNameTwice: (name: string) => `Two classes are called “${name}”. Rename one of them.`,
    teamsMissing: 'Type at least one team name.',
    teamsTooMany: (most: number, received: number) =>
      `${received} teams are too many for one class; ${most} is the most. Make it two classes.`,
    teamTwice: (name: string) => `“${name}” is there twice. Rename one of them.`,
    countRange: (least: number, most: number) => `Type a whole number from ${least} to ${most}.`,
    sizesMissing: 'Type at least one size, such as 250.',
    seedWhole: (received: string) => `“${received}” is not a whole number. Type one, such as 7.`,
  },

  build: {
    title: 'Building the table',
    first: 'Writing the plan …',
    progress: 'Progress of the build',
    now: (label: string, percent: number) => `${label} · ${percent} percent`,
    tally: (classes: number, teams: number) =>
      `Done: ${count(classes, 'class', 'classes')}, ${count(teams, 'team', 'teams')}.`,
    may: 'You can use other views meanwhile. If you close the sidebar, what is built stays, and you can continue later.',
    leave: 'Pause',
    leaving: 'Pausing after this sheet …',
    stuck: 'The build is not getting any further. Close other tabs with this file, then continue.',
    failedTitle: 'The build stopped',
    kept: 'What is built is kept. Building continues where it stopped.',
    leftTitle: 'Build paused',
    doneTitle: 'The table is built',
    done: 'Students can type in their rows now. Every entry is checked at once.',
    doneSample:
      'Everybody in this class is invented. Some rows are right, some wrong and some blank, so that you can see each answer.',
    toPrepare: 'Prepare the day',
    toClass: 'See the class now',
    toPlan: 'Back to the plan',
  },

  classNow: {
    title: 'The class now',
    clock: (clock: string) => `${clock} · for your eyes only, not in the shared file`,
    none: 'There is no class yet. Plan one and build it; then you can see here how the teams are doing.',
    toPlan: 'Go to the plan',
    pick: 'Class',
    reading: 'Reading the class …',
    talkFirst: 'Talk to first',
    talkTo: (team: string) => `Talk first to ${team}`,
    talkThen: (team: string) => `Then ${team}`,
    talkReady: (team: string) => `${team} has finished`,
    nobody: 'No team stands out just now. A good moment to walk round.',
    teams: 'Teams',
    noTeams: 'There are no teams in this class’s sheet. Check the Plan sheet.',
    ofSteps: (done: number, steps: number) => `${done} of ${steps}`,
    ofStepsSpoken: (done: number, steps: number) => `${done} of ${steps} steps on target`,
    absent: 'not here today',
    numbersChanged: 'numbers changed',
    ready: 'ready for more',
    entered: (entry: string) => `Entered: ${entry}`,
    tries: (tries: number) => (tries === 0 ? '' : count(tries, 'attempt', 'attempts')),
    helpTaken: (level: number) => `help level ${level}`,
    isFormula: 'This entry is a formula. Ask how they got to it.',
    goToRows: (team: string) => `Go to ${team}’s rows`,
    went: (team: string) => `The sheet now shows ${team}’s rows.`,
    spread: {
      title: 'Percent error, team by team',
      none: 'No team has found its percent error yet.',
      mark: (percent: number) => `${percent} %`,
      words: (errors: readonly number[]) => {
        const [least = 0] = errors;
        const most = errors[errors.length - 1] ?? least;
        const middle =
          ((errors[Math.floor((errors.length - 1) / 2)] ?? 0) + (errors[Math.floor(errors.length / 2)] ?? 0)) / 2;
        const shown = (percent: number) => `${Number(percent.toPrecision(2))} %`;
        return errors.length === 1
          ? `One team so far: ${shown(least)}.`
          : `${errors.length} teams so far: from ${shown(least)} to ${shown(most)}, median ${shown(middle)}.`;
      },
    },
    practice: 'Practice again',
    exit: {
      title: 'Exit question',
      counts: ({ answered, seats, right }: { answered: number; seats: number; right: number }) =>
        answered === 0 ? `No answer yet in ${count(seats, 'row', 'rows')}.` : `${right} of ${answered} right so far.`,
      open: (rows: number) => `${count(rows, 'row is', 'rows are')} still empty.`,
      common: ({ fits, count: answers }: { fits: string; count: number }) =>
        `Most common: ${count(answers, 'answer matches', 'answers match')} ${fits}.`,
      formulas: (rows: number) =>
        `${count(rows, 'answer is a formula and is', 'answers are formulas and are')} not counted.`,
      kept: 'The students see “kept” beside their answers.',
      seen: 'The students see their checks.',
      seenByLesson: 'The students see their checks: the Plan shows them to every class.',
      show: (className: string) => `Show ${className} the checks`,
      keep: (className: string) => `Keep the checks from ${className} again`,
      changed: (isShown: boolean) =>
        isShown ? 'The checks will appear in a few seconds.' : 'In a few seconds the answers are kept again.',
    },
    closedNow: 'Closed at the bell: rows that are still open say “next time”.',
    close: 'Close at the bell',
    closeAbout:
      'Rows that are still open say “next time”, and the Record notes where teams go on. Everything typed stays, and teams can go on typing.',
    open: 'Open the rows again',
    closing: 'Writing …',
    closed: (noted: boolean) =>
      noted
        ? 'Closed. What is open is noted in the Record, under “next time”.'
        : 'Closed. Nothing was typed today, so the Record stays as it is.',
    opened: 'Open again: the rows ask as before.',
    say: 'Tell everyone:',
    lookAgain: 'Update now',
    checkAgain: 'Restart stuck checks',
    checkAgainAbout: 'Only checks that failed are restarted. Nobody’s entry changes.',
    notYetKnown: (rows: number) => `The spreadsheet is still checking ${count(rows, 'row', 'rows')}.`,
    renewed: (number: number) =>
      number === 0
        ? 'No check is stuck.'
        : `${count(number, 'check', 'checks')} restarted. Give the spreadsheet a few seconds.`,
    waiting: (number: number) =>
      `${count(number, 'check is', 'checks are')} still being worked out. If that lasts, press again in a minute.`,
    quietFailure: (clock: string) => `Last updated at ${clock}. The next try comes by itself.`,
    every: 'Updates every 20 s.',
  },

  checksHere: {
    label: 'Checks in this file',
    worked: (clock: string) => `This sidebar works out the checks: keep it open. Last at ${clock}.`,
    inTheWay: (cells: readonly string[]) =>
      `Something typed stands where a check belongs: ${cells.join(', ')}. See Class now.`,
    failed: ({ last, problem }: { readonly last: string; readonly problem: string }) =>
      `The checks are not up to date${last === '' ? '' : `; last at ${last}`}. ${problem} The next try comes by itself.`,
  },

  due: {
    label: 'Still to do today',
    missing: (classes: readonly string[]) => `No record yet today: ${classes.join(', ')}.`,
    write: 'Write it now',
  },

  selfCheck: selfCheckTexts,

  copy: {
    copied: 'Copied. Paste it where you need it.',
    selected: 'We could not copy it for you. The text is selected: press Ctrl+C, or press and hold it and choose Copy.',
  },

  record: {
    title: 'Record of the day',
    about: 'Drafted from today’s entries. Change what you like.',
    kept: 'The Record sheet holds counts and plain words, never names of students or teams: everyone with the file can read it.',
    reading: 'Reading today’s entries …',
    none: 'No class has entries today. You can still write about one.',
    others: 'No entries today',
    writeFor: (className: string) => `Write about ${className}`,
    labels: {
      present: 'Present',
      finished: 'Teams finished',
      wentWell: 'What went well',
      hard: 'What was hard',
      poll: 'Poll',
      next: 'Next time',
      notes: 'In your own words',
    },
    inSheet: 'Already in the Record sheet. Saving changes this row only.',
    now: (words: string) => `New count: ${words}`,
    takeNow: (label: string) => `Use it for “${label}”`,
    save: 'Save to Record',
    saving: 'Writing to the Record sheet …',
    saved: (rows: number) => `Saved: ${count(rows, 'row', 'rows')} in the Record sheet.`,
    textTitle: 'Text to copy',
    text: 'Text of the day',
    withNames: 'Include team names',
    withNamesHint: 'Only in this text, never in the sheet.',
    copy: 'Copy the text',
    again: 'Start again from the fields above',
    byHand: 'You edited this text, so it no longer follows the fields above.',
  },

  teams: {
    title: 'Teams today',
    reading: 'Reading the Plan …',
    /** Read out behind the name of a team. */
    absent: ' is absent today',
    absentAbout: 'Tick each team that is absent today. Ticks are for this day only.',
    marked: (team: string, absent: boolean) => (absent ? `${team} is marked absent.` : `${team} is here.`),
    people: {
      summary: (people: number) => (people === 0 ? 'People' : `People: ${people}`),
      of: (team: string) => ` in ${team}`,
      names: (team: string) => `Names in ${team}, one per line`,
      namesHint:
        'Optional; visible to everyone with the file. First names or initials are enough. They share out the four roles.',
      keep: (team: string) => `Save names in ${team}`,
      absent: (name: string) => `${name} is absent today`,
      saving: 'Saving the names …',
      saved: (team: string) => `Saved. The people in ${team} can see their roles in their own rows.`,
    },
    passOn: (className: string) => `Rotate roles in ${className}`,
    passOnAbout:
      'These roles are from another day. Rotating gives each role to the next person and marks everybody as here.',
    passed: (teams: number) => `Roles rotated in ${count(teams, 'team', 'teams')}.`,
    late: 'Add a late team',
    lateAbout: 'It gets its own numbers and its own rows below the others. Nobody’s entries change.',
    forClass: 'Class',
    teamName: 'Team name',
    addTeam: 'Add the team',
    practice: {
      title: 'Practice again',
      about:
        'For a student who was absent, wants another go or has finished early: the same lesson with numbers that no team of the class has, in a block below the others. It is in no count and not in the Record.',
      there: (names: readonly string[]) => `There already: ${names.join(', ')}.`,
      button: 'Add a practice block',
    },
    ownHelp: {
      summary: ({ level, hasTask }: { level: string; hasTask: boolean }) =>
        level === '' && !hasTask
          ? 'Help and task'
          : `Help and task: ${listed([...(level === '' ? [] : [`level ${level}`]), ...(hasTask ? ['own task'] : [])])}`,
      /** Read out behind it. */
      of: (team: string) => ` for ${team}`,
      about: (team: string) =>
        `Only for ${team}. It stands in ${team}’s line of the Plan, which everyone with the file can read; the rows do not show the level.`,
      level: (team: string) => `Highest help level for ${team}`,
      asLesson: (level: string) => `as in the lesson (${level})`,
      levelHint: 'Never more than the lesson allows.',
      task: (team: string) => `A task for ${team}, once all its rows are right`,
      suggestion: (words: string) => `Use: ${words}`,
      keep: (team: string) => `Save the task of ${team}`,
      saving: 'Writing to the Plan …',
      savedLevel: (team: string, level: string) =>
        level === '' ? `${team} has the help of the lesson.` : `Hints for ${team} go up to level ${level}.`,
      savedTask: (team: string, hasTask: boolean) =>
        hasTask
          ? `${team} sees the task below its last row once all rows are right.`
          : `${team} has no task of its own.`,
    },
    newClass: 'Add a class',
    newClassAbout: 'It gets its own sheet from the same plan. The other classes stay as they are.',
    addClass: 'Add the class',
    back: 'Back to the teams',
    otherwise: 'If something changes',
    otherwiseText: [
      'A team finishes early: “Class now” says so and has a question for it. It can also explain one row to a team that is stuck, or have a task of its own under “Help and task”.',
      'A team is absent: tick it above. Next time it continues in its own rows; its numbers wait.',
      'Somebody is alone: let them join another team and write in that team’s rows.',
      'Roles in a team: one calculates, one writes, one runs the bench, one records. Type the names above, or let the team fill in its cell “Who”.',
    ],
  },

  share: {
    title: 'Share with colleagues',
    about: 'A file keeps its history. So: copy it, empty the copy, copy that. Give out the last one.',
    reading: 'Reading this file …',
    copyTitle: '1. Make a copy',
    copyText: [
      'In the spreadsheet’s menu, open File and choose to make a copy. A script cannot do that for you.',
      'Do not tick the boxes for comments or for sharing with the same people.',
    ],
    openTitle: '2. Open the copy',
    openText: ['It opens in its own tab. Open the sidebar there: Labrow menu, “Open the sidebar”, then More, Share.'],
    emptyTitle: '3. Empty the copy',
    thisFile: 'The file you are in now:',
    goes: 'What goes: entries, help taken, names, attempts and times, polls, records, notes, earlier sheets, and what the script stored in the file.',
    stays: 'What stays: the plan with its numbers and settings. Classes and teams get numbers instead of names.',
    entries: (entries: number) =>
      `${count(entries, 'entry here is', 'entries here are')} from today or from an unknown time. Is this really the copy?`,
    left: (sheets: readonly string[]) => `Not changed: ${sheets.join(', ')}.`,
    typeName: 'Type the name of this file',
    otherSheets: (names: readonly string[]) => `Sheets of your own in this file: ${names.join(', ')}.`,
    removeOthers: 'Remove those sheets too',
    removeOthersHint: 'Otherwise they stay, with everything in them.',
    keepHints: 'Keep my own hints and links in Help',
    keepHintsHint: 'Read them first: colleagues get them as they are.',
    keepTeams: 'Keep the names of my classes and teams',
    keepTeamsHint: 'For a new term of your own: classes and teams stay, the people in them and all else go.',
    isCopy: 'This is the copy, not the file that my classes work in',
    isCopyHint: 'You cannot undo this.',
    notTicked: 'First tick that this is the copy.',
    empty: 'Empty this copy',
    emptied: 'The copy is empty. One step is left: copy it once more.',
    toGive: 'Go to step 4',
    back: 'Back to sharing',
    giveTitle: '4. Copy once more, and give that one out',
    giveText: [
      'The emptied file still has its history, and everything can be read there. Copy it the same way: the new file starts without a history.',
      'Give the new file a plain name, let others view it, and send the link. Delete the file in between.',
    ],
    tellTitle: 'What to tell colleagues',
    tell: 'Text for colleagues',
    tellText: [
      'This file is a lesson on solutions with a self-checking table for teams. Open it and make your own copy from the File menu. There is nothing to install: plan, checks and script come with the copy.',
      'In your copy, open the Labrow menu and choose “Open the sidebar”. The first time, you are asked to allow the script. Students are not asked; they only type in their rows.',
      'Plan your classes, build, and let your students edit your copy. It is practice, not a test: the checks answer whoever types.',
      'Read the safety data sheets and follow local rules before anyone weighs or pours.',
    ],
    copy: 'Copy this text',
  },

  /** Sign and word for the state of a row; the signs are the same as in the sheet. */
  states: {
    'on target': { sign: '✓', word: 'on target', about: 'The value is right, honest rounding included.' },
    close: { sign: '≈', word: 'close', about: 'Right except for rounding or the number of figures.' },
    follows: {
      sign: '↳',
      word: 'follows',
      about: 'Right, given an earlier row that needs another look. Bench work waits for that row.',
    },
    'not yet': { sign: '↻', word: 'not yet', about: 'The value is not right yet. The row says what to look at.' },
    unreadable: {
      sign: '?',
      word: 'unreadable',
      about: 'This cannot be read as a number. Check the spelling or the unit.',
    },
    blank: { sign: '·', word: 'blank', about: 'Nothing typed so far.' },
    kept: { sign: '▪', word: 'kept', about: 'An answer to an exit question, until you show the class its checks.' },
    'next time': {
      sign: '→',
      word: 'next time',
      about: 'Still open when the class was closed at the bell. The row asks again once you open the class.',
    },
    told: {
      sign: '“',
      word: 'for you to read',
      about: 'The team’s own words, for you to talk about. Never scored.',
    },
    unknown: {
      sign: '…',
      word: 'not known yet',
      about: 'The spreadsheet is still checking. It is never counted as wrong.',
    },
  },

  poll: {
    title: 'Poll',
    reading: 'Reading the answers …',
    again: 'Update now',
    honest:
      'The poll asks for no names, but the file’s edit history can show which account typed what. Tell your class, as the sheet does.',
    noSheet: 'This file has no Poll sheet yet. Build the table again to get one; entries stay.',
    toPlan: 'Go to the plan',
    toSheet: 'Go to the Poll sheet',
    went: 'The Poll sheet is now in front.',
    nobody: (sheet: string) => `No answers yet. Students answer in the sheet ${sheet}, one row per answer.`,
    pickClass: 'Class',
    allClasses: 'All classes',
    pickDay: 'Day',
    day: (day: string, isToday: boolean) => (day === '' ? 'no date' : isToday ? `${day}, today` : day),
    noneHere: 'This class has not answered yet.',
    answers: ({ answers, fromStudents, fromTeams }: PollCounts) =>
      `${count(answers, 'answer', 'answers')}: ${fromStudents} by single students, ${fromTeams} by teams${
        answers > fromStudents + fromTeams ? `, ${answers - fromStudents - fromTeams} not said` : ''
      }.`,
    bars: (statement: string, counts: readonly string[]) => `${statement} ${counts.join(', ')}.`,
    agree: ({ agree, marked }: { readonly agree: number; readonly marked: number }) =>
      marked === 0 ? 'No answers.' : `${agree} of ${marked} agree.`,
    change: {
      more: '▲ More than last time.',
      fewer: '▽ Fewer than last time.',
      alike: '≈ About the same as last time.',
      unknown: 'Nothing to compare with.',
    },
    lastTime: (day: string, { agree, marked }: { readonly agree: number; readonly marked: number }) =>
      `On ${day}: ${agree} of ${marked}.`,
    otherWords: (number: number) => `${count(number, 'answer', 'answers')} not on the list, not counted.`,
    openLines: 'In their own words',
    noLines: 'Nobody wrote anything.',
  },

  particles: {
    title: 'Particles',
    reading: 'Reading the numbers from the Plan …',
    pick: 'Whose numbers',
    pickHint: 'A team’s picture gives its answers away: project it once the team has found them.',
    typical: 'The plan’s starting numbers',
    numbersOf: (team: string, className: string) => `${team}, ${className}`,
    pickStep: 'Which dilution',
    firstStep: '1: from the stock into flask 1',
    laterStep: (step: number) => `${step}: from flask ${step - 1} into flask ${step}`,
    project: 'Open a page to project',
    noPicture: 'There is no picture for these numbers.',
    noActivity: 'We do not know the activity in the Plan. Choose one from the list and build again.',
    sampleTitle: 'Equal volumes, before and after',
    onlyTitle: 'A sample of the solution',
    kind: ({ symbol, charge, perUnit, shape }: KindWords, formula: string) =>
      charge === 0
        ? `${symbol}, ${shapeWords[shape]}: a whole molecule`
        : `${symbol}, ${shapeWords[shape]}: ${perUnit} from each ${formula}`,
    sampleSize: (cubic: string, edge: string) =>
      `Each box is about ${cubic} cubic nanometres: a cube with edges of about ${edge} nm.`,
    nearNumbers: (drawn: string, truly: string) =>
      `Drawn ${drawn} times as crowded before as after, so that you can count; really it is ${truly} times.`,
    note: (symbol: string, note: string) => `${symbol}: ${note}.`,
    flaskTitle: 'The whole portion, before and after',
    flaskAbout: 'Not equal volumes now: the same particles with more room.',
    trulyTitle: 'How many there really are',
    inFlask: (volume: string, counts: string) => `${volume} mL hold ${counts}.`,
    sameAsPortion: (inMole: string) =>
      `Exactly as many as in the portion of stock: water adds none and takes none away. One mole is ${inMole} particles.`,
    onlySample: (inMole: string) => `The picture can only show a sample. One mole is ${inMole} particles.`,
    questionsTitle: 'Questions to ask',
    questionsAbout: 'Let students answer first, then open the reasons. In the sheet each team has letters of its own.',
    reasons: 'Reasons',
    /** An option before its reason. */
    option: (words: string, isRight: boolean) => `${isRight ? '✓ ' : ''}${words}: `,
  },

  help: {
    title: 'Help',
    printGuide: (title: string) => `Open “${title}” to print`,
    checks: 'What the checks mean',
    hints: 'Hints',
    hintsText: [
      'Each row has a cell for help: 0 for none, 1 for the idea, 2 for the relation, 3 for the set-up with the team’s own numbers. No hint gives the answer.',
      'After a wrong value, the row guesses the reason from the number alone. Ask the team before you believe it.',
    ],
    hidden: 'What students can see',
    hiddenText: [
      'This is for practice, not for tests. The functions answer whoever types them, so a student can ask a cell for a mass or a molarity.',
      'The shared file holds no key: each check works out its value from the team’s own numbers. Anyone who can edit the file can read all its cells, hidden ones too.',
      'Your own sheets are hidden so that students find theirs, not to keep a secret. Spreadsheets let editors show hidden sheets from their own menu; whether yours stops a student without rights from doing so has not been tried. Assume that it does not.',
      'Anyone who can edit a shared file can read its script.',
      'Protected cells warn before a change. They prevent accidents, not intent.',
      'An entry that is a formula is marked for you. It may be a good idea: ask about it.',
      'The teacher’s part of this sidebar opens for those who may change the hidden sheet “Labrow teacher”. That makes it harder and not impossible: anyone who can edit the file can get round it. To let a colleague in, the owner adds them under Protected sheets and ranges.',
    ],
    otherwise: 'If something changes',
    otherwiseText: [
      'A team is absent: tick it under Teams. For that day it is left out of “Talk to first”, and Progress says “not here today”. Its rows and numbers wait, and the mark ends by itself.',
      'One person is absent: tick the person under Teams, and the others share the role. Nobody has to do a whole job alone.',
      'A team finishes early: “Class now” says so and has a question for it. It can also explain one row to a team that is stuck; both learn from that. A team that is often early gets a task of its own under Teams, “Help and task”.',
      'A student missed the lesson: “Practice again” under Teams adds a block with the same lesson and other numbers. It is in no count.',
      'You are away yourself: print “For a cover teacher” under Prepare. It has no answers.',
      'A team joins late: add it under Teams. It gets its own rows and numbers, and nobody else’s rows move. It starts from the beginning and need not catch up.',
    ],
    poll: 'Poll',
    pollText: [
      'A few minutes at the end: four short statements and one open line, answered by a student or a team. It asks how the lesson went, not how good anybody is.',
      'Read it with the class next time and say what you will do about it. Each statement shows what changed since last time.',
    ],
    particles: 'Particles',
    particlesText: [
      'Equal volumes before and after dilution, drawn from a team’s own numbers: fewer particles in the same space, and none of them lost.',
      'Ask first what students expect, then show the picture. It can only be a sample; the true number is beside it.',
    ],
    tries: 'Attempts',
    triesText: [
      'There were at least so many attempts. When several people type at once, one may go uncounted. The count never goes down.',
    ],
    accounts: 'Several accounts',
    accountsText: [
      'If this panel stays empty or says that it was not let in, you may be signed in to several accounts at once. The spreadsheet then mixes them up, and we cannot fix that from here.',
      'Open the file in a private window, or in a separate browser profile, with only the account that owns the file.',
    ],
    share: 'Giving it to others',
    shareText: [
      'To your class: let students edit the file, and send the link. They need no sidebar and install nothing.',
      'To colleagues: before students type anything, make a copy and let others view that copy. Each colleague makes their own copy; plan, checks and script come with it.',
      'A file keeps its history. Do not pass on a file that students worked in, even after you cleared its cells.',
    ],
    safety: 'Safety',
    safetyText: [
      'Checks look at numbers, not at the bench. Read the safety data sheet of every substance, follow local rules and your school’s risk assessment, and leave concentrated solutions to trained staff, as those rules ask.',
      'Add acid to water, never water to acid. A substance that we have no data for is unlisted, not harmless.',
    ],
  },
} as const;
