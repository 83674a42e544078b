import type { Shelf } from '../lesson/setup.ts';
import { isSame } from './isSame.ts';

export interface Portion {
  readonly volume: number;
  /** 2 where two pipettes, or one used twice, deliver it together. */
  readonly fillings: 1 | 2;
}

/** Every volume that the pipettes on the shelf deliver in one filling or two, smallest first; one filling wins. */
export function portions({ pipettesMl }: Shelf): readonly Portion[] {
  const once = pipettesMl.map((volume): Portion => ({ volume, fillings: 1 }));
  const twice = pipettesMl.flatMap((first) =>
    pipettesMl.map((second): Portion => ({ volume: first + second, fillings: 2 })),
  );
  return [...once, ...twice]
    .filter(({ volume }, index, all) => all.findIndex((other) => isSame(other.volume, volume)) === index)
    .sort((one, other) => one.volume - other.volume);
}
