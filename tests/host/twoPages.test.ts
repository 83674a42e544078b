import { expect, it } from 'vitest';
import { type DeskArguments, type DeskCall, workFor } from '../../src/desk/acts.ts';
import type { Asked } from '../../src/desk/file/ask.ts';
import type { File } from '../../src/desk/file/look.ts';
import type { Outcome } from '../../src/desk/outcome.ts';
import { runWork } from '../../src/desk/runWork.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { classColumns as at, layoutVersion } from '../../src/workbook/layout.ts';
import { cases, seed } from '../depth.ts';
import { isUnderWay, savedAs, sheet, small } from './actions.ts';
import { answerOf, call, finish, open, stepRow, typeIn } from './bench.ts';
import { checksDirect } from './checksDirect.ts';

/*
 * On paper two pages go through every pair of deeds, and nothing is lost; but no formula computes there. Here some pairs
 * meet over the stand-in, where every check can be asked for beside what the judge says.
 */

const clock = () => new Date('2026-03-03T10:00:00Z');
const deeds = {
  build: ['startBuild', { ...small, givens: { ...small.givens, 'target volume': '25' } }, {}, ['c1-t1', 'c1-t2']],
  team: ['addTeam', sheet, 'Wren'],
  class: ['addClass', 'Reed class', ['Carp']],
  next: ['nextLesson', { ...small, settings: { ...small.settings, seed: '77' } }],
  practice: ['addPractice', sheet],
  bell: ['closeClass', sheet, true],
  help: ['setOwnHelp', 'c1-t1', { level: '1' }],
  absent: ['setAbsent', 'c1-t2', true],
} as const;
type Deed = keyof typeof deeds;
const names = Object.keys(deeds) as Deed[];
const pairs = names
  .flatMap((one) => names.map((second) => [one, second] as const))
  .filter(([one, other]) => one !== other);

/** Does a deed to its end on a page, and tells of each call to the script before it is made. */
function press(host: StandIn, page: File, deed: Deed, before: () => void = () => {}): Outcome<unknown> {
  const answer = (asked: Asked) => {
    before();
    return host.run('teacher', asked.call, asked.wish === undefined ? [layoutVersion] : [layoutVersion, asked.wish]);
  };
  const [name, ...about] = deeds[deed] as unknown as [DeskCall, ...DeskArguments<DeskCall>];
  let outcome = runWork(workFor(page, name, about), answer) as Outcome<unknown>;
  for (let steps = 0; steps < 40 && isUnderWay(outcome); steps += 1)
    outcome = runWork(workFor(page, 'continueBuild', []), answer);
  return outcome;
}

it('two pages that do things to one file, one between two calls of the other, leave checks that say what the judge says', () => {
  const saved = savedAs('lesson');
  const count = cases({ short: 2, deep: pairs.length * 3 });
  const odd: string[] = [];
  const met: string[] = [];
  let blocks = 0;
  let refused = 0;
  for (let drawn = 0; drawn < count; drawn += 1) {
    const [one, second] = pairs[(drawn * 29 + seed) % pairs.length] ?? (['build', 'team'] as const);
    // All but a build is one call of a page that has looked: the other is there before it.
    const isBuild = /build|team|class|next|practice/.test(one);
    const place = isBuild ? 1 + ((drawn * 7 + seed) % 6) : 1;
    const where = `${second} before call ${place} of ${one}`;
    const host = open({ saved, clock });
    const pages: readonly File[] = [{ book: undefined }, { book: undefined }];
    const [first = { book: undefined }, other = { book: undefined }] = pages;
    // Both have looked at the file as it was.
    for (const page of pages)
      runWork(workFor(page, 'readLesson', []), (asked) => host.run('teacher', asked.call, [layoutVersion, asked.wish]));
    let calls = 0;
    let between: Outcome<unknown> | undefined;
    const outcome = press(host, first, one, () => {
      calls += 1;
      if (calls !== place || between !== undefined) return;
      between = { ok: true, value: null };
      between = press(host, other, second);
      const row = stepRow(host, { sheet, key: 'c1-t2', step: 'moles of solute' });
      typeIn(host, { sheet, cells: [[row, at.entry, '0.06']] });
    });
    // Who was refused presses once more, and who finds that somebody else builds goes on with that.
    for (const [deed, answer, page] of [
      [one, outcome, first],
      [second, between, other],
    ] as const) {
      if (answer === undefined || answer.ok) continue;
      refused += 1;
      const { building } = answerOf(call(host, 'readLesson'));
      if (building !== undefined) finish(host, { ok: true, value: building });
      press(host, page, deed);
    }
    const { building } = answerOf(call(host, 'readLesson'));
    if (building !== undefined) finish(host, { ok: true, value: building });
    const compared = checksDirect(host);
    blocks += compared.blocks;
    odd.push(...compared.odd.map((words) => `${where}: ${words}`));
    const kept = host.save();
    for (const text of ['119.00', ...(between === undefined ? [] : ['0.06'])])
      if (!kept.includes(`"text":"${text}"`)) odd.push(`${where}: ${text} is lost`);
    if (between !== undefined) met.push(where);
  }
  console.log(`${refused} refused, ${blocks} blocks compared: ${met.join('; ')}`);
  expect(met.length).toBeGreaterThan(count / 2);
  expect(blocks).toBeGreaterThanOrEqual(2 * count);
  expect(odd).toEqual([]);
}, 3_600_000);
