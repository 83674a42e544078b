// Generated from tests/published/reagents.csv and hazard-limits.csv by `npm run build`; edit those files instead.

/**
 * Name | spellings of the formula | codes of the undiluted substance with their confidence (* for those that the limits
 * give at 100 %) | signal word | confidence | use in schools | limits in % by mass, each as
 * code,from,to,counted g/mol,confidence and flags (! an end that is taken the other way round: above, or up to and
 * with; n no limit known, * minimum class, p look at the pH, 2 or 3 category). Confidence: h harmonised in CLP Annex
 * VI as consolidated 2026-07-01, t two sources agree, o one source, m from memory.
 */
export const cautionList = `
hydrochloric acid|HCl|H290:o H314:h H335:h|Danger|h|concentrated: staff only|H314,25,,36.458,h;H315,10,25,36.458,h;H319,10,25,36.458,h;H335,10,,36.458,h;H290,,,36.458,on
sulfuric acid|H2SO4|H290:o H314:h|Danger|h|concentrated: staff only|H314,15,,98.072,h;H315,5,15,98.072,h;H319,5,15,98.072,h;H290,,,98.072,on
nitric acid|HNO3|H272:h H290:o H314:h H331:h EUH071:h|Danger|h|concentrated: staff only|H272,65,!70,63.012,h3;H314,20,,63.012,h;H314,5,20,63.012,h;H315,1,5,63.012,h;H318,3,5,63.012,h;H319,1,3,63.012,h;H331,26.5,,63.012,h;H332,13.25,26.5,63.012,h;EUH071,,,63.012,hn;H290,,,63.012,mn;H272,99,,63.012,h2;H272,70,99,63.012,h3;H330,!70,,63.012,h;H314,!70,,63.012,h
phosphoric acid|H3PO4|H290:o H314:h|Danger|h|concentrated: staff only|H314,25,,97.994,h;H315,10,25,97.994,h;H319,10,25,97.994,h;H290,,,97.994,mn
acetic acid|CH3COOH HC2H3O2 CH3CO2H HCH3COO HCH3CO2|H226:h H314:h|Danger|h|concentrated: staff only|H314,90,,60.052,h;H314,25,90,60.052,h;H315,10,25,60.052,h;H319,10,25,60.052,h;H226,,,60.052,hn
formic acid|HCOOH HCO2H HCHO2|H226:h H290:h H302:h H314:h H331:h EUH071:h|Danger|h|concentrated: staff only|H226,!85,,46.025,h;H314,90,,46.025,h;H314,10,90,46.025,h;H315,2,10,46.025,h;H318,10,,46.025,h;H319,2,10,46.025,h;H331,74,,46.025,h;H332,37,74,46.025,h;H302,25,,46.025,h;H290,,,46.025,hn;EUH071,,,46.025,hn
perchloric acid|HClO4|H271:h H314:h|Danger|h|not for students|H271,!50,,100.454,h;H272,,!50,100.454,h2;H314,50,,100.454,h;H314,10,50,100.454,h;H315,1,10,100.454,h;H319,1,10,100.454,h
hydrofluoric acid|HF|H300:h H310:h H314:h H330:h|Danger|h|not for students|H314,7,,20.006,h;H314,1,7,20.006,h;H319,0.1,1,20.006,h;H310,10,,20.006,h;H310,2.5,10,20.006,h;H311,0.5,2.5,20.006,h;H312,0.25,0.5,20.006,h;H300,10,,20.006,h*;H301,1.667,10,20.006,h*;H302,0.25,1.667,20.006,h*;H330,25,,20.006,h*;H331,5,25,20.006,h*;H332,2.5,5,20.006,h*
ammonia|NH3 NH4OH NH3·H2O|H314:h H335:o H400:h|Danger|h|concentrated: staff only|H335,5,,17.031,h;H314,5,,17.031,h;H315,1,5,17.031,h;H318,3,5,17.031,h;H319,1,3,17.031,h;H400,,,17.031,hn
sodium hydroxide|NaOH|H290:o H314:h|Danger|h|solid: care, staff weigh out for younger students|H314,5,,39.997,h;H314,2,5,39.997,h;H315,0.5,2,39.997,h;H319,0.5,2,39.997,h;H290,,,39.997,mn
potassium hydroxide|KOH|H290:o H302:h H314:h|Danger|h|solid: care, staff weigh out for younger students|H314,5,,56.105,h;H314,2,5,56.105,h;H315,0.5,2,56.105,h;H319,0.5,2,56.105,h;H302,25,,56.105,h*;H290,,,56.105,mn
hydrogen peroxide|H2O2|H302:h H318:o|Danger|h|concentrated: staff only|H271,70,,34.014,h;H272,50,70,34.014,h2;H314,70,,34.014,h;H314,50,70,34.014,h;H315,35,50,34.014,h;H318,8,50,34.014,h;H319,5,8,34.014,h;H335,35,,34.014,h;H302,25,,34.014,h*;H332,30,,34.014,h*
sodium chloride|NaCl|||o||
potassium chloride|KCl|||o||
copper(II) sulfate pentahydrate|CuSO4·5H2O|H302:h H318:h H410:h|Danger|h||H318,3,,249.677,h;H319,1,3,249.677,h;H302,24.05,,249.677,h;H400,2.5,,249.677,h;H410,25,,249.677,h;H411,2.5,25,249.677,h;H412,0.25,2.5,249.677,h
calcium chloride dihydrate|CaCl2·2H2O|H319:h|Warning|h||H319,10,,110.978,h
glucose|C6H12O6|||m||
sucrose|C12H22O11|||m||
potassium permanganate|KMnO4|H272:h H302:h H361d:h H410:h|Danger|h||H361d,3,,158.032,h;H302,25,,158.032,h*;H272,,,158.032,hn2;H410,,,158.032,hn
potassium chromate|K2CrO4|H315:h H317:h H319:h H335:h H340:h H350i:h H410:h|Danger|h|not for students as solid; staff-made dilute solution at most|H317,0.5,,115.992,h;H350i,0.1,,115.992,h;H340,0.1,,115.992,h;H315,10,,115.992,h;H319,10,,115.992,h;H335,5,,115.992,o;H410,,,115.992,hn
potassium dichromate|K2Cr2O7|H272:h H301:h H312:h H314:h H317:h H330:h H334:h H340:h H350:h H360FD:h H372:h H410:h|Danger|h|not for students|H335,5,,294.182,h;H350,0.1,,294.182,h;H340,0.1,,294.182,h;H360FD,0.3,,294.182,h;H372,10,,294.182,h;H373,1,10,294.182,h;H314,5,,294.182,h;H315,1,5,294.182,h;H318,3,5,294.182,h;H319,1,3,294.182,h;H334,0.2,,294.182,h;H317,0.2,,294.182,h;H301,33.33,,294.182,h*;H302,5,33.33,294.182,h*;H312,55,,294.182,h*;H330,10,,294.182,h*;H331,5,10,294.182,h*;H332,1,5,294.182,h*;H272,,,294.182,hn2;H410,,,294.182,hn
cobalt(II) chloride hexahydrate|CoCl2·6H2O|H302:h H317:h H334:h H341:h H350i:h H360F:h H410:h|Danger|h|not for students as solid; dilute solution or paper only|H350i,0.01,,58.933,h;H341,1,,58.933,h;H360F,0.3,,58.933,h;H334,1,,58.933,h;H317,1,,58.933,h;H302,25,,237.925,h*;H400,2.5,,58.933,h;H410,,,58.933,hn
nickel(II) sulfate hexahydrate|NiSO4·6H2O|H302:h H332:h H315:h H317:h H334:h H341:h H350i:h H360D:h H372:h H410:h|Danger|h|not for students as solid; dilute solution only|H372,1,,262.842,h;H373,0.1,1,262.842,h;H315,20,,262.842,h;H317,0.01,,262.842,h;H350i,0.1,,262.842,h;H341,1,,262.842,h;H360D,0.3,,262.842,h;H334,1,,262.842,h;H302,25,,262.842,h*;H332,30,,262.842,h*;H400,25,,262.842,h;H410,25,,262.842,h;H411,2.5,25,262.842,h;H412,0.25,2.5,262.842,h
sodium carbonate|Na2CO3|H319:h|Warning|h||H319,10,,105.988,hp
sodium hydrogen carbonate|NaHCO3|||o||
silver nitrate|AgNO3|H272:h H314:h H410:h|Danger|h||H314,5,,169.872,h;H315,1,5,169.872,h;H318,3,5,169.872,h;H319,1,3,169.872,h;H272,,,169.872,hn2;H410,,,169.872,hn
lead(II) nitrate|Pb(NO3)2|H272:o H302:h H317:o H318:o H332:h H351:o H360Df:h H372:o H410:h|Danger|h|not for students as solid; staff-made dilute solution at most|H360Df,0.3,,207.2,h;H361f,2.5,,207.2,h;H373,0.5,,207.2,h;H318,3,,331.208,o;H319,1,3,331.208,o;H351,1,,331.208,o;H317,1,,331.208,o;H372,10,,331.208,o;H373,1,10,331.208,o;H302,25,,331.208,h*;H332,30,,331.208,h*;H272,,,331.208,on2;H410,,,331.208,hn
potassium iodide|KI|H372:t|Danger|t||H372,10,,166.003,t;H373,1,10,166.003,t
sodium thiosulfate pentahydrate|Na2S2O3·5H2O|||o||
iron(III) nitrate nonahydrate|Fe(NO3)3·9H2O|H272:t H315:t H319:t H335:t|Danger|t||H315,10,,403.992,t;H319,10,,403.992,t;H335,20,,403.992,t;H272,,,403.992,tn2
magnesium sulfate heptahydrate|MgSO4·7H2O|||o||
ammonium chloride|NH4Cl|H302:h H319:h|Warning|h||H319,10,,53.489,h;H302,25,,53.489,h*
potassium nitrate|KNO3|H272:o|Warning|o||H272,,,101.102,on3
citric acid|C6H8O7 H3C6H5O7|H319:h H335:h|Warning|h||H319,10,,192.123,h;H335,20,,192.123,h
citric acid monohydrate|C6H8O7·H2O H3C6H5O7·H2O|H319:h H335:h|Warning|h||H319,10,,192.123,h;H335,20,,192.123,h
sodium acetate trihydrate|CH3COONa·3H2O NaCH3COO·3H2O NaC2H3O2·3H2O CH3CO2Na·3H2O NaCH3CO2·3H2O|||m||
sodium sulfate|Na2SO4|||m||
sodium nitrate|NaNO3|H272:t H319:t|Warning|t||H319,10,,84.994,t;H272,,,84.994,tn3
barium chloride dihydrate|BaCl2·2H2O|H301:h H332:h|Danger|h|care: poisonous; dilute solution for students|H301,33.33,,244.257,h*;H302,5,33.33,244.257,h*;H332,30,,244.257,h*
iron(III) chloride hexahydrate|FeCl3·6H2O|H290:t H302:t H315:t H317:t H318:t|Danger|t||H318,3,,270.285,t;H319,1,3,270.285,t;H315,10,,270.285,t;H317,1,,270.285,t;H302,25,,270.285,t;H290,,,270.285,mn
zinc sulfate heptahydrate|ZnSO4·7H2O|H302:h H318:h H410:h|Danger|h||H318,3,,287.541,h;H319,1,3,287.541,h;H302,25,,287.541,h*;H410,,,287.541,hn
iron(II) sulfate heptahydrate|FeSO4·7H2O|H302:h H315:h H319:h|Warning|h||H315,25,,278.006,h;H319,10,,278.006,h;H302,25,,278.006,h*
potassium bromide|KBr|H319:m|Warning|m||H319,10,,119.002,m
potassium carbonate|K2CO3|H315:t H319:t H335:t|Warning|t||H315,10,,138.205,t;H319,10,,138.205,t;H335,20,,138.205,t
ammonium sulfate|(NH4)2SO4|||o||
magnesium nitrate|Mg(NO3)2|H272:o|Warning|o||H272,,,148.313,on3
potassium hydrogen phthalate|C8H5O4K KHC8H4O4 KC8H5O4 C6H4(COOH)COOK|||m||
oxalic acid dihydrate|H2C2O4·2H2O (COOH)2·2H2O|H302:h H312:h H318:o|Danger|h||H302,25,,126.064,h*;H312,55,,126.064,h*;H318,3,,126.064,o;H319,1,3,126.064,o
calcium carbonate|CaCO3|||o||
calcium hydroxide|Ca(OH)2|H315:t H318:t H335:t|Danger|t||H318,3,,74.092,tp;H319,1,3,74.092,tp;H315,10,,74.092,t;H335,20,,74.092,t
urea|CO(NH2)2 (NH2)2CO NH2CONH2|||o||
boric acid|H3BO3 B(OH)3|H360FD:h|Danger|h|not for students as solid (reproductive hazard)|H360FD,0.3,,61.831,h
disodium hydrogen phosphate|Na2HPO4|||o||
calcium chloride|CaCl2|*||h||H319,10,,110.978,h
sodium dichromate|Na2Cr2O7|*||h||H334,0.2,,261.965,h;H317,0.2,,261.965,h;H335,5,,261.965,h;H350,0.1,,261.965,h;H340,0.1,,261.965,h
ammonium dichromate|(NH4)2Cr2O7|*||h||H334,0.2,,252.062,h;H317,0.2,,252.062,h;H335,5,,252.062,h;H350,0.1,,252.062,h;H340,0.1,,252.062,h
sodium chromate|Na2CrO4|*||h||H334,0.2,,115.992,h;H317,0.2,,115.992,h;H350,0.1,,115.992,h;H340,0.1,,115.992,h
chromium trioxide|CrO3|*||h||H335,1,,99.993,h;H350,0.1,,99.993,h;H340,0.1,,99.993,h
cobalt(II) chloride|CoCl2|*||h||H350i,0.01,,58.933,h;H341,1,,58.933,h;H360F,0.3,,58.933,h;H334,1,,58.933,h;H317,1,,58.933,h;H302,25,,237.925,h*;H400,2.5,,58.933,h;H410,,,58.933,hn
cobalt(II) sulfate|CoSO4|*||h||H350i,0.01,,58.933,h;H341,1,,58.933,h;H360F,0.3,,58.933,h;H334,1,,58.933,h;H317,1,,58.933,h
cobalt(II) nitrate|Co(NO3)2|*||h||H350i,0.01,,58.933,h;H341,1,,58.933,h;H360F,0.3,,58.933,h;H334,1,,58.933,h;H317,1,,58.933,h
cobalt(II) acetate|Co(CH3COO)2 (CH3COO)2Co Co(C2H3O2)2|*||h||H350i,0.01,,58.933,h;H341,1,,58.933,h;H360F,0.3,,58.933,h;H334,1,,58.933,h;H317,1,,58.933,h
nickel(II) sulfate|NiSO4|*||h||H372,1,,262.842,h;H373,0.1,1,262.842,h;H315,20,,262.842,h;H317,0.01,,262.842,h;H350i,0.1,,262.842,h;H341,1,,262.842,h;H360D,0.3,,262.842,h;H334,1,,262.842,h;H302,25,,262.842,h*;H332,30,,262.842,h*;H400,25,,262.842,h;H410,25,,262.842,h;H411,2.5,25,262.842,h;H412,0.25,2.5,262.842,h
nickel(II) chloride|NiCl2|*||h||H372,1,,237.689,h;H373,0.1,1,237.689,h;H315,20,,237.689,h;H317,0.01,,237.689,h;H350i,0.1,,237.689,h;H341,1,,237.689,h;H360D,0.3,,237.689,h;H334,1,,237.689,h
nickel(II) nitrate|Ni(NO3)2|*||h||H372,1,,290.791,h;H373,0.1,1,290.791,h;H315,20,,290.791,h;H317,0.01,,290.791,h;H350i,0.1,,290.791,h;H341,1,,290.791,h;H360D,0.3,,290.791,h;H334,1,,290.791,h
barium chloride|BaCl2|*||h||H301,33.33,,244.257,h*;H302,5,33.33,244.257,h*;H332,30,,244.257,h*
hydrobromic acid|HBr|*||h||H314,40,,80.912,h;H315,10,40,80.912,h;H319,10,40,80.912,h;H335,10,,80.912,h
sodium hypochlorite|NaOCl NaClO|*||h||H314,5,,,h;H315,1,5,,h;H318,3,5,,h;H319,1,3,,h;EUH031,5,,,h;H400,2.5,,,h;H410,25,,,h;H411,2.5,25,,h;H412,0.25,2.5,,h
calcium hypochlorite|Ca(OCl)2 Ca(ClO)2|*||h||H314,5,,142.983,h;H315,1,5,142.983,h;H318,3,5,142.983,h;H319,0.5,3,142.983,h;H302,25,,142.983,h*
zinc chloride|ZnCl2|*||h||H335,5,,136.286,h;H314,5,,136.286,h;H315,1,5,136.286,h;H318,3,5,136.286,h;H319,1,3,136.286,h;H302,25,,136.286,h*;H410,,,136.286,hn
`;
