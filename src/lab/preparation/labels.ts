import type { Cautions } from '../../chemistry/cautions.ts';
import { cautionsAt } from '../../chemistry/cautionsAt.ts';
import { hazardStatement } from '../../chemistry/hazardStatement.ts';
import { type Pictogram, pictogramNamed } from '../../chemistry/pictogramNamed.ts';
import type { Formula } from '../../chemistry/readFormula.ts';
import { decimalText } from '../judging/decimalText.ts';
import { statementsIn } from '../lesson/cautionPiecesIn.ts';
import { listedSolutes } from '../lesson/solutes.ts';
import type { CautionLanguage } from '../texts/cautionLanguages/cautionLanguage.ts';
import { preparationTexts as words } from '../texts/preparation.ts';
import type { DayPreparation } from './dayPreparation.ts';

/** One label for a bottle, flask or jar that is not the supplier's own. Date and initials are written in or printed. */
export interface Label {
  /** Product identifier: the name where the substance is listed, otherwise its formula. */
  readonly name: string;
  readonly formula: string;
  readonly strength: string;
  readonly signalWord: string;
  /**
   * Nobody here knows the substance, so nobody knows whether it needs a signal word. Of a listed substance too weak to be
   * sure of, the statements say so: a line about a missing word would tell less.
   */
  readonly isSignalUnknown: boolean;
  readonly pictograms: readonly Pictogram[];
  /** The prescribed statements with their codes, and what is not known. */
  readonly statements: readonly string[];
  /** What to wear and to do, without the deferring line. */
  readonly advice: readonly string[];
  /** The line that defers to the safety data sheet and local rules. */
  readonly deferring: string;
  /** Signal word, statements and the line that defers, in a second language; left out where the lesson has one. */
  readonly also?: {
    readonly tag: string;
    readonly signalWord: string;
    readonly statements: readonly string[];
    readonly deferring: string;
  };
  /** Class and team, or that it is for the whole day. */
  readonly whose: string;
  /** How many of this one. */
  readonly copies: number;
  /** mL that the vessel holds; left out where nobody knows, as of a jar. */
  readonly vesselMl?: number;
}

interface Named {
  readonly formula: Formula;
  readonly strength: string;
  readonly cautions: Cautions;
  readonly whose: string;
  readonly copies: number;
  readonly vesselMl?: number;
}

/**
 * Labels for everything that stands in a vessel other than the supplier's: jars of solid, stocks, and what teams make.
 * Statements are quoted from CLP Annex III. What a label carries follows OSHA 29 CFR 1910.1200(f)(6) for workplace containers and the label elements of the GHS
 * (identifier, signal word, statements, pictograms), both from memory; date and initials are common practice, no source.
 */
export function labels(
  day: DayPreparation,
  decimalMark: 'point' | 'comma',
  language?: CautionLanguage,
): readonly Label[] {
  const number = (value: number) => decimalText(value, decimalMark);
  const molar = ({ molarity, typed }: { readonly molarity: number; readonly typed?: string }) => {
    const shown = typed ?? number(molarity);
    return words.strength(shown, shown);
  };
  const named: Named[] = [];
  for (const { formula: text } of day.solids) {
    const formula = day.uses.find((use) => use.formula.text === text)?.formula;
    const isThere = named.some((label) => label.formula.text === text);
    if (formula === undefined || isThere) continue;
    named.push({
      formula,
      strength: words.solidStrength,
      cautions: cautionsAt(formula, 'undiluted'),
      whose: words.forDay,
      copies: 1,
    });
  }
  for (const solution of day.staffMade) {
    const { formula, molarity, fillings, flaskMl } = solution;
    named.push({
      formula,
      strength: molar(solution),
      cautions: cautionsAt(formula, { molarity }),
      whose: words.forDay,
      copies: fillings,
      vesselMl: flaskMl,
    });
  }
  for (const { team, formula, poured, made, diluted } of day.uses) {
    // Set out in a small vessel for each team: a bottle of the supplier's has a label of its own.
    if (poured) {
      const { massPercent } = poured;
      named.push({
        formula,
        strength: words.bottleStrength(number(massPercent)),
        cautions: cautionsAt(formula, { massPercent }),
        whose: `${team.className} · ${team.team}`,
        copies: 1,
      });
    }
    for (const portion of [...(made ? [made] : []), ...diluted]) {
      named.push({
        formula: portion.formula,
        strength: molar(portion),
        cautions: cautionsAt(portion.formula, { molarity: portion.molarity }),
        whose: `${team.className} · ${team.team}`,
        copies: 1,
        vesselMl: portion.volume,
      });
    }
  }
  return named.map((one) => ({ ...labelOf(one), ...(language === undefined ? {} : { also: alsoIn(language, one) }) }));
}

function alsoIn(language: CautionLanguage, { cautions }: Named): NonNullable<Label['also']> {
  const { tag, deferring } = language;
  return { tag, ...statementsIn(language, cautions), deferring };
}

function labelOf({ formula, strength, cautions, whose, copies, vesselMl }: Named): Label {
  const { statements, signalWord, pictograms, verdict, listing } = cautions;
  const told = statements.slice(0, -1);
  // Of several substances with one formula each statement is quoted once.
  const lines = told.map(({ code, plain }) => (code === '' ? plain : `${code}: ${hazardStatement(code)}`));
  const advice = new Set(told.flatMap(({ advice: words }) => words.split(/(?<=\.) /)).filter((line) => line !== ''));
  return {
    name: nameOf(formula, cautions),
    formula: formula.text,
    strength,
    signalWord,
    pictograms: pictograms.map(pictogramNamed),
    isSignalUnknown: signalWord === '' && verdict === 'unsure' && listing === 'unlisted',
    statements: Array.from(new Set(lines)).filter((line) => line !== ''),
    advice: [...advice],
    deferring: statements[statements.length - 1]?.advice ?? '',
    whose,
    copies,
    ...(vesselMl === undefined ? {} : { vesselMl }),
  };
}

function nameOf({ text }: Formula, { listing, name }: Cautions): string {
  if (listing === 'listed') return name;
  const dotted = text.replace(/\s/g, '').replace(/[.*•]/g, '·');
  return listedSolutes().find(({ formula }) => formula === dotted)?.name ?? text;
}
