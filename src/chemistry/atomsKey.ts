import type { Formula } from './formula.ts';

/** Equal for two formulas with the same atoms, water of hydration included, however they are written. */
export const atomsKey = ({ atoms }: Pick<Formula, 'atoms'>): string =>
  atoms
    .map(({ element, count }) => `${element}${count}`)
    .sort()
    .join(' ');
