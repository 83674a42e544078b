/** Share of a waste vessel that is filled at the most, so that it can be carried (common practice, no source). */
const fullest = 0.8;

/** Sizes in mL that beakers, bottles and canisters are commonly made in (common practice, no source). */
const usualVesselsMl = [100, 250, 400, 600, 1000, 2000, 5000, 10_000, 20_000, 25_000] as const;

/** The smallest usual vessel that so many mL leave room in; the largest one where none does. */
export const vesselFor = (volumeMl: number): number =>
  usualVesselsMl.find((size) => volumeMl <= size * fullest) ?? usualVesselsMl[usualVesselsMl.length - 1] ?? volumeMl;
