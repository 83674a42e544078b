import { lessonActivity } from '../../lab/lesson/lessonActivity.ts';
import { isPractice, isTeam } from '../../lab/lesson/practice.ts';
import { extensionGiven, ownHelpGiven } from '../../lab/lesson/teamColumns.ts';
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
  const { settings } = setup;
  return done({
    lessonHelp: {
      level: settings['highest help level'],
      suggestion: lessonActivity(settings)?.extension ?? '',
    },
    classes: setup.classes.map(({ name }) => ({
      name,
      practice: teams.filter((line) => isPractice(line) && line.className === name).map(({ team }) => team),
      teams: teams
        .filter((line) => isTeam(line) && line.className === name)
        .map(({ team, key, givens }) => {
          const who = cells.get(key);
          return {
            team,
            key,
            absent: absent.includes(key),
            help: { level: givens[ownHelpGiven] ?? '', extension: givens[extensionGiven] ?? '' },
            ...(who === undefined ? {} : { members: membersView(who, day) }),
          };
        }),
    })),
    day,
  });
}
