import { quoted } from '../errors/quoted.ts';
import { failure, type Result, success } from '../errors/result.ts';
import { notAboveZero } from '../measurement/aboveZero.ts';
import { type Millilitres, type MolesPerLitre, molesPerLitre } from '../measurement/quantity.ts';

export interface DilutionSeries {
  readonly stock: MolesPerLitre;
  /** How many times each stage is diluted. */
  readonly factor: number;
  readonly stages: number;
  /** Final volume of each stage. */
  readonly finalVolume?: Millilitres | undefined;
}

/** Beyond this many stages nothing is left to dilute, and a sheet would only fill up. */
const mostStages = 100;

export interface DilutionStage {
  readonly stage: number;
  readonly molarity: MolesPerLitre;
  /** mL of the stage before, where a final volume is known. */
  readonly taken?: number;
  /** mL of solvent, volumes taken as additive. */
  readonly solvent?: number;
}

/**
 * Stages of a serial dilution, each made from the one before.
 *
 * @returns One record for each stage. Fails with `not-above-zero`, `factor-not-above-one` or `stages-out-of-range`.
 * Source: definition of amount concentration, IUPAC Gold Book.
 */
export function serialDilution({
  stock,
  factor,
  stages,
  finalVolume,
}: DilutionSeries): Result<readonly DilutionStage[]> {
  const error = notAboveZero(
    { value: stock, argument: 'stock_molarity', unit: 'mol/L' },
    ...(finalVolume === undefined ? [] : [{ value: finalVolume, argument: 'final_volume', unit: 'mL' }]),
  );
  if (error) return failure(error);
  if (!(factor > 1 && Number.isFinite(factor))) {
    return failure({
      code: 'factor-not-above-one',
      argument: 'factor',
      expected: 'above 1',
      received: quoted(factor),
      advice: 'Type how many times the volume grows at each stage, such as 10.',
    });
  }
  if (!(Number.isInteger(stages) && stages >= 1 && stages <= mostStages)) {
    return failure({
      code: 'stages-out-of-range',
      argument: 'stages',
      expected: `a whole number from 1 to ${mostStages}`,
      received: quoted(stages),
      advice: 'Type how many dilutions there are, one after the other.',
    });
  }
  const volumes = finalVolume === undefined ? {} : volumesOf(finalVolume, factor);
  const rows: DilutionStage[] = [];
  for (let stage = 1; stage <= stages; stage += 1) {
    const molarity = molesPerLitre(stock / factor ** stage);
    if (!(molarity > 0)) {
      return failure({
        code: 'stages-out-of-range',
        argument: 'stages',
        expected: `at most ${stage - 1} with this factor`,
        received: quoted(stages),
        advice: 'Nothing is left to dilute after that: use fewer stages or a smaller factor.',
      });
    }
    rows.push({ stage, molarity, ...volumes });
  }
  return success(rows);
}

const volumesOf = (finalVolume: number, factor: number): { readonly taken: number; readonly solvent: number } => ({
  taken: finalVolume / factor,
  solvent: finalVolume - finalVolume / factor,
});
