import { readingOff, rightEntry, stepOfTeam } from '../../scripts/simulate/rightEntry.ts';
import { letteredOptions } from '../../src/lab/bench/letteredOptions.ts';
import { lettersInOrder } from '../../src/lab/bench/orderedActions.ts';
import { procedureByName } from '../../src/lab/bench/procedures.ts';
import { judgeTeam } from '../../src/lab/judging/judgeTeam.ts';
import { slipSpans } from '../../src/lab/judging/slipsFound.ts';
import type {
  Activity,
  CalculatedStep,
  MeasuredStep,
  OrderedStep,
  Step,
  TickedStep,
} from '../../src/lab/lesson/activity.ts';
import { tickTexts } from '../../src/lab/texts/ticks.ts';
import type { CellValue } from '../../src/measurement/cellValue.ts';

/** A team at its table: its numbers and letters, and what is right in the rows of its lesson. */
export interface TeamAtTable {
  /** With every row that a teacher may add. */
  readonly activity: Activity;
  readonly givens: Readonly<Record<string, string>>;
  readonly right: Readonly<Record<string, string>>;
  readonly settings?: readonly (readonly [string, string])[];
}

type Typed = readonly (readonly [step: string, entry: CellValue])[];

/** What the last rows of a block say, so many of them as entries are tried; the rows above stand as they are typed. */
function saidBelow(team: TeamAtTable, above: Typed, tried: Typed): readonly string[] {
  const rows = [...above, ...tried];
  return judgeTeam({
    givenNames: Object.keys(team.givens),
    givenValues: Object.values(team.givens),
    settings: [['activity', team.activity.id], ...(team.settings ?? [])],
    steps: rows.map(([step]) => step),
    entries: rows.map(([, entry]) => entry),
  })
    .slice(above.length)
    .map(({ lookAt }) => lookAt);
}

const takenBy = (step: Step): readonly string[] =>
  step.kind === 'calculated'
    ? Object.values(step.takes).flatMap((source) => ('entryOf' in source ? [source.entryOf] : []))
    : step.kind === 'measured' && typeof step.expects === 'string'
      ? [step.expects]
      : [];
const carriedBy = (step: Step): readonly string[] => (step.kind === 'calculated' ? Object.values(step.buildsOn) : []);

/** Rows that a row takes numbers from, or may be carried forward from, and theirs. */
function rowsBelow(step: Step, activity: Activity): readonly string[] {
  const below = [...takenBy(step), ...carriedBy(step)].flatMap((id) => {
    const row = activity.steps.find((one) => one.id === id);
    return row === undefined ? [] : [...rowsBelow(row, activity), id];
  });
  return [...new Set(below)];
}

const units = ['mL', 'g', 'mol/L', 'mol', 'g/mol', '%', 's', 'furlongs'];
/** Of which no number can be read. */
const noNumbers: readonly CellValue[] = ['no idea', '=3*4', '3 4', '1:20', 'x = 12', true, 'x'.repeat(201)];
/** Three decimals behind a comma, which are thousands where a point is for decimals. */
const withComma = (value: number): string => value.toFixed(3).replace('.', ',');

const figuresOf = (value: number): readonly string[] =>
  [1, 2, 7].map((figures) => String(Number(value.toPrecision(figures))));

/** Numbers of a calculated row that are right, nearly right, wrong in a way that people are known for, or none. */
function calculatedEntries(step: CalculatedStep, { activity, givens, right }: TeamAtTable): readonly CellValue[] {
  const ready = stepOfTeam(step, { activity, givens, entries: right });
  const own = right[step.id] ?? rightEntry(ready);
  const value = Number(own);
  const given = activity.givens.filter(({ unit }) => unit === step.unit).map(({ name }) => givens[name] ?? '');
  const sources = activity.givens.filter(({ name }) =>
    Object.values(step.takes).some((source) => 'given' in source && source.given === name),
  );
  const slips = ready.quantity.slips.flatMap((slip) => slipSpans(ready, slip).map(({ middle }) => middle));
  return [
    '',
    own,
    ...figuresOf(value),
    `${value.toPrecision(3)}0`,
    // Among them a factor that was added twice or three times where it multiplies.
    ...[10, 0.001, 1.003, 0.993, 1.03, 5, 100 / 3].map((times) => (value * times).toPrecision(3)),
    // The mass beside it; what is given in the same unit; and the planned stock in place of the one made.
    ...given,
    right['mass of solute'] ?? '',
    (value * (Number(right['stock made']) / Number(givens['stock molarity']))).toPrecision(3),
    ...slips.map((one) => String(Number(one.toPrecision(6)))),
    // With another number of the team's in place of one of its own.
    ...sources.flatMap(({ unit, name }) =>
      activity.givens
        .filter((other) => unit !== '' && other.unit === unit && other.name !== name)
        .map((other) => ((value * Number(givens[name])) / Number(givens[other.name])).toPrecision(3)),
    ),
    `-${own}`,
    '-77.7',
    withComma(value),
    ...units.map((unit) => `${own} ${unit}`),
    ...['L', 'mg', 'mmol/L', 'mmol'].map((unit) => `${own} ${unit}`),
    ...noNumbers,
  ];
}

/** What a calculated row says of rows that it is worked from: they are missing, cannot be, or are wrong themselves. */
function saidOfOthers(step: CalculatedStep, team: TeamAtTable): readonly string[] {
  const { activity, givens, right } = team;
  const below = rowsBelow(step, activity);
  const saidWith = (entries: TeamAtTable['right'], own: string) =>
    saidBelow(
      team,
      below.map((id) => [id, entries[id] ?? '']),
      [[step.id, own]],
    );
  return [
    ...takenBy(step).flatMap((wrong) =>
      ['', '0.0000001', '9999999'].flatMap((typed) => saidWith({ ...right, [wrong]: typed }, '0.5')),
    ),
    ...[...takenBy(step), ...carriedBy(step)].flatMap((wrong) => {
      const off = { ...right, [wrong]: (Number(right[wrong]) * 1.05).toPrecision(6) };
      return saidWith(off, rightEntry(stepOfTeam(step, { activity, givens, entries: off })));
    }),
  ];
}

function measuredEntries(step: MeasuredStep, { activity, givens, right }: TeamAtTable): readonly string[] {
  const off = (share: number) => readingOff(step, share, { activity, givens, entries: right });
  const reading = off(0);
  return [
    '',
    ...[0, 0.06, -0.06, 0.4, -0.4, 5, -0.9].map(off),
    Number(reading).toFixed(1),
    Number(reading).toFixed(0),
    withComma(Number(reading)),
    ...units.map((unit) => `${reading} ${unit}`),
  ];
}

/** A mass from two readings: they are missing, or it is their difference, their sum, one of them or something else. */
function saidOfDifference(step: MeasuredStep, team: TeamAtTable): readonly string[] {
  const plan = readingOff(step, 0, { ...team, entries: team.right });
  const [own, other] = [Number(plan).toFixed(2), (Number(plan) * 1.002 + 0.02).toFixed(2)];
  const planned: Typed = rowsBelow(step, team.activity).map((id) => [id, team.right[id] ?? '']);
  const readings = (empty: string, loaded: string): Typed => [
    ...planned,
    [`${step.id} empty`, empty],
    [`${step.id} loaded`, loaded],
  ];
  const loaded = (10 + Number(other)).toFixed(2);
  const tried = [other, loaded, (20 + Number(other)).toFixed(2), own, team.right[step.id] ?? '', '1.11'];
  const planTyped = typeof step.expects === 'string' ? (team.right[step.expects] ?? own) : own;
  return [
    ...[readings('', ''), readings('10.00', ''), readings('', loaded), readings('10.00', loaded)].flatMap((above) =>
      saidBelow(
        team,
        above,
        [...tried, planTyped].map((entry) => [step.id, entry]),
      ),
    ),
    ...saidBelow(team, readings('0', planTyped), [[step.id, planTyped]]),
  ];
}

function saidOfWeighing(step: Step & { readonly kind: 'weighing' }, team: TeamAtTable): readonly string[] {
  const measured = team.activity.steps.find(({ id }) => id === step.of) as MeasuredStep;
  const planned: Typed = rowsBelow(measured, team.activity).map((id) => [id, team.right[id] ?? '']);
  const plan =
    typeof measured.expects === 'string'
      ? (team.right[measured.expects] ?? '')
      : readingOff(measured, 0, { ...team, entries: {} });
  const said = (above: Typed, entries: readonly string[]) =>
    entries.flatMap((entry) => saidBelow(team, above, [[step.id, entry]]));
  const empty = `${step.of} empty`;
  return step.when === 'empty'
    ? said([], ['', '12.34', '12', '-3', 'no', '12.34 mL'])
    : [...said([[empty, '10.00']], ['12.34', '5.00']), ...said([...planned, [empty, '0']], [plan, `${plan} shown`])];
}

/** Orders that break one rule or only what is advised, that are right, and that are none. */
function orderEntries({ procedure, id: step }: OrderedStep, key: string): readonly string[] {
  const letters = lettersInOrder(procedure, { step, key });
  const { actions, rules } = procedureByName(procedure);
  const ids = actions.map(({ id }) => id);
  const moved = rules.map(({ before, after, weight }) => {
    const [from, to] = [ids.indexOf(before), ids.indexOf(after)];
    // Either the one is done too soon, or, as with most tips, the other too late.
    const [taken, put] = weight === 'advised' ? [from, to] : [to, from];
    const order = letters.filter((_, place) => place !== taken);
    order.splice(put, 0, letters[taken] ?? '');
    return order;
  });
  const [one = '', two = '', ...others] = [...letters].sort();
  return [
    '',
    ...[letters, ...moved].map((order) => order.join(' ')),
    ...[[one], [one, two, ...others, two], ['y', 'z'], [one, one, 'y', 'z'], ['y', one, two, ...others]].map((some) =>
      some.join(' '),
    ),
    'water first and then the salt',
    '1 2 3',
    'x '.repeat(501),
  ];
}

const tickEntries = (step: TickedStep, givens: TeamAtTable['givens']): readonly string[] => [
  '',
  'yes',
  'no',
  tickTexts.answer(givens[step.substance.formula] ?? ''),
  'yes, LiF',
  'x '.repeat(501),
];

/** Every row above, filled with what is nobody's answer, as the one reason to wait. */
function saidWhileWaiting(step: Step, team: TeamAtTable): readonly string[] {
  const { steps } = team.activity;
  const above = steps.slice(
    0,
    steps.findIndex(({ id }) => id === step.id),
  );
  return above.flatMap(({ id }) => ['', '-99.9'].flatMap((entry) => saidBelow(team, [[id, entry]], [[step.id, '']])));
}

/** What a row says of all that a team may type there, or in the rows that it goes by. */
export function saidWhateverIsTyped(step: Step, team: TeamAtTable): ReadonlySet<string> {
  const key = team.givens.key ?? '';
  const apart = (entries: readonly CellValue[]) => entries.flatMap((entry) => saidBelow(team, [], [[step.id, entry]]));
  /** In one block, as far as none of them is waited for. */
  const together = (entries: readonly CellValue[]) =>
    saidBelow(
      team,
      rowsBelow(step, team.activity).map((id) => [id, team.right[id] ?? '']),
      [...new Set(entries)].map((entry) => [step.id, entry]),
    );
  const own = (): readonly string[] => {
    switch (step.kind) {
      case 'calculated':
        return [...together(calculatedEntries(step, team)), ...saidOfOthers(step, team)];
      case 'measured':
        return [
          ...together(measuredEntries(step, team)),
          ...apart(noNumbers),
          ...(step.from === undefined ? [] : saidOfDifference(step, team)),
        ];
      case 'weighing':
        return saidOfWeighing(step, team);
      case 'ordered':
        return [
          ...apart(orderEntries(step, key)),
          ...saidBelow({ ...team, settings: [['layout', '1']] }, [], [[step.id, 'a b']]),
        ];
      case 'chosen':
        return together(['', ...letteredOptions(step.question).map(({ letter }) => letter), 'z', 'x '.repeat(501)]);
      case 'safety':
        return together(['', 'a', 'b', 'c', 'd', 'z', 'x '.repeat(501)]);
      case 'ticked':
        return together(tickEntries(step, team.givens));
      case 'told':
        return together(['', 'some words', 'ftp://here', 'https://example.org/one']);
    }
  };
  const said = new Set([...own(), ...(step.bench ? saidWhileWaiting(step, team) : [])]);
  said.delete('');
  return said;
}
