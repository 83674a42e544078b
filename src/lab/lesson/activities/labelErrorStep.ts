import type { CalculatedStep } from '../activity.ts';
import { calculated } from './sharedSteps.ts';

/** How far the molarity that a team found lies from the one on the label. */
export const labelErrorStep = (): CalculatedStep =>
  calculated({
    id: 'percent error',
    title: 'Percent error',
    unit: '%',
    shown: ['How far your molarity is from the label’s ', { given: 'molarity' }, ' mol/L.'],
    period: 1,
    quantity: 'percent error',
    takes: { measured: { entryOf: 'molarity found' }, accepted: { given: 'molarity' } },
    buildsOn: {},
  });
