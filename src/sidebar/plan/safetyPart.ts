import { cautionLanguages } from '../../lab/texts/cautionLanguages.ts';
import { fold } from '../page/fold.ts';
import { texts } from '../texts.ts';
import type { PlanEditor } from './planEditor.ts';
import type { PlanFields } from './planFields.ts';

/** What a lesson asks beside its activity: questions before the bench, cautions in a second language, evidence. */
export function safetyPart(editor: PlanEditor, fields: PlanFields): HTMLElement {
  const { plan } = texts;
  const made = fold(
    plan.safety,
    fields.setting(
      'safety questions',
      plan.safetyQuestions,
      (['for Danger', 'always', 'never'] as const).map((value) => ({ value, label: plan.safetyQuestionsWhen[value] })),
      plan.safetyQuestionsHint,
    ),
    fields.setting(
      'cautions also in',
      plan.cautionsAlso,
      [
        { value: 'none', label: plan.cautionsOnce },
        ...Object.entries(cautionLanguages).map(([value, { itself }]) => ({ value, label: `${value} (${itself})` })),
      ],
      plan.cautionsAlsoHint,
    ),
    fields.tick('evidence', plan.evidence, plan.evidenceHint),
  );
  editor.follow(() => {
    const { settings } = editor.draft;
    const also = settings['cautions also in'];
    made.tell(
      plan.safetySet({
        questions: settings['safety questions'],
        also: also === 'none' ? '' : also,
        evidence: settings.evidence === 'yes',
      }),
    );
  });
  return made.root;
}
