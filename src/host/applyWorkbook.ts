import { freeName } from '../workbook/freeName.ts';
import { layoutVersion } from '../workbook/layout.ts';
import { layoutFits } from '../workbook/layoutFits.ts';
import { tabColors } from '../workbook/looks.ts';
import { teamsAlone } from '../workbook/teamsAlone.ts';
import type { SheetPlan, SheetRole } from '../workbook/workbook.ts';
import { moveBehindAll } from './moveBehindAll.ts';
import { keptIds, type OwnSheet, ownSheets, type SheetTag, sheetInUse, sheetLeaving, writeTag } from './ownSheets.ts';
import type { Sheet, Spreadsheet } from './spreadsheet.ts';
import { valuesOf } from './valuesOf.ts';
import { type FirstEntries, rewriteSheet, writeSheet } from './writeSheet.ts';

export interface ApplyRequest {
  readonly spreadsheet: Spreadsheet;
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
  readonly name: string;
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
  const { spreadsheet, plan, keptName, replace = false, firstEntries = [] } = request;
  const role = plan.role;
  let own = ownSheets(spreadsheet);
  let old = sheetLeaving(own, role);
  const present = sheetInUse(own, role);
  if (present !== undefined && old === undefined) {
    const fit = layoutFits(plan, valuesOf(present.sheet));
    const unfinished = present.tag.state === 'building';
    if (fit === 'other' || isOfAnother(present.tag, plan) || (replace && !unfinished)) {
      const leaving = leave({ spreadsheet, old: present, keptName });
      own = own.map((one) => (one === present ? leaving : one));
      old = leaving;
    } else if (fit === 'same' && !unfinished) {
      writeTag(present, present.tag);
      const wrote = rewriteSheet(present.sheet, plan);
      if (!wrote || !rowsMoved(present.sheet, plan, round)) return applied(present.sheet, false);
      return carryOn({ request, moved: present, round });
    }
  } else if (old !== undefined) {
    old = leave({ spreadsheet, old, keptName: old.tag.keptName ?? keptName });
    // A build may have stopped after the new sheet stood and before the old one was put behind the others.
    if (present?.tag.state === 'built') {
      keep(spreadsheet, old);
      return bringToPlan(request, round);
    }
  }
  const found = sheetInUse(own, role);
  const isNew = found?.tag.state !== 'built';
  const target = found ?? newSheet({ spreadsheet, own, plan, old });
  const made = found === undefined;
  writeTag(target, { ...target.tag, state: 'building' });
  writeSheet({
    spreadsheet,
    sheet: target.sheet,
    plan,
    stands: made ? 'empty' : isNew ? 'begun' : 'shorter',
    ...(target.tag.from === undefined ? {} : { carried: carriedFrom({ own, from: target.tag.from, plan }) }),
    firstEntries: isNew ? firstEntries : [],
  });
  if (rowsMoved(target.sheet, plan, round)) {
    if (old !== undefined) keep(spreadsheet, old);
    return carryOn({ request, moved: target, round });
  }
  // From here on the sheet stands by itself: an entry that a team clears must not come back from the old sheet.
  const { from: _, ...done } = target.tag;
  writeTag(target, { ...done, ...activityOf(plan), layout: layoutVersion, state: 'built' });
  if (old === undefined) return applied(target.sheet, made);
  keep(spreadsheet, old);
  return { ...applied(target.sheet, made), keptId: old.sheet.getSheetId() };
}

/** Whether people moved rows of a class while they were being written: its keys are read once more. */
const rowsMoved = (sheet: Sheet, plan: SheetPlan, round: number): boolean =>
  round < mostRounds && plan.role.kind === 'class' && layoutFits(plan, valuesOf(sheet)) !== 'same';

/** What stands where is told by the keys in the rows, so it is carried to a sheet that is made anew. */
function carryOn({ request, moved, round }: { request: ApplyRequest; moved: OwnSheet; round: number }): Applied {
  const { spreadsheet, plan, keptName } = request;
  leave({ spreadsheet, old: moved, keptName });
  return bringToPlan({ spreadsheet, plan, keptName }, round + 1);
}

const applied = (sheet: Sheet, made: boolean): Applied => ({
  sheetId: sheet.getSheetId(),
  name: sheet.getName(),
  made,
});

const activityOf = (of: { readonly activity?: string } | undefined) =>
  of?.activity === undefined ? {} : { activity: of.activity };

/** Whether a sheet was built for another activity than it is wanted for. */
const isOfAnother = (tag: SheetTag | undefined, { activity }: SheetPlan): boolean =>
  tag?.activity !== undefined && activity !== undefined && tag.activity !== activity;

/** The old sheet that entries come from, and what of it belongs to the plan's activity. */
function carriedFrom({ own, from, plan }: { own: readonly OwnSheet[]; from: number; plan: SheetPlan }) {
  const old = own.find(({ sheet }) => sheet.getSheetId() === from);
  return { from: old?.sheet, wanted: isOfAnother(old?.tag, plan) ? teamsAlone(plan) : plan };
}

/** Keeps a sheet whose class is no longer in the plan, under a dated name. A sheet that is not ours stays as it is. */
export function putAside({
  spreadsheet,
  sheetId,
  keptName,
}: {
  readonly spreadsheet: Spreadsheet;
  readonly sheetId: number;
  readonly keptName: string;
}): void {
  const present = ownSheets(spreadsheet).find(({ sheet }) => sheet.getSheetId() === sheetId);
  if (present === undefined || present.tag.state === 'kept') return;
  const name = present.tag.keptName ?? keptName;
  keep(spreadsheet, leave({ spreadsheet, old: present, keptName: name }));
}

/** Marks a sheet as leaving before its name changes, so that whoever goes on after a stop finds it by its tag. */
function leave({
  spreadsheet,
  old,
  keptName,
}: {
  spreadsheet: Spreadsheet;
  old: OwnSheet;
  keptName: string;
}): OwnSheet {
  const { sheet, tag } = old;
  const others = spreadsheet.getSheets().filter((other) => other.getSheetId() !== sheet.getSheetId());
  const name = freeName(
    keptName,
    others.map((other) => other.getName()),
  );
  const { from: _, ...rest } = tag;
  const leaving: SheetTag = { ...rest, state: 'leaving', keptName: name, name: tag.name ?? sheet.getName() };
  writeTag(old, leaving);
  if (sheet.getName() !== name) sheet.setName(name);
  sheet.setTabColor(tabColors.kept);
  return { ...old, tag: leaving };
}

/** The old sheet leaves its place once the new one has taken it: until then it says where that is. */
function keep(spreadsheet: Spreadsheet, old: OwnSheet): void {
  moveBehindAll(spreadsheet, old.sheet);
  const { keptName: _, name: __, ...rest } = old.tag;
  writeTag(old, { ...rest, state: 'kept' });
}

/** The sheet to write into: one that a stopped run left untagged and empty, or a new one. */
function newSheet({
  spreadsheet,
  own,
  plan,
  old,
}: {
  spreadsheet: Spreadsheet;
  own: readonly OwnSheet[];
  plan: SheetPlan;
  old: OwnSheet | undefined;
}): OwnSheet {
  const { role } = plan;
  const wanted = old?.tag.name ?? plan.name;
  const orphan = spreadsheet.getSheetByName(wanted);
  const isOrphan =
    orphan !== null &&
    !own.some(({ sheet }) => sheet.getSheetId() === orphan.getSheetId()) &&
    orphan.getLastRow() === 0;
  let sheet = isOrphan ? orphan : undefined;
  if (sheet === undefined) {
    const taken = spreadsheet.getSheets().map((other) => other.getName());
    sheet = spreadsheet.insertSheet(freeName(wanted, taken), placeFor({ spreadsheet, own, role, old }));
  }
  const tag: SheetTag = {
    kind: role.kind,
    ...(role.className === undefined ? {} : { className: role.className }),
    ...activityOf(plan),
    layout: layoutVersion,
    state: 'building',
    ...(old === undefined ? {} : { from: old.sheet.getSheetId() }),
  };
  writeTag({ sheet }, tag);
  return { sheet, tag };
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
 * A new sheet stands before those that come after its kind; one in place of an old one takes its place. Kept sheets stay
 * behind all others.
 */
function placeFor({
  spreadsheet,
  own,
  role,
  old,
}: {
  spreadsheet: Spreadsheet;
  own: readonly OwnSheet[];
  role: SheetRole;
  old: OwnSheet | undefined;
}): number {
  if (old !== undefined) return old.sheet.getIndex() - 1;
  const behind = own.find(
    ({ tag }) => tag.state !== 'kept' && tag.state !== 'leaving' && tabOrder[tag.kind] > tabOrder[role.kind],
  );
  if (behind !== undefined) return behind.sheet.getIndex() - 1;
  const sheets = spreadsheet.getSheets();
  const kept = [...keptIds(), ...own.filter(({ tag }) => tag.state === 'kept').map(({ sheet }) => sheet.getSheetId())];
  let place = sheets.length;
  while (place > 0 && kept.includes(sheets[place - 1]?.getSheetId() ?? Number.NaN)) place -= 1;
  return place;
}
