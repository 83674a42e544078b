import type { Step } from '../../src/lab/activity.ts';
import { checkReadyStep } from '../../src/lab/checkStep.ts';
import { judgeTeam } from '../../src/lab/judgeTeam.ts';
import type { JudgedRow } from '../../src/lab/judging/judgedRow.ts';
import { recipeOf } from '../../src/lab/numbers/recipeOf.ts';
import { type Random, seededRandom } from '../../src/lab/seededRandom.ts';
import type { SlipId } from '../../src/lab/texts/feedback.ts';
import { spanOver } from '../../src/lab/worked.ts';
import { type DealtTeam, dealtTeams } from './dealtTeams.ts';
import { otherEntry } from './otherEntry.ts';
import { readingOff, rightEntry, stepOfTeam, type TeamSoFar } from './rightEntry.ts';
import { count, findSlips, randomNumber, type Share, type SlipShare, share, slipLines } from './simulation.ts';
import { placeOf, typedTo } from './typing.ts';

/** A slip that takes a number of another row or of another part of the lesson. */
interface ActivitySlipShare {
  readonly id: SlipId;
  readonly named: Share;
  readonly alone: Share;
  /** Numbers for which it gives an answer that is right or close. */
  hidden: number;
  /** Random wrong numbers in its rows that it is named for, by the figures typed. */
  readonly accused: Readonly<Record<2 | 3 | 4, Share>>;
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
}

const figuresTyped = [2, 3, 4] as const;
/** Random numbers of each length in a row of such a slip: there are few such rows, and chance hits are rare. */
const triesInRow = 6;
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
    settings: [['activity', activity.id]],
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

/** What an activity's own slips give in a row of a team that weighed far from its plan. */
function wrongEntries(step: Step, { activity, givens, entries }: TeamSoFar): readonly (readonly [SlipId, string])[] {
  if (step.kind !== 'calculated') return [];
  const { numbers } = activity;
  const recipe = recipeOf(activity);
  const { mass } = step.takes;
  const three = (value: number) => typedTo(value, placeOf(value, 3));
  if (step.quantity === 'molarity' && mass && 'entryOf' in mass) {
    const planned = givens[recipe?.takes[recipe.entry.startsFrom] ?? ''];
    return planned === undefined ? [] : [['planned-for-made', planned]];
  }
  if (step.quantity === 'reagent molarity' && numbers.recipe === 'portion for density') {
    return [['planned-for-made', givens[numbers.takes.molarity] ?? '']];
  }
  if (step.quantity === 'moles of solute' && entries['mass of solute'] !== undefined) {
    return [['mass-reported', entries['mass of solute']]];
  }
  if (step.quantity === 'dilution factor' && numbers.recipe === 'solid, then a dilution') {
    const ratio = Number(givens[numbers.takes.flask]) / Number(givens[numbers.takes.volume]);
    return [
      ['flasks-compared', three(ratio)],
      ['flasks-compared', three(1 / ratio)],
    ];
  }
  return [];
}

const lineFor = (lines: ActivitySlipShare[], id: SlipId): ActivitySlipShare => {
  const known = lines.find((line) => line.id === id);
  if (known) return known;
  const fresh = { id, named: share(), alone: share(), hidden: 0, accused: { 2: share(), 3: share(), 4: share() } };
  lines.push(fresh);
  return fresh;
};

/** Makes each slip of the activity itself in its row, and puts random wrong numbers there. */
function findActivitySlips(
  { activity, givens }: DealtTeam,
  { lines, random }: { readonly lines: ActivitySlipShare[]; readonly random: Random },
): void {
  const entries = goneThrough({ activity, givens }, { readings: off });
  for (const step of activity.steps) {
    const row = (entry: string) => judged({ activity, givens, entries: { ...entries, [step.id]: entry } })[step.id];
    const wrong = wrongEntries(step, { activity, givens, entries });
    for (const [id, entry] of wrong) {
      const line = lineFor(lines, id);
      const found = row(entry);
      if (found?.status !== 'not yet') {
        line.hidden += 1;
        continue;
      }
      count(line.named, found.slips.includes(id));
      count(line.alone, found.slips.length === 1 && found.slips[0] === id);
    }
    const [slip] = wrong;
    if (slip === undefined) continue;
    for (const figures of figuresTyped) {
      for (let more = 0; more < triesInRow; more += 1) {
        const found = row(randomNumber(random, { near: Number(entries[step.id]), figures }));
        if (found?.status === 'not yet') count(lineFor(lines, slip[0]).accused[figures], found.slips.includes(slip[0]));
      }
    }
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
    for (const step of activity.steps) {
      if (step.kind === 'told') continue;
      rows += 1;
      const told = `${activity.id}: ${Object.values(givens).join(' ')}: ${step.id}`;
      if (found[step.id]?.status !== 'on target') notOnTarget.push(`${told} ${entries[step.id]}`);
      const spared = sparing[step.id]?.status;
      if (spared !== 'on target' && spared !== 'close') spareDigits.push(`${told}: ${spared}`);
      if (step.kind !== 'calculated') continue;
      const ready = stepOfTeam(step, { activity, givens, entries });
      if (!slips.some(({ quantity }) => quantity === step.quantity)) slips.push(...slipLines([step.quantity]));
      findSlips({ step: ready, check: (entry) => checkReadyStep(ready, entry), random, lines: slips });
      for (const figures of figuresTyped) {
        for (let more = 0; more < triesInBlock; more += 1) {
          const entry = randomNumber(random, { near: Number(entries[step.id]) || 1, figures });
          const wrong = judged({ activity, givens, entries: { ...entries, [step.id]: entry } })[step.id];
          if (wrong?.status === 'not yet') count(accused[figures], wrong.slips.length > 0);
        }
      }
    }
    findActivitySlips(team, { lines: activitySlips, random });
  }
  const activities = new Set(dealt.map(({ activity }) => activity.id)).size;
  return { teams: dealt.length, activities, slips, activitySlips, rows, notOnTarget, spareDigits, accused };
}
