import type { Pictogram } from '../../chemistry/pictogramNamed.ts';
import { drawPictogram } from './drawPictogram.ts';
import { element } from './element.ts';

/** Pictograms side by side, each drawn and named: the name is what a screen reader says and what a bad copy still shows. */
export const pictogramRow = (pictograms: readonly Pictogram[]): HTMLElement =>
  element(
    'ul',
    { class: 'pictograms' },
    ...pictograms.map(({ code, name }) => element('li', {}, drawPictogram(code), element('span', {}, name))),
  );
