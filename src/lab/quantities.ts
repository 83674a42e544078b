import { densityQuantity } from './quantities/densityQuantity.ts';
import { dilutedMolarityQuantity } from './quantities/dilutedMolarityQuantity.ts';
import { dilutionFactor } from './quantities/dilutionFactor.ts';
import { ionMolarityQuantity } from './quantities/ionMolarityQuantity.ts';
import { massOfSolute } from './quantities/massOfSolute.ts';
import { massPercentQuantity } from './quantities/massPercentQuantity.ts';
import { molarity } from './quantities/molarity.ts';
import { molarMassQuantity } from './quantities/molarMassQuantity.ts';
import { molesOfSolute } from './quantities/molesOfSolute.ts';
import { percentErrorQuantity } from './quantities/percentErrorQuantity.ts';
import type { QuantityEntry } from './quantities/quantityEntry.ts';
import { reagentMolarityQuantity } from './quantities/reagentMolarityQuantity.ts';
import { stockVolumeQuantity } from './quantities/stockVolumeQuantity.ts';
import { waterVolume } from './quantities/waterVolume.ts';

/** Every quantity that can be checked. The one list: checks, tests and the simulation all run over it. */
export const quantities = {
  'molar mass': molarMassQuantity,
  'moles of solute': molesOfSolute,
  'mass of solute': massOfSolute,
  molarity,
  'stock volume': stockVolumeQuantity,
  'water volume': waterVolume,
  'dilution factor': dilutionFactor,
  'diluted molarity': dilutedMolarityQuantity,
  'ion molarity': ionMolarityQuantity,
  'percent error': percentErrorQuantity,
  'reagent molarity': reagentMolarityQuantity,
  density: densityQuantity,
  'mass percent': massPercentQuantity,
} as const satisfies Readonly<Record<string, QuantityEntry>>;

/** Name of a quantity in the contract, such as `mass of solute`. */
export type QuantityName = keyof typeof quantities;

const quantityNames: readonly string[] = Object.keys(quantities);

export const isQuantityName = (text: string): text is QuantityName => quantityNames.includes(text);
