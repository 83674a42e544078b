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

describe('salts in water', () => {
  it.each(dissolve.split(' '))('more than 1 g of %s dissolves in 100 g', (formula) => {
    expect(ions(succeeded(readFormula(formula)))).toMatchObject({ ok: true });
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
