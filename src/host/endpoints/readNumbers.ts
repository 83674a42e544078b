import { planInUse } from '../build.ts';
import type { NumbersView, Outcome } from '../calls.ts';
import { decimalMarkOf } from '../decimalMark.ts';
import { firstSetup } from '../firstSetup.ts';
import { done } from '../outcome.ts';
import { openSpreadsheet } from '../spreadsheet.ts';

/** Every team's numbers as the Plan has them now, and those that the plan starts from. Nothing is written. */
export function readNumbers(): Outcome<NumbersView> {
  const spreadsheet = openSpreadsheet();
  const plan = planInUse(spreadsheet);
  const setup = plan?.setup ?? firstSetup(decimalMarkOf(spreadsheet.getSpreadsheetLocale()));
  return done({
    activity: setup.activity,
    decimalMark: setup.settings['decimal mark'] === 'comma' ? 'comma' : 'point',
    typical: setup.givens,
    teams: plan?.teams ?? [],
  });
}
