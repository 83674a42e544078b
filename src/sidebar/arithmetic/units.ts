import * as mathjs from 'mathjs';
import {
  absDependencies,
  addDependencies,
  create,
  divideDependencies,
  equalDependencies,
  fixDependencies,
  formatDependencies,
  isNumericDependencies,
  multiplyDependencies,
  numberDependencies,
  parseDependencies,
  powDependencies,
  roundDependencies,
  subtractDependencies,
} from 'mathjs/number';

/** What this page uses of a mathjs unit. */
export interface UnitValue {
  multiply(factor: UnitValue | number): UnitValue | number;
  divide(divisor: UnitValue | number): UnitValue | number;
  pow(exponent: number): UnitValue | number;
  equalBase(other: UnitValue): boolean;
  toNumber(unit: string): number;
}
interface UnitClass {
  new (value: number | null, unit: string): UnitValue;
  isValuelessUnit(name: string): boolean;
}
/** What this page uses of a mathjs expression tree. */
export interface ExpressionNode {
  readonly type: string;
  readonly value?: unknown;
  readonly name?: string;
  readonly content?: ExpressionNode;
  readonly fn?: string;
  readonly args?: readonly ExpressionNode[];
}

interface UnitFactory {
  createUnitClass(parts: Readonly<Record<string, unknown>>): UnitClass;
}

interface Arithmetic {
  parse(text: string): ExpressionNode;
  readonly Unit: UnitClass;
}

let made: Arithmetic | undefined;

/**
 * The parser and the units of mathjs over plain numbers, made on first use. Its ready-made `evaluate` would bring
 * matrices, complex numbers and functions, half as much again in size, and run whatever is typed.
 */
export function arithmetic(): Arithmetic {
  if (made) return made;
  // The typings say that a factory may be absent; in the version pinned none of these is.
  const math = create({
    parseDependencies,
    addDependencies,
    subtractDependencies,
    multiplyDependencies,
    divideDependencies,
    powDependencies,
    absDependencies,
    fixDependencies,
    roundDependencies,
    equalDependencies,
    isNumericDependencies,
    formatDependencies,
    numberDependencies,
  } as Parameters<typeof create>[0]);
  class NotUsed {}
  const Unit = (mathjs as unknown as UnitFactory).createUnitClass({
    config: { number: 'number', predictable: false },
    addScalar: math.add,
    subtractScalar: math.subtract,
    multiplyScalar: math.multiply,
    divideScalar: math.divide,
    pow: math.pow,
    abs: math.abs,
    fix: math.fix,
    round: math.round,
    equal: math.equal,
    isNumeric: math.isNumeric,
    format: math.format,
    number: math.number,
    Complex: NotUsed,
    BigNumber: NotUsed,
    Fraction: NotUsed,
  });
  made = { parse: (text) => math.parse(text) as unknown as ExpressionNode, Unit };
  return made;
}
