import { quoted } from '../errors/quoted.ts';
import { failure, type Result, success } from '../errors/result.ts';
import { glassware } from './glassware.generated.ts';
import { type Millilitres, millilitres } from './quantity.ts';

/** Kinds of glassware in the table, with the standards that their figures come from. */
export const glasswareKinds = {
  'volumetric flask': { ISO: 'ISO 1042', ASTM: 'ASTM E288' },
  'volumetric pipette': { ISO: 'ISO 648', ASTM: 'ASTM E969' },
  'graduated pipette': { ISO: 'ISO 835', ASTM: 'ASTM E1293' },
  burette: { ISO: 'ISO 385', ASTM: 'ASTM E287' },
  'graduated cylinder': { ISO: 'ISO 4788', ASTM: 'ASTM E1272' },
  beaker: undefined,
} as const;

export type GlasswareKind = keyof typeof glasswareKinds;

export interface Glassware {
  readonly kind: GlasswareKind;
  readonly volume: Millilitres;
  /** A where left out; beakers have none. */
  readonly glassClass?: 'A' | 'B' | undefined;
  /** ISO where left out. */
  readonly standard?: 'ISO' | 'ASTM' | undefined;
}

export interface GlasswareFigure {
  readonly volume: Millilitres;
  /** Half-width: the true volume is within ± this of the nominal one. */
  readonly tolerance: Millilitres;
  /** `source`: read in a published table; `memory`: not confirmed; `practice`: common practice without a source. */
  readonly basis: 'source' | 'memory' | 'practice';
}

const bases = { m: 'memory', c: 'practice' } as const;

/** All sizes of one kind, class and standard, smallest first. */
export function glasswareFigures({
  kind,
  glassClass = 'A',
  standard = 'ISO',
}: Omit<Glassware, 'volume'>): readonly GlasswareFigure[] {
  const list = glassware[glasswareKinds[kind] === undefined ? kind : `${standard} ${kind} ${glassClass}`] ?? '';
  return list.split(' ').map((line) => {
    const [size, tolerance, mark] = line.split(':');
    return {
      volume: millilitres(Number(size)),
      tolerance: millilitres(Number(tolerance)),
      basis: mark === 'm' || mark === 'c' ? bases[mark] : 'source',
    };
  });
}

const sizeText = ({ volume, tolerance }: GlasswareFigure): string => `${volume} mL (± ${tolerance} mL)`;

/**
 * Permitted error of a piece of glassware of a size that its standard has.
 *
 * @returns The figure with its basis. Fails with `glassware-size`, which offers the neighbours in the table.
 * Source: ISO 1042, 648, 835, 385, 4788; ASTM E288, E969, E1293, E287, E1272; `basis` says what could be confirmed. A
 * burette that comes with two scales has the wider figure. Beakers: 5 %, common practice, no source.
 */
export function glasswareTolerance(wanted: Glassware): Result<GlasswareFigure> {
  const { kind, volume, standard = 'ISO' } = wanted;
  const figures = glasswareFigures(wanted);
  const found = figures.find((figure) => Math.abs(figure.volume - volume) <= 1e-9 * figure.volume);
  if (found) return success(found);
  const smaller = figures.filter((figure) => figure.volume < volume).pop();
  const larger = figures.find((figure) => figure.volume > volume);
  const neighbours = [smaller, larger].flatMap((figure) => (figure ? [figure] : []));
  const table = glasswareKinds[kind]?.[standard] ?? 'the table of beakers';
  return failure({
    code: 'glassware-size',
    argument: 'volume',
    expected: `a size of ${kind} in ${table}`,
    received: `${quoted(volume)} mL`,
    advice: `Take ${neighbours.map(sizeText).join(' or ')}.`,
    brief: neighbours.map((figure) => `${figure.volume}`).join(' or '),
  });
}
