import { deskWords } from '../words.ts';

/** Names for new teams: the first ones of our list that nobody has yet, and numbers after those. */
export function freshTeamNames(count: number, taken: Iterable<string> = []): readonly string[] {
  const used = new Set([...taken].map((name) => name.toLowerCase()));
  const names: string[] = [];
  const offer = (name: string) => {
    if (names.length >= count || used.has(name.toLowerCase())) return;
    used.add(name.toLowerCase());
    names.push(name);
  };
  for (const name of deskWords.teamNamesToStart) offer(name);
  for (let number = 1; names.length < count; number += 1) offer(deskWords.teamNumber(number));
  return names;
}
