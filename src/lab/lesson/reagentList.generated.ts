// Generated from tests/published/reagents.csv by `npm run build`; edit that file instead.

/** Formula | use in schools | name | acid or base. */
export const reagentList = `
HCl|concentrated: staff only|hydrochloric acid|acid
H2SO4|concentrated: staff only|sulfuric acid|acid
HNO3|concentrated: staff only|nitric acid|acid
H3PO4|concentrated: staff only|phosphoric acid|acid
CH3COOH|concentrated: staff only|acetic acid|acid
HCOOH|concentrated: staff only|formic acid|acid
HClO4|not for students|perchloric acid|acid
HF|not for students|hydrofluoric acid|acid
NH3|concentrated: staff only|ammonia solution|base
NaOH|concentrated: staff only|sodium hydroxide solution|base
KOH|concentrated: staff only|potassium hydroxide solution|base
`;
