import { particleTexts } from '../texts/particles.ts';
import type { Figure, Kind, ParticlePicture } from './particlePicture.ts';

const drawnOf = (particles: Figure['boxes'][number]['particles'], place: number): number =>
  particles.filter(({ kind }) => kind === place).length;

/** How many of each kind a box shows, counted from what is drawn: `10 K⁺`. */
export const boxCounts = (kinds: readonly Kind[], { particles }: Figure['boxes'][number]): readonly string[] =>
  kinds.map(({ symbol }, place) => `${drawnOf(particles, place)} ${symbol}`);

/** The same in words as the figure shows: each box with its counts, and what is left out. */
export function pictureText(
  { kinds }: Pick<ParticlePicture, 'kinds'>,
  { figure, called }: { readonly figure: Figure; readonly called: 'sample' | 'flask' },
): string {
  const isMolecular = kinds.every(({ charge }) => charge === 0);
  return [
    ...figure.boxes.map((box) =>
      particleTexts.box({ name: particleTexts[called][box.moment], counts: boxCounts(kinds, box) }),
    ),
    isMolecular ? particleTexts.whole : particleTexts.apart,
    particleTexts.waterLeftOut,
  ].join(' ');
}
