import Big from 'big.js';
import { leadingPlace } from '../../src/lab/judging/span.ts';
import type { Random } from '../../src/lab/numbers/seededRandom.ts';
import { pick } from './drawnPlans.ts';

/** Rounds a value to a place, ties as told, and types it with every digit down to that place. */
export function typedTo(value: number, place: number, ties: 'up' | 'even' = 'up'): string {
  // Fourteen figures are what both the calculator and the binary value agree on, so that a tie is seen as one.
  const decimal = new Big(value.toPrecision(14));
  const rounded =
    place >= 0
      ? decimal
          .div(new Big(10).pow(place))
          .round(0, ties === 'up' ? Big.roundHalfUp : Big.roundHalfEven)
          .times(new Big(10).pow(place))
      : decimal.round(-place, ties === 'up' ? Big.roundHalfUp : Big.roundHalfEven);
  return rounded.toFixed(Math.max(0, -place));
}

/** The place of the last of so many figures. */
export const placeOf = (value: number, figures: number): number => leadingPlace(value) - figures + 1;

/** An atomic weight as a class may have it: as published, or rounded to so many decimals or more. */
export function classWeight(weight: number, { decimals, random }: { decimals: number; random: Random }): number {
  const own = (String(weight).split('.')[1] ?? '').length;
  const kept = pick(random, [
    own,
    ...Array.from({ length: Math.max(0, own - decimals) }, (_, more) => decimals + more),
  ]);
  return Number(new Big(weight).round(kept, random() < 0.5 ? Big.roundHalfUp : Big.roundHalfEven).toString());
}
