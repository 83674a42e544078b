import type { Activity, CalculatedStep, Given } from '../lesson/activity.ts';
import { exitTexts } from '../texts/exit.ts';

/** Students that one team can have an exit question for. */
export const mostSeats = 4;

const exitId = /^exit ([1-4])$/;
export const exitStepId = (seat: number): string => `exit ${seat}`;
export const isExitStep = (id: string): boolean => exitId.test(id);

/** The two numbers of a seat, as columns of the Plan. */
export const exitMolarity = (seat: number | string): string => `exit ${seat} molarity`;
export const exitVolume = (seat: number | string): string => `exit ${seat} volume`;

/**
 * A question for one student at the end of the lesson: a quantity that the lesson has practised, with numbers of the
 * seat's own and no other row to build on. A dilution asks for the volume of stock, or what comes of one; anything else
 * for the mass in another flask. The words around its numbers are added where rows are planned.
 *
 * @returns Undefined where the id names no seat.
 */
export function exitStep({ steps, numbers }: Activity, id: string): CalculatedStep | undefined {
  const seat = exitId.exec(id)?.[1];
  if (!seat) return undefined;
  const molarity = { given: exitMolarity(seat) };
  const volume = { given: exitVolume(seat) };
  const takesOf = (quantity: string) =>
    steps.find((step): step is CalculatedStep => step.kind === 'calculated' && step.quantity === quantity)?.takes;
  const asked = (
    quantity: CalculatedStep['quantity'],
    unit: string,
    takes: CalculatedStep['takes'],
  ): CalculatedStep => ({
    kind: 'calculated',
    id,
    title: exitTexts.title(seat),
    unit,
    shown: [],
    period: 1,
    bench: false,
    quantity,
    takes,
    buildsOn: {},
  });
  const dilution = takesOf('stock volume');
  const target = dilution?.['target molarity'];
  if (dilution && target) {
    // Where the stock is the team's own, what came of it is diluted further: a number that all of the team were given.
    const own = dilution['stock molarity'];
    const stock = own && 'given' in own ? own : target;
    return asked('stock volume', 'mL', {
      'stock molarity': stock,
      'target molarity': molarity,
      'target volume': volume,
    });
  }
  const flask = takesOf('diluted molarity')?.['final volume'];
  if (flask) {
    return asked('diluted molarity', 'mol/L', {
      'stock molarity': molarity,
      'stock volume': volume,
      'final volume': flask,
    });
  }
  const purity = takesOf('mass of solute')?.purity;
  const formula = { given: numbers.formula };
  return {
    ...asked('mass of solute', 'g', { formula, molarity, volume, ...(purity ? { purity } : {}) }),
    asks: { 'ratio-inverted': exitTexts.massQuestion },
  };
}

/** The columns of the Plan that hold a question's numbers. */
export function exitGivens(id: string): readonly Given[] {
  const seat = exitId.exec(id)?.[1];
  if (!seat) return [];
  return [
    { name: exitMolarity(seat), unit: 'mol/L', about: '' },
    { name: exitVolume(seat), unit: 'mL', about: '' },
  ];
}

/** The activity as a question sees it: its own numbers beside those of the team, which may be taken for them. */
export const withExitGivens = (activity: Activity, id: string): Activity => ({
  ...activity,
  givens: [...activity.givens, ...exitGivens(id)],
});
