import { membersTexts } from '../texts/members.ts';
import { memberWords } from './memberWords.ts';
import type { TeamMembers } from './teamMembers.ts';

/** What stands in the cell: a line for each person, and of which day the roles are. Empty for a team without names. */
export function membersText({ members, day }: TeamMembers): string {
  if (members.length === 0) return '';
  return [...members.map(memberWords), ...(day === '' ? [] : [membersTexts.rolesOf(day)])].join('\n');
}
