import { classColumns } from './layout.ts';
import type { SheetPlan } from './workbook.ts';

/**
 * A class sheet to which only the people of its teams are carried. Another activity asks other things in rows of the same
 * name, and cautions that were read for it say nothing of this one.
 */
export const teamsAlone = (plan: SheetPlan): SheetPlan => ({
  ...plan,
  carried: [classColumns.who],
  identity: { ...plan.identity, rows: plan.identity.rows.map((texts) => (texts[1] === '' ? texts : ['', ''])) },
});
