import type { RecordClassView, RecordSent, RecordView } from '../../desk/views.ts';
import { dayText } from '../../lab/record/dayText.ts';
import { type RecordEntry, type WordField, wordFields } from '../../lab/record/recordEntry.ts';
import { askAfresh, askDesk, isStale } from '../askDesk.ts';
import { checkbox } from '../page/checkbox.ts';
import { copyText } from '../page/copyText.ts';
import { drafts } from '../page/drafts.ts';
import { element } from '../page/element.ts';
import { type Field, field } from '../page/field.ts';
import { focusHeading, viewHeading } from '../page/heading.ts';
import { problemNotice } from '../page/notice.ts';
import type { Page } from '../page/page.ts';
import type { View } from '../page/view.ts';
import { waiting } from '../page/waiting.ts';
import { texts } from '../texts.ts';
import type { Due } from './due.ts';

const draftName = 'labrow record';

/** What is being written about a class: the words as they stand here, and the row they were begun from. */
interface ClassDraft {
  entry: RecordEntry;
  base: RecordEntry | null;
}
interface KeptDrafts {
  readonly day: string;
  readonly classes: Record<string, ClassDraft>;
}

/** The day's entry for each class, to reword, keep and copy. */
export function recordView(page: Page, due: Due): View {
  const { record: say } = texts;
  const root = element('div', { class: 'view record' });
  const status = element('p', { class: 'waiting', role: 'status' });
  const said = element('p', { class: 'said', role: 'status' });
  const trouble = element('div', {});
  let seen: RecordView | undefined;
  let kept: KeptDrafts = { day: '', classes: {} };
  /** Classes that are written about though nothing was entered today. */
  const asked = new Set<string>();
  const fields = new Map<string, Field>();
  let withNames = false;
  let byHand: string | undefined;
  const text = field({ id: 'record-text', label: say.text, control: element('textarea', { rows: 12 }) });
  const again = element('div', { hidden: true });

  const draftOf = ({ proposal, saved }: RecordClassView): ClassDraft =>
    kept.classes[proposal.className] ?? { entry: saved ?? proposal, base: saved ?? null };
  const written = (): readonly RecordClassView[] =>
    (seen?.classes ?? []).filter(
      ({ hasEntriesToday, saved, proposal }) => hasEntriesToday || saved !== undefined || asked.has(proposal.className),
    );

  async function open(): Promise<void> {
    said.textContent = '';
    root.replaceChildren(viewHeading(say.title), status);
    focusHeading(root);
    const outcome = await waiting(status, say.reading, askDesk('readRecord'));
    if (!outcome.ok) {
      root.append(problemNotice(outcome.problem.message, { label: texts.tryAgain, run: () => void open() }));
      return;
    }
    take(outcome.value);
    draw();
    if (!isStale('readRecord')) return;
    // A look behind what is shown draws anew only where it finds something else and nobody is writing.
    const later = await askAfresh('readRecord');
    const isNews = later.ok && JSON.stringify(later.value) !== JSON.stringify(seen);
    if (!later.ok || !isNews || !root.isConnected || isWriting()) return;
    take(later.value);
    draw();
    focusHeading(root);
  }
  function take(view: RecordView): void {
    seen = view;
    const before = drafts.read(draftName) as KeptDrafts | null;
    kept = before?.day === seen.day ? before : { day: seen.day, classes: {} };
  }
  const isWriting = (): boolean =>
    document.activeElement instanceof HTMLElement && document.activeElement.matches('input, textarea, button');

  function draw(): void {
    fields.clear();
    const classes = written();
    const others = (seen?.classes ?? []).filter((one) => !classes.includes(one));
    root.replaceChildren(
      viewHeading(say.title),
      element('p', { class: 'clock' }, dayWords(seen?.day ?? '')),
      element('p', {}, say.about),
      ...(classes.length === 0 ? [element('p', { class: 'hint' }, say.none)] : []),
      ...classes.map(classSection),
      ...(others.length > 0 ? [otherClasses(others)] : []),
      trouble,
      ...(classes.length > 0
        ? [
            element('p', { class: 'hint', id: 'record-kept' }, say.kept),
            element(
              'button',
              { type: 'button', class: 'act', 'aria-describedby': 'record-kept', onclick: () => void save() },
              say.save,
            ),
          ]
        : []),
      status,
      said,
      ...(classes.length > 0 ? [textSection()] : []),
    );
    writeText();
  }

  function classSection(view: RecordClassView): HTMLElement {
    const { proposal, saved } = view;
    const place = seen?.classes.indexOf(view) ?? 0;
    const rows = wordFields
      .filter((name) => name !== 'poll' || draftOf(view).entry.poll !== '' || proposal.poll !== '')
      .map((name) => wordRow({ view, name, id: `record-${place}-${name}` }));
    return element(
      'section',
      {},
      element('h2', {}, proposal.className),
      element('p', { class: 'hint' }, proposal.activity),
      saved !== undefined && element('p', { class: 'hint' }, say.inSheet),
      ...rows,
    );
  }

  function wordRow({ view, name, id }: { view: RecordClassView; name: WordField; id: string }): HTMLElement {
    const { className } = view.proposal;
    const value = draftOf(view).entry[name];
    const isShort = name === 'present' || name === 'finished';
    const control = isShort
      ? element('input', { type: 'text', value, autocomplete: 'off' })
      : element('textarea', { rows: name === 'hard' || name === 'notes' ? 4 : 2 }, value);
    const made = field({ id, label: say.labels[name], control });
    fields.set(`${className}.${name}`, made);
    const put = () => {
      const { entry, base } = draftOf(view);
      kept.classes[className] = { entry: { ...entry, [name]: control.value }, base };
      drafts.keep(draftName, kept);
      made.setProblem('');
      writeText();
    };
    control.addEventListener('input', put);
    const now = view.proposal[name];
    const differs = view.saved !== undefined && now !== '' && now !== value;
    const offer = element('div', { hidden: !differs });
    if (differs) {
      offer.append(
        element('p', { class: 'hint' }, say.now(now)),
        element(
          'button',
          {
            type: 'button',
            class: 'act quiet',
            onclick: () => {
              control.value = now;
              put();
              offer.hidden = true;
              control.focus();
            },
          },
          say.takeNow(say.labels[name]),
        ),
      );
    }
    return element('div', {}, made.root, offer);
  }

  const otherClasses = (others: readonly RecordClassView[]): HTMLElement =>
    element(
      'section',
      {},
      element('h2', {}, say.others),
      ...others.map(({ proposal }) =>
        element(
          'button',
          {
            type: 'button',
            class: 'act two',
            onclick: () => {
              asked.add(proposal.className);
              draw();
              fields.get(`${proposal.className}.present`)?.control.focus();
            },
          },
          say.writeFor(proposal.className),
        ),
      ),
    );

  function textSection(): HTMLElement {
    const names = checkbox({ id: 'record-names', label: say.withNames, hint: say.withNamesHint, checked: withNames });
    names.control.addEventListener('change', () => {
      withNames = names.control.checked;
      writeText();
    });
    return element(
      'section',
      {},
      element('h2', {}, say.textTitle),
      names.root,
      text.root,
      again,
      copyText(text.control as HTMLTextAreaElement, say.copy),
    );
  }
  text.control.addEventListener('input', () => {
    byHand = text.control.value;
    again.hidden = false;
  });
  again.append(
    element('p', { class: 'hint' }, say.byHand),
    element(
      'button',
      {
        type: 'button',
        class: 'act quiet',
        onclick: () => {
          byHand = undefined;
          writeText();
          text.control.focus();
        },
      },
      say.again,
    ),
  );

  /** The text follows the fields until somebody changes it by hand. */
  function writeText(): void {
    again.hidden = byHand === undefined;
    if (byHand !== undefined) return;
    text.control.value = dayText({
      day: dayWords(seen?.day ?? ''),
      classes: written().map((view) => ({
        entry: draftOf(view).entry,
        ...(withNames ? { names: view.names } : {}),
      })),
    });
  }

  async function save(): Promise<void> {
    trouble.replaceChildren();
    said.textContent = '';
    for (const made of fields.values()) made.setProblem('');
    const rows: RecordSent[] = written().map(draftOf);
    const sent = JSON.stringify(kept.classes);
    const outcome = await waiting(status, say.saving, askDesk('saveRecord', rows));
    if (!outcome.ok) {
      const found = fields.get(outcome.problem.field ?? '');
      if (found === undefined) trouble.replaceChildren(problemNotice(outcome.problem.message));
      else {
        found.setProblem(outcome.problem.message);
        found.control.focus();
      }
      return;
    }
    due.look();
    // Words typed while the answer was on its way stay; they go into the sheet with the next press.
    if (JSON.stringify(kept.classes) === sent) {
      kept = { day: kept.day, classes: {} };
      drafts.drop(draftName);
      const { saved } = outcome.value;
      if (seen !== undefined) {
        seen = {
          ...seen,
          classes: seen.classes.map((view) => {
            const row = saved.find(({ className }) => className === view.proposal.className);
            return row === undefined ? view : { ...view, saved: row };
          }),
        };
      }
      draw();
    }
    said.textContent = say.saved(outcome.value.saved.length);
  }

  return {
    root,
    enter() {
      if (page.lesson.built) void open();
      else {
        seen = undefined;
        root.replaceChildren(viewHeading(say.title), element('p', {}, texts.classNow.none));
        focusHeading(root);
      }
    },
    leave() {},
  };
}

/** The day in words, such as Monday 2 March 2026; a day is a date without a time, so no zone may shift it. */
function dayWords(day: string): string {
  const date = new Date(`${day}T12:00:00Z`);
  if (Number.isNaN(date.getTime())) return day;
  const part = (options: Intl.DateTimeFormatOptions) =>
    new Intl.DateTimeFormat('en-GB', { ...options, timeZone: 'UTC' }).format(date);
  // Part by part: browsers do not agree on the comma.
  return `${part({ weekday: 'long' })} ${part({ day: 'numeric', month: 'long', year: 'numeric' })}`;
}
