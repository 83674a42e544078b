import { particleTexts } from '../texts/particles.ts';
import type { Box, Kind, ParticlePicture } from './particlePicture.ts';

/** How many of each kind a box shows, counted from what is drawn: `10 K⁺ and 10 Br⁻`. */
const drawnCounts = (kinds: readonly Kind[], { particles }: Box): string =>
  particleTexts.listed(
    kinds.map(({ symbol }, place) => `${particles.filter(({ kind }) => kind === place).length} ${symbol}`),
  );

/** One box in words: what it stands for and what is drawn in it. */
export const boxText = (
  { kinds, step = 1 }: Pick<ParticlePicture, 'kinds'> & Partial<Pick<ParticlePicture, 'step'>>,
  { box, figure }: { readonly box: Box; readonly figure: 'sample' | 'flask' },
): string => {
  const named = step > 1 && box.moment !== 'only' ? particleTexts.row[figure][box.moment](step) : undefined;
  return particleTexts.box({ name: named ?? particleTexts[figure][box.moment], counts: drawnCounts(kinds, box) });
};

/** What holds for every box of a picture: how the particles are, and that water is left out. */
export const leftOutText = ({ kinds }: Pick<ParticlePicture, 'kinds'>): string =>
  `${kinds.every(({ charge }) => charge === 0) ? particleTexts.whole : particleTexts.apart} ${particleTexts.waterLeftOut}`;
