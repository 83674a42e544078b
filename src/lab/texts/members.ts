/** Words of the cell that says who is in a team; what is read there is told in `members/readMembers.ts`. */
export const membersTexts = {
  /** Stands in the cell until somebody writes there. */
  heading: 'Your names',
  /** What stood there in sheets of earlier layouts. */
  earlierHeading: 'Who',
  absent: 'not here today',
  /** For a fifth person, when all roles are given. */
  helps: 'helps where needed',
  rolesOf: (day: string) => `roles of ${day}`,
} as const;
