import type { CellValue } from '../../measurement/cellValue.ts';
import { procedureByName } from '../bench/procedures.ts';
import { questionByName } from '../bench/questions.ts';
import type { Activity, CalculatedStep, MeasuredStep, Step } from '../lesson/activity.ts';
import { shownCell } from '../lesson/shownCell.ts';
import type { QuantityArgument } from '../quantities/quantityEntry.ts';
import { isQuantityName, quantities } from '../quantities.ts';
import { readingHints, rowShown, toldHints } from '../texts/hints.ts';
import { tickHints } from '../texts/ticks.ts';
import { evidenceHints } from '../texts/weighing.ts';
import { ownHint } from './ownHint.ts';
import { filledIn, quantityHint } from './quantityHint.ts';

export interface HintWanted {
  /** The activity named by the settings, if there is one. */
  readonly activity: Activity | undefined;
  /** Id of a step of that activity, or the name of a quantity. */
  readonly stepId: string;
  /** 0 to 3; 0 asks for nothing. */
  readonly level: number;
  readonly givens: Readonly<Record<string, CellValue>>;
  /** The team's entries by step id, for steps that are worked from another row. */
  readonly entries: Readonly<Record<string, CellValue>>;
  readonly decimalMark: 'point' | 'comma';
  /** Rows of the Help sheet; see `ownHint`. */
  readonly ownHints?: readonly (readonly CellValue[])[] | undefined;
}

const titleOf = (activity: Activity | undefined, id: string): string =>
  activity?.steps.find((step) => step.id === id)?.title ?? id;

/** Title of the row that a reading is planned in, or the name of what it is compared with. */
const expectedName = ({ expects }: MeasuredStep, activity: Activity | undefined): string => {
  if (typeof expects === 'string') return titleOf(activity, expects);
  return 'given' in expects ? expects.given : expects.expected;
};

function calculatedHint(step: CalculatedStep, level: 1 | 2 | 3, wanted: HintWanted): string {
  const textOf = (name: string): string | undefined => {
    const argument = quantities[step.quantity].takes.find((taken) => taken.name === name);
    const source = step.takes[name];
    if (argument === undefined || source === undefined) return undefined;
    if ('given' in source) {
      return shownCell(wanted.givens[source.given], { argument, decimalMark: wanted.decimalMark });
    }
    const entry = shownCell(wanted.entries[source.entryOf], { argument, decimalMark: wanted.decimalMark });
    return entry ?? rowShown(titleOf(wanted.activity, source.entryOf));
  };
  return quantityHint(step.quantity, { level, textOf });
}

function ourHint(step: Step, level: 1 | 2 | 3, wanted: HintWanted): string {
  switch (step.kind) {
    case 'calculated':
      return calculatedHint(step, level, wanted);
    case 'measured':
      return (
        readingHints[step.hints ?? step.instrument][level - 1]?.replace('{row}', expectedName(step, wanted.activity)) ??
        ''
      );
    case 'ordered':
      return procedureByName(step.procedure).hints[level - 1] ?? '';
    case 'chosen': {
      const hint = questionByName(step.question).hints[level - 1] ?? '';
      return typeof hint === 'string' ? hint : filledIn(hint, (name) => plainCell(wanted.givens[name]));
    }
    case 'ticked':
    case 'safety':
      return tickHints[level - 1] ?? '';
    case 'weighing':
      return evidenceHints[level - 1] ?? '';
    case 'told':
      return (step.evidence === undefined ? toldHints : evidenceHints)[level - 1] ?? '';
  }
}

const plainCell = (cell: CellValue): string | undefined =>
  typeof cell === 'number' ? String(cell) : typeof cell === 'string' && cell.trim() !== '' ? cell.trim() : undefined;

/** A quantity by its own name takes givens of its own names. */
function bareQuantityHint(name: string, level: 1 | 2 | 3, { givens, decimalMark }: HintWanted): string {
  if (!isQuantityName(name)) return '';
  const takes: readonly QuantityArgument[] = quantities[name].takes;
  const textOf = (wanted: string): string | undefined => {
    const argument = takes.find((taken) => taken.name === wanted);
    return argument && shownCell(givens[wanted], { argument, decimalMark });
  };
  return quantityHint(name, { level, textOf });
}

/**
 * The hint for a row, at the level that the team asked for: the teacher's own words where there are some, ours otherwise,
 * and the teacher's link after either. Empty at level 0 and for an unknown step.
 */
export function hintForStep(wanted: HintWanted): string {
  const { activity, stepId, level, ownHints = [] } = wanted;
  if (level !== 1 && level !== 2 && level !== 3) return '';
  const step = activity?.steps.find(({ id }) => id === stepId);
  const { words, link } = ownHint(ownHints, { stepId, level });
  const ours = () => (step ? ourHint(step, level, wanted) : bareQuantityHint(stepId, level, wanted));
  return [words === '' ? ours() : words, link].filter((part) => part !== '').join(' ');
}
