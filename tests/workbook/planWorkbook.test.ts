import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/functions/catalogue.ts';
import { nativeFunctions } from '../../src/workbook/formula.ts';
import { planWorkbook } from '../../src/workbook/planWorkbook.ts';
import type { Area, Block, SheetPlan } from '../../src/workbook/workbook.ts';
import { hostileNames, lesson, teams } from './lesson.ts';
import { planText } from './planText.ts';

const plan = planWorkbook(lesson);
const contents = plan.sheets.flatMap((sheet) =>
  [...sheet.blocks, ...sheet.checks].flatMap((block) => block.cells.flat().map((content) => ({ sheet, content }))),
);
const formulas = contents.flatMap(({ content }) => (content.kind === 'formula' ? [content.formula] : []));
const outsideQuotes = (formula: string): string => formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'/g, '');

const area = ({ row, column, cells }: Block): Area => ({
  row,
  column,
  rows: cells.length,
  columns: cells[0]?.length ?? 0,
});
const overlap = (one: Area, other: Area): boolean =>
  one.row < other.row + other.rows &&
  other.row < one.row + one.rows &&
  one.column < other.column + other.columns &&
  other.column < one.column + one.columns;
const classSheets = plan.sheets.filter(({ role }) => role.kind === 'class');

describe('planWorkbook', () => {
  it('plans a whole workbook that can be read through', async () => {
    await expect(planText(plan)).toMatchFileSnapshot('__snapshots__/workbook.txt');
  });

  it('names only functions that exist', () => {
    const known = new Set<string>([...nativeFunctions, ...catalogue.map(({ name }) => name)]);
    const used = new Set(formulas.flatMap((formula) => outsideQuotes(formula).match(/[A-Z][A-Z0-9.]*(?=\()/g) ?? []));
    expect([...used].filter((name) => !known.has(name))).toEqual([]);
    expect(used).toContain('CHECKTEAM');
    // The list of native functions says what is used, and nothing besides.
    expect(nativeFunctions.filter((name) => !used.has(name))).toEqual([]);
  });

  it('refers only to sheets of the plan', () => {
    const names = plan.sheets.map(({ name }) => `'${name}'`);
    const used = new Set(
      formulas.flatMap((formula) => formula.replace(/"(?:[^"]|"")*"/g, '').match(/'(?:[^']|'')*'/g) ?? []),
    );
    expect([...used].filter((name) => !names.includes(name))).toEqual([]);
  });

  it('keeps what people typed out of formulas', () => {
    for (const name of [...hostileNames, ...lesson.setup.classes.map((entry) => entry.name)]) {
      const literal = `"${name.split('"').join('""')}"`;
      expect(formulas.filter((formula) => formula.includes(literal))).toEqual([]);
    }
    const plain = formulas.map((formula) => formula.replace(/'(?:[^']|'')*'!/g, ''));
    expect(plain.filter((formula) => formula.includes('<b>') || formula.includes('=1+1'))).toEqual([]);
  });

  it('holds names that look like formulas as text', () => {
    const texts = contents.flatMap(({ content }) => (content.kind === 'text' ? [content.text] : []));
    for (const name of hostileNames) expect(texts).toContain(name);
  });

  it('writes nothing where people write or functions spill', () => {
    for (const sheet of plan.sheets) {
      for (const block of sheet.blocks) {
        for (const writable of sheet.writable) expect(overlap(area(block), writable)).toBe(false);
        for (const spill of sheet.spill) expect(overlap(area(block), spill)).toBe(false);
      }
      for (const check of sheet.checks) {
        for (const writable of sheet.writable) expect(overlap(area(check), writable)).toBe(false);
      }
    }
  });

  it('gives each team one check that covers its block from heading row to closing row', () => {
    const steps = lesson.activity.steps.length;
    for (const sheet of classSheets) {
      expect(sheet.checks).toHaveLength(teams.filter(({ className }) => className === sheet.role.className).length);
      sheet.checks.forEach((check, index) => {
        const content = check.cells[0]?.[0];
        const formula = content?.kind === 'formula' ? content.formula : '';
        const last = check.row + steps + 1;
        expect(formula).toContain(`$M$${check.row}:$M$${last},$C$${check.row}:$C$${last},$H$${check.row}:$H$${last}`);
        expect(sheet.spill[index]).toEqual({ row: check.row, column: 5, rows: steps + 2, columns: 3 });
      });
    }
  });

  it('repeats team and step in every step row', () => {
    const [sheet] = classSheets;
    const keyBlock = sheet?.blocks.find(({ column, cells }) => column === 12 && cells.length > 1);
    const rows = keyBlock?.cells.map((cells) => cells.map((cell) => (cell.kind === 'text' ? cell.text : '')));
    expect(rows?.slice(0, 3)).toEqual([
      ['c1-t1', ''],
      ['c1-t1', 'cautions read'],
      ['c1-t1', 'molar mass'],
    ]);
  });

  it('keeps every target out of the workbook', () => {
    // Worked here from the definitions, with the molar mass of KBr from the atomic weights 39.0983 and 79.904.
    const molarMass = 119.0023;
    for (const sheet of plan.sheets) expectNoTarget(sheet, molarMass);
  });

  it('uses no merged cells and no step twice in a team', () => {
    for (const sheet of classSheets) {
      const names = sheet.identity.rows.filter(([, step]) => step !== '').map((row) => row.join('|'));
      expect(new Set(names).size).toBe(names.length);
    }
  });
});

function expectNoTarget(sheet: SheetPlan, molarMass: number): void {
  const cells = [...sheet.blocks, ...sheet.checks].flatMap(({ cells: rows }) => rows.flat());
  // Words only: the numbers in a formula are rows and columns.
  const words = cells.flatMap((cell) =>
    cell.kind === 'text' ? [cell.text] : cell.kind === 'formula' ? (cell.formula.match(/"(?:[^"]|"")*"/g) ?? []) : [],
  );
  const shown = new Set(words.flatMap((text) => text.match(/\d+(?:\.\d+)?/g) ?? []).map(Number));
  for (const { givens } of teams) {
    const given = (name: string) => Number(givens[name]);
    const moles = (given('stock molarity') * given('flask')) / 1000;
    const portion = (given('target molarity') * given('target volume')) / given('stock molarity');
    const factor = given('stock molarity') / given('target molarity');
    for (const target of [molarMass, moles, moles * molarMass, factor, portion, given('target volume') - portion]) {
      for (const figures of [3, 4, 5]) {
        const rounded = Number(target.toPrecision(figures));
        expect(shown.has(rounded) && !Object.values(givens).map(Number).includes(rounded), `${target}`).toBe(false);
      }
    }
  }
}
