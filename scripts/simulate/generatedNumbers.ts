import type { JudgedRow } from '../../src/lab/judging/judgedRow.ts';
import { judgeTeam } from '../../src/lab/judging/judgeTeam.ts';
import { slipSpans } from '../../src/lab/judging/slipsFound.ts';
import { spanOver } from '../../src/lab/judging/worked.ts';
import type { Activity, CalculatedStep, Step } from '../../src/lab/lesson/activity.ts';
import { recipeNumbers } from '../../src/lab/numbers/recipeNumbers.ts';
import { recipeOf } from '../../src/lab/numbers/recipeOf.ts';
import { type Random, seededRandom } from '../../src/lab/numbers/seededRandom.ts';
import type { SlipId } from '../../src/lab/texts/feedback.ts';
import { layoutVersion } from '../../src/workbook/layout.ts';
import { type DealtTeam, dealtTeams } from './dealtTeams.ts';
import { otherEntry } from './otherEntry.ts';
import { readingOff, rightEntry, stepOfTeam, type TeamSoFar } from './rightEntry.ts';
import {
  count,
  countNear,
  findSlips,
  numberNear,
  randomNumber,
  type Share,
  type SlipShare,
  share,
  shareIn,
  slipLines,
} from './simulation.ts';
import { placeOf, typedTo } from './typing.ts';

/** A slip that takes a number of another row or of another part of the lesson. */
interface ActivitySlipShare {
  readonly quantity: string;
  readonly id: SlipId;
  readonly named: Share;
  /** Of those that no slip of the quantity gives the same figures for. */
  readonly alone: Share;
  /** Numbers for which it gives an answer that is right or close. */
  hidden: number;
  /** Random numbers near the answer, to three figures, that it is named for. */
  readonly accused: Share;
}

export interface GeneratedFindings {
  readonly teams: number;
  readonly activities: number;
  readonly slips: readonly SlipShare[];
  readonly activitySlips: readonly ActivitySlipShare[];
  readonly rows: number;
  /** Right entries, each worked from what was typed above, that are not on target. */
  readonly notOnTarget: readonly string[];
  /** Right entries that were worked with every digit kept and typed at the end which are below close. */
  readonly spareDigits: readonly string[];
  /** Random wrong numbers in any calculated row, judged in the whole block, that some slip is named for. */
  readonly accused: Readonly<Record<2 | 3 | 4, Share>>;
  /** The same for numbers near the answer to three figures, by quantity. */
  readonly accusedNear: ReadonlyMap<string, Share>;
}

const figuresTyped = [2, 3, 4] as const;
/** Random numbers near the answer in each row: chance hits are rare. */
const triesInRow = 20;
/** Random numbers of each length in any calculated row: a share near one in a hundred takes many to be seen. */
const triesInBlock = 3;

/** Above or below the plan by less than any bench allows, and by so much that the plan can be told from it. */
const careful = 0.003;
const off = 0.06;

/** The block of a team, judged as its sheet does it. */
function judged({ activity, givens, entries }: TeamSoFar): Readonly<Record<string, JudgedRow>> {
  const rows = judgeTeam({
    givenNames: Object.keys(givens),
    givenValues: Object.values(givens),
    settings: [
      ['activity', activity.id],
      ['layout', String(layoutVersion)],
    ],
    steps: activity.steps.map(({ id }) => id),
    entries: activity.steps.map(({ id }) => entries[id] ?? ''),
  });
  return Object.fromEntries(rows.map((row, at) => [activity.steps[at]?.id ?? '', row]));
}

/** Right entries from top to bottom, readings off by a share; `kept` works every row from unrounded rows above. */
function goneThrough(
  { activity, givens }: DealtTeam,
  { readings, kept = false }: { readonly readings: number; readonly kept?: boolean },
): Readonly<Record<string, string>> {
  const entries: Record<string, string> = {};
  const unrounded: Record<string, string> = {};
  for (const step of activity.steps) {
    if (step.kind === 'calculated') {
      const ready = stepOfTeam(step, { activity, givens, entries: kept ? unrounded : entries });
      entries[step.id] = rightEntry(ready);
      unrounded[step.id] = String(spanOver(ready, ready.quantity.relation).middle);
    } else if (step.kind === 'measured') {
      entries[step.id] = readingOff(step, readings, { activity, givens, entries });
      unrounded[step.id] = entries[step.id] ?? '';
    } else entries[step.id] = otherEntry(step, givens);
  }
  return entries;
}

/** The steps that a step is judged with: those it takes entries of, those it builds on, and theirs. */
function stepsBehind(step: Step, { steps }: Activity): readonly Step[] {
  const ids =
    step.kind === 'measured'
      ? typeof step.expects === 'string'
        ? [step.expects]
        : []
      : step.kind === 'calculated'
        ? [
            ...Object.values(step.takes).flatMap((source) => ('entryOf' in source ? [source.entryOf] : [])),
            ...Object.values(step.buildsOn),
          ]
        : [];
  const before = steps.filter(({ id }) => ids.includes(id));
  return [...new Set([...before.flatMap((one) => stepsBehind(one, { steps } as Activity)), step])];
}

/** One row of a team's block, judged with the rows that it depends on alone, which are all that count for it. */
function rowJudged(step: Step, { activity, givens, entries }: TeamSoFar): JudgedRow | undefined {
  return judged({ activity: { ...activity, steps: stepsBehind(step, activity) }, givens, entries })[step.id];
}

/** The numbers that a step could be worked from in place of its own: another given of the same unit that it has no use for. */
function withOtherGivens(
  step: CalculatedStep,
  { activity, givens }: TeamSoFar,
): readonly Readonly<Record<string, string>>[] {
  const own = Object.values(step.takes).flatMap((source) => ('given' in source ? [source.given] : []));
  const unitOf = (name: string) => activity.givens.find((given) => given.name === name)?.unit;
  return own.flatMap((name) =>
    activity.givens
      .filter((other) => other.unit !== '' && other.unit === unitOf(name) && !own.includes(other.name))
      .map((other) => ({ ...givens, [name]: givens[other.name] ?? '' })),
  );
}

/** How many dilutions lie between the stock and a step that goes on from the step before. */
function stageOf(step: CalculatedStep, { steps }: Activity): number {
  const source = step.takes['stock molarity'];
  const before = source && 'entryOf' in source ? steps.find(({ id }) => id === source.entryOf) : undefined;
  return before?.kind === 'calculated' && before.quantity === step.quantity
    ? 1 + stageOf(before, { steps } as Activity)
    : 1;
}

const takesOtherGivens = ['moles of solute', 'mass of solute', 'stock volume', 'diluted molarity', 'ion molarity'];

/** What an activity's own slips give in a row of a team that weighed far from its plan. */
function wrongEntries(step: Step, { activity, givens, entries }: TeamSoFar): readonly (readonly [SlipId, string])[] {
  if (step.kind !== 'calculated') return [];
  const recipe = recipeOf(activity);
  const given = (own: string | undefined) => givens[recipe?.takes[own ?? ''] ?? ''];
  const { mass } = step.takes;
  const three = (value: number) => typedTo(value, placeOf(value, 3));
  const wrong: (readonly [SlipId, string])[] = [];
  if (takesOtherGivens.includes(step.quantity)) {
    for (const others of withOtherGivens(step, { activity, givens, entries }))
      wrong.push(['other-given-used', rightEntry(stepOfTeam(step, { activity, givens: others, entries }))]);
  }
  if (step.quantity === 'molarity' && mass && 'entryOf' in mass) {
    const planned = given(recipe?.entry.startsFrom);
    if (planned !== undefined) wrong.push(['planned-for-made', planned]);
  }
  const { bottle, madeIn, dilutes } = recipe?.entry ?? {};
  const target = madeIn && given(dilutes?.target);
  if (step.quantity === 'diluted molarity' && target !== undefined) wrong.push(['planned-for-made', target]);
  const label = given(bottle);
  if (step.quantity === 'reagent molarity' && label !== undefined) wrong.push(['planned-for-made', label]);
  if (step.quantity === 'moles of solute' && entries['mass of solute'] !== undefined) {
    wrong.push(['mass-reported', entries['mass of solute']]);
  }
  if (step.quantity === 'dilution factor' && madeIn && dilutes) {
    const ratio = Number(given(madeIn)) / Number(given(dilutes.flask));
    wrong.push(['flasks-compared', three(ratio)], ['flasks-compared', three(1 / ratio)]);
  }
  const stage = stageOf(step, activity);
  if (recipe?.entry.isRow && stage > 1) {
    const values = Object.fromEntries(Object.entries(givens).map(([name, text]) => [name, Number(text)]));
    const first = recipe.entry.picture?.(recipeNumbers(recipe, values), { molarMass: Number.NaN, step: 1 });
    if (!first?.ok || !first.value.diluted) throw new Error(`${activity.id}: a row of flasks has no first flask`);
    wrong.push(['factors-added', three(first.value.diluted.molarity / stage)]);
  }
  return wrong;
}

const lineFor = (lines: ActivitySlipShare[], quantity: string, id: SlipId): ActivitySlipShare => {
  const known = lines.find((line) => line.id === id && line.quantity === quantity);
  if (known) return known;
  const fresh = { quantity, id, named: share(), alone: share(), hidden: 0, accused: share() };
  lines.push(fresh);
  return fresh;
};

interface Lines {
  readonly slips: SlipShare[];
  readonly activitySlips: ActivitySlipShare[];
  readonly accusedNear: Map<string, Share>;
  readonly random: Random;
}

/** Makes each slip of a row, those of the activity too, and puts random numbers near the answer there. */
function findRowSlips(
  step: CalculatedStep,
  team: TeamSoFar,
  { slips, activitySlips, accusedNear, random }: Lines,
): void {
  const { quantity } = step;
  const row = (entry: string): Pick<JudgedRow, 'status' | 'slips'> =>
    rowJudged(step, { ...team, entries: { ...team.entries, [step.id]: entry } }) ?? { status: '', slips: [] };
  const ready = stepOfTeam(step, team);
  const wrong = wrongEntries(step, team);
  if (!slips.some((line) => line.quantity === quantity)) slips.push(...slipLines([quantity]));
  findSlips({
    step: ready,
    check: (entry) => {
      const { status, slips: ids } = row(entry);
      return { status: status === '' ? 'blank' : status, slip: ids.join(' or ') };
    },
    random,
    lines: slips,
    more: wrong,
  });
  for (const [id, entry] of wrong) {
    const line = lineFor(activitySlips, quantity, id);
    const found = row(entry);
    // Where the planned value is another given too, the plan is named and the given is not.
    const isNamedOtherwise = id === 'other-given-used' && found.slips.includes('planned-for-made');
    if (found.status !== 'not yet' || isNamedOtherwise) {
      line.hidden += 1;
      continue;
    }
    count(line.named, found.slips.includes(id));
    const isTwin =
      wrong.some(([other, same]) => other !== id && Number(same) === Number(entry)) ||
      ready.quantity.slips.some((slip) =>
        slipSpans(ready, slip).some(({ middle }) => middle !== 0 && typedTo(middle, placeOf(middle, 3)) === entry),
      );
    if (!isTwin) count(line.alone, found.slips.length === 1);
  }
  for (let more = 0; more < triesInRow; more += 1) {
    countNear(row(numberNear(random, Number(team.entries[step.id]) || 1)), {
      lines: [...slips, ...activitySlips].filter((line) => line.quantity === quantity),
      all: shareIn(accusedNear, quantity),
    });
  }
}

/**
 * Teams of every activity with the numbers that plans give them: right entries, the slips of every calculated row, those
 * of the activities themselves, and random wrong numbers.
 *
 * @param teams - How many of each activity.
 */
export function simulateGenerated({ teams, seed }: { teams: number; seed: string }): GeneratedFindings {
  const random = seededRandom(seed);
  const dealt = dealtTeams({ teams, seed });
  const slips: SlipShare[] = [];
  const activitySlips: ActivitySlipShare[] = [];
  const notOnTarget: string[] = [];
  const spareDigits: string[] = [];
  const accused = { 2: share(), 3: share(), 4: share() };
  const accusedNear = new Map<string, Share>();
  let rows = 0;
  for (const team of dealt) {
    const { activity, givens } = team;
    const entries = goneThrough(team, { readings: (2 * random() - 1) * careful });
    const found = judged({ activity, givens, entries });
    const sparing = judged({
      activity,
      givens,
      entries: goneThrough(team, { readings: (2 * random() - 1) * careful, kept: true }),
    });
    // Slips are made by teams that weighed far from their plan, so that it can be told from what they made.
    const far = { activity, givens, entries: goneThrough(team, { readings: off }) };
    for (const step of activity.steps) {
      if (step.kind === 'told') continue;
      rows += 1;
      const told = `${activity.id}: ${Object.values(givens).join(' ')}: ${step.id}`;
      if (found[step.id]?.status !== 'on target') notOnTarget.push(`${told} ${entries[step.id]}`);
      const spared = sparing[step.id]?.status;
      if (spared !== 'on target' && spared !== 'close') spareDigits.push(`${told}: ${spared}`);
      if (step.kind !== 'calculated') continue;
      for (const figures of figuresTyped) {
        for (let more = 0; more < triesInBlock; more += 1) {
          const entry = randomNumber(random, { near: Number(entries[step.id]) || 1, figures });
          const wrong = rowJudged(step, { activity, givens, entries: { ...entries, [step.id]: entry } });
          if (wrong?.status === 'not yet') count(accused[figures], wrong.slips.length > 0);
        }
      }
      findRowSlips(step, far, { slips, activitySlips, accusedNear, random });
    }
  }
  const activities = new Set(dealt.map(({ activity }) => activity.id)).size;
  return {
    teams: dealt.length,
    activities,
    slips,
    activitySlips,
    rows,
    notOnTarget,
    spareDigits,
    accused,
    accusedNear,
  };
}
