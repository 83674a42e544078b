import { membersTexts } from '../texts/members.ts';
import type { TeamMembers } from './teamMembers.ts';

/** What stands in the cell: a line for each person, and of which day the roles are. Empty for a team without names. */
export function membersText({ members, day }: TeamMembers): string {
  if (members.length === 0) return '';
  const lines = members.map(({ name, absent, roles }) => {
    const said = [...(absent ? [membersTexts.absent] : []), ...roles];
    return said.length === 0 ? name : `${name}: ${said.join(', ')}`;
  });
  return [...lines, ...(day === '' ? [] : [membersTexts.rolesOf(day)])].join('\n');
}
