import type { PreparationView } from '../../desk/views.ts';
import { decimalText } from '../../lab/judging/decimalText.ts';
import { writtenFormula } from '../../lab/particles/writtenFormula.ts';
import { preparationTexts } from '../../lab/texts/preparation.ts';
import { element } from '../page/element.ts';
import { listed, texts } from '../texts.ts';

type Section = PreparationView['sections'][number];
type Row = Section['rows'][number];

interface TableParts {
  readonly mark: 'point' | 'comma';
  /** With a box to tick in each row and a column for each of these classes; left out where there is no room for that. */
  readonly classNames?: readonly string[];
}

/** What to set out as one table: what it is, how much for each class and in all, and what to know. */
export function amountTable(sections: readonly Section[], { mark, classNames }: TableParts): HTMLElement {
  const { prepare } = texts;
  // One class needs what all of them need.
  const columns = classNames !== undefined && classNames.length > 1 ? classNames : [];
  const isTicked = classNames !== undefined;
  const heading = (words: string, className?: string) => element('th', { scope: 'col', class: className }, words);
  const width = 3 + columns.length + (isTicked ? 1 : 0);
  return element(
    'table',
    { class: isTicked ? 'amount-table ticked' : 'amount-table' },
    element(
      'thead',
      {},
      element(
        'tr',
        {},
        isTicked &&
          element('th', { scope: 'col', class: 'box-column' }, element('span', { class: 'spoken' }, prepare.done)),
        heading(prepare.what),
        ...columns.map((name) => heading(name, 'number by-class')),
        heading(prepare.needed, 'number'),
        heading(prepare.spare, 'number'),
      ),
    ),
    ...sections.map((section, place) =>
      element(
        'tbody',
        {},
        element(
          'tr',
          { class: 'section-row' },
          element('th', { scope: 'rowgroup', colspan: width }, prepare.sections[section.name] ?? section.title),
        ),
        ...section.rows.flatMap((row, at) =>
          rowsOf(row, { mark, columns, id: isTicked ? `done-${place}-${at}` : undefined }),
        ),
      ),
    ),
  );
}

interface RowParts {
  readonly mark: 'point' | 'comma';
  readonly columns: readonly string[];
  /** Of the box to tick, where there is one. */
  readonly id: string | undefined;
}

/** One row; where there is little room, what to know of it stands in a row of its own below. */
function rowsOf(row: Row, { mark, columns, id }: RowParts): readonly HTMLElement[] {
  const { prepare } = texts;
  // Pieces are counted: their unit would stand in every row and say nothing.
  const isCounted = [1, 2].some((pieces) => row.unit === preparationTexts.piece(pieces));
  const written = (amount: number | null | undefined): string =>
    amount === null || amount === undefined
      ? ''
      : `${decimalText(amount, mark)}${isCounted || row.unit === '' ? '' : `\u00a0${row.unit}`}`;
  const number = (amount: number | null | undefined, className = 'number') =>
    element('td', { class: className }, written(amount));
  const differing = columns.length === 0 && new Set(row.byClass?.map(({ amount }) => amount)).size > 1;
  const notes = [
    ...(differing ? [listed((row.byClass ?? []).map((one) => `${one.className} ${written(one.amount)}`))] : []),
    ...(row.note === '' ? [] : [row.note]),
  ].map((words) => element('p', { class: 'hint' }, words));
  const line = element(
    'tr',
    { class: id === undefined && notes.length > 0 ? 'has-notes' : undefined },
    id !== undefined &&
      element(
        'td',
        { class: 'box-column' },
        element('input', { type: 'checkbox', id, 'aria-label': prepare.ready(row.what) }),
      ),
    element(
      'th',
      { scope: 'row' },
      element('span', { class: 'what' }, writtenFormula(row.what)),
      ...(id === undefined ? [] : notes),
    ),
    ...columns.map((name) =>
      number(row.byClass?.find(({ className }) => className === name)?.amount, 'number by-class'),
    ),
    number(row.amount),
    number(row.withSpare),
  );
  if (id !== undefined || notes.length === 0) return [line];
  return [line, element('tr', { class: 'notes' }, element('td', { colspan: 3 }, ...notes))];
}
