import type { Kind, Shape } from '../../lab/particles/particlePicture.ts';
import { svgElement } from '../page/svgElement.ts';

/** Corners on a circle round the middle, the first at the top. */
const corners = (count: number, reach: number): string =>
  Array.from({ length: count }, (_, place) => {
    const angle = (2 * Math.PI * place) / count - Math.PI / 2;
    return `${(reach * Math.cos(angle)).toFixed(2)},${(reach * Math.sin(angle)).toFixed(2)}`;
  }).join(' ');

/** Each outline stays within the width of the particle, so that none touches another. */
function outline(shape: Shape, size: number): SVGElement {
  const half = size / 2;
  switch (shape) {
    case 'round':
      return svgElement('circle', { class: 'outline', r: half * 0.94 });
    case 'square': {
      const side = half * 0.8;
      return svgElement('rect', {
        class: 'outline',
        x: -side,
        y: -side,
        width: 2 * side,
        height: 2 * side,
        rx: size * 0.06,
      });
    }
    case 'sixfold':
      return svgElement('polygon', { class: 'outline', points: corners(6, half * 0.96) });
    case 'pointed':
      return svgElement('polygon', { class: 'outline', points: corners(4, half) });
    case 'whole':
      return svgElement('rect', {
        class: 'outline',
        x: -half * 0.95,
        y: -half * 0.62,
        width: size * 0.95,
        height: size * 0.62,
        rx: size * 0.31,
      });
  }
}

/** Text inside a particle below this size (in units of the drawing) is a blur in a narrow page. */
const readable = 9;
/** Width of a letter as a share of its height, taken on the generous side. */
const letterWidth = 0.58;

const chargeSign = (charge: number): string => {
  const sign = charge < 0 ? '−' : '+';
  return charge === 0 ? '' : `${Math.abs(charge) === 1 ? '' : Math.abs(charge)}${sign}`;
};

/** The symbol where it can be read inside the particle, otherwise its charge, otherwise nothing: the legend names it. */
function label({ symbol, charge, shape }: Kind, size: number): SVGTextElement | false {
  const room = size * (shape === 'pointed' ? 0.56 : shape === 'square' ? 0.76 : 0.84);
  for (const words of [symbol, chargeSign(charge)]) {
    const height = Math.min(size * 0.42, room / (Math.max(words.length, 1) * letterWidth));
    if (words !== '' && height >= readable) {
      return svgElement(
        'text',
        { 'text-anchor': 'middle', 'dominant-baseline': 'central', 'font-size': height.toFixed(2) },
        words,
      );
    }
  }
  return false;
}

/** One particle round the point 0, 0: an outline of its kind's own, a fill light or dark, and its symbol. */
export const drawParticle = (kind: Kind, size: number): SVGGElement =>
  svgElement('g', { class: `particle ${kind.shape}` }, outline(kind.shape, size), label(kind, size));
