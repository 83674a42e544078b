import type { Activity } from '../activity.ts';
import type { Bench } from './demands.ts';
import { isSame, type LessonNumbers } from './lessonNumbers.ts';
import { nearbyNumbers, plainText } from './nearbyNumbers.ts';
import { lessonNumbers, type StartNumbers } from './startNumbers.ts';

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

export const isWholeFactor = ({ stock, target }: { readonly stock: number; readonly target: number }): boolean =>
  isSame(stock / target, Math.round(stock / target));

/** How far from the start the dilution factor goes, as a share of it. */
const factorRange = 2.5;

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

/** Every set of numbers near the start that the shelf's sizes give, in a fixed order; demands are not looked at yet. */
export function candidatesNear(activity: Activity, start: StartNumbers, bench: Bench): CandidateList {
  const { solid, dilution } = activity.numbers;
  const none = (lacks: CandidateList['lacks']): CandidateList => ({ candidates: [], otherDigits: false, lacks });
  const molarityName = solid?.molarity ?? dilution?.stock;
  const molarityTyped = molarityName === undefined ? undefined : start.typed[molarityName];
  if (molarityName === undefined || molarityTyped === undefined) return none(undefined);
  const stocks = nearbyNumbers(molarityTyped);
  const flasks = start.lesson.solid && flasksNear(start.lesson.solid.flask, bench.shelf.flasksMl);
  const volumes = start.lesson.dilution && flasksNear(start.lesson.dilution.volume, bench.shelf.flasksMl);
  if (flasks?.sizes.length === 0) return none('flask');
  if (volumes?.sizes.length === 0) return none('final flask');
  const stockText = (value: number): string => plainText(value, molarityTyped.figures) ?? String(value);

  const parts: {
    readonly values: Record<string, number>;
    readonly texts: Record<string, string>;
    readonly fillings: 0 | 1 | 2;
  }[] =
    dilution && volumes
      ? dilutionsNear(start, { dilution }, { stocks, volumes: volumes.sizes, deliverable: bench.deliverable }).map(
          (made) => ({
            values: { [dilution.stock]: made.stock, [dilution.target]: made.target, [dilution.volume]: made.volume },
            texts: {
              [dilution.stock]: stockText(made.stock),
              [dilution.target]: made.targetText,
              [dilution.volume]: String(made.volume),
            },
            fillings: made.fillings,
          }),
        )
      : stocks.map((stock) => ({
          values: { [molarityName]: stock },
          texts: { [molarityName]: stockText(stock) },
          fillings: 0 as const,
        }));
  if (parts.length === 0) return none('portion');
  const withFlasks =
    solid && flasks
      ? parts.flatMap((part) =>
          flasks.sizes.map((flask) => ({
            ...part,
            values: { ...part.values, [solid.flask]: flask },
            texts: { ...part.texts, [solid.flask]: String(flask) },
          })),
        )
      : parts;
  return {
    candidates: withFlasks.map(({ values, texts, fillings }): Candidate => {
      const lesson = lessonNumbers(activity, values);
      return {
        lesson,
        values,
        texts,
        fillings,
        wholeFactor: lesson.dilution !== undefined && isWholeFactor(lesson.dilution),
      };
    }),
    otherDigits: (flasks?.otherDigits ?? false) || (volumes?.otherDigits ?? false),
    lacks: undefined,
  };
}
