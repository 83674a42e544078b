import { decimalMarkOf } from '../../lab/lesson/lessonSettings.ts';
import type { SettingName } from '../../lab/lesson/setup.ts';
import { checkbox } from '../page/checkbox.ts';
import { choice, type Option } from '../page/choice.ts';
import { element } from '../page/element.ts';
import { type Field, field } from '../page/field.ts';
import { numberField } from './numberField.ts';
import type { PlanEditor } from './planEditor.ts';

interface TextParts {
  readonly label: string;
  readonly value: string;
  readonly hint?: string;
}
interface NumberParts extends TextParts {
  readonly unit: string;
  /** What to know about a number that can be read, or the empty text. */
  readonly remark?: (value: number) => string;
}

/** What the parts of the plan are made of: each field is known to the editor by its name, where a problem finds it. */
export interface PlanFields {
  text(name: string, parts: TextParts, typed: (text: string) => void): HTMLElement;
  number(name: string, parts: NumberParts, typed: (text: string) => void): HTMLElement;
  picker(name: string, made: Field, picked: (value: string) => void): HTMLElement;
  setting(name: SettingName, label: string, options: readonly Option[], hint?: string): HTMLElement;
  /** A setting that is yes or no. */
  tick(name: SettingName, label: string, hint: string): HTMLElement;
}

export function planFields(editor: PlanEditor): PlanFields {
  const idOf = (name: string) => name.replace(/[ .]/g, '-');
  const picker: PlanFields['picker'] = (name, made, picked) => {
    editor.fields.set(name, made);
    made.control.addEventListener('change', () => {
      made.setProblem('');
      picked(made.control.value);
    });
    return made.root;
  };
  return {
    text(name, { label, value, hint = '' }, typed) {
      const control = element('input', { type: 'text', value, autocomplete: 'off', spellcheck: 'false' });
      const made = field({ id: idOf(name), label, control, hint });
      control.addEventListener('input', () => {
        made.setProblem('');
        typed(control.value);
      });
      editor.fields.set(name, made);
      return made.root;
    },
    number(name, parts, typed) {
      const made = numberField({ id: idOf(name), ...parts, mark: () => decimalMarkOf(editor.draft.settings), typed });
      editor.fields.set(name, made);
      return made.root;
    },
    picker,
    setting: (name, label, options, hint = '') =>
      picker(
        `settings.${name}`,
        field({
          id: `setting-${name.replace(/ /g, '-')}`,
          label,
          control: choice(options, editor.draft.settings[name]),
          hint,
        }),
        (value) => editor.putSetting(name, value),
      ),
    tick(name, label, hint) {
      const made = checkbox({ id: idOf(name), label, hint, checked: editor.draft.settings[name] === 'yes' });
      made.control.addEventListener('change', () => editor.putSetting(name, made.control.checked ? 'yes' : 'no'));
      return made.root;
    },
  };
}

/** Options whose words are their values. */
export const plainOptions = (...values: readonly string[]): readonly Option[] =>
  values.map((value) => ({ value, label: value }));
