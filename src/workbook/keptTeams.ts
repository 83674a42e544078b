import { isPractice, isTeam } from '../lab/lesson/practice.ts';
import type { Setup, TeamPlan } from '../lab/lesson/setup.ts';
import { extensionGiven, ownHelpGiven } from '../lab/lesson/teamColumns.ts';
import { practiceNumbers } from '../lab/numbers/practiceNumbers.ts';
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
  const same = (one: TeamPlan) => (other: TeamPlan) =>
    isTeam(other) && one.className === other.className && one.team === other.team;
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
  // Help and a task of a team's own are about its people and not about its numbers.
  const ofPeople = ({ givens }: TeamPlan) =>
    Object.fromEntries(
      [ownHelpGiven, extensionGiven].filter((name) => name in givens).map((name) => [name, givens[name] ?? '']),
    );
  const kept: TeamPlan[] = [];
  for (const line of before.teams) {
    const wanted = isPractice(line) ? practiceAgain(line) : drafted.find(same(line));
    if (wanted !== undefined) {
      const givens = keepNumbers ? line.givens : { ...wanted.givens, ...ofPeople(line) };
      kept.push({ ...wanted, key: line.key, givens });
    }
  }
  /** Practice stays with its class, with fresh numbers where all teams get new ones. */
  function practiceAgain(line: TeamPlan): TeamPlan | undefined {
    const { className } = line;
    if (!setup.classes.some(({ name }) => name === className)) return undefined;
    if (keepNumbers) return line;
    const taken = [...drafted, ...kept.filter(isPractice)].filter((team) => team.className === className);
    const numbers = practiceNumbers(setup, { className, taken: taken.map(({ givens }) => givens) });
    return numbers.ok ? { ...line, givens: numbers.value.givens } : line;
  }
  const added = drafted.filter((team) => !before.teams.some(same(team)));
  return [...kept, ...added.map((team) => ({ ...team, key: freshKey(team) }))];
}
