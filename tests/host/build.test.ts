import { describe, expect, it } from 'vitest';
import { type DeskArguments, type DeskCall, workFor } from '../../src/desk/acts.ts';
import type { File } from '../../src/desk/file/look.ts';
import type { Setup } from '../../src/lab/lesson/setup.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { deskSheetName } from '../../src/workbook/scratchSheet.ts';
import { answerOf, buildSample, buildSetup, call, finish, open, run, stepRow, typeIn } from './bench.ts';
import { sheetState, valueAt, workbookText } from './cells.ts';
import { setup } from './setup.ts';

/** Without the hidden sheet that tells who teaches: it has tests of its own. */
const lessonSheets = (host: StandIn) => host.book.sheets.filter(({ name }) => name !== deskSheetName);
const names = (host: StandIn) => lessonSheets(host).map(({ name }) => name);
const inView = (host: StandIn) => {
  const view = host.view('teacher');
  return view.sheets.find(({ id }) => id === view.activeSheet)?.name;
};
/** The cell in hand, as the last thing that a script put there. */
const inHand = (host: StandIn) => host.changeSince('teacher', 0).activate;
const entryOf = (host: StandIn, at: { sheet: string; key: string; step: string }) =>
  valueAt(host, { sheet: at.sheet, row: stepRow(host, at), column: 3 });
const type = (host: StandIn, at: { sheet: string; key: string; step: string }, text: string) =>
  typeIn(host, { sheet: at.sheet, cells: [[stepRow(host, at), 3, text]] });
const check = (host: StandIn, at: { sheet: string; key: string; step: string }) =>
  valueAt(host, { sheet: at.sheet, row: stepRow(host, at), column: 5 });

/** One page that stays open over all steps of a build. */
function pageOn(host: StandIn) {
  const page: File = { book: undefined };
  const ask = <Name extends DeskCall>(name: Name, ...about: DeskArguments<Name>) =>
    run(host, workFor(page, name, about));
  return { page, ask };
}

/** Built once, for tests of what comes after: each opens the file as it was left. */
let built: string | undefined;
function openBuilt(): StandIn {
  if (built === undefined) {
    const host = open();
    buildSetup(host, setup);
    built = host.save();
  }
  return open({ saved: built });
}

const otter = { sheet: 'Fern class', key: '', step: 'molar mass' };

/** Key of a team by class and name, as the Plan has it. */
function keyOf(host: StandIn, className: string, team: string): string {
  const { rows } = sheetState(host, 'Plan');
  for (let row = 1; row <= rows; row += 1) {
    const line = [1, 2, 3].map((column) => valueAt(host, { sheet: 'Plan', row, column }));
    if (line[1] === className && line[2] === team) return line[0] ?? '';
  }
  throw new Error(`Expected ${team} of ${className} in the Plan.`);
}
const withKeys = (host: StandIn) => ({
  otter: { ...otter, key: keyOf(host, 'Fern class', 'Otter') },
  heron: { ...otter, key: keyOf(host, 'Fern class', 'Heron') },
});

const total = (counts: Readonly<Record<string, number>>) =>
  Object.values(counts).reduce((sum, count) => sum + count, 0);

const withTeams = (teams: readonly string[]): Setup => ({
  ...setup,
  classes: setup.classes.map((one, index) => (index === 0 ? { ...one, teams } : one)),
});

describe('a build', () => {
  it('makes the sheets in order and counts its steps', () => {
    const host = open();
    const first = answerOf(call(host, 'startBuild', setup));
    expect(first).toEqual({ done: 1, total: 7, label: 'Help', finished: false });
    expect(names(host)).toEqual(['Sheet1', 'Plan']);
    const last = buildSetup(host, setup);
    expect(last).toMatchObject({ done: 7, total: 7, finished: true });
    // The empty sheet that the file began with is gone.
    expect(names(host)).toEqual(['Fern class', 'Moss class', 'Poll', 'Progress', 'Plan', 'Help', 'Prepare']);
    expect(host.book.interval).toBe('MINUTE');
  });

  it('shows the first class after the first build, and goes back to where the teacher was after a later one', () => {
    const host = open();
    buildSetup(host, setup);
    expect(inView(host)).toBe('Fern class');
    answerOf(call(host, 'goToTeam', 'Moss class', keyOf(host, 'Moss class', 'Newt')));
    buildSetup(host, { ...setup, classes: [...setup.classes, { name: 'Reed class', teams: ['Carp'] }] });
    expect(inView(host)).toBe('Moss class');
  });
  it.each<[string, (host: StandIn) => void]>([
    ['something typed', (host) => typeIn(host, { sheet: 'Sheet1', seat: 'teacher', cells: [[40, 3, 'x']] })],
    ['a note', (host) => host.book.decorate(sheetState(host, 'Sheet1'), 9, 9, (cell) => ({ ...cell, note: 'mine' }))],
    ['a frozen row', (host) => Object.assign(sheetState(host, 'Sheet1'), { frozenRows: 1 })],
    ['a second sheet beside it', (host) => host.book.addSheet('Roster', 1)],
    [
      'a name for a range',
      (host) => host.book.setNamed('mine', sheetState(host, 'Sheet1'), { row: 1, column: 1, rows: 1, columns: 1 }),
    ],
  ])('leaves the sheet that was there where it has %s', (_, change) => {
    const host = open();
    change(host);
    buildSetup(host, setup);
    expect(names(host)).toContain('Sheet1');
    expect(inView(host)).toBe('Fern class');
  });
  it('leaves it where somebody typed there while the table was built, and removes it whatever it is called', () => {
    const host = open();
    answerOf(call(host, 'startBuild', setup));
    typeIn(host, { sheet: 'Sheet1', seat: 'teacher', cells: [[1, 1, 'x']] });
    buildSetup(host, setup);
    expect(names(host)).toContain('Sheet1');
    const other = open();
    other.book.renameSheet(sheetState(other, 'Sheet1'), 'Tabelle1');
    buildSetup(other, setup);
    expect(names(other)).not.toContain('Tabelle1');
  });

  it('runs one check for each team, and a bounded number of calls', () => {
    const host = open();
    host.resetCounts();
    buildSample(host);
    const teams = host.counts.functions.CHECKTEAM ?? 0;
    expect(teams).toBe(12);
    expect(Object.keys(host.counts.functions)).toEqual(['CHECKTEAM']);
    const writes = host.counts.host['Range.setValues'] ?? 0;
    // Some forty for each sheet and ten for each team: in blocks, never cell by cell.
    console.log(`host calls of a build with 12 teams: ${total(host.counts.host)}, of them ${writes} writes of values`);
    expect(writes).toBeLessThan(140);
    expect(total(host.counts.host)).toBeLessThan(1800);
  });

  it('writes nothing and runs nothing when it is built again unchanged', () => {
    const host = open();
    buildSetup(host, setup);
    const before = workbookText(host);
    host.resetCounts();
    buildSetup(host, setup);
    expect(workbookText(host)).toBe(before);
    expect(host.counts.functions).toEqual({});
    expect(host.counts.host['Range.setValues'] ?? 0).toBe(0);
  });

  it('keeps entries, help wanted and names of people when it is built again', () => {
    const host = openBuilt();
    const team = withKeys(host).otter;
    const row = stepRow(host, team);
    typeIn(host, { sheet: team.sheet, cells: [[row, 3, '119.0']] });
    typeIn(host, {
      sheet: team.sheet,
      cells: [
        [row, 8, '2'],
        [row, 9, '@ll of us'],
      ],
    });
    const before = workbookText(host);
    buildSetup(host, setup);
    expect(workbookText(host)).toBe(before);
  });

  it('says that the file is busy where another run is at work, and never that something was built', () => {
    const host = open();
    host.holdLock(true);
    for (const outcome of [call(host, 'startBuild', setup), call(host, 'startSample')]) {
      expect(outcome).toMatchObject({ ok: false, problem: { reason: 'busy' } });
      expect(outcome.ok ? '' : outcome.problem.message).toMatch(
        /^Something else is being written to this file .+ nothing was done\./,
      );
    }
    host.holdLock(false);
    answerOf(call(host, 'startBuild', setup));
    host.holdLock(true);
    expect(call(host, 'continueBuild')).toMatchObject({ ok: false, problem: { reason: 'busy' } });
    expect(call(host, 'addClass', 'Reed class', ['Carp'])).toMatchObject({ ok: false, problem: { reason: 'busy' } });
    expect(call(host, 'checkAgain')).toMatchObject({ ok: false, problem: { reason: 'busy' } });
    expect(names(host)).toEqual(['Sheet1', 'Plan']);
    host.holdLock(false);
    expect(buildSetup(host, setup).finished).toBe(true);
  });

  it('leaves sheets that are not ours alone, whatever they are called', () => {
    const host = open();
    const own = sheetState(host, 'Sheet1');
    own.name = 'Plan';
    host.type('teacher', [{ sheet: own.id, row: 1, column: 1, text: 'my own plan' }]);
    buildSetup(host, setup);
    expect(valueAt(host, { sheet: 'Plan', row: 1, column: 1 })).toBe('my own plan');
    expect(names(host)).toContain('Plan 2');
    expect(check(host, { ...otter, key: 'c1-t1' })).toBe('blank');
  });

  it('names a class in Progress as its sheet is called, also where somebody has taken the name meanwhile', () => {
    const host = open();
    const { ask } = pageOn(host);
    let state = answerOf(ask('startBuild', setup));
    while (state.label !== 'Moss class') state = answerOf(ask('continueBuild'));
    const theirs = host.book.addSheet('Moss class', 0);
    typeIn(host, { sheet: 'Moss class', seat: 'teacher', cells: [[1, 1, 'Who has the keys']] });
    while (!state.finished) state = answerOf(ask('continueBuild'));
    expect(names(host).filter((name) => name.startsWith('Moss'))).toEqual(['Moss class', 'Moss class 2']);
    expect(sheetState(host, 'Moss class').id).toBe(theirs.id);
    const progress = workbookText(host)
      .split('\n\n')
      .find((text) => text.includes('"name":"Progress"'));
    expect(progress).toContain("'Moss class 2'!");
    expect(progress).not.toContain("'Moss class'!");
  });
  it('finds its sheets after they were renamed', () => {
    const host = openBuilt();
    host.book.renameSheet(sheetState(host, 'Fern class'), 'Monday');
    const count = names(host).length;
    buildSetup(host, setup);
    expect(names(host)).toHaveLength(count);
    expect(names(host)).toContain('Monday');
  });

  it('keeps names that look like formulas as names', () => {
    const teams = ['=1+1', '+x', '@a', '-2', '<b>'];
    const host = open();
    buildSetup(host, withTeams(teams));
    teams.forEach((team) => {
      const heading = stepRow(host, { ...otter, key: keyOf(host, 'Fern class', team) }) - 2;
      expect(valueAt(host, { sheet: 'Fern class', row: heading, column: 1 })).toBe(team);
      expect(check(host, { ...otter, key: keyOf(host, 'Fern class', team) })).toBe('blank');
    });
  });
});

describe('building again with other teams', () => {
  it('gives a late team the rows below and touches nobody else', () => {
    const host = openBuilt();
    const { otter: team } = withKeys(host);
    type(host, team, '119.0');
    const rowBefore = stepRow(host, team);
    host.resetCounts();
    buildSetup(host, withTeams(['Otter', 'Heron', 'Late']));
    expect(names(host).filter((name) => name.includes('kept'))).toEqual([]);
    expect(stepRow(host, team)).toBe(rowBefore);
    expect(entryOf(host, team)).toBe('119.0');
    const late = { ...otter, key: keyOf(host, 'Fern class', 'Late') };
    expect(check(host, late)).toBe('blank');
    expect(valueAt(host, { sheet: 'Fern class', row: 9, column: 1 })).toBe('Late');
  });

  it('leaves a sheet that the owner has closed to others closed to them', () => {
    const host = openBuilt();
    const [protection] = sheetState(host, 'Fern class').protections;
    if (protection !== undefined) protection.warningOnly = false;
    buildSetup(host, withTeams(['Otter', 'Heron', 'Wren']));
    expect(sheetState(host, 'Fern class').protections).toMatchObject([{ warningOnly: false }]);
    expect(stepRow(host, { ...otter, key: keyOf(host, 'Fern class', 'Wren') })).toBeGreaterThan(0);
  });
  it('makes a new sheet when a team goes, copies entries by team and step, and keeps the old one', () => {
    const host = openBuilt();
    const { otter: gone, heron } = withKeys(host);
    type(host, gone, '100');
    type(host, heron, "'=1+1");
    const words = { ...heron, step: 'in your words' };
    type(host, words, 'It spread out.');
    buildSetup(host, withTeams(['Heron']));
    const kept = names(host).find((name) => name.startsWith('Fern class, kept '));
    expect(kept).toBeDefined();
    expect(entryOf(host, { ...gone, sheet: kept ?? '' })).toBe('100');
    expect(entryOf(host, heron)).toBe(entryOf(host, { ...heron, sheet: kept ?? '' }));
    expect(entryOf(host, words)).toBe('It spread out.');
    expect(valueAt(host, { sheet: 'Fern class', row: stepRow(host, heron), column: 10 })).toBe('1');
    expect(() => stepRow(host, gone)).toThrow();
  });

  it('knows after every step what each sheet is called', () => {
    const host = openBuilt();
    host.book.addSheet('Roster', 0);
    const { page, ask } = pageOn(host);
    const known = () => page.book?.sheets.map(({ name }) => name);
    let state = answerOf(ask('startBuild', withTeams(['Otter']), { names: 'other', setAside: true }));
    for (; !state.finished; state = answerOf(ask('continueBuild')))
      expect(known()).toEqual(host.book.sheets.map(({ name }) => name));
    expect(known()?.filter((name) => name.startsWith('Fern class'))).toHaveLength(2);
  });
  it('makes a new sheet where somebody has put in a row, and loses nothing', () => {
    const host = openBuilt();
    const { otter: team, heron } = withKeys(host);
    type(host, team, '119.0');
    type(host, heron, '118.9');
    host.insertRows(
      'student',
      sheetState(host, 'Fern class').id,
      stepRow(host, { ...team, step: 'moles of solute' }),
      1,
    );
    expect(check(host, heron)).not.toBe('');
    buildSetup(host, setup);
    expect(names(host).some((name) => name.startsWith('Fern class, kept '))).toBe(true);
    expect(entryOf(host, team)).toBe('119.0');
    expect(entryOf(host, heron)).toBe('118.9');
  });

  it('keeps the sheet of a class that goes', () => {
    const host = openBuilt();
    buildSetup(host, { ...setup, classes: setup.classes.slice(0, 1) });
    expect(names(host).some((name) => name.startsWith('Moss class, kept '))).toBe(true);
    expect(names(host)).not.toContain('Moss class');
  });

  it('moves kept sheets behind all others, hidden ones as hidden as they were', () => {
    const host = openBuilt();
    host.book.addSheet('Roster', host.book.sheets.length);
    answerOf(call(host, 'goToTeam', 'Fern class', keyOf(host, 'Fern class', 'Heron')));
    sheetState(host, 'Moss class').hidden = true;
    buildSetup(host, { ...setup, classes: setup.classes.slice(0, 1) });
    const live = ['Fern class', 'Poll', 'Progress', 'Plan', 'Help', 'Prepare', 'Roster'];
    const withoutDates = () => names(host).map((name) => name.replace(/, kept .*/, ', kept'));
    expect(withoutDates().slice(0, live.length)).toEqual(live);
    expect(withoutDates().slice(live.length)).toEqual(expect.arrayContaining(['Moss class, kept']));
    expect(
      withoutDates()
        .slice(live.length)
        .filter((name) => !name.endsWith(', kept')),
    ).toEqual([]);
    const teachers = ['Plan', 'Help', 'Prepare'];
    const hidden = lessonSheets(host).filter((one) => one.hidden && !teachers.includes(one.name));
    expect(hidden.map(({ name }) => name)).toEqual([
      expect.stringMatching(/^Plan, kept /),
      expect.stringMatching(/^Moss class, kept /),
    ]);
    expect(inView(host)).toBe('Fern class');

    // A class that comes later stands among the live sheets, and so does a sheet that is made again.
    host.book.removeSheet(sheetState(host, 'Prepare'));
    buildSetup(host, setup);
    expect(withoutDates().filter((name) => !name.endsWith(', kept'))).toEqual([
      'Fern class',
      'Moss class',
      'Poll',
      'Progress',
      'Plan',
      'Help',
      'Roster',
      'Prepare',
    ]);
    expect(withoutDates().findIndex((name) => name.endsWith(', kept'))).toBe(8);
  });

  it('puts a class aside without a look away from the cell in hand', () => {
    const host = openBuilt();
    let state = answerOf(call(host, 'startBuild', { ...setup, classes: setup.classes.slice(0, 1) }));
    while (!state.label.includes('Moss class') && !state.finished) state = answerOf(call(host, 'continueBuild'));
    answerOf(call(host, 'goToTeam', 'Fern class', keyOf(host, 'Fern class', 'Heron')));
    const before = inHand(host);
    expect(before?.row).toBeGreaterThan(1);
    answerOf(call(host, 'continueBuild'));
    expect(names(host).at(-1)).toMatch(/^Moss class, kept /);
    expect(inView(host)).toBe('Fern class');
    expect(inHand(host)).toEqual(before);
  });

  it('keeps no copy of the Plan while no line of a team changes', () => {
    const host = openBuilt();
    buildSetup(host, { ...setup, settings: { ...setup.settings, seed: '99', figures: '4' } });
    expect(names(host).filter((name) => name.includes('kept'))).toEqual([]);
    expect(answerOf(call(host, 'readLesson')).setup.settings).toMatchObject({ seed: '99', figures: '4' });
  });

  it('leaves out the row about one ion for a substance without ions, and counts without it', () => {
    const host = open();
    const sugar = { ...setup, givens: { ...setup.givens, formula: 'C12H22O11', ion: '' } };
    buildSetup(host, sugar);
    const team = { ...otter, key: keyOf(host, 'Fern class', 'Otter') };
    expect(check(host, team)).toBe('blank');
    expect(() => stepRow(host, { ...team, step: 'ion molarity' })).toThrow();
    const { stepCount, teams } = answerOf(call(host, 'readClass', 'Fern class'));
    expect(teams[0]?.steps.filter(({ id }) => id !== 'in your words')).toHaveLength(stepCount);
    const salt = call(host, 'startBuild', { ...setup, givens: { ...setup.givens, ion: '' } });
    expect(salt).toMatchObject({ ok: false, problem: { field: 'givens.ion' } });
  });

  it('keeps the earlier Plan when other numbers are wanted', () => {
    const host = openBuilt();
    buildSetup(host, { ...setup, givens: { ...setup.givens, 'stock molarity': '0.400' } });
    expect(names(host).some((name) => name.startsWith('Plan, kept '))).toBe(true);
    // To the last figure, as it was typed.
    const planned = Object.values(host.view('teacher').sheets.find(({ name }) => name === 'Plan')?.cells ?? {}).map(
      ({ text }) => text,
    );
    expect(planned).toContain('0.400');
    expect(planned).not.toContain('0.4');
    expect(check(host, { ...otter, key: keyOf(host, 'Fern class', 'Otter') })).toBe('blank');
  });
});

describe('the Plan', () => {
  const givenCell = (host: StandIn, key: string, name: string) => {
    const { rows, columns } = sheetState(host, 'Plan');
    let heading = 0;
    for (let row = 1; row <= rows; row += 1) {
      const first = valueAt(host, { sheet: 'Plan', row, column: 1 });
      if (first === 'key') heading = row;
      if (heading === 0 || first !== key) continue;
      for (let column = 1; column <= columns; column += 1) {
        if (valueAt(host, { sheet: 'Plan', row: heading, column }) === name) return { row, column };
      }
    }
    throw new Error(`Expected ${name} of ${key} in the Plan.`);
  };
  const question = (host: StandIn, at: { sheet: string; key: string; step: string }) =>
    valueAt(host, { sheet: at.sheet, row: stepRow(host, at), column: 2 });

  it('is the only source: a number changed there is in the questions and checks at once', () => {
    const host = openBuilt();
    const team = { ...withKeys(host).otter, step: 'moles of solute' };
    const { row, column } = givenCell(host, team.key, 'stock molarity');
    type(host, team, '0.0900');
    expect(check(host, team)).not.toBe('on target');
    host.resetCounts();
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[row, column, '0.450']] });
    expect(question(host, team)).toContain('0.450 mol/L');
    expect(check(host, team)).toBe('on target');
    expect(host.counts.functions.CHECKTEAM).toBe(1);
    expect(answerOf(call(host, 'readLesson')).problems).toEqual([]);
    buildSetup(host, setup);
    expect(question(host, team)).toContain('0.450 mol/L');
  });

  it('gives each team its own numbers however it is sorted', () => {
    const host = openBuilt();
    const keys = withKeys(host);
    const before = [keys.otter, keys.heron].map((team) => question(host, { ...team, step: 'moles of solute' }));
    const { row } = givenCell(host, keys.otter.key, 'formula');
    const count = setup.classes.flatMap(({ teams }) => teams).length;
    const first = Math.min(row, givenCell(host, keys.heron.key, 'formula').row);
    host.sortRows(
      'teacher',
      sheetState(host, 'Plan').id,
      { row: first, column: 1, rows: count, columns: 10 },
      3,
      false,
    );
    expect([keys.otter, keys.heron].map((team) => question(host, { ...team, step: 'moles of solute' }))).toEqual(
      before,
    );
    buildSetup(host, setup);
    expect(names(host).filter((name) => name.startsWith('Fern class'))).toEqual(['Fern class']);
    expect([keys.otter, keys.heron].map((team) => question(host, { ...team, step: 'moles of solute' }))).toEqual(
      before,
    );
  });

  it('reports a key that is used twice and never guesses', () => {
    const host = openBuilt();
    const { otter: team, heron } = withKeys(host);
    const { row } = givenCell(host, heron.key, 'formula');
    type(host, { ...team, step: 'moles of solute' }, '0.06');
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[row, 1, team.key]] });
    expect(check(host, { ...team, step: 'moles of solute' })).toBe('unreadable');
    const heading = stepRow(host, team) - 2;
    expect(valueAt(host, { sheet: 'Fern class', row: heading, column: 1 })).toContain('two lines of the Plan');
    expect(answerOf(call(host, 'readLesson')).problems.join(' ')).toContain(
      `the key “${team.key}” is there more than once`,
    );
    const again = call(host, 'startBuild', setup);
    expect(again.ok).toBe(false);
  });

  it('is read back as it was built', () => {
    const host = openBuilt();
    const { setup: read, problems, classes, built } = answerOf(call(host, 'readLesson'));
    expect(problems).toEqual([]);
    expect(read).toEqual(setup);
    expect(classes).toEqual(['Fern class', 'Moss class']);
    expect(built).toBe(true);
  });
});

/** Row of a class sheet that says so. */
const inventedRow = 5;

describe('the sample', () => {
  it('is refused in a file that has a lesson of its own', () => {
    const host = openBuilt();
    const before = workbookText(host);
    const outcome = call(host, 'startSample');
    expect(outcome).toMatchObject({ ok: false });
    expect(workbookText(host)).toBe(before);
  });
  it('comes with entries, says that it is invented, and writes over nobody', () => {
    const host = open();
    buildSample(host);
    const { setup: read, classes } = answerOf(call(host, 'readLesson'));
    const [className = ''] = classes;
    expect(valueAt(host, { sheet: className, row: inventedRow, column: 2 })).toContain('Invented');
    const view = answerOf(call(host, 'readClass', className));
    const entries = view.teams.flatMap(({ steps }) => steps.filter(({ entry }) => entry !== ''));
    expect(entries.length).toBeGreaterThan(20);
    expect(entries.some(({ check: word }) => word === 'on target')).toBe(true);
    expect(entries.some(({ check: word }) => word === 'not yet')).toBe(true);
    // The view is alive: somebody tried often, somebody has been silent, and who has finished comes last.
    expect(view.talkFirst[0]?.reason).toBe(
      'Mass to weigh: the value matches a result with the volume left in mL. At least 4 tries at Mass to weigh.',
    );
    expect(view.talkFirst.map(({ reason }) => reason)).toEqual(
      expect.arrayContaining([expect.stringContaining('Nothing new for 11 minutes')]),
    );
    expect(view.talkFirst.findIndex(({ ready }) => ready === true)).toBe(view.talkFirst.length - 1);
    const team = view.teams[0];
    const at = { sheet: className, key: team?.key ?? '', step: 'molar mass' };
    type(host, at, 'our own');
    buildSample(host);
    expect(entryOf(host, at)).toBe('our own');
    expect(read.classes.length).toBe(2);
  });
  it('stays a sample, with one Plan, when it is built again from the sidebar without a change', () => {
    const host = open();
    buildSample(host);
    const before = names(host);
    buildSetup(host, answerOf(call(host, 'readLesson')).setup);
    const { classes, setup: read } = answerOf(call(host, 'readLesson'));
    expect(names(host)).toEqual(before);
    expect(valueAt(host, { sheet: 'Plan', row: 3, column: 1 })).toContain('invented school');
    expect(valueAt(host, { sheet: classes[0] ?? '', row: inventedRow, column: 2 })).toContain('Invented');
    finish(
      host,
      call(host, 'startBuild', { ...read, classes: [{ name: 'Our own', teams: ['Newt'] }] }, { sample: 'remove' }),
    );
    expect(valueAt(host, { sheet: 'Plan', row: 3, column: 1 })).not.toContain('invented');
    expect(names(host).filter((name) => classes.includes(name) || /kept|lesson of|2$/.test(name))).toEqual([]);
  });
  it('is asked for from the menu: the sidebar opens and is told to build it', () => {
    const host = open({ sidebarHtml: '<body><p>sidebar</p></body>' });
    const panel = host.choose('teacher', 'buildSampleFromMenu');
    expect(panel?.html).toBe('<body data-page="sidebar" data-about="sample"><p>sidebar</p></body>');
    expect(names(host)).toEqual(['Sheet1']);
  });
});
