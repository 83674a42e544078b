import { type CellValue, isBlank } from '../measurement/cellValue.ts';
import type { RowCheck } from './rowCheck.ts';
import { tickTexts } from './texts/ticks.ts';

const ticks = ['yes', 'y', 'x', 'ok', 'read', 'done', '✓', '✔', '☑'];

const isTick = (entry: CellValue): boolean =>
  entry === true || (typeof entry === 'string' && ticks.includes(entry.trim().toLowerCase()));

/** Whether the cautions are ticked. They stay beside the row, since they are needed at the bench too. */
export function checkTick(entry: CellValue, cautionLines: string): RowCheck {
  if (isTick(entry)) return { status: 'on target', lookAt: cautionLines };
  return isBlank(entry)
    ? { status: 'blank', lookAt: `${tickTexts.readFirst}\n${cautionLines}` }
    : { status: 'unreadable', lookAt: `${tickTexts.notYes}\n${cautionLines}` };
}
