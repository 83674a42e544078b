import mfParser from 'mf-parser';
import { describe, expect, it } from 'vitest';
import { molarMass } from '../../src/chemistry/molarMass.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { succeeded } from './succeeded.ts';

/** Salts of every cation with every anion, by their charges. */
const cations =
  'Li:1 Na:1 K:1 NH4:1 Ag:1 Mg:2 Ca:2 Sr:2 Ba:2 Zn:2 Cu:2 Fe:2 Ni:2 Co:2 Mn:2 Pb:2 Sn:2 Cd:2 Al:3 Fe:3 Cr:3 Bi:3 Ce:3 Zr:4 Th:4';
const anions =
  'F:1 Cl:1 Br:1 I:1 OH:1 NO3:1 ClO4:1 MnO4:1 SCN:1 CH3COO:1 SO4:2 SO3:2 S2O3:2 CO3:2 CrO4:2 C2O4:2 PO4:3 C6H5O7:3';
const others = [
  ...'H2O H2O2 H2SO4 HNO3 HCl HBr HI HF HClO4 H3PO4 H3BO3 NH3 N2H4 CO CO2 SO2 SO3 NO NO2 N2O N2O5 O3 P4O10 PCl3 PCl5 SiO2 SiCl4 TiO2'.split(
    ' ',
  ),
  ...'CH4 C2H6 C3H8 C4H10 C6H6 C7H8 C8H18 CH3OH C2H5OH C3H7OH C3H8O3 CH3COOH HCOOH C6H5COOH C6H8O7 C6H8O6 C4H6O6 C2H2O4'.split(
    ' ',
  ),
  ...'C6H12O6 C12H22O11 CO(NH2)2 C9H8O4 C8H9NO2 C8H10N4O2 C10H14N2 C27H46O C5H5N C3H7NO2 C2H5NO2 C8H5O4K C10H16N2O8'.split(
    ' ',
  ),
  ...'CuSO4.5H2O FeSO4.7H2O MgSO4.7H2O CoCl2.6H2O NiSO4.6H2O CaCl2.2H2O BaCl2.2H2O Na2CO3.10H2O Na2S2O3.5H2O Na2B4O7.10H2O'.split(
    ' ',
  ),
  ...'FeCl3.6H2O Fe(NO3)3.9H2O ZnSO4.7H2O KAl(SO4)2.12H2O Mg(ClO4)2.6H2O MnCl2.4H2O SnCl2.2H2O Na2HPO4.12H2O CaSO4.2H2O LiOH.H2O'.split(
    ' ',
  ),
  ...'K4Fe(CN)6 K3Fe(CN)6 Co(NH3)6Cl3 Cu(NH3)4SO4 Ni(CO)4 Na3AlF6 K2PtCl6 HAuCl4 K2Cr2O7 (NH4)2Cr2O7 (NH4)6Mo7O24 Na2WO4 UO2(NO3)2'.split(
    ' ',
  ),
];

const charged = (list: string) =>
  list.split(' ').map((ion) => ({ body: ion.split(':')[0] ?? '', charge: Number(ion.split(':')[1]) }));
const divisor = (one: number, other: number): number => (other === 0 ? one : divisor(other, one % other));
const times = (body: string, count: number) =>
  count === 1 ? body : /^[A-Z][a-z]?$/.test(body) ? `${body}${count}` : `(${body})${count}`;
const salts = charged(cations).flatMap((cation) =>
  charged(anions).map((anion) => {
    const common = divisor(cation.charge, anion.charge);
    return times(cation.body, anion.charge / common) + times(anion.body, cation.charge / common);
  }),
);
const compounds = Array.from(new Set([...salts, ...others]));

/** What the library takes for one atom of an element. */
const theirMass = (symbol: string): number => new mfParser.MF(symbol).getInfo().mass;
/** The library takes the number after a dot for a decimal, so the water stands in brackets. */
const theirSpelling = (formula: string): string => formula.replace(/\.(\d+)H2O$/, '(H2O)$1').replace(/\.H2O$/, '(H2O)');

interface Difference {
  readonly formula: string;
  readonly relative: number;
}
const worst = (differences: readonly Difference[]): Difference =>
  differences.reduce((one, other) => (other.relative > one.relative ? other : one));
const shown = ({ formula, relative }: Difference): string => `${relative.toExponential(2)} (${formula})`;

describe('molarMass', () => {
  const pairs = compounds.map((formula) => {
    const read = succeeded(readFormula(formula));
    const theirs: number = new mfParser.MF(theirSpelling(formula)).getInfo().mass;
    return { formula, atoms: read.atoms, ours: succeeded(molarMass(read)), theirs };
  });

  it('agrees with an independent library for some hundred compounds, in atoms and in mass', () => {
    const byAtoms = pairs.map(({ formula, atoms, theirs }) => {
      const sum = atoms.reduce((all, { element, count }) => all + count * theirMass(element), 0);
      return { formula, relative: Math.abs(sum / theirs - 1) };
    });
    const byMass = pairs.map(({ formula, ours, theirs }) => ({ formula, relative: Math.abs(ours / theirs - 1) }));
    console.log(
      `${pairs.length} compounds against mf-parser 3.9.3: largest relative difference with its own atomic masses ` +
        `${shown(worst(byAtoms))}, with the standard atomic weights ${shown(worst(byMass))}`,
    );
    expect(pairs.length).toBeGreaterThanOrEqual(400);
    expect(worst(byAtoms).relative).toBeLessThan(1e-12);
    // Its masses are means over isotopes; the conventional weights of chlorine, sulfur and lithium differ from those.
    expect(worst(byMass).relative).toBeLessThan(1e-4);
  });
});
