import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { actDate, cautionListSource, tableSubstances } from '../../scripts/generate/cautionList.ts';
import { readCsv } from '../../scripts/generate/csv.ts';
import { hazardSourcesSource } from '../../scripts/generate/hazardSources.ts';
import { hazardTables } from '../../scripts/generate/sources.ts';
import { hazardDataDate } from '../../src/chemistry/cautionList.generated.ts';
import { codeTexts } from '../../src/chemistry/cautionTexts.ts';
import { listedHazards } from '../../src/chemistry/listedHazards.ts';
import { pictogramsOf } from '../../src/chemistry/pictogramsOf.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { substancesListed } from '../../src/chemistry/substancesListed.ts';

const source = (name: string) => readFileSync(`src/chemistry/${name}`, 'utf8');
const bottles = readCsv(hazardTables.substances).filter(({ form = '' }) => !form.startsWith('solution (limits'));
const solutions = readCsv(hazardTables.substances).filter(({ form = '' }) => form.startsWith('solution (limits'));
const codesIn = (text = '') => [...text.matchAll(/\b(?:EUH\d{3}|H\d{3}[A-Za-z]*)\b/g)].map(([code]) => code);

/** The tables with one of them changed. */
function changed(table: keyof typeof hazardTables, change: (text: string) => string) {
  const path = join(mkdtempSync(join(tmpdir(), 'hazards-')), 'table.csv');
  writeFileSync(path, change(readFileSync(hazardTables[table], 'utf8')));
  return { ...hazardTables, [table]: path };
}

describe('tables of hazards', () => {
  it('are what the generated lists say', () => {
    expect(source('cautionList.generated.ts')).toBe(cautionListSource(hazardTables));
    expect(source('hazardSources.generated.ts')).toBe(hazardSourcesSource(hazardTables));
    expect(hazardDataDate).toBe(actDate(tableSubstances(hazardTables)));
    expect(hazardDataDate).toBe('2026-07-01');
  });

  it('have so many substances of each confidence', () => {
    const count = (confidence: string) => bottles.filter((row) => row.confidence === confidence).length;
    const counts = {
      harmonised: count('harmonised'),
      'two sources': count('two sources'),
      'one source': count('one source'),
      memory: count('memory'),
    };
    console.log('Substances by confidence:', counts);
    expect(counts).toEqual({ harmonised: 69, 'two sources': 32, 'one source': 24, memory: 22 });
    expect(listedHazards()).toHaveLength(147);
  });

  it('list nearly every formula that school lessons use', () => {
    const formulas = readFileSync('tests/published/school-formulas.txt', 'utf8').trim().split('\n');
    const unlisted = formulas.filter((formula) => substancesListed(formula)?.listing !== 'listed');
    console.log(`School formulas listed: ${formulas.length - unlisted.length} of ${formulas.length}; not:`, unlisted);
    expect(formulas).toHaveLength(96);
    expect(unlisted).toEqual(['HgCl2']);
  });

  it('have no row that stands for all codes at once', () => {
    const [, first = ''] = readFileSync(hazardTables.substances, 'utf8').split('\n');
    expect(first).toContain('H290 H314 H335');
    const withStar = changed('substances', (text) => text.replace('H290 H314 H335', '*'));
    expect(() => cautionListSource(withStar)).toThrow('HCl: a row that stands for all codes at once');
    const withCodes = changed('substances', (text) => text.replace('H290 H314 H335', 'H314; *'));
    expect(() => cautionListSource(withCodes)).toThrow('stands for all codes at once');
    const limitOfAll = changed('limits', (text) => text.replace(',H314,', ',*,'));
    expect(() => cautionListSource(limitOfAll)).toThrow('a limit without a code of its own');
    const withoutBottle = changed(
      'limitsAdded',
      (text) => `${text}"x","Cs2CrO4","","","generic","","H350",0.1,">=",,,"","","","one source",""\n`,
    );
    expect(() => cautionListSource(withoutBottle)).toThrow('Cs2CrO4 has limits, but no row of the substance itself');
  });

  it('let nothing down the drain that harms waters', () => {
    const wrong = changed('substances', (text) =>
      text.replace(/never: collect as silver waste[^,"]*/g, 'yes, with plenty of water — a note'),
    );
    expect(() => cautionListSource(wrong)).toThrow(/AgNO3: down the drain, though it has H4\d\d/);
  });

  it('give signal word and pictograms that follow from the codes as sold', () => {
    const substances = tableSubstances(hazardTables);
    expect(substances).toHaveLength(147);
    const listed = listedHazards();
    for (const [place, { bottle }] of substances.entries()) {
      const codes = listed[place]?.codes.map(({ code }) => code) ?? [];
      const words = codes.map((code) => codeTexts()[code]?.signal ?? '');
      const signal = words.includes('Danger') ? 'Danger' : words.includes('Warning') ? 'Warning' : '';
      expect([bottle.formula, signal, pictogramsOf(codes).join(' ')]).toEqual([
        bottle.formula,
        bottle.signal_word,
        bottle.pictograms,
      ]);
    }
  });

  it('have a limit for every code that the row of solutions names, and every code of the bottle somewhere', () => {
    expect(solutions).toHaveLength(141);
    const listed = listedHazards();
    const limitsOf = (formula = '') =>
      new Set(
        listed.find(({ spellings }) => spellings[0] === formula)?.limits.map(({ code }) => code.replace('/3', '')),
      );
    for (const { formula = '', statements, name = '' } of solutions) {
      const limits = limitsOf(listed.find((one) => name.startsWith(one.name))?.spellings[0] ?? formula);
      for (const code of codesIn(statements)) expect([formula, code, limits.has(code)]).toEqual([formula, code, true]);
    }
    for (const { codes, limits, name } of listed) {
      for (const { code } of codes) {
        expect([name, code, limits.some((limit) => limit.code.replace('/3', '') === code.replace('/3', ''))]).toEqual([
          name,
          code,
          true,
        ]);
      }
    }
  });

  it('say of every code of every limit how sure it is', () => {
    for (const { limits, codes, confidence } of listedHazards()) {
      for (const one of [...limits, ...codes]) expect('htom').toContain(one.confidence);
      expect('htom').toContain(confidence);
    }
    const rows = readCsv(hazardTables.limits);
    expect(rows).toHaveLength(651);
  });

  it('have a first spelling that can be read for every substance, and no formula twice but for those that share it', () => {
    const owners = new Map<string, string[]>();
    for (const { name, spellings } of listedHazards()) {
      expect([name, readFormula(spellings[0]).ok]).toEqual([name, true]);
      for (const spelling of new Set(spellings)) owners.set(spelling, [...(owners.get(spelling) ?? []), name]);
    }
    const shared = [...owners].filter(([, names]) => names.length > 1);
    expect(Object.fromEntries(shared)).toEqual({
      C3H8O: ['propan-2-ol', 'propan-1-ol'],
      C3H7OH: ['propan-2-ol', 'propan-1-ol'],
      C6H12O6: ['glucose', 'fructose'],
      C12H22O11: ['sucrose', 'lactose monohydrate'],
    });
  });
});
