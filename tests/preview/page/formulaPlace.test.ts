import { describe, expect, it } from 'vitest';
import { formulaPlace } from '../../../src/preview/page/formulaPlace.ts';

/** The caret stands at the bar. */
const at = (marked: string) => formulaPlace(marked.replace('|', ''), marked.indexOf('|'));

describe('formulaPlace', () => {
  it('finds the name being typed', () => {
    expect(at('=mol|')).toEqual({ name: { text: 'mol', from: 1 } });
    expect(at('=2*mo|')).toEqual({ name: { text: 'mo', from: 3 } });
  });
  it('finds the innermost call and its argument', () => {
    expect(at('=DILUTIONVOLUME(2, 0.5,|')).toEqual({ call: { name: 'DILUTIONVOLUME', argument: 2 } });
    expect(at('=SUM(1;MOLES("KBr"|')).toEqual({ call: { name: 'MOLES', argument: 0 } });
    expect(at('=SUM(1, (2+3), |)')).toEqual({ call: { name: 'SUM', argument: 2 } });
  });
  it('is not led astray by commas and brackets inside text', () => {
    expect(at('=MOLES("a,(b",|')).toEqual({ call: { name: 'MOLES', argument: 1 } });
    expect(at('=MOLES("a,(|')).toEqual({ call: { name: 'MOLES', argument: 0 } });
  });
  it('leaves what is closed and what is no formula', () => {
    expect(at('=MOLES(1)|')).toEqual({});
    expect(at('MOLES(|')).toBeUndefined();
  });
});
