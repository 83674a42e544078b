import type { BuildAnswers } from '../../desk/building/buildNote.ts';
import type { BuildQuestion } from '../../desk/building/questions.ts';
import type { Problem } from '../../desk/outcome.ts';
import type { ActivityView } from '../../desk/views.ts';
import type { SettingName, Setup } from '../../lab/lesson/setup.ts';
import { readSizes } from '../arithmetic/readSizes.ts';
import { askDesk } from '../askDesk.ts';
import { checkbox } from '../page/checkbox.ts';
import { choice, type Option } from '../page/choice.ts';
import { drafts } from '../page/drafts.ts';
import { element } from '../page/element.ts';
import { type Field, field } from '../page/field.ts';
import { focusHeading, viewHeading } from '../page/heading.ts';
import { problemNotice } from '../page/notice.ts';
import type { Page } from '../page/page.ts';
import type { View } from '../page/view.ts';
import { waiting } from '../page/waiting.ts';
import { texts } from '../texts.ts';
import { type Builder, percentDone } from './builder.ts';
import { buildPanel } from './buildPanel.ts';
import { classFields } from './classFields.ts';
import { ionChoice } from './ionChoice.ts';
import { numberField } from './numberField.ts';
import { numbersPreview } from './numbersPreview.ts';
import { draftOf, givensAfter, keptDraft, type PlanDraft } from './planDraft.ts';
import { questionNotice } from './questionNotice.ts';
import { type FieldProblem, markOf, numberPart, readPlan } from './readPlan.ts';
import { reagentChoice } from './reagentChoice.ts';
import { soluteFields } from './soluteFields.ts';

const draftName = 'labrow plan';

interface KeptDraft {
  /** The sheet's own state when typing began: a draft over another state would overwrite what changed since. */
  readonly begun: string;
  readonly draft: PlanDraft;
}

/** Everything a teacher says before the table is built, and the build itself. */
export function planView(page: Page, builder: Builder): View {
  const root = element('div', { class: 'view plan' });
  const body = element('div', {});
  const panel = buildPanel({ builder, toClass: () => page.show('classNow'), toPlan: () => drawForm(true) });
  let visible = false;
  let drawnFor: unknown;

  function drawForm(focus: boolean): void {
    drawnFor = page.lesson;
    root.replaceChildren(viewHeading(page.lesson.built ? texts.plan.titleAgain : texts.plan.title), body);
    body.replaceChildren(...planForm(page, builder, () => drawForm(true)));
    if (focus) focusHeading(root);
  }
  function draw(focus: boolean): void {
    const { phase } = builder.now;
    if (phase === 'running' || phase === 'failed' || phase === 'finished') {
      panel.update();
      if (!root.contains(panel.root)) {
        drawnFor = undefined;
        root.replaceChildren(viewHeading(texts.plan.title), panel.root);
        if (focus) focusHeading(panel.root);
      }
      return;
    }
    if (root.contains(panel.root) && phase === 'left') panel.update();
    else if (drawnFor !== page.lesson) drawForm(focus);
    else if (focus) focusHeading(root);
  }
  builder.onChange(() => {
    if (visible) draw(true);
  });
  return {
    root,
    enter() {
      visible = true;
      draw(true);
    },
    leave() {
      visible = false;
    },
  };
}

function planForm(page: Page, builder: Builder, redraw: () => void): readonly HTMLElement[] {
  const { lesson } = page;
  const inSheet = draftOf(lesson);
  const begun = JSON.stringify(inSheet);
  const kept = drafts.read(draftName) as KeptDraft | null;
  const keptOne = kept ? keptDraft(kept.draft, inSheet) : undefined;
  let draft: PlanDraft = keptOne ?? inSheet;
  // What the sheet held when typing began.
  const began = keptOne && kept ? kept.begun : begun;
  const fields = new Map<string, Field>();

  const activityNow = (): ActivityView | undefined => lesson.activities.find(({ id }) => id === draft.activity);
  const stale = element('p', { class: 'hint', role: 'status' });
  let previewed: string | undefined;
  const put = (part: Partial<PlanDraft>) => {
    draft = { ...draft, ...part };
    drafts.keep(draftName, { begun: began, draft } satisfies KeptDraft);
    stale.textContent = previewed !== undefined && previewed !== JSON.stringify(draft) ? texts.plan.stale : '';
  };
  const putSetting = (name: SettingName, value: string) => put({ settings: { ...draft.settings, [name]: value } });
  const register = (name: string, made: Field) => {
    fields.set(name, made);
  };

  const picker = (name: string, made: Field, typed: (value: string) => void): HTMLElement => {
    register(name, made);
    made.control.addEventListener('change', () => {
      made.setProblem('');
      typed(made.control.value);
    });
    return made.root;
  };
  const settingPicker = (name: SettingName, label: string, options: readonly Option[], hint = '') =>
    picker(
      `settings.${name}`,
      field({ id: `setting-${name.replace(/ /g, '-')}`, label, control: choice(options, draft.settings[name]), hint }),
      (value) => putSetting(name, value),
    );
  const number = (
    name: string,
    parts: { label: string; unit: string; value: string; hint?: string; remark?: (value: number) => string },
    typed: (text: string) => void,
  ) => {
    const made = numberField({ id: name.replace(/[ .]/g, '-'), ...parts, mark: () => markOf(draft), typed });
    register(name, made);
    return made.root;
  };
  const text = (
    name: string,
    parts: { label: string; value: string; hint?: string },
    typed: (text: string) => void,
  ) => {
    const control = element('input', { type: 'text', value: parts.value, autocomplete: 'off', spellcheck: 'false' });
    const made = field({ id: name.replace(/[ .]/g, '-'), label: parts.label, control, hint: parts.hint ?? '' });
    control.addEventListener('input', () => {
      made.setProblem('');
      typed(control.value);
    });
    register(name, made);
    return made.root;
  };
  const plain = (...values: readonly string[]): readonly Option[] => values.map((value) => ({ value, label: value }));

  // The lesson: activity, substance, and the numbers that both ask for.
  const aim = element('p', { class: 'hint' });
  const substance = element('div', {});
  const numbers = element('div', {});
  // The ions of the substance to pick from, or a field to type in where we know of none.
  const ionRow = element('div', {});
  let ionsShown = '';
  const drawIon = (anew: boolean) => {
    const given = activityNow()?.givens.find(({ name }) => name === 'ion');
    if (!given) return;
    const write = (ion: string) => put({ givens: { ...draft.givens, ion } });
    const typed = draft.givens.ion ?? '';
    const { options, chosen, likely, none } = ionChoice({ formula: draft.givens.formula ?? '', ion: typed });
    const shown = none ? 'none' : options.join();
    if (!anew && shown === ionsShown) return;
    ionsShown = shown;
    const label = sentence(given.name);
    const hint = sentence(given.about);
    if (none) {
      if (typed !== '' && !anew) write('');
      fields.delete('givens.ion');
      ionRow.replaceChildren(
        element('div', { class: 'field' }, element('b', {}, label), element('p', { class: 'hint' }, texts.plan.noIon)),
      );
      return;
    }
    if (options.length === 0) {
      // No substance yet, or half a formula: an ion of the one before would be wrong for the next.
      if (!anew && typed !== '') write('');
      ionRow.replaceChildren(text('givens.ion', { label, value: draft.givens.ion ?? '', hint }, write));
      return;
    }
    // Another substance has other ions. What stands in the sheet is left as it is, even where it fits none of them.
    if (chosen === '' && !anew) write(likely);
    const current = chosen || (anew ? typed : likely);
    const list = choice(
      [
        ...(current === '' ? [{ value: '', label: texts.plan.pickIon }] : []),
        ...options.map((ion) => ({ value: ion === chosen ? typed : ion, label: ion })),
      ],
      current === chosen && chosen !== '' ? typed : current,
    );
    ionRow.replaceChildren(picker('givens.ion', field({ id: 'givens-ion', label, control: list, hint }), write));
  };
  const offShelf = (size: number): string => {
    const shelf = readSizes(draft.flasks, markOf(draft));
    if (!('sizes' in shelf) || shelf.sizes.length === 0 || shelf.sizes.includes(size)) return '';
    return texts.plan.notOnShelf({ size: String(size), sizes: `${shelf.sizes.join(', ')} mL` });
  };
  const drawGivens = () => {
    const activity = activityNow();
    aim.textContent = activity?.aim ?? '';
    for (const name of [...fields.keys()].filter((key) => key.startsWith('givens.'))) fields.delete(name);
    const typed = (name: string) => (value: string) => put({ givens: { ...draft.givens, [name]: value } });
    const rows: HTMLElement[] = [];
    const substances: HTMLElement[] = [];
    for (const { name, unit, about, optional, flask } of activity?.givens ?? []) {
      const label = optional ? `${sentence(name)} (${texts.plan.optional})` : sentence(name);
      const value = draft.givens[name] ?? '';
      if (name === 'formula') {
        const solute = soluteFields({
          solutes: activity?.solutes ?? lesson.solutes,
          pick: { formula: value, other: draft.otherFormula },
          settled: () => drawIon(false),
          picked: ({ formula, other }) => {
            put({ givens: { ...draft.givens, formula }, otherFormula: other });
            fields.set('givens.formula', solute.active());
          },
        });
        fields.set('givens.formula', solute.active());
        substances.push(solute.root);
      } else if (name === 'ion') rows.push(ionRow);
      else if (unit === '') rows.push(text(`givens.${name}`, { label, value, hint: sentence(about) }, typed(name)));
      else {
        const remark = flask === true ? { remark: offShelf } : {};
        rows.push(number(`givens.${name}`, { label, unit, value, hint: sentence(about), ...remark }, typed(name)));
      }
    }
    drawIon(true);
    substance.replaceChildren(...substances);
    numbers.replaceChildren(...rows);
  };
  // Once the teacher has picked a number of periods, no choice of an activity changes it. Fewer than the activity is made
  // for were picked earlier.
  let periodsPicked = Number(draft.settings.periods) < (activityNow()?.periods ?? 1);
  const activityField = field({
    id: 'activity',
    label: texts.plan.activity,
    control: choice(
      lesson.activities.map(({ id, title }) => ({ value: id, label: title })),
      draft.activity,
    ),
  });
  const activityPicker = picker('activity', activityField, (id) => {
    const activity = lesson.activities.find((one) => one.id === id);
    const { givens, otherFormula } = draft;
    put({
      activity: id,
      ...(activity ? { givens: givensAfter(activity, { givens, otherFormula, solutes: lesson.solutes }) } : {}),
    });
    drawGivens();
    if (activity === undefined || periodsPicked) return;
    const periods = String(activity.periods);
    putSetting('periods', periods);
    const control = fields.get('settings.periods')?.control;
    if (control) control.value = periods;
  });
  drawGivens();

  const own = checkbox({
    id: 'own-numbers',
    label: texts.plan.ownNumbers,
    hint: texts.plan.ownNumbersHint,
    checked: draft.ownNumbers,
  });
  own.control.addEventListener('change', () => put({ ownNumbers: own.control.checked }));
  const judge = checkbox({
    id: 'judge-figures',
    label: texts.plan.judgeFigures,
    hint: texts.plan.judgeFiguresHint,
    checked: draft.settings['judge figures'] === 'yes',
  });
  judge.control.addEventListener('change', () => putSetting('judge figures', judge.control.checked ? 'yes' : 'no'));
  const sizesHint = markOf(draft) === 'comma' ? texts.plan.sizesHintComma : texts.plan.sizesHint;

  const shelf = foldable(
    texts.plan.shelf,
    element('p', { class: 'hint' }, texts.plan.shelfHint),
    text('shelf.flasksMl', { label: texts.plan.flasks, value: draft.flasks, hint: sizesHint }, (flasks) => {
      put({ flasks });
      // What a flask's field says about the shelf follows.
      for (const { name, flask } of activityNow()?.givens ?? []) {
        if (flask) fields.get(`givens.${name}`)?.control.dispatchEvent(new Event('change'));
      }
    }),
    text('shelf.pipettesMl', { label: texts.plan.pipettes, value: draft.pipettes, hint: sizesHint }, (pipettes) =>
      put({ pipettes }),
    ),
    number(
      'shelf.balanceReadabilityG',
      { label: texts.plan.balanceReads, unit: 'g', value: draft.balanceReads },
      (balanceReads) => put({ balanceReads }),
    ),
    number('shelf.balanceMaxG', { label: texts.plan.balanceMax, unit: 'g', value: draft.balanceMax }, (balanceMax) =>
      put({ balanceMax }),
    ),
    settingPicker('glassware class', texts.plan.glasswareClass, [
      { value: 'A', label: texts.plan.glasswareClasses.A },
      { value: 'B', label: texts.plan.glasswareClasses.B },
    ]),
    settingPicker('glassware standard', texts.plan.glasswareStandard, plain('ISO', 'ASTM')),
  );
  const seed = text(
    'settings.seed',
    { label: texts.plan.seed, value: draft.settings.seed, hint: texts.plan.seedHint },
    (value) => putSetting('seed', value),
  );
  const reagents = reagentChoice(draft.settings['concentrated reagents'], (value) =>
    putSetting('concentrated reagents', value),
  );
  register('settings.concentrated reagents', reagents);
  const periodsPicker = settingPicker('periods', texts.plan.periods, plain('1', '2'));
  periodsPicker.addEventListener('change', () => {
    periodsPicked = true;
  });
  const checks = foldable(
    texts.plan.checks,
    settingPicker('figures', texts.plan.figures, plain('2', '3', '4', '5')),
    judge.root,
    settingPicker('atomic-weight decimals', texts.plan.weightDecimals, plain('1', '2', '3', '4')),
    settingPicker('chlorine on the table', texts.plan.chlorine, plain('35.45', '35.5')),
    settingPicker('decimal mark', texts.plan.decimalMark, [
      { value: 'point', label: texts.plan.decimalMarks.point },
      { value: 'comma', label: texts.plan.decimalMarks.comma },
    ]),
    settingPicker(
      'highest help level',
      texts.plan.helpLevel,
      texts.plan.helpLevels.map((label, level) => ({ value: String(level), label })),
    ),
    number(
      'settings.allowance for technique',
      {
        label: texts.plan.allowance,
        unit: '%',
        value: numberPart(draft.settings['allowance for technique']),
        hint: texts.plan.allowanceHint,
      },
      (value) => putSetting('allowance for technique', `${value} %`),
    ),
    periodsPicker,
    settingPicker(
      'work the dilution from',
      texts.plan.dilutionFrom,
      [
        { value: 'nominal stock', label: texts.plan.dilutionFroms.nominal },
        { value: 'real stock', label: texts.plan.dilutionFroms.real },
      ],
      texts.plan.dilutionFromHint,
    ),
    reagents.root,
    seed,
  );
  const classes = classFields({ classes: draft.classes, changed: (list) => put({ classes: list }), register });

  // Errors: beside their field, with one line for all of them, and the first field in focus.
  const summary = element('p', { class: 'summary', role: 'alert' });
  const result = element('div', {});
  const showProblems = (problems: readonly FieldProblem[]): void => {
    const placed = problems.map(({ field: name, message }) => ({ made: fieldFor(fields, name), message }));
    for (const { made, message } of placed) {
      made?.setProblem(message);
      made?.control.closest('details')?.setAttribute('open', '');
    }
    // Top of the page first, whatever order the problems came in.
    const first = placed
      .flatMap(({ made }) => (made ? [made] : []))
      .sort((a, b) => (a.control.compareDocumentPosition(b.control) & Node.DOCUMENT_POSITION_FOLLOWING ? -1 : 1))[0];
    const homeless = placed.filter(({ made }) => !made).map(({ message }) => message);
    summary.textContent = first ? texts.plan.needLook(problems.length, first.label) : homeless.join(' ');
    first?.control.focus();
  };
  const readyPlan = () => {
    for (const made of new Set(fields.values())) made.setProblem('');
    summary.textContent = '';
    result.replaceChildren();
    const plan = readPlan(draft, activityNow());
    if ('setup' in plan) return plan.setup;
    showProblems(plan.problems);
    return undefined;
  };
  const showHostProblem = (problem: Problem, again: () => void) => {
    if (problem.field !== undefined && fieldFor(fields, problem.field)) {
      showProblems([{ field: problem.field, message: problem.message }]);
    } else result.replaceChildren(problemNotice(problem.message, { label: texts.tryAgain, run: again }));
  };

  const status = element('p', { class: 'waiting', role: 'status' });
  const preview = element('section', { class: 'preview', hidden: true });
  let asking = false;
  async function showNumbers(): Promise<void> {
    const setup = readyPlan();
    const activity = activityNow();
    if (!setup || !activity || asking) return;
    asking = true;
    const asked = JSON.stringify(draft);
    const outcome = await waiting(status, texts.plan.previewing, askDesk('draftTeams', setup));
    asking = false;
    if (!outcome.ok) return showHostProblem(outcome.problem, () => void showNumbers());
    previewed = asked;
    stale.textContent = previewed === JSON.stringify(draft) ? '' : texts.plan.stale;
    preview.hidden = false;
    preview.replaceChildren(
      element('h2', { tabindex: -1 }, texts.plan.previewTitle),
      element('p', { class: 'hint' }, texts.plan.previewAbout),
      stale,
      ...numbersPreview(outcome.value, { activity, setup }),
      ...(setup.ownNumbers
        ? [element('button', { type: 'button', class: 'act quiet', onclick: otherNumbers }, texts.plan.otherNumbers)]
        : []),
    );
    focusHeading(preview);
  }
  const otherNumbers = () => {
    const next = String((Number(draft.settings.seed) % 999_999_999) + 1);
    putSetting('seed', next);
    const control = fields.get('settings.seed')?.control;
    if (control) control.value = next;
    void showNumbers();
  };
  async function build(asHere = false, answers: BuildAnswers = {}): Promise<void> {
    const setup = readyPlan();
    if (!setup || asking) return;
    if (lesson.built && !asHere) {
      asking = true;
      const unread = await waiting(status, texts.plan.comparing, page.refresh());
      asking = false;
      if (unread) return showHostProblem(unread, () => void build());
      if (JSON.stringify(draftOf(page.lesson)) !== began) return askWhichCounts();
    }
    // The form stays until the Plan is written: what has to be mended or answered is shown where it was typed.
    asking = true;
    const first = await waiting(status, texts.build.first, askDesk('startBuild', setup, answers));
    asking = false;
    if (first.ok) {
      await builder.start(() => Promise.resolve(first));
      if (builder.now.phase === 'finished' && stands(setup)) drafts.drop(draftName);
      return;
    }
    const { problem } = first;
    if (problem.question) askFirst(problem.question, (given) => void build(true, { ...answers, ...given }));
    else if (problem.reason === 'changed') {
      await waiting(status, texts.plan.comparing, page.refresh());
      askWhichCounts();
    } else showHostProblem(problem, () => void build(asHere, answers));
  }

  /** What was asked for is in the file: only then is there nothing left to keep of what was typed. */
  const stands = (wanted: Setup): boolean => {
    const there = draftOf(page.lesson);
    const read = readPlan(
      there,
      page.lesson.activities.find(({ id }) => id === there.activity),
    );
    return 'setup' in read && JSON.stringify(read.setup) === JSON.stringify(wanted);
  };
  const askFirst = (question: BuildQuestion, answered: (answers: BuildAnswers) => void) => {
    const notice = questionNotice(question, { answer: answered, leave: () => result.replaceChildren() });
    result.replaceChildren(notice);
    notice.querySelector('button')?.focus();
  };

  const askWhichCounts = () => {
    const button = (label: string, run: () => void) =>
      element('button', { type: 'button', class: 'act two', onclick: run }, label);
    result.replaceChildren(
      element(
        'div',
        { class: 'notice', role: 'alert' },
        element('p', {}, texts.plan.sheetChanged),
        button(texts.plan.fromSheet, fromSheet),
        button(texts.plan.fromHere, () => void build(true)),
      ),
    );
  };

  const form = element(
    'form',
    {
      novalidate: true,
      onsubmit: (event) => {
        // Enter in a field is no order to build: only the button is.
        event.preventDefault();
      },
    },
    element('section', {}, element('h2', {}, texts.plan.lesson), activityPicker, aim, substance),
    element(
      'section',
      {},
      element('h2', {}, texts.plan.numbers),
      element('p', { class: 'hint' }, texts.plan.numbersHint),
      numbers,
      own.root,
    ),
    element('section', {}, element('h2', {}, texts.plan.classes), classes),
    shelf,
    checks,
    lesson.built && element('p', { class: 'hint' }, texts.plan.again),
    summary,
    result,
    status,
    element(
      'div',
      { class: 'actions' },
      element(
        'button',
        { type: 'button', class: 'act', onclick: () => void build() },
        lesson.built ? texts.plan.buildAgain : texts.plan.build,
      ),
      element('button', { type: 'button', class: 'act two', onclick: () => void showNumbers() }, texts.plan.preview),
    ),
    preview,
  );

  const fromSheet = () => {
    drafts.drop(draftName);
    redraw();
  };
  const notes: HTMLElement[] = [];
  if (builder.now.phase === 'left') {
    notes.push(
      element(
        'div',
        { class: 'notice' },
        element('p', {}, texts.plan.halfBuilt(percentDone(builder.now.build))),
        element('button', { type: 'button', class: 'act', onclick: () => void builder.goOn() }, texts.plan.goOn),
      ),
    );
  } else if (!lesson.built) {
    notes.push(
      element(
        'section',
        { class: 'notice sample' },
        element('h2', {}, texts.plan.sample.heading),
        element('p', {}, texts.plan.sample.about),
        element(
          'button',
          { type: 'button', class: 'act', onclick: () => void builder.start(() => askDesk('startSample'), true) },
          texts.plan.sample.button,
        ),
      ),
    );
  }
  if (lesson.problems.length > 0) {
    notes.push(
      element(
        'div',
        { class: 'notice problem' },
        element('p', {}, texts.plan.sheetProblems),
        element('ul', {}, ...lesson.problems.map((problem) => element('li', {}, problem))),
      ),
    );
  }
  if (keptOne && JSON.stringify(keptOne) !== begun) {
    notes.push(
      element(
        'div',
        { class: 'notice' },
        element('p', {}, texts.plan.draftKept),
        element('button', { type: 'button', class: 'act quiet', onclick: fromSheet }, texts.plan.fromSheet),
      ),
    );
  }
  return [...notes, form];
}

const sentence = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

const foldable = (title: string, ...children: readonly HTMLElement[]): HTMLElement =>
  element('details', { class: 'fold' }, element('summary', {}, element('h2', {}, title)), ...children);

/** The field of that name, or the nearest one that holds it: `classes.0` has its name, `settings.balance` the balance. */
function fieldFor(fields: ReadonlyMap<string, Field>, name: string): Field | undefined {
  const exact = fields.get(name);
  if (exact) return exact;
  if (name === 'settings.balance') return fields.get('shelf.balanceReadabilityG');
  const inside = [...fields.entries()].find(([key]) => key.startsWith(`${name}.`));
  return inside?.[1];
}
