import { glasswareFigures } from './glasswareTolerance.ts';
import { type Millilitres, millilitres } from './quantity.ts';

export interface Volumetric {
  readonly vessel: 'flask' | 'pipette';
  readonly volume: Millilitres;
  readonly glassClass: 'A' | 'B';
  readonly standard: 'ISO' | 'ASTM';
}

export interface VolumetricTolerance {
  /** Half-width: the volume is within ± this of the nominal one. */
  readonly tolerance: Millilitres;
  /** The size that the figure was read at: the vessel's own, or the next one in the table. */
  readonly readAt: Millilitres;
  /** False where the figure could not be confirmed in a published source. */
  readonly confirmed: boolean;
}

/**
 * Permitted error of a one-mark flask or pipette. A size that the standard has no line for gets the figure of the next
 * larger one, which is never too narrow; beyond the largest, that one's share of the volume.
 *
 * Source: ISO 1042 and ISO 648, ASTM E288 and E969, as listed in the published table beside the tests.
 */
export function volumetricTolerance({ vessel, volume, glassClass, standard }: Volumetric): VolumetricTolerance {
  const figures = glasswareFigures({
    kind: vessel === 'flask' ? 'volumetric flask' : 'volumetric pipette',
    glassClass,
    standard,
  });
  const found = figures.find((figure) => figure.volume >= volume) ?? figures[figures.length - 1];
  if (found === undefined) throw new Error(`No figures for a ${vessel} of class ${glassClass} by ${standard}.`);
  const share = Math.max(1, volume / found.volume);
  return {
    tolerance: millilitres(found.tolerance * share),
    readAt: found.volume,
    confirmed: found.basis === 'source',
  };
}
