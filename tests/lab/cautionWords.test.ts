import { describe, expect, it } from 'vitest';
import { hazardSource } from '../../src/chemistry/hazardSource.ts';
import { hiddenBy } from '../../src/chemistry/hiddenBy.ts';
import { listedHazards } from '../../src/chemistry/listedHazards.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { judgeTick } from '../../src/lab/judging/judgeTicked.ts';
import { allActivities } from '../../src/lab/lesson/activities.ts';
import type { Substance } from '../../src/lab/lesson/activity.ts';
import { cautionWords, doingFor, mostCautionWords } from '../../src/lab/lesson/cautionWords.ts';
import { handledForms } from '../../src/lab/lesson/handledForms.ts';
import { proposedSolutes } from '../../src/lab/lesson/solutes.ts';
import { startingGivens } from '../../src/lab/lesson/startingGivens.ts';
import { wholeCautions } from '../../src/lab/lesson/wholeCautions.ts';
import { shortEffects, tickTexts } from '../../src/lab/texts/ticks.ts';
import { classWidths } from '../../src/workbook/classWidths.ts';
import { classColumns as at, mostRowHeight } from '../../src/workbook/layout.ts';
import { looks } from '../../src/workbook/looks.ts';
import { heightOf } from '../../src/workbook/textHeight.ts';

const wordsIn = (text: string) => text.split(/\s+/).filter((word) => word !== '').length;
const read = (substance: Substance, givens: Readonly<Record<string, string>>, studentsDilute = false) =>
  cautionWords({ substance, givens, decimalMark: 'point', studentsDilute });
const whole = (substance: Substance, givens: Readonly<Record<string, string>>) =>
  wholeCautions({ substance, givens, decimalMark: 'point', studentsDilute: false });
const weighed: Substance = { formula: 'formula', solid: true, molarity: 'molarity' };

/** What each activity has its teams handle, by its own names of givens. */
const handled = allActivities().map((activity) => {
  const [first] = activity.steps;
  if (first?.kind !== 'ticked') throw new Error(`${activity.id} has no cautions`);
  return { id: activity.id, substance: first.substance, givens: startingGivens(activity) };
});
/** Substances that can do more than their row holds at some strength: it says that more stands at the top. */
const cutOff = [
  '(NH4)2Cr2O7',
  'Ba(NO3)2',
  'C20H14O4',
  'Ca(ClO)2',
  'Co(CH3COO)2·4H2O',
  'Co(NO3)2·6H2O',
  'CoCl2·6H2O',
  'CoSO4·7H2O',
  'CrO3',
  'Cu(NO3)2·3H2O',
  'CuCl2·2H2O',
  'HCOOH',
  'HClO4',
  'HF',
  'HNO3',
  'K2Cr2O7',
  'K2S2O8',
  'KMnO4',
  'Na2Cr2O7·2H2O',
  'Na2CrO4',
  'Ni(NO3)2·6H2O',
  'NiCl2·6H2O',
  'NiSO4·6H2O',
  'Pb(NO3)2',
  'SnCl2·2H2O',
  'Zn(NO3)2·6H2O',
];
const shapeOf = ({ solid, massPercent, molarity }: Substance) =>
  [solid, massPercent, molarity].map((part) => part !== undefined).join();
/** Each way of handling a substance once. */
const shapes = handled.filter(
  ({ substance }, place) => handled.findIndex((other) => shapeOf(other.substance) === shapeOf(substance)) === place,
);
const strengths = ['0.001', '0.01', '0.1', '0.5', '1', '2', '6', '12'];

describe('cautionWords', () => {
  it('stays within sixty words in the row, for every listed substance and every form of every activity', () => {
    let most = 0;
    let rows = 0;
    for (const { spellings } of listedHazards()) {
      const [formula = ''] = spellings;
      for (const { substance, givens } of shapes) {
        for (const strength of strengths) {
          for (const studentsDilute of substance.massPercent === undefined ? [false] : [false, true]) {
            const changed = {
              ...givens,
              [substance.formula]: formula,
              ...(substance.molarity === undefined ? {} : { [substance.molarity]: strength }),
            };
            const lines = read(substance, changed, studentsDilute);
            for (const entry of ['', 'yes', 'yes, RbF', 'no']) {
              const { lookAt } = judgeTick(entry, { substance: formula, cautionLines: lines });
              most = Math.max(most, wordsIn(lookAt));
              rows += 1;
              if (wordsIn(lookAt) > 60) expect.fail(`${formula}, ${strength}: ${lookAt}`);
            }
            expect(wordsIn(lines)).toBeLessThanOrEqual(mostCautionWords);
          }
        }
      }
    }
    console.log(`Words in the row of cautions: at most ${most} in ${rows} rows.`);
    expect(rows).toBeGreaterThan(15_000);
  }, 120_000);

  it('says for all of them what to wear, where it goes and whom to ask, and neither codes nor doubts about sources', () => {
    for (const { spellings } of listedHazards()) {
      for (const strength of ['0.01', '1']) {
        const lines = read(weighed, { formula: spellings[0] ?? '', molarity: strength });
        expect(lines).toMatch(/(^|\. )Wear goggles/m);
        expect(lines).toMatch(/ Leftovers.* (the drain\.|plenty of water\.) Ask your teacher/);
        expect(lines).toMatch(/Ask your teacher; the safety data sheet decides\.$/);
        expect(lines).not.toMatch(/H\d{3}|harmonised|memory|sources? agree|one source|confirmed|Annex/);
        expect(lines.toLowerCase()).not.toMatch(/\bsafe\b|no hazard|harmless/);
      }
    }
  });

  it.each([
    [
      'KBr',
      '0.300',
      'Potassium bromide, solid: Warning. Irritates eyes.\n0.300 mol/L: handle with care.\nWear goggles and gloves. Leftovers: waste beaker, then drain with plenty of water. Ask your teacher; the safety data sheet decides.',
    ],
    [
      'XeF2',
      '1',
      'XeF2, solid: not in our list, treat as harmful.\nTouch nothing until your teacher has read its safety data sheet.\nWear goggles and gloves. Leftovers, rinsings: waste beaker, never the drain. Ask your teacher; the safety data sheet decides.',
    ],
    [
      'NaOH',
      '2.00',
      'Sodium hydroxide, solid: Danger. Burns skin and eyes, corrodes metal.\n2.00 mol/L: Danger. Burns skin and eyes.\nWear goggles, gloves, lab coat. Dissolve it slowly in cold water. Leftovers, rinsings: waste beaker, never the drain. Ask your teacher; the safety data sheet decides.',
    ],
    [
      'CoCl2·6H2O',
      '0.100',
      'Solid and 0.100 mol/L: Danger, staff only. Causes cancer if breathed in, damages fertility, can start asthma and skin allergy. More at the top. Wear goggles and gloves. Use the fume hood. Leftovers, rinsings: cobalt waste beaker, never the drain. Ask your teacher; the safety data sheet decides.',
    ],
  ])('reads as a whole for %s of %s mol/L', (formula, molarity, lines) => {
    expect(read(weighed, { formula, molarity })).toBe(lines);
  });

  it('has every effect of what a class handles in a row of 200 px, or says that more stands at the top', () => {
    const cut = new Set<string>();
    let rows = 0;
    for (const { spellings, soldPercent } of listedHazards()) {
      const [formula = ''] = spellings;
      const read = readFormula(formula);
      if (!read.ok) throw new Error(formula);
      for (const { substance, givens } of shapes) {
        // What is sold as a solid is weighed, and what is sold as a solution is poured.
        if (substance.solid ? soldPercent !== undefined : substance.massPercent && soldPercent === undefined) continue;
        for (const strength of ['0.01', '0.1', '0.5', '2']) {
          for (const studentsDilute of substance.massPercent === undefined ? [false] : [false, true]) {
            const here = {
              ...givens,
              [substance.formula]: formula,
              ...(substance.molarity === undefined ? {} : { [substance.molarity]: strength }),
              ...(substance.massPercent === undefined ? {} : { [substance.massPercent]: String(soldPercent) }),
            };
            const lines = cautionWords({ substance, givens: here, decimalMark: 'point', studentsDilute });
            const said = `${tickTexts.readFirst(tickTexts.answer(formula))}\n${lines}`;
            const high = heightOf(said, { width: classWidths[at.lookAt - 1] ?? 0, size: looks.spilled.size });
            if (high > mostRowHeight.any) expect.fail(`${high} px: ${said}`);
            rows += 1;
            const forms = handledForms({ substance, formula: read.value, givens: here, decimalMark: 'point' });
            const codes = new Set(forms.flatMap(({ cautions }) => cautions.codes));
            // A form that burns skin and eyes need not be said to irritate them.
            const missing = [...codes].filter((code) => {
              const [does = '', ...what] = (shortEffects[code] ?? code).split('|');
              const found = lines.match(new RegExp(`${does}[^.]*`, 'i'))?.[0] ?? '';
              return !hiddenBy(codes).has(code) && !(found !== '' && what.every((part) => found.includes(part)));
            });
            missing.push(...doingFor(forms).filter((what) => !lines.includes(tickTexts[what])));
            if (missing.length > 0) cut.add(formula);
            if (missing.length > 0 !== lines.includes(tickTexts.moreAbove))
              expect.fail(`${formula}, ${strength}, without ${missing.join(' ')}: ${lines}`);
          }
        }
      }
    }
    expect(rows).toBeGreaterThan(1000);
    // None of them is proposed for students; each can do more than a row can hold.
    const proposed = proposedSolutes().map(({ formula }) => formula);
    expect([...cut].filter((formula) => proposed.includes(formula))).toEqual([]);
    expect([...cut].sort()).toEqual(cutOff);
  }, 60_000);

  it('keeps the drain out of it where the limit of a hazard to waters is not known', () => {
    const solution: Substance = { formula: 'formula', molarity: 'molarity' };
    for (const [formula, metal] of [
      ['AgNO3', 'silver'],
      ['KMnO4', 'manganese'],
      ['ZnSO4·7H2O', 'zinc'],
      ['Pb(NO3)2', 'lead'],
      ['BaCl2·2H2O', 'barium'],
    ] as const) {
      for (const molarity of ['0.0001', '0.01', '0.1']) {
        expect(read(solution, { formula, molarity })).toContain(`${metal} waste beaker, never the drain.`);
      }
    }
  });

  it('tells how to dilute every acid that burns in its bottle', () => {
    const bottle: Substance = { formula: 'formula', massPercent: 'share', molarity: 'molarity' };
    for (const [formula, share] of [
      ['HCl', '37'],
      ['HNO3', '65'],
      ['H2SO4', '96'],
      ['CH3COOH', '99.8'],
      ['H3PO4', '85'],
      ['HCOOH', '98'],
    ] as const) {
      for (const studentsDilute of [false, true]) {
        expect(read(bottle, { formula, share, molarity: '0.500' }, studentsDilute)).toContain(
          'Acid into water, never the reverse.',
        );
      }
    }
  });

  it('says that staff alone handle what can kill or harm for life', () => {
    for (const formula of ['KMnO4', 'K2Cr2O7', 'Pb(NO3)2', 'CoCl2·6H2O', 'H3BO3', 'BaCl2·2H2O', 'NaF']) {
      expect(read(weighed, { formula, molarity: '0.01' }).split('\n')[0]).toContain('staff only');
    }
    for (const formula of ['KBr', 'CuSO4·5H2O', 'Na2CO3', 'KI', 'NaOH', 'NaCl']) {
      expect(read(weighed, { formula, molarity: '0.01' })).not.toContain('staff only');
    }
  });
});

describe('wholeCautions', () => {
  it('has every hazard and every piece of advice once for each form, without codes of confidence', () => {
    const words = whole(weighed, { formula: 'AgNO3', molarity: '0.100' });
    expect(words).toMatch(/^silver nitrate, solid: Danger\n/);
    expect(words).toContain('\nBurns skin badly and damages eyes.\n');
    expect(words).toMatch(/^silver nitrate, 0\.100 mol\/L: Warning$/m);
    expect(words).toContain('into the waste beaker for silver');
    expect(words).not.toMatch(/harmonised|from memory|one source|sources agree|Annex/);
    expect(words).toMatch(/follow local rules and your school’s own assessment\.$/);
    expect(words.match(/This is no safety data sheet/g)).toHaveLength(1);
  });

  it('never says how sure a source is, for any listed substance', () => {
    for (const { spellings, name } of listedHazards()) {
      const words = whole(weighed, { formula: spellings[0] ?? '', molarity: '0.1' });
      expect([name, /harmonised|from memory|one source|sources agree|Annex/.test(words)]).toEqual([name, false]);
      // Doubts stand where the teacher reads them.
      expect(hazardSource(name)).toBeDefined();
    }
  });

  it('says of an unlisted substance and of what is no formula that nothing is known', () => {
    expect(whole(weighed, { formula: 'XeF4', molarity: '1' })).toContain('Unlisted');
    expect(whole(weighed, { formula: 'no formula', molarity: '1' })).toContain('Read its safety data sheet');
  });
});
