// Generated from tests/published/substances.csv and hazard-limits.csv by `npm run build`; edit those files instead.

/** State of CLP Annex VI that the figures were read from. */
export const hazardDataDate = '2026-07-01';

/**
 * Name | spellings of the formula | other names | s solid, l liquid, or the mass percent of the solution that is sold |
 * codes as sold, with their confidence where it is not that of the substance | confidence, then where it goes (d down
 * the drain, with a number up to that strength, b waste beaker, n never down the drain) | use in schools | limits in %
 * by mass, each as code,from,to,counted g/mol (blank: as weighed),confidence and flags (! an end that is taken the
 * other way round: above, or up to and with; n no limit known, * minimum class, p look at the pH, 2 or 3 category).
 * Confidence: h harmonised in CLP Annex VI, t two sources agree, o one source, m from memory.
 */
export const cautionList = `
hydrochloric acid|HCl H3OCl|muriatic acid|37|H290:o H314 H335|hb|concentrated: staff only|H314,25,,36.458,h;H315,10,25,36.458,h;H319,10,25,36.458,h;H335,10,,36.458,h;H290,,,36.458,on
sulfuric acid|H2SO4 SO4H2|oil of vitriol|96|H290:o H314|hb|concentrated: staff only|H314,15,,98.072,h;H315,5,15,98.072,h;H319,5,15,98.072,h;H290,,,98.072,on
nitric acid|HNO3 NO3H|aqua fortis|65|H272/3 H290:m H314 H331 EUH071|hb|concentrated: staff only|H315,1,5,63.012,h;H318,3,5,63.012,h;H319,1,3,63.012,h;H331,26.5,,63.012,h;H332,13.25,26.5,63.012,h;H272,65,70,63.012,h3;H314,5,,63.012,h;EUH071,,,63.012,hn;H290,,,63.012,mn;H272,99,,63.012,h2;H272,70,99,63.012,h3;H330,!70,,63.012,h;H314,!70,,63.012,h
phosphoric acid|H3PO4 PO4H3|orthophosphoric acid|85|H290:m H314|hb|concentrated: staff only|H314,25,,97.994,h;H315,10,25,97.994,h;H319,10,25,97.994,h;H290,,,97.994,mn
acetic acid|CH3COOH C2H4O2 HC2H3O2 CH3CO2H HCH3COO HCH3CO2|hoac;acoh;hac;ethanoic acid|l|H226 H290:o H314|hb|concentrated: staff only|H314,25,,60.052,h;H315,10,25,60.052,h;H319,10,25,60.052,h;H226,,,60.052,hn;H290,,,60.052,on
formic acid|HCOOH CH2O2 HCO2H HCHO2|methanoic acid|98|H226 H290 H302 H314 H331 EUH071|hb|concentrated: staff only|H331,74,,46.025,h;H332,37,74,46.025,h;H302,25,,46.025,h;H226,85,,46.025,h;H314,10,,46.025,h;H315,2,10,46.025,h;H319,2,10,46.025,h;H318,10,,46.025,h;EUH071,,,46.025,hn;H290,,,46.025,hn
citric acid|C6H8O7·H2O C6H8O7 H3C6H5O7 C3H4(OH)(COOH)3|h3cit|s|H319 H335|hb||H319,10,,,h;H335,20,,,h
oxalic acid dihydrate|H2C2O4·2H2O H2C2O4 (COOH)2 (COOH)2·2H2O C2H2O4 HOOCCOOH C2O4H2|oxalic acid;ethanedioic acid|s|H302 H312 H318:o|hb||H302,25,,,h*;H312,55,,,h*;H318,3,,,o;H319,1,3,,o
tartaric acid|C4H6O6 H2C4H4O6 HOOC(CHOH)2COOH|h2tar;2,3-dihydroxybutanedioic acid|s|H318|ob||H318,3,,,o;H319,1,3,,o
ascorbic acid|C6H8O6 H2C6H6O6 HC6H7O6|ascorbate;vitamin c|s||md||
boric acid|H3BO3 B(OH)3 BH3O3||s|H360FD|hb|not for students as solid (reproductive hazard)|H360FD,0.3,,61.831,h
sulfamic acid|NH2SO3H H3NSO3 H2NSO3H HSO3NH2|amidosulfuric acid|s|H315 H319 H412|hb||H315,10,,,h;H319,10,,,h;H412,25,,,h
salicylic acid|C7H6O3 HOC6H4COOH C6H4(OH)COOH|2-hydroxybenzoic acid|s|H302 H318 H361d|hb||H361d,3,,,h;H302,25,,,h;H318,3,,,h;H319,1,3,,h
sodium hydroxide|NaOH Na(OH) HONa NaHO|caustic soda;lye|s|H290:o H314|hb|solid: care, staff weigh out for younger students|H314,2,,39.997,h;H315,0.5,2,39.997,h;H319,0.5,2,39.997,h;H290,,,39.997,on
potassium hydroxide|KOH K(OH) KHO HOK|caustic potash|s|H290:o H302 H314|hb|solid: care, staff weigh out for younger students|H302,25,,56.105,h*;H314,2,,56.105,h;H315,0.5,2,56.105,h;H319,0.5,2,56.105,h;H290,,,56.105,on
ammonia|NH3 NH4OH NH3·H2O|ammonium hydroxide;ammonia water|25|H290:o H314 H335 H400|hb|concentrated: staff only|H314,5,,17.031,h;H315,1,5,17.031,h;H318,3,5,17.031,h;H319,1,3,17.031,h;H335,5,,17.031,h;H400,,,17.031,hn;H290,,,,on
calcium hydroxide|Ca(OH)2 CaO2H2 Ca(HO)2|slaked lime;lime water|s|H315 H318 H335|tb||H315,10,,,tp;H318,3,,,tp;H319,1,3,,tp;H335,20,,,t
barium hydroxide octahydrate|Ba(OH)2·8H2O Ba(OH)2|barium hydroxide;baryta|s|H302 H314:m H332|hn|care: poisonous; dilute solution for students|H302,25,,,h*;H332,30,,,h*;H314,5,,,mp;H315,1,5,,mp;H318,3,5,,mp;H319,1,3,,mp
lithium hydroxide monohydrate|LiOH·H2O LiOH|lithium hydroxide|s|H302 H314|ob|solid: care, staff weigh out|H302,25,,,o;H314,5,,,o;H315,1,5,,o;H318,3,5,,o;H319,1,3,,o
sodium carbonate|Na2CO3 Na2CO3·10H2O Na2CO3·H2O CO3Na2|soda ash;washing soda|s|H319|hb||H319,10,,,hp
sodium hydrogen carbonate|NaHCO3 HNaCO3 CO3HNa|baking soda;bicarbonate|s||td||
potassium carbonate|K2CO3 K2CO3·1·5H2O CO3K2|potash|s|H315 H319 H335|tb||H315,10,,,t;H319,10,,,t;H335,20,,,t
potassium hydrogen carbonate|KHCO3 HKCO3 CO3HK||s||od||
sodium chloride|NaCl ClNa|table salt;halite|s||td||
sodium bromide|NaBr BrNa NaBr·2H2O||s||od||
sodium iodide|NaI INa NaI·2H2O||s|H315 H319 H372:m H400|ob||H315,10,,,o;H319,10,,,o;H372,10,,,m;H373,1,10,,m;H400,,,,on
sodium fluoride|NaF FNa||s|H301 H315 H319 EUH032:m|hb||H301,33.33,,,h*;H302,5,33.33,,h*;H315,10,,,h;H319,10,,,h;EUH032,,,,mn
sodium sulfate|Na2SO4 Na2SO4·10H2O SO4Na2|glauber salt|s||td||
sodium hydrogen sulfate|NaHSO4·H2O NaHSO4 HNaSO4|sodium bisulfate|s|H318|hb||H318,3,,,hp;H319,1,3,,hp
sodium sulfite|Na2SO3 Na2SO3·7H2O SO3Na2||s|EUH031|mb||EUH031,,,,mn
sodium metabisulfite|Na2S2O5 S2O5Na2|metabisulfite;pyrosulfite|s|H302 H318 EUH031:m|hb||H302,25,,,h*;H318,3,,,h;H319,1,3,,h;EUH031,,,,mn
sodium hydrogensulfite|NaHSO3 HNaSO3|sodium bisulfite|39|H302 EUH031:m|hb||H302,25,,,h*;EUH031,,,,mn
sodium thiosulfate pentahydrate|Na2S2O3·5H2O Na2S2O3 S2O3Na2|sodium thiosulfate;hypo|s||td||
sodium nitrate|NaNO3 NO3Na|chile saltpetre|s|H272/3 H319|td||H319,10,,,t;H272,,,,tn3
sodium nitrite|NaNO2 NO2Na||s|H272/3 H301 H400|hb||H301,33.33,,,h*;H302,5,33.33,,h*;H272,,,,hn3;H400,,,,hn
trisodium phosphate|Na3PO4·12H2O Na3PO4 PO4Na3|tsp|s|H314 H335|ob||H314,5,,,op;H315,1,5,,op;H318,3,5,,op;H319,1,3,,op;H335,20,,,o
disodium hydrogen phosphate|Na2HPO4 Na2HPO4·2H2O Na2HPO4·7H2O Na2HPO4·12H2O HNa2PO4|dsp|s||od||
sodium dihydrogen phosphate|NaH2PO4·H2O NaH2PO4 NaH2PO4·2H2O H2NaPO4||s||md||
sodium acetate|CH3COONa·3H2O NaCH3COO NaC2H3O2 CH3CO2Na C2H3NaO2 CH3COONa C2H3O2Na NaCH3CO2|naoac;naac|s||od||
trisodium citrate dihydrate|Na3C6H5O7·2H2O Na3C6H5O7 C6H5Na3O7|trisodium citrate;na3cit|s||md||
sodium oxalate|Na2C2O4 (COONa)2 C2Na2O4 C2O4Na2 NaOOCCOONa||s|H302 H312|mb||H302,25,,,m*;H312,55,,,m*
borax|Na2B4O7·10H2O Na2B4O7 B4O7Na2 Na2(B4O5(OH)4)·8H2O||s|H319:o H360FD|hb|not for students as solid (reproductive hazard)|H360FD,0.3,,381.363,h;H319,10,,381.363,o
sodium hypochlorite|NaClO NaOCl ClONa|bleach;sodium chlorate(i)|10|H314 H410 EUH031|hb||H314,5,,70.906,h;H315,1,5,70.906,h;H318,3,5,70.906,h;H319,1,3,70.906,h;H400,2.5,,70.906,h;H410,25,,70.906,h;H411,2.5,25,70.906,h;H412,0.25,2.5,70.906,h;EUH031,5,,70.906,h
potassium chloride|KCl ClK||s||td||
potassium bromide|KBr BrK||s|H319|td||H319,10,,,t
potassium iodide|KI IK||s|H372|tb||H372,10,,,t;H373,1,10,,t
potassium fluoride|KF FK KF·2H2O||s|H301 H311 H331|hb|concentrated and solid: staff only|H301,33.33,,,h*;H302,5,33.33,,h*;H311,30,,,h*;H312,15,30,,h*;H331,50,,,h*;H332,10,50,,h*
potassium sulfate|K2SO4 SO4K2||s||td||
potassium hydrogen sulfate|KHSO4 HKSO4||s|H314 H335|hb||H314,5,,,hp;H315,1,5,,hp;H318,3,5,,hp;H319,1,3,,hp;H335,20,,,h
potassium nitrate|KNO3 NO3K|saltpetre|s|H272/3|td||H272,,,,tn3
potassium dihydrogen phosphate|KH2PO4 H2KPO4 PO4H2K||s||od||
dipotassium hydrogen phosphate|K2HPO4 HK2PO4 K2HPO4·3H2O||s||od||
potassium hydrogen phthalate|KHC8H4O4 C8H5KO4 C8H5O4K KC8H5O4 HOOCC6H4COOK C6H4(COOH)COOK C6H4(COOK)COOH|khp;khph;khphth|s||od||
potassium iodate|KIO3 IO3K||s|H272 H302 H315 H318 H335|tb||H302,25,,,t;H315,10,,,t;H318,3,,,t;H319,1,3,,t;H335,20,,,t;H272,,,,tn2
potassium chlorate|KClO3 ClO3K|potassium chlorate(v)|s|H271 H301|hb|not for students|H301,33.33,,,h;H302,5,33.33,,h;H271,,,,hn
potassium permanganate|KMnO4 MnO4K||s|H272 H302 H361d H410|hn||H361d,3,,,h;H302,25,,,h*;H272,,,,hn2;H410,,,,hn;H314,5,,,m;H373,10,,,m
potassium chromate|K2CrO4 CrO4K2||s|H315 H317 H319 H335:o H340 H350i H410|hn|not for students as solid; staff-made dilute solution at most|H350i,0.1,,115.992,h;H340,0.1,,115.992,h;H319,10,,,h;H315,10,,,h;H317,0.5,,115.992,h;H335,5,,115.992,o;H410,,,,hn
potassium dichromate|K2Cr2O7 Cr2O7K2||s|H272 H301 H312 H314 H317 H330 H334 H340 H350 H360FD H372 H410|hn|not for students|H350,0.1,,,h;H340,0.1,,,h;H360FD,0.3,,,h;H330,10,,,h*;H331,5,10,,h*;H332,1,5,,h*;H301,33.33,,,h*;H302,5,33.33,,h*;H372,10,,,h;H373,1,10,,h;H312,55,,,h*;H314,5,,,h;H315,1,5,,h;H318,3,5,,h;H319,1,3,,h;H335,5,,,h;H272,,,,hn2;H410,,,,hn;H334,0.2,1,,o;H334,1,,,h;H317,0.2,1,,o;H317,1,,,h
potassium thiocyanate|KSCN SCNK KNCS KCNS|potassium rhodanide|s|H302 H312 H332 H412 EUH032|tb||H302,25,,,t*;H312,55,,,t*;H332,30,,,t*;H412,25,,,t;EUH032,,,,tn
potassium hexacyanoferrate(II)|K4[Fe(CN)6]·3H2O K4(Fe(CN)6)·3H2O K4Fe(CN)6 K4(Fe(CN)6) K4Fe(CN)6·3H2O|potassium ferrocyanide|s|H412 EUH032|on||H412,25,,,o;EUH032,,,,on
potassium hexacyanoferrate(III)|K3[Fe(CN)6] K3(Fe(CN)6) K3Fe(CN)6|potassium ferricyanide|s|H411 EUH032|tn||H411,25,,,t;H412,2.5,25,,t;EUH032,,,,tn
potassium aluminium sulfate dodecahydrate|KAl(SO4)2·12H2O KAl(SO4)2 AlK(SO4)2 AlK(SO4)2·12H2O|potassium aluminium sulfate;k2so4·al2(so4)3·24h2o;alum;potash alum|s||od||
potassium chromium(III) sulfate dodecahydrate|KCr(SO4)2·12H2O KCr(SO4)2 CrK(SO4)2·12H2O|potassium chromium(iii) sulfate;chrome alum|s|H315 H319|mn||H315,10,,,m;H319,10,,,m
potassium peroxodisulfate|K2S2O8 S2O8K2|potassium persulfate|s|H272/3 H302 H315 H317 H319 H334 H335|hb||H302,25,,,h*;H335,20,,,h;H315,10,,,h;H319,10,,,h;H334,1,,,h;H317,1,,,h;H272,,,,hn3
potassium sodium tartrate tetrahydrate|KNaC4H4O6·4H2O NaKC4H4O6 KNaC4H4O6 C4H4KNaO6·4H2O|potassium sodium tartrate;rochelle salt;seignette salt|s||md||
potassium hydrogen tartrate|KHC4H4O6 C4H5KO6|khtar;cream of tartar|s||md||
ammonium chloride|NH4Cl ClNH4|sal ammoniac|s|H302 H319|hb||H302,25,,,h*;H319,10,,,h
ammonium nitrate|NH4NO3 N2H4O3 NO3NH4||s|H272/3 H315 H319 H371|tb|solid: staff weigh out, small stock|H319,10,,,t;H315,10,,,t;H371,10,,,t;H272,,,,tn3
ammonium sulfate|(NH4)2SO4 N2H8SO4 SO4(NH4)2||s||ob||
ammonium iron(II) sulfate hexahydrate|(NH4)2Fe(SO4)2·6H2O Fe(NH4)2(SO4)2 (NH4)2Fe(SO4)2 FeSO4·(NH4)2SO4·6H2O Fe(NH4)2(SO4)2·6H2O|ammonium iron(ii) sulfate;mohr salt|s|H315 H319 H335|td||H315,10,,,t;H319,10,,,t;H335,20,,,t
ammonium iron(III) sulfate dodecahydrate|NH4Fe(SO4)2·12H2O FeNH4(SO4)2 NH4Fe(SO4)2 Fe(NH4)(SO4)2·12H2O|ammonium iron(iii) sulfate;ferric alum|s|H315 H319 H335|md||H315,10,,,m;H319,10,,,m;H335,20,,,m
ammonium carbonate or hydrogen carbonate|NH4HCO3|(nh4)2co3;nh4hco3·nh2coonh4;ammonium hydrogencarbonate|s|H302|mb||H302,25,,,m
ammonium oxalate monohydrate|(NH4)2C2O4·H2O (NH4)2C2O4 (COONH4)2·H2O|ammonium oxalate|s|H302 H312|mb||H302,25,,,m*;H312,55,,,m*
ammonium thiocyanate|NH4SCN NH4NCS NH4CNS||s|H302 H312 H332 H412 EUH032|tb||H302,25,,,t*;H312,55,,,t*;H332,30,,,t*;H412,25,,,t;EUH032,,,,tn
ammonium acetate|CH3COONH4 NH4CH3COO NH4C2H3O2 C2H7NO2|nh4oac;nh4ac|s||ob||
ammonium dihydrogen phosphate|NH4H2PO4 H2NH4PO4|map|s||mb||
magnesium chloride hexahydrate|MgCl2·6H2O MgCl2 Cl2Mg|magnesium chloride|s||td||
magnesium sulfate heptahydrate|MgSO4·7H2O MgSO4 SO4Mg|magnesium sulfate;epsom salt|s||td||
magnesium nitrate hexahydrate|Mg(NO3)2·6H2O Mg(NO3)2 MgN2O6|magnesium nitrate|s|H272/3 H315 H319 H335|od||H315,10,,,o;H319,10,,,o;H335,20,,,o;H272,,,,on3
calcium chloride|CaCl2·2H2O CaCl2 CaCl2·6H2O Cl2Ca||s|H319|hd||H319,10,,110.978,h
calcium nitrate tetrahydrate|Ca(NO3)2·4H2O Ca(NO3)2 CaN2O6|calcium nitrate|s|H272/3 H302 H318|td||H302,25,,,t;H318,3,,,t;H319,1,3,,t;H272,,,,tn3
calcium carbonate|CaCO3 CO3Ca|chalk;limestone|s||tb||
calcium sulfate|CaSO4·2H2O CaSO4 CaSO4·0·5H2O|gypsum;plaster|s||tn||
strontium chloride hexahydrate|SrCl2·6H2O SrCl2|strontium chloride|s|H318|ob||H318,3,,,o;H319,1,3,,o
strontium nitrate|Sr(NO3)2 SrN2O6 Sr(NO3)2·4H2O||s|H272/3 H318|mb||H318,3,,,m;H319,1,3,,m;H272,,,,mn3
barium chloride dihydrate|BaCl2·2H2O BaCl2 Cl2Ba|barium chloride|s|H301 H332|hn|care: poisonous; dilute solution for students|H301,33.33,,,h*;H302,5,33.33,,h*;H332,30,,,h*
barium nitrate|Ba(NO3)2 BaN2O6||s|H272 H301 H319 H332|mn|not for students as solid; dilute solution only|H301,33.33,,,m;H302,5,33.33,,m;H332,30,,,m*;H319,10,,,m;H272,,,,mn2
lithium chloride|LiCl ClLi LiCl·H2O||s|H302 H315 H319|ob||H302,25,,,o;H315,10,,,o;H319,10,,,o
aluminium chloride hexahydrate|AlCl3·6H2O Cl3Al·6H2O|aluminium chloride|s|H290 H315 H318|mb||H315,10,,,m;H318,3,,,m;H319,1,3,,m;H290,,,,mn
aluminium chloride, anhydrous|AlCl3 Cl3Al|aluminium chloride|s|H314|hb|not for students as solid|H314,5,,,h;H315,1,5,,h;H318,3,5,,h;H319,1,3,,h
aluminium sulfate|Al2(SO4)3·18H2O Al2(SO4)3 Al2(SO4)3·16H2O Al2S3O12||s|H290:m H318|ob||H318,3,,,o;H319,1,3,,o;H290,,,,mn
aluminium nitrate nonahydrate|Al(NO3)3·9H2O Al(NO3)3 AlN3O9|aluminium nitrate|s|H272/3 H315 H318|mb||H315,10,,,m;H318,3,,,m;H319,1,3,,m;H272,,,,mn3
iron(II) sulfate heptahydrate|FeSO4·7H2O SO4Fe·7H2O|iron(ii) sulfate;green vitriol|s|H302 H315 H319|hd||H302,25,,,h*;H319,10,,,h;H315,25,,,h
iron(II) sulfate|FeSO4 FeSO4·H2O SO4Fe||s|H302 H315 H319|hd||H302,25,,,h*;H319,10,,,h;H315,10,,,h
iron(II) chloride tetrahydrate|FeCl2·4H2O FeCl2|iron(ii) chloride|s|H290 H302 H315 H318|md||H302,25,,,m;H315,10,,,m;H318,3,,,m;H319,1,3,,m;H290,,,,mn
iron(III) chloride|FeCl3·6H2O FeCl3 Cl3Fe||s|H290 H302 H315 H317 H318|tb||H302,25,,,t;H315,10,,,t;H318,3,,,t;H319,1,3,,t;H317,1,,,t;H290,,,,tn
iron(III) nitrate nonahydrate|Fe(NO3)3·9H2O Fe(NO3)3 FeN3O9|iron(iii) nitrate|s|H272 H315 H319 H335|td||H315,10,,,t;H319,10,,,t;H335,20,,,t;H272,,,,tn2
copper(II) sulfate pentahydrate|CuSO4·5H2O SO4Cu·5H2O|copper(ii) sulfate;blue vitriol|s|H302 H318 H410|hn||H302,24.05,,,h;H318,3,,,h;H319,1,3,,h;H400,2.5,,,h;H410,25,,,h;H411,2.5,25,,h;H412,0.25,2.5,,h
copper(II) sulfate, anhydrous|CuSO4 SO4Cu|copper(ii) sulfate;white copper sulfate|s|H302 H315 H319 H410|hn||H302,25,,,h*;H315,10,,,h;H319,10,,,h;H410,,,,hn;H318,3,,249.677,o;H319,1,3,249.677,o;H400,2.5,,249.677,o;H410,25,,249.677,o;H411,2.5,25,249.677,o;H412,0.25,2.5,249.677,o
copper(II) chloride dihydrate|CuCl2·2H2O CuCl2 Cl2Cu|copper(ii) chloride;cupric chloride|s|H301 H312 H315 H318 H335 H410|tn||H301,33.33,,,t;H302,5,33.33,,t;H312,55,,,t;H315,10,,,t;H318,3,,,t;H319,1,3,,t;H335,20,,,t;H410,,,,tn
copper(II) nitrate trihydrate|Cu(NO3)2·3H2O Cu(NO3)2 Cu(NO3)2·2·5H2O Cu(NO3)2·6H2O CuN2O6|copper(ii) nitrate|s|H272 H302 H315 H318 H410:m|tn||H302,25,,,t;H315,10,,,t;H318,3,,,t;H319,1,3,,t;H272,,,,tn2;H410,,,,mn
zinc sulfate heptahydrate|ZnSO4·7H2O ZnSO4 SO4Zn|zinc sulfate|s|H302 H318 H410|hn||H302,25,,,h*;H318,3,,,h;H319,1,3,,h;H410,,,,hn
zinc chloride|ZnCl2 Cl2Zn||s|H302 H314 H335 H410|hn||H314,5,,,h;H315,1,5,,h;H318,3,5,,h;H319,1,3,,h;H302,25,,,h*;H335,5,,,h;H410,,,,hn
zinc nitrate hexahydrate|Zn(NO3)2·6H2O Zn(NO3)2 ZnN2O6|zinc nitrate|s|H272 H302 H315 H319 H335 H410:m|tn||H302,25,,,t;H315,10,,,t;H319,10,,,t;H335,20,,,t;H272,,,,tn2;H410,,,,mn
manganese(II) sulfate|MnSO4·H2O MnSO4 MnSO4·4H2O SO4Mn||s|H373 H411|hn||H373,10,,,h*;H411,25,,,h;H412,2.5,25,,h;H318,3,,,m
manganese(II) chloride tetrahydrate|MnCl2·4H2O MnCl2|manganese(ii) chloride|s|H301 H318 H373 H411|mn||H301,33.33,,,m;H302,5,33.33,,m;H318,3,,,m;H319,1,3,,m;H373,10,,,m;H411,25,,,m;H412,2.5,25,,m
cobalt(II) chloride hexahydrate|CoCl2·6H2O CoCl2 Cl2Co|cobalt(ii) chloride|s|H302 H317 H334 H341 H350i H360F H410|hn|not for students as solid; dilute solution or paper only|H341,1,,58.933,h;H360F,0.3,,58.933,h;H302,25,,,h*;H334,1,,58.933,h;H317,1,,58.933,h;H400,2.5,,58.933,h;H350i,0.01,,58.933,h;H410,,,58.933,hn
cobalt(II) sulfate|CoSO4·7H2O CoSO4||s|H302 H317 H334 H341 H350i H360F H410|hn|not for students as solid; dilute solution or paper only|H341,1,,58.933,h;H360F,0.3,,58.933,h;H302,25,,,h*;H334,1,,58.933,h;H317,1,,58.933,h;H400,2.5,,58.933,h;H350i,0.01,,58.933,h;H410,,,58.933,hn
cobalt(II) nitrate|Co(NO3)2·6H2O Co(NO3)2||s|H272/3:m H317 H334 H341 H350i H360F H410|hn|not for students as solid; dilute solution or paper only|H341,1,,58.933,h;H360F,0.3,,58.933,h;H334,1,,58.933,h;H317,1,,58.933,h;H400,2.5,,58.933,h;H350i,0.01,,58.933,h;H272,,,,mn3;H410,,,58.933,hn
nickel(II) sulfate hexahydrate|NiSO4·6H2O NiSO4 NiSO4·7H2O|nickel(ii) sulfate|s|H302 H315 H317 H332 H334 H341 H350i H360D H372 H410|hn|not for students as solid; dilute solution only|H350i,0.1,,,h;H341,1,,,h;H360D,0.3,,,h;H332,30,,,h*;H302,25,,,h*;H334,1,,,h;H400,25,,,h;H410,25,,,h;H411,2.5,25,,h;H412,0.25,2.5,,h;H372,1,,,h;H373,0.1,1,,h;H315,20,,,h;H317,0.01,,,h
nickel(II) chloride|NiCl2·6H2O NiCl2||s|H301 H315 H317 H331 H334 H341 H350i H360D H372 H410|hn|not for students as solid; dilute solution only|H350i,0.1,,,h;H341,1,,,h;H360D,0.3,,,h;H331,50,,,h*;H332,10,50,,h*;H301,33.33,,,h*;H302,5,33.33,,h*;H334,1,,,h;H400,25,,,h;H410,25,,,h;H411,2.5,25,,h;H412,0.25,2.5,,h;H372,1,,,h;H373,0.1,1,,h;H315,20,,,h;H317,0.01,,,h
nickel(II) nitrate|Ni(NO3)2·6H2O Ni(NO3)2||s|H272 H302 H315 H317 H318 H332 H334 H341 H350i H360D H372 H410|hn|not for students as solid; dilute solution only|H350i,0.1,,,h;H341,1,,,h;H360D,0.3,,,h;H332,30,,,h*;H302,25,,,h*;H318,3,,,h;H319,1,3,,h;H334,1,,,h;H400,25,,,h;H410,25,,,h;H411,2.5,25,,h;H412,0.25,2.5,,h;H372,1,,,h;H373,0.1,1,,h;H315,20,,,h;H317,0.01,,,h;H272,,,,hn2
chromium(III) chloride hexahydrate|CrCl3·6H2O CrCl3 (Cr(H2O)4Cl2)Cl·2H2O|chromium(iii) chloride|s|H302 H317|mn||H302,25,,,m;H317,1,,,m
silver nitrate|AgNO3 NO3Ag|lunar caustic|s|H272 H290:o H314 H410|hn||H314,5,,,h;H315,1,5,,h;H318,3,5,,h;H319,1,3,,h;H272,,,,hn2;H290,,,,on;H410,,,,hn
lead(II) nitrate|Pb(NO3)2 PbN2O6 (NO3)2Pb||s|H272:o H302 H317:o H318:o H332 H351:o H360Df H372:o H410|hn|not for students as solid; staff-made dilute solution at most|H360Df,0.3,,207.2,h;H372,10,,,o;H317,1,,,o;H351,1,,,o;H302,25,,,h*;H332,30,,,h*;H318,3,,,o;H319,1,3,,o;H373,0.5,,207.2,h;H361f,2.5,,207.2,h;H272,,,,on2;H410,,,207.2,hn
lead(II) acetate trihydrate|Pb(CH3COO)2·3H2O Pb(CH3COO)2 Pb(C2H3O2)2 (CH3COO)2Pb|lead(ii) acetate;pb(oac)2|s|H360Df H373 H410|hn|not for students as solid; staff-made dilute solution at most|H360Df,0.3,,207.2,h;H373,10,,207.2,h*;H410,,,207.2,hn
tin(II) chloride dihydrate|SnCl2·2H2O SnCl2|tin(ii) chloride|s|H290 H302 H314 H317 H332 H335 H373 H412|mn||H302,25,,,m;H332,30,,,m;H314,5,,,m;H315,1,5,,m;H318,3,5,,m;H319,1,3,,m;H317,1,,,m;H335,20,,,m;H373,10,,,m;H412,25,,,m;H290,,,,mn
iodine|I2|iodine crystals|s|H312 H332 H400|hb||H332,30,,,h*;H312,55,,,h*;H400,,,,hn;H315,10,,,m;H319,10,,,m;H335,20,,,m;H372,10,,,m
iodine in potassium iodide|KI3|i2 in ki;i2/ki;i3-;lugol;iodine solution|1.3|H373|ob||H373,,,,on
hydrogen peroxide|H2O2 HOOH O2H2||30|H302 H318|hd3|concentrated: staff only|H302,25,,34.014,h*;H332,30,,34.014,h*;H271,70,,34.014,h;H272,50,70,34.014,h2;H314,50,,34.014,h;H315,35,50,34.014,h;H318,8,50,34.014,h;H319,5,8,34.014,h;H335,35,,34.014,h
ethanol|C2H5OH C2H6O CH3CH2OH|etoh;alcohol|l|H225 H319:o|hb||H319,50,,,o;H225,,,,hn
methanol|CH3OH CH4O|meoh|l|H225 H301 H311 H331 H370|hn|staff only|H331,30,,,h*;H332,15,30,,h*;H311,30,,,h*;H312,15,30,,h*;H301,33.33,,,h*;H302,5,33.33,,h*;H370,10,,,h;H371,3,10,,h;H225,,,,hn
propan-2-ol|(CH3)2CHOH C3H8O CH3CHOHCH3 C3H7OH|iproh;ipa|l|H225 H319 H336|hb||H319,10,,,h;H336,20,,,h;H225,,,,hn
propan-1-ol|CH3CH2CH2OH C3H8O C3H7OH|n-c3h7oh;proh|l|H225 H318 H336|hb||H318,3,,,h;H319,1,3,,h;H336,20,,,h;H225,,,,hn
propanone|CH3COCH3 C3H6O (CH3)2CO|acetone|l|H225 H319 H336 EUH066:o|hb||H319,10,,,h;H336,20,,,h;EUH066,,,,on;H225,,,,hn
ethane-1,2-diol|C2H6O2 HOCH2CH2OH (CH2OH)2 C2H4(OH)2|ethylene glycol;glycol|l|H302 H373:m|hb||H302,25,,,h*;H373,10,,,m
glycerol|C3H8O3 C3H5(OH)3 HOCH2CH(OH)CH2OH|glycerine;glycerin|l||td||
urea|CO(NH2)2 (NH2)2CO CH4N2O NH2CONH2 OC(NH2)2||s||od||
glucose|C6H12O6 C6H12O6·H2O|glc;dextrose;grape sugar|s||td||
fructose|C6H12O6|fru;fruit sugar|s||md||
sucrose|C12H22O11|saccharose;table sugar|s||td||
lactose monohydrate|C12H22O11·H2O C12H22O11|lactose;milk sugar|s||md||
starch|C6H10O5|(c6h10o5)n;soluble starch|s||od||
EDTA disodium salt dihydrate|Na2C10H14N2O8·2H2O C10H14N2Na2O8·2H2O C10H14N2Na2O8|edta disodium salt;na2edta;edta;na2h2edta·2h2o;na2h2y·2h2o|s|H332 H373|tb||H332,30,,,t;H373,3.7,,,t
phenolphthalein|C20H14O4|hin|1|H225 H341 H350|hb||H341,1,,,h;H361f,3,,,h;H350,1,,,h;H225,,,,hn
methyl orange|C14H14N3NaO3S||0.1||ob|solid: staff only|
bromothymol blue|C27H28Br2O5S|btb|0.1||ob||
benzoic acid|C6H5COOH C7H6O2 HC7H5O2||s|H315 H318 H372|hb||H315,10,,,h;H318,3,,,h;H319,1,3,,h;H372,10,,,h;H373,1,10,,h
sodium dichromate|Na2Cr2O7·2H2O Na2Cr2O7 Cr2O7Na2||s|H272 H301 H312 H314 H317 H330 H334 H340 H350 H360FD H372 H410|hn|not for students|H350,0.1,,,h;H340,0.1,,,h;H360FD,0.3,,,h;H330,10,,,h*;H331,5,10,,h*;H332,1,5,,h*;H301,33.33,,,h*;H302,5,33.33,,h*;H372,10,,,h;H373,1,10,,h;H312,55,,,h*;H314,5,,,h;H315,1,5,,h;H318,3,5,,h;H319,1,3,,h;H335,5,,,h;H334,0.2,,,h;H317,0.2,,,h;H272,,,,hn2;H410,,,,hn
ammonium dichromate|(NH4)2Cr2O7 Cr2O7(NH4)2 N2H8Cr2O7||s|H272 H301 H312 H314 H317 H330 H334 H340 H350 H360FD H372 H410|hn|not for students|H350,0.1,,,h;H340,0.1,,,h;H360FD,0.3,,,h;H330,10,,,h*;H331,5,10,,h*;H332,1,5,,h*;H301,33.33,,,h*;H302,5,33.33,,h*;H372,10,,,h;H373,1,10,,h;H312,55,,,h*;H314,5,,,h;H315,1,5,,h;H318,3,5,,h;H319,1,3,,h;H335,5,,,h;H334,0.2,,,h;H317,0.2,,,h;H272,,,,hn2;H410,,,,hn
sodium chromate|Na2CrO4 CrO4Na2 Na2CrO4·4H2O||s|H301 H312 H314 H317 H330 H334 H340 H350 H360FD H372 H410|hn|not for students|H350,0.1,,115.992,h;H340,0.1,,115.992,h;H360FD,0.3,,,h;H330,10,,,h*;H331,5,10,,h*;H332,1,5,,h*;H301,33.33,,,h*;H302,5,33.33,,h*;H372,10,,,h;H373,1,10,,h;H312,55,,,h*;H314,5,,,h;H315,1,5,,h;H318,3,5,,h;H319,1,3,,h;H334,0.2,,115.992,h;H317,0.2,,115.992,h;H410,,,,hn
chromium trioxide|CrO3 O3Cr|chromic acid anhydride|s|H271 H301 H311 H314 H317 H330 H334 H340 H350 H361f H372 H410|hn|not for students|H350,0.1,,,h;H340,0.1,,,h;H361f,3,,,h;H330,10,,,h*;H331,5,10,,h*;H332,1,5,,h*;H311,30,,,h*;H312,15,30,,h*;H301,33.33,,,h*;H302,5,33.33,,h*;H372,10,,,h;H373,1,10,,h;H314,5,,,h;H315,1,5,,h;H318,3,5,,h;H319,1,3,,h;H334,1,,,h;H317,1,,,h;H335,1,,,h;H271,,,,hn;H410,,,,hn
cobalt(II) acetate|Co(CH3COO)2·4H2O Co(CH3COO)2 Co(C2H3O2)2 (CH3COO)2Co|co(oac)2|s|H317 H334 H341 H350i H360F H410|hn|not for students as solid; dilute solution or paper only|H341,1,,58.933,h;H360F,0.3,,58.933,h;H334,1,,58.933,h;H317,1,,58.933,h;H400,2.5,,58.933,h;H350i,0.01,,58.933,h;H410,,,58.933,hn
calcium hypochlorite|Ca(ClO)2 Ca(OCl)2 CaCl2O2|pool chlorine;chlorinated lime|s|H272 H302 H314 H400 EUH031|hb||H302,25,,,h*;H314,5,,,h;H315,1,5,,h;H318,3,5,,h;H319,0.5,3,,h;H400,2.5,,,h;EUH031,,,,hn;H272,,,,hn2
hydrofluoric acid|HF||40|H300 H310 H330 H314|hn|not for students|H314,7,,20.006,h;H314,1,7,20.006,h;H319,0.1,1,20.006,h;H310,10,,20.006,h;H310,2.5,10,20.006,h;H311,0.5,2.5,20.006,h;H312,0.25,0.5,20.006,h;H300,10,,20.006,h*;H301,1.667,10,20.006,h*;H302,0.25,1.667,20.006,h*;H330,25,,20.006,h*;H331,5,25,20.006,h*;H332,2.5,5,20.006,h*
perchloric acid|HClO4||60|H271 H290:m H302:m H314 H373:m|hn|not for students|H271,!50,,100.454,h;H272,,!50,100.454,h2;H314,50,,100.454,h;H314,10,50,100.454,h;H315,1,10,100.454,h;H319,1,10,100.454,h;H290,,,,mn;H302,,,,mn;H373,,,,mn
hydrobromic acid|HBr||48|H290:m H314 H335|hb|concentrated: staff only|H314,40,,80.912,h;H315,10,40,80.912,h;H319,10,40,80.912,h;H335,10,,80.912,h;H290,,,,mn
`;
