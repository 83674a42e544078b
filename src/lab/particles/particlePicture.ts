import { avogadroConstant, particleCount } from '../../chemistry/particleCount.ts';
import { failure, type Result, success } from '../../errors/result.ts';
import { moles } from '../../measurement/quantity.ts';
import { type Particle, placed } from './placed.ts';
import type { Solutions } from './solutions.ts';
import { type UnitsDrawn, unitsDrawn } from './unitsDrawn.ts';
import { writtenFormula } from './writtenFormula.ts';

/** Each kind of ion has an outline of its own; a molecule that stays whole has another. */
export type Shape = 'round' | 'square' | 'sixfold' | 'pointed' | 'whole';

export interface Kind {
  /** As usually written, with its charge: `K⁺`; a molecular solute by its formula. */
  readonly symbol: string;
  readonly charge: number;
  /** From one formula unit. */
  readonly perUnit: number;
  readonly shape: Shape;
  /** Anything to know about it, or empty. */
  readonly note: string;
}

export interface Box {
  readonly moment: 'before' | 'after' | 'only';
  readonly width: number;
  readonly height: number;
  /** Formula units whose particles are in the box. */
  readonly units: number;
  /** Particles of each kind, in the order of the kinds. */
  readonly counts: readonly number[];
  readonly particles: readonly Particle[];
}

/** Boxes of one figure are drawn to one scale. */
export interface Figure {
  /** Width of a particle. */
  readonly size: number;
  readonly boxes: readonly Box[];
}

export interface ParticlePicture {
  readonly kinds: readonly Kind[];
  /** Equal volumes before and after; of an activity without a dilution the one solution. */
  readonly sample: Figure;
  /** All of a small portion and the same particles once water has joined them: same count, bigger box. */
  readonly flask: Figure | undefined;
  /** Size of a sample, in cubic nanometres. */
  readonly sampleVolume: number;
  /** How many times as crowded it is before as after, truly and as drawn; both 1 without a dilution. */
  readonly times: { readonly truly: number; readonly drawn: number; readonly exact: boolean };
  /** Which dilution of a row of flasks it shows, from 1 on; undefined where there is no row. */
  readonly step: number | undefined;
  /** Particles of each kind in the whole flask, worked out with the Avogadro constant. */
  readonly inFlask: readonly number[];
}

const shapes: readonly Shape[] = ['round', 'square', 'sixfold', 'pointed'];

/** The full-size box of a figure. */
export const fullBox = { width: 320, height: 220 } as const;
const sizes = { largest: 34, smallest: 5, shrink: 0.94 } as const;
/** Share of a box that particles can cover at most, dropped in by chance. */
const coverMax = 0.36;
/** One litre in cubic nanometres. */
const cubicNanometres = 1e24;
/** Formula units of a picture without a dilution. */
const unitsAlone = (perUnit: number) => Math.max(2, Math.round(12 / perUnit));

/**
 * A picture of a team's solutions: counts in proportion, ratio and charge balance of the formula in every box, the same
 * sample volume before and after.
 *
 * @returns Fails with `particles-too-far-apart` where equal volumes cannot both be drawn, and as `particleCount` does.
 */
export function particlePicture(solutions: Solutions): Result<ParticlePicture> {
  const { first, diluted } = solutions;
  const kinds = solutions.kinds.map(({ ion, charge, count, note }, place): Kind => {
    const shape = charge === 0 ? 'whole' : (shapes[place % shapes.length] ?? 'round');
    // Ions come as they are written; a molecule comes as it was typed.
    const symbol = charge === 0 ? writtenFormula(ion) : ion;
    return { symbol, charge, perUnit: count, shape, note: note ?? '' };
  });
  const perUnit = kinds.reduce((sum, kind) => sum + kind.perUnit, 0);
  const ratio = diluted === undefined ? 1 : first.molarity / diluted.molarity;
  const units: UnitsDrawn | undefined =
    diluted === undefined
      ? { before: unitsAlone(perUnit), after: unitsAlone(perUnit), exact: true }
      : unitsDrawn({ ratio, perUnit });
  if (units === undefined) {
    return failure({
      code: 'particles-too-far-apart',
      argument: 'the picture',
      expected: 'two molarities that fit into one picture',
      received: `one of these is ${Number(ratio.toPrecision(3))} times the other`,
      advice: 'Choose a team with a smaller dilution, or picture the dilution in steps.',
    });
  }
  const filled = solutions.diluted ?? first;
  const total = particleCount(moles((filled.molarity * filled.volume) / 1000));
  if (!total.ok) return total;

  const box = ({ moment, units: many, share = 1 }: BoxWanted): Omit<Box, 'particles'> => ({
    moment,
    width: fullBox.width * Math.sqrt(share),
    height: fullBox.height * Math.sqrt(share),
    units: many,
    counts: kinds.map((kind) => kind.perUnit * many),
  });
  const { before, after, exact } = units;
  const seed = `${solutions.formula} ${before} ${after}`;
  const sample = figure(
    diluted === undefined
      ? [box({ moment: 'only', units: before })]
      : [box({ moment: 'before', units: before }), box({ moment: 'after', units: after })],
    `${seed} sample`,
  );
  if (sample === undefined) throw new Error(`No room for ${before * perUnit} particles in a sample.`);
  return success({
    kinds,
    sample,
    flask:
      diluted === undefined
        ? undefined
        : figure(
            [box({ moment: 'before', units: after, share: after / before }), box({ moment: 'after', units: after })],
            `${seed} flask`,
          ),
    sampleVolume: (before / (first.molarity * avogadroConstant)) * cubicNanometres,
    times: { truly: ratio, drawn: before / after, exact },
    step: solutions.step,
    inFlask: kinds.map((kind) => kind.perUnit * total.value),
  });
}

interface BoxWanted {
  readonly moment: Box['moment'];
  readonly units: number;
  /** Area as a share of the full box. */
  readonly share?: number;
}

/** Draws all boxes at the largest size at which every one of them has room; undefined where none is left to see. */
function figure(boxes: readonly Omit<Box, 'particles'>[], seed: string): Figure | undefined {
  const roomiest = Math.min(
    ...boxes.map(({ width, height, counts }) =>
      Math.sqrt((4 * coverMax * width * height) / (Math.PI * counts.reduce((sum, count) => sum + count, 0))),
    ),
  );
  for (let size = Math.min(sizes.largest, roomiest); size >= sizes.smallest; size *= sizes.shrink) {
    const filled: Box[] = [];
    for (const box of boxes) {
      const particles = placed({ ...box, size, seed: `${seed} ${box.moment}` });
      if (particles === undefined) break;
      filled.push({ ...box, particles });
    }
    if (filled.length === boxes.length) return { size, boxes: filled };
  }
  return undefined;
}
