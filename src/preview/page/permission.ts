import type { SheetView } from '../view.ts';
import type { Place } from './cellName.ts';
import { askFirst } from './dialogs.ts';
import { guardQuestion } from './guardQuestion.ts';
import { whoseRows } from './whose.ts';

type Guarded = 'cells' | 'rows';

export interface Permission {
  /** Asks before a change that may hurt: how many cells, and whose. */
  allowed(places: readonly Place[], kind?: Guarded): Promise<boolean>;
  /** Whether guarded cells may be changed without asking again. */
  readonly isGiven: boolean;
}

/** What this window may change: a question that was answered with yes holds until it is closed. */
export function createPermission({
  sheet: sheetNow,
  lastRow,
}: {
  readonly sheet: () => SheetView | undefined;
  /** The row that this window typed in last; 0 before it did. */
  readonly lastRow: () => number;
}): Permission {
  const answered = new Set<Guarded>();
  return {
    async allowed(places, kind = 'cells') {
      const sheet = sheetNow();
      if (!sheet) return true;
      const mine = lastRow() === 0 ? [] : whoseRows(sheet, [lastRow()]);
      const question = guardQuestion(sheet, { kind, places, mine });
      if (!question || (!question.eachTime && answered.has(kind))) return true;
      if (!(await askFirst(question))) return false;
      if (!question.eachTime) answered.add(kind);
      return true;
    },
    get isGiven() {
      return answered.has('cells');
    },
  };
}
