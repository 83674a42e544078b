import { describe, expect, it } from 'vitest';
import { lockedWords } from '../../../src/preview/standin/guards.ts';
import { cellView, open, typeIn } from './script.ts';

const script = `
const sheet = () => SpreadsheetApp.getActiveSpreadsheet().getSheets()[0];
function lockRange() { const p = sheet().getRange('A1:B2').protect(); p.removeEditors(p.getEditors()); return p.canEdit(); }
function onlyProtect() { sheet().getRange('A1:B2').protect(); }
function warn() { sheet().protect().setDescription('ours').setWarningOnly(true).setUnprotectedRanges([sheet().getRange('C1:C9')]); }
function lockSheet() { const p = sheet().protect(); p.setUnprotectedRanges([sheet().getRange('C1:C9')]); p.removeEditors(p.getEditors()); }
function count() { return sheet().getProtections(SpreadsheetApp.ProtectionType.SHEET).map((p) => p.getDescription()); }
function editors() { const p = sheet().getRange('A1').protect(); p.removeEditors(p.getEditors()); return p.getEditors().length; }
function unlock() { sheet().getProtections(SpreadsheetApp.ProtectionType.RANGE).forEach((p) => p.remove()); }
function write(at) { sheet().getRange(at).setValue('by script'); }
function dress(at) { sheet().getRange(at).setBackground('#ff0000'); }
function remove() { const book = SpreadsheetApp.getActive(); book.insertSheet(); book.deleteSheet(sheet()); }
`;

describe('a locked range', () => {
  it('holds the student off and lets the owner in', () => {
    const host = open(script);
    expect(host.run('teacher', 'lockRange', [])).toBe(true);
    expect(typeIn(host, { A1: 'x', C1: 'x' }, 'student').map(({ refused }) => refused[0]?.reason)).toEqual([
      lockedWords,
      undefined,
    ]);
    expect(typeIn(host, { A1: 'mine' })[0]?.refused).toEqual([]);
    expect(cellView(host, 'A1', 'student')).toMatchObject({ text: 'mine', guarded: 'locked' });
    expect(cellView(host, 'A1', 'teacher')?.guarded).toBeUndefined();
  });
  it('holds a script off that runs as the student', () => {
    const host = open(script);
    host.run('teacher', 'lockRange', []);
    expect(() => host.run('student', 'write', ['B2'])).toThrow(lockedWords);
    expect(() => host.run('student', 'dress', ['B1:C1'])).toThrow(lockedWords);
    host.run('student', 'write', ['C3']);
    host.run('teacher', 'write', ['B2']);
  });
  it('cannot be undone by the student, only by the owner', () => {
    const host = open(script);
    host.run('teacher', 'lockRange', []);
    expect(() => host.run('student', 'unlock', [])).toThrow(/do not have permission/);
    host.run('teacher', 'unlock', []);
    host.run('student', 'write', ['A1']);
  });
  it('protects nothing until somebody is taken off it', () => {
    const host = open(script);
    host.run('teacher', 'onlyProtect', []);
    expect(typeIn(host, { A1: 'x' }, 'student')[0]?.refused).toEqual([]);
  });
  it('keeps the owner and whoever locked it', () => {
    expect(open(script).run('teacher', 'editors', [])).toBe(1);
    expect(open(script).run('student', 'editors', [])).toBe(2);
  });
  it('lies over an earlier one each time', () => {
    const host = open(script);
    host.run('teacher', 'onlyProtect', []);
    host.run('teacher', 'onlyProtect', []);
    expect(host.book.sheets[0]?.protections.length).toBe(2);
  });
  it('refuses a paste in the locked cells and takes the rest', () => {
    const host = open(script);
    host.run('teacher', 'lockRange', []);
    const edits = [1, 2, 3].map((column) => ({ sheet: 0, row: 1, column, text: `c${column}` }));
    expect(host.type('student', edits).refused.map(({ edit }) => edit.column)).toEqual([1, 2]);
    expect(cellView(host, 'C1')?.text).toBe('c3');
  });
});

describe('a warning-only protection', () => {
  it('shows and lets everybody through', () => {
    const host = open(script);
    host.run('teacher', 'warn', []);
    expect(typeIn(host, { A1: 'x', C1: 'y' }, 'student').flatMap(({ refused }) => refused)).toEqual([]);
    expect([cellView(host, 'A1', 'student')?.guarded, cellView(host, 'C1', 'student')?.guarded]).toEqual([
      'warning',
      undefined,
    ]);
    host.run('student', 'write', ['A2']);
  });
  it('is one for each sheet, however often it is asked for', () => {
    const host = open(script);
    host.run('teacher', 'warn', []);
    host.run('teacher', 'warn', []);
    expect(host.run('teacher', 'count', [])).toEqual(['ours']);
  });
});

describe('a locked sheet', () => {
  it('leaves the student the cells that are let out', () => {
    const host = open(script);
    host.run('teacher', 'lockSheet', []);
    expect(typeIn(host, { B1: 'x', C1: 'y' }, 'student').map(({ refused }) => refused.length)).toEqual([1, 0]);
  });
  it('cannot be deleted, sorted or given rows by the student', () => {
    const host = open(script);
    host.run('teacher', 'lockSheet', []);
    expect(() => host.run('student', 'remove', [])).toThrow(lockedWords);
    expect(() => host.insertRows('student', 0, 1, 1)).toThrow(lockedWords);
    expect(() => host.deleteRows('student', 0, 1, 1)).toThrow(lockedWords);
    const area = { row: 1, column: 1, rows: 3, columns: 3 };
    expect(() => host.sortRows('student', 0, area, 1, true)).toThrow(lockedWords);
  });
});

describe('validation', () => {
  const choices = (allowInvalid: boolean) =>
    open(`function offer() {
      const rule = SpreadsheetApp.newDataValidation().requireValueInList(['point', 'comma'], true).setAllowInvalid(${allowInvalid}).setHelpText('Choose one.').build();
      SpreadsheetApp.getActiveSheet().getRange('A1').setDataValidation(rule);
    }`);
  it('offers its choices and refuses others where it is told to', () => {
    const host = choices(false);
    host.run('teacher', 'offer', []);
    expect(cellView(host, 'A1')?.options).toEqual(['point', 'comma']);
    expect(typeIn(host, { A1: 'full stop' })[0]?.refused[0]?.reason).toBe('Choose one.');
    expect(typeIn(host, { A1: 'comma' })[0]?.refused).toEqual([]);
    expect(typeIn(host, { A1: '' })[0]?.refused).toEqual([]);
  });
  it('lets others in where it only offers', () => {
    const host = choices(true);
    host.run('teacher', 'offer', []);
    expect(typeIn(host, { A1: 'full stop' })[0]?.refused).toEqual([]);
  });
});
