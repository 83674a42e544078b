import { expect, it } from 'vitest';
import { workFor } from '../../src/desk/acts.ts';
import type { File } from '../../src/desk/file/look.ts';
import { runWork } from '../../src/desk/runWork.ts';
import type { ApplyWish } from '../../src/host/calls.ts';
import { allActivities } from '../../src/lab/lesson/activities.ts';
import type { Setup } from '../../src/lab/lesson/setup.ts';
import { startingGivens } from '../../src/lab/lesson/startingGivens.ts';
import { columnOf, rowOf } from '../../src/preview/standin/address.ts';
import type { SheetState } from '../../src/preview/standin/sheetState.ts';
import { layoutVersion } from '../../src/workbook/layout.ts';
import { layoutFits } from '../../src/workbook/layoutFits.ts';
import type { SheetPlan } from '../../src/workbook/workbook.ts';
import { cases } from '../depth.ts';
import { answerOf, open } from './bench.ts';
import { actAtEveryCall } from './hostFailure.ts';
import { setup } from './setup.ts';

/** What stands in a sheet, without asking the host to work anything out. */
function contentsOf({ cells, rows, columns }: SheetState): readonly (readonly string[])[] {
  const lines = Array.from({ length: rows }, () => Array.from({ length: columns }, () => ''));
  for (const [cell, { content }] of cells) {
    const line = lines[rowOf(cell) - 1];
    if (line === undefined || content === undefined) continue;
    if (content.kind === 'formula') line[columnOf(cell) - 1] = content.formula;
    else line[columnOf(cell) - 1] = content.kind === 'text' ? content.text : String(content.value);
  }
  return lines;
}
const tagOf = ({
  metadata,
}: SheetState): { readonly state?: string; readonly kind?: string; readonly className?: string } =>
  JSON.parse(metadata.find(({ key }) => key === 'labrow-sheet')?.value ?? '{}');

const classes = setup.classes.slice(0, 1);
/** Whole in `npm run deep`, where every activity is built. */
const setups: readonly (readonly [string, Setup])[] = [
  ['as usual', setup],
  [
    'with checks from the sidebar and exit questions',
    { ...setup, classes, settings: { ...setup.settings, 'checks come from': 'sidebar', 'exit questions': '2' } },
  ],
  ...allActivities()
    .slice(0, cases({ short: 0, deep: Infinity }))
    .map((activity): readonly [string, Setup] => [
      activity.id,
      {
        ...setup,
        activity: activity.id,
        givens: startingGivens(activity),
        classes,
        settings: { ...setup.settings, activity: activity.id },
      },
    ]),
];

it.each(setups)(
  'is known for what it is to be, wherever the writing of a new sheet stops, and is not kept: %s',
  (_, wanted) => {
    const host = open({ clock: () => new Date('2026-03-02T10:00:00Z') });
    let plans: readonly SheetPlan[] = [];
    const met = new Map<string, number>();
    const odd: string[] = [];
    actAtEveryCall(host, (name) => {
      for (const sheet of host.book.sheets) {
        const { state, kind, className } = tagOf(sheet);
        const plan = plans.find(({ role }) => role.kind === kind && role.className === className);
        if (state !== 'building' || plan === undefined) continue;
        met.set(plan.role.kind, (met.get(plan.role.kind) ?? 0) + 1);
        if (layoutFits(plan, contentsOf(sheet)) === 'other') odd.push(`${sheet.name} before ${name}`);
        // A line of the Plan with a key and without names would be another team.
        if (kind === 'plan')
          for (const line of contentsOf(sheet))
            if (/^c\d+-t\d+$/.test(line[0] ?? '') && (line[1] === '' || line[2] === ''))
              odd.push(`a line of the Plan before ${name}`);
      }
    });
    const page: File = { book: undefined };
    const ask = (name: 'startBuild' | 'continueBuild') =>
      answerOf(
        runWork(workFor(page, name, (name === 'startBuild' ? [wanted] : []) as never), ({ call, wish }) => {
          const { plan, also = [] } = wish as Partial<ApplyWish>;
          if (plan !== undefined) plans = [plan, ...also.map((one) => one.plan)];
          return host.run('teacher', call, wish === undefined ? [layoutVersion] : [layoutVersion, wish]);
        }),
      );
    let state = ask('startBuild');
    while (!state.finished) state = ask('continueBuild');
    expect([...met.keys()].sort()).toEqual(['class', 'help', 'plan', 'poll', 'prepare', 'progress']);
    for (const count of met.values()) expect(count).toBeGreaterThan(20);
    expect(odd).toEqual([]);
  },
);
