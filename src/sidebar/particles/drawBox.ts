import { type Box, fullBox, type Kind } from '../../lab/particles/particlePicture.ts';
import { svgElement } from '../page/svgElement.ts';
import { drawParticle } from './drawParticle.ts';

/** A box with its particles. All boxes of a figure share one scale: a smaller one is drawn smaller. */
export function drawBox(
  box: Box,
  { kinds, size, labelledBy }: { readonly kinds: readonly Kind[]; readonly size: number; readonly labelledBy: string },
): SVGSVGElement {
  const drawn = svgElement('svg', {
    viewBox: `-1 -1 ${(box.width + 2).toFixed(2)} ${(box.height + 2).toFixed(2)}`,
    class: 'particle-box',
    role: 'img',
    'aria-labelledby': labelledBy,
  });
  drawn.style.width = `${((100 * box.width) / fullBox.width).toFixed(2)}%`;
  drawn.append(svgElement('rect', { class: 'wall', width: box.width, height: box.height, rx: 6 }));
  for (const { kind, x, y } of box.particles) {
    const of = kinds[kind];
    if (of === undefined) continue;
    const particle = drawParticle(of, size);
    particle.setAttribute('transform', `translate(${x.toFixed(2)} ${y.toFixed(2)})`);
    drawn.append(particle);
  }
  return drawn;
}
