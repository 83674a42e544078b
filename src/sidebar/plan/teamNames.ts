import { texts } from '../texts.ts';

export const mostTeams = 40;
export const teamsToStart = 6;

/** The names of a field with one name on each line. */
export const teamNames = (typed: string): readonly string[] =>
  typed
    .split('\n')
    .map((line) => line.trim().replace(/\s+/g, ' '))
    .filter((line) => line !== '');

/** Names for so many teams: those typed first, then those set aside, then ones of our own that are not yet taken. */
export function namesForCount(
  count: number,
  typed: readonly string[],
  setAside: readonly string[] = [],
): readonly string[] {
  const names = typed.slice(0, count);
  const fresh = [
    ...setAside,
    ...texts.plan.teamNamesToStart,
    ...Array.from({ length: mostTeams }, (_, index) => texts.plan.teamNumber(index + 1)),
  ];
  for (const name of fresh) {
    if (names.length >= count) break;
    if (!names.includes(name)) names.push(name);
  }
  return names;
}
