import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { texts } from '../../src/sidebar/texts.ts';
import { openView } from '../browser/openView.ts';
import { callsOf, type SidebarOptions, sidebarPages } from './browser.ts';
import { bad, builtLesson, classView, good } from './scenes.ts';

/* What a page does where panels of the host behave in one of two ways, or keep things from it. */
const openSidebar = sidebarPages();
const value = (answer: unknown) => [{ value: answer }];
const answers = { readLesson: value(good(builtLesson)), readClass: value(good(classView)) };

interface Closing {
  closings: number;
  google: { script: { host: { close(): void } } };
}
/** Opened as a page, with the times noted that it asked to be closed. */
async function opened(options: SidebarOptions): Promise<{ page: Page; closed: () => Promise<number> }> {
  const page = await openSidebar(options);
  await page.evaluate(() => {
    const frame = window as unknown as Closing;
    frame.closings = 0;
    frame.google.script.host.close = () => {
      frame.closings += 1;
    };
  });
  return { page, closed: () => page.evaluate(() => (window as unknown as Closing).closings) };
}

describe('a page over the sidebar', () => {
  it('that is there to be tried closes itself and asks nothing', async () => {
    const { page, closed } = await opened({
      answers: { ...answers, openPage: value(good(null)) },
      opened: { page: 'trial' },
    });
    await page.getByRole('button', { name: texts.selfCheck.page.close }).click();
    expect(await closed()).toBe(1);
    expect(await callsOf(page)).toEqual([]);
  });
  it('stays where the way back fails and says why, and closes itself once the sidebar is there', async () => {
    const { page, closed } = await opened({
      answers: {
        ...answers,
        readPreparation: value(bad('No plan.')),
        openPage: [{ value: bad('Not now.') }, { value: good(null) }],
      },
      opened: { page: 'labels' },
    });
    const back = page.getByRole('button', { name: texts.pages.back });
    await back.click();
    await page.getByText('Not now.').waitFor();
    expect(await closed()).toBe(0);
    await back.click();
    await expect.poll(closed).toBe(1);
  });
});

describe('a sidebar that is opened by somebody who does not teach here', () => {
  it('says whose part it is, what works all the same, and who can let a colleague in', async () => {
    const page = await openSidebar({
      answers: {
        readLesson: value({
          ok: false,
          problem: { message: 'This part is for the teacher of the class.', reason: 'teacher' },
        }),
      },
    });
    const said = await page.getByRole('alert').textContent();
    expect(said).toContain('This part is for the teacher of the class. Your rows and their checks work without it.');
    expect(said).toContain('ask the owner of the file');
    await openView(page, 'Help');
    await page.getByText(/That makes it harder and not impossible/).waitFor();
  });
});

describe('a sidebar that works out the checks', () => {
  it('looks every eight seconds, says when, names what stands in the way, and goes on after a failure', async () => {
    const page = await openSidebar({
      answers: {
        ...answers,
        readLesson: value(good({ ...builtLesson, worksOutChecks: true })),
        workOutChecks: [
          { value: good({ rows: 2, clock: '10:42' }) },
          { value: good({ rows: 0, clock: '10:43', inTheWay: ['E47', 'F51'] }) },
          { value: bad('Not now.') },
        ],
      },
      clock: true,
    });
    const say = texts.checksHere;
    const bar = page.getByLabel(say.label);
    const looks = async () => (await callsOf(page)).filter(({ name }) => name === 'workOutChecks').length;
    for (const [count, words] of [
      say.worked('10:42'),
      `${say.worked('10:43')} ${say.inTheWay(['E47', 'F51'])}`,
      say.failed({ last: '10:43', problem: 'Not now.' }),
    ].entries()) {
      await page.clock.runFor(100);
      await bar.getByText(words, { exact: true }).waitFor();
      expect(await looks()).toBe(count + 1);
      await page.clock.runFor(7500);
      expect(await looks()).toBe(count + 1);
      await page.clock.runFor(500);
    }
  });
});

describe('copying', () => {
  /** The report of a student who could make no sheet is the shortest way to a text that is copied. */
  async function report(before: () => void): Promise<Page> {
    const page = await openSidebar({
      answers: {
        beginSelfCheck: value(good({ trial: undefined, findings: [] })),
      },
      opened: { page: 'sidebar', about: 'self-check' },
    });
    await page.getByRole('button', { name: texts.selfCheck.start }).click();
    await page.getByLabel(texts.selfCheck.report).waitFor();
    await page.evaluate(before);
    await page.getByRole('button', { name: texts.selfCheck.copy }).click();
    return page;
  }
  const text = (page: Page) => page.getByLabel(texts.selfCheck.report).inputValue();
  it('takes the clipboard where it may', async () => {
    const page = await report(() => {
      Object.defineProperty(navigator, 'clipboard', { value: { writeText: async () => {} } });
    });
    await page.getByText(texts.copy.copied).waitFor();
    expect(await text(page)).toContain('The button could copy.');
  });
  it('takes the older way where the clipboard is blocked', async () => {
    const page = await report(() => {
      Object.defineProperty(navigator, 'clipboard', {
        value: { writeText: () => Promise.reject(new Error('blocked')) },
      });
      document.execCommand = () => true;
    });
    await page.getByText(texts.copy.copied).waitFor();
    expect(await text(page)).toContain('by the older of the two ways');
  });
  it('marks the text and says what to press where both are blocked', async () => {
    const page = await report(() => {
      Object.defineProperty(navigator, 'clipboard', { value: undefined });
      document.execCommand = () => false;
    });
    await page.getByText(texts.copy.selected).waitFor();
    const marked = await page
      .getByLabel(texts.selfCheck.report)
      .evaluate((control: HTMLTextAreaElement) => control.value.slice(control.selectionStart, control.selectionEnd));
    expect(marked).toBe(await text(page));
    expect(marked).toContain('The button could not copy.');
  });
});
