import { filled } from '../feedbackText.ts';
import { remarks } from '../texts/feedback.ts';
import { tickTexts } from '../texts/ticks.ts';
import { isFact } from './isFact.ts';
import type { JudgedRow } from './judgedRow.ts';

const needsAnotherLook = ({ status }: JudgedRow): boolean =>
  status === 'not yet' || status === 'follows' || status === 'unreadable';

/**
 * A row with what it has to wait for: nobody goes to the bench on our word before the cautions are ticked, or while an
 * earlier row needs another look.
 *
 * @param earlier - The rows above it, judged.
 */
export function withWait(row: JudgedRow, earlier: readonly JudgedRow[]): JudgedRow {
  if (row.step?.kind === 'told' || !row.step?.bench || row.status === 'on target') return row;
  const unticked = earlier.find(({ step, status }) => step?.kind === 'ticked' && status !== 'on target');
  if (unticked?.step) return { ...row, lookAt: tickTexts.waitForTick(unticked.step.title) };
  const first = earlier.find(
    (other) => other.step && other.step.kind !== 'chosen' && needsAnotherLook(other) && !isFact(other),
  );
  return first ? { ...row, lookAt: filled(remarks.waitForRow, { row: first.root }) } : row;
}
