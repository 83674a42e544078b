import type { CautionPiece } from '../lab/lesson/cautionPieces.ts';
import type { CautionPieceAlso } from '../lab/lesson/cautionPiecesIn.ts';
import { classWidths } from './classWidths.ts';
import { cautionRows, classColumns, mostRowHeight } from './layout.ts';
import { looks } from './looks.ts';
import { heightOf } from './textHeight.ts';

/** One row of the cautions of a class: a form's name, what it can do, and what to do about it in two columns. */
export interface CautionRow {
  readonly title: string;
  readonly task: string;
  readonly lookAt: string;
  readonly hint: string;
}

const empty: CautionRow = { title: '', task: '', lookAt: '', hint: '' };

const textHeight = (text: string, column: number): number =>
  heightOf(text, { width: classWidths[column - 1] ?? 0, size: looks.text.size });

/** Height of a row of cautions in pixels; 0 where nothing stands in it. */
export const cautionRowHeight = ({ title, task, lookAt, hint }: CautionRow): number =>
  Math.max(
    textHeight(title, classColumns.title),
    textHeight(task, classColumns.task),
    textHeight(lookAt, classColumns.lookAt),
    textHeight(hint, classColumns.hint),
  );

/** Sentences in two columns, of which the second begins where both are as high as can be alike. */
function inTwo(sentences: readonly string[]): Pick<CautionRow, 'lookAt' | 'hint'> {
  let best = { lookAt: sentences.join(' '), hint: '' };
  const heightNow = (one: typeof best) => cautionRowHeight({ ...empty, ...one });
  for (let first = 0; first <= sentences.length; first += 1) {
    const tried = { lookAt: sentences.slice(0, first).join(' '), hint: sentences.slice(first).join(' ') };
    if (heightNow(tried) < heightNow(best)) best = tried;
  }
  return best;
}

/** The cell beside it goes on, so that nothing has to lead over to it. */
const titleOf = ({ head }: CautionPiece): string => head.replace(/:$/, '');

/** What a form can do and what to do about it, in one row or, where that is too high, in two. */
function rowsOf(piece: CautionPiece): readonly CautionRow[] {
  const { effects, advice } = piece;
  const title = titleOf(piece);
  const whole: CautionRow = { title, task: effects.join(' '), ...inTwo(advice) };
  if (cautionRowHeight(whole) <= mostRowHeight.any) return [whole];
  const half = (list: readonly string[], part: 0 | 1) => {
    const middle = Math.ceil(list.length / 2);
    return part === 0 ? list.slice(0, middle) : list.slice(middle);
  };
  return ([0, 1] as const).map((part) => ({
    title: part === 0 ? title : '',
    task: half(effects, part).join(' '),
    ...inTwo(half(advice, part)),
  }));
}

/** A form in the second language: always one row, its statements beside its advice, or all in a flow over the three columns. */
function rowAlso(piece: CautionPiece): CautionRow {
  const { effects, advice } = piece;
  const title = titleOf(piece);
  const beside = { title, task: effects.join(' '), ...inTwo(advice) };
  if (cautionRowHeight(beside) <= mostRowHeight.any) return beside;
  const all = [...effects, ...advice];
  return all
    .map((_, first) => ({ title, task: all.slice(0, first).join(' '), ...inTwo(all.slice(first)) }))
    .reduce((best, tried) => (cautionRowHeight(tried) < cautionRowHeight(best) ? tried : best), beside);
}

const columns = ['task', 'lookAt', 'hint'] as const;

/**
 * Rows with a form in the second language below what stands there, each sentence where it makes the rows least high. Where
 * not all of them have room, that is said.
 */
function withAlso(rows: readonly CautionRow[], piece: CautionPieceAlso): readonly CautionRow[] {
  const { advice, effects, more } = piece;
  // What to do first: what it can do is said by the signal word and by the first language too.
  const whole = added(rows, { piece, sentences: [...advice, ...effects] });
  return whole.isWhole ? whole.rows : added(rows, { piece, sentences: [more, ...advice, ...effects] }).rows;
}

function added(
  rows: readonly CautionRow[],
  { piece, sentences }: { readonly piece: CautionPiece; readonly sentences: readonly string[] },
): { readonly rows: readonly CautionRow[]; readonly isWhole: boolean } {
  let isWhole = true;
  let now = rows.map((row, place) => (place === 0 ? { ...row, title: `${row.title}\n${titleOf(piece)}` } : row));
  const begun = new Set<string>();
  for (const sentence of sentences) {
    const tried = now.flatMap((row, place) =>
      columns.map((column) => {
        const cell = `${place} ${column}`;
        const parting = row[column] === '' ? '' : begun.has(cell) ? ' ' : '\n';
        const next = { ...row, [column]: `${row[column]}${parting}${sentence}` };
        return { cell, place, next, height: cautionRowHeight(next) };
      }),
    );
    const best = tried.reduce((one, other) => (other.height < one.height ? other : one));
    // Where there is no room at all the first language stays as it is.
    if (best.height > mostRowHeight.any) {
      isWhole = false;
      continue;
    }
    begun.add(best.cell);
    now = now.map((row, place) => (place === best.place ? best.next : row));
  }
  return { rows: now, isWhole };
}

/** Every choice of at most so many of some places. */
function choicesOf(places: readonly number[], most: number): readonly (readonly number[])[] {
  const sets: number[][] = [[]];
  for (const place of places) for (const set of sets.slice()) sets.push([...set, place]);
  return sets.filter((set) => set.length <= most);
}

/** Rows of all forms, those of the second language below their own; as many forms have a row for it as there are rows left. */
function withSecond(
  forms: readonly (readonly CautionRow[])[],
  also: readonly CautionPieceAlso[],
): readonly (readonly CautionRow[])[] {
  const laid = (own: readonly number[], pieces = also) =>
    forms.map((rows, place) => {
      const piece = pieces[place];
      if (piece === undefined) return rows;
      return own.includes(place) ? [...rows, rowAlso(piece)] : withAlso(rows, piece);
    });
  const free = cautionRows - forms.flat().length;
  const places = also.map((_, place) => place);
  if (free >= also.length) return laid(places);
  // A statement that an earlier form has as well is said once, since not all can be said.
  const once = also.map((piece, place) => ({
    ...piece,
    effects: piece.effects.filter((said) => !also.slice(0, place).some(({ effects }) => effects.includes(said))),
  }));
  const lettersIn = (rows: readonly CautionRow[]) => rows.map((row) => Object.values(row).join('').length);
  const said = (way: readonly (readonly CautionRow[])[]) =>
    lettersIn(way.flat()).reduce((one, other) => one + other, 0);
  return choicesOf(places, Math.max(0, free))
    .map((own) => laid(own, once))
    .reduce((best, way) => (said(way) > said(best) ? way : best));
}

/**
 * Always as many rows: those of a form that one row cannot hold go on in the next, and what is not needed stays empty.
 *
 * @param also - The same forms in a second language, in the same order; none where the lesson has one language.
 */
export function cautionCells(
  pieces: readonly CautionPiece[],
  also: readonly CautionPieceAlso[] = [],
): readonly CautionRow[] {
  const forms = pieces.map(rowsOf);
  const rows = (also.length === 0 ? forms : withSecond(forms, also)).flat();
  // Several substances in one class are rare: what has no row of its own goes into the last.
  const kept = rows.slice(0, cautionRows);
  const last = kept[cautionRows - 1];
  if (last !== undefined && rows.length > cautionRows) {
    const joined = (name: keyof CautionRow) =>
      [last, ...rows.slice(cautionRows)]
        .map((row) => row[name])
        .filter((words) => words !== '')
        .join('\n');
    kept[cautionRows - 1] = {
      title: joined('title'),
      task: joined('task'),
      lookAt: joined('lookAt'),
      hint: joined('hint'),
    };
  }
  return [...kept, ...Array.from({ length: cautionRows - kept.length }, () => empty)];
}
