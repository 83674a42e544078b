import { describe, expect, it } from 'vitest';
import type { Setup } from '../../src/lab/lesson/setup.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { cases } from '../depth.ts';
import { answerOf, buildSetup, call, finish, open, typeIn } from './bench.ts';
import { valueAt } from './cells.ts';
import { actAtChange, changesOf } from './hostFailure.ts';
import { setup } from './setup.ts';

const sheet = 'Fern class';
const clock = () => new Date('2026-03-02T10:00:00Z');
const withTeams = (...teams: string[]): Setup => ({ ...setup, classes: [{ name: sheet, teams }] });

interface Row {
  readonly row: number;
  readonly key: string;
  readonly step: string;
  readonly entry: string;
  readonly who: string;
}

/** Rows of teams and steps in the sheet that the class has in use; none while it has none. */
function stepRows(host: StandIn): readonly Row[] {
  const rows = host.book.sheets.find(({ name }) => name === sheet)?.rows ?? 0;
  return Array.from({ length: rows }, (_, index) => index + 1).flatMap((row) => {
    const text = (column: number) => valueAt(host, { sheet, row, column });
    const [key, step] = [text(at.key), text(at.step)];
    return key.startsWith('c') && step !== '' ? [{ row, key, step, entry: text(at.entry), who: text(at.who) }] : [];
  });
}
const nameOf = ({ key, step }: Pick<Row, 'key' | 'step'>): string => `${key} ${step}`;

/** Two teams, in every row an entry that tells where it belongs, and a third team without any. */
const saved = (() => {
  const host = open({ clock });
  buildSetup(host, withTeams('Otter', 'Heron', 'Pike'));
  const rows = stepRows(host).filter(({ key }) => key !== 'c1-t3');
  typeIn(host, {
    sheet,
    cells: rows.flatMap((one) => [
      [one.row, at.entry, nameOf(one)] as const,
      [one.row, at.who, `who ${nameOf(one)}`] as const,
    ]),
  });
  return host.save();
})();
const typed = stepRows(open({ saved, clock }))
  .filter(({ entry }) => entry !== '')
  .map(nameOf);

/** Deeds of a student in the block of the second team, in whatever sheet the class has at that moment. */
const deeds: Readonly<Record<string, (host: StandIn, rows: readonly Row[]) => void>> = {
  'a row put in': (host, [first]) => host.insertRows('student', idOf(host), (first?.row ?? 0) + 3, 1),
  'a row taken out': (host, [first]) => host.deleteRows('student', idOf(host), (first?.row ?? 0) + 3, 1),
  'rows sorted': (host, [first, ...others]) => {
    const area = { row: first?.row ?? 0, column: 1, rows: others.length + 1, columns: 26 };
    host.sortRows('student', idOf(host), area, at.step, false);
  },
};
const idOf = (host: StandIn): number => host.book.sheets.find(({ name }) => name === sheet)?.id ?? 0;

const works: Readonly<Record<string, (host: StandIn) => void>> = {
  'the class gets a new sheet': (host) => void buildSetup(host, withTeams('Otter', 'Heron')),
  'a late team gets its rows': (host) => void finish(host, call(host, 'addTeam', sheet, 'Wren')),
};

const misplaced = (host: StandIn): readonly string[] =>
  stepRows(host).flatMap((one) =>
    (one.entry === '' || one.entry === nameOf(one)) && (one.who === '' || one.who === `who ${nameOf(one)}`)
      ? []
      : [`${nameOf(one)}: ${one.entry}, ${one.who}`],
  );

describe.each(Object.keys(works))('while %s', (work) => {
  it.each(Object.keys(deeds))(
    '%s by a student puts no entry beside another step, and the next build has every one in its row',
    (deed) => {
      const whole = open({ saved, clock });
      const changes = changesOf(whole);
      works[work]?.(whole);
      const each = Math.max(1, Math.floor(changes.length / cases({ short: 2, deep: Number.POSITIVE_INFINITY })));
      const places = changes.map(({ place }) => place).filter((_, index) => index % each === deed.length % each);
      expect(places.length).toBeGreaterThan(1);
      const odd: string[] = [];
      for (const place of places) {
        const host = open({ saved, clock });
        let gone = '';
        const { stop } = actAtChange(host, place, () => {
          const block = stepRows(host).filter(({ key }) => key === 'c1-t2');
          if (block.length < 5) return;
          if (deed === 'a row taken out') gone = nameOf(block[3] as Row);
          deeds[deed]?.(host, block);
        });
        works[work]?.(host);
        stop();
        odd.push(...misplaced(host).map((words) => `${place}, at once: ${words}`));
        const teams = answerOf(call(host, 'readLesson')).setup.classes[0]?.teams ?? [];
        buildSetup(host, withTeams(...teams));
        odd.push(...misplaced(host).map((words) => `${place}, built again: ${words}`));
        const found = new Set(stepRows(host).flatMap((one) => (one.entry === '' ? [] : [nameOf(one)])));
        odd.push(...typed.filter((name) => name !== gone && !found.has(name)).map((name) => `${place}, lost: ${name}`));
        const names = stepRows(host).map(nameOf);
        if (new Set(names).size !== names.length || names.length !== teams.length * (typed.length / 2))
          odd.push(`${place}: ${names.length} rows for ${teams.length} teams`);
        const { notYetKnown } = answerOf(call(host, 'readClass', sheet));
        if (notYetKnown > 0) odd.push(`${place}: ${notYetKnown} checks do not show`);
      }
      expect(odd).toEqual([]);
    },
    1_800_000,
  );
});
