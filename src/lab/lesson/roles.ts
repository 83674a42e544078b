/** How a team may split the work; offered in the column “who”, beside any name that people type. */
export const roles = ['calculates', 'writes', 'runs the bench', 'records'] as const;
