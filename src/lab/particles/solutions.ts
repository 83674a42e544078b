import { type IonCount, ions } from '../../chemistry/ions.ts';
import { molarMass } from '../../chemistry/molarMass.ts';
import { readFormula } from '../../chemistry/readFormula.ts';
import { reagentMolarity } from '../../chemistry/reagentMolarity.ts';
import { stockVolume } from '../../chemistry/stockVolume.ts';
import { failure, type Result, success } from '../../errors/result.ts';
import { notAboveZero } from '../../measurement/aboveZero.ts';
import {
  gramsPerMillilitre,
  type Millilitres,
  type MolesPerLitre,
  millilitres,
  molesPerLitre,
  percent,
} from '../../measurement/quantity.ts';
import { type QuantityKind, readQuantity } from '../../measurement/readQuantity.ts';
import type { Activity } from '../activity.ts';

/** What a team's own numbers say about its solutions, as far as a picture needs them. */
export interface Solutions {
  /** As typed. */
  readonly formula: string;
  /** What one formula unit gives in water. */
  readonly kinds: readonly IonCount[];
  /** The solution that is made or taken. */
  readonly first: { readonly molarity: MolesPerLitre; readonly volume: Millilitres };
  /** What the first becomes, where the activity dilutes: `first.volume` is then the portion that goes into it. */
  readonly diluted?: { readonly molarity: MolesPerLitre; readonly volume: Millilitres };
  /** Which dilution of a row of flasks it is, from 1 on; left out where there is no row. */
  readonly step?: number;
}

export interface TeamNumbersToRead {
  readonly activity: Pick<Activity, 'numbers'>;
  /** By name of the given, as typed. */
  readonly givens: Readonly<Record<string, string>>;
  readonly decimalMark: 'point' | 'comma';
  /** Which dilution of a row of flasks; the first where left out. */
  readonly step?: number;
}

/**
 * Reads the solutions of a team from its own numbers. Of a row of flasks it is one dilution: from the stock or the flask
 * before into the next.
 *
 * @returns Fails as `readFormula`, `ions`, `readQuantity`, `reagentMolarity` and `stockVolume` do.
 */
export function readSolutions({ activity, givens, decimalMark, step = 1 }: TeamNumbersToRead): Result<Solutions> {
  const { numbers } = activity;
  const formula = readFormula(givens[numbers.formula], numbers.formula);
  if (!formula.ok) return formula;
  const kinds = ions(formula.value);
  if (!kinds.ok) return kinds;

  const read = (name: string, kind: QuantityKind): Result<number> => {
    const quantity = readQuantity(givens[name], kind, name, { decimalMark });
    if (!quantity.ok) return quantity;
    const error = notAboveZero({ value: quantity.value.value, argument: name, unit: quantity.value.unit });
    return error ? failure(error) : success(quantity.value.value);
  };
  const base = { formula: formula.value.text, kinds: kinds.value };
  const alone = (molarityName: string, volumeName: string): Result<Solutions> => {
    const molarity = read(molarityName, 'concentration');
    if (!molarity.ok) return molarity;
    const volume = read(volumeName, 'volume');
    if (!volume.ok) return volume;
    return success({
      ...base,
      first: { molarity: molesPerLitre(molarity.value), volume: millilitres(volume.value) },
    });
  };
  const diluted = (stock: Result<number>, targetName: string, volumeName: string): Result<Solutions> => {
    if (!stock.ok) return stock;
    const target = read(targetName, 'concentration');
    if (!target.ok) return target;
    const volume = read(volumeName, 'volume');
    if (!volume.ok) return volume;
    const dilution = {
      stock: molesPerLitre(stock.value),
      target: molesPerLitre(target.value),
      finalVolume: millilitres(volume.value),
    };
    const portion = stockVolume(dilution);
    if (!portion.ok) return portion;
    return success({
      ...base,
      first: { molarity: dilution.stock, volume: portion.value },
      diluted: { molarity: dilution.target, volume: dilution.finalVolume },
    });
  };

  if (numbers.dilution) {
    const { stock, target, volume } = numbers.dilution;
    return diluted(read(stock, 'concentration'), target, volume);
  }
  if (numbers.reagent) {
    const { massPercent, density, target, volume } = numbers.reagent;
    const share = read(massPercent, 'percent');
    if (!share.ok) return share;
    const heaviness = read(density, 'density');
    if (!heaviness.ok) return heaviness;
    const mass = molarMass(formula.value);
    if (!mass.ok) return mass;
    const reagent = reagentMolarity({
      molarMass: mass.value,
      massPercent: percent(share.value),
      density: gramsPerMillilitre(heaviness.value),
    });
    return diluted(reagent, target, volume);
  }
  if (numbers.serial) {
    const stock = read(numbers.serial.stock, 'concentration');
    if (!stock.ok) return stock;
    const portion = read(numbers.serial.portion, 'volume');
    if (!portion.ok) return portion;
    const flask = read(numbers.serial.flask, 'volume');
    if (!flask.ok) return flask;
    const share = portion.value / flask.value;
    const before = molesPerLitre(stock.value * share ** (step - 1));
    const molarity = molesPerLitre(before * share);
    const checked = stockVolume({
      stock: before,
      target: molarity,
      finalVolume: millilitres(flask.value),
    });
    if (!checked.ok) return checked;
    return success({
      ...base,
      first: { molarity: before, volume: millilitres(portion.value) },
      diluted: { molarity, volume: millilitres(flask.value) },
      step,
    });
  }
  if (numbers.solid) return alone(numbers.solid.molarity, numbers.solid.flask);
  if (numbers.residue) return alone(numbers.residue.molarity, numbers.residue.portion);
  if (numbers.density) return alone(numbers.density.molarity, numbers.density.portion);
  throw new Error('An activity makes no solution that could be drawn.');
}
