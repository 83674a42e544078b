import { freeName } from './freeName.ts';
import type { SheetNames } from './lesson.ts';
import { words } from './words.ts';

/** Characters that references and exports read as something else; the class's own spelling stands in its sheet. */
const awkward = /[[\]*?:/\\\s]+/g;
const longest = 80;

/** A tab name made from what people typed: no apostrophes that would end a quotation, nothing over 80 characters. */
export function tabName(typed: string): string {
  const name = typed.split("'").join('’').replace(awkward, ' ').trim().slice(0, longest).trim();
  return name === '' ? 'Class' : name;
}

/** Names for a file that has no sheets of ours yet. */
export function newSheetNames(classNames: readonly string[], taken: readonly string[] = []): SheetNames {
  const used = [...taken];
  const claim = (wanted: string) => {
    const name = freeName(wanted, used);
    used.push(name);
    return name;
  };
  const plan = claim(words.plan.sheet);
  const progress = claim(words.progress.sheet);
  const help = claim(words.help.sheet);
  const prepare = claim(words.prepare.sheet);
  const poll = claim(words.poll.sheet);
  // Class names are typed by people: no name may meet a property that every object has.
  const classes: Record<string, string> = Object.create(null);
  for (const className of classNames) classes[className] = claim(tabName(className));
  return { plan, progress, help, prepare, poll, classes };
}
