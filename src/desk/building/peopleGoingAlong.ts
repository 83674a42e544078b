import type { FirstEntriesSent } from '../../host/calls.ts';
import { classColumns as at } from '../../workbook/layout.ts';
import type { SheetPlan } from '../../workbook/workbook.ts';
import { classesOfLessons } from '../classes/classesInUse.ts';
import type { Book } from '../file/book.ts';
import type { BuildNote } from './buildNote.ts';

/** Who is in the teams of a class goes along to its next lesson, team by team. */
export function peopleGoingAlong({
  book,
  note: { wish },
  plan,
  className,
}: {
  readonly book: Book;
  readonly note: BuildNote;
  readonly plan: SheetPlan;
  readonly className: string | undefined;
}): readonly FirstEntriesSent[] {
  if (plan.role.kind !== 'class' || className === undefined || wish.from?.includes(className) !== true) return [];
  const before = classesOfLessons(book).filter(
    ({ lesson, name }) => lesson.id !== (wish.lesson ?? '') && name === className,
  );
  const { firstRow, rows } = plan.identity;
  return before.flatMap(({ reading }) =>
    (reading?.blocks ?? []).flatMap(({ key, who }): readonly FirstEntriesSent[] => {
      const heading = rows.findIndex(([rowKey, step]) => rowKey === key && step === '');
      return who === '' || heading < 0 ? [] : [{ row: firstRow + heading, column: at.who, texts: [who] }];
    }),
  );
}
