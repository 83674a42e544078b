import { element } from './element.ts';

export interface Option {
  readonly value: string;
  readonly label: string;
}

/** A native select. A value that is not among the options is added, so that what stands in the sheet is never changed unseen. */
export function choice(options: readonly Option[], value: string): HTMLSelectElement {
  const all =
    value === '' || options.some((option) => option.value === value) ? options : [...options, { value, label: value }];
  return element(
    'select',
    {},
    ...all.map((option) => element('option', { value: option.value, selected: option.value === value }, option.label)),
  );
}
