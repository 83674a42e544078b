import { decimalMarkOf } from '../../lab/lesson/lessonSettings.ts';
import { fold } from '../page/fold.ts';
import { texts } from '../texts.ts';
import type { PlanEditor } from './planEditor.ts';
import { type PlanFields, plainOptions } from './planFields.ts';
import { numberPart } from './readPlan.ts';

/** How entries are judged, and how much help a team may take. */
export function checksPart(editor: PlanEditor, fields: PlanFields): HTMLElement {
  const { plan } = texts;
  const { settings } = editor.draft;
  const exitChecks = fields.tick('show exit checks', plan.showExit, plan.showExitHint);
  const made = fold(
    plan.checks,
    fields.setting('figures', plan.figures, plainOptions('2', '3', '4', '5')),
    fields.tick('judge figures', plan.judgeFigures, plan.judgeFiguresHint),
    fields.setting(
      'highest help level',
      plan.helpLevel,
      plan.helpLevels.map((label, level) => ({ value: String(level), label })),
    ),
    fields.setting(
      'exit questions',
      plan.exitQuestions,
      plan.exitSeats.map((label, seats) => ({ value: String(seats), label })),
      plan.exitQuestionsHint,
    ),
    exitChecks,
    fields.number(
      'settings.allowance for technique',
      {
        label: plan.allowance,
        unit: '%',
        value: numberPart(settings['allowance for technique']),
        hint: plan.allowanceHint,
      },
      (value) => editor.putSetting('allowance for technique', `${value} %`),
    ),
    fields.setting('atomic-weight decimals', plan.weightDecimals, plainOptions('1', '2', '3', '4')),
    fields.setting('chlorine on the table', plan.chlorine, plainOptions('35.45', '35.5')),
    fields.setting('decimal mark', plan.decimalMark, [
      { value: 'point', label: plan.decimalMarks.point },
      { value: 'comma', label: plan.decimalMarks.comma },
    ]),
    fields.setting(
      'checks come from',
      plan.checksFrom,
      (['formulas', 'sidebar'] as const).map((value) => ({ value, label: plan.checksFroms[value] })),
      plan.checksFromHint,
    ),
  );
  editor.follow(() => {
    const now = editor.draft.settings;
    exitChecks.hidden = now['exit questions'] === '0';
    made.tell(
      plan.checksSet({
        figures: now.figures,
        help: now['highest help level'],
        allowance: numberPart(now['allowance for technique']),
        mark: plan.decimalMarks[decimalMarkOf(now)],
      }),
    );
  });
  return made.root;
}
