import { checkbox } from '../page/checkbox.ts';
import { element } from '../page/element.ts';
import { fold } from '../page/fold.ts';
import { listed, texts } from '../texts.ts';
import type { GivensPart } from './givensPart.ts';
import type { PlanEditor } from './planEditor.ts';
import type { PlanFields } from './planFields.ts';

/** The numbers that the teams' own start from, and what those are drawn by. */
export function numbersPart(
  editor: PlanEditor,
  { fields, givens }: { readonly fields: PlanFields; readonly givens: GivensPart },
): HTMLElement {
  const { plan } = texts;
  const own = checkbox({
    id: 'own-numbers',
    label: plan.ownNumbers,
    hint: plan.ownNumbersHint,
    checked: editor.draft.ownNumbers,
  });
  own.control.addEventListener('change', () => editor.put({ ownNumbers: own.control.checked }));
  const seed = fields.text(
    'settings.seed',
    { label: plan.seed, value: editor.draft.settings.seed, hint: plan.seedHint },
    (value) => editor.putSetting('seed', value),
  );
  const made = fold(plan.numbers, element('p', { class: 'hint' }, plan.numbersHint), givens.numbers, own.root, seed);
  editor.follow(() => {
    const { givens: typed, ownNumbers } = editor.draft;
    const numbers = (editor.activity()?.givens ?? [])
      .filter(({ unit, name }) => unit !== '' && (typed[name] ?? '').trim() !== '')
      .map(({ unit, name }) => plan.numberSet({ name, typed: (typed[name] ?? '').trim(), unit }));
    made.tell(listed([...numbers, ownNumbers ? plan.numbersOwn : plan.numbersSame]));
  });
  return made.root;
}
