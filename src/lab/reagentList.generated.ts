// Generated from tests/published/reagents.csv by `npm run build`; edit that file instead.

/** Formula | use in schools. */
export const reagentList = `
HCl|concentrated: staff only
H2SO4|concentrated: staff only
HNO3|concentrated: staff only
H3PO4|concentrated: staff only
CH3COOH|concentrated: staff only
HCOOH|concentrated: staff only
HClO4|not for students
HF|not for students
NH3|concentrated: staff only
NaOH|concentrated: staff only
KOH|concentrated: staff only
`;
