/** One person of a team, by first name or initials, as typed. */
export interface Member {
  readonly name: string;
  /** Said to be absent; it counts for the day of the arrangement only. */
  readonly absent: boolean;
  /** What the person does: roles of ours, and words of the team’s own. */
  readonly roles: readonly string[];
}

/** Who is in a team, and who does what. */
export interface TeamMembers {
  readonly members: readonly Member[];
  /** Year-month-day of the arrangement, or empty where none is written. */
  readonly day: string;
}
