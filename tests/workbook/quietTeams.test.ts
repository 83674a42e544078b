import { describe, expect, it } from 'vitest';
import { classNow } from '../../src/workbook/classNow.ts';

const minute = 60_000;
const now = 100 * minute;

/** Whom to talk to where one team has a right row, typed so long ago, and an empty one. */
const talkFirst = (silence: number) =>
  classNow({
    reading: {
      blocks: [
        {
          key: 'c1-t1',
          team: 'Otter',
          who: '',
          whoColumn: 9,
          checkColumn: 5,
          headingRow: 1,
          closingRow: 9,
          known: true,
          steps: (['on target', 'blank'] as const).map((check, at) => ({
            row: at + 2,
            key: 'c1-t1',
            step: `row ${at}`,
            entry: check === 'blank' ? '' : '1',
            check,
            lookAt: '',
            hint: '',
            helpWanted: 0,
            who: '',
            tries: 0,
            lastEntry: check === 'blank' ? undefined : now - silence,
          })),
        },
      ],
      linkRows: 1,
    },
    titles: new Map([['row 1', 'Second row']]),
    told: [],
    extension: '',
    now,
  }).talkFirst;

describe('a team that types nothing', () => {
  it('is left in peace for less than eight minutes', () => {
    expect(talkFirst(8 * minute - 1)).toEqual([]);
  });
  it('is named from eight minutes on, with the minutes and where it stands', () => {
    expect(talkFirst(8 * minute)).toEqual([
      { team: 'Otter', reason: 'Second row: still blank. Nothing new for 8 minutes.' },
    ]);
    expect(talkFirst(9 * minute)[0]?.reason).toContain('9 minutes');
  });
});
