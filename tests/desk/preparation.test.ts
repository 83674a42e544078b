import { beforeEach, describe, expect, it } from 'vitest';
import { deskWords } from '../../src/desk/words.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import { preparationTexts } from '../../src/lab/texts/preparation.ts';
import { prepareCells } from '../../src/workbook/layout.ts';
import { words } from '../../src/workbook/words.ts';
import { builtLesson, fern, moss, setup } from './builtLesson.ts';
import { copyOf, type PaperFile, paperFile, problemOf, valueIn } from './paperFile.ts';
import { said } from './said.ts';

const activity = activityById(setup.activity);
const [plan, prepare] = [words.plan.sheet, words.prepare.sheet];
let file: PaperFile;
beforeEach(() => {
  file = builtLesson();
});
const setting = (name: string, value: string) =>
  file.put(plan, file.sheetCalled(plan).cells.findIndex(([one]) => one === name) + 1, 2, value);
const preparation = () => valueIn(file.call('readPreparation'));
const section = (name: string) => preparation().sections.find((one) => one.name === name)?.rows ?? [];
const wishes = () => file.asked.flatMap((one) => (one.call === 'applySheet' ? [one.wish] : []));

/*
 * Three teams of the same invented numbers: KBr, 0.300 mol/L in 200 mL, 0.0600 mol × 119.002 g/mol = 7.1401 g each.
 * 3 × 7.1401 = 21.4204 → 21.43 g; × 1.10 = 23.5624 → 23.57 g.
 * At 0.600 mol/L one team takes 14.2802 g: 28.5605 → 28.57 g.
 */
describe('what the day takes', () => {
  it('is worked out from the Plan as it is', () => {
    const view = preparation();
    expect(view).toMatchObject({
      date: '2026-03-02',
      decimalMark: 'point',
      activity: activity?.title,
      aim: activity?.aim,
    });
    expect(section('solids')[0]).toMatchObject({ amount: 21.43, withSpare: 23.57, unit: 'g' });
    expect(view.periods).toHaveLength(2);
    // One bottle of the solid, and a flask and a diluted solution for each team.
    expect(view.labels).toHaveLength(1 + 3 * 2);
    const row = file.sheetCalled(plan).cells.findIndex(([key]) => key === 'c1-t1') + 1;
    file.put(plan, row, 5, '0.600');
    expect(section('solids')[0]?.amount).toBe(28.57);
    setting('spare', '0 %');
    expect(section('solids')[0]?.withSpare).toBe(28.57);
    setting('periods', '1');
    expect(preparation().periods).toHaveLength(1);
    setting('decimal mark', 'comma');
    expect(preparation().decimalMark).toBe('comma');
  });
  it('has its parts in their order with their titles, and none without rows', () => {
    const { sections } = preparation();
    const order = Object.keys(preparationTexts.sections);
    const names = sections.map(({ name }) => name);
    expect(names).toEqual(order.filter((name) => names.includes(name)));
    for (const { name, title, rows } of sections) {
      expect(title).toBe(preparationTexts.sections[name as keyof typeof preparationTexts.sections]);
      expect(rows.length).toBeGreaterThan(0);
    }
  });
  it('has no number where there is none to say, and pictograms only beside what they are for', () => {
    const rows = section('cautions');
    expect(rows.length).toBeGreaterThan(1);
    for (const { amount, withSpare } of rows) expect([amount, withSpare]).toEqual([null, null]);
    expect(rows.some((row) => row.pictograms !== undefined)).toBe(true);
    expect(rows.every((row) => !('pictograms' in row) || (row.pictograms?.length ?? 0) > 0)).toBe(true);
    expect(section('solids')[0]).not.toHaveProperty('pictograms');
    // Where the hazards come from, and of which day that is, for the teacher alone.
    expect(section('sources').some(({ note }) => note?.includes('CLP Annex VI as of 2026-07-01'))).toBe(true);
  });
  it('says whether the sheet is up to the Plan', () => {
    const { row, column } = prepareCells.freshness;
    expect(preparation().sheet).toBe('up to date');
    file.put(prepare, row, column, '⚠ another');
    expect(preparation().sheet).toBe('out of date');
    file.sheetCalled(prepare).cells = [];
    expect(preparation().sheet).toBe('up to date');
    file.state.sheets = file.state.sheets.filter(({ name }) => name !== prepare);
    expect(preparation().sheet).toBe('none');
  });
});

describe('writing the Prepare sheet', () => {
  it('brings it to the Plan under the name it has, and shows it unless what is in view is to stay', () => {
    file.sheetCalled(prepare).name = 'To lay out';
    valueIn(file.call('writePrepareSheet'));
    expect(wishes()[0]).toMatchObject({
      plan: { name: 'To lay out', role: { kind: 'prepare' } },
      keptName: deskWords.keptName('To lay out', '2026-03-02 10.15'),
      read: { kinds: ['plan', 'prepare'] },
      show: true,
    });
    expect(wishes()[0]?.seen.map(({ id }) => id)).toEqual([file.sheetCalled(plan).id]);
    valueIn(file.call('writePrepareSheet', true));
    expect(wishes()[1]?.show).toBe(false);
    valueIn(file.call('writePrepareSheet', 'yes'));
    expect(wishes()[2]?.show).toBe(true);
  });
  it('makes one where there is none, with the amounts', () => {
    file.state.sheets = file.state.sheets.filter(({ name }) => name !== prepare);
    valueIn(file.call('writePrepareSheet'));
    expect(file.sheetCalled(prepare).cells.flat()).toContain(30);
    expect(file.sheetCalled(prepare).cells.flat()).not.toContain(21.43);
    expect(wishes()[0]?.plan.name).toBe(prepare);
  });
  it('goes by the Plan as it is when it is written', () => {
    file.before(() => {
      const row = file.sheetCalled(plan).cells.findIndex(([key]) => key === 'c1-t1') + 1;
      file.put(plan, row, 5, '0.600');
    });
    valueIn(file.call('writePrepareSheet'));
    expect(file.sheetCalled(prepare).cells.flat()).toContain(40);
  });
});

describe('the key', () => {
  it('has the answers of every team, and stands in no sheet', () => {
    const key = valueIn(file.call('readKey'));
    expect(key).toMatchObject({ date: '2026-03-02', activity: activity?.title });
    expect(key.teams.map(({ className, team, key: own }) => [className, team, own])).toEqual([
      [fern, 'Otter', 'c1-t1'],
      [fern, 'Heron', 'c1-t2'],
      [moss, 'Newt', 'c2-t1'],
    ]);
    const title = activity?.steps.find(({ id }) => id === 'mass of solute')?.title;
    expect(key.teams[0]?.lines.find((line) => line.title === title)).toMatchObject({ unit: 'g', answer: '7.14' });
    expect(file.asked.map(({ call }) => call)).toEqual(['readBook']);
  });
  it('is written to a sheet of its own only after a yes', () => {
    for (const given of [undefined, false, 'yes', 1])
      expect(problemOf(file.call('writeKeySheet', given)).message).toBe(
        said({ ...deskWords.keyUnconfirmed, received: 'none' }),
      );
    expect(file.asked).toEqual([]);
    const { name } = valueIn(file.call('writeKeySheet', true));
    expect(name).toBe(words.keySheet.name('2026-03-02'));
    expect(wishes()[0]).toMatchObject({
      keptName: deskWords.keptName(name, '2026-03-02'),
      read: { kinds: [] },
      show: true,
    });
    expect(wishes()[0]?.seen.map(({ id }) => id)).toEqual([file.sheetCalled(plan).id]);
    const { cells } = file.sheetCalled(name);
    const title = activity?.steps.find(({ id }) => id === 'mass of solute')?.title ?? '';
    expect(cells.find((line) => line[1] === 'Otter' && line[2] === title)?.slice(0, 5)).toEqual([
      fern,
      'Otter',
      title,
      '7.14',
      'g',
    ]);
  });
  it('is never written over one that is finished, and goes on with one that is not', () => {
    const first = valueIn(file.call('writeKeySheet', true)).name;
    const second = valueIn(file.call('writeKeySheet', true)).name;
    expect(second).toBe(`${first} 2`);
    const again = copyOf(file);
    const sheet = again.sheetCalled(second);
    if (sheet.tag !== null) sheet.tag = { ...sheet.tag, state: 'building' };
    valueIn(again.call('writeKeySheet', true));
    expect(again.asked.flatMap((one) => (one.call === 'applySheet' ? [one.wish.plan.name] : []))).toEqual([second]);
  });
});

describe('the table on paper', () => {
  it('has every row of every team with its own numbers, check figures and the whole cautions, and no answer', () => {
    const paper = valueIn(file.call('readPaper'));
    expect(paper).toMatchObject({ date: '2026-03-02', activity: activity?.title, aim: activity?.aim });
    expect(paper.teams.map(({ key }) => key)).toEqual(['c1-t1', 'c1-t2', 'c2-t1']);
    const steps = paper.teams[0]?.steps ?? [];
    expect(steps.map(({ title, kind, unit }) => [title, kind, unit])).toEqual(
      activity?.steps.map((one) => [
        one.title,
        one.kind,
        words.class.unit[one.kind as 'ordered' | 'chosen'] ?? one.unit,
      ]),
    );
    const step = (id: string) => steps[activity?.steps.findIndex((one) => one.id === id) ?? -1];
    expect(step('cautions read')?.shown.length).toBeGreaterThan(60);
    expect(step('mass of solute')?.shown).not.toContain('7.14');
    expect(step('molar mass')?.shown).toContain('KBr');
    expect(steps.some(({ checkFigures }) => checkFigures.length > 0)).toBe(true);
    expect(step('cautions read')?.checkFigures).toEqual([]);
  });
});

describe('a file without a lesson', () => {
  it.each(['readPreparation', 'readKey', 'readPaper', 'writePrepareSheet'] as const)('is told so by %s', (name) => {
    const say = (received: string) => said({ ...deskWords.noLesson, received });
    expect(problemOf(paperFile().call(name)).message).toBe(say('none'));
    setting('activity', 'brewing');
    expect(problemOf(file.call(name)).message).toBe(say('“brewing”'));
  });
  it('has no key to write', () => {
    expect(problemOf(paperFile().call('writeKeySheet', true)).message).toBe(
      said({ ...deskWords.noLesson, received: 'none' }),
    );
  });
});

describe('the poll', () => {
  it('is shown by name, with its answers, and can be gone to', () => {
    const { poll } = words;
    expect(valueIn(file.call('readPoll'))).toEqual({ sheet: poll.sheet, today: '2026-03-02', answers: [] });
    valueIn(file.call('goToPoll'));
    expect(file.asked[file.asked.length - 1]).toEqual({
      call: 'show',
      wish: { sheetId: file.sheetCalled(poll.sheet).id },
    });
    file.state.sheets = file.state.sheets.filter(({ name }) => name !== poll.sheet);
    expect(valueIn(file.call('readPoll'))).toEqual({ sheet: '', today: '2026-03-02', answers: [] });
    expect(problemOf(file.call('goToPoll')).message).toBe(said(deskWords.noPoll));
  });
});

describe('opening a page', () => {
  it('hands over which one, and what it is about', () => {
    expect(file.call('openPage', 'labels')).toEqual({ ok: true, value: null });
    expect(file.call('openPage', 'sidebar', 'prepare').ok).toBe(true);
    expect(file.asked).toEqual([
      { call: 'openPage', wish: { page: 'labels', about: '' } },
      { call: 'openPage', wish: { page: 'sidebar', about: 'prepare' } },
    ]);
  });
});
