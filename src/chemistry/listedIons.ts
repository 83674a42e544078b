/**
 * The usual ions of school chemistry: how each is written, and its charge. Charges of the elements are common practice,
 * no source; every ion of a listed reagent stands here as well.
 */
const cationList =
  'H+ Li+ Na+ K+ Rb+ Cs+ Ag+ Cu+ NH4+ Be^2+ Mg^2+ Ca^2+ Sr^2+ Ba^2+ Zn^2+ Cd^2+ Fe^2+ Fe^3+ Co^2+ Co^3+ Ni^2+ Cu^2+ Mn^2+ Cr^2+ Cr^3+ ' +
  'Al^3+ Ga^3+ Sc^3+ Bi^3+ La^3+ Ce^3+ Ce^4+ Sn^2+ Sn^4+ Pb^2+ Hg^2+ Pd^2+ Pt^2+ Au^3+ V^2+ V^3+ Ti^3+ Th^4+ H3O+';
const anionList =
  'F- Cl- Br- I- OH- NO3- NO2- ClO- ClO2- ClO3- ClO4- BrO- BrO3- IO3- IO4- MnO4- CN- SCN- HCO3- HSO4- HSO3- HS- H2PO4- CH3COO- HCOO- ' +
  'HC8H4O4- HC2O4- S2O3^2- SO4^2- SO3^2- S^2- CO3^2- CrO4^2- Cr2O7^2- MnO4^2- HPO4^2- C2O4^2- S2O8^2- S4O6^2- SiO3^2- B4O7^2- O^2- O2^2- PO4^3- PO3^3- ' +
  'AsO4^3- BO3^3- C6H5O7^3- Fe(CN)6^3- Fe(CN)6^4- N3- HO2- C6H5COO- C4H4O6^2- HC4H4O6- C2H5COO- BF4- MoO4^2- WO4^2- VO3- SeO4^2- SeO3^2- B(OH)4- Al(OH)4-';

export interface ListedIon {
  /** As usually written, without the charge: `SO4`. */
  readonly body: string;
  readonly charge: number;
}

const read = (list: string): ListedIon[] =>
  list.split(' ').map((written) => {
    const [, body, digits, sign] = /^(.*?)(?:\^(\d))?([+-])$/.exec(written) as unknown as [
      string,
      string,
      string?,
      string?,
    ];
    return { body, charge: Number(digits ?? 1) * (sign === '-' ? -1 : 1) };
  });

let cations: readonly ListedIon[] | undefined;
let anions: readonly ListedIon[] | undefined;

export const listedCations = (): readonly ListedIon[] => (cations ??= read(cationList));
export const listedAnions = (): readonly ListedIon[] => (anions ??= read(anionList));

/** Whether an ion of this body, as written, has this charge on the list. */
export const isListedIon = ({ body, charge }: ListedIon): boolean =>
  [...listedCations(), ...listedAnions()].some((ion) => ion.charge === charge && sameBody(ion.body, body));

const sameBody = (one: string, other: string) => one === other.replace(/^\[(.*)\]$/, '$1');
