// Generated from tests/published/reagents.csv by `npm run build`; edit that file instead.

/** Name | formula | g in 100 g of water near 20 °C, blank where unknown | formula that these grams are of | use in schools. */
export const soluteList = `
sodium chloride|NaCl|35.9|NaCl|
potassium chloride|KCl|34.2|KCl|
sodium hydroxide|NaOH|109|NaOH|solid: care, staff weigh out for younger students
potassium hydroxide|KOH|112|KOH|solid: care, staff weigh out for younger students
copper(II) sulfate pentahydrate|CuSO4·5H2O|20.1|CuSO4|
calcium chloride dihydrate|CaCl2·2H2O|74.5|CaCl2|
glucose|C6H12O6|91|C6H12O6|
sucrose|C12H22O11|203.9|C12H22O11|
potassium permanganate|KMnO4|6.4|KMnO4|
potassium chromate|K2CrO4|63.7|K2CrO4|not for students as solid; staff-made dilute solution at most
potassium dichromate|K2Cr2O7|12.3|K2Cr2O7|not for students
cobalt(II) chloride hexahydrate|CoCl2·6H2O|52.9|CoCl2|not for students as solid; dilute solution or paper only
nickel(II) sulfate hexahydrate|NiSO4·6H2O||NiSO4·6H2O|not for students as solid; dilute solution only
sodium carbonate|Na2CO3|21.5|Na2CO3|
sodium hydrogen carbonate|NaHCO3|9.6|NaHCO3|
silver nitrate|AgNO3|216|AgNO3|
lead(II) nitrate|Pb(NO3)2|54.3|Pb(NO3)2|not for students as solid; staff-made dilute solution at most
potassium iodide|KI|144|KI|
sodium thiosulfate pentahydrate|Na2S2O3·5H2O|70.1|Na2S2O3|
iron(III) nitrate nonahydrate|Fe(NO3)3·9H2O|137.7|Fe(NO3)3·9H2O|
magnesium sulfate heptahydrate|MgSO4·7H2O|33.7|MgSO4|
ammonium chloride|NH4Cl|37.1|NH4Cl|
potassium nitrate|KNO3|31.6|KNO3|
citric acid|C6H8O7|147|C6H8O7|
citric acid monohydrate|C6H8O7·H2O||C6H8O7·H2O|
acetic acid (pure liquid as a solute)|CH3COOH||CH3COOH|concentrated: staff only
sodium acetate trihydrate|CH3COONa·3H2O|46.4|CH3COONa|
sodium sulfate|Na2SO4|19.5|Na2SO4|
sodium nitrate|NaNO3|87.2|NaNO3|
barium chloride dihydrate|BaCl2·2H2O|35.7|BaCl2|care: poisonous; dilute solution for students
iron(III) chloride hexahydrate|FeCl3·6H2O|91.8|FeCl3|
zinc sulfate heptahydrate|ZnSO4·7H2O|53.9|ZnSO4|
iron(II) sulfate heptahydrate|FeSO4·7H2O|26.3|FeSO4|
potassium bromide|KBr|65.1|KBr|
potassium carbonate|K2CO3|109.8|K2CO3|
ammonium sulfate|(NH4)2SO4|75.2|(NH4)2SO4|
magnesium nitrate|Mg(NO3)2|69.1|Mg(NO3)2|
potassium hydrogen phthalate|C8H5O4K|10.2|C8H5O4K|
oxalic acid dihydrate|H2C2O4·2H2O||H2C2O4·2H2O|
calcium carbonate|CaCO3|0.0013|CaCO3|
calcium hydroxide|Ca(OH)2|0.173|Ca(OH)2|
urea|CO(NH2)2|107.9|CO(NH2)2|
boric acid|H3BO3|4.72|H3BO3|not for students as solid (reproductive hazard)
disodium hydrogen phosphate|Na2HPO4|7.83|Na2HPO4|
`;
