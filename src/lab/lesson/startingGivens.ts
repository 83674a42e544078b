import type { Activity } from './activity.ts';

/** What a new plan of an activity starts from: every given by name, blank where the teacher has to say. */
export const startingGivens = ({ givens }: Activity): Readonly<Record<string, string>> =>
  Object.fromEntries(givens.map(({ name, start }) => [name, start ?? '']));
