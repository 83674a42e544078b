import { theArgument } from '../errors/argumentName.ts';
import { failure, type Result, success } from '../errors/result.ts';
import { type Shape, shapeText } from './grid.ts';

export interface NamedShape extends Shape {
  readonly name: string;
}

/**
 * The shape that all ranges fill together: single cells, rows and columns stretch over the others.
 *
 * @returns Fails with `ranges-unfit`, which names the first two arguments that do not fit and their shapes.
 */
export function commonShape(shapes: readonly NamedShape[]): Result<Shape> {
  const common = { rows: 1, columns: 1 };
  for (const side of ['rows', 'columns'] as const) {
    const long = shapes.filter((shape) => shape[side] > 1);
    const [first] = long;
    if (first === undefined) continue;
    const other = long.find((shape) => shape[side] !== first[side]);
    if (other !== undefined) {
      return failure({
        code: 'ranges-unfit',
        argument: other.name,
        received: `${shapeText(first)} for ${theArgument(first.name)} and ${shapeText(other)} for ${theArgument(other.name)}`,
        advice: `Make both cover the same ${side}, or give one cell.`,
      });
    }
    common[side] = first[side];
  }
  return success(common);
}
