import type { Step } from '../lab/lesson/activity.ts';
import { roles } from '../lab/lesson/roles.ts';
import type { TeamPlan } from '../lab/lesson/setup.ts';
import { membersTexts } from '../lab/texts/members.ts';
import { tickTexts } from '../lab/texts/ticks.ts';
import { cautionLine } from './cautionLine.ts';
import { formula, native } from './formula.ts';
import { classColumns as at, classMarker, classRows, layoutVersion, planColumns } from './layout.ts';
import type { Lesson, PlanPlaces, SheetNames } from './lesson.ts';
import { ownHintsArea } from './planHelpSheet.ts';
import { columnLetters, fixed, fixedArea, literal, literalLines, onSheet } from './reference.ts';
import { stateWords } from './stateWords.ts';
import { words } from './words.ts';
import {
  type Area,
  type Block,
  blank,
  type CellContent,
  type Choice,
  computed,
  type FormatArea,
  type LookArea,
  type SheetPlan,
  text,
} from './workbook.ts';

/** Column of a row's name, key and step joined, by which Progress finds it with one match: behind all others. */
export const rowNameColumnOf = (givenCount: number): number => at.givens + givenCount + 1;

export const rowName = ({ key, step }: { key: string; step: string }): string => `${key}|${step}`;

export interface ClassSheetInput {
  readonly lesson: Lesson;
  readonly className: string;
  /** This class's teams in the order of their blocks. */
  readonly teams: readonly TeamPlan[];
  readonly names: SheetNames;
  readonly places: PlanPlaces;
  /** Rows kept for links at the top; as many as the sheet has already, so that a late team moves nobody's block. */
  readonly linkRows?: number;
}

/** Rows kept for links when a class sheet is first made: two late teams find room without moving a block. */
const linkRowsFor = (teamCount: number): number => teamCount + 2;

/** A class: links at the top, then a block for each team with a heading row, a row for each step and a closing row. */
export function planClassSheet({ lesson, className, teams, names, places, linkRows }: ClassSheetInput): SheetPlan {
  const { steps } = lesson.activity;
  const givens = lesson.givenNames;
  const unitOf = (name: string) => lesson.activity.givens.find((given) => given.name === name)?.unit ?? '';
  const caution = cautionLine(lesson, teams);
  const room = Math.max(linkRows ?? linkRowsFor(teams.length), teams.length);
  const firstBlock = classRows.firstLink + room + 1;
  const height = steps.length + 2;
  const lineColumn = at.givens + givens.length;
  const rowNameColumn = rowNameColumnOf(givens.length);
  const columnCount = rowNameColumn;
  const rowCount = firstBlock + teams.length * height - 1;
  const headingRowOf = (index: number) => firstBlock + index * height;

  const references = planReferences({ names, places });
  const unitCells: CellContent[][] = [];
  const findCells: CellContent[][] = [];
  const keyCells: CellContent[][] = [];
  const rowNames: CellContent[][] = [];
  const blocks: Block[] = [];
  const checks: Block[] = [];
  const writable: Area[] = [];
  /** In each heading row, who is in the team: written by the team or from the sidebar. */
  const memberCells: Area[] = [];
  const unprotected: Area[] = [];
  const spill: Area[] = [];
  const choices: Choice[] = [];
  const formats: FormatArea[] = [];
  const looks: LookArea[] = [
    { row: classRows.title, column: 1, rows: 1, columns: at.lastEntry, look: 'title' },
    { row: classRows.caution, column: 1, rows: 1, columns: at.lastEntry, look: caution === '' ? 'note' : 'caution' },
    { row: classRows.note, column: 1, rows: 2, columns: at.lastEntry, look: 'note' },
    { row: classRows.find, column: 1, rows: 1, columns: at.lastEntry, look: 'heading' },
    { row: classRows.firstLink, column: 1, rows: room, columns: 1, look: 'link' },
    { row: classRows.firstLink + teams.length, column: 1, rows: room - teams.length, columns: 1, look: 'note' },
    { row: 1, column: at.key, rows: rowCount, columns: columnCount - at.key + 1, look: 'mark' },
  ];

  teams.forEach((team, index) => {
    const heading = headingRowOf(index);
    const closing = heading + height - 1;
    const column = (number: number) => ({ row: heading, column: number, rows: height, columns: 1 });
    const lineCell = fixed({ row: heading, column: lineColumn });
    const keyCell = `$${columnLetters(at.key)}${heading}`;

    findCells.push([computed(`=${references.teamName(lineCell)}`)]);
    for (const step of steps) findCells.push([whatToFind({ step, givens, unitOf, heading, lineCell })]);
    findCells.push([
      computed(
        `=${native('COUNTIF', fixedArea(column(at.check)), literal('on target'))}&${literal(words.class.closing)}`,
      ),
    ]);
    unitCells.push([text(words.class.unit)], ...steps.map(({ unit }) => [text(unit)]), [blank]);
    keyCells.push([text(team.key), blank], ...steps.map(({ id }) => [text(team.key), text(id)]), [
      text(team.key),
      blank,
    ]);
    rowNames.push([blank], ...steps.map(({ id }) => [text(rowName({ key: team.key, step: id }))]), [blank]);
    blocks.push(
      { row: heading, column: at.entry, cells: [[text(words.class.entry)]] },
      { row: heading, column: at.help, cells: [[text(words.class.help)]] },
      {
        row: heading,
        column: at.tries,
        cells: [
          [
            text(words.class.tries),
            text(words.class.lastEntry),
            text(team.key),
            blank,
            ...givens.map((_, place) => computed(`=${references.given({ lineCell, place: place + 1 })}`)),
            computed(`=${references.line(keyCell)}`),
          ],
        ],
      },
    );
    checks.push({
      row: heading,
      column: at.check,
      cells: [
        [
          computed(
            formula(
              'CHECKTEAM',
              references.givenHeadings,
              fixedArea({ row: heading, column: at.givens, rows: 1, columns: Math.max(1, givens.length) }),
              references.settings,
              fixedArea(column(at.step)),
              fixedArea(column(at.entry)),
              fixedArea(column(at.help)),
              onSheet(names.help, fixedArea(ownHintsArea(lesson.activity))),
            ),
          ),
        ],
      ],
    });
    const stepRows = { row: heading + 1, rows: steps.length };
    const members = { row: heading, column: at.who, rows: 1, columns: 1 };
    memberCells.push(members);
    writable.push({ ...stepRows, column: at.entry, columns: 1 }, { ...stepRows, column: at.help, columns: 2 }, members);
    unprotected.push({ ...stepRows, column: at.tries, columns: 2 }, { ...stepRows, column: at.givens, columns: 1 });
    spill.push({ row: heading, column: at.check, rows: height, columns: 3 });
    choices.push({
      area: { ...stepRows, column: at.help, columns: 1 },
      options: ['0', '1', '2', '3'],
      help: words.class.helpChoice,
    });
    choices.push({
      area: { ...stepRows, column: at.who, columns: 1 },
      options: roles,
      help: words.class.whoChoice,
    });
    steps.forEach((step, place) => {
      if (step.kind !== 'ticked') return;
      choices.push({
        area: { row: heading + 1 + place, column: at.entry, rows: 1, columns: 1 },
        options: [tickTexts.answer((team.givens[step.substance.formula] ?? '').trim())],
        help: words.class.tickChoice,
      });
    });
    formats.push(
      { ...stepRows, column: at.tries, columns: 1, format: '0' },
      { ...stepRows, column: at.lastEntry, columns: 1, format: 'hh:mm' },
      { row: heading, column: at.check, rows: height, columns: 3, format: 'General' },
      { row: heading, column: at.givens, rows: 1, columns: givens.length + 1, format: 'General' },
    );
    looks.push(
      { row: heading, column: at.find, rows: 1, columns: 1, look: 'team heading' },
      { row: heading, column: at.entry, rows: 1, columns: at.lastEntry - 1, look: 'heading' },
      { ...members, look: 'helper' },
      { ...stepRows, column: at.find, columns: 1, look: 'question' },
      { ...stepRows, column: at.entry, columns: 1, look: 'entry' },
      { ...stepRows, column: at.unit, columns: 1, look: 'question' },
      { ...stepRows, column: at.check, columns: 3, look: 'spilled' },
      { ...stepRows, column: at.help, columns: 2, look: 'helper' },
      { ...stepRows, column: at.tries, columns: 2, look: 'quiet' },
      { row: closing, column: at.find, rows: 1, columns: at.lastEntry, look: 'closing' },
    );
  });

  formats.push(
    { row: classRows.firstLink, column: 1, rows: room, columns: 1, format: 'General' },
    { row: 1, column: at.givens, rows: 1, columns: 1, format: '0' },
  );
  if (teams.length > 0) {
    formats.push({ row: firstBlock, column: at.find, rows: teams.length * height, columns: 1, format: 'General' });
    blocks.unshift(
      { row: firstBlock, column: at.key, cells: keyCells },
      { row: firstBlock, column: at.find, cells: findCells },
      { row: firstBlock, column: at.unit, cells: unitCells },
      { row: firstBlock, column: rowNameColumn, cells: rowNames },
    );
  }
  const sheetNumber = fixed({ row: 1, column: at.givens });
  blocks.unshift(
    {
      row: 1,
      column: 1,
      cells: [
        [text(className)],
        [text(caution)],
        [text(`${lesson.activity.title}. ${words.class.how}`)],
        [text(lesson.invented ? `${words.class.invented} ${words.class.notice}` : words.class.notice)],
        [text(words.class.find)],
      ],
    },
    {
      row: 1,
      column: at.key,
      cells: [[text(classMarker), text(String(layoutVersion)), { kind: 'sheet id' }]],
    },
    {
      row: classRows.firstLink,
      column: 1,
      cells: Array.from({ length: room }, (_, index) => {
        if (index >= teams.length) return [text(words.class.keptForLate)];
        const target = `${columnLetters(at.find)}${headingRowOf(index)}`;
        const place = `${literal('#gid=')}&${sheetNumber}&${literal('&range=A')}&${native('ROW', target)}`;
        return [computed(`=${native('HYPERLINK', place, target)}`)];
      }),
    },
  );

  return {
    name: names.classes[className] ?? className,
    role: { kind: 'class', className },
    activity: lesson.activity.id,
    rowCount,
    columnCount,
    columnWidths: [
      230,
      110,
      60,
      95,
      260,
      240,
      75,
      160,
      45,
      60,
      28,
      28,
      ...Array.from({ length: columnCount - at.step }, () => 28),
    ],
    hiddenColumns: { column: at.givens, count: columnCount - at.givens + 1 },
    frozenRows: 1,
    frozenColumns: 0,
    blocks,
    checks,
    looks,
    formats,
    states: stateWords.map(({ word, state }) => ({ areas: spill.map(checkColumn), startsWith: word, state })),
    choices,
    writable,
    ...(memberCells.length === 0 ? {} : { invitation: { places: memberCells, text: membersTexts.heading } }),
    unprotected,
    spill,
    identity: {
      firstRow: 1,
      columns: [at.key, at.step],
      rows: [
        [classMarker, String(layoutVersion)],
        ...Array.from({ length: firstBlock - 2 }, () => ['', '']),
        ...keyCells.map((cells) => cells.map((cell) => (cell.kind === 'text' ? cell.text : ''))),
      ],
    },
    carried: [at.entry, at.help, at.who, at.tries, at.lastEntry, at.givens],
  };
}

const checkColumn = ({ row, rows }: Area): Area => ({ row, column: at.check, rows, columns: 1 });

/** The pieces of formulas that look into the Plan: always by key, never by position. */
function planReferences({ names, places }: { names: SheetNames; places: PlanPlaces }) {
  const inPlan = (area: Area) => onSheet(names.plan, fixedArea(area));
  const keys = inPlan(places.keys);
  const givens = inPlan({ ...places.givenHeadings, rows: places.keys.rows });
  const teamNames = inPlan({ ...places.keys, column: planColumns.team });
  return {
    settings: inPlan(places.settings),
    givenHeadings: inPlan(places.givenHeadings),
    /** Which line of the Plan is this team's, or ⚠ and why there is not exactly one. */
    line: (keyCell: string) =>
      native(
        'IF',
        `${native('COUNTIF', keys, keyCell)}=1`,
        native('MATCH', keyCell, keys, '0'),
        native(
          'IF',
          `${native('COUNTIF', keys, keyCell)}=0`,
          literal(words.class.keyMissing),
          literal(words.class.keyTwice),
        ),
      ),
    /** A given as it stands in the Plan; a blank stays blank, where INDEX alone would give 0. */
    given: ({ lineCell, place }: { lineCell: string; place: number }) => {
      const cell = native('INDEX', givens, lineCell, String(place));
      return native('IF', native('ISNUMBER', lineCell), native('IF', `${cell}=""`, literal(''), cell), lineCell);
    },
    teamName: (lineCell: string) =>
      native('IF', native('ISNUMBER', lineCell), native('INDEX', teamNames, lineCell), lineCell),
  };
}

/** Title, and on the next line the givens in words, read from the heading row of the block. */
function whatToFind({
  step,
  givens,
  unitOf,
  heading,
  lineCell,
}: {
  step: Step;
  givens: readonly string[];
  unitOf: (given: string) => string;
  heading: number;
  lineCell: string;
}): CellContent {
  const given = (name: string) => {
    const place = givens.indexOf(name);
    if (place < 0) throw new Error(`Expected a given of the activity in ${step.id}, received ${name}.`);
    return fixed({ row: heading, column: at.givens + place });
  };
  if (step.shown.length === 0) return computed(`=${literalLines(step.title)}`);
  // The unit that follows a given is left out where the cell has one of its own.
  const following = ({ words: plain, name }: { words: string; name: string | undefined }): string => {
    const unit = name === undefined ? '' : unitOf(name);
    const start = ` ${unit}`;
    if (name === undefined || unit === '' || !plain.startsWith(start) || /^[\w/]/.test(plain.slice(start.length))) {
      return literalLines(plain);
    }
    const lastSign = native('RIGHT', given(name), '1');
    const endsInDigit = native('ISNUMBER', native('FIND', lastSign, literal('0123456789.,')));
    // Units that end in a digit are of metres: cm3, mol/dm3, g/cm3.
    const hasMetres = native('ISNUMBER', native('FIND', literal('m'), given(name)));
    const unlessTyped = native('IF', endsInDigit, literal(start), literal(''));
    const shownUnit = unit === '%' ? unlessTyped : native('IF', hasMetres, literal(''), unlessTyped);
    const rest = plain.slice(start.length);
    return rest === '' ? shownUnit : `${shownUnit}&${literalLines(rest)}`;
  };
  const pieces = step.shown.map((piece, index) => {
    if (typeof piece === 'string') {
      const before = step.shown[index - 1];
      return following({ words: piece, name: typeof before === 'object' ? before.given : undefined });
    }
    const cell = given(piece.given);
    const around = [piece.before, undefined, piece.after].map((plain, place) =>
      place === 1
        ? cell
        : plain === undefined
          ? ''
          : following({ words: plain, name: place === 2 ? piece.given : undefined }),
    );
    const joined = around.filter((part) => part !== '').join('&');
    return joined === cell ? cell : native('IF', `${cell}=""`, literal(''), joined);
  });
  const shown = [native('CHAR', '10'), ...pieces].join('&');
  return computed(`=${literalLines(step.title)}&${native('IF', native('ISNUMBER', lineCell), shown, literal(''))}`);
}
