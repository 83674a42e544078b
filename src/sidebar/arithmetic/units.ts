import * as mathjs from 'mathjs';

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

/** Two of the factories of which mathjs is put together. Its typings leave out what they take. */
interface Factories {
  createUnitClass(parts: Readonly<Record<string, unknown>>): UnitClass;
  createParse(parts: Readonly<Record<string, unknown>>): (text: string) => ExpressionNode;
}

interface Arithmetic {
  parse(text: string): ExpressionNode;
  readonly Unit: UnitClass;
}

/** A piece of an expression, told by its type and no more than looked at. */
class Piece {
  constructor(readonly type: string) {}
}
// The parser knows pieces by this.
Object.assign(Piece.prototype, { isNode: true });

class ConstantNode extends Piece {
  readonly isConstantNode = true;
  constructor(readonly value: unknown) {
    super('ConstantNode');
  }
}
class SymbolNode extends Piece {
  readonly isSymbolNode = true;
  constructor(readonly name: string) {
    super('SymbolNode');
  }
}
class ParenthesisNode extends Piece {
  readonly isParenthesisNode = true;
  constructor(readonly content: Piece) {
    super('ParenthesisNode');
  }
}
class OperatorNode extends Piece {
  readonly isOperatorNode = true;
  constructor(
    readonly op: string,
    readonly fn: string,
    readonly args: readonly Piece[],
  ) {
    super('OperatorNode');
  }
}
/** Lists, assignments, functions and whatever else mathjs can parse: none of it is worked out here. */
class OtherNode extends Piece {
  constructor() {
    super('OtherNode');
  }
}
class NotUsed {}

/** The parser takes a text and nothing else, so that nothing has to be told apart by its type. */
const ofText = Object.assign((_: string, { string }: { readonly string: unknown }) => string, { addConversion() {} });

/** A number as the parser has cut it out, such as `2.5e-3`; what only looks like one, such as `0x1F3M`, is none. */
function numberIn(text: string): number {
  const value = Number(text);
  if (Number.isNaN(value) && text !== 'NaN') throw new SyntaxError(`“${text}” is no number`);
  return value;
}

const config = { number: 'number', predictable: false } as const;

let made: Arithmetic | undefined;

/**
 * The parser and the units of mathjs over plain numbers, made on first use. Its ready-made `evaluate`, or what `create`
 * puts together, would bring matrices, functions, decimals of any length and a formula's way into LaTeX along, three times
 * as much in size, and run whatever is typed; so both are made of their own factories here.
 */
export function arithmetic(): Arithmetic {
  if (made) return made;
  // Each is named at its own place: taken out of the whole at once, the whole would be bundled.
  const parse = (mathjs as unknown as Factories).createParse({
    typed: ofText,
    numeric: numberIn,
    config,
    ConstantNode,
    SymbolNode,
    ParenthesisNode,
    OperatorNode,
    AccessorNode: OtherNode,
    ArrayNode: OtherNode,
    AssignmentNode: OtherNode,
    BlockNode: OtherNode,
    ConditionalNode: OtherNode,
    FunctionAssignmentNode: OtherNode,
    FunctionNode: OtherNode,
    IndexNode: OtherNode,
    ObjectNode: OtherNode,
    RangeNode: OtherNode,
    RelationalNode: OtherNode,
  });
  const Unit = (mathjs as unknown as Factories).createUnitClass({
    config,
    addScalar: (one: number, other: number) => one + other,
    subtractScalar: (one: number, other: number) => one - other,
    multiplyScalar: (one: number, other: number) => one * other,
    divideScalar: (one: number, other: number) => one / other,
    pow: (one: number, other: number) => one ** other,
    equal: (one: number, other: number) => one === other,
    abs: Math.abs,
    fix: Math.trunc,
    round: Math.round,
    isNumeric: (value: unknown) => typeof value === 'number',
    format: String,
    number: Number,
    Complex: NotUsed,
    BigNumber: NotUsed,
    Fraction: NotUsed,
  });
  made = { parse: (text) => parse(text), Unit };
  return made;
}
