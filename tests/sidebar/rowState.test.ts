import { describe, expect, it } from 'vitest';
import { rowState } from '../../src/sidebar/classNow/rowState.ts';
import { stepNotes } from '../../src/sidebar/classNow/stepNotes.ts';
import { talkLines } from '../../src/sidebar/classNow/talkLines.ts';
import { texts } from '../../src/sidebar/texts.ts';

describe('rowState', () => {
  it.each([
    ['on target', '✓ on target'],
    ['close', '≈ close'],
    ['follows', '↳ follows'],
    ['not yet', '↻ not yet'],
    ['unreadable', '? unreadable'],
    ['blank', '· blank'],
  ])('gives %s its sign and word', (check, shown) => {
    const { sign, word } = rowState({ check, entry: '1' });
    expect(`${sign} ${word}`).toBe(shown);
  });
  it.each(['Loading...', '#ERROR!', '#NAME?', 'wrong'])('counts %s as not yet known', (check) => {
    expect(rowState({ check, entry: '1' }).name).toBe('unknown');
  });
  it('tells words for the teacher from a row without any', () => {
    expect(rowState({ check: '', entry: 'We rinsed it.' }).name).toBe('told');
    expect(rowState({ check: '', entry: ' ' }).name).toBe('blank');
  });
  it('gives every state its own sign and its own word', () => {
    const states = Object.values(texts.states);
    expect(new Set(states.map(({ sign }) => sign)).size).toBe(states.length);
    expect(new Set(states.map(({ word }) => word)).size).toBe(states.length);
  });
});
describe('stepNotes', () => {
  const step = { id: 'a', title: 'A', check: '', entry: '', lookAt: '' };
  it('says who, how often and with how much help, and nothing where there is nothing', () => {
    expect(stepNotes({ ...step, who: 'Bench', tries: 3, helpWanted: 2 })).toBe('Bench · 3 attempts · help level 2');
    expect(stepNotes({ ...step, tries: 1 })).toBe('1 attempt');
    expect(stepNotes({ ...step, tries: 0 })).toBe('');
  });
});
describe('talkLines', () => {
  it('puts the first team first', () => {
    const lines = talkLines([
      { team: 'Basalt', reason: 'x' },
      { team: 'Quartz', reason: 'y' },
    ]);
    expect(lines.map(({ heading }) => heading)).toEqual(['Talk first to Basalt', 'Then Quartz']);
    expect(talkLines([{ team: 'Slate', reason: 'z', ready: true }]).map(({ heading }) => heading)).toEqual([
      'Slate has finished',
    ]);
  });
});
