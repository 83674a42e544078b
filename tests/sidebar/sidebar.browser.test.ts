import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { texts } from '../../src/sidebar/texts.ts';
import { openView } from '../browser/openView.ts';
import { unfoldAll } from '../browser/unfoldAll.ts';
import { themes } from '../depth.ts';
import {
  accessibilityFaults,
  answerNext,
  callsOf,
  type SidebarOptions,
  sidebarPages,
  sidewaysScroll,
} from './browser.ts';
import type { FakeAnswers } from './fakeHost.ts';
import {
  bad,
  building,
  builtLesson,
  classView,
  commaLesson,
  draft,
  emptyLesson,
  good,
  longName,
  longNames,
} from './scenes.ts';

const openSidebar = sidebarPages();

const value = (answer: unknown) => [{ value: answer }];
const emptyFile: FakeAnswers = {
  readLesson: value(good(emptyLesson)),
  draftTeams: value(good(draft)),
  startBuild: value(good(building(1))),
  startSample: value(good(building(1))),
  continueBuild: [2, 3, 4, 5].map((done) => ({ value: good(building(done)) })),
  readClass: value(good(classView)),
};
const builtFile: FakeAnswers = {
  ...emptyFile,
  readLesson: value(good(builtLesson)),
  checkAgain: value(good({ renewed: 2 })),
  goToTeam: value(good(null)),
};

const open = (answers: FakeAnswers, options: Partial<SidebarOptions> = {}): Promise<Page> =>
  openSidebar({ answers, ...options });
const view = openView;
/** The plan with every fold open. */
const unfolded = async (answers: FakeAnswers, options: Partial<SidebarOptions> = {}): Promise<Page> => {
  const opened = await open(answers, options);
  await buildButton(opened).waitFor();
  await unfoldAll(opened);
  return opened;
};
const isFocused = (control: Locator) => control.evaluate((one) => one === document.activeElement);
const focusedText = (opened: Page) => opened.evaluate(() => document.activeElement?.textContent ?? '');
const namesCalled = async (opened: Page) => (await callsOf(opened)).map(({ name }) => name);
const flask = (opened: Page) => opened.getByLabel('Flask', { exact: true });
const buildButton = (opened: Page) => opened.getByRole('button', { name: /^Build the table/ });

describe('plan and build', () => {
  it('offers a sample class first in an empty file, says that it is invented, and builds it', async () => {
    const opened = await open(emptyFile);
    const sample = opened.getByRole('button', { name: 'Build a sample class' });
    await sample.waitFor();
    expect(await opened.locator('main button').first().textContent()).toBe('Build a sample class');
    expect(await opened.locator('.sample').textContent()).toContain('everybody in it is invented');
    await answerNext(opened, 'readLesson', value(good(builtLesson)));
    await sample.click();
    await opened.getByRole('heading', { name: 'The table is built' }).waitFor();
    expect(await opened.locator('.build-panel').textContent()).toContain('Everybody in this class is invented');
    expect(await opened.getByRole('progressbar').getAttribute('aria-valuenow')).toBe('100');
    expect(await namesCalled(opened)).toEqual([
      'readLesson',
      'startSample',
      ...Array.from({ length: 4 }, () => 'continueBuild'),
      'readLesson',
    ]);
    await opened.getByRole('button', { name: texts.build.toClass }).click();
    await opened.getByText('Talk first to Basalt').waitFor();
  });

  it('builds the sample by itself where the menu has opened it for that, and says where that is refused', async () => {
    const opened = await open(emptyFile, { opened: { page: 'sidebar', about: 'sample' } });
    await opened.getByRole('heading', { name: 'The table is built' }).waitFor();
    expect((await namesCalled(opened)).filter((name) => name === 'startSample')).toHaveLength(1);
    const refused = await open(
      { ...builtFile, startSample: value(bad('Expected a file without a lesson.')) },
      { opened: { page: 'sidebar', about: 'sample' } },
    );
    await refused.getByText('Expected a file without a lesson.').waitFor();
    expect(await namesCalled(refused)).not.toContain('continueBuild');
  });

  it('does not offer the sample over a lesson that is there', async () => {
    const opened = await open(builtFile);
    await view(opened, 'Plan');
    await buildButton(opened).waitFor();
    expect(await opened.getByRole('button', { name: 'Build a sample class' }).count()).toBe(0);
  });

  it('shows what a sum means and sends it as a plain number, figures kept', async () => {
    const opened = await unfolded(emptyFile);
    await flask(opened).fill('3 * 200 mL');
    await opened.getByText('= 600 mL').waitFor();
    await opened.getByLabel('Target molarity').fill('0.150');
    await buildButton(opened).click();
    await opened.getByRole('heading', { name: 'The table is built' }).waitFor();
    const sent = (await callsOf(opened)).find(({ name }) => name === 'startBuild')?.args[0];
    expect(sent).toEqual({
      ...emptyLesson.setup,
      givens: { ...emptyLesson.setup.givens, flask: '600', 'target molarity': '0.150' },
    });
  });

  describe('who dilutes concentrated reagents', () => {
    const { plan } = texts;
    const confirm = (opened: Page) => opened.getByRole('button', { name: plan.reagentConfirm });
    const planned = async () => {
      const opened = await unfolded(emptyFile);
      await buildButton(opened).waitFor();
      await unfoldAll(opened);
      return { opened, who: opened.getByLabel(plan.reagentMaker) };
    };
    const builtWith = async (opened: Page) => {
      await buildButton(opened).click();
      await opened.getByRole('heading', { name: 'The table is built' }).waitFor();
      return (await callsOf(opened)).find(({ name }) => name === 'startBuild')?.args[0];
    };

    it('stays the staff until a warning is confirmed', async () => {
      const { opened, who } = await planned();
      expect(await who.inputValue()).toBe('staff');
      await who.selectOption('students');
      await opened.getByRole('alert').filter({ hasText: plan.reagentWarning }).waitFor();
      expect(await who.inputValue()).toBe('staff');
      expect(await sidewaysScroll(opened)).toBe(0);
      expect(await accessibilityFaults(opened)).toEqual([]);
      await who.selectOption('students');
      expect(await confirm(opened).count()).toBe(1);
      expect(await builtWith(opened)).toMatchObject({ settings: { 'concentrated reagents': 'staff' } });
    });
    it('becomes the students by key, and the staff again without a warning', async () => {
      const { opened, who } = await planned();
      await who.selectOption('students');
      await confirm(opened).focus();
      await opened.keyboard.press('Enter');
      expect(await confirm(opened).count()).toBe(0);
      expect(await who.inputValue()).toBe('students');
      expect(await isFocused(who)).toBe(true);
      await who.selectOption('staff');
      expect(await opened.getByText(plan.reagentWarning).count()).toBe(0);
      await who.selectOption('students');
      await confirm(opened).click();
      expect(await builtWith(opened)).toMatchObject({ settings: { 'concentrated reagents': 'students' } });
    });
  });

  it('works with a decimal comma', async () => {
    const opened = await unfolded({ ...emptyFile, readLesson: value(good(commaLesson)) });
    await opened.getByLabel('Stock molarity').fill('2 * 0,25 mol/L');
    await opened.getByText('= 0,5 mol/L').waitFor();
    await buildButton(opened).click();
    await opened.getByRole('heading', { name: 'The table is built' }).waitFor();
    const sent = (await callsOf(opened)).find(({ name }) => name === 'startBuild')?.args[0];
    expect(sent).toMatchObject({ givens: { 'stock molarity': '0,5', 'target molarity': '0,120' } });
  });

  it('says beside each field what to do, goes to the first, opens what is folded, and keeps what was typed', async () => {
    const opened = await open(emptyFile);
    await opened.locator('summary', { hasText: texts.plan.numbers }).click();
    await opened.getByLabel('Seed', { exact: true }).fill('1.5');
    await flask(opened).fill('2.5 kg');
    await opened.locator('summary', { hasText: texts.plan.numbers }).click();
    await buildButton(opened).click();
    expect(await flask(opened).evaluate((control) => control === document.activeElement)).toBe(true);
    const description = await flask(opened).evaluate((control) =>
      (control.getAttribute('aria-describedby') ?? '')
        .split(' ')
        .map((id) => document.getElementById(id)?.textContent)
        .join(' '),
    );
    expect(description).toContain('“2.5 kg” is a mass');
    expect(await opened.locator('.summary').textContent()).toBe('Please check 2 fields. The first is Flask.');
    expect(await opened.getByText('“1.5” is not a whole number').isVisible()).toBe(true);
    expect(await namesCalled(opened)).toEqual(['readLesson']);
    expect(await accessibilityFaults(opened)).toEqual([]);
    await opened.reload();
    await buildButton(opened).waitFor();
    expect(await flask(opened).inputValue()).toBe('2.5 kg');
    await opened.getByRole('button', { name: texts.plan.fromSheet }).click();
    expect(await flask(opened).inputValue()).toBe('200');
  });

  it('asks which counts when the Plan sheet changed since the page read it', async () => {
    const opened = await open(builtFile);
    await view(opened, 'Plan');
    await unfoldAll(opened);
    await flask(opened).fill('100');
    const { setup } = builtLesson;
    const changed = { ...builtLesson, setup: { ...setup, givens: { ...setup.givens, 'stock molarity': '0.450' } } };
    await answerNext(opened, 'readLesson', value(good(changed)));
    await buildButton(opened).click();
    await opened.getByText(texts.plan.sheetChanged).waitFor();
    expect(await namesCalled(opened)).not.toContain('startBuild');
    expect(await accessibilityFaults(opened)).toEqual([]);
    await opened.getByRole('button', { name: texts.plan.fromSheet }).click();
    expect(await opened.getByLabel('Stock molarity').inputValue()).toBe('0.450');
    await buildButton(opened).click();
    await opened.getByRole('heading', { name: 'The table is built' }).waitFor();
    const sent = (await callsOf(opened)).find(({ name }) => name === 'startBuild')?.args[0];
    expect(sent).toEqual(changed.setup);
  });

  it('keeps what was typed where the file says something else after the build', async () => {
    const opened = await unfolded(emptyFile);
    await flask(opened).fill('100');
    await buildButton(opened).click();
    await opened.getByRole('heading', { name: 'The table is built' }).waitFor();
    await opened.getByRole('button', { name: texts.build.toPlan }).click();
    expect(await flask(opened).inputValue()).toBe('100');
    await opened.getByText(texts.plan.draftKept).waitFor();
  });

  it('asks what a build has to know first, keeps what was typed, and sends the answer', async () => {
    const pairs = [{ kind: 'team', from: 'Basalt', to: longName, className: 'Second period' }] as const;
    const problem = { message: 'Asked.', question: { about: 'names', pairs } };
    const opened = await unfolded({
      ...emptyFile,
      startBuild: [{ value: { ok: false, problem } }, { value: good(building(1)) }],
    });
    await flask(opened).fill('100');
    await buildButton(opened).click();
    const same = opened.getByRole('button', { name: texts.plan.names.same });
    await same.waitFor();
    expect(await isFocused(same)).toBe(true);
    expect(await opened.getByRole('alert').textContent()).toContain(longName);
    expect(await accessibilityFaults(opened)).toEqual([]);
    expect(await sidewaysScroll(opened)).toBe(0);
    expect(await flask(opened).inputValue()).toBe('100');
    await opened.keyboard.press('Enter');
    await opened.getByRole('heading', { name: 'The table is built' }).waitFor();
    const asked = (await callsOf(opened)).filter(({ name }) => name === 'startBuild').map(({ args }) => args[1]);
    expect(asked).toEqual([{}, { names: 'same' }]);
    // A plan that was begun in an empty file knows of no team.
    expect((await callsOf(opened)).find(({ name }) => name === 'startBuild')?.args[2]).toEqual([]);
  });

  it('keeps what was typed while it is open where storage is refused', async () => {
    const opened = await unfolded(emptyFile, { withoutStorage: true });
    await flask(opened).fill('123');
    await view(opened, 'Help');
    await view(opened, 'Plan');
    expect(await flask(opened).inputValue()).toBe('123');
  });

  it('puts a problem that the host found beside its field, or says it with a way to try again', async () => {
    const opened = await unfolded({ ...emptyFile, draftTeams: value(bad('No such ion today.', 'givens.ion')) });
    await opened.getByRole('button', { name: 'See the teams’ numbers' }).click();
    await opened.getByText('No such ion today.').waitFor();
    expect(await opened.getByLabel('Ion', { exact: true }).getAttribute('aria-invalid')).toBe('true');
    await answerNext(opened, 'draftTeams', [{ fails: 'TypeError: x is undefined' }, { value: good(draft) }]);
    await opened.getByRole('button', { name: 'See the teams’ numbers' }).click();
    const alert = opened.getByRole('alert').filter({ hasText: 'could not do that' });
    await alert.waitFor();
    expect(await alert.textContent()).not.toContain('TypeError');
    await alert.getByRole('button', { name: 'Try again' }).click();
    await opened.getByRole('heading', { name: 'The teams’ numbers' }).waitFor();
  });

  it('shows the teams’ numbers with remarks before anything is built, and other numbers from the next seed', async () => {
    const opened = await unfolded(emptyFile);
    await opened.getByRole('button', { name: 'See the teams’ numbers' }).click();
    await opened.getByRole('heading', { name: 'The teams’ numbers' }).waitFor();
    const shown = (await opened.locator('.preview').textContent()) ?? '';
    expect(shown).toContain('With these pipettes two teams have the same target volume.');
    // By hand: 1.54 mol/L in all × 0.200 L × 119.002 g/mol = 36.65 g; 5 × 200 mL made, 99 mL of it taken, 254 mL diluted.
    expect(shown).toContain('KBr36.66 gSolution made1 LSolution used0.1 LWaste1.16 L');
    expect(shown).toContain('Most of the solution is thrown away: only 0.1 L of 1 L is used.');
    expect(shown).toContain('To make less, add a smaller flask');
    expect(shown).toMatch(/The same for every team.*formulaKBr.*flask200 mL/);
    expect(shown).toMatch(/stock molarity, mol\/L.*Quartz0\.310/);
    await expect.poll(() => focusedText(opened)).toBe('The teams’ numbers');
    expect(await accessibilityFaults(opened)).toEqual([]);
    await opened.getByRole('button', { name: 'Try other numbers' }).click();
    await expect.poll(async () => (await callsOf(opened)).length).toBe(3);
    expect((await callsOf(opened))[2]).toMatchObject({ name: 'draftTeams', args: [{ settings: { seed: '8' } }] });
    await flask(opened).fill('100');
    expect(await opened.locator('.preview').textContent()).toContain('You have changed the plan since');
    expect(await namesCalled(opened)).not.toContain('startBuild');
  });

  it('takes another formula, and never calls an unlisted substance harmless', async () => {
    const opened = await open(emptyFile);
    await opened.getByLabel(texts.plan.solute, { exact: true }).selectOption({ label: 'Another formula …' });
    const formula = opened.getByLabel('Formula', { exact: true });
    expect(await formula.evaluate((control) => control === document.activeElement)).toBe(true);
    await formula.fill('na2so4');
    await formula.blur();
    await opened.getByText('Did you mean Na2SO4?').waitFor();
    await formula.fill('Na2SO4');
    await formula.blur();
    await opened.getByText('= 142.04 g/mol').waitFor();
    await formula.fill('Li2SO4');
    await formula.blur();
    await opened.getByText('does not mean it is harmless').waitFor();
    await opened.getByText('read the safety data sheet').waitFor();
    await formula.fill('K2Cr2O7');
    await formula.blur();
    await opened.getByText('Danger', { exact: true }).waitFor();
    await opened.getByText('H350: causes cancer (harmonised').waitFor();
    await opened.getByText('Chromium(VI) can cause cancer').waitFor();
    expect(await opened.getByText('Not in our list').count()).toBe(0);
    await formula.fill('Na2S2O3');
    await formula.blur();
    await opened.getByLabel(texts.plan.solute, { exact: true }).selectOption({ label: 'Cobalt(II) chloride · CoCl2' });
    await opened.getByText('Cobalt salts are sensitising').waitFor();
    await opened.getByLabel(texts.plan.solute, { exact: true }).selectOption({ label: 'Another formula …' });
    expect(await formula.inputValue()).toBe('Na2S2O3');
    await buildButton(opened).click();
    await opened.getByRole('heading', { name: 'The table is built' }).waitFor();
    const sent = (await callsOf(opened)).find(({ name }) => name === 'startBuild')?.args[0];
    expect(sent).toMatchObject({ givens: { formula: 'Na2S2O3' } });
  });

  it('lets one pick among the ions of the substance, and keeps how the ion in the sheet was typed', async () => {
    const opened = await unfolded(emptyFile);
    const ion = opened.getByLabel('Ion', { exact: true });
    const labels = () => ion.evaluate((list) => [...(list as HTMLSelectElement).options].map(({ label }) => label));
    expect(await labels()).toEqual(['K⁺', 'Br⁻']);
    expect(await ion.inputValue()).toBe('Br-');
    await opened.getByLabel(texts.plan.solute, { exact: true }).selectOption({ label: 'Another formula …' });
    const formula = opened.getByLabel('Formula', { exact: true });
    await formula.fill('CaCl2');
    await formula.blur();
    expect(await labels()).toEqual(['Ca²⁺', 'Cl⁻']);
    expect(await ion.inputValue()).toBe('Cl⁻');
    await formula.fill('C12H22O11');
    await formula.blur();
    await opened.getByText('This substance gives no ions that can be counted here').waitFor();
    expect(await ion.count()).toBe(0);
    expect(await opened.getByText(texts.plan.draftKept).count()).toBe(0);
  });

  it('asks for what another activity takes', async () => {
    const opened = await unfolded(emptyFile);
    await opened.getByLabel('Activity').selectOption({ label: 'A dilution' });
    expect(await opened.getByLabel('Density').inputValue()).toBe('1.05');
    expect(await opened.getByLabel('Stock molarity').inputValue()).toBe('0.400');
    expect(await opened.getByLabel(texts.plan.solute, { exact: true }).count()).toBe(0);
  });

  it('follows the activity in its number of periods until the teacher picks one', async () => {
    const opened = await unfolded(emptyFile);
    const activity = opened.getByLabel('Activity');
    const periods = opened.getByLabel('Periods', { exact: true });
    expect(await periods.inputValue()).toBe('2');
    await activity.selectOption({ value: 'dilution' });
    expect(await periods.inputValue()).toBe('1');
    await activity.selectOption({ value: 'stock and dilution' });
    expect(await periods.inputValue()).toBe('2');
    await periods.selectOption('1');
    await activity.selectOption({ value: 'dilution' });
    await activity.selectOption({ value: 'stock and dilution' });
    expect(await periods.inputValue()).toBe('1');
    await buildButton(opened).click();
    await opened.getByRole('heading', { name: 'The table is built' }).waitFor();
    const [sent] = (await callsOf(opened)).filter(({ name }) => name === 'startBuild');
    expect(sent?.args[0]).toMatchObject({ settings: { periods: '1' } });
  });

  it('sends the periods of the activity that was chosen, and leaves fewer that the Plan asks for', async () => {
    const opened = await unfolded(emptyFile);
    await opened.getByLabel('Activity').selectOption({ value: 'dilution' });
    await buildButton(opened).click();
    await opened.getByRole('heading', { name: 'The table is built' }).waitFor();
    const [sent] = (await callsOf(opened)).filter(({ name }) => name === 'startBuild');
    expect(sent?.args[0]).toMatchObject({ activity: 'dilution', settings: { periods: '1' } });

    const { setup } = emptyLesson;
    const single = { ...emptyLesson, setup: { ...setup, settings: { ...setup.settings, periods: '1' } } };
    const other = await unfolded({ ...emptyFile, readLesson: value(good(single)) });
    await other.getByLabel('Activity').selectOption({ value: 'dilution' });
    await other.getByLabel('Activity').selectOption({ value: 'stock and dilution' });
    expect(await other.getByLabel('Periods', { exact: true }).inputValue()).toBe('1');
  });

  it('adds and removes classes, puts one back, and never loses a team name to a smaller number', async () => {
    const opened = await unfolded(emptyFile);
    await opened.getByRole('button', { name: 'Remove Second period' }).click();
    expect(await opened.getByLabel(texts.plan.className).count()).toBe(1);
    expect(await opened.getByLabel(texts.plan.classCount).inputValue()).toBe('1');
    await expect.poll(() => focusedText(opened)).toBe('Put it back');
    await opened.keyboard.press('Enter');
    expect(await opened.getByLabel(texts.plan.className).first().inputValue()).toBe('Second period');
    await unfoldAll(opened);
    const names = opened.getByLabel(texts.plan.teamNames).first();
    const number = opened.getByLabel(texts.plan.teamCount, { exact: true }).first();
    await number.fill('2');
    expect(await names.inputValue()).toBe('Basalt\nQuartz');
    await number.fill('4');
    // Slate and Marble are in the other class.
    expect(await names.inputValue()).toBe('Basalt\nQuartz\nGranite\nPumice');
    const classes = opened.getByLabel(texts.plan.classCount);
    await classes.fill('3');
    expect(await opened.getByLabel(texts.plan.className).nth(2).inputValue()).toBe('Class 3');
    await opened.getByLabel(texts.plan.className).nth(1).fill('Late class');
    await classes.fill('1');
    expect(await opened.getByLabel(texts.plan.className).count()).toBe(1);
    await classes.fill('2');
    expect(await opened.getByLabel(texts.plan.className).nth(1).inputValue()).toBe('Late class');
    await classes.fill('0');
    await buildButton(opened).click();
    await opened.getByText(texts.plan.countRange(1, 12)).waitFor();
    expect(await namesCalled(opened)).not.toContain('startBuild');
  });

  it('shows the build in words and as a tube, rests when left, and goes on', async () => {
    const opened = await open(emptyFile, { delay: 500, clock: true });
    // One answer a time: first the lesson, then the teams' numbers, then sheet after sheet.
    await opened.clock.runFor(600);
    await buildButton(opened).click();
    await opened.clock.runFor(1100);
    await opened.getByText('Second period · 40 percent').waitFor();
    expect(await opened.getByRole('progressbar').getAttribute('aria-valuenow')).toBe('40');
    await opened.getByRole('button', { name: texts.build.leave }).click();
    await opened.clock.runFor(500);
    await opened.getByRole('heading', { name: texts.build.leftTitle }).waitFor();
    expect(await accessibilityFaults(opened)).toEqual([]);
    const asked = (await callsOf(opened)).length;
    await opened.clock.runFor(700);
    expect((await callsOf(opened)).length).toBe(asked);
    await opened.getByRole('button', { name: texts.plan.goOn }).click();
    await opened.clock.runFor(3000);
    await opened.getByRole('heading', { name: 'The table is built' }).waitFor();
    await expect.poll(() => focusedText(opened)).toBe('The table is built');
  });

  it('is sound while it builds', async () => {
    const opened = await open({ ...emptyFile, continueBuild: [{ silent: true }] });
    await buildButton(opened).click();
    await opened.getByText('Plan · 20 percent').waitFor();
    expect(await accessibilityFaults(opened)).toEqual([]);
    await expect.poll(() => focusedText(opened)).toBe('Building the table');
  });

  it('goes on building while another view is open', async () => {
    const opened = await open(emptyFile, { delay: 100 });
    await buildButton(opened).click();
    await opened.getByRole('progressbar').waitFor();
    await view(opened, 'Help');
    await expect.poll(() => namesCalled(opened)).toContain('continueBuild');
    await expect.poll(async () => (await namesCalled(opened)).filter((name) => name === 'readLesson').length).toBe(2);
    await view(opened, 'Plan');
    await opened.getByRole('heading', { name: 'The table is built' }).waitFor();
  });

  it('says why a build stopped and goes on from there', async () => {
    const stops = [{ fails: 'Too many simultaneous invocations' }, { value: good(building(5)) }];
    const opened = await open({ ...emptyFile, continueBuild: stops });
    await buildButton(opened).click();
    await opened.getByText('The spreadsheet is busy').waitFor();
    expect(await accessibilityFaults(opened)).toEqual([]);
    await opened.getByRole('button', { name: texts.plan.goOn }).click();
    await opened.getByRole('heading', { name: 'The table is built' }).waitFor();
  });

  it('offers to go on with a build that was left with the sidebar closed', async () => {
    const lesson = { ...emptyLesson, building: building(2) };
    const opened = await open({
      ...emptyFile,
      readLesson: value(good(lesson)),
      continueBuild: value(good(building(5))),
    });
    await opened.getByText('The table is 40 percent built').waitFor();
    await opened.getByRole('button', { name: texts.plan.goOn }).click();
    await opened.getByRole('heading', { name: 'The table is built' }).waitFor();
  });
});

describe('the class now', () => {
  it('opens with whom to talk to first and why, then tubes with their numbers, then one sentence for the class', async () => {
    const opened = await open(builtFile);
    await opened.getByText('Talk first to Basalt').waitFor();
    const text = ((await opened.locator('main').textContent()) ?? '').replace(/\s+/g, ' ');
    const places = [
      '10:42',
      'Talk first to Basalt',
      'Three tries',
      'Then Quartz',
      'Granite',
      '4 of 4',
      texts.classNow.say,
    ].map((part) => text.indexOf(part));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(-1);
    expect(text).toContain('still checking 1 row');
    expect(await accessibilityFaults(opened)).toEqual([]);
  });

  it('opens a team from the keyboard, shows sign and word for each step, and goes to its rows', async () => {
    const opened = await open(builtFile);
    const team = opened.locator('summary', { hasText: 'Basalt' });
    await team.focus();
    await opened.keyboard.press('Enter');
    const rows = await opened.locator('.teams > li').first().locator('.steps').textContent();
    for (const part of ['✓', 'on target', '↻', 'not yet', '↳', 'follows', '3 attempts', 'per litre', 'Calculator']) {
      expect(rows).toContain(part);
    }
    expect(await accessibilityFaults(opened)).toEqual([]);
    await opened.getByRole('button', { name: texts.classNow.goToRows('Basalt') }).click();
    await opened.getByText(texts.classNow.went('Basalt')).waitFor();
    expect((await callsOf(opened)).at(-1)).toEqual({ name: 'goToTeam', args: ['Second period', 'k1'] });
  });

  it('never counts what the host still works on as wrong', async () => {
    const opened = await open(builtFile);
    await opened.locator('summary', { hasText: 'Slate' }).click();
    expect(await opened.locator('.teams > li').nth(3).locator('.state').first().textContent()).toBe('…not known yet');
  });

  it('reads another class when it is picked', async () => {
    const opened = await open(builtFile);
    await opened.getByText('Talk first to Basalt').waitFor();
    await opened.getByLabel('Class', { exact: true }).selectOption('Fourth period');
    await expect.poll(async () => (await callsOf(opened)).at(-1)?.args).toEqual(['Fourth period']);
  });

  it('looks again every 20 seconds while it is open, keeps focus and what is unfolded, and stops in another view', async () => {
    const opened = await open(builtFile, { clock: true });
    await opened.clock.runFor(100);
    const team = opened.locator('summary', { hasText: 'Basalt' });
    await team.click();
    const looks = async () => (await namesCalled(opened)).filter((name) => name === 'readClass').length;
    expect(await looks()).toBe(1);
    const further = { ...classView, clock: '10:43', teams: classView.teams.map((one) => ({ ...one, done: 3 })) };
    await answerNext(opened, 'readClass', value(good(further)));
    await opened.clock.runFor(20_100);
    expect(await looks()).toBe(2);
    await opened.getByText('10:43').waitFor();
    expect(await team.textContent()).toContain('3 of 4');
    expect(await opened.getByRole('button', { name: texts.classNow.goToRows('Basalt') }).isVisible()).toBe(true);
    expect(await team.evaluate((summary) => summary === document.activeElement)).toBe(true);
    await answerNext(opened, 'readClass', [{ fails: 'gone' }]);
    await opened.clock.runFor(20_100);
    await opened.getByText('Last updated at 10:43').waitFor();
    expect(await team.isVisible()).toBe(true);
    await view(opened, 'Help');
    await opened.clock.runFor(60_000);
    expect(await looks()).toBe(3);
  });

  it('says when the host does not answer, and lets one try again', async () => {
    const opened = await open(
      { ...builtFile, readClass: [{ silent: true }, { value: good(classView) }] },
      { clock: true },
    );
    await opened.clock.runFor(9000);
    await opened.getByText('Still waiting for the spreadsheet').waitFor();
    // To just after its patience ends: the next look by itself, at 100 seconds, would take the button away.
    await opened.clock.runFor(82_000);
    await opened.getByText('No answer from the spreadsheet for 90 seconds').waitFor();
    expect(await accessibilityFaults(opened)).toEqual([]);
    await opened.getByRole('button', { name: 'Try again' }).click();
    await opened.clock.runFor(100);
    await opened.getByText('Talk first to Basalt').waitFor();
  });

  it('enters failed checks again and says how many', async () => {
    const opened = await open(builtFile);
    await opened.getByRole('button', { name: texts.classNow.checkAgain }).click();
    await opened.getByText('2 checks restarted').waitFor();
  });

  it('closes a class at the bell with one button, which opens it again', async () => {
    const closed = { ...classView, closed: true, talkFirst: [] };
    const opened = await open({
      ...builtFile,
      readClass: [classView, closed, classView].map((seen) => ({ value: good(seen) })),
      closeClass: [true, false].map((noted) => ({ value: good({ noted }) })),
    });
    await opened.getByRole('button', { name: texts.classNow.close }).click();
    await opened.getByText(texts.classNow.closed(true)).waitFor();
    await opened.getByText(texts.classNow.closedNow).waitFor();
    await opened.getByRole('button', { name: texts.classNow.open }).click();
    await opened.getByText(texts.classNow.opened).waitFor();
    await opened.getByRole('button', { name: texts.classNow.close }).waitFor();
    const asked = (await callsOf(opened)).filter(({ name }) => name === 'closeClass');
    expect(asked.map(({ args }) => args[1])).toEqual([true, false]);
  });

  it('leads to the plan while there is no class', async () => {
    const opened = await open(emptyFile);
    await buildButton(opened).waitFor();
    await view(opened, 'Class now');
    expect(await accessibilityFaults(opened)).toEqual([]);
    await opened.getByRole('button', { name: 'Go to the plan' }).click();
    await buildButton(opened).waitFor();
  });

  it('shows names as text, whatever they hold', async () => {
    const lesson = { ...builtLesson, classes: [longName] };
    const opened = await open({ ...builtFile, readLesson: value(good(lesson)), readClass: value(good(longNames)) });
    await opened.locator('.talk').first().waitFor();
    expect(await opened.locator('main img').count()).toBe(0);
    expect(await opened.locator('.talk').first().textContent()).toContain('<img src=x onerror=alert(1)>');
  });
});

describe('help and opening', () => {
  it('explains every state, and what is hidden and what is not', async () => {
    const opened = await open(builtFile);
    await view(opened, 'Help');
    await expect.poll(() => focusedText(opened)).toBe('Help');
    const text = await opened.locator('main').textContent();
    for (const part of [
      'on target',
      'unreadable',
      'for practice, not for tests',
      'read all its cells',
      'several accounts at once',
      'A team is absent',
      'A team finishes early',
      'A team joins late',
      'four short statements and one open line',
      'Equal volumes before and after dilution',
    ]) {
      expect(text).toContain(part);
    }
    expect(await accessibilityFaults(opened)).toEqual([]);
  });

  it('has help even when the host does not let the page in', async () => {
    const denied = 'We’re sorry, a server error occurred while reading from storage. Error code PERMISSION_DENIED.';
    const opened = await open({ ...emptyFile, readLesson: [{ fails: denied }, { value: good(emptyLesson) }] });
    await opened.getByText('signed in to several accounts at once').waitFor();
    expect(await accessibilityFaults(opened)).toEqual([]);
    await view(opened, 'Help');
    await opened.getByRole('heading', { name: 'Several accounts' }).waitFor();
    await view(opened, 'Plan');
    await buildButton(opened).waitFor();
  });

  it('stays in the view that was asked for while the lesson is still being read', async () => {
    const opened = await open(builtFile, { delay: 300, clock: true });
    await view(opened, 'Help');
    await opened.clock.runFor(600);
    expect(await opened.getByRole('heading', { level: 1 }).textContent()).toBe('Help');
    await view(opened, 'Class now');
    await opened.clock.runFor(600);
    await opened.getByText('Talk first to Basalt').waitFor();
  });

  it('marks no view as the one shown before one is, and shows the one chosen meanwhile', async () => {
    const opened = await open(builtFile, { delay: 300, clock: true });
    const marked = opened.locator('nav [aria-current]');
    await opened.locator('nav button', { hasText: 'Plan' }).waitFor();
    expect(await marked.count()).toBe(0);
    await view(opened, 'Plan');
    await opened.clock.runFor(600);
    await buildButton(opened).waitFor();
    expect(await marked.allTextContents()).toEqual(['Before class', 'Plan']);
  });

  it('says what to do where there is no host at all', async () => {
    const opened = await open(emptyFile);
    await buildButton(opened).waitFor();
    await opened.evaluate(() => {
      Object.assign(window, { google: undefined });
    });
    await opened.getByRole('button', { name: 'See the teams’ numbers' }).click();
    await opened.getByText('works inside the spreadsheet').waitFor();
  });
});

describe('the look', () => {
  const everything: [string, (opened: Page) => Promise<unknown>][] = [
    ['Plan', unfoldAll],
    ['Class now', (opened) => opened.locator('.teams summary').first().click()],
    ['Help', async () => {}],
  ];
  const long = {
    ...builtFile,
    readClass: value(good(longNames)),
    readLesson: value(good({ ...builtLesson, classes: [longName] })),
  };
  for (const [index, [name, unfold]] of everything.entries()) {
    // 150 px is what 300 px leave at 200 % zoom.
    it.each([300, 280, 150])(`${name} needs no scrolling sideways at %i px, with long names`, async (width) => {
      const opened = await open(long, { width });
      await opened.locator('.talk').first().waitFor();
      await view(opened, name);
      await unfold(opened);
      expect(await sidewaysScroll(opened)).toBe(0);
    });
    it.each(themes(index))(`${name} passes every accessibility rule (dark: %s)`, async (dark) => {
      const opened = await open(builtFile, { dark });
      await opened.locator('.talk').first().waitFor();
      await view(opened, name);
      await unfold(opened);
      expect(await accessibilityFaults(opened)).toEqual([]);
    });
  }

  it('moves nothing where the system asks for less motion', async () => {
    const opened = await open(builtFile);
    await opened.emulateMedia({ reducedMotion: 'reduce' });
    await opened.locator('.talk').first().waitFor();
    const durations = await opened.evaluate(() =>
      [...document.querySelectorAll('*')].map((one) => getComputedStyle(one).transitionDuration),
    );
    expect(new Set(durations)).toEqual(new Set(['0s']));
  });

  it('reaches every control of the plan by the Tab key', async () => {
    const opened = await open(emptyFile);
    await buildButton(opened).waitFor();
    const controls = await opened
      .locator('button:visible, input:visible, select:visible, textarea:visible, summary:visible')
      .count();
    const seen = new Set<string>();
    await opened.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    for (let press = 0; press < controls + 5; press += 1) {
      await opened.keyboard.press('Tab');
      const reached = await opened.evaluate(() => {
        const all = [...document.querySelectorAll('button, input, select, textarea, summary')];
        return String(all.indexOf(document.activeElement as Element));
      });
      if (reached !== '-1') seen.add(reached);
    }
    expect(seen.size).toBe(controls);
  });
});
