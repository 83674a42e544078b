import type { TeamMembersView } from '../../desk/views.ts';
import { memberWords } from '../../lab/members/memberWords.ts';

/** The people of a team in one line, each with what they do today. */
export const peopleWords = (members: TeamMembersView['members']): string => members.map(memberWords).join(' · ');
