import { type Random, seededRandom, shuffled } from '../numbers/seededRandom.ts';

export interface Particle {
  /** Place of its kind in the list of kinds. */
  readonly kind: number;
  readonly x: number;
  readonly y: number;
}

export interface Room {
  readonly width: number;
  readonly height: number;
  /** Particles of each kind. */
  readonly counts: readonly number[];
  /** Width of a particle. */
  readonly size: number;
  /** The same seed gives the same places. */
  readonly seed: string;
}

const candidates = 16;
const trials = 4;
/** Clear space between two particles, and to the wall, as a share of their size. */
const gap = 0.16;

/**
 * Places in a box: about the same distance apart, never in rows, never over each other. Each particle takes, of some
 * places drawn by chance, the one farthest from all others.
 *
 * @returns Undefined where they do not fit at that size.
 */
export function placed(room: Room): readonly Particle[] | undefined {
  const random = seededRandom(room.seed);
  for (let trial = 0; trial < trials; trial += 1) {
    const particles = placedOnce(room, random);
    if (particles !== undefined) return particles;
  }
  return undefined;
}

function placedOnce({ width, height, counts, size }: Room, random: Random): readonly Particle[] | undefined {
  const margin = size * (0.5 + gap);
  const [across, down] = [width - 2 * margin, height - 2 * margin];
  if (across < 0 || down < 0) return undefined;
  const kinds = shuffled(
    counts.flatMap((count, kind) => Array.from({ length: count }, () => kind)),
    random,
  );
  const particles: Particle[] = [];
  const closest = (size * (1 + gap)) ** 2;
  for (const kind of kinds) {
    let best: Particle | undefined;
    let farthest = closest;
    for (let drawn = 0; drawn < candidates; drawn += 1) {
      const [x, y] = [margin + random() * across, margin + random() * down];
      const nearest = squaredDistance(particles, { x, y });
      if (nearest >= farthest) {
        farthest = nearest;
        best = { kind, x, y };
      }
    }
    if (best === undefined) return undefined;
    particles.push(best);
  }
  return particles;
}

/** From a place to the nearest of the particles. */
function squaredDistance(particles: readonly Particle[], { x, y }: { x: number; y: number }): number {
  let least = Number.POSITIVE_INFINITY;
  for (const other of particles) {
    const [across, down] = [other.x - x, other.y - y];
    const squared = across * across + down * down;
    if (squared < least) least = squared;
  }
  return least;
}
