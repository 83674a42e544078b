import type { TeamMembers } from './teamMembers.ts';

/** The team as it counts on a day: an absence that was said of another day is over. */
export const membersOn = (team: TeamMembers, day: string): TeamMembers =>
  team.day === '' || team.day === day
    ? team
    : { ...team, members: team.members.map((member) => ({ ...member, absent: false })) };
