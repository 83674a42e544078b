import { element } from '../page/element.ts';
import { texts } from '../texts.ts';
import { dotRows } from './dotRows.ts';

const svgName = 'http://www.w3.org/2000/svg';

function drawn(name: string, attributes: Readonly<Record<string, string | number>>, words = ''): SVGElement {
  const made = document.createElementNS(svgName, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, String(value));
  made.textContent = words;
  return made;
}

const size = { width: 280, edge: 16, radius: 5, ground: 22 } as const;

/** The percent errors of a class as one dot for each team along a line, and the same in words. */
export function spreadPicture(errors: readonly number[]): HTMLElement {
  const { spread } = texts.classNow;
  const heading = element('h2', {}, spread.title);
  if (errors.length === 0) return element('section', {}, heading, element('p', { class: 'hint' }, spread.none));
  const length = size.width - 2 * size.edge;
  const { dots, end, rows } = dotRows(errors, { length, apart: 2 * size.radius + 1 });
  const height = rows * (2 * size.radius + 1) + size.ground + 4;
  const ground = height - size.ground;
  const words = spread.words(errors);
  const picture = drawn('svg', {
    viewBox: `0 0 ${size.width} ${height}`,
    role: 'img',
    class: 'spread',
    'aria-label': words,
  });
  picture.append(
    drawn('line', { x1: size.edge, y1: ground, x2: size.width - size.edge, y2: ground, class: 'spread-line' }),
    ...dots.map(({ at, row }) =>
      drawn('circle', {
        cx: size.edge + at,
        cy: ground - size.radius - 2 - row * (2 * size.radius + 1),
        r: size.radius,
        class: 'spread-dot',
      }),
    ),
    ...[0, end / 2, end].map((mark) =>
      drawn(
        'text',
        { x: size.edge + (mark / end) * length, y: height - 6, 'text-anchor': 'middle', class: 'spread-mark' },
        spread.mark(mark),
      ),
    ),
  );
  return element('section', {}, heading, picture, element('p', { class: 'hint' }, words));
}
