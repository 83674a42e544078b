import type { Seat } from '../view.ts';
import { type Area, covers } from './address.ts';
import { HostException } from './hostError.ts';
import type { ProtectionState, SheetState } from './sheetState.ts';

/** The two people at the file: the teacher owns it, the student may edit it. Addresses of no real host. */
export const people = { teacher: 'teacher@class.invalid', student: 'student@class.invalid' } as const;
export const owner: Seat = 'teacher';

/** Until somebody is taken off it, a protection lets everybody through who may edit the file. */
export const mayPass = (protection: ProtectionState, seat: Seat): boolean =>
  seat === owner || protection.warningOnly || protection.editors.includes(people[seat]);

const guards = (protection: ProtectionState, row: number, column: number): boolean =>
  protection.kind === 'RANGE'
    ? !!protection.area && covers(protection.area, row, column)
    : !protection.unprotected.some((area) => covers(area, row, column));

/** Protections add up: any one can forbid, any one can warn. */
export function guardAt(sheet: SheetState, row: number, column: number, seat: Seat): 'warning' | 'locked' | undefined {
  let guard: 'warning' | undefined;
  for (const protection of sheet.protections) {
    if (!guards(protection, row, column)) continue;
    if (!mayPass(protection, seat)) return 'locked';
    if (protection.warningOnly) guard = 'warning';
  }
  return guard;
}

export const lockedWords =
  'You are trying to edit a protected cell or object. Please contact the spreadsheet owner to remove protection if you need to edit.';

/** Refuses where any cell of the area is locked for this seat. */
export function refuseLocked(sheet: SheetState, area: Area, seat: Seat): void {
  if (sheet.protections.every((protection) => mayPass(protection, seat))) return;
  for (let row = area.row; row < area.row + area.rows; row += 1) {
    for (let column = area.column; column < area.column + area.columns; column += 1) {
      if (guardAt(sheet, row, column, seat) === 'locked') throw new HostException(lockedWords);
    }
  }
}

/** Refuses changes to a sheet as a whole where any protection holds this seat off. */
export function refuseLockedSheet(sheet: SheetState, seat: Seat): void {
  if (sheet.protections.some((protection) => !mayPass(protection, seat))) throw new HostException(lockedWords);
}
