import type { ReadingUnit } from '../lesson/activity.ts';

type Kind = 'mass' | 'volume' | 'amount' | 'concentration' | 'density';

const kinds: Readonly<Record<ReadingUnit, Kind>> = {
  g: 'mass',
  mL: 'volume',
  mol: 'amount',
  'mol/L': 'concentration',
  'g/mL': 'density',
};

/** The kind of quantity that a reading in a unit is. */
export const unitKind = (unit: ReadingUnit): Kind => kinds[unit];

const isReadingUnit = (unit: string): unit is ReadingUnit => Object.keys(kinds).includes(unit);

/** The kind of quantity in a column of the Plan; undefined for a unit that no quantity is worked in. */
export function givenKind(unit: string): Kind | 'percent' | undefined {
  if (unit === '%') return 'percent';
  return isReadingUnit(unit) ? unitKind(unit) : undefined;
}
