import { describe, expect, it } from 'vitest';
import { rowNews, rowTitle } from '../../../src/preview/page/rowNews.ts';
import type { CellView, SheetView } from '../../../src/preview/view.ts';

const sheet = (cells: Readonly<Record<string, Partial<CellView>>>, view: Partial<SheetView> = {}): SheetView => ({
  id: 1,
  name: 'Second period',
  hidden: false,
  rows: 20,
  columns: 8,
  frozenRows: 0,
  frozenColumns: 0,
  columnWidths: [],
  rowHeights: [],
  hiddenColumns: [],
  hiddenRows: [],
  merges: [],
  ...view,
  cells: Object.fromEntries(
    Object.entries(cells).map(([key, cell]) => [
      key,
      { text: '', input: cell.spilled ? '' : (cell.text ?? ''), ...cell },
    ]),
  ),
});
const question = 'How to make the stock\nWrite the letters in an order that works: a) put the stopper in, b) …';
const row = (check: string, feedback: string, hint = '') =>
  sheet({
    '5,1': { text: question, input: '=INDEX(Plan!A1)' },
    '5,2': { text: 'e c f' },
    '5,4': { text: check, spilled: true },
    '5,5': { text: feedback, spilled: true },
    '5,6': { text: hint, spilled: true },
  });

describe('rowNews', () => {
  it('says title, check and feedback once, without the question', () => {
    expect(rowNews(row('on target', 'Yes, this order works.'), 5, row('', ''))).toBe(
      'How to make the stock: on target. Yes, this order works.',
    );
  });
  it('ends each text once', () => {
    expect(rowNews(row('not yet', 'Look at b and f…'), 5, row('', ''))).toBe(
      'How to make the stock: not yet. Look at b and f…',
    );
  });
  it('says the check with any news, and a hint only when it is new', () => {
    const before = row('not yet', 'Look at b.', 'dissolve first');
    expect(rowNews(row('not yet', 'Look at f.', 'dissolve first'), 5, before)).toBe(
      'How to make the stock: not yet. Look at f.',
    );
    expect(rowNews(row('not yet', 'Look at f.', 'then the mark'), 5, before)).toContain('then the mark.');
  });
  it('says nothing where nothing is new, and all of it to who asks again', () => {
    const now = row('on target', 'Yes.');
    expect(rowNews(now, 5, now)).toBeUndefined();
    expect(rowNews(now, 5)).toBe('How to make the stock: on target. Yes.');
    expect(rowNews(row('', ''), 5)).toBeUndefined();
    expect(rowNews(row('Loading...', ''), 5, row('', ''))).toBeUndefined();
  });
  it('names a row by its first visible text', () => {
    expect(rowTitle(sheet({ '5,1': { text: 'key' }, '5,2': { text: 'Mass' } }, { hiddenColumns: [1] }), 5)).toBe(
      'Mass',
    );
    expect(rowTitle(sheet({ '5,1': { text: 'x'.repeat(90) } }), 5)).toBe(`${'x'.repeat(60)}…`);
    expect(rowTitle(sheet({}), 5)).toBe('');
  });
});
