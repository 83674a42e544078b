import { checkbox } from '../page/checkbox.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';

/** A tick for each class that a lesson may be for, and the yes that takes people out of what those are at now. */
export function classTicks(
  id: string,
  {
    classes,
    wanted,
    changed,
  }: {
    readonly classes: readonly { readonly name: string; readonly hint?: string; readonly people: number }[];
    /** Names of those that are ticked; changes with the ticks. */
    readonly wanted: Set<string>;
    readonly changed: () => void;
  },
): { readonly ticks: HTMLElement; readonly people: HTMLElement; readonly takesPeople: () => boolean } {
  const people = checkbox({ id: `${id}-people`, label: '', hint: texts.next.peopleHint, checked: false });
  const tell = () => {
    const cells = classes.reduce((sum, one) => sum + (wanted.has(one.name) ? one.people : 0), 0);
    people.label.textContent = texts.next.people(cells);
    people.root.hidden = cells === 0;
  };
  const ticks = classes.map(({ name, hint }, index) => {
    const { root, control } = checkbox({ id: `${id}-${index}`, label: name, hint, checked: wanted.has(name) });
    control.addEventListener('change', () => {
      if (control.checked) wanted.add(name);
      else wanted.delete(name);
      tell();
      changed();
    });
    return root;
  });
  tell();
  return {
    ticks: element('fieldset', {}, element('legend', {}, texts.next.forClasses), ...ticks),
    people: people.root,
    takesPeople: () => people.control.checked && !people.root.hidden,
  };
}
