import { decimalMarkOf } from '../../lab/lesson/lessonSettings.ts';
import { readSizes } from '../arithmetic/readSizes.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';
import { ionPart } from './ionPart.ts';
import type { PlanEditor } from './planEditor.ts';
import type { PlanFields } from './planFields.ts';
import { soluteFields } from './soluteFields.ts';

/** What an activity asks for: the substance, and the numbers that all teams' own start from. */
export interface GivensPart {
  readonly substance: HTMLElement;
  readonly numbers: HTMLElement;
  /** After another activity was picked. */
  draw(): void;
  /** After the shelf has changed: what a flask's field says about it follows. */
  lookAtShelf(): void;
}

export function givensPart(editor: PlanEditor, fields: PlanFields): GivensPart {
  const substance = element('div', {});
  const numbers = element('div', {});
  const offShelf = (size: number): string => {
    const mark = decimalMarkOf(editor.draft.settings);
    const shelf = readSizes(editor.draft.flasks, mark);
    if (!('sizes' in shelf) || shelf.sizes.length === 0 || shelf.sizes.includes(size)) return '';
    return texts.plan.notOnShelf({ size: String(size), sizes: `${shelf.sizes.join(', ')} mL` });
  };
  const draw = (): void => {
    const activity = editor.activity();
    for (const name of [...editor.fields.keys()].filter((key) => key.startsWith('givens.'))) editor.fields.delete(name);
    const typed = (name: string) => (value: string) => editor.putGiven(name, value);
    const rows: HTMLElement[] = [];
    const substances: HTMLElement[] = [];
    let ion: ReturnType<typeof ionPart> | undefined;
    for (const { name, unit, about, optional, flask } of activity?.givens ?? []) {
      const label = optional ? `${sentence(name)} (${texts.plan.optional})` : sentence(name);
      const value = editor.draft.givens[name] ?? '';
      const hint = sentence(about);
      if (name === 'formula') {
        const solute = soluteFields({
          solutes: activity?.solutes ?? editor.lesson.solutes,
          pick: { formula: value, other: editor.draft.otherFormula },
          settled: () => ion?.follow(),
          picked: ({ formula, other }) => {
            editor.put({ givens: { ...editor.draft.givens, formula }, otherFormula: other });
            editor.fields.set('givens.formula', solute.active());
          },
        });
        editor.fields.set('givens.formula', solute.active());
        substances.push(solute.root);
      } else if (name === 'ion') {
        ion = ionPart(editor, { fields, label: sentence(name), hint });
        rows.push(ion.root);
      } else if (unit === '') rows.push(fields.text(`givens.${name}`, { label, value, hint }, typed(name)));
      else {
        const remark = flask === true ? { remark: offShelf } : {};
        rows.push(fields.number(`givens.${name}`, { label, unit, value, hint, ...remark }, typed(name)));
      }
    }
    substance.replaceChildren(...substances);
    numbers.replaceChildren(...rows);
  };
  draw();
  return {
    substance,
    numbers,
    draw,
    lookAtShelf() {
      for (const { name, flask } of editor.activity()?.givens ?? []) {
        if (flask) editor.fields.get(`givens.${name}`)?.control.dispatchEvent(new Event('change'));
      }
    },
  };
}

const sentence = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
