import { afterAll, beforeAll, expect, it } from 'vitest';
import { hostWords } from '../../src/host/words.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import { type PageBundle, pageBundle } from '../../src/preview/server/pageBundle.ts';
import { texts } from '../../src/sidebar/texts.ts';
import { classColumns as at, classRows } from '../../src/workbook/layout.ts';
import { browserPages } from '../browser/browserPages.ts';
import { unfoldAll } from '../browser/unfoldAll.ts';
import { type Place, WeeksInPreview } from './weeksInPreview.ts';

/** An invented school: nobody of these names exists. */
const school = 'Willow Ford School (invented)';
const [ash, elm, oak, yew] = ['Ash class', 'Elm class', 'Oak class', 'Yew class'] as const;
const classes: readonly string[] = [ash, elm, oak, yew];
const teams = [
  ['Otter', 'Heron'],
  ['Newt', 'Teal'],
  ['Crane', 'Perch'],
  ['Bream', 'Tench'],
] as const;
const people = ['Ana', 'Bo', 'Cy'];
const keys = (className: string) => [1, 2].map((team) => `c${classes.indexOf(className) + 1}-t${team}`);

/** g/mol by abridged standard atomic weights, IUPAC Commission on Isotopic Abundances and Atomic Weights 2021. */
const molarMass = { KBr: '119.00', NaHCO3: '84.007' } as const;
const [bromide, bicarbonate] = ['potassium bromide · KBr', 'sodium hydrogen carbonate · NaHCO3'];

const pages = browserPages();
let bundle: PageBundle;
let weeks: WeeksInPreview;
beforeAll(async () => {
  bundle = await pageBundle();
  weeks = await WeeksInPreview.open(pages, bundle, school);
});
afterAll(() => weeks?.preview.close());

const place = (className: string, team: number, step: string): Place => ({
  className,
  key: keys(className)[team - 1] ?? '',
  step,
});
/** V1 = c2·V2 / c1, with the numbers of the question in the order in which it has them. */
function stockVolume(question: string): string {
  const [stock = 0, volume = 0, diluted = 0] = (question.match(/\d+(?:\.\d+)?/g) ?? []).map(Number);
  return ((diluted * volume) / stock).toPrecision(3);
}
/** Both teams of a class type into the same row, from two seats at once. */
const work = (className: string, step: string, text: string) =>
  Promise.all([1, 2].map((team) => weeks.type(team - 1, place(className, team, step), text)));

async function plan(): Promise<void> {
  const { sidebar } = weeks;
  await sidebar.getByLabel(texts.plan.solute, { exact: true }).selectOption({ label: bromide ?? '' });
  await sidebar.getByLabel(texts.plan.classCount).fill(String(classes.length));
  await unfoldAll(sidebar);
  for (const [index, name] of classes.entries()) {
    await sidebar.getByLabel(texts.plan.className).nth(index).fill(name);
    await sidebar
      .getByLabel('Team names')
      .nth(index)
      .fill((teams[index] ?? []).join('\n'));
  }
  await sidebar.getByLabel(texts.plan.ownNumbers).check();
  await sidebar
    .getByLabel(texts.plan.exitQuestions, { exact: true })
    .selectOption({ label: texts.plan.exitSeats[2] ?? '' });
  await weeks.button(texts.plan.build).click();
  await sidebar.getByText(texts.build.doneTitle).waitFor();
  weeks.atLesson(classes);
}
async function namePeople(team: string): Promise<void> {
  const { sidebar } = weeks;
  await weeks.view(texts.views.teams);
  await sidebar.locator('summary', { hasText: `in ${team}` }).click();
  await sidebar.getByLabel(texts.teams.people.names(team)).fill(people.join('\n'));
  await weeks.button(texts.teams.people.keep(team)).click();
  await sidebar.getByText(texts.teams.people.saved(team)).waitFor();
}
async function markAbsent(team: string): Promise<void> {
  await weeks.view(texts.views.teams);
  await weeks.sidebar.getByLabel(`${team}${texts.teams.absent}`).check();
  await weeks.sidebar.getByText(texts.teams.marked(team, true)).waitFor();
}
/** A form folded below the teams is opened, filled in and sent, and what it builds stands. */
async function addBelowTeams({
  title,
  fields,
  button,
}: {
  readonly title: string;
  readonly fields: (form: ReturnType<WeeksInPreview['sidebar']['locator']>) => Promise<unknown>;
  readonly button: string;
}): Promise<void> {
  await weeks.view(texts.views.teams);
  const form = weeks.sidebar.locator('details.fold', { has: weeks.sidebar.getByRole('heading', { name: title }) });
  await form.locator('summary').click();
  await fields(form);
  await form.getByRole('button', { name: button, exact: true }).click();
  await weeks.sidebar.getByText(texts.build.doneTitle).waitFor();
  await weeks.button(texts.teams.back).click();
}
const addPractice = (className: string) =>
  addBelowTeams({
    title: texts.teams.practice.title,
    button: texts.teams.practice.button,
    fields: (form) => form.getByLabel(texts.teams.forClass, { exact: true }).selectOption({ label: className }),
  });
/** At the bell a class is closed, or its rows are opened again. */
async function ring(className: string, close: boolean): Promise<void> {
  await weeks.view(texts.views.classNow);
  await weeks.sidebar.getByLabel(texts.classNow.pick, { exact: true }).selectOption({ label: className });
  await weeks.button(close ? texts.classNow.close : texts.classNow.open).click();
  await weeks.sidebar.getByText(close ? texts.classNow.closed(true) : texts.classNow.opened).waitFor();
}

/** The part of the record that is about a class. */
const partOf = (record: string, className: string): string => {
  const begins = record.indexOf(className);
  const ends = classes.map((name) => record.indexOf(name, begins + 1)).filter((index) => index > begins);
  return record.slice(begins, Math.min(record.length, ...ends));
};
function looksWhole(): void {
  expect(weeks.lost()).toEqual([]);
}
/** What a sheet that was put away says at its top, and where its link leads. */
function restsWithLink(className: string, begun: string): void {
  const sheet = weeks.preview.sheet(weeks.sheetOf(className, begun));
  expect(sheet.hidden).toBe(true);
  const top = sheet.cells[`${classRows.headings},${at.task}`];
  expect(top?.text).toBe(hostWords.away.withLink);
  expect(top?.link).toContain(`gid=${weeks.preview.sheet(className).id}`);
}

async function firstWeek(): Promise<void> {
  await weeks.on('02');
  await plan();
  await namePeople('Otter');
  await markAbsent('Teal');
  await work(ash, 'molar mass', molarMass.KBr);
  await weeks.type(0, place(elm, 1, 'molar mass'), '1190');
  // Two students of a team at two seats, each with a question of their own.
  const seats = [1, 2].map((seat) => place(ash, 1, `exit ${seat}`));
  await Promise.all(
    seats.map((seat, index) => weeks.type(index, seat, index === 0 ? stockVolume(weeks.textOf(seat, at.task)) : '3')),
  );
  for (const seat of seats) await expect.poll(() => weeks.checkOf(seat)).toBe('kept');
  for (const team of [1, 2]) await expect.poll(() => weeks.checkOf(place(ash, team, 'molar mass'))).toBe('on target');
  await ring(ash, true);
  weeks.later('11:00');
  const record = await weeks.record(2);
  expect(partOf(record, ash)).toMatch(/Present: 2 of 2 teams/);
  expect(partOf(record, ash)).toMatch(/exit question right: 1 of 2/);
  expect(partOf(record, elm)).toMatch(/Present: 1 of 2 teams, 1 team absent/);
  expect(partOf(record, elm)).not.toContain('exit question');
}

/** The other course leaves the lesson before it has begun, for one of its own; a class goes on, and a team of it is away. */
async function otherCourse(): Promise<void> {
  await weeks.on('03');
  await weeks.nextLesson({
    classes: [oak, yew],
    inFile: classes,
    change: [texts.plan.activity, activityById('solution from a solid')?.title ?? ''],
  });
  await namePeople('Crane');
  await markAbsent('Newt');
  await weeks.type(0, place(elm, 2, 'molar mass'), molarMass.KBr);
  await work(oak, 'molar mass', molarMass.KBr);
  await expect.poll(() => weeks.checkOf(place(elm, 2, 'molar mass'))).toBe('on target');
  await expect.poll(() => weeks.checkOf(place(oak, 2, 'molar mass'))).toBe('on target');
  weeks.later('11:00');
  const record = await weeks.record(2);
  expect(partOf(record, elm)).toMatch(/Present: 1 of 2 teams, 1 team absent/);
  expect(partOf(record, oak)).toMatch(/Present: 2 of 2 teams/);
  looksWhole();
}

async function secondWeek(): Promise<void> {
  await weeks.on('09');
  await ring(ash, false);
  await weeks.nextLesson({
    classes: [ash],
    inFile: classes,
    change: [texts.plan.solute, bicarbonate ?? ''],
    lesson: ash,
  });
  restsWithLink(ash, '2026-03-02');
  // People go along with their team.
  const heading = { className: ash, key: 'c1-t1', step: '' };
  for (const name of people) expect(weeks.textOf(heading, at.who)).toContain(name);
  await work(ash, 'molar mass', molarMass.NaHCO3);
  for (const team of [1, 2]) await expect.poll(() => weeks.checkOf(place(ash, team, 'molar mass'))).toBe('on target');
  await addPractice(ash);
  const practice = { className: ash, key: 'practice-1', step: 'molar mass' };
  await weeks.type(1, practice, '84');
  await expect.poll(() => weeks.checkOf(practice)).not.toBe('');
  weeks.later('11:00');
  const record = await weeks.record(1);
  expect(record).toMatch(/Present: 2 of 2 teams/);
  expect(record).not.toContain('exit question');
  expect(record).not.toContain(elm);
  looksWhole();
}

/** In the middle of a lesson its numbers are changed; two days later both classes of the course go on to the next. */
async function changedInTheMiddle(): Promise<void> {
  await weeks.on('10');
  await work(yew, 'molar mass', molarMass.KBr);
  await weeks.view(texts.views.plan);
  await weeks.chooseLesson(oak);
  await unfoldAll(weeks.sidebar);
  await weeks.sidebar.getByLabel(texts.plan.ownNumbers).uncheck();
  await weeks.button(texts.plan.buildAgain).click();
  await weeks.sidebar.getByText(texts.build.doneTitle).waitFor();
  await weeks.button(texts.build.toPlan).click();
  looksWhole();
  weeks.later('11:00');
  await weeks.record(1);

  await weeks.on('12');
  await weeks.nextLesson({ classes: [oak, yew], inFile: classes, lesson: oak, takesPeople: true });
  await work(oak, 'molar mass', molarMass.KBr);
  restsWithLink(oak, '2026-03-03');
  weeks.later('11:00');
  await weeks.record(1);
  looksWhole();
}
/** A class begins a lesson that turns out to come too early. */
async function tooEarly(): Promise<void> {
  await weeks.on('16');
  await weeks.nextLesson({
    classes: [elm],
    inFile: classes,
    lesson: elm,
    change: [texts.plan.solute, bicarbonate ?? ''],
  });
  await work(elm, 'molar mass', molarMass.NaHCO3);
  weeks.later('11:00');
  await weeks.record(1);
}
async function lateTeam(): Promise<void> {
  await weeks.on('19');
  await addBelowTeams({
    title: texts.teams.late,
    button: texts.teams.addTeam,
    fields: async (form) => {
      await form.getByLabel(texts.teams.forClass, { exact: true }).selectOption({ label: yew });
      await form.getByLabel(texts.teams.teamName).fill('Wren');
    },
  });
  const late = { className: yew, key: weeks.keyOf(yew, 'Wren'), step: 'molar mass' };
  await weeks.type(0, late, molarMass.KBr);
  await expect.poll(() => weeks.checkOf(late)).toBe('on target');
  weeks.later('11:00');
  expect(await weeks.record(1)).toMatch(/Present: 3 of 3 teams/);
}

async function thirdWeek(): Promise<void> {
  await weeks.on('17');
  await weeks.openEarlier([oak, yew], '2026-03-03');
  restsWithLink(oak, '2026-03-12');
  // What was typed weeks ago is there, and checks itself as it did.
  for (const team of [1, 2]) await expect.poll(() => weeks.checkOf(place(oak, team, 'molar mass'))).toBe('on target');
  looksWhole();
  await weeks.type(0, place(oak, 2, 'molar mass'), '12');
  await expect.poll(() => weeks.checkOf(place(oak, 2, 'molar mass'))).toBe('not yet');
  await weeks.type(1, place(oak, 1, 'moles of solute'), '0.06');
  await expect.poll(() => weeks.checkOf(place(oak, 1, 'moles of solute'))).not.toBe('');
  weeks.later('11:00');
  const record = await weeks.record(1);
  expect(record).toMatch(/Present: 2 of 2 teams/);
  // Its exit questions were answered weeks ago, if at all.
  expect(record).not.toContain('exit question');
}

it('three weeks of classes lose nothing, and take at most six presses for a next lesson', async () => {
  await firstWeek();
  await otherCourse();
  await secondWeek();
  await changedInTheMiddle();
  await tooEarly();
  await thirdWeek();
  await lateTeam();
  expect(new Set(weeks.lessonsBegun).size).toBe(5);

  const tabs = await weeks.studentTabs();
  const shared = ['Poll', 'Progress'];
  const personal = weeks.cellsWith(people);
  const saved = weeks.preview.host.save();
  const cellCount = [...personal.values()].flat().length;
  const inFile = people.map((name) => saved.split(name).length - 1);
  console.log(
    [
      ...weeks.records.map((record) => `The record of a day:\n${record}\n`),
      `Presses to each next lesson: ${weeks.pressesToNext.join(', ')}`,
      `Tabs of a student: ${tabs.join(' | ')}`,
      'Names of students in cells:',
      ...[...personal].map(([sheet, places]) => `  ${sheet}: ${places.length} (${places.join('; ')})`),
      `${people.join(', ')} in the saved file: ${inFile.join(', ')} times`,
      `Cells typed: ${weeks.typedCells}`,
    ].join('\n'),
  );
  looksWhole();
  for (const presses of weeks.pressesToNext) expect(presses).toBeLessThanOrEqual(6);
  // In the order in which they were built, whatever lessons came and went; one more tab at most.
  expect(tabs.filter((name) => [...classes, ...shared].includes(name))).toEqual([...classes, ...shared]);
  expect(tabs.length).toBeLessThanOrEqual(classes.length + shared.length + 1);
  // People stand in the cells “Who” of class sheets, and nowhere else in the file: in no note, tag or note of the script.
  expect(inFile).toEqual(people.map(() => cellCount));
  for (const [sheet, places] of personal) {
    expect([sheet, classes.some((name) => sheet.startsWith(name))]).toEqual([sheet, true]);
    for (const where of places) expect(where).toMatch(/^I\d+ /);
  }
  const record = Object.values(weeks.preview.sheet('Record').cells)
    .map(({ text }) => text)
    .join('\n');
  for (const name of [...people, ...teams.flat()]) expect([name, record.includes(name)]).toEqual([name, false]);
  for (const name of [...people, ...teams.flat()])
    expect([name, weeks.records.join('\n').includes(name)]).toEqual([name, false]);
}, 1_800_000);
