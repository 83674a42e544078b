import { activityById } from '../../lab/activities.ts';
import { numbersForTeams } from '../../lab/numbersForTeams.ts';
import { keptTeams } from '../../workbook/keptTeams.ts';
import { planInUse } from '../build.ts';
import type { DraftView, Outcome } from '../calls.ts';
import { done, numbersProblem } from '../outcome.ts';
import { readSetup } from '../readSetup.ts';
import { openSpreadsheet } from '../spreadsheet.ts';

/** The numbers that a build would put into the Plan, and what had to be given up. Nothing is written. */
export function draftTeams(given: unknown): Outcome<DraftView> {
  const setup = readSetup(given);
  if (!setup.ok) return setup;
  const numbers = numbersForTeams(setup.value);
  if (!numbers.ok) return numbersProblem(numbers.error);
  const before = planInUse(openSpreadsheet());
  return done({
    givenNames: (activityById(setup.value.activity)?.givens ?? []).map(({ name }) => name),
    teams: keptTeams({ drafted: numbers.value.teams, before, setup: setup.value }),
    remarks: numbers.value.remarks,
  });
}
