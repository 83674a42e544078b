import { readFileSync } from 'node:fs';
import type { FrameLocator, Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import type { PageBundle } from '../../src/preview/server/pageBundle.ts';
import { type PreviewServer, startServer } from '../../src/preview/server/server.ts';
import { openStandIn, type StandIn, type StandInOptions } from '../../src/preview/standin/openStandIn.ts';
import { sheetViewOf } from '../../src/preview/standin/viewOf.ts';
import type { SheetView } from '../../src/preview/view.ts';
import { classColumns } from '../../src/workbook/layout.ts';
import type { BrowserPages } from '../browser/browserPages.ts';
import { sheetState } from '../host/cells.ts';

/** A workbook on the local preview with the files that ship, and the windows that look at it. */
export class Preview {
  readonly host: StandIn;
  readonly #pages: BrowserPages;
  readonly #server: PreviewServer;
  readonly #rows = new Map<string, number>();
  readonly #views = new Map<string, SheetView>();

  private constructor(pages: BrowserPages, host: StandIn, server: PreviewServer) {
    this.#pages = pages;
    this.host = host;
    this.#server = server;
    host.onChange(() => {
      this.#views.clear();
    });
  }

  static async open(pages: BrowserPages, bundle: PageBundle, options: Partial<StandInOptions> = {}): Promise<Preview> {
    const host = openStandIn({
      code: readFileSync('dist/Code.js', 'utf8'),
      sidebarHtml: readFileSync('dist/Sidebar.html', 'utf8'),
      ...options,
    });
    return new Preview(pages, host, await startServer({ host, bundle }));
  }

  async window(seat: 'teacher' | 'student'): Promise<Page> {
    const page = await this.#pages.lend(`${this.#server.url}/${seat === 'student' ? '?seat=student' : ''}`, {
      viewport: { width: 1440, height: 900 },
    });
    await page.getByRole('grid').waitFor();
    return page;
  }

  /** Any error that a page or a trigger met on the way fails the test here. */
  async close(): Promise<void> {
    const met = await this.#pages.close();
    await this.#server.close();
    expect([...met, ...this.host.triggerErrors]).toEqual([]);
  }

  /** What a student types on a device that is not looked at. */
  typeElsewhere({ sheet, ...cell }: { sheet: string; row: number; column: number; text: string }): void {
    this.host.type('student', [{ sheet: sheetState(this.host, sheet).id, ...cell }]);
  }

  /** A sheet as the teacher sees it, drawn up anew only after a change. */
  sheet(name: string): SheetView {
    const known = this.#views.get(name) ?? sheetViewOf(this.host.book, sheetState(this.host, name), 'teacher');
    this.#views.set(name, known);
    return known;
  }
  textAt(name: string, row: number, column: number): string {
    return this.host.book.display(sheetState(this.host, name), row, column);
  }

  /** Row of a team's step in a class sheet, by the narrow columns that repeat both; rows stay where they were built. */
  rowOf(className: string, team: string, step: string): number {
    const name = [className, team, step].join('|');
    if (!this.#rows.has(name)) this.#findRows(className, team);
    const row = this.#rows.get(name);
    if (row === undefined) throw new Error(`${team} has no step ${step}.`);
    return row;
  }
  /** All rows of a team at once: after each change the whole sheet is drawn up anew for a look. */
  #findRows(className: string, team: string): void {
    const { key } = this.planned(className, team);
    const { cells, rows } = this.sheet(className);
    for (let row = rows; row >= 1; row -= 1) {
      if (cells[`${row},${classColumns.key}`]?.text !== key) continue;
      this.#rows.set([className, team, cells[`${row},${classColumns.step}`]?.text ?? ''].join('|'), row);
    }
  }

  /** A team's line of the Plan: where it stands, and its numbers by name. */
  planned(className: string, team: string) {
    const { cells, rows, columns } = this.sheet('Plan');
    const text = (row: number, column: number) => cells[`${row},${column}`]?.text ?? '';
    const all = Array.from({ length: rows }, (_, index) => index + 1);
    const heading = all.find((row) => text(row, 1) === 'key') ?? 0;
    const row = all.find((place) => place > heading && text(place, 2) === className && text(place, 3) === team);
    if (row === undefined) throw new Error(`The Plan has no line for ${team} of ${className}.`);
    const names = Array.from({ length: columns }, (_, index) => index + 1).filter(
      (column) => column > 3 && text(heading, column) !== '',
    );
    return {
      row,
      key: text(row, 1),
      givens: Object.fromEntries(names.map((column) => [text(heading, column), text(row, column)])),
      columnOf: (given: string) => names.find((column) => text(heading, column) === given) ?? 0,
    };
  }
}

export const tab = (page: Page, name: string): Locator => page.getByRole('tab', { name, exact: true });
export const cell = (page: Page, row: number, column: number): Locator =>
  page.locator(`td[data-cell=${String.fromCharCode(64 + column)}${row}]`);

/** Types into what is in focus: the first key as a person does, the rest at once, for which a page fits its field once. */
export async function type(page: Page, text: string): Promise<void> {
  await page.keyboard.type(text.slice(0, 1));
  await page.keyboard.insertText(text.slice(1));
}

/** Goes to a cell and types as a person does. */
export async function typeInto(
  page: Page,
  { sheet, row, column, text }: { sheet: string; row: number; column: number; text: string },
): Promise<void> {
  const there = tab(page, sheet);
  if ((await there.getAttribute('aria-selected')) !== 'true') await there.click();
  const target = cell(page, row, column);
  await target.scrollIntoViewIfNeeded();
  await target.click();
  await type(page, text);
  await page.keyboard.press('Enter');
}

export async function openSidebar(page: Page): Promise<FrameLocator> {
  await page
    .getByRole('button', { name: 'Labrow' })
    .or(page.getByRole('menuitem', { name: 'Labrow' }))
    .first()
    .click();
  await page.getByRole('menuitem', { name: 'Open the sidebar' }).click();
  const sidebar = page.frameLocator('#panel iframe');
  // It goes to a view by itself once the lesson is read; whoever goes to another one before that is taken along.
  await sidebar.locator('main .view').waitFor();
  return sidebar;
}
