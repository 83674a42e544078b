import { ions } from '../../chemistry/ions.ts';
import { matchIon } from '../../chemistry/matchIon.ts';
import { readFormula } from '../../chemistry/readFormula.ts';
import { errorText } from '../../errors/errorText.ts';

export interface IonChoice {
  /** The ions of the substance as usually written; none where it gives no ions that can be named. */
  readonly options: readonly string[];
  /** True where the formula can be read and gives no ions that can be named. */
  readonly none: boolean;
  /** The option that a typed ion means, or the empty text. */
  readonly chosen: string;
  /** What to begin with: the ion there is most of, the last one where there is as much of each. */
  readonly likely: string;
  /** Why the typed ion is none of these, or the empty text. */
  readonly problem: string;
}

/** Which ions can be asked about in a solution of this substance, and which of them was typed. */
export function ionChoice({ formula, ion }: { readonly formula: string; readonly ion: string }): IonChoice {
  const read = readFormula(formula);
  const present = read.ok ? ions(read.value) : undefined;
  if (!present?.ok || present.value.some(({ charge }) => charge === 0)) {
    return { options: [], none: read.ok, chosen: '', likely: '', problem: '' };
  }
  const match = ion.trim() === '' ? undefined : matchIon(ion, present.value);
  const likely = present.value.reduce((most, one) => (one.count >= most.count ? one : most));
  return {
    options: present.value.map((one) => one.ion),
    none: false,
    chosen: match?.ok ? match.value.ion : '',
    likely: likely.ion,
    problem: match && !match.ok ? errorText(match.error) : '',
  };
}
