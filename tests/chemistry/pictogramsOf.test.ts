import { describe, expect, it } from 'vitest';
import { readCsv } from '../../scripts/generate/csv.ts';
import { codeTexts } from '../../src/chemistry/cautionTexts.ts';
import { pictogramNamed } from '../../src/chemistry/pictogramNamed.ts';
import { pictogramsOf } from '../../src/chemistry/pictogramsOf.ts';

/*
 * CLP Annex I, label elements, from memory; precedence: CLP Article 26(1) (b) to (d), read in a public transcription, and
 * UN GHS, Rev. 10, 1.4.10.5.3.1, from memory.
 */
describe('pictogramsOf', () => {
  it.each([
    { codes: ['H302'], gives: ['GHS07'], because: 'acute toxicity, category 4' },
    { codes: ['H301'], gives: ['GHS06'], because: 'acute toxicity, category 3' },
    { codes: ['H301', 'H312'], gives: ['GHS06'], because: 'skull before exclamation mark' },
    { codes: ['H331', 'H315', 'H319'], gives: ['GHS06'], because: 'the exclamation mark does not appear with a skull' },
    { codes: ['H314', 'H315', 'H319'], gives: ['GHS05'], because: 'corrosion before exclamation mark, skin and eyes' },
    { codes: ['H318', 'H315'], gives: ['GHS05'], because: 'corrosion before exclamation mark, skin' },
    { codes: ['H318', 'H302'], gives: ['GHS05', 'GHS07'], because: 'the exclamation mark stands for swallowing' },
    { codes: ['H314', 'H335'], gives: ['GHS05', 'GHS07'], because: 'the exclamation mark stands for the airways' },
    {
      codes: ['H290', 'H319'],
      gives: ['GHS05', 'GHS07'],
      because: 'metals are not skin or eyes: the stricter reading',
    },
    { codes: ['H334', 'H317', 'H315', 'H319'], gives: ['GHS08'], because: 'health hazard for the airways comes first' },
    { codes: ['H350', 'H317', 'H319'], gives: ['GHS07', 'GHS08'], because: 'that rule is for the airways alone' },
    { codes: ['H272/3', 'H319'], gives: ['GHS03', 'GHS07'], because: 'weaker category, same symbol' },
    { codes: ['H226', 'H314'], gives: ['GHS02', 'GHS05'], because: 'both appear' },
    { codes: ['H412', 'EUH031', 'H362'], gives: [], because: 'statements without a pictogram' },
    { codes: ['H411', 'H400'], gives: ['GHS09'], because: 'each once' },
    { codes: [], gives: [], because: 'nothing holds' },
  ])('gives $gives for $codes: $because', ({ codes, gives }) => {
    expect(pictogramsOf(codes)).toEqual(gives);
    expect(pictogramsOf([...codes].reverse())).toEqual(gives);
  });

  it('gives what the published table has beside the codes of each listed substance', () => {
    const listed = readCsv('tests/published/reagents.csv').filter(({ ghs_pictograms = '' }) => ghs_pictograms !== '');
    expect(listed.length).toBeGreaterThan(20);
    for (const { formula, h_statements = '', ghs_pictograms = '' } of listed) {
      expect([formula, pictogramsOf(h_statements.split(' ')).join(' ')]).toEqual([formula, ghs_pictograms]);
    }
  });

  it('has a name for every pictogram that a known code asks for', () => {
    for (const code of Object.keys(codeTexts())) {
      for (const pictogram of pictogramsOf([code])) expect(pictogramNamed(pictogram).name).toMatch(/^[a-z]{5}/);
    }
  });
});
