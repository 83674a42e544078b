import { element } from './element.ts';

/** A labelled control with room for its hint and its problem. */
export interface Field {
  readonly root: HTMLElement;
  readonly control: HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;
  readonly label: string;
  /** Shows what to do, or nothing for the empty text. */
  setProblem(message: string): void;
  setMeaning(text: string): void;
}

export interface FieldParts {
  /** Unique in the page. */
  readonly id: string;
  readonly label: string;
  readonly control: HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;
  readonly unit?: string;
  readonly hint?: string;
}

export function field({ id, label, control, unit = '', hint = '' }: FieldParts): Field {
  control.id = id;
  const unitId = `${id}-unit`;
  const hintId = `${id}-hint`;
  const meaningId = `${id}-meaning`;
  const problemId = `${id}-problem`;
  const meaning = element('span', { id: meaningId, class: 'meaning', 'aria-live': 'polite' });
  const problem = element('p', { id: problemId, class: 'field-problem', hidden: true });
  const describe = () => {
    const ids = [unit && unitId, hint && hintId, meaning.textContent && meaningId, !problem.hidden && problemId];
    const present = ids.filter(Boolean).join(' ');
    if (present) control.setAttribute('aria-describedby', present);
    else control.removeAttribute('aria-describedby');
  };
  describe();
  return {
    root: element(
      'div',
      { class: 'field' },
      element('label', { for: id }, label),
      hint && element('p', { id: hintId, class: 'hint' }, hint),
      element('div', { class: 'control' }, control, unit && element('span', { id: unitId, class: 'unit' }, unit)),
      meaning,
      problem,
    ),
    control,
    label,
    setProblem(message) {
      problem.textContent = message;
      problem.hidden = message === '';
      if (message) control.setAttribute('aria-invalid', 'true');
      else control.removeAttribute('aria-invalid');
      describe();
    },
    setMeaning(text) {
      if (meaning.textContent === text) return;
      meaning.textContent = text;
      describe();
    },
  };
}
