import { success } from '../../../errors/result.ts';
import { millilitres } from '../../../measurement/quantity.ts';
import { demandTexts } from '../../texts/numbers.ts';
import { dilutionPicture } from '../dilutionPicture.ts';
import { dilutionsNear } from '../dilutionsNear.ts';
import { dissolvingDemands } from '../dissolvingDemands.ts';
import { flasksNear } from '../flasksNear.ts';
import { isWholeFactor } from '../isWholeFactor.ts';
import { massDemands } from '../massDemands.ts';
import { nearTexts } from '../nearTexts.ts';
import { portionOf } from '../portionOf.ts';
import type { NearSet, RecipeEntry, Unmet } from '../recipe.ts';
import { flaskDemands, portionDemands, weakerDemands } from '../shelfDemands.ts';
import { readyStockDiluted } from './readyStockDiluted.ts';
import { solidInFlask } from './solidInFlask.ts';

type Name = 'stock' | 'flask' | 'purity' | 'target' | 'volume';

const ofStock = ({ about, ...unmet }: Unmet<'molarity'>): Unmet<'stock'> => ({ ...unmet, about: 'stock' });

/** A stock that the team makes from a solid, and a portion of it, by pipette, made up in another flask. */
export const solidThenDilution: RecipeEntry<Name, 'purity'> = {
  takes: {
    stock: { kind: 'concentration', atMostTyped: true },
    flask: { kind: 'volume', isFlask: true, atMostTyped: true },
    purity: { kind: 'percent', optional: true, isPictured: false },
    target: { kind: 'concentration' },
    volume: { kind: 'volume', isFlask: true, atMostTyped: true },
  },
  tasks: [
    ['stock', 'flask'],
    ['stock', 'target', 'volume'],
  ],
  startsFrom: 'stock',
  madeIn: 'flask',
  dilutes: { target: 'target', flask: 'volume' },
  dissolves: true,
  odd: { stock: 0.3173, flask: 237.1, target: 0.04519, volume: 173.3 },
  near: (start, { shelf, deliverable }, reach) => {
    const flasks = flasksNear(start.numbers.flask, shelf, reach);
    const volumes = flasksNear(start.numbers.volume, shelf, reach);
    const stocks = nearTexts(start.typed.stock, reach);
    const dilutions = dilutionsNear(start, { stocks, volumes: volumes.sizes, deliverable });
    return {
      sets: flasks.sizes.flatMap((flask) =>
        dilutions.map(
          (dilution): NearSet<Name> => ({
            ...dilution,
            numbers: { ...dilution.numbers, flask },
            texts: { ...dilution.texts, flask: String(flask) },
          }),
        ),
      ),
      otherDigits: flasks.otherDigits || volumes.otherDigits,
      lacks:
        flasks.sizes.length === 0
          ? { what: 'flask', about: 'flask' }
          : volumes.sizes.length === 0
            ? { what: 'flask', about: 'volume' }
            : dilutions.length === 0
              ? { what: 'pipette', about: 'target' }
              : undefined,
    };
  },
  isWhole: ({ stock, target }) => isWholeFactor(stock, target),
  demands: (numbers, bench) => {
    const { stock, flask, volume } = numbers;
    const basic = [
      ...weakerDemands(numbers),
      ...flaskDemands('flask', flask, bench),
      ...flaskDemands('volume', volume, bench),
    ];
    const portion = portionOf(numbers);
    const ofPortion: readonly Unmet<Name>[] =
      basic.length > 0
        ? []
        : [
            ...portionDemands('target', portion, bench),
            ...(portion > (flask / 2) * (1 + 1e-9)
              ? [
                  {
                    demand: 'portion within stock',
                    about: 'flask' as const,
                    ...demandTexts.portionWithinStock({ flask }),
                  },
                ]
              : []),
          ];
    return [
      ...basic,
      ...ofPortion,
      ...massDemands({ molarity: stock, volume: flask }, bench).map(ofStock),
      ...dissolvingDemands(stock, bench.substance).map(ofStock),
    ];
  },
  use: (numbers, context) => {
    const { portion } = context;
    const named = (name: string | undefined) => (name === 'molarity' ? 'stock' : name);
    const made = solidInFlask.use(
      { molarity: numbers.stock, flask: numbers.flask, purity: numbers.purity },
      { ...context, portion: (molarity, volume, name) => portion(molarity, volume, named(name)) },
    );
    if (!made.ok) return made;
    const dilution = readyStockDiluted.use(numbers, context);
    if (!dilution.ok) return dilution;
    const { taken, flasksMl = [], ...diluted } = dilution.value;
    return success({
      ...made.value,
      ...diluted,
      ...(taken ? { takenFromOwn: taken } : {}),
      flasksMl: [millilitres(numbers.flask), ...flasksMl],
    });
  },
  picture: dilutionPicture,
};
