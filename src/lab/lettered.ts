import { letterOf } from './letterOf.ts';
import { seededRandom, shuffled } from './seededRandom.ts';

export interface Lettered<T> {
  readonly letter: string;
  readonly item: T;
}

/** Items in a mixed order with a letter each. The name alone decides the order, so that the text in a sheet never changes. */
export const lettered = <T>(name: string, items: readonly T[]): readonly Lettered<T>[] =>
  shuffled(items, seededRandom(name)).map((item, place) => ({ letter: letterOf(place), item }));
