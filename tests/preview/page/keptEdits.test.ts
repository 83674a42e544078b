import { describe, expect, it } from 'vitest';
import { stillFits, typedOver } from '../../../src/preview/page/keptEdits.ts';
import type { CellView, SheetView } from '../../../src/preview/view.ts';

const sheet = (cells: Readonly<Record<string, string>>): SheetView => ({
  id: 1,
  name: 'Second period',
  hidden: false,
  rows: 9,
  columns: 4,
  frozenRows: 0,
  frozenColumns: 0,
  columnWidths: [],
  rowHeights: [],
  hiddenColumns: [],
  hiddenRows: [],
  merges: [],
  cells: Object.fromEntries(
    Object.entries(cells).map(([key, text]): [string, CellView] => [key, { text, input: text }]),
  ),
});
const before = sheet({ '2,1': 'Moles of solute', '2,2': '1', '3,1': 'Mass of solute' });
const edit = { sheet: 1, row: 2, column: 2, text: '0.064' };
const kept = { edit, reason: '', typedOver: typedOver(before, edit) };

describe('stillFits', () => {
  it('lets a text go to its cell where nobody changed it meanwhile, or where it arrived after all', () => {
    expect(stillFits(kept, before)).toEqual({ fits: true });
    expect(stillFits(kept, sheet({ '2,1': 'Moles of solute', '2,2': '0.064' }))).toEqual({ fits: true });
  });
  it('keeps it where somebody typed there', () => {
    expect(stillFits(kept, sheet({ '2,1': 'Moles of solute', '2,2': '9' }))).toEqual({
      fits: false,
      reason: 'Somebody else typed “9” here meanwhile.',
    });
  });
  it('keeps it where another row stands there now, or the sheet is gone', () => {
    expect(stillFits(kept, sheet({ '2,1': 'Mass of solute', '2,2': '1' })).reason).toContain('rows changed');
    expect(stillFits(kept, undefined).fits).toBe(false);
  });
  it('keeps what was refused', () => {
    expect(stillFits({ edit, reason: 'no' }, before)).toEqual({ fits: false });
  });
});
