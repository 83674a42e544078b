import { quoted } from '../errors/quoted.ts';
import { type ChemError, failure, type Result } from '../errors/result.ts';
import { belowZero } from '../measurement/aboveZero.ts';
import { finite } from '../measurement/finite.ts';
import type { GramsPerMillilitre, GramsPerMole } from '../measurement/quantity.ts';
import type { ConcentrationKind, ConcentrationUnit } from './concentrationUnit.ts';
import { notASolutionDensity } from './solutionDensity.ts';

export interface Conversion {
  readonly value: number;
  readonly from: ConcentrationUnit;
  readonly to: ConcentrationUnit;
  readonly molarMass?: GramsPerMole | undefined;
  /** Density of the solution. */
  readonly density?: GramsPerMillilitre | undefined;
}

/** What a pair of kinds needs besides the value. Mass in mass to amount in solvent needs no density. */
export function conversionNeeds(
  from: ConcentrationKind,
  to: ConcentrationKind,
): { formula: boolean; density: boolean } {
  const isAmount = (kind: ConcentrationKind) => kind.startsWith('amount');
  const isInVolume = (kind: ConcentrationKind) => kind.endsWith('volume');
  return {
    formula: from !== to && (isAmount(from) || isAmount(to)),
    density: isInVolume(from) !== isInVolume(to),
  };
}

/**
 * A concentration in another unit. Percent w/w, ppm and ppb are by mass; % w/v is grams in 100 mL; mol/kg counts the
 * solvent as all that is not solute.
 *
 * @returns The value in `to`, not rounded. Fails with `below-zero`, `conversion-needs` where the pair needs a formula or a
 * density, `not-above-zero` or `density-unlikely` of the density, or `solute-over-whole` where the solute would outweigh its solution.
 * Source: definitions of mass fraction, mass concentration, amount concentration and molality, IUPAC Gold Book; ppm and
 * ppb, OpenStax Chemistry 2e, section 3.4; % w/v is common practice, no source.
 */
export function convertConcentration({ value, from, to, molarMass, density }: Conversion): Result<number> {
  const needs = conversionNeeds(from.kind, to.kind);
  const error =
    belowZero({ value, argument: 'value', unit: from.symbol }) ??
    missing(needs.formula && molarMass === undefined, 'formula', { from, to }) ??
    missing(needs.density && density === undefined, 'density', { from, to }) ??
    (density === undefined ? undefined : notASolutionDensity({ value: density, argument: 'density' }));
  if (error) return failure(error);
  const [perMole, perMillilitre] = [molarMass ?? Number.NaN, density ?? Number.NaN];
  const amount = shifted(value, from.power);
  const own = { amount, perMole, perMillilitre };
  if (from.kind === to.kind) {
    if (from.kind === 'mass in mass' && amount > 1) return soluteOverWhole(value, from);
    return finite(shifted(value, from.power - to.power), 'value');
  }
  if (from.kind.endsWith('volume') && to.kind.endsWith('volume')) {
    // The mass of the solution is not known here, so it cannot be overstepped either.
    return finite(shifted(to.kind.startsWith('amount') ? amount / perMole : amount * perMole, -to.power), 'value');
  }
  const share = massShare({ kind: from.kind, ...own });
  // Without any solvent there is no molality.
  if (share > 1 || (share === 1 && to.kind === 'amount in solvent')) return soluteOverWhole(value, from);
  return finite(shifted(fromShare({ kind: to.kind, share, perMole, perMillilitre }), -to.power), 'value');
}

/** A number times a power of ten, by one correctly rounded step. */
const shifted = (value: number, power: number): number => (power < 0 ? value / 10 ** -power : value * 10 ** power);

interface InOwnUnit {
  readonly kind: ConcentrationKind;
  readonly amount: number;
  readonly perMole: number;
  readonly perMillilitre: number;
}

/** Grams of solute in a gram of solution. */
function massShare({ kind, amount, perMole, perMillilitre }: InOwnUnit): number {
  switch (kind) {
    case 'amount in volume':
      return (amount * perMole) / (1000 * perMillilitre);
    case 'mass in volume':
      return amount / (1000 * perMillilitre);
    case 'mass in mass':
      return amount;
    case 'amount in solvent':
      return (amount * perMole) / (1000 + amount * perMole);
  }
}

function fromShare({
  kind,
  share,
  perMole,
  perMillilitre,
}: Omit<InOwnUnit, 'amount'> & { readonly share: number }): number {
  switch (kind) {
    case 'amount in volume':
      return (share * 1000 * perMillilitre) / perMole;
    case 'mass in volume':
      return share * 1000 * perMillilitre;
    case 'mass in mass':
      return share;
    case 'amount in solvent':
      return (1000 * share) / (perMole * (1 - share));
  }
}

interface Pair {
  readonly from: ConcentrationUnit;
  readonly to: ConcentrationUnit;
}

function missing(isMissing: boolean, argument: 'formula' | 'density', { from, to }: Pair): ChemError | undefined {
  if (!isMissing) return undefined;
  return {
    code: 'conversion-needs',
    argument,
    expected: argument === 'formula' ? 'a formula such as KBr' : 'a density such as 1.05 g/mL',
    advice: `Converting ${from.symbol} to ${to.symbol} needs the ${argument === 'formula' ? 'molar mass' : 'density of the solution'}.`,
    brief: argument,
  };
}

const soluteOverWhole = (value: number, { symbol }: ConcentrationUnit): Result<never> =>
  failure({
    code: 'solute-over-whole',
    argument: 'value',
    received: `${quoted(value)} ${symbol}`,
    advice: 'Check the units, the density and the powers of ten.',
  });
