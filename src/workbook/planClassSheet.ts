import { isLettered } from '../lab/bench/isLettered.ts';
import { shownTo } from '../lab/bench/shownTo.ts';
import { exitGivens } from '../lab/exit/exitStep.ts';
import { exitSteps } from '../lab/exit/exitSteps.ts';
import { seatsOf } from '../lab/exit/seatsOf.ts';
import type { Step } from '../lab/lesson/activity.ts';
import { takesLessonFigures } from '../lab/lesson/lessonFigures.ts';
import { roles } from '../lab/lesson/roles.ts';
import type { TeamPlan } from '../lab/lesson/setup.ts';
import { extensionGiven, teamColumns } from '../lab/lesson/teamColumns.ts';
import { quantities } from '../lab/quantities.ts';
import { checkHeadings } from '../lab/texts/feedback.ts';
import { membersTexts } from '../lab/texts/members.ts';
import { tickTexts } from '../lab/texts/ticks.ts';
import { cautionCells } from './cautionCells.ts';
import { cautionLine, classCautions } from './cautionLine.ts';
import { classHeights } from './classHeights.ts';
import { classWidths } from './classWidths.ts';
import { formula, native } from './formula.ts';
import {
  classColumns as at,
  cautionRows,
  checksMark,
  classMarker,
  classRows,
  layoutVersion,
  lettersByTeamSince,
  planColumns,
} from './layout.ts';
import type { Lesson, PlanPlaces, SheetNames } from './lesson.ts';
import { paintedSizes } from './paintedSizes.ts';
import { type HelpLines, ownHintsArea } from './planHelpSheet.ts';
import { columnLetters, fixed, fixedArea, literal, literalLines, onSheet } from './reference.ts';
import { stateWords } from './stateWords.ts';
import { stepUnit } from './stepUnit.ts';
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
import { checksComeFromSidebar } from './writtenChecks.ts';

/** Column of a row's name, key and step joined, by which Progress finds it with one match: behind all others. */
export const rowNameColumnOf = (givenCount: number): number => at.givens + givenCount + 1;

const betweenNumbers = '|';

/** A team's numbers as one text, which stands in its closing row: those that its block was built with. */
const numbersAsBuilt = (values: readonly (string | undefined)[]): string =>
  values.map((value) => (value ?? '').trim()).join(betweenNumbers);

export const rowName = ({ key, step }: { key: string; step: string }): string => `${key}|${step}`;

/** What stands in a heading row where no formula spills it. */
const headingsOfChecks = [checkHeadings.check, checkHeadings.lookAt, checkHeadings.hint].map(text);

/** Of a mark, which people need not read: as wide as the narrow columns beside it, with which it shares a call. */
const markWidth = 50;

export interface ClassSheetInput {
  readonly lesson: Lesson;
  readonly className: string;
  /** This class's teams in the order of their blocks. */
  readonly teams: readonly TeamPlan[];
  readonly names: SheetNames;
  readonly places: PlanPlaces;
  /** Rows kept for links at the top; as many as the sheet has already, so that a late team moves nobody's block. */
  readonly linkRows?: number;
  /** Lines of Help, where it serves other activities as well. */
  readonly helpLines?: HelpLines;
}

/** Rows kept for links when a class sheet is first made: two late teams find room without moving a block. */
const linkRowsFor = (teamCount: number): number => teamCount + 2;

/** What a given is called among those that the check is handed beside the team's numbers: the key mixes the letters. */
const keyGiven = 'key';

/**
 * A class: headings of the columns, links and cautions at the top, then a block for each team with a heading row, a row for
 * each step and a closing row.
 */
export function planClassSheet({
  lesson,
  className,
  teams,
  names,
  places,
  linkRows,
  helpLines,
}: ClassSheetInput): SheetPlan {
  const exit = exitSteps(lesson.activity, seatsOf(lesson.setup.settings));
  const steps = [...lesson.activity.steps, ...exit];
  const givens = lesson.givenNames;
  const ofTeam = teamColumns(exit.length);
  const caution = cautionLine(lesson, teams);
  const cautions = classCautions(lesson, teams);
  const room = Math.max(linkRows ?? linkRowsFor(teams.length), teams.length);
  const cautionsRow = classRows.firstLink + room;
  const firstBlock = cautionsRow + cautionRows + 2;
  const height = steps.length + 2;
  const lineColumn = at.givens + givens.length;
  const rowNameColumn = rowNameColumnOf(givens.length);
  const columnCount = rowNameColumn + ofTeam.length;
  /** Names and values that the check is handed: from the key to the last column, marks in between without a name. */
  const given = { column: at.key, rows: 1, columns: columnCount - at.key + 1 };
  const rowCount = firstBlock + teams.length * height - 1;
  const headingRowOf = (index: number) => firstBlock + index * height;

  const references = planReferences({ names, places });
  const bySidebar = checksComeFromSidebar(lesson.setup.settings);
  const leftCells: CellContent[][] = [];
  const unitCells: CellContent[][] = [];
  const keyCells: CellContent[][] = [];
  const rowNames: CellContent[][] = [];
  const ofTeamCells: Block[] = [];
  const blocks: Block[] = [];
  const checks: Block[] = [];
  const writable: Area[] = [];
  /** In each heading row, who is in the team: written by the team or from the sidebar. */
  const memberCells: Area[] = [];
  const unprotected: Area[] = [];
  const spill: Area[] = [];
  const choices: Choice[] = [];
  const formats: FormatArea[] = [];
  const letteredRows: number[] = [];
  const looks: LookArea[] = [
    { row: classRows.headings, column: 1, rows: 1, columns: at.lastEntry, look: 'heading' },
    { row: classRows.title, column: 1, rows: 1, columns: at.lastEntry, look: 'lesson' },
    { row: classRows.title, column: 1, rows: 1, columns: 1, look: 'class name' },
    {
      row: classRows.banner,
      column: 1,
      rows: classRows.note - classRows.banner + 1,
      columns: at.lastEntry,
      look: 'text',
    },
    ...(caution === ''
      ? []
      : ([{ row: classRows.caution, column: 1, rows: 1, columns: at.task, look: 'caution text' }] as const)),
    { row: classRows.find, column: 1, rows: 1, columns: at.lastEntry, look: 'heading' },
    { row: classRows.firstLink, column: 1, rows: room, columns: 1, look: 'link' },
    { row: classRows.firstLink + teams.length, column: 1, rows: room - teams.length, columns: 1, look: 'note' },
    { row: cautionsRow, column: 1, rows: 1, columns: at.lastEntry, look: 'heading' },
    { row: cautionsRow + 1, column: 1, rows: cautionRows, columns: at.lastEntry, look: 'text' },
    { row: 1, column: at.key, rows: rowCount, columns: columnCount - at.key + 1, look: 'mark' },
  ];

  teams.forEach((team, index) => {
    const heading = headingRowOf(index);
    const closing = heading + height - 1;
    const column = (number: number) => ({ row: heading, column: number, rows: height, columns: 1 });
    const lineCell = fixed({ row: heading, column: lineColumn });
    const keyCell = fixed({ row: heading, column: at.key });
    const about = { lesson, heading, lineCell, references };

    leftCells.push([
      computed(`=${references.teamName(lineCell)}`),
      computed(
        `=${references.sinceBuilt({
          lineCell,
          entries: fixedArea(column(at.entry)),
          now: fixedArea({ row: heading, column: at.givens, rows: 1, columns: Math.max(1, givens.length) }),
          built: fixed({ row: closing, column: rowNameColumn }),
        })}`,
      ),
    ]);
    steps.forEach((step, place) => {
      const row = heading + 1 + place;
      const isOwn = native(
        'EXACT',
        fixed({ row, column: rowNameColumn }),
        `${keyCell}&${literal('|')}&${fixed({ row, column: at.step })}`,
      );
      leftCells.push([text(`${place + 1} ${step.title}`), whatToDo({ step, team, isOwn, ...about })]);
      if (isLettered(step)) letteredRows.push(row);
    });
    // What single students answer at the end is no row of the team.
    const ofLesson = { ...column(at.check), rows: height - 1 - exit.length };
    const counted = exit.length === 0 ? column(at.check) : ofLesson;
    leftCells.push([
      computed(`=${native('COUNTIF', fixedArea(counted), literal('on target'))}&${literal(words.class.closing)}`),
      ownTask({ checks: { ...ofLesson, row: heading + 1, rows: ofLesson.rows - 1 }, ...about }),
    ]);
    unitCells.push([blank], ...steps.map((step) => [text(stepUnit(step))]), [blank]);
    keyCells.push([text(team.key), blank], ...steps.map(({ id }) => [text(team.key), text(id)]), [
      text(team.key),
      blank,
    ]);
    rowNames.push([blank], ...steps.map(({ id }) => [text(rowName({ key: team.key, step: id }))]), [
      text(numbersAsBuilt(givens.map((name) => team.givens[name]))),
    ]);
    blocks.push({
      row: heading,
      column: at.key,
      cells: [
        [
          text(team.key),
          blank,
          ...givens.map((_, place) => computed(`=${references.given({ lineCell, place: place + 1 })}`)),
          computed(`=${references.line(keyCell)}`),
        ],
      ],
    });
    ofTeamCells.push({
      row: heading,
      column: rowNameColumn + 1,
      cells: [ofTeam.map((name) => computed(`=${references.ofTeam({ lineCell, name })}`))],
    });
    checks.push({
      row: heading,
      column: at.check,
      cells: [
        bySidebar
          ? headingsOfChecks
          : [
              computed(
                formula(
                  'CHECKTEAM',
                  fixedArea({ row: classRows.title, ...given }),
                  fixedArea({ row: heading, ...given }),
                  references.settings,
                  fixedArea(column(at.step)),
                  fixedArea(column(at.entry)),
                  fixedArea(column(at.help)),
                  onSheet(names.help, fixedArea(ownHintsArea(lesson.activity, helpLines))),
                ),
              ),
            ],
      ],
    });
    const stepRows = { row: heading + 1, rows: steps.length };
    /** Rows of the team together, where help may be taken and somebody named. */
    const teamRows = { ...stepRows, rows: steps.length - exit.length };
    const exitRows = { row: teamRows.row + teamRows.rows, rows: exit.length };
    const members = { row: heading, column: at.who, rows: 1, columns: 1 };
    memberCells.push(members);
    writable.push({ ...stepRows, column: at.entry, columns: 1 }, { ...teamRows, column: at.help, columns: 2 }, members);
    unprotected.push({ ...stepRows, column: at.tries, columns: 2 }, { ...stepRows, column: at.givens, columns: 1 });
    spill.push({ row: heading, column: at.check, rows: height, columns: 3 });
    choices.push({
      area: { ...teamRows, column: at.help, columns: 1 },
      options: ['0', '1', '2', '3'],
      help: words.class.helpChoice,
    });
    choices.push({
      area: { ...teamRows, column: at.who, columns: 1 },
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
      { row: heading, column: rowNameColumn + 1, rows: 1, columns: ofTeam.length, format: 'General' },
    );
    looks.push(
      { row: heading, column: 1, rows: 1, columns: at.lastEntry, look: 'text heading' },
      { row: heading, column: at.title, rows: 1, columns: 1, look: 'team heading' },
      { row: heading, column: at.check, rows: 1, columns: 3, look: 'heading' },
      { ...members, look: 'choice' },
      { ...stepRows, column: at.title, columns: 1, look: 'step' },
      { ...stepRows, column: at.task, columns: 1, look: 'task' },
      { ...stepRows, column: at.entry, columns: 1, look: 'entry' },
      { ...stepRows, column: at.unit, columns: 1, look: 'unit' },
      { ...stepRows, column: at.check, columns: 3, look: 'spilled' },
      { ...teamRows, column: at.help, columns: 2, look: 'choice' },
      ...(exit.length === 0 ? [] : ([{ ...exitRows, column: at.help, columns: 2, look: 'count' }] as const)),
      { ...stepRows, column: at.tries, columns: 2, look: 'count' },
      { row: closing, column: 1, rows: 1, columns: at.lastEntry, look: 'closing' },
      { row: closing, column: at.task, rows: 1, columns: 1, look: 'text heading' },
    );
    steps.forEach((step, place) => {
      if (!isLettered(step)) return;
      looks.push({ row: heading + 1 + place, column: at.task, rows: 1, columns: 1, look: 'letters' });
    });
  });

  formats.push(
    { row: classRows.firstLink, column: 1, rows: room, columns: 1, format: 'General' },
    { row: 1, column: at.givens, rows: 1, columns: 1, format: '0' },
  );
  if (teams.length > 0) {
    formats.push({ row: firstBlock, column: 1, rows: teams.length * height, columns: 2, format: 'General' });
    blocks.unshift(
      { row: firstBlock, column: at.key, cells: keyCells },
      { row: firstBlock, column: 1, cells: leftCells },
      { row: firstBlock, column: at.unit, cells: unitCells },
      { row: firstBlock, column: rowNameColumn, cells: rowNames },
      ...ofTeamCells,
    );
  }
  const sheetNumber = fixed({ row: 1, column: at.givens });
  const toldCautions = cautionCells(cautions.blocks, cautions.also);
  blocks.unshift(
    { row: classRows.headings, column: 1, cells: [words.class.headings.map(text)] },
    {
      row: classRows.title,
      column: 1,
      cells: [
        [text(className), text(lesson.activity.title)],
        [blank, blank],
        [caution === '' ? blank : text(words.class.cautions), text(caution)],
        [
          blank,
          text([lesson.invented ? words.class.invented : '', words.class.how, words.class.notice].join(' ').trim()),
        ],
        [text(words.class.find), blank],
      ],
    },
    {
      row: classRows.headings,
      column: at.key,
      cells: [[text(classMarker), text(String(layoutVersion)), { kind: 'sheet id' }]],
    },
    { row: classRows.title, column: at.key, cells: [[text(keyGiven), blank, ...givens.map(text)]] },
    { row: classRows.title, column: rowNameColumn + 1, cells: [ofTeam.map(text)] },
    { row: checksMark.row, column: checksMark.column, cells: [[bySidebar ? text(checksMark.text) : blank]] },
    { row: cautionsRow, column: 1, cells: [[text(words.class.allCautions), text(cautions.last)]] },
    { row: cautionsRow + 1, column: 1, cells: toldCautions.map(({ title, task }) => [title, task].map(text)) },
    {
      row: cautionsRow + 1,
      column: at.lookAt,
      cells: toldCautions.map(({ lookAt, hint }) => [lookAt, hint].map(text)),
    },
    {
      row: classRows.firstLink,
      column: 1,
      cells: Array.from({ length: room }, (_, index) => {
        if (index >= teams.length) return [text(words.class.keptForLate)];
        const target = `${columnLetters(at.title)}${headingRowOf(index)}`;
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
    columnWidths: paintedSizes([
      ...classWidths,
      ...Array.from({ length: columnCount - classWidths.length }, () => markWidth),
    ]),
    rowHeights: classHeights({
      lesson,
      exit,
      className,
      teams,
      cautionsRow,
      caution,
      last: cautions.last,
      cautions: toldCautions,
    }),
    hiddenColumns: { column: at.givens, count: columnCount - at.givens + 1 },
    frozenRows: 1,
    frozenColumns: 1,
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
        [keyGiven, ''],
        ...Array.from({ length: firstBlock - 3 }, () => ['', '']),
        ...keyCells.map((cells) => cells.map((cell) => (cell.kind === 'text' ? cell.text : ''))),
      ],
    },
    carried: [at.entry, at.help, at.who, at.tries, at.lastEntry, at.givens],
    ...(letteredRows.length === 0
      ? {}
      : {
          relettered: {
            since: lettersByTeamSince,
            column: at.entry,
            rows: letteredRows,
            before: words.class.lettersBefore,
          },
        }),
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
    /** A setting as it stands in the Plan; empty where the Plan has none of that name. */
    setting: (name: string) => {
      const names = inPlan({ ...places.settings, columns: 1 });
      const values = inPlan({ ...places.settings, column: places.settings.column + 1, columns: 1 });
      return native('IFERROR', native('INDEX', values, native('MATCH', literal(name), names, '0')), literal(''));
    },
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
    /** What the team has of its own; blank where the Plan has no such column. */
    ofTeam: ({ lineCell, name }: { lineCell: string; name: string }) => {
      const column = places.teamColumns[name];
      if (column === undefined) return literal('');
      const cell = native('INDEX', inPlan({ ...places.keys, column }), lineCell);
      return native('IF', native('ISNUMBER', lineCell), native('IF', `${cell}=""`, literal(''), cell), literal(''));
    },
    teamName: (lineCell: string) =>
      native('IF', native('ISNUMBER', lineCell), native('INDEX', teamNames, lineCell), lineCell),
    /**
     * What stands above the boxes: how to fill them or, to a team that has typed and whose numbers in the Plan are no longer
     * those that its block was built with, that they changed. It goes when the table is built again, and not when one of the
     * team types: the others may not have read it yet.
     */
    sinceBuilt: ({
      lineCell,
      entries,
      now,
      built,
    }: {
      readonly lineCell: string;
      readonly entries: string;
      readonly now: string;
      readonly built: string;
    }) => {
      const isSame = native('EXACT', native('TEXTJOIN', literal(betweenNumbers), '0', now), built);
      const typed = native('IF', isSame, '0', native('COUNTIF', entries, literal('?*')));
      const told = `${native('IF', native('ISNUMBER', lineCell), typed, '0')}>0`;
      return native('IF', told, literal(words.class.numbersChanged), literal(words.class.helpAndWho));
    },
  };
}

/**
 * The team's own task, as the Plan has it, once every row of the lesson is on target: then no check says anything else.
 * While checks are worked out there is none.
 */
function ownTask({
  checks,
  lineCell,
  references,
}: {
  checks: Area;
  lineCell: string;
  references: ReturnType<typeof planReferences>;
}): CellContent {
  const own = references.ofTeam({ lineCell, name: extensionGiven });
  const area = fixedArea(checks);
  const counted = (word: string) => native('COUNTIF', area, literal(word));
  const onTarget = counted('on target');
  const others = stateWords.map(({ word }) => word).filter((word) => word !== 'on target' && word !== 'kept');
  const isDone = `${others.map(counted).join('+')}=0`;
  const shown = native('IF', `${own}=""`, literal(''), `${literal(words.class.goOn)}&${own}`);
  const task = native('IF', isDone, shown, literal(''));
  return computed(`=${native('IF', `${onTarget}=0`, literal(''), task)}`);
}

/**
 * What to do, with the givens read from the heading row of the block, and the figures asked. Letters are those of the key
 * that the row was written for: where the block has another key by now, it says so instead.
 */
function whatToDo({
  step,
  team,
  isOwn,
  lesson,
  heading,
  lineCell,
  references,
}: {
  step: Step;
  team: TeamPlan;
  /** Whether the row stands under the key that it was written for. */
  isOwn: string;
  lesson: Lesson;
  heading: number;
  lineCell: string;
  references: ReturnType<typeof planReferences>;
}): CellContent {
  const givens = lesson.givenNames;
  const ofExit = exitGivens(step.id);
  const unitOfGiven = (name: string) =>
    [...lesson.activity.givens, ...ofExit].find((one) => one.name === name)?.unit ?? '';
  const told = shownTo(step, team.key);
  const given = (name: string) => {
    const ownPlace = teamColumns(seatsOf(lesson.setup.settings)).indexOf(name);
    if (ownPlace >= 0) return fixed({ row: heading, column: rowNameColumnOf(givens.length) + 1 + ownPlace });
    const place = givens.indexOf(name);
    if (place < 0) throw new Error(`Expected a given of the activity in ${step.id}, received ${name}.`);
    return fixed({ row: heading, column: at.givens + place });
  };
  if (told.length === 0) return blank;
  // The unit that follows a given is left out where the cell has one of its own.
  const following = ({ words: plain, name }: { words: string; name: string | undefined }): string => {
    const unit = name === undefined ? '' : unitOfGiven(name);
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
  const pieces = told.map((piece, index) => {
    if (typeof piece === 'string') {
      const before = told[index - 1];
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
  const shown = [...pieces, ...figuresAsked(step, references)].join('&');
  const lettered = isLettered(step) ? native('IF', isOwn, shown, literal(words.class.lettersOfOther)) : shown;
  return computed(`=${native('IF', native('ISNUMBER', lineCell), lettered, literal(''))}`);
}

/** How many figures or decimals a calculated row asks for, as pieces of a formula; none for other rows. */
function figuresAsked(step: Step, references: ReturnType<typeof planReferences>): readonly string[] {
  if (step.kind !== 'calculated') return [];
  const quantity = quantities[step.quantity];
  const { figures, decimals } = words.class;
  const numbered = (cell: string, { one, several }: { one: string; several: string }) =>
    native(
      'IF',
      `${cell}=""`,
      literal(''),
      `${literal(' ')}&${cell}&${native('IF', native('EXACT', cell, literal('1')), literal(one), literal(several))}`,
    );
  if (quantity.figures === 'decimals') {
    const cell = references.setting('atomic-weight decimals');
    return [native('IF', native('EXACT', cell, literal('0')), literal(decimals.none), numbered(cell, decimals))];
  }
  if (takesLessonFigures(quantity)) return [numbered(references.setting('figures'), figures)];
  return [literal(` ${quantity.figures}${quantity.figures === 1 ? figures.one : figures.several}`)];
}
