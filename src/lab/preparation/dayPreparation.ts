import { errorText } from '../../errors/errorText.ts';
import type { Activity } from '../lesson/activity.ts';
import { decimalMarkOf } from '../lesson/lessonSettings.ts';
import type { Settings, Shelf, TeamPlan } from '../lesson/setup.ts';
import { type CautionBlock, cautionBlocks } from './cautionBlocks.ts';
import { type GlasswareCount, glasswareCounts } from './glassware.ts';
import { liquidLeft } from './liquidLeft.ts';
import { roundedUp, spareShare } from './spare.ts';
import { type StaffSolution, staffSolutions } from './staffSolutions.ts';
import { type Handled, type TeamUse, teamUse } from './teamUse.ts';
import { vesselFor } from './vesselFor.ts';

/** A substance that teams weigh out themselves. */
interface SolidTotal {
  readonly formula: string;
  /** Mass percent as the Plan has it; undefined where the solid counts as pure. */
  readonly purityPercent: number | undefined;
  readonly teams: number;
  readonly grams: number;
  readonly gramsWithSpare: number;
  /** g for each class, in the order of the day's classes. */
  readonly perClass: readonly number[];
}

/** Stocks that teams make and use themselves, of one substance. */
interface OwnStockTotal {
  readonly formula: string;
  readonly teams: number;
  /** Weakest and strongest, mol/L. */
  readonly from: number;
  readonly to: number;
  readonly madeMl: number;
  readonly takenMl: number;
  /** mL made in each class, in the order of the day's classes. */
  readonly perClass: readonly number[];
}

/** What is poured away of one substance, to be collected where local rules do not let it go down a drain. */
interface WasteTotal {
  readonly formula: string;
  readonly millilitres: number;
  /** mL in each class, in the order of the day's classes. */
  readonly perClass: readonly number[];
  /** mL: takes what the class with most of it leaves. */
  readonly vesselMl: number;
}

/** What stands ready where no recipe says how much of it. */
interface HandledTotal extends Handled {
  readonly formula: string;
  readonly teams: number;
}

interface PouredTotal {
  readonly formula: string;
  readonly massPercent: number;
  readonly teams: number;
  readonly millilitres: number;
  readonly withSpare: number;
}

interface BalanceNeed {
  readonly weighings: number;
  readonly smallestG: number;
  readonly largestG: number;
  readonly readabilityG: number;
  readonly maxG: number;
  /** For the class that needs most. */
  readonly balances: number;
}

export interface DayPreparation {
  readonly activity: Activity;
  readonly classes: readonly { readonly name: string; readonly teams: number }[];
  /** Shares, 0.1 for 10 %. */
  readonly spare: number;
  readonly glasswareSpare: number;
  readonly uses: readonly TeamUse[];
  readonly solids: readonly SolidTotal[];
  readonly ownStocks: readonly OwnStockTotal[];
  readonly staffMade: readonly StaffSolution[];
  /** Concentrated reagents that students dilute themselves. */
  readonly poured: readonly PouredTotal[];
  /** Of an activity without a recipe. */
  readonly handled: readonly HandledTotal[];
  readonly waste: readonly WasteTotal[];
  readonly glassware: readonly GlasswareCount[];
  readonly balance: BalanceNeed | undefined;
  /** To fill every flask, in mL with spare. */
  readonly waterMl: number;
  readonly cautions: readonly CautionBlock[];
  /** Lines of the Plan that could not be read, in words for people; their teams are in none of the totals. */
  readonly problems: readonly { readonly team: TeamPlan; readonly message: string }[];
}

export interface DayInput {
  readonly activity: Activity;
  /** Teams of all classes of the day. */
  readonly teams: readonly TeamPlan[];
  readonly shelf: Shelf;
  readonly settings: Settings;
}

/** What the spare is where the Plan’s cell says nothing that can be read. */
const usualSpare = 0.1;

/** One balance for so many teams (common practice, no source). */
const teamsPerBalance = 3;

/** All that has to stand ready for the day, from the teams' own numbers. A line that cannot be read is named and left out. */
export function dayPreparation({ activity, teams, shelf, settings }: DayInput): DayPreparation {
  const spare = spareShare(settings.spare) ?? usualSpare;
  const glasswareSpare = spareShare(settings['spare glassware']) ?? usualSpare;
  const decimalMark = decimalMarkOf(settings);
  const studentsDilute = settings['concentrated reagents'] === 'students';
  const uses: TeamUse[] = [];
  const problems: { team: TeamPlan; message: string }[] = [];
  for (const team of teams) {
    const use = teamUse(activity, team, { decimalMark, studentsDilute });
    if (use.ok) uses.push(use.value);
    else problems.push({ team, message: errorText(use.error) });
  }
  const staffMade = staffSolutions(uses, { shelf, spare });
  const filledMl = uses.flatMap(({ flasksMl }) => flasksMl).reduce((sum, size) => sum + size, 0);
  const madeMl = staffMade.reduce((sum, { flaskMl, fillings }) => sum + flaskMl * fillings, 0);
  const classes = classesOf(teams);
  const classNames = classes.map(({ name }) => name);
  return {
    activity,
    classes,
    spare,
    glasswareSpare,
    uses,
    solids: solidTotals(uses, { spare, step: shelf.balanceReadabilityG, classNames }),
    ownStocks: ownStockTotals(uses, classNames),
    staffMade,
    poured: pouredTotals(uses, spare),
    handled: handledTotals(uses),
    waste: wasteTotals(uses, classNames),
    glassware: glasswareCounts(uses, { shelf, spare: glasswareSpare, classNames }),
    balance: balanceNeed(uses, shelf),
    waterMl: roundedUp((filledMl + madeMl) * (1 + spare), 10),
    cautions: cautionBlocks(uses, staffMade),
    problems,
  };
}

function classesOf(teams: readonly TeamPlan[]): readonly { readonly name: string; readonly teams: number }[] {
  const counts = new Map<string, number>();
  for (const { className } of teams) counts.set(className, (counts.get(className) ?? 0) + 1);
  return [...counts].map(([name, count]) => ({ name, teams: count }));
}

function solidTotals(
  uses: readonly TeamUse[],
  {
    spare,
    step,
    classNames,
  }: { readonly spare: number; readonly step: number; readonly classNames: readonly string[] },
): readonly SolidTotal[] {
  const totals = new Map<
    string,
    { formula: string; purityPercent: number | undefined; teams: number; grams: number; perClass: number[] }
  >();
  for (const { team, formula, solid } of uses) {
    if (!solid) continue;
    const key = `${formula.text} ${solid.purity ?? ''}`;
    const line = totals.get(key) ?? {
      formula: formula.text,
      purityPercent: solid.purity,
      teams: 0,
      grams: 0,
      perClass: classNames.map(() => 0),
    };
    line.teams += 1;
    line.grams += solid.mass;
    addTo(line.perClass, classNames.indexOf(team.className), solid.mass);
    totals.set(key, line);
  }
  return [...totals.values()].map((line) => ({
    ...line,
    grams: roundedUp(line.grams, step),
    gramsWithSpare: roundedUp(line.grams * (1 + spare), step),
    perClass: line.perClass.map((mass) => roundedUp(mass, step)),
  }));
}

function addTo(list: number[], at: number, value: number): void {
  list[at] = (list[at] ?? 0) + value;
}

function pouredTotals(uses: readonly TeamUse[], spare: number): readonly PouredTotal[] {
  const totals = new Map<string, { formula: string; massPercent: number; teams: number; millilitres: number }>();
  for (const { formula, poured } of uses) {
    if (!poured) continue;
    const key = `${formula.text} ${poured.massPercent}`;
    const line = totals.get(key) ?? {
      formula: formula.text,
      massPercent: poured.massPercent,
      teams: 0,
      millilitres: 0,
    };
    line.teams += 1;
    line.millilitres += poured.volume;
    totals.set(key, line);
  }
  return [...totals.values()].map((line) => ({
    ...line,
    millilitres: roundedUp(line.millilitres, 0.1),
    withSpare: roundedUp(line.millilitres * (1 + spare), 1),
  }));
}

function ownStockTotals(uses: readonly TeamUse[], classNames: readonly string[]): readonly OwnStockTotal[] {
  const totals = new Map<
    string,
    { -readonly [Part in keyof OwnStockTotal]: OwnStockTotal[Part] } & { perClass: number[] }
  >();
  for (const { team, formula, made, takenFromOwn } of uses) {
    if (!made) continue;
    const { molarity } = made;
    const line = totals.get(formula.text) ?? {
      formula: formula.text,
      teams: 0,
      from: molarity,
      to: molarity,
      madeMl: 0,
      takenMl: 0,
      perClass: classNames.map(() => 0),
    };
    line.teams += 1;
    line.from = Math.min(line.from, molarity);
    line.to = Math.max(line.to, molarity);
    line.madeMl += made.volume;
    addTo(line.perClass, classNames.indexOf(team.className), made.volume);
    line.takenMl += takenFromOwn?.volume ?? 0;
    totals.set(formula.text, line);
  }
  return [...totals.values()].map((line) => ({ ...line, takenMl: Number(line.takenMl.toFixed(1)) }));
}

function wasteTotals(uses: readonly TeamUse[], classNames: readonly string[]): readonly WasteTotal[] {
  const totals = new Map<string, number[]>();
  for (const use of uses) {
    const left = liquidLeft(use);
    if (left === 0) continue;
    const line = totals.get(use.formula.text) ?? classNames.map(() => 0);
    addTo(line, classNames.indexOf(use.team.className), left);
    totals.set(use.formula.text, line);
  }
  return [...totals].map(([formula, perClass]) => ({
    formula,
    millilitres: roundedUp(
      perClass.reduce((sum, volume) => sum + volume, 0),
      1,
    ),
    perClass: perClass.map((volume) => roundedUp(volume, 1)),
    vesselMl: vesselFor(Math.max(...perClass)),
  }));
}

function handledTotals(uses: readonly TeamUse[]): readonly HandledTotal[] {
  const totals = new Map<string, HandledTotal>();
  for (const { formula, handled } of uses) {
    if (!handled) continue;
    const key = JSON.stringify([formula.text, handled]);
    const teams = (totals.get(key)?.teams ?? 0) + 1;
    totals.set(key, { ...handled, formula: formula.text, teams });
  }
  return [...totals.values()];
}

function balanceNeed(uses: readonly TeamUse[], shelf: Shelf): BalanceNeed | undefined {
  const masses = uses.flatMap(({ weighings }) => weighings);
  if (masses.length === 0) return undefined;
  const teamsAtOnce = Math.max(
    ...classesOf(uses.filter(({ weighings }) => weighings.length > 0).map(({ team }) => team)).map(
      ({ teams }) => teams,
    ),
  );
  const shown = (mass: number) => Number(mass.toFixed(Math.max(0, Math.round(-Math.log10(shelf.balanceReadabilityG)))));
  return {
    weighings: masses.length,
    smallestG: shown(Math.min(...masses)),
    largestG: shown(Math.max(...masses)),
    readabilityG: shelf.balanceReadabilityG,
    maxG: shelf.balanceMaxG,
    balances: Math.ceil(teamsAtOnce / teamsPerBalance),
  };
}
