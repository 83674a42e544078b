import { freshTeamNames } from '../../desk/lesson/freshTeamNames.ts';

export const mostTeams = 40;
export const teamsToStart = 6;

/** The names of a field with one name on each line. */
export const teamNames = (typed: string): readonly string[] =>
  typed
    .split('\n')
    .map((line) => line.trim().replace(/\s+/g, ' '))
    .filter((line) => line !== '');

/** Names for so many teams: those typed first, then those set aside, then ones of our own that no class has yet. */
export function namesForCount(
  count: number,
  { typed = [], setAside = [], taken = [] }: NamesThere = {},
): readonly string[] {
  const names = [...new Set([...typed, ...setAside])].slice(0, count);
  return [...names, ...freshTeamNames(count - names.length, [...names, ...taken])];
}

interface NamesThere {
  /** In this class. */
  readonly typed?: readonly string[];
  /** Taken off by a smaller number before. */
  readonly setAside?: readonly string[];
  /** In other classes. */
  readonly taken?: readonly string[];
}
