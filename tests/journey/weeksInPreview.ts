import type { FrameLocator, Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { deskWords } from '../../src/desk/words.ts';
import type { PageBundle } from '../../src/preview/server/pageBundle.ts';
import { texts } from '../../src/sidebar/texts.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import type { BrowserPages } from '../browser/browserPages.ts';
import { openView } from '../browser/openView.ts';
import { openSidebar, Preview, tab, typeInto } from './previewWindows.ts';

/** A cell of a class sheet: its team by key, and its row. */
export interface Place {
  readonly className: string;
  readonly key: string;
  readonly step: string;
}

/** Weeks of a school over the preview: a teacher who opens the sidebar anew each day, and students at seats of their own. */
export class WeeksInPreview {
  readonly preview: Preview;
  readonly teacher: Page;
  readonly students: readonly Page[];
  /** What the teacher reads of the sidebar of today. */
  sidebar: FrameLocator;
  /** Texts of the record, each as it was saved. */
  readonly records: string[] = [];
  /** Presses from the last lesson of a class to its next one built, each time. */
  readonly pressesToNext: number[] = [];
  readonly #typed = new Map<string, Place & { readonly begun: string; readonly text: string }>();
  /** The day on which the lesson of each class was begun: what was put away bears it in its name. */
  readonly #begun = new Map<string, string>();
  readonly #setClock: (now: Date) => void;
  #today = '';
  #presses = 0;

  private constructor(
    preview: Preview,
    {
      teacher,
      students,
      setClock,
    }: { readonly teacher: Page; readonly students: readonly Page[]; readonly setClock: (now: Date) => void },
  ) {
    this.preview = preview;
    this.teacher = teacher;
    this.students = students;
    this.#setClock = setClock;
    this.sidebar = teacher.frameLocator('#panel iframe');
  }

  static async open(pages: BrowserPages, bundle: PageBundle, name: string): Promise<WeeksInPreview> {
    let now = new Date('2026-03-02T08:00:00Z');
    const preview = await Preview.open(pages, bundle, { name, clock: () => now });
    const teacher = await preview.window('teacher');
    const students = [await preview.window('student'), await preview.window('student')];
    return new WeeksInPreview(preview, {
      teacher,
      students,
      setClock: (wanted) => {
        now = wanted;
      },
    });
  }

  /** A day of March begins: the teacher comes to the file again. */
  async on(day: string): Promise<void> {
    this.#today = `2026-03-${day}`;
    this.#setClock(new Date(`${this.#today}T10:00:00Z`));
    await this.teacher.reload();
    await this.teacher.getByRole('grid').waitFor();
    this.sidebar = await openSidebar(this.teacher);
    await this.sidebar.getByRole('navigation').waitFor();
  }
  later(clock: string): void {
    this.#setClock(new Date(`${this.#today}T${clock}:00Z`));
  }
  view(name: string): Promise<void> {
    return openView(this.sidebar, name);
  }
  button(name: string): Locator {
    return this.sidebar.getByRole('button', { name, exact: true });
  }

  /** The lesson of these classes is the one that was begun that day. */
  atLesson(classes: readonly string[], begun = this.#today): void {
    this.lessonsBegun.push(begun);
    for (const name of classes) this.#begun.set(name, begun);
  }
  /** The days on which lessons were begun, one after the other. */
  readonly lessonsBegun: string[] = [];
  /** In the plan of a file whose classes are at several lessons, the one of this class. */
  async chooseLesson(className: string): Promise<void> {
    const list = this.sidebar.getByLabel(texts.next.lesson, { exact: true });
    const value = await list.locator('option', { hasText: className }).first().getAttribute('value');
    if (value === null || value === (await list.inputValue())) return;
    await this.#press(list, (place) => place.selectOption(value));
    // The form is drawn anew for it.
    await expect
      .poll(() => this.sidebar.locator('.lesson-bar option:checked').first().textContent())
      .toContain(className);
  }
  async #press(place: Locator, act: (place: Locator) => Promise<unknown> = (one) => one.click()): Promise<void> {
    this.#presses += 1;
    await act(place);
  }
  /** From wherever the sidebar opened, every press counted, to the next lesson built for these classes and no others. */
  async nextLesson({
    classes,
    inFile,
    lesson,
    change,
    takesPeople = false,
  }: {
    readonly classes: readonly string[];
    readonly inFile: readonly string[];
    /** A class of the lesson that it begins from, where classes of the file are at several. */
    readonly lesson?: string;
    /** Picks in a list of the form: its label and the option. */
    readonly change?: readonly [label: string, option: string];
    readonly takesPeople?: boolean;
  }): Promise<void> {
    this.#presses = 0;
    const { sidebar } = this;
    await this.#press(this.button(texts.moments.before));
    await this.button(texts.next.button).waitFor();
    if (lesson !== undefined) await this.chooseLesson(lesson);
    await this.#press(this.button(texts.next.button));
    await this.button(texts.next.build).waitFor();
    for (const name of inFile) {
      const tick = sidebar.getByLabel(name, { exact: true });
      if ((await tick.isChecked()) !== classes.includes(name)) await this.#press(tick);
    }
    if (change !== undefined)
      await this.#press(sidebar.getByLabel(change[0], { exact: true }), (place) =>
        place.selectOption({ label: change[1] }),
      );
    if (takesPeople) await this.#press(sidebar.locator('#next-people'));
    await this.#press(this.button(texts.next.build));
    await sidebar.getByText(texts.build.doneTitle).waitFor();
    this.pressesToNext.push(this.#presses);
    this.atLesson(classes);
    await this.button(texts.build.toPlan).click();
  }
  /** The lesson of that day is opened once more for its classes; the one that they are at is put away in turn. */
  async openEarlier(classes: readonly string[], begun: string): Promise<void> {
    await this.view(texts.views.plan);
    await this.button(texts.next.earlier).click();
    const line = this.sidebar.locator('section.notice', { hasText: texts.next.begun(begun) });
    for (const tick of await line.getByRole('checkbox').all()) {
      const name = await tick.evaluate((box) => (box as HTMLInputElement).labels?.[0]?.textContent ?? '');
      if (this.#begun.has(name)) await tick.setChecked(classes.includes(name));
    }
    await line.getByRole('button', { name: texts.next.open(classes), exact: true }).click();
    await this.sidebar.getByText(texts.build.doneTitle).waitFor();
    this.atLesson(classes, begun);
    await this.button(texts.build.toPlan).click();
  }

  /** A sheet as it is now, by the day on which its lesson was begun. */
  sheetOf(className: string, begun = this.#begun.get(className)): string {
    return this.#begun.get(className) === begun ? className : deskWords.awayName(className, begun ?? '');
  }
  /** The key of a team, by its name above its rows. */
  keyOf(className: string, team: string): string {
    const { cells, rows } = this.preview.sheet(className);
    for (let row = 1; row <= rows; row += 1) {
      const key = cells[`${row},${at.key}`]?.text ?? '';
      if (key !== '' && cells[`${row},${at.title}`]?.text === team) return key;
    }
    throw new Error(`${className} has no team ${team}.`);
  }
  rowIn(sheet: string, { key, step }: Pick<Place, 'key' | 'step'>): number {
    const { cells, rows } = this.preview.sheet(sheet);
    for (let row = 1; row <= rows; row += 1)
      if (cells[`${row},${at.key}`]?.text === key && (cells[`${row},${at.step}`]?.text ?? '') === step) return row;
    throw new Error(`${key} has no row ${step} in ${sheet}.`);
  }
  textOf({ className, key, step }: Place, column: number, begun?: string): string {
    const sheet = this.sheetOf(className, begun);
    return this.preview.textAt(sheet, this.rowIn(sheet, { key, step }), column);
  }
  checkOf(place: Place): string {
    return this.textOf(place, at.check);
  }
  /** A student goes to the row and types; the entry is in the file when this ends. */
  async type(seat: number, place: Place, text: string): Promise<void> {
    const page = this.students[seat];
    if (page === undefined) throw new Error(`There is no seat ${seat}.`);
    const { className } = place;
    // The window has to have heard of the sheet in use: the one before had the same name on its tab.
    const { id } = this.preview.sheet(className);
    await expect.poll(() => tab(page, className).getAttribute('data-sheet')).toBe(String(id));
    const row = this.rowIn(className, place);
    await typeInto(page, { sheet: className, row, column: at.entry, text });
    await expect.poll(() => this.preview.textAt(className, row, at.entry)).toBe(text);
    const begun = this.#begun.get(className) ?? '';
    this.#typed.set([begun, className, place.key, place.step].join('|'), { ...place, begun, text });
  }

  /** What stands in the file of everything that was typed: nothing is left out when nothing is lost. */
  lost(): readonly string[] {
    return [...this.#typed.values()].flatMap(({ begun, text, ...place }) => {
      const found = this.textOf(place, at.entry, begun);
      return found === text ? [] : [`${begun} ${JSON.stringify(place)}: “${text}” became “${found}”`];
    });
  }
  get typedCells(): number {
    return this.#typed.size;
  }

  /** Saves the record of today and keeps its text. */
  async record(classes: number): Promise<string> {
    await this.view(texts.views.record);
    const text = this.sidebar.getByLabel(texts.record.text);
    await text.waitFor();
    // What was read earlier is shown at once, and brought up to date behind it.
    const present = this.sidebar.getByLabel(texts.record.labels.present, { exact: true });
    await expect.poll(() => present.count()).toBe(classes);
    await this.button(texts.record.save).click();
    await this.sidebar.getByText(texts.record.saved(classes)).waitFor();
    const said = await text.inputValue();
    this.records.push(said);
    return said;
  }

  studentTabs(seat = 0): Promise<readonly string[]> {
    return this.students[seat]?.getByRole('tab').allTextContents() ?? Promise.resolve([]);
  }
  /** Cells that hold one of these words, by sheet, hidden ones too. */
  cellsWith(words: readonly string[]): ReadonlyMap<string, readonly string[]> {
    const found = new Map<string, readonly string[]>();
    const pattern = new RegExp(`(?<!\\p{L})(?:${words.join('|')})(?!\\p{L})`, 'u');
    for (const { name, hidden, cells } of this.preview.host.view('teacher').sheets) {
      const places = Object.entries(cells).flatMap(([place, { text, note = '' }]) => {
        const [row, column] = place.split(',').map(Number);
        const isThere = pattern.test(text) || pattern.test(note);
        return isThere ? [`${String.fromCharCode(64 + (column ?? 0))}${row} “${text}”`] : [];
      });
      if (places.length > 0) found.set(hidden ? `${name} (hidden)` : name, places);
    }
    return found;
  }
}
