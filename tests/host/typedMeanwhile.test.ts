import { describe, expect, it } from 'vitest';
import type { Outcome } from '../../src/desk/outcome.ts';
import { columnOf, rowOf } from '../../src/preview/standin/address.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import type { SheetState } from '../../src/preview/standin/sheetState.ts';
import { classColumns as at, planColumns } from '../../src/workbook/layout.ts';
import { cases, seed } from '../depth.ts';
import { wellSaid } from '../errors/wellSaid.ts';
import { type Action, actions, clockOf, goOn, savedAs, sheet, standsAlready, undisturbed } from './actions.ts';
import { open } from './bench.ts';
import { checksDirect } from './checksDirect.ts';
import { actAtCall, asksNothing } from './hostFailure.ts';

const textAt = (host: StandIn, where: SheetState, row: number, column: number): string =>
  String(host.book.value(where, row, column));
/** Rows of a team's step, or lines of a Plan by its key, in all sheets of the file. */
const rowsOf = (host: StandIn, { key, step, column }: { key: string; step?: string; column: number }) =>
  host.book.sheets.flatMap((one) =>
    [...one.cells.keys()]
      .flatMap((cell) => (columnOf(cell) === column ? [rowOf(cell)] : []))
      .sort((first, second) => first - second)
      .filter(
        (row) =>
          textAt(host, one, row, column) === key && (step === undefined || textAt(host, one, row, at.step) === step),
      )
      .map((row) => ({ sheet: one, row })),
  );
/** Keys of the teams in the sheet of the class, as long as its tab is called so. */
function keysIn(host: StandIn): readonly string[] {
  const one = host.book.sheets.find(({ name }) => name === sheet);
  const texts = [...(one?.cells ?? [])].flatMap(([cell, { content }]) =>
    columnOf(cell) === at.key && content?.kind === 'text' && /^c\d+-t\d+$/.test(content.text) ? [content.text] : [],
  );
  return [...new Set(texts)].sort();
}
const stepRows = (host: StandIn, key: string) => rowsOf(host, { key, step: 'moles of solute', column: at.key });
const planLines = (host: StandIn, key: string) =>
  rowsOf(host, { key, column: planColumns.key }).filter(({ sheet: { name } }) => name.startsWith('Plan'));
const textsIn = (host: StandIn, sheets = host.book.sheets): ReadonlySet<string> =>
  new Set(
    sheets.flatMap(({ cells }) =>
      [...cells.values()].flatMap(({ content }) => (content?.kind === 'text' ? [content.text] : [])),
    ),
  );
const notesIn = (host: StandIn): readonly string[] =>
  host.book.sheets.flatMap(({ cells }) => [...cells.values()].flatMap(({ note }) => (note ? [note] : [])));

/** Whose old sheet goes with its lesson, and keeps what is typed there until then. */
const putsAway = /nextLesson|openEarlier/;

/** What somebody does meanwhile; hands back what is amiss with it afterwards, or nothing where it could not be done. */
type Deed = (
  host: StandIn,
  key: string,
  place: number,
) => ((after: StandIn, name: string) => readonly string[]) | undefined;

const entry =
  (text: string): Deed =>
  (host, key) => {
    const [place] = stepRows(host, key).filter(({ sheet: { name } }) => name === sheet);
    if (place === undefined) return undefined;
    const { refused } = host.type('student', [{ sheet: place.sheet.id, row: place.row, column: at.entry, text }]);
    if (refused.length > 0) return undefined;
    return (after, name) => {
      const stands = stepRows(after, key).filter((one) => textAt(after, one.sheet, one.row, at.entry) === text);
      if (stands.length === 0) return [`the entry ${text} of ${key} is lost`];
      const now = stepRows(after, key).filter((one) => one.sheet.name === sheet);
      const isThere = now.length === 0 || putsAway.test(name) || stands.some((one) => one.sheet.name === sheet);
      return isThere
        ? []
        : [`the entry ${text} of ${key} stands only in ${stands.map((one) => one.sheet.name).join(', ')}`];
    };
  };
const deeds: Readonly<Record<string, Deed>> = {
  'a right value': entry('0.06'),
  'a wrong value': entry('61.7'),
  'a number in the Plan': (host, key) => {
    const [place] = planLines(host, key);
    const text = '0.31';
    const column = planColumns.firstGiven + 1;
    if (place === undefined) return undefined;
    const { refused } = host.type('teacher', [{ sheet: place.sheet.id, row: place.row, column, text }]);
    if (refused.length > 0) return undefined;
    return (after) =>
      planLines(after, key).some((one) => textAt(after, one.sheet, one.row, column) === text) ||
      notesIn(after).some((note) => note.includes(text))
        ? []
        : [`the number ${text} of ${key} is lost`];
  },
  'a row above the table': (host, key) => {
    const [place] = stepRows(host, key).filter(({ sheet: { name } }) => name === sheet);
    const [first] = rowsOf(host, { key: keysIn(host)[0] ?? '', step: '', column: at.key }).filter(
      ({ sheet: { name } }) => name === sheet,
    );
    if (place === undefined || first === undefined) return undefined;
    host.insertRows('teacher', first.sheet.id, first.row, 1);
    // What stands in the sample goes with it.
    const there = textsIn(host, [place.sheet]);
    const typed = ['119.00', '7', 'Ana, Ben'].filter((text) => there.has(text));
    return (after) => {
      const texts = [...textsIn(after), ...notesIn(after)];
      // Roles are passed on by the order of the names.
      const stands = (names: readonly string[]) => texts.some((text) => names.every((name) => text.includes(name)));
      const lost = typed.filter((text) => !stands(text.split(', ')));
      return lost.map((text) => `${text} is lost`);
    };
  },
  'another name on a tab': (host, _, place) => {
    const named = (wanted: string) => host.book.sheets.find(({ name }) => name === wanted);
    // Its own, or that of the sheet which is to come in its place.
    const one = (place % 2 === 0 ? named(`${sheet} 2`) : undefined) ?? named(sheet);
    if (one === undefined) return undefined;
    host.book.renameSheet(one, 'Ferns on Monday');
    return (after) =>
      after.book.sheets.some(({ name }) => name.includes('Ferns on Monday')) ? [] : ['the name of the tab is lost'];
  },
};
const kinds = Object.keys(deeds);

/** Of two who write a cell, or name a tab, at the same moment one comes last: the host tells nobody what stood there. */
const atOnce: Readonly<Record<string, string>> = {
  'a right value': 'Range.setValues',
  'a wrong value': 'Range.setValues',
  'another name on a tab': 'Sheet.setName',
};

/** No action has fewer: the short form need not let one run through to count them. */
const fewestCalls = 62;

const everyCall = cases({ short: 0, deep: Number.POSITIVE_INFINITY });
/** The short form tries one call each of two thirds of the small actions. */
const tried = actions
  .map((action, index) => ({ ...action, index }))
  .filter(({ isLong = false, index }) => everyCall > 0 || (!isLong && (index + seed) % 3 > 0));

describe('every action, with somebody typing at a call of its', () => {
  it.each(tried)(
    '$name loses nothing typed, and its checks say what the judge says',
    ({ index, ...action }) => {
      const { name, from = 'lesson', press } = action as Action;
      const count = Math.max(1, everyCall);
      const saved = savedAs(from);
      const clock = clockOf(action);
      const calls = count === 1 ? [] : undisturbed(action).calls;
      const all = count === 1 ? fewestCalls : calls.length;
      const every = Math.max(1, Math.floor(all / count));
      const odd: string[] = [];
      const done: Record<string, number> = {};
      let again = 0;
      let blocks = 0;
      for (let place = 1 + ((seed + index * 7919) % every); place <= all; place += every) {
        if (every === 1 && asksNothing(calls[place - 1] ?? '')) continue;
        const which = kinds[(place + index + seed) % kinds.length] ?? '';
        const host = open({ saved, clock });
        let amiss: ReturnType<Deed>;
        const { stop } = actAtCall(host, place, (called) => {
          if (called === atOnce[which]) return;
          const keys = keysIn(host);
          const key = keys[place % keys.length];
          amiss = key === undefined ? undefined : deeds[which]?.(host, key, place);
        });
        let last: Outcome<unknown> = goOn(host, press(host));
        stop();
        if (amiss === undefined) continue;
        done[which] = (done[which] ?? 0) + 1;
        const where = `${which} at call ${place} of ${all}`;
        if (!last.ok) {
          again += 1;
          if (!wellSaid.test(last.problem.message)) odd.push(`${where}: ${last.problem.message}`);
          const isAsked = last.problem.question !== undefined;
          last = isAsked ? last : goOn(host, press(host));
          if (!last.ok && !isAsked && !standsAlready.test(last.problem.message))
            odd.push(`${where}, pressed again: ${last.problem.message}`);
        }
        const direct = checksDirect(host);
        blocks += direct.blocks;
        odd.push(...[...amiss(host, name), ...direct.odd].map((words) => `${where}: ${words}`));
      }
      console.log(
        `${name}: ${JSON.stringify(done)} at ${all} calls, ${again} pressed again, ${blocks} blocks, ${odd.length} odd`,
      );
      expect(odd).toEqual([]);
    },
    3_600_000,
  );
});
