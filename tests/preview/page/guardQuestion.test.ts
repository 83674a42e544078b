import { describe, expect, it } from 'vitest';
import { guardQuestion } from '../../../src/preview/page/guardQuestion.ts';
import { whoseRows } from '../../../src/preview/page/whose.ts';
import type { CellView, SheetView } from '../../../src/preview/view.ts';

/** Blocks of ten rows for each team: a heading row with the formula that fills the rows under it. */
function classSheet(teams: readonly string[]): SheetView {
  const cells: Record<string, CellView> = {};
  teams.forEach((team, index) => {
    const heading = index * 10 + 1;
    cells[`${heading},1`] = { text: team, input: team, guarded: 'warning' };
    cells[`${heading},4`] = { text: 'Check', input: '=CHECKTEAM(A1:A9)', guarded: 'warning' };
    for (let row = heading + 1; row <= heading + 8; row += 1) {
      cells[`${row},1`] = { text: `Step ${row}`, input: `Step ${row}`, guarded: 'warning' };
      cells[`${row},2`] = { text: '1.5', input: '1.5' };
      cells[`${row},4`] = { text: 'on target', input: '', spilled: true, filledBy: `${heading},4`, guarded: 'warning' };
    }
  });
  return {
    id: 1,
    name: 'Second period',
    hidden: false,
    rows: 200,
    columns: 6,
    frozenRows: 0,
    frozenColumns: 0,
    columnWidths: [],
    rowHeights: [],
    hiddenColumns: [],
    hiddenRows: [],
    merges: [],
    cells,
  };
}
const sheet = classSheet(['Basalt', 'Quartz', 'Marble', 'Pumice', 'Shale', 'Gneiss']);
const places = (top: number, left: number, bottom: number, right: number) =>
  Array.from({ length: bottom - top + 1 }, (_, down) =>
    Array.from({ length: right - left + 1 }, (_, across) => ({ row: top + down, column: left + across })),
  ).flat();
const ask = (at: ReturnType<typeof places>, mine: readonly string[], kind: 'cells' | 'rows' = 'cells') =>
  guardQuestion(sheet, { kind, places: at, mine });

describe('whoseRows', () => {
  it('names rows by the row of the formula that fills them', () => {
    expect(whoseRows(sheet, [3, 15, 4])).toEqual(['Basalt', 'Quartz']);
    expect(whoseRows(sheet, [11])).toEqual(['Quartz']);
    expect(whoseRows(sheet, [10, 150])).toEqual([]);
  });
});

describe('guardQuestion', () => {
  it('asks nothing for an entry, one’s own or another’s', () => {
    expect(ask(places(3, 2, 3, 2), ['Basalt'])).toBeUndefined();
    expect(ask(places(13, 2, 13, 2), ['Basalt'])).toBeUndefined();
    expect(ask(places(2, 2, 9, 2), ['Basalt'])).toBeUndefined();
  });
  it('asks once for a cell that holds one’s own table together', () => {
    const question = ask(places(3, 1, 3, 1), ['Basalt']);
    expect(question).toMatchObject({ title: 'Change a cell of the table?', eachTime: false });
    expect(question?.body).toBe(
      'It belongs to Basalt. It holds the table together. Undo brings it back. You are asked once in this window.',
    );
  });
  it('says how many cells and whose, and asks each time, where a block reaches other teams', () => {
    const all = places(1, 1, 59, 2);
    const question = ask(all, ['Basalt']);
    expect(question?.title).toBe('Change 118 cells?');
    expect(question?.body).toContain('They belong to Basalt, Quartz, Marble and 3 more.');
    expect(question?.body).not.toContain('asked once');
    expect(question?.eachTime).toBe(true);
  });
  it('asks each time before another team’s entries are cleared', () => {
    expect(ask(places(12, 2, 14, 2), ['Basalt'])).toMatchObject({ title: 'Change 3 cells?', eachTime: true });
    expect(ask(places(12, 2, 14, 2), ['Quartz'])).toBeUndefined();
  });
  it('asks each time for many cells, though they are one’s own', () => {
    const question = guardQuestion(classSheet(['Basalt']), {
      kind: 'cells',
      places: places(1, 1, 30, 2),
      mine: ['Basalt'],
    });
    expect(question).toMatchObject({ title: 'Change 60 cells?', eachTime: true });
  });
  it('says what happens before something is typed over what a formula fills', () => {
    const question = ask(places(3, 4, 3, 4), ['Basalt']);
    expect(question?.body).toContain(
      'A formula fills it. While your text stands there, all that this formula fills goes blank.',
    );
    expect(question?.eachTime).toBe(true);
  });
  it('asks for rows as for cells, but what fills them goes with them', () => {
    const two = classSheet(['Basalt']);
    const question = guardQuestion(two, { kind: 'rows', places: places(3, 1, 4, 4), mine: ['Basalt'] });
    expect(question).toMatchObject({ title: 'Change rows with 8 cells of the table?', eachTime: false });
  });
});
