import { describe, expect, it } from 'vitest';
import { isSparinglySoluble } from '../../src/chemistry/electrolytes.ts';
import { ions } from '../../src/chemistry/ions.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { succeeded } from './succeeded.ts';

/** More than 1 g in 100 g of water at 20 to 25 °C, or less: usual solubility tables, from memory. */
const dissolve =
  'LiOH NaOH KOH RbOH CsOH Ba(OH)2 Sr(OH)2 Na2CO3 K3PO4 (NH4)2CO3 Li2CO3 Na2S BaS MgCrO4 CaCrO4 AgF AgNO3 BeSO4 MgSO4 CuSO4 CuCl2 ' +
  'MgCl2 HgCl2 CaI2 NaF KF ZnF2 NaSCN KCN Pb(NO3)2 Ba(ClO4)2';
const hardlyDissolve =
  'LiF Li3PO4 AgCl AgBr AgI AgSCN AgCN PbCl2 PbBr2 PbI2 CuCl CuBr CuI HgI2 MgF2 CaF2 SrF2 BaF2 PbF2 AlF3 BaSO4 SrSO4 PbSO4 CaSO4 Ag2SO4 ' +
  'AgNO2 MgSO3 CaSO3 CaCO3 AlPO4 Ag3AsO4 CaSiO3 FeS ZnS CaC2O4 PbCrO4 PbMoO4 CaWO4 CaC4H4O6 BaSeO3 CaHPO4 Mg(OH)2 Fe(OH)2 Cu(OH)2';

/**
 * Grams of salt in 100 g of saturated solution at 25 °C (SnI2 at 20 °C): CRC Handbook of Chemistry and Physics, 98th
 * edition (2017), “Aqueous Solubility of Inorganic Compounds at Various Temperatures”, read in a public transcription.
 * Every salt of that table that is close to the limit, and some on either side that the rules turn on.
 */
const handbook = (
  'AgBrO3:0.193 AgNO2:0.413 Ag2SO4:0.83 AlF3:0.5 BaF2:0.161 Ba(BrO3)2:0.788 Ba(IO3)2:0.0396 BaSO3:0.0011 ' +
  'BeSO4:29.22 CaF2:0.0016 Ca(IO3)2:0.305 CaSO3:0.0054 CaSO4:0.205 CdC2O4:0.006 CdF2:4.18 Cd(IO3)2:0.091 ' +
  'CoF2:1.4 Co(NO2)2:0.49 CsClO4:1.96 CuF2:0.075 FeF3:5.59 HgBr2:0.61 Hg(CN)2:10.2 HgCl2:6.81 HgI2:0.0055 ' +
  'Hg(SCN)2:0.07 KBF4:0.55 KClO4:2.04 KIO4:0.51 Li2C2O4:5.87 Li2CO3:1.28 LiF:0.134 Li3PO4:0.027 MgC2O4:0.038 ' +
  'MgCrO4:35.39 MgF2:0.013 Mg(IO3)2:8.52 MgSO3:0.52 MnF2:1.01 Mn(IO3)2:0.27 NiF2:2.5 PbBr2:0.966 PbF2:0.067 ' +
  'PbI2:0.076 Pb(IO3)2:0.0025 PbSO4:0.0044 RbClO4:1.5 RbIO3:2.38 SnI2:0.97 Sr(BrO3)2:27.02 SrF2:0.021 ' +
  'Sr(IO3)2:0.165 Sr(OH)2:2.2 SrSO3:0.0015 SrSO4:0.0135 ZnC2O4:0.0026 ZnF2:1.53 Zn(IO3)2:0.64 ZnSO3:0.179'
)
  .split(' ')
  .map((entry) => entry.split(':') as [formula: string, percent: string]);
/** Mass percent of a solution with 1 g in 100 g of water. */
const limit = 100 / 101;

describe('salts in water', () => {
  it.each(handbook)('%s dissolves up to %s %% by mass [CRC Handbook, see above]', (formula, percent) => {
    const found = ions(succeeded(readFormula(formula)));
    const code = found.ok ? '' : found.error.code;
    expect(code === 'ions-sparingly').toBe(Number(percent) < limit);
  });
  it('counts no ions of iron(III) fluoride, which dissolves but stays together', () => {
    expect(ions(succeeded(readFormula('FeF3')))).toMatchObject({ ok: false, error: { code: 'ions-weak' } });
    expect(isSparinglySoluble({ cation: 'Fe', cationCharge: 3, anion: 'F' })).toBe(false);
    expect(isSparinglySoluble({ cation: 'Fe', cationCharge: 2, anion: 'F' })).toBe(true);
  });
  it.each(dissolve.split(' '))('more than 1 g of %s dissolves in 100 g', (formula) => {
    // Mercury(II) chloride dissolves as molecules.
    const found = ions(succeeded(readFormula(formula)));
    expect(found.ok || found.error.code).toBe(formula === 'HgCl2' ? 'ions-weak' : true);
  });
  it.each(hardlyDissolve.split(' '))('less than 1 g of %s dissolves in 100 g', (formula) => {
    expect(ions(succeeded(readFormula(formula)))).toMatchObject({ ok: false, error: { code: 'ions-sparingly' } });
  });
  it.each(['Li2S', '(NH4)2S', 'MgS', 'CaS', 'SrS', 'BaS'])(
    '%s is among the sulfides that water takes up [groups 1 and 2, textbooks]',
    (formula) => {
      expect(ions(succeeded(readFormula(formula)))).toMatchObject({ ok: true });
    },
  );
  it('tells the charges of a metal apart, where its salts differ', () => {
    const chloride = (cationCharge: number) => isSparinglySoluble({ cation: 'Cu', cationCharge, anion: 'Cl' });
    expect([chloride(1), chloride(2)]).toEqual([true, false]);
  });
});
