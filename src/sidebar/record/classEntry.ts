import type { RecordClassView } from '../../desk/views.ts';
import { type WordField, wordFields } from '../../lab/record/recordEntry.ts';
import { element } from '../page/element.ts';
import { type Field, field } from '../page/field.ts';
import { listed, texts } from '../texts.ts';
import type { RecordDrafts } from './recordDrafts.ts';

interface ClassEntryParts {
  /** Unique in the page. */
  readonly id: string;
  readonly drafts: RecordDrafts;
  readonly register: (name: WordField, made: Field) => void;
  readonly changed: () => void;
}

const isSaid = (words: string): boolean => words !== '';

/** One class of the day: a field for each part of its row. */
export function classEntry(view: RecordClassView, parts: ClassEntryParts): HTMLElement {
  const { proposal, saved } = view;
  const rows = wordFields
    .filter((name) => name !== 'poll' || parts.drafts.of(view).entry.poll !== '' || proposal.poll !== '')
    .map((name) => wordRow(view, name, parts));
  return element(
    'section',
    {},
    element('h2', {}, proposal.className),
    element(
      'p',
      { class: 'hint' },
      listed([proposal.activity, proposal.substance, proposal.concentrations].filter(isSaid)),
    ),
    saved !== undefined && element('p', { class: 'hint' }, texts.record.inSheet),
    ...rows,
  );
}

function wordRow(view: RecordClassView, name: WordField, { id, drafts, register, changed }: ClassEntryParts) {
  const { record: say } = texts;
  const value = drafts.of(view).entry[name];
  // What teams finished also counts the exit question: too long for one line of the sidebar.
  const control =
    name === 'present'
      ? element('input', { type: 'text', value, autocomplete: 'off' })
      : element('textarea', { rows: name === 'hard' || name === 'notes' ? 4 : 2 }, value);
  const made = field({ id: `${id}-${name}`, label: say.labels[name], control });
  register(name, made);
  const put = () => {
    drafts.put(view, name, control.value);
    made.setProblem('');
    changed();
  };
  control.addEventListener('input', put);
  const now = view.proposal[name];
  const isOther = view.saved !== undefined && now !== '' && now !== value;
  const offer = element('div', { hidden: !isOther });
  if (isOther) {
    const use = () => {
      control.value = now;
      put();
      offer.hidden = true;
      control.focus();
    };
    offer.append(
      element('p', { class: 'hint' }, say.now(now)),
      element('button', { type: 'button', class: 'act quiet', onclick: use }, say.takeNow(say.labels[name])),
    );
  }
  return element('div', {}, made.root, offer);
}
