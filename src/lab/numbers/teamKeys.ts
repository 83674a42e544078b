import type { ClassSetup } from '../lesson/setup.ts';

export interface TeamPlace {
  readonly key: string;
  readonly className: string;
  readonly team: string;
}

/** Letters and digits of a name, joined by hyphens: it can be read, and never begins as a formula does. */
const plain = (name: string): string =>
  name
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '') || 'x';

/** A key of its own for every team, made from its names alone, so that adding a team changes no other key. */
export function teamKeys(classes: readonly ClassSetup[]): readonly TeamPlace[] {
  const taken = new Set<string>();
  return classes.flatMap(({ name, teams }) =>
    teams.map((team) => {
      const wanted = `${plain(name)}/${plain(team)}`;
      let key = wanted;
      for (let copy = 2; taken.has(key); copy += 1) key = `${wanted}-${copy}`;
      taken.add(key);
      return { key, className: name, team };
    }),
  );
}
