import { roles } from '../lesson/roles.ts';
import { membersTexts } from '../texts/members.ts';
import type { Member, TeamMembers } from './teamMembers.ts';

const [calculates] = roles;
const ours: readonly string[] = [...roles, membersTexts.helps];

/** What a team is to be on a day, without its roles. */
interface SharedRoles {
  /** The arrangement so far. */
  readonly before: TeamMembers;
  /** Who is in the team, in its order; their own words besides the roles stay. */
  readonly members: readonly Pick<Member, 'name' | 'absent'>[];
  /** Year-month-day that the roles are for. */
  readonly day: string;
  /** True: everybody has had a turn, so the one after the last who calculated begins. */
  readonly passOn: boolean;
}

/**
 * Shares the four roles among those who are here, in the order of the team from the one who calculates. Passed on, the
 * next one calculates, so that over the days everybody has every role; those who are absent are stepped over.
 */
export function shareRoles({ before, members, day, passOn }: SharedRoles): TeamMembers {
  const present = members.filter(({ absent }) => !absent).map(({ name }) => name);
  const first = present.indexOf(whoCalculates({ before, members, passOn }) ?? '');
  const given = new Map<string, string[]>();
  if (present.length > 0) {
    roles.forEach((role, place) => {
      const name = present[(Math.max(first, 0) + place) % present.length] ?? '';
      given.set(name, [...(given.get(name) ?? []), role]);
    });
  }
  return {
    day,
    members: members.map(({ name, absent }) => {
      const own = (before.members.find((one) => one.name === name)?.roles ?? []).filter((role) => !ours.includes(role));
      const shared = absent ? [] : (given.get(name) ?? [membersTexts.helps]);
      return { name, absent, roles: [...shared, ...own] };
    }),
  };
}

/** The next person here from the last who calculated, in the order that the team had then. */
function whoCalculates({ before, members, passOn }: Omit<SharedRoles, 'day'>): string | undefined {
  const order = before.members.map(({ name }) => name);
  const last = before.members.findIndex((member) => member.roles.includes(calculates));
  const isHere = (name: string) => members.some((member) => member.name === name && !member.absent);
  if (last < 0) return undefined;
  const from = last + (passOn ? 1 : 0);
  return order.map((_, step) => order[(from + step) % order.length] ?? '').find(isHere);
}
