import { theArgument } from '../errors/argumentName.ts';
import { quoted } from '../errors/quoted.ts';
import { failure, type Result, success } from '../errors/result.ts';
import { type Measure, unitNotKnown } from './readMeasure.ts';
import { nameOfKind } from './readQuantity.ts';

interface Named {
  readonly name: string;
  readonly measure: Measure;
}

/**
 * Two values in one unit, so that they may be compared. With a unit on both they are converted; a bare number counts in
 * the unit of the other.
 *
 * @returns Fails with `unit-unknown`, or `unit-other-kind` where the units measure different things.
 */
export function comparedValues(one: Named, other: Named): Result<{ readonly one: number; readonly other: number }> {
  for (const { name, measure } of [one, other]) {
    if (measure.unitTyped !== '' && measure.unit === undefined) return unitNotKnown(measure, name);
  }
  const [first, second] = [one.measure, other.measure];
  if (first.unit === undefined || second.unit === undefined) {
    return success({ one: first.number.value, other: second.number.value });
  }
  if (first.unit.kind === second.unit.kind) {
    return success({ one: first.converted.value, other: second.converted.value });
  }
  return failure({
    code: 'unit-other-kind',
    argument: other.name,
    received: `${quoted(second.number.typed)}, ${nameOfKind(second.unit.kind)},`,
    advice: `Give ${nameOfKind(first.unit.kind)}, like ${theArgument(one.name)}.`,
    brief: 'units of two kinds',
  });
}
