import { describe, expect, it } from 'vitest';
import { orderedActions } from '../../src/lab/bench/orderedActions.ts';
import { judgeOrder } from '../../src/lab/judging/judgeOrdered.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import { orderTexts } from '../../src/lab/texts/ordering.ts';

const procedures = (activityById('stock and dilution')?.steps ?? []).flatMap((step) =>
  step.kind === 'ordered' ? [step.procedure] : [],
);

describe.each(procedures)('an order of letters: %s', (procedure) => {
  const letters = orderedActions(procedure, {}).map(({ letter }) => letter);

  it('is not read with numbers among them, since they may mean another order', () => {
    const numbered = letters.map((letter, index) => `${letter}${index + 1}`);
    for (const entry of [numbered.join(' '), `1 ${letters.join(' ')}`])
      expect(judgeOrder(procedure, entry)).toEqual({ status: 'unreadable', lookAt: orderTexts.lettersOnly(letters) });
    expect(judgeOrder(procedure, letters.join(' ')).status).not.toBe('unreadable');
  });
});
