import type { JudgedRow } from '../judging/judgedRow.ts';
import { judgeTeam } from '../judging/judgeTeam.ts';
import type { Settings, TeamPlan } from '../lesson/setup.ts';

/**
 * A team's answers to its exit questions as its rows will judge them, also while the sheet keeps them: what the teacher
 * may know before the students do.
 *
 * @param answers - Entries by step id.
 */
export function exitOutcomes(
  { givens }: Pick<TeamPlan, 'givens'>,
  { settings, answers }: { readonly settings: Settings; readonly answers: Readonly<Record<string, string>> },
): readonly Pick<JudgedRow, 'status' | 'slips'>[] {
  const names = Object.keys(givens);
  const steps = Object.keys(answers);
  return judgeTeam({
    givenNames: names,
    givenValues: names.map((name) => givens[name]),
    settings: Object.entries({ ...settings, 'show exit checks': 'yes' }),
    steps,
    entries: steps.map((id) => answers[id]),
  });
}
