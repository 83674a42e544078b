/** A share as the Plan has it, such as `10 %` or `10`, as a number; undefined where it is none, or not from 0 to 100 %. */
export function spareShare(setting: string): number | undefined {
  const typed = /^\s*(\d+(?:[.,]\d+)?)\s*%?\s*$/.exec(setting)?.[1];
  const share = Number(typed?.replace(',', '.')) / 100;
  return share >= 0 && share <= 1 ? share : undefined;
}

/** Up to the next step, so that a spare is never rounded away; what is a step already, but for the last bits, stays. */
export function roundedUp(value: number, step: number): number {
  const steps = Math.ceil(value / step - 1e-9);
  const decimals = Math.max(0, Math.ceil(-Math.log10(step)));
  return Number((steps * step).toFixed(decimals));
}

/** Pieces to lay out: the spare in whole pieces, at least one more where any spare is wanted. */
export const withSparePieces = (count: number, share: number): number => count + Math.ceil(count * share - 1e-9);
