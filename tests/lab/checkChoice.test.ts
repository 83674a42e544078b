import { describe, expect, it } from 'vitest';
import { checkChoice, letteredOptions } from '../../src/lab/checkChoice.ts';
import { allQuestions } from '../../src/lab/questions.ts';

describe('checkChoice', () => {
  it.each(allQuestions().map((question) => [question.name, question] as const))(
    'gives the reason for the right answer of %s and a question for every other',
    (name, { right, others }) => {
      for (const { letter, item } of letteredOptions(name)) {
        const check = checkChoice(name, letter);
        const isRight = item.id === right.id;
        expect(check).toEqual({ status: isRight ? 'on target' : 'not yet', lookAt: item.reply });
        expect(item.reply.includes('?'), item.id).toBe(!isRight);
      }
      expect(letteredOptions(name).map(({ letter }) => letter)).toEqual(
        Array.from({ length: others.length + 1 }, (_, place) => String.fromCharCode(97 + place)),
      );
    },
  );

  it('does not give the right answer away in what it says to another', () => {
    for (const { right, others } of allQuestions()) {
      const words = right.text.filter((piece): piece is string => typeof piece === 'string').join('');
      for (const { reply } of others) expect(reply).not.toContain(words);
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
      expect(checkChoice('dilution particles', entry).status, entry).toBe('on target');
    }
  });

  it('asks for one letter where it finds none, two, or another', () => {
    for (const entry of ['ab', 'b or c', 'a lot of them', 'z', '2', 2, false, '?']) {
      expect(checkChoice('dilution particles', entry).status, String(entry)).toBe('unreadable');
    }
    expect(checkChoice('dilution particles', '')).toEqual({ status: 'blank', lookAt: '' });
  });
});
