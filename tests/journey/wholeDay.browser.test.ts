import type { FrameLocator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { stockAndDilution } from '../../src/lab/lesson/activities/stockAndDilution.ts';
import { roles } from '../../src/lab/lesson/roles.ts';
import { pollTexts } from '../../src/lab/texts/poll.ts';
import { type PageBundle, pageBundle } from '../../src/preview/server/pageBundle.ts';
import { texts } from '../../src/sidebar/texts.ts';
import { classColumns as at, pollColumns, pollRows } from '../../src/workbook/layout.ts';
import { browserPages } from '../browser/browserPages.ts';
import { openView } from '../browser/openView.ts';
import { unfoldAll } from '../browser/unfoldAll.ts';
import { cases } from '../depth.ts';
import { rightEntries } from '../lab/rightEntries.ts';
import { cell, openSidebar, Preview, tab, typeInto } from './previewWindows.ts';

/** An invented school: nobody of these names exists. */
const school = 'Alder Bend School (invented)';
const classes = [
  { name: 'Early class', teams: ['Otter', 'Heron', 'Newt'] },
  { name: 'Noon class', teams: ['Crane', 'Teal', 'Dipper'] },
  { name: 'Late class', teams: ['Perch', 'Tench', 'Bream'] },
] as const;
type Entry = readonly [step: string, text: string];
type Place = { readonly className: string; readonly team: string };

const activity = stockAndDilution({ fromRealStock: false });
const stepIds = activity.steps.map(({ id }) => id);

/** g/mol of CaCl2·2H2O by abridged standard atomic weights, IUPAC Commission on Isotopic Abundances and Atomic Weights 2021. */
const calciumChlorideDihydrate = 40.078 + 2 * 35.45 + 2 * (2 * 1.008 + 15.999);

/** Which of a student's entries are typed in their window: one in so many. */
const windowEvery = cases({ short: 3, deep: 1 });

const pages = browserPages();
let bundle: PageBundle;
let now = new Date('2026-03-05T08:05:00Z');
const clock = () => now;
const minutesPass = (minutes: number) => {
  now = new Date(now.getTime() + minutes * 60_000);
};

beforeAll(async () => {
  bundle = await pageBundle();
});

const picture = async (page: Page, name: string): Promise<void> => {
  if (process.env.LABROW_PICTURES !== undefined)
    await page.screenshot({ path: `${process.env.LABROW_PICTURES}/day-${name}.png` });
};

describe('a teacher’s day', { timeout: 600_000 }, () => {
  let school1: Preview;
  let teacher: Page;
  let sidebar: FrameLocator;
  let students: readonly Page[];
  /** What students typed, cell by cell, in the order of typing. */
  const typed = new Map<string, string[]>();
  let spoken = '';

  const rowOf = ({ className, team }: Place, step: string) => school1.rowOf(className, team, step);
  const stateOf = (place: Place, step: string) => school1.textAt(place.className, rowOf(place, step), at.check);

  /**
   * One student's keys, row after row: each entry is one more try of that row. Those that are not typed in the student's
   * window come from a device that is not looked at.
   */
  async function work(page: Page, place: Place, entries: readonly Entry[]) {
    for (const [index, [step, text]] of entries.entries()) {
      const name = `${place.className} ${place.team} ${step}`;
      typed.set(name, [...(typed.get(name) ?? []), text]);
      const entry = { sheet: place.className, row: rowOf(place, step), column: at.entry, text };
      if (index % windowEvery === 0) await typeInto(page, entry);
      else school1.typeElsewhere(entry);
    }
  }
  const rightFor = (place: Place) => {
    const { key, givens } = school1.planned(place.className, place.team);
    return rightEntries(activity, { ...givens, key });
  };
  const firstRight = (place: Place, steps: number): Entry[] => {
    const right = rightFor(place);
    return stepIds.slice(0, steps).map((step) => [step, right[step] ?? ''] as const);
  };

  beforeAll(async () => {
    school1 = await Preview.open(pages, bundle, { name: school, clock });
    teacher = await school1.window('teacher');
    students = await Promise.all([1, 2, 3].map(() => school1.window('student')));
    sidebar = await openSidebar(teacher);
  });
  afterAll(() => school1?.close());

  it('is planned: one plan, three classes, numbers of its own for every team', async () => {
    await sidebar
      .getByLabel('Substance', { exact: true })
      .selectOption({ label: 'calcium chloride dihydrate · CaCl2·2H2O' });
    await sidebar.getByLabel('Number of classes').fill(String(classes.length));
    await unfoldAll(sidebar);
    await sidebar.getByLabel('Stock molarity').fill('0.250');
    await sidebar.getByRole('textbox', { name: 'Flask', exact: true }).fill('1/4 L');
    await sidebar.getByText('= 250 mL').first().waitFor();
    for (const [index, { name, teams }] of classes.entries()) {
      await sidebar.getByLabel('Class name').nth(index).fill(name);
      await sidebar.getByLabel('Team names').nth(index).fill(teams.join('\n'));
    }
    await sidebar.getByLabel('Give each team its own numbers').check();
    await sidebar.getByRole('button', { name: 'Build the table' }).click();
    await sidebar.getByText('The table is built').waitFor();
    await picture(teacher, 'planned');

    const numbers = classes.flatMap(({ name, teams }) =>
      teams.map((team) => {
        const { givens } = school1.planned(name, team);
        return [givens['stock molarity'], givens.flask, givens['target molarity'], givens['target volume']].join(' ');
      }),
    );
    expect(new Set(numbers).size).toBe(9);
  });

  it('says who is in a team, who is not here today, and shares the roles among the others', async () => {
    await openView(sidebar, 'Teams');
    await sidebar.locator('summary', { hasText: 'in Otter' }).click();
    await sidebar.getByLabel('Names in Otter, one per line').fill('Ana\nBo\nCy');
    await sidebar.getByRole('button', { name: 'Save names in Otter' }).click();
    await sidebar.getByLabel('Cy is absent today').check();
    const heading = rowOf({ className: 'Early class', team: 'Otter' }, stepIds[0] ?? '') - 1;
    const who = () => school1.textAt('Early class', heading, at.who);
    await expect.poll(who).toContain('Cy: not here today');
    for (const role of roles) expect(who().replace(/Cy.*/, '')).toContain(role);
    await sidebar.getByLabel('Bream is absent today').check();
    await sidebar.getByText('Bream is marked absent.').waitFor();
    await picture(teacher, 'teams');
  });

  it('is prepared: what to weigh, and labels to print', async () => {
    await openView(sidebar, 'Prepare');
    await sidebar.getByText('Solids to weigh out').waitFor();
    const needed = classes
      .flatMap(({ name, teams }) => teams.map((team) => school1.planned(name, team).givens))
      .map((givens) => (Number(givens['stock molarity']) * Number(givens.flask) * calciumChlorideDihydrate) / 1000)
      .reduce((sum, grams) => sum + grams, 0);
    const list = (await sidebar.locator('main').textContent()) ?? '';
    const [, inAll, withSpare] = /solid([\d.]+)\s+g([\d.]+)\s+g/.exec(list) ?? [];
    const shown = Number(inAll);
    // Each team's mass is rounded to the balance, so nine teams may differ by nine half steps of 0.01 g.
    expect(Math.abs(shown - needed)).toBeLessThan(9 * 0.005 + 0.01);
    expect(Number(withSpare)).toBeCloseTo(shown * 1.1, 1);
    await picture(teacher, 'prepared');

    await sidebar.getByRole('button', { name: 'Labels', exact: true }).click();
    const page = teacher.frameLocator('dialog iframe');
    await page.getByRole('heading', { name: 'Labels' }).waitFor();
    const labels = await page.locator('body').textContent();
    expect(labels).toContain('CaCl2·2H2O');
    expect(labels).toContain('Warning');
    await picture(teacher, 'labels');
    await page.getByRole('button', { name: 'Back to the sidebar' }).click();
    await expect.poll(() => teacher.locator('iframe').count()).toBe(1);
    await sidebar.getByText('Solids to weigh out').waitFor();
  });

  it('is run: three classes, three students in each typing at once, one team stuck', async () => {
    for (const { name: className, teams } of classes) {
      minutesPass(60);
      const places = teams.map((team) => ({ className, team }));
      const [first, second, third] = places as [Place, Place, Place];
      // In the first class one team finishes and one cannot get past its second number; the others are on their way.
      const isFirstClass = className === classes[0].name;
      // In the second class two teams leave the volume in mL: something to say to everyone.
      const isSecondClass = className === classes[1].name;
      const inMillilitres = (place: Place): number => {
        const { givens } = school1.planned(className, place.team);
        return Number(givens['stock molarity']) * Number(givens.flask);
      };
      const leftInMillilitres = (place: Place): Entry[] => [
        ...firstRight(place, 2),
        ['moles of solute', inMillilitres(place).toPrecision(3)],
      ];
      const pages = students as [Page, Page, Page];
      const right = rightFor(second);
      // What each of the three students types, and in whose rows. In the last class one team is absent, and two students
      // share the rows of another.
      const seats: readonly [Place, readonly Entry[]][] = isFirstClass
        ? [
            [first, firstRight(first, stepIds.length)],
            [second, firstRight(second, 8)],
            [
              third,
              [
                ...leftInMillilitres(third),
                ['moles of solute', inMillilitres(third).toPrecision(4)],
                ['moles of solute', `${inMillilitres(third).toPrecision(3)} mol`],
              ],
            ],
          ]
        : isSecondClass
          ? [
              [first, firstRight(first, 4)],
              [second, leftInMillilitres(second)],
              [third, leftInMillilitres(third)],
            ]
          : [
              [first, firstRight(first, 4)],
              [second, firstRight(second, 3)],
              [second, ['particles', 'in your words'].map((step) => [step, right[step] ?? ''] as const)],
            ];
      await Promise.all(seats.map(([place, entries], index) => work(pages[index] as Page, place, entries)));
      if (isFirstClass) {
        await typeInto(pages[2], {
          sheet: className,
          row: rowOf(third, 'moles of solute'),
          column: at.help,
          text: '2',
        });
        await picture(students[2] as Page, 'stuck');
      }

      // Nothing that was typed is lost or has moved, and every check stands beside its own entry.
      for (const [place, entries] of seats) {
        for (const step of new Set(entries.map(([id]) => id))) {
          const row = rowOf(place, step);
          const texts = typed.get(`${className} ${place.team} ${step}`) ?? [];
          // What a window has just sent may still be on its way.
          await expect.poll(() => school1.textAt(className, row, at.entry)).toBe(texts[texts.length - 1]);
          await expect.poll(() => Number(school1.textAt(className, row, at.tries))).toBeGreaterThanOrEqual(1);
          const tries = Number(school1.textAt(className, row, at.tries));
          expect(tries).toBeLessThanOrEqual(texts.length);
        }
      }
      const states = (place: Place, steps: readonly string[]) => steps.map((step) => stateOf(place, step));
      const soundSteps = stepIds.slice(0, isFirstClass ? 8 : isSecondClass ? 2 : 3);
      await expect.poll(() => states(second, soundSteps)).toEqual(soundSteps.map(() => 'on target'));
      if (isFirstClass) {
        await expect.poll(() => new Set(states(first, stepIds))).toEqual(new Set(['on target', '']));
        await expect.poll(() => stateOf(third, 'moles of solute')).toBe('not yet');
        await expect.poll(() => school1.textAt(className, rowOf(third, 'moles of solute'), at.hint)).not.toBe('');
      }
    }
  });

  it('shows who is stuck and on what, for the teacher’s eyes', async () => {
    await openView(sidebar, 'Class now');
    await sidebar.getByLabel('Class', { exact: true }).selectOption('Early class');
    const talk = sidebar.locator('section', { has: sidebar.getByRole('heading', { name: 'Talk to first' }) });
    await talk.getByText('Newt').first().waitFor();
    await picture(teacher, 'class-now');
    const words = (await talk.textContent()) ?? '';
    expect(words.indexOf('Newt')).toBeLessThan(words.indexOf('Otter'));
    expect(words).toMatch(/Otter.*finished/);

    await sidebar.getByLabel('Class', { exact: true }).selectOption('Noon class');
    const say = sidebar.locator('.say');
    await say.waitFor();
    expect(await say.textContent()).toMatch(/2 teams.*mL/s);

    await tab(teacher, 'Progress').click();
    await expect.poll(() => teacher.getByRole('grid').textContent()).toMatch(/Bream.*not here today/s);
    await picture(teacher, 'progress');
  });

  it('ends with the poll, answered by students and teams', async () => {
    const [agreeFully, agreeMostly, agreeLittle] = pollTexts.scale;
    const answers = [
      ['Early class', pollTexts.from.team, agreeFully, agreeFully, agreeMostly, agreeFully, 'The ions stay as many.'],
      ['Early class', pollTexts.from.student, agreeLittle, agreeLittle, agreeMostly, agreeFully, ''],
      ['Early class', pollTexts.from.student, agreeMostly, agreeFully, agreeFully, agreeMostly, 'Litres, not mL!'],
      ['Noon class', pollTexts.from.team, agreeMostly, agreeMostly, agreeFully, agreeFully, ''],
      ['Late class', pollTexts.from.team, agreeFully, agreeMostly, agreeLittle, agreeFully, ''],
      ['Late class', pollTexts.from.student, agreeFully, agreeFully, agreeFully, agreeFully, 'More time to weigh.'],
    ];
    await Promise.all(
      students.map(async (page, seat) => {
        for (const line of [seat, seat + 3]) {
          for (const [index, text] of (answers[line] ?? []).entries()) {
            if (text === '') continue;
            const row = pollRows.firstAnswer + line;
            const answer = { sheet: 'Poll', row, column: pollColumns.className + index, text };
            // One answer of each student is typed in a window; the second comes from a device that is not looked at.
            if (line < students.length) await typeInto(page, answer);
            else school1.typeElsewhere(answer);
          }
        }
      }),
    );
    await openView(sidebar, 'Poll');
    await sidebar.getByText('6 answers').waitFor();
    await picture(teacher, 'poll');
    await sidebar.getByText('Litres, not mL!').waitFor();
  });

  it('leaves the desk with the record written and copied', async () => {
    await openView(sidebar, 'Record');
    const text = sidebar.getByLabel('Text of the day');
    await text.waitFor();
    await sidebar.getByLabel('In your own words').first().fill('A calm day. Weigh earlier next time.');
    await sidebar.getByRole('button', { name: 'Save to Record' }).click();
    await sidebar.getByText(texts.record.saved(3)).waitFor();
    spoken = await text.inputValue();
    const [early, noon, late] = classes.map(({ name }) => spoken.slice(spoken.indexOf(name)));
    for (const part of [early, noon]) expect(part).toMatch(/^.*?Present: 3 of 3 teams\n/s);
    expect(late).toMatch(/^.*?Present: 2 of 3 teams, 1 team absent/s);
    expect(early).toMatch(/Finished: 1 of 3 teams/);
    expect(noon).toMatch(/Finished: 0 of 3 teams/);
    expect(early).toMatch(/Moles of solute/);
    expect(early).toContain('A calm day. Weigh earlier next time.');
    for (const name of [...classes.flatMap(({ teams }) => teams), 'Cy']) expect(spoken).not.toContain(name);
    await sidebar.getByRole('button', { name: 'Copy the text' }).click();
    await sidebar.getByText(/Copied\.|The text is selected/).waitFor();
    await picture(teacher, 'record');
    console.log(`The record of the day:\n${spoken}`);
    await sidebar.getByRole('complementary', { name: 'Still to do today' }).waitFor({ state: 'hidden' });
  });

  it('is handed on as a template with the plan and nobody’s data, and used the same day', async () => {
    const fileName = `Copy of ${school}`;
    const copy = await Preview.open(pages, bundle, { name: fileName, saved: school1.host.save(), clock });
    const colleague = await copy.window('teacher');
    const panel = await openSidebar(colleague);
    await openView(panel, 'Share');
    await panel.getByLabel('This is the copy').check();
    await panel.getByRole('button', { name: 'Empty this copy' }).click();
    // There are entries of today in it, so the name of the file is asked for.
    await panel.locator('.field-problem').first().waitFor();
    await panel.getByLabel('Type the name of this file').fill(fileName);
    await panel.getByRole('button', { name: 'Empty this copy' }).click();
    await panel.getByText(texts.share.emptied).waitFor();
    await picture(colleague, 'shared');

    const kept = copy.host.save();
    const personal = [
      ...classes.flatMap(({ name, teams }) => [name, ...teams]),
      'Litres, not mL!',
      'More time to weigh.',
      'A calm day',
      'Cy: not here today',
      'The ions are spread out.',
    ];
    for (const words of personal) {
      expect(school1.host.save()).toContain(words);
      expect(kept).not.toContain(words);
    }
    const before = school1.planned('Early class', 'Otter').givens;
    expect(copy.planned('Class 1', 'Team 1').givens).toEqual(before);

    const student = await copy.window('student');
    const row = copy.rowOf('Class 1', 'Team 1', 'molar mass');
    await typeInto(student, { sheet: 'Class 1', row, column: at.entry, text: calciumChlorideDihydrate.toFixed(2) });
    await expect.poll(() => cell(student, row, at.check).textContent()).toBe('on target');
    await copy.close();
  });
});
