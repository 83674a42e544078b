import type { TeamPlan } from './setup.ts';

const practiceKey = /^practice-(\d+)$/i;

/**
 * Whether a line of the Plan, or the block with its key, is practice: the same lesson once more for whoever was absent or
 * wants another go. Its key alone says so, which no team's name becomes: a team that people call Practice is a team.
 */
export const isPractice = ({ key }: Pick<TeamPlan, 'key'>): boolean => practiceKey.test(key);

export const isTeam = (line: Pick<TeamPlan, 'key'>): boolean => !isPractice(line);

/** A key for one more practice, which none of these lines or blocks has had. */
export function freshPracticeKey(keys: Iterable<string>): string {
  const most = Math.max(0, ...[...keys].map((key) => Number(practiceKey.exec(key)?.[1] ?? 0)));
  return `practice-${most + 1}`;
}
