import { describe, expect, it } from 'vitest';
import { cautionWords } from '../../src/sidebar/plan/cautionWords.ts';
import { roundedMass } from '../../src/sidebar/plan/soluteFields.ts';
import { texts } from '../../src/sidebar/texts.ts';

describe('cautionWords', () => {
  it.each(['NaOH', 'KOH', 'HCl', 'H2SO4', 'K2Cr2O7', 'KMnO4', 'AgNO3', 'CuSO4·5H2O'])(
    'says what is known of %s, with codes and how sure it is',
    (formula) => {
      const words = cautionWords(formula);
      expect(words?.signalWord).toBe('Danger');
      expect(words?.statements[0]).toMatch(/^H\d{3}.*: .+\((harmonised|two sources|one source|from memory)/);
      expect(words?.statements.filter((words) => /^(H|EUH)\d/.test(words)).length).toBeLessThanOrEqual(3);
      expect(words?.advice).toMatch(/drain/);
      expect(words?.statements).not.toContain(texts.plan.unlisted);
    },
  );
  it('says at once why the planner does not propose it', () => {
    expect(cautionWords('K2Cr2O7')?.planner).toContain('Chromium(VI)');
    expect(cautionWords('Pb(NO3)2')?.planner).toContain('Lead salts');
    expect(cautionWords('KBr')?.planner).toBe('');
  });
  it('calls unlisted only what is a formula and is in no list, and never harmless', () => {
    expect(cautionWords('XeF2')?.statements).toEqual([texts.plan.unlisted]);
    expect(cautionWords('')).toBeUndefined();
    expect(cautionWords('nacl')).toBeUndefined();
  });
});

describe('roundedMass', () => {
  it('rounds the decimal and not its binary neighbour', () => {
    expect(roundedMass(55.845)).toBe('55.85');
    expect(roundedMass(1.005)).toBe('1.01');
    expect(roundedMass(142.036)).toBe('142.04');
  });
});
