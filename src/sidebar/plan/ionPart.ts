import { choice } from '../page/choice.ts';
import { element } from '../page/element.ts';
import { field } from '../page/field.ts';
import { texts } from '../texts.ts';
import { ionChoice } from './ionChoice.ts';
import type { PlanEditor } from './planEditor.ts';
import type { PlanFields } from './planFields.ts';

/** The ions of the substance to pick from, or a field to type in where we know of none. */
export function ionPart(
  editor: PlanEditor,
  { fields, label, hint }: { readonly fields: PlanFields; readonly label: string; readonly hint: string },
): {
  readonly root: HTMLElement;
  /** After another substance: its ions are others. */
  follow(): void;
} {
  const root = element('div', {});
  const write = (ion: string) => editor.putGiven('ion', ion);
  let shown = '';
  const draw = (anew: boolean): void => {
    const { givens } = editor.draft;
    const typed = givens.ion ?? '';
    const { options, chosen, likely, none } = ionChoice({ formula: givens.formula ?? '', ion: typed });
    const now = none ? 'none' : options.join();
    if (!anew && now === shown) return;
    shown = now;
    if (none) {
      if (typed !== '' && !anew) write('');
      editor.fields.delete('givens.ion');
      root.replaceChildren(
        element('div', { class: 'field' }, element('b', {}, label), element('p', { class: 'hint' }, texts.plan.noIon)),
      );
      return;
    }
    if (options.length === 0) {
      // No substance yet, or half a formula: an ion of the one before would be wrong for the next.
      if (!anew && typed !== '') write('');
      root.replaceChildren(fields.text('givens.ion', { label, value: editor.draft.givens.ion ?? '', hint }, write));
      return;
    }
    // Another substance has other ions. What stands in the sheet is left as it is, even where it fits none of them.
    if (chosen === '' && !anew) write(likely);
    const current = chosen || (anew ? typed : likely);
    const list = choice(
      [
        ...(current === '' ? [{ value: '', label: texts.plan.pickIon }] : []),
        ...options.map((ion) => ({ value: ion === chosen ? typed : ion, label: ion })),
      ],
      current === chosen && chosen !== '' ? typed : current,
    );
    root.replaceChildren(fields.picker('givens.ion', field({ id: 'givens-ion', label, control: list, hint }), write));
  };
  draw(true);
  return { root, follow: () => draw(false) };
}
