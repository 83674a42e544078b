import type { Cautions } from '../../chemistry/cautions.ts';
import { cautionsAt } from '../../chemistry/cautionsAt.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { type Strength, strengthPercent } from '../../chemistry/strengthPercent.ts';
import { type CellValue, isBlank } from '../../measurement/cellValue.ts';
import { isBareNumber } from '../../measurement/isBareNumber.ts';
import { molesPerLitre, type Percent, percent } from '../../measurement/quantity.ts';
import { readQuantity } from '../../measurement/readQuantity.ts';
import { tickTexts } from '../texts/ticks.ts';
import type { Substance } from './activity.ts';

/** One of the forms in which a team handles its substance. */
export interface HandledForm {
  /** What sets it apart from the others, such as `solid` or `0.300 mol/L`; empty where its strength is not known. */
  readonly words: string;
  /** The same in as few words as can be, such as `37.2 %`. */
  readonly short: string;
  /** Undefined for the substance itself, and where its strength is not known. */
  readonly massPercent: Percent | undefined;
  readonly cautions: Cautions;
}

export interface Handling {
  readonly substance: Substance;
  readonly formula: Formula;
  readonly givens: Readonly<Record<string, CellValue>>;
  readonly decimalMark: 'point' | 'comma';
}

/** With a unit of its own it is shown as it was typed. */
const withUnit = (typed: CellValue, unit: string): string => {
  const text = String(typed).trim();
  return isBareNumber(text) ? `${text} ${unit}` : text;
};

/**
 * In which forms a team handles its substance, the strongest first, each with its cautions. A strength that cannot be read
 * counts as undiluted, and a form that is told just as a stronger one is left out.
 */
export function handledForms({ substance, formula, givens, decimalMark }: Handling): readonly HandledForm[] {
  const { solid, massPercent, molarity } = substance;
  const read = (name: string, kind: 'percent' | 'concentration'): number | undefined => {
    const quantity = isBlank(givens[name]) ? undefined : readQuantity(givens[name], kind, name, { decimalMark });
    return quantity?.ok ? quantity.value.value : undefined;
  };
  const formOf = (strength: Strength, words: string, short = words): HandledForm => ({
    words,
    short,
    massPercent: strengthPercent(formula, strength),
    cautions: cautionsAt(formula, strength),
  });
  const forms: HandledForm[] = [];
  if (solid) forms.push(formOf('undiluted', tickTexts.solid));
  if (massPercent !== undefined) {
    const share = read(massPercent, 'percent');
    forms.push(
      share === undefined
        ? formOf('undiluted', '')
        : formOf(
            { massPercent: percent(share) },
            tickTexts.inBottle(withUnit(givens[massPercent], '%')),
            withUnit(givens[massPercent], '%'),
          ),
    );
  }
  if (molarity !== undefined) {
    const strength = read(molarity, 'concentration');
    forms.push(
      strength === undefined
        ? formOf('undiluted', '')
        : formOf({ molarity: molesPerLitre(strength) }, withUnit(givens[molarity], 'mol/L')),
    );
  }
  if (forms.length === 0) forms.push(formOf('undiluted', ''));
  const told = ({ cautions: { signalWord, statements } }: HandledForm) => JSON.stringify([signalWord, statements]);
  return forms.filter((form, place) => forms.findIndex((other) => told(other) === told(form)) === place);
}
