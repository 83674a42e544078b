import type { RecordClassView, RecordView } from '../../desk/views.ts';
import { dayText } from '../../lab/record/dayText.ts';
import { rowName } from '../../lab/record/recordEntry.ts';
import { askAfresh, askDesk, isStale } from '../askDesk.ts';
import { element } from '../page/element.ts';
import type { Field } from '../page/field.ts';
import { drawUnderHeading, focusHeading, viewHeading } from '../page/heading.ts';
import { problemNotice } from '../page/notice.ts';
import type { Page } from '../page/page.ts';
import type { View } from '../page/view.ts';
import { waiting } from '../page/waiting.ts';
import { texts } from '../texts.ts';
import { classEntry } from './classEntry.ts';
import { dayTextSection } from './dayTextSection.ts';
import { dayWords } from './dayWords.ts';
import type { Due } from './due.ts';
import { recordDrafts } from './recordDrafts.ts';

/** The day's entry for each class, to reword, keep and copy. */
export function recordView(page: Page, due: Due): View {
  const { record: say } = texts;
  const root = element('div', { class: 'view record' });
  const status = element('p', { class: 'waiting', role: 'status' });
  const said = element('p', { class: 'said', role: 'status' });
  const trouble = element('div', {});
  const drafts = recordDrafts();
  /** Classes that are written about though nothing was entered today. */
  const asked = new Set<string>();
  const fields = new Map<string, Field>();
  let seen: RecordView | undefined;
  /** What a look behind that which is shown finds, until it is taken up; undefined where that is as it stands. */
  let looking: Promise<RecordView | undefined> | undefined;

  const written = (): readonly RecordClassView[] =>
    (seen?.classes ?? []).filter(
      ({ hasEntriesToday, saved, proposal }) => hasEntriesToday || saved !== undefined || asked.has(rowName(proposal)),
    );
  const text = dayTextSection((withNames) =>
    dayText({
      day: dayWords(seen?.day ?? ''),
      classes: written().map((view) => ({ entry: drafts.of(view).entry, ...(withNames ? { names: view.names } : {}) })),
    }),
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
    if (!isStale('readRecord')) return;
    // A look behind what is shown draws anew only where it finds something else and nobody is writing.
    looking = lookBehind();
    const news = await looking;
    if (news !== undefined && root.isConnected && !isWriting()) take(news);
  }
  async function lookBehind(): Promise<RecordView | undefined> {
    const later = await askAfresh('readRecord');
    return later.ok && JSON.stringify(later.value) !== JSON.stringify(seen) ? later.value : undefined;
  }
  function take(view: RecordView): void {
    looking = undefined;
    seen = view;
    drafts.take(view);
    drawUnderHeading(root, draw);
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
      ...(classes.length === 0
        ? [element('p', { class: 'hint' }, say.none)]
        : [element('p', {}, say.about), ...classes.map(entryOf)]),
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
      ...(classes.length > 0 ? [text.root] : []),
    );
    text.follow();
  }

  const entryOf = (view: RecordClassView): HTMLElement =>
    classEntry(view, {
      id: `record-${seen?.classes.indexOf(view) ?? 0}`,
      drafts,
      register: (name, made) => fields.set(`${rowName(view.proposal)}.${name}`, made),
      changed: text.follow,
    });

  const otherClasses = (others: readonly RecordClassView[]): HTMLElement =>
    element(
      'section',
      {},
      element('h2', {}, say.others),
      ...others.map(({ proposal }) => {
        const write = () => {
          asked.add(rowName(proposal));
          draw();
          fields.get(`${rowName(proposal)}.present`)?.control.focus();
        };
        return element(
          'button',
          { type: 'button', class: 'act two', onclick: write },
          say.writeFor(proposal.className),
        );
      }),
    );

  async function save(): Promise<void> {
    trouble.replaceChildren();
    said.textContent = '';
    for (const made of fields.values()) made.setProblem('');
    // Whoever presses while the view is still being brought up to date keeps the day as it is found to be.
    const news = await waiting(status, say.saving, Promise.resolve(looking));
    if (news !== undefined) keepingPress(() => take(news));
    const sent = drafts.mark();
    const outcome = await waiting(status, say.saving, askDesk('saveRecord', written().map(drafts.of)));
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
    const { saved } = outcome.value;
    // Words typed while the answer was on its way stay; they go into the sheet with the next press.
    if (drafts.mark() === sent) {
      drafts.drop();
      if (seen !== undefined) {
        seen = {
          ...seen,
          classes: seen.classes.map((view) => {
            const row = saved.find((one) => rowName(one) === rowName(view.proposal));
            return row === undefined ? view : { ...view, saved: row };
          }),
        };
      }
      keepingPress(draw);
    }
    said.textContent = say.saved(saved.length);
  }

  /** The button that was pressed goes with what stood there before: the new one has the focus then. */
  function keepingPress(redraw: () => void): void {
    const wasPressed = document.activeElement?.matches('.record > .act') === true;
    redraw();
    if (wasPressed) root.querySelector<HTMLElement>(':scope > .act')?.focus();
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
