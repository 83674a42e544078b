import { describe, expect, it } from 'vitest';
import { likelySpellings } from '../../src/chemistry/likelySpellings.ts';

describe('likelySpellings', () => {
  it.each([
    ['nacl', ['NaCl']],
    ['NACL', ['NaCl']],
    ['nAcL', ['NaCl']],
    ['k2cr2o7', ['K2Cr2O7']],
    ['ca(oh)2', ['Ca(OH)2']],
    ['cuso4·5h2o', ['CuSO4·5H2O']],
    ['no', ['NO']],
    ['i', ['I']],
    ['2h', ['2H']],
    // Two readings are both offered, the longer symbol first; a spelling that was typed is none.
    ['co', ['Co', 'CO']],
    ['CO', ['Co']],
    ['Co', ['CO']],
    ['hf', ['HF']],
    // Three are no help.
    ['pbi2', []],
    ['coco', []],
    ['cococo', []],
    // Nothing to offer
    ['NaCl', []],
    ['xyz', []],
    ['naclx', []],
    ['12', []],
    ['', []],
    // Actinium, astatine and neptunium stand in no school's cupboard.
    ['ac', []],
    ['np', ['NP']],
    ['h'.repeat(24), ['H'.repeat(24)]],
    [`(${'h'.repeat(24)})2`, [`(${'H'.repeat(24)})2`]],
    ['h'.repeat(25), []],
  ])('offers for %s: %j', (typed, offered) => {
    expect(likelySpellings(typed)).toEqual(offered);
  });
});
