import { describe, expect, it } from 'vitest';
import { judgeTick } from '../../src/lab/judging/judgeTicked.ts';
import { tickTexts } from '../../src/lab/texts/ticks.ts';

const cautionLines = 'Wear goggles.';
const ticked = (entry: boolean | string, substance = 'KBr') => judgeTick(entry, { substance, cautionLines });

describe('a box that is ticked', () => {
  it('counts as a yes, and asks for the substance all the same', () => {
    for (const entry of [true, 'yes'])
      expect(ticked(entry)).toEqual({
        status: 'not yet',
        lookAt: `${tickTexts.nameIt(tickTexts.answer('KBr'))}\n${cautionLines}`,
      });
  });
  it('is enough where nobody can read the substance', () => {
    expect(ticked(true, '?')).toEqual({ status: 'on target', lookAt: cautionLines });
  });
  it('is no yes while it is empty', () => {
    expect(ticked(false).status).not.toBe('on target');
    expect(ticked(false, '?').status).not.toBe('on target');
  });
});
