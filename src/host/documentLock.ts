import { settle } from './spreadsheet.ts';

/**
 * Runs the work while no other script run of this file does, or not at all.
 * People go on typing meanwhile: a lock stops scripts only.
 */
export function withDocumentLock<T>(
  milliseconds: number,
  work: () => T,
): { readonly ran: true; readonly value: T } | { readonly ran: false } {
  const lock = LockService.getDocumentLock();
  if (!lock.tryLock(milliseconds)) return { ran: false };
  try {
    return { ran: true, value: work() };
  } finally {
    settle();
    lock.releaseLock();
  }
}
