import { decimalText } from '../../lab/judging/decimalText.ts';
import type { MaterialBalance } from '../../lab/preparation/materialBalance.ts';
import { texts } from '../texts.ts';

/** A material balance in words: lines of what and how much, then remarks. */
export interface MaterialWords {
  readonly lines: readonly { readonly what: string; readonly amount: string }[];
  readonly remarks: readonly string[];
}

/** What a plan takes, makes and throws away, for the preview of its numbers. */
export function materialWords(
  { consumed, madeMl, usedMl, wasteMl, isMostlyWaste, saving }: MaterialBalance,
  mark: 'point' | 'comma',
): MaterialWords {
  const { materials: words } = texts.plan;
  const number = (value: number) => decimalText(value, mark);
  const inLitres = (millilitres: number) => number(Number((millilitres / 1000).toFixed(2)));
  const litres = (millilitres: number) => words.litres(inLitres(millilitres));
  return {
    lines: [
      ...consumed.map((one) =>
        one.unit === 'g'
          ? {
              what: words.solid(one.formula, one.purityPercent === undefined ? '' : number(one.purityPercent)),
              amount: words.grams(number(one.amount)),
            }
          : {
              what: words.bottle(one.formula, number(one.massPercent)),
              amount: words.millilitres(number(one.amount)),
            },
      ),
      ...(madeMl === 0 ? [] : [{ what: words.made, amount: litres(madeMl) }]),
      ...(usedMl === undefined || madeMl === 0 ? [] : [{ what: words.used, amount: litres(usedMl) }]),
      ...(wasteMl === 0 ? [] : [{ what: words.waste, amount: litres(wasteMl) }]),
    ],
    remarks: [
      ...(isMostlyWaste && usedMl !== undefined
        ? [words.mostly({ used: inLitres(usedMl), made: inLitres(madeMl) })]
        : []),
      ...(saving?.by === 'smaller flasks'
        ? [
            words.smallerFlasks({
              flask: number(saving.flaskMl),
              made: inLitres(saving.madeMl),
              waste: inLitres(saving.wasteMl),
            }),
          ]
        : []),
      ...(saving?.by === 'ready stock' ? [words.readyStock] : []),
      ...(saving?.by === 'same numbers'
        ? [words.sameNumbers({ solutions: saving.solutions, waste: inLitres(saving.wasteMl) })]
        : []),
    ],
  };
}
