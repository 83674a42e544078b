import { describe, expect, it } from 'vitest';
import { listedHazards } from '../../src/chemistry/listedHazards.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import type { Activity } from '../../src/lab/lesson/activity.ts';
import { defaultSettings, defaultShelf } from '../../src/lab/lesson/defaultSettings.ts';
import type { Settings, TeamPlan } from '../../src/lab/lesson/setup.ts';
import { startingGivens } from '../../src/lab/lesson/startingGivens.ts';
import { activityInUse } from '../../src/workbook/activityInUse.ts';
import { cautionCells, cautionRowHeight } from '../../src/workbook/cautionCells.ts';
import { classCautions } from '../../src/workbook/cautionLine.ts';
import { classColumns as at, cautionRows, mostRowHeight } from '../../src/workbook/layout.ts';
import type { Lesson } from '../../src/workbook/lesson.ts';
import { planClassSheet } from '../../src/workbook/planClassSheet.ts';
import { planPlaces } from '../../src/workbook/planPlanSheet.ts';
import { newSheetNames } from '../../src/workbook/sheetNames.ts';

const everyday = activityById('stock and dilution') as Activity;
const className = 'Fern class';

function lessonOf(
  formula: string,
  {
    settings = {},
    activity = everyday,
    stock = '0.300',
  }: { settings?: Partial<Settings>; activity?: Activity; stock?: string } = {},
): Lesson {
  const givens = { ...startingGivens(activity), formula, 'stock molarity': stock };
  const team: TeamPlan = { key: 'c1-t1', className, team: 'Otter', givens };
  const setup = {
    activity: activity.id,
    givens,
    ownNumbers: false,
    settings: { ...defaultSettings, activity: activity.id, ...settings },
    shelf: defaultShelf,
    classes: [{ name: className, teams: ['Otter'] }],
  };
  const teams = [team];
  return {
    setup,
    activity: activityInUse(activity, { setup, teams }),
    teams,
    givenNames: activity.givens.map(({ name }) => name),
    invented: false,
  };
}
const stepsOf = (lesson: Lesson) => lesson.activity.steps.map(({ id }) => id);
const sheetOf = (lesson: Lesson) =>
  planClassSheet({
    lesson,
    className,
    teams: lesson.teams,
    names: newSheetNames([className]),
    places: planPlaces(lesson),
  });

/** Height of each row of the one block, by step. */
function heightsOf(lesson: Lesson): Readonly<Record<string, number>> {
  const { rowHeights = [], identity } = sheetOf(lesson);
  const heights: Record<string, number> = {};
  identity.rows.forEach(([key, step = ''], place) => {
    const row = identity.firstRow + place;
    if (key !== 'c1-t1' || step === '') return;
    for (const one of rowHeights) if (row >= one.from && row < one.from + one.count) heights[step] = one.size;
  });
  return heights;
}

describe('rows that a lesson adds to its activity', () => {
  it('are none in the everyday lesson as a new plan has it', () => {
    const lesson = lessonOf('KBr');
    expect(lesson.activity).toBe(everyday);
    const off = sheetOf({ ...lesson, activity: everyday });
    expect(sheetOf(lesson)).toEqual(off);
  });

  it.each([
    ['KBr', '0.300', [false, true, false]],
    // H318 makes the signal word Danger (CLP Annex VI, 029-023-00-4).
    ['CuSO4·5H2O', '0.100', [true, true, false]],
    ['NaOH', '0.100', [true, true, false]],
    // Nobody here knows it.
    ['Ag2C2O4', '0.100', [true, true, false]],
  ])('are the two questions for %s as the setting says', (formula, stock, asked) => {
    const found = (['for Danger', 'always', 'never'] as const).map(
      (when) =>
        stepsOf(lessonOf(formula, { stock, settings: { 'safety questions': when } }))
          .slice(1, 3)
          .join() === 'splash,waste',
    );
    expect(found).toEqual(asked);
  });

  it('are asked of all teams where one of them handles what is dangerous, and go by what the teacher typed as well', () => {
    const lesson = lessonOf('HCl', { stock: '6.00', activity: activityById('dilution') as Activity });
    const weak = { ...lesson.teams[0]?.givens, 'stock molarity': '0.100' };
    const used = (givens: Readonly<Record<string, string>>, own: Readonly<Record<string, string>>) =>
      activityInUse(activityById('dilution') as Activity, {
        setup: { ...lesson.setup, givens },
        teams: [{ givens: own }],
      }).steps.some(({ kind }) => kind === 'safety');
    const strong = { ...weak, 'stock molarity': '12.0' };
    // 25 % or more of HCl burns the skin: Danger; 10 to 25 % irritates: Warning (CLP Annex VI, 017-002-01-X).
    expect([used(weak, weak), used(strong, weak), used(weak, strong)]).toEqual([false, true, true]);
  });

  it('are no higher than a row that is added may be, whatever the substance', () => {
    // The formula is all that differs in their texts.
    const longest = listedHazards()
      .map(({ spellings: [formula = ''] }) => formula)
      .sort((one, other) => other.length - one.length)
      .slice(0, 6);
    for (const formula of [...longest, 'KBr']) {
      const heights = heightsOf(lessonOf(formula, { settings: { 'safety questions': 'always', evidence: 'yes' } }));
      for (const id of ['splash', 'waste'])
        expect([formula, id, (heights[id] ?? 999) <= mostRowHeight.addedQuestion]).toEqual([formula, id, true]);
    }
  });

  it('for evidence are no higher than two lines, and off they change nothing', () => {
    for (const id of ['stock and dilution', 'weighed residue', 'measured density', 'dilution']) {
      const activity = activityById(id) as Activity;
      const on = lessonOf('KBr', { activity, settings: { evidence: 'yes' } });
      const added = on.activity.steps.filter((step) => !activity.steps.some((one) => one.id === step.id));
      expect(added.length).toBe(id === 'dilution' ? 2 : 4);
      const heights = heightsOf(on);
      const own = Object.fromEntries(added.map((step) => [step.id, heights[step.id] ?? 999]));
      expect([id, Object.entries(own).filter(([, height]) => height > mostRowHeight.added)]).toEqual([id, []]);
      expect(Math.max(...Object.values(heights))).toBeLessThanOrEqual(mostRowHeight.any);
      expect(lessonOf('KBr', { activity, settings: { evidence: 'no' } }).activity.steps).toEqual(activity.steps);
    }
  });

  it('have their letters in the row and are found in the sheet by their names', () => {
    const cells = JSON.stringify(sheetOf(lessonOf('NaOH', { settings: { evidence: 'yes' } })));
    expect(cells).toContain('If it splashes');
    expect(cells).toContain('beaker for its metal, never the drain');
    expect(cells).toContain('no faces or voices needed');
  });
});

describe('cautions of several substances in one class', () => {
  const piece = (head: string, sentences: number) => ({
    head,
    effects: Array.from({ length: sentences }, (_, index) => `${head} effect ${index + 1}.`),
    advice: Array.from({ length: sentences }, (_, index) => `${head} advice ${index + 1}.`),
  });
  it('are all said: those that have no row of their own follow in the last', () => {
    const pieces = ['One', 'Two', 'Three', 'Four', 'Five', 'Six'].map((head) => piece(head, 1));
    const rows = cautionCells(pieces);
    expect(rows).toHaveLength(cautionRows);
    expect(rows.slice(0, -1).map(({ task }) => task)).toEqual(['One effect 1.', 'Two effect 1.', 'Three effect 1.']);
    expect(rows[cautionRows - 1]?.task).toBe('Four effect 1.\nFive effect 1.\nSix effect 1.');
    const text = rows.flatMap((row) => Object.values(row)).join(' ');
    for (const { head, advice } of pieces) for (const said of [head, ...advice]) expect(text).toContain(said);
  });
  it('go on in the next row where one cannot hold them, as sentences of their own', () => {
    const long = piece('Of a long name that takes room', 24);
    const rows = cautionCells([long]);
    expect(
      rows
        .map(({ task }) => task)
        .join(' ')
        .trim(),
    ).toBe(long.effects.join(' '));
    expect(rows[1]?.task).toMatch(/^Of a long name/);
  });
});

describe('cautions in a second language', () => {
  const also: Partial<Settings> = { 'cautions also in': 'Spanish' };
  it('stand below the first in the rows that are kept, whole, and no row is too high', () => {
    const seen = new Set<string>();
    let cut = 0;
    for (const { spellings, schoolUse } of listedHazards()) {
      const lesson = lessonOf(spellings[0] ?? '', { settings: also });
      const cautions = classCautions(lesson, lesson.teams);
      const told = JSON.stringify(cautions);
      if (seen.has(told)) continue;
      seen.add(told);
      const first = cautionCells(cautions.blocks);
      const rows = cautionCells(cautions.blocks, cautions.also);
      expect(rows.length).toBe(cautionRows);
      const most = Math.max(mostRowHeight.any, ...first.map(cautionRowHeight));
      expect(Math.max(...rows.map(cautionRowHeight))).toBeLessThanOrEqual(most);
      const text = rows.flatMap((row) => Object.values(row)).join('\n');
      // Nothing of the first language gives way.
      for (const { effects, advice } of cautions.blocks)
        for (const sentence of [...effects, ...advice]) expect(text).toContain(sentence);
      for (const { head, advice } of cautions.also)
        for (const sentence of [head, ...advice]) expect(text).toContain(sentence);
      const left = cautions.also.flatMap(({ effects }) => effects).filter((sentence) => !text.includes(sentence));
      if (left.length > 0) {
        cut += 1;
        expect([text.includes('Hay más peligros: véase la etiqueta.'), schoolUse !== '']).toEqual([true, true]);
      }
    }
    expect([seen.size > 120, cut <= 6]).toEqual([true, true]);
  });

  it('say the same hazards, by the wording of the act, and are off as the plan starts', () => {
    const lesson = lessonOf('NaOH', { settings: also, stock: '1.00' });
    const [solid] = classCautions(lesson, lesson.teams).also;
    expect(solid).toMatchObject({
      head: 'NaOH, sólido: Peligro',
      effects: expect.arrayContaining(['Provoca quemaduras graves en la piel y lesiones oculares graves.']),
      advice: expect.arrayContaining([
        'Gafas de seguridad, guantes y bata.',
        'Se disuelve despacio en agua fría: se calienta.',
      ]),
    });
    expect(classCautions(lesson, lesson.teams).last).toMatch(/own assessment\. Esto no es una ficha/);
    const off = lessonOf('NaOH', { stock: '1.00' });
    expect(classCautions(off, off.teams).also).toEqual([]);
    expect(classCautions(off, off.teams).last).not.toContain('ficha');
    const unknown = lessonOf('NaOH', { settings: { 'cautions also in': 'Klingon' } });
    expect(classCautions(unknown, unknown.teams).also).toEqual([]);
    const nobody = lessonOf('Ag2C2O4', { settings: also });
    expect(classCautions(nobody, nobody.teams).also[0]?.effects).toEqual([
      'No se conocen todos sus peligros: hay que tratarlo como nocivo.',
    ]);
  });

  it('keep the sheet the same: turning them on moves no row', () => {
    const on = sheetOf(lessonOf('KBr', { settings: also }));
    const off = sheetOf(lessonOf('KBr'));
    expect(on.identity).toEqual(off.identity);
    expect(on.rowCount).toBe(off.rowCount);
    expect(at.title).toBe(1);
  });
});
