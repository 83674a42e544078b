import type { BuildState } from '../../src/desk/views.ts';
import { deskWords } from '../../src/desk/words.ts';
import type { Setup } from '../../src/lab/lesson/setup.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { buildSetup, call, finish, open, stepRow, typeIn } from './bench.ts';
import { valueAt } from './cells.ts';
import { setup } from './setup.ts';

export const [fern, moss] = ['Fern class', 'Moss class'] as const;
export const first = '2026-03-02.1';
export const two: Setup = {
  ...setup,
  classes: [
    { name: fern, teams: ['Otter'] },
    { name: moss, teams: ['Newt'] },
  ],
};
export const chloride: Setup = {
  ...two,
  givens: { ...setup.givens, formula: 'KCl', ion: 'Cl-' },
  classes: two.classes.filter(({ name }) => name === fern),
};
/** Name of a sheet that was put away. */
export const away = (name: string, day = '2026-03-02') => deskWords.awayName(name, day);
export const on = (day: string) => () => new Date(`2026-03-${day}T10:00:00Z`);

export const typeEntry = (host: StandIn, sheet: string, key: string, step: string, text: string) =>
  typeIn(host, { sheet, cells: [[stepRow(host, { sheet, key, step }), at.entry, text]] });
export const at2 = (host: StandIn, sheet: string, key: string, step: string, column: number) =>
  valueAt(host, { sheet, row: stepRow(host, { sheet, key, step }), column });

/** Two classes that have worked on one day, as their file keeps it. */
export const worked = (() => {
  let saved: string | undefined;
  return (): string => {
    if (saved !== undefined) return saved;
    const host = open({ clock: on('02') });
    buildSetup(host, two);
    typeEntry(host, fern, 'c1-t1', 'molar mass', '119.0');
    typeEntry(host, moss, 'c2-t1', 'molar mass', '119.0');
    typeIn(host, {
      sheet: fern,
      cells: [[stepRow(host, { sheet: fern, key: 'c1-t1', step: 'cautions read' }) - 1, at.who, 'Ana, Bo']],
    });
    saved = host.save();
    return saved;
  };
})();
export const next = (host: StandIn, wanted = chloride): BuildState => finish(host, call(host, 'nextLesson', wanted));
