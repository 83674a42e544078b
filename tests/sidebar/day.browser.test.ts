import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { RecordView, ShareView, TeamMembersView, TeamsView } from '../../src/desk/views.ts';
import { type RecordEntry, rowName } from '../../src/lab/record/recordEntry.ts';
import { texts } from '../../src/sidebar/texts.ts';
import { openView } from '../browser/openView.ts';
import { settled } from '../browser/settled.ts';
import { unfoldAll } from '../browser/unfoldAll.ts';
import { themes } from '../depth.ts';
import {
  accessibilityFaults,
  answerNext,
  callsOf,
  letGo,
  type SidebarOptions,
  sidebarPages,
  sidewaysScroll,
} from './browser.ts';
import type { FakeAnswers } from './fakeHost.ts';
import { bad, building, builtLesson, classView, good } from './scenes.ts';

const openSidebar = sidebarPages();

const value = (answer: unknown) => [{ value: answer }];
const entry: RecordEntry = {
  day: '2026-03-02',
  className: 'Second period',
  activity: 'A stock solution and its dilution',
  aim: 'Make a solution of known concentration.',
  present: '2 of 3 teams, 1 team absent',
  finished: '1 of 3 teams',
  wentWell: 'On target in every team: Molar mass.',
  hard: 'Most tries: Moles of solute (at least 7, several in 2 teams).',
  poll: 'Eight answers.',
  next: 'Go on at Stock to measure out (1 team).',
  notes: '',
  substance: 'potassium bromide, KBr',
  concentrations: 'stock molarity 0.400 mol/L',
};
const record: RecordView = {
  day: '2026-03-02',
  classes: [
    {
      proposal: entry,
      names: {
        present: ['Basalt', 'Quartz'],
        absent: ['Granite'],
        finished: ['Basalt'],
        absentMembers: [{ team: 'Quartz', names: ['Cy'] }],
      },
      hasEntriesToday: true,
    },
    {
      proposal: { ...entry, className: 'Fourth period', present: '0 of 2 teams', finished: '0 of 2 teams', poll: '' },
      names: { present: [], absent: [], finished: [], absentMembers: [] },
      hasEntriesToday: false,
    },
  ],
};
const share: ShareView = { fileName: 'Copy of solutions', entriesToday: 3, otherSheets: ['Roster'] };
const help = { level: '', extension: '' };
const lessonHelp = { level: '3', suggestion: 'Is there another way?' };
const teams: TeamsView = {
  classes: [
    {
      name: 'Second period',
      lessonHelp,
      practice: [],
      teams: [
        { team: 'Basalt', key: 'c1-t1', absent: false, help, members: { who: '', day: '', members: [] } },
        {
          team: 'Granite',
          key: 'c1-t3',
          absent: true,
          help: { level: '1', extension: 'Why is it warmer?' },
          members: { who: 'Eda', day: '2026-03-01', members: [{ name: 'Eda', absent: false, roles: ['calculates'] }] },
        },
      ],
    },
    {
      name: 'Fourth period',
      lessonHelp,
      practice: ['Practice 1'],
      teams: [{ team: 'Slate', key: 'c2-t1', absent: false, help }],
    },
  ],
  day: '2026-03-02',
};
const answers: FakeAnswers = {
  readLesson: value(good(builtLesson)),
  readClass: value(good(classView)),
  recordDue: value(good({ due: ['Second period'] })),
  readRecord: value(good(record)),
  saveRecord: value(good({ saved: [entry] })),
  readShare: value(good(share)),
  readTeams: value(good(teams)),
  setAbsent: value(good(null)),
  addTeam: value(good(building(1))),
  addClass: value(good(building(1))),
  emptyCopy: value(good({ ...building(1), left: ['Plan', 'Roster'] })),
  continueBuild: [2, 3, 4, 5].map((done) => ({ value: good(building(done)) })),
};
async function open(name: string, options: Partial<SidebarOptions> = {}, more: FakeAnswers = {}): Promise<Page> {
  const opened = await openSidebar({ answers: { ...answers, ...more }, ...options });
  await opened.getByRole('heading', { name: 'The class now' }).waitFor();
  await openView(opened, name);
  return opened;
}
const sent = async (opened: Page, name: string) =>
  (await callsOf(opened)).filter((one) => one.name === name).map(({ args }) => args);
const dayText = (opened: Page) => opened.getByLabel('Text of the day').inputValue();

describe('record', () => {
  it('shows the day as it happened, and keeps what was reworded', async () => {
    const opened = await open('Record');
    expect(await opened.getByLabel('Present').inputValue()).toBe(entry.present);
    expect(await opened.locator('.clock').textContent()).toBe('Monday 2 March 2026');
    await opened.getByLabel('Present').fill('2 of 3 teams, 7 people');
    await opened.getByLabel('In your own words').fill('A calm hour.');
    // Its words go on behind the count of teams, and have to be seen whole in the narrow page.
    const finished = opened.getByLabel(texts.record.labels.finished);
    expect(await finished.evaluate((control) => control.tagName)).toBe('TEXTAREA');
    await opened.getByRole('button', { name: texts.record.save }).click();
    await opened.getByText(texts.record.saved(1)).waitFor();
    expect(await sent(opened, 'saveRecord')).toEqual([
      [[{ entry: { ...entry, present: '2 of 3 teams, 7 people', notes: 'A calm hour.' }, base: null }]],
    ]);
  });
  it('keeps the day as a look that is still under way finds it, whoever presses before that', async () => {
    const present = '3 of 3 teams';
    const classes = record.classes.map((one) => ({ ...one, proposal: { ...one.proposal, present } }));
    const readRecord = [{ value: good(record) }, { value: good({ ...record, classes }), held: true as const }];
    const opened = await openSidebar({ answers: { ...answers, readRecord }, stale: true });
    await opened.getByRole('heading', { name: 'The class now' }).waitFor();
    await openView(opened, 'Record');
    await expect.poll(async () => (await sent(opened, 'readRecord')).length).toBe(2);
    const save = opened.getByRole('button', { name: texts.record.save });
    await save.click();
    await opened.getByText(texts.record.saving).waitFor();
    expect(await sent(opened, 'saveRecord')).toEqual([]);
    await letGo(opened);
    await opened.getByText(texts.record.saved(1)).waitFor();
    expect(await sent(opened, 'saveRecord')).toEqual([[[{ entry: { ...entry, present }, base: null }]]]);
    expect(await save.evaluate((button) => button === document.activeElement)).toBe(true);
    // What that look has found is taken up once: the row that is kept now is the one to go on from.
    await save.click();
    await expect.poll(async () => (await sent(opened, 'saveRecord')).length).toBe(2);
    expect((await sent(opened, 'saveRecord'))[1]).toEqual([[{ entry, base: entry }]]);
  });
  it('counts on while notes are written: a half typed entry holds what was typed, and nothing else', async () => {
    const present = '3 of 3 teams';
    const later = record.classes.map((one) => ({ ...one, proposal: { ...one.proposal, present, hard: 'The rim.' } }));
    const readRecord = [{ value: good(record) }, { value: good({ ...record, classes: later }) }];
    const opened = await open('Record', {}, { readRecord });
    await opened.getByLabel('In your own words').fill('A calm hour.');
    await opened.getByLabel(texts.record.labels.hard).fill('');
    await openView(opened, 'Help');
    await openView(opened, 'Record');
    await expect.poll(() => opened.getByLabel('Present').inputValue()).toBe(present);
    expect(await opened.getByLabel(texts.record.labels.hard).inputValue()).toBe('');
    await opened.getByRole('button', { name: texts.record.save }).click();
    await opened.getByText(texts.record.saved(1)).waitFor();
    expect(await sent(opened, 'saveRecord')).toEqual([
      [[{ entry: { ...entry, present, hard: '', notes: 'A calm hour.' }, base: null }]],
    ]);
  });
  it('takes up a whole row that an earlier sidebar has kept half typed', async () => {
    const opened = await open('Record');
    await openView(opened, 'Help');
    const classes = { [rowName(entry)]: { entry: { ...entry, notes: 'A calm hour.', present: '1 team' }, base: null } };
    await opened.evaluate(
      (kept) => sessionStorage.setItem('labrow record', kept),
      JSON.stringify({ day: record.day, classes }),
    );
    await openView(opened, 'Record');
    await expect.poll(() => opened.getByLabel('In your own words').inputValue()).toBe('A calm hour.');
    expect(await opened.getByLabel('Present').inputValue()).toBe('1 team');
  });
  it('writes names into the copied text only where that was asked, and copies it', async () => {
    const opened = await open('Record');
    await opened.getByLabel('Text of the day').waitFor();
    expect(await dayText(opened)).not.toMatch(/Basalt|Granite|Cy/);
    await opened.getByLabel(texts.record.withNames).check();
    expect(await dayText(opened)).toContain('Present: 2 of 3 teams, 1 team absent (Basalt, Quartz)');
    expect(await dayText(opened)).toContain('Absent: Granite');
    expect(await dayText(opened)).toContain('Not here: Cy (Quartz)');
    await opened.context().grantPermissions(['clipboard-read', 'clipboard-write']);
    // The clipboard needs a page that counts as secure; this one does not, so the text is marked to be copied by hand.
    await opened.getByRole('button', { name: 'Copy the text' }).click();
    await opened.getByText(/Copied\.|The text is selected/).waitFor();
    const marked = await opened.evaluate(() => {
      const control = document.querySelector<HTMLTextAreaElement>('#record-text');
      return control === null ? '' : control.value.slice(control.selectionStart, control.selectionEnd);
    });
    expect(marked).toBe(await dayText(opened));
  });
  it('copies in one press where the host lets it', async () => {
    const opened = await open('Record');
    await opened.evaluate(() => {
      Object.defineProperty(navigator, 'clipboard', {
        value: { writeText: async (words: string) => Object.assign(window, { copied: words }) },
      });
    });
    await opened.getByRole('button', { name: 'Copy the text' }).click();
    await opened.getByText('Copied. Paste it where you need it.').waitFor();
    expect(await opened.evaluate(() => (window as unknown as { copied: string }).copied)).toBe(await dayText(opened));
  });
  it('keeps a text that was changed by hand, and writes it anew only when asked', async () => {
    const opened = await open('Record');
    await opened.getByLabel('Text of the day').fill('My own day.');
    await opened.getByLabel(texts.record.labels.next).fill('The poll.');
    expect(await dayText(opened)).toBe('My own day.');
    await opened.getByRole('button', { name: texts.record.again }).click();
    expect(await dayText(opened)).toContain('Next time: The poll.');
  });
  it('says in the field what is to be mended, and loses nothing', async () => {
    const problem =
      'Expected words without names for “in your own words” of Second period, received “Basalt”. Say “one team” there.';
    const opened = await open('Record', {}, { saveRecord: value(bad(problem, `${rowName(entry)}.notes`)) });
    await opened.getByLabel('In your own words').fill('Basalt was quick.');
    await opened.getByRole('button', { name: texts.record.save }).click();
    await opened.locator('.field-problem', { hasText: 'without names' }).waitFor();
    expect(await opened.getByLabel('In your own words').inputValue()).toBe('Basalt was quick.');
    await openView(opened, 'Help');
    await openView(opened, 'Record');
    await opened.getByLabel('In your own words').waitFor();
    expect(await opened.getByLabel('In your own words').inputValue()).toBe('Basalt was quick.');
  });
  it('shows the teacher’s words of a row that is there, and offers what the sheet says now', async () => {
    const saved = { ...entry, hard: 'Units, all over.' };
    const [first] = record.classes;
    const opened = await open('Record', {}, { readRecord: value(good({ ...record, classes: [{ ...first, saved }] })) });
    expect(await opened.getByLabel('What was hard').inputValue()).toBe('Units, all over.');
    await opened.getByRole('button', { name: texts.record.takeNow('What was hard') }).click();
    expect(await opened.getByLabel('What was hard').inputValue()).toBe(entry.hard);
  });
  it('lets a class without entries be written about', async () => {
    const opened = await open('Record');
    await opened.getByRole('button', { name: 'Write about Fourth period' }).click();
    expect(await opened.getByLabel('Present').count()).toBe(2);
  });
});

describe('reminder', () => {
  it('stands quietly while the record of today is missing, and goes when it is written', async () => {
    const opened = await openSidebar({ answers });
    const reminder = opened.getByRole('complementary', { name: 'Still to do today' });
    await reminder.waitFor();
    expect(await reminder.textContent()).toContain('Second period');
    await answerNext(opened, 'recordDue', value(good({ due: [] })));
    await reminder.getByRole('button').click();
    await opened.getByRole('heading', { name: 'Record of the day' }).waitFor();
    expect(await reminder.isHidden()).toBe(true);
    await opened.getByRole('button', { name: texts.record.save }).click();
    await opened.getByText('Saved:').waitFor();
    await openView(opened, 'Help');
    await reminder.waitFor({ state: 'hidden' });
  });
});

describe('share', () => {
  it('asks for the tick and the name, then empties and builds', async () => {
    const refusal = 'Expected the name of this file for emptying it, received no name. Type it.';
    const opened = await open(
      'Share',
      {},
      {
        emptyCopy: [{ value: bad(refusal, 'fileName') }, { value: good({ ...building(1), left: ['Plan', 'Roster'] }) }],
      },
    );
    const button = opened.getByRole('button', { name: 'Empty this copy' });
    await button.click();
    await opened.getByText(texts.share.notTicked).waitFor();
    expect(await sent(opened, 'emptyCopy')).toEqual([]);
    await opened.getByLabel('This is the copy').check();
    await button.click();
    await opened.locator('.field-problem', { hasText: 'received no name' }).waitFor();
    await opened.getByLabel('Type the name of this file').fill('Copy of solutions');
    await opened.getByLabel(texts.share.keepHints).check();
    await button.click();
    await opened.getByText(texts.share.emptied).waitFor();
    await opened.getByText('Not changed: Roster.').waitFor();
    expect((await sent(opened, 'emptyCopy'))[1]).toEqual([
      { fileName: 'Copy of solutions', keepHints: true, removeOthers: false },
    ]);
    await opened.getByRole('button', { name: texts.share.toGive }).click();
    await opened.getByRole('heading', { name: '4. Copy once more' }).waitFor();
  });
  it('says which file this is and which sheets are not ours', async () => {
    const opened = await open('Share');
    await opened.getByText('Copy of solutions').waitFor();
    expect(await opened.locator('main').textContent()).toContain('Sheets of your own in this file: Roster.');
  });
});

describe('teams', () => {
  it('marks a team as absent, and puts the tick back where that failed', async () => {
    const opened = await open('Teams');
    await opened.getByLabel('Basalt is absent today').check();
    await opened.getByText(texts.teams.marked('Basalt', true)).waitFor();
    expect(await sent(opened, 'setAbsent')).toEqual([['c1-t1', true]]);
    expect(await opened.getByLabel('Granite is absent today').isChecked()).toBe(true);
    await answerNext(opened, 'setAbsent', value(bad('Expected a team.')));
    await opened.getByLabel('Slate is absent today').click();
    await opened.getByText('Expected a team.').waitFor();
    expect(await opened.getByLabel('Slate is absent today').isChecked()).toBe(false);
  });
  it('gives a team help and a task of its own as they are chosen, and a class practice in one press', async () => {
    const own = (level: string, extension: string) => ({ value: good({ level, extension }) });
    const setOwnHelp = [own('1', ''), own('1', lessonHelp.suggestion)];
    const opened = await open('Teams', {}, { setOwnHelp, addPractice: value(bad('A build is under way.')) });
    await opened.locator('summary', { hasText: 'for Basalt' }).click();
    await opened.getByLabel(texts.teams.ownHelp.level('Basalt')).selectOption('1');
    await opened.getByText(texts.teams.ownHelp.savedLevel('Basalt', '1')).waitFor();
    await opened.getByRole('button', { name: texts.teams.ownHelp.suggestion(lessonHelp.suggestion) }).click();
    await opened.getByText(texts.teams.ownHelp.savedTask('Basalt', true)).waitFor();
    expect(await opened.getByLabel(texts.teams.ownHelp.task('Basalt')).inputValue()).toBe(lessonHelp.suggestion);
    await opened.locator('summary', { hasText: texts.teams.practice.title }).click();
    await opened.getByLabel('Class', { exact: true }).first().selectOption('Fourth period');
    await opened.getByText(texts.teams.practice.there(['Practice 1'])).waitFor();
    await opened.getByRole('button', { name: texts.teams.practice.button }).click();
    await opened.getByText('A build is under way.').first().waitFor();
    expect(await sent(opened, 'setOwnHelp')).toEqual([
      ['c1-t1', { level: '1' }],
      ['c1-t1', { extension: lessonHelp.suggestion }],
    ]);
    expect(await sent(opened, 'addPractice')).toEqual([['Fourth period', {}]]);
  });
  it('takes the names of a team, shares the roles, and marks one person as absent', async () => {
    const kept = (absent: boolean, base: string): TeamMembersView => ({
      who: base,
      day: '2026-03-02',
      members: [
        { name: 'Ana', absent: false, roles: ['calculates', 'runs the bench'] },
        { name: 'Cy', absent, roles: absent ? [] : ['writes', 'records'] },
      ],
    });
    const opened = await open(
      'Teams',
      {},
      { setMembers: [{ value: good(kept(false, 'one')) }, { value: good(kept(true, 'two')) }] },
    );
    await opened.locator('summary', { hasText: 'in Basalt' }).click();
    await opened.getByLabel('Names in Basalt').fill('Ana, Cy');
    await opened.getByRole('button', { name: texts.teams.people.keep('Basalt') }).click();
    await opened.getByText('Ana: calculates, runs the bench · Cy: writes, records').waitFor();
    expect(await opened.getByLabel('Names in Basalt').inputValue()).toBe('Ana\nCy');
    await opened.getByLabel(texts.teams.people.absent('Cy')).focus();
    await opened.keyboard.press('Space');
    await opened.getByText('Cy: not here today').waitFor();
    expect(await opened.evaluate(() => document.activeElement?.id)).toBe('people-0-0-absent-1');
    expect(await sent(opened, 'setMembers')).toEqual([
      ['Second period', 'c1-t1', { names: 'Ana, Cy', absent: [], base: '' }],
      ['Second period', 'c1-t1', { names: 'Ana\nCy', absent: ['Cy'], base: 'one' }],
    ]);
    expect(await accessibilityFaults(opened)).toEqual([]);
    expect(await sidewaysScroll(opened)).toBe(0);
    if (process.env.LABROW_PICTURES !== undefined)
      await opened.screenshot({ path: `${process.env.LABROW_PICTURES}/people.png`, fullPage: true });
  });
  it('keeps the names that were typed where the sheet would not take them', async () => {
    const opened = await open('Teams', {}, { setMembers: value(bad('Expected fewer people. Make it two teams.')) });
    await opened.locator('summary', { hasText: 'in Basalt' }).click();
    await opened.getByLabel('Names in Basalt').fill('Ana\nAna');
    await opened.getByRole('button', { name: texts.teams.people.keep('Basalt') }).click();
    await opened.locator('.field-problem', { hasText: 'Make it two teams.' }).waitFor();
    expect(await opened.getByLabel('Names in Basalt').inputValue()).toBe('Ana\nAna');
  });
  it('passes roles of another day on, for a class at a time', async () => {
    const opened = await open('Teams', {}, { passRoles: value(good({ passed: 1 })) });
    await opened
      .getByRole('button', { name: /Rotate roles/ })
      .first()
      .waitFor();
    expect(await opened.getByRole('button', { name: /Rotate roles/ }).count()).toBe(1);
    await opened.getByRole('button', { name: texts.teams.passOn('Second period') }).click();
    await opened.getByText(texts.teams.passed(1)).waitFor();
    expect(await sent(opened, 'passRoles')).toEqual([['Second period']]);
  });
  it('adds a late team from the keyboard, shows the build and comes back', async () => {
    const opened = await open(
      'Teams',
      {},
      {
        addTeam: [
          { value: bad('Expected a name for each team, received a blank. Type one.', 'classes') },
          { value: good(building(1)) },
        ],
      },
    );
    await unfoldAll(opened);
    await opened.getByLabel(texts.teams.teamName, { exact: true }).focus();
    await opened.keyboard.press('Enter');
    await opened.locator('.field-problem', { hasText: 'received a blank' }).waitFor();
    await opened.getByLabel(texts.teams.teamName, { exact: true }).fill('Flint');
    await opened.keyboard.press('Enter');
    await opened.getByRole('heading', { name: 'The table is built' }).waitFor();
    expect((await sent(opened, 'addTeam'))[1]).toEqual(['Second period', 'Flint', {}]);
    await opened.getByRole('button', { name: texts.teams.back }).click();
    await opened.locator('summary', { hasText: texts.teams.late }).waitFor();
  });
  it('adds a class with its teams', async () => {
    const opened = await open('Teams');
    await unfoldAll(opened);
    await opened.getByLabel(texts.plan.className).fill('Sixth period');
    await opened.getByLabel('Team names').fill('Flint\n\n Chert ');
    await opened.getByRole('button', { name: 'Add the class' }).click();
    await opened.getByRole('heading', { name: 'The table is built' }).waitFor();
    expect(await sent(opened, 'addClass')).toEqual([['Sixth period', ['Flint', 'Chert'], {}]]);
  });
});

describe.each([
  ['Record', 1],
  ['Share', 0],
  ['Teams', 1],
] as const)('%s', (name, view) => {
  it.each(themes(view))('is sound for everybody at 300 px, dark: %s', async (dark) => {
    const opened = await open(name, { dark });
    await opened.locator('main :is(section, fieldset)').nth(1).waitFor();
    await settled(opened);
    if (process.env.LABROW_PICTURES !== undefined)
      await opened.screenshot({
        path: `${process.env.LABROW_PICTURES}/${name}-${dark ? 'dark' : 'light'}.png`,
        fullPage: true,
      });
    expect(await accessibilityFaults(opened)).toEqual([]);
    expect(await sidewaysScroll(opened)).toBe(0);
  });
});
