const kinds: Readonly<Record<string, 'mass' | 'volume' | 'amount' | 'concentration' | 'density'>> = {
  g: 'mass',
  mL: 'volume',
  mol: 'amount',
  'mol/L': 'concentration',
  'g/mL': 'density',
};

/** The kind of quantity that a reading in a unit is. Throws for a unit that no row may ask a reading in. */
export function unitKind(unit: string) {
  const kind = kinds[unit];
  if (kind === undefined) throw new Error(`No reading is asked for in “${unit}”.`);
  return kind;
}
