import { avogadroConstant } from '../../chemistry/particleCount.ts';
import { boxText, leftOutText } from '../../lab/particles/boxText.ts';
import type { Kind, ParticlePicture } from '../../lab/particles/particlePicture.ts';
import type { Solutions } from '../../lab/particles/solutions.ts';
import { tenPower } from '../../lab/particles/tenPower.ts';
import { writtenFormula } from '../../lab/particles/writtenFormula.ts';
import { particleTexts } from '../../lab/texts/particles.ts';
import { withDecimalMark } from '../../measurement/withDecimalMark.ts';
import { element } from '../page/element.ts';
import { svgElement } from '../page/svgElement.ts';
import { texts } from '../texts.ts';
import { drawBox } from './drawBox.ts';
import { drawParticle } from './drawParticle.ts';

export interface PictureParts {
  readonly solutions: Solutions;
  readonly picture: ParticlePicture;
  readonly decimalMark: 'point' | 'comma';
}

/** The picture of a team's solutions, with everything it takes to read it. */
export function pictureSections({ solutions, picture, decimalMark }: PictureParts): readonly HTMLElement[] {
  const { particles } = texts;
  const short = (value: number, figures: number) =>
    withDecimalMark(String(Number(value.toPrecision(figures))), decimalMark);
  const isDiluted = picture.sample.boxes.length > 1;
  const { truly, drawn, exact } = picture.times;
  const filled = solutions.diluted ?? solutions.first;
  const counts = picture.inFlask.map(
    (count, place) => `${tenPower(count, { figures: 3, decimalMark })} ${picture.kinds[place]?.symbol ?? ''}`,
  );
  const inMole = tenPower(avogadroConstant, { figures: 4, decimalMark });
  return [
    element(
      'section',
      {},
      element('h2', {}, isDiluted ? particles.sampleTitle : particles.onlyTitle),
      legend(picture.kinds, solutions.formula),
      figures(picture, 'sample'),
      element('p', { class: 'hint' }, leftOutText(picture)),
      element(
        'p',
        { class: 'hint' },
        particles.sampleSize(short(picture.sampleVolume, 2), short(Math.cbrt(picture.sampleVolume), 2)),
      ),
      !exact && element('p', { class: 'hint' }, particles.nearNumbers(short(drawn, 3), short(truly, 3))),
      ...picture.kinds
        .filter(({ note }) => note !== '')
        .map(({ symbol, note }) => element('p', { class: 'hint' }, particles.note(symbol, note))),
    ),
    ...(picture.flask === undefined
      ? []
      : [
          element(
            'section',
            {},
            element('h2', {}, particles.flaskTitle),
            element('p', { class: 'hint' }, particles.flaskAbout),
            figures(picture, 'flask'),
          ),
        ]),
    element(
      'section',
      {},
      element('h2', {}, particles.trulyTitle),
      element('p', {}, particles.inFlask(short(filled.volume, 4), particleTexts.listed(counts))),
      element('p', { class: 'hint' }, (isDiluted ? particles.sameAsPortion : particles.onlySample)(inMole)),
    ),
  ];
}

function figures(picture: ParticlePicture, called: 'sample' | 'flask'): HTMLElement {
  const figure = picture[called];
  return element(
    'div',
    { class: 'figures' },
    ...(figure?.boxes ?? []).map((box) => {
      const id = `${called}-${box.moment}`;
      return element(
        'figure',
        {},
        drawBox(box, { kinds: picture.kinds, size: figure?.size ?? 0, labelledBy: id }),
        element('figcaption', { id }, boxText(picture, { box, figure: called })),
      );
    }),
  );
}

const legendSize = 34;

const legend = (kinds: readonly Kind[], formula: string): HTMLElement =>
  element(
    'ul',
    { class: 'kinds' },
    ...kinds.map((kind) =>
      element(
        'li',
        {},
        svgElement(
          'svg',
          {
            viewBox: `${-legendSize / 2} ${-legendSize / 2} ${legendSize} ${legendSize}`,
            class: 'kind',
            'aria-hidden': 'true',
          },
          drawParticle(kind, legendSize),
        ),
        element('span', {}, texts.particles.kind(kind, writtenFormula(formula))),
      ),
    ),
  );
