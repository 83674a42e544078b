import { layoutVersion } from '../workbook/layout.ts';
import { layoutFits } from '../workbook/layoutFits.ts';
import { tabColors } from '../workbook/looks.ts';
import { teamsAlone } from '../workbook/teamsAlone.ts';
import type { SheetPlan, SheetRole } from '../workbook/workbook.ts';
import type { AsideWish } from './calls.ts';
import { cellsRead, type FileInRun, type SheetInRun, sheetById } from './fileInRun.ts';
import { freeSheetName } from './freeSheetName.ts';
import { noteTaken } from './lateEntries.ts';
import { moveAside } from './moveAside.ts';
import { moveTab } from './moveTab.ts';
import {
  isKept,
  isOld,
  type OwnSheet,
  ownSheets,
  type SheetTag,
  sheetAway,
  sheetInUse,
  sheetLeaving,
  writeTag,
} from './ownSheets.ts';
import { setToRest, wakeUp } from './setToRest.ts';
import type { Sheet } from './spreadsheet.ts';
import { valuesOf } from './valuesOf.ts';
import { hostWords } from './words.ts';
import { type FirstEntries, rewriteSheet, writeSheet } from './writeSheet.ts';

export interface ApplyRequest {
  readonly file: FileInRun;
  /** Its name is the one wanted for a sheet that has to be made. */
  readonly plan: SheetPlan;
  /** Dated name for the old sheet, where it has to be replaced. */
  readonly keptName: string;
  /** True: the sheet that is there is kept as it is, even if its layout would fit. */
  readonly replace?: boolean;
  /** Typed once into a sheet that is new and holds no other entries; for the sample only. */
  readonly firstEntries?: readonly FirstEntries[];
}

/** Which sheet stands for the plan now. */
export interface Applied {
  readonly sheetId: number;
  /** True where this run made the sheet: it is then in view. */
  readonly made: boolean;
  /** Number of the old sheet that was replaced. */
  readonly keptId?: number;
}

/**
 * Brings one sheet to its plan, and may be run again after it stopped at any point: the same request finishes it. Where
 * the layout that is there fits, only planned cells are written; where it does not, the old sheet is kept under a dated
 * name and a new one takes what people had typed. Cells that people write in are never written otherwise and never
 * cleared.
 */
export const applySheet = (request: ApplyRequest): Applied => bringToPlan(request, 1);

/** People go on moving rows while a script runs; after so many rounds what is there stays, and the next build goes on. */
const mostRounds = 3;

function bringToPlan(request: ApplyRequest, round: number): Applied {
  const { file, plan, keptName, replace = false, firstEntries = [] } = request;
  const role = plan.role;
  let old = sheetLeaving(ownSheets(file), role);
  const present = sheetInUse(ownSheets(file), role) ?? woken(file, role);
  if (present !== undefined && old === undefined) {
    if (role.kind === 'class') moveAside(present);
    const fit = layoutFits(plan, cellsRead(present));
    const unfinished = present.tag.state === 'building';
    if (fit === 'other' || isOfAnother(present.tag, plan) || (replace && !unfinished)) {
      leave({ file, old: present, keptName });
      old = present;
    } else if (fit === 'same' && !unfinished) {
      writeTag(file, present, { ...present.tag, ...activityOf(plan) });
      const wrote = rewriteSheet(present, plan);
      if (!wrote || !rowsMoved(present, plan, round)) return applied(present, false);
      return carryOn({ request, moved: present, round });
    }
  } else if (old !== undefined) {
    leave({ file, old, keptName: old.tag.keptName ?? keptName });
    // A build may have stopped after the new sheet stood and before the old one was put behind the others.
    if (present?.tag.state === 'built') {
      keep(file, old);
      return bringToPlan(request, round);
    }
  }
  const found = sheetInUse(ownSheets(file), role);
  const isNew = found?.tag.state !== 'built';
  const target = found ?? newSheet({ file, plan, old });
  const made = found === undefined;
  writeTag(file, target, { ...target.tag, state: 'building' });
  writeSheet({
    file,
    target,
    plan,
    stands: target.isNew ? 'empty' : isNew ? 'begun' : 'shorter',
    ...(target.tag.from === undefined ? {} : carriedFrom({ file, from: target.tag.from, plan })),
    firstEntries: isNew ? firstEntries : [],
  });
  if (rowsMoved(target, plan, round)) {
    if (old !== undefined) keep(file, old);
    return carryOn({ request, moved: target, round });
  }
  // From here on the sheet stands by itself: an entry that a team clears must not come back from the old sheet.
  const { from: _, ...done } = target.tag;
  writeTag(file, target, {
    ...done,
    ...activityOf(plan),
    layout: layoutVersion,
    state: 'built',
  });
  if (old === undefined) return applied(target, made);
  keep(file, old);
  return { ...applied(target, made), keptId: old.id };
}

/** Whether people moved rows of a class while they were being written: its keys are read once more. */
const rowsMoved = ({ sheet }: SheetInRun, plan: SheetPlan, round: number): boolean =>
  round < mostRounds && plan.role.kind === 'class' && layoutFits(plan, valuesOf(sheet)) !== 'same';

/** What stands where is told by the keys in the rows, so it is carried to a sheet that is made anew. */
function carryOn({ request, moved, round }: { request: ApplyRequest; moved: OwnSheet; round: number }): Applied {
  const { file, plan, keptName } = request;
  leave({ file, old: moved, keptName });
  return bringToPlan({ file, plan, keptName }, round + 1);
}

const applied = ({ id }: SheetInRun, made: boolean): Applied => ({ sheetId: id, made });

/** Of a class: what its rows are for, and how wide its table is. */
const activityOf = ({ activity, columnCount: columns }: SheetPlan) =>
  activity === undefined ? {} : { activity, columns };

/** Whether a sheet was built for another activity than it is wanted for. */
const isOfAnother = (tag: SheetTag | undefined, { activity }: SheetPlan): boolean =>
  tag?.activity !== undefined && activity !== undefined && tag.activity !== activity;

/** The old sheet that entries come from, and what of it belongs to the plan's activity. */
function carriedFrom({ file, from, plan }: { file: FileInRun; from: number; plan: SheetPlan }) {
  const old = sheetById(file, from);
  if (old === undefined) return {};
  const cells = valuesOf(old.sheet);
  if (old.tag !== undefined) noteTaken(file, old as OwnSheet, cells, plan.columnCount);
  return { carried: { from: cells, wanted: isOfAnother(old.tag, plan) ? teamsAlone(plan) : plan } };
}

/**
 * Takes a sheet out of use: kept under a dated name where its class is no longer in the plan, put away with its lesson, or
 * removed. A sheet that is not ours stays as it is. False where somebody gave its tab another name since the page looked.
 */
export function putAside(file: FileInRun, wish: AsideWish): boolean {
  const { sheetId, was, keptName, about, remove, instead } = wish;
  const present = ownSheets(file).find(({ id }) => id === sheetId);
  if (present !== undefined) {
    if (remove === true) {
      file.spreadsheet.deleteSheet(present.sheet);
      file.sheets.splice(file.sheets.indexOf(present), 1);
    } else if (about === undefined) {
      noteTaken(file, present, valuesOf(present.sheet));
      leave({ file, old: present, keptName, was });
      keep(file, present);
    } else if (present.tag.state !== 'away') {
      if (!giveName(present, freeNameFor(file, present, keptName), was)) return false;
      putAway({ file, present, about, wish });
    }
  }
  // The one that comes instead takes over the name of the tab.
  if (instead !== undefined) renameTab(file, instead);
  return true;
}

/** A tab that somebody has given a name of their own keeps it. */
export function renameTab(file: FileInRun, { sheetId, was, now }: NonNullable<AsideWish['instead']>): void {
  const one = sheetById(file, sheetId);
  // The host does not tell case apart: a name that differs in nothing else is the sheet’s own.
  const other = file.spreadsheet.getSheetByName(now);
  if (one !== undefined && (other === null || other.getSheetId() === sheetId)) giveName(one, now, was);
}

/**
 * Gives a tab a name, unless it has another than it had: whoever typed that keeps it. It is looked at in the very last
 * moment, since people rename tabs while a script runs.
 */
function giveName({ sheet }: SheetInRun, name: string, was: string): boolean {
  const now = sheet.getName();
  if (now === was && now !== name) sheet.setName(name);
  return now === was || now === name;
}

/** The name wanted, or with a number behind it, that no other sheet has. */
const freeNameFor = ({ spreadsheet }: FileInRun, { id }: SheetInRun, wanted: string): string =>
  freeSheetName(spreadsheet, wanted, (other) => other.getSheetId() === id);

/** The tag is changed last, so that a stop before that is gone on from. */
function putAway({
  file,
  present,
  about,
  wish: { instead },
}: {
  readonly file: FileInRun;
  readonly present: OwnSheet;
  readonly about: string;
  readonly wish: AsideWish;
}): void {
  const { sheet, tag } = present;
  if (tag.kind === 'class') {
    // The places of checks are emptied when the sheet is woken.
    moveAside(present);
    noteTaken(file, present, valuesOf(sheet));
  }
  setToRest(file, present, { instead: instead?.sheetId, say: hostWords.away });
  sheet.setTabColor(tabColors.kept);
  // Students find the tab of their class where it was.
  const comes = ownSheets(file).find(({ id }) => id === instead?.sheetId);
  const place = sheet.getIndex();
  if (comes !== undefined) moveTab(file, comes, Math.min(place, comes.sheet.getIndex()));
  moveTab(file, present);
  sheet.hideSheet();
  writeTag(file, present, { ...present.tag, state: 'away', about });
}

/** A sheet that was put away with its lesson is in use again, where it stands in the row of tabs and for everybody to see. */
function woken(file: FileInRun, role: SheetRole): OwnSheet | undefined {
  const one = sheetAway(ownSheets(file), role);
  if (one === undefined) return undefined;
  // Words that rest have their sums beside them, unless an earlier version put them there: those are taken for ours.
  if (role.kind === 'class') moveAside(one);
  wakeUp(one);
  one.cells = undefined;
  moveTab(file, one, placeFor({ file, role, old: undefined }) + 1);
  one.sheet.setTabColor(tabColors[role.kind]);
  if (role.kind === 'class') one.sheet.showSheet();
  const { check: _, about: __, sums: ___, ...tag } = one.tag;
  writeTag(file, one, { ...tag, state: 'built' });
  return one;
}

/**
 * Marks a sheet as leaving before its name changes, so that whoever goes on after a stop finds it by its tag. Where
 * somebody gives its tab another name at that very moment, it is kept under that one.
 */
function leave({
  file,
  old,
  keptName,
  was = old.sheet.getName(),
}: {
  file: FileInRun;
  old: OwnSheet;
  keptName: string;
  was?: string;
}): void {
  const { sheet, tag } = old;
  const name = freeNameFor(file, old, keptName);
  const { from: _, ...rest } = tag;
  const before = tag.name ?? was;
  writeTag(file, old, {
    ...rest,
    state: 'leaving',
    keptName: name,
    name: before,
    hidden: tag.hidden ?? sheet.isSheetHidden(),
  });
  giveName(old, name, before);
  sheet.setTabColor(tabColors.kept);
}

/** The old sheet leaves its place once the new one has taken it: until then it says where that is. */
function keep(file: FileInRun, old: OwnSheet): void {
  setToRest(file, old);
  moveTab(file, old);
  const { keptName: _, name: __, hidden: ___, ...rest } = old.tag;
  writeTag(file, old, { ...rest, state: 'kept' });
}

/**
 * Makes a sheet beside all that are there: it is in use for nothing, and counts as kept, until whoever makes it says so.
 * What people had typed in `from` stands in it as well.
 */
export function makeBeside({
  file,
  plan,
  from,
  firstEntries = [],
}: Pick<ApplyRequest, 'file' | 'plan' | 'firstEntries'> & { readonly from: OwnSheet | undefined }): OwnSheet {
  const target = newSheet({ file, plan, old: undefined, state: { state: 'kept', emptying: true } });
  const stands = target.isNew ? 'empty' : 'begun';
  const carried = from === undefined ? {} : carriedFrom({ file, from: from.id, plan });
  writeSheet({ file, target, plan, stands, ...carried, firstEntries });
  return target;
}

/** The sheet to write into: one that a stopped run left untagged and empty, or a new one. */
function newSheet({
  file,
  plan,
  old,
  state = { state: 'building' },
}: {
  file: FileInRun;
  plan: SheetPlan;
  old: OwnSheet | undefined;
  state?: Pick<SheetTag, 'state' | 'emptying'>;
}): OwnSheet {
  const { role } = plan;
  let one: SheetInRun | undefined;
  // Another sheet may have had the name wanted then: one that was left may bear a number.
  const name = freeSheetName(file.spreadsheet, old?.tag.name ?? plan.name, (other) => {
    one = orphan(file, other);
    return one !== undefined;
  });
  one ??= insertedSheet({ file, name, place: placeFor({ file, role, old }) });
  const tag: SheetTag = {
    kind: role.kind,
    ...(role.className === undefined ? {} : { className: role.className }),
    ...(role.lesson === undefined ? {} : { lesson: role.lesson }),
    ...activityOf(plan),
    layout: layoutVersion,
    ...state,
    ...(old === undefined ? {} : { from: old.id }),
  };
  writeTag(file, one, tag);
  return one as OwnSheet;
}

/** A sheet that a run made and could not tag any more. */
function orphan(file: FileInRun, sheet: Sheet): SheetInRun | undefined {
  const one = sheetById(file, sheet.getSheetId());
  const isFree = one !== undefined && one.tag === undefined && !isKept(file, one);
  return isFree && sheet.getLastRow() === 0 ? one : undefined;
}

function insertedSheet({ file, name, place }: { file: FileInRun; name: string; place: number }): SheetInRun {
  const sheet = file.spreadsheet.insertSheet(name, place);
  const one: SheetInRun = { sheet, id: sheet.getSheetId(), isNew: true };
  file.sheets.splice(place, 0, one);
  return one;
}

/** What students use stands first, then what the teacher does. */
const tabOrder: Readonly<Record<SheetRole['kind'], number>> = {
  class: 1,
  poll: 2,
  progress: 3,
  plan: 4,
  help: 5,
  prepare: 6,
  record: 7,
  key: 8,
};

/**
 * A new sheet stands behind the last of its kind or, where it is the first, before those that come after its kind; one in
 * place of an old one takes its place. So tabs that a teacher has put in another order stay in it. Kept sheets stay behind
 * all others.
 */
function placeFor({ file, role, old }: { file: FileInRun; role: SheetRole; old: OwnSheet | undefined }): number {
  if (old !== undefined) return old.sheet.getIndex() - 1;
  const inUse = ownSheets(file).filter(({ tag }) => !isOld(tag));
  const alike = inUse.filter(({ tag }) => tag.kind === role.kind).pop();
  if (alike !== undefined) return file.sheets.indexOf(alike) + 1;
  const behind = inUse.find(({ tag }) => tabOrder[tag.kind] > tabOrder[role.kind]);
  if (behind !== undefined) return file.sheets.indexOf(behind);
  const { sheets } = file;
  const isKeptAt = (index: number): boolean => {
    const one = sheets[index];
    return one !== undefined && (isKept(file, one) || one.tag?.state === 'away');
  };
  let place = sheets.length;
  while (isKeptAt(place - 1)) place -= 1;
  return place;
}
