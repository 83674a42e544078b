import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { ViewName } from '../../src/sidebar/page/view.ts';
import { texts } from '../../src/sidebar/texts.ts';
import { openView } from '../browser/openView.ts';
import { accessibilityFaults, answerNext, callsOf, sidebarPages } from './browser.ts';
import type { FakeAnswers } from './fakeHost.ts';
import { builtLesson, classView, good } from './scenes.ts';

const openSidebar = sidebarPages();
const value = (answer: unknown) => [{ value: answer }];
const entry = {
  day: '2026-03-02',
  className: 'Second period',
  activity: 'A stock solution and its dilution',
  aim: '',
  present: '3 of 3 teams',
  finished: '1 of 3 teams',
  wentWell: '',
  hard: '',
  poll: '',
  next: '',
  notes: '',
  substance: '',
  concentrations: '',
};
const names = { present: [], absent: [], finished: [], absentMembers: [] };
const answers: FakeAnswers = {
  readLesson: value(good(builtLesson)),
  readClass: value(good(classView)),
  readTeams: value(
    good({
      classes: [
        {
          name: 'Second period',
          lessonHelp: { level: '3', suggestion: '' },
          practice: [],
          teams: [
            {
              team: 'Basalt',
              key: 'k1',
              absent: false,
              help: { level: '', extension: '' },
              members: { who: '', day: '', members: [] },
            },
          ],
        },
      ],
      day: '2026-03-02',
    }),
  ),
  readRecord: value(good({ day: '2026-03-02', classes: [{ proposal: entry, names, hasEntriesToday: true }] })),
  recordDue: value(good({ due: [] })),
  readSheets: value(
    good({
      teachers: [{ id: 4, name: 'Plan', kind: 'plan' }],
      classes: [{ name: 'Second period', address: 'https://x/edit#gid=1' }],
    }),
  ),
  readShare: value(good({ fileName: 'A file', entriesToday: 0, otherSheets: [] })),
  readPoll: value(good({ sheet: 'Poll', today: '2026-03-02', answers: [] })),
  readNumbers: value(good({ activity: 'none', decimalMark: 'point', typical: {}, teams: [] })),
  readPreparation: value(
    good({
      date: '2026-03-02',
      decimalMark: 'point',
      activity: 'A',
      aim: '',
      sections: [],
      sheet: 'none',
      labels: [],
      periods: [],
    }),
  ),
};
const focused = (opened: Page) =>
  opened.evaluate(() => `${document.activeElement?.tagName} ${document.activeElement?.textContent}`);
const drawn: Readonly<Record<ViewName, string>> = {
  plan: '.folds',
  prepare: '.amount-table',
  classNow: '.talk',
  teams: '.team-here',
  particles: '#particles-team',
  poll: '.actions',
  sheets: '.fold',
  record: '#record-text',
  share: '#share-name',
  help: '.legend',
};

describe('the focus', () => {
  it.each(Object.keys(drawn) as ViewName[])(
    'is on the heading of %s once it is drawn, and that is sound',
    async (name) => {
      const opened = await openSidebar({ answers, delay: 30 });
      await opened.locator('.talk').first().waitFor();
      await openView(opened, texts.views.help);
      await openView(opened, texts.views[name]);
      await opened.locator(drawn[name]).first().waitFor();
      const title = (await opened.locator('main h1').textContent()) ?? '';
      await expect.poll(() => focused(opened)).toBe(`H1 ${title}`);
      expect(await accessibilityFaults(opened)).toEqual([]);
      await opened.emulateMedia({ colorScheme: 'dark' });
      expect(await accessibilityFaults(opened)).toEqual([]);
    },
  );

  it('can be taken through a whole day by keyboard alone, from the class to the record', async () => {
    const opened = await openSidebar({
      answers: { ...answers, saveRecord: value(good({ saved: [entry] })) },
    });
    await opened.locator('.talk').first().waitFor();
    const { moments, views, classNow, record, prepare } = texts;
    /** By Tab to what has this name, as far as a page goes, and pressed. */
    const press = async (name: string) => {
      for (let tabs = 0; tabs < 120; tabs += 1) {
        const isThere = await opened.evaluate(
          (wanted) =>
            [document.activeElement?.textContent, document.activeElement?.getAttribute('aria-label')].includes(wanted),
          name,
        );
        if (isThere) return opened.keyboard.press('Enter');
        await opened.keyboard.press('Tab');
      }
      throw new Error(`Tab does not lead to “${name}”.`);
    };
    await press(classNow.lookAgain);
    await press(moments.before);
    await press(views.prepare);
    await press(prepare.print.labels ?? '');
    await press(moments.inClass);
    await press(views.teams);
    await opened.locator('.team-here').waitFor();
    await press(moments.after);
    await press(views.record);
    await opened.locator('#record-text').waitFor();
    await press(record.save);
    await opened.getByText(record.saved(1)).waitFor();
    expect((await callsOf(opened)).map(({ name }) => name)).toEqual(expect.arrayContaining(['openPage', 'saveRecord']));
  });

  it('stays with whoever has gone on while a view was still reading', async () => {
    const opened = await openSidebar({ answers, delay: 200 });
    await opened.locator('.talk').first().waitFor();
    await openView(opened, texts.views.teams);
    const button = opened.getByRole('navigation').getByRole('button', { name: texts.views.particles });
    await button.focus();
    await opened.locator('.team-here').waitFor();
    expect(await focused(opened)).toBe(`BUTTON ${texts.views.particles}`);
  });
});

describe('the class in front', () => {
  it('is the one that is shown, and another in front is turned to on coming back', async () => {
    const lesson = { ...builtLesson, inFront: 'Fourth period' };
    const opened = await openSidebar({ answers: { ...answers, readLesson: value(good(lesson)) } });
    await opened.locator('.talk').first().waitFor();
    expect(await opened.getByLabel(texts.classNow.pick, { exact: true }).inputValue()).toBe('Fourth period');
    expect((await callsOf(opened)).find(({ name }) => name === 'readClass')?.args).toEqual(['Fourth period']);
  });

  it('gives way to a class that was picked, until another sheet comes to the front', async () => {
    const lesson = { ...builtLesson, inFront: 'Fourth period' };
    const opened = await openSidebar({ answers: { ...answers, readLesson: value(good(lesson)) } });
    await opened.locator('.talk').first().waitFor();
    const pick = opened.getByLabel(texts.classNow.pick, { exact: true });
    await pick.selectOption('Second period');
    await openView(opened, texts.views.help);
    await openView(opened, texts.views.classNow);
    await opened.locator('.talk').first().waitFor();
    expect(await pick.inputValue()).toBe('Second period');
  });
});

describe('a class that is picked by hand', () => {
  const readsOf = async (opened: Page, className: string): Promise<number> =>
    (await callsOf(opened)).filter(({ name, args }) => name === 'readClass' && args[0] === className).length;

  it('stays, whatever a look says that was under way', async () => {
    const classOf = { ...classView, inFront: 'Second period' };
    const opened = await openSidebar({
      answers: { ...answers, readClass: value(good(classOf)) },
      delay: 150,
      stale: true,
    });
    const pick = opened.getByLabel(texts.classNow.pick, { exact: true });
    await pick.selectOption('Fourth period');
    // A look begins when the one before has ended.
    const look = opened.getByRole('button', { name: texts.classNow.lookAgain });
    await expect
      .poll(async () => {
        await look.click();
        return readsOf(opened, 'Fourth period');
      })
      .toBeGreaterThan(3);
    expect(await pick.inputValue()).toBe('Fourth period');
  });

  it('cannot be closed or opened before it is known which of the two', async () => {
    const opened = await openSidebar({ answers });
    const close = opened.getByRole('button', { name: texts.classNow.close });
    await expect.poll(() => close.isEnabled()).toBe(true);
    await answerNext(opened, 'readClass', [{ silent: true }]);
    await opened.getByLabel(texts.classNow.pick, { exact: true }).selectOption('Fourth period');
    expect(await close.isEnabled()).toBe(false);
  });
});

describe('the reminder', () => {
  it('comes when the host says that a class has gone, at the minute it named', async () => {
    const opened = await openSidebar({
      answers: { ...answers, recordDue: value(good({ due: [], nextInMinutes: 4 })) },
      clock: true,
    });
    await opened.clock.runFor(1000);
    const reminder = opened.getByRole('complementary', { name: texts.due.label });
    expect(await reminder.isHidden()).toBe(true);
    await answerNext(opened, 'recordDue', value(good({ due: ['Second period'] })));
    await opened.clock.runFor(3 * 60_000);
    expect(await reminder.isHidden()).toBe(true);
    await opened.clock.runFor(70_000);
    await reminder.waitFor();
    expect(await reminder.textContent()).toContain('Second period');
  });
});
