import { membersOn } from '../../lab/members/membersOn.ts';
import { membersText } from '../../lab/members/membersText.ts';
import { readMembers } from '../../lab/members/readMembers.ts';
import { shareRoles } from '../../lab/members/shareRoles.ts';
import { readClassSheet } from '../../workbook/readClassSheet.ts';
import { valuesOf } from '../applyWorkbook.ts';
import type { Outcome } from '../calls.ts';
import { classSheet } from '../classSheet.ts';
import { dayOf } from '../dayOf.ts';
import { done } from '../outcome.ts';
import { openSpreadsheet } from '../spreadsheet.ts';
import { writeMembers } from '../writeMembers.ts';

/** Passes the roles on in every team of a class whose roles are of another day; pressed twice it changes nothing more. */
export function passRoles(className: unknown): Outcome<{ readonly passed: number }> {
  const spreadsheet = openSpreadsheet();
  const found = classSheet(spreadsheet, className);
  if (!found.ok) return found;
  const day = dayOf(spreadsheet, Date.now());
  let passed = 0;
  for (const { who, headingRow } of readClassSheet(valuesOf(found.value))?.blocks ?? []) {
    const before = readMembers(who);
    if (before.members.length === 0 || before.day === day) continue;
    const { members } = membersOn(before, day);
    const text = membersText(shareRoles({ before, members, day, passOn: true }));
    writeMembers(found.value, { headingRow, text });
    passed += 1;
  }
  return done({ passed });
}
