/** True under `npm run deep`, where tests take their long form. */
const isDeep = process.env.LABROW_DEEP === '1';

/** Where every drawn case comes from: always the same one in `npm test`, a fresh one for each `npm run deep`. */
export const seed = Number(process.env.LABROW_SEED ?? 20_261_125);
if (!Number.isInteger(seed)) throw new Error(`Expected a whole number in LABROW_SEED, received ${seed}.`);

/** No more cases than this, whoever asks: a mutant that breaks a law breaks it soon. */
const most = Number(process.env.LABROW_MOST_CASES ?? Infinity);

/** How many cases to draw: few in `npm test`, many in `npm run deep`. */
export const cases = ({ short, deep }: { readonly short: number; readonly deep: number }): number =>
  Math.min(isDeep ? deep : short, most);

/**
 * Light and dark (true) for a view that looks alike in both: one of them in `npm test`, in turn over the views, and both
 * in `npm run deep`.
 */
export const themes = (view: number): readonly boolean[] => (isDeep ? [false, true] : [view % 2 === 1]);
