import { describe, expect, it } from 'vitest';
import { letteredOptions } from '../../src/lab/bench/letteredOptions.ts';
import { optionReply } from '../../src/lab/bench/optionReply.ts';
import { allQuestions } from '../../src/lab/bench/questions.ts';
import { judgeChoice } from '../../src/lab/judging/judgeChosen.ts';

/** An acid, a base, and what is neither. */
const solutes = ['HCl', 'NH3', 'KBr'];

describe('judgeChoice', () => {
  it.each(allQuestions().map((question) => [question.name, question] as const))(
    'gives the reason for the right answer of %s and a question for every other',
    (name, { right, others }) => {
      for (const { letter, item } of letteredOptions(name)) {
        for (const solute of solutes) {
          const check = judgeChoice(name, letter, { solute });
          const isRight = item.id === right.id;
          const reply = optionReply(item, solute);
          expect(check).toEqual({ status: isRight ? 'on target' : 'not yet', lookAt: reply });
          expect(reply.includes('?'), item.id).toBe(!isRight);
        }
      }
      expect(letteredOptions(name).map(({ letter }) => letter)).toEqual(
        Array.from({ length: others.length + 1 }, (_, place) => String.fromCharCode(97 + place)),
      );
    },
  );

  it('does not give the right answer away in what it says to another', () => {
    for (const { right, others } of allQuestions()) {
      const words = right.text.filter((piece): piece is string => typeof piece === 'string').join('');
      for (const option of others) {
        for (const solute of solutes) expect(optionReply(option, solute)).not.toContain(words);
      }
    }
  });

  it('reads a letter with marks or a reason after it', () => {
    for (const entry of [
      'b',
      ' B ',
      '(b)',
      'b.',
      'B)',
      '“b”',
      'b, since nothing left',
      'b because nothing left',
      'ｂ',
    ]) {
      expect(judgeChoice('dilution particles', entry).status, entry).toBe('on target');
    }
  });

  it('asks for one letter where it finds none, two, or another', () => {
    for (const entry of ['ab', 'b or c', 'a lot of them', 'z', '2', 2, false, '?']) {
      expect(judgeChoice('dilution particles', entry).status, String(entry)).toBe('unreadable');
    }
    expect(judgeChoice('dilution particles', '')).toEqual({ status: 'blank', lookAt: '' });
  });
});
