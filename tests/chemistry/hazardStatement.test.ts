import { describe, expect, it } from 'vitest';
import { codeTexts } from '../../src/chemistry/cautionTexts.ts';
import { hazardStatement } from '../../src/chemistry/hazardStatement.ts';

// CLP Annex III; the wording was compared with two public transcriptions, named beside it.
describe('hazardStatement', () => {
  it.each([
    ['H318', 'Causes serious eye damage.'],
    ['H272', 'May intensify fire; oxidiser.'],
    ['H314', 'Causes severe skin burns and eye damage.'],
    ['H350i', 'May cause cancer by inhalation.'],
    ['H360FD', 'May damage fertility. May damage the unborn child.'],
    ['H410', 'Very toxic to aquatic life with long lasting effects.'],
    ['EUH032', 'Contact with acids liberates very toxic gas.'],
  ])('quotes %s as the act has it', (code, words) => {
    expect(hazardStatement(code)).toBe(words);
  });
  it('has a statement for every code of the list, and none for another', () => {
    const codes = [...new Set(Object.keys(codeTexts()).map((code) => code.replace('/3', '')))];
    expect(codes.length).toBeGreaterThan(45);
    for (const code of codes)
      expect([code, hazardStatement(code)]).toEqual([code, expect.stringMatching(/^[A-Z].+\.$/)]);
    expect(hazardStatement('H999')).toBe('');
    expect(hazardStatement('H35')).toBe('');
  });
});
