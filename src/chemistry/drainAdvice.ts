import type { Cautions } from './cautions.ts';
import { cautionsAt } from './cautionsAt.ts';
import type { Formula } from './formula.ts';
import type { Strength } from './strengthPercent.ts';

/** Where what is left over goes. */
export type DrainAdvice = Cautions['waste'];

/**
 * Where leftovers and rinsings go. By the metal and the hazard, at every strength: a limit that is not known, a least
 * class and an unlisted substance all keep it out of the drain. Neutralising and reducing is for staff, so what may go
 * down a drain only after that goes into the waste beaker.
 *
 * Source: advice of a school science body and sewer limits, named for each substance in tests/published/substances.csv;
 * which metals are collected is common practice. Local rules decide.
 */
export const drainAdvice = (formula: Formula, strength: Strength): DrainAdvice => cautionsAt(formula, strength).waste;

/** Whether students may pour it down the drain with plenty of water; everything else goes into the waste beaker. */
export const mayGoDownDrain = (formula: Formula, strength: Strength): boolean =>
  drainAdvice(formula, strength).goesTo === 'drain';
