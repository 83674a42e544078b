import { HyperFormula } from 'hyperformula';
import { describe, expect, it } from 'vitest';
import { activityById } from '../../src/lab/lesson/activities.ts';
import { activityInUse } from '../../src/workbook/activityInUse.ts';
import { cautionLine, classCautions } from '../../src/workbook/cautionLine.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { linkProblems } from '../../src/workbook/linkProblems.ts';
import { planWorkbook } from '../../src/workbook/planWorkbook.ts';
import { lesson, teams } from './lesson.ts';

const withGivens = (givens: Record<string, string>) =>
  teams.map((team) => ({ ...team, givens: { ...team.givens, ...givens } }));
const cautionOf = (formula: string) => cautionLine(lesson, withGivens({ formula }));
/** All cautions of a class, in the order in which the sheet has them. */
const wholeOf = (formula: string) => {
  const { blocks, last } = classCautions(lesson, withGivens({ formula }));
  return [last, ...blocks.flatMap(({ head, effects, advice }) => [head, ...effects, ...advice])].join('\n');
};

describe('cautionLine', () => {
  it('says the signal word, what to do, and what stands above it', () => {
    expect(cautionOf('NaOH')).toMatch(/^NaOH: Danger\. Read the safety data sheet.*local rules/);
    expect(wholeOf('NaOH')).toMatch(/Wear goggles/);
    expect(cautionOf('CuSO4·5H2O')).toMatch(/^CuSO4·5H2O: Danger\./);
  });
  it('says where leftovers go, and tells no class from nothing known', () => {
    expect(wholeOf('AgNO3')).toMatch(/into the waste beaker for silver\.\nStaff deal with it\.$/);
    expect(wholeOf('KBr')).toMatch(/down the drain with plenty of water, where your local rules allow it\.$/);
    expect(cautionOf('NaCl')).toMatch(/^NaCl: no signal word, still take care\./);
    expect(cautionOf('NaH2PO4')).toMatch(/^NaH2PO4: no signal word is known here\./);
  });
  it('says that a substance is not listed, never that it is safe', () => {
    expect(cautionOf('XeF2')).toMatch(/^XeF2: not listed here.*safety data sheet/);
    for (const formula of ['XeF2', 'NaCl', 'C12H22O11']) expect(cautionOf(formula)).not.toMatch(/\bsafe\b/);
  });
  it('names each substance of the class once', () => {
    const [first, ...rest] = withGivens({ formula: 'KBr' });
    if (!first) throw new Error('the lesson has lost its teams');
    const line = cautionLine(lesson, [{ ...first, givens: { ...first.givens, formula: 'NaOH' } }, ...rest]);
    expect(line.match(/KBr:/g)).toHaveLength(1);
    expect(line.match(/NaOH:/g)).toHaveLength(1);
  });
  // CLP Annex VI: sodium hydroxide is corrosive from 2 %, about 0.51 mol/L, and irritant from 0.5 %, about 0.13 mol/L.
  it('goes by the strongest stock of the class where teams only dilute', () => {
    const activity = activityById('dilution');
    if (activity === undefined) throw new Error('no dilution');
    const lineOf = (...stocks: readonly string[]) =>
      cautionLine(
        { ...lesson, activity },
        withGivens({ formula: 'NaOH' })
          .slice(0, stocks.length)
          .map((team, place) => ({ ...team, givens: { ...team.givens, 'stock molarity': stocks[place] ?? '' } })),
      );
    expect(lineOf('0.100', '0.300')).toMatch(/^NaOH up to 0\.300 mol\/L: Warning\./);
    expect(lineOf('2.00', '0.300')).toMatch(/^NaOH up to 2\.00 mol\/L: Danger\./);
    expect(lineOf('0.100', 'strong')).toMatch(/^NaOH: Danger\./);
  });
  it('stands as text under the title of each class', () => {
    const sheets = planWorkbook(lesson).sheets.filter(({ role }) => role.kind === 'class');
    for (const { blocks } of sheets) {
      const top = blocks.find(({ row, column, cells }) => row === 2 && column === at.title && cells.length > 1);
      expect(top?.cells[2]?.[1]).toEqual({ kind: 'text', text: cautionOf('KBr') });
    }
  });
});

describe('the line under a step', () => {
  /** The planned question of a step, worked out by the engine of the preview with this typed into the Plan. */
  const shown = (step: string, givens: Record<string, string>): string => {
    const sheet = planWorkbook(lesson).sheets.find(({ role }) => role.kind === 'class');
    const find = sheet?.blocks.find(({ column, cells }) => column === at.title && cells.length > 20);
    const key = sheet?.blocks.find(({ column, cells }) => column === at.key && cells.length > 20);
    const index = key?.cells.findIndex(([, id]) => id?.kind === 'text' && id.text === step) ?? -1;
    const formula = find?.cells[index]?.[1];
    if (find === undefined || formula?.kind !== 'formula') throw new Error(`Expected a question for ${step}.`);
    const engine = HyperFormula.buildEmpty({ licenseKey: 'gpl-v3' });
    engine.addSheet('class');
    engine.addSheet('Plan');
    const names = lesson.givenNames;
    names.forEach((name, place) => {
      engine.setCellContents({ sheet: 0, row: find.row - 1, col: at.givens - 1 + place }, [[`'${givens[name] ?? ''}`]]);
    });
    engine.setCellContents({ sheet: 0, row: find.row - 1, col: at.givens - 1 + names.length }, [[1]]);
    engine.setCellContents({ sheet: 0, row: 0, col: 0 }, [[formula.formula]]);
    const value = String(engine.getCellValue({ sheet: 0, row: 0, col: 0 }));
    engine.destroy();
    return value;
  };
  it.each([
    ['200', '200 mL'],
    ['200 mL', '200 mL'],
    ['200mL', '200mL'],
    ['0,200 L', '0,200 L'],
    ['0.2', '0.2 mL'],
    ['200 cm3', '200 cm3'],
    ['200 cm³', '200 cm³'],
  ])('adds the unit to %s only where the cell has none', (typed, wanted) => {
    const line = shown('moles of solute', { ...teams[0]?.givens, flask: typed });
    expect(line).toContain(wanted);
    expect(line).not.toMatch(/mL\s*mL|L mL/);
    expect(line.includes(`${wanted} mL`)).toBe(false);
  });
});

describe('activityInUse', () => {
  it('asks about an ion while any team has one', () => {
    expect(activityInUse(lesson.activity, lesson)).toBe(lesson.activity);
    const [first, ...rest] = withGivens({ ion: ' ' });
    expect(activityInUse(lesson.activity, { ...lesson, teams: rest }).steps.map(({ id }) => id)).not.toContain(
      'ion molarity',
    );
    expect(activityInUse(lesson.activity, { ...lesson, teams: rest }).steps).toHaveLength(
      lesson.activity.steps.length - 1,
    );
    expect(
      activityInUse(lesson.activity, { ...lesson, teams: [teams[0] ?? { givens: {} }, ...(first ? [first] : [])] }),
    ).toBe(lesson.activity);
  });
});

describe('linkProblems', () => {
  const help = (link: string) => [
    ['Help'],
    ['step', 'level', 'your own wording', 'link'],
    ['molar mass', '1', '', link],
    ['molar mass', '2', '', ''],
  ];
  it('says which link nobody is shown, and lets web addresses be', () => {
    expect(linkProblems(help('www.example.org/film'))).toEqual([
      expect.stringMatching(
        /^The link of molar mass, level 1, in Help: “www\.example\.org\/film” is not a web address that begins with http:\/\//,
      ),
    ]);
    expect(linkProblems(help('https://example.org/film'))).toEqual([]);
    expect(linkProblems([['Help']])).toEqual([]);
  });
});
