import { seededRandom, shuffled } from '../numbers/seededRandom.ts';

/** The letter of the place in a list: 0 is a, 25 is z. */
const letterOf = (place: number): string => String.fromCharCode(97 + place);

export interface Lettered<T> {
  readonly letter: string;
  readonly item: T;
}

/**
 * Whose letters are meant. With the key of a block they are that team's own, so that one class cannot hand the next the
 * letters; without one they go by the name of the procedure or question alone, the same for all.
 */
export interface LettersOf {
  /** Id of the step that asks. */
  readonly step?: string;
  /** The block's own key; empty is as good as none. */
  readonly key?: string;
}

/** What the letters are mixed by. A bar parts the pieces, so that two blocks cannot run together into one. */
export const letterSeed = (name: string, { step = '', key = '' }: LettersOf): string =>
  key === '' ? name : `${key}|${step}|${name}`;

/** Items in a mixed order with a letter each; the seed alone decides the order. */
export const lettered = <T>(seed: string, items: readonly T[]): readonly Lettered<T>[] =>
  shuffled(items, seededRandom(seed)).map((item, place) => ({ letter: letterOf(place), item }));
