/** Where things stand in a class sheet. A change here is a new layout: raise the version. */
export const layoutVersion = 2;

/** Columns of a class sheet, from 1. */
export const classColumns = {
  find: 1,
  entry: 2,
  unit: 3,
  check: 4,
  lookAt: 5,
  hint: 6,
  help: 7,
  who: 8,
  tries: 9,
  lastEntry: 10,
  key: 11,
  step: 12,
  /** In a heading row the first given; in a step row the entry that was counted last. */
  givens: 13,
} as const;

export const countedColumn = classColumns.givens;

/** Stands in K1 of a class sheet, with the layout version in L1: the trigger knows the sheet by it in one read. */
export const classMarker = 'Labrow class';

/** Rows above the blocks of a class sheet. */
export const classRows = { title: 1, caution: 2, note: 3, notice: 4, find: 5, firstLink: 6 } as const;

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

/** In Prepare: whether the list is up to the Plan, the Plan as one text now, and as it was when the list was written. */
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
  /** Far to the right, where the trigger looks in a class sheet as well. */
  marker: classColumns.key,
} as const;
export const pollRows = { title: 1, invented: 6, firstCount: 8, headings: 13, firstAnswer: 14 } as const;
/** Stands in K1 of the Poll: the trigger knows it by that. */
export const pollMarker = 'Labrow poll';
