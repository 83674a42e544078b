import type { SheetView } from '../view.ts';
import type { Place } from './cellName.ts';
import { texts } from './texts.ts';
import { cellAt, ownerOf } from './workbookModel.ts';

/** Why nobody at this seat may type in a cell; undefined where they may. */
export const typingRefused = (sheet: SheetView, place: Place): string | undefined =>
  cellAt(sheet, ownerOf(sheet, place))?.guarded === 'locked' ? texts.lockedRefused : undefined;
