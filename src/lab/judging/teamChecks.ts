import { type CellValue, isBlank } from '../../measurement/cellValue.ts';
import { isExitStep } from '../exit/exitStep.ts';
import { hintForStep } from '../hints/hintForStep.ts';
import { plainName } from '../lesson/givenCells.ts';
import { ownHelpGiven } from '../lesson/teamColumns.ts';
import { readTeamLesson, type TeamLesson } from '../lesson/teamLesson.ts';
import { checkHeadings, closedRow } from '../texts/feedback.ts';
import { levelAsked } from '../texts/hints.ts';
import { isClosed } from './isClosed.ts';
import type { JudgedRow } from './judgedRow.ts';
import { judgeTeam, type TeamBlock } from './judgeTeam.ts';

export interface TeamTable extends TeamBlock {
  /** 0 to 3 in each row, a column of the same height. */
  readonly helpWanted?: readonly CellValue[] | undefined;
  /** Rows of the Help sheet; see `ownHint`. */
  readonly ownHints?: readonly (readonly CellValue[])[] | undefined;
}

export interface CheckedRow {
  readonly check: string;
  readonly lookAt: string;
  readonly hint: string;
}

/** The level in a help cell: 2, or text that begins with it; undefined for anything else, and 0 for a blank. */
function levelWanted(cell: CellValue): number | undefined {
  if (isBlank(cell)) return 0;
  const level = /^\s*([0-3])(?![\d.,/])/.exec(String(cell))?.[1];
  return level === undefined ? undefined : Number(level);
}

/** How far hints go for a team: as far as the lesson lets them, or less far where the team's own line of the Plan says so. */
function highestLevel({ settings, givens }: TeamLesson): number {
  const own = givens[ownHelpGiven];
  return Math.min(
    settings.highestHelpLevel,
    (isBlank(own) ? undefined : levelWanted(own)) ?? settings.highestHelpLevel,
  );
}

/**
 * A team's whole block in one go: check, what to look at and the hint that was asked for, one row for each row given. The
 * first row gives the headings where it has no step id; any other row without one stays empty. Never fails: a row that is
 * unknown or whose given is bad is `unreadable` and names it, and the others are judged as ever.
 */
export function teamChecks(table: TeamTable): readonly CheckedRow[] {
  const lesson = readTeamLesson(table);
  const { settings, activity, givens } = lesson;
  const highest = highestLevel(lesson);
  const entries: Record<string, CellValue> = Object.create(null);
  table.steps.forEach((cell, index) => {
    const id = plainName(cell);
    if (!(id in entries)) entries[id] = table.entries[index];
  });
  const hintFor = (row: JudgedRow, index: number): string => {
    // An exit question is answered without help.
    if (!row.step || isExitStep(row.step.id)) return '';
    const wanted = levelWanted(table.helpWanted?.[index]);
    if (wanted === undefined) return levelAsked;
    const level = Math.min(wanted, highest);
    return hintForStep({
      activity,
      stepId: row.step.id,
      level,
      givens,
      entries,
      decimalMark: settings.decimalMark,
      ownHints: table.ownHints,
    });
  };
  const closed = isClosed(lesson);
  return judgeTeam(table, lesson).map((row, index) => {
    if (index === 0 && isBlank(table.steps[0])) return checkHeadings;
    const said = { check: row.status, lookAt: row.lookAt, hint: hintFor(row, index) };
    if (!closed || !asks.includes(row.status)) return said;
    // Cautions stay in sight whatever the hour.
    return { ...said, ...closedRow, ...(row.step?.kind === 'ticked' ? { lookAt: row.lookAt } : {}) };
  });
}

/** What a check says while a row asks for something. */
const asks: readonly string[] = ['close', 'follows', 'not yet', 'unreadable', 'blank'];
