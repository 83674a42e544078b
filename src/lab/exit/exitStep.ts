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
    steps.find((step): step is CalculatedStep => step.kind === 'calculated' && step.quantity === quantity)?.takes ?? {};
  const { 'stock molarity': stock, 'target molarity': target } = takesOf('stock volume');
  const { 'final volume': flask } = takesOf('diluted molarity');
  const { purity } = takesOf('mass of solute');
  // Where the stock is the team's own, what came of it is diluted further: a number that all of the team were given.
  const diluted = stock && 'given' in stock ? stock : target;
  const asked: Pick<CalculatedStep, 'quantity' | 'unit' | 'takes'> = diluted
    ? {
        quantity: 'stock volume',
        unit: 'mL',
        takes: { 'stock molarity': diluted, 'target molarity': molarity, 'target volume': volume },
      }
    : flask
      ? {
          quantity: 'diluted molarity',
          unit: 'mol/L',
          takes: { 'stock molarity': molarity, 'stock volume': volume, 'final volume': flask },
        }
      : {
          quantity: 'mass of solute',
          unit: 'g',
          takes: { formula: { given: numbers.formula }, molarity, volume, ...(purity ? { purity } : {}) },
        };
  const title = exitTexts.title(seat);
  return { kind: 'calculated', id, title, shown: [], period: 1, bench: false, buildsOn: {}, ...asked };
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
