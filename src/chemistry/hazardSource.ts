import { hazardSources } from './hazardSources.generated.ts';

/** What stands behind the hazards of a listed substance. For the teacher: long, and with doubts. */
export interface HazardSource {
  readonly name: string;
  /** Where its codes come from, what contradicts them and what is from memory. */
  readonly source: string;
  /** Where it goes after staff have treated it, and who says so. */
  readonly drain: string;
  readonly handling: string;
}

/** By the name in the list of substances; undefined for a name that is not in it. */
export function hazardSource(name: string): HazardSource | undefined {
  const line = hazardSources.split('\n').find((candidate) => candidate.startsWith(`${name}|`));
  if (line === undefined) return undefined;
  const [, source = '', drain = '', handling = ''] = line.split('|');
  return { name, source, drain, handling };
}
