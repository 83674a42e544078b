import { describe, expect, it } from 'vitest';
import { readPlanSent } from '../../src/host/readPlanSent.ts';
import { planWorkbook } from '../../src/workbook/planWorkbook.ts';
import { lesson } from '../workbook/lesson.ts';

const workbook = planWorkbook(lesson);
const sent = (plan: unknown): unknown => JSON.parse(JSON.stringify(plan));
const [first] = workbook.sheets;
if (first === undefined) throw new Error('The workbook has no sheet.');
const changed = (change: Record<string, unknown>): unknown => ({ ...(sent(first) as object), ...change });
const withFormula = (formula: unknown): unknown =>
  changed({ blocks: [{ row: 1, column: 1, cells: [[{ kind: 'formula', formula }]] }] });

describe('readPlanSent', () => {
  it.each(workbook.sheets.map((plan) => [plan.name, plan] as const))(
    'hands on the plan of %s as it was sent',
    (_, plan) => {
      const reading = readPlanSent(sent(plan));
      if (!reading.ok) throw new Error(reading.where);
      expect(sent(reading.plan)).toEqual(sent(plan));
    },
  );

  it.each([null, undefined, 3, 'plan', [], {}, { ...first, rowCount: 1e9 }, { ...first, columnCount: 0 }])(
    'refuses what is no plan: %s',
    (plan) => {
      expect(readPlanSent(plan).ok).toBe(false);
    },
  );

  it.each([
    { name: 'x'.repeat(101) },
    { role: { kind: 'budget' } },
    { columnWidths: ['wide'] },
    { frozenRows: -1 },
    { blocks: [{ row: 1, column: 1, cells: [[{ kind: 'script', text: 'x' }]] }] },
    { blocks: [{ row: 1, column: 1, cells: [[{ kind: 'blank' }], []] }] },
    { blocks: [{ row: 99_999, column: 1, cells: [[{ kind: 'blank' }]] }] },
    { blocks: [{ row: 1, column: 1, cells: [[{ kind: 'number', value: null }]] }] },
    { looks: [{ row: 1, column: 1, rows: 1, columns: 1, look: 'neon' }] },
    { formats: [{ row: 1, column: 1, rows: 1, columns: 1, format: '[red]0' }] },
    { writable: [{ row: 1, column: 1, rows: 1e9, columns: 1 }] },
    { choices: [{ area: { row: 1, column: 1, rows: 1, columns: 1 }, options: [1], help: '' }] },
    { identity: { firstRow: 1, columns: [0], rows: [] } },
  ])('refuses a part that a build never sends: %j', (change) => {
    expect(readPlanSent(changed(change)).ok).toBe(false);
  });

  it.each([
    '=IMPORTXML("https://example.org","//a")',
    '=importrange("x","A1")',
    '=IF(TRUE,IMAGE("https://example.org/x.png"),"")',
    '=HYPERLINK("https://example.org","look")',
    '=HYPERLINK("#gid="&A1&"&range=A1",IMPORTDATA("x"))',
    '="a"&WEBSERVICE("x")',
    '=QUERY(A1:B2,"select *")',
    '=LAMBDA(x,x)(1)',
    '=IF(1,"(",INDIRECT("A1"))',
    "=IF(1,'It''s (a sheet)'!A1,INDIRECT(A1))",
    '="unclosed&IMPORTXML(A1)',
    'CHECKTEAM(A1)',
    '=INDEX ( IMPORTFEED (A1),1)',
    `=${'A1+'.repeat(2000)}A1`,
    42,
  ])('refuses the formula %s', (formula) => {
    expect(readPlanSent(withFormula(formula)).ok).toBe(false);
  });

  it.each(['=IF(A1="(IMPORTXML(",1,2)', "='IMPORTXML(x)'!A1", '=COUNTIF($A$1:$A$9,"on target")&" of 9"'])(
    'takes words and names of sheets for what they are: %s',
    (formula) => {
      expect(readPlanSent(withFormula(formula)).ok).toBe(true);
    },
  );
});
