import type { StatementCounts } from '../../lab/poll/pollSummary.ts';
import { pollTexts } from '../../lab/texts/poll.ts';
import { svgElement } from '../page/svgElement.ts';
import { texts } from '../texts.ts';

/** Sizes in units of the drawing, which is about as wide as a sidebar. */
const line = 22;
const bar = { left: 104, width: 136, height: 12 } as const;
const width = bar.left + bar.width + 34;

/** How many chose each word, as bars with word and number beside them; all charts of a poll share the scale `most`. */
export function pollBars({ statement, counts }: StatementCounts, most: number): SVGSVGElement {
  const { scale } = pollTexts;
  const drawn = svgElement('svg', {
    viewBox: `0 0 ${width} ${line * scale.length}`,
    class: 'poll-bars',
    role: 'img',
    'aria-label': texts.poll.bars(
      statement,
      scale.map((word, place) => `${word}: ${counts[place] ?? 0}`),
    ),
  });
  scale.forEach((word, place) => {
    const count = counts[place] ?? 0;
    const middle = line * (place + 0.5);
    const length = most > 0 ? (bar.width * count) / most : 0;
    drawn.append(
      svgElement('text', { x: bar.left - 8, y: middle, 'text-anchor': 'end', 'dominant-baseline': 'central' }, word),
      svgElement('line', { class: 'axis', x1: bar.left, x2: bar.left, y1: middle - line / 2, y2: middle + line / 2 }),
      svgElement('rect', {
        class: place < 2 ? 'bar agree' : 'bar',
        x: bar.left,
        y: middle - bar.height / 2,
        width: length.toFixed(2),
        height: bar.height,
      }),
      svgElement(
        'text',
        { class: 'number', x: (bar.left + length + 6).toFixed(2), y: middle, 'dominant-baseline': 'central' },
        String(count),
      ),
    );
  });
  return drawn;
}
