import { classColumns, prepareCells } from './layout.ts';
import { type SheetPlan, text } from './workbook.ts';

/**
 * The sheet of a lesson with the lesson in a cell that nobody needs to read, since a copy of the file may come without the
 * tags: in the first row of the Plan and of a class sheet, behind the mark of its checks, and above the list of Prepare.
 */
export function withLessonMark(plan: SheetPlan): SheetPlan {
  const { kind, lesson } = plan.role;
  const row = kind === 'prepare' ? prepareCells.planThen.row + 1 : 1;
  const column =
    kind === 'class' ? classColumns.givens + 2 : kind === 'prepare' ? prepareCells.planThen.column : plan.columnCount;
  if (lesson === undefined) return plan;
  return {
    ...plan,
    blocks: [...plan.blocks, { row, column, cells: [[text(lesson)]] }],
    looks: [...plan.looks, { row, column, rows: 1, columns: 1, look: 'mark' }],
  };
}
