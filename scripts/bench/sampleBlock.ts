import { activityById } from '../../src/lab/lesson/activities.ts';
import { sampleLesson } from '../../src/lab/lesson/sampleLesson.ts';
import { numbersForTeams } from '../../src/lab/numbers/numbersForTeams.ts';

/** What one cell of the sample's class sheet hands to CHECKTEAM: a team that has filled in every row. */
export function sampleBlock(): unknown[] {
  const { setup, entries } = sampleLesson();
  const activity = activityById(setup.activity);
  const numbers = numbersForTeams(setup);
  const team = numbers.ok ? numbers.value.teams[0] : undefined;
  if (!activity || !team) throw new Error('The sample has no team.');
  const own = entries.filter(({ className, team: name }) => className === team.className && name === team.team);
  const entryOf = (id: string) => own.find(({ step }) => step === id)?.entry ?? '';
  const names = activity.givens.map(({ name }) => name);
  const block = (first: string, cells: readonly string[]) => [[first], ...cells.map((cell) => [cell]), ['']];
  return [
    [names],
    [names.map((name) => team.givens[name] ?? '')],
    Object.entries(setup.settings),
    block(
      '',
      activity.steps.map(({ id }) => id),
    ),
    block(
      'entry',
      activity.steps.map(({ id }) => entryOf(id)),
    ),
  ];
}
