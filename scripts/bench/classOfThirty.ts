// `tsx scripts/bench/classOfThirty.ts [seed]`: thirty students type for a minute on a host that takes its time; what is lost and how long they wait.
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type DeskAnswer, type DeskArguments, type DeskCall, workFor } from '../../src/desk/acts.ts';
import type { Asked } from '../../src/desk/file/ask.ts';
import type { File } from '../../src/desk/file/look.ts';
import { runWork } from '../../src/desk/runWork.ts';
import { sampleLesson } from '../../src/lab/lesson/sampleLesson.ts';
import type { Settings } from '../../src/lab/lesson/setup.ts';
import { loading } from '../../src/preview/standin/book/engine.ts';
import { drawn, type Span, within } from '../../src/preview/standin/drawn.ts';
import { openStandIn, type StandIn } from '../../src/preview/standin/openStandIn.ts';
import type { Slow, Troubles } from '../../src/preview/standin/troubles.ts';
import { classColumns as at, layoutVersion } from '../../src/workbook/layout.ts';
import { stop } from '../prepare.mjs';

const dist = join(dirname(fileURLToPath(import.meta.url)), '..', '..', 'dist');
const built = (name: string): string =>
  existsSync(join(dist, name))
    ? readFileSync(join(dist, name), 'utf8')
    : stop(`dist/${name} is missing. Run “npm run build” first.`);
const files = { code: built('Code.js'), sidebarHtml: '<p></p>' };
const [seed = 7] = process.argv.slice(2).map(Number);

const className = 'Thirty';
const teams = ['Alder', 'Beech', 'Cedar', 'Elm', 'Fir', 'Hazel', 'Larch', 'Maple', 'Oak', 'Pine'];
const studentsInTeam = 3;
const minute = 60_000;
const step = 100;

/** The file of the class, built on a host that answers at once. */
function savedWith(settings: Partial<Settings> = {}): string {
  const host = openStandIn(files);
  const file: File = { book: undefined };
  const { setup } = sampleLesson();
  const wanted = { ...setup, settings: { ...setup.settings, ...settings }, classes: [{ name: className, teams }] };
  let state = asked(host, 'startBuild', file, wanted);
  while (!state.finished) state = asked(host, 'continueBuild', file);
  return host.save();
}
const saved = savedWith();

type Value<Name extends DeskCall> = Extract<DeskAnswer<Name>, { readonly ok: true }>['value'];
function asked<Name extends DeskCall>(
  host: StandIn,
  name: Name,
  file: File,
  ...about: DeskArguments<Name>
): Value<Name> {
  const outcome = runWork(workFor(file, name, about), ({ call, wish }) =>
    host.run('teacher', call, wish === undefined ? [layoutVersion] : [layoutVersion, wish]),
  );
  if (!outcome.ok) throw new Error(outcome.problem.message);
  return outcome.value as Value<Name>;
}

interface Measured {
  readonly entries: number;
  readonly lost: number;
  readonly waits: readonly number[];
  readonly busy: number;
  readonly presses: number;
}

/** One minute of typing: each student an entry every 4 to 12 s, in the rows of the own team, now and then in a row twice. */
function run({
  slow,
  troubles = {},
  pressesEach = 0,
}: {
  readonly slow: Omit<Slow, 'seed'>;
  readonly troubles?: Troubles;
  /** The teacher presses “Check again” every so many milliseconds; never for 0. */
  readonly pressesEach?: number;
}): Measured {
  let now = 0;
  const start = Date.UTC(2026, 2, 2, 10);
  const standIn = openStandIn({
    ...files,
    saved,
    clock: () => new Date(start + now),
    troubles: { ...troubles, slow: { ...slow, seed } },
  });
  const sheet = standIn.book.sheets.find(({ name }) => name === className);
  if (sheet === undefined) throw new Error('The class was not built.');
  const pass = (ms: number): void => {
    standIn.passTime(ms);
    now += ms;
  };
  // What the file works out when it is opened is not waited for here.
  while (!standIn.isIdle) pass(step);
  const blocks = blocksOf(standIn, sheet);
  const draw = drawn(seed);
  const students = blocks.flatMap((block) =>
    Array.from({ length: studentsInTeam }, () => ({ block, next: within([0, 8000], draw()) })),
  );
  const end = now + minute;
  const begin = now;
  const pending: { readonly block: Block; readonly at: number }[] = [];
  const waits: number[] = [];
  let entries = 0;
  let busy = 0;
  let presses = 0;
  const settled = (): void => {
    for (let index = pending.length - 1; index >= 0; index -= 1) {
      const waiting = pending[index];
      if (waiting === undefined || standIn.book.value(sheet, waiting.block.check, at.check) === loading) continue;
      waits.push(now - waiting.at);
      pending.splice(index, 1);
    }
  };
  while (now < end || !standIn.isIdle) {
    for (const student of students) {
      while (now < end && student.next <= now - begin) {
        const { rows } = student.block;
        const row = rows[Math.floor(draw() * rows.length)] ?? 0;
        // Another number each time, so that every entry is one to count.
        entries += 1;
        standIn.type('student', [{ sheet: sheet.id, row, column: at.entry, text: `${entries}.5` }]);
        pending.push({ block: student.block, at: now });
        student.next += within([4000, 12_000], draw());
      }
    }
    if (pressesEach > 0 && now < end && (now - begin) % pressesEach === 0) {
      presses += 1;
      const answer = standIn.run('teacher', 'checkAgain', [layoutVersion]) as { readonly ok: boolean };
      if (!answer.ok) busy += 1;
    }
    pass(step);
    settled();
  }
  const counted = blocks
    .flatMap(({ rows }) => rows)
    .reduce((sum, row) => sum + Number(standIn.book.value(sheet, row, at.tries) || 0), 0);
  return { entries, lost: entries - counted, waits: waits.sort((one, other) => one - other), busy, presses };
}

/** From one look of the page to the next, and after a long one, as `makeChecksHere` has it. */
const toNextLook = 8000;
const shortestPause = 2000;

/**
 * The same minute where scripts are off for students, and the teacher's open sidebar works out the checks: each call takes
 * its time, a reading is of its beginning, and what is written arrives at its end.
 */
function runBySidebar({ callMs }: { readonly callMs: Span }): Measured {
  let now = 0;
  const start = Date.UTC(2026, 2, 2, 10);
  const host = openStandIn({
    ...files,
    saved: savedWith({ 'checks come from': 'sidebar' }),
    clock: () => new Date(start + now),
    troubles: { scriptsOff: ['student'] },
  });
  const sheet = host.book.sheets.find(({ name }) => name === className);
  if (sheet === undefined) throw new Error('The class was not built.');
  const blocks = blocksOf(host, sheet);
  const draw = drawn(seed);
  const students = blocks.flatMap((block) =>
    Array.from({ length: studentsInTeam }, () => ({ block, next: within([0, 8000], draw()) })),
  );
  const file: File = { book: undefined };
  const waits: number[] = [];
  let pending: number[] = [];
  let entries = 0;
  const type = (): void => {
    for (const student of students) {
      while (now < minute && student.next <= now) {
        const { rows } = student.block;
        const row = rows[Math.floor(draw() * rows.length)] ?? 0;
        entries += 1;
        host.type('student', [{ sheet: sheet.id, row, column: at.entry, text: `${entries}.5` }]);
        pending.push(now);
        student.next += within([4000, 12_000], draw());
      }
    }
  };
  const pass = (ms: number): void => {
    for (const end = now + ms; now < end; now += step) type();
  };
  const call = ({ call: name, wish }: Asked): unknown =>
    host.run('teacher', name, wish === undefined ? [layoutVersion] : [layoutVersion, wish]);
  while (now < minute || pending.length > 0) {
    const begun = now;
    const work = workFor(file, 'workOutChecks', []);
    let next = work.next();
    let seen: readonly number[] = [];
    while (next.done !== true) {
      const reads = next.value.call === 'readBook';
      const answer = reads ? call(next.value) : undefined;
      if (reads) seen = [...pending];
      const took = Math.round(within(callMs, draw()) / step) * step;
      pass(took);
      next = work.next(answer ?? call(next.value));
    }
    if (!next.value.ok) throw new Error(next.value.problem.message);
    waits.push(...seen.map((typed) => now - typed));
    pending = pending.slice(seen.length);
    pass(Math.max(shortestPause, toNextLook - (now - begun)));
  }
  const counted = blocks
    .flatMap(({ rows }) => rows)
    .reduce((sum, row) => sum + Number(host.book.value(sheet, row, at.tries) || 0), 0);
  return { entries, lost: entries - counted, waits: waits.sort((one, other) => one - other), busy: 0, presses: 0 };
}

interface Block {
  /** The row of its check. */
  readonly check: number;
  /** Rows that take an entry. */
  readonly rows: readonly number[];
}

function blocksOf({ book }: StandIn, sheet: StandIn['book']['sheets'][number]): readonly Block[] {
  const blocks = new Map<string, { check: number; rows: number[] }>();
  for (let row = 1; row <= sheet.rows; row += 1) {
    const key = String(book.value(sheet, row, at.key));
    const name = String(book.value(sheet, row, at.step));
    if (!/^c\d+-t\d+$/.test(key)) continue;
    const block = blocks.get(key);
    if (block === undefined) blocks.set(key, { check: row, rows: [] });
    else if (name !== '') block.rows.push(row);
  }
  return [...blocks.values()];
}

const seconds = (ms: number): string => `${(ms / 1000).toFixed(1)} s`;
function told(about: string, { entries, lost, waits, busy, presses }: Measured): void {
  const share = (part: number): number => waits[Math.min(waits.length - 1, Math.floor(part * waits.length))] ?? 0;
  console.log(
    `${about}: ${entries} entries, ${lost} counts lost (${((100 * lost) / entries).toFixed(1)} %); check there after ` +
      `${seconds(share(0.5))} (half), ${seconds(share(0.95))} (19 of 20), ${seconds(share(1))} (longest)` +
      `${presses === 0 ? '' : `; “Check again” busy ${busy} of ${presses} times`}.`,
  );
}

const usual = { triggerStartsMs: [200, 800], triggerTakesMs: [200, 1000], functionTakesMs: [800, 2500] } as const;
const tired = { triggerStartsMs: [500, 2000], triggerTakesMs: [500, 3000], functionTakesMs: [2000, 6000] } as const;
const others: Troubles = { otherRuns: { seed, share: 0.3, heldMs: [500, 6000] } };
console.log(`Thirty students in ten teams, one minute, seed ${seed}; time of the host is simulated.`);
told('each with an account of their own', run({ slow: usual }));
told('the same, “Check again” pressed every 5 s', run({ slow: usual, pressesEach: 5000 }));
told('a slow day, other runs at the file', run({ slow: tired, troubles: others, pressesEach: 5000 }));
told('all on one account, 30 functions at once', run({ slow: { ...usual, functionsAtOnce: 30 } }));
told('all on one account, 10 at once', run({ slow: { ...usual, functionsAtOnce: 10 } }));
told('the sidebar works out the checks, a call takes 1 to 2 s', runBySidebar({ callMs: [1000, 2000] }));
told('the same, 2 to 4 s', runBySidebar({ callMs: [2000, 4000] }));
