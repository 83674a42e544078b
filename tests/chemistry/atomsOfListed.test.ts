import { describe, expect, it } from 'vitest';
import { molecularSolutes, strongAcids, weakElectrolytes } from '../../src/chemistry/electrolytes.ts';
import { atomsOfListed } from '../../src/chemistry/ions.ts';
import { listedAnions, listedCations } from '../../src/chemistry/listedIons.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';

const listed = [
  ...[...listedCations(), ...listedAnions()].map(({ body }) => body),
  ...strongAcids,
  ...weakElectrolytes,
  ...molecularSolutes,
];

describe('atoms of listed formulas', () => {
  it('are those that the reader of typed formulas finds', () => {
    expect(listed.length).toBeGreaterThan(150);
    for (const body of listed) {
      expect({ body, result: { ok: true, atoms: atomsOfListed(body) } }).toEqual({
        body,
        result: { ok: true, atoms: atomsRead(body) },
      });
    }
  });
  it('are counted in brackets with and without a number', () => {
    expect([atomsOfListed('Na(OH)'), atomsOfListed('Al(CH3)12')]).toEqual([atomsRead('NaOH'), atomsRead('AlC12H36')]);
  });
  it('of anions come with the larger ones first, in the order in which they are looked for', () => {
    const sizes = listedAnions().map(({ body }) => atomsOfListed(body).reduce((sum, { count }) => sum + count, 0));
    expect(sizes).toEqual([...sizes].sort((one, other) => other - one));
  });
  it.each(['Ca((OH)2)2', 'CuSO4·5H2O', 'nacl', 'Na+'])('%s is no plain formula', (body) => {
    expect(() => atomsOfListed(body)).toThrow(body);
  });
});

function atomsRead(body: string) {
  const read = readFormula(body);
  return read.ok ? read.value.atoms : read.error;
}
