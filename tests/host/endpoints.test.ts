import { beforeEach, describe, expect, it } from 'vitest';
import { defaultSettings } from '../../src/lab/lesson/defaultSettings.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { wellSaid } from '../errors/wellSaid.ts';
import { answerOf, buildSetup, call, open, savedWith, stepRow, typeIn } from './bench.ts';
import { sheetState, valueAt, workbookText } from './cells.ts';
import { setup } from './setup.ts';

const sheet = 'Fern class';
const saved = savedWith(setup);

let host: StandIn;
beforeEach(() => {
  host = open({ saved });
});
const row = (step: string, key = 'c1-t1') => stepRow(host, { sheet, key, step });

describe('readLesson', () => {
  it('offers a first lesson in an empty file and writes nothing', () => {
    const empty = open();
    const before = workbookText(empty);
    const view = answerOf(call(empty, 'readLesson'));
    expect(view.built).toBe(false);
    expect(view.setup.classes[0]?.teams).toHaveLength(6);
    expect(view.solutes.length).toBeGreaterThan(3);
    expect(view.activities.filter(({ periods }) => periods === 2).map(({ id }) => id)).toEqual(['stock and dilution']);
    expect(view.activities.filter(({ periods }) => periods === 1)).toHaveLength(view.activities.length - 1);
    expect(answerOf(call(empty, 'draftTeams', view.setup)).teams).toHaveLength(6);
    expect(workbookText(empty)).toBe(before);
  });

  it('says how far a build has come that was left', () => {
    const left = open();
    answerOf(call(left, 'startBuild', setup));
    expect(answerOf(call(left, 'readLesson')).building).toMatchObject({ done: 1, finished: false });
  });

  it.each([
    { name: 'decimal mark', typed: 'dash', says: 'point or comma' },
    { name: 'flasks on the shelf', typed: '50; two hundred', says: '“two hundred”' },
    { name: 'figures', typed: '', says: `until then “${defaultSettings.figures}” is used` },
  ])('reports $name as “$typed” in three parts', ({ name, typed, says }) => {
    const line = Array.from({ length: 80 }, (_, index) => index + 1).find(
      (candidate) => valueAt(host, { sheet: 'Plan', row: candidate, column: 1 }) === name,
    );
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[line ?? 0, 2, typed]] });
    const { problems } = answerOf(call(host, 'readLesson'));
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatch(wellSaid);
    expect(problems[0]).toContain(says);
  });

  it('says what to do where the headings of the Plan are gone', () => {
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[5, 1, 'something']] });
    const outcome = call(host, 'readLesson');
    expect(outcome.ok ? '' : outcome.problem.message).toContain('Undo the change to the headings');
  });
});

describe('readClass', () => {
  it('gives teams by steps, with entry, check and tries', () => {
    typeIn(host, { sheet, cells: [[row('molar mass'), 3, '119.00']] });
    typeIn(host, { sheet, cells: [[row('moles of solute'), 3, '60']] });
    const view = answerOf(call(host, 'readClass', sheet));
    expect(view.teams.map(({ team }) => team)).toEqual(['Otter', 'Heron']);
    expect(view.stepCount).toBe(14);
    const [otter] = view.teams;
    expect(otter?.done).toBe(1);
    expect(otter?.steps[1]).toMatchObject({
      id: 'molar mass',
      title: 'Molar mass',
      check: 'on target',
      entry: '119.00',
      tries: 1,
    });
    expect(otter?.steps[2]).toMatchObject({ check: 'not yet', tries: 1 });
    expect(view.talkFirst).toEqual([
      {
        team: 'Otter',
        reason:
          'Moles of solute: the value matches a result with the volume left in mL. The cautions are still to read.',
      },
    ]);
    expect(view.clock).toMatch(/^\d\d:\d\d$/);
  });

  it('marks an entry that is a formula, for the teacher', () => {
    const at = host.book.cell(sheetState(host, sheet), row('molar mass'), 3);
    expect(at.format?.numberFormat).toBe('@');
    host.book.decorate(sheetState(host, sheet), row('molar mass'), 3, (state) => ({
      ...state,
      format: { ...state.format, numberFormat: 'General' },
    }));
    typeIn(host, { sheet, cells: [[row('molar mass'), 3, '=100+19']] });
    const steps = answerOf(call(host, 'readClass', sheet)).teams[0]?.steps ?? [];
    expect(steps[1]).toMatchObject({ entry: '119', isFormula: true });
    expect(steps[0]?.isFormula).toBe(false);
  });

  it('finds a class whose name was changed in the Plan', () => {
    const lines = Array.from({ length: 80 }, (_, index) => index + 1).filter(
      (line) => valueAt(host, { sheet: 'Plan', row: line, column: 2 }) === sheet,
    );
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: lines.map((line) => [line, 2, 'Fourth period'] as const) });
    expect(answerOf(call(host, 'readClass', 'Fourth period')).teams).toHaveLength(2);
  });
});

describe('checkAgain', () => {
  it('enters again only the checks that failed', () => {
    host.failCalls('CHECKTEAM', 1);
    typeIn(host, { sheet, cells: [[row('molar mass'), 3, '119.00']] });
    const view = answerOf(call(host, 'readClass', sheet));
    expect(view.notYetKnown).toBe(15);
    expect(view.talkFirst).toEqual([]);
    expect(valueAt(host, { sheet: 'Progress', row: 5, column: 5 })).toBe('… not yet known');
    host.resetCounts();
    expect(answerOf(call(host, 'checkAgain'))).toEqual({ renewed: 1 });
    expect(host.counts.functions).toEqual({ CHECKTEAM: 1 });
    expect(valueAt(host, { sheet, row: row('molar mass'), column: 5 })).toBe('on target');
    expect(valueAt(host, { sheet: 'Progress', row: 5, column: 5 })).toBe('✓ done');
    expect(answerOf(call(host, 'checkAgain'))).toEqual({ renewed: 0 });
  });

  it('takes loading for not yet known', () => {
    const slow = open({ saved, delays: true });
    const view = answerOf(call(slow, 'readClass', sheet));
    expect(view.notYetKnown).toBe(30);
    slow.release();
    expect(answerOf(call(slow, 'readClass', sheet)).notYetKnown).toBe(0);
  });
});

describe('goToTeam', () => {
  it('goes to the heading of the block', () => {
    answerOf(call(host, 'goToTeam', sheet, 'c1-t2'));
    const view = host.view('teacher');
    expect(view.sheets.find(({ id }) => id === view.activeSheet)?.name).toBe(sheet);
    expect(host.changeSince('teacher', 0).activate).toMatchObject({
      row: row('cautions read', 'c1-t2') - 1,
      column: 1,
    });
  });
});

describe('every plan', () => {
  const odd: readonly unknown[] = [null, 7, '=1+1', [], {}, { classes: 'x' }, { ...setup, classes: [] }];
  it.each(['draftTeams', 'startBuild', 'readClass'] as const)(
    '%s answers odd input with a problem in three parts and changes nothing',
    (name) => {
      const before = workbookText(host);
      for (const given of odd) {
        const outcome = call(host, name, given);
        expect(outcome.ok, JSON.stringify(given)).toBe(false);
        expect(outcome.ok ? '' : outcome.problem.message).toMatch(wellSaid);
      }
      expect(workbookText(host)).toBe(before);
    },
  );

  it.each([
    { change: { classes: [{ name: 'A', teams: ['x', 'x'] }] }, field: 'classes' },
    {
      change: {
        classes: [
          { name: 'A', teams: ['x'] },
          { name: 'a', teams: ['x'] },
        ],
      },
      field: 'classes',
    },
    { change: { classes: [{ name: ' ', teams: ['x'] }] }, field: 'classes' },
    { change: { givens: { ...setup.givens, flask: '' } }, field: 'givens.flask' },
    { change: { shelf: { ...setup.shelf, flasksMl: [] } }, field: 'shelf.flasksMl' },
    { change: { activity: 'no such' }, field: 'activity' },
  ])('names the field $field that has to be mended', ({ change, field }) => {
    const outcome = call(host, 'startBuild', { ...setup, ...change });
    expect(outcome.ok ? '' : outcome.problem.field).toBe(field);
  });
});

describe('a locale with a decimal comma', () => {
  it('builds formulas that compute and reads entries with a comma', () => {
    const german = open({ locale: 'de_DE' });
    const view = answerOf(call(german, 'readLesson'));
    expect(view.decimalMark).toBe('comma');
    buildSetup(german, { ...setup, settings: { ...setup.settings, 'decimal mark': 'comma' } });
    const at = stepRow(german, { sheet, key: 'c1-t1', step: 'moles of solute' });
    expect(valueAt(german, { sheet, row: at, column: 2 })).toContain('0.300 mol/L');
    typeIn(german, { sheet, cells: [[at, 3, '0,0600']] });
    expect(valueAt(german, { sheet, row: at, column: 5 })).toBe('on target');
    expect(valueAt(german, { sheet: 'Progress', row: 5, column: 6 })).toBe('✓ done');
    expect(answerOf(call(german, 'readLesson')).problems).toEqual([]);
    const before = workbookText(german);
    german.resetCounts();
    buildSetup(german, { ...setup, settings: { ...setup.settings, 'decimal mark': 'comma' } });
    expect(workbookText(german)).toBe(before);
    expect(german.counts.host['Range.setValues'] ?? 0).toBe(0);
  });
});
