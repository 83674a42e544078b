import { lessonActivity } from '../../lab/lesson/lessonActivity.ts';
import { isPractice, isTeam } from '../../lab/lesson/practice.ts';
import { extensionGiven, ownHelpGiven } from '../../lab/lesson/teamColumns.ts';
import { classesInFile } from '../classes/classesInFile.ts';
import { classesInUse } from '../classes/classesInUse.ts';
import type { Book } from '../file/book.ts';
import { lessonsInUse } from '../lesson/lessonsInFile.ts';
import { planOf } from '../lesson/planInFile.ts';
import { done, type Outcome, problem } from '../outcome.ts';
import type { TeamsView } from '../views.ts';
import { deskWords } from '../words.ts';
import { absentKeys } from './absentKeys.ts';
import { membersView } from './membersView.ts';

/** Classes and teams as the Plan has them, with who is marked absent today and who is in each team. */
export function teamsView(book: Book): Outcome<TeamsView> {
  const lessons = lessonsInUse(book);
  if (lessons.length === 0) return problem({ ...deskWords.teams.noLesson });
  const classes: TeamsView['classes'][number][] = [];
  const inUse = classesInUse(book);
  for (const { id, book: limited } of lessons) {
    const names = inUse.filter(({ lesson }) => lesson.id === id).map(({ name }) => name);
    const own = teamsOfLesson(limited);
    if (!own.ok) return own;
    classes.push(...own.value.filter(({ name }) => names.includes(name)));
  }
  return done({ classes, day: book.today });
}

function teamsOfLesson(book: Book): Outcome<TeamsView['classes']> {
  const plan = planOf(book, deskWords.teams.noLesson);
  if (!plan.ok) return plan;
  const { setup, teams } = plan.value.reading;
  const day = book.today;
  const absent = absentKeys(plan.value.reading, day);
  const cells = new Map<string, string>();
  for (const { reading } of classesInFile(book)) for (const { key, who } of reading?.blocks ?? []) cells.set(key, who);
  const { settings } = setup;
  const lessonHelp = {
    level: settings['highest help level'],
    suggestion: lessonActivity(settings)?.extension ?? '',
  };
  return done(
    setup.classes.map(({ name }) => ({
      lessonHelp,
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
  );
}
