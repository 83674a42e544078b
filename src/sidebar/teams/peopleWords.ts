import type { TeamMembersView } from '../../host/calls.ts';
import { membersTexts } from '../../lab/texts/members.ts';

/** The people of a team in one line, each with what they do today. */
export const peopleWords = (members: TeamMembersView['members']): string =>
  members
    .map(({ name, absent, roles }) => {
      const said = [...(absent ? [membersTexts.absent] : []), ...roles];
      return said.length === 0 ? name : `${name}: ${said.join(', ')}`;
    })
    .join(' · ');
