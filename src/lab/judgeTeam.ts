import { type CellValue, isBlank } from '../measurement/cellValue.ts';
import { grams, millilitres } from '../measurement/quantity.ts';
import { readQuantity } from '../measurement/readQuantity.ts';
import { activityById } from './activities.ts';
import type { CalculatedStep, MeasuredStep, Step, TickedStep } from './activity.ts';
import { activitySlips } from './activitySlips.ts';
import { cautionWords } from './cautionWords.ts';
import { checkChoice } from './checkChoice.ts';
import { checkOrder } from './checkOrder.ts';
import { checkReading } from './checkReading.ts';
import { checkTick } from './checkTick.ts';
import { expectedValue } from './expectedValue.ts';
import { feedbackText, filled } from './feedbackText.ts';
import { plainName } from './givenCells.ts';
import { type CarriedRows, type Judgement, judgeEntry } from './judgeEntry.ts';
import { takesLessonFigures } from './lessonFigures.ts';
import { readLessonSettings } from './lessonSettings.ts';
import type { Carried, PreparedStep } from './preparedStep.ts';
import { prepareStep } from './prepareStep.ts';
import type { NumberName } from './quantities/quantityEntry.ts';
import { isQuantityName, quantities } from './quantities.ts';
import { type ReadEntry, readEntry } from './readEntry.ts';
import type { ToolUsed } from './readingTolerance.ts';
import type { Status } from './status.ts';
import { teamGivens } from './teamGivens.ts';
import { badGiven, badSetting, badStep, remarks, type SlipId } from './texts/feedback.ts';
import { tickTexts } from './texts/ticks.ts';
import { spanOver } from './worked.ts';

/** A team's block of the class sheet, as its one check receives it. */
export interface TeamBlock {
  /** One row each: names of the givens and this team's values. */
  readonly givenNames: readonly CellValue[];
  readonly givenValues: readonly CellValue[];
  /** Two columns, name and value; names that are not read are passed over. */
  readonly settings: readonly (readonly CellValue[])[];
  /** Columns of one height, which may include a heading row and a closing row. */
  readonly steps: readonly CellValue[];
  readonly entries: readonly CellValue[];
}

/** What is known of a row once it is judged. */
export interface JudgedRow {
  /** Where the row has no step id, or one that nobody knows, there is none. */
  readonly step: Step | undefined;
  /** Empty for a row that is never judged. */
  readonly status: Status | '';
  readonly lookAt: string;
  readonly slips: readonly SlipId[];
  /** The number typed, in the unit asked, where there is one. */
  readonly value: number | undefined;
  /** What the row comes to before it is rounded, from the numbers it may rest on; people keep spare digits. */
  readonly unrounded: readonly number[];
  /** Title of the row to look at first where this one needs another look. */
  readonly root: string;
}

const quietRow: JudgedRow = {
  step: undefined,
  status: '',
  lookAt: '',
  slips: [],
  value: undefined,
  unrounded: [],
  root: '',
};

/** A bare quantity as a step: it takes the givens of its own names and builds on the quantities of the block. */
function bareStep(id: string): CalculatedStep | undefined {
  if (!isQuantityName(id)) return undefined;
  const { takes, buildsOn, unit } = quantities[id];
  return {
    kind: 'calculated',
    id,
    title: id,
    unit,
    shown: [],
    period: 1,
    bench: false,
    quantity: id,
    takes: Object.fromEntries(takes.map(({ name }) => [name, { given: name }])),
    buildsOn: Object.fromEntries(buildsOn.map(({ name }) => [name, name])),
  };
}

const kindOfUnit: Readonly<Record<string, 'mass' | 'volume' | 'amount' | 'concentration' | 'density'>> = {
  g: 'mass',
  mL: 'volume',
  mol: 'amount',
  'mol/L': 'concentration',
  'g/mL': 'density',
};

const needsAnotherLook = ({ status }: JudgedRow): boolean =>
  status === 'not yet' || status === 'follows' || status === 'unreadable';
const isSound = ({ status }: JudgedRow): boolean => status === 'on target' || status === 'close';
/** What was measured stays what it is, however far from the plan: other rows go on from it. */
const isFact = ({ step, value }: JudgedRow): boolean => step?.kind === 'measured' && value !== undefined;

/** What later rows may honestly be worked from: the entry, and where it is right also what it was rounded from. */
const workedFrom = (row: JudgedRow): readonly number[] =>
  row.value === undefined ? [] : isSound(row) ? [...new Set([row.value, ...row.unrounded])] : [row.value];

/** Every choice of some of the items, but not of none. */
function someOf<T>(items: readonly T[]): readonly (readonly T[])[] {
  const chosen: T[][] = [[]];
  for (const item of items) {
    for (const some of chosen.slice()) chosen.push([...some, item]);
  }
  return chosen.slice(1);
}

/**
 * Judges a team's whole block: every row from its givens, and from the team's own entries in the rows it builds on. A
 * rounded number carried forward counts as right, and a wrong one is looked for where it first stands.
 */
export function judgeTeam(block: TeamBlock): readonly JudgedRow[] {
  const settings = readLessonSettings(block.settings);
  const activity = activityById(settings.activity, settings);
  const givens = teamGivens(block.givenNames, block.givenValues);
  const ids = block.steps.map(plainName);
  const stepOf = (id: string): Step | undefined => activity?.steps.find((step) => step.id === id) ?? bareStep(id);
  const steps = ids.map(stepOf);
  const judged: (JudgedRow | 'under way' | undefined)[] = [];

  const rowOf = (id: string): JudgedRow | undefined => {
    const index = ids.indexOf(id);
    return index < 0 ? undefined : judge(index);
  };

  function judge(index: number): JudgedRow {
    const known = judged[index];
    if (known === 'under way') throw new Error(`the step “${ids[index]}” builds on itself`);
    if (known) return known;
    judged[index] = 'under way';
    const row = judgeFresh(index);
    judged[index] = row;
    return row;
  }

  function judgeFresh(index: number): JudgedRow {
    const step = steps[index];
    const entry = block.entries[index];
    if (!step) {
      const isNamed = !isBlank(block.steps[index]);
      return isNamed ? { ...quietRow, status: 'unreadable', lookAt: badStep(String(block.steps[index])) } : quietRow;
    }
    const row = { ...quietRow, step, root: step.title };
    switch (step.kind) {
      case 'calculated':
        return { ...row, ...judgeCalculated(step, entry) };
      case 'measured':
        return { ...row, ...judgeMeasured(step, entry) };
      case 'ordered':
        return { ...row, ...checkOrder(step.procedure, entry) };
      case 'chosen':
        return { ...row, ...checkChoice(step.question, entry) };
      case 'ticked':
        return { ...row, ...judgeTicked(step, entry) };
      case 'told':
        return row;
    }
  }

  function judgeTicked({ substance }: TickedStep, cell: CellValue): Partial<JudgedRow> {
    const { decimalMark, studentsDilute } = settings;
    return checkTick(cell, cautionWords({ substance, givens, decimalMark, studentsDilute }));
  }

  /** The step with the team's numbers, or what to say of what is wrong, or of the row that it waits for. */
  function prepared(step: CalculatedStep) {
    const quantity = quantities[step.quantity];
    const cells: Record<string, CellValue> = {};
    const names: Record<string, string> = {};
    const numbers: Partial<Record<NumberName, number>> = {};
    const from: JudgedRow[] = [];
    let waitsFor = '';
    for (const { name } of quantity.takes) {
      const source = step.takes[name];
      if (!source) continue;
      if ('given' in source) {
        cells[name] = givens[source.given];
        names[name] = source.given;
        continue;
      }
      const row = rowOf(source.entryOf);
      const title = stepOf(source.entryOf)?.title ?? source.entryOf;
      names[name] = title;
      if (row?.value === undefined) waitsFor ||= filled(remarks.needsRow, { row: row?.root || title });
      else from.push(row);
      // A number that is still to come is held open by one that spoils nothing else.
      numbers[name as NumberName] = row?.value ?? Number.NaN;
    }
    const figuresRead = takesLessonFigures(quantity);
    const weightsRead = 'formula' in cells && !('ion' in cells);
    const badName = [...(figuresRead ? ['figures'] : []), ...(weightsRead ? ['atomic-weight decimals'] : [])].find(
      (name) => settings.bad.includes(name),
    );
    const prepareWith = (fromEntries: typeof numbers) =>
      prepareStep(quantity, cells, {
        ...(figuresRead ? { figures: settings.figures } : {}),
        decimals: settings.decimals,
        decimalMark: settings.decimalMark,
        numbers: fromEntries,
        names,
      });
    let result = prepareWith(numbers);
    const [first] = from;
    if (!result.ok && first) {
      // Fine without the team's own entries: then it is one of those that cannot be, such as more stock than flask.
      const open = prepareWith(Object.fromEntries(Object.keys(numbers).map((name) => [name, Number.NaN])));
      if (open.ok) {
        result = open;
        waitsFor ||= filled(remarks.lookFirst, { row: (from.find((row) => !isSound(row)) ?? first).root });
      }
    }
    const bad = result.ok ? (badName === undefined ? '' : badSetting(badName)) : badGiven(result.error.argument);
    return { bad, ready: result.ok ? result.value : undefined, from, waitsFor };
  }

  /** Every set of numbers for the rows that a step takes its own from, the entries as typed first. */
  function sourceSets({ takes }: CalculatedStep): readonly Carried[] {
    let sets: readonly Carried[] = [{}];
    for (const [name, source] of Object.entries(takes)) {
      const row = 'entryOf' in source ? rowOf(source.entryOf) : undefined;
      if (row) sets = workedFrom(row).flatMap((value) => sets.map((set): Carried => ({ ...set, [name]: value })));
    }
    return sets;
  }

  /** Every set of the team's own entries that a step may have been carried forward from. */
  function carriedRows(step: CalculatedStep): readonly CarriedRows[] {
    const held = Object.keys(step.buildsOn).flatMap((name) => {
      const row = rowOf(step.buildsOn[name] ?? '');
      return row?.value === undefined ? [] : [{ name, row, value: row.value }];
    });
    return someOf(held).map((some) => {
      const carried: Carried = Object.fromEntries(some.map(({ name, value }) => [name, value]));
      const unsound = some.find(({ row }) => row.status !== 'on target');
      return { carried, sound: !unsound, lookAt: unsound?.row.root ?? '' };
    });
  }

  /** Adds what a slip beside the quantity itself explains; a misplaced point is named only where nothing else does. */
  function withActivitySlips(
    judgement: Judgement,
    { step, ready, entry }: { readonly step: CalculatedStep; readonly ready: PreparedStep; readonly entry: ReadEntry },
  ): Judgement {
    if (judgement.status !== 'close' && judgement.status !== 'not yet') return judgement;
    const isOpen =
      judgement.status === 'close'
        ? judgement.because === 'rounding' || judgement.because === 'cut off'
        : judgement.question === undefined || judgement.question === 'one figure';
    if (!isOpen || entry.kind !== 'number') return judgement;
    const more = activitySlips(step, {
      activity,
      stepOf,
      readyOf: (other) => prepared(other).ready,
      givens,
      decimalMark: settings.decimalMark,
      ready,
      entry: entry.entry,
    });
    if (more.length === 0) return judgement;
    if (judgement.status === 'close') {
      return more.includes('planned-for-made') ? { ...judgement, because: 'planned for made' } : judgement;
    }
    return { status: 'not yet', slips: [...judgement.slips.filter((id) => id !== 'power-of-ten'), ...more] };
  }

  function judgeCalculated(step: CalculatedStep, cell: CellValue): Partial<JudgedRow> {
    const { bad, ready, from, waitsFor } = prepared(step);
    if (bad !== '' || !ready) return { status: 'unreadable', lookAt: bad };
    const entry = readEntry(cell, ready.quantity.entryKind, settings);
    if (entry.kind === 'number' && waitsFor !== '') {
      return {
        status: 'not yet',
        lookAt: waitsFor,
        value: entry.entry.value,
      };
    }
    const sets = sourceSets(step);
    const carried = carriedRows(step);
    const rows = [
      ...carried,
      ...sets
        .slice(1)
        .flatMap((set): readonly CarriedRows[] => [
          { carried: set, sound: true, lookAt: '' },
          ...carried.map((row) => ({ ...row, carried: { ...set, ...row.carried } })),
        ]),
    ];
    const judgement = withActivitySlips(judgeEntry(ready, entry, { rows, judgeFigures: settings.judgeFigures }), {
      step,
      ready,
      entry,
    });
    const value = entry.kind === 'number' ? { value: entry.entry.value } : {};
    const spans = entry.kind === 'number' ? sets.map((set) => spanOver(ready, ready.quantity.relation, set)) : [];
    const unrounded = [...new Set(spans.flatMap(({ low, middle, high }) => [middle, low, high]))];
    const unsound = from.find((row) => !isSound(row) && !isFact(row));
    const isRight = judgement.status === 'on target' || judgement.status === 'close';
    const final = isRight && unsound ? { status: 'follows' as const, lookAt: unsound.root } : judgement;
    return {
      ...value,
      unrounded,
      status: final.status,
      lookAt: feedbackText(final, ready.quantity),
      slips: final.status === 'not yet' ? final.slips : [],
      ...(final.status === 'follows' ? { root: final.lookAt } : {}),
    };
  }

  /** What a reading is compared with, or the name of what is wrong, or what to say of the row that it waits for. */
  function expectedReading({ id, expects, unit }: MeasuredStep) {
    if (typeof expects !== 'string' && 'expected' in expects) {
      const worked = expectedValue(expects, { givens, decimalMark: settings.decimalMark });
      return worked.ok
        ? { bad: '', expected: worked.value, waitsFor: '' }
        : { bad: badGiven(worked.error.argument), expected: undefined, waitsFor: '' };
    }
    if (typeof expects !== 'string') {
      const read = readQuantity(givens[expects.given], kindOfUnit[unit] ?? 'concentration', expects.given, settings);
      return read.ok
        ? { bad: '', expected: read.value.value, waitsFor: '' }
        : { bad: badGiven(expects.given), expected: undefined, waitsFor: '' };
    }
    const row = stepOf(expects);
    if (row?.kind !== 'calculated') throw new Error(`the step “${id}” expects no calculated step`);
    const { bad, ready, waitsFor } = prepared(row);
    return { bad, expected: ready && spanOver(ready, ready.quantity.relation).middle, waitsFor };
  }

  function judgeMeasured(step: MeasuredStep, cell: CellValue): Partial<JudgedRow> {
    const { bad, expected, waitsFor } = expectedReading(step);
    if (bad !== '' || expected === undefined) return { status: 'unreadable', lookAt: bad };
    const entry = readEntry(cell, kindOfUnit[step.unit] ?? 'mass', settings);
    const value = entry.kind === 'number' ? { value: entry.entry.value } : {};
    if (entry.kind === 'number' && waitsFor !== '') {
      return { ...value, status: 'not yet', lookAt: waitsFor };
    }
    const { unit, instrument } = step;
    const tools: ToolUsed[] = [];
    for (const used of step.tools ?? (instrument === 'bench' ? [] : [{ tool: instrument }])) {
      if (used.tool === 'balance') {
        tools.push({ tool: used.tool, mass: grams(expected) });
        continue;
      }
      // A vessel that a given names has that size; the one that is read holds what is expected.
      const name = 'volume' in used ? used.volume : undefined;
      const size = name === undefined ? undefined : readQuantity(givens[name], 'volume', name, settings);
      if (size?.ok === false) return { status: 'unreadable', lookAt: badGiven(name ?? '') };
      tools.push({ tool: used.tool, volume: millilitres(size?.value.value ?? expected) });
    }
    const { cells, decimalMark } = settings;
    const share = step.techniqueShare === undefined ? {} : { techniqueShare: step.techniqueShare };
    return { ...value, ...checkReading(cell, { expected, unit, tools, ...share, settings: cells, decimalMark }) };
  }

  /** Nobody goes to the bench on our word before the cautions are ticked, or while an earlier row needs another look. */
  function withWait(index: number): JudgedRow {
    const row = judge(index);
    if (row.step?.kind === 'told' || !row.step?.bench || row.status === 'on target') return row;
    const unticked = steps
      .slice(0, index)
      .find((step, place) => step?.kind === 'ticked' && judge(place).status !== 'on target');
    if (unticked) return { ...row, lookAt: tickTexts.waitForTick(unticked.title) };
    const earlier = steps
      .slice(0, index)
      .flatMap((step, place) => (step && step.kind !== 'chosen' ? [judge(place)] : []));
    const first = earlier.find((other) => needsAnotherLook(other) && !isFact(other));
    return first ? { ...row, lookAt: filled(remarks.waitForRow, { row: first.root }) } : row;
  }

  return steps.map((_, index) => withWait(index));
}
