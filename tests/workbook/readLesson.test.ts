import { describe, expect, it } from 'vitest';
import { defaultSettings, defaultShelf } from '../../src/lab/lesson/defaultSettings.ts';
import { ownHelpGiven } from '../../src/lab/lesson/teamColumns.ts';
import type { CellValue } from '../../src/measurement/cellValue.ts';
import { readLesson } from '../../src/workbook/readLesson.ts';
import { settingOptions } from '../../src/workbook/settingOptions.ts';
import { words } from '../../src/workbook/words.ts';

const { plan, settings: names } = words;

/** A Plan as a teacher may have left it: settings, and lines of teams below. */
function cells({
  settings = {},
  without = [],
  headings = ['formula', 'flask'],
  lines = [['k1', 'Fern', 'Otter', 'KBr', '200']],
}: {
  readonly settings?: Readonly<Record<string, CellValue>>;
  readonly without?: readonly string[];
  readonly headings?: readonly string[];
  readonly lines?: readonly (readonly CellValue[])[];
} = {}): readonly (readonly CellValue[])[] {
  const all: Record<string, CellValue> = { ...defaultSettings, [names.flasks]: '', [names.pipettes]: '', ...settings };
  return [
    ['Plan'],
    [],
    [plan.setting, plan.value],
    ...Object.entries(all).flatMap(([name, value]) => (without.includes(name) ? [] : [[name, value]])),
    [],
    [plan.key, plan.className, plan.team, ...headings],
    ...lines,
  ];
}
function read(given: Parameters<typeof cells>[0] = {}) {
  const reading = readLesson(cells(given));
  if (!reading.ok) throw new Error('Expected a Plan that can be read.');
  return reading.value;
}
const rows = cells().length;

describe('readLesson', () => {
  it('reads settings, shelf, classes and lines back', () => {
    const lines = [
      ['k1', 'Fern', 'Otter', 'KBr', '200'],
      ['k2', 'Moss', 'Newt', 'KCl', 100],
      ['k3', 'Fern', 'Heron', 'KBr', ''],
    ];
    const found = read({ lines });
    expect(found.problems).toEqual([]);
    expect(found.setup.settings).toEqual(defaultSettings);
    expect(found.setup.activity).toBe(defaultSettings.activity);
    expect(found.setup.shelf).toEqual(defaultShelf);
    expect(found.setup.classes).toEqual([
      { name: 'Fern', teams: ['Otter', 'Heron'] },
      { name: 'Moss', teams: ['Newt'] },
    ]);
    expect(found.teams).toEqual([
      { key: 'k1', className: 'Fern', team: 'Otter', givens: { formula: 'KBr', flask: '200' } },
      { key: 'k2', className: 'Moss', team: 'Newt', givens: { formula: 'KCl', flask: '100' } },
      { key: 'k3', className: 'Fern', team: 'Heron', givens: { formula: 'KBr', flask: '' } },
    ]);
    expect(found.givenNames).toEqual(['formula', 'flask']);
    expect([found.invented, found.layout, found.keysUsedTwice]).toEqual([false, '', []]);
  });
  it('says where things stand', () => {
    const { places } = read();
    const heading = rows - 1;
    expect(places.settings).toEqual({ row: 3, column: 1, rows: heading - 3, columns: 2 });
    expect(places.keys).toMatchObject({ row: heading, column: 1, columns: 1 });
    expect(places.givenHeadings).toEqual({ row: heading, column: 4, rows: 1, columns: 2 });
    expect(read({ headings: [] }).places.givenHeadings.columns).toBe(1);
  });
  it('reads the last setting as well, the first of two alike, and a name in capital letters', () => {
    expect(read({ settings: { [names.layout]: '3', [names.invented]: 'yes' } })).toMatchObject({
      layout: '3',
      invented: true,
    });
    const twice = read({ settings: { SPARE: '90 %', 'Start from flask': '500' } }).setup;
    expect(twice.settings.spare).toBe(defaultSettings.spare);
    expect(read({ without: ['spare'], settings: { SPARE: '90 %' } }).setup.settings.spare).toBe('90 %');
  });
  it('reads a setting that stands right above the heading of the lines', () => {
    const whole = cells({ settings: { [names.layout]: '3' } });
    const close = whole.filter((line, index) => line.length > 0 || index < 3);
    expect(close).toHaveLength(whole.length - 1);
    expect(readLesson(close)).toMatchObject({ ok: true, value: { layout: '3' } });
  });
  it('starts from the numbers named there or else from those of the first team', () => {
    const lines = [
      ['k1', 'Fern', 'Otter', 'KBr', '200'],
      ['k2', 'Fern', 'Newt', 'KCl', '100'],
    ];
    expect(read({ lines }).setup.givens).toEqual({ formula: 'KBr', flask: '200' });
    expect(read({ lines, settings: { [`${names.startPrefix}flask`]: '500' } }).setup.givens).toEqual({
      formula: 'KBr',
      flask: '500',
    });
    expect(read({ lines: [] }).setup.givens).toEqual({ formula: '', flask: '' });
  });
  it('reads sizes between semicolons, with or without a unit, in the decimal mark of the class', () => {
    const shelf = (settings: Readonly<Record<string, CellValue>>) => read({ settings }).setup.shelf;
    expect(shelf({ [names.flasks]: '50; 100 mL;0.25 L; ' }).flasksMl).toEqual([50, 100, 250]);
    expect(shelf({ [names.pipettes]: '2,5; 10', 'decimal mark': 'comma' }).pipettesMl).toEqual([2.5, 10]);
    expect(shelf({ [names.balanceRange]: '120 g', balance: '0.001 g' })).toMatchObject({
      balanceMaxG: 120,
      balanceReadabilityG: 0.001,
    });
  });
  it('passes over a size that cannot be read and says so', () => {
    const found = read({ settings: { [names.flasks]: '50; some; 100', [names.balanceRange]: 'a lot' } });
    expect(found.setup.shelf.flasksMl).toEqual([50, 100]);
    expect(found.setup.shelf.balanceMaxG).toBe(defaultShelf.balanceMaxG);
    expect(found.problems).toHaveLength(2);
    expect(found.problems[0]).toContain('some');
    expect(found.problems[1]).toContain('a lot');
  });
  it('takes the usual value for a setting that is blank or gone, and says which and which value', () => {
    for (const [given, why] of [
      [{ settings: { spare: '' } }, 'is blank'],
      [{ without: ['spare'] }, 'has no line in the Plan'],
    ] as const) {
      const found = read(given);
      expect(found.problems[0]).toContain(why);
      expect(found.setup.settings.spare).toBe(defaultSettings.spare);
      expect(found.problems).toHaveLength(1);
      expect(found.problems[0]).toContain('“spare”');
      expect(found.problems[0]).toContain(`“${defaultSettings.spare}”`);
    }
  });
  it('keeps a setting that is none of its options, and names the options', () => {
    const found = read({ settings: { periods: '3' } });
    expect(found.setup.settings.periods).toBe('3');
    expect(found.problems).toHaveLength(1);
    for (const option of settingOptions.periods ?? []) expect(found.problems[0]).toContain(option);
    expect(found.problems[0]).toContain('“3”');
  });
  it('takes an option however its letters were typed, as the checks in the sheet do', () => {
    for (const [name, options] of Object.entries(settingOptions)) {
      if (!(name in defaultSettings)) continue;
      for (const option of options) {
        const found = read({ settings: { [name]: ` ${option.toUpperCase().replace(' ', '  ')} ` } });
        expect([name, found.problems, found.setup.settings]).toEqual([
          name,
          [],
          { ...defaultSettings, [name]: option },
        ]);
      }
    }
    const shelf = read({ settings: { 'decimal mark': 'Comma', [names.flasks]: '0,25 L; 50' } }).setup.shelf;
    expect(shelf.flasksMl).toEqual([250, 50]);
  });
  it('says what a line is missing, and takes it where it has a key', () => {
    const found = read({
      lines: [
        ['k1', '', 'Otter', 'KBr', '200'],
        ['', 'Fern', '', 'KBr', '200'],
        [],
        ['k3', 'Fern', 'Newt', 'KBr', '200'],
      ],
    });
    expect(found.teams.map(({ key }) => key)).toEqual(['k1', 'k3']);
    expect(found.problems).toHaveLength(2);
    expect(found.problems[0]).toContain(`Line ${rows} of`);
    expect(found.problems[0]).toContain('k1, no class, Otter');
    expect(found.problems[1]).toContain(`Line ${rows + 1} of`);
    expect(found.problems[1]).toContain('no key, Fern, no team');
    for (const problem of found.problems) expect(problem).toMatch(/Fill in what is missing, or clear the line\.$/);
  });
  it('reads what a team has of its own by its heading, wherever that stands and however it is written', () => {
    const headings = ['formula', 'flask', plan.today, 'seat', ownHelpGiven.toUpperCase()];
    const found = read({ headings, lines: [['k1', 'Fern', 'Otter', 'KBr', '200', '', 'window', '2']] });
    expect(found.teams[0]?.givens[ownHelpGiven]).toBe('2');
    expect([found.places.teamColumns[ownHelpGiven], found.hasOwnColumns]).toEqual([8, true]);
    expect(read({ headings: headings.filter((name) => name !== 'seat') }).hasOwnColumns).toBe(false);
  });
  it('says of a number that is a date or a tick, and of which team', () => {
    const found = read({ lines: [['k1', 'Fern', 'Otter', true, new Date(0)]] });
    expect(found.problems).toHaveLength(2);
    expect(found.problems[0]).toContain('Formula of Otter');
    expect(found.problems[0]).toContain('TRUE');
    expect(found.problems[1]).toContain('Flask of Otter');
    expect(found.teams[0]?.givens.flask).toBe('');
  });
  it('finds a key in two lines, also in other case, names both lines and reads both', () => {
    const lines = [
      ['k1', 'Fern', 'Otter', 'KBr', '200'],
      ['k2', 'Fern', 'Newt', 'KBr', '200'],
      ['K1', 'Fern', 'Heron', 'KBr', '200'],
    ];
    const found = read({ lines });
    expect(found.keysUsedTwice).toEqual(['k1']);
    expect(found.teams).toHaveLength(3);
    expect(found.problems).toHaveLength(1);
    expect(found.problems[0]).toContain(`Lines ${rows} and ${rows + 2} of the Plan: the key “k1”`);
  });
  it('has room for at least three hundred lines of teams', () => {
    expect(read().places.keys.rows).toBe(301);
  });
  it('fails where the headings are gone, or stand the wrong way round', () => {
    const whole = cells();
    const heading = whole.findIndex(([cell]) => cell === plan.key);
    for (const spoilt of [
      [],
      whole.filter((_, index) => index !== heading),
      whole.filter((_, index) => index !== 2),
      [...whole].reverse(),
    ])
      expect(readLesson(spoilt)).toMatchObject({ ok: false, error: { code: 'plan-without-lines' } });
  });
});
