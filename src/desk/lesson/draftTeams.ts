import { activityById } from '../../lab/lesson/activities.ts';
import { numbersForTeams } from '../../lab/numbers/numbersForTeams.ts';
import { keptTeams } from '../../workbook/keptTeams.ts';
import type { Book } from '../file/book.ts';
import { done, numbersProblem, type Outcome } from '../outcome.ts';
import type { DraftView } from '../views.ts';
import { planInFile } from './planInFile.ts';
import { readSetup } from './readSetup.ts';

/** The numbers that a build would put into the Plan, and what had to be given up. Nothing is written. */
export function draftTeams(book: Book, given: unknown): Outcome<DraftView> {
  const setup = readSetup(given);
  if (!setup.ok) return setup;
  const numbers = numbersForTeams(setup.value);
  if (!numbers.ok) return numbersProblem(numbers.error);
  const plan = planInFile(book);
  const before = plan.state === 'there' ? plan.reading : undefined;
  return done({
    givenNames: (activityById(setup.value.activity)?.givens ?? []).map(({ name }) => name),
    teams: keptTeams({ drafted: numbers.value.teams, before, setup: setup.value }),
    remarks: numbers.value.remarks,
  });
}
