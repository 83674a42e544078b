/**
 * Where things stand in a class sheet. A change here is a new layout: raise the version. So is a change of an action in a
 * procedure, since its letters change with it (`sinceLayout` of the procedure).
 *
 * Places are kept for what is not built yet, so that it needs no new layout: the row `banner`, as good as hidden, for a
 * notice with a link where a lesson was put away; the task cell of a heading row, for a notice to the team; rows between
 * the steps and the closing row for what is added, each a step with an id of its own and at most `mostRowHeight.added` high.
 * Evidence stands so: a mass empty and loaded before the mass, an observation and a link behind the bench; and the two
 * questions about safety behind the row that is ticked. An exit question has a row for each seat (step ids `exit 1` to
 * `exit 4`) behind all others; blocks with keys `practice-1` and on stand behind the teams' that are there. What a team has
 * of its own (`teamColumns`: help level, task, numbers of its exit questions) stands in the Plan behind the column about
 * today, and in a heading row behind the names of rows: nothing that is there moves, and the check is handed all of it. A
 * lesson's id goes into the tag of the sheet.
 */
export const layoutVersion = 4;

/** Layout since which letters go by the key of the block; before, those of all teams were the same. */
export const lettersByTeamSince = 4;

/** Columns of a class sheet, from 1. Check, look at and hint stay together, since one formula fills them. */
export const classColumns = {
  title: 1,
  task: 2,
  entry: 3,
  unit: 4,
  check: 5,
  lookAt: 6,
  hint: 7,
  help: 8,
  who: 9,
  tries: 10,
  lastEntry: 11,
  key: 12,
  step: 13,
  /** In a heading row the first given; in a step row the entry that was counted last. */
  givens: 14,
} as const;

export const countedColumn = classColumns.givens;

/** Stands in the first row of a class sheet, with the layout version beside it: the trigger knows the sheet by it. */
export const classMarker = 'Labrow class';

/**
 * Rows above the blocks of a class sheet. The first is the headings of all columns and stays in view; behind the links
 * follow a heading and `cautionRows` rows of cautions, and a blank row.
 */
export const classRows = { headings: 1, title: 2, banner: 3, caution: 4, note: 5, find: 6, firstLink: 7 } as const;

/** Stands in a class sheet whose checks are texts that the sidebar writes, and formulas nowhere. */
export const checksMark = { row: classRows.banner, column: classColumns.givens, text: 'by sidebar' } as const;
/** A substance is handled in two forms at most; where they need more room than a row has, each goes on in a second one. */
export const cautionRows = 4;

/** No row is higher, in pixels: check and feedback are seen together with what was typed. */
export const mostRowHeight = { any: 200, added: 60, addedQuestion: 120 } as const;

export const planRows = { title: 1, note: 2, notice: 3, settingsHeading: 5 } as const;
export const planColumns = { key: 1, className: 2, team: 3, firstGiven: 4 } as const;
/** Lines kept under the last team, so that a late team typed there is found by its key. */
const spareTeamLines = 60;
/**
 * Lines of the Plan's table, used and spare. Formulas in all sheets name its last line: it stays the same for any number
 * of teams that a teacher has, so that a late team changes no formula of another class.
 */
export const teamLinesFor = (teamCount: number): number =>
  Math.max(300, Math.ceil((teamCount + spareTeamLines) / 100) * 100);

/** In Prepare: whether the list is up to the Plan, the Plan as one text now, and below it as it was when the list was written. */
export const prepareCells = {
  freshness: { row: 2, column: 1 },
  planNow: { row: 1, column: 8 },
  planThen: { row: 2, column: 8 },
} as const;

export const helpRows = { title: 1, firstNote: 2 } as const;

/** Columns of the Poll. The name of the row stands apart from what people type: by it an answer is found again. */
export const pollColumns = {
  row: 1,
  day: 2,
  className: 3,
  from: 4,
  firstStatement: 5,
  openLine: 9,
  /** Far to the right of what people type. */
  marker: 11,
} as const;
export const pollRows = { title: 1, invented: 6, firstCount: 8, headings: 13, firstAnswer: 14 } as const;
/** Stands in K1 of the Poll: the trigger knows it by that. */
export const pollMarker = 'Labrow poll';
