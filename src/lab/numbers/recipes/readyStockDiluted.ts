import { stockVolume } from '../../../chemistry/stockVolume.ts';
import { success } from '../../../errors/result.ts';
import { millilitres, molesPerLitre } from '../../../measurement/quantity.ts';
import { dilutionPicture } from '../dilutionPicture.ts';
import { dilutionsNear } from '../dilutionsNear.ts';
import { flasksNear } from '../flasksNear.ts';
import { isWholeFactor } from '../isWholeFactor.ts';
import { nearTexts } from '../nearTexts.ts';
import { portionOf } from '../portionOf.ts';
import type { RecipeEntry } from '../recipe.ts';
import { flaskDemands, portionDemands, weakerDemands } from '../shelfDemands.ts';

/** A portion by pipette of a stock that stands ready, made up in a flask. */
export const readyStockDiluted: RecipeEntry<'stock' | 'target' | 'volume'> = {
  takes: {
    stock: { kind: 'concentration', atMostTyped: true },
    target: { kind: 'concentration' },
    volume: { kind: 'volume', isFlask: true, atMostTyped: true },
  },
  tasks: [['stock', 'target', 'volume']],
  startsFrom: 'stock',
  bottle: 'stock',
  dilutes: { target: 'target', flask: 'volume' },
  dissolves: false,
  odd: { stock: 0.3173, target: 0.04519, volume: 173.3 },
  near: (start, { shelf, deliverable }, reach) => {
    const { sizes, otherDigits } = flasksNear(start.numbers.volume, shelf, reach);
    const stocks = nearTexts(start.typed.stock, reach);
    const sets = dilutionsNear(start, { stocks, volumes: sizes, deliverable });
    return {
      sets,
      otherDigits,
      lacks:
        sizes.length === 0
          ? { what: 'flask', about: 'volume' }
          : sets.length === 0
            ? { what: 'pipette', about: 'target' }
            : undefined,
    };
  },
  isWhole: ({ stock, target }) => isWholeFactor(stock, target),
  demands: (numbers, bench) => {
    const basic = [...weakerDemands(numbers), ...flaskDemands('volume', numbers.volume, bench)];
    return basic.length > 0 ? basic : portionDemands('target', portionOf(numbers), bench);
  },
  use: (numbers, { portion }) => {
    const stock = molesPerLitre(numbers.stock);
    const target = molesPerLitre(numbers.target);
    const finalVolume = millilitres(numbers.volume);
    const taken = stockVolume({ stock, target, finalVolume });
    if (!taken.ok) return taken;
    return success({
      taken: portion(stock, taken.value, 'stock'),
      diluted: [portion(target, finalVolume, 'target')],
      flasksMl: [finalVolume],
      deliveredMl: [taken.value],
    });
  },
  picture: dilutionPicture,
};
