import { closedSetting } from '../lab/judging/isClosed.ts';
import { checkHeadings } from '../lab/texts/feedback.ts';
import { sheetHeadings } from './sheetHeadings.ts';

/** Every text for people that the planned sheets hold, in one place. */
export const words = {
  plan: {
    ...sheetHeadings.plan,
    sheet: 'Plan',
    title: 'Plan',
    note: 'The settings and numbers of this lesson. Change a number here and every check, hint and question follows at once.',
    notice: 'Each line below is for the team with that key. Sort the lines as you like, but use each key only once.',
    invented: 'An invented school, with invented classes and teams, to try things out.',
    about: 'what it is for',
    today: 'today',
    absent: 'absent',
    absentHelp: 'absent for a team that is away today; clear the cell when it is back',
    ownHelpAbout: '0 to 3: how far hints may go for this team; empty for as far as the lesson lets them',
    showExitAbout: 'yes: this team sees the checks of its exit questions; empty or no: they are kept',
    readings: 'readings',
    readingsAbout: 'how far off a reading may be, by the settings when this was built',
  },
  class: {
    headings: [
      'Step',
      'Task',
      'Your entry',
      'Unit',
      checkHeadings.check,
      checkHeadings.lookAt,
      checkHeadings.hint,
      'Help 0–3',
      'Who',
      'Tries',
      'Last entry',
    ],
    notice: 'Practice, not a test.',
    invented: 'Invented teams.',
    how: 'Type in your team’s white boxes.',
    /** In every heading row, above the boxes that it speaks of. */
    helpAndWho: 'Help: 1 idea, 2 relation, 3 set-up. Who: a role or a name.',
    /** In the place of the line above, so no longer than it has room for. */
    numbersChanged: '⚠ Your numbers changed since this table was built: read them again.',
    caution: ({ formula, signalWord, isSettled }: { formula: string; signalWord: string; isSettled: boolean }) => {
      if (signalWord !== '') return `${formula}: ${signalWord}.`;
      return isSettled ? `${formula}: no signal word, still take care.` : `${formula}: no signal word is known here.`;
    },
    cautionUpTo: ({ formula, strength }: { formula: string; strength: string }) => `${formula} up to ${strength}`,
    cautionUnlisted: (formula: string) => `${formula}: not listed here, so treat it as harmful.`,
    deferring: 'Read the safety data sheet first; local rules decide.',
    cautionsBelow: 'All cautions stand above the first team.',
    cautions: 'Cautions',
    allCautions: 'All cautions',
    find: 'Find your team',
    keptForLate: '(free)',
    unit: { ordered: 'order', chosen: 'one letter', safety: 'one letter' },
    /** Behind the number of figures or decimals that the Plan asks for. */
    figures: { one: '\u00a0figure.', several: '\u00a0figures.' },
    decimals: { none: ' Whole number.', one: '\u00a0decimal.', several: '\u00a0decimals.' },
    /** Before letters that were typed when they stood for other actions or answers. */
    lettersBefore: 'old letters: ',
    /** Before a team's own task, once all its rows are on target. */
    goOn: 'To go on: ',
    lettersOfOther: '⚠ These letters belong to another team. Ask your teacher to build the table again.',
    keyMissing: '⚠ no line of the Plan has this team’s key',
    keyTwice: '⚠ two lines of the Plan have this team’s key',
    closing: ' on target so far',
    whoChoice: 'Who does this step? A role or a name, or leave it empty.',
    tickChoice: 'Choose it once your team has read the cautions in this row.',
    helpChoice: 'How much help? 0 none, 1 the idea, 2 the relation, 3 the set-up with your numbers.',
  },
  practice: { team: (number: number) => `Practice ${number}` },
  progress: {
    ...sheetHeadings.progress,
    sheet: 'Progress',
    note: 'How far each team has got. Safe to project: no numbers and no reasons, only progress.',
    /** Beside a team that is marked absent in the Plan, for that day. */
    absent: 'not here today',
    of: ' of ',
    /** Neutral words with a sign each, fit for everybody’s eyes. */
    states: {
      done: '✓ done',
      nearly: '≈ nearly',
      inWork: '○ in work',
      toCome: '· to come',
      written: '✓ written',
      nextTime: '→ next time',
      notYetKnown: '… not yet known',
    },
  },
  help: {
    ...sheetHeadings.help,
    sheet: 'Help',
    notes: [
      'Write your own hint beside any step and level, and it is shown instead of ours. Leave the cell empty to keep ours.',
      'Level 1 is the idea, 2 how things are related, 3 the set-up with the team’s numbers.',
      'A team asks for help by choosing 1, 2 or 3 in its own row. The setting “highest help level” in the Plan sets the limit.',
      'Start links with http:// or https://.',
      'This is practice, not a test: the checks answer anyone who types in a row.',
      'Anyone who can edit this file can also read its script. Protected cells prevent accidents, nothing more.',
    ],
    where: ({ step, level }: { step: string; level: string }) => `the link of ${step}, level ${level}, in Help`,
    linkExpected: 'a web address that begins with http:// or https://',
    linkAdvice: 'Copy the whole address; students can’t see it yet.',
  },
  poll: {
    sheet: 'Poll',
    title: 'Poll',
    notes: [
      'How did it go? In a free row, choose your class and how far you agree with each statement. Skip what you like.',
      'Use one row per student or per team. Please write no names.',
      'Note: the edit history of this file can show which account typed what. If that matters to you, let one person type for the team.',
      'We use the answers to talk about the lesson. They don’t count for marks.',
    ],
    soFar: 'All answers so far',
    row: 'Row',
    day: 'Day',
    className: 'Class',
    from: 'Answer from',
    openLine: 'One thing that is clear now, or one that still puzzles you',
    classHelp: 'your class',
    fromHelp: 'one student, or a team together',
    scaleHelp: 'how far you agree; leave it empty if you would rather not say',
  },
  prepare: {
    ...sheetHeadings.prepare,
    sheet: 'Prepare',
    upToDate: 'Up to date with the Plan.',
    /** The sign at the beginning is what the tint goes by. */
    outOfDate: '⚠ The Plan has changed since this list was written. Open Prepare in the sidebar to update it.',
    notes: [
      'Students can read this sheet, so masses and volumes are rounded up here. The exact list is in the sidebar.',
      'This is not a safety data sheet. Read your supplier’s, and follow local rules and your school’s own risk assessment.',
    ],
  },
  share: {
    /** Neutral names for a file that is given on. */
    className: (number: number) => `Class ${number}`,
    team: (number: number) => `Team ${number}`,
  },
  record: {
    sheet: 'Record',
    title: 'Record',
    note: 'One row per class and day: counts and plain words, no names of students or teams. Edit a row as you like; the sidebar keeps your words.',
  },
  classNow: {
    /** The first row that is not right, and what its value matches or what it waits for. */
    matches: ({ step, words: fits }: { step: string; words: string }) => `${step}: the value matches ${fits}.`,
    /** Where the value matches more than one slip. */
    asked: ({ step, questions }: { step: string; questions: string }) => `${step}: the row asks “${questions}”`,
    almost: (step: string) => `${step}: close.`,
    follows: (step: string) => `${step}: right method, an earlier row needs a look.`,
    unreadable: (step: string) => `${step}: what was typed cannot be read.`,
    /** A number that its check needs cannot be read, so nothing is known of what was typed. */
    unchecked: (step: string) => `${step}: cannot be checked yet.`,
    notRight: (step: string) => `${step}: not right yet.`,
    blankRow: (step: string) => `${step}: still blank.`,
    cautions: 'The cautions are still to read.',
    badGiven: ({ cell, name, typed }: { cell: string; name: string; typed: string }) =>
      typed === ''
        ? `${cell} in the Plan is blank, and ${name} is needed.`
        : `${cell} in the Plan cannot be read: “${typed}” for ${name}.`,
    askedForHelp: ({ step, level }: { step: string; level: number }) => `Asked for help, level ${level}, at ${step}.`,
    sameTwice: ({ first, second }: { first: string; second: string }) =>
      `The same question twice, at ${first} and ${second}.`,
    manyTries: ({ step, tries }: { step: string; tries: number }) => `At least ${tries} tries at ${step}.`,
    quiet: (minutes: number) => `Nothing new for ${minutes} minutes.`,
    allDone: (question: string) => `Everything on target: ready for more. ${question}`,
    theme: ({ teams, lookAt }: { teams: number; lookAt: string }) => `${teams} teams see this now: ${lookAt}`,
  },
  settings: {
    layout: 'layout',
    invented: 'invented',
    numbers: 'numbers',
    ownNumbers: 'each team its own',
    sharedNumbers: 'the same for all',
    flasks: 'flasks on the shelf',
    pipettes: 'pipettes on the shelf',
    balanceReadability: 'balance readability',
    balanceRange: 'balance range',
    startPrefix: 'start from ',
    closed: closedSetting,
  },
  settingNotes: {
    activity: 'what the teams do; change it in the sidebar, which builds new sheets',
    periods: 'how many periods the activity takes',
    figures: 'significant figures asked for, unless a step says otherwise',
    'atomic-weight decimals': 'decimals in the atomic weights that your class uses',
    'chlorine on the table': 'as in your class’s table; with 35.5, molar masses from it are right too',
    'decimal mark': 'point or comma: how your class writes numbers',
    'judge figures': 'yes: a right number with the wrong number of figures is only close',
    'highest help level': '0 to 3: how far hints may go',
    'exit questions':
      '0 to 4: how many students of a team get one, with numbers of their own. Build again after a change',
    'show exit checks': 'no: answers to exit questions are kept; yes: every class sees their checks',
    'glassware class': 'A or B: decides how far off a reading may be',
    'glassware standard': 'ISO or ASTM',
    balance: 'readability of the balance',
    'allowance for technique': 'extra error allowed for handling',
    spare: 'extra solids, stocks and water to prepare, beyond what the teams take',
    'spare glassware': 'extra glassware to lay out for breakages, beyond what is used at once',
    'work the dilution from':
      'nominal stock: the planned molarity; real stock: the molarity the team made. Build again after a change',
    'concentrated reagents':
      'staff make the solution and students watch; students: only where your school’s own risk assessment and the safety data sheet allow it',
    seed: 'any whole number; the same seed gives the teams the same numbers again',
    'safety questions':
      'two questions before the bench, about a splash and about leftovers. for Danger: where a substance has that signal word or is not in our list. Build again after a change',
    'cautions also in': 'a second language for the cautions of a class and for labels. Build again after a change',
    'checks come from':
      'formulas, or the teacher’s open sidebar where functions do not run for students. Build again after a change',
    evidence:
      'yes: rows for both readings of the balance, an observation and a link to a picture. Build again after a change',
    layout: 'the arrangement of these sheets; leave it as it is',
    invented: 'yes: a sample to try things out',
    numbers: 'each team its own, or the same for all',
    'flasks on the shelf': 'mL, separated by semicolons',
    'pipettes on the shelf': 'mL, separated by semicolons',
    'balance readability': 'g',
    'balance range': 'g, the most it can weigh',
    start: 'starting value; teams’ numbers are below',
  },
  keySheet: {
    name: (date: string) => `Key ${date}`,
    warning: 'The key. Everyone who can edit this file can read it. Delete this sheet before you share the file.',
    headings: ['class', 'team', 'step', 'answer', 'unit', 'note'],
    /** Beside an order in words, which holds for every team. */
    allTeams: 'all',
  },
} as const;
