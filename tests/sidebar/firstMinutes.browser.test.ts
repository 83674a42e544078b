import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { deskWords } from '../../src/desk/words.ts';
import type { Setup } from '../../src/lab/lesson/setup.ts';
import { texts } from '../../src/sidebar/texts.ts';
import { openView } from '../browser/openView.ts';
import { unfoldAll } from '../browser/unfoldAll.ts';
import { accessibilityFaults, callsOf, type SidebarOptions, sidebarPages, sidewaysScroll } from './browser.ts';
import type { FakeAnswers } from './fakeHost.ts';
import { building, builtLesson, classView, draft, emptyLesson, good } from './scenes.ts';

const openSidebar = sidebarPages();
const value = (answer: unknown) => [{ value: answer }];
const { plan, build } = texts;

/** As a file without a lesson begins: one class, everything else set. */
const first = {
  ...emptyLesson,
  setup: { ...emptyLesson.setup, classes: [{ name: 'Class 1', teams: ['Basalt', 'Quartz', 'Granite'] }] },
};
const answers: FakeAnswers = {
  readLesson: value(good(first)),
  draftTeams: value(good(draft)),
  startBuild: value(good(building(1))),
  continueBuild: value(good(building(5))),
  readClass: value(good(classView)),
  readPreparation: [{ silent: true }],
};
const open = async (options: Partial<SidebarOptions> = {}): Promise<Page> => {
  const opened = await openSidebar({ answers, ...options });
  await buildButton(opened).waitFor();
  return opened;
};
const buildButton = (opened: Page) => opened.getByRole('button', { name: plan.build });
const field = (opened: Page, label: string, place = 0) => opened.getByLabel(label, { exact: true }).nth(place);
const sentSetup = async (opened: Page): Promise<Setup | undefined> =>
  (await callsOf(opened)).find(({ name }) => name === 'startBuild')?.args[0] as Setup | undefined;
const isBuilt = (opened: Page) => opened.getByRole('heading', { name: build.doneTitle }).waitFor();

/** Presses with the mouse where something stands now, as a hand that leaves a field and presses in one movement. */
async function pressAtOnce(opened: Page, target: Locator): Promise<void> {
  await target.scrollIntoViewIfNeeded();
  const box = await target.boundingBox();
  if (!box) throw new Error('There is nothing to press.');
  await opened.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await opened.mouse.down();
  await opened.mouse.up();
}

describe('the first minutes', () => {
  it('take six decisions from an empty file to a table for three classes', async () => {
    const opened = await open();
    const decisions = [
      () => field(opened, plan.solute).selectOption({ label: 'Copper(II) sulfate pentahydrate · CuSO4·5H2O' }),
      () => field(opened, plan.classCount).fill('3'),
      () => field(opened, plan.teamCount, 0).fill('6'),
      () => field(opened, plan.teamCount, 1).fill('7'),
      () => field(opened, plan.teamCount, 2).fill('8'),
      () => buildButton(opened).click(),
    ];
    for (const decide of decisions) await decide();
    await isBuilt(opened);
    const setup = await sentSetup(opened);
    expect(setup?.givens.formula).toBe('CuSO4·5H2O');
    expect(setup?.classes.map(({ name, teams }) => [name, teams.length])).toEqual([
      ['Class 1', 6],
      ['Class 2', 7],
      ['Class 3', 8],
    ]);
    const names = setup?.classes.flatMap(({ teams }) => teams) ?? [];
    expect(new Set(names).size).toBe(21);
    expect(decisions).toHaveLength(6);
  });

  it('show everything a first lesson needs on one screen and a half, and the rest in five folded lines', async () => {
    const opened = await open();
    const box = await buildButton(opened).boundingBox();
    expect(box?.y ?? Number.POSITIVE_INFINITY).toBeLessThan(1.5 * 760);
    const folds = opened.locator('.folds > details');
    expect(await folds.locator('h2').allTextContents()).toEqual([
      plan.numbers,
      plan.shelf,
      plan.checks,
      plan.safety,
      plan.bench,
    ]);
    expect(await folds.evaluateAll((all) => all.some((one) => (one as HTMLDetailsElement).open))).toBe(false);
    const said = (await folds.locator('.fold-set').allTextContents()).map((line) => line.replaceAll('\u00a0', ' '));
    expect(said[0]).toContain('stock molarity 0.400 mol/L');
    expect(said[0]).toContain(plan.numbersOwn);
    expect(said[1]).toContain('flasks 100, 200, 250 mL');
    expect(said[2]).toContain('3 significant figures');
    expect(said[3]).toContain('safety questions where it says Danger');
    expect(said[4]).toContain('2 periods');
    await folds.first().locator('summary').click();
    await opened.getByLabel('Flask', { exact: true }).fill('1/4 L');
    await opened.getByLabel(plan.ownNumbers).uncheck();
    await folds.first().locator('summary').click();
    const after = ((await folds.first().locator('.fold-set').textContent()) ?? '').replaceAll('\u00a0', ' ');
    expect(after).toContain('flask 1/4 L');
    expect(after).toContain(plan.numbersSame);
    expect(await accessibilityFaults(opened)).toEqual([]);
  });

  it('offer what comes next: to prepare the day after a build', async () => {
    const opened = await open();
    await buildButton(opened).click();
    await isBuilt(opened);
    expect(await opened.locator('.build-panel').textContent()).toContain(build.tally(1, 3));
    expect(await opened.locator('.build-panel .actions button').allTextContents()).toEqual([
      build.toPrepare,
      texts.sheets.linksTitle,
      build.toClass,
      build.toPlan,
    ]);
    await opened.locator('.build-panel .actions button').first().click();
    await opened.getByRole('heading', { name: texts.prepare.title }).waitFor();
    expect(await opened.locator('nav [aria-current=page]').textContent()).toBe(texts.views.prepare);
  });

  it('can be done by keyboard alone', async () => {
    const opened = await open();
    const to = async (target: Locator) => {
      for (let press = 0; press < 80; press += 1) {
        if (await target.evaluate((one) => one === document.activeElement)) return;
        await opened.keyboard.press('Tab');
      }
      throw new Error('The Tab key does not reach it.');
    };
    await to(field(opened, plan.classCount));
    await opened.keyboard.type('2');
    await to(field(opened, plan.teamCount, 1));
    await opened.keyboard.type('5');
    await to(buildButton(opened));
    await opened.keyboard.press('Enter');
    await isBuilt(opened);
    expect((await sentSetup(opened))?.classes.map(({ teams }) => teams.length)).toEqual([3, 5]);
    await to(opened.getByRole('button', { name: build.toPrepare }));
    await opened.keyboard.press('Space');
    await opened.getByRole('heading', { name: texts.prepare.title }).waitFor();
    expect(await opened.evaluate(() => document.activeElement?.textContent)).toBe(texts.prepare.title);
  });

  it('say what is wrong with a number of classes or teams that cannot be, and build nothing', async () => {
    const opened = await open();
    for (const [label, wrong] of [
      [plan.classCount, '13'],
      [plan.teamCount, '41'],
      [plan.teamCount, ''],
    ] as const) {
      const before = await field(opened, label).inputValue();
      await field(opened, label).fill(wrong);
      await pressAtOnce(opened, buildButton(opened));
      // Only a press that was met brings the focus back.
      await expect.poll(() => field(opened, label).evaluate((one) => one === document.activeElement)).toBe(true);
      expect(await field(opened, label).getAttribute('aria-invalid')).toBe('true');
      await field(opened, label).fill(before);
      expect(await field(opened, label).getAttribute('aria-invalid')).toBe(null);
    }
    expect(await sentSetup(opened)).toBeUndefined();
  });
});

describe('a press right after typing', () => {
  // What is typed makes the page longer or shorter once the field is left: a sum, a problem, more teams, another ion.
  const typed: readonly (readonly [what: string, label: string, words: string])[] = [
    ['number of classes', plan.classCount, '4'],
    ['number of teams', plan.teamCount, '12'],
    ['fewer teams', plan.teamCount, '1'],
    ['a sum', 'Flask', '2 * 100 mL'],
    ['a problem', 'Flask', '2.5 kg'],
    ['sizes', plan.flasks, '50, 100'],
    ['a class name', plan.className, 'A class with quite a long name that fills more than its line'],
    ['team names', plan.teamNames, 'Heron\nOtter\nBream\nPerch\nTench\nRoach\nDace\nChub\nRudd'],
  ];
  const pressed: readonly (readonly [name: string, happened: (opened: Page) => Promise<unknown>])[] = [
    [
      plan.build,
      (opened) =>
        opened
          .getByRole('heading', { name: build.doneTitle })
          .or(opened.locator('.summary:not(:empty)'))
          .first()
          .waitFor(),
    ],
    [
      plan.preview,
      (opened) =>
        opened
          .getByRole('heading', { name: plan.previewTitle })
          .or(opened.locator('.summary:not(:empty)'))
          .first()
          .waitFor(),
    ],
  ];
  for (const [button, happened] of pressed) {
    it.each(typed)(`meets “${button}” after %s`, async (_, label, words) => {
      const opened = await open();
      await unfoldAll(opened);
      const control = field(opened, label);
      await control.click();
      await control.fill(words);
      await pressAtOnce(opened, opened.getByRole('button', { name: button }));
      await happened(opened);
    });
  }

  it('meets the way to remove a class after a number of teams', async () => {
    const opened = await openSidebar({ answers: { ...answers, readLesson: value(good(emptyLesson)) } });
    await buildButton(opened).waitFor();
    await field(opened, plan.teamCount).click();
    await field(opened, plan.teamCount).fill('15');
    await pressAtOnce(opened, opened.getByRole('button', { name: plan.removeClass('Second period') }));
    await opened.getByText(plan.removed('Second period')).waitFor();
    await pressAtOnce(opened, opened.getByRole('button', { name: plan.putBack }));
    await expect.poll(() => field(opened, plan.className, 0).inputValue()).toBe('Second period');
  });
});

describe('the moments of the day', () => {
  const built = { ...answers, readLesson: value(good(builtLesson)), readTeams: value(good({ classes: [], day: '' })) };
  it('open with a built lesson at the class, and hold every view within two presses', async () => {
    const opened = await openSidebar({ answers: built });
    await opened.getByText('Talk first to Basalt').waitFor();
    const nav = opened.getByRole('navigation');
    expect(await nav.locator('.moments [aria-current]').textContent()).toBe(texts.moments.inClass);
    expect(await nav.locator('.views button').allTextContents()).toEqual([
      texts.views.classNow,
      texts.views.teams,
      texts.views.particles,
    ]);
    for (const [moment, views] of [
      [texts.moments.before, [texts.views.plan, texts.views.prepare, texts.views.sheets]],
      [texts.moments.after, [texts.views.poll, texts.views.record]],
      [texts.moments.more, [texts.views.share, texts.views.help]],
    ] as const) {
      await nav.getByRole('button', { name: moment, exact: true }).click();
      expect(await nav.locator('.views button').allTextContents()).toEqual(views);
      expect(await nav.locator('[aria-current=page]').textContent()).toBe(views[0]);
    }
  });

  it.each([
    { width: 300, rows: 2 },
    { width: 280, rows: 2 },
  ])('stand still in $rows rows at $width px, and every name is whole', async ({ width, rows }) => {
    const opened = await openSidebar({ answers: built, width });
    await opened.getByText('Talk first to Basalt').waitFor();
    const height = () =>
      opened.getByRole('navigation').evaluate((nav) => Math.round(nav.getBoundingClientRect().height));
    const before = await height();
    for (const name of [texts.views.help, texts.views.plan, texts.views.teams]) {
      await openView(opened, name);
      const buttons = opened.getByRole('navigation').getByRole('button');
      const tops = await buttons.evaluateAll((all) => all.map((one) => Math.round(one.getBoundingClientRect().top)));
      expect(new Set(tops).size).toBe(rows);
      expect(await height()).toBe(before);
      expect(await buttons.evaluateAll((all) => all.every((one) => one.scrollWidth <= one.clientWidth))).toBe(true);
    }
    expect(await sidewaysScroll(opened)).toBe(0);
  });

  it('tell what is open by more than an edge where the system has its own colours', async () => {
    const opened = await openSidebar({ answers: built });
    await opened.getByText('Talk first to Basalt').waitFor();
    await opened.emulateMedia({ forcedColors: 'active' });
    const grounds = (list: string) =>
      opened
        .locator(`nav ${list} button`)
        .evaluateAll((all) =>
          all.map((one) => [one.hasAttribute('aria-current'), getComputedStyle(one).backgroundColor] as const),
        );
    const filled = new Set<string>();
    for (const list of ['.moments', '.views']) {
      const all = await grounds(list);
      const current = all.filter(([isCurrent]) => isCurrent).map(([, ground]) => ground);
      const others = new Set(all.filter(([isCurrent]) => !isCurrent).map(([, ground]) => ground));
      expect(current).toHaveLength(1);
      expect(others.size).toBe(1);
      expect(others.has(current[0] ?? '')).toBe(false);
      filled.add(current[0] ?? '');
    }
    // Both in the system's own colour for what is chosen.
    expect(filled.size).toBe(1);
  });
});

describe('the next lesson', () => {
  const line = (begun: string, ...classes: readonly string[]) => ({
    id: `${begun}.1`,
    begun,
    activity: 'A stock solution and its dilution',
    substance: 'KBr',
    classes,
    entries: 12,
    invented: false,
  });
  const [second, fourth] = ['Second period', 'Fourth period'] as const;
  const lessons = {
    today: '2026-03-09',
    inUse: [line('2026-03-02', second, fourth)],
    away: [{ ...line('2026-02-16', second, fourth), cleared: [second] }],
    classes: builtLesson.setup.classes.map((one, place) => ({
      ...one,
      keys: [`c${place + 1}-t1`],
      lesson: '2026-03-02.1',
      begun: '2026-03-02',
      people: place === 0 ? 7 : 2,
    })),
  };
  const lived: FakeAnswers = {
    ...answers,
    readLesson: value(good({ ...builtLesson, awayCount: 1 })),
    readLessons: value(good(lessons)),
    nextLesson: value(good(building(1))),
    openEarlier: value(good(building(1))),
    continueBuild: value(good(building(5))),
  };
  const { next } = texts;
  /** Presses a button, and counts. */
  const presser = (opened: Page) => {
    let count = 0;
    return {
      press: async (name: string) => {
        await opened.getByRole('button', { name, exact: true }).click();
        count += 1;
      },
      presses: () => count,
    };
  };

  it('is three presses away with the defaults, for the classes that are ticked and with other numbers', async () => {
    const opened = await openSidebar({ answers: lived });
    const { press, presses } = presser(opened);
    await opened.getByText('Talk first to Basalt').waitFor();
    await press(texts.moments.before);
    await press(next.button);
    await opened.getByLabel(fourth).waitFor();
    expect(await accessibilityFaults(opened)).toEqual([]);
    await press(next.build);
    await isBuilt(opened);
    expect(presses()).toBe(3);
    const [setup, wish] = (await callsOf(opened)).find(({ name }) => name === 'nextLesson')?.args ?? [];
    const { classes, settings } = setup as Setup;
    expect(classes).toEqual(builtLesson.setup.classes);
    expect(settings.seed).toBe(String(Number(builtLesson.setup.settings.seed) + 1));
    expect(wish).toEqual({ takesPeople: false, knows: ['c1-t1', 'c2-t1'] });
  });

  it('leaves out a class without its tick, keeps the numbers without theirs, and counts the people it takes out', async () => {
    const opened = await openSidebar({ answers: lived });
    const { press } = presser(opened);
    await opened.getByText('Talk first to Basalt').waitFor();
    await press(texts.moments.before);
    await press(next.button);
    await opened.getByLabel(next.people(9)).waitFor();
    await opened.getByLabel(second).uncheck();
    await opened.getByLabel(next.numbers).uncheck();
    await opened.getByLabel(next.people(2)).check();
    // A class that is new is named right here; one that the file has already is ticked instead.
    await opened.getByLabel(next.newClasses).fill('1');
    await opened.getByRole('group', { name: texts.plan.classNumber(3) }).waitFor();
    await opened.getByLabel(texts.plan.className).fill(second);
    await press(next.build);
    await opened.getByText(texts.plan.classNameTwice(second)).first().waitFor();
    await opened.getByLabel(texts.plan.className).fill('Sixth period');
    await opened.getByLabel(texts.plan.teamCount, { exact: true }).fill('2');
    await press(next.build);
    await isBuilt(opened);
    const [setup, wish] = (await callsOf(opened)).find(({ name }) => name === 'nextLesson')?.args ?? [];
    expect((setup as Setup).classes.map(({ name, teams }) => [name, teams.length])).toEqual([
      ['Sixth period', 2],
      [fourth, builtLesson.setup.classes[1]?.teams.length],
    ]);
    expect((setup as Setup).settings.seed).toBe(builtLesson.setup.settings.seed);
    expect(wish).toEqual({ takesPeople: true, knows: ['c1-t1', 'c2-t1'] });
  });

  it('has the earlier ones behind a press, each with one more to open it for the classes that are ticked', async () => {
    const opened = await openSidebar({ answers: lived });
    const { press, presses } = presser(opened);
    await opened.getByText('Talk first to Basalt').waitFor();
    await press(texts.moments.before);
    await press(next.earlier);
    await opened.getByText(`${second}, ${fourth}`, { exact: false }).first().waitFor();
    // The yes that clears says that it is for good, and a lesson that was cleared says so before it is opened.
    await opened.getByText(deskWords.cleared([second])).waitFor();
    await opened.getByText(next.peopleHint).waitFor();
    await opened.getByLabel(next.people(9)).check();
    await opened.getByLabel(second).uncheck();
    await opened.getByLabel(next.people(2)).waitFor();
    await press(next.open([fourth]));
    await isBuilt(opened);
    expect(presses()).toBe(3);
    expect((await callsOf(opened)).find(({ name }) => name === 'openEarlier')?.args).toEqual([
      '2026-02-16.1',
      [fourth],
      { takesPeople: true },
    ]);
  });
});
