import { densityOfMolarity } from '../../chemistry/densityOfMolarity.ts';
import { molarMass } from '../../chemistry/molarMass.ts';
import { type Formula, readFormula } from '../../chemistry/readFormula.ts';
import { reagentMolarity } from '../../chemistry/reagentMolarity.ts';
import { soluteMass } from '../../chemistry/soluteMass.ts';
import { stockVolume } from '../../chemistry/stockVolume.ts';
import { failure, type Result, success } from '../../errors/result.ts';
import { isBlank } from '../../measurement/cellValue.ts';
import { isBareNumber } from '../../measurement/isBareNumber.ts';
import {
  type Grams,
  type GramsPerMillilitre,
  grams,
  type Millilitres,
  type MolesPerLitre,
  millilitres,
  molesPerLitre,
  type Percent,
} from '../../measurement/quantity.ts';
import { readQuantity } from '../../measurement/readQuantity.ts';
import type { Activity } from '../activity.ts';
import { dilutionsIn } from '../dilutionsIn.ts';
import type { TeamPlan } from '../setup.ts';

/** A solution at one strength, and how much of it. */
interface Portion {
  readonly formula: Formula;
  readonly molarity: MolesPerLitre;
  readonly volume: Millilitres;
  /** The molarity as the Plan has it, figures kept; left out where it is worked out. */
  readonly typed?: string;
}

/** What one team needs and makes, read from its own numbers. */
export interface TeamUse {
  readonly team: TeamPlan;
  readonly formula: Formula;
  readonly solid?: { readonly mass: Grams; readonly purity?: Percent };
  /** A solution that the team makes from the solid. */
  readonly made?: Portion;
  /** Taken from a stock that staff set out. */
  readonly taken?: Portion;
  /** Taken from the stock that the team made itself. */
  readonly takenFromOwn?: Portion;
  /** The team's own weaker solutions, strongest first. */
  readonly diluted: readonly Portion[];
  /** A solution that staff make from the bottle while students watch. */
  readonly madeByStaff?: Portion & { readonly massPercent: Percent; readonly density: GramsPerMillilitre };
  /** Taken from the bottle by the students themselves, in mL: only where the Plan says so. */
  readonly poured?: { readonly volume: Millilitres; readonly massPercent: Percent };
  /** Sizes in mL of the flasks the team fills. */
  readonly flasksMl: readonly number[];
  /** Volumes in mL that it delivers by pipette, each once. */
  readonly deliveredMl: readonly number[];
  /** Portions that are dried and weighed. */
  readonly driedCount: number;
  /** Portions that are weighed in a closed vessel. */
  readonly closedCount: number;
  readonly weighings: readonly Grams[];
}

/** Two weighings in a row that agree, and one before them: the least for drying to constant mass. */
const weighingsOfResidue = 3;
/** The vessel empty, and with the portion. */
const weighingsOfPortion = 2;

/**
 * Reads a team's line of the Plan.
 *
 * @returns Fails with what reading one of its cells fails with, or with what the relation itself refuses.
 */
export function teamUse(
  activity: Activity,
  team: TeamPlan,
  {
    decimalMark,
    studentsDilute,
  }: { readonly decimalMark: 'point' | 'comma' /** Staff do where this is false. */; readonly studentsDilute: boolean },
): Result<TeamUse> {
  const { numbers } = activity;
  const formula = readFormula(team.givens[numbers.formula], numbers.formula);
  if (!formula.ok) return formula;
  const mass = molarMass(formula.value);
  if (!mass.ok) return mass;
  let trouble: Result<never> | undefined;
  /** A given as a number in its unit; the first that cannot be read is kept as the trouble. */
  const read = <Q extends number>(name: string, kind: Parameters<typeof readQuantity>[1]): Q => {
    const cell = team.givens[name];
    const quantity: Result<{ readonly value: number }> = isBlank(cell)
      ? failure({
          code: 'given-missing',
          argument: name,
          expected: 'a value',
          received: 'a blank',
          advice: 'Fill in the cell in the Plan.',
          brief: name,
        })
      : readQuantity(cell, kind, name, { decimalMark });
    if (quantity.ok) return quantity.value.value as Q;
    trouble ??= quantity;
    return Number.NaN as Q;
  };
  const use: { -readonly [Part in keyof TeamUse]: TeamUse[Part] } = {
    team,
    formula: formula.value,
    diluted: [],
    flasksMl: [],
    deliveredMl: [],
    driedCount: 0,
    closedCount: 0,
    weighings: [],
  };
  const portion = (molarity: MolesPerLitre, volume: Millilitres, given?: string): Portion => {
    const cell = (given === undefined ? '' : (team.givens[given] ?? '')).trim();
    // With a unit of its own it is shown as it was read.
    return { formula: formula.value, molarity, volume, ...(isBareNumber(cell) ? { typed: cell } : {}) };
  };
  const { solid, dilution, reagent, serial, residue, density } = numbers;

  if (solid) {
    const molarity = read<MolesPerLitre>(solid.molarity, 'concentration');
    const volume = read<Millilitres>(solid.flask, 'volume');
    const isPure = solid.purity === undefined || isBlank(team.givens[solid.purity]);
    const purity = isPure ? undefined : read<Percent>(solid.purity ?? '', 'percent');
    if (trouble) return trouble;
    const weighed = soluteMass({ molarMass: mass.value, molarity, volume, purity });
    if (!weighed.ok) return weighed;
    use.solid = { mass: weighed.value, ...(purity === undefined ? {} : { purity }) };
    use.made = portion(molarity, volume, solid.molarity);
    use.flasksMl = [volume];
    use.weighings = [weighed.value];
  }
  if (dilution) {
    const stock = read<MolesPerLitre>(dilution.stock, 'concentration');
    const target = read<MolesPerLitre>(dilution.target, 'concentration');
    const finalVolume = read<Millilitres>(dilution.volume, 'volume');
    if (trouble) return trouble;
    const taken = stockVolume({ stock, target, finalVolume });
    if (!taken.ok) return taken;
    use[solid ? 'takenFromOwn' : 'taken'] = portion(stock, taken.value, dilution.stock);
    use.diluted = [portion(target, finalVolume, dilution.target)];
    use.flasksMl = [...use.flasksMl, finalVolume];
    use.deliveredMl = [taken.value];
  }
  if (serial) {
    const stock = read<MolesPerLitre>(serial.stock, 'concentration');
    const taken = read<Millilitres>(serial.portion, 'volume');
    const flask = read<Millilitres>(serial.flask, 'volume');
    if (trouble) return trouble;
    use.taken = portion(stock, taken, serial.stock);
    const flasks = Array.from({ length: dilutionsIn(activity) }, (_, index) => index + 1);
    use.diluted = flasks.map((times) => portion(molesPerLitre(stock * (taken / flask) ** times), flask));
    use.flasksMl = flasks.map(() => flask);
    use.deliveredMl = [taken];
  }
  if (reagent) {
    const massPercent = read<Percent>(reagent.massPercent, 'percent');
    const density = read<GramsPerMillilitre>(reagent.density, 'density');
    const target = read<MolesPerLitre>(reagent.target, 'concentration');
    const volume = read<Millilitres>(reagent.volume, 'volume');
    if (trouble) return trouble;
    const bottle = reagentMolarity({ molarMass: mass.value, massPercent, density });
    if (!bottle.ok) return bottle;
    const taken = stockVolume({ stock: bottle.value, target, finalVolume: volume });
    if (!taken.ok) return taken;
    if (studentsDilute) {
      use.poured = { volume: taken.value, massPercent };
      use.diluted = [portion(target, volume, reagent.target)];
      use.flasksMl = [volume];
      return success(use);
    }
    use.madeByStaff = { ...portion(target, volume, reagent.target), massPercent, density };
  }
  if (residue) {
    const molarity = read<MolesPerLitre>(residue.molarity, 'concentration');
    const volume = read<Millilitres>(residue.portion, 'volume');
    if (trouble) return trouble;
    const left = soluteMass({ molarMass: mass.value, molarity, volume });
    if (!left.ok) return left;
    use.taken = portion(molarity, volume, residue.molarity);
    use.deliveredMl = [millilitres(volume)];
    use.driedCount = 1;
    use.weighings = Array.from({ length: weighingsOfResidue }, () => left.value);
  }
  if (density) {
    const molarity = read<MolesPerLitre>(density.molarity, 'concentration');
    const volume = read<Millilitres>(density.portion, 'volume');
    const line = {
      lighterPercent: read<Percent>(density.lighterPercent, 'percent'),
      lighterDensity: read<GramsPerMillilitre>(density.lighterDensity, 'density'),
      heavierPercent: read<Percent>(density.heavierPercent, 'percent'),
      heavierDensity: read<GramsPerMillilitre>(density.heavierDensity, 'density'),
    };
    if (trouble) return trouble;
    const expected = densityOfMolarity({ ...line, molarMass: mass.value, molarity });
    if (!expected.ok) return expected;
    use.taken = portion(molarity, volume, density.molarity);
    use.deliveredMl = [volume];
    use.closedCount = 1;
    use.weighings = Array.from({ length: weighingsOfPortion }, () => grams(expected.value * volume));
  }
  return success(use);
}
