// Every text of the sidebar that people read, in the order of the page. A translation replaces this file.
import type { NamePair } from '../desk/building/questions.ts';
import type { TwoReadings } from './arithmetic/pointNumbers.ts';

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
  views: {
    label: 'Views',
    plan: 'Plan',
    prepare: 'Prepare',
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
        'For vessels other than the supplier’s own. Cut them out and tape them on, or print on sticky paper. Check each against the safety data sheet before you use it. Statements beside codes are the wording of CLP Annex III; where they come from stands under Prepare.',
      which: 'Which labels',
      all: 'All of them',
      date: 'Date on the labels',
      noSignal: 'No signal word known',
      made: (date: string) => `Made ${date}`,
      initials: 'Initials',
    },
    key: {
      title: 'The key',
      warning: 'For the teacher only. It was worked out just now and stands in no sheet: keep the paper to yourself.',
    },
    paper: {
      title: 'A table on paper',
      about: 'For a team without a device. It has the team’s own numbers and no answers.',
      which: 'Which team',
      all: 'Every team, one sheet each',
      ruleTitle: 'Check yourself.',
      rule: 'Write your result with one digit before the point, times a power of ten: a.bcde × 10ⁿ. Work out a + 3·b + 7·c + 9·d + 1·e + n. Its last figure should be the check figure; below zero, add ten first. Right figures can still hide a slip now and then, so talk about how you got there.',
      ruleExample: 'An example that is nobody’s result: 0.0254 is 2.54 × 10⁻²; 2 + 3·5 + 7·4 − 2 = 43, so 3.',
      headings: ['What to find', 'Your result', 'Unit', 'Check figure'],
      write: 'room to write',
      figures: (figures: readonly string[]) => figures.join(' or '),
      otherwise: {
        figure: 'Show it to your teacher.',
        calculated: 'From your own reading: show it to your teacher.',
        measured: 'Show your teacher before you go on.',
        ordered: 'Compare with another team: why this order?',
        chosen: 'Give your reason to another team.',
        told: 'Your own words.',
        ticked: 'Tick when all of you have read them.',
      } as Readonly<Record<string, string>> & { readonly figure: string; readonly calculated: string },
      doneCount: (steps: number) => `Steps done: ____ of ${steps}. This is a count and not a mark.`,
    },
    period: {
      title: 'The period in minutes',
      total: 'Minutes in all',
      unit: 'min',
      hint: 'Shared out over the steps in proportion. The usual minutes are common practice; change the total to yours.',
      outside: ({
        least,
        most,
        received,
      }: {
        readonly least: number;
        readonly most: number;
        readonly received: string;
      }) => `Expected whole minutes from ${least} to ${most}, received “${received}”. Type a total in that range.`,
      one: 'One period',
      numbered: (number: number) => `Period ${number}`,
      headings: ['From – to', 'What', 'Minutes'],
      span: (from: number, to: number) => `${from} – ${to}`,
    },
    done: {
      title: 'Steps done by team',
      about: 'How many steps each team has on target. This is a count and not a mark.',
      none: 'No class has been built yet. Plan one and build it first.',
      caption: (className: string, clock: string) => `${className}, at ${clock}`,
      headings: ['Team', 'Steps done'],
    },
  },

  prepare: {
    title: 'Prepare the day',
    about: 'For all classes together, from the Plan as it is now. For your eyes.',
    reading: 'Working out what the day takes …',
    needed: (amount: string) => `needed ${amount}`,
    spare: (amount: string) => `with spare ${amount}`,
    sections: {
      day: 'The day',
      solids: 'To weigh out',
      stocks: 'Stocks that teams make',
      make: 'Make beforehand',
      lay: 'Lay out',
      balance: 'Balance',
      water: 'Water',
      cautions: 'Cautions',
      disposal: 'Afterwards',
    } as Readonly<Record<string, string>>,
    printTitle: 'Open to print',
    print: {
      preparation: 'This list',
      labels: 'Labels',
      paper: 'A table on paper',
      period: 'The period in minutes',
      done: 'Steps done by team',
      key: 'The key',
    },
    sheetTitle: 'The Prepare sheet',
    sheetAbout:
      'The same list, without what students have to find. It follows the Plan while this view is open, and says so itself when it is out of date.',
    sheetWrite: 'Write the Prepare sheet again',
    writing: 'Writing the Prepare sheet …',
    written: 'The Prepare sheet is up to the Plan.',
    broughtUp: 'The Plan has changed: this list and the Prepare sheet now go by it.',
    notBroughtUp: (problem: string) => `The Plan has changed, and the Prepare sheet is not yet up to it. ${problem}`,
    every: 'Looks at the Plan again by itself every 20 seconds while it is open.',
    keyTitle: 'The key',
    keyAbout: 'Worked out for you alone; it is in no sheet. Look round before you open it.',
    keyShow: 'Show the key here',
    keyHide: 'Hide the key',
    keyReading: 'Working out the key …',
    keyTeam: 'Team',
    keyHeadings: ['Step', 'Answer', 'To know'],
    keyToSheet: 'Write the key to a sheet …',
    keyWarning:
      'Everyone who can edit this file can read every sheet of it, hidden ones too, and its history keeps what was there. Write the key to a new sheet all the same?',
    keyYes: 'Yes, write it',
    keyNo: 'No, keep it out of the file',
    keyWriting: 'Writing the key …',
    keyWritten: (name: string) => `The key stands in the sheet “${name}”. Delete it before you share the file.`,
  },

  opening: 'Reading the lesson from the sheet …',
  stillWaiting: 'Still waiting for the sheet. You can leave this open; it goes on by itself.',
  tryAgain: 'Try again',

  calls: {
    noHost: 'This page works inside the spreadsheet. Open it from the Labrow menu there.',
    timedOut: (seconds: number) =>
      `No answer from the sheet for ${seconds} seconds. Nothing you typed here is lost. Look at your connection, then try again.`,
    failed: 'The sheet could not do that just now. Nothing you typed here is lost. Try again in a moment.',
    severalAccounts:
      'The sheet did not let us in. This often happens when you are signed in to several accounts at once: see “Several accounts” under Help.',
    tooBusy: 'The sheet is busy with too many runs at once. Wait half a minute, then try again.',
    tooLong: 'The sheet stopped because the work took too long. What was done so far is kept. Try again to go on.',
    oddAnswer:
      'The sheet gave an answer that this page does not know. Close the sidebar and open it again from the menu.',
  },

  field: {
    unit: (unit: string) => `in ${unit}`,
    meaning: (text: string, unit: string) => `= ${text}${unit === '' ? '' : ` ${unit}`}`,
    tooLong: (longest: number) => `Expected at most ${longest} characters. Shorten it.`,
    twoWays: ({ typed, readings }: TwoReadings) =>
      `“${typed}” could be ${readings[0]} or ${readings[1]}. Type it one of those two ways.`,
    notAboveZero: (typed: string) => `Expected a number above 0, received “${typed}”. Type the amount you want.`,
    notFinite: (typed: string) => `“${typed}” has no finite result. Look for a division by 0 or one digit too many.`,
    unread: (typed: string, unit: string) =>
      `Expected ${units(unit)}, ${such(unit)}, received “${typed}”. Look at the signs between the numbers.`,
    millions: ({ part, meant }: { readonly part: string; readonly meant: string }) =>
      `“${part}” with a capital M stands for a million ${part.slice(1)}. Did you mean ${meant}? Type it that way.`,
    unknownUnit: (part: string, unit: string) => `“${part}” is no unit we know. Type ${units(unit)}, ${such(unit)}.`,
    unlikeKinds: (typed: string, unit: string) =>
      `“${typed}” adds things of different kinds. Give each part its unit, ${such(unit)}.`,
    wrongKind: ({ typed, unit, kind }: { readonly typed: string; readonly unit: string; readonly kind: string }) =>
      `Expected ${units(unit)}, ${such(unit)}, received ${kind}, “${typed}”. Change the unit or leave it out.`,
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
    notChosen: (label: string) => `Pick ${label} here.`,
  },

  plan: {
    title: 'Plan and build',
    titleAgain: 'Plan and build again',
    sample: {
      heading: 'New here? Try a sample class first',
      about:
        'An invented school with invented teams, ready to click through. Nobody in it is real. You can delete it later.',
      button: 'Build a sample class',
    },
    again: 'Building again keeps every cell that people typed in. Teams keep their rows.',
    halfBuilt: (percent: number) => `The table is ${percent} percent built. What is there is kept.`,
    goOn: 'Go on building',
    draftKept: 'These are your changes from before; they are not in the sheet yet.',
    fromSheet: 'Use what is in the Plan sheet',
    sheetChanged: 'The Plan sheet changed since this page read it. Which of the two counts?',
    fromHere: 'Build with what is here',
    names: {
      ask: 'People have typed there, so this has to be clear first:',
      pair: ({ kind, from, to, className }: NamePair) =>
        kind === 'class'
          ? `“${from}” is gone from the plan and “${to}” is new. Is it the same class?`
          : `“${from}” is gone from ${className} and “${to}” is new. Is it the same team?`,
      same: 'Yes, the same with a new name',
      other: 'No, somebody else',
    },
    typed: {
      ask: (cells: number) =>
        `This plan has no place for ${count(cells, 'cell', 'cells')} that people typed. They stay in a sheet that is kept behind the others, but not in the table:`,
      where: ({ className, team, cells }: { className: string; team: string; cells: number }) =>
        `${className}, ${team}: ${count(cells, 'cell', 'cells')}`,
      yes: (cells: number) => `Yes, set ${count(cells, 'cell', 'cells')} aside`,
      no: 'No, change the plan first',
    },
    comparing: 'Looking at the Plan sheet …',
    sheetProblems: 'In the sheets, look at',
    lesson: 'The lesson',
    activity: 'Activity',
    solute: 'Substance to dissolve',
    pickSolute: 'Pick a substance',
    pickIon: 'Pick an ion',
    noIon: 'This substance gives no ions that can be counted here. The row about one ion is left out when you build.',
    otherFormula: 'Another formula …',
    formula: 'Formula',
    formulaHint: 'As you write it, such as Na2SO4 or CuSO4·5H2O.',
    molarMass: (gramsPerMole: string) => `= ${gramsPerMole} g/mol`,
    asInBottle: 'As it stands in the bottle. Each team reads the cautions for what it handles.',
    plannerCaution: 'Why we do not propose it:',
    unlisted: 'Not in our list, so we can say nothing about its hazards. That does not mean it is harmless.',
    defer:
      'Before anyone weighs or pours: read the safety data sheet and follow local rules and your school’s own assessment.',
    numbers: 'Numbers to start from',
    numbersHint: 'You can type sums with units, such as 3 * 200 mL or 1/4 L.',
    optional: 'can stay empty',
    ownNumbers: 'Give each team its own numbers',
    ownNumbersHint: 'Near the ones above, of equal difficulty, and possible with what is on the shelf.',
    classes: 'Classes and teams',
    classNumber: (number: number) => `Class ${number}`,
    className: 'Name of the class',
    teamCount: 'Number of teams',
    teamNames: 'Team names, one on each line',
    addClass: 'Add a class',
    removeClass: (name: string) => `Remove ${name}`,
    removed: (name: string) => `${name} is out of the plan. A sheet already built for it stays in the file.`,
    putBack: 'Put it back',
    shelf: 'On the shelf',
    shelfHint: 'Teams’ own numbers are chosen to fit these.',
    notOnShelf: ({ size, sizes }: { readonly size: string; readonly sizes: string }) =>
      `No flask of ${size} mL is on the shelf (${sizes}). Take one of these, or add it under “On the shelf”.`,
    flasks: 'Volumetric flasks',
    pipettes: 'Pipettes',
    sizesHint: 'Sizes in mL, with commas or spaces between them.',
    sizesHintComma: 'Sizes in mL, with semicolons or spaces between them.',
    balanceReads: 'Balance reads to',
    balanceMax: 'Balance takes up to',
    glasswareClass: 'Glassware class',
    glasswareClasses: { A: 'A (the finer one)', B: 'B' },
    glasswareStandard: 'Tolerances by',
    checks: 'Checks and hints',
    figures: 'Significant figures asked for',
    weightDecimals: 'Decimals of atomic weights',
    chlorine: 'Chlorine on your table of atomic weights',
    decimalMark: 'Decimal mark',
    decimalMarks: { point: 'point (0.5)', comma: 'comma (0,5)' },
    judgeFigures: 'Judge the number of figures',
    judgeFiguresHint: 'A right value with the wrong number of figures then counts as close.',
    helpLevel: 'Highest help level',
    helpLevels: ['0 · none', '1 · the idea', '2 · the relation too', '3 · set up with their numbers'],
    allowance: 'Allowance for technique',
    allowanceHint: 'Share of a bench reading that may come from hands rather than glassware.',
    periods: 'Periods',
    dilutionFrom: 'Work the dilution from',
    dilutionFroms: { nominal: 'the molarity planned', real: 'the stock a team really made' },
    dilutionFromHint: 'For a stock that is made first. Build again after a change.',
    reagentMaker: 'Concentrated acids and bases are diluted by',
    reagentMakers: { staff: 'staff; students work it out and watch', students: 'students, with you beside them' },
    reagentMakerHint: 'The row of cautions tells each team.',
    reagentWarning:
      'Concentrated acids and bases burn skin and eyes within seconds. Change this only if your local rules, the safety data sheet and your school’s own assessment allow it for this class.',
    reagentConfirm: 'They allow it: students dilute',
    seed: 'Seed',
    seedHint: 'The same seed gives the teams the same numbers again. Any whole number.',
    preview: 'See the teams’ numbers',
    previewing: 'Working out the teams’ numbers …',
    previewTitle: 'The teams’ numbers',
    previewAbout: 'Nothing is written yet. They go into the Plan sheet when you build.',
    previewSame: 'The same for every team',
    materials: {
      heading: 'What all teams together take, make and throw away',
      solid: (formula: string, purity: string) => (purity === '' ? formula : `${formula}, ${purity} %`),
      bottle: (formula: string, percent: string) => `${formula}, ${percent} % bottle`,
      grams: (amount: string) => `${amount} g`,
      millilitres: (amount: string) => `${amount} mL`,
      litres: (amount: string) => `${amount} L`,
      made: 'Solutions made',
      used: 'of these used',
      waste: 'Waste in the end',
      mostly: ({ used, made }: { used: string; made: string }) =>
        `Most of what is made is thrown away: ${used} L of ${made} L is used.`,
      smallerFlasks: ({ flask, made, waste }: { flask: string; made: string; waste: string }) =>
        `With flasks of ${flask} mL it would be ${made} L made and ${waste} L of waste: type ${flask} for the flask.`,
      readyStock: 'A smaller flask on the shelf would make less, or “A dilution”, where all teams share one stock.',
      sameNumbers: ({ solutions, waste }: { solutions: number; waste: string }) =>
        `Staff make ${solutions} different solutions. If all teams had the same numbers, it would be one for each class, and ${waste} L of waste.`,
    },
    otherNumbers: 'Try other numbers',
    remarks: 'Good to know',
    stale: 'You changed the plan since. See the numbers again before you build.',
    build: 'Build the table',
    buildAgain: 'Build the table again',
    needLook: (number: number, first: string) =>
      `${count(number, 'field needs', 'fields need')} another look. The first is ${first}.`,
    noClasses: 'Add a class first.',
    classNameMissing: 'Give the class a name, such as Second period.',
    classNameTwice: (name: string) => `Two classes are called “${name}”. Give one of them another name.`,
    teamsMissing: 'Type at least one team name.',
    teamsTooMany: (most: number, received: number) =>
      `Expected at most ${most} teams, received ${received}. Make it two classes.`,
    teamTwice: (name: string) => `“${name}” stands there twice. Give one of the two another name.`,
    teamCountRange: (most: number) => `Type a whole number from 1 to ${most}.`,
    sizesMissing: 'Type at least one size, such as 250.',
    seedWhole: (received: string) =>
      `Expected a whole number such as 7, received “${received}”. Type one without a decimal mark.`,
    teamNamesToStart: [
      'Basalt',
      'Quartz',
      'Granite',
      'Slate',
      'Marble',
      'Pumice',
      'Gneiss',
      'Chert',
      'Flint',
      'Schist',
      'Gabbro',
      'Diorite',
    ],
    teamNumber: (number: number) => `Team ${number}`,
    firstClass: 'First class',
    nextClass: (number: number) => `Class ${number}`,
  },

  build: {
    title: 'Building the table',
    first: 'Writing the plan',
    progress: 'Progress of the build',
    now: (label: string, percent: number) => `${label} · ${percent} percent`,
    may: 'You can look at other views while it builds. If you close the sidebar, what is built stays, and you can go on later.',
    leave: 'Leave it for now',
    leaving: 'It stops after the sheet in hand …',
    stuck: 'The build does not move on. Close other tabs with this file, then go on building.',
    failedTitle: 'The build stopped',
    kept: 'What is built is kept. Going on starts where it stopped.',
    leftTitle: 'The build rests',
    doneTitle: 'The table is built',
    done: 'Teams can type in their rows now; every check answers beside the entry.',
    doneSample:
      'Everybody in this class is invented. Some rows are right, some wrong, some blank, so that you can see each answer.',
    toClass: 'See the class now',
    toPlan: 'Back to the plan',
  },

  classNow: {
    title: 'The class now',
    clock: (clock: string) => `${clock} · for your eyes, not in the shared file`,
    none: 'There is no class yet. Plan one and build it; then you see here how the teams get on.',
    toPlan: 'Go to the plan',
    pick: 'Class',
    reading: 'Looking at the class …',
    talkFirst: 'Talk to first',
    talkTo: (team: string) => `Talk first to ${team}`,
    talkThen: (team: string) => `Then ${team}`,
    talkReady: (team: string) => `${team} has finished`,
    nobody: 'Nobody stands out just now. A good moment to walk round.',
    teams: 'Teams',
    noTeams: 'No teams found in this class’s sheet. Look at the Plan sheet.',
    ofSteps: (done: number, steps: number) => `${done} of ${steps}`,
    ofStepsSpoken: (done: number, steps: number) => `${done} of ${steps} steps on target`,
    absent: 'not here today',
    ready: 'ready for more',
    entered: (entry: string) => `Entered: ${entry}`,
    tries: (tries: number) => (tries === 0 ? '' : count(tries, 'try', 'tries')),
    helpTaken: (level: number) => `help ${level}`,
    isFormula: 'This entry is a formula. Ask how they came to it.',
    goToRows: (team: string) => `Go to the rows of ${team}`,
    went: (team: string) => `The sheet shows the rows of ${team}.`,
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
          : `${errors.length} teams so far: from ${shown(least)} to ${shown(most)}, half of them up to ${shown(middle)}.`;
      },
    },
    say: 'Say to everyone:',
    lookAgain: 'Look again',
    checkAgain: 'Check again',
    checkAgainAbout: 'Enters again only the checks that did not finish. Nobody’s entry is touched.',
    notYetKnown: (rows: number) =>
      `${count(rows, 'row is', 'rows are')} not yet known: the sheet is still working on ${rows === 1 ? 'it' : 'them'}.`,
    renewed: (number: number) =>
      number === 0
        ? 'All checks had finished; there was nothing to renew.'
        : `${count(number, 'check', 'checks')} entered again. Give the sheet a few seconds.`,
    quietFailure: (clock: string) => `No new look since ${clock}. The next one follows by itself.`,
    every: 'Looks again by itself every 20 seconds while it is open.',
  },

  due: {
    label: 'Still to do today',
    missing: (classes: readonly string[]) => `Today’s record is not written yet: ${classes.join(', ')}.`,
    write: 'Write it now',
  },

  copy: {
    copied: 'Copied. Paste it where you need it.',
    selected: 'The host did not let us copy. The text is marked: press Ctrl and C, or hold it and choose copy.',
  },

  record: {
    title: 'Record of the day',
    about: 'Written from what happened; change whatever you like.',
    kept: 'The Record sheet keeps counts and plain words, never names of pupils or teams: everyone with the file can read it.',
    reading: 'Looking at what happened today …',
    none: 'No class has entries today. Choose one below if you want to write about it all the same.',
    others: 'No entries today',
    writeFor: (className: string) => `Write about ${className}`,
    labels: {
      present: 'Present',
      finished: 'Teams finished',
      wentWell: 'What went well',
      hard: 'What was hard',
      poll: 'Poll',
      next: 'What is next',
      notes: 'In your own words',
    },
    inSheet: 'This row is in the Record sheet; saving changes this row only.',
    now: (words: string) => `From the class’s sheet now: ${words}`,
    takeNow: (label: string) => `Use this for “${label}”`,
    save: 'Keep it in the Record sheet',
    saving: 'Writing to the Record sheet …',
    saved: (rows: number) => `Kept: ${count(rows, 'row', 'rows')} in the Record sheet.`,
    textTitle: 'The text to copy',
    text: 'Text of the day',
    withNames: 'With names of teams',
    withNamesHint: 'They go into this text only and not into the sheet.',
    copy: 'Copy the text',
    again: 'Write it again from the fields',
    byHand: 'You changed this text by hand, so it no longer follows the fields above.',
  },

  teams: {
    title: 'Classes and teams',
    reading: 'Looking at the Plan …',
    today: 'Who is here',
    absent: (team: string) => `${team} is absent today`,
    absentAbout: 'An absent team is left out of “Talk to first”. The mark is for today only.',
    marked: (team: string, absent: boolean) => (absent ? `${team} is marked as absent.` : `${team} is here.`),
    people: {
      summary: (team: string, people: number) => (people === 0 ? `People in ${team}` : `People in ${team}: ${people}`),
      names: (team: string) => `Names in ${team}, one on each line`,
      namesHint:
        'You need none; first names or initials are enough. Everybody with the file can read them in the team’s cell “Who”. Its four roles are shared out, and no checks look at them.',
      keep: (team: string) => `Keep the names in ${team}`,
      absent: (name: string) => `${name} is not here today`,
      saving: 'Writing the team’s cell …',
      saved: (team: string) => `Kept. The people in ${team} see their roles in their own rows.`,
    },
    passOn: (className: string) => `Pass the roles on in ${className}`,
    passOnAbout:
      'These roles are of another day. Passed on, the next person calculates, and everybody counts as here again.',
    passed: (teams: number) => `Roles passed on in ${count(teams, 'team', 'teams')}.`,
    late: 'A team came late',
    lateAbout: 'It gets its own numbers and a block below the others. Nobody’s entries are touched.',
    forClass: 'Class',
    teamName: 'Name of the team',
    addTeam: 'Add the team',
    newClass: 'Add a class',
    newClassAbout: 'It gets a sheet of its own from the same plan. The other classes are left as they are.',
    addClass: 'Add the class',
    back: 'Back to classes and teams',
    otherwise: 'When things go otherwise',
    otherwiseText: [
      'A team finishes early: let it explain one row to a team that is stuck, or answer the questions about particles. “Class now” says who is ready for more.',
      'A team was absent: mark it above. Next time it works on in its own block; its numbers wait for it.',
      'Somebody is alone: let the person join another team and write in that team’s rows. The column “who” takes a role or a name.',
      'Roles for a team: one calculates, one writes, one runs the bench, one records. Say above who is in it, or let the team write names in its cell “Who”; the column below offers the roles too.',
    ],
  },

  share: {
    title: 'Share with colleagues',
    about: 'A file keeps its history, so it goes: copy, empty, copy again. The last copy is the one to give out.',
    reading: 'Looking at this file …',
    copyTitle: '1. Make a copy',
    copyText: [
      'In the spreadsheet’s own menu, open the first entry, File, and choose to make a copy. A script cannot do that for you.',
      'Leave it unticked where it offers to take comments along or to share with the same people.',
    ],
    openTitle: '2. Open the copy',
    openText: ['It opens in a tab of its own. Open this sidebar there and come back to this view.'],
    emptyTitle: '3. Empty the copy',
    thisFile: 'The file you are in now:',
    goes: 'What goes: entries, help taken, who, tries and times, polls, records, names of classes and teams, notes, earlier sheets that were kept, and what the script had noted in the file.',
    stays: 'What stays: the plan with its numbers and settings. Classes and teams are counted instead of named.',
    entries: (entries: number) =>
      `${count(entries, 'entry here is', 'entries here are')} of today or of a time nobody noted. Is this really the copy?`,
    left: (sheets: readonly string[]) => `Left in it as they were: ${sheets.join(', ')}.`,
    typeName: 'Type the name of this file',
    otherSheets: (names: readonly string[]) => `Sheets of your own in this file: ${names.join(', ')}.`,
    removeOthers: 'Remove those sheets too',
    removeOthersHint: 'Otherwise they stay as they are, with whatever stands in them.',
    keepHints: 'Keep my own wording and links in Help',
    keepHintsHint: 'Look through them first: they are handed on as they are.',
    isCopy: 'This is the copy, not the file that my classes work in',
    isCopyHint: 'Emptying cannot be taken back from here.',
    notTicked: 'Tick that this is the copy first.',
    empty: 'Empty this copy',
    emptied: 'The copy is empty and built anew. Now go on with step 4: copy it once more.',
    back: 'Back to sharing',
    giveTitle: '4. Copy once more, and give that one out',
    giveText: [
      'The emptied file still has its history, in which everything can be read. Make a copy of it the same way: the new file begins without one.',
      'Give it a plain name, share it so that others may view it, and send the link. Delete the file in between.',
    ],
    tellTitle: 'What to tell colleagues',
    tell: 'Text for colleagues',
    tellText: [
      'This file holds a lesson on solutions with a self-checking table for teams. Open it and make a copy of your own from the menu File; nothing has to be installed, the plan, the checks and the script come with the copy.',
      'In your copy, open the menu Labrow and its sidebar. The first time, the host asks you to allow the script; students are not asked, they only type in their rows.',
      'Plan your classes there, build, and share your copy with your students so that they may edit it. It is practice and not a test: the checks answer whoever types.',
      'Read the safety data sheets and follow local rules before anyone weighs or pours.',
    ],
    copy: 'Copy this text',
  },

  /** Sign and word for the state of a row; the signs are the same as in the sheet. */
  states: {
    'on target': { sign: '✓', word: 'on target', about: 'The value is right, honest rounding included.' },
    close: { sign: '≈', word: 'close', about: 'Right but for rounding or the number of figures.' },
    follows: {
      sign: '↳',
      word: 'follows',
      about: 'Right from an earlier row that itself needs another look. Bench work waits for that row.',
    },
    'not yet': { sign: '↻', word: 'not yet', about: 'The value is something else. The row says what to look at.' },
    unreadable: { sign: '?', word: 'unreadable', about: 'No number could be read. Check the spelling or the unit.' },
    blank: { sign: '·', word: 'blank', about: 'Nothing typed so far.' },
    told: {
      sign: '“',
      word: 'for you to read',
      about: 'The team’s own words. They are kept for a talk and never scored.',
    },
    unknown: {
      sign: '…',
      word: 'not yet known',
      about: 'The sheet is still working on it. It is never counted as wrong.',
    },
  },

  poll: {
    title: 'Poll',
    reading: 'Reading the answers …',
    again: 'Look again',
    honest:
      'No names are asked. The edit history of the file can still show which account typed what: tell your class so, as the sheet does.',
    noSheet: 'This file has no Poll sheet yet. Build the table again to get one; what is typed stays.',
    toPlan: 'Go to the plan',
    toSheet: 'Go to the Poll sheet',
    went: 'The Poll sheet is in view.',
    nobody: (sheet: string) =>
      `Nobody has answered yet. Students answer in the sheet ${sheet}, one row for each answer.`,
    pickClass: 'Class',
    allClasses: 'All classes',
    pickDay: 'Day',
    day: (day: string, isToday: boolean) => (day === '' ? 'no day noted' : isToday ? `${day}, today` : day),
    noneHere: 'This class has not answered yet.',
    answers: ({ answers, fromStudents, fromTeams }: PollCounts) =>
      `${count(answers, 'answer', 'answers')}: ${fromStudents} by one student, ${fromTeams} by a team${
        answers > fromStudents + fromTeams ? `, ${answers - fromStudents - fromTeams} not said` : ''
      }.`,
    bars: (statement: string, counts: readonly string[]) => `${statement} ${counts.join(', ')}.`,
    agree: ({ agree, marked }: { readonly agree: number; readonly marked: number }) =>
      `${agree} of ${marked} agree fully or mostly.`,
    change: {
      more: '▲ More than last time.',
      fewer: '▽ Fewer than last time.',
      alike: '≈ About as last time.',
      unknown: 'Nothing to compare with.',
    },
    lastTime: (day: string, { agree, marked }: { readonly agree: number; readonly marked: number }) =>
      `On ${day}: ${agree} of ${marked}.`,
    otherWords: (number: number) => `${count(number, 'mark', 'marks')} in other words, not counted.`,
    openLines: 'In their own words',
    noLines: 'Nobody wrote a line.',
  },

  particles: {
    title: 'Particles',
    reading: 'Reading the numbers from the Plan …',
    pick: 'Whose numbers',
    pickHint: 'A team’s picture shows what it has to find: project it once the team has found that.',
    typical: 'The numbers that the plan starts from',
    numbersOf: (team: string, className: string) => `${team}, ${className}`,
    pickStep: 'Which dilution',
    firstStep: '1: from the stock into flask 1',
    laterStep: (step: number) => `${step}: from flask ${step - 1} into flask ${step}`,
    project: 'Open a page to project',
    noPicture: 'There is no picture of these numbers.',
    noActivity: 'The activity in the Plan is not one that we know. Choose one in the plan and build again.',
    sampleTitle: 'Equal volumes, before and after',
    onlyTitle: 'A sample of the solution',
    kind: ({ symbol, charge, perUnit, shape }: KindWords, formula: string) =>
      charge === 0
        ? `${symbol}, ${shapeWords[shape]}: a whole molecule`
        : `${symbol}, ${shapeWords[shape]}: ${perUnit} from each ${formula}`,
    sampleSize: (cubic: string, edge: string) =>
      `A sample is about ${cubic} cubic nanometres: a cube with edges of some ${edge} nm.`,
    nearNumbers: (drawn: string, truly: string) =>
      `Whole numbers small enough to count: drawn ${drawn} times as crowded before as after, in truth ${truly} times.`,
    note: (symbol: string, note: string) => `${symbol}: ${note}.`,
    flaskTitle: 'The whole portion, before and after',
    flaskAbout: 'Not equal volumes this time: the same particles, and more room for them.',
    trulyTitle: 'How many there really are',
    inFlask: (volume: string, counts: string) => `All ${volume} mL together hold ${counts}.`,
    sameAsPortion: (inMole: string) =>
      `That is as many as came in with the portion: water brings none and takes none. Worked out with ${inMole} in each mole.`,
    onlySample: (inMole: string) => `The picture can only be a sample of them. Worked out with ${inMole} in each mole.`,
    questionsTitle: 'Questions to ask',
    questionsAbout: 'Let them answer first, then open the reasons. In the sheet each team has letters of its own.',
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
      'What a row says after a wrong value is a guess at the reason, from the number alone. Ask before you believe it.',
    ],
    hidden: 'What is hidden and what is not',
    hiddenText: [
      'This is for practice, not for tests. The functions answer whoever types them, so a student can ask a cell for a mass or a molarity.',
      'There is no key in the shared file: the checks work out each value from the team’s own numbers when they are needed. Anyone who can edit the file can read all its cells, hidden ones too.',
      'A script that belongs to a shared file can be read by everyone who may edit the file.',
      'The protected cells warn before a change. They guard against accidents, not against intent.',
      'An entry that is itself a formula is marked for you. It may be a fine idea: ask about it.',
    ],
    otherwise: 'When a day goes otherwise',
    otherwiseText: [
      'A team is absent: mark it under Teams. For that day it is left out of whom to talk to first, and Progress says “not here today” beside it. Its rows and numbers wait; the mark ends by itself.',
      'One person of a team is absent: mark the person under Teams, and the others share the role. Nobody has to do a whole job alone.',
      'A team finishes early: “Class now” says that it is ready for more and has a question for it. It can also explain one row to a team that is stuck; both learn from that.',
      'A team joins late: add it under Teams. It gets rows and numbers of its own, and nobody else’s rows move. It can begin like everybody else and need not catch up.',
    ],
    poll: 'Poll',
    pollText: [
      'A few minutes at the end: four short statements and one open line, by one student or by a team. It asks how the lesson went, not how good anybody is.',
      'Read it with the class next time and say what you will do about it. What changed since last time stands beside each statement.',
    ],
    particles: 'Particles',
    particlesText: [
      'Equal volumes before and after dilution, drawn from a team’s own numbers: fewer particles in the same space, and none of them lost.',
      'Ask first what they expect to see, then show the picture. It can only be a sample; the true number stands beside it.',
    ],
    tries: 'Tries',
    triesText: [
      'Tries means at least so many. When several people type at once, one may go uncounted. Nothing is ever counted down.',
    ],
    accounts: 'Several accounts',
    accountsText: [
      'If this panel stays empty or says that it was not let in, you may be signed in to several accounts at once. The spreadsheet’s host then mixes them up; we cannot mend that from here.',
      'Open the file in a private window, or in a browser profile of its own, with only the account that the file belongs to.',
    ],
    share: 'Giving it to others',
    shareText: [
      'To your class: share the file so that students may edit it, and send the link. Students need no sidebar and no installation.',
      'To colleagues: before students type anything, make a copy of the file and share that copy so that others may view it. Each colleague makes a copy of their own; plan, checks and script come with it.',
      'A file keeps its history. A file that students worked in is not the one to pass on, even after its cells were cleared.',
    ],
    safety: 'Safety',
    safetyText: [
      'Checks look at numbers, not at the bench. Read the safety data sheet of every substance, follow local rules and your school’s own assessment, and leave concentrated solutions to trained staff, as those rules ask.',
      'Acid goes into water, never water into acid. A substance that we have no data for is unlisted, not harmless.',
    ],
  },
} as const;
