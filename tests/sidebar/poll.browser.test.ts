import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { PollView } from '../../src/desk/views.ts';
import type { PollAnswer } from '../../src/lab/poll/pollAnswer.ts';
import { pollTexts } from '../../src/lab/texts/poll.ts';
import { openView } from '../browser/openView.ts';
import { themes } from '../depth.ts';
import {
  accessibilityFaults,
  answerNext,
  callsOf,
  type SidebarOptions,
  sidebarPages,
  sidewaysScroll,
} from './browser.ts';
import { bad, builtLesson, classView, good, longName } from './scenes.ts';

const openSidebar = sidebarPages();

const [fully = '', mostly = '', little = '', no = ''] = pollTexts.scale;
const answer = (day: string, marks: readonly string[], parts: Partial<PollAnswer> = {}): PollAnswer => ({
  day,
  className: 'Second period',
  from: 'a team',
  marks,
  openLine: '',
  ...parts,
});
const markup = '<img src=x onerror=alert(1)> why is the water not counted?';
const poll: PollView = {
  sheet: 'Poll',
  today: '2026-03-03',
  answers: [
    answer('2026-03-02', [little, no, fully, mostly]),
    answer('2026-03-02', [mostly, little, fully, fully]),
    answer('2026-03-03', [fully, mostly, little, fully], { openLine: markup }),
    answer('2026-03-03', [mostly, mostly, fully, 'so so'], { from: 'one student', openLine: longName }),
    answer('2026-03-03', [fully, no, no, no], { className: 'Fourth period', from: '' }),
  ],
};

async function opened(options: Partial<SidebarOptions> & { readonly view?: unknown } = {}): Promise<Page> {
  const page = await openSidebar({
    ...options,
    answers: {
      readLesson: [{ value: good(builtLesson) }],
      readClass: [{ value: good(classView) }],
      readPoll: [{ value: options.view ?? good(poll) }],
      goToPoll: [{ value: good(null) }],
    },
  });
  await page.waitForSelector('.class-now .teams');
  await openView(page, 'Poll');
  return page;
}

const bars = async (on: Page) => {
  await on.waitForSelector('.poll-bars');
  return on.locator('.poll-bars').evaluateAll((charts) => charts.map((chart) => chart.getAttribute('aria-label')));
};

describe('the view Poll', () => {
  it('shows the latest day of all classes, each chart with its counts in words', async () => {
    const view = await opened();
    expect(await bars(view)).toEqual([
      'I knew what to do next. agree fully: 2, agree mostly: 1, agree a little: 0, do not agree: 0.',
      'I can explain what is in our flask. agree fully: 0, agree mostly: 2, agree a little: 0, do not agree: 1.',
      'The checks and hints helped us think. agree fully: 1, agree mostly: 0, agree a little: 1, do not agree: 1.',
      'Everybody in our team had a part in it. agree fully: 1, agree mostly: 0, agree a little: 0, do not agree: 1.',
    ]);
    await view.getByText('3 answers: 1 by single students, 1 by teams, 1 not said.').waitFor();
    // The bars are as long as their numbers say.
    const lengths = await view
      .locator('.poll-bars')
      .first()
      .locator('.bar')
      .evaluateAll((drawn) => drawn.map((bar) => Number(bar.getAttribute('width'))));
    expect(lengths).toEqual([136, 68, 0, 0]);
  });

  it('goes to the sheet, where there is one', async () => {
    const view = await opened();
    await bars(view);
    await view.getByRole('button', { name: 'Go to the Poll sheet' }).click();
    await view.getByText('The Poll sheet is now in front.').waitFor();
    expect((await callsOf(view)).filter(({ name }) => name === 'goToPoll')).toHaveLength(1);
    await answerNext(view, 'readPoll', [{ value: good({ ...poll, sheet: '', answers: [] }) }]);
    await view.getByRole('button', { name: 'Update now' }).click();
    await view.getByText('This file has no Poll sheet yet.').waitFor();
    expect(await view.getByRole('button', { name: 'Go to the Poll sheet' }).isHidden()).toBe(true);
  });

  it('narrows to a class and says what changed since last time', async () => {
    const view = await opened();
    await bars(view);
    await view.getByLabel('Class', { exact: true }).selectOption('Second period');
    await view.getByText('2 answers: 1 by single students, 1 by teams.').waitFor();
    expect(await view.locator('.change').allTextContents()).toEqual([
      '▲ More than last time. On Monday 2 March 2026: 1 of 2.',
      '▲ More than last time. On Monday 2 March 2026: 0 of 2.',
      '▽ Fewer than last time. On Monday 2 March 2026: 2 of 2.',
      '≈ About the same as last time. On Monday 2 March 2026: 2 of 2.',
    ]);
    await view.getByText('1 answer not on the list, not counted.').waitFor();
    await view.getByLabel('Day', { exact: true }).selectOption('2026-03-02');
    await view.getByText('2 answers: 0 by single students, 2 by teams.').waitFor();
    expect(await view.locator('.change').count()).toBe(0);
    expect(await view.getByLabel('Class', { exact: true }).inputValue()).toBe('Second period');
  });

  it('lists open lines as they were written, never as markup', async () => {
    const view = await opened();
    await bars(view);
    expect(await view.locator('.open-lines li').allTextContents()).toEqual([markup, longName]);
    expect(await view.locator('main img').count()).toBe(0);
  });

  it('says what is missing: a sheet, answers, an answer of this class', async () => {
    const view = await opened({ view: good({ ...poll, sheet: '', answers: [] }) });
    await view.getByText('This file has no Poll sheet yet.').waitFor();
    await answerNext(view, 'readPoll', [{ value: good({ ...poll, answers: [] }) }]);
    await view.getByRole('button', { name: 'Update now' }).click();
    await view.getByText('No answers yet.').waitFor();
    await answerNext(view, 'readPoll', [{ value: bad('Expected a, received b. Do c.') }]);
    await view.getByRole('button', { name: 'Update now' }).click();
    await view.getByRole('alert').getByText('Do c.').waitFor();
    await answerNext(view, 'readPoll', [{ value: good({ ...poll, answers: poll.answers.slice(0, 1) }) }]);
    await view.getByRole('button', { name: 'Try again' }).click();
    await bars(view);
    await view.getByLabel('Class', { exact: true }).selectOption('Fourth period');
    await view.getByText('This class has not answered yet.').waitFor();
  });

  it.each(themes(0))('is accessible and fits 300 px (dark: %s)', async (dark) => {
    const view = await opened({ dark });
    await bars(view);
    await view.getByLabel('Class', { exact: true }).selectOption('Second period');
    await view.locator('.change').first().waitFor();
    expect(await accessibilityFaults(view)).toEqual([]);
    expect(await sidewaysScroll(view)).toBe(0);
  });
});
