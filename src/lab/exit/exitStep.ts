import type { Activity, CalculatedStep, Given, Shown } from '../lesson/activity.ts';
import { exitTexts } from '../texts/exit.ts';

/** Students that one team can have an exit question for. */
export const mostSeats = 4;

const exitId = /^exit ([1-4])$/;
export const exitStepId = (seat: number): string => `exit ${seat}`;
export const isExitStep = (id: string): boolean => exitId.test(id);

/** The two numbers of a seat, as columns of the Plan. */
export const exitMolarity = (seat: number): string => `exit ${seat} molarity`;
export const exitVolume = (seat: number): string => `exit ${seat} volume`;

type Takes = CalculatedStep['takes'];

/**
 * A question for one student at the end of the lesson: a quantity that the lesson has practised, with numbers of the
 * seat's own and no other row to build on. A dilution asks for the volume of stock, or what comes of one; anything else
 * for the mass in another flask.
 *
 * @returns Undefined where the id names no seat.
 */
export function exitStep({ steps, numbers }: Activity, id: string): CalculatedStep | undefined {
  const seat = Number(exitId.exec(id)?.[1]);
  if (!seat) return undefined;
  const molarity = { given: exitMolarity(seat) };
  const volume = { given: exitVolume(seat) };
  const takesOf = (quantity: CalculatedStep['quantity']): Takes | undefined => {
    const found = steps.find((step) => step.kind === 'calculated' && step.quantity === quantity);
    return found?.kind === 'calculated' ? found.takes : undefined;
  };
  const asked = (quantity: CalculatedStep['quantity'], unit: string, takes: Takes, shown: readonly Shown[]) =>
    ({
      kind: 'calculated',
      id,
      title: exitTexts.title(seat),
      unit,
      shown,
      period: 1,
      bench: false,
      quantity,
      takes,
      buildsOn: {},
    }) as const;

  const dilution = takesOf('stock volume');
  const target = dilution?.['target molarity'];
  if (dilution && target && 'given' in target) {
    // Where the stock is the team's own, what came of it is diluted further: a number that all of the team were given.
    const own = dilution['stock molarity'];
    const stock = own && 'given' in own ? own : target;
    const takes = { 'stock molarity': stock, 'target molarity': molarity, 'target volume': volume };
    return asked('stock volume', 'mL', takes, exitTexts.stockVolume({ stock, molarity, volume }));
  }
  const diluted = takesOf('diluted molarity')?.['final volume'];
  if (diluted && 'given' in diluted) {
    const takes = { 'stock molarity': molarity, 'stock volume': volume, 'final volume': diluted };
    return asked('diluted molarity', 'mol/L', takes, exitTexts.dilutedMolarity({ molarity, volume, flask: diluted }));
  }
  const formula = { given: numbers.formula };
  const purity = takesOf('mass of solute')?.purity;
  const takes = { formula, molarity, volume, ...(purity ? { purity } : {}) };
  const asks = { 'ratio-inverted': exitTexts.massQuestion };
  return { ...asked('mass of solute', 'g', takes, exitTexts.mass({ formula, molarity, volume, purity })), asks };
}

/** The columns of the Plan that hold a question's numbers. */
export const exitGivens = (id: string): readonly Given[] => {
  const seat = Number(exitId.exec(id)?.[1]);
  if (!seat) return [];
  return [
    { name: exitMolarity(seat), unit: 'mol/L', about: '' },
    { name: exitVolume(seat), unit: 'mL', about: '' },
  ];
};

/** The activity as a question sees it: its own numbers beside those of the team, which may be taken for them. */
export const withExitGivens = (activity: Activity, id: string): Activity => ({
  ...activity,
  givens: [...activity.givens, ...exitGivens(id)],
});

/** The questions of an activity for so many seats. */
export const exitSteps = (activity: Activity, seats: number): readonly CalculatedStep[] =>
  Array.from({ length: seats }, (_, place) => exitStep(activity, exitStepId(place + 1))).filter(
    (step): step is CalculatedStep => step !== undefined,
  );
