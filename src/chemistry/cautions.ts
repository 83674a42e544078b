import { failure, type Result, success } from '../errors/result.ts';
import type { Percent } from '../measurement/quantity.ts';
import { adviceTexts, cautionTexts, codeTexts, confidenceTexts } from './cautionTexts.ts';
import type { Formula } from './formula.ts';
import { type Confidence, type HazardLimit, type ListedHazards, listedHazards } from './listedHazards.ts';
import { molarMass } from './molarMass.ts';
import { pictogramsOf } from './pictogramsOf.ts';
import { notAShare } from './purity.ts';

interface Statement {
  /** Code of the GHS, such as H314; empty for a line that is none of its statements. */
  readonly code: string;
  readonly text: string;
  readonly advice: string;
  readonly confidence: Confidence | undefined;
}

export interface Cautions {
  readonly listing: 'listed' | 'another hydrate' | 'unlisted';
  /** Name of the listed substance; empty for an unlisted one. */
  readonly name: string;
  readonly signalWord: 'Danger' | 'Warning' | '';
  /** GHS01 to GHS09. */
  readonly pictograms: readonly string[];
  /** What it can do and what to do about it; the last line defers to the safety data sheet and local rules. */
  readonly statements: readonly Statement[];
}

/**
 * Cautions for a substance as it stands in the bottle, or for a solution of it in water of a given strength. Substances are
 * matched by a list of spellings, never by composition; one that is not listed is said to be unlisted.
 *
 * @param massPercent - Grams of the substance as written in 100 g of solution; undiluted where left out.
 * @returns Fails with `purity-out-of-range`.
 * Source: CLP Annex VI and Annex I as consolidated 2026-07-01 (codes and limits), supplier sheets where Annex VI has no
 * entry; rules of precedence and signal words from memory. Each line says how sure it is.
 */
export function cautions(formula: Formula, massPercent?: Percent): Result<Cautions> {
  const error = massPercent === undefined ? undefined : notAShare(massPercent, 'mass_percent');
  if (error) return failure(error);
  const found = listedAs(formula.text);
  if (found === undefined) {
    return success({
      listing: 'unlisted',
      name: '',
      signalWord: '',
      pictograms: [],
      statements: [line(cautionTexts.unlisted, cautionTexts.unlistedAdvice), lastLine],
    });
  }
  const { substance, listing } = found;
  const hazards =
    massPercent === undefined && substance.codes !== undefined
      ? undiluted(substance)
      : atStrength(substance, formula, massPercent ?? 100);
  const statements = [
    ...(listing === 'listed' ? [] : [line(cautionTexts.otherHydrate(substance.spellings[0] ?? ''), '')]),
    ...hazards.statements,
    ...(substance.schoolUse === '' ? [] : [line(cautionTexts.school(substance.schoolUse), cautionTexts.schoolAdvice)]),
    lastLine,
  ];
  return success({ listing, name: substance.name, ...hazards, statements });
}

const line = (text: string, advice: string): Statement => ({ code: '', text, advice, confidence: undefined });
const lastLine = line('', cautionTexts.deferring);

/** One way to write a formula: brackets, separators and digits of one kind, no spaces. */
const plainFormula = (text: string): string =>
  text
    .normalize('NFKC')
    .replace(/[\s\u200b\ufeff]/g, '')
    .replace(/[[{]/g, '(')
    .replace(/[\]}]/g, ')')
    .replace(/[•*.⋅∙‧・]/g, '·');

/** The number before the water may be decimal, its point a separator by now, or a fraction with a slash of its own. */
const withoutWater = (spelling: string): string => spelling.replace(/·(\d+[·,])?[\d⁄]*H2O$/, '');

function listedAs(
  text: string,
): { readonly substance: ListedHazards; readonly listing: Cautions['listing'] } | undefined {
  const wanted = plainFormula(text);
  const substances = listedHazards();
  const exact = substances.find(({ spellings }) => spellings.includes(wanted));
  if (exact) return { substance: exact, listing: 'listed' };
  const dry = withoutWater(wanted);
  const other = substances.find(({ spellings }) => spellings.some((spelling) => withoutWater(spelling) === dry));
  return other && { substance: other, listing: 'another hydrate' };
}

type Hazards = Pick<Cautions, 'signalWord' | 'pictograms' | 'statements'>;

interface Holding {
  readonly code: string;
  readonly confidence: Confidence;
}

function undiluted(substance: ListedHazards): Hazards {
  const codes = substance.codes ?? [];
  if (codes.length > 0) {
    const statements = codes.map(({ code, confidence }) => statementOf(bareCode(code), confidence));
    return {
      signalWord: substance.signalWord,
      pictograms: pictogramsOf(codes.map(({ code }) => code)),
      statements: withCare(statements, substance),
    };
  }
  return {
    signalWord: '',
    pictograms: [],
    statements: [
      substance.confidence === 'm'
        ? line(cautionTexts.notKnown, cautionTexts.notKnownAdvice)
        : line(
            cautionTexts.notClassifiedUndiluted(confidenceTexts[substance.confidence]),
            cautionTexts.notClassifiedAdvice,
          ),
    ],
  };
}

/** Share of an edge within which the stricter side is shown: house choice. */
const nearEdge = 0.05;
/** Share of an edge from which a least class is mentioned: house choice. */
const nearMinimum = 0.5;

function isWithin(percent: number, { from, to }: HazardLimit): boolean {
  if (from && (from.isOpen ? percent <= from.percent : percent < from.percent)) return false;
  return !(to && (to.isOpen ? percent >= to.percent : percent > to.percent));
}

function atStrength(substance: ListedHazards, formula: Formula, massPercent: number): Hazards {
  const mass = formulaMass(formula);
  const counted = ({ countedGramsPerMole }: HazardLimit): number =>
    countedGramsPerMole === undefined || mass === undefined ? massPercent : (massPercent * countedGramsPerMole) / mass;
  const known = substance.limits.filter((limit) => !limit.isWithoutLimit);
  const holding = known.filter((limit) => isWithin(counted(limit), limit));
  const near = known.filter((limit) => {
    const percent = counted(limit);
    return (
      limit.from !== undefined &&
      !isWithin(percent, limit) &&
      percent < limit.from.percent * (1 + 1e-12) &&
      percent >= limit.from.percent * (1 - nearEdge)
    );
  });
  const all = tidied([...holding, ...near]);
  const shown = new Set(all.map(({ code }) => code));
  const isSureOfEverything = substance.confidence !== 'm';
  const unknown = substance.limits.filter(({ isWithoutLimit, code }) => isWithoutLimit && !shown.has(code));
  const minimum = known.filter((limit) => {
    const percent = counted(limit);
    return (
      limit.isMinimum &&
      limit.from !== undefined &&
      percent < limit.from.percent &&
      percent >= limit.from.percent * nearMinimum &&
      !near.includes(limit)
    );
  });
  const statements: Statement[] = withCare(
    all.map(({ code, confidence }) => statementOf(code, confidence)),
    substance,
  );
  if (all.length === 0) {
    statements.push(
      substance.limits.length === 0 && (substance.codes ?? []).length > 0
        ? line(cautionTexts.partNotKnown(codeList(substance.codes ?? [])), cautionTexts.partNotKnownAdvice)
        : !isSureOfEverything
          ? line(cautionTexts.notKnown, cautionTexts.notKnownAdvice)
          : unknown.length + minimum.length > 0
            ? line(cautionTexts.notClassifiedAsFarAsKnown, cautionTexts.notClassifiedAsFarAsKnownAdvice)
            : line(cautionTexts.notClassified, cautionTexts.notClassifiedAdvice),
    );
  }
  if (near.length > 0) statements.push(line(cautionTexts.nearEdge, ''));
  if (minimum.length > 0) {
    statements.push(line(cautionTexts.minimumClass(codeList(minimum)), cautionTexts.partNotKnownAdvice));
  }
  if (unknown.length > 0) {
    statements.push(line(cautionTexts.partNotKnown(codeList(unknown)), cautionTexts.partNotKnownAdvice));
  }
  if (substance.limits.some(({ dependsOnPh }) => dependsOnPh)) {
    statements.push(line(cautionTexts.extremePh, cautionTexts.extremePhAdvice));
  }
  return { signalWord: signalOf(all), pictograms: pictogramsOf(all.map(({ code }) => code)), statements };
}

/** Grams per mole of the formula as typed, which its strength counts; another hydrate weighs otherwise. */
function formulaMass(formula: Formula): number | undefined {
  const mass = molarMass(formula);
  return mass.ok ? mass.value : undefined;
}

const bareCode = (code: string): string => code.replace('/3', '');
const codeList = (holding: readonly { readonly code: string }[]): string =>
  Array.from(new Set(holding.map(({ code }) => `${bareCode(code)} (${codeTexts()[code]?.means ?? ''})`))).join(', ');

/** Codes that hide weaker ones on a label: CLP Annex I and Article 26, from memory. */
const hides: readonly (readonly [string, readonly string[]])[] = [
  ['H314', ['H318', 'H315', 'H319']],
  ['H318', ['H319']],
  ['H410', ['H400', 'H411', 'H412']],
  ['H411', ['H412']],
  ['H271', ['H272', 'H272/3']],
  ['H272', ['H272/3']],
  ['H300', ['H301', 'H302']],
  ['H301', ['H302']],
  ['H310', ['H311', 'H312']],
  ['H311', ['H312']],
  ['H330', ['H331', 'H332']],
  ['H331', ['H332']],
  ['H340', ['H341']],
  ['H350', ['H350i', 'H351']],
  ['H350i', ['H351']],
  ['H370', ['H371']],
  ['H372', ['H373']],
];

/** One line for each code, without those that a stricter one hides. */
function tidied(limits: readonly HazardLimit[]): readonly Holding[] {
  const codes = new Set(limits.map(({ code }) => code));
  for (const [strict, weaker] of hides) {
    if (codes.has(strict)) for (const code of weaker) codes.delete(code);
  }
  return Array.from(codes).map((code) => ({
    code,
    confidence: limits.find((limit) => limit.code === code)?.confidence ?? 'm',
  }));
}

const signalOf = (holding: readonly Holding[]): Cautions['signalWord'] => {
  const words = holding.map(({ code }) => codeTexts()[code]?.signal ?? '');
  return words.includes('Danger') ? 'Danger' : words.includes('Warning') ? 'Warning' : '';
};

function statementOf(code: string, confidence: Confidence): Statement {
  const text = codeTexts()[code];
  const advice = text?.advice ?? [];
  return {
    code: bareCode(code),
    text: `${bareCode(code)}: ${text?.means ?? ''} (${confidenceTexts[confidence]})`,
    advice: advice.map((name) => adviceTexts[name]).join(' '),
    confidence,
  };
}

const acids = ['HCl', 'H2SO4', 'HNO3', 'H3PO4', 'CH3COOH', 'HCOOH', 'HClO4', 'HF', 'HBr'];
const hotBases = ['NaOH', 'KOH'];

/** Adds how to dilute or dissolve it where it still burns. */
function withCare(statements: readonly Statement[], { spellings }: ListedHazards): Statement[] {
  if (!statements.some(({ code }) => code === 'H314')) return [...statements];
  const [formula = ''] = spellings;
  const care = acids.includes(formula)
    ? adviceTexts.acidToWater
    : hotBases.includes(formula)
      ? adviceTexts.heatOfSolution
      : '';
  return care === '' ? [...statements] : [...statements, line('', care)];
}

/** The table of a cell function: signal word, what it can do, what to do about it; the signal word in the first row. */
export const cautionRows = ({ signalWord, statements }: Cautions): readonly (readonly [string, string, string])[] =>
  statements.map(({ text, advice }, row) => [row === 0 ? signalWord : '', text, advice]);
