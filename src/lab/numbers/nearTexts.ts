import type { TypedQuantity } from '../../measurement/readQuantity.ts';
import { nearbyNumbers, plainText } from './nearbyNumbers.ts';
import type { Reach } from './recipe.ts';

/** A number as it stands in the Plan. */
export interface NumberText {
  readonly value: number;
  readonly text: string;
}

/** Numbers near a typed one, each with its text in as many figures; none where nothing was typed. */
export const nearTexts = (typed: TypedQuantity | undefined, reach: Reach): readonly NumberText[] =>
  typed === undefined
    ? []
    : nearbyNumbers(typed, reach).map((value) => ({ value, text: plainText(value, typed.figures) ?? String(value) }));
