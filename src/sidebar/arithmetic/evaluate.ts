import { arithmetic, type ExpressionNode, type UnitValue } from './units.ts';

/** A number, or a number with its unit. */
export type Worked = number | UnitValue;

/** Why a text could not be worked out; `part` is the piece of it that stands in the way. */
export type Obstacle =
  | { readonly kind: 'unread' }
  | { readonly kind: 'unknown name'; readonly part: string }
  /** A capital M in front of a small unit: nobody pours a million litres. */
  | { readonly kind: 'millions'; readonly part: string; readonly meant: string }
  | { readonly kind: 'unlike kinds' };

class NotWorkedOut extends Error {
  constructor(readonly obstacle: Obstacle) {
    super(obstacle.kind);
  }
}

/** Spellings of the trade that mathjs lacks, in its own words. */
const molar: Readonly<Record<string, number>> = { M: 1, mM: 1e-3, uM: 1e-6 };

/** Bench units behind a capital M, with the spelling that was likely meant. */
const millions = /^M(?:L|l|g|G|mol|MOL|Mol)$/;
const meantBy: Readonly<Record<string, string>> = { l: 'mL', g: 'mg', mol: 'mmol' };

/** Works out arithmetic with units: numbers, units, brackets and + − × ÷ ^, and nothing else that the parser knows. */
export function evaluate(text: string): { readonly value: Worked } | { readonly obstacle: Obstacle } {
  const { parse, Unit } = arithmetic();

  const worked = (node: ExpressionNode | undefined): Worked => {
    if (node?.type === 'ConstantNode' && typeof node.value === 'number') return node.value;
    if (node?.type === 'ParenthesisNode') return worked(node.content);
    if (node?.type === 'SymbolNode') return unitNamed(node.name ?? '');
    if (node?.type !== 'OperatorNode') throw new NotWorkedOut({ kind: 'unread' });
    const [left, right] = node.args ?? [];
    const first = worked(left);
    if (node.fn === 'unaryPlus') return first;
    if (node.fn === 'unaryMinus') return times(first, -1);
    const second = worked(right);
    if (node.fn === 'multiply') return times(first, second);
    if (node.fn === 'divide') return over(first, second);
    if (node.fn === 'add') return sum(first, second);
    if (node.fn === 'subtract') return sum(first, times(second, -1));
    if (node.fn === 'pow' && typeof second === 'number') {
      return typeof first === 'number' ? first ** second : first.pow(second);
    }
    throw new NotWorkedOut({ kind: 'unread' });
  };
  const unitNamed = (name: string): UnitValue => {
    const concentration = Object.entries(molar).find(([spelling]) => spelling === name);
    if (concentration) return new Unit(concentration[1], 'mol/L');
    if (millions.test(name)) {
      const meant = meantBy[name.slice(1).toLowerCase()] ?? name;
      throw new NotWorkedOut({ kind: 'millions', part: name, meant });
    }
    if (!Unit.isValuelessUnit(name)) throw new NotWorkedOut({ kind: 'unknown name', part: name });
    return new Unit(1, name);
  };
  const times = (first: Worked, second: Worked): Worked => {
    if (typeof first !== 'number') return first.multiply(second);
    return typeof second === 'number' ? first * second : second.multiply(first);
  };
  const over = (first: Worked, second: Worked): Worked => {
    if (typeof second === 'number') return typeof first === 'number' ? first / second : first.divide(second);
    const inverse = second.pow(-1);
    return times(first, inverse);
  };
  const sum = (first: Worked, second: Worked): Worked => {
    if (typeof first === 'number' && typeof second === 'number') return first + second;
    if (typeof first === 'number' || typeof second === 'number' || !first.equalBase(second)) {
      throw new NotWorkedOut({ kind: 'unlike kinds' });
    }
    // Their ratio is a pure number, so the sum keeps the first one's unit without asking which it is.
    const ratio = over(second, first);
    if (typeof ratio !== 'number') throw new NotWorkedOut({ kind: 'unlike kinds' });
    return times(first, 1 + ratio);
  };

  try {
    return { value: worked(parse(text)) };
  } catch (error) {
    return { obstacle: error instanceof NotWorkedOut ? error.obstacle : { kind: 'unread' } };
  }
}
