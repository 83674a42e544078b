import { decimalMarkOf } from '../../lab/lesson/lessonSettings.ts';
import type { Book } from '../file/book.ts';
import { done, type Outcome } from '../outcome.ts';
import type { NumbersView } from '../views.ts';
import { firstSetup } from './firstSetup.ts';
import { planInFile } from './planInFile.ts';

/** Every team's numbers as the Plan has them now, and those that the plan starts from. */
export function numbersView(book: Book): Outcome<NumbersView> {
  const plan = planInFile(book);
  if (plan.state === 'unreadable') return { ok: false, problem: plan.problem };
  const setup = plan.state === 'there' ? plan.reading.setup : firstSetup(book.decimalMark);
  return done({
    activity: setup.activity,
    decimalMark: decimalMarkOf(setup.settings),
    typical: setup.givens,
    teams: plan.state === 'there' ? plan.reading.teams : [],
  });
}
