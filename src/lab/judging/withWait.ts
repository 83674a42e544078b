import { remarks } from '../texts/feedback.ts';
import { filled } from './feedbackText.ts';
import { isFact, type JudgedRow } from './judgedRow.ts';

const needsAnotherLook = ({ status }: JudgedRow): boolean =>
  status === 'not yet' || status === 'follows' || status === 'unreadable';

/** What to say of the row that a row of the bench waits for, in few words where it is low; undefined where it waits for none. */
function waitsFor(earlier: readonly JudgedRow[], isShort: boolean): string | undefined {
  const unread = earlier.find(
    ({ step, status }) => (step?.kind === 'ticked' || step?.kind === 'safety') && status !== 'on target',
  );
  if (unread) return filled(isShort ? remarks.waitForRow : remarks.waitForTick, { row: unread.root });
  const first = earlier.find(
    (other) => other.step && other.step.kind !== 'chosen' && needsAnotherLook(other) && !isFact(other),
  );
  return first && filled(remarks.waitForRow, { row: first.root });
}

/**
 * A row with what it has to wait for: nobody goes to the bench on our word before the cautions are ticked, or while an
 * earlier row needs another look. So nothing is right there until then, whatever is typed. A blank row stays blank, and one
 * whose own numbers cannot be used says so.
 *
 * @param earlier - The rows above it, judged.
 */
export function withWait(row: JudgedRow, earlier: readonly JudgedRow[]): JudgedRow {
  const isOfBench = row.step?.bench && row.step.kind !== 'told' && !row.isUnusable;
  const lookAt = isOfBench ? waitsFor(earlier, row.step?.kind === 'weighing') : undefined;
  if (lookAt === undefined) return row;
  return { ...row, status: row.status === 'blank' ? 'blank' : 'not yet', lookAt, slips: [] };
}
