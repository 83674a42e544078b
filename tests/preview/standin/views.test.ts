import { describe, expect, it } from 'vitest';
import { formulaFunctionsUsed } from '../../../src/preview/standin/formulaFunctionsUsed.ts';
import { cellView, open, text, typeIn } from './script.ts';

const dress = (body: string, options = {}) => {
  const host = open(
    `function dress() { const book = SpreadsheetApp.getActive(); const sheet = book.getSheets()[0]; ${body} }`,
    options,
  );
  return { host, dressed: host.run('teacher', 'dress', []) };
};

describe('views', () => {
  it.each([
    ['0.00', 2.5, '2.50'],
    ['0', 2.4, '2'],
    ['0%', 0.5, '50%'],
    ['#,##0', 12345, '12,345'],
    ['yyyy-mm-dd', 46083, '2026-03-02'],
    ['h:mm', 0.5625, '13:30'],
    ['"✓ "@', 'on target', '✓ on target'],
    ['0;-0;0;"✓ "@', 'on target', '✓ on target'],
    ['@', '0.400', '0.400'],
  ])('apply the number format %s', (format, value, shown) => {
    const { host } = dress(
      `sheet.getRange('A1').setNumberFormat(${JSON.stringify(format)}).setValue(${JSON.stringify(value)});`,
    );
    expect(text(host, 'A1')).toBe(shown);
  });
  it('show text that ends at the edge of its cell', () => {
    const { host } = dress(
      "sheet.getRange('A1').setValue('long').setWrapStrategy(SpreadsheetApp.WrapStrategy.CLIP); sheet.getRange('B1').setValue('long');",
    );
    expect(cellView(host, 'A1')).toMatchObject({ text: 'long', clip: true });
    expect(cellView(host, 'B1')).not.toHaveProperty('clip');
  });
  it('show looks, alignment, notes, wraps and merges', () => {
    const { host } = dress(`
      sheet.getRange('A1').setValue('x').setBackground('#abc').setFontColor('white').setFontWeight('bold').setFontStyle('italic').setFontSize(14).setWrap(true).setVerticalAlignment('middle').setHorizontalAlignment('center').setNote('note');
      sheet.getRange('B2:C3').merge(); sheet.setFrozenRows(2); sheet.setFrozenColumns(1); sheet.setColumnWidths(1, 2, 150); sheet.hideColumns(5, 2); sheet.setTabColor('teal');`);
    expect(cellView(host, 'A1')).toEqual({
      text: 'x',
      input: 'x',
      background: '#aabbcc',
      color: '#ffffff',
      bold: true,
      italic: true,
      size: 14,
      wrap: true,
      vertical: 'middle',
      align: 'center',
      note: 'note',
    });
    expect(host.view('teacher').sheets[0]).toMatchObject({
      merges: [{ row: 2, column: 2, rows: 2, columns: 2 }],
      frozenRows: 2,
      frozenColumns: 1,
      hiddenColumns: [5, 6],
      tabColor: '#008080',
    });
    expect(host.view('teacher').sheets[0]?.columnWidths.slice(0, 3)).toEqual([150, 150, 100]);
  });
  it('colour by the first rule that holds', () => {
    const { host } = dress(`
      const rule = () => SpreadsheetApp.newConditionalFormatRule();
      const area = [sheet.getRange('A1:A3')];
      sheet.setConditionalFormatRules([
        rule().whenTextStartsWith('on').setBackground('#00ff00').setBold(true).setRanges(area).build(),
        rule().whenFormulaSatisfied('=$B1>5').setBackground('#ff0000').setRanges(area).build(),
        rule().whenTextContains('o').setBackground('#0000ff').setFontColor('#ffffff').setRanges(area).build(),
      ]);`);
    typeIn(host, { A1: 'on target', A2: 'not yet', B2: '6', A3: 'not yet' });
    expect(cellView(host, 'A1')).toMatchObject({ background: '#00ff00', bold: true });
    expect([cellView(host, 'A2')?.background, cellView(host, 'A3')?.background]).toEqual(['#ff0000', '#0000ff']);
    const { version } = host.view('teacher');
    typeIn(host, { B2: '1' });
    expect(host.changeSince('teacher', version).cells[0]?.cells['2,1']).toMatchObject({ background: '#0000ff' });
  });
  it('give the place a link leads to', () => {
    const host = open();
    typeIn(host, { A1: '=HYPERLINK("#gid=0&range=B7","Team 2")' });
    expect(cellView(host, 'A1')).toMatchObject({ text: 'Team 2', link: '#gid=0&range=B7' });
  });
});

describe('changes since a version', () => {
  it('name the cells that changed, also those that only depend on them, and those that were cleared', () => {
    const host = open();
    typeIn(host, { A1: '1', B1: '=A1+1', C1: 'beside', D1: '=TABLE(2,1)' });
    const { version } = host.view('teacher');
    expect(host.changeSince('teacher', version).cells).toEqual([]);
    typeIn(host, { A1: '2', D1: '' }, 'student');
    const change = host.changeSince('teacher', version);
    expect(change.sheets).toEqual([]);
    expect(Object.entries(change.cells[0]?.cells ?? {}).map(([at, cell]) => [at, cell?.text ?? null])).toEqual(
      expect.arrayContaining([
        ['1,1', '2'],
        ['1,2', '3'],
        ['1,4', null],
        ['2,4', null],
      ]),
    );
    expect(change.cells[0]?.cells['1,3']).toBeUndefined();
    expect(change.version).toBeGreaterThan(version);
  });
  it('hand over whole sheets where their shape changed, and name those that went', () => {
    const host = open(`
      function add() { SpreadsheetApp.getActive().insertSheet('Two').getRange('A1').setValue('x'); }
      function drop() { const book = SpreadsheetApp.getActive(); book.deleteSheet(book.getSheetByName('Two')); }
      function say() { SpreadsheetApp.getActive().toast('Built.', 'Bench'); SpreadsheetApp.getActive().getSheets()[0].getRange('C4').activate(); }`);
    const { version } = host.view('teacher');
    host.run('teacher', 'add', []);
    const added = host.changeSince('teacher', version);
    expect(added.sheets.map(({ name, cells }) => [name, cells['1,1']?.text])).toEqual([['Two', 'x']]);
    expect(added.order).toHaveLength(2);
    host.run('teacher', 'drop', []);
    expect(host.changeSince('teacher', added.version)).toMatchObject({
      removedSheets: [added.sheets[0]?.id],
      order: [0],
    });
    const before = host.view('teacher').version;
    host.run('teacher', 'say', []);
    expect(host.changeSince('teacher', before)).toMatchObject({
      toast: { title: 'Bench', message: 'Built.' },
      activate: { seat: 'teacher', sheet: 0, row: 4, column: 3 },
    });
    expect(host.changeSince('student', before).activate).toBeUndefined();
  });
  it('are told to whoever listens, until they stop', () => {
    const host = open();
    let heard = 0;
    const stop = host.onChange(() => {
      heard += 1;
    });
    typeIn(host, { A1: '1' });
    stop();
    typeIn(host, { A1: '2' });
    expect(heard).toBe(1);
  });
});

describe('names and sheets', () => {
  it('follow a sheet that is renamed', () => {
    const { host } = dress(
      "const two = book.insertSheet('Two'); two.getRange('A1').setValue(7); sheet.getRange('A1').setFormula('=Two!A1'); two.setName('Class 3');",
    );
    expect(cellView(host, 'A1')).toMatchObject({ text: '7', input: "='Class 3'!A1" });
  });
  it('lose a sheet that is deleted', () => {
    const { host } = dress(
      "const two = book.insertSheet('Two'); two.getRange('A1').setValue(7); sheet.getRange('A1').setFormula('=Two!A1'); book.deleteSheet(two);",
    );
    expect(text(host, 'A1')).toBe('#REF!');
  });
  it('find named ranges', () => {
    const { host, dressed } = dress(
      "sheet.getRange('B2').setValue(3); book.setNamedRange('stock', sheet.getRange('B2')); sheet.getRange('A1').setFormula('=stock*2'); return book.getRangeByName('stock').getA1Notation();",
    );
    expect([dressed, text(host, 'A1')]).toEqual(['B2', '6']);
    host.insertRows('teacher', 0, 1, 1);
    expect(text(host, 'A2')).toBe('6');
  });
  it('keep developer metadata by key', () => {
    const { dressed } = dress(
      "sheet.addDeveloperMetadata('role', 'plan', SpreadsheetApp.DeveloperMetadataVisibility.DOCUMENT); book.addDeveloperMetadata('layout', '3'); return [sheet.getDeveloperMetadata().map((one) => [one.getKey(), one.getValue()]), book.getDeveloperMetadata()[0].getValue()];",
    );
    expect(dressed).toEqual([[['role', 'plan']], '3']);
  });
});

describe('formulaFunctionsUsed', () => {
  it('says of each function who knows it', () => {
    const host = open();
    typeIn(host, { A1: '=SUM(TWICE(1),2)', A2: '=LET(x,1,x)', A3: '="SUBSTITUTE("', A4: '=VERSION()' });
    expect(formulaFunctionsUsed(host).map(({ name, own, onHost, inEngine }) => [name, own, onHost, inEngine])).toEqual([
      ['LET', false, true, false],
      ['SUM', false, true, true],
      ['TWICE', true, false, true],
      ['VERSION', false, false, true],
    ]);
  });
});
