import { settle } from './spreadsheet.ts';

/**
 * Runs the work while no other script run of this file does, or not at all.
 * People go on typing meanwhile: a lock stops scripts only. What the work has written arrives before the next run begins;
 * `hasSettled` tells of an answer that the work has seen to that itself.
 */
export function withDocumentLock<T>(
  milliseconds: number,
  work: () => T,
  hasSettled?: (value: T) => boolean,
): { readonly ran: true; readonly value: T } | { readonly ran: false } {
  const lock = LockService.getDocumentLock();
  if (!lock.tryLock(milliseconds)) return { ran: false };
  let settled = false;
  try {
    const value = work();
    settled = hasSettled?.(value) ?? false;
    return { ran: true, value };
  } finally {
    if (!settled) settle();
    lock.releaseLock();
  }
}
