// What a host might answer, for an invented school. Nobody in it is real.
import type { Outcome } from '../../src/desk/outcome.ts';
import type { BuildState, ClassView, DraftView, LessonView } from '../../src/desk/views.ts';
import type { Setup } from '../../src/lab/lesson/setup.ts';

export const good = <T>(value: T): Outcome<T> => ({ ok: true, value });
export const bad = (message: string, field?: string): Outcome<never> => ({
  ok: false,
  problem: { message, ...(field === undefined ? {} : { field }) },
});

const setup: Setup = {
  activity: 'stock and dilution',
  givens: {
    formula: 'KBr',
    'stock molarity': '0.400',
    flask: '200',
    'target molarity': '0.120',
    'target volume': '50',
    ion: 'Br-',
    purity: '',
  },
  ownNumbers: true,
  settings: {
    activity: 'stock and dilution',
    periods: '2',
    figures: '3',
    'atomic-weight decimals': '2',
    'chlorine on the table': '35.45',
    'decimal mark': 'point',
    'judge figures': 'no',
    'highest help level': '3',
    'exit questions': '0',
    'show exit checks': 'no',
    'glassware class': 'B',
    'glassware standard': 'ISO',
    balance: '0.01 g',
    'allowance for technique': '2 %',
    spare: '10 %',
    'spare glassware': '10 %',
    'work the dilution from': 'nominal stock',
    'concentrated reagents': 'staff',
    'safety questions': 'for Danger',
    'cautions also in': 'none',
    evidence: 'no',
    'checks come from': 'formulas',
    seed: '7',
  },
  shelf: { flasksMl: [100, 200, 250], pipettesMl: [5, 10, 25], balanceReadabilityG: 0.01, balanceMaxG: 200 },
  classes: [
    { name: 'Second period', teams: ['Basalt', 'Quartz', 'Granite'] },
    { name: 'Fourth period', teams: ['Slate', 'Marble'] },
  ],
};

const activities: LessonView['activities'] = [
  {
    id: 'stock and dilution',
    title: 'A stock solution, then its dilution',
    aim: 'Make a solution of known concentration from a solid, then make a weaker one from it.',
    periods: 2,
    givens: [
      { name: 'formula', unit: '', about: 'the substance', optional: false },
      { name: 'stock molarity', unit: 'mol/L', about: 'concentration of the stock', optional: false },
      { name: 'flask', unit: 'mL', about: 'volume of stock made', optional: false },
      { name: 'target molarity', unit: 'mol/L', about: 'concentration wanted', optional: false },
      { name: 'target volume', unit: 'mL', about: 'volume wanted', optional: false },
      { name: 'ion', unit: '', about: 'the ion asked about', optional: false },
      { name: 'purity', unit: '%', about: 'purity of the solid', optional: true },
    ],
  },
  {
    id: 'dilution',
    title: 'A dilution',
    aim: 'Make a weaker solution from a stock.',
    periods: 1,
    givens: [
      { name: 'stock molarity', unit: 'mol/L', about: 'concentration of the stock', optional: false, start: '2.00' },
      { name: 'density', unit: 'g/mL', about: 'density of the stock', optional: false, start: '1.05' },
    ],
  },
];

export const builtLesson: LessonView = {
  built: true,
  setup,
  keys: [],
  activities,
  solutes: [
    { name: 'Potassium bromide', formula: 'KBr', caution: '' },
    { name: 'Copper(II) sulfate pentahydrate', formula: 'CuSO4·5H2O', caution: '' },
    {
      name: 'Cobalt(II) chloride',
      formula: 'CoCl2',
      caution: 'Cobalt salts are sensitising and may cause cancer when inhaled.',
    },
  ],
  classes: ['Second period', 'Fourth period'],
  decimalMark: 'point',
  problems: [],
  lesson: '2026-03-02.1',
  lessons: [
    {
      id: '2026-03-02.1',
      begun: '2026-03-02',
      activity: 'A stock solution and its dilution',
      substance: 'KBr',
      classes: ['Second period', 'Fourth period'],
      entries: 0,
      invented: false,
    },
  ],
  awayCount: 0,
  worksOutChecks: false,
};
export const emptyLesson: LessonView = { ...builtLesson, built: false, classes: [], lesson: '', lessons: [] };

export const commaLesson: LessonView = {
  ...emptyLesson,
  decimalMark: 'comma',
  setup: {
    ...setup,
    givens: { ...setup.givens, 'stock molarity': '0,400', 'target molarity': '0,120' },
    settings: { ...setup.settings, 'decimal mark': 'comma', balance: '0,01 g' },
  },
};

export const draft: DraftView = {
  givenNames: ['formula', 'stock molarity', 'flask', 'target molarity', 'target volume', 'ion', 'purity'],
  teams: setup.classes.flatMap(({ name, teams }) =>
    teams.map((team, index) => ({
      key: `${name}-${team}`,
      className: name,
      team,
      givens: {
        formula: 'KBr',
        'stock molarity': `0.3${index}0`,
        flask: '200',
        'target molarity': '0.120',
        'target volume': String(50 + index),
        ion: 'Br-',
        purity: '',
      },
    })),
  ),
  remarks: ['With these pipettes two teams have the same target volume.'],
};

export const building = (done: number, total = 5): BuildState => ({
  done,
  total,
  label: done < 2 ? 'Plan' : 'Second period',
  finished: done >= total,
});

const steps = (checks: readonly string[]): ClassView['teams'][number]['steps'] =>
  checks.map((check, index) => ({
    id: `step ${index}`,
    title:
      ['Molar mass', 'Moles of solute', 'Mass of solute', 'Stock to measure out', 'In your words'][index] ?? 'Step',
    check,
    entry: check === 'blank' ? '' : (['119.00', '64.0', '7616', '19 mL', 'We filled it to the mark.'][index] ?? '1'),
    lookAt:
      check === 'not yet' ? 'Your value matches a volume left in millilitres. What does “per litre” ask of it?' : '',
    tries: check === 'not yet' ? 3 : 1,
    helpWanted: check === 'not yet' ? 1 : 0,
    who: check === 'not yet' ? 'Calculator' : '',
    isFormula: check === 'close',
  }));

export const classView: ClassView = {
  className: 'Second period',
  clock: '10:42',
  stepCount: 4,
  teams: [
    { team: 'Basalt', key: 'k1', done: 1, steps: steps(['on target', 'not yet', 'follows', 'blank', 'blank']) },
    { team: 'Quartz', key: 'k2', done: 2, steps: steps(['on target', 'on target', 'close', 'unreadable', 'blank']) },
    { team: 'Granite', key: 'k3', done: 4, steps: steps(['on target', 'on target', 'on target', 'on target', '']) },
    { team: 'Slate', key: 'k4', done: 0, steps: steps(['Loading...', 'blank', 'blank', 'blank', 'blank']) },
  ],
  talkFirst: [
    { team: 'Basalt', reason: 'Three tries on moles of solute, same reason each time; the rows after it wait for it.' },
    { team: 'Quartz', reason: 'Nothing new for 9 minutes, at the dilution.' },
  ],
  sayToClass: 'Three teams left a volume in millilitres. Ask what the L in mol/L wants.',
  notYetKnown: 1,
  percentErrors: [0.4, 1.2, 1.3, 6.2],
};

export const longName =
  'Donaudampfschifffahrtsgesellschaftskapitänsmützenabzeichen & <img src=x onerror=alert(1)> friends';

export const longNames: ClassView = {
  ...classView,
  className: longName,
  teams: classView.teams.map((team) => ({ ...team, team: `${team.team} ${longName}` })),
  talkFirst: classView.talkFirst.map(({ reason }) => ({ team: longName, reason: `${reason} ${longName}` })),
};
