import type { CellValue } from '../../measurement/cellValue.ts';
import { isExitStep } from '../exit/exitStep.ts';
import type { CalculatedStep } from '../lesson/activity.ts';
import { takesLessonFigures } from '../lesson/lessonFigures.ts';
import { quantities } from '../quantities.ts';
import { badBriefly, badGiven, badSetting, remarks } from '../texts/feedback.ts';
import { filled } from './feedbackText.ts';
import type { FilledQuantity } from './filledQuantity.ts';
import { fillQuantity } from './fillQuantity.ts';
import { isSound, type JudgedRow, type Surroundings } from './judgedRow.ts';

/** A calculated step of a team, as far as it can be worked out. */
export interface TeamStep {
  /** What to say of a given or a setting that cannot be used; empty where all can. */
  readonly bad: string;
  /** Undefined where something bad stands in the way. */
  readonly ready: FilledQuantity | undefined;
  /** Rows whose entries it takes. */
  readonly from: readonly JudgedRow[];
  /** What to say of the row that it waits for; empty where it waits for none. */
  readonly waitsFor: string;
}

/** Settings of the lesson without which a step cannot be judged. */
export function settingsRead({ quantity, takes }: CalculatedStep): readonly string[] {
  const isGiven = (name: string): boolean => takes[name] !== undefined && 'given' in takes[name];
  return [
    ...(takesLessonFigures(quantities[quantity]) ? ['figures'] : []),
    ...(isGiven('formula') && !isGiven('ion') ? ['atomic-weight decimals'] : []),
  ];
}

/** A calculated step with the team's own numbers in place: its givens, and its entries in the rows that the step names. */
export function teamStep(step: CalculatedStep, { settings, givens, stepOf, rowOf }: Surroundings): TeamStep {
  const quantity = quantities[step.quantity];
  const cells: Record<string, CellValue> = {};
  const names: Record<string, string> = {};
  const numbers: Record<string, number> = {};
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
    numbers[name] = row?.value ?? Number.NaN;
  }
  const badName = settingsRead(step).find((name) => settings.bad.includes(name));
  const prepareWith = (fromEntries: typeof numbers) =>
    fillQuantity(quantity, cells, {
      ...(takesLessonFigures(quantity) ? { figures: settings.figures } : {}),
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
  const [ofSetting, ofGiven] = isExitStep(step.id) ? [badBriefly, badBriefly] : [badSetting, badGiven];
  const bad = result.ok ? (badName === undefined ? '' : ofSetting(badName)) : ofGiven(result.error.argument);
  return { bad, ready: result.ok ? result.value : undefined, from, waitsFor };
}
