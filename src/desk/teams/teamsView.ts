import { classesInFile } from '../classes/classesInFile.ts';
import type { Book } from '../file/book.ts';
import { planOf } from '../lesson/planInFile.ts';
import { done, type Outcome } from '../outcome.ts';
import type { TeamsView } from '../views.ts';
import { deskWords } from '../words.ts';
import { absentKeys } from './absentKeys.ts';
import { membersView } from './membersView.ts';

/** Classes and teams as the Plan has them, with who is marked absent today and who is in each team. */
export function teamsView(book: Book): Outcome<TeamsView> {
  const plan = planOf(book, deskWords.teams.noLesson);
  if (!plan.ok) return plan;
  const { setup, teams } = plan.value.reading;
  const day = book.today;
  const absent = absentKeys(plan.value.reading, day);
  const cells = new Map<string, string>();
  for (const { reading } of classesInFile(book)) for (const { key, who } of reading?.blocks ?? []) cells.set(key, who);
  return done({
    classes: setup.classes.map(({ name }) => ({
      name,
      teams: teams
        .filter(({ className }) => className === name)
        .map(({ team, key }) => {
          const who = cells.get(key);
          return {
            team,
            key,
            absent: absent.includes(key),
            ...(who === undefined ? {} : { members: membersView(who, day) }),
          };
        }),
    })),
    day,
  });
}
