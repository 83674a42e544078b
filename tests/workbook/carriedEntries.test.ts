import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../src/measurement/cellValue.ts';
import { carriedEntries } from '../../src/workbook/carriedEntries.ts';
import { classColumns } from '../../src/workbook/layout.ts';
import { planClassSheet } from '../../src/workbook/planClassSheet.ts';
import { planPlaces } from '../../src/workbook/planPlanSheet.ts';
import { newSheetNames } from '../../src/workbook/sheetNames.ts';
import { teamsAlone } from '../../src/workbook/teamsAlone.ts';
import type { SheetPlan } from '../../src/workbook/workbook.ts';
import { lesson } from './lesson.ts';

type Cells = readonly (readonly CellValue[])[];
const [key, name, entry, who] = [1, 2, 3, 4];
const area = (row: number, column: number, rows: number) => ({ row, column, rows, columns: 1 });

/** A sheet of two teams with two rows each; who a team is stands in its heading row. */
const plan = (change: Partial<SheetPlan> = {}): SheetPlan =>
  ({
    role: { kind: 'class', className: 'Fern class' },
    identity: {
      firstRow: 2,
      columns: [key, name],
      rows: [
        ['a', ''],
        ['a', 'moles'],
        ['a', 'mass'],
        ['b', ''],
        ['b', 'moles'],
        ['b', 'mass'],
      ],
    },
    carried: [entry, who],
    writable: [area(3, entry, 2), area(6, entry, 2), area(2, who, 1), area(5, who, 1)],
    unprotected: [],
    ...change,
  }) as unknown as SheetPlan;
const carried = (from: Cells, to: Cells = [], change: Partial<SheetPlan> = {}) =>
  carriedEntries({ plan: plan(change), from, to });

describe('entries that are carried to a sheet of another layout', () => {
  it('go with their team and step, wherever they stood', () => {
    expect(
      carried([
        ['b', '', '', 'Cy'],
        ['b', 'mass', '7.14', ''],
        ['b', 'moles', '0.06', ''],
        ['a', '', '', 'Ana'],
        ['a', 'moles', '0.05', ''],
      ]),
    ).toEqual([
      { row: 3, column: entry, values: ['0.05'] },
      { row: 6, column: entry, values: ['0.06', '7.14'] },
      { row: 2, column: who, values: ['Ana'] },
      { row: 5, column: who, values: ['Cy'] },
    ]);
  });
  it('are written in one run where they stand below each other, and nothing is written between', () => {
    const from = [
      ['a', 'moles', '0.05'],
      ['a', 'mass', ''],
      ['b', 'moles', ''],
      ['b', 'mass', '7.14'],
    ];
    expect(carried(from)).toEqual([
      { row: 3, column: entry, values: ['0.05'] },
      { row: 7, column: entry, values: ['7.14'] },
    ]);
  });
  it('go to the row of their name where people have put in, swapped or taken out rows of the new sheet by then', () => {
    const from = [
      ['a', 'moles', '0.05'],
      ['a', 'mass', '7.14'],
      ['b', 'mass', '9'],
    ];
    const putIn = [[], ['a', ''], [], ['a', 'moles'], ['a', 'mass'], ['b', ''], ['b', 'moles'], ['b', 'mass']];
    expect(carried(from, putIn)).toEqual([
      { row: 4, column: entry, values: ['0.05', '7.14'] },
      { row: 8, column: entry, values: ['9'] },
    ]);
    const swapped = [[], ['a', ''], ['a', 'mass'], ['a', 'moles'], ['b', ''], ['b', 'moles'], ['b', 'mass']];
    expect(carried(from, swapped)).toEqual([
      { row: 4, column: entry, values: ['0.05'] },
      { row: 3, column: entry, values: ['7.14'] },
      { row: 7, column: entry, values: ['9'] },
    ]);
    const takenOut = [[], ['a', ''], ['a', 'mass'], ['b', ''], ['b', 'moles'], ['b', 'mass']];
    expect(carried(from, takenOut)).toEqual([
      { row: 3, column: entry, values: ['7.14'] },
      { row: 6, column: entry, values: ['9'] },
    ]);
  });
  it('say that their letters are of an older table, where the letters of a row have changed since', () => {
    const relettered = { since: 99, column: entry, rows: [2, 4], before: 'older: ' };
    const from = [
      ['a', '', '', 'Ana'],
      ['a', 'moles', '0.05'],
      ['a', 'mass', 'c a b'],
      ['b', 'mass', '7.14'],
    ];
    expect(carried(from, [], { relettered })).toEqual([
      { row: 3, column: entry, values: ['0.05', 'older: c a b'] },
      { row: 7, column: entry, values: ['7.14'] },
      { row: 2, column: who, values: ['Ana'] },
    ]);
  });
  it('are people alone for another activity: nothing of a row but the heading of its team', () => {
    const { carried: columns, identity } = teamsAlone(plan());
    expect(columns).toEqual([classColumns.who]);
    expect(identity.rows).toEqual([
      ['a', ''],
      ['', ''],
      ['', ''],
      ['b', ''],
      ['', ''],
      ['', ''],
    ]);
  });
  it('never replace what stands in the new sheet, and make no run where there is nothing to carry', () => {
    const to = [[], [], ['a', 'moles', '1'], ['a', 'mass', null]];
    const from = [
      ['a', 'moles', '0.05'],
      ['a', 'mass', '7.14'],
    ];
    expect(carried(from, to)).toEqual([{ row: 4, column: entry, values: ['7.14'] }]);
    expect(carried([['a', 'moles', '0.05']], to)).toEqual([]);
    expect(carried([['a', 'moles', '']])).toEqual([]);
    expect(carried([['a', 'moles', null]])).toEqual([]);
    expect(carried([['c', 'moles', '5']])).toEqual([]);
  });
  it('come from the first of two rows alike, and from no row without a team', () => {
    expect(
      carried([
        ['', '', 'no team', 'x'],
        ['a', 'moles', 'first'],
        ['a', 'moles', 'second'],
      ]),
    ).toEqual([{ row: 3, column: entry, values: ['first'] }]);
  });
  it('stay out of cells that people do not write in, and go into those that the trigger notes', () => {
    const from = [
      ['a', '', 'heading', 'Ana'],
      ['a', 'moles', '0.05', 'in a row'],
    ];
    expect(carried(from)).toEqual([
      { row: 3, column: entry, values: ['0.05'] },
      { row: 2, column: who, values: ['Ana'] },
    ]);
    expect(carried(from, [], { writable: [], unprotected: [area(3, entry, 1)] })).toEqual([
      { row: 3, column: entry, values: ['0.05'] },
    ]);
    expect(carried(from, [], { writable: [{ row: 2, column: entry, rows: 2, columns: 2 }] })).toEqual([
      { row: 2, column: entry, values: ['heading', '0.05'] },
      { row: 2, column: who, values: ['Ana', 'in a row'] },
    ]);
  });
});

describe('rows that people added', () => {
  const carriesAddedRows = true;
  const from = [
    ['', '', 'above the table', ''],
    ['a', '', '', ''],
    ['a', 'moles', '', ''],
    ['', '', 'between', 'us'],
    ['b', 'mass', '', ''],
    ['', 'note', '', ''],
    ['', '', '', 'below'],
  ];

  it('are carried in their order below the planned ones, and none from above the table', () => {
    expect(carried(from, [], { carriesAddedRows })).toEqual([
      { row: 8, column: entry, values: ['between', ''] },
      { row: 8, column: who, values: ['us', 'below'] },
    ]);
  });
  it('begin with the first row of the table', () => {
    expect(carried([[], ['', '', 'first', '']], [], { carriesAddedRows })).toEqual([
      { row: 8, column: entry, values: ['first'] },
      { row: 8, column: who, values: [''] },
    ]);
  });
  it('never replace what stands there, and are left where they were unless the sheet asks for them', () => {
    const to: Cells = [[], [], [], [], [], [], [], ['', '', 'mine', ''], ['', '', '', 'yours']];
    expect(carried(from, to, { carriesAddedRows })).toEqual([
      { row: 8, column: entry, values: ['mine', ''] },
      { row: 8, column: who, values: ['us', 'yours'] },
    ]);
    expect(carried(from)).toEqual([]);
    expect(carried([['a', '', '', '']], [], { carriesAddedRows })).toEqual([]);
  });
});

describe('a class sheet for another activity', () => {
  it('takes the people of its teams, and none of their entries', () => {
    const className = 'Fern class';
    const teams = lesson.teams.filter((team) => team.className === className);
    const names = newSheetNames([className]);
    const whole = planClassSheet({ lesson, className, teams, names, places: planPlaces(lesson) });
    const { firstRow, rows } = whole.identity;
    const heading = firstRow + rows.findIndex(([team, step]) => team === 'c1-t2' && step === '');
    const line = (team: string, step: string) => {
      const cells: string[] = Array.from({ length: classColumns.givens }, () => '');
      cells[classColumns.key - 1] = team;
      cells[classColumns.step - 1] = step;
      cells[classColumns.entry - 1] = '119.00';
      cells[classColumns.who - 1] = 'Ana';
      return cells;
    };
    // A row that people put in between has no name.
    const from = [line('', ''), line('c1-t2', ''), line('c1-t2', 'molar mass')];
    expect(carriedEntries({ plan: teamsAlone(whole), from, to: [] })).toEqual([
      { row: heading, column: classColumns.who, values: ['Ana'] },
    ]);
    expect(carriedEntries({ plan: whole, from, to: [] }).map(({ column }) => column)).toContain(classColumns.entry);
  });
});
