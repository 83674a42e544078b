import { isTeam } from '../../lab/lesson/practice.ts';
import type { ClassSetup, TeamPlan } from '../../lab/lesson/setup.ts';
import type { PlanReading } from '../../workbook/readLesson.ts';
import { plainName } from './plainName.ts';
import type { NamePair } from './questions.ts';

interface Pair<T> {
  readonly from: T;
  readonly to: T;
}

export interface Renamed {
  /** The Plan that is there, with the names that classes and teams are to have: keys say that they are the same. */
  readonly before: PlanReading;
  /** Names of which nobody can tell whether they were corrected. */
  readonly unsure: readonly NamePair[];
}

/**
 * Which classes and teams of the Plan go on under another name. The same letters in other case or spacing are plainly the
 * same; any other pair is asked about, unless `isSame` says already what the teacher answered or that nothing hangs on it.
 */
export function renamed({
  before,
  classes,
  isSame,
}: {
  readonly before: PlanReading;
  readonly classes: readonly ClassSetup[];
  /** Undefined where it has to be asked; the keys are those of the teams that are gone. */
  readonly isSame: (keys: readonly string[]) => boolean | undefined;
}): Renamed {
  const unsure: NamePair[] = [];
  const names = new Map<string, Pick<TeamPlan, 'className' | 'team'>>();
  const linesOf = (className: string) => before.teams.filter((line) => line.className === className);
  const old = [...new Set(before.teams.map(({ className }) => className))];
  const wanted = classes.map(({ name }) => name);
  const decide = (pair: NamePair, lines: readonly TeamPlan[]): boolean => {
    const same = isSame(lines.map(({ key }) => key));
    if (same === undefined) unsure.push(pair);
    return same === true;
  };
  for (const { from, to, isPlain } of pairsOf(old, wanted)) {
    const lines = linesOf(from);
    if (!isPlain && !decide({ kind: 'class', from, to, className: to }, lines)) continue;
    const teams = classes.find(({ name }) => name === to)?.teams ?? [];
    for (const { key, team } of lines) names.set(key, { className: to, team });
    for (const pair of pairsOf(
      lines.filter(isTeam).map(({ team }) => team),
      teams,
    )) {
      const ofTeam = lines.filter((line) => isTeam(line) && line.team === pair.from);
      if (pair.isPlain || decide({ kind: 'team', from: pair.from, to: pair.to, className: to }, ofTeam))
        for (const { key } of ofTeam) names.set(key, { className: to, team: pair.to });
    }
  }
  return { unsure, before: { ...before, teams: before.teams.map((line) => ({ ...line, ...names.get(line.key) })) } };
}

/** Names that stay, then those that differ in case or spacing only, then what is gone beside what is new, in their order. */
function pairsOf(
  old: readonly string[],
  wanted: readonly string[],
): readonly (Pair<string> & { readonly isPlain: boolean })[] {
  const pairs: (Pair<string> & { readonly isPlain: boolean })[] = [];
  let from = [...old];
  let to = [...wanted];
  const take = (isPair: (one: string, other: string) => boolean, isPlain: boolean): void => {
    for (const one of from.slice()) {
      const other = to.find((name) => isPair(one, name));
      if (other === undefined) continue;
      pairs.push({ from: one, to: other, isPlain });
      from = from.filter((name) => name !== one);
      to = to.filter((name) => name !== other);
    }
  };
  take((one, other) => one === other, true);
  take((one, other) => plainName(one) === plainName(other), true);
  take(() => true, false);
  return pairs;
}
