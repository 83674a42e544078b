import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { slowAnswers } from '../../../src/preview/page/slowAnswers.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

it('tells once of answers that are slow to come, and once more when all have come, in whatever order and way', async () => {
  const told: boolean[] = [];
  const slow = slowAnswers(() => told.push(slow.any));
  const come: ((text: string) => void)[] = [];
  const fail: ((error: Error) => void)[] = [];
  const answers = [0, 1].map(() => {
    const answer = new Promise<string>((resolve, reject) => {
      come.push(resolve);
      fail.push(reject);
    });
    return slow.wait(answer).catch((error: unknown) => String(error));
  });
  vi.advanceTimersByTime(1999);
  expect(told).toEqual([]);
  vi.advanceTimersByTime(1);
  expect([slow.any, told]).toEqual([true, [true]]);
  fail[1]?.(new Error('gone'));
  expect(await answers[1]).toContain('gone');
  expect([slow.any, told]).toEqual([true, [true]]);
  come[0]?.('saved');
  expect(await answers[0]).toBe('saved');
  expect([slow.any, told]).toEqual([false, [true, false]]);
});

it('says nothing of an answer that comes soon', async () => {
  const told: boolean[] = [];
  const slow = slowAnswers(() => told.push(slow.any));
  expect(await slow.wait(Promise.resolve('saved'))).toBe('saved');
  vi.advanceTimersByTime(60_000);
  expect(told).toEqual([]);
});
