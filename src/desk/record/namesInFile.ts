import { isTeam } from '../../lab/lesson/practice.ts';
import { roles } from '../../lab/lesson/roles.ts';
import { readMembers } from '../../lab/members/readMembers.ts';
import { classesOfLessons } from '../classes/classesInUse.ts';
import type { Book } from '../file/book.ts';
import { lessonsInUse } from '../lesson/lessonsInFile.ts';
import { planInFile } from '../lesson/planInFile.ts';

/** Names that stand in this file: of teams and the people in them, and what people typed in the column “who” besides the roles. */
export function namesInFile(book: Book): readonly string[] {
  const names = new Set<string>();
  const known: readonly string[] = roles;
  for (const { book: limited } of lessonsInUse(book)) {
    const plan = planInFile(limited);
    if (plan.state === 'there') for (const { team } of plan.reading.teams.filter(isTeam)) names.add(team);
  }
  for (const { reading } of classesOfLessons(book)) {
    for (const { who: team, steps } of reading?.blocks ?? []) {
      for (const { name } of readMembers(team).members) names.add(name);
      for (const { who } of steps) if (who !== '' && !known.includes(who)) names.add(who);
    }
  }
  return [...names];
}
