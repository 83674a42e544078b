import { describe, expect, it } from 'vitest';
import { open } from './script.ts';

const host = open(`
function echo(value) { return value; }
function give(what) {
  const circle = { inside: {} };
  circle.inside.back = circle;
  class Flask {}
  return { date: new Date(), inner: { at: [new Date()] }, call: () => 1, circle, map: new Map(), flask: new Flask(),
    nan: NaN, holes: [1, undefined, 3], gaps: { a: undefined, b: 1 }, sheet: SpreadsheetApp.getActiveSheet(), nothing: undefined }[what];
}
function fail() { throw new Error('Expected a flask, received none.'); }
const assigned = () => 1;
let loads = 0;
function countLoads() { loads += 1; return loads; }
`);

describe('calls from the page', () => {
  it.each([[1], ['text'], [true], [null], [[1, ['a', null]]], [{ a: { b: [false] } }]])(
    'passes %j both ways',
    (value) => {
      expect(host.run('teacher', 'echo', [value])).toEqual(value);
    },
  );
  it.each(['date', 'inner', 'call', 'circle', 'map', 'flask', 'nan', 'sheet'])('refuses to give back: %s', (what) => {
    expect(() => host.run('teacher', 'give', [what])).toThrow(/illegal value/);
  });
  it.each([
    ['a date', new Date()],
    ['a function', () => 1],
    ['a date deep inside', { list: [{ at: new Date() }] }],
    ['a map', new Map()],
  ])('refuses to take %s', (_, value) => {
    expect(() => host.run('teacher', 'echo', [value])).toThrow(/illegal value in property: argument 0/);
  });
  it('says where in a value stands what it refuses, behind what it has passed', () => {
    const value = {
      rows: [
        ['a', 1],
        ['b', { at: [2, Number.NaN] }],
      ],
      last: 'c',
    };
    expect(() => host.run('teacher', 'echo', [value])).toThrow(
      'Failed due to illegal value in property: argument 0.rows[1][1].at[1] (NaN).',
    );
  });
  it('passes one record twice where it stands twice, which is no circle', () => {
    const flask = { ml: 250 };
    expect(host.run('teacher', 'echo', [[flask, { again: flask }]])).toEqual([flask, { again: flask }]);
  });
  it('turns undefined inside an array into null and drops it from a record', () => {
    expect(host.run('teacher', 'give', ['holes'])).toEqual([1, null, 3]);
    expect(host.run('teacher', 'give', ['gaps'])).toEqual({ b: 1 });
    expect(host.run('teacher', 'give', ['nothing'])).toBeNull();
  });
  it.each(['hidden_', 'assigned', 'toString', 'SpreadsheetApp', 'nowhere', 'console.log'])(
    'does not find %s',
    (name) => {
      expect(() => host.run('teacher', name, [])).toThrow(`Script function not found: ${name}`);
    },
  );
  it('loads the script afresh for each call', () => {
    expect([host.run('teacher', 'countLoads', []), host.run('teacher', 'countLoads', [])]).toEqual([1, 1]);
  });
  it("reports the script's own message", () => {
    expect(() => host.run('teacher', 'fail', [])).toThrow('Expected a flask, received none.');
  });
  it('gives copies, not the values themselves', () => {
    const given = { list: [1] };
    expect(host.run('teacher', 'echo', [given])).not.toBe(given);
  });
});

describe('menus', () => {
  it('shows what onOpen put there, for both seats', () => {
    const items = [{ label: 'Open', run: 'openPanel' }, null, { label: 'Fill', run: 'fill' }];
    expect(host.menus('teacher')).toEqual([{ title: 'Bench', items }]);
    expect(host.menus('student')).toEqual([{ title: 'Bench', items }]);
  });
  it('hands back the sidebar that an item opened', () => {
    expect(host.choose('teacher', 'openPanel')).toEqual({ kind: 'sidebar', title: 'Bench', html: '<p>bench</p>' });
  });
  it('says so when the function of an item is not there', () => {
    expect(() => host.choose('teacher', 'fill')).toThrow('Script function not found: fill');
  });
});
