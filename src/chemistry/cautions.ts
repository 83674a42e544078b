import { failure, type Result, success } from '../errors/result.ts';
import type { CellValue } from '../measurement/cellValue.ts';
import type { Percent } from '../measurement/quantity.ts';
import { adviceTexts, cautionTexts, codeTexts, confidenceTexts } from './cautionTexts.ts';
import type { Formula } from './formula.ts';
import { hiddenBy } from './hiddenBy.ts';
import type { Confidence, HazardLimit, ListedHazards } from './listedHazards.ts';
import { molarMass } from './molarMass.ts';
import { pictogramsOf } from './pictogramsOf.ts';
import { notAShare } from './purity.ts';
import { readFormula } from './readFormula.ts';
import { type Found, plainFormula, substancesListed, waterOf } from './substancesListed.ts';
import { type Waste, wasteOf } from './wasteOf.ts';

type SignalWord = 'Danger' | 'Warning' | '';

interface Statement {
  /** What the line is about: a code of the GHS, how to dilute it, what is not known, its use in schools, where it goes. */
  readonly about: 'substance' | 'form' | 'hazard' | 'care' | 'note' | 'use' | 'waste' | 'deferring';
  /** Code of the GHS, such as H314; empty for a line that is none of its statements. */
  readonly code: string;
  readonly text: string;
  /** The same for students and labels: without codes, sources and how sure it is. Empty for what only staff can use. */
  readonly plain: string;
  readonly advice: string;
  readonly confidence: Confidence | undefined;
  /** Of the lines that follow, where the formula stands for several substances. */
  readonly signalWord?: SignalWord;
}

export interface Cautions {
  readonly listing: 'listed' | 'another hydrate' | 'unlisted';
  /** Name of the listed substance, of several with `or` between them; empty for an unlisted one. */
  readonly name: string;
  /** As the list calls each of them. */
  readonly listedNames: readonly string[];
  /** Whether some hazard holds, none does as two sources or the act say, or neither can be said. */
  readonly verdict: 'hazards' | 'none' | 'unsure';
  readonly signalWord: SignalWord;
  /** GHS01 to GHS09. */
  readonly pictograms: readonly string[];
  /** What it can do and what to do about it, where it goes; the last line defers to the data sheet and local rules. */
  readonly statements: readonly Statement[];
  /** Codes that hold, those in doubt that are kept because they are stricter among them. */
  readonly codes: readonly string[];
  /** Codes of which nobody says whether they hold at this strength. */
  readonly unknownCodes: readonly string[];
  readonly waste: Waste;
}

/**
 * Cautions for a substance as it is sold, or for a solution of it in water of a given strength. Substances are matched by a
 * list of spellings, never by composition; one that is not listed is said to be unlisted. Where several share the formula,
 * each is told by its name, and the strictest of them decides signal word and waste.
 *
 * @param massPercent - Grams of the substance as written in 100 g of solution; as it is sold where left out, and where it
 * is sold in several strengths, as the strictest of them.
 * @returns Fails with `purity-out-of-range`.
 * Source: CLP Annex VI and Annex I as consolidated at `hazardDataDate` (codes and limits), supplier sheets where Annex VI has
 * no entry; rules of precedence and signal words from memory. Each line says how sure it is.
 */
export function cautions(formula: Formula, massPercent?: Percent): Result<Cautions> {
  const error = massPercent === undefined ? undefined : notAShare(massPercent, 'mass_percent');
  if (error) return failure(error);
  const found = substancesListed(formula.text);
  if (found === undefined) return success(unlisted(formula));
  return success(together(found, found.by === 'name' ? undefined : formula, massPercent));
}

/**
 * Cautions for what a cell holds: a formula, or a name of a listed substance.
 *
 * @returns Fails with `purity-out-of-range`, or with what reading it as a formula fails with.
 */
export function cautionsNamed(cell: CellValue, massPercent?: Percent): Result<Cautions> {
  const read = readFormula(cell);
  if (read.ok) return cautions(read.value, massPercent);
  const error = massPercent === undefined ? undefined : notAShare(massPercent, 'mass_percent');
  if (error) return failure(error);
  const found = typeof cell === 'string' ? substancesListed(cell) : undefined;
  return found === undefined ? read : success(together(found, undefined, massPercent));
}

const line = (about: Statement['about'], text: string, advice: string, plain = text): Statement => ({
  about,
  code: '',
  text,
  plain,
  advice,
  confidence: undefined,
});
const lastLine = line('deferring', '', cautionTexts.deferring);

function wasteLine({ goesTo, metal }: Waste): Statement {
  if (goesTo === 'drain') return line('waste', '', cautionTexts.drain);
  return line('waste', '', metal === '' ? cautionTexts.beaker : cautionTexts.metalBeaker(metal));
}

function unlisted(formula: Formula): Cautions {
  const waste = wasteOf(formula, { substance: undefined, codes: [], massPercent: undefined });
  return {
    listing: 'unlisted',
    name: '',
    listedNames: [],
    verdict: 'unsure',
    signalWord: '',
    pictograms: [],
    statements: [line('note', cautionTexts.unlisted, cautionTexts.unlistedAdvice), wasteLine(waste), lastLine],
    codes: [],
    unknownCodes: [],
    waste,
  };
}

/** What is known of one of the substances that a formula stands for. */
interface Known {
  readonly name: string;
  readonly holding: readonly Holding[];
  readonly unknownCodes: readonly string[];
  readonly verdict: Cautions['verdict'];
  /** The substance has codes somewhere of which this strength is not known to be free. */
  readonly hasDoubts: boolean;
  readonly statements: readonly Statement[];
  readonly waste: Waste;
}

/** Without a formula, which a name does not have, each substance is taken in the form in which it is listed. */
function together(
  { listing, substances }: Found,
  formula: Formula | undefined,
  massPercent: Percent | undefined,
): Cautions {
  const all = substances.map((substance) =>
    knownOf(substance, { listing, formula: formula ?? formulaOf(substance), massPercent }),
  );
  const codes = Array.from(new Set(all.flatMap(({ holding }) => holding.map(({ code }) => code))));
  const waste = all.map((known) => known.waste).find(({ goesTo }) => goesTo !== 'drain') ?? all[0]?.waste;
  if (waste === undefined) throw new Error('Found without a substance.');
  const blocks =
    all.length === 1
      ? all.flatMap(({ statements }) => statements)
      : all.flatMap(({ name, holding, statements }) => [
          {
            ...line('substance', cautionTexts.ifItIs(name), ''),
            signalWord: signalOf(holding.map(({ code }) => code)),
          },
          ...statements,
        ]);
  return {
    listing,
    name: all.map(({ name }) => name).join(' or '),
    listedNames: substances.map(({ name }) => name),
    verdict: verdictOf(all),
    signalWord: signalOf(codes),
    pictograms: pictogramsOf(codes),
    statements: [...blocks, wasteLine(waste), lastLine],
    codes: codes.map(bareCode),
    unknownCodes: Array.from(new Set(all.flatMap(({ unknownCodes }) => unknownCodes.map(bareCode)))),
    waste,
  };
}

/** Of several with no hazard in any, the usual ones settle it; the doubt about the others is told beside their names. */
function verdictOf(all: readonly Known[]): Cautions['verdict'] {
  if (all.some(({ verdict }) => verdict === 'hazards')) return 'hazards';
  const isOpen = all.some(({ hasDoubts }) => hasDoubts);
  return !isOpen && all.some(({ verdict }) => verdict === 'none') ? 'none' : 'unsure';
}

function knownOf(
  substance: ListedHazards,
  {
    listing,
    formula,
    massPercent,
  }: { readonly listing: Found['listing']; readonly formula: Formula; readonly massPercent: Percent | undefined },
): Known {
  const [primary = ''] = substance.spellings;
  const { holding, unknownCodes, verdict, statements } =
    massPercent === undefined ? asSold(substance, formula) : atStrength(substance, formula, massPercent);
  return {
    name: nameOfForm(substance, formula),
    holding,
    unknownCodes,
    verdict,
    hasDoubts: verdict === 'unsure' && substance.codes.length + substance.limits.length > 0,
    statements: [
      ...(listing === 'listed' ? [] : [line('form', cautionTexts.otherHydrate(primary), '')]),
      ...statements,
      ...(substance.schoolUse === ''
        ? []
        : [line('use', cautionTexts.school(substance.schoolUse), cautionTexts.schoolAdvice)]),
    ],
    waste: wasteOf(formula, {
      substance,
      codes: [...holding.map(({ code }) => code), ...unknownCodes],
      massPercent,
    }),
  };
}

/** The name without a number of waters that this form does not have. */
function nameOfForm({ name, spellings: [primary = ''] }: ListedHazards, { text }: Formula): string {
  return waterOf(plainFormula(text)) !== waterOf(plainFormula(primary)) ? name.replace(/ [a-z]+hydrate$/, '') : name;
}

/** As it is listed; every substance has a spelling that can be read. */
function formulaOf({ name, spellings }: ListedHazards): Formula {
  const read = readFormula(spellings[0]);
  if (!read.ok) throw new Error(`${name}: ${spellings[0]} cannot be read`);
  return read.value;
}

type Hazards = Pick<Known, 'holding' | 'unknownCodes' | 'verdict' | 'statements'>;

interface Holding {
  readonly code: string;
  readonly confidence: Confidence;
}

/** Its codes as it is sold, and those of its limits at 100 %: stricter ones that a source adds, or a stronger bottle has. */
function asSold(substance: ListedHazards, formula: Formula): Hazards {
  const { codes, limits, confidence, soldPercent } = substance;
  const percentCounted = percentCountedFor(substance, formula, 100);
  const strongest = limits.filter((limit) => !limit.isWithoutLimit && isWithin(percentCounted(limit), limit));
  const holding = tidied([...codes, ...strongest]);
  const sold = new Set(tidied(codes).map(({ code }) => code));
  const isStricter = holding.some(({ code }) => !sold.has(code));
  const shown = soldPercent === undefined ? '' : String(soldPercent);
  const strength =
    shown === '' ? [] : [line('note', isStricter ? cautionTexts.strictest(shown) : cautionTexts.asSold(shown), '', '')];
  if (holding.length > 0) {
    return {
      holding,
      unknownCodes: [],
      verdict: 'hazards',
      statements: [...withCare(holding.map(statementOf), substance), ...strength],
    };
  }
  return {
    holding,
    unknownCodes: [],
    verdict: isSettled(confidence) ? 'none' : 'unsure',
    statements: [confidence === 'm' ? notKnown() : notClassifiedBy(confidence), ...strength],
  };
}

const notKnown = (): Statement =>
  line('note', cautionTexts.notKnown, cautionTexts.notKnownAdvice, cautionTexts.notKnownPlain);
const notClassifiedBy = (confidence: Confidence): Statement =>
  line(
    'note',
    cautionTexts.notClassifiedUndiluted(confidenceTexts[confidence]),
    cautionTexts.notClassifiedAdvice,
    isSettled(confidence) ? cautionTexts.notClassifiedPlain : cautionTexts.notKnownPlain,
  );

const isSettled = (confidence: Confidence): boolean => confidence === 'h' || confidence === 't';

/** Share of an edge within which the stricter side is shown: house choice. */
const nearEdge = 0.05;
/** Share of an edge from which a least class is mentioned: house choice. */
const nearMinimum = 0.5;

function isWithin(percent: number, { from, to }: HazardLimit): boolean {
  if (from && (from.isOpen ? percent <= from.percent : percent < from.percent)) return false;
  return !(to && (to.isOpen ? percent >= to.percent : percent > to.percent));
}

/**
 * The percent of what a limit counts. Where it counts the form that is weighed and another form was typed, the one that
 * makes the solution look stronger.
 */
function percentCountedFor(
  substance: ListedHazards,
  formula: Formula,
  massPercent: number,
): (limit: HazardLimit) => number {
  const [primary = ''] = substance.spellings;
  const mass = formulaMass(formula);
  const listed =
    waterOf(plainFormula(formula.text)) === waterOf(plainFormula(primary)) ? mass : formulaMass(formulaOf(substance));
  const asWeighed =
    mass === undefined || listed === undefined ? massPercent : (massPercent * Math.max(mass, listed)) / mass;
  return ({ countedGramsPerMole }) => {
    if (countedGramsPerMole === undefined) return asWeighed;
    return mass === undefined ? massPercent : (massPercent * countedGramsPerMole) / mass;
  };
}

function atStrength(substance: ListedHazards, formula: Formula, massPercent: number): Hazards {
  const counted = percentCountedFor(substance, formula, massPercent);
  const known = substance.limits.filter((limit) => !limit.isWithoutLimit);
  const within = known.filter((limit) => isWithin(counted(limit), limit));
  const near = known.filter((limit) => {
    const percent = counted(limit);
    return (
      limit.from !== undefined &&
      !isWithin(percent, limit) &&
      percent < limit.from.percent * (1 + 1e-12) &&
      percent >= limit.from.percent * (1 - nearEdge)
    );
  });
  const holding = tidied([...within, ...near]);
  const shown = new Set(holding.map(({ code }) => code));
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
  const statements: Statement[] = withCare(holding.map(statementOf), substance);
  const goesByPh = substance.limits.some(({ dependsOnPh }) => dependsOnPh);
  const isSureOfAll = unknown.length + minimum.length === 0 && !goesByPh;
  // Nothing is known of a solution that is stronger than the only one that anybody looked at.
  const isBeyond = substance.limits.length === 0 && massPercent > (substance.soldPercent ?? 100);
  if (holding.length === 0) statements.push(noneHolding(substance, { isSureOfAll, isBeyond }));
  if (near.length > 0) statements.push(line('note', cautionTexts.nearEdge, ''));
  if (minimum.length > 0) {
    const { minimumClass, partNotKnownAdvice, minimumClassPlain } = cautionTexts;
    statements.push(line('note', minimumClass(codeList(minimum)), partNotKnownAdvice, minimumClassPlain));
  }
  if (unknown.length > 0) {
    statements.push(line('note', cautionTexts.partNotKnown(codeList(unknown)), cautionTexts.partNotKnownAdvice));
  }
  if (goesByPh) {
    statements.push(line('note', cautionTexts.extremePh, cautionTexts.extremePhAdvice));
  }
  const isNone = isSettled(substance.confidence) && isSureOfAll && !isBeyond;
  return {
    holding,
    unknownCodes: unknown.map(({ code }) => code),
    verdict: holding.length > 0 ? 'hazards' : isNone ? 'none' : 'unsure',
    statements,
  };
}

/** What to say of a strength at which no code is known to hold. */
function noneHolding(
  { confidence, codes }: ListedHazards,
  { isSureOfAll, isBeyond }: { readonly isSureOfAll: boolean; readonly isBeyond: boolean },
): Statement {
  const { strengthNotKnown, notKnownAdvice, notKnownPlain } = cautionTexts;
  if (confidence === 'm') return notKnown();
  if (isBeyond) return line('note', strengthNotKnown, notKnownAdvice, notKnownPlain);
  if (!isSureOfAll) {
    return line('note', cautionTexts.notClassifiedAsFarAsKnown, cautionTexts.notClassifiedAsFarAsKnownAdvice);
  }
  return codes.length === 0 && !isSettled(confidence)
    ? notClassifiedBy(confidence)
    : line('note', cautionTexts.notClassified, cautionTexts.notClassifiedAdvice);
}

/** Grams per mole of the formula as typed, which its strength counts; another hydrate weighs otherwise. */
function formulaMass(formula: Formula): number | undefined {
  const mass = molarMass(formula);
  return mass.ok ? mass.value : undefined;
}

const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
const bareCode = (code: string): string => code.replace('/3', '');
const codeList = (holding: readonly { readonly code: string }[]): string =>
  Array.from(new Set(holding.map(({ code }) => `${bareCode(code)} (${codeTexts()[code]?.means ?? ''})`))).join(', ');

/** One line for each code, without those that a stricter one hides. */
function tidied(all: readonly Holding[]): readonly Holding[] {
  const codes = new Set(all.map(({ code }) => code));
  for (const code of hiddenBy(codes)) codes.delete(code);
  return Array.from(codes).map((code) => ({
    code,
    confidence: all.find((one) => one.code === code)?.confidence ?? 'm',
  }));
}

const signalOf = (codes: readonly string[]): SignalWord => {
  const words = codes.map((code) => codeTexts()[code]?.signal ?? '');
  return words.includes('Danger') ? 'Danger' : words.includes('Warning') ? 'Warning' : '';
};

function statementOf({ code, confidence }: Holding): Statement {
  const text = codeTexts()[code];
  const advice = text?.advice ?? [];
  return {
    about: 'hazard',
    code: bareCode(code),
    text: `${bareCode(code)}: ${text?.means ?? ''} (${confidenceTexts[confidence]})`,
    plain: sentence(text?.means ?? ''),
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
  return care === '' ? [...statements] : [...statements, line('care', '', care)];
}

/** The table of a cell function: signal word, what it can do, what to do about it; the signal word in the first row. */
export const cautionRows = ({ signalWord, statements }: Cautions): readonly (readonly [string, string, string])[] =>
  statements.map((statement, row) => [
    statement.signalWord ?? (row === 0 ? signalWord : ''),
    statement.text,
    statement.advice,
  ]);
