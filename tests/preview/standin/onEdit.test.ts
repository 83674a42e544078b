import { describe, expect, it } from 'vitest';
import { open, text } from './script.ts';

const script = `
function onEdit(event) {
  const seen = JSON.parse(PropertiesService.getDocumentProperties().getProperty('seen') || '[]');
  seen.push({ area: event.range.getA1Notation(), sheet: event.range.getSheet().getName(), value: event.value, oldValue: event.oldValue, has: ['value' in event, 'oldValue' in event] });
  PropertiesService.getDocumentProperties().setProperty('seen', JSON.stringify(seen));
}
function seen() { return JSON.parse(PropertiesService.getDocumentProperties().getProperty('seen') || '[]'); }
function write() { SpreadsheetApp.getActiveSheet().getRange('A1').setValue('by script'); }
`;
const at = (row: number, column: number, text: string) => ({ sheet: 0, row, column, text });

describe('onEdit', () => {
  it('hears of one cell with its value and the one before', () => {
    const host = open(script);
    host.type('student', [at(2, 3, 'first')]);
    host.type('student', [at(2, 3, '12')]);
    host.type('student', [at(2, 3, '')]);
    expect(host.run('teacher', 'seen', [])).toEqual([
      { area: 'C2', sheet: 'Sheet1', value: 'first', has: [true, false] },
      { area: 'C2', sheet: 'Sheet1', value: '12', oldValue: 'first', has: [true, true] },
      { area: 'C2', sheet: 'Sheet1', oldValue: '12', has: [false, true] },
    ]);
  });
  it('hears of a pasted block once, by its range alone', () => {
    const host = open(script);
    host.type('teacher', [at(2, 1, 'a'), at(2, 2, 'b'), at(4, 1, 'c')]);
    expect(host.run('teacher', 'seen', [])).toEqual([{ area: 'A2:B4', sheet: 'Sheet1', has: [false, false] }]);
  });
  it('does not hear of what a script writes, nor of a refused edit', () => {
    const host = open(script);
    host.run('teacher', 'write', []);
    expect(host.type('teacher', [at(1, 99, 'outside')]).refused).toEqual([
      { edit: at(1, 99, 'outside'), reason: 'This cell is outside the sheet.' },
    ]);
    expect(host.run('teacher', 'seen', [])).toEqual([]);
  });
  it('may write in its own workbook as whoever typed', () => {
    const host = open('function onEdit(event) { event.range.offset(0, 1).setValue("seen " + event.value); }');
    host.type('student', [at(1, 1, 'x')]);
    expect(text(host, 'B1')).toBe('seen x');
  });
  it('leaves what was typed where it fails', () => {
    const host = open('function onEdit() { throw new Error("no luck"); }');
    expect(host.type('student', [at(1, 1, 'x')]).refused).toEqual([]);
    expect(text(host, 'A1')).toBe('x');
    expect(host.triggerErrors).toEqual(['onEdit: Error: no luck']);
  });
  it('can be denied the lock by another run', () => {
    const host = open(
      'function onEdit(event) { const lock = LockService.getDocumentLock(); event.range.offset(0, 1).setValue(lock.tryLock(100)); }',
    );
    host.holdLock(true);
    host.type('student', [at(1, 1, 'x')]);
    host.holdLock(false);
    host.type('student', [at(2, 1, 'x')]);
    expect([text(host, 'B1'), text(host, 'B2')]).toEqual(['FALSE', 'TRUE']);
  });
});
