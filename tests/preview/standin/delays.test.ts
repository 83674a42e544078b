import { describe, expect, it } from 'vitest';
import { cellView, open, text, typeIn } from './script.ts';

describe('delayed results', () => {
  it('show that they are loading, with what depends on them, until they are let through', () => {
    const host = open('function see() { return SpreadsheetApp.getActiveSheet().getRange("B1:C1").getValues(); }', {
      delays: true,
    });
    typeIn(host, { A1: '2', B1: '=TWICE(A1)', C1: '=B1+1', D1: '=TABLE(2,2)', F1: '=TWICE(B1)' });
    expect(['B1', 'C1', 'D1', 'F1'].map((cell) => text(host, cell))).toEqual(Array(4).fill('Loading...'));
    expect(cellView(host, 'B1')?.error).toBeUndefined();
    expect(host.run('teacher', 'see', [])).toEqual([['Loading...', 'Loading...']]);
    expect(host.counts.functions).toEqual({});
    host.tick();
    host.tick();
    expect(['B1', 'C1', 'D1', 'E2', 'F1'].map((cell) => text(host, cell))).toEqual(['4', '5', '11', '22', '8']);
    expect(host.counts.functions).toEqual({ TWICE: 2, TABLE: 1 });
  });
  it('of a call whose arguments changed meanwhile are asked for once', () => {
    const host = open('', { delays: true });
    typeIn(host, { A1: '1', B1: '=TWICE(A1)' });
    typeIn(host, { A1: '2' });
    host.release();
    expect([text(host, 'B1'), host.counts.functions]).toEqual(['4', { TWICE: 1 }]);
  });
  it('can be let through one by one', () => {
    const host = open('', { delays: true });
    typeIn(host, { A1: '=TWICE(1)', A2: '=TWICE(2)' });
    expect(host.release(1)).toBe(1);
    expect([text(host, 'A1'), text(host, 'A2')]).toEqual(['2', 'Loading...']);
    expect([host.release(), host.release()]).toEqual([1, 0]);
  });
});

describe('calls that fail', () => {
  it("show the host's words for too many scripts, until the formula is entered again", () => {
    const host = open(
      "function again() { const cell = SpreadsheetApp.getActiveSheet().getRange('B1'); cell.setFormula(cell.getFormula()); }",
    );
    host.failCalls('TWICE', 1);
    typeIn(host, { A1: '2', B1: '=TWICE(A1)' });
    expect(cellView(host, 'B1')).toMatchObject({
      text: '#ERROR!',
      error: 'There are too many scripts running simultaneously for this Google user account.',
    });
    host.run('teacher', 'again', []);
    expect(text(host, 'B1')).toBe('4');
  });
});

describe('the clock', () => {
  it('is the same for the script as for NOW', () => {
    const host = open(
      'function time() { return [new Date().getTime(), Date.now(), new Date() instanceof Date, new Date(2020, 0, 1).getFullYear(), typeof Date(), Date.UTC(1970, 0, 1)]; }',
      {
        clock: () => new Date(1234567),
      },
    );
    expect(host.run('teacher', 'time', [])).toEqual([1234567, 1234567, true, 2020, 'string', 0]);
  });
  it('moves formulas with NOW on each minute only where that is switched on', () => {
    let now = new Date(2026, 2, 2, 9, 30);
    const host = open(
      'function everyMinute() { SpreadsheetApp.getActive().setRecalculationInterval(SpreadsheetApp.RecalculationInterval.MINUTE); }',
      { clock: () => now },
    );
    typeIn(host, { A1: '=TEXT(NOW(),"hh:mm")', B1: '=A1&"!"' });
    now = new Date(2026, 2, 2, 9, 31);
    host.tick();
    expect(text(host, 'A1')).toBe('09:30');
    host.run('teacher', 'everyMinute', []);
    now = new Date(2026, 2, 2, 9, 32);
    host.tick();
    expect([text(host, 'A1'), text(host, 'B1')]).toEqual(['09:32', '09:32!']);
  });
  it('leaves a function that depends on it loading for ever', () => {
    const host = open();
    typeIn(host, { A1: '=TWICE(NOW())', A2: '=NOW()', B2: '=A2*1', C2: '=TWICE(B2)', D2: '=TWICE(E2)', E2: '1' });
    host.tick();
    expect(['A1', 'C2', 'D2'].map((cell) => text(host, cell))).toEqual(['Loading...', 'Loading...', '2']);
    typeIn(host, { A2: '5' });
    expect(text(host, 'C2')).toBe('10');
  });
});
