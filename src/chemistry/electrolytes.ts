/**
 * What dissolves as what. Ions of listed reagents: the published list of reagents (tests/published/reagents.csv).
 * Weak, molecular and sparingly soluble substances beyond that list: textbooks' usual lists, common practice, no source.
 */

/** Acids that dissociate completely, as atoms. Sulfuric acid is given in full, with a note on its second step. */
export const strongAcids = ['HCl', 'HBr', 'HI', 'HNO3', 'HClO4', 'HClO3', 'H2SO4'];

/**
 * Weak acids and bases; iron(III) fluoride, which dissolves but keeps its fluoride on the iron, and the chloride and
 * cyanide of mercury(II), whose molecules stay whole (common practice, no source): only a small part of them is ions.
 */
export const weakElectrolytes = (
  'CH3COOH HCOOH HF H3PO4 H3PO3 H2CO3 NH3 H2S HNO2 HClO HClO2 HBrO HCN H2SO3 H3BO3 C6H8O7 H2C2O4 C6H5COOH C2H5COOH C3H6O3 ' +
  'C4H6O6 C6H8O6 C6H5OH CH3NH2 C2H5NH2 (CH3)2NH C5H5N N2H4 H2O2S HIO3 C8H6O4 C7H6O3 H2CrO4 HSCN FeF3 HgCl2 Hg(CN)2'
).split(' ');

/** Substances that stay whole. */
export const molecularSolutes = (
  'C6H12O6 C12H22O11 CO(NH2)2 H2O2 C2H5OH CH3OH C3H7OH C3H8O3 C2H6O2 (CH3)2CO C6H14O6 C8H10N4O2 C4H8O HCHO CH3CN CS(NH2)2 ' +
  'O2 N2 CO2 C5H10O5 C18H32O16 C6H12O5 H2O'
).split(' ');

/** Hydroxides of which more than 1 g dissolves in 100 g of water at room temperature. */
const solubleHydroxides = new Set(['Li', 'Na', 'K', 'Rb', 'Cs', 'Ba', 'Sr', 'NH4']);

/**
 * Hydroxides that dissolve a little and then are ions altogether, with the molarity of the saturated solution: about
 * 1.7 g/L of calcium hydroxide at 20 °C, about 48 g/L of barium hydroxide at 25 °C. From memory.
 */
export const saturatedHydroxides: Readonly<Record<string, number>> = { Ca: 0.0235, Ba: 0.28 };

/** Cations whose salts all dissolve, for the rules below. */
const always = new Set(['Li', 'Na', 'K', 'Rb', 'Cs', 'NH4', 'H']);

/**
 * Salts below 1 g in 100 g of water although the rules further down say otherwise, or the reverse. From memory, but for
 * those that the table of solubilities named below has.
 */
const except: Readonly<Record<string, boolean>> = {
  'Li F': false,
  'Li PO4': false,
  'Mg CrO4': true,
  'Ca CrO4': true,
  'Mg SO3': false,
  'Ag F': true,
  'Ag NO2': false,
  'Be SO4': true,
  'Hg Br': false,
  'Hg I': false,
  'Hg SCN': false,
  'Sn I': false,
  'Co NO2': false,
  'Ag BrO3': false,
  'Ba BrO3': false,
  'K IO4': false,
  'K BF4': false,
};

/**
 * Cations whose salts with an anion stay below 1 g in 100 g of water; with a number, at that charge only. Checked against
 * the CRC Handbook of Chemistry and Physics, 98th edition (2017), “Aqueous Solubility of Inorganic Compounds at Various
 * Temperatures”, read in a public transcription; silver iodate and what that table leaves out are from memory.
 */
const lowWith = {
  halide: new Set(['Ag', 'Pb', 'Cu 1']),
  fluoride: new Set(['Mg', 'Ca', 'Sr', 'Ba', 'Pb', 'Al', 'Cu', 'Fe 2', 'Cr', 'Th', 'La', 'Ce']),
  iodate: new Set(['Ag', 'Ba', 'Ca', 'Cd', 'Mn', 'Pb', 'Sr', 'Zn']),
  sulfate: new Set(['Ba', 'Sr', 'Pb', 'Ca', 'Ag']),
};

/** Anions whose salts hardly dissolve except with the cations above. */
const lowAnions = new Set([
  'CO3',
  'PO4',
  'PO3',
  'AsO4',
  'BO3',
  'SiO3',
  'S',
  'SO3',
  'C2O4',
  'CrO4',
  'MoO4',
  'WO4',
  'B4O7',
  'C4H4O6',
  'SeO3',
  'HPO4',
]);

/** Whether less than 1 g of a salt dissolves in 100 g of water at room temperature, by the usual rules. */
export function isSparinglySoluble({
  cation,
  cationCharge,
  anion,
}: {
  cation: string;
  cationCharge: number;
  anion: string;
}): boolean {
  const own = except[`${cation} ${anion}`];
  if (own !== undefined) return !own;
  if (anion === 'OH') return !solubleHydroxides.has(cation);
  if (always.has(cation)) return false;
  if (anion === 'S') return !['Mg', 'Ca', 'Sr', 'Ba'].includes(cation);
  if (lowAnions.has(anion)) return true;
  const isAmong = (cations: ReadonlySet<string>) => cations.has(cation) || cations.has(`${cation} ${cationCharge}`);
  if (['Cl', 'Br', 'I', 'SCN', 'CN'].includes(anion)) return isAmong(lowWith.halide);
  if (anion === 'F') return isAmong(lowWith.fluoride);
  if (anion === 'IO3') return isAmong(lowWith.iodate);
  if (anion === 'SO4') return isAmong(lowWith.sulfate);
  return false;
}
