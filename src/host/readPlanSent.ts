import type { FunctionName } from '../functions/catalogue.ts';
import { nativeFunctions } from '../workbook/formula.ts';
import { looks } from '../workbook/looks.ts';
import { stateWords } from '../workbook/stateWords.ts';
import type { Area, Block, CellContent, Relettered, SheetPlan, SheetRole, SizedRun } from '../workbook/workbook.ts';

/** Functions of ours that a planned formula may call; everything else that it calls is native and on the other list. */
const ownFunctions: readonly FunctionName[] = ['CHECKTEAM'];
const allowed: ReadonlySet<string> = new Set<string>([...ownFunctions, ...nativeFunctions]);

/** Far above any sheet of ours, and far below what the host would choke on. */
const most = { rows: 5000, columns: 200, items: 5000, text: 5000, formula: 4000, name: 100 } as const;

const kinds: readonly SheetRole['kind'][] = ['poll', 'plan', 'class', 'progress', 'help', 'prepare', 'record', 'key'];
const formats: readonly string[] = ['@', 'General', '0', 'hh:mm'];
const states: readonly string[] = stateWords.map(({ state }) => state);

/** What is wrong with a plan, for the script's own log and tests; people are told that the page and the script differ. */
export type PlanSent = { readonly ok: true; readonly plan: SheetPlan } | { readonly ok: false; readonly where: string };

class Refusal extends Error {}

function refuse(where: string): never {
  throw new Refusal(where);
}

type Fields = Readonly<Record<string, unknown>>;

function fieldsOf(value: unknown, where: string): Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Fields) : refuse(where);
}

function listOf<T>(value: unknown, where: string, read: (item: unknown, where: string) => T, limit: number): T[] {
  if (!Array.isArray(value) || value.length > limit) return refuse(where);
  return value.map((item, index) => read(item, `${where} ${index + 1}`));
}

function wholeNumber(value: unknown, where: string, { from, to }: { from: number; to: number }): number {
  const isWithin = typeof value === 'number' && Number.isInteger(value) && value >= from && value <= to;
  return isWithin ? value : refuse(where);
}

function words(value: unknown, where: string, limit: number = most.text): string {
  return typeof value === 'string' && value.length <= limit ? value : refuse(where);
}

function oneOf<T extends string>(value: unknown, where: string, list: readonly T[]): T {
  return list.find((item) => item === value) ?? refuse(where);
}

/**
 * Reads a plan that came from the page, where anybody may have called the script with words of their own. Its shape must
 * be whole, its sizes bounded, and its formulas may call only functions on our lists and refer to cells of this file: a
 * plan can do nothing that a build does not do.
 */
export function readPlanSent(sent: unknown): PlanSent {
  try {
    return { ok: true, plan: readPlan(fieldsOf(sent, 'the plan')) };
  } catch (error) {
    if (error instanceof Refusal) return { ok: false, where: error.message };
    throw error;
  }
}

function readPlan(plan: Fields): SheetPlan {
  const rowCount = wholeNumber(plan.rowCount, 'rowCount', { from: 1, to: most.rows });
  const columnCount = wholeNumber(plan.columnCount, 'columnCount', { from: 1, to: most.columns });
  const bounds: Bounds = { rowCount, columnCount };
  const areas = (value: unknown, where: string) =>
    listOf(value, where, (item, at) => readArea(item, at, bounds), most.items);
  const blocks = (value: unknown, where: string) =>
    listOf(value, where, (item, at) => readBlock(item, at, bounds), most.items);
  const hidden =
    plan.hiddenColumns === undefined || plan.hiddenColumns === null
      ? undefined
      : fieldsOf(plan.hiddenColumns, 'hiddenColumns');
  const column = (value: unknown, where: string) => wholeNumber(value, where, { from: 1, to: columnCount });
  const identity = fieldsOf(plan.identity, 'identity');
  const text = (value: unknown, where: string) => words(value, where);
  return {
    name: words(plan.name, 'name', most.name),
    role: readRole(fieldsOf(plan.role, 'role')),
    ...(plan.activity === undefined ? {} : { activity: words(plan.activity, 'activity', most.name) }),
    rowCount,
    columnCount,
    columnWidths: runs(plan.columnWidths, 'columnWidths', columnCount),
    ...(plan.rowHeights === undefined
      ? {}
      : {
          rowHeights: runs(plan.rowHeights, 'rowHeights', rowCount),
        }),
    hiddenColumns:
      hidden === undefined
        ? undefined
        : { column: column(hidden.column, 'hiddenColumns'), count: column(hidden.count, 'hiddenColumns') },
    frozenRows: wholeNumber(plan.frozenRows, 'frozenRows', { from: 0, to: rowCount }),
    frozenColumns: wholeNumber(plan.frozenColumns, 'frozenColumns', { from: 0, to: columnCount }),
    blocks: blocks(plan.blocks, 'blocks'),
    checks: blocks(plan.checks, 'checks'),
    looks: listOf(
      plan.looks,
      'looks',
      (item, at) => ({
        ...readArea(item, at, bounds),
        look: oneOf(fieldsOf(item, at).look, at, Object.keys(looks) as (keyof typeof looks)[]),
      }),
      most.items,
    ),
    formats: listOf(
      plan.formats,
      'formats',
      (item, at) => ({
        ...readArea(item, at, bounds),
        format: oneOf(fieldsOf(item, at).format, at, formats) as SheetPlan['formats'][number]['format'],
      }),
      most.items,
    ),
    states: listOf(
      plan.states,
      'states',
      (item, at) => {
        const rule = fieldsOf(item, at);
        return {
          areas: areas(rule.areas, at),
          startsWith: words(rule.startsWith, at, most.name),
          state: oneOf(rule.state, at, states) as SheetPlan['states'][number]['state'],
        };
      },
      most.name,
    ),
    choices: listOf(
      plan.choices,
      'choices',
      (item, at) => {
        const choice = fieldsOf(item, at);
        return {
          area: readArea(choice.area, at, bounds),
          options: listOf(choice.options, at, text, most.items),
          help: words(choice.help, at),
        };
      },
      most.items,
    ),
    writable: areas(plan.writable, 'writable'),
    ...(plan.invitation === undefined
      ? {}
      : { invitation: readInvitation(fieldsOf(plan.invitation, 'invitation'), areas) }),
    unprotected: areas(plan.unprotected, 'unprotected'),
    spill: areas(plan.spill, 'spill'),
    identity: {
      firstRow: wholeNumber(identity.firstRow, 'identity', { from: 1, to: rowCount }),
      columns: listOf(identity.columns, 'identity', column, most.columns),
      rows: listOf(identity.rows, 'identity', (item, at) => listOf(item, at, text, most.columns), most.rows),
    },
    carried: listOf(plan.carried, 'carried', column, most.columns),
    ...(plan.relettered === undefined
      ? {}
      : { relettered: readRelettered(fieldsOf(plan.relettered, 'relettered'), bounds) }),
    ...(plan.carriesAddedRows === true ? { carriesAddedRows: true as const } : {}),
  };
}

const runs = (sent: unknown, where: string, count: number): SizedRun[] =>
  listOf(sent, where, (item, at) => readRun(fieldsOf(item, at), at, count), most.items);

function readRun(run: Fields, where: string, count: number): SizedRun {
  const from = wholeNumber(run.from, where, { from: 1, to: count });
  return {
    from,
    count: wholeNumber(run.count, where, { from: 1, to: count - from + 1 }),
    size: wholeNumber(run.size, where, { from: 2, to: 2000 }),
  };
}

function readRelettered(sent: Fields, { rowCount, columnCount }: Bounds): Relettered {
  const where = 'relettered';
  return {
    since: wholeNumber(sent.since, where, { from: 1, to: most.rows }),
    column: wholeNumber(sent.column, where, { from: 1, to: columnCount }),
    rows: listOf(sent.rows, where, (row) => wholeNumber(row, where, { from: 1, to: rowCount }), most.rows),
    before: words(sent.before, where, most.name),
  };
}

function readInvitation(
  invitation: Fields,
  areas: (value: unknown, where: string) => readonly Area[],
): NonNullable<SheetPlan['invitation']> {
  return { places: areas(invitation.places, 'invitation'), text: words(invitation.text, 'invitation', most.name) };
}

function readRole(role: Fields): SheetRole {
  const kind = oneOf(role.kind, 'role', kinds);
  const { className, lesson } = role;
  return {
    kind,
    ...(className === undefined ? {} : { className: words(className, 'role') }),
    ...(lesson === undefined ? {} : { lesson: words(lesson, 'role', most.name) }),
  };
}

interface Bounds {
  readonly rowCount: number;
  readonly columnCount: number;
}

function readArea(value: unknown, where: string, { rowCount, columnCount }: Bounds): Area {
  const area = fieldsOf(value, where);
  const row = wholeNumber(area.row, where, { from: 1, to: rowCount });
  const column = wholeNumber(area.column, where, { from: 1, to: columnCount });
  return {
    row,
    column,
    rows: wholeNumber(area.rows, where, { from: 0, to: rowCount - row + 1 }),
    columns: wholeNumber(area.columns, where, { from: 0, to: columnCount - column + 1 }),
  };
}

function readBlock(value: unknown, where: string, { rowCount, columnCount }: Bounds): Block {
  const block = fieldsOf(value, where);
  const row = wholeNumber(block.row, where, { from: 1, to: rowCount });
  const column = wholeNumber(block.column, where, { from: 1, to: columnCount });
  const cells = listOf(
    block.cells,
    where,
    (line, at) => listOf(line, at, readContent, columnCount - column + 1),
    rowCount - row + 1,
  );
  const width = cells[0]?.length ?? 0;
  if (cells.some((line) => line.length !== width)) refuse(where);
  return { row, column, cells };
}

function readContent(value: unknown, where: string): CellContent {
  const content = fieldsOf(value, where);
  switch (content.kind) {
    case 'text':
      return { kind: 'text', text: words(content.text, where) };
    case 'number':
      return typeof content.value === 'number' && Number.isFinite(content.value)
        ? { kind: 'number', value: content.value }
        : refuse(where);
    case 'formula':
      return { kind: 'formula', formula: readFormulaSent(content.formula, where) };
    case 'sheet id':
      return { kind: 'sheet id' };
    case 'blank':
      return { kind: 'blank' };
    default:
      return refuse(where);
  }
}

/** Words of ours in quotes and names of sheets in apostrophes are passed over; what is left may call what is allowed. */
function readFormulaSent(value: unknown, where: string): string {
  const formula = words(value, where, most.formula);
  if (!formula.startsWith('=')) return refuse(where);
  const bare = formula.replace(/"(?:[^"]|"")*"/g, '""').replace(/'(?:[^']|'')*'/g, "''");
  // A quotation that is never closed would hide what follows it from this reading.
  if (/["'](?!["'])/.test(bare.replace(/""|''/g, ''))) return refuse(where);
  const calls = bare.match(/[A-Za-z_\\][\w.\\]*\s*\(/g) ?? [];
  if (calls.some((call) => !allowed.has(call.slice(0, -1).trim()))) return refuse(where);
  // No braces, calls of results, or links but to a place in this file.
  if (/[{}[\]@\\;`]|\)\s*\(/.test(bare)) return refuse(where);
  if (bare.includes('HYPERLINK(') && !/HYPERLINK\("#gid="&/.test(formula)) return refuse(where);
  return formula;
}
