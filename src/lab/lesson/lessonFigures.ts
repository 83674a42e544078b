import type { QuantityEntry } from '../quantities/quantityEntry.ts';

/** Whether the figures that a lesson asks for are asked of a quantity; some are asked in their own way, whatever it says. */
export const takesLessonFigures = ({ figures, ownFigures }: QuantityEntry): boolean =>
  figures !== 'decimals' && ownFigures !== true;
