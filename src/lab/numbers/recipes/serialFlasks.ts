import { success } from '../../../errors/result.ts';
import { millilitres, molesPerLitre } from '../../../measurement/quantity.ts';
import { demandTexts } from '../../texts/numbers.ts';
import { dilutionPicture } from '../dilutionPicture.ts';
import { flasksNear } from '../flasksNear.ts';
import { isWholeFactor } from '../isWholeFactor.ts';
import { nearTexts } from '../nearTexts.ts';
import type { NearSet, RecipeEntry } from '../recipe.ts';
import { flaskDemands, portionDemands } from '../shelfDemands.ts';

type Name = 'stock' | 'portion' | 'flask';

/**
 * How far from the start flask over portion goes, as a share of it: near, further, and at the most. Three dilutions in a
 * row make each of these count three times.
 */
const ratioRange = { near: 1.6, further: 2.5, most: 4 } as const;
const slack = 1 + 1e-9;

/** The same portion by pipette, made up to the same mark, time after time, from a stock that stands ready. */
export const serialFlasks: RecipeEntry<Name> = {
  takes: {
    stock: { kind: 'concentration', atMostTyped: true },
    portion: { kind: 'volume' },
    flask: { kind: 'volume', isFlask: true, atMostTyped: true },
  },
  tasks: [['stock', 'portion', 'flask']],
  startsFrom: 'stock',
  bottle: 'stock',
  isRow: true,
  dissolves: false,
  odd: { stock: 0.3173, flask: 237.1, portion: 13.7 },
  near: ({ numbers: from, typed }, { shelf, deliverable }, reach) => {
    const stocks = nearTexts(typed.stock, reach);
    const { sizes, otherDigits } = flasksNear(from.flask, shelf, reach);
    const ratio = from.flask / from.portion;
    const sets = stocks.flatMap(({ value: stock, text }) =>
      sizes.flatMap((flask) =>
        deliverable.flatMap(({ volume: portion, fillings }): readonly NearSet<Name>[] => {
          const here = flask / portion;
          const away = Math.max(here / ratio, ratio / here);
          if (away > ratioRange.most * slack) return [];
          return [
            {
              numbers: { stock, portion, flask },
              texts: { stock: text, portion: String(portion), flask: String(flask) },
              fillings,
              away: away <= ratioRange.near * slack ? 0 : away <= ratioRange.further * slack ? 1 : 2,
              withinTarget: here * slack >= ratio,
            },
          ];
        }),
      ),
    );
    return {
      sets,
      otherDigits,
      lacks:
        sizes.length === 0
          ? { what: 'flask', about: 'flask' }
          : sets.length === 0
            ? { what: 'pipette', about: 'portion' }
            : undefined,
    };
  },
  isWhole: ({ portion, flask }) => isWholeFactor(flask, portion),
  demands: ({ portion, flask }, bench) => [
    ...flaskDemands('flask', flask, bench),
    ...portionDemands('portion', portion, bench),
    ...(portion <= flask / 2
      ? []
      : [
          {
            demand: 'portion within flask',
            about: 'portion' as const,
            ...demandTexts.portionWithinFlask({ flask, portion }),
          },
        ]),
  ],
  use: (numbers, { portion, dilutions }) => {
    const taken = millilitres(numbers.portion);
    const flask = millilitres(numbers.flask);
    const flasks = Array.from({ length: dilutions }, (_, index) => index + 1);
    return success({
      taken: portion(molesPerLitre(numbers.stock), taken, 'stock'),
      diluted: flasks.map((times) => portion(molesPerLitre(numbers.stock * (taken / flask) ** times), flask)),
      flasksMl: flasks.map(() => flask),
      deliveredMl: [taken],
    });
  },
  picture: (numbers, { step }) => {
    const share = numbers.portion / numbers.flask;
    const before = numbers.stock * share ** (step - 1);
    const checked = dilutionPicture({ stock: before, target: before * share, volume: numbers.flask });
    if (!checked.ok) return checked;
    const { diluted } = checked.value;
    return success({ first: { molarity: molesPerLitre(before), volume: millilitres(numbers.portion) }, diluted, step });
  },
};
