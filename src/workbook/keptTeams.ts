import type { Setup, TeamPlan } from '../lab/lesson/setup.ts';
import type { PlanReading } from './readLesson.ts';

/** What numbers are made from: while none of it changes, lines of the Plan keep theirs, edits by hand included. */
function sameNumbersWanted(before: Setup, now: Setup): boolean {
  const key = ({ activity, givens, ownNumbers, settings, shelf }: Setup) =>
    JSON.stringify([
      activity,
      Object.keys(givens)
        .filter((name) => givens[name] !== '')
        .sort()
        .map((name) => [name, givens[name]]),
      ownNumbers,
      settings.seed,
      shelf.flasksMl,
      shelf.pipettesMl,
      shelf.balanceReadabilityG,
      shelf.balanceMaxG,
    ]);
  return key(before) === key(now);
}

/** Letters, digits and a hyphen: nothing that a lookup or a count reads as a pattern, and never a bare number. */
const plainKey = /^[a-z][a-z0-9-]*$/;

/**
 * The lines of a Plan that is built again. A team that the Plan has already keeps its key, its place and, while the same
 * numbers are wanted, its numbers; a new team comes after the others.
 */
export function keptTeams({
  drafted,
  before,
  setup,
  taken = [],
}: {
  drafted: readonly TeamPlan[];
  before: PlanReading | undefined;
  setup: Setup;
  /** Keys of teams of other lessons, which nobody else gets. */
  taken?: readonly string[];
}): readonly TeamPlan[] {
  const same = (one: TeamPlan) => (other: TeamPlan) => one.className === other.className && one.team === other.team;
  const usedKeys = [...(before?.teams ?? []).map(({ key }) => key), ...taken].map((key) => key.toLowerCase());
  const freshKey = ({ key, className }: TeamPlan): string => {
    if (plainKey.test(key) && !usedKeys.includes(key)) return claim(key);
    const classNumber = setup.classes.findIndex(({ name }) => name === className) + 1;
    for (let number = 1; ; number += 1) {
      const made = `c${classNumber}-t${number}`;
      if (!usedKeys.includes(made)) return claim(made);
    }
  };
  const claim = (key: string) => {
    usedKeys.push(key);
    return key;
  };
  if (before === undefined) return drafted.map((team) => ({ ...team, key: freshKey(team) }));

  const keepNumbers = sameNumbersWanted(before.setup, setup);
  const kept: TeamPlan[] = [];
  for (const line of before.teams) {
    const wanted = drafted.find(same(line));
    if (wanted !== undefined)
      kept.push({ ...wanted, key: line.key, givens: keepNumbers ? line.givens : wanted.givens });
  }
  const added = drafted.filter((team) => !before.teams.some(same(team)));
  return [...kept, ...added.map((team) => ({ ...team, key: freshKey(team) }))];
}
