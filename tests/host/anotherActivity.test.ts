import { describe, expect, it } from 'vitest';
import type { Setup } from '../../src/lab/lesson/setup.ts';
import { remarks } from '../../src/lab/texts/feedback.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { buildSetup, open, stepRow, typeIn } from './bench.ts';
import { sheetState, valueAt } from './cells.ts';
import { setup } from './setup.ts';

const sheet = 'Fern class';
const key = 'c1-t1';
const plain: Setup = {
  ...setup,
  activity: 'solution from a solid',
  givens: { formula: 'NaHCO3', molarity: '0.250', flask: '200', ion: 'Na+' },
};
const entryOf = (host: StandIn, name: string, step: string) =>
  valueAt(host, { sheet: name, row: stepRow(host, { sheet: name, key, step }), column: at.entry });
const whoOf = (host: StandIn) =>
  valueAt(host, { sheet, row: stepRow(host, { sheet, key, step: 'cautions read' }) - 1, column: at.who });

/** A class that has worked in the everyday activity: a tick, an entry, a hint taken, and names. */
function worked(): StandIn {
  const host = open({ clock: () => new Date('2026-03-02T10:00:00Z') });
  buildSetup(host, setup);
  const tick = stepRow(host, { sheet, key, step: 'cautions read' });
  const molarMass = stepRow(host, { sheet, key, step: 'molar mass' });
  typeIn(host, {
    sheet,
    cells: [
      [tick - 1, at.who, 'Ana, Bo'],
      [tick, at.entry, 'yes, KBr'],
      [molarMass, at.entry, '119.00'],
      [molarMass, at.help, '2'],
      [molarMass, at.who, 'writes'],
    ],
  });
  return host;
}

describe('building another activity', () => {
  it('begins with blank rows, keeps who is in a team, and leaves what was typed in the kept sheet', () => {
    const host = worked();
    buildSetup(host, plain);
    for (const step of ['cautions read', 'molar mass']) expect(entryOf(host, sheet, step)).toBe('');
    const row = stepRow(host, { sheet, key, step: 'molar mass' });
    for (const column of [at.help, at.who, at.tries, at.lastEntry])
      expect(valueAt(host, { sheet, row, column })).toBe('');
    expect(whoOf(host)).toBe('Ana, Bo');
    const kept = host.book.sheets.find(({ name }) => name.startsWith(`${sheet}, kept`))?.name ?? '';
    expect(entryOf(host, kept, 'cautions read')).toBe('yes, KBr');
    expect(entryOf(host, kept, 'molar mass')).toBe('119.00');
  });

  it('does so where the rows of both have the same names', () => {
    const host = open({ clock: () => new Date('2026-03-02T10:00:00Z') });
    buildSetup(host, plain);
    const row = stepRow(host, { sheet, key, step: 'molar mass' });
    typeIn(host, { sheet, cells: [[row, at.entry, '84.01']] });
    buildSetup(host, {
      ...plain,
      activity: 'solution from a hydrate',
      givens: { ...plain.givens, formula: 'MgSO4·7H2O', ion: 'Mg2+' },
    });
    expect(entryOf(host, sheet, 'molar mass')).toBe('');
  });

  it('moves nothing where the same activity is built again', () => {
    const host = worked();
    const { id } = sheetState(host, sheet);
    buildSetup(host, { ...setup, givens: { ...setup.givens, 'target molarity': '0.150' } });
    expect(sheetState(host, sheet).id).toBe(id);
    expect(entryOf(host, sheet, 'molar mass')).toBe('119.00');
  });

  it('opens no bench by a tick for the substance before', () => {
    const host = worked();
    buildSetup(host, { ...setup, givens: { ...setup.givens, formula: 'CaBr2' } });
    const row = stepRow(host, { sheet, key, step: 'cautions read' });
    expect(entryOf(host, sheet, 'cautions read')).toBe('yes, KBr');
    expect(valueAt(host, { sheet, row, column: at.check })).toBe('not yet');
    expect(valueAt(host, { sheet, row, column: at.lookAt })).toMatch(/^A new one\. Choose/);
    const weighed = stepRow(host, { sheet, key, step: 'mass weighed' });
    expect(valueAt(host, { sheet, row: weighed, column: at.lookAt })).toBe(
      remarks.waitForTick.replace('{row}', valueAt(host, { sheet, row, column: at.title }).replace(/^\d+ /, '')),
    );
  });
});
