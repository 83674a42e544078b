import type { PreparationView } from '../../desk/views.ts';
import { decimalText } from '../../lab/judging/decimalText.ts';
import { preparationTexts } from '../../lab/texts/preparation.ts';
import { element } from '../page/element.ts';
import { pictogramRow } from '../page/pictogramRow.ts';
import { texts } from '../texts.ts';

type Section = PreparationView['sections'][number];
type Row = Section['rows'][number];

/** Everything to prepare, section by section; cautions with one heading for each substance and strength. */
export const preparationList = ({ sections, decimalMark }: PreparationView): readonly HTMLElement[] =>
  sections.map((section) =>
    element(
      'section',
      { class: 'prepare-section' },
      element('h2', {}, texts.prepare.sections[section.name] ?? section.title),
      section.name === 'cautions' ? cautionList(section) : rowList(section, decimalMark),
    ),
  );

const rowList = ({ rows }: Section, mark: 'point' | 'comma'): HTMLElement =>
  element(
    'ul',
    { class: 'prepare-rows' },
    ...rows.map((row) =>
      element(
        'li',
        {},
        element('b', {}, row.what),
        amountWords(row, mark) !== '' && element('span', { class: 'amounts' }, amountWords(row, mark)),
        element('p', { class: 'hint' }, row.note),
      ),
    ),
  );

function amountWords({ amount, withSpare, unit }: Row, mark: 'point' | 'comma'): string {
  const unitOf = (value: number) => (unit === preparationTexts.piece(2) ? preparationTexts.piece(value) : unit);
  const words = (value: number) => `${decimalText(value, mark)} ${unitOf(value)}`;
  const { needed, spare } = texts.prepare;
  return [
    ...(amount === null ? [] : [withSpare === null ? words(amount) : needed(words(amount))]),
    ...(withSpare === null ? [] : [spare(words(withSpare))]),
  ].join(' · ');
}

function cautionList({ rows }: Section): HTMLElement {
  const substances = [...new Set(rows.map(({ what }) => what))];
  return element(
    'div',
    {},
    ...substances.map((what) => {
      const own = rows.filter((row) => row.what === what);
      return element(
        'div',
        { class: 'caution-block' },
        element('h3', {}, what),
        ...own.flatMap(({ pictograms }) => (pictograms ? [pictogramRow(pictograms)] : [])),
        element('p', { class: 'signal' }, own.find(({ unit }) => unit !== '')?.unit ?? ''),
        element('ul', {}, ...own.map(({ note }) => element('li', {}, note))),
      );
    }),
  );
}
