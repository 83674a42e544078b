import { describe, expect, it } from 'vitest';
import { open, type typeIn } from './script.ts';

type Host = Parameters<typeof typeIn>[0];
const put = (host: Host, sheet: number, cells: readonly (readonly [row: number, column: number, typed: string])[]) =>
  host.type(
    'teacher',
    cells.map(([row, column, typed]) => ({ sheet, row, column, text: typed })),
  );
const linksOf = (host: Host): (string | undefined)[][] =>
  host.view('teacher').sheets.map(({ cells }) => ['1,1', '2,1', '3,1', '4,1'].map((key) => cells[key]?.link));

describe('links of cells', () => {
  it('lead each where their own cell says, though two sheets hold the same formulas and one of them gets a row', () => {
    const host = open();
    const first = host.view('teacher').sheets[0]?.id ?? 0;
    const second = host.book.addSheet('Fourth period').id;
    const lines = ['Basalt', 'Quartz', 'Gneiss'].map(
      (team, index) =>
        [index + 1, 1, `=HYPERLINK("#gid="&$M$1&"&range=A"&MATCH("${team}",L1:L30,0),"${team}")`] as const,
    );
    for (const [sheet, gid, start] of [
      [first, 111, 10],
      [second, 222, 20],
    ] as const) {
      put(host, sheet, [
        [1, 13, String(gid)],
        [start, 12, 'Basalt'],
        [start + 1, 12, 'Quartz'],
        [start + 2, 12, 'Gneiss'],
        ...lines,
      ]);
    }
    const before = linksOf(host);
    expect(before).toEqual([
      ['#gid=111&range=A10', '#gid=111&range=A11', '#gid=111&range=A12', undefined],
      ['#gid=222&range=A20', '#gid=222&range=A21', '#gid=222&range=A22', undefined],
    ]);
    host.insertRows('student', first, 5, 1);
    expect(linksOf(host)).toEqual([
      ['#gid=111&range=A11', '#gid=111&range=A12', '#gid=111&range=A13', undefined],
      before[1],
    ]);
    host.insertRows('student', first, 1, 1);
    expect(linksOf(host)[0]).toEqual([undefined, '#gid=111&range=A11', '#gid=111&range=A12', '#gid=111&range=A13']);
    host.undo('student');
    host.undo('student');
    expect(linksOf(host)).toEqual(before);
  });
  it('go with what the formula gives now', () => {
    const host = open();
    put(host, 0, [
      [1, 2, 'yes'],
      [1, 1, '=IF(B1="yes",HYPERLINK("https://example.org/a","there"),"nowhere")'],
    ]);
    expect(linksOf(host)[0]?.[0]).toBe('https://example.org/a');
    put(host, 0, [[1, 2, 'no']]);
    expect(linksOf(host)[0]?.[0]).toBeUndefined();
    put(host, 0, [[1, 1, '=HYPERLINK("https://example.org/b")']]);
    expect(linksOf(host)[0]?.[0]).toBe('https://example.org/b');
    put(host, 0, [[1, 1, 'plain']]);
    expect(linksOf(host)[0]?.[0]).toBeUndefined();
  });
});
