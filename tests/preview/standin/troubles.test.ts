import { describe, expect, it } from 'vitest';
import { copyOfFile } from '../../../src/preview/standin/copyOfFile.ts';
import { openStandIn, type StandInOptions } from '../../../src/preview/standin/openStandIn.ts';
import { servedHtml } from '../../../src/preview/standin/servedHtml.ts';
import type { Troubles } from '../../../src/preview/standin/troubles.ts';

const code = `
/** @customfunction */
function DOUBLED(number) { return number * 2; }
/** @customfunction */
function BLOCK() { return [[1, 2], [3, 4]]; }
function onOpen() { SpreadsheetApp.getUi().createMenu('Lab').addItem('Try', 'tried').addToUi(); }
function onEdit(event) {
  const sheet = event.range.getSheet();
  const count = sheet.getRange(1, 5).getValue() || 0;
  sheet.getRange(1, 5).setValue(count + 1);
}
function tried() { SpreadsheetApp.getActiveSpreadsheet().toast('tried'); }
function lockFor(ms) { return LockService.getDocumentLock().tryLock(ms); }
function tagged() {
  const file = SpreadsheetApp.getActiveSpreadsheet();
  const sheet = file.getSheets()[0];
  sheet.addDeveloperMetadata('mark', 'x');
  return sheet.copyTo(file).getDeveloperMetadata().length;
}
function marks() {
  const file = SpreadsheetApp.getActiveSpreadsheet();
  const note = PropertiesService.getDocumentProperties().getProperty('note');
  return [file.getId(), file.getSheets()[0].getDeveloperMetadata().length, note];
}
function leave() {
  SpreadsheetApp.getActiveSpreadsheet().getSheets()[0].addDeveloperMetadata('mark', 'x');
  PropertiesService.getDocumentProperties().setProperty('note', 'x');
}
function shown(html) { SpreadsheetApp.getUi().showSidebar(HtmlService.createHtmlOutput(html)); }
`;
const open = (troubles: Troubles = {}, more: Partial<StandInOptions> = {}) =>
  openStandIn({ code, sidebarHtml: '', troubles, ...more });
type Host = ReturnType<typeof open>;
const sheetOf = (host: Host) => host.book.sheets[0]?.id ?? 0;
const type = (host: Host, row: number, column: number, text: string, seat: 'teacher' | 'student' = 'student') =>
  host.type(seat, [{ sheet: sheetOf(host), row, column, text }]);
const shows = (host: Host, row: number, column: number) =>
  host.view('teacher').sheets[0]?.cells[`${row},${column}`]?.text ?? '';

describe('an account without scripts', () => {
  const host = open({ scriptsOff: ['student'] });
  it('has no menu and no panel', () => {
    expect(host.menus('student')).toEqual([]);
    expect(host.menus('teacher')).toHaveLength(1);
    expect(() => host.choose('student', 'tried')).toThrow('switched off');
    expect(() => host.run('student', 'lockFor', [1])).toThrow('switched off');
  });
  it('counts nothing, and what it makes functions work out is an error', () => {
    type(host, 1, 1, '3', 'teacher');
    type(host, 1, 2, '=DOUBLED(A1)', 'teacher');
    expect([shows(host, 1, 2), shows(host, 1, 5)]).toEqual(['6', '2']);
    type(host, 1, 1, '4', 'student');
    expect([shows(host, 1, 2), shows(host, 1, 5)]).toEqual(['#ERROR!', '2']);
    type(host, 1, 1, '5', 'teacher');
    expect(shows(host, 1, 2)).toBe('10');
  });
});

describe('consent refused', () => {
  it('stops menus and panels, and leaves triggers and functions as they are', () => {
    const host = open({ consentRefused: ['student'] });
    expect(host.menus('student')).toHaveLength(1);
    expect(() => host.choose('student', 'tried')).toThrow('Authorization is required');
    expect(() => host.run('student', 'lockFor', [1])).toThrow('Authorization is required');
    type(host, 1, 1, '=DOUBLED(2)');
    expect([shows(host, 1, 1), shows(host, 1, 5)]).toEqual(['4', '1']);
  });
});

describe('triggers off', () => {
  it('counts nothing for anybody', () => {
    const host = open({ triggersOff: true });
    type(host, 1, 1, '3');
    expect(shows(host, 1, 5)).toBe('');
    expect(host.menus('student')).toHaveLength(1);
  });
});

describe('a lock that other runs hold', () => {
  const asked = (patience: number) => {
    const host = open({ otherRuns: { seed: 5, share: 0.5, heldMs: [500, 1500] } });
    return Array.from({ length: 200 }, () => host.run('teacher', 'lockFor', [patience]) as boolean);
  };
  it('is got at once or not at all by somebody in a hurry, and by everybody who waits long enough', () => {
    const hurried = asked(300).filter(Boolean).length;
    expect(hurried).toBeGreaterThan(70);
    expect(hurried).toBeLessThan(130);
    expect(asked(1500).every(Boolean)).toBe(true);
    expect(asked(1000).filter(Boolean).length).toBeGreaterThan(hurried);
  });
  it('is held at the same times for the same seed', () => {
    expect(asked(300)).toEqual(asked(300));
  });
});

describe('a host that takes its time', () => {
  const slow = {
    seed: 3,
    triggerStartsMs: [100, 100],
    triggerTakesMs: [500, 500],
    functionTakesMs: [1000, 1000],
  } as const;
  it('shows a result when it is due, and the one of the latest arguments alone', () => {
    const host = open({ slow });
    type(host, 1, 1, '3');
    type(host, 1, 2, '=DOUBLED(A1)');
    host.passTime(900);
    expect(shows(host, 1, 2)).toBe('Loading...');
    type(host, 1, 1, '4');
    host.passTime(900);
    expect(shows(host, 1, 2)).toBe('Loading...');
    host.passTime(200);
    expect(shows(host, 1, 2)).toBe('8');
    expect(host.isIdle).toBe(true);
  });
  it('loses a count of two that read before either wrote, and none where one comes after the other', () => {
    const together = open({ slow });
    type(together, 2, 1, 'a');
    together.passTime(200);
    type(together, 3, 1, 'b');
    together.passTime(2000);
    expect(shows(together, 1, 5)).toBe('1');
    const apart = open({ slow });
    type(apart, 2, 1, 'a');
    apart.passTime(700);
    type(apart, 3, 1, 'b');
    apart.passTime(2000);
    expect(shows(apart, 1, 5)).toBe('2');
  });
  it('lets so many functions run at once and the others wait for their turn', () => {
    const host = open({ slow: { ...slow, functionsAtOnce: 2 } });
    for (const row of [1, 2, 3, 4, 5]) type(host, row, 1, `=DOUBLED(${row})`);
    const done = () => [1, 2, 3, 4, 5].filter((row) => shows(host, row, 1) === String(2 * row)).length;
    const after = [1000, 1000, 1000].map((ms) => {
      host.passTime(ms);
      return done();
    });
    expect(after).toEqual([2, 4, 5]);
  });
});

describe('copies', () => {
  it('of a sheet take its marks along, or lose them', () => {
    expect(open().run('teacher', 'tagged', [])).toBe(1);
    expect(open({ tagsLostInCopies: true }).run('teacher', 'tagged', [])).toBe(0);
  });
  it('of a file are another file, without the script’s notes, with marks or without', () => {
    const host = open();
    host.run('teacher', 'leave', []);
    const saved = host.save();
    const marksIn = (text: string) => open({}, { saved: text, fileId: 'copy' }).run('teacher', 'marks', []);
    expect(open({}, { saved }).run('teacher', 'marks', [])).toEqual(['stand-in-workbook', 1, 'x']);
    expect(marksIn(copyOfFile(saved))).toEqual(['copy', 1, null]);
    expect(marksIn(copyOfFile(saved, { tags: true }))).toEqual(['copy', 0, null]);
  });
});

describe('mishaps in a sheet', () => {
  it('a check that is typed over is gone, and its rows with it', () => {
    const host = open();
    type(host, 1, 1, '=BLOCK()');
    expect(shows(host, 2, 2)).toBe('4');
    type(host, 1, 1, 'oops');
    expect([shows(host, 1, 1), shows(host, 2, 2)]).toEqual(['oops', '']);
  });
  it('a text in the way of a block is an error until it goes', () => {
    const host = open();
    type(host, 2, 2, 'in the way');
    type(host, 1, 1, '=BLOCK()');
    expect([shows(host, 1, 1), shows(host, 2, 1)]).toEqual(['#REF!', '']);
    type(host, 2, 2, '');
    expect([shows(host, 1, 1), shows(host, 2, 2)]).toEqual(['1', '4']);
  });
});

describe('servedHtml', () => {
  it('strips what looks like a comment inside a template literal, with the rest of its line', () => {
    const page = '<p>a // b</p><script>const a = "http://x"; // said\nconst b = `see http://x`;\nlet c;</script>';
    expect(servedHtml(page)).toBe(
      '<p>a // b</p><script>const a = "http://x"; // said\nconst b = `see http:\nlet c;</script>',
    );
    expect(servedHtml('<script>f(`a /* b */ c`, `d`)</script>')).toBe('<script>f(`a  c`, `d`)</script>');
  });
  it('leaves a page without template literals as it is', () => {
    const page = '<script>f("`", /`\\/\\//, "a // b")</script>';
    expect(servedHtml(page)).toBe(page);
  });
  it('is what a panel is shown by', () => {
    const host = open();
    host.run('teacher', 'shown', ['<script>f(`http://x`)\n</script>']);
    expect(host.takePanel?.('teacher')?.html).toBe('<script>f(`http:\n</script>');
  });
});

describe('the host’s own parser', () => {
  const opened = (body: string) => () => openStandIn({ code: `function f(a) {\n  ${body}\n}`, sidebarHtml: '' });
  it('takes what stands in the host’s own examples', () => {
    expect(opened('return a?.b;')).not.toThrow();
  });
  it.each(['return 10n;', 'return import("x");', 'class A { #x = 1; }', 'class A { x = 1; }', 'a ||= 1;'])(
    'refuses %s, and names the line',
    (body) => {
      expect(opened(body)).toThrow(/Syntax error: .* line: 2 file: Code\.gs/);
    },
  );
});
