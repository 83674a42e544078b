import { activityById } from '../../lab/activities.ts';
import { activityInUse } from '../../workbook/activityInUse.ts';
import { classNow } from '../../workbook/classNow.ts';
import { percentErrors } from '../../workbook/percentErrors.ts';
import { readClassSheet } from '../../workbook/readClassSheet.ts';
import { absentKeys } from '../absentKeys.ts';
import { valuesOf } from '../applyWorkbook.ts';
import { planInUse } from '../build.ts';
import type { ClassView, Outcome } from '../calls.ts';
import { classSheet } from '../classSheet.ts';
import { dayOf } from '../dayOf.ts';
import { membersView } from '../membersView.ts';
import { done, problem } from '../outcome.ts';
import { openSpreadsheet } from '../spreadsheet.ts';
import { hostWords } from '../words.ts';

/** The class now, for the teacher's eyes: teams by steps, whom to talk to first and why. Nothing is written. */
export function readClass(className: unknown): Outcome<ClassView> {
  const spreadsheet = openSpreadsheet();
  const found = classSheet(spreadsheet, className);
  if (!found.ok) return found;
  const reading = readClassSheet(valuesOf(found.value));
  if (reading === undefined)
    return problem({ ...hostWords.classUnreadable, where: String(className), received: 'one without' });
  const plan = planInUse(spreadsheet);
  const activity = activityById(plan?.setup.activity ?? '');
  const steps = activity === undefined ? [] : activityInUse(activity, plan?.teams ?? []).steps;
  const titles = new Map(steps.map(({ id, title }) => [id, title]));
  const told = steps.filter(({ kind }) => kind === 'told').map(({ id }) => id);
  const now = new Date();
  const day = dayOf(spreadsheet, now.getTime());
  const absent = absentKeys(plan, day);
  const formulas = entryFormulaRows(found.value);
  const errors = percentErrors(reading, {
    steps,
    decimalMark: plan?.setup.settings['decimal mark'] === 'comma' ? 'comma' : 'point',
  });
  const { talkFirst, sayToClass, notYetKnown } = classNow({
    reading,
    titles,
    told,
    absent,
    extension: activity?.extension ?? '',
    now: now.getTime(),
  });
  const scored = (step: string) => !told.includes(step);
  return done({
    className: String(className),
    clock: Utilities.formatDate(now, spreadsheet.getSpreadsheetTimeZone(), 'HH:mm'),
    stepCount: steps.filter(({ kind }) => kind !== 'told').length,
    teams: reading.blocks.map((block) => ({
      team: block.team,
      key: block.key,
      ...(absent.includes(block.key) ? { absent: true } : {}),
      members: membersView(block.who, day).members,
      done: block.steps.filter(({ step, check }) => scored(step) && check === 'on target').length,
      steps: block.steps.map(({ row, step, check, entry, lookAt, tries, helpWanted, who }) => ({
        id: step,
        title: titles.get(step) ?? step,
        check,
        entry,
        lookAt,
        tries,
        helpWanted,
        who,
        isFormula: formulas.has(row),
      })),
    })),
    talkFirst,
    sayToClass,
    notYetKnown,
    ...(errors === undefined ? {} : { percentErrors: errors }),
  });
}

/** Rows whose entry is a formula: for the teacher to know, since a formula of ours answers whoever types it. */
function entryFormulaRows(sheet: GoogleAppsScript.Spreadsheet.Sheet): ReadonlySet<number> {
  const rows = new Set<number>();
  const lastRow = sheet.getLastRow();
  if (lastRow === 0) return rows;
  sheet
    .getRange(1, 2, lastRow, 1)
    .getFormulas()
    .forEach(([formula], index) => {
      if (formula !== undefined && formula !== '') rows.add(index + 1);
    });
  return rows;
}
