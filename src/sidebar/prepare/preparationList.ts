import type { PreparationView } from '../../desk/views.ts';
import { writtenFormula } from '../../lab/particles/writtenFormula.ts';
import { element } from '../page/element.ts';
import { fold } from '../page/fold.ts';
import { pictogramRow } from '../page/pictogramRow.ts';
import { texts } from '../texts.ts';
import { amountTable } from './amountTable.ts';

type Section = PreparationView['sections'][number];

const isAboutAmounts = ({ name }: Section): boolean => !['cautions', 'day', 'sources'].includes(name);

/** Everything to prepare: what the day is, what to set out, and one block of cautions for each substance and strength. */
export function preparationList(
  { sections, decimalMark }: PreparationView,
  { forPaper = false }: { readonly forPaper?: boolean } = {},
): readonly HTMLElement[] {
  const amounts = sections.filter(isAboutAmounts);
  const first = sections.flatMap(({ rows }) => rows).find(({ byClass }) => byClass !== undefined);
  const classNames = first?.byClass?.map(({ className }) => className) ?? [];
  return [
    ...sections.filter(({ name }) => name === 'day').map(dayPart),
    ...(classNames.length > 1 ? [element('p', { class: 'hint' }, texts.prepare.washing)] : []),
    amountTable(amounts, { mark: decimalMark, ...(forPaper ? { classNames } : {}) }),
    ...sections.filter(({ name }) => name === 'cautions').map((section) => part(section, cautionList(section))),
    // For the teacher; whoever sets things out has no use for them.
    ...(forPaper
      ? []
      : sections
          .filter(({ name }) => name === 'sources')
          .map((section) => fold(texts.prepare.sections[section.name] ?? section.title, cautionList(section)).root)),
  ];
}

const part = (section: Section, ...content: readonly HTMLElement[]): HTMLElement =>
  element(
    'section',
    { class: `prepare-section ${section.name}-section` },
    element('h2', {}, texts.prepare.sections[section.name] ?? section.title),
    ...content,
  );

const dayPart = ({ rows }: Section): HTMLElement =>
  element(
    'section',
    { class: 'prepare-section' },
    ...rows.map(({ what, note }) => element('p', {}, element('b', {}, what), `. ${note}`)),
  );

function cautionList({ rows }: Section): HTMLElement {
  const substances = [...new Set(rows.map(({ what }) => what))];
  return element(
    'div',
    { class: 'caution-blocks' },
    ...substances.map((what) => {
      const own = rows.filter((row) => row.what === what);
      const signal = own.find(({ unit }) => unit !== '')?.unit ?? '';
      return element(
        'div',
        { class: 'caution-block' },
        element('h3', {}, writtenFormula(what)),
        ...own.flatMap(({ pictograms }) => (pictograms ? [pictogramRow(pictograms)] : [])),
        signal !== '' && element('p', { class: 'signal' }, signal),
        element('ul', {}, ...own.map(({ note }) => element('li', {}, note))),
      );
    }),
  );
}
