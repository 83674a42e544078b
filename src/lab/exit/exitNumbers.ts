import { readQuantity } from '../../measurement/readQuantity.ts';
import { withDecimalMark } from '../../measurement/withDecimalMark.ts';
import type { Activity, CalculatedStep } from '../lesson/activity.ts';
import { decimalMarkOf } from '../lesson/lessonSettings.ts';
import type { TeamPlan } from '../lesson/setup.ts';
import { confusions, type StepReady } from '../numbers/confusions.ts';
import { isSame } from '../numbers/isSame.ts';
import { mostFigures, plainText } from '../numbers/nearbyNumbers.ts';
import { type Random, seededRandom } from '../numbers/seededRandom.ts';
import { exitMolarity, exitStep, exitStepId, exitVolume } from './exitStep.ts';
import { type ExitLesson, readyExit } from './readyExit.ts';

/** Volumes that are made up to a mark, and portions that are taken (common practice, no source). */
const flasksMl = [50, 100, 200, 250, 500];
const portionsMl = [2, 5, 10, 15, 20, 25, 50];
/** Sets that are compared for the slips that they hide; of a good many the first that hides none is taken. */
const compared = 12;

/** How far from the number that it starts from a molarity lies, as shares of it. */
const reach = { 'stock volume': { least: 0.15, most: 0.6 }, other: { least: 0.5, most: 1 } } as const;

/** Numbers of a given of the team in the unit of its column; undefined where it cannot be read. */
function numberOf(name: string | undefined, kind: 'concentration' | 'volume', team: TeamPlan, around: ExitLesson) {
  if (name === undefined) return undefined;
  const read = readQuantity(team.givens[name], kind, name, { decimalMark: decimalMarkOf(around.settings) });
  return read.ok ? { value: read.value.value, figures: read.value.figures } : undefined;
}

const givenIn = (takes: CalculatedStep['takes'] | undefined, name: string): string | undefined => {
  const source = takes?.[name];
  return source && 'given' in source ? source.given : undefined;
};

/** The lesson's own row that is asked once more, from which the numbers do not stray far. */
const likeIt = ({ steps }: Activity, quantity: CalculatedStep['quantity']): CalculatedStep | undefined =>
  steps.find((step): step is CalculatedStep => step.kind === 'calculated' && step.quantity === quantity);

/** Molarities and volumes that a question may have for this team; none where the team's own cannot be read. */
function choices(step: CalculatedStep, team: TeamPlan, around: ExitLesson) {
  const like = likeIt(around.activity, step.quantity)?.takes;
  const isDiluted = step.quantity === 'diluted molarity';
  const start = {
    'stock volume': givenIn(step.takes, 'stock molarity'),
    'diluted molarity': givenIn(like, 'stock molarity'),
  }[step.quantity as 'stock volume' | 'diluted molarity'];
  const anyMolarity = around.activity.givens.find(({ unit }) => unit === 'mol/L')?.name;
  const from = numberOf(start ?? givenIn(like, 'molarity') ?? anyMolarity, 'concentration', team, around);
  if (from === undefined || !(from.value > 0)) return { molarities: [], volumes: [] };
  const { least, most } = step.quantity === 'stock volume' ? reach['stock volume'] : reach.other;
  const figures = Math.min(Math.max(from.figures, 2), mostFigures);
  const flask = isDiluted ? (numberOf(givenIn(like, 'final volume'), 'volume', team, around)?.value ?? 0) : Infinity;
  const own = around.activity.givens
    .filter(({ unit }) => unit === 'mL' || unit === 'mol/L')
    .flatMap(({ name, unit }) => {
      const read = numberOf(name, unit === 'mL' ? 'volume' : 'concentration', team, around);
      return read ? [read.value] : [];
    });
  const isNew = (value: number): boolean => !own.some((other) => isSame(other, value));
  return {
    molarities: between(least * from.value, most * from.value, figures).filter(([value]) => isNew(value)),
    volumes: (isDiluted ? portionsMl : flasksMl).filter((value) => isNew(value) && value <= flask / 2),
  };
}

/** Numbers with so many figures between two others, the third figure 0 or 5, each with its text. */
function between(least: number, most: number, figures: number): readonly (readonly [number, string])[] {
  const place = Math.floor(Math.log10(most)) - figures + 1;
  const step = figures === mostFigures ? 5 : 1;
  const found: (readonly [number, string])[] = [];
  for (let count = Math.ceil(least / 10 ** place / step); count * step * 10 ** place <= most; count += 1) {
    const value = Number(`${count * step}e${place}`);
    const words = plainText(value, figures);
    if (words !== undefined) found.push([value, words]);
  }
  return found;
}

const pick = <T>(items: readonly T[], random: Random): T | undefined => items[Math.floor(random() * items.length)];

/**
 * Numbers for one seat: the same for the same seed, key and seat, near those of the team and none of them, and such that
 * known slips can be told apart as far as a dozen tries go.
 */
function drawn(
  step: CalculatedStep,
  {
    seat,
    team,
    taken,
    enough,
  }: {
    readonly seat: number;
    readonly team: TeamPlan;
    readonly taken: readonly string[];
    /** Hidden slips that no other numbers of this lesson fall below, as far as is known. */
    readonly enough: number;
  },
  around: ExitLesson,
): Drawn | undefined {
  const random = seededRandom(`${around.settings.seed} ${team.key} ${step.id}`);
  const { molarities, volumes } = choices(step, team, around);
  let best: Drawn | undefined;
  let ready: StepReady | undefined;
  for (let tries = 0; tries < compared && (best?.hidden ?? Infinity) > enough; tries += 1) {
    const molarity = pick(molarities, random);
    const volume = pick(volumes, random);
    if (molarity === undefined || volume === undefined) return undefined;
    const numbers = {
      [exitMolarity(seat)]: withDecimalMark(molarity[1], decimalMarkOf(around.settings)),
      [exitVolume(seat)]: String(volume),
    };
    if (taken.includes(JSON.stringify(Object.values(numbers)))) continue;
    ready ??= readyExit(step, { ...team.givens, ...numbers }, around);
    if (ready === undefined) return undefined;
    const hidden = confusions([ready], { [exitMolarity(seat)]: molarity[0], [exitVolume(seat)]: volume }).length;
    if (best === undefined || hidden < best.hidden) best = { numbers, hidden };
  }
  return best;
}

interface Drawn {
  readonly numbers: Readonly<Record<string, string>>;
  readonly hidden: number;
}

/**
 * Teams with numbers for their exit questions. Those that a team has already stay, edits by hand included, unless the
 * question can no longer be worked with them.
 */
export function withExitNumbers(
  teams: readonly TeamPlan[],
  { seats, ...around }: ExitLesson & { readonly seats: number },
): readonly TeamPlan[] {
  if (seats === 0) return teams;
  let enough = 0;
  return teams.map((team) => {
    const own: Record<string, string> = {};
    const taken: string[] = [];
    for (let seat = 1; seat <= seats; seat += 1) {
      const step = exitStep(around.activity, exitStepId(seat));
      if (step === undefined) continue;
      const names = [exitMolarity(seat), exitVolume(seat)];
      const isThere =
        names.every((name) => (team.givens[name] ?? '') !== '') && readyExit(step, team.givens, around) !== undefined;
      const found = isThere ? undefined : drawn(step, { seat, team, taken, enough }, around);
      // A substance may hide some slips in all numbers: those that the first dozen could not do without.
      enough = Math.max(enough, found?.hidden ?? 0);
      for (const name of names) own[name] = found?.numbers[name] ?? team.givens[name] ?? '';
      taken.push(JSON.stringify(names.map((name) => own[name])));
    }
    return { ...team, givens: { ...team.givens, ...own } };
  });
}
