import { lessonActivity } from '../lab/lessonActivity.ts';
import { numbersForTeams } from '../lab/numbersForTeams.ts';
import type { Setup, TeamPlan } from '../lab/setup.ts';
import { activityInUse } from '../workbook/activityInUse.ts';
import { keptTeams } from '../workbook/keptTeams.ts';
import type { Lesson, SheetNames } from '../workbook/lesson.ts';
import { planClassSheet } from '../workbook/planClassSheet.ts';
import { planHelpSheet } from '../workbook/planHelpSheet.ts';
import { planPlanSheet } from '../workbook/planPlanSheet.ts';
import { planPollSheet } from '../workbook/planPollSheet.ts';
import { planPrepareSheet } from '../workbook/planPrepareSheet.ts';
import { planProgressSheet } from '../workbook/planProgressSheet.ts';
import { classNames, teamsOf } from '../workbook/planWorkbook.ts';
import { readClassSheet } from '../workbook/readClassSheet.ts';
import { type PlanReading, readLesson } from '../workbook/readLesson.ts';
import { newSheetNames } from '../workbook/sheetNames.ts';
import { words } from '../workbook/words.ts';
import type { SheetPlan, SheetRole } from '../workbook/workbook.ts';
import { applySheet, type FirstEntries, putAside, valuesOf } from './applyWorkbook.ts';
import { type BuildMemo, type BuildTask, readMemo, saveMemo } from './buildMemo.ts';
import type { BuildState, Outcome } from './calls.ts';
import { dayOf } from './dayOf.ts';
import { withDocumentLock } from './documentLock.ts';
import { emptyFirstSheet } from './emptyFirstSheet.ts';
import { notePreparedPlan } from './notePreparedPlan.ts';
import { done, numbersProblem, problem, problemOf } from './outcome.ts';
import { ownSheets, roleName, sheetInUse, sheetLeaving } from './ownSheets.ts';
import { sampleEntries } from './sampleEntries.ts';
import { samplePollEntries } from './samplePollEntries.ts';
import { showAfterBuild } from './showAfterBuild.ts';
import { openSpreadsheet, recalculateEveryMinute, type Sheet, type Spreadsheet } from './spreadsheet.ts';
import { stampOf } from './stampOf.ts';
import { hostWords } from './words.ts';

const patienceMs = 2000;

const planRole: SheetRole = { kind: 'plan' };
const helpRole: SheetRole = { kind: 'help' };
const progressRole: SheetRole = { kind: 'progress' };
const pollRole: SheetRole = { kind: 'poll' };
const prepareRole: SheetRole = { kind: 'prepare' };
const classRole = (className: string): SheetRole => ({ kind: 'class', className });

/** The sheet of a role to read from: the one in use or, while that is being made anew, the old one. */
function sheetToRead(spreadsheet: Spreadsheet, role: SheetRole): Sheet | undefined {
  const own = ownSheets(spreadsheet);
  const present = sheetInUse(own, role);
  return present?.tag.state === 'built' ? present.sheet : (sheetLeaving(own, role) ?? present)?.sheet;
}

/** The lesson as the Plan has it; undefined in a file without one. */
export function planInUse(spreadsheet: Spreadsheet): PlanReading | undefined {
  const sheet = sheetToRead(spreadsheet, planRole);
  if (sheet === undefined) return undefined;
  const reading = readLesson(valuesOf(sheet));
  return reading.ok ? reading.value : undefined;
}

/** Writes the Plan and the list of sheets that are still to build. Pressed twice, the second press changes nothing. */
export function startBuild(setup: Setup, { sample }: { sample: boolean }): Outcome<BuildState> {
  const numbers = numbersForTeams(setup);
  if (!numbers.ok) return numbersProblem(numbers.error);
  const activity = lessonActivity(setup.settings);
  if (activity === undefined)
    return problem({ ...hostWords.setupProblems.activity, received: `“${setup.activity}”` }, 'activity');
  const locked = withDocumentLock(patienceMs, (): Outcome<BuildState> => {
    const spreadsheet = openSpreadsheet();
    const earlier = readMemo();
    const before = planInUse(spreadsheet);
    if (before !== undefined && before.keysUsedTwice.length > 0) {
      return problem({ ...hostWords.keyTwice, received: `“${before.keysUsedTwice.join('”, “')}” twice` });
    }
    if (sample && before !== undefined && !before.invented) {
      return problem({ ...hostWords.lessonThere, received: hostWords.lessonOf(before.teams.length) });
    }
    const teams = keptTeams({ drafted: numbers.value.teams, before, setup });
    const lesson: Lesson = {
      setup,
      activity: activityInUse(activity, teams),
      teams,
      givenNames: activity.givens.map(({ name }) => name),
      invented: sample || staysInvented(before, teams),
    };
    const memo = newMemo({ spreadsheet, lesson, earlier, sample });
    saveMemo(memo);
    const plan = planPlanSheet(lesson, namesIn(memo, lesson));
    apply({ spreadsheet, memo, plan, replace: before !== undefined && loses(before, lesson) });
    recalculateEveryMinute(spreadsheet);
    return done(advance(memo));
  });
  return locked.ran ? locked.value : done(stateOf(readMemo()));
}

/** Brings a sheet to its plan, and notes what became of it. */
function apply({
  spreadsheet,
  memo,
  plan,
  replace = false,
  firstEntries = [],
}: {
  spreadsheet: Spreadsheet;
  memo: BuildMemo;
  plan: SheetPlan;
  replace?: boolean;
  firstEntries?: readonly FirstEntries[];
}): void {
  const present = sheetInUse(ownSheets(spreadsheet), plan.role);
  const keptName = hostWords.keptName(present?.sheet.getName() ?? plan.name, memo.stamp);
  const { name, made } = applySheet({ spreadsheet, plan, keptName, replace, firstEntries });
  memo.names[roleName(plan.role)] = name;
  if (made) memo.made = true;
}

/** A sample stays one while all its teams are still the invented ones. */
const staysInvented = (before: PlanReading | undefined, teams: readonly TeamPlan[]): boolean =>
  before?.invented === true && teams.every(({ key }) => before.teams.some((line) => line.key === key));

/** After a file was emptied and holds nothing but its new Plan: the list of all other sheets, as for a first build. */
export function beginAfresh(spreadsheet: Spreadsheet, lesson: Lesson): BuildState {
  const memo = newMemo({ spreadsheet, lesson, earlier: undefined, sample: false });
  saveMemo(memo);
  recalculateEveryMinute(spreadsheet);
  return advance(memo);
}

/** Would writing this lesson over the Plan lose a line or a number that stands there? */
function loses(before: PlanReading, lesson: Lesson): boolean {
  return before.teams.some(({ key, givens }, index) => {
    const line = lesson.teams[index];
    return line?.key !== key || before.givenNames.some((name) => (line.givens[name] ?? '') !== (givens[name] ?? ''));
  });
}

function newMemo({
  spreadsheet,
  lesson,
  earlier,
  sample,
}: {
  spreadsheet: Spreadsheet;
  lesson: Lesson;
  earlier: BuildMemo | undefined;
  sample: boolean;
}): BuildMemo {
  const own = ownSheets(spreadsheet);
  const classes = classNames(lesson);
  const gone = own.filter(
    ({ tag }) => tag.kind === 'class' && tag.state !== 'kept' && !classes.includes(tag.className ?? ''),
  );
  const tasks: BuildTask[] = [
    { role: planRole, label: hostWords.buildLabels.plan },
    { role: helpRole, label: hostWords.buildLabels.help },
    { role: prepareRole, label: hostWords.buildLabels.prepare },
    ...classes.map((className) => ({ role: classRole(className), label: className })),
    ...gone.map(({ tag }) => ({
      role: classRole(tag.className ?? ''),
      label: hostWords.buildLabels.putAside(tag.className ?? ''),
      putAside: true as const,
    })),
    { role: progressRole, label: hostWords.buildLabels.progress },
    { role: pollRole, label: hostWords.buildLabels.poll },
  ];
  const unfinished = earlier !== undefined && earlier.done < earlier.tasks.length ? earlier : undefined;
  const names: Record<string, string> = {};
  // Names promised by an unfinished build are kept, so that a sheet it made and could not tag is found.
  const promised = { ...unfinished?.names };
  for (const { sheet, tag } of own) {
    if (tag.state === 'leaving') promised[roleName(tag)] = tag.name ?? sheet.getName();
    else if (tag.state !== 'kept') promised[roleName(tag)] = sheet.getName();
  }
  const taken = [...spreadsheet.getSheets().map((sheet) => sheet.getName()), ...Object.values(promised)];
  const fresh = newSheetNames(classes, taken);
  const freshName = ({ kind, className = '' }: SheetRole): string =>
    kind === 'class' ? (fresh.classes[className] ?? className) : kind === 'record' ? words.record.sheet : fresh[kind];
  for (const { role, putAside: aside } of tasks) {
    if (!aside) names[roleName(role)] = promised[roleName(role)] ?? freshName(role);
  }
  return {
    tasks,
    done: 0,
    stamp: unfinished?.stamp ?? stampOf(spreadsheet),
    sample,
    names,
    ...viewBefore({ spreadsheet, isFirst: own.length === 0, unfinished }),
  };
}

/** What to leave in view, and which empty sheet a first build finds; a build that is begun again goes by its beginning. */
function viewBefore({
  spreadsheet,
  isFirst,
  unfinished,
}: {
  spreadsheet: Spreadsheet;
  isFirst: boolean;
  unfinished: BuildMemo | undefined;
}): Pick<BuildMemo, 'emptySheet' | 'shownBefore' | 'made'> {
  if (unfinished !== undefined) {
    const { emptySheet, shownBefore, made } = unfinished;
    return {
      ...(emptySheet === undefined ? {} : { emptySheet }),
      ...(shownBefore === undefined ? {} : { shownBefore }),
      ...(made === undefined ? {} : { made }),
    };
  }
  if (!isFirst) return { shownBefore: spreadsheet.getActiveSheet().getSheetId() };
  const empty = emptyFirstSheet(spreadsheet);
  return empty === undefined ? {} : { emptySheet: empty.getSheetId() };
}

function namesIn(memo: BuildMemo, lesson: Lesson): SheetNames {
  const name = (role: SheetRole, otherwise: string) => memo.names[roleName(role)] ?? otherwise;
  const fresh = newSheetNames(classNames(lesson));
  const classes: Record<string, string> = Object.create(null);
  for (const className of classNames(lesson)) {
    classes[className] = name(classRole(className), fresh.classes[className] ?? className);
  }
  return {
    plan: name(planRole, fresh.plan),
    progress: name(progressRole, fresh.progress),
    help: name(helpRole, fresh.help),
    prepare: name(prepareRole, fresh.prepare),
    poll: name(pollRole, fresh.poll),
    classes,
  };
}

/** One sheet a call, from the Plan as it stands in the file, until finished. */
export function continueBuild(): Outcome<BuildState> {
  const locked = withDocumentLock(patienceMs, (): Outcome<BuildState> => {
    const memo = readMemo();
    const task = memo?.tasks[memo.done];
    if (memo === undefined || task === undefined) return done(stateOf(memo));
    const spreadsheet = openSpreadsheet();
    const finished = () => {
      if (memo.done + 1 === memo.tasks.length) showAfterBuild(spreadsheet, memo);
      return done(advance(memo));
    };
    if (task.putAside) {
      for (const { sheet, tag } of ownSheets(spreadsheet)) {
        if (tag.state === 'kept' || roleName(tag) !== roleName(task.role)) continue;
        const keptName = hostWords.keptName(sheet.getName(), memo.stamp);
        putAside({ spreadsheet, sheetId: sheet.getSheetId(), keptName });
      }
      return finished();
    }
    if (task.role.kind === 'plan') return problem({ ...hostWords.planUnfinished, received: 'one that stopped' });
    const lesson = lessonInFile(spreadsheet);
    if (!lesson.ok) return lesson;
    refreshNames(spreadsheet, memo);
    const { kind, className } = task.role;
    // A class that was renamed or removed in the Plan meanwhile keeps the sheet it has.
    const isGone = kind === 'class' && !lesson.value.lesson.teams.some((team) => team.className === className);
    if (isGone) return finished();
    const plan = sheetPlan({ spreadsheet, memo, task, ...lesson.value });
    const firstEntries =
      memo.sample && kind === 'class' && className !== undefined
        ? sampleEntries({
            plan,
            className,
            teams: teamsOf(lesson.value.lesson, className),
            day: dayOf(spreadsheet, Date.now()),
          })
        : memo.sample && kind === 'poll'
          ? samplePollEntries(spreadsheet)
          : [];
    apply({ spreadsheet, memo, plan, firstEntries });
    if (kind === 'prepare') {
      const { reading } = lesson.value;
      notePreparedPlan({ spreadsheet, writtenFrom: reading, readPlan: () => planInUse(spreadsheet) });
    }
    return finished();
  });
  return locked.ran ? locked.value : done(stateOf(readMemo()));
}

/** A teacher may rename sheets between two calls: formulas name them as they are called now. */
function refreshNames(spreadsheet: Spreadsheet, memo: BuildMemo): void {
  for (const { sheet, tag } of ownSheets(spreadsheet)) {
    if (tag.state === 'built' || tag.state === 'building') memo.names[roleName(tag)] = sheet.getName();
  }
}

function lessonInFile(spreadsheet: Spreadsheet): Outcome<{ readonly lesson: Lesson; readonly reading: PlanReading }> {
  const sheet = sheetInUse(ownSheets(spreadsheet), planRole)?.sheet;
  if (sheet === undefined) return problem({ ...hostWords.planUnfinished, received: 'none' });
  const reading = readLesson(valuesOf(sheet));
  if (!reading.ok) return problemOf(reading.error);
  const activity = lessonActivity(reading.value.setup.settings);
  if (activity === undefined) {
    return problem({ ...hostWords.setupProblems.activity, received: `“${reading.value.setup.activity}”` });
  }
  const missing = activity.givens.find(({ name }) => !reading.value.givenNames.includes(name));
  if (missing !== undefined)
    return problem({ ...hostWords.headingMissing(missing.name), received: 'a Plan without it' });
  const { setup, teams, givenNames, invented } = reading.value;
  const lesson = { setup, activity: activityInUse(activity, teams), teams, givenNames, invented };
  return done({ lesson, reading: reading.value });
}

function sheetPlan({
  spreadsheet,
  memo,
  task,
  lesson,
  reading,
}: {
  spreadsheet: Spreadsheet;
  memo: BuildMemo;
  task: BuildTask;
  lesson: Lesson;
  reading: PlanReading;
}): SheetPlan {
  const names = namesIn(memo, lesson);
  const { places } = reading;
  const { kind, className = '' } = task.role;
  if (kind === 'poll') return planPollSheet(lesson, names);
  if (kind === 'help') return planHelpSheet(lesson, names);
  if (kind === 'prepare') return planPrepareSheet(lesson, names, places);
  if (kind === 'progress') {
    const classes = classNames(lesson).map((name) => ({ className: name, teams: teamsOf(lesson, name) }));
    return planProgressSheet({ lesson, classes, names, places });
  }
  const present = sheetToRead(spreadsheet, task.role);
  const found = present === undefined ? undefined : readClassSheet(valuesOf(present));
  const order = found?.blocks.map(({ key }) => key) ?? [];
  const place = (key: string) => (order.includes(key) ? order.indexOf(key) : order.length);
  // Blocks stay where they are, however the Plan is sorted now.
  const teams = [...teamsOf(lesson, className)].sort((one, other) => place(one.key) - place(other.key));
  const keepsRows = found !== undefined && found.blocks.length > 0;
  return planClassSheet({
    lesson,
    className,
    teams,
    names,
    places,
    ...(keepsRows ? { linkRows: found.linkRows } : {}),
  });
}

function advance(memo: BuildMemo): BuildState {
  memo.done += 1;
  saveMemo(memo);
  return stateOf(memo);
}

/** Progress as the sidebar shows it: the label is what comes next, or what was built last. */
export function stateOf(memo: BuildMemo | undefined): BuildState {
  const total = memo?.tasks.length ?? 0;
  const built = memo?.done ?? 0;
  const label = memo?.tasks[Math.min(built, total - 1)]?.label ?? '';
  return { done: built, total, label, finished: built >= total };
}
