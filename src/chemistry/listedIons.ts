/**
 * The usual ions of school chemistry: how each is written, and its charge. Charges of the elements are common practice,
 * no source; every ion of a listed reagent stands here as well.
 */
const cationList =
  'H+ Li+ Na+ K+ Rb+ Cs+ Ag+ Cu+ NH4+ Be^2+ Mg^2+ Ca^2+ Sr^2+ Ba^2+ Zn^2+ Cd^2+ Fe^2+ Fe^3+ Co^2+ Co^3+ Ni^2+ Cu^2+ Mn^2+ Cr^2+ Cr^3+ ' +
  'Al^3+ Ga^3+ Sc^3+ Bi^3+ La^3+ Ce^3+ Ce^4+ Sn^2+ Sn^4+ Pb^2+ Hg^2+ Pd^2+ Pt^2+ Au^3+ V^2+ V^3+ Ti^3+ Th^4+ H3O+';
/** Those of more atoms first: hydrogen carbonate is looked for before carbonate. */
const anionList =
  'C6H5O7^3- HC8H4O4- HC4H4O6- C6H5COO- C4H4O6^2- Fe(CN)6^3- Fe(CN)6^4- B4O7^2- S2O8^2- S4O6^2- C2H5COO- ' +
  'Cr2O7^2- B(OH)4- Al(OH)4- H2PO4- CH3COO- HC2O4- HSO4- HPO4^2- C2O4^2- ClO4- IO4- MnO4- HCO3- HSO3- ' +
  'S2O3^2- SO4^2- CrO4^2- MnO4^2- PO4^3- AsO4^3- BF4- MoO4^2- WO4^2- SeO4^2- NO3- ClO3- BrO3- IO3- HCOO- ' +
  'SO3^2- CO3^2- SiO3^2- PO3^3- BO3^3- VO3- SeO3^2- NO2- ClO2- SCN- N3- HO2- OH- ClO- BrO- CN- HS- O2^2- F- ' +
  'Cl- Br- I- S^2- O^2-';

export interface ListedIon {
  /** As usually written, without the charge: `SO4`. */
  readonly body: string;
  readonly charge: number;
}

const read = (list: string): ListedIon[] =>
  list.split(' ').map((written) => {
    const caret = written.indexOf('^');
    const size = caret < 0 ? 1 : Number(written.slice(caret + 1, -1));
    return { body: written.slice(0, caret < 0 ? -1 : caret), charge: written.endsWith('-') ? -size : size };
  });

let cations: readonly ListedIon[] | undefined;
let anions: readonly ListedIon[] | undefined;

export const listedCations = (): readonly ListedIon[] => (cations ??= read(cationList));
export const listedAnions = (): readonly ListedIon[] => (anions ??= read(anionList));

/** Whether an ion of this body, as written, has this charge on the list. */
export const isListedIon = ({ body, charge }: ListedIon): boolean =>
  [...listedCations(), ...listedAnions()].some((ion) => ion.charge === charge && sameBody(ion.body, body));

const sameBody = (one: string, other: string) => one === other.replace(/^\[(.*)\]$/, '$1');
