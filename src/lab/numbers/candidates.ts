import type { Activity } from '../activity.ts';
import type { Bench } from './demands.ts';
import { isSame, type LessonNumbers } from './lessonNumbers.ts';
import { lineTexts } from './lineTexts.ts';
import { nearbyNumbers, plainText } from './nearbyNumbers.ts';
import { lessonNumbers, type StartNumbers } from './startNumbers.ts';
import { tableLines } from './tableLines.ts';

/** One set of numbers that a team could get. */
export interface Candidate {
  readonly lesson: LessonNumbers;
  /** By name of the given. */
  readonly values: Readonly<Record<string, number>>;
  readonly texts: Readonly<Record<string, string>>;
  /** Fillings of a pipette that the portion takes; 0 where none is taken. */
  readonly fillings: 0 | 1 | 2;
  /** A whole dilution factor is easier to see through than another. */
  readonly wholeFactor: boolean;
  /** Flask over portion near the start's; true where nothing is diluted in a row. */
  readonly nearRatio: boolean;
}

export interface CandidateList {
  readonly candidates: readonly Candidate[];
  /** Whether flask sizes with other numbers of digits had to be let in. */
  readonly otherDigits: boolean;
  /** What there is none of, where that leaves nothing. */
  readonly lacks: 'flask' | 'final flask' | 'portion' | undefined;
}

const digitsOf = (volume: number): number => String(Math.trunc(volume)).length;

/** Flasks from a quarter to four times a size; those with as many digits where there are some. */
function flasksNear(
  size: number,
  flasksMl: readonly number[],
): { readonly sizes: readonly number[]; readonly otherDigits: boolean } {
  const near = flasksMl.filter((flask) => flask >= size / 4 && flask <= size * 4);
  const alike = near.filter((flask) => digitsOf(flask) === digitsOf(size));
  return alike.length > 0 ? { sizes: alike, otherDigits: false } : { sizes: near, otherDigits: near.length > 0 };
}

const isWholeFactor = ({ stock, target }: { readonly stock: number; readonly target: number }): boolean =>
  isSame(stock / target, Math.round(stock / target));

/** Whether the lesson dilutes by a whole number. */
export const hasWholeFactor = ({ dilution, serial }: LessonNumbers): boolean =>
  dilution !== undefined
    ? isWholeFactor(dilution)
    : serial !== undefined && isWholeFactor({ stock: serial.flask, target: serial.portion });

/** How far from the start the dilution factor goes, as a share of it. */
const factorRange = 2.5;

/** The same where a dilution is done again and again: three in a row make it four times as far at the most. */
const ratioRange = 1.6;

function isNearRatio(serial: LessonNumbers['serial'], start: LessonNumbers['serial']): boolean {
  if (serial === undefined || start === undefined) return true;
  const away = serial.flask / serial.portion / (start.flask / start.portion);
  return away <= ratioRange * (1 + 1e-9) && away >= 1 / ratioRange / (1 + 1e-9);
}

/** How far from the start a portion that is weighed may lie, as a share of it. */
const portionRoom = 0.25;

/**
 * The portion of the start where one filling of a pipette gives it, else what comes nearest to it: portions of one size
 * are weighed equally well, so that the results of teams can be compared.
 */
function portionLike(from: number, deliverable: Bench['deliverable']): Bench['deliverable'] {
  const away = ({ volume }: Bench['deliverable'][number]): number => Math.abs(volume - from);
  const near = deliverable
    .filter((portion) => away(portion) <= portionRoom * from * (1 + 1e-9))
    .sort((one, other) => away(one) - away(other) || one.fillings - other.fillings);
  return near.slice(0, 1);
}

interface Diluted {
  readonly stock: number;
  readonly target: number;
  readonly volume: number;
  readonly targetText: string;
  readonly fillings: 1 | 2;
}

/** Dilutions near the start whose target comes out in the figures of the start's target. */
function dilutionsNear(
  start: StartNumbers,
  { dilution }: { readonly dilution: NonNullable<Activity['numbers']['dilution']> },
  {
    stocks,
    volumes,
    deliverable,
  }: { stocks: readonly number[]; volumes: readonly number[]; deliverable: Bench['deliverable'] },
): readonly Diluted[] {
  const from = start.lesson.dilution;
  const figures = start.typed[dilution.target]?.figures;
  if (from === undefined || figures === undefined) return [];
  const factor = from.stock / from.target;
  const found: Diluted[] = [];
  for (const volume of volumes) {
    for (const { volume: portion, fillings } of deliverable) {
      const here = volume / portion;
      // A factor near 1 is hardly a dilution, and at 2 water and stock are the same.
      if (here < factor / factorRange || here > factor * factorRange || here < 1.2) continue;
      for (const stock of stocks) {
        const target = Number(((stock * portion) / volume).toPrecision(15));
        const targetText = plainText(target, figures);
        if (targetText !== undefined) found.push({ stock, target: Number(targetText), volume, targetText, fillings });
      }
    }
  }
  return found;
}

/** Values of some givens, not yet joined to those of others. */
interface Part {
  readonly values: Readonly<Record<string, number>>;
  readonly texts: Readonly<Record<string, string>>;
  readonly fillings: 0 | 1 | 2;
}

const joined = (one: readonly Part[], other: readonly Part[]): readonly Part[] =>
  one.flatMap((first) =>
    other.map(
      (second): Part => ({
        values: { ...first.values, ...second.values },
        texts: { ...first.texts, ...second.texts },
        fillings: second.fillings === 0 ? first.fillings : second.fillings,
      }),
    ),
  );

const valuesOf = (name: string, list: readonly { readonly value: number; readonly text: string }[]): readonly Part[] =>
  list.map(({ value, text }): Part => ({ values: { [name]: value }, texts: { [name]: text }, fillings: 0 }));

/** Every set of numbers near the start that the shelf's sizes give, in a fixed order; demands are not looked at yet. */
export function candidatesNear(activity: Activity, start: StartNumbers, bench: Bench): CandidateList {
  const { solid, dilution, reagent, serial, residue, density } = activity.numbers;
  let lacks: CandidateList['lacks'];
  let otherDigits = false;
  const lacking = (what: CandidateList['lacks'], parts: readonly Part[]): readonly Part[] => {
    if (parts.length === 0) lacks ??= what;
    return parts;
  };
  const nearby = (name: string): readonly Part[] => {
    const typed = start.typed[name];
    if (typed === undefined) return [];
    const shown = (value: number) => plainText(value, typed.figures) ?? String(value);
    return valuesOf(
      name,
      nearbyNumbers(typed).map((value) => ({ value, text: shown(value) })),
    );
  };
  const flasks = (name: string, what: 'flask' | 'final flask'): readonly Part[] => {
    const near = flasksNear(start.typed[name]?.value ?? Number.NaN, bench.shelf.flasksMl);
    otherDigits = otherDigits || near.otherDigits;
    return lacking(
      what,
      valuesOf(
        name,
        near.sizes.map((value) => ({ value, text: String(value) })),
      ),
    );
  };
  const portionParts = (name: string, near: Bench['deliverable']): readonly Part[] =>
    lacking(
      'portion',
      near.map(
        ({ volume, fillings }): Part => ({ values: { [name]: volume }, texts: { [name]: String(volume) }, fillings }),
      ),
    );
  const portionsNear = (name: string): readonly Part[] => {
    const from = start.typed[name]?.value ?? Number.NaN;
    return portionParts(
      name,
      bench.deliverable.filter(({ volume }) => volume >= from / factorRange && volume <= from * factorRange),
    );
  };
  const weighedPortion = (name: string): readonly Part[] =>
    portionParts(name, portionLike(start.typed[name]?.value ?? Number.NaN, bench.deliverable));
  const diluted = (names: NonNullable<typeof dilution>): readonly Part[] => {
    const stocks = nearby(names.stock);
    const volumes = flasks(names.volume, 'final flask');
    const stockText = (value: number) =>
      stocks.find(({ values }) => values[names.stock] === value)?.texts[names.stock] ?? '';
    const made = dilutionsNear(
      start,
      { dilution: names },
      {
        stocks: stocks.map(({ values }) => values[names.stock] ?? Number.NaN),
        volumes: volumes.map(({ values }) => values[names.volume] ?? Number.NaN),
        deliverable: bench.deliverable,
      },
    );
    return lacking(
      'portion',
      made.map(
        ({ stock, target, volume, targetText, fillings }): Part => ({
          values: { [names.stock]: stock, [names.target]: target, [names.volume]: volume },
          texts: { [names.stock]: stockText(stock), [names.target]: targetText, [names.volume]: String(volume) },
          fillings,
        }),
      ),
    );
  };
  /** Each molarity with the lines of the table that enclose it, where the plan leaves them to us. */
  const withLines = (names: NonNullable<typeof density>, molarities: readonly Part[]): readonly Part[] => {
    const { table, substance } = start;
    if (table === undefined) return molarities;
    return molarities.flatMap((part) => {
      const molarity = part.values[names.molarity] ?? Number.NaN;
      const pair = tableLines(table, { molarMass: substance.molarMass, molarity });
      if (pair === undefined) return [];
      const texts = lineTexts(names, pair);
      const values = Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, Number(text)]));
      return [{ ...part, values: { ...part.values, ...values }, texts: { ...part.texts, ...texts } }];
    });
  };
  const parts = [
    ...(solid ? [flasks(solid.flask, 'flask')] : []),
    ...(solid && !dilution ? [nearby(solid.molarity)] : []),
    ...(dilution ? [diluted(dilution)] : []),
    ...(reagent ? [nearby(reagent.target), flasks(reagent.volume, 'final flask')] : []),
    ...(serial ? [nearby(serial.stock), flasks(serial.flask, 'flask'), portionsNear(serial.portion)] : []),
    ...(residue ? [nearby(residue.molarity), weighedPortion(residue.portion)] : []),
    ...(density ? [withLines(density, nearby(density.molarity)), weighedPortion(density.portion)] : []),
  ];
  const fixed = Object.fromEntries(Object.entries(start.typed).map(([name, { value }]) => [name, value]));
  const candidates = parts
    .reduce<readonly Part[]>(joined, [{ values: {}, texts: {}, fillings: 0 }])
    .map(({ values, texts, fillings }): Candidate => {
      const lesson = lessonNumbers(activity, {
        values: { ...fixed, ...values },
        molarMass: start.substance.molarMass,
      });
      const nearRatio = isNearRatio(lesson.serial, start.lesson.serial);
      return { lesson, values, texts, fillings, wholeFactor: hasWholeFactor(lesson), nearRatio };
    });
  return { candidates, otherDigits, lacks };
}
