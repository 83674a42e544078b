import { membersOn } from '../../lab/members/membersOn.ts';
import { readMembers } from '../../lab/members/readMembers.ts';
import type { TeamMembersView } from '../views.ts';

/** Who is in a team, as its cell says and as it counts on this day. */
export function membersView(who: string, day: string): TeamMembersView {
  const read = readMembers(who);
  const { members } = membersOn(read, day);
  return {
    who,
    day: read.day,
    members: members.map(({ name, absent, roles }) => ({ name, absent, roles: [...roles] })),
  };
}
