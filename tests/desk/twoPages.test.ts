import { expect, it } from 'vitest';
import { type DeskArguments, type DeskCall, workFor } from '../../src/desk/acts.ts';
import type { Asked } from '../../src/desk/file/ask.ts';
import type { File } from '../../src/desk/file/look.ts';
import type { Outcome } from '../../src/desk/outcome.ts';
import { runWork } from '../../src/desk/runWork.ts';
import type { BuildState } from '../../src/desk/views.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { cases, seed } from '../depth.ts';
import { builtLesson, fern, fillRow, moss, setup } from './builtLesson.ts';
import { type PaperFile, valueIn } from './paperFile.ts';

const knows = ['c1-t1', 'c1-t2', 'c2-t1'];
const other = { ...setup, settings: { ...setup.settings, seed: '77' } };
/** What a teacher does; of two that are the same the second finds it done. */
const deeds = {
  build: ['startBuild', { ...setup, givens: { ...setup.givens, 'target volume': '25' } }, {}, knows],
  rename: [
    'startBuild',
    { ...setup, classes: [{ name: fern, teams: ['Otters', 'Heron'] }, ...setup.classes.slice(1)] },
    { names: 'same' },
    knows,
  ],
  team: ['addTeam', fern, 'Wren'],
  class: ['addClass', 'Reed class', ['Carp']],
  practice: ['addPractice', moss],
  next: ['nextLesson', other, { knows }, { sameDay: true }],
  absent: ['setAbsent', 'c1-t2', true],
  people: ['setMembers', fern, 'c1-t2', { names: 'Ana, Ben', absent: [], base: '' }],
  bell: ['closeClass', fern, true],
  help: ['setOwnHelp', 'c1-t1', { level: '1' }],
} as const;
type Deed = keyof typeof deeds;

/** Runs a deed to its end over one page, and tells of each call to the script before it is made. */
function press(file: PaperFile, deed: Deed, before: (call: number) => void): Outcome<unknown> {
  const page: File = { book: undefined };
  let calls = 0;
  const answer = (asked: Asked) => {
    calls += 1;
    before(calls);
    return file.answer(asked);
  };
  const [name, ...about] = deeds[deed] as unknown as [DeskCall, ...DeskArguments<DeskCall>];
  let outcome = runWork(workFor(page, name, about), answer) as Outcome<unknown>;
  for (let steps = 0; steps < 40 && isUnderWay(outcome); steps += 1)
    outcome = runWork(workFor(page, 'continueBuild', []), answer);
  return outcome;
}
const isUnderWay = (outcome: Outcome<unknown>): boolean =>
  outcome.ok && (outcome.value as Partial<BuildState> | null)?.finished === false;
const nothing = () => {};

it('two pages that do things to one file, each between any two calls of the other, lose nothing and end whole', () => {
  const names = Object.keys(deeds) as Deed[];
  const pairs = names.flatMap((one) => names.map((second) => [one, second] as const));
  const share = cases({ short: 8, deep: pairs.length });
  /** Those that have gone wrong once are always gone through. */
  const isKnown = (one: Deed, second: Deed) => [one, second].includes('next') && /team|class/.test(`${one} ${second}`);
  const chosen = pairs.filter(
    ([one, second], index) => isKnown(one, second) || (index * 7 + seed) % Math.ceil(pairs.length / share) === 0,
  );
  const odd: string[] = [];
  let places = 0;
  let refused = 0;
  for (const [one, second] of chosen) {
    const all = { count: 0 };
    press(builtLesson(), one, (call) => {
      all.count = call;
    });
    const every = isKnown(one, second) ? 1 : cases({ short: 3, deep: 1 });
    for (let place = 1; place <= all.count; place += place === 1 || every === 1 ? 1 : every) {
      const file = builtLesson();
      fillRow(file, { step: 'molar mass' }, { entry: '119.00' });
      let between: Outcome<unknown> | undefined;
      const first = press(file, one, (call) => {
        if (call !== place || between !== undefined) return;
        between = { ok: true, value: null };
        between = press(file, second, nothing);
        const isThere = file.names().includes(fern);
        // A student types in whatever sheet the class has then.
        if (isThere) fillRow(file, { key: 'c1-t2', step: 'molar mass' }, { entry: '7.77' });
      });
      places += 1;
      const where = `${second} before call ${place} of ${one}`;
      // Who was refused presses once more, and so does who was told that somebody else builds.
      for (const [deed, outcome] of [
        [one, first],
        [second, between],
      ] as const) {
        if (outcome?.ok) continue;
        refused += 1;
        const again = valueIn(file.call('readLesson')).building === undefined ? undefined : file.call('continueBuild');
        if (again?.ok) file.finish(again);
        press(file, deed, nothing);
      }
      const { building } = valueIn(file.call('readLesson'));
      if (building !== undefined) file.finish(file.call('continueBuild'));
      const stands = (text: string) =>
        file.state.sheets.some(
          ({ tag, cells }) => tag?.kind === 'class' && cells.some((line) => line[at.entry - 1] === text),
        );
      for (const text of ['119.00', '7.77']) if (!stands(text)) odd.push(`${where}: ${text} is lost`);
      const lessons = valueIn(file.call('readLessons'));
      const teams = lessons.classes.flatMap((shown) => shown.teams);
      const has: Partial<Record<Deed, boolean>> = {
        team: teams.includes('Wren'),
        class: lessons.classes.some(({ name }) => name === 'Reed class'),
        // A name that was changed in a lesson which is put away by then stands there.
        ...(one === 'next' || second === 'next' ? {} : { rename: teams.includes('Otters') }),
        next: lessons.away.length > 0,
      };
      for (const deed of [one, second])
        if (has[deed] === false) odd.push(`${where}: ${deed} is not there, ${teams.join(' ')}`);
      for (const { name, keys } of lessons.classes)
        if (new Set(keys).size !== keys.length) odd.push(`${where}: a key twice in ${name}`);
    }
  }
  console.log(`${chosen.length} pairs, ${places} places, ${refused} refused`);
  expect(odd).toEqual([]);
}, 3_600_000);
