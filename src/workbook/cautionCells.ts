import type { CautionPiece } from '../lab/lesson/cautionPieces.ts';
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

/** Always as many rows: those of a form that one row cannot hold go on in the next, and what is not needed stays empty. */
export function cautionCells(pieces: readonly CautionPiece[]): readonly CautionRow[] {
  const rows = pieces.flatMap(({ head, effects, advice }) => {
    // The cell beside it goes on, so that nothing has to lead over to it.
    const title = head.replace(/:$/, '');
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
  });
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
