import { lessonActivity } from '../../lab/lessonActivity.ts';
import { addedHints } from '../../workbook/addedHints.ts';
import type { Lesson } from '../../workbook/lesson.ts';
import { neutralLesson } from '../../workbook/neutralLesson.ts';
import { planHelpSheet } from '../../workbook/planHelpSheet.ts';
import { planPlanSheet } from '../../workbook/planPlanSheet.ts';
import { classNames } from '../../workbook/planWorkbook.ts';
import { newSheetNames } from '../../workbook/sheetNames.ts';
import { words } from '../../workbook/words.ts';
import type { SheetPlan } from '../../workbook/workbook.ts';
import { applySheet, valuesOf } from '../applyWorkbook.ts';
import { beginAfresh, planInUse } from '../build.ts';
import type { BuildState, EmptyWish, Outcome } from '../calls.ts';
import { withDocumentLock } from '../documentLock.ts';
import { entriesOfToday } from '../entriesOfToday.ts';
import { done, problem } from '../outcome.ts';
import { ownSheets, sheetInUse } from '../ownSheets.ts';
import { openSpreadsheet, type Sheet, type Spreadsheet } from '../spreadsheet.ts';
import { stampOf } from '../stampOf.ts';
import { hostWords } from '../words.ts';
import { writeTexts } from '../writeTexts.ts';

const patienceMs = 2000;
const ownPrefix = /^labrow/i;

/**
 * Empties a copy that is to be given on. The Plan is written anew with counted names; every other sheet of ours is
 * removed and built again from it, so that nothing anybody wrote, noted or named there is left. Stopped at any point it
 * can be pressed again: the Plan comes first, and only then what was made from it goes.
 */
export function emptyCopy(given: unknown): Outcome<BuildState> {
  const { share: say } = hostWords;
  const wish = readWish(given);
  const locked = withDocumentLock(patienceMs, (): Outcome<BuildState> => {
    const spreadsheet = openSpreadsheet();
    const reading = planInUse(spreadsheet);
    const activity = reading && lessonActivity(reading.setup.settings);
    if (reading === undefined || activity === undefined) return problem(say.noLesson);
    if (entriesOfToday(spreadsheet) > 0 && wish.fileName !== spreadsheet.getName().trim()) {
      const received = wish.fileName === '' ? 'no name' : `“${wish.fileName}”`;
      return problem({ ...say.entries, received }, 'fileName');
    }
    const lesson = neutralLesson(reading, activity);
    const kept = writeAnew({ spreadsheet, lesson, keepHints: wish.keepHints });
    removeOthers({ spreadsheet, kept, everything: wish.removeOthers });
    for (const entry of spreadsheet.getDeveloperMetadata()) if (ownPrefix.test(entry.getKey())) entry.remove();
    PropertiesService.getDocumentProperties().deleteAllProperties();
    return done(beginAfresh(spreadsheet, lesson));
  });
  return locked.ran ? locked.value : problem(say.busy);
}

/** The new Plan and, where hints are to stay, a new Help with them; the earlier ones are put aside by it. */
function writeAnew({
  spreadsheet,
  lesson,
  keepHints,
}: {
  spreadsheet: Spreadsheet;
  lesson: Lesson;
  keepHints: boolean;
}): readonly { readonly sheet: Sheet; readonly name: string }[] {
  const names = newSheetNames(classNames(lesson));
  const anew = (plan: SheetPlan) =>
    applySheet({ spreadsheet, plan, keptName: hostWords.keptName(plan.name, stampOf(spreadsheet)), replace: true });
  anew(planPlanSheet(lesson, names));
  const inUse = (kind: 'plan' | 'help') => sheetInUse(ownSheets(spreadsheet), { kind })?.sheet;
  const before = inUse('help');
  if (keepHints && before !== undefined) {
    const plan = planHelpSheet(lesson, names);
    const added = addedHints(valuesOf(before), plan);
    anew(plan);
    const after = inUse('help');
    const spare = plan.writable[1];
    if (after !== undefined && spare !== undefined && added.length > 0) {
      const lines = added.slice(0, spare.rows);
      writeTexts(after.getRange(spare.row, spare.column, lines.length, spare.columns), lines);
    }
  }
  const kept: { sheet: Sheet; name: string }[] = [];
  const keep = (sheet: Sheet | undefined, name: string) => {
    if (sheet !== undefined) kept.push({ sheet, name });
  };
  keep(inUse('plan'), words.plan.sheet);
  if (keepHints) keep(inUse('help'), words.help.sheet);
  return kept;
}

function removeOthers({
  spreadsheet,
  kept,
  everything,
}: {
  spreadsheet: Spreadsheet;
  kept: readonly { readonly sheet: Sheet; readonly name: string }[];
  everything: boolean;
}): void {
  const keptIds = kept.map(({ sheet }) => sheet.getSheetId());
  const own = ownSheets(spreadsheet).map(({ sheet }) => sheet.getSheetId());
  const leaving = spreadsheet
    .getSheets()
    .filter((sheet) => !keptIds.includes(sheet.getSheetId()))
    .filter((sheet) => everything || own.includes(sheet.getSheetId()));
  const leavingIds = leaving.map((sheet) => sheet.getSheetId());
  // A name for a range is words that people typed as well.
  for (const named of spreadsheet.getNamedRanges()) {
    if (everything || leavingIds.includes(named.getRange().getSheet().getSheetId())) named.remove();
  }
  kept[0]?.sheet.activate();
  for (const sheet of leaving) spreadsheet.deleteSheet(sheet);
  const taken = spreadsheet.getSheets().map((sheet) => sheet.getName());
  for (const { sheet, name } of kept) if (!taken.includes(name)) sheet.setName(name);
}

function readWish(given: unknown): EmptyWish {
  const wish = typeof given === 'object' && given !== null ? (given as Record<string, unknown>) : {};
  return {
    fileName: typeof wish.fileName === 'string' ? wish.fileName.trim() : '',
    keepHints: wish.keepHints === true,
    removeOthers: wish.removeOthers === true,
  };
}
