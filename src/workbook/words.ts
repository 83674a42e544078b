import { checkHeadings } from '../lab/texts/feedback.ts';
import { sheetHeadings } from './sheetHeadings.ts';

/** Every text for people that the planned sheets hold, in one place. */
export const words = {
  plan: {
    ...sheetHeadings.plan,
    sheet: 'Plan',
    title: 'Plan',
    note: 'The settings and numbers of this lesson. Change a number here and every check, hint and question follows at once.',
    notice: 'Each line below belongs to the team with its key: sort the lines as you like, but keep each key once.',
    invented: 'An invented school, with invented classes and teams, to try things out.',
    about: 'what it is for',
    today: 'today',
    absent: 'absent',
    absentHelp: 'absent for a team that is not here; clear the cell when it is',
    readings: 'readings',
    readingsAbout: 'how far a reading may be off, by the settings as they were when this was built',
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
    unit: { ordered: 'letters', chosen: 'one letter' },
    /** Behind the number of figures or decimals that the Plan asks for. */
    figures: { one: '\u00a0figure.', several: '\u00a0figures.' },
    decimals: { none: ' Whole number.', one: '\u00a0decimal.', several: '\u00a0decimals.' },
    /** Before letters that were typed when they stood for other actions or answers. */
    lettersBefore: 'old letters: ',
    lettersOfOther: '⚠ These letters belong to another team. Ask your teacher to build the table again.',
    keyMissing: '⚠ no line of the Plan has this team’s key',
    keyTwice: '⚠ two lines of the Plan have this team’s key',
    closing: ' on target so far',
    whoChoice: 'Who does this step? A role or a name, or leave it empty.',
    tickChoice: 'Choose it once your team has read the cautions in this row.',
    helpChoice: 'How much help? 0 none, 1 the idea, 2 the relation, 3 the set-up with your numbers.',
  },
  progress: {
    ...sheetHeadings.progress,
    sheet: 'Progress',
    note: 'How far each team has come. Fit for the projector: no numbers and no reasons, only where the work stands.',
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
      notYetKnown: '… not yet known',
    },
  },
  help: {
    ...sheetHeadings.help,
    sheet: 'Help',
    notes: [
      'Write a hint of your own beside any step and level; it is shown in place of ours. An empty cell leaves ours.',
      'Level 1 is the idea, 2 how things are related, 3 the set-up with the team’s numbers.',
      'A team asks for help by choosing 1, 2 or 3 in its own row. The setting “highest help level” in the Plan is the limit.',
      'Links begin with http or https.',
      'The checks answer whoever types them: this is a practice tool and not a test.',
      'Whoever can edit this file can also read its script. Protection is against accidents, not against intent.',
    ],
    where: ({ step, level }: { step: string; level: string }) => `the link of ${step}, level ${level}, in Help`,
    linkExpected: 'a web address that begins with http:// or https://',
    linkAdvice: 'Copy it whole from the address line; until then it is shown to nobody.',
  },
  poll: {
    sheet: 'Poll',
    title: 'Poll',
    notes: [
      'How did it go? Take a free row below: choose your class and, for each statement, how far you agree. Leave out what you like.',
      'One row for each answer, by one student or by a team. No names are asked, and please write none.',
      'To be honest: the edit history of this file can show which account typed what. If that matters to you, let one person type for the team.',
      'Answers are for talking about how the lesson went. Nobody is marked by them.',
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
    upToDate: 'Worked out from the Plan as it is now.',
    /** The sign at the beginning is what the tint goes by. */
    outOfDate:
      '⚠ The Plan has changed since this list was written. Open Prepare in the sidebar: it brings this sheet up to the Plan.',
    notes: [
      'Students can read this sheet: masses and volumes that a team has to find stand in the sidebar only.',
      'This is no safety data sheet. Read the one from your supplier; follow local rules and your school’s own assessment.',
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
    note: 'One row for each class and day: counts and plain words, no names of pupils or teams. Reword a row as you like; the sidebar keeps your words.',
  },
  classNow: {
    askedForHelp: ({ step, level }: { step: string; level: number }) => `Asked for help, level ${level}, at ${step}.`,
    sameTwice: ({ first, second }: { first: string; second: string }) =>
      `The same question twice, at ${first} and ${second}.`,
    manyTries: ({ step, tries }: { step: string; tries: number }) => `At least ${tries} tries at ${step}.`,
    quiet: ({ minutes, step }: { minutes: number; step: string }) => `Nothing new for ${minutes} minutes, at ${step}.`,
    notYet: (step: string) => `Not yet right at ${step}.`,
    allDone: (question: string) => `Everything on target: ready for more. ${question}`,
    theme: ({ teams, lookAt }: { teams: number; lookAt: string }) => `${teams} teams read this now: ${lookAt}`,
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
  },
  settingNotes: {
    activity: 'what the teams do; change it in the sidebar, which builds new sheets',
    periods: 'how many periods the activity takes',
    figures: 'significant figures asked for, unless a step says otherwise',
    'atomic-weight decimals': 'decimals of the atomic weights that your class uses',
    'chlorine on the table':
      'as the table of your class has it; 35.5: molar masses from such a short table are right too',
    'decimal mark': 'point or comma: how your class writes numbers',
    'judge figures': 'yes: a right number with the wrong number of figures is only close',
    'highest help level': '0 to 3: how far hints may go',
    'glassware class': 'A or B, for what a measured answer may differ by',
    'glassware standard': 'ISO or ASTM',
    balance: 'readability of the balance',
    'allowance for technique': 'your own share for how people handle glassware',
    spare: 'share of solids, stocks and water to prepare beyond what the teams take',
    'spare glassware': 'share of glassware to lay out beyond what is used at once, for breakages',
    'work the dilution from':
      'nominal stock: the molarity planned; real stock: what the team really made. Build again after a change',
    'concentrated reagents':
      'staff make the solution and students watch; students: only where your school’s own assessment and the safety data sheet allow it',
    seed: 'the same seed gives the teams the same numbers again; any whole number',
    layout: 'the arrangement of these sheets; leave it as it is',
    invented: 'yes: a sample to try things out',
    numbers: 'each team its own, or the same for all',
    'flasks on the shelf': 'mL, between semicolons',
    'pipettes on the shelf': 'mL, between semicolons',
    'balance readability': 'g',
    'balance range': 'g, the most it can weigh',
    start: 'what the sidebar starts from when it gives numbers; the checks read the team lines below',
  },
  keySheet: {
    name: (date: string) => `Key ${date}`,
    warning: 'The key. Everyone who can edit this file can read it. Delete this sheet before you share the file.',
    headings: ['class', 'team', 'step', 'answer', 'unit', 'note'],
    /** Beside an order in words, which holds for every team. */
    allTeams: 'all',
  },
} as const;
