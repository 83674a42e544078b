import { allActivities } from '../../lab/activities.ts';
import type { Activity } from '../../lab/activity.ts';
import { recipeOf } from '../../lab/numbers/recipeOf.ts';
import { periodCount } from '../../lab/periodPlan.ts';
import { proposedSolutes } from '../../lab/solutes.ts';
import { linkProblems } from '../../workbook/linkProblems.ts';
import { readLesson as readPlan } from '../../workbook/readLesson.ts';
import { valuesOf } from '../applyWorkbook.ts';
import { stateOf } from '../build.ts';
import { readMemo } from '../buildMemo.ts';
import type { ActivityView, LessonView, Outcome } from '../calls.ts';
import { decimalMarkOf } from '../decimalMark.ts';
import { firstSetup } from '../firstSetup.ts';
import { done, problemOf } from '../outcome.ts';
import { ownSheets, sheetInUse } from '../ownSheets.ts';
import { solutesFor } from '../solutesFor.ts';
import { openSpreadsheet } from '../spreadsheet.ts';

/** The lesson as the Plan has it now, edits by hand included, and what the sidebar can offer. */
export function readLesson(): Outcome<LessonView> {
  const spreadsheet = openSpreadsheet();
  const own = ownSheets(spreadsheet);
  const memo = readMemo();
  const localMark = decimalMarkOf(spreadsheet.getSpreadsheetLocale());
  const offer = {
    activities: activityViews(),
    solutes: proposedSolutes(),
    classes: own
      .filter(({ tag }) => tag.kind === 'class' && tag.state === 'built')
      .map(({ tag }) => tag.className ?? ''),
    ...(memo !== undefined && memo.done < memo.tasks.length ? { building: stateOf(memo) } : {}),
  };
  const sheet = sheetInUse(own, { kind: 'plan' })?.sheet;
  const cells = sheet === undefined ? [] : valuesOf(sheet);
  if (sheet === undefined || (memo?.done === 0 && cells.length < 2)) {
    return done({ ...offer, built: false, setup: firstSetup(localMark), decimalMark: localMark, problems: [] });
  }
  const reading = readPlan(cells);
  if (!reading.ok) return problemOf(reading.error);
  const { setup, problems } = reading.value;
  const help = sheetInUse(own, { kind: 'help' })?.sheet;
  return done({
    ...offer,
    built: offer.classes.length > 0,
    setup,
    decimalMark: setup.settings['decimal mark'] === 'comma' ? 'comma' : 'point',
    problems: [...problems, ...(help === undefined ? [] : linkProblems(valuesOf(help)))],
  });
}

function activityViews(): readonly ActivityView[] {
  return allActivities().map((activity) => {
    const { id, title, aim, givens } = activity;
    const flasks = flaskGivens(activity);
    const solutes = solutesFor(activity);
    return {
      id,
      title,
      aim,
      periods: periodCount(activity),
      givens: givens.map(({ name, unit, about, optional, fromTable, start }) => ({
        name,
        unit,
        about,
        optional: optional === true || fromTable === true,
        ...(flasks.includes(name) ? { flask: true } : {}),
        ...(start === undefined ? {} : { start }),
      })),
      ...(solutes === undefined ? {} : { solutes }),
    };
  });
}

/** Givens that hold the size of a flask that is filled. */
function flaskGivens(activity: Activity): readonly string[] {
  const recipe = recipeOf(activity);
  return Object.entries(recipe?.entry.takes ?? {}).flatMap(([name, { isFlask }]) => {
    const given = recipe?.takes[name];
    return isFlask && given !== undefined ? [given] : [];
  });
}
