import type { DecimalMark } from '../arithmetic/pointNumbers.ts';
import { readField } from '../arithmetic/readField.ts';
import { afterPress } from '../page/afterPress.ts';
import { element } from '../page/element.ts';
import { type Field, field } from '../page/field.ts';

export interface NumberFieldParts {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
  readonly hint?: string;
  readonly value: string;
  readonly mark: () => DecimalMark;
  readonly typed: (text: string) => void;
  /** What to know about a number that can be read, or the empty text. */
  readonly remark?: (value: number) => string;
}

/** Speaking what a half-typed sum means after every key would drown out the keys. */
const quietMs = 350;

/** A field that takes arithmetic with units and shows beside itself what that means. */
export function numberField({ id, label, unit, hint = '', value, mark, typed, remark }: NumberFieldParts): Field {
  const control = element('input', { type: 'text', value, autocomplete: 'off', spellcheck: 'false' });
  const made = field({ id, label, control, unit, hint });
  let timer: ReturnType<typeof setTimeout> | undefined;
  const show = (withProblem: boolean) => {
    clearTimeout(timer);
    const reading = readField({ typed: control.value, unit, mark: mark() });
    const parts = reading.kind === 'value' ? [reading.meaning, remark?.(reading.value) ?? ''] : [];
    afterPress(() => {
      made.setMeaning(parts.filter((part) => part !== '').join(' · '));
      if (withProblem) made.setProblem(reading.kind === 'problem' ? reading.message : '');
    });
  };
  control.addEventListener('input', () => {
    typed(control.value);
    made.setProblem('');
    clearTimeout(timer);
    timer = setTimeout(() => show(false), quietMs);
  });
  control.addEventListener('change', () => show(true));
  show(false);
  return made;
}
