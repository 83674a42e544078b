// Labrow. Built by “npm run build” from src/; change the sources, not this file. MIT licence.
"use strict";

var Labrow = (() => {
	// The host loads this file at every call of a cell function, and a call needs few of the parts. Each is a function that
	// is run when it is first asked for, and sees nothing but the host and, by part(name), what other parts give.
	const parts = {
// Part base: chemistry/atomsKey, errors/result, errors/quoted, measurement/finite, measurement/quantity, chemistry/elementTable.generated and 64 more
"base"(part) {
// From chemistry
function atomsKey({ atoms }) { return atoms.map(({ element, count }) => `${element}${count}`).sort().join(" "); }

// From errors
function success(value) { return { ok: true, value }; }
function failure(error) { return { ok: false, error }; }

var shownWhole = 60;
var shownAtStart = 40;
var shownAtEnd = 15;
function shortened(text) {
	const characters = Array.from(text);
	if (characters.length <= shownWhole) return text;
	return `${characters.slice(0, shownAtStart).join("")} … ${characters.slice(-shownAtEnd).join("")}`;
}
function quoted(cell) {
	if (typeof cell === "string") return cell.trim() === "" ? "a blank cell" : `“${shortened(cell)}”`;
	if (cell === void 0 || cell === null) return "a blank cell";
	if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
	if (typeof cell === "number") return String(cell);
	if (Object.prototype.toString.call(cell) === "[object Date]") {
		const time = cell.getTime();
		return Number.isFinite(time) ? `the date ${new Date(time).toISOString().slice(0, 10)}` : "a date";
	}
	return "something that is neither text nor a number";
}

// From measurement
function finite(value, argument) {
	if (Number.isFinite(value)) return success(value);
	return failure({ code: "result-not-finite", argument, advice: "Check the powers of ten and the units." });
}

function grams(value) { return value; }
function gramsPerMole(value) { return value; }
function gramsPerMillilitre(value) { return value; }
function millilitres(value) { return value; }
function moles(value) { return value; }
function molesPerLitre(value) { return value; }
function percent(value) { return value; }

// From chemistry
var elementTable = `
H 1 hydrogen 1.0080
He 2 helium 4.002602
Li 3 lithium 6.94
Be 4 beryllium 9.0121831
B 5 boron 10.81
C 6 carbon 12.011
N 7 nitrogen 14.007
O 8 oxygen 15.999
F 9 fluorine 18.998403162
Ne 10 neon 20.1797
Na 11 sodium 22.98976928
Mg 12 magnesium 24.305
Al 13 aluminium 26.9815384
Si 14 silicon 28.085
P 15 phosphorus 30.973761998
S 16 sulfur 32.06
Cl 17 chlorine 35.45
Ar 18 argon 39.95
K 19 potassium 39.0983
Ca 20 calcium 40.078
Sc 21 scandium 44.955907
Ti 22 titanium 47.867
V 23 vanadium 50.9415
Cr 24 chromium 51.9961
Mn 25 manganese 54.938043
Fe 26 iron 55.845
Co 27 cobalt 58.933194
Ni 28 nickel 58.6934
Cu 29 copper 63.546
Zn 30 zinc 65.38
Ga 31 gallium 69.723
Ge 32 germanium 72.630
As 33 arsenic 74.921595
Se 34 selenium 78.971
Br 35 bromine 79.904
Kr 36 krypton 83.798
Rb 37 rubidium 85.4678
Sr 38 strontium 87.62
Y 39 yttrium 88.905838
Zr 40 zirconium 91.222
Nb 41 niobium 92.90637
Mo 42 molybdenum 95.95
Tc 43 technetium ~97
Ru 44 ruthenium 101.07
Rh 45 rhodium 102.90549
Pd 46 palladium 106.42
Ag 47 silver 107.8682
Cd 48 cadmium 112.414
In 49 indium 114.818
Sn 50 tin 118.710
Sb 51 antimony 121.760
Te 52 tellurium 127.60
I 53 iodine 126.90447
Xe 54 xenon 131.293
Cs 55 caesium 132.90545196
Ba 56 barium 137.327
La 57 lanthanum 138.90547
Ce 58 cerium 140.116
Pr 59 praseodymium 140.90766
Nd 60 neodymium 144.242
Pm 61 promethium ~145
Sm 62 samarium 150.36
Eu 63 europium 151.964
Gd 64 gadolinium 157.249
Tb 65 terbium 158.925354
Dy 66 dysprosium 162.500
Ho 67 holmium 164.930329
Er 68 erbium 167.259
Tm 69 thulium 168.934219
Yb 70 ytterbium 173.045
Lu 71 lutetium 174.96669
Hf 72 hafnium 178.486
Ta 73 tantalum 180.94788
W 74 tungsten 183.84
Re 75 rhenium 186.207
Os 76 osmium 190.23
Ir 77 iridium 192.217
Pt 78 platinum 195.084
Au 79 gold 196.966570
Hg 80 mercury 200.592
Tl 81 thallium 204.38
Pb 82 lead 207.2
Bi 83 bismuth 208.98040
Po 84 polonium ~209
At 85 astatine ~210
Rn 86 radon ~222
Fr 87 francium ~223
Ra 88 radium ~226
Ac 89 actinium ~227
Th 90 thorium 232.0377
Pa 91 protactinium 231.03588
U 92 uranium 238.02891
Np 93 neptunium ~237
Pu 94 plutonium ~244
Am 95 americium ~243
Cm 96 curium ~247
Bk 97 berkelium ~247
Cf 98 californium ~251
Es 99 einsteinium ~252
Fm 100 fermium ~257
Md 101 mendelevium ~258
No 102 nobelium ~259
Lr 103 lawrencium ~262
Rf 104 rutherfordium ~267
Db 105 dubnium ~268
Sg 106 seaborgium ~269
Bh 107 bohrium ~270
Hs 108 hassium ~269
Mt 109 meitnerium ~277
Ds 110 darmstadtium ~281
Rg 111 roentgenium ~282
Cn 112 copernicium ~285
Nh 113 nihonium ~286
Fl 114 flerovium ~290
Mc 115 moscovium ~290
Lv 116 livermorium ~293
Ts 117 tennessine ~294
Og 118 oganesson ~294
`;

function elementOn(line) {
	const [symbol, atomicNumber, name, weight] = line.split(" ");
	const isStable = !weight.startsWith("~");
	return {
		symbol, name, atomicNumber: Number(atomicNumber), weight: isStable ? Number(weight) : void 0,
		longestLived: isStable ? void 0 : Number(weight.slice(1))
	};
}
var read = new Map();
function elementBySymbol(symbol) {
	const known2 = read.get(symbol);
	if (known2) return known2;
	const at = elementTable.indexOf(`
${symbol} `);
	if (at < 0) return void 0;
	const element = elementOn(elementTable.slice(at + 1, elementTable.indexOf("\n", at + 1)));
	if (element.symbol !== symbol) return void 0;
	read.set(symbol, element);
	return element;
}
function allElements() { return elementTable.trim().split("\n").map(elementOn); }
var isotopeMasses = new Map([["[2H]", 2.014101777844], ["[3H]", 3.01604928132], ["[13C]", 13.003354835336]]);
var isotopeShape = /^\[(\d+)([A-Z][a-z]?)\]$/;
function elementOf(label) { return isotopeShape.exec(label)?.[2] ?? label; }
function relativeMass(label) {
	const isotope = isotopeShape.exec(label);
	if (!isotope) return elementBySymbol(label)?.weight;
	return isotopeMasses.get(label) ?? Number(isotope[1]);
}

function atomicMass(label) {
	const mass = relativeMass(label);
	if (mass !== void 0) return success(mass);
	const element = elementBySymbol(label);
	return failure({
		code: "atomic-weight-none", argument: "formula", received: `${quoted(label)} (${element?.name})`,
		advice: `Name the isotope you mean; the longest-lived is [${element?.longestLived}${label}].`, brief: label
	});
}
function molarMass({ atoms }) {
	let sum = 0;
	for (const { element, count } of atoms) {
		const mass = atomicMass(element);
		if (!mass.ok) return mass;
		sum += count * mass.value;
	}
	return finite(gramsPerMole(sum), "formula");
}

function composition(formula) {
	const masses = [];
	for (const { element, count } of formula.atoms) {
		const one = atomicMass(element);
		if (!one.ok) return one;
		masses.push({ element, atoms: count, mass: count * one.value });
	}
	const whole = masses.reduce((sum, { mass }) => sum + mass, 0);
	return success(masses.map((share) => ({ ...share, percent: 100 * share.mass / whole })));
}

// From measurement
function shown({ value, unit }) { return unit === "" ? quoted(value) : `${quoted(value)} ${unit}`; }
function notAboveZero(...numbers) {
	const found = numbers.find(({ value }) => !(value > 0 && Number.isFinite(value)));
	if (found === void 0) return void 0;
	return {
		code: "not-above-zero", argument: found.argument, expected: found.unit === "" ? "above 0" : `above 0 ${found.unit}`,
		received: shown(found), advice: "Check its sign, and the cell it comes from."
	};
}
function belowZero(...numbers) {
	const found = numbers.find(({ value }) => !(value >= 0 && Number.isFinite(value)));
	if (found === void 0) return void 0;
	return {
		code: "below-zero", argument: found.argument, expected: found.unit === "" ? "0 or more" : `0 ${found.unit} or more`,
		received: shown(found), advice: "Check its sign, and the cell it comes from."
	};
}

// From chemistry
function density({ mass, volume }) {
	const error = notAboveZero(
		{ value: mass, argument: "mass", unit: "g" },
		{ value: volume, argument: "volume", unit: "mL" }
	);
	return error ? failure(error) : finite(gramsPerMillilitre(mass / volume), "mass");
}

function dilutionError({ stock, target }) {
	const error = notAboveZero(
		{ value: stock, argument: "stock_molarity", unit: "mol/L" },
		{ value: target, argument: "target_molarity", unit: "mol/L" }
	);
	if (error || target < stock) return error;
	return {
		code: "target-not-below-stock", argument: "target_molarity", expected: `${quoted(stock)} mol/L`,
		received: `${quoted(target)} mol/L`, advice: "Use a stronger stock, or swap the two cells."
	};
}

function stockVolume({ stock, target, finalVolume }) {
	const error = dilutionError({ stock, target }) ?? notAboveZero({ value: finalVolume, argument: "target_volume", unit: "mL" });
	if (error) return failure(error);
	return finite(millilitres(target * finalVolume / stock), "target_volume");
}

function diluentVolume(dilution) {
	const stock = stockVolume(dilution);
	return stock.ok ? success(millilitres(dilution.finalVolume - stock.value)) : stock;
}

function portionError({ stockVolume: stockVolume2, finalVolume }) {
	if (stockVolume2 <= finalVolume) return void 0;
	return {
		code: "final-below-stock-volume", argument: "final_volume", expected: `${quoted(stockVolume2)} mL`,
		received: `${quoted(finalVolume)} mL`,
		advice: "Filling up only adds volume: swap the two cells, or check their units."
	};
}

function dilutedMolarity({ stock, stockVolume: stockVolume2, finalVolume }) {
	const error = notAboveZero(
		{ value: stock, argument: "stock_molarity", unit: "mol/L" },
		{ value: stockVolume2, argument: "stock_volume", unit: "mL" },
		{ value: finalVolume, argument: "final_volume", unit: "mL" }
	) ?? portionError({ stockVolume: stockVolume2, finalVolume });
	if (error) return failure(error);
	return finite(molesPerLitre(stock * stockVolume2 / finalVolume), "stock_molarity");
}

function dilutionFactor({ stock, target }) {
	const error = dilutionError({ stock, target });
	return error ? failure(error) : finite(stock / target, "stock_molarity");
}

var strongAcids = ["HCl", "HBr", "HI", "HNO3", "HClO4", "HClO3", "H2SO4"];
var weakElectrolytes = "CH3COOH HCOOH HF H3PO4 H3PO3 H2CO3 NH3 H2S HNO2 HClO HClO2 HBrO HCN H2SO3 H3BO3 C6H8O7 H2C2O4 C6H5COOH C2H5COOH C3H6O3 C4H6O6 C6H8O6 C6H5OH CH3NH2 C2H5NH2 (CH3)2NH C5H5N N2H4 H2O2S HIO3 C8H6O4 C7H6O3 H2CrO4 HSCN FeF3 HgCl2 Hg(CN)2".split(" ");
var molecularSolutes = "C6H12O6 C12H22O11 CO(NH2)2 H2O2 C2H5OH CH3OH C3H7OH C3H8O3 C2H6O2 (CH3)2CO C6H14O6 C8H10N4O2 C4H8O HCHO CH3CN CS(NH2)2 O2 N2 CO2 C5H10O5 C18H32O16 C6H12O5 H2O".split(" ");
var solubleHydroxides = new Set(["Li", "Na", "K", "Rb", "Cs", "Ba", "Sr", "NH4"]);
var saturatedHydroxides = { Ca: 0.0235, Ba: 0.28 };
var always = new Set(["Li", "Na", "K", "Rb", "Cs", "NH4", "H"]);
var except = {
	"Li F": false, "Li PO4": false, "Mg CrO4": true, "Ca CrO4": true, "Mg SO3": false, "Ag F": true, "Ag NO2": false,
	"Be SO4": true, "Hg Br": false, "Hg I": false, "Hg SCN": false, "Sn I": false, "Co NO2": false, "Ag BrO3": false,
	"Ba BrO3": false, "K IO4": false, "K BF4": false
};
var lowWith = {
	halide: new Set(["Ag", "Pb", "Cu 1"]),
	fluoride: new Set(["Mg", "Ca", "Sr", "Ba", "Pb", "Al", "Cu", "Fe 2", "Cr", "Th", "La", "Ce"]),
	iodate: new Set(["Ag", "Ba", "Ca", "Cd", "Mn", "Pb", "Sr", "Zn"]), sulfate: new Set(["Ba", "Sr", "Pb", "Ca", "Ag"])
};
var lowAnions = new Set([
	"CO3", "PO4", "PO3", "AsO4", "BO3", "SiO3", "S", "SO3", "C2O4", "CrO4", "MoO4", "WO4", "B4O7", "C4H4O6", "SeO3",
	"HPO4"
]);
function isSparinglySoluble({ cation, cationCharge, anion }) {
	const own = except[`${cation} ${anion}`];
	if (own !== void 0) return !own;
	if (anion === "OH") return !solubleHydroxides.has(cation);
	if (always.has(cation)) return false;
	if (anion === "S") return !["Mg", "Ca", "Sr", "Ba"].includes(cation);
	if (lowAnions.has(anion)) return true;
	const isAmong2 = (cations2) => cations2.has(cation) || cations2.has(`${cation} ${cationCharge}`);
	if (["Cl", "Br", "I", "SCN", "CN"].includes(anion)) return isAmong2(lowWith.halide);
	if (anion === "F") return isAmong2(lowWith.fluoride);
	if (anion === "IO3") return isAmong2(lowWith.iodate);
	if (anion === "SO4") return isAmong2(lowWith.sulfate);
	return false;
}

function partsAtoms(parts, times2, counts) {
	for (const part of parts) {
		if (part.kind === "group") partsAtoms(part.parts, times2 * part.count, counts);
		else counts.set(part.element, (counts.get(part.element) ?? 0) + times2 * part.count);
	}
}
function atomsOfUnits(units) {
	const counts = new Map();
	for (const { coefficient, parts } of units) partsAtoms(parts, coefficient, counts);
	return [...counts].map(([element, count]) => ({ element, count }));
}
function isWater({ parts }) {
	const atoms = atomsOfUnits([{ coefficient: 1, parts }]);
	const count = (symbol) => atoms.find(({ element }) => element === symbol)?.count;
	return atoms.length === 2 && count("H") === 2 && count("O") === 1;
}
function assembled({ text, units, charge }) {
	const water = units.slice(1).filter(isWater);
	const waters = water.reduce((sum, { coefficient }) => sum + coefficient, 0);
	return { text, units, charge, atoms: atomsOfUnits(units), hydrate: waters > 0 ? { count: waters } : void 0 };
}
function anhydrousAtoms({ units }) { return atomsOfUnits(units.filter((unit, index) => index === 0 || !isWater(unit))); }

var hides = [
	["H225", ["H226"]], ["H314", ["H318", "H315", "H319"]], ["H318", ["H319"]], ["H410", ["H400", "H411", "H412"]],
	["H411", ["H412"]], ["H271", ["H272", "H272/3"]], ["H272", ["H272/3"]], ["H300", ["H301", "H302"]], ["H301", ["H302"]],
	["H310", ["H311", "H312"]], ["H311", ["H312"]], ["H330", ["H331", "H332"]], ["H331", ["H332"]], ["H340", ["H341"]],
	["H350", ["H350i", "H351"]], ["H350i", ["H351"]],
	["H360FD", ["H360", "H360D", "H360Df", "H360F", "H361", "H361d", "H361f"]], ["H360Df", ["H360D", "H361f"]],
	["H360D", ["H361d"]], ["H360F", ["H361f"]], ["H370", ["H371"]], ["H372", ["H373"]]
];
function hiddenBy(codes) {
	const hidden = new Set();
	for (const [strict, weaker] of hides) {
		if (codes.has(strict) && !hidden.has(strict)) for (const code of weaker) hidden.add(code);
	}
	return hidden;
}

var cationList = "H+ Li+ Na+ K+ Rb+ Cs+ Ag+ Cu+ NH4+ Be^2+ Mg^2+ Ca^2+ Sr^2+ Ba^2+ Zn^2+ Cd^2+ Fe^2+ Fe^3+ Co^2+ Co^3+ Ni^2+ Cu^2+ Mn^2+ Cr^2+ Cr^3+ Al^3+ Ga^3+ Sc^3+ Bi^3+ La^3+ Ce^3+ Ce^4+ Sn^2+ Sn^4+ Pb^2+ Hg^2+ Pd^2+ Pt^2+ Au^3+ V^2+ V^3+ Ti^3+ Th^4+ H3O+";
var anionList = "C6H5O7^3- HC8H4O4- HC4H4O6- C6H5COO- C4H4O6^2- Fe(CN)6^3- Fe(CN)6^4- B4O7^2- S2O8^2- S4O6^2- C2H5COO- Cr2O7^2- B(OH)4- Al(OH)4- H2PO4- CH3COO- HC2O4- HSO4- HPO4^2- C2O4^2- ClO4- IO4- MnO4- HCO3- HSO3- S2O3^2- SO4^2- CrO4^2- MnO4^2- PO4^3- AsO4^3- BF4- MoO4^2- WO4^2- SeO4^2- NO3- ClO3- BrO3- IO3- HCOO- SO3^2- CO3^2- SiO3^2- PO3^3- BO3^3- VO3- SeO3^2- NO2- ClO2- SCN- N3- HO2- OH- ClO- BrO- CN- HS- O2^2- F- Cl- Br- I- S^2- O^2-";
function read2(list) { return list.split(" ").map((written) => {
	const caret = written.indexOf("^");
	const size2 = caret < 0 ? 1 : Number(written.slice(caret + 1, -1));
	return { body: written.slice(0, caret < 0 ? -1 : caret), charge: written.endsWith("-") ? -size2 : size2 };
}); }
var cations;
var anions;
function listedCations() { return cations ?? (cations = read2(cationList)); }
function listedAnions() { return anions ?? (anions = read2(anionList)); }
function isListedIon({ body, charge }) { return [...listedCations(), ...listedAnions()].some((ion) => ion.charge === charge && sameBody(ion.body, body)); }
function sameBody(one, other) { return one === other.replace(/^\[(.*)\]$/, "$1"); }

function countsOf(atoms) { return new Map(atoms.map(({ element, count }) => [element === "[2H]" ? "H" : element, count])); }
function key(counts) { return [...counts].map(([element, count]) => `${element}${count}`).sort().join(); }
var loneSymbol = /^[A-Z][a-z]?$/;
function atomsOfListed(body) {
	if (loneSymbol.test(body)) return [{ element: body, count: 1 }];
	const counts = new Map();
	const flat = body.replace(/\(([^()]*)\)(\d*)/g, (_, inside, times2) => inside.repeat(Number(times2 || 1)));
	const left = flat.replace(/([A-Z][a-z]?)(\d*)/g, (_, element, count) => {
		counts.set(element, (counts.get(element) ?? 0) + Number(count || 1));
		return "";
	});
	if (left !== "") throw new Error(`The list of ions has ${body}, which is no plain formula.`);
	return [...counts].map(([element, count]) => ({ element, count }));
}
function isAmong(list, counts) {
	const symbols = [...counts.keys()];
	const wanted2 = key(counts);
	return list.some(
		(body) => symbols.every((symbol) => body.includes(symbol)) && key(countsOf(atomsOfListed(body))) === wanted2
	);
}
function isListedSolute(formula) {
	const counts = countsOf(anhydrousAtoms(formula));
	return [strongAcids, weakElectrolytes, molecularSolutes].some((list) => isAmong(list, counts));
}
var knownCations;
function cationsByAtoms() { return knownCations ?? (knownCations = listedCations().map((ion) => ({ ...ion, atoms: atomsOfListed(ion.body) }))); }
function anionsAmong(counts) { return listedAnions().filter(({ body }) => body !== "O" && body !== "O2").filter(({ body }) => body.match(/[A-Z][a-z]?/g)?.every((symbol) => counts.has(symbol))).map((ion) => ({ ...ion, atoms: atomsOfListed(ion.body) })); }
function raised(charge) {
	const digits = Math.abs(charge) === 1 ? "" : "⁰¹²³⁴⁵⁶⁷⁸⁹".charAt(Math.abs(charge));
	return digits + (charge < 0 ? "⁻" : "⁺");
}
function lowered(body) { return body.replace(/\d/g, (digit3) => "₀₁₂₃₄₅₆₇₈₉".charAt(Number(digit3))); }
function ionText({ body, charge }) { return `${body.includes("(CN)") || body.includes("(OH)") ? `[${lowered(body)}]` : lowered(body)}${raised(charge)}`; }
function without(counts, atoms, times2) {
	const left = new Map(counts);
	for (const { element, count } of atoms) {
		const rest = (left.get(element) ?? 0) - count * times2;
		if (rest === 0) left.delete(element);
		else left.set(element, rest);
	}
	return left;
}
var countMax = 50;
function possibleCounts(counts, atoms) {
	const most = Math.min(...atoms.map(({ element, count }) => Math.floor((counts.get(element) ?? 0) / count)));
	if (most < 1) return [];
	const own = atoms.find(({ element }) => !cationElements().has(element));
	if (own === void 0) return Array.from({ length: Math.min(most, countMax) }, (_, place) => most - place);
	const needed = (counts.get(own.element) ?? 0) / own.count;
	return needed === most ? [needed] : [];
}
var elementsOfCations;
function cationElements() { return elementsOfCations ?? (elementsOfCations = new Set(
	cationsByAtoms().flatMap(({ atoms }) => atoms.map(({ element }) => element)).filter((element) => element !== "O")
)); }
function cationsFor(counts, charge, mayHoldAmmonium) {
	const [next] = [...counts.keys()].filter((element) => element !== "N" && element !== "H");
	if (next === void 0) {
		if (counts.size === 0) return charge === 0 ? [] : void 0;
		const nitrogen = counts.get("N");
		const symbol = nitrogen === void 0 ? "H" : "NH4";
		const ion = cationsByAtoms().find(({ body }) => body === symbol);
		if (!ion || symbol === "NH4" && !mayHoldAmmonium) return void 0;
		const count2 = nitrogen ?? counts.get("H") ?? 0;
		const left = without(counts, ion.atoms, count2);
		return left.size === 0 && count2 === charge ? [{ ion, count: count2 }] : void 0;
	}
	const count = counts.get(next) ?? 0;
	for (const ion of cationsByAtoms().filter(({ body }) => body === next)) {
		const left = without(counts, ion.atoms, count);
		const rest = cationsFor(left, charge - count * ion.charge, mayHoldAmmonium);
		if (rest) return [{ ion, count }, ...rest];
	}
	return void 0;
}
function takenApart(formula) {
	const counts = countsOf(anhydrousAtoms(formula));
	const mayHoldAmmonium = /N\s*H\s*[4₄]|H4N/.test(formula.text);
	for (const ion of anionsAmong(counts)) {
		for (const count of possibleCounts(counts, ion.atoms)) {
			const left = without(counts, ion.atoms, count);
			const cations2 = cationsFor(left, -ion.charge * count, mayHoldAmmonium);
			const hasHydrogen = cations2?.some(({ ion: { body } }) => body === "H") === true;
			const isHalfDone = hasHydrogen && (cations2.length > 1 || ion.body.startsWith("H"));
			if (cations2 && !isHalfDone) return { cations: cations2, anion: { ion, count } };
		}
	}
	return void 0;
}
function refusal(error) { return failure({ ...error, argument: "formula" }); }
function ions(formula) {
	const shown3 = quoted(formula.text);
	if (formula.charge !== 0) {
		return refusal({
			code: "formula-with-charge", received: shown3, advice: "Type the substance that is dissolved, without a charge."
		});
	}
	const atoms = anhydrousAtoms(formula);
	const counts = countsOf(atoms);
	const weakRefusal = () => refusal({
		code: "ions-weak", received: shown3,
		advice: "Look up its acid or base constant: a formula alone can’t say how many ions there are."
	});
	if (isAmong(weakElectrolytes, counts)) return weakRefusal();
	const salt = takenApart(formula);
	const isAcid = salt?.cations.every(({ ion: { body } }) => body === "H") === true;
	if (isAmong(molecularSolutes, counts) && (!salt || isAcid)) {
		const [ion = ""] = formula.text.split(/[·•*.∙⋅‧・]/);
		return success([{ ion: ion.trim(), count: 1, charge: 0, atoms }]);
	}
	if (!salt) {
		return refusal({
			code: "ions-unknown", received: shown3, advice: "Look up how it dissolves, and count its ions by hand."
		});
	}
	const { cations: cations2, anion } = salt;
	if (isAcid && !isAmong(strongAcids, counts)) return weakRefusal();
	const [only] = cations2;
	const isHydroxide = cations2.length === 1 && anion.ion.body === "OH";
	const saturated = isHydroxide && only ? saturatedHydroxides[only.ion.body] : void 0;
	const isLow = saturated === void 0 && cations2.some(
		({ ion: { body, charge } }) => isSparinglySoluble({ cation: body, cationCharge: charge, anion: anion.ion.body })
	);
	if (isLow) {
		return refusal({ code: "ions-sparingly", received: shown3, advice: "Choose a salt that dissolves." });
	}
	const isSulfuric = isAcid && anion.ion.body === "SO4";
	return success(
		[...cations2, anion].map(({ ion, count }) => ({
			ion: ionText(ion), count, charge: ion.charge, atoms: ion.atoms,
			...isSulfuric ? { note: "the second step is partial: some HSO₄⁻ stays whole" } : {},
			...saturated === void 0 ? {} : { note: `as far as it dissolves, up to about ${saturated} mol/L at room temperature`, saturated }
		}))
	);
}

var lettersMax = 24;
var offersMax = 2;
var schoolElements = new Set(
	"H Li Be B C N O F Na Mg Al Si P S Cl K Ca Cr Mn Fe Co Ni Cu Zn Br Ag Cd Sn I Ba Pt Au Hg Pb Bi Sr".split(" ")
);
function likelySpellings(text) {
	if (text.replace(/[^A-Za-z]/g, "").length > lettersMax) return [];
	const from = [];
	from[text.length] = [""];
	for (let place = text.length - 1; place >= 0; place -= 1) {
		const letter = text.charAt(place);
		const found = [];
		const add = (written) => {
			for (const rest of from[place + written.length] ?? []) found.push(written + rest);
		};
		if (!/[A-Za-z]/.test(letter)) add(letter);
		else {
			const one = letter.toUpperCase();
			const two = one + text.charAt(place + 1).toLowerCase();
			for (const symbol of new Set([two, one])) if (schoolElements.has(symbol)) add(symbol);
		}
		from[place] = found.slice(0, offersMax + 1);
	}
	const spellings = (from[0] ?? []).filter((spelling) => spelling !== text);
	return spellings.length > offersMax ? [] : spellings;
}

var otherSubstances = "Fe2O3 Fe3O4 FeO Al2O3 Cu2O CuO MgO CaO BaO SrO ZnO MnO2 SiO2 TiO2 Cr2O3 CrO3 PbO PbO2 HgO Ag2O Li2O Na2O K2O Na2O2 SO2 SO3 NO NO2 N2O N2O4 N2O5 CO P2O5 P4O10 Cl2 Cl2O O3 CCl4 CHCl3 CH2Cl2 PCl3 PCl5 SiCl4 SOCl2 NCl3 CaC2O4".split(" ");
var others;
function otherKeys() { return others ?? (others = new Set(otherSubstances.map((body) => atomsKey({ atoms: atomsOfListed(body) })))); }
function commonFactor(one, other) { return other === 0 ? one : commonFactor(other, one % other); }
function isSmallest(counts) { return counts.reduce((factor, { count }) => commonFactor(count, factor), 0) === 1; }
function isListed(formula) {
	if (formula.charge !== 0) return false;
	if (otherKeys().has(atomsKey(formula)) || isListedSolute(formula)) return true;
	const found = ions(formula);
	if (found.ok) return isSmallest(found.value);
	return found.error.code.startsWith("ions-") && found.error.code !== "ions-unknown" && isSmallest(formula.atoms);
}
var look = /0|(?<=[ACT])1|(?<=[AC])I(?![a-z])/g;
var meantBy = { 0: "O", 1: "l", I: "l" };
var placesMax = 6;
var loneOne = /[A-Za-z)\]}]1(?!\d)/;
function withLetters(text, places, chosen) { return places.reduce(
	(written, place, bit) => chosen & 1 << bit ? written.slice(0, place) + meantBy[text.charAt(place)] + written.slice(place + 1) : written,
	text
); }
var answers = new Map();
var answersMax = 200;
function lookAlikes(typed, text, read3) {
	const known2 = answers.get(text);
	if (known2 !== void 0) return known2;
	const places = [];
	text.replace(look, (mark, place) => {
		places.push(place);
		return mark;
	});
	if (places.length === 0) return [];
	const all = (1 << Math.min(places.length, 30)) - 1;
	const choices = places.length > placesMax ? [all] : Array.from({ length: all }, (_, choice) => all - choice);
	const found = [];
	for (const choice of choices) {
		const written = withLetters(text, places, choice);
		if (loneOne.test(written)) continue;
		const meant = read3(written);
		if (meant.ok && isListed(meant.value)) found.push(written);
		if (found.length === 2) break;
	}
	const answer = found.length > 0 && typed.ok && isListed(typed.value) ? [] : found;
	if (answers.size >= answersMax) answers.clear();
	answers.set(text, answer);
	return answer;
}

var lightest = 0.5;
var heaviest = 5;
function notASolutionDensity(...densities) {
	const error = notAboveZero(...densities.map((density2) => ({ ...density2, unit: "g/mL" })));
	if (error) return error;
	const found = densities.find(({ value }) => value < lightest || value > heaviest);
	if (found === void 0) return void 0;
	const isLikelyPerCubicMetre = found.value >= 1e3 * lightest && found.value <= 1e3 * heaviest;
	return {
		code: "density-unlikely", argument: found.argument, expected: `${lightest} to ${heaviest} g/mL`,
		received: `${quoted(found.value)} g/mL`,
		advice: isLikelyPerCubicMetre ? `Is it in kg/m³? Then type it with its unit, as in "${found.value} kg/m³".` : 'Is it in kg/m³ or g/L? Then type it with its unit, as in "1190 kg/m³".'
	};
}

function notALine({ lighterPercent, lighterDensity, heavierPercent, heavierDensity }) {
	const error = notASolutionDensity(
		{ value: lighterDensity, argument: "lighter_density" },
		{ value: heavierDensity, argument: "heavier_density" }
	);
	if (error) return error;
	for (const [value, argument] of [[lighterPercent, "lighter_percent"], [heavierPercent, "heavier_percent"]]) {
		if (!(value >= 0 && value <= 100)) {
			return {
				code: "percent-of-line", argument, expected: "from 0 % to 100 %", received: `${quoted(value)} %`,
				advice: "Copy it again from the table of densities."
			};
		}
	}
	if (lighterDensity !== heavierDensity && lighterPercent !== heavierPercent) return void 0;
	const isDensity = lighterDensity === heavierDensity;
	return {
		code: "lines-alike", argument: isDensity ? "heavier_density" : "heavier_percent",
		received: isDensity ? `the density ${quoted(heavierDensity)} g/mL` : `the mass percent ${quoted(heavierPercent)} %`,
		advice: "Take two different lines of the table."
	};
}

function massPercentOfDensity({ density: density2, ...line }) {
	const error = notALine(line) ?? notAboveZero({ value: density2, argument: "density", unit: "g/mL" });
	if (error) return failure(error);
	const { lighterPercent, lighterDensity, heavierPercent, heavierDensity } = line;
	const share = (density2 - lighterDensity) / (heavierDensity - lighterDensity);
	const found = lighterPercent + share * (heavierPercent - lighterPercent);
	if (found >= 0 && found <= 100) return success(percent(found));
	return failure({
		code: "percent-beyond-line", argument: "density", received: `${quoted(density2)} g/mL`,
		advice: "On their straight line it would mean less than 0 % or more than 100 %. Check the mass and the volume."
	});
}

// From errors
var shownWhole2 = 30;
var shownBefore = 10;
var shownBehind = 14;
function placeInText({ text, from }) {
	const [start, end] = [Math.max(0, from - shownBefore), from + shownBehind];
	const around = text.length <= shownWhole2 ? text : `${start > 0 ? "…" : ""}${text.slice(start, end)}${end < text.length ? "…" : ""}`;
	return `character ${from + 1} of “${around}”`;
}

// From measurement
function isBlank(value) { return value === void 0 || value === null || typeof value === "string" && value.trim() === ""; }

// From chemistry
function signOf(mark) { return /[+＋⁺]/.test(mark) ? 1 : -1; }
function size(digits = "") { return Number(digits.normalize("NFKC") || 1); }
var tailLength = 14;
var clearShapes = [
	{ shape: /\^\s*[({]?\s*(\d{0,2})\s*([+＋−–-])\s*[)}]?$/, size: 1, sign: 2 },
	{ shape: /\^\s*[({]?\s*([+＋−–-])\s*(\d{1,2})\s*[)}]?$/, size: 2, sign: 1 },
	{ shape: /\((\d{0,2})([+＋−–-])\)$/, size: 1, sign: 2 }, { shape: /\(([+＋−–-])(\d{1,2})\)$/, size: 2, sign: 1 },
	{ shape: /([⁰¹²³⁴⁵⁶⁷⁸⁹]{0,2})([⁺⁻])$/, size: 1, sign: 2 }, { shape: /([⁺⁻])([¹²³⁴⁵⁶⁷⁸⁹]{1,2})$/, size: 2, sign: 1 },
	{ shape: /(?<=[₀-₉\s])(\d)([+＋−–-])$/, size: 1, sign: 2 }, { shape: /([+＋−–-])(\d{1,2})$/, size: 2, sign: 1 }
];
function splitCharge(text) {
	const tail = text.slice(-tailLength);
	const before = (end) => text.slice(0, text.length - end.length);
	for (const { shape, size: sizeAt, sign: signAt } of clearShapes) {
		const match = shape.exec(tail);
		if (match) {
			return [{ base: before(match[0]).trimEnd(), charge: size(match[sizeAt]) * signOf(match[signAt] ?? "") }];
		}
	}
	const bare = /(\d*)([+＋]+|[−–-]+)$/.exec(tail);
	if (!bare) return [{ base: text, charge: 0 }];
	const [whole, digits = "", signs = ""] = bare;
	const body = before(whole);
	const sign = signOf(signs);
	if (signs.length > 1) return [{ base: body + digits, charge: sign * signs.length }];
	const asSubscript = { base: body + digits, charge: sign };
	const asCharge = { base: body + digits.slice(0, -1), charge: sign * Number(digits.slice(-1)) };
	if (asCharge.charge === 0) return [asSubscript];
	if (!/^[A-Z][a-z]?$/.test(body.trim())) {
		for (const reading2 of [asSubscript, asCharge]) {
			if (isListedIon({ body: reading2.base.replace(/\s/g, ""), charge: reading2.charge })) return [reading2];
		}
	}
	return [asCharge, asSubscript];
}
function chargeText({ base, charge }) {
	const digits = Math.abs(charge) === 1 ? "" : String(Math.abs(charge));
	return `${base}^${digits}${charge < 0 ? "-" : "+"}`;
}

var formulaLengthMax = 250;
var depthMax = 20;
var numberMax = 99999;
var opening = "([{";
var closing = ")]}";
var separators = "·•*.×,∙⋅‧・";
var digit = /[0-9₀-₉]/;
var raisedDigit = /[⁰¹²³⁴⁵⁶⁷⁸⁹]/;
var heavyHydrogen = { D: "[2H]", T: "[3H]" };
var capitalsExpected = "a capital letter where each symbol begins";
var fractions = { "½": 0.5, "¼": 0.25, "¾": 0.75 };
function fractionSign(value) { return Object.keys(fractions).find((sign) => fractions[sign] === value) ?? String(value); }
var Stop = class {
	constructor(error) {
		this.error = error;
	}
};
var FormulaReader = class {
	constructor(text, end, argument) {
		this.place = 0;
		this.units = [];
		this.open = [];
		this.parts = [];
		this.coefficient = 1;
		this.unitAt = 0;
		this.afterPoint = false;
		this.afterComma = false;
		this.replaced = [];
		this.text = text;
		this.end = end;
		this.argument = argument;
	}
	read() {
		if (/^\d/.test(this.text)) this.stopAtCoefficient();
		while (this.place < this.end) this.readOne();
		const unclosed = this.open[this.open.length - 1];
		if (unclosed) {
			const wanted2 = closing.charAt(opening.indexOf(unclosed.mark));
			this.stop({
				code: "bracket-not-closed", at: unclosed.at, advice: `Add “${wanted2}”, as in Ca(OH)2.`,
				brief: `“${wanted2}” missing`
			});
		}
		this.closeUnit();
		return this.units;
	}
	plainText() {
		let plain2 = this.text;
		for (const { from, to, by } of [...this.replaced].reverse()) plain2 = plain2.slice(0, from) + by + plain2.slice(to);
		return plain2;
	}
	stop(error) {
		throw new Stop({ ...error, argument: this.argument, at: { text: this.text, from: error.at } });
	}
	stopAtCoefficient() {
		return this.stop({
			code: "coefficient-before-formula", at: 0, received: quoted(this.text),
			advice: "Leave it out: in an equation it counts formula units, but here one unit is meant."
		});
	}
	readOne() {
		const mark = this.text.charAt(this.place);
		if (/\s/.test(mark)) this.place += 1;
		else if (this.isTimesBetweenSpaces()) this.separate(mark);
		else if (/[A-Z]/.test(mark)) this.readSymbol(void 0, this.place);
		else if (mark === "[" && /\d/.test(this.text.charAt(this.place + 1))) this.readIsotopeInBrackets();
		else if (raisedDigit.test(mark)) this.readRaisedNumber();
		else if (opening.includes(mark)) this.openBracket(mark);
		else if (closing.includes(mark)) this.closeBracket(mark);
		else if (separators.includes(mark)) this.separate(mark);
		else if (digit.test(mark)) this.stopAtNumber(this.place);
		else if (/[a-z]/.test(mark)) {
			if (/\s/.test(this.text.charAt(this.place - 1))) this.stopAtLetterForNumber();
			this.stopAtCase(this.place);
		} else {
			const [character = mark] = this.text.slice(this.place);
			this.stop({
				code: "formula-character", at: this.place, received: quoted(character),
				advice: "Type a formula such as KBr or CuSO4·5H2O."
			});
		}
	}
	isTimesBetweenSpaces() {
		return /[xX]/.test(this.text.charAt(this.place)) && /\s/.test(this.text.charAt(this.place - 1)) && /[\s\d½¼¾]/.test(this.text.charAt(this.place + 1));
	}
	stopAtLetterForNumber() {
		const at = this.place;
		if (!/^[nxyz]\s?\(?H/.test(this.text.slice(at, at + 4))) return;
		this.stop({
			code: "coefficient-out-of-range", at, expected: "the number from the label",
			received: quoted(this.text.charAt(at)), advice: "It says how many H2O one formula unit holds, as in CuSO4·5H2O."
		});
	}
	digitsHere(shape) {
		const from = this.place;
		while (this.place < this.end && shape.test(this.text.charAt(this.place))) this.place += 1;
		return this.text.slice(from, this.place).normalize("NFKC");
	}
	countFrom(written, at) {
		if (written.startsWith("0")) {
			this.stop({
				code: "subscript-zero", at, received: quoted(written),
				advice: "Did you mean the letter O? Otherwise leave out what is not there."
			});
		}
		if (written.length > String(numberMax).length) {
			this.stop({
				code: "subscript-too-large", at, expected: `the most is ${numberMax}`, received: quoted(written),
				advice: "Check the number of atoms."
			});
		}
		return Number(written);
	}
	passSpaces() {
		while (/\s/.test(this.text.charAt(this.place))) this.place += 1;
	}
	countAfter() {
		this.passSpaces();
		const at = this.place;
		const written = this.digitsHere(digit);
		return written === "" ? 1 : this.countFrom(written, at);
	}
	readSymbol(massNumber, at) {
		let symbol = this.text.charAt(this.place);
		let next = this.place + 1;
		while (/[a-z]/.test(this.text.charAt(next))) {
			symbol += this.text.charAt(next);
			next += 1;
		}
		const label = massNumber === void 0 ? this.plainLabel(symbol) : this.isotope(symbol, massNumber, at);
		this.place = next;
		if (this.text.charAt(at) === "[") {
			if (this.text.charAt(this.place) !== "]") {
				this.stop({
					code: "isotope-shape", at, received: quoted(this.text.slice(at, at + 12)),
					advice: "Write the isotope alone in the brackets, as in [13C]H4."
				});
			}
			this.place += 1;
		}
		this.parts.push({ kind: "element", element: label, count: this.countAfter() });
	}
	plainLabel(symbol) {
		const label = heavyHydrogen[symbol] ?? elementBySymbol(symbol)?.symbol;
		return label ?? this.stopAtSymbol(symbol);
	}
	isotope(symbol, massNumber, at) {
		const { atomicNumber } = elementBySymbol(symbol) ?? this.stopAtSymbol(symbol);
		const mass = Number(massNumber);
		if (mass < atomicNumber || mass > 3 * atomicNumber + 4) {
			this.stop({
				code: "isotope-unlikely", at, received: quoted(`${massNumber}${symbol}`),
				advice: `A mass number counts protons and neutrons, and ${symbol} has ${atomicNumber} ${atomicNumber === 1 ? "proton" : "protons"}. Write a number of atoms after the symbol.`
			});
		}
		return `[${mass}${symbol}]`;
	}
	readIsotopeInBrackets() {
		const at = this.place;
		this.place += 1;
		const massNumber = this.digitsHere(digit);
		if (!/[A-Z]/.test(this.text.charAt(this.place))) {
			this.stop({
				code: "isotope-shape", at, received: quoted(this.text.slice(at, at + 12)),
				advice: "Write the mass number, then the symbol, as in [13C]."
			});
		}
		this.readSymbol(massNumber, at);
	}
	readRaisedNumber() {
		const at = this.place;
		const written = this.digitsHere(raisedDigit);
		if (/[A-Z]/.test(this.text.charAt(this.place))) this.readSymbol(written, at);
		else this.countLast(this.countFrom(written, at), at);
	}
	countLast(count, at) {
		const last = this.parts.pop();
		if (last?.count !== 1) this.stopAtNumber(at);
		this.parts.push({ ...last, count });
	}
	stopAtNumber(at) {
		return this.stop({ code: "number-out-of-place", at, advice: "Write each number after what it counts, as in H2O." });
	}
	openBracket(mark) {
		if (this.open.length >= depthMax) {
			this.stop({
				code: "formula-too-deep", at: this.place, expected: `${depthMax} inside each other are the most`,
				received: `“${mark}”`, advice: "Write the formula with fewer brackets."
			});
		}
		this.open.push({ parts: this.parts, mark, at: this.place });
		this.parts = [];
		this.place += 1;
	}
	closeBracket(mark) {
		const at = this.place;
		const bracket = this.open.pop();
		const wanted2 = bracket && closing.charAt(opening.indexOf(bracket.mark));
		if (!bracket || wanted2 !== mark) {
			this.stop({
				code: "bracket-not-opened", at, received: `“${mark}”`,
				advice: bracket ? `The bracket that is open there ends with “${wanted2}”.` : `Add “${opening.charAt(closing.indexOf(mark))}” where the group begins, or leave “${mark}” out.`,
				brief: `“${mark}”`
			});
		}
		if (this.parts.length === 0) {
			this.stop({ code: "bracket-empty", at, advice: "Fill the brackets or leave them out." });
		}
		const inside = this.parts;
		this.stopAtOxidationNumber(bracket.at);
		this.place += 1;
		this.parts = bracket.parts;
		this.parts.push({ kind: "group", parts: inside, count: this.countAfter() });
	}
	stopAtOxidationNumber(at) {
		const inside = this.text.slice(at + 1, this.place);
		if (at === 0 || !/^(I{1,3}|I?V|VI{1,3})$/.test(inside) || digit.test(this.text.charAt(this.place + 1))) return;
		this.stop({
			code: "formula-character", at, received: `the oxidation number ${quoted(`(${inside})`)}`,
			advice: "Leave it out: the numbers of atoms say it, as in FeCl3."
		});
	}
	separate(mark) {
		const at = this.place;
		const bracket = this.open[this.open.length - 1];
		if (bracket) {
			this.stop({
				code: "separator-in-bracket", at, received: `“${mark}”`,
				advice: `Close “${bracket.mark}” first, as in Ca(NO3)2·4H2O.`
			});
		}
		this.closeUnit();
		if (/[x×,]/i.test(mark)) this.replaced.push({ from: at, to: at + 1, by: "·" });
		this.place += 1;
		this.passSpaces();
		this.unitAt = this.place;
		this.afterPoint = mark === "." && digit.test(this.text.charAt(at - 1));
		this.afterComma = mark === ",";
		this.stopAtLetterForNumber();
		this.coefficient = this.coefficientHere();
	}
	coefficientHere() {
		const asFraction = /^(?:(\d{1,3})\s)?(\d{1,3})\s?[/⁄]\s?(\d{1,3})/.exec(this.text.slice(this.place, this.end));
		if (asFraction) {
			const [whole2, before = "0", over, under] = asFraction;
			const value = Number(before) + Number(over) / Number(under);
			this.replaced.push({ from: this.place, to: this.place + whole2.length, by: fractionSign(value) });
			return this.coefficientOf(whole2, value);
		}
		const written = /^((?:\d{1,6}(?:[.,]\d{1,6})?)?)\s?([½¼¾]?)/.exec(this.text.slice(this.place, this.end));
		const [whole = "", number = "", fraction = ""] = written ?? [];
		if (whole === "") return 1;
		return this.coefficientOf(whole, Number(number.replace(",", ".")) + (fractions[fraction] ?? 0));
	}
	coefficientOf(written, value) {
		const at = this.place;
		this.place += written.length;
		if (value > 0 && value <= numberMax && !digit.test(this.text.charAt(this.place))) return value;
		return this.stop({
			code: "coefficient-out-of-range", at, expected: `a number above 0, ${numberMax} at most`,
			received: quoted(this.text.slice(at, at + 12)),
			advice: "It says how many of them one formula unit holds, as in CuSO4·5H2O."
		});
	}
	closeUnit() {
		if (this.end === 0) {
			this.stop({ code: "formula-part-missing", at: 0, advice: "Write what has the charge, as in SO4^2-." });
		}
		if (this.parts.length === 0) {
			this.stop({
				code: "formula-part-missing", at: Math.min(this.place, this.end - 1),
				advice: "Write a formula on both sides of the dot, as in CuSO4·5H2O."
			});
		}
		const unit = { coefficient: this.coefficient, parts: this.parts };
		if (this.afterPoint && atomsOfUnits([unit]).length === 1) {
			this.stop({
				code: "subscript-not-whole", at: this.unitAt - 1,
				advice: "Count atoms in whole numbers; only water of hydration may have 0.5 before it."
			});
		}
		if (this.afterComma && !isWater(unit)) {
			this.stop({
				code: "formula-character", at: this.unitAt - 1, received: "“,”", advice: "Type one substance in each cell."
			});
		}
		this.units.push(unit);
		this.parts = [];
	}
	stopAtCase(at) {
		const [state] = /\((s|l|g|aq)\)$/.exec(this.text) ?? [];
		if (state !== void 0) {
			this.stop({
				code: "formula-character", at: this.text.length - state.length, received: `the state of matter ${quoted(state)}`,
				advice: "Leave it out."
			});
		}
		this.offerSpellings(at);
		return this.stop({
			code: "formula-case", at, expected: capitalsExpected, received: quoted(this.text),
			advice: `Look at ${placeInText({ text: this.text, from: at })}, and write symbols as in NaCl.`,
			brief: "formula: capital letters"
		});
	}
	stopAtSymbol(symbol) {
		this.offerSpellings(this.place);
		const shown3 = symbol.length > 12 ? `${symbol.slice(0, 11)}…` : symbol;
		return this.stop({
			code: "element-unknown", at: this.place, received: quoted(shown3), advice: "Check it on the periodic table.",
			brief: shown3
		});
	}
	offerSpellings(at) {
		const meant = likelySpellings(this.text);
		if (meant.length === 0) return;
		const offer = meant.join(" or ");
		this.stop({
			code: "formula-case", at, expected: capitalsExpected, received: quoted(this.text),
			advice: `Did you mean ${offer}?`, brief: `${offer}?`
		});
	}
};
function readAsTyped(text, argument) {
	const [reading2, other] = splitCharge(text);
	if (other) {
		const both = `${chargeText(reading2)} or ${chargeText(other)}`;
		return failure({
			code: "charge-two-readings", argument, expected: both, received: quoted(text),
			advice: `Write the charge after ^, as in ${chargeText(reading2)}.`, brief: `${both}?`,
			at: { text, from: text.length - 2 }
		});
	}
	try {
		const reader = new FormulaReader(text, reading2.base.length, argument);
		const units = reader.read();
		return success(assembled({ text: reader.plainText(), units, charge: reading2.charge }));
	} catch (stopped) {
		if (stopped instanceof Stop) return failure(stopped.error);
		throw stopped;
	}
}
var formulas = new Map();
var formulasMax = 200;
function readFormula(cell, argument = "formula") {
	if (typeof cell !== "string" || isBlank(cell)) {
		return failure({
			code: "formula-expected", argument, expected: "a formula as text, such as KBr", received: quoted(cell)
		});
	}
	const text = cell.trim();
	if (text.length > formulaLengthMax) {
		return failure({
			code: "formula-too-long", argument,
			expected: `it has ${text.length} characters, and a formula can have ${formulaLengthMax}`, received: quoted(text),
			advice: "Write repeated groups in brackets with a number, as in (CH2)10."
		});
	}
	const known2 = formulas.get(text);
	if (known2 !== void 0) return known2;
	const read3 = readAsTyped(text, argument);
	const meant = lookAlikes(read3, text, (other) => readAsTyped(other, argument));
	if (meant.length === 0 && read3.ok) {
		if (formulas.size >= formulasMax) formulas.clear();
		formulas.set(text, read3);
	}
	if (meant.length === 0) return read3;
	return lookAlikeError({ text, meant, argument });
}
var lookOf = { 0: "the digit 0", 1: "the digit 1", I: "a capital I" };
function lookAlikeError({ text, meant, argument }) {
	const [first = text] = meant;
	const places = Array.from(text, (_, place) => place).filter((place) => text.charAt(place) !== first.charAt(place));
	const letters = new Set(places.map((place) => `the letter ${first.charAt(place)}`));
	const typed = new Set(places.map((place) => lookOf[text.charAt(place)]));
	const offer = meant.join(" or ");
	return failure({
		code: "formula-look-alike", argument,
		expected: `${[...typed].join(" and ")} where a formula has ${[...letters].join(" and ")}`, received: quoted(text),
		advice: `Did you mean ${offer}? If not, type the number as a subscript such as ₂₀.`, brief: `${offer}?`,
		at: { text, from: places[0] ?? 0 }
	});
}

function sameAtoms(one, other) { return one.length === other.length && one.every(({ element, count }) => other.some((atom) => atom.element === element && atom.count === count)); }
function isHydronium({ charge, atoms }) { return charge === 1 && sameAtoms(atoms, [
	{ element: "H", count: 3 }, { element: "O", count: 1 }
]); }
function matchIon(text, present) {
	for (const { base, charge } of splitCharge(text.trim())) {
		const read3 = readFormula(base);
		const ion = read3.ok ? assembled({ ...read3.value, charge }) : void 0;
		const atoms = ion && isHydronium(ion) ? [{ element: "H", count: 1 }] : ion?.atoms;
		const found = atoms && present.find((one) => one.charge === charge && sameAtoms(one.atoms, atoms));
		if (found) return success(found);
	}
	return failure({
		code: "ion-not-in-formula", argument: "ion", expected: `one of ${present.map(({ ion }) => ion).join(", ")}`,
		received: quoted(text), brief: present.map(({ ion }) => ion).join(" or ")
	});
}

function notAShare(value, argument) {
	if (value > 0 && value <= 100) return void 0;
	return {
		code: "purity-out-of-range", argument, expected: "above 0 % and at most 100 %", received: `${quoted(value)} %`,
		advice: "Check the label of the bottle."
	};
}
function pureShare(purity) {
	if (purity === void 0) return success(1);
	const error = notAShare(purity, "purity_percent");
	return error === void 0 ? success(purity / 100) : failure(error);
}

function molarity({ molarMass: molarMass2, mass, volume, purity }) {
	const error = notAboveZero(
		{ value: mass, argument: "grams", unit: "g" },
		{ value: volume, argument: "volume", unit: "mL" }
	);
	if (error) return failure(error);
	const share = pureShare(purity);
	if (!share.ok) return share;
	return finite(molesPerLitre(mass * share.value / molarMass2 / (volume / 1e3)), "grams");
}

function namedIon(formula, ion) {
	const present = ions(formula);
	if (!present.ok) return present;
	if (present.value.every(({ charge }) => charge === 0)) {
		return failure({
			code: "ion-none", argument: "formula", received: quoted(formula.text),
			advice: "Its particles are molecules: use the molarity of the solution."
		});
	}
	const matched = matchIon(ion, present.value);
	if (!matched.ok) return matched;
	return success({ ion: matched.value, others: present.value.filter((one) => one !== matched.value) });
}

function reagentMolarity({ molarMass: molarMass2, massPercent, density: density2 }) {
	const error = notAShare(massPercent, "mass_percent") ?? notASolutionDensity({ value: density2, argument: "density" });
	if (error) return failure(error);
	return finite(molesPerLitre(10 * massPercent * density2 / molarMass2), "density");
}

function soluteMass({ molarMass: molarMass2, molarity: molarity2, volume, purity }) {
	const error = notAboveZero(
		{ value: molarity2, argument: "molarity", unit: "mol/L" },
		{ value: volume, argument: "volume", unit: "mL" }
	);
	if (error) return failure(error);
	const share = pureShare(purity);
	if (!share.ok) return share;
	return finite(grams(molarity2 * (volume / 1e3) * molarMass2 / share.value), "molarity");
}

var collected = {
	Ag: "silver", As: "arsenic", Ba: "barium", Be: "beryllium", Cd: "cadmium", Co: "cobalt", Cr: "chromium", Cu: "copper",
	Hg: "mercury", Mn: "manganese", Mo: "molybdenum", Ni: "nickel", Pb: "lead", Sb: "antimony", Se: "selenium", Sn: "tin",
	Tl: "thallium", U: "uranium", V: "vanadium", W: "tungsten", Zn: "zinc"
};
var mild = /^(H272.*|H302|H315|H319|H335)$/;
function wasteOf({ atoms }, { substance, codes, massPercent }) {
	const metal = atoms.map(({ element }) => collected[element] ?? "").find((name) => name !== "") ?? "";
	const drain = substance?.drain ?? "no";
	const isAllowed = drain === "yes" || typeof drain === "object" && (massPercent ?? substance?.soldPercent ?? 100) <= drain.upTo;
	const goesTo = isAllowed && metal === "" && codes.every((code) => mild.test(code)) ? "drain" : "waste beaker";
	return { goesTo, metal };
}

// From errors
var spoken = new Map(
	Object.entries({
		accepted: "accepted value", atomic_weight_decimals: "number of atomic-weight decimals", entries: "column of entries",
		figures: "number of figures", first: "first value", formula_1: "first formula", formula_2: "second formula",
		from: "unit to convert from", given: "given table", given_names: "row of given names",
		given_values: "row of given values", grams: "mass", grams_1: "first mass", grams_2: "second mass",
		help_wanted: "column of help wanted", kind: "kind of glassware", level: "level of help", measured: "measured value",
		moles: "amount", number_as_text: "number", own_hints: "table of own hints", purity_percent: "purity",
		second: "second value", settings: "table of settings", signed: "choice of sign", solvent_grams: "mass of solvent",
		stages: "number of stages", steps: "column of steps", ties: "rounding of ties", to: "unit to convert to",
		tolerance_percent: "tolerance"
	})
);
function argumentName(argument) { return spoken.get(argument) ?? argument.replace(/_/g, " "); }
function theArgument(argument) { return /^(?:the |each |line|[^a-z])/.test(argument) ? argument : `the ${argumentName(argument)}`; }

function filledText(template, fillings2) { return template.replace(/\{(\w+)\}/g, (_, name) => fillings2[name] ?? "").replace(/^[a-z]/, (letter) => letter.toUpperCase()); }

var unfit = "{received} can’t be used for {the}: ";
function messages() { return {
	// measurement
	"number-expected": {
		full: "{received} can’t be read as a number for {the}. {advice}", short: "⚠ {name}: not a number"
	},
	"number-two-readings": { full: "{received} for {the} could be {expected}. {advice}", short: "⚠ {brief}?" },
	"number-out-of-range": { full: `${unfit}it must be {expected}. {advice}`, short: "⚠ {name}: power of ten?" },
	"figures-out-of-range": {
		full: "{received} can’t be the number of significant figures. {advice}", short: "⚠ figures: 1 to 30"
	},
	"accepted-zero": {
		full: "With an accepted value of {received} there is no percent error. {advice}", short: "⚠ accepted is 0"
	},
	"mean-zero": {
		full: "The mean of {received} is 0, so there is no percent difference. {advice}", short: "⚠ mean is 0"
	},
	"quantity-expected": { full: "{received} can’t be used for {the}. {advice}", short: "⚠ not {brief}" },
	"unit-other-kind": { full: "{received} can’t be used for {the}. {advice}", short: "⚠ {brief}" },
	"unit-unknown": { full: "{received}: “{brief}” is not a unit known here. {advice}", short: "⚠ unit: {brief}?" },
	"percent-two-readings": { full: "{received} for {the} could be {expected}. {advice}", short: "⚠ {brief}?" },
	"not-above-zero": { full: `${unfit}it must be {expected}. {advice}`, short: "⚠ {name} not above 0" },
	"below-zero": { full: `${unfit}it must be {expected}. {advice}`, short: "⚠ {name} below 0" },
	"glassware-size": { full: "{received} is not {expected}. {advice}", short: "⚠ size: {brief}" },
	// chemistry: formulas and ions
	"formula-expected": { full: `${unfit}type {expected}.`, short: "⚠ not a formula" },
	"formula-too-long": { full: "{received} is too long: {expected}. {advice}", short: "⚠ formula too long" },
	"formula-too-deep": {
		full: "{received}{at} is one bracket too many: {expected}. {advice}", short: "⚠ formula: too many brackets"
	},
	"formula-case": { full: "{received} needs {expected}. {advice}", short: "⚠ {brief}" },
	"formula-character": {
		full: "{received}{at} doesn’t belong in a formula. {advice}", short: "⚠ formula: other character"
	},
	"formula-part-missing": { full: "Part of the formula is missing{at}. {advice}", short: "⚠ formula: part missing" },
	"element-unknown": { full: "{received}{at} is not the symbol of an element. {advice}", short: "⚠ element {brief}?" },
	"bracket-not-closed": { full: "The bracket{at} is never closed. {advice}", short: "⚠ formula: {brief}" },
	"bracket-not-opened": {
		full: "{received}{at} closes no bracket. {advice}", short: "⚠ formula: {brief} out of place"
	},
	"bracket-empty": { full: "The brackets that end{at} are empty. {advice}", short: "⚠ formula: empty brackets" },
	"separator-in-bracket": {
		full: "{received}{at} stands inside an open bracket. {advice}", short: "⚠ formula: bracket still open"
	},
	"coefficient-before-formula": {
		full: "{received} begins with a number. {advice}", short: "⚠ formula: number in front"
	},
	"coefficient-out-of-range": {
		full: "{received}{at} doesn’t say how many: write {expected}. {advice}", short: "⚠ formula: number after the dot"
	},
	"number-out-of-place": {
		full: "The number{at} has nothing before it to count. {advice}", short: "⚠ formula: number out of place"
	},
	"subscript-zero": {
		full: "{received}{at} can’t be a number of atoms. {advice}", short: "⚠ formula: 0 after a symbol"
	},
	"subscript-too-large": {
		full: "{received}{at} is too many: {expected}. {advice}", short: "⚠ formula: number too large"
	},
	"subscript-not-whole": { full: "The number{at} isn’t whole. {advice}", short: "⚠ formula: whole numbers" },
	"isotope-shape": { full: "{received}{at} can’t be read as an isotope. {advice}", short: "⚠ isotope as in [13C]" },
	"isotope-unlikely": { full: "{received}{at} can’t be an isotope. {advice}", short: "⚠ mass number?" },
	"formula-look-alike": { full: "{received} has {expected}. {advice}", short: "⚠ {brief}" },
	"charge-two-readings": { full: "{received} could be {expected}. {advice}", short: "⚠ {brief}" },
	"formula-with-charge": {
		full: "{received} is an ion, not a whole substance. {advice}", short: "⚠ substance without a charge"
	},
	"atomic-weight-none": {
		full: "{received} has no standard atomic weight, as none of its isotopes is stable. {advice}",
		short: "⚠ {brief}: no atomic weight"
	},
	"element-not-in-formula": {
		full: "{received} is not in the formula. Choose {expected}.", short: "⚠ no {brief} in it"
	},
	"ions-weak": {
		full: "{received} is a weak electrolyte: most of it stays whole in water. {advice}",
		short: "⚠ weak: mostly undissociated"
	},
	"ions-sparingly": {
		full: "{received} hardly dissolves: less than 1 g in 100 g of water. {advice}", short: "⚠ hardly dissolves"
	},
	"ions-unknown": { full: "The ions of {received} are not known here. {advice}", short: "⚠ ions not known here" },
	"ion-not-in-formula": {
		full: "{received} is not an ion of this substance. Type {expected}, with its charge.", short: "⚠ ion: {brief}?"
	},
	"ion-none": { full: "{received} gives no ions in water: it stays whole. {advice}", short: "⚠ gives no ions" },
	"molarity-above-saturated": {
		full: "{received} is more than dissolves: {expected}. {advice}", short: "⚠ more than dissolves"
	},
	// chemistry: solutions
	"density-unlikely": {
		full: "{received} is not a likely density: solutions have {expected}. {advice}", short: "⚠ {name} in kg/m³?"
	},
	"purity-out-of-range": { full: `${unfit}it must be {expected}. {advice}`, short: "⚠ {name}: 0 to 100 %" },
	"final-below-stock-volume": {
		full: "A final volume of {received} is less than the stock taken, {expected}. {advice}",
		short: "⚠ final volume too small"
	},
	"factor-not-above-one": {
		full: "{received} can’t be a dilution factor: it must be {expected}. {advice}", short: "⚠ factor not above 1"
	},
	"stages-out-of-range": {
		full: "{received} can’t be the number of stages: it must be {expected}. {advice}", short: "⚠ stages: 1 to 100"
	},
	"percent-of-line": { full: `${unfit}it must be {expected}. {advice}`, short: "⚠ {name}: 0 to 100 %" },
	"percent-beyond-line": {
		full: "{received} is too far from the two lines of the table. {advice}", short: "⚠ {name} far from the two lines"
	},
	"lines-alike": { full: "Both lines have {received}. {advice}", short: "⚠ two lines alike" },
	"percent-unclear": { full: "{received} could be {expected}. {advice}", short: "⚠ % w/w or % w/v?" },
	"concentration-unit-unknown": {
		full: "{received} is not a unit that can be converted here. Type {expected}.", short: "⚠ unit of concentration?"
	},
	"conversion-needs": { full: "{advice} Give {expected}.", short: "⚠ {brief} needed" },
	"solute-over-whole": {
		full: "{received} would be more solute than solution. {advice}", short: "⚠ more solute than solution"
	},
	"target-not-below-stock": {
		full: "A target of {received} is not below the stock, {expected}. {advice}", short: "⚠ target not below stock"
	},
	// workbook
	"plan-without-lines": { full: "No {expected} was found in {received}. {advice}", short: "⚠ no lines in the Plan" },
	"plan-setting": { full: "{argument} {received}. {advice}", short: "⚠ setting" },
	"plan-line": { full: "{argument}: {received}. {advice}", short: "⚠ line of the Plan" },
	// lab: a quantity and what it is given
	"quantity-unknown": { full: "{received} is not a quantity known here. {advice}", short: "⚠ quantity unknown" },
	"given-shape": {
		full: "The given table has {received}, but needs two: name and value. {advice}", short: "⚠ given: two columns"
	},
	"given-unknown": { full: "{received} is not used here. {advice}", short: "⚠ given: {brief}" },
	"given-twice": { full: "{received} is given twice. {advice}", short: "⚠ given twice: {brief}" },
	"given-missing": { full: "{the} is missing. {advice}", short: "⚠ {brief} missing" },
	// lab: hints, readings, numbers for teams
	"hint-level": { full: "{received} is not a level of help. {advice}", short: "⚠ level 1, 2 or 3" },
	"lesson-setting": {
		full: "The setting “{argument}” can’t be {received}. Type {expected} in the Plan.", short: "⚠ setting"
	},
	"numbers-shelf": { full: `${unfit}it needs {expected}. {advice}`, short: "⚠ not with this shelf" },
	"numbers-solute": {
		full: "{received} can’t be used here: this activity needs {expected}. {advice}", short: "⚠ solute"
	},
	"numbers-start": { full: `${unfit}it needs {expected}. {advice}`, short: "⚠ number to start from" },
	"nothing-to-picture": {
		full: "The picture needs {expected}, and there is {received}. {advice}", short: "⚠ nothing to draw"
	},
	"particles-too-far-apart": {
		full: "The picture needs {expected}, but {received}. {advice}", short: "⚠ too far apart to draw"
	},
	// functions: cells and ranges
	"ranges-unfit": { full: "These ranges don’t fit each other: {received}. {advice}", short: "⚠ ranges do not fit" },
	"one-cell-only": { full: "Give {expected} for {the}, not {received}. {advice}", short: "⚠ {name}: one cell only" },
	"columns-only": { full: "Give {expected} for {the}, not {received}. {advice}", short: "⚠ {name}: one column only" },
	"range-shape": { full: "{the} has {received}, but needs {expected}. {advice}", short: "⚠ {name}: other shape" },
	"range-missing": { full: "{the} is missing. Select {expected}.", short: "⚠ {name} missing" },
	"arguments-too-many": {
		full: "{argument} got {received} arguments and takes {expected}. {advice}", short: "⚠ too many arguments"
	},
	"cell-missing": { full: "{the} is blank. Type it or point to its cell: {expected}.", short: "⚠ {name} missing" },
	"cell-holds-error": { full: "The cell for {the} holds {received}. {advice}", short: "⚠ {name}: an error" },
	"whole-number-expected": { full: `${unfit}type {expected}.`, short: "⚠ {name}: whole number" },
	"yes-or-no-expected": { full: `${unfit}type {expected}.`, short: "⚠ {name}: TRUE or FALSE" },
	"text-expected": { full: "{received} can’t be used for {the}. {advice}", short: "⚠ {name}: not text" },
	"text-too-long": { full: "{received} is too long for {the}. {advice}", short: "⚠ {name}: too long" },
	"ratio-two-readings": { full: "{received} could be a factor of {expected}. {advice}", short: "⚠ {brief}?" },
	"choice-unknown": { full: `${unfit}type {expected}.`, short: "⚠ {name}: not one of the choices" },
	"out-of-limits": { full: "{received} can’t be {the}. {advice}", short: "⚠ {name}: {expected}" },
	"target-zero": { full: "A target of 0 needs {expected}. {advice}", short: "⚠ target 0 needs a tolerance" },
	"result-not-finite": {
		full: "The result for {the} is beyond any number that a cell can hold. {advice}",
		short: "⚠ result beyond all numbers"
	}
}; }

function fillings({ argument, expected, received, advice, brief, at }) {
	return {
		argument, name: argumentName(argument), the: theArgument(argument), at: at ? ` at ${placeInText(at)}` : "", expected,
		received, advice, brief
	};
}
function errorText(error) { return filledText(messages()[error.code].full, fillings(error)); }
function shortErrorText(error) { return filledText(messages()[error.code].short, fillings(error)); }

// From functions
function asCell(result, place) {
	if (result.ok) return result.value;
	if (place === "alone") throw new Error(errorText(result.error));
	return shortErrorText(result.error);
}

function computed(entry, values) {
	if (!values.ok) return values;
	const result = entry.compute(...values.value);
	if (!result.ok || isAllFinite(result.value)) return result;
	return failure({
		code: "result-not-finite", argument: entry.name, advice: "Look for a number that is far too large or far too small."
	});
}
function isAllFinite(value) { return Array.isArray(value) ? value.every(isAllFinite) : typeof value !== "number" || Number.isFinite(value); }

function isList(value) { return Array.isArray(value); }
function isDate(value) { return Object.prototype.toString.call(value) === "[object Date]"; }
function cellOf(value) {
	if (value === void 0 || value === null) return void 0;
	if (typeof value === "string" || typeof value === "number" || typeof value === "boolean" || isDate(value)) {
		return value;
	}
	return Object.prototype.toString.call(value);
}
function gridOf(argument) {
	if (!isList(argument)) return [[cellOf(argument)]];
	const rows = argument.some(isList) ? argument.map((row) => isList(row) ? row : [row]) : [argument];
	const columns = Math.max(1, ...rows.map((row) => row.length));
	return rows.map((row) => Array.from({ length: columns }, (_, column) => cellOf(row[column])));
}
function shapeOf(grid) { return { rows: grid.length, columns: grid[0]?.length ?? 1 }; }
function isOneCell({ rows, columns }) { return rows === 1 && columns === 1; }
function cellAt(grid, row, column) {
	const line = grid.length === 1 ? grid[0] : grid[row];
	return line?.length === 1 ? line[0] : line?.[column];
}
function isAllBlank(grid) { return grid.every((row) => row.every(isBlank)); }
function shapeText({ rows, columns }) {
	const rowsText = `${rows} ${rows === 1 ? "row" : "rows"}`;
	const columnsText = `${columns} ${columns === 1 ? "column" : "columns"}`;
	if (columns === 1) return rowsText;
	return rows === 1 ? columnsText : `${rowsText} and ${columnsText}`;
}

function commonShape(shapes) {
	const common = { rows: 1, columns: 1 };
	for (const side of ["rows", "columns"]) {
		const long = shapes.filter((shape) => shape[side] > 1);
		const [first] = long;
		if (first === void 0) continue;
		const other = long.find((shape) => shape[side] !== first[side]);
		if (other !== void 0) {
			return failure({
				code: "ranges-unfit", argument: other.name,
				received: `${shapeText(first)} for ${theArgument(first.name)} and ${shapeText(other)} for ${theArgument(other.name)}`,
				advice: `Make both cover the same ${side}, or give one cell.`
			});
		}
		common[side] = first[side];
	}
	return success(common);
}

// From measurement
function patternOnUse(source, flags) {
	let pattern;
	return () => pattern ?? (pattern = new RegExp(source, flags));
}

function ungrouped(text, mark) {
	if (!text.includes(mark)) return text;
	const groups = text.split(mark);
	return /^[1-9][0-9]{0,2}( [0-9]{3})+$/.test(groups.join(" ")) ? groups.join("") : void 0;
}
function reading(whole, fraction) { return whole === void 0 ? [] : [{ whole, fraction }]; }
function decimalReadings(body, decimalMark) {
	const points = body.split(".").length - 1;
	const commas = body.split(",").length - 1;
	if (body.includes(" ")) {
		if (points + commas > 1) return [];
		const at2 = body.search(/[.,]/);
		if (at2 < 0) return reading(ungrouped(body, " "));
		const behind = body.slice(at2 + 1);
		if (behind.includes(" ") && !/^([0-9]{3} )+[0-9]{1,3}$/.test(behind)) return [];
		return reading(ungrouped(body.slice(0, at2), " "), behind.replace(/ /g, ""));
	}
	if (points + commas === 0) return reading(body);
	if (points > 0 && commas > 0) {
		const last = Math.max(body.lastIndexOf("."), body.lastIndexOf(","));
		const group = body.charAt(last) === "." ? "," : ".";
		return reading(ungrouped(body.slice(0, last), group), body.slice(last + 1));
	}
	const mark = points > 0 ? "." : ",";
	const asThousands = reading(ungrouped(body, mark));
	if (points + commas > 1) return asThousands;
	const at = body.indexOf(mark);
	const asDecimal = reading(body.slice(0, at), body.slice(at + 1));
	if (decimalMark !== void 0) {
		const isOther = mark !== (decimalMark === "point" ? "." : ",");
		return isOther && asThousands.length > 0 ? asThousands : asDecimal;
	}
	return mark === "," ? [...asThousands, ...asDecimal] : asDecimal;
}
function otherReading(body, decimalMark) {
	if (!/^[1-9][0-9]{0,2}[.,][0-9]{3}$/.test(body)) return void 0;
	const [taken] = decimalReadings(body, decimalMark);
	const [whole = "", fraction = ""] = body.split(/[.,]/);
	return taken?.fraction === void 0 ? { whole, fraction } : { whole: whole + fraction, fraction: void 0 };
}

function restAfter(text, { end }) { return text.slice(end).replace(/[\u200b\u2060]/g, "").trim(); }

var space = /[\s\u200b\u2060]/;
var digit2 = /[0-9]/;
var markOrDigit = /[0-9.,]/;
var apostrophe = /['’]/;
var times = /[×xX*·⋅∙✕✖]/;
var onTheLine = { digit: digit2, minus: /[-−–‐‑﹣－]/, plus: /[+＋]/ };
var raised2 = { digit: /[⁰¹²³⁴-⁹]/, minus: /⁻/, plus: /⁺/ };
var exponentDigits = 5;
function scanNumber(text) {
	let at = 0;
	const isAt = (kind) => kind.test(text.charAt(at));
	const skip = (kind) => {
		while (isAt(kind)) at += 1;
	};
	const took = (kind) => {
		const isHere = isAt(kind);
		if (isHere) at += 1;
		return isHere;
	};
	const attempt = (read3) => {
		const before = at;
		const found = read3();
		if (found === void 0) at = before;
		return found;
	};
	const tookMinus = ({ minus, plus }) => {
		const negative2 = took(minus);
		if (!negative2) took(plus);
		return negative2;
	};
	const exponentIn = (signs) => {
		const negative2 = tookMinus(signs);
		const from = at;
		skip(signs.digit);
		if (at === from || at - from > exponentDigits) return void 0;
		const size2 = Number(text.slice(from, at).normalize("NFKC"));
		return negative2 ? -size2 : size2;
	};
	const raisedExponent = () => exponentIn(raised2);
	const afterCaret = () => {
		skip(space);
		if (!took(/\^/)) return void 0;
		skip(space);
		const isOpen = took(/[({]/);
		const found = exponentIn(onTheLine);
		return isOpen && !took(/[)}]/) ? void 0 : found;
	};
	const afterLetter = () => took(/[eE]/) ? exponentIn(onTheLine) : void 0;
	const afterSpacedLetter = () => {
		if (!took(space)) return void 0;
		skip(space);
		return took(/[eE]/) && (isAt(onTheLine.minus) || isAt(onTheLine.plus)) ? exponentIn(onTheLine) : void 0;
	};
	const minusAlone = () => isAt(onTheLine.minus) ? exponentIn(onTheLine) : void 0;
	const powerOfTen = () => attempt(raisedExponent) ?? attempt(afterCaret);
	const timesPowerOfTen = () => {
		skip(space);
		const isTimes = took(times);
		skip(space);
		return isTimes && took(/1/) && took(/0/) ? powerOfTen() ?? attempt(minusAlone) : void 0;
	};
	const gapBeforeDigit = () => {
		if (!took(apostrophe)) skip(space);
		return isAt(digit2) || void 0;
	};
	skip(space);
	const negative = tookMinus(onTheLine);
	skip(space);
	let body = "";
	for (; ; ) {
		const from = at;
		if (took(markOrDigit)) body += text.charAt(from);
		else if (digit2.test(body) && attempt(gapBeforeDigit)) body += " ";
		else break;
	}
	if (!digit2.test(body)) return void 0;
	if (/[.,].*[.,]$/.test(body) && !/^\d{1,3}(?:,\d{3})+\.$/.test(body)) {
		body = body.slice(0, -1);
		at -= 1;
	}
	const ofOne = body === "10" ? attempt(powerOfTen) : void 0;
	if (ofOne !== void 0) return { negative, body: "1", exponent: ofOne, hasExponent: true, end: at };
	const exponent = attempt(afterLetter) ?? attempt(afterSpacedLetter) ?? attempt(timesPowerOfTen);
	return { negative, body, exponent: exponent ?? 0, hasExponent: exponent !== void 0, end: at };
}

var plainPlaces = 25;
function shiftedDecimal({ digits, lastPlace, negative }) {
	const sign = negative && /[1-9]/.test(digits) ? "-" : "";
	const plain2 = digits.replace(/^0+(?=\d)/, "");
	if (Math.abs(lastPlace) > plainPlaces) return `${sign}${plain2}e${lastPlace}`;
	if (lastPlace >= 0) return plain2 === "0" ? "0" : sign + plain2 + "0".repeat(lastPlace);
	const padded = plain2.padStart(1 - lastPlace, "0");
	return `${sign}${padded.slice(0, lastPlace)}.${padded.slice(lastPlace)}`;
}

var longestNumber = 60;
function readNumber(cell, argument, options = {}) {
	const text = typeof cell === "number" ? String(cell) : cell;
	if (typeof text !== "string" || text.length > longestNumber) return notANumber(cell, argument);
	const scanned = scanNumber(text);
	if (scanned === void 0 || restAfter(text, scanned) !== "") return notANumber(cell, argument);
	if (typeof cell === "string") return numberFromScan(scanned, { cell, argument, options });
	const number = numberFromScan(scanned, { cell: text, argument, options: {} });
	return number.ok ? success({ ...number.value, isText: false }) : number;
}
function numberFromScan(scanned, { cell, argument, options }) {
	const readings = decimalReadings(scanned.body, options.decimalMark);
	const [first, second] = readings.map((reading2) => typedNumber(reading2, scanned, cell));
	if (first === void 0) return notANumber(cell, argument);
	if (second !== void 0) {
		const same = options.sameEitherWay;
		if (same === void 0 || same(first) !== same(second)) {
			return twoReadings(cell, argument, readings.map(shownReading).join(" or "));
		}
	}
	const isZero = !/[1-9]/.test(scanned.body);
	if (!Number.isFinite(first.value) || first.value === 0 && !isZero) return outOfRange(cell, argument);
	return success(first);
}
function numberOfOtherMark(scanned, { cell, decimalMark }) {
	const reading2 = otherReading(scanned.body, decimalMark);
	return reading2 && typedNumber(reading2, scanned, cell);
}
function shownReading({ whole, fraction }) { return fraction === void 0 ? whole : `${whole}.${fraction}`; }
function typedNumber({ whole, fraction }, scanned, typed) {
	const { exponent, hasExponent, negative } = scanned;
	const digits = whole + (fraction ?? "");
	const significant = digits.replace(/^0+/, "");
	const isWhole2 = fraction === void 0 && !hasExponent;
	const lastPlace = exponent - (fraction?.length ?? 0);
	const decimal = shiftedDecimal({ digits, lastPlace, negative });
	return {
		value: Number(decimal), decimal, figures: Math.max(significant.length, 1), lastPlace,
		ambiguousZeros: isWhole2 ? significant.length - significant.replace(/0+$/, "").length : 0, isText: true, typed
	};
}
function notANumber(cell, argument) { return failure({
	code: "number-expected", argument, received: quoted(cell),
	advice: "Type digits with at most one decimal mark, such as 0.25."
}); }
function twoReadings(cell, argument, both) { return failure({
	code: "number-two-readings", argument, expected: both, received: quoted(cell), advice: "Type the one you mean.",
	brief: both
}); }
function outOfRange(cell, argument) { return failure({
	code: "number-out-of-range", argument, expected: "between 10^-300 and 10^300", received: quoted(cell),
	advice: "Check its power of ten."
}); }

var unitTable = {
	volume: "L|1e3 dL|1e2 cL|1e1 mL|1e0 µL|1e-3|μL dm³|1e3|dm3 cm³|1e0|cm3 m³|1e6|m3",
	mass: "kg|1e3 g|1e0 mg|1e-3 µg|1e-6|μg ng|1e-9", amount: "kmol|1e3 mol|1e0 mmol|1e-3 µmol|1e-6|μmol",
	concentration: "mol/L|1e0 mmol/L|1e-3 mol/dm³|1e0|mol/dm3 M|1e0 mM|1e-3 µM|1e-6|μM µmol/L|1e-6|μmol/L",
	density: "g/mL|1e0 g/cm³|1e0|g/cm3 kg/m³|1e-3|kg/m3"
};

var longestUnit = 40;
var prefixes = { kilo: "k", deci: "d", centi: "c", milli: "m", micro: "μ", nano: "n" };
var stems = { litre: "L", liter: "L", gramme: "g", gram: "g", mole: "mol", mol: "mol", molar: "M" };
var word = /^(kilo|deci|centi|milli|micro|nano)?(litre|liter|gramme|gram|mole|mol|molar)s?$/;
var cubicWord = /^cubic(centi|deci)?met(?:re|er)s?$/;
var shortForms = {
	cc: "cm3", ccm: "cm3", gm: "g", gms: "g", mls: "mL", mgs: "mg", kgs: "kg", kilo: "kg", kilos: "kg", mmols: "mmol",
	ltr: "L", ltrs: "L"
};
function symbolOfWord(text) {
	const lower = text.toLowerCase();
	if (text === lower || text === "CC") {
		const short = Object.keys(shortForms).includes(lower) ? shortForms[lower] : void 0;
		if (short !== void 0) return short;
	}
	if (text !== lower && text !== text.toUpperCase() && text.slice(1) !== lower.slice(1)) return void 0;
	const [isWord, prefix, stem = ""] = word.exec(lower) ?? [];
	if (isWord !== void 0) return `${prefix === void 0 ? "" : prefixes[prefix]}${stems[stem]}`;
	const [isCubic, size2 = ""] = cubicWord.exec(lower) ?? [];
	return isCubic === void 0 ? void 0 : `${prefixes[size2] ?? ""}m3`;
}
var percentSign = /^(?:(?:w\/w|m\/m|wt|mass)?(?:%|percent)|(?:%|percent)(?:\(?(?:w\/w|m\/m|wt)\)?|by(?:mass|weight)))$/i;
function plain(text) { return text.normalize("NFKC").replace(/[−–]/g, "-").replace(/\^/g, "").trim().replace(/\s*\.$/, ""); }
var known;
function knownUnits() {
	if (known) return known;
	known = new Map();
	for (const [kind, row] of Object.entries(unitTable)) {
		for (const pair of row.split(" ")) {
			const columns = pair.split("|");
			const symbol = columns[0] ?? "";
			const power = Number(columns[1]?.slice("1e".length));
			known.set(columns[2] ?? symbol, { kind, symbol, power });
		}
	}
	known.set("%", { kind: "percent", symbol: "%", power: 0 });
	known.set("molal", { kind: "molality", symbol: "mol/kg", power: 0 });
	return known;
}
function simpleUnit(text) {
	const joined = text.replace(/\s/g, "");
	if (percentSign.test(joined)) return knownUnits().get("%");
	const symbol = symbolOfWord(joined) ?? joined.replace(/^u(?=[A-Za-z])/, "μ").replace(/^([dcmnμ]?)l$/, (_, size2) => `${size2}L`);
	return knownUnits().get(symbol);
}
var quotients = {
	"amount/volume": { kind: "concentration", shift: 3 }, "mass/volume": { kind: "density", shift: 0 },
	"mass/amount": { kind: "molar mass", shift: 0 }, "amount/mass": { kind: "molality", shift: 3 }
};
function quotient(over, under) {
	if (over === void 0 || under === void 0) return void 0;
	const made = quotients[`${over.kind}/${under.kind}`];
	if (made === void 0) return void 0;
	return { kind: made.kind, symbol: `${over.symbol}/${under.symbol}`, power: over.power - under.power + made.shift };
}
function withNegativeExponent(text) {
	const [, body = "", exponent = ""] = /^(.+)-([13])$/.exec(text) ?? [];
	const cube = exponent === "3" ? "3" : "";
	for (let at = 1; at < body.length; at += 1) {
		const under = simpleUnit(body.slice(at) + cube);
		const over = under && simpleUnit(body.slice(0, at).replace(/[\s·⋅∙•*.]+$/, ""));
		const found = quotient(over, under);
		if (found) return found;
	}
	return void 0;
}
function unitNamed(text) {
	if (text.length > longestUnit) return void 0;
	const wanted2 = plain(text);
	const simple = simpleUnit(wanted2);
	if (simple) return simple;
	const [, over, under] = /^(.+?)\s*(?:\/|\bper\b)\s*(.+)$/i.exec(wanted2) ?? [];
	if (over !== void 0 && under !== void 0) return quotient(simpleUnit(over), simpleUnit(under));
	return withNegativeExponent(wanted2);
}
function unitsOfKind(kind) {
	const symbols = [...knownUnits().values()].filter((unit) => unit.kind === kind).map(({ symbol }) => symbol);
	return symbols.join(", ").replace(/, ([^,]*)$/, " or $1");
}

var longestQuantity = 100;
var called = {
	volume: { one: "a volume", example: "200 mL" }, mass: { one: "a mass", example: "2.5 g" },
	amount: { one: "an amount", example: "0.25 mol" }, concentration: { one: "a concentration", example: "0.3 mol/L" },
	density: { one: "a density", example: "1.05 g/mL" }, percent: { one: "a percentage", example: "98 %" }
};
function nameOfKind(kind) { return kind === "molar mass" || kind === "molality" ? `a ${kind}` : called[kind].one; }
function nameOfUnit({ kind, symbol }) { return kind === "density" && !/^(?:g\/mL|g\/cm³|kg\/m³)$/.test(symbol) ? "a mass concentration" : nameOfKind(kind); }
function wanted(kind) { return `${called[kind].one} such as ${called[kind].example}`; }
function bareName(kind) { return called[kind].one.replace(/an? /, ""); }
function readQuantity(cell, kind, argument, options = {}) {
	const refused = () => failure({
		code: "quantity-expected", argument, received: quoted(cell), advice: `Give ${wanted(kind)}.`,
		brief: called[kind].one
	});
	if (typeof cell === "number") return withoutUnit(readNumber(cell, argument), kind, { cell, argument });
	if (typeof cell !== "string" || cell.length > longestQuantity) return refused();
	const scanned = scanNumber(cell);
	if (scanned === void 0) return refused();
	const unitTyped = restAfter(cell, scanned);
	const unit = unitNamed(unitTyped);
	const inDefaultUnit = { ...scanned, exponent: scanned.exponent + (unit?.power ?? 0) };
	const number = numberFromScan(inDefaultUnit, { cell, argument, options });
	if (!number.ok) return number.error.code === "number-expected" ? refused() : number;
	if (unitTyped === "") return withoutUnit(number, kind, { cell, argument });
	if (unit === void 0) {
		return failure({
			code: "unit-unknown", argument, received: quoted(cell),
			advice: `Give ${called[kind].one} in ${unitsOfKind(kind)}.`,
			brief: unitTyped.length > 12 ? `${unitTyped.slice(0, 12)}…` : unitTyped
		});
	}
	if (unit.kind !== kind) {
		return failure({
			code: "unit-other-kind", argument, received: `${quoted(cell)}, ${nameOfUnit(unit)},`,
			advice: kind === "concentration" && unit.kind === "density" ? `Give ${wanted(kind)}; CONVERTCONCENTRATION works it out.` : `Give ${wanted(kind)}.`,
			brief: `${bareName(kind)}, not ${unitTyped}`
		});
	}
	return success({ ...number.value, unit: unitTyped });
}
function withoutUnit(number, kind, { cell, argument }) {
	if (!number.ok) return number;
	if (kind === "percent" && number.value.value <= 1 && number.value.value !== 0) {
		return percentTwoReadings(number.value, { cell, argument });
	}
	return success({ ...number.value, unit: "" });
}
function percentTwoReadings(number, { cell, argument }) {
	const asPercent = Number((number.value * 100).toPrecision(15));
	const both = `${number.value} % or ${asPercent} %`;
	return failure({
		code: "percent-two-readings", argument, expected: both, received: quoted(cell),
		advice: 'Type it as text with its sign, such as "98 %".', brief: both
	});
}

function withPower(scanned, power) { return { ...scanned, exponent: scanned.exponent + power }; }
function readMeasure(cell, argument, options = {}) {
	const scanned = typeof cell === "string" && cell.length <= longestQuantity ? scanNumber(cell) : void 0;
	if (typeof cell !== "string" || scanned === void 0) {
		const number2 = readNumber(cell, argument, options);
		if (!number2.ok) return number2;
		return success({ number: number2.value, converted: number2.value, unit: void 0, unitTyped: "" });
	}
	const number = numberFromScan(scanned, { cell, argument, options });
	if (!number.ok) return number;
	const unitTyped = restAfter(cell, scanned);
	const unit = unitNamed(unitTyped);
	const converted = numberFromScan(withPower(scanned, unit?.power ?? 0), { cell, argument, options });
	return converted.ok ? success({ number: number.value, converted: converted.value, unit, unitTyped }) : converted;
}
function unitNotKnown({ number, unitTyped }, argument) { return failure({
	code: "unit-unknown", argument, received: quoted(number.typed),
	advice: "Type the number alone, or with a unit such as g, mL or mol/L.", brief: shortUnit(unitTyped)
}); }
function shortUnit(unit) { return unit.length > 12 ? `${unit.slice(0, 12)}…` : unit; }

function significantFigures(number) { return number.figures - number.ambiguousZeros; }

// From functions
function shown2(value) { return String(Number(value.toPrecision(12))); }
function readFactor(cell, argument) {
	const read3 = readNumber(cell, argument);
	if (read3.ok) return success(read3.value.value);
	if (read3.error.code !== "number-expected") return read3;
	const [, first, second] = typeof cell === "string" && /^([^:]{1,20})(?::| to )([^:]{1,20})$/.exec(cell) || [];
	const part = readNumber(first, argument);
	const parts = readNumber(second, argument);
	if (part.ok && parts.ok && part.value.value > 0 && parts.value.value > 0) {
		const inAll = shown2(parts.value.value / part.value.value);
		const besides = shown2(parts.value.value / part.value.value + 1);
		return failure({
			code: "ratio-two-readings", argument, expected: `${inAll} or ${besides}`, received: quoted(cell),
			advice: `Type ${inAll} for ${parts.value.typed.trim()} parts in all, or ${besides} if that many are added.`,
			brief: `${inAll} or ${besides}`
		});
	}
	return failure({ ...read3.error, advice: "Type how many times the volume grows at each stage, such as 10." });
}

function readArgument(cell, argument) {
	const { name, kind, optional } = argument;
	if (kind === "entry") return success(cell);
	if (isBlank(cell)) {
		if (optional) return success(void 0);
		return failure({ code: "cell-missing", argument: name, expected: exampleOf(argument) });
	}
	if (typeof cell === "string" && hostErrors.test(cell.trim())) {
		return failure({
			code: "cell-holds-error", argument: name, received: `the error ${quoted(cell)}`, advice: "Mend that one first."
		});
	}
	if (kind === "formula") return readFormula(cell, name);
	if (typeof cell === "string" && cell.length > longestText) return textTooLong(cell, name);
	switch (kind) {
		case "substance":
			return success(cell);
		case "volume":
		case "mass":
		case "amount":
		case "concentration":
		case "density":
		case "percent":
			return valueIn(readQuantity(cell, kind, name));
		case "percentage points":
			return valueIn(readNumber(withoutPercentSign(cell), name));
		case "number":
			return valueIn(readNumber(cell, name));
		case "measure":
			return readMeasure(cell, name);
		case "factor":
			return readFactor(cell, name);
		case "digits":
			return readNumber(cell, name);
		case "figures":
			return readFigures(cell, name);
		case "whole number":
			return readWholeNumber(cell, argument);
		case "yes or no":
			return readYesOrNo(cell, argument);
		case "text":
			return readText(cell, argument);
		default:
			throw new Error(`Nothing reads ${kind} from one cell.`);
	}
}
var longestText = 300;
function textTooLong(cell, name) { return failure({
	code: "text-too-long", argument: name, received: quoted(cell),
	advice: `It has ${cell.length} characters; ${longestText} is the most.`
}); }
var hostErrors = /^#(N\/A|REF!|VALUE!|DIV\/0!|NAME\?|NUM!|NULL!|ERROR!)/;
function valueIn(read3) { return read3.ok ? success(read3.value.value) : read3; }
function withoutPercentSign(cell) { return typeof cell === "string" ? cell.replace(/\s*%\s*$/, "") : cell; }
var anotherNumber = patternOnUse(String.raw`(?<![\p{L}\d]\^?[-−–]?)\d`, "u");
var unitBegins = patternOnUse(String.raw`^[\p{L}°%‰′″]`, "u");
function readFigures(cell, name) {
	const options = { sameEitherWay: significantFigures };
	const read3 = readMeasure(cell, name, options);
	if (!read3.ok) return read3;
	const { number, unit, unitTyped } = read3.value;
	const behind = unitTyped.normalize("NFKC");
	const isUnit = unitTyped === "" || unit !== void 0 || unitBegins().test(behind) && !anotherNumber().test(behind);
	return isUnit ? success(number) : readNumber(cell, name, options);
}
function readWholeNumber(cell, argument) {
	const read3 = valueIn(readNumber(cell, argument.name));
	if (!read3.ok || Number.isInteger(read3.value)) return read3;
	return failure({
		code: "whole-number-expected", argument: argument.name, expected: exampleOf(argument), received: quoted(cell)
	});
}
function readYesOrNo(cell, argument) {
	if (typeof cell === "boolean") return success(cell);
	const word2 = typeof cell === "string" ? cell.trim().toLowerCase() : "";
	if (word2 === "true" || word2 === "yes") return success(true);
	if (word2 === "false" || word2 === "no") return success(false);
	return failure({
		code: "yes-or-no-expected", argument: argument.name, expected: exampleOf(argument), received: quoted(cell)
	});
}
function eitherOf(choices) { return `${choices.slice(0, -1).join(", ")} or ${choices[choices.length - 1]}`; }
function readText(cell, argument) {
	const { name, oneOf, otherNames = {} } = argument;
	if (typeof cell !== "string") {
		return failure({
			code: "text-expected", argument: name, received: quoted(cell),
			advice: oneOf ? `Type ${eitherOf(oneOf)}.` : "Type it as text."
		});
	}
	if (!oneOf) return success(cell.trim());
	const plain2 = cell.trim().toLowerCase().replace(/\s+/g, " ");
	const wanted2 = Object.keys(otherNames).includes(plain2) ? otherNames[plain2] : plain2;
	const chosen = oneOf.find((choice) => choice.toLowerCase() === wanted2);
	if (chosen !== void 0) return success(chosen);
	return failure({ code: "choice-unknown", argument: name, expected: eitherOf(oneOf), received: quoted(cell) });
}
function exampleOf({ name, kind, about }) {
	switch (kind) {
		case "formula":
			return "a formula such as KBr";
		case "volume":
			return "a volume such as 200 mL";
		case "mass":
			return "a mass such as 2.5 g";
		case "amount":
			return "an amount such as 0.25 mol";
		case "concentration":
			return "a concentration such as 0.3 mol/L";
		case "density":
			return "a density such as 1.05 g/mL";
		case "percent":
		case "percentage points":
			return "a percentage such as 5 %";
		case "whole number":
			return "a whole number such as 3";
		case "yes or no":
			return "TRUE or FALSE";
		case "factor":
			return "a number above 1 such as 10";
		case "number":
		case "measure":
		case "digits":
		case "figures":
			return "a number such as 0.25";
		default:
			if (about === void 0) throw new Error(`Nothing says what ${name} is.`);
			return about;
	}
}

function isWhole({ kind }) { return kind === "row" || kind === "column" || kind === "table"; }
function readWhole(grid, argument) {
	const { name, kind, optional } = argument;
	const shape = shapeOf(grid);
	if (optional && isAllBlank(grid)) return success(void 0);
	if (isOneCell(shape) && grid[0]?.[0] === void 0) {
		return failure({ code: "range-missing", argument: name, expected: expectedText(argument) });
	}
	if (kind === "row" && shape.rows > 1 || kind === "column" && shape.columns > 1) {
		return failure({
			code: "range-shape", argument: name, expected: `one ${kind}`, received: shapeText(shape),
			advice: `Select one ${kind} only.`
		});
	}
	if (kind === "row") return success(grid[0] ?? []);
	return success(kind === "column" ? grid.map(([cell]) => cell) : grid);
}
function expectedText({ kind, about = "" }) { return `a ${kind} of cells for it: ${about}`; }

function spreadOf(entry, cells) {
	if (cells.slice(entry.arguments.length).some((cell) => !isAllBlank(gridOf(cell)))) {
		return failure({
			code: "arguments-too-many", argument: entry.name,
			expected: entry.arguments.length === 1 ? "one" : `at most ${entry.arguments.length}`,
			received: String(cells.length), advice: `Give only ${entry.arguments.map(({ name }) => name).join(", ")}.`
		});
	}
	const laid = entry.arguments.map((argument, place) => {
		const grid = gridOf(cells[place]);
		return { argument, grid, shape: shapeOf(grid) };
	});
	const ranges = laid.filter(({ argument, shape: shape2 }) => !isWhole(argument) && !isOneCell(shape2));
	const shape = commonShape(ranges.map(({ argument, shape: shape2 }) => ({ ...shape2, name: argument.name })));
	if (!shape.ok) return shape;
	const readers = laid.map(readerOf);
	return success({
		shape: shape.value,
		alone: ranges.length === 0,
		valuesAt(row, column) {
			const values = [];
			for (const read3 of readers) {
				const value = read3(row, column);
				if (!value.ok) return value;
				values.push(value.value);
			}
			return success(values);
		},
		isBlankAt: (row, column) => ranges.every(({ grid }) => isBlank(cellAt(grid, row, column)))
	});
}
function readerOf({ argument, grid, shape }) {
	if (isWhole(argument)) {
		const whole = readWhole(grid, argument);
		return () => whole;
	}
	const read3 = new Map();
	return (row, column) => {
		const at = (shape.rows === 1 ? 0 : row) * shape.columns + (shape.columns === 1 ? 0 : column);
		const known2 = read3.get(at);
		if (known2 !== void 0) return known2;
		const value = readArgument(cellAt(grid, row, column), argument);
		read3.set(at, value);
		return value;
	};
}

function cellByCell(cells) {
	const spread = asCell(spreadOf(this, cells), "alone");
	if (spread.alone) return asCell(computed(this, spread.valuesAt(0, 0)), "alone");
	return Array.from(
		{ length: spread.shape.rows },
		(_, row) => Array.from(
			{ length: spread.shape.columns },
			(_2, column) => spread.isBlankAt(row, column) ? "" : asCell(computed(this, spread.valuesAt(row, column)), "in a range")
		)
	);
}

function oneTable(cells) {
	const spread = asCell(singleCells(this, cells), "alone");
	const rows = asCell(computed(this, spread.valuesAt(0, 0)), "alone");
	return [(this.columns ?? []).slice(0, rows[0]?.length), ...rows];
}
function singleCells(entry, cells) {
	for (const [place, argument] of entry.arguments.entries()) {
		const shape = shapeOf(gridOf(cells[place]));
		if (isWhole(argument) || isOneCell(shape)) continue;
		return failure({
			code: "one-cell-only", argument: argument.name, expected: "one cell", received: shapeText(shape),
			advice: `${entry.name} fills a whole table, so call it once for each value.`
		});
	}
	return spreadOf(entry, cells);
}

var blankStatus = "blank";
function rowByRow(cells) {
	const spread = asCell(columnsOnly(this, cells), "alone");
	if (spread.alone) return [asCell(computed(this, spread.valuesAt(0, 0)), "alone")];
	const width = this.columns?.length ?? 1;
	const rowOf = (first) => [first, ...Array.from({ length: width - 1 }, () => "")];
	const entries = gridOf(cells[this.arguments.findIndex(({ kind }) => kind === "entry")]);
	const entryIsRange = !isOneCell(shapeOf(entries));
	return Array.from({ length: spread.shape.rows }, (_, row) => {
		if (entryIsRange && isBlank(cellAt(entries, row, 0))) return rowOf(blankStatus);
		if (spread.isBlankAt(row, 0)) return rowOf("");
		const filled = asCell(computed(this, spread.valuesAt(row, 0)), "in a range");
		return typeof filled === "string" ? rowOf(filled) : filled;
	});
}
function columnsOnly(entry, cells) {
	for (const [place, argument] of entry.arguments.entries()) {
		const shape = shapeOf(gridOf(cells[place]));
		if (isWhole(argument) || shape.columns === 1) continue;
		return failure({
			code: "columns-only", argument: argument.name, expected: "one column or one cell", received: shapeText(shape),
			advice: `${entry.name} fills a row for each entry, so put the entries in one column.`
		});
	}
	return spreadOf(entry, cells);
}

function withMolarMass(formula, goOn) {
	const mass = molarMass(formula);
	return mass.ok ? goOn(mass.value) : mass;
}

function withinLimits(value, { argument, least, most }) {
	if (value === void 0 || value >= least && value <= most) return success(value);
	return failure({
		code: "out-of-limits", argument, expected: `${least} to ${most}`, received: String(value),
		advice: `Type a whole number from ${least} to ${most}.`
	});
}

// From measurement
function comparedValues(one, other) {
	for (const { name, measure } of [one, other]) {
		if (measure.unitTyped !== "" && measure.unit === void 0) return unitNotKnown(measure, name);
	}
	const [first, second] = [one.measure, other.measure];
	if (first.unit === void 0 || second.unit === void 0) {
		return success({ one: first.number.value, other: second.number.value });
	}
	if (first.unit.kind === second.unit.kind) {
		return success({ one: first.converted.value, other: second.converted.value });
	}
	return failure({
		code: "unit-other-kind", argument: other.name,
		received: `${quoted(second.number.typed)}, ${nameOfKind(second.unit.kind)},`,
		advice: `Give ${nameOfKind(first.unit.kind)}, like ${theArgument(one.name)}.`, brief: "units of two kinds"
	});
}

var glassware = {
	"ASTM burette A": "10:0.02:m 25:0.03:m 50:0.05:m 100:0.1:m",
	"ASTM burette B": "10:0.04:m 25:0.06:m 50:0.1:m 100:0.2:m",
	"ASTM graduated cylinder A": "5:0.05 10:0.1 25:0.17 50:0.25 100:0.5 250:1 500:2 1000:3:m 2000:6:m",
	"ASTM graduated cylinder B": "5:0.1 10:0.2 25:0.34 50:0.5 100:1 250:2 500:4 1000:6:m 2000:12:m",
	"ASTM graduated pipette A": "1:0.01:m 2:0.01 5:0.02 10:0.03 25:0.05:m",
	"ASTM graduated pipette B": "1:0.02:m 2:0.02:m 5:0.04:m 10:0.06:m 25:0.1:m",
	"ASTM volumetric flask A": "5:0.02:m 10:0.02:m 25:0.03 50:0.05 100:0.08 200:0.1:m 250:0.12 500:0.2:m 1000:0.3 2000:0.5",
	"ASTM volumetric flask B": "5:0.04:m 10:0.04:m 25:0.06 50:0.1 100:0.16 200:0.2:m 250:0.24 500:0.4:m 1000:0.6 2000:1",
	"ASTM volumetric pipette A": "0.5:0.006 1:0.006 2:0.006 3:0.01 4:0.01 5:0.01 6:0.01 7:0.01 10:0.02 15:0.03:m 20:0.03:m 25:0.03 50:0.05 100:0.08",
	"ASTM volumetric pipette B": "0.5:0.012 1:0.012 2:0.012 3:0.02 4:0.02 5:0.02 6:0.03 7:0.03 10:0.04 15:0.06:m 20:0.06:m 25:0.06 50:0.1 100:0.16",
	"ISO burette A": "1:0.006 2:0.01 5:0.01 10:0.03 25:0.05 50:0.05 100:0.1",
	"ISO burette B": "1:0.01 2:0.02 5:0.02 10:0.05 25:0.1 50:0.1 100:0.2",
	"ISO graduated cylinder A": "5:0.05:m 10:0.1:m 25:0.25:m 50:0.5:m 100:0.5:m 250:1:m 500:2.5:m 1000:5:m 2000:10:m",
	"ISO graduated cylinder B": "5:0.1:m 10:0.2:m 25:0.5:m 50:1:m 100:1:m 250:2:m 500:5:m 1000:10:m 2000:20:m",
	"ISO graduated pipette A": "1:0.007:m 2:0.01:m 5:0.03:m 10:0.05:m 25:0.1:m",
	"ISO graduated pipette B": "1:0.01:m 2:0.02:m 5:0.05:m 10:0.1:m 25:0.2:m",
	"ISO volumetric flask A": "1:0.025 2:0.025 5:0.025 10:0.025 20:0.04 25:0.04 50:0.06 100:0.1 200:0.15 250:0.15 500:0.25 1000:0.4 2000:0.6 5000:1.2",
	"ISO volumetric flask B": "1:0.05 2:0.05 5:0.05 10:0.05 20:0.08 25:0.08 50:0.12 100:0.2 200:0.3 250:0.3 500:0.5 1000:0.8 2000:1.2 5000:2.4",
	"ISO volumetric pipette A": "0.5:0.005 1:0.008 2:0.01 5:0.015 10:0.02 20:0.03 25:0.03 50:0.05 100:0.08",
	"ISO volumetric pipette B": "0.5:0.01 1:0.015 2:0.02 5:0.03 10:0.04 20:0.06 25:0.06 50:0.1 100:0.15",
	"beaker": "50:2.5:c 100:5:c 250:12.5:c 500:25:c 1000:50:c"
};

function percentError({ measured, accepted, signed = false }) {
	if (accepted === 0) {
		return failure({
			code: "accepted-zero", argument: "accepted", received: "0", advice: "Compare the plain difference instead."
		});
	}
	const difference = 100 * (measured - accepted) / Math.abs(accepted);
	return finite(percent(signed ? difference : Math.abs(difference)), "measured");
}

function withDecimalMark(written, decimalMark) { return decimalMark === "comma" ? written.replace(".", ",") : written; }

return { atomsKey, success, failure, quoted, finite, grams, gramsPerMole, gramsPerMillilitre, millilitres, moles, molesPerLitre, percent, elementBySymbol, allElements, elementOf, relativeMass, molarMass, composition, notAboveZero, belowZero, density, dilutionError, stockVolume, diluentVolume, dilutedMolarity, dilutionFactor, strongAcids, weakElectrolytes, atomsOfUnits, isWater, anhydrousAtoms, hiddenBy, ions, notASolutionDensity, notALine, massPercentOfDensity, isBlank, readFormula, notAShare, pureShare, molarity, namedIon, reagentMolarity, soluteMass, wasteOf, filledText, asCell, computed, patternOnUse, restAfter, scanNumber, readNumber, numberFromScan, numberOfOtherMark, longestUnit, unitNamed, readQuantity, withPower, unitNotKnown, significantFigures, spreadOf, cellByCell, oneTable, rowByRow, withMolarMass, withinLimits, comparedValues, glassware, percentError, withDecimalMark };
},
// Part chemistry/cautions: chemistry/cautionTexts, chemistry/pictogramsOf, chemistry/cautionList.generated, chemistry/listedHazards, chemistry/substancesListed
"chemistry/cautions"(part) {
const { failure, hiddenBy, molarMass, notAShare, readFormula, success, wasteOf } = part("base");

// From chemistry
var adviceTexts = {
	eyes: "Wear eye protection.",
	corrosive: "Wear goggles, gloves and a lab coat; rinse skin or eyes with plenty of water at once and get help.",
	gloves: "Wear gloves; wash off splashes and wash hands afterwards.",
	hood: "Use a fume hood or strong ventilation; breathe in no dust, mist or vapour.",
	mouth: "Never eat, drink or pipette by mouth here; wash hands afterwards.",
	poison: "Staff only, behind lock and key; call a doctor at once after any contact or swallowing.",
	flame: "Keep away from flames, sparks and hot surfaces.",
	oxidiser: "Keep away from anything that burns; never grind or heat it with other substances.",
	metal: "Keep it off metal; use its own bottle or glass.",
	asthma: "Not for people with asthma or allergies; raise no dust or spray.",
	lasting: "Choose a safer substance if it does the job. Solid and strong solutions: staff only, gloves, no dust.",
	organs: "Avoid repeated contact; gloves, no dust, wash hands.", waters: "Keep it out of drains, rivers and soil.",
	dries: "Wear gloves; wash hands afterwards.", acids: "Never mix it with acid.",
	acidToWater: "Add the acid to water, slowly and with stirring, never water to acid; let it cool.",
	heatOfSolution: "Dissolve it slowly in cold water in heat-proof glass: it gets hot; let it cool before filling up."
};
var corrosive = ["corrosive"];
var irritant = ["eyes", "gloves"];
var lasting = ["lasting", "gloves", "hood"];
var waters = ["waters"];
function code(means, signal, pictogram, advice) { return { means, signal, pictogram, advice }; }
var byCode;
function codeTexts() {
	byCode ?? (byCode = allCodeTexts());
	return byCode;
}
function allCodeTexts() { return {
	H225: code("liquid and vapour catch fire very easily", "Danger", "02", ["flame", "hood"]),
	H226: code("liquid and vapour catch fire", "Warning", "02", ["flame", "hood"]),
	H271: code("can make other things burn or explode", "Danger", "03", ["oxidiser", "eyes"]),
	H272: code("makes a fire burn more fiercely", "Danger", "03", ["oxidiser", "eyes"]),
	"H272/3": code("makes a fire burn more fiercely", "Warning", "03", ["oxidiser", "eyes"]),
	H290: code("eats away some metals", "Warning", "05", ["metal"]),
	H300: code("deadly if swallowed", "Danger", "06", ["poison", "mouth"]),
	H301: code("poisonous if swallowed", "Danger", "06", ["mouth", "gloves", "eyes"]),
	H302: code("harms if swallowed", "Warning", "07", ["mouth"]),
	H310: code("deadly through the skin", "Danger", "06", ["poison", "gloves"]),
	H311: code("poisonous through the skin", "Danger", "06", ["gloves", "eyes"]),
	H312: code("harms through the skin", "Warning", "07", ["gloves"]),
	H314: code("burns skin badly and damages eyes", "Danger", "05", corrosive),
	H315: code("irritates skin", "Warning", "07", ["gloves"]),
	H317: code("can start a skin allergy", "Warning", "07", ["gloves"]),
	H318: code("damages eyes permanently", "Danger", "05", corrosive),
	H319: code("irritates eyes strongly", "Warning", "07", irritant),
	H330: code("deadly if breathed in", "Danger", "06", ["poison", "hood"]),
	H331: code("poisonous if breathed in", "Danger", "06", ["hood", "eyes"]),
	H332: code("harms if breathed in", "Warning", "07", ["hood"]),
	H334: code("can start asthma or an allergy when breathed in", "Danger", "08", ["asthma", "hood"]),
	H335: code("irritates the airways", "Warning", "07", ["hood"]),
	H336: code("makes sleepy or dizzy", "Warning", "07", ["hood"]),
	H340: code("changes inherited genes", "Danger", "08", lasting),
	H341: code("may change inherited genes", "Warning", "08", lasting),
	H350: code("causes cancer", "Danger", "08", lasting),
	H350i: code("causes cancer when breathed in", "Danger", "08", lasting),
	H351: code("may cause cancer", "Warning", "08", lasting),
	H360: code("harms fertility or the unborn child", "Danger", "08", lasting),
	H360D: code("harms the unborn child", "Danger", "08", lasting),
	H360Df: code("harms the unborn child and may harm fertility", "Danger", "08", lasting),
	H360F: code("harms fertility", "Danger", "08", lasting),
	H360FD: code("harms fertility and the unborn child", "Danger", "08", lasting),
	H361: code("may harm fertility or the unborn child", "Warning", "08", lasting),
	H361d: code("may harm the unborn child", "Warning", "08", lasting),
	H361f: code("may harm fertility", "Warning", "08", lasting),
	H362: code("may harm breast-fed children", "", "", lasting),
	H370: code("damages organs", "Danger", "08", ["organs", "hood"]),
	H371: code("may damage organs", "Warning", "08", ["organs", "hood"]),
	H372: code("damages organs with long or repeated contact", "Danger", "08", ["organs"]),
	H373: code("may damage organs with long or repeated contact", "Warning", "08", ["organs"]),
	H400: code("very poisonous to life in water", "Warning", "09", waters),
	H410: code("very poisonous to life in water for a long time", "Warning", "09", waters),
	H411: code("poisonous to life in water for a long time", "", "09", waters),
	H412: code("harms life in water for a long time", "", "", waters),
	EUH031: code("gives off poisonous gas with acid", "", "", ["acids", "hood"]),
	EUH032: code("gives off very poisonous gas with acid", "", "", ["acids", "hood"]),
	EUH066: code("dries and cracks skin on repeated contact", "", "", ["dries"]),
	EUH071: code("burns the airways", "", "", ["hood"])
}; }
var confidenceTexts = {
	h: "harmonised, CLP Annex VI", t: "two sources agree", o: "one source, not harmonised",
	m: "from memory, not confirmed"
};
var cautionTexts = {
	unlisted: "Unlisted: nothing is known here about this formula. That does not mean that it is harmless.",
	unlistedAdvice: "Read the safety data sheet before anyone opens the bottle; until then treat it as harmful.",
	otherHydrate: function(listed) { return `Only ${listed} is listed. What follows is for that form and may differ for the one you typed.`; },
	notClassified: "Not classified: below the limits for labels.",
	notClassifiedAsFarAsKnown: "Not classified by the limits that are known.",
	notClassifiedAsFarAsKnownAdvice: "That is not the same as harmless: eye protection stays on.",
	notClassifiedUndiluted: function(confidence) { return `Not classified by the source we have (${confidence}).`; },
	notClassifiedAdvice: "That is not the same as harmless: eye protection stays on, and ordinary care.",
	ifItIs: function(name) { return `If it is ${name}:`; },
	asSold: function(strength) { return `As it is sold, about ${strength} %. Give its mass percent for another strength.`; },
	strictest: function(strength) { return `Sold in several strengths, often about ${strength} %: this is the strictest. Give the mass percent of your bottle.`; },
	notKnown: "Not known: the figures are from memory and could not be confirmed.",
	notKnownPlain: "Its hazards are not known for sure, so treat it as harmful.", notClassifiedPlain: "Not classified.",
	notKnownAdvice: "See the supplier’s safety data sheet; eye protection stays on.",
	strengthNotKnown: "Not known: only a weaker solution is listed.",
	partNotKnown: function(codes) { return `Not known at this strength: ${codes}.`; },
	partNotKnownAdvice: "See the supplier’s safety data sheet for this strength.",
	nearEdge: "Close to a limit, so the stricter side is shown.",
	minimumClass: function(codes) { return `Just below the limit of ${codes}, which is a least class only: the truth may be stricter.`; },
	minimumClassPlain: "Just below a limit, so treat it as if it were above.",
	extremePh: "At pH 11.5 or more, or 2 or less, it counts as burning skin and eyes unless tests say otherwise.",
	extremePhAdvice: "Measure the pH of what you made; wear eye protection.",
	drain: "Leftovers may go down the drain with plenty of water, where your local rules allow it.",
	beaker: "Nothing down the drain: all of it, rinsings too, into the waste beaker. Staff deal with it.",
	metalBeaker: function(metal) { return `Nothing down the drain: all of it, rinsings too, into the waste beaker for ${metal}. Staff deal with it.`; },
	school: function(use) { return `Use in schools, common practice: ${use}.`; },
	schoolAdvice: "Rules differ by place: your school’s own rule decides.",
	deferring: "This is no safety data sheet. Read the one from your supplier; follow local rules and your school’s own assessment."
};

var irritation = ["H315", "H319"];
var precedence = [{ where: ["H314", "H318"], drops: irritation }, { where: ["H334"], drops: ["H317", ...irritation] }];
function pictogramsOf(codes) {
	const texts = codeTexts();
	const dropped = precedence.filter(({ where }) => where.some((code2) => codes.includes(code2)));
	const digits = new Set(
		codes.filter((code2) => !dropped.some(({ drops }) => drops.includes(code2))).map((code2) => texts[code2]?.pictogram ?? "").filter((pictogram) => pictogram !== "")
	);
	if (digits.has("06")) digits.delete("07");
	return [...digits].sort().map((pictogram) => `GHS${pictogram}`);
}

var cautionList = `
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

function end(text, isOpenByDefault) {
	if (text === "") return void 0;
	const isTurned = text.startsWith("!");
	return { percent: Number(isTurned ? text.slice(1) : text), isOpen: isTurned !== isOpenByDefault };
}
function limitOf(text) {
	const [code2, from, to, counted, marks] = text.split(",");
	return {
		code: marks.includes("3") ? `${code2}/3` : code2, from: end(from, false), to: end(to, true),
		countedGramsPerMole: counted === "" ? void 0 : Number(counted), confidence: marks.charAt(0),
		isWithoutLimit: marks.includes("n"), isMinimum: marks.includes("*"), dependsOnPh: marks.includes("p")
	};
}
function drainOf(mark) { return mark === "d" ? "yes" : mark === "n" ? "never" : mark === "b" ? "no" : { upTo: Number(mark.slice(1)) }; }
function substanceOf(line2) {
	const [name, spellings, names, sold, codes, marks, schoolUse, limits] = line2.split("|");
	const confidence = marks.charAt(0);
	return {
		name,
		spellings: spellings.split(" "),
		names: names === "" ? [] : names.split(";"),
		soldPercent: /\d/.test(sold) ? Number(sold) : void 0,
		codes: codes.split(" ").filter((pair) => pair !== "").map((pair) => {
			const [code2 = "", own] = pair.split(":");
			return { code: code2, confidence: own ?? confidence };
		}),
		confidence,
		drain: drainOf(marks.slice(1)),
		schoolUse,
		limits: limits === "" ? [] : limits.split(";").map(limitOf)
	};
}
var list;
function listedSubstances() {
	list ?? (list = cautionList.trim().split("\n").map((line2) => {
		const columns = line2.split("|", 3);
		const names = columns[2] ?? "";
		let read;
		return {
			name: columns[0] ?? "", spellings: columns[1]?.split(" ") ?? [], names: names === "" ? [] : names.split(";"),
			read: () => read ?? (read = substanceOf(line2))
		};
	}));
	return list;
}

function plainFormula(text) { return text.replace(/(\d?)½/g, (_, whole) => `${whole || "0"}·5`).normalize("NFKC").replace(/[\s\u200b\ufeff]/g, "").replace(/(\d),(\d)/g, "$1·$2").replace(/\((?:aq|s|l)\)$/, "").replace(/[[{]/g, "(").replace(/[\]}]/g, ")").replace(/[•*.⋅∙‧・]/g, "·"); }
function withoutWater(spelling) { return spelling.replace(/·(\d+[·,])?[\d⁄]*H2O$/, ""); }
function waterOf(plain) { return plain.slice(withoutWater(plain).length); }
function plainName(text) { return text.normalize("NFKC").trim().toLowerCase().replace(/\s+/g, " ").replace(/sulph/g, "sulf").replace(/aluminum/g, "aluminium"); }
function substancesListed(text) {
	const all = listedSubstances();
	const found = (kind, test) => {
		const substances = all.filter(test).map(({ read }) => read());
		return substances.length === 0 ? void 0 : { ...kind, substances };
	};
	const wanted = plainFormula(text);
	const dry = withoutWater(wanted);
	const name = plainName(text);
	const water = waterOf(wanted);
	return found({ listing: "listed", by: "formula" }, ({ spellings }) => spellings.includes(wanted)) ?? // Any spelling of the salt with any of the waters that the list has for it.
	found(
		{ listing: "listed", by: "formula" },
		({ spellings }) => spellings.some((spelling) => waterOf(spelling) === water) && spellings.some((spelling) => withoutWater(spelling) === dry)
	) ?? found({ listing: "listed", by: "name" }, (one) => one.name.toLowerCase() === name || one.names.includes(name)) ?? found(
		{ listing: "another hydrate", by: "formula" },
		({ spellings }) => spellings.some((spelling) => withoutWater(spelling) === dry)
	);
}

function cautions(formula, massPercent) {
	const error = massPercent === void 0 ? void 0 : notAShare(massPercent, "mass_percent");
	if (error) return failure(error);
	const found = substancesListed(formula.text);
	if (found === void 0) return success(unlisted(formula));
	return success(together(found, found.by === "name" ? void 0 : formula, massPercent));
}
function cautionsNamed(cell, massPercent) {
	const read = readFormula(cell);
	if (read.ok) return cautions(read.value, massPercent);
	const error = massPercent === void 0 ? void 0 : notAShare(massPercent, "mass_percent");
	if (error) return failure(error);
	const found = typeof cell === "string" ? substancesListed(cell) : void 0;
	return found === void 0 ? read : success(together(found, void 0, massPercent));
}
function line(about, text, advice, plain = text) { return {
	about, code: "", text, plain, advice, confidence: void 0
}; }
var lastLine = line("deferring", "", cautionTexts.deferring);
function wasteLine({ goesTo, metal }) {
	if (goesTo === "drain") return line("waste", "", cautionTexts.drain);
	return line("waste", "", metal === "" ? cautionTexts.beaker : cautionTexts.metalBeaker(metal));
}
function unlisted(formula) {
	const waste = wasteOf(formula, { substance: void 0, codes: [], massPercent: void 0 });
	return {
		listing: "unlisted", name: "", listedNames: [], verdict: "unsure", signalWord: "", pictograms: [],
		statements: [line("note", cautionTexts.unlisted, cautionTexts.unlistedAdvice), wasteLine(waste), lastLine],
		codes: [], unknownCodes: [], waste
	};
}
function together({ listing, substances }, formula, massPercent) {
	const all = substances.map(
		(substance) => knownOf(substance, { listing, formula: formula ?? formulaOf(substance), massPercent })
	);
	const codes = Array.from(new Set(all.flatMap(({ holding }) => holding.map(({ code: code2 }) => code2))));
	const waste = all.map((known) => known.waste).find(({ goesTo }) => goesTo !== "drain") ?? all[0]?.waste;
	if (waste === void 0) throw new Error("Found without a substance.");
	const blocks = all.length === 1 ? all.flatMap(({ statements }) => statements) : all.flatMap(({ name, holding, statements }) => [
		{
			...line("substance", cautionTexts.ifItIs(name), ""), signalWord: signalOf(holding.map(({ code: code2 }) => code2))
		},
		...statements
	]);
	return {
		listing, name: all.map(({ name }) => name).join(" or "), listedNames: substances.map(({ name }) => name),
		verdict: verdictOf(all), signalWord: signalOf(codes), pictograms: pictogramsOf(codes),
		statements: [...blocks, wasteLine(waste), lastLine], codes: codes.map(bareCode),
		unknownCodes: Array.from(new Set(all.flatMap(({ unknownCodes }) => unknownCodes.map(bareCode)))), waste
	};
}
function verdictOf(all) {
	if (all.some(({ verdict }) => verdict === "hazards")) return "hazards";
	const isOpen = all.some(({ hasDoubts }) => hasDoubts);
	return !isOpen && all.some(({ verdict }) => verdict === "none") ? "none" : "unsure";
}
function knownOf(substance, { listing, formula, massPercent }) {
	const [primary = ""] = substance.spellings;
	const { holding, unknownCodes, verdict, statements } = massPercent === void 0 ? asSold(substance, formula) : atStrength(substance, formula, massPercent);
	return {
		name: nameOfForm(substance, formula),
		holding,
		unknownCodes,
		verdict,
		hasDoubts: verdict === "unsure" && substance.codes.length + substance.limits.length > 0,
		statements: [
			...listing === "listed" ? [] : [line("form", cautionTexts.otherHydrate(primary), "")], ...statements,
			...substance.schoolUse === "" ? [] : [line("use", cautionTexts.school(substance.schoolUse), cautionTexts.schoolAdvice)]
		],
		waste: wasteOf(formula, {
			substance, codes: [...holding.map(({ code: code2 }) => code2), ...unknownCodes], massPercent
		})
	};
}
function nameOfForm({ name, spellings: [primary = ""] }, { text }) {
	return waterOf(plainFormula(text)) !== waterOf(plainFormula(primary)) ? name.replace(/ [a-z]+hydrate$/, "") : name;
}
function formulaOf({ name, spellings }) {
	const read = readFormula(spellings[0]);
	if (!read.ok) throw new Error(`${name}: ${spellings[0]} cannot be read`);
	return read.value;
}
function asSold(substance, formula) {
	const { codes, limits, confidence, soldPercent } = substance;
	const percentCounted = percentCountedFor(substance, formula, 100);
	const strongest = limits.filter((limit) => !limit.isWithoutLimit && isWithin(percentCounted(limit), limit));
	const holding = tidied([...codes, ...strongest]);
	const sold = new Set(tidied(codes).map(({ code: code2 }) => code2));
	const isStricter = holding.some(({ code: code2 }) => !sold.has(code2));
	const shown = soldPercent === void 0 ? "" : String(soldPercent);
	const strength = shown === "" ? [] : [line("note", isStricter ? cautionTexts.strictest(shown) : cautionTexts.asSold(shown), "", "")];
	if (holding.length > 0) {
		return {
			holding, unknownCodes: [], verdict: "hazards",
			statements: [...withCare(holding.map(statementOf), substance), ...strength]
		};
	}
	return {
		holding, unknownCodes: [], verdict: isSettled(confidence) ? "none" : "unsure",
		statements: [confidence === "m" ? notKnown() : notClassifiedBy(confidence), ...strength]
	};
}
function notKnown() { return line("note", cautionTexts.notKnown, cautionTexts.notKnownAdvice, cautionTexts.notKnownPlain); }
function notClassifiedBy(confidence) { return line(
	"note",
	cautionTexts.notClassifiedUndiluted(confidenceTexts[confidence]),
	cautionTexts.notClassifiedAdvice,
	isSettled(confidence) ? cautionTexts.notClassifiedPlain : cautionTexts.notKnownPlain
); }
function isSettled(confidence) { return confidence === "h" || confidence === "t"; }
var nearEdge = 0.05;
var nearMinimum = 0.5;
function isWithin(percent, { from, to }) {
	if (from && (from.isOpen ? percent <= from.percent : percent < from.percent)) return false;
	return !(to && (to.isOpen ? percent >= to.percent : percent > to.percent));
}
function percentCountedFor(substance, formula, massPercent) {
	const [primary = ""] = substance.spellings;
	const mass = formulaMass(formula);
	const listed = waterOf(plainFormula(formula.text)) === waterOf(plainFormula(primary)) ? mass : formulaMass(formulaOf(substance));
	const asWeighed = mass === void 0 || listed === void 0 ? massPercent : massPercent * Math.max(mass, listed) / mass;
	return ({ countedGramsPerMole }) => {
		if (countedGramsPerMole === void 0) return asWeighed;
		return mass === void 0 ? massPercent : massPercent * countedGramsPerMole / mass;
	};
}
function atStrength(substance, formula, massPercent) {
	const counted = percentCountedFor(substance, formula, massPercent);
	const known = substance.limits.filter((limit) => !limit.isWithoutLimit);
	const within = known.filter((limit) => isWithin(counted(limit), limit));
	const near = known.filter((limit) => {
		const percent = counted(limit);
		return limit.from !== void 0 && !isWithin(percent, limit) && percent < limit.from.percent * (1 + 1e-12) && percent >= limit.from.percent * (1 - nearEdge);
	});
	const holding = tidied([...within, ...near]);
	const shown = new Set(holding.map(({ code: code2 }) => code2));
	const unknown = substance.limits.filter(({ isWithoutLimit, code: code2 }) => isWithoutLimit && !shown.has(code2));
	const minimum = known.filter((limit) => {
		const percent = counted(limit);
		return limit.isMinimum && limit.from !== void 0 && percent < limit.from.percent && percent >= limit.from.percent * nearMinimum && !near.includes(limit);
	});
	const statements = withCare(holding.map(statementOf), substance);
	const goesByPh = substance.limits.some(({ dependsOnPh }) => dependsOnPh);
	const isSureOfAll = unknown.length + minimum.length === 0 && !goesByPh;
	const isBeyond = substance.limits.length === 0 && massPercent > (substance.soldPercent ?? 100);
	if (holding.length === 0) statements.push(noneHolding(substance, { isSureOfAll, isBeyond }));
	if (near.length > 0) statements.push(line("note", cautionTexts.nearEdge, ""));
	if (minimum.length > 0) {
		const { minimumClass, partNotKnownAdvice, minimumClassPlain } = cautionTexts;
		statements.push(line("note", minimumClass(codeList(minimum)), partNotKnownAdvice, minimumClassPlain));
	}
	if (unknown.length > 0) {
		statements.push(line("note", cautionTexts.partNotKnown(codeList(unknown)), cautionTexts.partNotKnownAdvice));
	}
	if (goesByPh) {
		statements.push(line("note", cautionTexts.extremePh, cautionTexts.extremePhAdvice));
	}
	const isNone = isSettled(substance.confidence) && isSureOfAll && !isBeyond;
	return {
		holding, unknownCodes: unknown.map(({ code: code2 }) => code2),
		verdict: holding.length > 0 ? "hazards" : isNone ? "none" : "unsure", statements
	};
}
function noneHolding({ confidence, codes }, { isSureOfAll, isBeyond }) {
	const { strengthNotKnown, notKnownAdvice, notKnownPlain } = cautionTexts;
	if (confidence === "m") return notKnown();
	if (isBeyond) return line("note", strengthNotKnown, notKnownAdvice, notKnownPlain);
	if (!isSureOfAll) {
		return line("note", cautionTexts.notClassifiedAsFarAsKnown, cautionTexts.notClassifiedAsFarAsKnownAdvice);
	}
	return codes.length === 0 && !isSettled(confidence) ? notClassifiedBy(confidence) : line("note", cautionTexts.notClassified, cautionTexts.notClassifiedAdvice);
}
function formulaMass(formula) {
	const mass = molarMass(formula);
	return mass.ok ? mass.value : void 0;
}
function sentence(words) { return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`; }
function bareCode(code2) { return code2.replace("/3", ""); }
function codeList(holding) { return Array.from(new Set(holding.map(({ code: code2 }) => `${bareCode(code2)} (${codeTexts()[code2]?.means ?? ""})`))).join(", "); }
function tidied(all) {
	const codes = new Set(all.map(({ code: code2 }) => code2));
	for (const code2 of hiddenBy(codes)) codes.delete(code2);
	return Array.from(codes).map((code2) => ({
		code: code2, confidence: all.find((one) => one.code === code2)?.confidence ?? "m"
	}));
}
function signalOf(codes) {
	const words = codes.map((code2) => codeTexts()[code2]?.signal ?? "");
	return words.includes("Danger") ? "Danger" : words.includes("Warning") ? "Warning" : "";
}
function statementOf({ code: code2, confidence }) {
	const text = codeTexts()[code2];
	const advice = text?.advice ?? [];
	return {
		about: "hazard", code: bareCode(code2),
		text: `${bareCode(code2)}: ${text?.means ?? ""} (${confidenceTexts[confidence]})`,
		plain: sentence(text?.means ?? ""), advice: advice.map((name) => adviceTexts[name]).join(" "), confidence
	};
}
var acids = ["HCl", "H2SO4", "HNO3", "H3PO4", "CH3COOH", "HCOOH", "HClO4", "HF", "HBr"];
var hotBases = ["NaOH", "KOH"];
function withCare(statements, { spellings }) {
	if (!statements.some(({ code: code2 }) => code2 === "H314")) return [...statements];
	const [formula = ""] = spellings;
	const care = acids.includes(formula) ? adviceTexts.acidToWater : hotBases.includes(formula) ? adviceTexts.heatOfSolution : "";
	return care === "" ? [...statements] : [...statements, line("care", "", care)];
}
function cautionRows({ signalWord, statements }) { return statements.map((statement, row) => [
	statement.signalWord ?? (row === 0 ? signalWord : ""), statement.text, statement.advice
]); }

return { adviceTexts, cautionTexts, cautions, cautionsNamed, cautionRows };
},
// Part CAUTIONS: functions/entries/cautionsEntry
"CAUTIONS"(part) {
const { cautionRows, cautionsNamed } = part("chemistry/cautions");
const { oneTable, success } = part("base");

// From functions/entries
var cautionsEntry = {
	name: "CAUTIONS",
	arguments: [
		{
			name: "formula", kind: "substance",
			about: "formula of the substance as it stands in the bottle, or its name, such as glucose"
		},
		{ name: "mass_percent", kind: "percent", optional: true }
	],
	columns: ["signal word", "what it can do", "what to do about it"],
	call: oneTable,
	compute(substance, massPercent) {
		const found = cautionsNamed(substance, massPercent);
		return found.ok ? success(cautionRows(found.value).map((row) => [...row])) : found;
	}
};
return { entry: cautionsEntry };
},
// Part lab/texts/feedback: lab/judging/span, lab/judging/typedEntry, lab/judging/worked, lab/judging/tolerance
"lab/texts/feedback"(part) {
// From lab/judging
var relativeSlack = 1e-12;
function isWithin(value, { low, high }, room = 0) {
	const slack = relativeSlack * Math.max(Math.abs(value), Math.abs(low), Math.abs(high));
	return value >= low - room - slack && value <= high + room + slack;
}
function distanceFrom(value, { low, high }) { return value < low ? low - value : value > high ? value - high : 0; }
function leadingPlace(value) {
	const size = Math.abs(value);
	const place = Math.floor(Math.log10(size));
	const digits = size / 10 ** place;
	if (digits > 1.001 && digits < 9.99) return place;
	const [, exponent] = size.toExponential(12).split("e");
	return Number(exponent);
}
function tenTo(power) { return Number(`1e${power}`); }

function lastFigureFilledUp({ value, figuresMin }, asked) {
	const sure = leadingPlace(value) - figuresMin + 1;
	const wanted = "decimals" in asked ? -asked.decimals : leadingPlace(value) - asked.figures + 1;
	return tenTo(Math.min(sure, wanted));
}
function isShort({ figuresMax, lastPlace }, asked) {
	if (figuresMax < 2) return false;
	return "decimals" in asked ? lastPlace > -asked.decimals : figuresMax < asked.figures;
}
function hasFiguresAsked(entry, asked) {
	if ("decimals" in asked) return entry.lastPlace === -asked.decimals;
	return entry.figuresMin <= asked.figures && asked.figures <= entry.figuresMax;
}

function numbersWith(step, molarMass, carried) {
	const numbers = { ...step.numbers, "molar mass": molarMass, ...carried };
	for (const { name, relation } of step.quantity.buildsOn) {
		if (carried[name] === void 0 && relation) numbers[name] = relation(numbers);
	}
	return numbers;
}
function ordered(first, middle, last) { return {
	low: Math.min(first, middle, last), middle, high: Math.max(first, middle, last)
}; }
function spansOver(step, calculation, { molarMass = step.molarMass, carried = {} } = {}) {
	const at = (mass) => {
		const result = calculation(numbersWith(step, mass, carried));
		return typeof result === "number" ? [result] : result;
	};
	if (!molarMass) return at(Number.NaN).map((value) => ordered(value, value, value));
	const [low, high] = [at(molarMass.low), at(molarMass.high)];
	return at(molarMass.middle).map((middle, index) => ordered(low[index] ?? middle, middle, high[index] ?? middle));
}
function spanOver(step, calculation, carried = {}) {
	const [span] = spansOver(step, calculation, { carried });
	if (!span) throw new Error(`${step.quantity.name}: a calculation gave no value`);
	return span;
}

function placeAsked(value, asked) { return "decimals" in asked ? tenTo(-asked.decimals) : tenTo(leadingPlace(value) - asked.figures + 1); }
function toleranceOf(span, { asked, wideClose, coarsest }) {
	const floor = coarsest ? Math.max(placeAsked(coarsest.low, asked), placeAsked(coarsest.high, asked)) : 0;
	return {
		span, asked, placeLow: Math.max(placeAsked(span.low, asked), floor),
		placeHigh: Math.max(placeAsked(span.high, asked), floor), wideClose
	};
}
function acceptedEnds({ span, placeLow, placeHigh }) { return {
	low: span.low - placeLow / 2, high: span.high + placeHigh / 2
}; }
function isOnTarget(value, tolerance) { return tolerance.span.middle === 0 ? value === 0 : isWithin(value, acceptedEnds(tolerance)); }
function closeness(entry, tolerance) {
	const { span, placeLow, placeHigh, wideClose, asked } = tolerance;
	const target = Math.abs(span.middle);
	if (target === 0) return false;
	if (isShort(entry, asked) && isWithin(entry.value, span, tenTo(entry.lastPlace) / 2)) return "few figures";
	const away = distanceFrom(entry.value, span);
	const place = entry.value < span.low ? placeLow : placeHigh;
	const room = Math.max(Math.min(2 * place, 0.02 * target), wideClose ? 0.01 * target : 0);
	return away <= room + relativeSlack * Math.max(target, Math.abs(entry.value)) && "rounding";
}
function isOneFigureOf(entry, { span, asked }) { return entry.value !== 0 && entry.figuresMax === 1 && ("decimals" in asked ? entry.lastPlace > -asked.decimals : asked.figures > 1) && isWithin(entry.value, span, tenTo(leadingPlace(entry.value)) / 2); }
function isTruncated(entry, { span, asked }) {
	if (!hasFiguresAsked(entry, asked)) return false;
	const size = Math.abs(entry.value);
	const [low, high] = [Math.abs(span.low), Math.abs(span.high)];
	const next = size + tenTo("decimals" in asked ? -asked.decimals : leadingPlace(size) - asked.figures + 1);
	return Math.min(low, high) > size && Math.max(low, high) < next;
}
function stepTolerance(step, carried = {}) {
	const { quantity, asked } = step;
	return toleranceOf(spanOver(step, quantity.relation, carried), {
		asked, wideClose: quantity.wideClose,
		...quantity.neverFinerThan ? { coarsest: spanOver(step, quantity.neverFinerThan, carried) } : {}
	});
}

// From lab/texts
function workedWith(text) { return { "mass of solute": text, molarity: text }; }
var slipTexts = {
	"volume-in-mL": { fits: "a result with the volume left in mL", ask: "Which unit of volume goes with mol/L?" },
	"litres-reported": { fits: "the right volume in litres", ask: "Which unit does this row ask for?" },
	"volume-ignored": {
		fits: "a result without the volume", ask: "Would a small flask and a big flask need the same amount?"
	},
	"moles-reported": { fits: "the amount in moles", ask: "You have the moles. What will the balance show for them?" },
	"molar-mass-ignored": {
		fits: "the grams in each litre", ask: "Molarity counts moles. How do you get from grams to moles?"
	},
	"ratio-inverted": {
		fits: "a result with one step the other way round",
		ask: "Should this step multiply or divide?",
		in: {
			"mass of solute": {
				fits: "the moles divided by the molar mass",
				ask: "One mole weighs many grams. Are the grams more or fewer than the moles?"
			},
			molarity: {
				fits: "the grams times the molar mass",
				ask: "If one mole weighs more, do the same grams hold more moles or fewer?"
			},
			"stock volume": {
				fits: "the two molarities divided the other way round", ask: "Can you take out more stock than the flask holds?"
			},
			"dilution factor": {
				fits: "the molarity at the end divided by that of the stock",
				ask: "The volume gets bigger. How many times as big is it at the end?"
			},
			"diluted molarity": {
				fits: "the two volumes divided the other way round", ask: "Can adding water make a solution stronger?"
			},
			"ion molarity": {
				fits: "the molarity shared out among the ions", ask: "Is it shared out, or does each ion count?"
			},
			"reagent molarity": {
				fits: "the grams times the molar mass", ask: "How do you get from the grams in a litre to the moles?"
			},
			density: {
				fits: "the volume of one gram", ask: "Density is the grams in each mL. Which of the two do you divide by?"
			},
			"mass percent": {
				fits: "the density differences divided the other way round",
				ask: "Which difference is from line to line, and which only up to your density?"
			}
		}
	},
	"volumes-multiplied": {
		fits: "a result divided by the volume",
		ask: "Does a bigger flask of the same solution need more solute or less?",
		in: {
			molarity: {
				fits: "a result multiplied by the volume", ask: "The same solute in a bigger flask: is it more crowded or less?"
			},
			density: { fits: "the mass times the volume", ask: "What does one mL of it weigh?" }
		}
	},
	"water-of-hydration-left-out": {
		fits: "the molar mass without the water of hydration",
		ask: "What comes after the dot in the formula?",
		in: workedWith({
			fits: "a result with the molar mass of the salt without its water",
			ask: "What comes after the dot in the formula?"
		})
	},
	"one-water-only": {
		fits: "the molar mass with only one water",
		ask: "How many waters does the formula show after the dot?",
		in: workedWith({
			fits: "a result with only one water in the molar mass",
			ask: "How many waters does the formula show after the dot?"
		})
	},
	"group-subscript-ignored": {
		fits: "a molar mass without the number after a bracket",
		ask: "Which atoms does the number after the bracket count for?",
		in: workedWith({
			fits: "a result without the number after a bracket in the molar mass",
			ask: "Which atoms does the number after the bracket count for?"
		})
	},
	"bracket-number-on-one-atom": {
		fits: "a molar mass where the number after a bracket counts for one atom only",
		ask: "Which atoms are inside the bracket?",
		in: workedWith({
			fits: "a result where the number after a bracket counts for one atom only",
			ask: "Which atoms are inside the bracket?"
		})
	},
	"subscripts-ignored": {
		fits: "a molar mass with each element counted only once",
		ask: "What do the small numbers in the formula tell you?",
		in: workedWith({
			fits: "a result with each element counted only once", ask: "What do the small numbers in the formula tell you?"
		})
	},
	"one-subscript-missed": {
		fits: "a molar mass with one small number left out",
		ask: "What do the small numbers in the formula tell you?",
		in: workedWith({
			fits: "a result with one small number left out", ask: "What do the small numbers in the formula tell you?"
		})
	},
	"water-number-on-one-atom": {
		fits: "a molar mass where the number of waters counts for hydrogen only",
		ask: "Which atoms are in one water, and how many waters are there?",
		in: workedWith({
			fits: "a result where the number of waters counts for hydrogen only",
			ask: "Which atoms are in one water, and how many waters are there?"
		})
	},
	"dot-as-times": {
		fits: "the masses of salt and water multiplied", ask: "Does the dot in the formula join two parts or multiply them?"
	},
	"atomic-numbers-used": {
		fits: "the sum of the atomic numbers",
		ask: "Which number on the periodic table tells you the mass?",
		in: workedWith({
			fits: "a result from atomic numbers", ask: "Which number on the periodic table tells you the mass?"
		})
	},
	"purity-ignored": { fits: "a result for a pure solid", ask: "What share of your solid is the salt itself?" },
	"purity-inverted": {
		fits: "a result with the purity used the other way round",
		ask: "If only part of the solid is the salt, do you need more of it or less?",
		in: {
			molarity: {
				fits: "a result with the purity used the other way round",
				ask: "If only part of the solid is the salt, does it give more moles or fewer?"
			}
		}
	},
	"amount-as-molarity": { fits: "the moles in the flask", ask: "What volume are those moles in?" },
	"volume-over-amount": {
		fits: "the litres for each mole", ask: "Molarity is the moles in each litre. Which of the two do you divide by?"
	},
	"upside-down": {
		fits: "the volume divided by the molarity",
		ask: "If the solution is stronger, does the same volume hold more moles or fewer?",
		in: {
			"mass of solute": {
				fits: "the molar mass divided by the moles",
				ask: "If you need more moles, do you weigh out more grams or fewer?"
			}
		}
	},
	"molar-mass-reported": { fits: "the mass of one mole", ask: "How many moles does your solution need?" },
	"water-for-stock": {
		fits: "the volume of water", ask: "Does this row ask for the stronger solution or for the water?"
	},
	"stock-for-water": { fits: "the volume of stock", ask: "Once the stock is in, how much room is left?" },
	"final-volume-for-water": { fits: "the whole volume at the end", ask: "How much of that volume is stock?" },
	"volumes-added": { fits: "the two volumes added up", ask: "Can the total be more than the flask holds?" },
	"parts-miscounted": {
		fits: "a result with the parts counted differently", ask: "One part of stock in how many parts in total?"
	},
	"volume-left-out": { fits: "the ratio of the two molarities", ask: "How big is the flask you fill?" },
	"amount-for-volume": {
		fits: "the molarity times the volume, which is an amount", ask: "What unit do you get from mol/L times a volume?"
	},
	"factor-less-one": { fits: "the parts of water for each part of stock", ask: "Does the total include the stock?" },
	"total-counted-twice": { fits: "the ratio with one part too many", ask: "Is the stock already part of the total?" },
	"total-over-water": { fits: "the total divided by the water", ask: "Which one is diluted, the stock or the water?" },
	"difference-for-ratio": {
		fits: "the difference of the two molarities", ask: "Does a dilution factor say how much less, or how many times?"
	},
	"solvent-added-to-final": {
		fits: "a result where the final volume counts as added water",
		ask: "Is the final volume the water you add, or everything in the flask?"
	},
	"water-as-final": { fits: "a result divided by the volume of water", ask: "Which volume is the solute in now?" },
	"molarity-unchanged": {
		fits: "the molarity of the stock",
		ask: "What stays the same when you add water, and what changes?",
		in: {
			"flask before": {
				fits: "the molarity in the flask before", ask: "What stays the same when you add water, and what changes?"
			}
		}
	},
	"factors-added": {
		fits: "the stock divided by the sum of the factors",
		ask: "Each flask dilutes the one before. Do the factors add up or multiply?"
	},
	"other-given-used": {
		fits: "the result from another of your numbers", ask: "Which of your numbers belong in this row?"
	},
	"ion-count-ignored": {
		fits: "the molarity of the whole salt", ask: "How many of this ion does one formula unit give?"
	},
	"all-ions-counted": { fits: "the molarity of all the ions together", ask: "Which ion does this row ask about?" },
	"other-ion's-count": {
		fits: "a result with the number of the other ion", ask: "Which ion is asked for, and how many of it are there?"
	},
	"charge-for-count": {
		fits: "a result with the charge used as the number of ions",
		ask: "Does an ion’s charge tell you how many there are?"
	},
	"divided-by-measured": {
		fits: "the difference divided by the measured value", ask: "Which value do you compare with?"
	},
	"mean-as-base": {
		fits: "the difference divided by the mean of the two", ask: "Is one of the two values the accepted one?"
	},
	"ratio-reported": {
		fits: "the measured value as a percentage of the accepted one",
		ask: "Does this row ask how big it is, or how far off?"
	},
	"difference-reported": {
		fits: "the plain difference between the two values", ask: "Of which value is the difference a percentage?"
	},
	"fraction-reported": {
		fits: "a fraction where a percentage is asked for", ask: "How do you turn a fraction into a percentage?"
	},
	"sign-reversed": { fits: "the two volumes subtracted the other way round", ask: "Which of the two is bigger?" },
	"density-divided": {
		fits: "a result divided by the density",
		ask: "If the liquid is heavier than water, does a litre of it hold more grams or fewer?"
	},
	"percent-not-divided": {
		fits: "a result with the percentage used as it stands", ask: "How do you write a percentage as a fraction?"
	},
	"percent-left-out": {
		fits: "a result for a liquid that is all solute", ask: "What share of the liquid is the solute?"
	},
	"density-ignored": {
		fits: "a result for a liquid as dense as water", ask: "What is the mass of one litre of this liquid?"
	},
	"per-mL-not-L": { fits: "the moles in one mL", ask: "Molarity is moles in how much solution?" },
	"grams-per-litre": { fits: "the grams of solute in one litre", ask: "How do you get from grams to moles?" },
	"moles-in-100-g": { fits: "the moles in a hundred grams of the liquid", ask: "What is the mass of one litre of it?" },
	"molality-reported": {
		fits: "the moles for each kilogram of water",
		ask: "Is molarity worked with the water alone, or with the whole solution?"
	},
	"volume-in-litres": { fits: "the mass of one litre", ask: "Which unit of volume does this row ask for?" },
	"table-line-taken": {
		fits: "the percentage in one line of the table", ask: "Is your density exactly the one in that line?"
	},
	"middle-of-lines": {
		fits: "the value half-way between the two lines", ask: "Is your density half-way between theirs?"
	},
	"share-mirrored": {
		fits: "a result counted back from the heavier line",
		ask: "Which line is your density closer to? Is your percentage closer to it too?"
	},
	"step-unscaled": {
		fits: "the percentage of the lighter line plus a bare fraction",
		ask: "What is that fraction of the way worth in percent?"
	},
	"line-not-added": {
		fits: "only the part to add to the lighter line", ask: "What percentage does the lighter line start from?"
	},
	"share-reported": {
		fits: "only the fraction of the way between the lines",
		ask: "What is that fraction worth in percent, and which line do you add it to?"
	},
	"planned-for-made": {
		fits: "the planned molarity",
		ask: "What mass did the balance show?",
		in: {
			"diluted molarity": { fits: "the planned molarity", ask: "What molarity does your stock really have?" },
			"dilution factor": {
				fits: "a result with the planned molarity of the stock", ask: "What molarity does your stock really have?"
			},
			"stock volume": {
				fits: "a result with the planned molarity of the stock", ask: "What molarity does your stock really have?"
			},
			"water volume": {
				fits: "a result with the planned molarity of the stock", ask: "What molarity does your stock really have?"
			},
			"reagent molarity": {
				fits: "the molarity on the label", ask: "What molarity do your mass percent and density give?"
			}
		}
	},
	"mass-reported": {
		fits: "the mass in grams",
		ask: "This row asks for moles. Which step comes before the mass?",
		in: { density: { fits: "the mass of the whole portion", ask: "How many mL share that mass?" } }
	},
	"flasks-compared": {
		fits: "the ratio of the two flask sizes", ask: "Does all of the stock go into the second flask?"
	},
	"power-of-ten": {
		fits: "the right answer except for the decimal point", ask: "What size of number makes sense here? Check the units."
	}
};
var remarks = {
	onTarget: "Yes, this fits your numbers.",
	closeRounding: "Close. Keep extra digits as you work, and round only at the end.",
	closeCutOff: "Close. Look at the next digit: does it round up or down?",
	closeTable: "Close. Tables of atomic weights differ. Which one does your class use?",
	closeFewFigures: "Close. Give the value to {figures}.", wrongFigures: "The value is right. Give it to {figures}.",
	follows: "Right method. First check “{row}”.",
	oneFigure: "Not yet. One figure is not enough here. Give the value to {figures}.",
	notYet: "Not yet. Check each number that goes in, and its unit. Does the size make sense?",
	notYetBrief: "Not yet. Check each number that goes in, and its unit.",
	signOfError: "Check the sign. Is the measured value above or below the accepted one?",
	negative: "Not yet. Can this value be below zero?",
	unitWanted: "Check the unit. This row asks for {unit}. Does yours measure the same thing?",
	unitBrief: "Check the unit. This row asks for {unit}.",
	unitNone: "Check the unit. This row asks for a plain number. Which units cancel out?",
	unitEvidently: "The number looks fine. Does its unit fit? This row asks for {unit}.",
	unitUnknown: "Look at the word after the number. Is it a unit that fits here?",
	otherMark: "Look at the mark in your number. Is it for the decimals or for the thousands?",
	signOnly: "Not yet. Check the sign.",
	shifted: "Not yet. Right digits, but the decimal point is misplaced. Check the units.",
	figuresAsked: "the figures asked", tooLong: "This is too long to read. Type only what this row asks for.", blank: "",
	needsRow: "Fill in “{row}” first. This row uses it.", lookFirst: "Check “{row}” first. This row uses it.",
	waitForRow: "Wait before you do this. Check “{row}” first.",
	waitForTick: "Wait before you do this. Check “{row}” first: read the cautions, then answer there.",
	farFromTarget: "Not yet. Check it once more.", severalFit: "Things to check: {ask}",
	oneFits: "Your value matches {fits}. {ask}"
};
var unreadableTexts = {
	"not a number": "Type one number here, with or without its unit.",
	"two ways": "This can be read in two ways. Leave out the mark between the thousands.",
	"other kind": "Type a number here. This cell holds something else.", calculation: "Work it out and type one number.",
	"more than a number": "Type the number alone, with or without its unit.",
	"two numbers": "There is more than one number here. Which one is your answer? Type that one alone.",
	ratio: "A ratio can mean two things. What does each of its numbers count? Type one number.",
	"too long": "This is too long to read. Type one number, with or without its unit."
};
function badGiven(name) { return name === "formula" || name === "ion" ? `⚠ ${name}: the one for your team is missing or can’t be read. Tell your teacher.` : `⚠ ${name}: your team’s number is missing or can’t be read. Tell your teacher.`; }
function badSetting(name) { return `⚠ ${name}: this setting can’t be read. Tell your teacher.`; }
function badBriefly(name) { return `⚠ ${name} can’t be read. Tell your teacher.`; }
function badStep(id) { return `⚠ ${id}: this row is not known here. Tell your teacher.`; }
var closedRow = { check: "next time", lookAt: "You go on here next time. What you typed is kept." };
var figureWords = [
	"no figures", "one figure", "two figures", "three figures", "four figures", "five figures", "six figures"
];
var decimalWords = [
	"a whole number", "one decimal", "two decimals", "three decimals", "four decimals", "five decimals", "six decimals"
];
var checkHeadings = { check: "Check", lookAt: "Feedback", hint: "Hint" };

return { slipTexts, remarks, unreadableTexts, badGiven, badSetting, badBriefly, badStep, closedRow, figureWords, decimalWords, checkHeadings, relativeSlack, isWithin, leadingPlace, tenTo, lastFigureFilledUp, hasFiguresAsked, spansOver, spanOver, toleranceOf, acceptedEnds, isOnTarget, closeness, isOneFigureOf, isTruncated, stepTolerance };
},
// Part lab/judging/readEntry: lab/judging/feedbackText, lab/judging/behindNumber
"lab/judging/readEntry"(part) {
const { decimalWords, figureWords, remarks, slipTexts, unreadableTexts } = part("lab/texts/feedback");
const { isBlank, numberFromScan, numberOfOtherMark, patternOnUse, readFormula, readNumber, scanNumber, unitNamed, withPower } = part("base");

// From lab/judging
function filled(text, words) { return text.replace(/\{(\w+)\}/g, (whole, name) => words[name] ?? whole); }
function slipWords(id, wordings) {
	const text = slipTexts[id];
	const own = wordings.find((wording) => text.in?.[wording]);
	return (own && text.in?.[own]) ?? text;
}
var mostLettersOfSeveral = 138;
function slipsText(slips, wordings, { asks = {}, isBrief = false }) {
	const texts = slips.map((id) => ({ ...slipWords(id, wordings), ...asks[id] === void 0 ? {} : { ask: asks[id] } }));
	const questions = [...new Set(texts.map(({ ask }) => ask))];
	if (isBrief) return questions.length === 1 ? questions[0] ?? "" : remarks.notYetBrief;
	const [{ fits = "" } = {}] = texts;
	if (questions.length === 1) return filled(remarks.oneFits, { fits, ask: questions[0] ?? "" });
	return questions.map((_, last) => filled(remarks.severalFit, { ask: questions.slice(0, last + 1).join(" ") })).reduce((asked, more) => more.length > mostLettersOfSeveral ? asked : more);
}
function askedWords(asked) { return ("decimals" in asked ? decimalWords[asked.decimals] : figureWords[asked.figures]) ?? remarks.figuresAsked; }
function unitQuestion(text, unit) { return unit === "" ? remarks.unitNone : filled(text, { unit }); }
function unreadableText(because) { return unreadableTexts[because]; }
function feedbackText(judgement, { name, unit }, { special = [], asks, isBrief = false } = {}) {
	switch (judgement.status) {
		case "blank":
			return remarks.blank;
		case "unreadable":
			return unreadableText(isBrief ? "not a number" : judgement.because);
		case "on target":
			return remarks.onTarget;
		case "close": {
			if (judgement.because === "rounding") return remarks.closeRounding;
			if (judgement.because === "cut off") return remarks.closeCutOff;
			if (judgement.because === "table") return remarks.closeTable;
			const text = judgement.because === "few figures" ? remarks.closeFewFigures : remarks.wrongFigures;
			return filled(text, { figures: askedWords(judgement.asked) });
		}
		case "follows":
			return filled(remarks.follows, { row: judgement.lookAt });
		case "not yet":
			switch (judgement.question) {
				case "unit of another kind":
					return unitQuestion(isBrief ? remarks.unitBrief : remarks.unitWanted, unit);
				case "unit does not fit":
					return unitQuestion(remarks.unitEvidently, unit);
				case "other mark":
					return remarks.otherMark;
				case "sign":
					return remarks.signOfError;
				case "negative":
					return remarks.negative;
				case "one figure":
					return filled(remarks.oneFigure, { figures: askedWords(judgement.asked) });
				default:
					if (judgement.slips.length > 0) return slipsText(judgement.slips, [...special, name], { asks, isBrief });
					return isBrief ? remarks.notYetBrief : remarks.notYet;
			}
	}
}

function joinedHydrates(text) { return text.replace(/\s*(?:[·•*×]|\sx\s)\s*([\d½.,/]{0,6})\s*(?=H[2₂]O)/gu, "·$1"); }
function bare(word) { return word.replace(/^["'“‘]+/u, "").replace(/[.,;:!?"'”’]+$/u, ""); }
function unbracketed(word) { return [word, word.replace(/^[([]/, "")].flatMap((one) => [one, one.replace(/[)\]]$/, "")]); }
function isFormula(word) { return /[A-Z]/.test(word) && unbracketed(bare(word)).some((plain) => readFormula(plain).ok); }
var numberApart = patternOnUse(String.raw`(?<![\p{L}\d]\^?\(?[-−–]?)\d`, "u");
var endOfSpan = patternOnUse(String.raw`(?<!\p{L})(\p{L}+)\s?[-−–]\s?\d+\s?\1(?!\p{L})`, "u");
function holdsNumber(text) {
	const words = joinedHydrates(text).split(/\s/).filter((word) => !isFormula(word));
	const plain = words.join(" ").normalize("NFKC");
	return numberApart().test(plain) || endOfSpan().test(plain);
}
var calculation = /[*÷^+√=]|^[×x·⋅−–-]|[/×x·⋅]\s*[\d(]/u;
var ratio = /^(?::|to\b)/i;
var timesWord = /^(?:[×x✕✖]|times\b|-?\s?fold\b)/iu;
var endOfWord = /[\s(,;:!?]/;
var remark = /^[([{,;:.!?"'“‘]/u;
function unitAtStart(text) {
	for (let end = text.length; end > 0; end -= 1) {
		if (end < text.length && !endOfWord.test(text.charAt(end))) continue;
		const unit = unitNamed(text.slice(0, end));
		if (unit) return { unit, tail: text.slice(end).trim() };
	}
	return void 0;
}
function goesOn(tail) {
	if (/^(?:[/*·⋅]|per\b)/i.test(tail)) return true;
	const next = tail.slice(0, tail.search(/[\s(,;:!?]|$/));
	const symbol = unitNamed(next)?.symbol;
	return symbol !== void 0 && (next.length <= 3 || symbol.normalize("NFKC") === next.normalize("NFKC"));
}
function behindNumber(typed, kind) {
	const text = typed.replace(/[\u200b\u2060]/g, "").trim();
	if (text === "") return { says: "nothing" };
	if (holdsNumber(text)) {
		if (kind === "ratio" && ratio.test(text)) return { unreadable: "ratio" };
		return { unreadable: calculation.test(text.normalize("NFKC")) ? "calculation" : "two numbers" };
	}
	if (/=/.test(text)) return { unreadable: "more than a number" };
	if (kind === "ratio" && timesWord.test(text)) return { says: "times" };
	const found = unitAtStart(text);
	if (found) return goesOn(found.tail) ? { says: "another unit" } : { unit: found.unit };
	if (remark.test(text)) return { says: "nothing" };
	const joined = joinedHydrates(text);
	const word = joined.slice(0, joined.search(/\s|$/));
	return { says: word.length > 1 && isFormula(word) ? "nothing" : "another unit" };
}

var longestEntry = 200;
function typedEntry({ value, figures, ambiguousZeros, lastPlace, isText }) { return {
	value, figuresMin: figures - ambiguousZeros, figuresMax: figures, lastPlace, isText
}; }
var roughly = /^(?:(?:about|around|approx(?:imately)?|roughly|nearly|almost|circa|ca|c)\b\.?|[~≈≃≅∼∽])\s*(?=[\d.,~≈≃≅∼∽+−–-]|about|ca)/iu;
var timesBefore = /^[×x✕✖*]\s*(?=[\d.,])/iu;
function inPlainWidth(text) { return text.replace(/[\uff01-\uff5e]/g, (one) => String.fromCharCode(one.charCodeAt(0) - 65248)).replace(/\u3000/g, " ").replace(/[\u3002\uff61]/g, "."); }
function withoutRough(text) {
	const once = text.trim().replace(roughly, "");
	return once.replace(roughly, "");
}
function unreadableText2(text) {
	const plain = text.normalize("NFKC");
	if (!/\d/.test(plain)) return "not a number";
	const isWorkedInSheet = plain.startsWith("=") && /[-+*/^÷×(]/.test(plain);
	return isWorkedInSheet || /[\d)]\s*[-+−*/^÷×x·⋅]\s*[\d(]/u.test(plain) ? "calculation" : "more than a number";
}
function readText(typed, kind, decimalMark) {
	if (typed.length > longestEntry) return { kind: "unreadable", because: "too long" };
	const cell = inPlainWidth(typed);
	const rough = withoutRough(cell);
	const text = kind === "ratio" ? rough.replace(timesBefore, "") : rough;
	if (/^\d+-\d+-\d/.test(text)) return { kind: "unreadable", because: "not a number" };
	const scanned = scanNumber(text);
	if (scanned === void 0) return { kind: "unreadable", because: unreadableText2(text) };
	const from = { cell: text, argument: "entry", options: { decimalMark } };
	const number = numberFromScan(scanned, from);
	if (!number.ok) {
		if (number.error.code === "number-two-readings") return { kind: "unreadable", because: "two ways" };
		return { kind: "unreadable", because: scanned.body.includes(" ") ? "two numbers" : "not a number" };
	}
	const behind = behindNumber(text.slice(scanned.end), kind);
	if ("unreadable" in behind) return { kind: "unreadable", because: behind.unreadable };
	const bare2 = typedEntry(number.value);
	const power = "unit" in behind && behind.unit.kind === kind ? behind.unit.power : 0;
	const converted = numberFromScan(withPower(scanned, power), from);
	const other = decimalMark && numberOfOtherMark(withPower(scanned, power), { cell: text, decimalMark });
	const mark = other ? { otherMark: typedEntry(other) } : {};
	if ("unit" in behind) {
		const fits = behind.unit.kind === kind && converted.ok;
		const entry = fits ? typedEntry(converted.value) : bare2;
		return { kind: "number", entry, bare: bare2, unit: fits ? "fits" : "other kind", named: behind.unit, ...mark };
	}
	const unit = { nothing: "none", times: "fits", "another unit": "other kind" };
	return { kind: "number", entry: bare2, bare: bare2, unit: unit[behind.says], ...mark };
}
function readEntry(cell, kind, options = {}) {
	if (isBlank(cell)) return { kind: "blank" };
	if (typeof cell === "string") return readText(cell, kind, options.decimalMark);
	if (typeof cell !== "number") return { kind: "unreadable", because: "other kind" };
	const number = readNumber(cell, "entry");
	if (!number.ok) return { kind: "unreadable", because: "not a number" };
	const bare2 = typedEntry(number.value);
	return { kind: "number", entry: bare2, bare: bare2, unit: "none" };
}

return { filled, unreadableText, feedbackText, readEntry };
},
// Part CHECKENTRY: lab/judging/judgeNumber, functions/entries/checkEntryEntry
"CHECKENTRY"(part) {
const { filled, readEntry, unreadableText } = part("lab/judging/readEntry");
const { closeness, figureWords, isOnTarget, isOneFigureOf, isTruncated, isWithin, remarks, toleranceOf } = part("lab/texts/feedback");
const { failure, rowByRow, success, unitNotKnown, withinLimits } = part("base");

// From lab/judging
function readings(cell, { decimalMark, unit }) {
	if (unit !== void 0) {
		const read = readEntry(cell, unit.kind, { decimalMark });
		return [
			read.kind === "number" && read.unit === "fits" ? { ...read, entry: shifted(read.entry, -unit.power) } : read
		];
	}
	const asTyped = readEntry(cell, "ratio", { decimalMark });
	if (asTyped.kind !== "number" || asTyped.named === void 0) return [asTyped];
	return [{ ...asTyped, unit: "fits" }, readEntry(cell, asTyped.named.kind, { decimalMark })];
}
function shifted(entry, power) { return {
	...entry, value: power < 0 ? entry.value / 10 ** -power : entry.value * 10 ** power,
	lastPlace: entry.lastPlace + power
}; }
function judge(entry, tolerance, tolerancePercent) {
	const target = tolerance.span.middle;
	if (tolerancePercent !== void 0) {
		const room = Math.abs(target) * (tolerancePercent / 100);
		if (isWithin(entry.value, { low: target, high: target }, room))
			return { status: "on target", lookAt: remarks.onTarget };
	} else if (isOnTarget(entry.value, tolerance)) {
		return { status: "on target", lookAt: remarks.onTarget };
	} else {
		const near = closeness(entry, tolerance);
		const figures = "figures" in tolerance.asked ? figureWords[tolerance.asked.figures] : void 0;
		if (near === "few figures") {
			return { status: "close", lookAt: filled(remarks.closeFewFigures, { figures: figures ?? remarks.figuresAsked }) };
		}
		if (near) {
			return { status: "close", lookAt: isTruncated(entry, tolerance) ? remarks.closeCutOff : remarks.closeRounding };
		}
		if (isOneFigureOf(entry, tolerance)) {
			return { status: "not yet", lookAt: filled(remarks.oneFigure, { figures: figures ?? remarks.figuresAsked }) };
		}
	}
	if (entry.value === -target) return { status: "not yet", lookAt: remarks.signOnly };
	const power = Math.log10(Math.abs(entry.value / target));
	const isShifted = Number.isFinite(power) && Math.round(power) !== 0 && Math.abs(power - Math.round(power)) < 2e-3 && entry.value * target > 0;
	return { status: "not yet", lookAt: isShifted ? remarks.shifted : remarks.notYet };
}
function judgeNumber(cell, wanted) {
	const { target, tolerancePercent, figures = 3, unit } = wanted;
	const tolerance = toleranceOf({ low: target, middle: target, high: target }, { asked: { figures }, wideClose: true });
	const checks = readings(cell, wanted).map((read) => {
		if (read.kind === "blank") return { status: "blank", lookAt: "" };
		if (read.kind === "unreadable") return { status: "unreadable", lookAt: unreadableText(read.because) };
		if (read.unit === "other kind") {
			const question = unit === void 0 ? remarks.unitUnknown : filled(remarks.unitWanted, { unit: unit.symbol });
			return { status: "not yet", lookAt: question };
		}
		return judge(read.entry, tolerance, tolerancePercent);
	});
	const [asTyped = { status: "blank", lookAt: "" }] = checks;
	return ["on target", "close"].map((best) => checks.find(({ status }) => status === best)).find(Boolean) ?? asTyped;
}

// From functions/entries
var checkEntryEntry = {
	name: "CHECKENTRY",
	arguments: [
		{ name: "entry", kind: "entry" }, { name: "target", kind: "measure" },
		{ name: "tolerance_percent", kind: "percentage points", optional: true },
		{ name: "figures", kind: "whole number", optional: true }
	],
	columns: ["status", "feedback"],
	call: rowByRow,
	compute(entry, measured, tolerancePercent, figures) {
		if (measured.unitTyped !== "" && measured.unit === void 0) return unitNotKnown(measured, "target");
		const target = measured.number.value;
		if (target === 0 && tolerancePercent === void 0) {
			return failure({
				code: "target-zero", argument: "tolerance_percent", expected: "a tolerance", advice: "Type one, such as 5."
			});
		}
		if (tolerancePercent !== void 0 && tolerancePercent < 0) {
			return failure({
				code: "out-of-limits", argument: "tolerance_percent", expected: "0 or more", received: `${tolerancePercent} %`,
				advice: "Leave out the minus sign."
			});
		}
		const asked = withinLimits(figures, { argument: "figures", least: 1, most: 15 });
		if (!asked.ok) return asked;
		const { status, lookAt } = judgeNumber(entry, { target, tolerancePercent, figures, unit: measured.unit });
		return success([status, lookAt]);
	}
};
return { entry: checkEntryEntry };
},
// Part lesson: lab/lesson/givenCells, lab/judging/ionCounts, lab/judging/roundedWeight, lab/judging/molarMassSpan, lab/judging/fillQuantity, lab/judging/schoolMolarMasses and 19 more
"lesson"(part) {
const { acceptedEnds, closeness, hasFiguresAsked, isOnTarget, isOneFigureOf, isTruncated, isWithin, lastFigureFilledUp, leadingPlace, relativeSlack, spansOver, stepTolerance, tenTo } = part("lab/texts/feedback");
const { anhydrousAtoms, atomsOfUnits, density, diluentVolume, dilutedMolarity, dilutionFactor, elementBySymbol, elementOf, failure, grams, gramsPerMillilitre, gramsPerMole, isBlank, isWater, massPercentOfDensity, millilitres, molarMass, molarity, molesPerLitre, namedIon, percent, percentError, quoted, readFormula, readNumber, readQuantity, reagentMolarity, relativeMass, soluteMass, stockVolume, success } = part("base");

// From lab/lesson
function plainName(cell) { return typeof cell === "string" ? cell.trim().toLowerCase().replace(/[\s_]+/g, " ") : ""; }
function namesTaken({ takes }) { return takes.map(({ name, optional }) => optional ? `${name} if you have one` : name).join(", "); }
function readGivenCells(quantity2, table) {
	const cells = Object.create(null);
	for (const row of table) {
		if (row.length !== 2) {
			return failure({
				code: "given-shape", argument: "given", received: row.length === 1 ? "one column" : `${row.length} columns`,
				advice: `Put the names in the first: ${namesTaken(quantity2)}.`
			});
		}
		const [nameCell, value] = row;
		if (isBlank(nameCell)) continue;
		const name = plainName(nameCell);
		if (!quantity2.takes.some((argument) => argument.name === name)) {
			return failure({
				code: "given-unknown", argument: "given", received: quoted(nameCell),
				advice: `For ${quantity2.name}, give ${namesTaken(quantity2)}.`, brief: quoted(nameCell)
			});
		}
		if (name in cells) {
			return failure({
				code: "given-twice", argument: "given", received: quoted(nameCell),
				advice: `Keep one row for each of ${namesTaken(quantity2)}.`, brief: name
			});
		}
		cells[name] = value;
	}
	return success(cells);
}

// From lab/judging
function ionCounts(formula, ion) {
	const named = namedIon(formula, String(ion));
	if (!named.ok) return named;
	const { ion: asked, others } = named.value;
	return success({
		ionCount: asked.count, ionCharge: Math.abs(asked.charge), otherIonCounts: others.map(({ count }) => count)
	});
}

function shortenedWeight(weight, kept) {
	const shifted = Number(`${weight}e${kept}`);
	const below = Math.floor(shifted);
	const part = shifted - below;
	const halfUp = part >= 0.5 ? below + 1 : below;
	const halfEven = part === 0.5 && below % 2 === 0 ? below : halfUp;
	const unshifted = (whole) => Number(`${whole}e-${kept}`);
	return { halfUp: unshifted(halfUp), halfEven: unshifted(halfEven) };
}
function decimalsOf(weight) { return String(weight).split(".")[1]?.length ?? 0; }
function roundedWeight(weight, decimals) {
	const own = decimalsOf(weight);
	let low = weight;
	let high = weight;
	for (let kept = decimals; kept < own; kept += 1) {
		const { halfUp, halfEven } = shortenedWeight(weight, kept);
		low = Math.min(low, halfEven);
		high = Math.max(high, halfUp);
	}
	return { low, high };
}

function sumOf({ atoms, byAtomicNumber, decimals }) {
	let low = 0;
	let middle = 0;
	let high = 0;
	for (const { element, count } of atoms) {
		const weight = byAtomicNumber ? elementBySymbol(elementOf(element))?.atomicNumber : relativeMass(element);
		if (weight === void 0) throw new Error(`${element} has no atomic weight, which is found before this`);
		const rounded = byAtomicNumber ? { low: weight, high: weight } : roundedWeight(weight, decimals);
		low += count * rounded.low;
		middle += count * weight;
		high += count * rounded.high;
	}
	return { low, middle, high };
}
function molarMassSpan({ atoms, byAtomicNumber: numbers, times }, decimals) {
	const byAtomicNumber = numbers === true;
	const span = sumOf({ atoms, byAtomicNumber, decimals });
	if (!times) return span;
	const other = sumOf({ atoms: times, byAtomicNumber, decimals });
	return { low: span.low * other.low, middle: span.middle * other.middle, high: span.high * other.high };
}

function nothingRead({ takes, buildsOn }) { return Object.fromEntries([
	...buildsOn.map(({ name }) => [name, Number.NaN]),
	...takes.flatMap(
		({ name, kind, leftOut = Number.NaN }) => kind === "formula" || kind === "ion" ? [] : [[name, leftOut]]
	)
]); }
var noIons = { ionCount: Number.NaN, ionCharge: Number.NaN, otherIonCounts: [] };
function askedOf(quantity2, { figures, decimals = 2 }) {
	if (figures !== void 0) return { figures };
	return quantity2.figures === "decimals" ? { decimals } : { figures: quantity2.figures };
}
var comparedKinds = ["concentration", "mass", "volume", "density", "amount", "percent"];
function readAnyNumber(cell, name, { marks, kind }) {
	const plain = readNumber(cell, name, marks);
	if (plain.ok) return success({ value: plain.value.value, kind });
	for (const tried of kind ? [kind] : comparedKinds) {
		const quantity2 = readQuantity(cell, tried, name, marks);
		if (quantity2.ok) return success({ value: quantity2.value.value, kind: tried });
		if (kind) return quantity2;
	}
	return plain;
}
function fillQuantity(quantity2, cells, preparation = {}) {
	const { decimals = 2, numbers: ready = {}, names = {} } = preparation;
	const marks = preparation.decimalMark ? { decimalMark: preparation.decimalMark } : {};
	const called = ({ name }) => names[name] ?? name;
	const numbers = {};
	let formula;
	let compared;
	let ions;
	for (const argument of quantity2.takes) {
		const cell = cells[argument.name];
		if (argument.name in ready) continue;
		if (isBlank(cell)) {
			if (argument.optional) continue;
			return failure({
				code: "given-missing", argument: called(argument),
				advice: `For ${quantity2.name}, give ${namesTaken(quantity2)}.`, brief: called(argument)
			});
		}
		if (argument.kind === "formula") {
			const read = readFormula(cell, called(argument));
			if (!read.ok) return read;
			formula = read.value;
		} else if (argument.kind === "ion") {
			if (!formula) throw new Error(`${quantity2.name}: the ion comes after its formula`);
			const counts = ionCounts(formula, cell);
			if (!counts.ok) return failure({ ...counts.error, argument: sheetName(counts.error.argument, names) });
			ions = counts.value;
		} else if (argument.kind === "number") {
			const read = readAnyNumber(cell, called(argument), { marks, kind: compared });
			if (!read.ok) return read;
			numbers[argument.name] = read.value.value;
			compared = read.value.kind;
		} else {
			const read = readQuantity(cell, argument.kind, called(argument), marks);
			if (!read.ok) return read;
			numbers[argument.name] = read.value.value;
		}
	}
	const weighed = ions ? void 0 : formula;
	if (weighed) {
		const mass = molarMass(weighed);
		if (!mass.ok) return failure({ ...mass.error, argument: sheetName(mass.error.argument, names) });
	}
	const span = weighed ? molarMassSpan(weighed, decimals) : void 0;
	const step2 = {
		quantity: quantity2, formula: weighed, molarMass: span,
		numbers: { ...nothingRead(quantity2), ...noIons, ...ions, ...numbers, ...ready },
		asked: askedOf(quantity2, preparation), decimals
	};
	if (Object.values(ready).some(Number.isNaN)) return success(step2);
	const refused = quantity2.chemistry({ ...step2.numbers, "molar mass": span?.middle ?? Number.NaN });
	return refused.ok ? success(step2) : failure({ ...refused.error, argument: sheetName(refused.error.argument, names) });
}
var givenNames = { grams: "mass", "purity percent": "purity" };
function sheetName(argument, names) {
	const spaced = argument.replace(/_/g, " ");
	const name = givenNames[spaced] ?? spaced;
	return names[name] ?? name;
}

var printedWithHalf = { Cl: 35.5, Cu: 63.5 };
function schoolMolarMasses({ atoms }) {
	const sum = (weightIn) => atoms.reduce(
		(mass, { element, count }) => mass + count * weightIn(relativeMass(element) ?? Number.NaN, element),
		0
	);
	return [
		sum((weight) => shortenedWeight(weight, 1).halfUp), sum((weight) => shortenedWeight(weight, 1).halfEven),
		sum((weight, element) => printedWithHalf[element] ?? shortenedWeight(weight, 0).halfUp)
	];
}
function isOfSchoolTable({ value, figuresMax, lastPlace }, formula) {
	const room = figuresMax > 1 ? tenTo(lastPlace) / 2 : 0;
	return schoolMolarMasses(formula).some((mass) => isWithin(value, { low: mass, high: mass }, room));
}

function slipSpans(step2, slip, carried = {}) {
	if ("value" in slip) return spansOver(step2, slip.value, { carried });
	if (!step2.formula) return [];
	const { decimals, quantity: quantity2 } = step2;
	return slip.molarMasses(step2.formula).flatMap((wrong) => spansOver(step2, quantity2.relation, { molarMass: molarMassSpan(wrong, decimals), carried }));
}
function tellsApart(span, tolerance) {
	const accepted = acceptedEnds(tolerance);
	const slack = relativeSlack * Math.max(Math.abs(span.high), Math.abs(accepted.high));
	return span.high < accepted.low - slack || span.low > accepted.high + slack;
}
var usualFigures = 3;
function askedOfSlip(asked) { return "decimals" in asked ? asked : { figures: Math.min(asked.figures, usualFigures) }; }
function fitsSlip(span, { entry, tolerance }) { return tellsApart(span, tolerance) && isWithin(entry.value, span, entry.value === 0 ? 0 : lastFigureFilledUp(entry, askedOfSlip(tolerance.asked)) / 2); }
function isPowerOfTen(entry, { span, asked }) {
	if (entry.value === 0 || span.middle === 0) return false;
	const power = Math.round(Math.log10(Math.abs(entry.value / span.middle)));
	if (power === 0) return false;
	const moved = "decimals" in asked ? { decimals: asked.decimals - power } : asked;
	const ends = { low: Math.abs(span.low) * tenTo(power), high: Math.abs(span.high) * tenTo(power) };
	return Math.sign(entry.value) === Math.sign(span.middle) && isWithin(Math.abs(entry.value), ends, lastFigureFilledUp(entry, moved) / 2);
}
function slipsWith(step2, entry, carried) {
	const tolerance = stepTolerance(step2, carried);
	if (tolerance.span.middle === 0) return [];
	const found = step2.quantity.slips.filter((slip) => slipSpans(step2, slip, carried).some((span) => fitsSlip(span, { entry, tolerance }))).map(({ id }) => id);
	if (found.length > 0) return found;
	return isPowerOfTen(entry, tolerance) ? ["power-of-ten"] : [];
}
function slipsFound(step2, entry, others) {
	for (const carried of [{}, ...others]) {
		const found = slipsWith(step2, entry, carried);
		if (found.length > 0) return found;
	}
	return [];
}

function withoutHonestSign({ quantity: quantity2, numbers }, entry) {
	const isSigned = quantity2.name === "percent error" && entry.value < 0;
	return isSigned && Number(numbers.measured) < Number(numbers.accepted) ? { ...entry, value: -entry.value } : entry;
}
function figuresFit(entry, { asked, placeLow, placeHigh }) { return hasFiguresAsked(entry, asked) || // Where the last place is bound otherwise, as in a difference, that place is right too.
entry.lastPlace === leadingPlace(placeLow) || entry.lastPlace === leadingPlace(placeHigh); }
function judgeEntry(step2, read, { rows = [], judgeFigures = false, shortTable = false } = {}) {
	if (read.kind === "blank") return { status: "blank" };
	if (read.kind === "unreadable") return { status: "unreadable", because: read.because };
	if (read.unit === "other kind") return { status: "not yet", slips: [], question: "unit of another kind" };
	const entry = withoutHonestSign(step2, read.entry);
	const tolerance = stepTolerance(step2);
	const { asked } = tolerance;
	const fits = rows.filter(({ carried }) => isOnTarget(entry.value, stepTolerance(step2, carried)));
	if (isOnTarget(entry.value, tolerance) || fits.some(({ sound }) => sound)) {
		return judgeFigures && entry.isText && !figuresFit(entry, tolerance) ? { status: "close", because: "wrong figures", asked } : { status: "on target" };
	}
	const isOfTable = step2.quantity.name === "molar mass" && step2.formula !== void 0 && isOfSchoolTable(entry, step2.formula);
	if (isOfTable && shortTable) return { status: "on target" };
	const near = closeness(entry, tolerance);
	if (near === "few figures") return { status: "close", because: near, asked };
	if (isOfTable) return { status: "close", because: "table", asked };
	if (near) {
		const isCutOff = near === "rounding" && isTruncated(entry, tolerance);
		return { status: "close", because: isCutOff ? "cut off" : near, asked };
	}
	if (read.otherMark) {
		const other = withoutHonestSign(step2, read.otherMark);
		const isSoundWith = (row) => row.sound && isOnTarget(other.value, stepTolerance(step2, row.carried));
		if (isOnTarget(other.value, tolerance) || rows.some(isSoundWith)) {
			return { status: "not yet", slips: [], question: "other mark" };
		}
	}
	const [followed] = fits;
	if (followed) return { status: "follows", lookAt: followed.lookAt };
	if (read.unit === "fits" && isOnTarget(read.bare.value, tolerance)) {
		return { status: "not yet", slips: [], question: "unit does not fit" };
	}
	const slips = slipsFound(step2, entry, rows.filter(({ sound }) => sound).map(({ carried }) => carried));
	if (slips.length === 0 && isOneFigureOf(entry, tolerance)) {
		return { status: "not yet", slips: [], question: "one figure", asked };
	}
	if (slips.length === 0 && entry.value < 0) {
		const isSignAlone = step2.quantity.name === "percent error" && isOnTarget(-entry.value, tolerance);
		return { status: "not yet", slips, question: isSignAlone ? "sign" : "negative" };
	}
	return { status: "not yet", slips };
}

// From lab/quantities
function quantity(entry) { return entry; }

var densityQuantity = quantity({
	name: "density",
	takes: [{ name: "mass", kind: "mass", unit: "g" }, { name: "volume", kind: "volume", unit: "mL" }],
	entryKind: "density",
	unit: "g/mL",
	figures: 5,
	ownFigures: true,
	wideClose: false,
	buildsOn: [],
	chemistry: function(n) { return density({ mass: grams(n.mass), volume: millilitres(n.volume) }); },
	relation: function(n) { return n.mass / n.volume; },
	slips: [
		{ id: "ratio-inverted", value: function(n) { return n.volume / n.mass; } },
		{ id: "volume-in-litres", value: function(n) { return n.mass / (n.volume / 1e3); } },
		{ id: "mass-reported", value: function(n) { return n.mass; } },
		{ id: "volumes-multiplied", value: function(n) { return n.mass * n.volume; } }
	]
});

var dilutedMolarityQuantity = quantity({
	name: "diluted molarity",
	takes: [
		{ name: "stock molarity", kind: "concentration", unit: "mol/L" },
		{ name: "stock volume", kind: "volume", unit: "mL" }, { name: "final volume", kind: "volume", unit: "mL" }
	],
	entryKind: "concentration",
	unit: "mol/L",
	figures: 3,
	wideClose: true,
	buildsOn: [],
	chemistry: function(n) { return dilutedMolarity({
		stock: molesPerLitre(n["stock molarity"]), stockVolume: millilitres(n["stock volume"]),
		finalVolume: millilitres(n["final volume"])
	}); },
	relation: function(n) { return n["stock molarity"] * n["stock volume"] / n["final volume"]; },
	slips: [
		{ id: "ratio-inverted", value: function(n) { return n["stock molarity"] * n["final volume"] / n["stock volume"]; } },
		{
			id: "solvent-added-to-final",
			value: function(n) { return n["stock molarity"] * n["stock volume"] / (n["stock volume"] + n["final volume"]); }
		},
		{
			id: "water-as-final",
			value: function(n) { return n["stock molarity"] * n["stock volume"] / (n["final volume"] - n["stock volume"]); }
		},
		{ id: "molarity-unchanged", value: function(n) { return n["stock molarity"]; } }
	]
});

var dilutionFactor2 = quantity({
	name: "dilution factor",
	takes: [
		{ name: "stock molarity", kind: "concentration", unit: "mol/L" },
		{ name: "target molarity", kind: "concentration", unit: "mol/L" }
	],
	entryKind: "ratio",
	unit: "",
	figures: 3,
	wideClose: false,
	buildsOn: [],
	chemistry: function(n) { return dilutionFactor({ stock: molesPerLitre(n["stock molarity"]), target: molesPerLitre(n["target molarity"]) }); },
	relation: function(n) { return n["stock molarity"] / n["target molarity"]; },
	slips: [
		{ id: "ratio-inverted", value: function(n) { return n["target molarity"] / n["stock molarity"]; } },
		{ id: "factor-less-one", value: function(n) { return n["stock molarity"] / n["target molarity"] - 1; } },
		{ id: "total-counted-twice", value: function(n) { return n["stock molarity"] / n["target molarity"] + 1; } },
		{ id: "total-over-water", value: function(n) { return n["stock molarity"] / (n["stock molarity"] - n["target molarity"]); } },
		{ id: "difference-for-ratio", value: function(n) { return n["stock molarity"] - n["target molarity"]; } }
	]
});

var ionMolarityQuantity = quantity({
	name: "ion molarity",
	takes: [
		{ name: "formula", kind: "formula", unit: "" }, { name: "molarity", kind: "concentration", unit: "mol/L" },
		{ name: "ion", kind: "ion", unit: "" }
	],
	entryKind: "concentration",
	unit: "mol/L",
	figures: 3,
	wideClose: true,
	buildsOn: [],
	chemistry: function(n) { return success(n.molarity * n.ionCount); },
	relation: function(n) { return n.molarity * n.ionCount; },
	slips: [
		{ id: "ratio-inverted", value: function(n) { return n.molarity / n.ionCount; } },
		{ id: "ion-count-ignored", value: function(n) { return n.molarity; } },
		{
			id: "all-ions-counted",
			value: function(n) { return n.molarity * n.otherIonCounts.reduce((all, count) => all + count, n.ionCount); }
		},
		// One of another ion looks the same as no count at all, which is the plainer reading.
		{
			id: "other-ion's-count",
			value: function(n) { return n.otherIonCounts.filter((count) => count !== 1).map((count) => n.molarity * count); }
		},
		// A charge of one looks the same as no count at all too.
		{ id: "charge-for-count", value: function(n) { return n.ionCharge === 1 ? [] : n.molarity * n.ionCharge; } }
	]
});

var water = {
	coefficient: 1,
	parts: [{ kind: "element", element: "H", count: 2 }, { kind: "element", element: "O", count: 1 }]
};
function isOfSalt(unit, index) { return index === 0 || !isWater(unit); }
function withoutWater(formula) { return formula.hydrate ? [anhydrousAtoms(formula)] : []; }
function oneWater(formula) { return formula.hydrate ? [atomsOfUnits([...formula.units.filter(isOfSalt), water])] : []; }
function bracketsReplaced(parts, replace) {
	return parts.flatMap((part, index) => {
		if (part.kind === "element") return [];
		const put = (others) => [...parts.slice(0, index), ...others, ...parts.slice(index + 1)];
		const deeper = bracketsReplaced(part.parts, replace).map((inside) => put([{ ...part, parts: inside }]));
		return part.count === 1 ? deeper : [...replace(part.parts, part.count).map(put), ...deeper];
	});
}
function inUnits({ units }, replace) { return units.flatMap(
	(unit, index) => bracketsReplaced(unit.parts, replace).map(
		(parts) => atomsOfUnits([...units.slice(0, index), { ...unit, parts }, ...units.slice(index + 1)])
	)
); }
function bracketNumbersDropped(formula) { return inUnits(formula, (inside) => [inside]); }
function bracketNumberOnOneAtom(formula) { return inUnits(formula, (inside, count) => {
	const last = inside.length - 1;
	if (last < 1) return [];
	return [0, last].map(
		(only) => inside.map((part, index) => index === only ? { ...part, count: part.count * count } : part)
	);
}); }
function onceEach(parts) { return parts.flatMap((part) => part.kind === "element" ? [{ ...part, count: 1 }] : onceEach(part.parts)); }
function symbolsCountedOnce({ units }) { return [
	atomsOfUnits(
		units.map((unit, index) => isOfSalt(unit, index) ? { coefficient: 1, parts: onceEach(unit.parts) } : unit)
	)
]; }
function oneSubscriptMissed({ units }) { return units.flatMap(
	(unit, index) => numbersMissed(unit.parts).map(
		(parts) => atomsOfUnits([...units.slice(0, index), { ...unit, parts }, ...units.slice(index + 1)])
	)
); }
function numbersMissed(parts) {
	return parts.flatMap((part, index) => {
		const put = (other) => [...parts.slice(0, index), other, ...parts.slice(index + 1)];
		if (part.kind === "group") return numbersMissed(part.parts).map((inside) => put({ ...part, parts: inside }));
		return part.count === 1 ? [] : [put({ ...part, count: 1 })];
	});
}
function waterNumberOnOneAtom({ units, hydrate }) {
	if (!hydrate || hydrate.count === 1) return [];
	const [hydrogen, oxygen] = water.parts;
	if (!hydrogen || !oxygen) return [];
	return [
		atomsOfUnits([
			...units.filter(isOfSalt), { coefficient: hydrate.count, parts: [hydrogen] }, { coefficient: 1, parts: [oxygen] }
		])
	];
}
function saltTimesWater({ units, hydrate }) { return hydrate ? [
	{
		atoms: atomsOfUnits(units.filter(isOfSalt)),
		times: atomsOfUnits(units.filter((unit, index) => !isOfSalt(unit, index)))
	}
] : []; }

var formulaSlips = [
	{ id: "water-of-hydration-left-out", molarMasses: function(formula) { return withoutWater(formula).map((atoms) => ({ atoms })); } },
	{ id: "one-water-only", molarMasses: function(formula) { return oneWater(formula).map((atoms) => ({ atoms })); } },
	{
		id: "water-number-on-one-atom",
		molarMasses: function(formula) { return waterNumberOnOneAtom(formula).map((atoms) => ({ atoms })); }
	},
	{
		id: "group-subscript-ignored",
		molarMasses: function(formula) { return bracketNumbersDropped(formula).map((atoms) => ({ atoms })); }
	},
	{
		id: "bracket-number-on-one-atom",
		molarMasses: function(formula) { return bracketNumberOnOneAtom(formula).map((atoms) => ({ atoms })); }
	},
	{ id: "subscripts-ignored", molarMasses: function(formula) { return symbolsCountedOnce(formula).map((atoms) => ({ atoms })); } },
	{ id: "one-subscript-missed", molarMasses: function(formula) { return oneSubscriptMissed(formula).map((atoms) => ({ atoms })); } },
	{ id: "atomic-numbers-used", molarMasses: function({ atoms }) { return [{ atoms, byAtomicNumber: true }]; } }
];

var molesOfSolute = quantity({
	name: "moles of solute",
	takes: [{ name: "molarity", kind: "concentration", unit: "mol/L" }, { name: "volume", kind: "volume", unit: "mL" }],
	entryKind: "amount",
	unit: "mol",
	figures: 3,
	wideClose: true,
	buildsOn: [],
	// As many grams as moles, where a mole has one gram.
	chemistry: function(n) { return soluteMass({
		molarMass: gramsPerMole(1), molarity: molesPerLitre(n.molarity), volume: millilitres(n.volume)
	}); },
	relation: function(n) { return n.molarity * n.volume / 1e3; },
	slips: [
		{ id: "volume-in-mL", value: function(n) { return n.molarity * n.volume; } },
		{ id: "volume-ignored", value: function(n) { return n.molarity; } },
		{ id: "upside-down", value: function(n) { return [n.volume / n.molarity, n.volume / 1e3 / n.molarity]; } },
		{ id: "volumes-multiplied", value: function(n) { return n.molarity / (n.volume / 1e3); } }
	]
});

var massOfSolute = quantity({
	name: "mass of solute",
	takes: [
		{ name: "formula", kind: "formula", unit: "" }, { name: "molarity", kind: "concentration", unit: "mol/L" },
		{ name: "volume", kind: "volume", unit: "mL" },
		{ name: "purity", kind: "percent", unit: "%", optional: true, leftOut: 100 }
	],
	entryKind: "mass",
	unit: "g",
	figures: 3,
	wideClose: true,
	buildsOn: [{ name: "molar mass" }, { name: "moles of solute", relation: molesOfSolute.relation }],
	chemistry: function(n) { return soluteMass({
		molarMass: gramsPerMole(n["molar mass"]), molarity: molesPerLitre(n.molarity), volume: millilitres(n.volume),
		purity: percent(n.purity)
	}); },
	relation: function(n) { return n["moles of solute"] * n["molar mass"] / (n.purity / 100); },
	slips: [
		{ id: "volume-in-mL", value: function(n) { return n.molarity * n.volume * n["molar mass"] / (n.purity / 100); } },
		{ id: "volume-ignored", value: function(n) { return n.molarity * n["molar mass"] / (n.purity / 100); } },
		{ id: "moles-reported", value: function(n) { return n["moles of solute"]; } },
		{ id: "ratio-inverted", value: function(n) { return n["moles of solute"] / n["molar mass"] / (n.purity / 100); } },
		{
			id: "volumes-multiplied",
			value: function(n) { return n.molarity / (n.volume / 1e3) * n["molar mass"] / (n.purity / 100); }
		},
		{ id: "upside-down", value: function(n) { return n["molar mass"] / n["moles of solute"] / (n.purity / 100); } },
		{ id: "molar-mass-reported", value: function(n) { return n["molar mass"]; } },
		...formulaSlips,
		{ id: "purity-ignored", value: function(n) { return n["moles of solute"] * n["molar mass"]; } },
		{ id: "purity-inverted", value: function(n) { return n["moles of solute"] * n["molar mass"] * (n.purity / 100); } }
	]
});

function share(n) { return (n.density - n["lighter density"]) / (n["heavier density"] - n["lighter density"]); }
function step(n) { return n["heavier percent"] - n["lighter percent"]; }
var massPercentQuantity = quantity({
	name: "mass percent",
	takes: [
		{ name: "density", kind: "density", unit: "g/mL" }, { name: "lighter percent", kind: "percent", unit: "%" },
		{ name: "lighter density", kind: "density", unit: "g/mL" }, { name: "heavier percent", kind: "percent", unit: "%" },
		{ name: "heavier density", kind: "density", unit: "g/mL" }
	],
	entryKind: "percent",
	unit: "%",
	figures: 3,
	wideClose: true,
	buildsOn: [],
	chemistry: function(n) { return massPercentOfDensity({
		density: gramsPerMillilitre(n.density), lighterPercent: percent(n["lighter percent"]),
		lighterDensity: gramsPerMillilitre(n["lighter density"]), heavierPercent: percent(n["heavier percent"]),
		heavierDensity: gramsPerMillilitre(n["heavier density"])
	}); },
	relation: function(n) { return n["lighter percent"] + share(n) * step(n); },
	slips: [
		{ id: "table-line-taken", value: function(n) { return [n["lighter percent"], n["heavier percent"]]; } },
		{ id: "middle-of-lines", value: function(n) { return (n["lighter percent"] + n["heavier percent"]) / 2; } },
		{ id: "share-mirrored", value: function(n) { return n["heavier percent"] - share(n) * step(n); } },
		{ id: "step-unscaled", value: function(n) { return n["lighter percent"] === 0 ? [] : n["lighter percent"] + share(n); } },
		{ id: "line-not-added", value: function(n) { return share(n) * step(n); } }, { id: "share-reported", value: share },
		{ id: "ratio-inverted", value: function(n) { return n["lighter percent"] + step(n) / share(n); } }
	]
});

function pure(n) { return n.mass * (n.purity / 100); }
var molarity2 = quantity({
	name: "molarity",
	takes: [
		{ name: "formula", kind: "formula", unit: "" }, { name: "mass", kind: "mass", unit: "g" },
		{ name: "volume", kind: "volume", unit: "mL" },
		{ name: "purity", kind: "percent", unit: "%", optional: true, leftOut: 100 }
	],
	entryKind: "concentration",
	unit: "mol/L",
	figures: 3,
	wideClose: true,
	buildsOn: [{ name: "molar mass" }],
	chemistry: function(n) { return molarity({
		molarMass: gramsPerMole(n["molar mass"]), mass: grams(n.mass), volume: millilitres(n.volume),
		purity: percent(n.purity)
	}); },
	relation: function(n) { return pure(n) / n["molar mass"] / (n.volume / 1e3); },
	slips: [
		{ id: "volume-in-mL", value: function(n) { return pure(n) / n["molar mass"] / n.volume; } },
		{ id: "molar-mass-ignored", value: function(n) { return [n.mass / (n.volume / 1e3), pure(n) / (n.volume / 1e3)]; } },
		{ id: "ratio-inverted", value: function(n) { return pure(n) * n["molar mass"] / (n.volume / 1e3); } },
		{ id: "volumes-multiplied", value: function(n) { return pure(n) / n["molar mass"] * (n.volume / 1e3); } },
		{ id: "amount-as-molarity", value: function(n) { return pure(n) / n["molar mass"]; } },
		{ id: "volume-over-amount", value: function(n) { return n.volume / 1e3 / (pure(n) / n["molar mass"]); } },
		...formulaSlips,
		{ id: "purity-ignored", value: function(n) { return n.mass / n["molar mass"] / (n.volume / 1e3); } },
		{ id: "purity-inverted", value: function(n) { return n.mass / (n.purity / 100) / n["molar mass"] / (n.volume / 1e3); } }
	]
});

var molarMassQuantity = quantity({
	name: "molar mass", takes: [{ name: "formula", kind: "formula", unit: "" }], entryKind: "molar mass", unit: "g/mol",
	figures: "decimals", wideClose: false, buildsOn: [], chemistry: function(n) { return success(n["molar mass"]); },
	relation: function(n) { return n["molar mass"]; },
	slips: [...formulaSlips, { id: "dot-as-times", molarMasses: saltTimesWater }]
});

function gap(n) { return Math.abs(n.measured - n.accepted); }
var percentErrorQuantity = quantity({
	name: "percent error",
	takes: [{ name: "measured", kind: "number", unit: "" }, { name: "accepted", kind: "number", unit: "" }],
	entryKind: "percent",
	unit: "%",
	figures: 2,
	ownFigures: true,
	wideClose: false,
	buildsOn: [],
	chemistry: function(n) { return percentError({ measured: n.measured, accepted: n.accepted }); },
	relation: function(n) { return 100 * gap(n) / Math.abs(n.accepted); },
	slips: [
		{ id: "divided-by-measured", value: function(n) { return 100 * gap(n) / Math.abs(n.measured); } },
		{ id: "ratio-reported", value: function(n) { return 100 * n.measured / n.accepted; } },
		{ id: "fraction-reported", value: function(n) { return gap(n) / Math.abs(n.accepted); } },
		{ id: "mean-as-base", value: function(n) { return 200 * gap(n) / Math.abs(n.measured + n.accepted); } },
		{ id: "difference-reported", value: function(n) { return gap(n); } }
	]
});

var reagentMolarityQuantity = quantity({
	name: "reagent molarity",
	takes: [
		{ name: "formula", kind: "formula", unit: "" }, { name: "mass percent", kind: "percent", unit: "%" },
		{ name: "density", kind: "density", unit: "g/mL" }
	],
	entryKind: "concentration",
	unit: "mol/L",
	figures: 3,
	wideClose: true,
	buildsOn: [{ name: "molar mass" }],
	chemistry: function(n) { return reagentMolarity({
		molarMass: gramsPerMole(n["molar mass"]), massPercent: percent(n["mass percent"]),
		density: gramsPerMillilitre(n.density)
	}); },
	relation: function(n) { return 10 * n["mass percent"] * n.density / n["molar mass"]; },
	slips: [
		{ id: "ratio-inverted", value: function(n) { return 10 * n["mass percent"] * n.density * n["molar mass"]; } },
		{ id: "density-divided", value: function(n) { return 10 * n["mass percent"] / n.density / n["molar mass"]; } },
		{ id: "percent-not-divided", value: function(n) { return 1e3 * n["mass percent"] * n.density / n["molar mass"]; } },
		{ id: "percent-left-out", value: function(n) { return 1e3 * n.density / n["molar mass"]; } },
		{ id: "density-ignored", value: function(n) { return 10 * n["mass percent"] / n["molar mass"]; } },
		{ id: "per-mL-not-L", value: function(n) { return n["mass percent"] / 100 * (n.density / n["molar mass"]); } },
		{ id: "grams-per-litre", value: function(n) { return 10 * n["mass percent"] * n.density; } },
		{ id: "moles-in-100-g", value: function(n) { return n["mass percent"] / n["molar mass"]; } },
		{
			id: "molality-reported",
			value: function(n) { return n["mass percent"] < 100 ? 1e3 * n["mass percent"] / (100 - n["mass percent"]) / n["molar mass"] : []; }
		}
	]
});

var dilutionTakes = [
	{ name: "stock molarity", kind: "concentration", unit: "mol/L" },
	{ name: "target molarity", kind: "concentration", unit: "mol/L" },
	{ name: "target volume", kind: "volume", unit: "mL" }
];
var stockVolumeQuantity = quantity({
	name: "stock volume",
	takes: dilutionTakes,
	entryKind: "volume",
	unit: "mL",
	figures: 3,
	wideClose: true,
	buildsOn: [{ name: "dilution factor", relation: dilutionFactor2.relation }],
	chemistry: function(n) { return stockVolume({
		stock: molesPerLitre(n["stock molarity"]), target: molesPerLitre(n["target molarity"]),
		finalVolume: millilitres(n["target volume"])
	}); },
	relation: function(n) { return n["target volume"] / n["dilution factor"]; },
	slips: [
		{ id: "litres-reported", value: function(n) { return n["target volume"] / n["dilution factor"] / 1e3; } },
		{ id: "ratio-inverted", value: function(n) { return n["target volume"] * n["dilution factor"]; } },
		{ id: "water-for-stock", value: function(n) { return n["target volume"] - n["target volume"] / n["dilution factor"]; } },
		{ id: "volume-left-out", value: function(n) { return n["target molarity"] / n["stock molarity"]; } },
		{
			id: "amount-for-volume",
			value: function(n) { return [n["target molarity"] * n["target volume"], n["target molarity"] * n["target volume"] / 1e3]; }
		},
		{
			id: "parts-miscounted",
			value: function(n) { return [n["target volume"] / (n["dilution factor"] - 1), n["target volume"] / (n["dilution factor"] + 1)]; }
		}
	]
});

function stockVolume2(n) { return n["target molarity"] / n["stock molarity"] * n["target volume"]; }
var waterVolume = quantity({
	name: "water volume",
	takes: dilutionTakes,
	entryKind: "volume",
	unit: "mL",
	figures: 3,
	wideClose: true,
	buildsOn: [{ name: "stock volume", relation: stockVolume2 }],
	chemistry: function(n) { return diluentVolume({
		stock: molesPerLitre(n["stock molarity"]), target: molesPerLitre(n["target molarity"]),
		finalVolume: millilitres(n["target volume"])
	}); },
	relation: function(n) { return n["target volume"] - n["stock volume"]; },
	// A difference is no finer than what was taken away.
	neverFinerThan: function(n) { return n["stock volume"]; },
	slips: [
		{ id: "litres-reported", value: function(n) { return (n["target volume"] - n["stock volume"]) / 1e3; } },
		{ id: "stock-for-water", value: function(n) { return n["stock volume"]; } },
		{ id: "final-volume-for-water", value: function(n) { return n["target volume"]; } },
		{ id: "volumes-added", value: function(n) { return n["target volume"] + n["stock volume"]; } },
		{ id: "sign-reversed", value: function(n) { return n["stock volume"] - n["target volume"]; } }
	]
});

// From lab
var quantities = {
	"molar mass": molarMassQuantity, "moles of solute": molesOfSolute, "mass of solute": massOfSolute, molarity: molarity2,
	"stock volume": stockVolumeQuantity, "water volume": waterVolume, "dilution factor": dilutionFactor2,
	"diluted molarity": dilutedMolarityQuantity, "ion molarity": ionMolarityQuantity,
	"percent error": percentErrorQuantity, "reagent molarity": reagentMolarityQuantity, density: densityQuantity,
	"mass percent": massPercentQuantity
};
var quantityNames = Object.keys(quantities);
function isQuantityName(text) { return quantityNames.includes(text); }

return { plainName, readGivenCells, fillQuantity, fitsSlip, judgeEntry, quantities, isQuantityName };
},
// Part lab/judging/judgeQuantity
"lab/judging/judgeQuantity"(part) {
const { fillQuantity, isQuantityName, judgeEntry, plainName, quantities, readGivenCells } = part("lesson");
const { feedbackText, readEntry } = part("lab/judging/readEntry");
const { failure, quoted, success } = part("base");

// From lab/judging
function readQuantityName(cell) {
	const name = plainName(cell);
	if (isQuantityName(name)) return success(name);
	return failure({
		code: "quantity-unknown", argument: "quantity", received: quoted(cell),
		advice: `Use one of ${Object.keys(quantities).join(", ")}.`
	});
}
function readFilledQuantity(quantity, given, options = {}) {
	const name = readQuantityName(quantity);
	if (!name.ok) return name;
	const cells = readGivenCells(quantities[name.value], given);
	return cells.ok ? fillQuantity(quantities[name.value], cells.value, options) : cells;
}
function judgeFilledQuantity(step, entry) {
	const judgement = judgeEntry(step, readEntry(entry, step.quantity.entryKind));
	return {
		status: judgement.status, feedback: feedbackText(judgement, step.quantity),
		slip: judgement.status === "not yet" ? judgement.slips.join(" or ") : ""
	};
}

return { readQuantityName, readFilledQuantity, judgeFilledQuantity };
},
// Part CHECKSTEP: functions/entries/checkStepEntry
"CHECKSTEP"(part) {
const { judgeFilledQuantity, readFilledQuantity } = part("lab/judging/judgeQuantity");



const { rowByRow, success, withinLimits } = part("base");

// From functions/entries
var checkStepEntry = {
	name: "CHECKSTEP",
	arguments: [
		{ name: "quantity", kind: "text", about: "what is asked for, such as mass of solute" },
		{ name: "given", kind: "table", about: "given numbers in two columns, name and value" },
		{ name: "entry", kind: "entry" }, { name: "figures", kind: "whole number", optional: true },
		{ name: "atomic_weight_decimals", kind: "whole number", optional: true }
	],
	columns: ["status", "feedback", "slip"],
	call: rowByRow,
	compute(quantity, given, entry, figures, decimals) {
		const asked = withinLimits(figures, { argument: "figures", least: 1, most: 15 });
		if (!asked.ok) return asked;
		const rounded = withinLimits(decimals, { argument: "atomic_weight_decimals", least: 0, most: 10 });
		if (!rounded.ok) return rounded;
		const step = readFilledQuantity(quantity, given, { figures, decimals });
		if (!step.ok) return step;
		const { status, feedback, slip } = judgeFilledQuantity(step.value, entry);
		return success([status, feedback, slip]);
	}
};
return { entry: checkStepEntry };
},
// Part measurement/glasswareTolerance
"measurement/glasswareTolerance"(part) {
const { failure, glassware, millilitres, quoted, success } = part("base");

// From measurement
var glasswareKinds = {
	"volumetric flask": { ISO: "ISO 1042", ASTM: "ASTM E288" },
	"volumetric pipette": { ISO: "ISO 648", ASTM: "ASTM E969" },
	"graduated pipette": { ISO: "ISO 835", ASTM: "ASTM E1293" }, burette: { ISO: "ISO 385", ASTM: "ASTM E287" },
	"graduated cylinder": { ISO: "ISO 4788", ASTM: "ASTM E1272" }, beaker: void 0
};
var bases = { m: "memory", c: "practice" };
function glasswareFigures({ kind, glassClass = "A", standard = "ISO" }) {
	const list = glassware[glasswareKinds[kind] === void 0 ? kind : `${standard} ${kind} ${glassClass}`] ?? "";
	return list.split(" ").map((line) => {
		const [size, tolerance, mark] = line.split(":");
		return {
			volume: millilitres(Number(size)), tolerance: millilitres(Number(tolerance)),
			basis: mark === "m" || mark === "c" ? bases[mark] : "source"
		};
	});
}
function sizeText({ volume, tolerance }) { return `${volume} mL (± ${tolerance} mL)`; }
function glasswareTolerance(wanted) {
	const { kind, volume, standard = "ISO" } = wanted;
	const figures = glasswareFigures(wanted);
	const found = figures.find((figure) => Math.abs(figure.volume - volume) <= 1e-9 * figure.volume);
	if (found) return success(found);
	const smaller = figures.filter((figure) => figure.volume < volume).pop();
	const larger = figures.find((figure) => figure.volume > volume);
	const neighbours = [smaller, larger].flatMap((figure) => figure ? [figure] : []);
	const table = glasswareKinds[kind]?.[standard] ?? "the table of beakers";
	return failure({
		code: "glassware-size", argument: "volume", expected: `a size of ${kind} in ${table}`,
		received: `${quoted(volume)} mL`, advice: `Take ${neighbours.map(sizeText).join(" or ")}.`,
		brief: neighbours.map((figure) => `${figure.volume}`).join(" or ")
	});
}

return { glasswareFigures, glasswareTolerance };
},
// Part lab/hints/quantityHint: lab/lesson/shownCell, lab/texts/hints
"lab/hints/quantityHint"(part) {
const { isBlank, readFormula, readNumber, readQuantity, withDecimalMark } = part("base");

// From lab/lesson
function shownCell(cell, { argument, decimalMark }) {
	if (isBlank(cell)) return void 0;
	const { kind, name } = argument;
	if (kind === "formula" || kind === "ion") return typeof cell === "string" ? cell.trim() : void 0;
	const read = kind === "number" ? readNumber(cell, name, { decimalMark }) : readQuantity(cell, kind, name, { decimalMark });
	if (!read.ok) return void 0;
	const isAsTyped = typeof cell === "string" && !("unit" in read.value && read.value.unit !== "");
	return isAsTyped ? cell.trim() : withDecimalMark(String(read.value.value), decimalMark);
}

// From lab/texts
var atomsShown = "atoms";
var litres = ["(", { given: "volume" }, " mL ÷ 1000)"];
var quantityHints = {
	"molar mass": {
		idea: "A molar mass is the mass of one mole of the whole formula, so each atom in it counts.",
		relation: "Add up atomic weight × number of atoms. A number after a bracket counts for all in it; one after a dot, for the whole part.",
		setUp: ["Replace each symbol with its atomic weight: ", { given: atomsShown }, " = ?"]
	},
	"moles of solute": {
		idea: "Molarity says how many moles are in one litre. How many litres do you have?",
		relation: "moles = molarity × volume in litres", setUp: [{ given: "molarity" }, " mol/L × ", ...litres, " = ?"]
	},
	"mass of solute": {
		idea: "First find how many moles you need, then what they weigh.",
		relation: "mass = moles × molar mass, where moles = molarity × volume in litres.",
		impure: "Your solid is not pure, so you need more of it.",
		setUp: [
			{ given: "molarity" }, " mol/L × ", ...litres, " × molar mass of ", { given: "formula" },
			{ given: "purity", before: " ÷ (", after: " ÷ 100)" }, " = ?"
		]
	},
	molarity: {
		idea: "Molarity says how crowded the solute is: how many moles are in each litre of solution?",
		relation: "molarity = moles ÷ volume in litres, where moles = mass ÷ molar mass.",
		impure: "Only the pure part of your solid counts.",
		setUp: [
			{ given: "mass" }, " g", { given: "purity", before: " × (", after: " ÷ 100)" }, " ÷ molar mass of ",
			{ given: "formula" }, " ÷ ", ...litres, " = ?"
		]
	},
	"stock volume": {
		idea: "All the solute in the diluted solution comes from the stock. Water brings none.",
		relation: "stock molarity × stock volume = target molarity × target volume",
		setUp: [
			{ given: "target molarity" }, " mol/L × ", { given: "target volume" }, " mL ÷ ", { given: "stock molarity" },
			" mol/L = ?"
		]
	},
	"water volume": {
		idea: "Stock and water share the flask. What room is left for the water?",
		relation: "water volume = target volume − stock volume (about, since volumes need not add up exactly)",
		setUp: [
			{ given: "target volume" }, " mL − (", { given: "target molarity" }, " × ", { given: "target volume" }, " ÷ ",
			{ given: "stock molarity" }, ") mL = ?"
		]
	},
	"dilution factor": {
		idea: "How many times as big does the volume get? The stock is part of the total.",
		relation: "dilution factor = final volume ÷ stock volume = stock molarity ÷ target molarity",
		setUp: [{ given: "stock molarity" }, " ÷ ", { given: "target molarity" }, " = ?"]
	},
	"diluted molarity": {
		idea: "The moles you took are now spread through a bigger volume.",
		relation: "molarity after = stock molarity × stock volume ÷ final volume",
		setUp: [
			{ given: "stock molarity" }, " mol/L × ", { given: "stock volume" }, " mL ÷ ", { given: "final volume" },
			" mL = ?"
		]
	},
	"ion molarity": {
		idea: "One formula unit splits into ions in water. How many of this ion does it give?",
		relation: "ion molarity = molarity of the salt × number of that ion in one formula unit",
		setUp: [{ given: "molarity" }, " mol/L × number of ", { given: "ion" }, " in one ", { given: "formula" }, " = ?"]
	},
	"percent error": {
		idea: "How far off is the result, as a share of the accepted value?",
		relation: "percent error = difference between the two ÷ accepted value × 100",
		setUp: [
			"difference between ", { given: "measured" }, " and ", { given: "accepted" }, ", ÷ ", { given: "accepted" },
			" × 100 = ?"
		]
	},
	density: {
		idea: "Density says what one mL of the solution weighs. What does your whole portion weigh?",
		relation: "density = mass of the portion ÷ its volume in mL",
		setUp: [{ given: "mass" }, " g ÷ ", { given: "volume" }, " mL = ?"]
	},
	"mass percent": {
		idea: "Your density lies between two lines of the table, or near them. How far is it from the lighter to the heavier line?",
		relation: "mass percent = lighter percent + fraction × difference in percent. The fraction is (your density − lighter density) ÷ difference in density.",
		setUp: [
			{ given: "lighter percent" }, " + (", { given: "density" }, " − ", { given: "lighter density" }, ") ÷ (",
			{ given: "heavier density" }, " − ", { given: "lighter density" }, ") × (", { given: "heavier percent" }, " − ",
			{ given: "lighter percent" }, ") = ?"
		]
	},
	"reagent molarity": {
		idea: "Picture one litre from the bottle. What does it weigh, and how much of that is the solute?",
		relation: "molarity = mass of one litre × (mass percent ÷ 100) ÷ molar mass",
		setUp: [
			"1000 mL × ", { given: "density" }, " g/mL × (", { given: "mass percent" }, " ÷ 100) ÷ molar mass of ",
			{ given: "formula" }, " = ?"
		]
	}
};
var readingHints = {
	balance: [
		"The balance shows what is really there. It need not match your plan to the last digit.",
		"Mass of the solid = reading with the solid − reading of the empty boat. Some balances do this with one key.",
		"Your plan is in “{row}”. Get close to it, then write down every digit that the balance shows."
	],
	flask: [
		"The flask holds its volume when the bottom of the meniscus, the curved surface, is on the mark.",
		"Keep your eye level with the mark. From above or below, the meniscus seems to be somewhere else.",
		"Your plan is in “{row}”. Read the scale at eye level and write down every digit."
	],
	pipette: [
		"A pipette delivers its volume from the mark to the tip, with the last drop left in.",
		"Fill it past the mark and wipe the tip. Lower the meniscus to the mark at eye level, then let it drain.",
		"Your plan is in “{row}”. Which mark did you start from, and where did you stop?"
	],
	portion: [
		"The balance shows what is really there. A few drops more or less show at once.",
		"Mass of the portion = reading with the solution − reading of the same dry vessel with its lid.",
		"What would the same volume of water weigh? If your portion is far from that, check it. Write down every digit."
	],
	bench: [
		"The reading shows what is in the flask now. The plan says what should be.",
		"Read it twice. Write down every digit, and the unit.",
		"Your plan is the {row} you were given. If the reading is far off, what went into the flask?"
	]
};
var toldHints = [
	"Think of a friend who missed the lab. What would you show first?",
	"Say what you found, then how it fits. Use words like molarity.", "Begin with: “We know that …, because …”."
];
var levelAsked = "Choose 0, 1, 2 or 3.";
function rowShown(title) { return `(your “${title}”)`; }

// From lab/hints
function atomsOf(formula) {
	const read = readFormula(formula);
	if (!read.ok) return void 0;
	return read.value.atoms.map(({ element, count }) => `${count} × ${element}`).join(" + ");
}
function filledIn(pieces, shown) { return pieces.map((piece) => {
	if (typeof piece === "string") return piece;
	const value = shown(piece.given);
	return value === void 0 ? "" : `${piece.before ?? ""}${value}${piece.after ?? ""}`;
}).join(""); }
function quantityHint(quantity, { level, textOf }) {
	const { idea, relation, impure, setUp } = quantityHints[quantity];
	if (level === 1) return idea;
	if (level === 2) return impure !== void 0 && textOf("purity") !== void 0 ? `${relation} ${impure}` : relation;
	return filledIn(setUp, (name) => name === atomsShown ? atomsOf(textOf("formula")) : textOf(name));
}

return { shownCell, readingHints, toldHints, levelAsked, rowShown, filledIn, quantityHint };
},
// Part CHECKTEAM: lab/texts/exit, lab/exit/exitStep, lab/bench/procedures/concentratedToFlask, lab/bench/procedures/dryResidue, lab/bench/procedures/pipetteToFlask, lab/bench/procedures/serialFlasks and 98 more
"CHECKTEAM"(part) {
const { glasswareFigures } = part("measurement/glasswareTolerance");
const { filledIn, levelAsked, quantityHint, readingHints, rowShown, shownCell, toldHints } = part("lab/hints/quantityHint");
const { adviceTexts, cautionTexts, cautions } = part("chemistry/cautions");
const { fillQuantity, fitsSlip, isQuantityName, judgeEntry, plainName, quantities } = part("lesson");
const { feedbackText, filled, readEntry } = part("lab/judging/readEntry");
const { badBriefly, badGiven, badSetting, badStep, checkHeadings, closedRow, remarks, spanOver, stepTolerance, tenTo, unreadableTexts } = part("lab/texts/feedback");
const { anhydrousAtoms, asCell, atomsKey, computed, failure, finite, grams, gramsPerMillilitre, hiddenBy, ions, isBlank, millilitres, molarMass, molesPerLitre, notALine, notAboveZero, patternOnUse, percent, quoted, readFormula, readQuantity, restAfter, scanNumber, spreadOf, strongAcids, success, weakElectrolytes, withDecimalMark } = part("base");

// From lab/texts
var exitTexts = {
	title: function(seat) { return `Exit question, seat ${seat}`; }, kept: "Kept. Your teacher shows the checks later."
};

// From lab/exit
var exitId = /^exit ([1-4])$/;
function isExitStep(id) { return exitId.test(id); }
function exitMolarity(seat) { return `exit ${seat} molarity`; }
function exitVolume(seat) { return `exit ${seat} volume`; }
function exitStep({ steps, numbers }, id) {
	const seat = exitId.exec(id)?.[1];
	if (!seat) return void 0;
	const molarity = { given: exitMolarity(seat) };
	const volume = { given: exitVolume(seat) };
	const takesOf = (quantity) => steps.find((step) => step.kind === "calculated" && step.quantity === quantity)?.takes ?? {};
	const { "stock molarity": stock, "target molarity": target } = takesOf("stock volume");
	const { "final volume": flask } = takesOf("diluted molarity");
	const { purity } = takesOf("mass of solute");
	const diluted = stock && "given" in stock ? stock : target;
	const asked = diluted ? {
		quantity: "stock volume", unit: "mL",
		takes: { "stock molarity": diluted, "target molarity": molarity, "target volume": volume }
	} : flask ? {
		quantity: "diluted molarity", unit: "mol/L",
		takes: { "stock molarity": molarity, "stock volume": volume, "final volume": flask }
	} : {
		quantity: "mass of solute", unit: "g",
		takes: { formula: { given: numbers.formula }, molarity, volume, ...purity ? { purity } : {} }
	};
	const title = exitTexts.title(seat);
	return { kind: "calculated", id, title, shown: [], period: 1, bench: false, buildsOn: {}, ...asked };
}
function exitGivens(id) {
	const seat = exitId.exec(id)?.[1];
	if (!seat) return [];
	return [{ name: exitMolarity(seat), unit: "mol/L", about: "" }, { name: exitVolume(seat), unit: "mL", about: "" }];
}
function withExitGivens(activity, id) { return { ...activity, givens: [...activity.givens, ...exitGivens(id)] }; }

// From lab/bench/procedures
function concentratedToFlask() { return {
	name: "concentrated to flask",
	sinceLayout: 3,
	actions: [
		{ id: "protect" }, { id: "water" }, { id: "reagent" }, { id: "cool" }, { id: "transfer" }, { id: "mark" },
		{ id: "mix" }, { id: "label" }
	],
	rules: [
		{
			before: "protect", after: "reagent", weight: "safety",
			ask: "Stop: be protected before the bottle is opened. What could a splash or the vapour reach?"
		},
		{
			before: "water", after: "reagent", weight: "safety",
			ask: "Stop: water goes in first, then what is in the bottle, slowly. What would the heat do to a little water on top?"
		},
		{
			before: "reagent", after: "cool", weight: "needed", ask: "Mixing sets heat free. So when is the waiting of use?"
		},
		{
			before: "cool", after: "transfer", weight: "needed",
			ask: "What can heat do to a flask that is made to hold one exact volume?"
		},
		{ before: "transfer", after: "mark", weight: "needed", ask: "What is in the flask when you reach the mark?" },
		{
			before: "mark", after: "mix", weight: "needed",
			ask: "Water that comes in last stays on top for a long time. Is the solution the same all through?"
		},
		{ before: "transfer", after: "label", weight: "needed", ask: "What would the label say while the flask is empty?" },
		{
			before: "mix", after: "label", weight: "advised",
			ask: "A tip: write the label as soon as you know what is inside, and check it again at the end."
		}
	],
	hints: [
		"Heat is what makes this one different. Where can it go, and whom can it hurt?",
		"Think of three places: outside the hood, the beaker, the flask. Which letters belong to which?",
		"Ask of each letter: would you do this with a liquid that is hot, or with no goggles on?"
	]
}; }

function dryResidue() { return {
	name: "weighed residue",
	sinceLayout: 3,
	actions: [
		{ id: "protect" }, { id: "dish" }, { id: "rinse" }, { id: "portion" }, { id: "heat" }, { id: "cool" },
		{ id: "weigh" }, { id: "again" }
	],
	rules: [
		{
			before: "protect", after: "rinse", weight: "safety",
			ask: "Stop: be protected before solution is drawn up, never by mouth, and before a drying salt can spatter. Where can it fly?"
		},
		{
			before: "dish", after: "portion", weight: "needed",
			ask: "How will you know later which part of the mass is the dish?"
		},
		{
			before: "rinse", after: "portion", weight: "needed",
			ask: "A pipette is often wet inside. What would a few drops of water do to your portion?"
		},
		{ before: "portion", after: "heat", weight: "needed", ask: "What is there to dry in an empty dish?" },
		{
			before: "heat", after: "cool", weight: "needed",
			ask: "Hot glass looks just like cold glass. When does a dish need tongs and time?"
		},
		{
			before: "cool", after: "weigh", weight: "needed",
			ask: "Warm air rises from a hot dish. What does that do to the reading?"
		},
		{ before: "weigh", after: "again", weight: "needed", ask: "With what can a second weighing agree?" }
	],
	hints: [
		"Only the salt may count: not the dish, not the water, not the warm air above a hot dish.",
		"Two masses make a difference. Which things have to be done before each of them?",
		"Ask of each letter: would the balance tell the truth if this were still to come?"
	]
}; }

function pipetteToFlask() { return {
	name: "pipette to flask",
	sinceLayout: 3,
	actions: [
		{ id: "protect" }, { id: "rinse flask" }, { id: "water" }, { id: "rinse pipette" }, { id: "deliver" },
		{ id: "swirl" }, { id: "mark" }, { id: "stopper" }, { id: "mix" }
	],
	rules: [
		{
			before: "protect", after: "rinse pipette", weight: "safety",
			ask: "Stop: be protected before any stock is drawn up, and never by mouth. Where could a splash go?"
		},
		{
			before: "water", after: "deliver", weight: "safety", when: "water first",
			ask: "Stop: water goes in first, then this stock, slowly. A little water on top of it gets hot and can spit. Where would the drops fly?"
		},
		{
			before: "rinse flask", after: "deliver", weight: "needed",
			ask: "What would rinsing and emptying do to the stock that you put in?"
		},
		{
			before: "rinse flask", after: "water", weight: "needed",
			ask: "What would rinsing and emptying do to the water that you added?"
		},
		{
			before: "rinse pipette", after: "deliver", weight: "needed",
			ask: "A pipette is often wet inside. What would a few drops of water do to your portion of stock?"
		},
		{ before: "deliver", after: "swirl", weight: "needed", ask: "What is there to mix before the stock is in?" },
		{
			before: "water", after: "mark", weight: "needed",
			ask: "If the water stands at the mark already, is there room for more?"
		},
		{
			before: "swirl", after: "mark", weight: "needed",
			ask: "Mixing can change the warmth and the volume. When can you trust the mark?"
		},
		{ before: "mark", after: "stopper", weight: "needed", ask: "Can water go in while the flask is closed?" },
		{
			before: "stopper", after: "mix", weight: "needed",
			ask: "What happens to the solution if you turn an open flask over?"
		},
		{
			before: "water", after: "swirl", weight: "advised",
			ask: "A tip: swirl once water and stock are both in, or there is nothing to mix."
		}
	],
	reminders: { "water first": "Let this stock run in slowly and swirl: it heats the water." },
	hints: [
		"Only the stock that you measured may bring solute, and the water must end at the mark.",
		"Rinsing comes with emptying. Some things need an open flask, some a closed one. Sort the letters.",
		"Ask of each letter: what would go wrong if the stock were in the flask already?"
	]
}; }

function serialFlasks() { return {
	name: "serial dilution",
	sinceLayout: 3,
	actions: [
		{ id: "protect" }, { id: "rinse flasks" }, { id: "water" }, { id: "first portion" }, { id: "first mark" },
		{ id: "first mix" }, { id: "rinse pipette" }, { id: "second" }
	],
	rules: [
		{
			before: "protect", after: "first portion", weight: "safety",
			ask: "Stop: be protected before any stock is drawn up, and never by mouth. Where could a splash go?"
		},
		{
			before: "water", after: "first portion", weight: "safety", when: "water first",
			ask: "Stop: water goes in first, then this stock, slowly. A little water on top of it gets hot and can spit. Where would the drops fly?"
		},
		{
			before: "rinse flasks", after: "first portion", weight: "needed",
			ask: "What would rinsing and emptying do to the stock that you put in?"
		},
		{
			before: "rinse flasks", after: "water", weight: "needed",
			ask: "What would rinsing and emptying do to the water that you added?"
		},
		{
			before: "first portion", after: "first mark", weight: "needed",
			ask: "If the water is at the mark already, where will the stock take the level?"
		},
		{
			before: "water", after: "first mark", weight: "needed",
			ask: "If the water stands at the mark already, is there room for more?"
		},
		{
			before: "first mark", after: "first mix", weight: "needed",
			ask: "Water that comes in last stays on top for a long time. Is the solution the same all through?"
		},
		{
			before: "first mix", after: "rinse pipette", weight: "needed",
			ask: "Is what you rinse with the same as what you will measure, while the flask is not mixed?"
		},
		{
			before: "rinse pipette", after: "second", weight: "needed",
			ask: "Drops of the stronger stock are still in the pipette. What do they do to the next flask?"
		}
	],
	reminders: { "water first": "Let this stock run in slowly and swirl: it heats the water." },
	hints: [
		"Each flask is a dilution of its own. When is a flask ready to give a portion away?",
		"Sort the letters: those about the first flask, those about the second, those about the pipette.",
		"Ask of each letter: would the portion be right if this were still to come?"
	]
}; }

function solidToFlask() { return {
	name: "solid to flask",
	sinceLayout: 3,
	actions: [
		{ id: "protect" }, { id: "weigh" }, { id: "dissolve" }, { id: "cool" }, { id: "transfer" }, { id: "rinse" },
		{ id: "near" }, { id: "mark" }, { id: "stopper" }, { id: "mix" }
	],
	rules: [
		{
			before: "protect", after: "weigh", weight: "safety",
			ask: "Stop: be protected before the solid is out of its jar. What could dust or a splash reach?"
		},
		{
			before: "dissolve", after: "transfer", weight: "safety", when: "dissolves hot",
			ask: "Stop: this substance heats its water and can spit. Never straight in the flask: stir it slowly into water in a heat-proof beaker. Where could hot drops fly?"
		},
		{
			before: "cool", after: "transfer", weight: "needed", when: "dissolves hot",
			ask: "This substance heats its water. What can heat do to a flask that is made to hold one exact volume?"
		},
		{ before: "weigh", after: "dissolve", weight: "needed", ask: "Can you still weigh a solid that is in the water?" },
		{ before: "weigh", after: "transfer", weight: "needed", ask: "How will you know what mass went into the flask?" },
		{
			before: "dissolve", after: "cool", weight: "needed",
			ask: "Dissolving can warm or chill the water. So when is it worth waiting for room temperature?"
		},
		{
			before: "dissolve", after: "near", weight: "needed",
			ask: "How easily does a solid dissolve when the flask is almost full? And can the volume still change?"
		},
		{
			before: "cool", after: "mark", weight: "needed",
			ask: "The mark is right at room temperature. What happens to the level of a warm solution later?"
		},
		{
			before: "transfer", after: "rinse", weight: "needed",
			ask: "What is there to rinse while everything is still where it was?"
		},
		{
			before: "transfer", after: "near", weight: "needed",
			ask: "If the flask is almost full of water, is there room for the rest?"
		},
		{
			before: "rinse", after: "mark", weight: "needed",
			ask: "Where would the rinsing water take the level, once it stands at the mark?"
		},
		{
			before: "near", after: "mark", weight: "needed",
			ask: "You cannot take water out again. How do you come up to the mark without passing it?"
		},
		{ before: "mark", after: "stopper", weight: "needed", ask: "Can water go in while the flask is closed?" },
		{
			before: "stopper", after: "mix", weight: "needed",
			ask: "What happens to the solution if you turn an open flask over?"
		},
		{
			before: "cool", after: "transfer", weight: "advised",
			ask: "A tip: hot liquid can strain the flask, so check that it is cool to the touch as you pour.",
			unless: { before: "transfer", after: "dissolve" }
		},
		{
			before: "rinse", after: "near", weight: "advised",
			ask: "A tip: leave room for the rinsing water, or the level may pass the mark."
		}
	],
	reminders: {
		"dissolves hot": "This substance heats its water: stir it in slowly, a little at a time, in a heat-proof beaker."
	},
	hints: [
		"The flask is right only if all the solute is in it, at room temperature, with the water at the mark.",
		"Some things need an empty flask, some an open one, some a closed one. Sort the letters into those three.",
		"Ask of each letter: what would go wrong if the water were at the mark already?"
	]
}; }

function weighPortion() { return {
	name: "weighed portion",
	sinceLayout: 3,
	actions: [
		{ id: "protect" }, { id: "temperature" }, { id: "empty" }, { id: "rinse" }, { id: "deliver" }, { id: "close" },
		{ id: "full" }, { id: "waste" }
	],
	rules: [
		{
			before: "protect", after: "rinse", weight: "safety",
			ask: "Stop: be protected before any solution is drawn up, and never by mouth. Where could a splash go?"
		},
		{
			before: "empty", after: "deliver", weight: "needed",
			ask: "How will you know later which part of the mass is the vessel?"
		},
		{
			before: "rinse", after: "deliver", weight: "needed",
			ask: "A pipette is often wet inside. What would a few drops of water do to the density?"
		},
		{ before: "deliver", after: "close", weight: "needed", ask: "How does the portion get in once the lid is on?" },
		{
			before: "close", after: "full", weight: "needed",
			ask: "Water leaves an open vessel while you read. And was the lid there the first time?"
		},
		{ before: "full", after: "waste", weight: "needed", ask: "Can you still weigh a portion that is poured away?" },
		{
			before: "temperature", after: "deliver", weight: "advised",
			ask: "A tip: a warm solution fills the pipette with less mass, so look at the temperature early."
		}
	],
	hints: [
		"Only the solution may count: not the vessel, not the lid, not drops of water in the pipette.",
		"Two masses make a difference. Which things have to be just the same both times?",
		"Ask of each letter: would the balance tell the mass of the portion if this were still to come?"
	]
}; }

// From lab/bench
var procedures = {
	"solid to flask": solidToFlask, "pipette to flask": pipetteToFlask, "concentrated to flask": concentratedToFlask,
	"serial dilution": serialFlasks, "weighed residue": dryResidue, "weighed portion": weighPortion
};
function procedureByName(name) {
	const found = procedures[name];
	if (found === void 0) throw new Error(`No procedure is called “${name}”.`);
	return found();
}

// From lab/bench/questions
function crystalWater() { return {
	name: "crystal water",
	// True of every formula, since a team may have one without water.
	right: {
		id: "joins the rest",
		reply: "Yes: it counted on the balance, and in the flask it is water like the rest. The mark takes care of the volume."
	},
	others: [
		{ id: "stays bound", reply: "The solution is clear. What has happened to the crystals that held the water?" },
		{ id: "extra volume", reply: "Up to where did you fill, and was that water in the flask already?" },
		{ id: "more moles", reply: "One formula unit comes with its waters. How many units of the salt itself is that?" },
		{ id: "gone on balance", reply: "If the water weighed nothing, would the molar mass need the part after the dot?" }
	],
	hints: [
		"Follow the water: from the bottle to the balance, and from there to the flask.",
		"The mark fixes the volume of everything together, whichever way the water came in.",
		["Your flask holds ", { given: "flask" }, " mL in all. Whose water fills it up to there?"]
	]
}; }

function diluteAcid() { return {
	name: "dilute acid",
	right: {
		id: "spread out",
		reply: {
			acid: "Yes: dilute says how crowded. Strong and weak say how far an acid comes apart.",
			base: "Yes: dilute says how crowded. Strong and weak say how much of a base turns into hydroxide ions.",
			neither: "Yes: dilute says how crowded the particles are. The water did not change what they are."
		}
	},
	others: [
		{ id: "used up", reply: "If it were used up, what would have taken its place?" },
		{ id: "neutral", reply: "Would you leave the goggles off? What is still in the flask?" },
		{
			id: "another acid",
			reply: {
				acid: "Does the word weak tell you how much water there is, or what the acid itself does?",
				base: "Does the word weak tell you how much water there is, or what the base itself does?",
				neither: "Are the particles other ones now, or are they only further apart?"
			}
		}
	],
	hints: [
		"Keep two words apart: dilute and weak.",
		"Dilution changes how many particles are in each mL. Does it change what they are?",
		["Each litre in the flask now holds ", { given: "target molarity" }, " mol. Where did they come from?"]
	]
}; }

function dilutionParticles() { return {
	name: "dilution particles",
	right: {
		id: "spread out",
		reply: "Yes: the water spreads the particles out. None are made or lost, so each mL holds fewer of them."
	},
	others: [
		{
			id: "amount falls",
			reply: "Molarity says how crowded the particles are. If none left the flask, where could the others have gone?"
		},
		{ id: "amount grows", reply: "The volume grew because of water. Does water bring any of the solute with it?" },
		{ id: "same molarity", reply: "Picture one mL before and one mL after. Would you count the same number in both?" },
		{ id: "weaker particles", reply: "Can water change one particle, or only how far apart they are?" }
	],
	hints: [
		"Keep two things apart: how much there is, and how crowded it is.",
		"amount = molarity × volume. If one of the two goes down and the other up, what does the amount do?",
		[
			"Before: ", { given: "stock molarity" }, " mol/L in your portion. After: ", { given: "target molarity" },
			" mol/L in ", { given: "target volume" }, " mL. Picture every particle of the portion, then pour in the water."
		]
	]
}; }

function impureSolidQuestion() { return {
	name: "impure solid",
	right: {
		id: "fewer", reply: "Yes: part of what the balance showed is something else. That is why you weigh out more."
	},
	others: [
		{ id: "same", reply: "Can the balance tell the solute from what is mixed into it?" },
		{ id: "more", reply: "If part of the mass is something else, what is left for the solute?" },
		{ id: "smaller", reply: "Look at one particle. Is it the particle that is impure, or the heap it came from?" }
	],
	hints: [
		"A balance weighs all that lies on it.", "mass of solute = mass of solid × purity ÷ 100",
		["Of every 100 g of your solid, ", { given: "purity" }, " g are solute. What is the rest?"]
	]
}; }

function ionShare() { return {
	name: "ion share",
	right: { id: "same ratio", reply: "Yes: the formula sets the ratio. Water spreads all kinds out alike." },
	others: [
		{ id: "equal", reply: "To come closer, one kind would have to thin out faster. What would hold the others back?" },
		{ id: "only one", reply: "What would the charges in that mL add up to?" },
		{ id: "depends", reply: "Does water bring ions of the salt, or take some of one kind away?" }
	],
	hints: [
		"Follow one formula unit and all of its ions while the water goes in.",
		"Each kind is spread through the same, larger volume. By which factor does each get less crowded?",
		["Draw ten units of ", { given: "formula" }, " as ions in a small box, then the same ions in a larger one."]
	]
}; }

function lastFlask() { return {
	name: "last flask",
	right: {
		id: "fewer in each mL",
		reply: "Yes: each flask spreads its portion out again, and the particles stay what they are."
	},
	others: [
		{ id: "same number", reply: "The portions had the same volume. Were they equally crowded?" },
		{ id: "smaller", reply: "Can water cut a particle, or only move in between?" },
		{ id: "same steps", reply: "Does each flask take the same number away, or the same share?" },
		{ id: "more", reply: "What joined the portion each time: solute or water?" }
	],
	hints: [
		"Follow one portion: what comes along with it, and what joins it?",
		"Each flask keeps the same share of the molarity before: portion ÷ flask.",
		[
			"Each time ", { given: "portion" }, " mL become ", { given: "flask" },
			" mL. What does that do to how crowded they are?"
		]
	]
}; }

function overNight() { return {
	name: "over night",
	right: {
		id: "even", reply: "Yes: particles never stop moving about, and nothing sorts them once they are spread out."
	},
	others: [
		{ id: "bottom", reply: "Sand settles. Is a single particle among water like a grain of sand?" },
		{ id: "top", reply: "What would have to hold the water and the solute apart for one of them to sink?" },
		{ id: "solid", reply: "No water left the flask. What would push the particles out of it?" }
	],
	hints: [
		"Think of what particles do when nobody is looking.",
		"Left alone, things mix by themselves, though it takes long. Do they ever unmix?",
		["Follow one particle of ", { given: "formula" }, " through the night. Does it rest?"]
	]
}; }

function portionStrength() { return {
	name: "portion strength",
	right: { id: "same molarity", reply: "Yes: each mL holds what it held before. There are just fewer mL." },
	others: [
		{ id: "half molarity", reply: "Think of soup at home: is a spoonful of it weaker than the pot it came from?" },
		{
			id: "double molarity",
			reply: "The particles moved together with their water. Did anything bring them closer to each other?"
		},
		{ id: "same amount", reply: "What stayed in the flask? Can all of the solute be in the beaker?" },
		{ id: "beaker decides", reply: "Does an empty, dry beaker add anything or take anything away?" }
	],
	hints: [
		"Keep two things apart: how much there is, and how crowded it is.",
		"amount = molarity × volume. Which of the three changes when you pour?",
		["Think of one mL of your ", { given: "molarity" }, " mol/L solution. Is that mL changed by being poured?"]
	]
}; }

function separateIons() { return {
	name: "separate ions",
	right: {
		id: "separate",
		reply: "Yes: water comes between the ions, and a small number in the formula counts ions that are apart."
	},
	others: [
		{ id: "one piece", reply: "Salt water carries a current. Could it, if each piece had no charge left over?" },
		{ id: "clump", reply: "Ions of the same kind have the same charge. Would they hold on to each other?" },
		{ id: "atoms", reply: "What would have to happen for an ion to lose its charge? Does water do that?" },
		{ id: "one each", reply: "Add up the charges of what you chose. Does the solution as a whole have a charge?" }
	],
	hints: [
		"Ask what water does to a crystal: which parts can it pull apart?",
		"All charges in a solution add up to nothing. Count ions until they do.",
		["Write ", { given: "formula" }, " as its ions, each with its charge. How many of each make the charges even?"]
	]
}; }

function wholeMolecules() { return {
	name: "whole molecules",
	right: { id: "whole", reply: "Yes: water pulls the molecules away from each other and leaves each of them whole." },
	others: [
		{ id: "atoms", reply: "Dry the solution and the solid is back. Could loose atoms find their places again?" },
		{ id: "ions", reply: "Would this solution carry a current the way salt water does?" },
		{ id: "melted", reply: "Melting needs warmth and only one substance. What did the water do here?" },
		{ id: "gone", reply: "Put the flask on a balance before and after. Would the reading drop?" }
	],
	hints: [
		"Not to be seen is not the same as not there.",
		"Water can part molecules from each other. Parting the atoms of one takes a reaction.",
		["Picture one molecule of ", { given: "formula" }, " at the edge of the solid. What does the water pull on?"]
	]
}; }

// From lab/bench
var questions = {
	"dilution particles": dilutionParticles, "portion strength": portionStrength, "crystal water": crystalWater,
	"impure solid": impureSolidQuestion, "last flask": lastFlask, "dilute acid": diluteAcid, "separate ions": separateIons,
	"ion share": ionShare, "whole molecules": wholeMolecules, "over night": overNight
};
function questionByName(name) {
	const found = questions[name];
	if (found === void 0) throw new Error(`No question is called “${name}”.`);
	return found();
}

// From lab/texts
var tickTexts = {
	answer: function(formula) { return formula === "" ? "yes" : `yes, ${formula}`; },
	readFirst: function(answer) { return `Read this, choose “${answer}”:`; },
	nameIt: function(answer) { return `Which one? Choose “${answer}”:`; },
	anotherSubstance: function(answer) { return `A new one. Choose “${answer}”:`; },
	notYes: function(answer) { return `Choose exactly “${answer}”:`; },
	noFormula: "We do not know this substance. Read its safety data sheet and ask your teacher before you touch it.",
	staffOnly: "Your teacher makes this; you watch.",
	withTeacher: "Only beside your teacher, if school rules allow.",
	solid: "solid",
	inBottle: function(share) { return `${share} in the bottle`; },
	noSignal: "no signal word known",
	notClassified: "handle with care",
	notKnown: "treat as harmful",
	unlisted: "not in our list, treat as harmful",
	and: " and ",
	or: " or ",
	staffOnlyForm: "staff only",
	deferring: "Ask your teacher; the safety data sheet decides.",
	moreAbove: "More at the top.",
	readSheetFirst: "Touch nothing until your teacher has read its safety data sheet.",
	wear: { eyes: "Wear goggles.", hands: "Wear goggles and gloves.", all: "Wear goggles, gloves, lab coat." },
	acidToWater: "Acid into water, never the reverse.",
	heatOfSolution: "Dissolve it slowly in cold water.",
	neverWithAcid: "Never mix it with acid.",
	noFlames: "No flames near it.",
	awayFromFuel: "Keep it from anything that burns.",
	hood: "Use the fume hood.",
	drain: "Leftovers: waste beaker, then drain with plenty of water.",
	beaker: "Leftovers, rinsings: waste beaker, never the drain.",
	metalBeaker: function(metal) { return `Leftovers, rinsings: ${metal} waste beaker, never the drain.`; }
};
var shortEffects = {
	H225: "catches fire very easily", H226: "catches fire", H271: "makes things burn or explode",
	H272: "makes fires worse", H290: "corrodes metal", H300: "deadly if|swallowed", H301: "poisonous if|swallowed",
	H302: "harmful if|swallowed", H310: "deadly if|on skin", H311: "poisonous if|on skin", H312: "harmful if|on skin",
	H314: "burns|skin|eyes", H315: "irritates|skin", H317: "can start|skin allergy", H318: "can blind you",
	H319: "irritates|eyes", H330: "deadly if|breathed in", H331: "poisonous if|breathed in",
	H332: "harmful if|breathed in", H334: "can start|asthma", H335: "irritates|airways", H336: "makes you sleepy",
	H340: "damages|genes", H341: "may damage|genes", H350: "causes cancer", H350i: "causes cancer if breathed in",
	H351: "may cause cancer", H360: "damages|fertility|unborn babies", H360D: "damages|unborn babies",
	H360Df: "damages|unborn babies|fertility", H360F: "damages|fertility", H360FD: "damages|fertility|unborn babies",
	H361: "may damage|fertility|unborn babies", H361d: "may damage|unborn babies", H361f: "may damage|fertility",
	H362: "may harm|breast-fed babies", H370: "damages|organs", H371: "may damage|organs",
	H372: "damages|organs over time", H373: "may damage|organs over time", H400: "poisons life in water",
	H410: "poisons life in water", H411: "poisons life in water", H412: "harms life in water",
	EUH031: "makes poisonous gas with acid", EUH032: "makes very poisonous gas with acid", EUH066: "dries skin",
	EUH071: "burns|airways"
};
var tickHints = [
	"Who might be hurt at the bench, and by what?", "Each line says what the substance can do, and what to do about it.",
	"Tell your team in your own words what to wear and what not to do. Then choose the answer of this row."
];

var weighingTexts = {
	noted: "Noted.", unreadable: "Type the number that the balance shows, in g.",
	lighter: "Less than nothing, or than empty? Read both again.",
	copied: "Is this what the balance showed? Then write “shown” behind it."
};
var differenceTexts = {
	fromPlan: "This is the mass of your plan. What do your two readings give?",
	emptyLeftIn: "This matches the loaded vessel. What stood on the balance beside your substance?",
	added: "This matches both readings together. Which of them holds the other?",
	other: "Not yet. Which of the two readings above is larger, and by how much?"
};
var evidenceHints = [
	"What is there counts, not what was planned.", "Let someone who was not here see it from this row.",
	"Write it down at once, with every figure and its unit."
];
var notALink = "A link begins with https:// or http://. Your words stay.";

// From lab/hints
function textOf(cell) { return typeof cell === "string" ? cell.trim() : typeof cell === "number" ? String(cell) : ""; }
function linkOf(cell) {
	const typed = textOf(cell);
	return /^https?:\/\/[^\s"'<>]+$/i.test(typed) ? typed : "";
}
function ownHint(rows, { stepId, level }) {
	const wanted = stepId.trim().toLowerCase();
	const line = rows.find(
		([step, at, words, link]) => wanted !== "" && textOf(step).toLowerCase() === wanted && textOf(at) === String(level) && !(isBlank(words) && isBlank(link))
	);
	return line === void 0 ? { words: "", link: "" } : { words: textOf(line[2]), link: linkOf(line[3]) };
}

function titleOf(activity, id) { return activity?.steps.find((step) => step.id === id)?.title ?? id; }
function expectedName({ expects }, activity) {
	if (typeof expects === "string") return titleOf(activity, expects);
	return "given" in expects ? expects.given : expects.expected;
}
function calculatedHint(step, level, wanted) {
	const textOf2 = (name) => {
		const argument = quantities[step.quantity].takes.find((taken) => taken.name === name);
		const source = step.takes[name];
		if (argument === void 0 || source === void 0) return void 0;
		if ("given" in source) {
			return shownCell(wanted.givens[source.given], { argument, decimalMark: wanted.decimalMark });
		}
		const entry = shownCell(wanted.entries[source.entryOf], { argument, decimalMark: wanted.decimalMark });
		return entry ?? rowShown(titleOf(wanted.activity, source.entryOf));
	};
	return quantityHint(step.quantity, { level, textOf: textOf2 });
}
function ourHint(step, level, wanted) {
	switch (step.kind) {
		case "calculated":
			return calculatedHint(step, level, wanted);
		case "measured":
			return readingHints[step.hints ?? step.instrument][level - 1]?.replace("{row}", expectedName(step, wanted.activity)) ?? "";
		case "ordered":
			return procedureByName(step.procedure).hints[level - 1] ?? "";
		case "chosen": {
			const hint = questionByName(step.question).hints[level - 1] ?? "";
			return typeof hint === "string" ? hint : filledIn(hint, (name) => plainCell(wanted.givens[name]));
		}
		case "ticked":
		case "safety":
			return tickHints[level - 1] ?? "";
		case "weighing":
			return evidenceHints[level - 1] ?? "";
		case "told":
			return (step.evidence === void 0 ? toldHints : evidenceHints)[level - 1] ?? "";
	}
}
function plainCell(cell) { return typeof cell === "number" ? String(cell) : typeof cell === "string" && cell.trim() !== "" ? cell.trim() : void 0; }
function bareQuantityHint(name, level, { givens, decimalMark }) {
	if (!isQuantityName(name)) return "";
	const takes = quantities[name].takes;
	const textOf2 = (wanted) => {
		const argument = takes.find((taken) => taken.name === wanted);
		return argument && shownCell(givens[wanted], { argument, decimalMark });
	};
	return quantityHint(name, { level, textOf: textOf2 });
}
function hintForStep(wanted) {
	const { activity, stepId, level, ownHints = [] } = wanted;
	if (level !== 1 && level !== 2 && level !== 3) return "";
	const step = activity?.steps.find(({ id }) => id === stepId);
	const { words, link } = ownHint(ownHints, { stepId, level });
	const ours = () => step ? ourHint(step, level, wanted) : bareQuantityHint(stepId, level, wanted);
	return [words === "" ? ours() : words, link].filter((part) => part !== "").join(" ");
}

// From lab/lesson
var ownHelpGiven = "highest help level";
var showExitGiven = "show exit checks";

// From lab/lesson/activities
function isWeighed(step) { return step.kind === "measured" && step.instrument === "balance"; }
function weighing({ id }, when, { title }) { return {
	kind: "weighing", id: `${id} ${when}`, when, of: id, title, unit: "g", bench: true
}; }
function seen({}, evidence, { id, title }) { return { kind: "told", id, title, evidence, unit: "", bench: false }; }
function weighed(step) { return [
	weighing(step, "empty", { title: "Empty" }), weighing(step, "loaded", { title: "Loaded" }),
	{ ...step, from: "weighings" }
]; }
function toldSteps(step) { return [
	seen(step, "words", { id: "seen", title: "What you saw" }),
	seen(step, "link", { id: "picture", title: "Picture link" })
]; }
function withEvidenceSteps(activity) {
	const { steps } = activity;
	const last2 = steps.map(({ bench }) => bench).lastIndexOf(true);
	return {
		...activity,
		steps: steps.flatMap((step, place) => [
			...isWeighed(step) ? weighed(step) : [step], ...place === last2 ? toldSteps(step) : []
		])
	};
}

function safetyStep({ substance }, { topic, title }) { return { kind: "safety", id: topic, topic, title, unit: "", bench: false, substance }; }
function withSafetySteps(activity) { return {
	...activity,
	steps: activity.steps.flatMap(
		(step) => step.kind === "ticked" ? [
			step, safetyStep(step, { topic: "splash", title: "If it splashes" }),
			safetyStep(step, { topic: "waste", title: "Where it goes" })
		] : [step]
	)
}; }

var commonGivens = {
	formula: { name: "formula", unit: "" }, molarity: { name: "molarity", unit: "mol/L" },
	stock: { name: "stock molarity", unit: "mol/L" }, flask: { name: "flask", unit: "mL" },
	target: { name: "target molarity", unit: "mol/L" }, volume: { name: "target volume", unit: "mL" },
	ion: { name: "ion", unit: "" }, purity: { name: "purity", unit: "%" }
};

// From lab/texts
function several(letters) { return letters.join(", "); }
var orderTexts = {
	asked: "Put in order:",
	buildAgain: "These letters are from an older table. Ask your teacher to build it again.",
	works: "Yes, this order works.",
	lettersOnly: function(known) { return `Write the letters ${known[0]} to ${known[known.length - 1]}, each once, in the order you would do them.`; },
	wordsTyped: function(known) { return `Letters only, such as c a b. ${orderTexts.lettersOnly(known)}`; },
	lettersAmiss: function(found) { return [
		orderTexts.lettersOnly(found.known), found.strange.length > 0 ? `Not in the list: ${several(found.strange)}.` : "",
		found.missing.length > 0 ? `Still missing: ${several(found.missing)}.` : "",
		found.twice.length > 0 ? `More than once: ${several(found.twice)}.` : ""
	].filter((part) => part !== "").join(" "); },
	brokenPair: function({ sooner, later, ask }) { return `Look at ${sooner} and ${later}. ${ask}`; }
};

// From lab/numbers
function hashOf(text) {
	let hash = 2166136261;
	for (let at = 0; at < text.length; at += 1) hash = Math.imul(hash ^ text.charCodeAt(at), 16777619);
	return hash >>> 0;
}
function seededRandom(seed) {
	let state = hashOf(seed);
	return () => {
		state = state + 2654435769 | 0;
		let bits = Math.imul(state ^ state >>> 16, 2246822507);
		bits = Math.imul(bits ^ bits >>> 13, 3266489909);
		return ((bits ^ bits >>> 16) >>> 0) / 4294967296;
	};
}
function shuffled(items, random) {
	const dealt = items.slice();
	for (let last2 = dealt.length - 1; last2 > 0; last2 -= 1) {
		const drawn = Math.floor(random() * (last2 + 1));
		const moved = dealt[last2];
		dealt[last2] = dealt[drawn];
		dealt[drawn] = moved;
	}
	return dealt;
}

// From lab/bench
function letterOf(place) { return String.fromCharCode(97 + place); }
function letterSeed(name, { step = "", key = "" }) { return key === "" ? name : `${key}|${step}|${name}`; }
function lettered(seed, items) { return shuffled(items, seededRandom(seed)).map((item, place) => ({ letter: letterOf(place), item })); }

function letteredOptions(questionName, whose = {}) {
	const { right, others } = questionByName(questionName);
	return lettered(letterSeed(questionName, whose), [right, ...others]);
}

function brokenRules(procedure, order) { return procedure.rules.filter(
	({ before, after, weight, when }) => weight !== "advised" && when === void 0 && order.indexOf(after) < order.indexOf(before)
).length; }
function orderedActions(name, whose = {}) {
	const procedure = procedureByName(name);
	const seed = letterSeed(name, whose);
	for (let mix = 1; ; mix += 1) {
		const actions = lettered(`${seed} ${mix}`, procedure.actions);
		const order = actions.map(({ item }) => item.id);
		if (brokenRules(procedure, order) >= 3) return actions;
	}
}

// From chemistry
var densityList = `
NaCl 1:1.0053 2:1.0122 4:1.0268 5:1.0340 6:1.0413 8:1.0559 10:1.0707 12:1.0857 14:1.1009 16:1.1162 18:1.1319 20:1.1478 22:1.1640 24:1.1804 26:1.1972
HCl 1:1.0031 5:1.0228 10:1.0476 20:1.0980 30:1.1492 40:1.1977
H2SO4 1:1.0049 5:1.0318 10:1.0661 20:1.1398 30:1.2191 40:1.3028 50:1.3952 70:1.6105 100:1.8305
NaOH 1:1.0095 5:1.0538 10:1.1089 20:1.2192 30:1.3277 40:1.4299
NH3 1:0.9938 5:0.9770 10:0.9575 20:0.9228 30:0.8920
CuSO4 1:1.0085 5:1.0511 10:1.1070
HNO3 1:1.0037 5:1.0257 10:1.0543 20:1.1150 30:1.1801 40:1.2466
H3PO4 1:1.0038 5:1.0254 10:1.0531 20:1.1135 30:1.1804 40:1.2536
AgNO3 1:1.0070 5:1.0417 10:1.0882 20:1.1942 30:1.3204 40:1.4743
KCl 1:1.0046 5:1.0304 10:1.0633 20:1.1328
CaCl2 1:1.0065 5:1.0401 10:1.0835 20:1.1775 30:1.2816
NH4Cl 1:1.0014 5:1.0138 10:1.0286 20:1.0567
MgSO4 1:1.0084 5:1.0497 10:1.1034 20:1.2198
Na2CO3 1:1.0086 5:1.0502 10:1.1029
NaHCO3 1:1.0054 5:1.0337
ZnSO4 1:1.0085 5:1.0511 10:1.1071
FeCl3 1:1.0068 5:1.0408 10:1.0853
BaCl2 1:1.0070 5:1.0434 10:1.0921 20:1.2031
(NH4)2SO4 1:1.0042 5:1.0279 10:1.0574 20:1.1154 30:1.1721 40:1.2277
C12H22O11 0:0.9982 1:1.0021 2:1.0060 3:1.0099 4:1.0139 5:1.0178 6:1.0218 8:1.0299 10:1.0381 12:1.0465 14:1.0549 15:1.0592 16:1.0635 18:1.0721 20:1.0809 22:1.0899 24:1.0990 25:1.1035 26:1.1082 28:1.1175 30:1.1270 32:1.1366 34:1.1463 35:1.1513 36:1.1562
C6H12O6 1:1.0020 5:1.0175 10:1.0375 20:1.0797 30:1.1246
`;

var waterAt20 = { massPercent: 0, density: 0.9982 };
function lineOf(formula) { return densityList.split("\n").find((candidate) => candidate.startsWith(`${formula} `)); }
function densityLines(formula) {
	const listed2 = lineOf(formula)?.split(" ").slice(1).map((pair) => {
		const [massPercent = "", density = ""] = pair.split(":");
		return { massPercent: Number(massPercent), density: Number(density) };
	});
	return listed2 && [waterAt20, ...listed2.filter(({ massPercent }) => massPercent > 0)];
}

function withoutWater(text) { return text.replace(/\s/g, "").replace(/[·.*•][\d.,½]*H2O$/, ""); }
function densityAt(massPercent, points) {
	let before = waterAt20;
	for (const point of points.slice(1)) {
		if (massPercent < point.massPercent) {
			const share = (massPercent - before.massPercent) / (point.massPercent - before.massPercent);
			return before.density + share * (point.density - before.density);
		}
		before = point;
	}
	return before.density;
}
var densityUnlisted = 1;
var densityOfStrongAmmonia = 0.88;
function massPercentOf(formula, molarity) {
	const written = molarMass(formula);
	if (!written.ok) return written;
	const dry = molarMass({ atoms: anhydrousAtoms(formula) });
	if (!dry.ok) return dry;
	const dryText = withoutWater(formula.text);
	const points = densityLines(dryText);
	const strength = (gramsPerMl2, mass) => molarity * mass / (10 * gramsPerMl2);
	if (points === void 0) return success(percent(Math.min(100, strength(densityUnlisted, written.value))));
	const last2 = points[points.length - 1]?.massPercent ?? 0;
	let gramsPerMl = waterAt20.density;
	for (let round = 0; round < 40; round += 1) gramsPerMl = densityAt(strength(gramsPerMl, dry.value), points);
	if (dryText === "NH3" && strength(gramsPerMl, dry.value) > last2) gramsPerMl = densityOfStrongAmmonia;
	return success(percent(Math.min(100, strength(gramsPerMl, written.value))));
}

function strengthPercent(formula, strength) {
	if (strength === "undiluted") return void 0;
	if ("massPercent" in strength) return strength.massPercent;
	const found = massPercentOf(formula, strength.molarity);
	return found.ok ? found.value : void 0;
}

function cautionsAt(formula, strength) {
	const found = cautions(formula, strengthPercent(formula, strength));
	if (found.ok) return found.value;
	const undiluted = cautions(formula);
	if (!undiluted.ok) throw new Error(`cautions for ${formula.text}: ${undiluted.error.code}`);
	return undiluted.value;
}

// From measurement
function isBareNumber(text) {
	const scanned = scanNumber(text);
	return scanned !== void 0 && restAfter(text, scanned) === "";
}

// From lab/lesson
function withUnit(typed, unit) {
	const text = String(typed).trim();
	return isBareNumber(text) ? `${text} ${unit}` : text;
}
function handledForms({ substance, formula, givens, decimalMark }) {
	const { solid: solid2, massPercent, molarity } = substance;
	const read = (name, kind) => {
		const quantity = isBlank(givens[name]) ? void 0 : readQuantity(givens[name], kind, name, { decimalMark });
		return quantity?.ok ? quantity.value.value : void 0;
	};
	const formOf = (strength, words, short2 = words) => ({
		words, short: short2, massPercent: strengthPercent(formula, strength), cautions: cautionsAt(formula, strength)
	});
	const forms = [];
	if (solid2) forms.push(formOf("undiluted", tickTexts.solid));
	if (massPercent !== void 0) {
		const share = read(massPercent, "percent");
		forms.push(
			share === void 0 ? formOf("undiluted", "") : formOf(
				{ massPercent: percent(share) },
				tickTexts.inBottle(withUnit(givens[massPercent], "%")),
				withUnit(givens[massPercent], "%")
			)
		);
	}
	if (molarity !== void 0) {
		const strength = read(molarity, "concentration");
		forms.push(
			strength === void 0 ? formOf("undiluted", "") : formOf({ molarity: molesPerLitre(strength) }, withUnit(givens[molarity], "mol/L"))
		);
	}
	if (forms.length === 0) forms.push(formOf("undiluted", ""));
	const told2 = ({ cautions: { signalWord, statements } }) => JSON.stringify([signalWord, statements]);
	return forms.filter((form, place) => forms.findIndex((other) => told2(other) === told2(form)) === place);
}

// From lab/bench/questions
var splash = {
	name: "splash",
	options: [
		{
			id: "serious",
			right: "Yes. Rinse at once and go on for many minutes, wet clothes and contact lenses off, while someone calls your teacher. The safety data sheet says what comes next.",
			ask: "Acting fast is never wrong. How strong are the words of the caution row?"
		},
		{
			id: "through skin",
			right: "Yes. Wet clothes off, wash at once with plenty of water, and call your teacher even if nothing hurts. The safety data sheet says what comes next.",
			ask: "Look at the caution row again. Which part of the body does it name first?"
		},
		{
			id: "mild",
			right: "Yes. Rinse at once with plenty of water, an eye for several minutes, contact lenses out. Your teacher decides whether that is enough.",
			ask: "Read the caution row again. Would you call that mild?"
		},
		{ id: "wait", ask: "Harm can begin before it hurts. What does the caution row say that it can do?" }
	]
};

var waste = {
	name: "waste",
	options: [
		{
			id: "drain", right: "Yes, where your local rules allow it. Your teacher has the last word.",
			ask: "From the drain nobody gets it back. What does the caution row say about leftovers?"
		},
		{
			id: "waste beaker", right: "Yes, rinsings too. Staff deal with it by local rules.",
			ask: "Read what the caution row says about leftovers once more. Is that all of it?"
		},
		{
			id: "metal", right: "Yes, rinsings too: it is collected for that metal. Staff deal with it by local rules.",
			ask: "Which metal would that be? Look for its name in the caution row."
		},
		{ id: "bottle", ask: "What would then be in the bottle, beside what its label says? Look at the caution row." }
	]
};

// From lab/bench
function safetyQuestion({ topic }) { return topic === "splash" ? splash : waste; }
function safetyLetters(step, whose = {}) {
	const { name, options } = safetyQuestion(step);
	return lettered(letterSeed(name, whose), options);
}
function splashOf({ verdict, statements }) {
	const told2 = statements.map(({ code, text }) => `${code} ${text}`).join("\n");
	if (verdict === "unsure" || /\bH31[48]/.test(told2) || told2.includes(cautionTexts.extremePh)) return "serious";
	return /\bH31[0127]/.test(told2) ? "through skin" : "mild";
}
function rightSafetyOption({ topic, substance }, handling) {
	const formula = readFormula(handling.givens[substance.formula]);
	const forms = formula.ok ? handledForms({ ...handling, substance, formula: formula.value }) : [];
	if (topic === "splash") {
		const found = forms.map(({ cautions: cautions2 }) => splashOf(cautions2));
		return ["serious", "through skin"].find((id) => !formula.ok || found.some((one) => one === id)) ?? "mild";
	}
	const wastes = forms.map(({ cautions: cautions2 }) => cautions2.waste);
	if (wastes.some(({ metal }) => metal !== "")) return "metal";
	return formula.ok && wastes.every(({ goesTo }) => goesTo === "drain") ? "drain" : "waste beaker";
}

// From lab/lesson/activities
function calculated(step) { return { ...step, kind: "calculated", bench: false }; }
function measured(step) { return { ...step, kind: "measured", bench: true }; }
function told(step) { return { ...step, kind: "told", unit: "", bench: false }; }
function cautionsRead({ substance }) { return { id: "cautions read", title: "Aim and cautions", unit: "", kind: "ticked", bench: false, substance }; }
function ordered(step) { return { ...step, kind: "ordered", unit: "", bench: true }; }
function chosen(step) { return { ...step, kind: "chosen", unit: "", bench: false }; }

function purityTaken({ purity }) { return purity === void 0 ? {} : { purity: { given: purity } }; }
function molarMassStep() { return calculated({
	id: "molar mass", title: "Molar mass", unit: "g/mol", quantity: "molar mass", takes: { formula: { given: "formula" } },
	buildsOn: {}
}); }
function molesStep({ molarity, volume }) { return calculated({
	id: "moles of solute", title: "Moles of solute", unit: "mol", quantity: "moles of solute",
	takes: { molarity: { given: molarity }, volume: { given: volume } }, buildsOn: {}
}); }
function massStep(names5) { return calculated({
	id: "mass of solute",
	title: "Mass to weigh",
	unit: "g",
	quantity: "mass of solute",
	takes: {
		formula: { given: "formula" }, molarity: { given: names5.molarity }, volume: { given: names5.volume },
		...purityTaken(names5)
	},
	buildsOn: { "molar mass": "molar mass", "moles of solute": "moles of solute" }
}); }
function massWeighedStep() { return measured({
	id: "mass weighed", title: "Mass you weighed", unit: "g", expects: "mass of solute", instrument: "balance"
}); }
function stockMadeStep(names5, title = "Molarity of your solution") { return calculated({
	id: "stock made",
	title,
	unit: "mol/L",
	quantity: "molarity",
	takes: {
		formula: { given: "formula" }, mass: { entryOf: "mass weighed" }, volume: { given: names5.volume },
		...purityTaken(names5)
	},
	buildsOn: { "molar mass": "molar mass" }
}); }

var names = { molarity: "molarity", volume: "flask" };
function benchReading() { return {
	id: "bench reading",
	title: "A reading at the bench: what did we really make?",
	givens: [commonGivens.formula, { ...commonGivens.molarity }, commonGivens.flask],
	numbers: { formula: "formula" },
	steps: [
		cautionsRead({ substance: { formula: "formula", solid: true, molarity: "molarity" } }),
		molarMassStep(),
		molesStep(names),
		massStep(names),
		ordered({
			id: "procedure", title: "How to make it", procedure: "solid to flask",
			handles: { formula: "formula", solid: true }
		}),
		measured({
			id: "molarity read", title: "Molarity read at the bench", unit: "mol/L", expects: { given: "molarity" },
			instrument: "bench", tools: [{ tool: "flask", volume: "flask" }]
		}),
		calculated({
			id: "percent error", title: "Percent error", unit: "%", quantity: "percent error",
			takes: { measured: { entryOf: "molarity read" }, accepted: { given: "molarity" } }, buildsOn: {}
		}),
		chosen({ id: "particles", title: "What the particles do", question: "portion strength" }),
		told({ id: "in your words", title: "In your own words" })
	]
}; }

function dilutionTaken({ stock, target, volume }) { return {
	"stock molarity": stock, "target molarity": { given: target }, "target volume": { given: volume }
}; }
function factorStep(names5) { return calculated({
	id: "dilution factor", title: "Dilution factor", unit: "", quantity: "dilution factor",
	takes: { "stock molarity": names5.stock, "target molarity": { given: names5.target } }, buildsOn: {}
}); }
function stockVolumeStep(names5) { return calculated({
	id: "stock volume", title: "Stock volume needed", unit: "mL", quantity: "stock volume", takes: dilutionTaken(names5),
	buildsOn: { "dilution factor": "dilution factor" }
}); }
function waterVolumeStep(names5) { return calculated({
	id: "water volume",
	title: "Water to add (about)",
	unit: "mL",
	quantity: "water volume",
	takes: dilutionTaken(names5),
	buildsOn: { "stock volume": "stock volume" },
	// Nothing here may say that the stock is in before the water: where it heats the water, that is the wrong way round.
	asks: {
		"stock-for-water": "Stock and water share the flask. How much of it is left for water?",
		"final-volume-for-water": "What shares the flask with the water?"
	}
}); }
function ionStep({ molarity, really }) { return calculated({
	id: "ion molarity", title: "Molarity of one ion", unit: "mol/L", quantity: "ion molarity",
	takes: { formula: { given: "formula" }, molarity: { given: molarity }, ion: { given: "ion" } },
	buildsOn: really === void 0 ? {} : { molarity: really }
}); }

var names2 = { stock: { entryOf: "reagent molarity" }, target: "target molarity", volume: "target volume" };
function concentratedReagent() { return {
	id: "concentrated reagent",
	title: "A solution from a concentrated acid or base",
	givens: [
		{ ...commonGivens.formula }, { name: "mass percent", unit: "%" }, { name: "density", unit: "g/mL" },
		{ ...commonGivens.target }, { ...commonGivens.volume }
	],
	numbers: { formula: "formula" },
	steps: [
		cautionsRead({ substance: { formula: "formula", massPercent: "mass percent", molarity: "target molarity" } }),
		molarMassStep(),
		calculated({
			id: "reagent molarity",
			title: "Molarity in the bottle",
			unit: "mol/L",
			quantity: "reagent molarity",
			takes: {
				formula: { given: "formula" }, "mass percent": { given: "mass percent" }, density: { given: "density" }
			},
			buildsOn: { "molar mass": "molar mass" }
		}),
		{
			...stockVolumeStep(names2), title: "From the bottle", buildsOn: {},
			asks: { "water-for-stock": "Which of the two liquids holds the solute?" }
		},
		waterVolumeStep(names2),
		ordered({ id: "procedure", title: "How to dilute it safely", procedure: "concentrated to flask" }),
		chosen({ id: "particles", title: "What the particles do", question: "dilute acid" }),
		told({ id: "in your words", title: "In your own words" })
	]
}; }

var names3 = { stock: { given: "stock molarity" }, target: "target molarity", volume: "target volume" };
function dilutionAlone() { return {
	id: "dilution",
	title: "A dilution",
	givens: [commonGivens.formula, commonGivens.stock, commonGivens.target, commonGivens.volume, commonGivens.ion],
	numbers: { formula: "formula" },
	steps: [
		cautionsRead({ substance: { formula: "formula", molarity: "stock molarity" } }),
		factorStep(names3),
		stockVolumeStep(names3),
		waterVolumeStep(names3),
		ordered({
			id: "procedure", title: "How to dilute", procedure: "pipette to flask",
			handles: { formula: "formula", molarity: "stock molarity" }
		}),
		ionStep({ molarity: "target molarity" }),
		chosen({ id: "particles", title: "What the particles do", question: "dilution particles" }),
		told({ id: "in your words", title: "In your own words" })
	]
}; }

function fromSolid({ id, title, formula, ion, purity, hydrate, question }) {
	const names5 = { molarity: "molarity", volume: "flask", ...purity ? { purity: "purity" } : {} };
	const { molarity, flask } = commonGivens;
	return {
		id,
		title,
		givens: [formula, molarity, flask, ion, ...purity ? [purity] : []],
		numbers: { formula: "formula", ...hydrate ? { hydrate } : {} },
		steps: [
			cautionsRead({ substance: { formula: "formula", solid: true, molarity: "molarity" } }),
			molarMassStep(),
			molesStep(names5),
			massStep(names5),
			ordered({
				id: "procedure", title: "How to make it", procedure: "solid to flask",
				handles: { formula: "formula", solid: true }
			}),
			massWeighedStep(),
			stockMadeStep(names5),
			ionStep({ molarity: "molarity", really: "stock made" }),
			chosen({ id: "particles", title: "What the particles do", question }),
			told({ id: "in your words", title: "In your own words" })
		]
	};
}
function plainSolid() { return fromSolid({
	id: "solution from a solid", title: "A solution from a solid", formula: { ...commonGivens.formula },
	ion: { ...commonGivens.ion }, question: "portion strength"
}); }
function hydrateSolid() { return fromSolid({
	id: "solution from a hydrate",
	title: "A solution from a hydrate",
	formula: { ...commonGivens.formula },
	ion: { ...commonGivens.ion },
	hydrate: true,
	question: "crystal water"
}); }
function impureSolid() { return fromSolid({
	id: "solution from an impure solid", title: "A solution from a solid that is not pure",
	formula: { ...commonGivens.formula }, ion: { ...commonGivens.ion }, purity: { ...commonGivens.purity },
	question: "impure solid"
}); }

function labelErrorStep() { return calculated({
	id: "percent error", title: "Percent error", unit: "%", quantity: "percent error",
	takes: { measured: { entryOf: "molarity found" }, accepted: { given: "molarity" } }, buildsOn: {}
}); }

var lines = {
	"lighter percent": { given: "lighter percent" }, "lighter density": { given: "lighter density" },
	"heavier percent": { given: "heavier percent" }, "heavier density": { given: "heavier density" }
};
var techniqueShare = 0.1;
function measuredDensity() { return {
	id: "measured density",
	title: "A measured density: what did we really make?",
	givens: [
		{ ...commonGivens.formula },
		{ ...commonGivens.molarity },
		{ name: "portion", unit: "mL" },
		{ name: "lighter percent", unit: "%" },
		{ name: "lighter density", unit: "g/mL" },
		{ name: "heavier percent", unit: "%" },
		{ name: "heavier density", unit: "g/mL" }
	],
	numbers: { formula: "formula" },
	steps: [
		cautionsRead({ substance: { formula: "formula", molarity: "molarity" } }),
		molarMassStep(),
		ordered({ id: "procedure", title: "How to weigh a portion", procedure: "weighed portion" }),
		measured({
			id: "portion weighed",
			title: "Mass of the portion",
			unit: "g",
			expects: {
				expected: "mass of portion",
				takes: {
					formula: { given: "formula" }, molarity: { given: "molarity" }, volume: { given: "portion" }, ...lines
				}
			},
			instrument: "balance",
			tools: [{ tool: "balance" }, { tool: "pipette", volume: "portion" }],
			techniqueShare,
			hints: "portion"
		}),
		calculated({
			id: "density", title: "Density", unit: "g/mL", quantity: "density",
			takes: { mass: { entryOf: "portion weighed" }, volume: { given: "portion" } }, buildsOn: {}
		}),
		calculated({
			id: "mass percent", title: "Mass percent", unit: "%", quantity: "mass percent",
			takes: { density: { entryOf: "density" }, ...lines }, buildsOn: {}
		}),
		calculated({
			id: "molarity found",
			title: "Molarity found",
			unit: "mol/L",
			quantity: "reagent molarity",
			takes: {
				formula: { given: "formula" }, "mass percent": { entryOf: "mass percent" }, density: { entryOf: "density" }
			},
			buildsOn: { "molar mass": "molar mass" }
		}),
		labelErrorStep(),
		chosen({ id: "particles", title: "What the particles do", question: "portion strength" }),
		told({ id: "in your words", title: "In your own words" })
	]
}; }

function flaskStep({ id, title, from }) { return calculated({
	id,
	title,
	unit: "mol/L",
	quantity: "diluted molarity",
	takes: {
		"stock molarity": from === void 0 ? { given: "stock molarity" } : { entryOf: from },
		"stock volume": { given: "portion" }, "final volume": { given: "flask" }
	},
	buildsOn: {}
}); }
function serialDilution() { return {
	id: "serial dilution",
	title: "A serial dilution",
	givens: [commonGivens.formula, commonGivens.stock, { name: "portion", unit: "mL" }, { ...commonGivens.flask }],
	numbers: { formula: "formula" },
	steps: [
		cautionsRead({ substance: { formula: "formula", molarity: "stock molarity" } }),
		flaskStep({ id: "first flask", title: "Molarity in the first flask" }),
		flaskStep({ id: "second flask", title: "Molarity in the second flask", from: "first flask" }),
		flaskStep({ id: "third flask", title: "Molarity in the third flask", from: "second flask" }),
		ordered({
			id: "procedure", title: "How to dilute twice", procedure: "serial dilution",
			handles: { formula: "formula", molarity: "stock molarity" }
		}),
		chosen({ id: "particles", title: "What the particles do", question: "last flask" }),
		told({ id: "in your words", title: "In your own words" })
	]
}; }

var solid = { molarity: "stock molarity", volume: "flask", purity: "purity" };
function dilutionOf(fromRealStock) { return {
	stock: fromRealStock ? { entryOf: "stock made" } : { given: "stock molarity" }, target: "target molarity",
	volume: "target volume"
}; }
function stockAndDilution({ fromRealStock }) {
	const dilution = dilutionOf(fromRealStock);
	return {
		id: "stock and dilution",
		title: "A stock solution and its dilution",
		givens: [
			commonGivens.formula, commonGivens.stock, { ...commonGivens.flask }, commonGivens.target, commonGivens.volume,
			commonGivens.ion, { ...commonGivens.purity }
		],
		numbers: { formula: "formula" },
		steps: [
			cautionsRead({ substance: { formula: "formula", solid: true, molarity: "stock molarity" } }),
			molarMassStep(),
			molesStep(solid),
			massStep(solid),
			ordered({
				id: "stock procedure", title: "How to make the stock", procedure: "solid to flask",
				handles: { formula: "formula", solid: true }
			}),
			massWeighedStep(),
			stockMadeStep(solid, "Molarity of your stock"),
			factorStep(dilution),
			stockVolumeStep(dilution),
			waterVolumeStep(dilution),
			ordered({
				id: "dilution procedure", title: "How to dilute", procedure: "pipette to flask",
				handles: { formula: "formula", molarity: "stock molarity" }
			}),
			calculated({
				id: "diluted molarity",
				title: "Molarity after dilution",
				unit: "mol/L",
				quantity: "diluted molarity",
				takes: {
					"stock molarity": { entryOf: "stock made" }, "stock volume": { entryOf: "stock volume" },
					"final volume": { given: "target volume" }
				},
				buildsOn: {}
			}),
			ionStep({ molarity: "target molarity", really: "diluted molarity" }),
			chosen({ id: "particles", title: "What the particles do", question: "dilution particles" }),
			told({ id: "in your words", title: "In your own words" })
		]
	};
}

var names4 = { molarity: "molarity", volume: "portion" };
function weighedResidue() { return {
	id: "weighed residue",
	title: "A weighed residue: what did we really make?",
	givens: [{ ...commonGivens.formula }, { ...commonGivens.molarity }, { name: "portion", unit: "mL" }],
	numbers: { formula: "formula" },
	steps: [
		cautionsRead({ substance: { formula: "formula", solid: true, molarity: "molarity" } }),
		molarMassStep(),
		molesStep(names4),
		{ ...massStep(names4), title: "Mass that should stay" },
		ordered({ id: "procedure", title: "How to dry and weigh", procedure: "weighed residue" }),
		measured({
			id: "residue weighed", title: "Mass of the dry residue", unit: "g", expects: "mass of solute",
			instrument: "balance", tools: [{ tool: "balance" }, { tool: "pipette", volume: "portion" }]
		}),
		calculated({
			id: "molarity found", title: "Molarity found", unit: "mol/L", quantity: "molarity",
			takes: { formula: { given: "formula" }, mass: { entryOf: "residue weighed" }, volume: { given: "portion" } },
			buildsOn: { "molar mass": "molar mass" }
		}),
		labelErrorStep(),
		chosen({ id: "particles", title: "What the particles do", question: "portion strength" }),
		told({ id: "in your words", title: "In your own words" })
	]
}; }

// From lab/lesson
var asPlanned = { fromRealStock: false };
var activities = {
	"stock and dilution": stockAndDilution, "solution from a solid": plainSolid, "solution from a hydrate": hydrateSolid,
	"solution from an impure solid": impureSolid, dilution: dilutionAlone, "serial dilution": serialDilution,
	"concentrated reagent": concentratedReagent, "weighed residue": weighedResidue, "measured density": measuredDensity,
	"bench reading": benchReading
};
function activityById(id, variant = asPlanned) {
	const wanted = id.trim().replace(/\s+/g, " ").toLowerCase();
	return Object.keys(activities).includes(wanted) ? activities[wanted]?.(variant) : void 0;
}

function whole(cell) {
	const typed = typeof cell === "number" ? cell : typeof cell === "string" ? Number(cell.trim()) : Number.NaN;
	return Number.isInteger(typed) ? typed : Number.NaN;
}
function decimalMarkOf(cells) { return plainName(cells["decimal mark"]) === "comma" ? "comma" : "point"; }
function isYes(cell) { return cell === true || typeof cell === "string" && /^(?:yes|on|true)$/i.test(cell.trim()); }
function readLessonSettings(table) {
	const cells = Object.create(null);
	for (const [name, value] of table) {
		const plain = plainName(name);
		if (plain !== "" && !(plain in cells)) cells[plain] = value;
	}
	const bad = [];
	const level = (name, { least, most, otherwise }) => {
		if (isBlank(cells[name])) return otherwise;
		const value = whole(cells[name]);
		if (value >= least && value <= most) return value;
		bad.push(name);
		return otherwise;
	};
	return {
		activity: typeof cells.activity === "string" ? cells.activity : "",
		figures: level("figures", { least: 1, most: 15, otherwise: 3 }),
		decimals: level("atomic-weight decimals", { least: 0, most: 10, otherwise: 2 }),
		shortTable: /^\s*35[.,]50*\s*$/.test(String(cells["chlorine on the table"] ?? "")),
		decimalMark: decimalMarkOf(cells), judgeFigures: isYes(cells["judge figures"]),
		highestHelpLevel: level("highest help level", { least: 0, most: 3, otherwise: 3 }),
		showExitChecks: isYes(cells["show exit checks"]),
		studentsDilute: plainName(cells["concentrated reagents"]) === "students",
		fromRealStock: plainName(cells["work the dilution from"]) === "real stock",
		layout: "layout" in cells ? Math.max(0, whole(cells.layout) || 0) : Number.POSITIVE_INFINITY, bad, cells
	};
}

var longestGiven = 300;
function shortened(cell) { return typeof cell === "string" && cell.length > longestGiven ? cell.slice(0, longestGiven) : cell; }
function teamGivens(names5, values) {
	const cells = Object.create(null);
	const plain = names5.map(plainName);
	plain.forEach((name, column) => {
		if (name !== "" && plain.indexOf(name) === plain.lastIndexOf(name)) cells[name] = shortened(values[column]);
	});
	return cells;
}

function readTeamLesson({ givenNames, givenValues, settings: table }) {
	const settings = readLessonSettings(table);
	const activity = activityById(settings.activity, settings);
	return {
		settings, activity: activity && withEvidenceSteps(withSafetySteps(activity)),
		givens: teamGivens(givenNames, givenValues)
	};
}

// From lab/bench
function blockKey(givens) { return String(givens.key ?? "").trim(); }

// From lab/judging
var closedSetting = "closed at the bell";
var between = ";";
function closedKeys(cell) { return String(cell ?? "").split(between).map((key) => key.trim()).filter((key) => key !== ""); }
function isClosed({ settings, givens }) { return closedKeys(settings.cells[closedSetting]).includes(blockKey(givens)); }

function bareStep(id) {
	if (!isQuantityName(id)) return void 0;
	const { takes, buildsOn, unit } = quantities[id];
	return {
		kind: "calculated", id, title: id, unit, shown: [], period: 1, bench: false, quantity: id,
		takes: Object.fromEntries(takes.map(({ name }) => [name, { given: name }])),
		buildsOn: Object.fromEntries(buildsOn.map(({ name }) => [name, name]))
	};
}

var kinds = { g: "mass", mL: "volume", mol: "amount", "mol/L": "concentration", "g/mL": "density" };
function unitKind(unit) { return kinds[unit]; }
function isReadingUnit(unit) { return Object.keys(kinds).includes(unit); }
function givenKind(unit) {
	if (unit === "%") return "percent";
	return isReadingUnit(unit) ? unitKind(unit) : void 0;
}

function exactly(value) { return { low: value, middle: value, high: value }; }
function givenNumber(name, { activity, givens, decimalMark }) {
	const given = activity.givens.find((one) => one.name === name);
	const kind = given && givenKind(given.unit);
	if (given === void 0 || kind === void 0) return [];
	const read = readQuantity(givens[given.name], kind, given.name, { decimalMark });
	return read.ok ? [read.value.value] : [];
}
function sourceOf({ takes }, name) { return takes[name] ?? {}; }
function rowBehind(step, name, { stepOf }) {
	const { entryOf } = sourceOf(step, name);
	return entryOf === void 0 ? void 0 : stepOf(entryOf);
}
function calculatedSteps({ activity }) { return activity.steps.filter((step) => step.kind === "calculated"); }
function givenOf(around, { quantity, takes }) {
	const row = calculatedSteps(around).find((step) => step.quantity === quantity);
	return row && sourceOf(row, takes).given;
}
function dilutionAsked(around) { return {
	target: givenOf(around, { quantity: "stock volume", takes: "target molarity" }),
	flask: givenOf(around, { quantity: "stock volume", takes: "target volume" })
}; }
function plannedMolarity(step, around) {
	const weighed2 = rowBehind(step, "mass", around);
	const planned = weighed2?.kind === "measured" && typeof weighed2.expects === "string" ? around.stepOf(weighed2.expects) : void 0;
	if (planned?.kind !== "calculated") return [];
	const molarity = around.readyOf(planned)?.numbers.molarity;
	return typeof molarity === "number" ? [molarity] : [];
}
function plannedDilution(step, around) {
	const made = rowBehind(step, "stock molarity", around);
	const planned = made?.kind === "calculated" ? plannedMolarity(made, around) : [];
	const { target, flask } = dilutionAsked(around);
	const isOfPlan2 = sourceOf(step, "final volume").given === flask;
	return planned.flatMap((molarity) => [
		spanOver(around.ready, around.ready.quantity.relation, { "stock molarity": molarity }),
		...isOfPlan2 ? givenNumber(target, around).map(exactly) : []
	]);
}
function labelledMolarity(step, around) {
	if (sourceOf(step, "density").entryOf === void 0) return [];
	return givenNumber(givenOf(around, { quantity: "percent error", takes: "accepted" }), around).map(exactly);
}
function massToWeigh({ id }, around) {
	const mass = calculatedSteps(around).find(({ buildsOn }) => buildsOn["moles of solute"] === id);
	const ready = mass && around.readyOf(mass);
	return ready ? [spanOver(ready, ready.quantity.relation)] : [];
}
function flasksCompared(around) {
	const stocks = givenNumber(givenOf(around, { quantity: "mass of solute", takes: "volume" }), around);
	const flasks = givenNumber(dilutionAsked(around).flask, around);
	return stocks.flatMap((stock) => flasks.flatMap((flask) => [exactly(stock / flask), exactly(flask / stock)]));
}
function otherGivens(step, around) {
	const { activity, ready } = around;
	const names5 = Object.keys(step.takes);
	const taken = names5.map((name) => sourceOf(step, name).given);
	return names5.flatMap((name, at) => {
		const own = activity.givens.find((given) => given.name === taken[at]);
		return activity.givens.filter((other) => other.unit === own?.unit && !taken.includes(other.name)).flatMap((other) => givenNumber(other.name, around)).map((value) => spanOver(ready, ready.quantity.relation, { [name]: value }));
	});
}
function factorsAdded(step, around) {
	const isAlike = (other) => ["stock volume", "final volume"].every(
		(name) => JSON.stringify(other.takes[name]) === JSON.stringify(step.takes[name])
	);
	let first = step;
	let dilutions = 1;
	for (; ; ) {
		const before = rowBehind(first, "stock molarity", around);
		if (before?.kind !== "calculated" || !isAlike(before)) break;
		first = before;
		dilutions += 1;
	}
	const { ready } = around;
	return givenNumber(sourceOf(first, "stock molarity").given, around).map(
		(stock) => spanOver(ready, ready.quantity.relation, { "stock molarity": stock / dilutions })
	);
}
var otherGivenUsed = ["other-given-used", otherGivens];
var plannedStockUsed = ["planned-for-made", plannedDilution];
var slipsOf = {
	molarity: [["planned-for-made", function(step, around) { return plannedMolarity(step, around).map(exactly); }]],
	"reagent molarity": [["planned-for-made", labelledMolarity]],
	"moles of solute": [["mass-reported", massToWeigh], otherGivenUsed], "mass of solute": [otherGivenUsed],
	"dilution factor": [["flasks-compared", function(_, around) { return flasksCompared(around); }], plannedStockUsed],
	"stock volume": [plannedStockUsed, otherGivenUsed], "water volume": [plannedStockUsed],
	"diluted molarity": [plannedStockUsed, ["factors-added", factorsAdded], otherGivenUsed],
	"ion molarity": [otherGivenUsed]
};
function activitySlips(step, { entry, ...around }) {
	const tolerance = stepTolerance(around.ready);
	const found = (slipsOf[step.quantity] ?? []).filter(([, spans]) => spans(step, around).some((span) => fitsSlip(span, { entry, tolerance }))).map(([id]) => id);
	return found.includes("planned-for-made") ? found.filter((id) => id !== "other-given-used") : found;
}

function isFact({ step, value }) { return step?.kind === "measured" && value !== void 0; }
function isSound({ status }) { return status === "on target" || status === "close"; }

function workedFrom(row) { return row.value === void 0 ? [] : isSound(row) ? [...new Set([row.value, ...row.unrounded])] : [row.value]; }

function someOf(rows) {
	let chosen2 = [[]];
	for (const ways of rows) chosen2 = [...chosen2, ...ways.flatMap((way) => chosen2.map((some) => [...some, way]))];
	return chosen2.slice(1);
}
function carriedRows({ quantity, buildsOn }, { rowOf }) {
	const isGiven = (name) => quantities[quantity].takes.some((argument) => argument.name === name);
	const held = Object.keys(buildsOn).map((name) => {
		const row = rowOf(buildsOn[name] ?? "");
		if (row?.value === void 0) return [];
		const isRight = row.status === "on target";
		const own = { name, row, isRight, values: isGiven(name) ? workedFrom(row) : [row.value] };
		const really = isGiven(name) && !isRight && row.unrounded.length > 0;
		return really ? [own, { name, row, isRight: true, values: row.unrounded }] : [own];
	});
	return someOf(held).flatMap((some) => {
		const unsound = some.find(({ isRight }) => !isRight);
		let sets = [{}];
		for (const { name, values } of some)
			sets = values.flatMap((value) => sets.map((set) => ({ ...set, [name]: value })));
		return sets.map((carried) => ({ carried, sound: !unsound, lookAt: unsound?.row.root ?? "" }));
	});
}

function sourceSets({ takes }, { rowOf }) {
	let sets = [{}];
	for (const [name, source] of Object.entries(takes)) {
		const row = "entryOf" in source ? rowOf(source.entryOf) : void 0;
		if (row) sets = workedFrom(row).flatMap((value) => sets.map((set) => ({ ...set, [name]: value })));
	}
	return sets;
}

// From lab/lesson
function takesLessonFigures({ figures, ownFigures }) { return figures !== "decimals" && ownFigures !== true; }

// From lab/judging
function settingsRead({ quantity, takes }) {
	const isGiven = (name) => takes[name] !== void 0 && "given" in takes[name];
	return [
		...takesLessonFigures(quantities[quantity]) ? ["figures"] : [],
		...isGiven("formula") && !isGiven("ion") ? ["atomic-weight decimals"] : []
	];
}
function teamStep(step, { settings, givens, stepOf, rowOf }) {
	const quantity = quantities[step.quantity];
	const cells = {};
	const names5 = {};
	const numbers = {};
	const from = [];
	let waitsFor2 = "";
	for (const { name } of quantity.takes) {
		const source = step.takes[name];
		if (!source) continue;
		if ("given" in source) {
			cells[name] = givens[source.given];
			names5[name] = source.given;
			continue;
		}
		const row = rowOf(source.entryOf);
		const title = stepOf(source.entryOf)?.title ?? source.entryOf;
		names5[name] = title;
		if (row?.value === void 0) waitsFor2 || (waitsFor2 = filled(remarks.needsRow, { row: row?.root || title }));
		else from.push(row);
		numbers[name] = row?.value ?? Number.NaN;
	}
	const badName = settingsRead(step).find((name) => settings.bad.includes(name));
	const prepareWith = (fromEntries) => fillQuantity(quantity, cells, {
		...takesLessonFigures(quantity) ? { figures: settings.figures } : {}, decimals: settings.decimals,
		decimalMark: settings.decimalMark, numbers: fromEntries, names: names5
	});
	let result = prepareWith(numbers);
	const [first] = from;
	if (!result.ok && first) {
		const open = prepareWith(Object.fromEntries(Object.keys(numbers).map((name) => [name, Number.NaN])));
		if (open.ok) {
			result = open;
			waitsFor2 || (waitsFor2 = filled(remarks.lookFirst, { row: (from.find((row) => !isSound(row)) ?? first).root }));
		}
	}
	const [ofSetting, ofGiven] = isExitStep(step.id) ? [badBriefly, badBriefly] : [badSetting, badGiven];
	const bad = result.ok ? badName === void 0 ? "" : ofSetting(badName) : ofGiven(result.error.argument);
	return { bad, ready: result.ok ? result.value : void 0, from, waitsFor: waitsFor2 };
}

function withActivitySlips({ judgement, step, ready, entry }, around) {
	if (judgement.status !== "close" && judgement.status !== "not yet") return judgement;
	const isOpen = judgement.status === "close" ? judgement.because === "rounding" || judgement.because === "cut off" : judgement.question === void 0 || judgement.question === "one figure";
	const { activity } = around;
	if (!isOpen || entry.kind !== "number" || activity === void 0) return judgement;
	const more = activitySlips(step, {
		activity, stepOf: around.stepOf, readyOf: (other) => teamStep(other, around).ready, givens: around.givens,
		decimalMark: around.settings.decimalMark, ready, entry: entry.entry
	});
	if (more.length === 0) return judgement;
	if (judgement.status === "close") {
		return more.includes("planned-for-made") ? { status: "not yet", slips: ["planned-for-made"] } : judgement;
	}
	return { status: "not yet", slips: [...judgement.slips.filter((id) => id !== "power-of-ten"), ...more] };
}

function isFromFlaskBefore(step, around) {
	const before = rowBehind(step, "stock molarity", around);
	return before?.kind === "calculated" && before.quantity === "diluted molarity";
}
function judgeCalculated(step, cell, around) {
	const { settings } = around;
	const { bad, ready, from, waitsFor: waitsFor2 } = teamStep(step, around);
	if (bad !== "" || !ready) return { status: "unreadable", isUnusable: true, lookAt: bad };
	const entry = readEntry(cell, ready.quantity.entryKind, settings);
	if (entry.kind === "number" && waitsFor2 !== "") {
		return { status: "not yet", lookAt: waitsFor2, value: entry.entry.value };
	}
	const sets = sourceSets(step, around);
	const carried = carriedRows(step, around);
	const rows = [
		...carried,
		...sets.slice(1).flatMap((set) => [
			{ carried: set, sound: true, lookAt: "" },
			...carried.map((row) => ({ ...row, carried: { ...set, ...row.carried } }))
		])
	];
	const own = judgeEntry(ready, entry, { rows, judgeFigures: settings.judgeFigures, shortTable: settings.shortTable });
	const judgement = withActivitySlips({ judgement: own, step, ready, entry }, around);
	const value = entry.kind === "number" ? { value: entry.entry.value } : {};
	const spans = entry.kind === "number" ? sets.map((set) => spanOver(ready, ready.quantity.relation, set)) : [];
	const unsound = from.find((row) => !isSound(row) && !isFact(row));
	const unrounded = unsound ? [] : [...new Set(spans.flatMap(({ low, middle, high }) => [middle, low, high]))];
	const final = isSound(judgement) && unsound ? { status: "follows", lookAt: unsound.root } : judgement;
	return {
		...value,
		unrounded,
		status: final.status,
		lookAt: feedbackText(final, ready.quantity, {
			special: isFromFlaskBefore(step, around) ? ["flask before"] : [], asks: step.asks, isBrief: isExitStep(step.id)
		}),
		slips: final.status === "not yet" ? final.slips : [],
		...final.status === "follows" ? { root: final.lookAt } : {}
	};
}

// From chemistry
var weakBases = ["NH3", "CH3NH2", "C2H5NH2", "(CH3)2NH", "C5H5N", "N2H4"];
var neitherOfThem = ["FeF3"];
var byAtoms;
function listed() {
	const entries = (formulas, kind) => formulas.flatMap((text) => {
		const read = readFormula(text);
		return read.ok ? [[atomsKey(read.value), kind]] : [];
	});
	byAtoms ?? (byAtoms = new Map([
		...entries([...strongAcids, ...weakElectrolytes], "acid"), ...entries(weakBases, "base"),
		...entries(neitherOfThem, "neither")
	]));
	return byAtoms;
}
var carboxyl = /COOH|CO2H|HOOC/;
var hydroxide = /^(?:[A-Z][a-z]?|NH4|\(NH4\))\(?OH\)?\d*$/;
function acidOrBase(formula) {
	const known = listed().get(atomsKey({ atoms: anhydrousAtoms(formula) }));
	if (known !== void 0) return known;
	const written = formula.text.normalize("NFKC").replace(/\s|[·•*.⋅∙‧・].*$/gu, "");
	if (carboxyl.test(written)) return "acid";
	if (hydroxide.test(written)) return "base";
	const found = ions(formula);
	if (found.ok) {
		const cations = found.value.filter(({ charge }) => charge > 0);
		if (cations.length > 0 && cations.every(({ ion }) => ion === "H⁺")) return "acid";
		return found.value.some(({ ion }) => ion === "OH⁻") ? "base" : "neither";
	}
	return found.error.code === "ions-weak" ? "acid" : "neither";
}

// From lab/bench
function optionReply({ reply }, solute) {
	if (typeof reply === "string") return reply;
	const formula = readFormula(solute);
	return reply[formula.ok ? acidOrBase(formula.value) : "neither"];
}

// From lab/texts
var choiceTexts = {
	oneLetter: function(letters) { return `Write one letter, ${letters[0]} to ${letters[letters.length - 1]}. Your reason can follow after a comma.`; }
};

// From lab/judging
var letterFirst = patternOnUse(
	String.raw`^[\s([{"'“‘]*(\p{L})[\s)\]}.:;,"'”’–—-]*(?:$|(?<=[).:;,–—-]\s*)\S.{2,}|because\b.*)`,
	"su"
);
function chosenLetter(entry) {
	if (typeof entry !== "string") return void 0;
	const read = letterFirst().exec(entry.normalize("NFKC").toLowerCase());
	return read?.[1];
}
function judgeLetter(entry, options, judge) {
	if (isBlank(entry)) return { status: "blank", lookAt: "" };
	const letter = chosenLetter(entry);
	const chosen2 = options.find((option) => option.letter === letter);
	return chosen2 === void 0 ? { status: "unreadable", lookAt: choiceTexts.oneLetter(options.map((option) => option.letter)) } : judge(chosen2.item);
}

function judgeChoice(questionName, entry, { letters = {}, solute = "" } = {}) {
	return judgeLetter(entry, letteredOptions(questionName, letters), (item) => ({
		status: item.id === questionByName(questionName).right.id ? "on target" : "not yet",
		lookAt: optionReply(item, solute)
	}));
}
function judgeChosen(step, cell, { activity, givens }) { return judgeChoice(step.question, cell, {
	letters: { step: step.id, key: blockKey(givens) }, solute: givens[activity?.numbers.formula ?? ""]
}); }

// From chemistry
function densityOfMolarity({ molarMass: molarMass2, molarity, ...line }) {
	const error = notALine(line) ?? notAboveZero({ value: molarity, argument: "molarity", unit: "mol/L" });
	if (error) return failure(error);
	const { lighterPercent, lighterDensity, heavierPercent, heavierDensity } = line;
	const b = (heavierDensity - lighterDensity) / (heavierPercent - lighterPercent);
	const a = lighterDensity - b * lighterPercent;
	const grams2 = molarity * molarMass2 / 10;
	const massPercent = 2 * grams2 / (a + Math.sqrt(a * a + 4 * b * grams2));
	return finite(gramsPerMillilitre(a + b * massPercent), "molarity");
}

// From lab/judging
function expectedValue({ takes }, { givens, decimalMark }) {
	const named = (argument) => takes[argument]?.given ?? argument;
	let trouble;
	const read = (argument, kind) => {
		const name = named(argument);
		const quantity = readQuantity(givens[name], kind, name, { decimalMark });
		if (quantity.ok) return quantity.value.value;
		trouble ?? (trouble = quantity.error);
		return Number.NaN;
	};
	const formula = readFormula(givens[named("formula")], named("formula"));
	if (!formula.ok) return formula;
	const mass = molarMass(formula.value);
	if (!mass.ok) return mass;
	const volume = read("volume", "volume");
	const numbers = {
		molarMass: mass.value, molarity: molesPerLitre(read("molarity", "concentration")),
		lighterPercent: percent(read("lighter percent", "percent")),
		lighterDensity: gramsPerMillilitre(read("lighter density", "density")),
		heavierPercent: percent(read("heavier percent", "percent")),
		heavierDensity: gramsPerMillilitre(read("heavier density", "density"))
	};
	if (trouble) return failure(trouble);
	const density = densityOfMolarity(numbers);
	if (!density.ok) return failure({ ...density.error, argument: named(density.error.argument.replace(/_/g, " ")) });
	return success(density.value * volume);
}

function expectedReading({ id, expects, unit }, around) {
	const { givens, settings } = around;
	if (typeof expects !== "string" && "expected" in expects) {
		const worked = expectedValue(expects, { givens, decimalMark: settings.decimalMark });
		return worked.ok ? { bad: "", expected: worked.value, waitsFor: "" } : { bad: badGiven(worked.error.argument), expected: void 0, waitsFor: "" };
	}
	if (typeof expects !== "string") {
		const read = readQuantity(givens[expects.given], unitKind(unit), expects.given, settings);
		return read.ok ? { bad: "", expected: read.value.value, waitsFor: "" } : { bad: badGiven(expects.given), expected: void 0, waitsFor: "" };
	}
	const row = around.stepOf(expects);
	if (row?.kind !== "calculated") throw new Error(`the step “${id}” expects no calculated step`);
	const { bad, ready, waitsFor: waitsFor2 } = teamStep(row, around);
	return { bad, expected: ready && spanOver(ready, ready.quantity.relation).middle, waitsFor: waitsFor2 };
}

// From lab/texts
var readingTexts = {
	onTarget: "Yes, this is within what your tools and careful work allow.",
	above: "This reading is too high for your numbers.", below: "This reading is too low for your numbers.",
	farAbove: "Stop here: this reading is far too high for your numbers. Do both have the same unit?",
	farBelow: "Stop here: this reading is far too low for your numbers. Do both have the same unit?",
	unit: "Check the unit. What does the instrument show, and what does this row ask for?",
	unreadable: "Type the number that the instrument shows, with or without its unit.",
	decimals: "Close. Write down every digit that the balance shows."
};
var readAgain = { near: "Read again, or carry on.", further: "Read again before you go on." };
var weighAgain = { near: "Weigh again, or carry on.", further: "Weigh again before you go on." };
var readingAdvice = {
	balance: {
		above: {
			ask: "Was the mass of the empty boat or dish subtracted?",
			near: "If it was, take a little solid out, or carry on.",
			further: "If it was, take some solid out and read again."
		},
		below: {
			ask: "How much solid is still missing?", near: "Add a little more solid, or carry on.",
			further: "Add more solid, a little at a time, and read again."
		}
	},
	residue: {
		above: { ask: "Is it completely dry, and was the empty dish subtracted?", ...weighAgain },
		below: { ask: "Did some of it spit out of the dish, or stay in the pipette?", ...weighAgain }
	},
	portion: {
		above: { ask: "Was the empty vessel with its lid subtracted, and is it dry outside?", ...weighAgain },
		below: { ask: "Was the pipette filled to its mark, and did it drain to the end?", ...weighAgain }
	},
	bench: {
		above: { ask: "Does the water reach the mark, and how much solid went in?", ...readAgain },
		below: { ask: "Is all of the solid in the flask, and is the water at the mark, not above?", ...readAgain }
	},
	flask: {
		above: { ask: "Was your eye level with the bottom of the meniscus?", ...readAgain },
		below: { ask: "Was your eye level with the bottom of the meniscus?", ...readAgain }
	},
	pipette: {
		above: { ask: "Which mark did it start from, and was the last drop left in?", ...readAgain },
		below: { ask: "Which mark did it start from, and did it drain to the end?", ...readAgain }
	}
};
var toleranceTexts = {
	balance: function(toleranceG) { return `the balance (±${toleranceG} g, read empty and loaded)`; },
	flask: function(part) { return `the ${part.size} mL flask (±${part.tolerance} mL${part.note})`; },
	pipette: function(part) { return `the ${part.size} mL pipette (±${part.tolerance} mL${part.note})`; },
	fromMemory: ", from memory",
	readAt: function(size) { return `, as for ${size} mL`; },
	whole: function(parts) { return `From ${parts.tools}:
twice their standard uncertainty (JCGM 100), plus ${parts.percent} % for technique.`; },
	examples: function(unit, parts) { return `So ${parts.map(({ reading, limit }) => `${reading} ${unit} may be off by ${limit} ${unit}`).join(", and ")}.`; }
};

// From measurement
function volumetricTolerance({ vessel, volume, glassClass, standard }) {
	const figures = glasswareFigures({
		kind: vessel === "flask" ? "volumetric flask" : "volumetric pipette", glassClass, standard
	});
	const found = figures.find((figure) => figure.volume >= volume) ?? figures[figures.length - 1];
	if (found === void 0) throw new Error(`No figures for a ${vessel} of class ${glassClass} by ${standard}.`);
	const share = Math.max(1, volume / found.volume);
	return { tolerance: millilitres(found.tolerance * share), readAt: found.volume, confirmed: found.basis === "source" };
}

// From lab/lesson
var usualTools = {
	"glassware class": "B", "glassware standard": "ISO", balance: "0.01 g", "allowance for technique": "2 %"
};

// From lab/judging
function decimalText(value, decimalMark) {
	const rounded = Number(value.toPrecision(6));
	const plain = Math.abs(rounded) >= 1e-6 || rounded === 0 ? String(rounded) : rounded.toFixed(9);
	return withDecimalMark(plain, decimalMark);
}

function settingCell(settings, name) { return isBlank(settings[name]) ? usualTools[name] : settings[name]; }
function badSetting2(name, wanted) { return failure({
	code: "lesson-setting", argument: name, expected: wanted.expected, received: quoted(wanted.received)
}); }
function allowancePercent(settings) {
	const name = "allowance for technique";
	const cell = settingCell(settings, name);
	const typed = /^\s*(\d+(?:[.,]\d+)?)\s*%?\s*$/.exec(String(cell))?.[1]?.replace(",", ".");
	const percent2 = Number(typed);
	return typed !== void 0 && percent2 <= 50 ? success(percent2) : badSetting2(name, { expected: "a percentage from 0 to 50, such as 2 %,", received: cell });
}
function glassware(settings) {
	const classCell = settingCell(settings, "glassware class");
	const standardCell = settingCell(settings, "glassware standard");
	const glassClass = String(classCell).trim().toUpperCase();
	const standard = String(standardCell).trim().toUpperCase();
	if (glassClass !== "A" && glassClass !== "B" && glassClass !== "AS") {
		return badSetting2("glassware class", { expected: "A or B", received: classCell });
	}
	if (standard !== "ISO" && standard !== "ASTM") {
		return badSetting2("glassware standard", { expected: "ISO or ASTM", received: standardCell });
	}
	return success({ glassClass: glassClass === "B" ? "B" : "A", standard });
}
function balanceReadability(settings) {
	const cell = settingCell(settings, "balance");
	const read = readQuantity(cell, "mass", "balance");
	return read.ok && read.value.value > 0 ? success(read.value) : badSetting2("balance", { expected: "how finely the balance reads, such as 0.01 g,", received: cell });
}
function short(value, settings) { return decimalText(Number(value.toPrecision(3)), decimalMarkOf(settings)); }
function toolPart(used, settings) {
	if (used.tool === "balance") {
		const readability = balanceReadability(settings);
		if (!readability.ok) return readability;
		const tolerance2 = readability.value.value;
		const uncertainty = tolerance2 / Math.sqrt(3) * Math.SQRT2;
		return success({ relative: uncertainty / used.mass, words: toleranceTexts.balance(short(tolerance2, settings)) });
	}
	const kind = glassware(settings);
	if (!kind.ok) return kind;
	const { tolerance, readAt, confirmed } = volumetricTolerance({
		vessel: used.tool, volume: used.volume, ...kind.value
	});
	const note = [
		readAt === used.volume ? "" : toleranceTexts.readAt(short(readAt, settings)),
		confirmed ? "" : toleranceTexts.fromMemory
	].join("");
	return success({
		relative: tolerance / Math.sqrt(3) / used.volume,
		words: toleranceTexts[used.tool]({
			size: short(used.volume, settings), tolerance: short(tolerance, settings), note
		})
	});
}
function readingTolerance({ expected, tools, techniqueShare: techniqueShare2 = 1 }, settings) {
	const percent2 = allowancePercent(settings);
	if (!percent2.ok) return percent2;
	const counted = percent2.value * techniqueShare2;
	const parts = [];
	for (const used of tools) {
		const part = toolPart(used, settings);
		if (!part.ok) return part;
		parts.push(part.value);
	}
	const relative = Math.sqrt(parts.reduce((sum, part) => sum + part.relative ** 2, 0));
	return success({
		limit: Math.abs(expected) * (2 * relative + counted / 100),
		words: toleranceTexts.whole({
			tools: parts.map(({ words }) => words).join(" and "), percent: short(counted, settings)
		})
	});
}

var farTimes = 3;
var nearShare = 0.1;
function showsEveryFigure({ isText, lastPlace, figuresMin, figuresMax }, settings) {
	const finest = balanceReadability(settings);
	if (!isText || !finest.ok) return true;
	const place = finest.value.lastPlace;
	return lastPlace <= place && place <= lastPlace + figuresMax - figuresMin;
}
function judgeReading(entry, reading) {
	const read = readEntry(entry, unitKind(reading.unit), { decimalMark: reading.decimalMark });
	if (read.kind === "blank") return { status: "blank", lookAt: "" };
	if (read.kind === "unreadable") {
		const { because } = read;
		const saysWhy = because === "two numbers" || because === "too long";
		return { status: "unreadable", lookAt: saysWhy ? unreadableTexts[because] : readingTexts.unreadable };
	}
	if (read.unit === "other kind") return { status: "not yet", lookAt: readingTexts.unit };
	const tolerance = readingTolerance(reading, reading.settings);
	if (!tolerance.ok) return { status: "unreadable", isUnusable: true, lookAt: badSetting(tolerance.error.argument) };
	const { value } = read.entry;
	const { expected } = reading;
	const isWithinLimit = (reading2) => Math.abs(reading2 - expected) <= tolerance.value.limit + 1e-12 * Math.max(Math.abs(reading2), Math.abs(expected));
	if (isWithinLimit(value)) {
		const isOfBalance = reading.unit === "g" && reading.tools.some(({ tool }) => tool === "balance");
		return isOfBalance && !showsEveryFigure(read.entry, reading.settings) ? { status: "close", lookAt: readingTexts.decimals } : { status: "on target", lookAt: readingTexts.onTarget };
	}
	if (read.otherMark && isWithinLimit(read.otherMark.value)) return { status: "not yet", lookAt: remarks.otherMark };
	if (value > expected * farTimes) return { status: "not yet", lookAt: readingTexts.farAbove };
	if (value < expected / farTimes) return { status: "not yet", lookAt: readingTexts.farBelow };
	const side = value > expected ? "above" : "below";
	const { ask, near, further } = readingAdvice[reading.of][side];
	const isNear = Math.abs(value - expected) <= nearShare * Math.abs(expected);
	return { status: "not yet", lookAt: [readingTexts[side], ask, isNear ? near : further].join(" ") };
}

var shown = /[\s,;:.–—-]*\(?\bshown\)?[\s.!]*$/i;
function isRounded({ value, lastPlace }, exact) { return exact !== void 0 && Math.abs(value - exact) <= tenTo(lastPlace) * (0.5 + 1e-9); }
function isOfPlan(entry, step, around) { return isRounded(entry, expectedReading(step, around).expected) || typeof step.expects === "string" && around.rowOf(step.expects)?.value === entry.value; }
function judgeWeighing({ of, when }, cell, around) {
	const said = typeof cell === "string" && shown.test(cell);
	const read = readEntry(said ? cell.replace(shown, "") : cell, "mass", around.settings);
	if (read.kind === "blank") return { status: "blank" };
	if (read.kind === "unreadable" || read.unit === "other kind")
		return { status: read.kind === "number" ? "not yet" : "unreadable", lookAt: weighingTexts.unreadable };
	const { value } = read.entry;
	const row = (status, lookAt) => ({ status, lookAt, value });
	const empty = when === "loaded" ? around.rowOf(`${of} empty`)?.value : void 0;
	if (value < 0 || empty !== void 0 && value <= empty) return row("not yet", weighingTexts.lighter);
	if (value !== 0 && !showsEveryFigure(read.entry, around.settings.cells)) return row("close", readingTexts.decimals);
	const measured2 = around.stepOf(of);
	const isCopied = when === "loaded" && measured2?.kind === "measured" && isOfPlan(read.entry, measured2, around);
	return isCopied && !said ? row("close", weighingTexts.copied) : row("on target", weighingTexts.noted);
}
function judgeDifference(step, entry, around) {
	const emptyRow = around.rowOf(`${step.id} empty`);
	const loadedRow = around.rowOf(`${step.id} loaded`);
	if (!step.from || !emptyRow || !loadedRow) return void 0;
	const [empty, loaded] = [emptyRow.value, loadedRow.value];
	const about = (text, row) => filled(text, { row: row.root });
	if (empty === void 0 || loaded === void 0)
		return { status: "not yet", lookAt: about(remarks.needsRow, empty === void 0 ? emptyRow : loadedRow) };
	if (isRounded(entry, loaded - empty)) {
		return loadedRow.lookAt === weighingTexts.copied ? { status: "close", lookAt: about(remarks.lookFirst, loadedRow) } : void 0;
	}
	const { emptyLeftIn, added, fromPlan, other } = differenceTexts;
	const matching = isRounded(entry, loaded) ? emptyLeftIn : isRounded(entry, loaded + empty) ? added : void 0;
	return { status: "not yet", lookAt: matching ?? (isOfPlan(entry, step, around) ? fromPlan : other) };
}

function toolsOfReading({ tools, instrument, expected }, { givens, settings }) {
	const used = [];
	for (const one of tools ?? (instrument === "bench" ? [] : [{ tool: instrument }])) {
		if (one.tool === "balance") {
			used.push({ tool: one.tool, mass: grams(expected) });
			continue;
		}
		const name = "volume" in one ? one.volume : void 0;
		const size = name === void 0 ? void 0 : readQuantity(givens[name], "volume", name, settings);
		if (size?.ok === false) return size;
		used.push({ tool: one.tool, volume: millilitres(size?.value.value ?? expected) });
	}
	return success(used);
}

function readingOf({ instrument, hints, tools = [] }) { return hints ?? (instrument === "balance" && tools.some(({ tool }) => tool === "pipette") ? "residue" : instrument); }
function judgeMeasured(step, cell, around) {
	const { bad, expected, waitsFor: waitsFor2 } = expectedReading(step, around);
	if (bad !== "" || expected === void 0) return { status: "unreadable", isUnusable: true, lookAt: bad };
	const { unit, techniqueShare: techniqueShare2 } = step;
	const { settings } = around;
	const entry = readEntry(cell, unitKind(unit), settings);
	const value = entry.kind === "number" ? { value: entry.entry.value } : {};
	if (entry.kind === "number" && waitsFor2 !== "") return { ...value, status: "not yet", lookAt: waitsFor2 };
	const amiss = entry.kind === "number" && entry.unit !== "other kind" ? judgeDifference(step, entry.entry, around) : void 0;
	if (amiss) return { ...value, ...amiss };
	const tools = toolsOfReading({ ...step, expected }, around);
	if (!tools.ok) return { status: "unreadable", isUnusable: true, lookAt: badGiven(tools.error.argument) };
	const reading = {
		expected, unit, of: readingOf(step), tools: tools.value,
		...techniqueShare2 === void 0 ? {} : { techniqueShare: techniqueShare2 }, settings: settings.cells,
		decimalMark: settings.decimalMark
	};
	return { ...value, ...judgeReading(cell, reading) };
}

// From chemistry
var alkaliMetals = ["Li", "Na", "K", "Rb", "Cs"];
function isAlkaliHydroxide(formula) {
	const atoms = anhydrousAtoms(formula);
	const countOf = (element) => atoms.find((atom) => atom.element === element)?.count ?? 0;
	return atoms.length === 3 && countOf("O") === 1 && countOf("H") === 1 && alkaliMetals.some((element) => countOf(element) === 1);
}
function dissolvesHot(formula) { return isAlkaliHydroxide(formula) || // Asked in this order, since few substances burn and the lists of acids take long to read.
cautionsAt(formula, "undiluted").statements.some(({ code }) => code === "H314") && acidOrBase(formula) !== "neither"; }

var strongAcidFrom = 2;
function needsWaterFirst(formula, molarity) {
	const isStrong = molarity === void 0 || molarity >= strongAcidFrom;
	const { statements } = cautionsAt(formula, molarity === void 0 ? "undiluted" : { molarity });
	const burns = statements.some(({ code, text }) => code === "H314" || text.includes("H314"));
	if (!isStrong && !burns) return false;
	const kind = acidOrBase(formula);
	return kind === "acid" ? isStrong || burns : kind === "base" && burns;
}

// From lab/bench
function precautions({ handles }, { givens, decimalMark }) {
	if (handles === void 0) return success([]);
	const formula = readFormula(givens[handles.formula]);
	if (!formula.ok) return failure({ ...formula.error, argument: handles.formula });
	const found = [];
	if (handles.solid && dissolvesHot(formula.value)) found.push("dissolves hot");
	if (handles.molarity !== void 0) {
		const molarity = readQuantity(givens[handles.molarity], "concentration", handles.molarity, { decimalMark });
		if (!molarity.ok) return molarity;
		if (needsWaterFirst(formula.value, molesPerLitre(molarity.value.value))) found.push("water first");
	}
	return success(found);
}

// From lab/judging
var anyNumber = patternOnUse(String.raw`\p{N}`, "u");
var allLetters = patternOnUse(String.raw`\p{L}`, "gu");
var linkingWords = /\b(?:and|then|next)\b/g;
function lettersIn(entry) {
	const plain = entry.normalize("NFKC").toLowerCase();
	const linked = plain.replace(linkingWords, " ");
	if (anyNumber().test(linked)) return void 0;
	const letters = linked.match(allLetters());
	return letters ?? void 0;
}
function brokenFirst(rules, order) {
	const place = (id) => order.indexOf(id);
	const isBroken = ({ before, after, unless }) => place(after) < place(before) && !(unless !== void 0 && place(unless.before) < place(unless.after));
	const broken = rules.filter(isBroken);
	for (const weight of ["safety", "needed", "advised"]) {
		const [earliest] = broken.filter((rule) => rule.weight === weight).sort((one, other) => place(one.after) - place(other.after) || place(one.before) - place(other.before));
		if (earliest !== void 0) return earliest;
	}
	return void 0;
}
function lettersAmiss(entry, actions) {
	const known = actions.map(({ letter }) => letter);
	const letters = typeof entry === "string" ? lettersIn(entry) : void 0;
	if (letters === void 0) return orderTexts.lettersOnly(known);
	const strange = letters.filter((letter, at) => !known.includes(letter) && letters.indexOf(letter) === at);
	if (strange.length > 2) return orderTexts.wordsTyped(known);
	const missing = known.filter((letter) => !letters.includes(letter));
	const twice = known.filter((letter) => letters.indexOf(letter) !== letters.lastIndexOf(letter));
	if (strange.length > 0 || missing.length > 0 || twice.length > 0) {
		return orderTexts.lettersAmiss({ known, strange, missing, twice });
	}
	return letters;
}
function judgeOrder(procedureName, entry, { letters: whose = {}, precautions: precautions2 = [] } = {}) {
	if (isBlank(entry)) return { status: "blank", lookAt: "" };
	const { rules, reminders = {} } = procedureByName(procedureName);
	const actions = orderedActions(procedureName, whose);
	const letters = lettersAmiss(entry, actions);
	if (typeof letters === "string") return { status: "unreadable", lookAt: letters };
	const order = letters.map((letter) => actions.find((action) => action.letter === letter)?.item.id ?? "");
	const holding = rules.filter(({ when }) => when === void 0 || precautions2.includes(when));
	const broken = brokenFirst(holding, order);
	if (broken === void 0 || broken.weight === "advised") {
		const said = [orderTexts.works, ...precautions2.map((one) => reminders[one]), broken?.ask];
		return { status: "on target", lookAt: said.filter((text) => text !== void 0).join(" ") };
	}
	const pair = {
		sooner: letters[order.indexOf(broken.after)] ?? "", later: letters[order.indexOf(broken.before)] ?? ""
	};
	return { status: "not yet", lookAt: orderTexts.brokenPair({ ...pair, ask: broken.ask }) };
}
function judgeOrdered(step, cell, { givens, settings }) {
	if (settings.layout < procedureByName(step.procedure).sinceLayout) {
		return { status: isBlank(cell) ? "blank" : "unreadable", lookAt: orderTexts.buildAgain };
	}
	const found = precautions(step, { givens, decimalMark: settings.decimalMark });
	if (!found.ok) return { status: "unreadable", lookAt: badGiven(found.error.argument) };
	return judgeOrder(step.procedure, cell, {
		letters: { step: step.id, key: blockKey(givens) }, precautions: found.value
	});
}

function judgeSafety(step, cell, { givens, settings }) { return judgeLetter(
	cell,
	safetyLetters(step, { step: step.id, key: blockKey(givens) }),
	({ id, right, ask }) => right !== void 0 && id === rightSafetyOption(step, { givens, decimalMark: settings.decimalMark }) ? { status: "on target", lookAt: right } : { status: "not yet", lookAt: ask }
); }

// From chemistry
var gravest = [
	/^H3[013]0$/, /^H3[456]0/, /^H3[013]1$/, /^(H314|H318)$/, /^(H334|H370|H372)$/, /^(H341|H351|H361[a-z]*|H362)$/,
	/^H27[12]$/, /^H22[56]$/
];
var last = [/^H4\d\d$/, /^H290$/];
function gravityOf(code) {
	const place = gravest.findIndex((family) => family.test(code));
	if (place >= 0) return place;
	return gravest.length + 1 + last.findIndex((family) => family.test(code));
}

// From lab/lesson
var grave = /^H(300|301|310|311|330|331|334|34\d.*|35\d.*|36\d.*|370|271)$/;
var graveInSolution = /^H(300|310|330|34\d.*|35\d.*|36\d.*)$/;
function keptFromStudents({ codes, statements }, isSolution) {
	const uses = statements.filter(({ about }) => about === "use").map(({ text }) => text);
	if (codes.some((code) => (isSolution ? graveInSolution : grave).test(code))) return true;
	return uses.some(
		(use) => (isSolution ? /: not for students\.$/ : /not for students|staff only|staff weigh it out|: solid: staff|staff weigh out(?! for younger)/).test(use)
	);
}

var mostCautionWords = 54;
var mostLines = 10;
var lineHolds = 317;
var narrow = /[fijlrtI,.:;’()]/g;
var wide = /[mwMWCDGHNOQRU]/g;
function cautionWords({ studentsDilute, ...handling }) {
	const { substance, givens } = handling;
	const formula = readFormula(givens[substance.formula]);
	const maker = substance.massPercent === void 0 ? [] : [studentsDilute ? tickTexts.withTeacher : tickTexts.staffOnly];
	if (!formula.ok) return [...maker, tickTexts.noFormula].join("\n");
	const forms = handledForms({ ...handling, formula: formula.value });
	const isUnlisted = forms.some(({ cautions: cautions2 }) => cautions2.listing === "unlisted");
	const before = tickTexts.readFirst(tickTexts.answer(String(givens[substance.formula] ?? "").trim()));
	const told2 = (lines2, { parting, doing: doing2, isAll }) => [
		...maker,
		...lines2.map(sentences),
		...isUnlisted ? [tickTexts.readSheetFirst] : [],
		// In one paragraph: each line of its own would leave part of a line empty.
		[
			...isAll ? [] : [tickTexts.moreAbove], tickTexts.wear[wearFor(forms)],
			...careFor(forms).map((care) => tickTexts[care]), ...doing2, wasteFor(forms), tickTexts.deferring
		].join(" ")
	].join(parting);
	const fits = (text) => wordsIn(text) <= mostCautionWords && linesOf(`${before}
${text}`) <= mostLines;
	const all = forms.map((_, place) => codesOfForm(forms, place, false));
	const news = forms.map((_, place) => codesOfForm(forms, place, true));
	const linesWith = (codes, nameLength) => toldAlike(
		forms.map(
			(form, place) => lineOf2(form, {
				written: place === 0 && nameLength !== void 0 ? formula.value.text : "", nameLength: nameLength ?? 0,
				codes: codes[place] ?? []
			})
		)
	);
	const doing = doingFor(forms).map((what) => tickTexts[what]);
	for (const [codes, nameLength, parting] of [
		[all, mostWordsOfName, "\n"], [news, mostWordsOfName, "\n"], [news, 0, "\n"], [news, 0, " "], [news, void 0, " "]
	]) {
		const whole2 = told2(linesWith(codes, nameLength), { parting, doing, isAll: true });
		if (fits(whole2)) return whole2;
	}
	let kept = { doing: [], codes: news.map((codes, place) => codes.slice(0, place === 0 ? 1 : 0)) };
	const now = ({ doing: doing2, codes } = kept) => told2(linesWith(codes, void 0), { parting: " ", doing: doing2, isAll: false });
	const keep = (more) => {
		if (fits(now(more))) kept = more;
	};
	for (const what of doing) keep({ ...kept, doing: [...kept.doing, what] });
	for (const [place, codes] of news.entries()) {
		for (const code of codes.slice(kept.codes[place]?.length ?? 0))
			keep({ ...kept, codes: kept.codes.map((list, at) => at === place ? [...list, code] : list) });
	}
	return now();
}
function linesOf(text) {
	let lines2 = 0;
	for (const paragraph of text.split("\n")) {
		let left = 0;
		for (const word of paragraph.split(" ")) {
			const own = 10 * word.length - 5 * (word.match(narrow)?.length ?? 0) + 6 * (word.match(wide)?.length ?? 0);
			if (left < own + 5) {
				lines2 += 1;
				left = lineHolds + 5;
			}
			left -= own + 5;
		}
	}
	return lines2;
}
function codesOfForm(forms, place, isNewOnly) {
	const codes = forms[place]?.cautions.codes ?? [];
	const stronger = codesOf(forms.slice(0, place));
	const told2 = new Set(isNewOnly ? [...stronger, ...hiddenBy(new Set([...stronger, ...codes]))] : []);
	return codes.filter((code) => !told2.has(code)).sort((one, other) => gravityOf(one) - gravityOf(other));
}
function wordsIn(text) { return text.split(/\s+/).filter((word) => word !== "").length; }
var mostWordsOfName = 3;
function lineOf2({ cautions: cautions2, massPercent, short: short2 }, { written, nameLength, codes }) {
	const { listing, name, verdict, signalWord } = cautions2;
	const called = name !== "" && wordsIn(name) <= nameLength ? name : written;
	const signal = listing === "unlisted" ? tickTexts.unlisted : verdict === "hazards" ? signalWord : verdict === "none" ? tickTexts.notClassified : tickTexts.notKnown;
	const isKept = keptFromStudents(cautions2, massPercent !== void 0);
	return {
		what: [written === "" ? "" : called, short2].filter((words) => words !== "").join(", "),
		marks: [isKept && verdict !== "hazards" ? "" : signal, isKept ? tickTexts.staffOnlyForm : ""].filter(
			(words) => words !== ""
		),
		effects: effectsOf(codes)
	};
}
function effectsOf(codes) {
	const byDoing = new Map();
	for (const code of codes) {
		const [does = "", ...what] = (shortEffects[code] ?? code).split("|");
		byDoing.set(does, new Set([...byDoing.get(does) ?? [], ...what]));
	}
	return [...byDoing].map(([does, what]) => {
		const last2 = [...what].pop() ?? "";
		const others = [...what].slice(0, -1).join(", ");
		const joint = others === "" ? "" : does.endsWith(" if") ? tickTexts.or : tickTexts.and;
		return `${does} ${others}${joint}${last2}`.trim();
	}).join(", ");
}
function toldAlike(lines2) {
	const alike = (line) => lines2.findIndex(
		({ marks, effects }) => marks.join() === line.marks.join() && (effects === line.effects || line.effects === "")
	);
	return lines2.flatMap(
		(line, place) => alike(line) < place ? [] : [
			{ ...line, what: lines2.filter((other) => alike(other) === place).map(({ what }) => what).join(tickTexts.and) }
		]
	);
}
function capital(words) { return `${words.charAt(0).toUpperCase()}${words.slice(1)}`; }
function sentences({ what, marks, effects }) {
	const head = [what, marks.join(", ")].filter((part) => part !== "").join(": ");
	return [head, effects].filter((part) => part !== "").map((part) => `${capital(part)}.`).join(" ");
}
function codesOf(forms) { return forms.flatMap(({ cautions: cautions2 }) => cautions2.codes); }
function wearFor(forms) {
	const codes = codesOf(forms);
	if (codes.some((code) => /^H(314|318|310|311|300|330)$/.test(code))) return "all";
	const isOpen = forms.some(({ cautions: cautions2 }) => cautions2.verdict === "unsure");
	return isOpen || codes.some((code) => /^(H3|EUH066)/.test(code)) ? "hands" : "eyes";
}
function careFor(forms) {
	const cares = forms.flatMap(({ cautions: { statements } }) => statements.filter(({ about }) => about === "care"));
	if (cares.length === 0) return [];
	return [cares.some(({ advice }) => advice === adviceTexts.acidToWater) ? "acidToWater" : "heatOfSolution"];
}
function doingFor(forms) {
	const codes = codesOf(forms);
	const has = (pattern) => codes.some((code) => pattern.test(code));
	return [
		...has(/^EUH03[12]$/) ? ["neverWithAcid"] : [], ...has(/^H22/) ? ["noFlames"] : [],
		...has(/^H27/) ? ["awayFromFuel"] : [], ...has(/^(H33[0-6]|EUH071)$/) ? ["hood"] : []
	];
}
function wasteFor(forms) {
	const wastes = forms.map(({ cautions: cautions2 }) => cautions2.waste);
	if (wastes.every(({ goesTo }) => goesTo === "drain")) return tickTexts.drain;
	const metal = wastes.map((waste2) => waste2.metal).find((name) => name !== "");
	return metal === void 0 ? tickTexts.beaker : tickTexts.metalBeaker(metal);
}

// From lab/judging
var tick = /^(?:yes|y|x|ok|read|done|[✓✔☑])(?:[\s,:;–-]+|$)/i;
function judgeTick(entry, { substance, cautionLines }) {
	const formula = String(substance ?? "").trim();
	const answer = tickTexts.answer(formula);
	const withLines = (status, said) => ({
		status,
		lookAt: `${said}
${cautionLines}`
	});
	if (isBlank(entry)) return withLines("blank", tickTexts.readFirst(answer));
	const typed = entry === true ? tickTexts.answer("") : String(entry).trim();
	const isTicked = tick.test(typed);
	const named = typed.replace(tick, "").trim();
	const known = readFormula(substance);
	if (isTicked && (named === formula || !known.ok)) return { status: "on target", lookAt: cautionLines };
	if (isTicked && named === "") return withLines("not yet", tickTexts.nameIt(answer));
	const other = readFormula(named);
	if (!known.ok || !other.ok) return withLines("unreadable", tickTexts.notYes(answer));
	return atomsKey(other.value) === atomsKey(known.value) ? { status: "on target", lookAt: cautionLines } : withLines("not yet", tickTexts.anotherSubstance(answer));
}
function judgeTicked({ substance }, cell, { givens, settings: { decimalMark, studentsDilute } }) {
	return judgeTick(cell, {
		substance: givens[substance.formula], cautionLines: cautionWords({ substance, givens, decimalMark, studentsDilute })
	});
}

var longestAnswer = 1e3;
function isTooLong(cell) { return typeof cell === "string" && cell.length > longestAnswer && !isBlank(cell); }
function isLink(cell) { return /^\s*https?:\/\/[^\s/]+\.\S+/i.test(String(cell)); }
function judgeStep(step, cell, around) {
	const isInWords = ["ordered", "chosen", "ticked", "safety"].includes(step.kind);
	if (isInWords && isTooLong(cell)) return { status: "unreadable", lookAt: remarks.tooLong };
	switch (step.kind) {
		case "calculated":
			return judgeCalculated(step, cell, around);
		case "measured":
			return judgeMeasured(step, cell, around);
		case "ordered":
			return judgeOrdered(step, cell, around);
		case "chosen":
			return judgeChosen(step, cell, around);
		case "ticked":
			return judgeTicked(step, cell, around);
		case "safety":
			return judgeSafety(step, cell, around);
		case "weighing":
			return judgeWeighing(step, cell, around);
		case "told":
			return step.evidence === "link" && !isBlank(cell) && !isLink(cell) ? { lookAt: notALink } : {};
	}
}

function needsAnotherLook({ status }) { return status === "not yet" || status === "follows" || status === "unreadable"; }
function waitsFor(earlier, isShort) {
	const unread = earlier.find(
		({ step, status }) => (step?.kind === "ticked" || step?.kind === "safety") && status !== "on target"
	);
	if (unread) return filled(isShort ? remarks.waitForRow : remarks.waitForTick, { row: unread.root });
	const first = earlier.find(
		(other) => other.step && other.step.kind !== "chosen" && needsAnotherLook(other) && !isFact(other)
	);
	return first && filled(remarks.waitForRow, { row: first.root });
}
function withWait(row, earlier) {
	const isOfBench = row.step?.bench && row.step.kind !== "told" && !row.isUnusable;
	const lookAt = isOfBench ? waitsFor(earlier, row.step?.kind === "weighing") : void 0;
	if (lookAt === void 0) return row;
	return { ...row, status: row.status === "blank" ? "blank" : "not yet", lookAt, slips: [] };
}

var longestName = 40;
var quietRow = { step: void 0, status: "", lookAt: "", slips: [], value: void 0, unrounded: [], root: "" };
function judgeTeam(block, lesson = readTeamLesson(block)) {
	const ids = block.steps.map(plainName);
	const { activity, settings, givens } = lesson;
	const exitIsKept = !settings.showExitChecks && !isYes(givens[showExitGiven]);
	const around = {
		...lesson,
		stepOf: (id) => activity?.steps.find((step) => step.id === id) ?? (activity && exitStep(activity, id)) ?? bareStep(id),
		rowOf: (id) => {
			const index = ids.indexOf(id);
			return index < 0 ? void 0 : judge(index);
		}
	};
	const judged = [];
	function judge(index) {
		const known = judged[index];
		if (known === "under way") throw new Error(`the step “${ids[index]}” builds on itself`);
		if (known) return known;
		judged[index] = "under way";
		const row = judgeFresh(index);
		judged[index] = row;
		return row;
	}
	function judgeFresh(index) {
		const step = around.stepOf(ids[index] ?? "");
		if (step) {
			const row = { ...quietRow, step, root: step.title };
			const isExit = isExitStep(step.id);
			if (isExit && exitIsKept && !isBlank(block.entries[index]))
				return { ...row, status: "kept", lookAt: exitTexts.kept };
			const about = isExit && activity ? { ...around, activity: withExitGivens(activity, step.id) } : around;
			return { ...row, ...judgeStep(step, block.entries[index], about) };
		}
		const isNamed = !isBlank(block.steps[index]);
		return isNamed ? {
			...quietRow, status: "unreadable", isUnusable: true,
			lookAt: badStep(String(block.steps[index]).slice(0, longestName))
		} : quietRow;
	}
	const rows = ids.map((_, index) => judge(index));
	return rows.map((row, index) => withWait(row, rows.slice(0, index)));
}

function levelWanted(cell) {
	if (isBlank(cell)) return 0;
	const level = /^\s*([0-3])(?![\d.,/])/.exec(String(cell))?.[1];
	return level === void 0 ? void 0 : Number(level);
}
function highestLevel({ settings, givens }) {
	const own = givens[ownHelpGiven];
	return Math.min(settings.highestHelpLevel, (isBlank(own) ? void 0 : levelWanted(own)) ?? settings.highestHelpLevel);
}
function teamChecks(table) {
	const lesson = readTeamLesson(table);
	const { settings, activity, givens } = lesson;
	const highest = highestLevel(lesson);
	const entries = Object.create(null);
	table.steps.forEach((cell, index) => {
		const id = plainName(cell);
		if (!(id in entries)) entries[id] = table.entries[index];
	});
	const hintFor = (row, index) => {
		if (!row.step || isExitStep(row.step.id)) return "";
		const wanted = levelWanted(table.helpWanted?.[index]);
		if (wanted === void 0) return levelAsked;
		const level = Math.min(wanted, highest);
		return hintForStep({
			activity, stepId: row.step.id, level, givens, entries, decimalMark: settings.decimalMark, ownHints: table.ownHints
		});
	};
	const closed = isClosed(lesson);
	return judgeTeam(table, lesson).map((row, index) => {
		if (index === 0 && isBlank(table.steps[0])) return checkHeadings;
		const said = { check: row.status, lookAt: row.lookAt, hint: hintFor(row, index) };
		if (!closed || !asks.includes(row.status)) return said;
		return { ...said, ...closedRow, ...row.step?.kind === "ticked" ? { lookAt: row.lookAt } : {} };
	});
}
var asks = ["close", "follows", "not yet", "unreadable", "blank"];

// From functions
function wholeBlock(cells) {
	const spread = asCell(spreadOf(this, cells), "alone");
	return asCell(computed(this, spread.valuesAt(0, 0)), "alone");
}

// From functions/entries
var checkTeamEntry = {
	name: "CHECKTEAM",
	arguments: [
		{ name: "given_names", kind: "row", about: "names of the given numbers" },
		{ name: "given_values", kind: "row", about: "this team's values, below or beside those names" },
		{ name: "settings", kind: "table", about: "settings in two columns, name and value" },
		{ name: "steps", kind: "column", about: "step ids, from the heading row to the closing row" },
		{ name: "entries", kind: "column", about: "the team's entries, of the same height" },
		{ name: "help_wanted", kind: "column", optional: true }, { name: "own_hints", kind: "table", optional: true }
	],
	columns: ["check", "feedback", "hint"],
	call: wholeBlock,
	compute(givenNames, givenValues, settings, steps, entries, helpWanted, ownHints) {
		if (givenNames.length !== givenValues.length) {
			return unequal("given_values", "as many as the given names", [givenNames.length, givenValues.length, "cells"]);
		}
		if (steps.length !== entries.length) {
			return unequal("entries", "as many as the steps", [steps.length, entries.length, "rows"]);
		}
		if (helpWanted !== void 0 && helpWanted.length !== steps.length) {
			return unequal("help_wanted", "as many as the steps", [steps.length, helpWanted.length, "rows"]);
		}
		if ((settings[0]?.length ?? 0) < 2) {
			return failure({
				code: "range-shape", argument: "settings", expected: "two: name and value", received: "one column",
				advice: "Select the names together with the values beside them."
			});
		}
		const rows = teamChecks({ givenNames, givenValues, settings, steps, entries, helpWanted, ownHints });
		return success(rows.map(({ check, lookAt, hint }) => [check, lookAt, hint]));
	}
};
function unequal(argument, expected, [wanted, found, what]) { return failure({
	code: "range-shape", argument, expected: `${expected}, ${wanted}`,
	received: `${found} ${found === 1 ? what.replace(/s$/, "") : what}`,
	advice: "Select the same rows or columns of the block for both."
}); }
return { entry: checkTeamEntry };
},
// Part COMPOSITION: functions/entries/compositionEntry
"COMPOSITION"(part) {
const { composition, oneTable, success } = part("base");

// From functions/entries
var compositionEntry = {
	name: "COMPOSITION",
	arguments: [{ name: "formula", kind: "formula" }],
	columns: ["element", "atoms", "g/mol", "mass percent"],
	call: oneTable,
	compute(formula) {
		const parts = composition(formula);
		if (!parts.ok) return parts;
		return success(parts.value.map(({ element, atoms, mass, percent }) => [element, atoms, mass, percent]));
	}
};
return { entry: compositionEntry };
},
// Part CONVERTCONCENTRATION: chemistry/concentrationUnit, chemistry/convertConcentration, functions/entries/convertConcentrationEntry
"CONVERTCONCENTRATION"(part) {
const { belowZero, cellByCell, failure, finite, longestUnit, notASolutionDensity, quoted, success, unitNamed, withMolarMass } = part("base");

// From chemistry
var shares = [
	{
		symbol: "% w/v", kind: "mass in volume", power: 1,
		spelling: /^(?:(?:%|percent)\(?[wm]\/v\)?|[wm]\/v(?:%|percent)|g\/100ml|g\/100cm3)$/
	},
	{ symbol: "ppm", kind: "mass in mass", power: -6, spelling: /^ppm(?:\(?(?:w\/w|m\/m|bymass)\)?)?$/ },
	{ symbol: "ppb", kind: "mass in mass", power: -9, spelling: /^ppb(?:\(?(?:w\/w|m\/m|bymass)\)?)?$/ }
];
var percentByMass = { symbol: "% w/w", kind: "mass in mass", power: -2 };
var composed = {
	concentration: { kind: "amount in volume", shift: 0 }, density: { kind: "mass in volume", shift: 3 },
	molality: { kind: "amount in solvent", shift: 0 }
};
var concentrationUnits = [
	"mol/L", "M", "mmol/L", "mM", "µmol/L", "g/L", "mg/L", "mg/dL", "g/dL", "µg/mL", "mol/dm³", "g/dm³", "µg/L", "ng/mL",
	"% w/v", "% w/w", "ppm", "ppb", "mol/kg", "molal"
];
function readConcentrationUnit(cell, argument) {
	const text = typeof cell === "string" ? cell.trim() : "";
	const unit = unitNamed(text);
	const isBarePercent = unit?.kind === "percent" && !/[wm]/i.test(text);
	if (unit?.kind === "percent" && !isBarePercent) return success(percentByMass);
	const made = unit && composed[unit.kind];
	if (unit && made) return success({ symbol: unit.symbol, kind: made.kind, power: unit.power + made.shift });
	if (text.length <= longestUnit) {
		const plain = text.normalize("NFKC").replace(/\s/g, "").toLowerCase();
		const share = shares.find(({ spelling }) => spelling.test(plain));
		if (share) return success({ symbol: share.symbol, kind: share.kind, power: share.power });
	}
	if (isBarePercent) {
		return failure({
			code: "percent-unclear", argument, expected: "% w/w or % w/v", received: quoted(cell),
			advice: "Type % w/w for grams in 100 g, or % w/v for grams in 100 mL."
		});
	}
	return failure({
		code: "concentration-unit-unknown", argument, expected: `one of ${concentrationUnits.join(", ")}`,
		received: quoted(cell)
	});
}

function conversionNeeds(from, to) {
	const isAmount = (kind) => kind.startsWith("amount");
	const isInVolume = (kind) => kind.endsWith("volume");
	return { formula: from !== to && (isAmount(from) || isAmount(to)), density: isInVolume(from) !== isInVolume(to) };
}
function convertConcentration({ value, from, to, molarMass, density }) {
	const needs = conversionNeeds(from.kind, to.kind);
	const error = belowZero({ value, argument: "value", unit: from.symbol }) ?? missing(needs.formula && molarMass === void 0, "formula", { from, to }) ?? missing(needs.density && density === void 0, "density", { from, to }) ?? (density === void 0 ? void 0 : notASolutionDensity({ value: density, argument: "density" }));
	if (error) return failure(error);
	const [perMole, perMillilitre] = [molarMass ?? Number.NaN, density ?? Number.NaN];
	const amount = shifted(value, from.power);
	const own = { amount, perMole, perMillilitre };
	if (from.kind === to.kind) {
		if (from.kind === "mass in mass" && amount > 1) return soluteOverWhole(value, from);
		return finite(shifted(value, from.power - to.power), "value");
	}
	if (from.kind.endsWith("volume") && to.kind.endsWith("volume")) {
		return finite(shifted(to.kind.startsWith("amount") ? amount / perMole : amount * perMole, -to.power), "value");
	}
	const share = massShare({ kind: from.kind, ...own });
	if (share > 1 || share === 1 && to.kind === "amount in solvent") return soluteOverWhole(value, from);
	return finite(shifted(fromShare({ kind: to.kind, share, perMole, perMillilitre }), -to.power), "value");
}
function shifted(value, power) { return power < 0 ? value / 10 ** -power : value * 10 ** power; }
function massShare({ kind, amount, perMole, perMillilitre }) {
	switch (kind) {
		case "amount in volume":
			return amount * perMole / (1e3 * perMillilitre);
		case "mass in volume":
			return amount / (1e3 * perMillilitre);
		case "mass in mass":
			return amount;
		case "amount in solvent":
			return amount * perMole / (1e3 + amount * perMole);
	}
}
function fromShare({ kind, share, perMole, perMillilitre }) {
	switch (kind) {
		case "amount in volume":
			return share * 1e3 * perMillilitre / perMole;
		case "mass in volume":
			return share * 1e3 * perMillilitre;
		case "mass in mass":
			return share;
		case "amount in solvent":
			return 1e3 * share / (perMole * (1 - share));
	}
}
function missing(isMissing, argument, { from, to }) {
	if (!isMissing) return void 0;
	return {
		code: "conversion-needs", argument,
		expected: argument === "formula" ? "a formula such as KBr" : "a density such as 1.05 g/mL",
		advice: `Converting ${from.symbol} to ${to.symbol} needs the ${argument === "formula" ? "molar mass" : "density of the solution"}.`,
		brief: argument
	};
}
function soluteOverWhole(value, { symbol }) { return failure({
	code: "solute-over-whole", argument: "value", received: `${quoted(value)} ${symbol}`,
	advice: "Check the units, the density and the powers of ten."
}); }

// From functions/entries
var convertConcentrationEntry = {
	name: "CONVERTCONCENTRATION",
	arguments: [
		{ name: "value", kind: "measure" }, { name: "from", kind: "text", about: "its unit, such as g/L" },
		{ name: "to", kind: "text", about: "the unit wanted, such as mol/L" },
		{ name: "formula", kind: "formula", optional: true }, { name: "density", kind: "density", optional: true }
	],
	call: cellByCell,
	compute(value, fromText, toText, formula, density) {
		const from = readConcentrationUnit(fromText, "from");
		if (!from.ok) return from;
		const to = readConcentrationUnit(toText, "to");
		if (!to.ok) return to;
		const error = unitOfValue(value, from.value);
		if (error) return failure(error);
		const conversion = { value: value.number.value, from: from.value, to: to.value, density };
		if (formula === void 0 || !conversionNeeds(from.value.kind, to.value.kind).formula) {
			return convertConcentration(conversion);
		}
		return withMolarMass(formula, (molarMass) => convertConcentration({ ...conversion, molarMass }));
	}
};
function unitOfValue({ number, unitTyped }, from) {
	if (unitTyped === "" || /^(?:%|percent)$/i.test(unitTyped) && from.symbol.startsWith("%")) return void 0;
	const own = readConcentrationUnit(unitTyped, "value");
	if (own.ok && own.value.kind === from.kind && own.value.power === from.power) return void 0;
	return {
		code: "unit-other-kind", argument: "value", received: quoted(number.typed),
		advice: `Give a number in ${from.symbol}, or convert from its own unit.`, brief: `not in ${from.symbol}`
	};
}
return { entry: convertConcentrationEntry };
},
// Part DILUENTVOLUME: functions/entries/diluentVolumeEntry
"DILUENTVOLUME"(part) {
const { cellByCell, diluentVolume } = part("base");

// From functions/entries
var diluentVolumeEntry = {
	name: "DILUENTVOLUME",
	arguments: [
		{ name: "stock_molarity", kind: "concentration" }, { name: "target_molarity", kind: "concentration" },
		{ name: "target_volume", kind: "volume" }
	],
	call: cellByCell,
	compute: function(stock, target, finalVolume) { return diluentVolume({ stock, target, finalVolume }); }
};
return { entry: diluentVolumeEntry };
},
// Part DILUTEDVOLUME: chemistry/dilutedVolume, functions/entries/dilutedVolumeEntry
"DILUTEDVOLUME"(part) {
const { cellByCell, dilutionError, failure, finite, millilitres, notAboveZero } = part("base");

// From chemistry
function dilutedVolume({ stock, stockVolume, target }) {
	const error = dilutionError({ stock, target }) ?? notAboveZero({ value: stockVolume, argument: "stock_volume", unit: "mL" });
	if (error) return failure(error);
	return finite(millilitres(stock * stockVolume / target), "stock_volume");
}

// From functions/entries
var dilutedVolumeEntry = {
	name: "DILUTEDVOLUME",
	arguments: [
		{ name: "stock_molarity", kind: "concentration" }, { name: "stock_volume", kind: "volume" },
		{ name: "target_molarity", kind: "concentration" }
	],
	call: cellByCell,
	compute: function(stock, stockVolume, target) { return dilutedVolume({ stock, stockVolume, target }); }
};
return { entry: dilutedVolumeEntry };
},
// Part DILUTIONMOLARITY: functions/entries/dilutionMolarityEntry
"DILUTIONMOLARITY"(part) {
const { cellByCell, dilutedMolarity } = part("base");

// From functions/entries
var dilutionMolarityEntry = {
	name: "DILUTIONMOLARITY",
	arguments: [
		{ name: "stock_molarity", kind: "concentration" }, { name: "stock_volume", kind: "volume" },
		{ name: "final_volume", kind: "volume" }
	],
	call: cellByCell,
	compute: function(stock, stockVolume, finalVolume) { return dilutedMolarity({ stock, stockVolume, finalVolume }); }
};
return { entry: dilutionMolarityEntry };
},
// Part DILUTIONVOLUME: functions/entries/dilutionVolumeEntry
"DILUTIONVOLUME"(part) {
const { cellByCell, stockVolume } = part("base");

// From functions/entries
var dilutionVolumeEntry = {
	name: "DILUTIONVOLUME",
	arguments: [
		{ name: "stock_molarity", kind: "concentration" }, { name: "target_molarity", kind: "concentration" },
		{ name: "target_volume", kind: "volume" }
	],
	call: cellByCell,
	compute: function(stock, target, finalVolume) { return stockVolume({ stock, target, finalVolume }); }
};
return { entry: dilutionVolumeEntry };
},
// Part ELEMENTPERCENT: chemistry/elementPercent, functions/entries/elementPercentEntry
"ELEMENTPERCENT"(part) {
const { allElements, cellByCell, composition, elementBySymbol, elementOf, failure, quoted, readFormula, success } = part("base");

// From chemistry
function elementPercent(formula, element) {
	const typed = element.trim();
	const isotope = isotopeNamed(typed);
	if (isotope !== void 0)
		return shareOf(formula, { element, wanted: isotope, isWanted: (label) => label === isotope });
	const named = allElements().find(({ name }) => name === typed.toLowerCase());
	const wanted = named?.symbol ?? typed;
	if (elementBySymbol(wanted) === void 0) {
		const read = readFormula(typed, "element");
		if (!read.ok) return read;
		return failure({
			code: "element-unknown", argument: "element", received: quoted(element),
			advice: "Type one symbol without a number, such as N.", brief: typed
		});
	}
	return shareOf(formula, { element, wanted, isWanted: (label) => elementOf(label) === wanted });
}
function isotopeNamed(typed) {
	const read = readFormula(typed, "element");
	const [only, ...others] = read.ok ? read.value.atoms : [];
	return only?.element.startsWith("[") && only.count === 1 && others.length === 0 ? only.element : void 0;
}
function shareOf(formula, { element, wanted, isWanted }) {
	const shares = composition(formula);
	if (!shares.ok) return shares;
	const found = shares.value.filter((share) => isWanted(share.element));
	if (found.length > 0) return success(found.reduce((sum, { percent }) => sum + percent, 0));
	const present = [...new Set(shares.value.map((share) => elementOf(share.element)))];
	return failure({
		code: "element-not-in-formula", argument: "element", expected: `one of ${present.join(", ")}`,
		received: quoted(element), brief: wanted
	});
}

// From functions/entries
var elementPercentEntry = {
	name: "ELEMENTPERCENT",
	arguments: [
		{ name: "formula", kind: "formula" },
		{ name: "element", kind: "text", about: "symbol of the element, such as N, or of an isotope, such as D" }
	],
	call: cellByCell,
	compute: function(formula, element) { return elementPercent(formula, element); }
};
return { entry: elementPercentEntry };
},
// Part GLASSWARETOLERANCE: functions/entries/glasswareToleranceEntry
"GLASSWARETOLERANCE"(part) {
const { glasswareTolerance } = part("measurement/glasswareTolerance");
const { cellByCell, success } = part("base");

// From functions/entries
var glasswareToleranceEntry = {
	name: "GLASSWARETOLERANCE",
	arguments: [
		{
			name: "kind",
			kind: "text",
			about: "volumetric flask, volumetric pipette, graduated pipette, burette, graduated cylinder or beaker",
			oneOf: ["volumetric flask", "volumetric pipette", "graduated pipette", "burette", "graduated cylinder", "beaker"],
			otherNames: {
				"measuring flask": "volumetric flask", "graduated flask": "volumetric flask",
				"standard flask": "volumetric flask", "one-mark flask": "volumetric flask", "bulb pipette": "volumetric pipette",
				"transfer pipette": "volumetric pipette", "one-mark pipette": "volumetric pipette",
				"bulb pipet": "volumetric pipette", "transfer pipet": "volumetric pipette",
				"volumetric pipet": "volumetric pipette", "measuring pipette": "graduated pipette",
				"measuring pipet": "graduated pipette", "graduated pipet": "graduated pipette", buret: "burette",
				"measuring cylinder": "graduated cylinder"
			}
		},
		{ name: "volume", kind: "volume" },
		{ name: "glass_class", kind: "text", optional: true, oneOf: ["A", "B"] },
		{ name: "standard", kind: "text", optional: true, oneOf: ["ISO", "ASTM"] }
	],
	call: cellByCell,
	compute(kind, volume, glassClass, standard) {
		const figure = glasswareTolerance({ kind, volume, glassClass, standard });
		return figure.ok ? success(figure.value.tolerance) : figure;
	}
};
return { entry: glasswareToleranceEntry };
},
// Part GRAMS: chemistry/massOf, functions/entries/gramsEntry
"GRAMS"(part) {
const { belowZero, cellByCell, failure, finite, grams, withMolarMass } = part("base");

// From chemistry
function massOf({ molarMass, amount }) {
	const error = belowZero({ value: amount, argument: "moles", unit: "mol" });
	return error ? failure(error) : finite(grams(amount * molarMass), "moles");
}

// From functions/entries
var gramsEntry = {
	name: "GRAMS",
	arguments: [{ name: "formula", kind: "formula" }, { name: "moles", kind: "amount" }],
	call: cellByCell,
	compute: function(formula, amount) { return withMolarMass(formula, (molarMass) => massOf({ molarMass, amount })); }
};
return { entry: gramsEntry };
},
// Part HINTSTEP: lab/hints/hintForQuantity, functions/entries/hintStepEntry
"HINTSTEP"(part) {
const { readQuantityName } = part("lab/judging/judgeQuantity");
const { quantityHint, shownCell } = part("lab/hints/quantityHint");
const { fillQuantity, plainName, quantities, readGivenCells } = part("lesson");


const { cellByCell, failure, quoted, success } = part("base");

// From lab/hints
function hintForQuantity(quantity, table, level) {
	const wanted = typeof level === "string" ? Number(plainName(level)) : level;
	if (wanted !== 1 && wanted !== 2 && wanted !== 3) {
		return failure({
			code: "hint-level", argument: "level", received: quoted(level),
			advice: "Type 1 for the idea, 2 for the relation or 3 for the set-up with your numbers."
		});
	}
	const entry = quantities[quantity];
	const cells = readGivenCells(entry, table);
	if (!cells.ok) return cells;
	const prepared = fillQuantity(entry, cells.value, {});
	if (!prepared.ok) return prepared;
	const textOf = (name) => {
		const argument = entry.takes.find((taken) => taken.name === name);
		return argument && shownCell(cells.value[name], { argument, decimalMark: "point" });
	};
	return success(quantityHint(quantity, { level: wanted, textOf }));
}

// From functions/entries
var hintStepEntry = {
	name: "HINTSTEP",
	arguments: [
		{ name: "quantity", kind: "text", about: "what is asked for, such as mass of solute" },
		{ name: "given", kind: "table", about: "given numbers in two columns, name and value" },
		{ name: "level", kind: "whole number" }
	],
	call: cellByCell,
	compute(quantity, given, level) {
		const name = readQuantityName(quantity);
		return name.ok ? hintForQuantity(name.value, given, level) : name;
	}
};
return { entry: hintStepEntry };
},
// Part IONMOLARITY: chemistry/ionMolarity, functions/entries/ionMolarityEntry
"IONMOLARITY"(part) {
const { belowZero, cellByCell, failure, finite, molesPerLitre, namedIon, quoted } = part("base");

// From chemistry
function ionMolarity({ formula, molarity, ion }) {
	const named = namedIon(formula, ion);
	if (!named.ok) return named;
	const negative = belowZero({ value: molarity, argument: "molarity", unit: "mol/L" });
	if (negative) return failure(negative);
	const { saturated } = named.value.ion;
	if (saturated !== void 0 && molarity > saturated) {
		return failure({
			code: "molarity-above-saturated", argument: "molarity",
			expected: `about ${saturated} mol/L of ${formula.text} is the most`, received: `${quoted(molarity)} mol/L`,
			advice: "The rest stays solid and gives no ions: use a lower molarity."
		});
	}
	return finite(molesPerLitre(molarity * named.value.ion.count), "molarity");
}

// From functions/entries
var ionMolarityEntry = {
	name: "IONMOLARITY",
	arguments: [
		{ name: "formula", kind: "formula" }, { name: "molarity", kind: "concentration" },
		{ name: "ion", kind: "text", about: "the ion asked for, such as Mg2+ or Cl-" }
	],
	call: cellByCell,
	compute: function(formula, molarity, ion) { return ionMolarity({ formula, molarity, ion }); }
};
return { entry: ionMolarityEntry };
},
// Part IONS: functions/entries/ionsEntry
"IONS"(part) {
const { ions, oneTable, success } = part("base");

// From functions/entries
var ionsEntry = {
	name: "IONS",
	arguments: [{ name: "formula", kind: "formula" }],
	columns: ["ion", "number per formula unit", "note"],
	call: oneTable,
	compute(formula) {
		const found = ions(formula);
		if (!found.ok) return found;
		const isNoted = found.value.some(({ note }) => note !== void 0);
		return success(found.value.map(({ ion, count, note = "" }) => isNoted ? [ion, count, note] : [ion, count]));
	}
};
return { entry: ionsEntry };
},
// Part MOLALITY: chemistry/molality, functions/entries/molalityEntry
"MOLALITY"(part) {
const { cellByCell, failure, finite, notAboveZero, withMolarMass } = part("base");

// From chemistry
function molality({ molarMass, mass, solventMass }) {
	const error = notAboveZero(
		{ value: mass, argument: "grams", unit: "g" },
		{ value: solventMass, argument: "solvent_grams", unit: "g" }
	);
	if (error) return failure(error);
	return finite(1e3 * (mass / molarMass) / solventMass, "grams");
}

// From functions/entries
var molalityEntry = {
	name: "MOLALITY",
	arguments: [
		{ name: "formula", kind: "formula" }, { name: "grams", kind: "mass" }, { name: "solvent_grams", kind: "mass" }
	],
	call: cellByCell,
	compute: function(formula, mass, solventMass) { return withMolarMass(formula, (molarMass) => molality({ molarMass, mass, solventMass })); }
};
return { entry: molalityEntry };
},
// Part MOLARITY: functions/entries/molarityEntry
"MOLARITY"(part) {
const { cellByCell, molarity, withMolarMass } = part("base");

// From functions/entries
var molarityEntry = {
	name: "MOLARITY",
	arguments: [
		{ name: "formula", kind: "formula" }, { name: "grams", kind: "mass" }, { name: "volume", kind: "volume" },
		{ name: "purity_percent", kind: "percent", optional: true }
	],
	call: cellByCell,
	compute: function(formula, mass, volume, purity) { return withMolarMass(formula, (molarMass) => molarity({ molarMass, mass, volume, purity })); }
};
return { entry: molarityEntry };
},
// Part MOLARITYUNCERTAINTY: chemistry/molarityUncertainty, functions/entries/molarityUncertaintyEntry
"MOLARITYUNCERTAINTY"(part) {
const { belowZero, cellByCell, failure, finite, molarity, molesPerLitre, notAboveZero, withMolarMass } = part("base");

// From chemistry
function rectangular(halfWidth, value) { return halfWidth / Math.sqrt(3) / value; }
function molarityUncertainty(solution) {
	const { mass, volume, balanceTolerance, flaskTolerance, purity = 100, purityTolerance = 0 } = solution;
	const made = molarity(solution);
	if (!made.ok) return made;
	const error = belowZero(
		{ value: balanceTolerance, argument: "balance_tolerance", unit: "g" },
		{ value: flaskTolerance, argument: "flask_tolerance", unit: "mL" },
		{ value: purityTolerance, argument: "purity_tolerance", unit: "percentage points" }
	) ?? notAboveZero({ value: made.value, argument: "grams", unit: "mol/L" });
	if (error) return failure(error);
	const weighing = rectangular(balanceTolerance, mass);
	const relative = Math.hypot(
		weighing,
		weighing,
		rectangular(flaskTolerance, volume),
		rectangular(purityTolerance, purity)
	);
	return finite(molesPerLitre(made.value * relative), "grams");
}

// From functions/entries
var molarityUncertaintyEntry = {
	name: "MOLARITYUNCERTAINTY",
	arguments: [
		{ name: "formula", kind: "formula" }, { name: "grams", kind: "mass" }, { name: "volume", kind: "volume" },
		{ name: "balance_tolerance", kind: "mass" }, { name: "flask_tolerance", kind: "volume" },
		{ name: "purity_percent", kind: "percent", optional: true },
		{ name: "purity_tolerance", kind: "percentage points", optional: true }
	],
	call: cellByCell,
	compute: function(formula, mass, volume, balanceTolerance, flaskTolerance, purity, purityTolerance) { return withMolarMass(
		formula,
		(molarMass) => molarityUncertainty({ molarMass, mass, volume, balanceTolerance, flaskTolerance, purity, purityTolerance })
	); }
};
return { entry: molarityUncertaintyEntry };
},
// Part MOLARMASS: functions/entries/molarMassEntry
"MOLARMASS"(part) {
const { cellByCell, molarMass } = part("base");

// From functions/entries
var molarMassEntry = {
	name: "MOLARMASS", arguments: [{ name: "formula", kind: "formula" }], call: cellByCell,
	compute: function(formula) { return molarMass(formula); }
};
return { entry: molarMassEntry };
},
// Part MOLEFRACTION: chemistry/moleFraction, functions/entries/moleFractionEntry
"MOLEFRACTION"(part) {
const { belowZero, cellByCell, failure, finite, notAboveZero, withMolarMass } = part("base");

// From chemistry
function moleFraction({ first, second }) {
	const error = belowZero(
		{ value: first.mass, argument: "grams_1", unit: "g" },
		{ value: second.mass, argument: "grams_2", unit: "g" }
	) ?? notAboveZero({ value: first.mass + second.mass, argument: "grams_1", unit: "g" });
	if (error) return failure(error);
	const amount = first.mass / first.molarMass;
	return finite(amount / (amount + second.mass / second.molarMass), "grams_1");
}

// From functions/entries
var moleFractionEntry = {
	name: "MOLEFRACTION",
	arguments: [
		{ name: "formula_1", kind: "formula" }, { name: "grams_1", kind: "mass" }, { name: "formula_2", kind: "formula" },
		{ name: "grams_2", kind: "mass" }
	],
	call: cellByCell,
	compute: function(first, firstMass, second, secondMass) { return withMolarMass(
		first,
		(firstMolarMass) => withMolarMass(
			second,
			(secondMolarMass) => moleFraction({
				first: { molarMass: firstMolarMass, mass: firstMass }, second: { molarMass: secondMolarMass, mass: secondMass }
			})
		)
	); }
};
return { entry: moleFractionEntry };
},
// Part MOLES: chemistry/amountOf, functions/entries/molesEntry
"MOLES"(part) {
const { belowZero, cellByCell, failure, finite, moles, withMolarMass } = part("base");

// From chemistry
function amountOf({ molarMass, mass }) {
	const error = belowZero({ value: mass, argument: "grams", unit: "g" });
	return error ? failure(error) : finite(moles(mass / molarMass), "grams");
}

// From functions/entries
var molesEntry = {
	name: "MOLES",
	arguments: [{ name: "formula", kind: "formula" }, { name: "grams", kind: "mass" }],
	call: cellByCell,
	compute: function(formula, mass) { return withMolarMass(formula, (molarMass) => amountOf({ molarMass, mass })); }
};
return { entry: molesEntry };
},
// Part PARTICLECOUNT: chemistry/particleCount, functions/entries/particleCountEntry
"PARTICLECOUNT"(part) {
const { belowZero, cellByCell, failure, finite } = part("base");

// From chemistry
var avogadroConstant = 602214076e15;
function particleCount(amount) {
	const error = belowZero({ value: amount, argument: "moles", unit: "mol" });
	return error ? failure(error) : finite(amount * avogadroConstant, "moles");
}

// From functions/entries
var particleCountEntry = {
	name: "PARTICLECOUNT", arguments: [{ name: "moles", kind: "amount" }], call: cellByCell,
	compute: function(amount) { return particleCount(amount); }
};
return { entry: particleCountEntry };
},
// Part PERCENTDIFFERENCE: measurement/percentDifference, functions/entries/percentDifferenceEntry
"PERCENTDIFFERENCE"(part) {
const { cellByCell, comparedValues, failure, finite, percent } = part("base");

// From measurement
function percentDifference({ first, second }) {
	const mean = Math.abs(first / 2 + second / 2);
	if (mean === 0) {
		return failure({
			code: "mean-zero", argument: "second", received: `${first} and ${second}`,
			advice: "Compare the plain difference instead."
		});
	}
	return finite(percent(100 * Math.abs(first - second) / mean), "first");
}

// From functions/entries
var percentDifferenceEntry = {
	name: "PERCENTDIFFERENCE",
	arguments: [{ name: "first", kind: "measure" }, { name: "second", kind: "measure" }],
	call: cellByCell,
	compute(first, second) {
		const values = comparedValues({ name: "first", measure: first }, { name: "second", measure: second });
		return values.ok ? percentDifference({ first: values.value.one, second: values.value.other }) : values;
	}
};
return { entry: percentDifferenceEntry };
},
// Part PERCENTERROR: functions/entries/percentErrorEntry
"PERCENTERROR"(part) {
const { cellByCell, comparedValues, percentError } = part("base");

// From functions/entries
var percentErrorEntry = {
	name: "PERCENTERROR",
	arguments: [
		{ name: "measured", kind: "measure" },
		{ name: "accepted", kind: "measure" },
		{ name: "signed", kind: "yes or no", optional: true }
	],
	call: cellByCell,
	compute(measured, accepted, signed) {
		const values = comparedValues({ name: "measured", measure: measured }, { name: "accepted", measure: accepted });
		if (!values.ok) return values;
		return percentError({ measured: values.value.one, accepted: values.value.other, signed });
	}
};
return { entry: percentErrorEntry };
},
// Part REAGENTMOLARITY: functions/entries/reagentMolarityEntry
"REAGENTMOLARITY"(part) {
const { cellByCell, reagentMolarity, withMolarMass } = part("base");

// From functions/entries
var reagentMolarityEntry = {
	name: "REAGENTMOLARITY",
	arguments: [
		{ name: "formula", kind: "formula" }, { name: "mass_percent", kind: "percent" },
		{ name: "density", kind: "density" }
	],
	call: cellByCell,
	compute: function(formula, massPercent, density) { return withMolarMass(formula, (molarMass) => reagentMolarity({ molarMass, massPercent, density })); }
};
return { entry: reagentMolarityEntry };
},
// Part ROUNDSIG: measurement/roundToFigures, functions/entries/roundSigEntry
"ROUNDSIG"(part) {
const { cellByCell, failure, success } = part("base");

// From measurement
var mostFigures = 30;
var smallestPlain = -7;
function roundToFigures(number, { figures, ties }) {
	if (!Number.isInteger(figures) || figures < 1 || figures > mostFigures) {
		return failure({
			code: "figures-out-of-range", argument: "figures", received: String(figures),
			advice: `Type a whole number from 1 to ${mostFigures}, such as 3.`
		});
	}
	const exact = digitsOf(number.decimal);
	if (exact === void 0) return success("0");
	const { digits, place } = keptDigits(exact, { figures, ties });
	const sign = number.decimal.startsWith("-") ? "-" : "";
	const decimals = figures - 1 - place;
	if (place >= smallestPlain && (decimals > 0 || decimals === 0 && !digits.endsWith("0")))
		return success(sign + withPoint(digits.padStart(decimals + 1, "0"), decimals));
	return success(`${sign}${withPoint(digits, figures - 1)} × 10^${place}`);
}
function digitsOf(decimal) {
	const [, whole = "", part = "", exponent = "0"] = /^-?(\d*)\.?(\d*)(?:e(.*))?$/i.exec(decimal) ?? [];
	const leading = (whole + part).search(/[1-9]/);
	if (leading < 0) return void 0;
	return { digits: (whole + part).slice(leading), place: whole.length - 1 - leading + Number(exponent) };
}
function keptDigits({ digits, place }, { figures, ties }) {
	const kept = digits.slice(0, figures).padEnd(figures, "0");
	const dropped = digits.slice(figures);
	const isTie = /^50*$/.test(dropped);
	const goesUp = isTie ? ties === "up" || /[13579]$/.test(kept) : dropped >= "5";
	if (!goesUp) return { digits: kept, place };
	const nines = kept.search(/9*$/);
	if (nines === 0) return { digits: `1${"0".repeat(figures - 1)}`, place: place + 1 };
	const raised = `${kept.slice(0, nines - 1)}${Number(kept[nines - 1]) + 1}`;
	return { digits: raised.padEnd(figures, "0"), place };
}
function withPoint(digits, decimals) { return decimals === 0 ? digits : `${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`; }

// From functions/entries
var roundSigEntry = {
	name: "ROUNDSIG",
	arguments: [
		{ name: "value", kind: "digits" },
		{ name: "figures", kind: "whole number" },
		{ name: "ties", kind: "text", optional: true, oneOf: ["even", "up"] }
	],
	call: cellByCell,
	compute: function(value, figures, ties) { return roundToFigures(value, { figures, ties }); }
};
return { entry: roundSigEntry };
},
// Part SERIALDILUTION: chemistry/serialDilution, functions/entries/serialDilutionEntry
"SERIALDILUTION"(part) {
const { failure, molesPerLitre, notAboveZero, oneTable, quoted, success } = part("base");

// From chemistry
var mostStages = 100;
function serialDilution({ stock, factor, stages, finalVolume }) {
	const error = notAboveZero(
		{ value: stock, argument: "stock_molarity", unit: "mol/L" },
		...finalVolume === void 0 ? [] : [{ value: finalVolume, argument: "final_volume", unit: "mL" }]
	);
	if (error) return failure(error);
	if (!(factor > 1 && Number.isFinite(factor))) {
		return failure({
			code: "factor-not-above-one", argument: "factor", expected: "above 1", received: quoted(factor),
			advice: "Type how many times the volume grows at each stage, such as 10."
		});
	}
	if (!(Number.isInteger(stages) && stages >= 1 && stages <= mostStages)) {
		return failure({
			code: "stages-out-of-range", argument: "stages", expected: `a whole number from 1 to ${mostStages}`,
			received: quoted(stages), advice: "Type how many dilutions there are, one after the other."
		});
	}
	const volumes = finalVolume === void 0 ? {} : volumesOf(finalVolume, factor);
	const rows = [];
	for (let stage = 1; stage <= stages; stage += 1) {
		const molarity = molesPerLitre(stock / factor ** stage);
		if (!(molarity > 0)) {
			return failure({
				code: "stages-out-of-range", argument: "stages", expected: `at most ${stage - 1} with this factor`,
				received: quoted(stages), advice: "Nothing is left to dilute after that: use fewer stages or a smaller factor."
			});
		}
		rows.push({ stage, molarity, ...volumes });
	}
	return success(rows);
}
function volumesOf(finalVolume, factor) { return {
	taken: finalVolume / factor, solvent: finalVolume - finalVolume / factor
}; }

// From functions/entries
var serialDilutionEntry = {
	name: "SERIALDILUTION",
	arguments: [
		{ name: "stock_molarity", kind: "concentration" }, { name: "factor", kind: "factor" },
		{ name: "stages", kind: "whole number" }, { name: "final_volume", kind: "volume", optional: true }
	],
	columns: ["stage", "mol/L", "mL taken", "mL of solvent"],
	call: oneTable,
	compute(stock, factor, stages, finalVolume) {
		const series = serialDilution({ stock, factor, stages, finalVolume });
		if (!series.ok) return series;
		return success(
			series.value.map(
				({ stage, molarity, taken, solvent }) => taken === void 0 || solvent === void 0 ? [stage, molarity] : [stage, molarity, taken, solvent]
			)
		);
	}
};
return { entry: serialDilutionEntry };
},
// Part SIGFIGS: functions/entries/sigFigsEntry
"SIGFIGS"(part) {
const { cellByCell, significantFigures, success } = part("base");

// From functions/entries
var sigFigsEntry = {
	name: "SIGFIGS",
	arguments: [{ name: "number_as_text", kind: "figures" }],
	call: cellByCell,
	compute: function(number) { return success(significantFigures(number)); }
};
return { entry: sigFigsEntry };
},
// Part SOLUTEMASS: functions/entries/soluteMassEntry
"SOLUTEMASS"(part) {
const { cellByCell, soluteMass, withMolarMass } = part("base");

// From functions/entries
var soluteMassEntry = {
	name: "SOLUTEMASS",
	arguments: [
		{ name: "formula", kind: "formula" },
		{ name: "molarity", kind: "concentration" },
		{ name: "volume", kind: "volume" },
		{ name: "purity_percent", kind: "percent", optional: true }
	],
	call: cellByCell,
	compute: function(formula, molarity, volume, purity) { return withMolarMass(formula, (molarMass) => soluteMass({ molarMass, molarity, volume, purity })); }
};
return { entry: soluteMassEntry };
},
// Part SOLUTIONVOLUME: chemistry/solutionVolume, functions/entries/solutionVolumeEntry
"SOLUTIONVOLUME"(part) {
const { cellByCell, failure, finite, millilitres, notAboveZero, pureShare, withMolarMass } = part("base");

// From chemistry
function solutionVolume({ molarMass, mass, molarity, purity }) {
	const error = notAboveZero(
		{ value: mass, argument: "grams", unit: "g" },
		{ value: molarity, argument: "molarity", unit: "mol/L" }
	);
	if (error) return failure(error);
	const share = pureShare(purity);
	if (!share.ok) return share;
	return finite(millilitres(1e3 * (mass * share.value / molarMass) / molarity), "grams");
}

// From functions/entries
var solutionVolumeEntry = {
	name: "SOLUTIONVOLUME",
	arguments: [
		{ name: "formula", kind: "formula" }, { name: "grams", kind: "mass" }, { name: "molarity", kind: "concentration" },
		{ name: "purity_percent", kind: "percent", optional: true }
	],
	call: cellByCell,
	compute: function(formula, mass, molarity, purity) { return withMolarMass(formula, (molarMass) => solutionVolume({ molarMass, mass, molarity, purity })); }
};
return { entry: solutionVolumeEntry };
},
// Part workbook/layout: workbook/cellText, workbook/countedEntry
"workbook/layout"(part) {
// From workbook
function cellText(cell) {
	if (cell === null || cell === void 0 || cell instanceof Date) return "";
	return String(cell).trim();
}

function countedEntry(entry) { return `“${entry}`; }

var layoutVersion = 4;
var classColumns = {
	title: 1, task: 2, entry: 3, unit: 4, check: 5, lookAt: 6, hint: 7, help: 8, who: 9, tries: 10, lastEntry: 11, key: 12,
	step: 13, givens: 14
};
var countedColumn = classColumns.givens;
var classMarker = "Labrow class";
var classRows = { headings: 1, title: 2, banner: 3, caution: 4, note: 5, find: 6, firstLink: 7 };
var checksMark = { row: classRows.banner, column: classColumns.givens, text: "by sidebar" };
var cautionRows = 4;
var prepareCells = {
	freshness: { row: 2, column: 1 }, planNow: { row: 1, column: 8 }, planThen: { row: 2, column: 8 }
};
var pollColumns = { row: 1, day: 2, className: 3, from: 4, firstStatement: 5, openLine: 9, marker: 11 };
var pollRows = { title: 1, invented: 6, firstCount: 8, headings: 13, firstAnswer: 14 };
var pollMarker = "Labrow poll";

return { cellText, countedEntry, layoutVersion, classColumns, countedColumn, classMarker, classRows, checksMark, cautionRows, prepareCells, pollColumns, pollRows, pollMarker };
},
// Part host/words: host/spreadsheet, workbook/restWords, workbook/scratchSheet
"host/words"(part) {
// From host
function openSpreadsheet() { return SpreadsheetApp.getActiveSpreadsheet(); }
function ui() { return SpreadsheetApp.getUi(); }
function settle() { return SpreadsheetApp.flush(); }
function choiceOf(options, help) { return SpreadsheetApp.newDataValidation().requireValueInList([...options], true).setAllowInvalid(true).setHelpText(help).build(); }
function stateRuleOf({
	startsWith, background, color, ranges
}) { return SpreadsheetApp.newConditionalFormatRule().whenTextStartsWith(startsWith).setBackground(background).setFontColor(color).setRanges(ranges).build(); }
function isStateRule(rule, startsWith) {
	const condition = rule.getBooleanCondition();
	return condition !== null && condition.getCriteriaType() === SpreadsheetApp.BooleanCriteria.TEXT_STARTS_WITH && condition.getCriteriaValues()[0] === startsWith;
}
function sheetProtections(sheet) { return sheet.getProtections(SpreadsheetApp.ProtectionType.SHEET); }
function wrapOf({ wrap, clip }) { return SpreadsheetApp.WrapStrategy[wrap ? "WRAP" : clip === true ? "CLIP" : "OVERFLOW"]; }
function boxAround(cells, colour) {
	cells.setBorder(true, true, true, true, true, true, colour, SpreadsheetApp.BorderStyle.SOLID);
}
function recalculateEveryMinute(spreadsheet) {
	spreadsheet.setRecalculationInterval(SpreadsheetApp.RecalculationInterval.MINUTE);
}
function documentVisibility() { return SpreadsheetApp.DeveloperMetadataVisibility.DOCUMENT; }

// From workbook
var restWords = { checks: "Checks are off", before: "then: " };

var scratchSheet = {
	name: "Selfcheck", mark: "Labrow tries this file out here. This sheet goes away by itself: keep nothing in it."
};
var deskSheetName = "Labrow teacher";

// From host
var putAway = "Put away. Typing here is kept, not checked.";
var hostWords = {
	title: "Labrow",
	menu: {
		openSidebar: "Open the sidebar", buildSample: "Build a sample class", checkAgain: "Check again",
		selfCheck: "Try this file out"
	},
	deskSheet: {
		name: deskSheetName,
		why: "Whoever may change this sheet is shown the teacher’s part of the Labrow sidebar. To let a colleague in, add them under Protected sheets and ranges.",
		protection: "Labrow: who is the teacher"
	},
	protection: "Labrow: warns before anything but a tinted cell is changed",
	isKeptName: function(name) { return /, kept \d{4}-\d\d-\d\d/.test(name); },
	isAwayName: function(name) { return /, lesson of /.test(name); },
	kept: {
		alone: "Kept as it was, and no longer checked.",
		withLink: "Kept as it was, and no longer checked. Click here for the sheet in use.", checks: restWords.checks,
		before: function(word) { return `${restWords.before}${word}`; }
	},
	away: { alone: putAway, withLink: `${putAway} Click here for the lesson in use.` },
	movedAside: function(text) { return `Typed in this cell, where a check has to show: “${text}”`; },
	inTheWay: function({ cell, text }) { return `${cell} held “${text}”, which kept checks from showing. It is in a note on that cell now.`; },
	checkedAgain: function({ renewed, missing, moved }) { return [
		...moved, ...moved.length > 0 && missing.length === 0 ? [] : [hostWords.checksEntered({ renewed, missing })]
	].join(" "); },
	checksEntered: function({ renewed, missing }) { return missing.length > 0 ? "Some checks are missing. Open the sidebar and press “Check again” in Class now: it puts them back." : renewed === 0 ? "No check is stuck." : renewed === 1 ? "1 stuck check restarted." : `${renewed} stuck checks restarted.`; },
	refused: {
		says: "The spreadsheet did not take this change. It said {received}.",
		advice: "Nothing you typed is lost. Wait a moment, then press the button again."
	},
	busy: {
		says: "Something else is being written to this file just now, so nothing was done.",
		advice: "Wait a moment, then press the button again."
	},
	changed: {
		says: "Somebody has just changed {where}, so nothing was written.",
		advice: "Look again, then press the button once more."
	},
	theSheet: function(name) { return `the sheet “${name}”`; },
	theBuild: "the build that is under way",
	aSheetGone: "a sheet that is no longer there",
	olderPage: {
		says: "This sidebar is from another version than the script of the file.",
		advice: "Close it and open it again from the menu."
	},
	oddWish: {
		says: "The script did not understand what the sidebar asked for.",
		advice: "Close the sidebar, open it again from the menu and press the button once more."
	},
	notOurs: {
		says: "Nothing was written: {received} was to be changed.",
		advice: "Look again in the sidebar, then press the button once more."
	},
	notTeacher: "This part is for the teacher of the class.",
	pageTitles: {
		preparation: "What to prepare", labels: "Labels to print", key: "The key, for the teacher",
		paper: "A table on paper", period: "The period in minutes", done: "Steps done by team", particles: "Particles",
		links: "Links for students", cover: "For a cover teacher", guide: "A guide to print", trial: "A page to try"
	},
	pageUnknown: {
		says: "There is no page called {received}.",
		advice: "Close the sidebar, open it again from the menu and press the button once more."
	},
	share: {
		name: {
			says: "{received} is not the name of this file.",
			advice: "Is this the copy? Then type its name exactly as shown above. Never empty the file that the class uses."
		},
		noLesson: {
			says: "There is nothing to empty: this file has no Plan.", advice: "Open the copy that you made of a lesson."
		},
		notWritten: {
			says: "The new sheet {where} was not written in full, so nothing was removed.",
			advice: "Press the button once more."
		}
	}
};

return { openSpreadsheet, ui, settle, choiceOf, stateRuleOf, isStateRule, sheetProtections, wrapOf, boxAround, recalculateEveryMinute, documentVisibility, restWords, scratchSheet, hostWords };
},
// Part desk: workbook/layoutFits, workbook/looks, workbook/teamsAlone, host/fileStore, host/valuesOf, host/fileInRun and 61 more
"desk"(part) {
const { cautionRows, cellText, checksMark, classColumns, classMarker, classRows, countedColumn, countedEntry, layoutVersion, pollColumns, pollMarker, prepareCells } = part("workbook/layout");
const { boxAround, choiceOf, documentVisibility, hostWords, isStateRule, openSpreadsheet, recalculateEveryMinute, restWords, scratchSheet, settle, sheetProtections, stateRuleOf, ui, wrapOf } = part("host/words");

const { checkHeadings, closedRow } = part("lab/texts/feedback");
const { filledText } = part("base");

// From workbook
function layoutFits({ identity, rowCount, writable }, cells) {
	const { firstRow, columns, rows } = identity;
	const found = (row) => columns.map((column) => cellText(cells[row - 1]?.[column - 1]));
	let last = 0;
	let lastPlanned = 0;
	rows.forEach((texts, index) => {
		if (found(firstRow + index).some((text) => text !== "")) last = index;
		if (texts.some((text) => text !== "")) lastPlanned = index;
	});
	const isTheirs = (row) => writable.some(
		({ row: first, rows: high, column, columns: wide }) => column <= (columns[0] ?? 1) && column + wide > (columns[0] ?? 1) && row >= first && row < first + high
	);
	for (let row = firstRow; row <= cells.length; row += 1) {
		if (isTheirs(row)) continue;
		const planned = rows[row - firstRow];
		if (found(row).some((text, index) => text !== "" && text !== planned?.[index])) return "other";
	}
	const firstNew = firstRow + last + 1;
	if (last === lastPlanned) return "same";
	for (let row = firstNew; row <= Math.min(rowCount, cells.length); row += 1) {
		if (cells[row - 1]?.some((cell) => cellText(cell) !== "")) return last === 0 ? "same" : "other";
	}
	return "longer";
}

var ink = "#17212b";
var soft = "#51606f";
var pale = "#6b7885";
var paper = "#ffffff";
var bench = "#f3f6f8";
var glass = "#0b5c6b";
var glassSoft = "#ddf1f3";
var entryGround = "#eef8f9";
var still = "#f7f9fa";
var plain = { color: ink, background: paper, bold: false, size: 10, wrap: false, align: "left" };
var plainLook = plain;
var looks = {
	title: { ...plain, bold: true, size: 14 }, note: { ...plain, color: soft, size: 10 },
	heading: { ...plain, color: soft, background: bench, bold: true, size: 9, wrap: true },
	"team heading": { ...plain, background: bench, bold: true, size: 12, wrap: true },
	question: { ...plain, size: 11, wrap: true }, helper: { ...plain, background: entryGround, wrap: true },
	quiet: { ...plain, color: soft, size: 8 }, caution: { ...plain, color: "#744400", background: "#fbebd2", size: 9 },
	"class name": { ...plain, bold: true, wrap: true }, lesson: { ...plain, bold: true, size: 12 },
	step: { ...plain, background: still, bold: true, wrap: true }, task: { ...plain, background: still, wrap: true },
	letters: { ...plain, background: still, size: 9, wrap: true },
	unit: { ...plain, background: still, size: 9, wrap: true }, entry: { ...plain, size: 11, wrap: true, border: glass },
	choice: { ...plain, size: 9, wrap: true, border: glass },
	"caution text": { ...plain, color: "#744400", background: "#fbebd2", size: 9, wrap: true },
	mark: { ...plain, color: pale, size: 6, clip: true }, spilled: { ...plain, background: still, size: 9, wrap: true },
	"text heading": { ...plain, color: soft, background: bench, size: 9, wrap: true },
	text: { ...plain, color: soft, size: 9, wrap: true }, count: { ...plain, color: soft, background: still, size: 8 },
	"setting name": { ...plain, bold: true }, "setting value": { ...plain, background: entryGround },
	link: { ...plain, color: glass }, progress: { ...plain, align: "center", wrap: true },
	closing: { ...plain, color: soft, background: bench, size: 9 }
};
var stateLooks = {
	"on target": { color: "#0b5c6b", background: glassSoft }, close: { color: "#56398f", background: "#ece6f8" },
	follows: { color: "#3f4a5a", background: "#e5eaf0" }, "not yet": { color: "#744400", background: "#fbebd2" },
	unreadable: { color: "#851c58", background: "#f9e3ef" }, blank: { color: "#5d6b78", background: still }
};
var tabColors = {
	plan: "#51606f", class: glass, progress: "#56398f", help: "#744400", prepare: "#3f4a5a", record: "#851c58",
	poll: "#3f4a5a", key: "#3f4a5a", kept: "#a5b3c0"
};

function teamsAlone(plan) { return {
	...plan, carried: [classColumns.who],
	identity: { ...plan.identity, rows: plan.identity.rows.map((texts) => texts[1] === "" ? texts : ["", ""]) }
}; }

// From host
function fileStore() {
	let properties;
	let values;
	const store = () => {
		properties ?? (properties = PropertiesService.getDocumentProperties());
		return properties;
	};
	const all = () => {
		values ?? (values = store().getProperties());
		return values;
	};
	return {
		read: (key) => all()[key] ?? "",
		write: (key, value) => {
			if (all()[key] === value) return;
			store().setProperty(key, value);
			values = { ...all(), [key]: value };
		},
		remove: (key) => {
			store().deleteProperty(key);
			const { [key]: _, ...others } = all();
			values = others;
		},
		clear: () => {
			store().deleteAllProperties();
			values = {};
		}
	};
}

function valuesOf(sheet) { return sheet.getDataRange().getValues(); }

function fileInRun(spreadsheet, desk) {
	let locale;
	return {
		spreadsheet,
		store: fileStore(),
		sheets: spreadsheet.getSheets().map((sheet) => ({ sheet, id: sheet.getSheetId() })),
		locale: () => {
			locale ?? (locale = spreadsheet.getSpreadsheetLocale());
			return locale;
		},
		desk,
		isKnown: false
	};
}
function sheetById(file2, id) { return file2.sheets.find((one) => one.id === id); }
function cellsRead(one) {
	one.cells ?? (one.cells = valuesOf(one.sheet));
	return one.cells;
}

// From workbook
function freeName(wanted, taken) {
	const used = taken.map((name2) => name2.toLowerCase());
	if (!used.includes(wanted.toLowerCase())) return wanted;
	for (let number = 2; ; number += 1) {
		const name2 = `${wanted} ${number}`;
		if (!used.includes(name2.toLowerCase())) return name2;
	}
}

// From host
function freeSheetName(spreadsheet, wanted, takes) {
	const taken = [];
	for (; ; ) {
		const name2 = freeName(wanted, taken);
		const other = spreadsheet.getSheetByName(name2);
		if (other === null || takes(other)) return name2;
		taken.push(name2);
	}
}

// From workbook
var earlierShift = 1;
function classShift(cells) {
	const mark = (shift) => cellText(cells[0]?.[classColumns.key - 1 - shift]);
	if (mark(0) === classMarker) return 0;
	return mark(earlierShift) === classMarker ? earlierShift : void 0;
}
function columnIn(cells, column) { return column - (classShift(cells) ?? 0); }
function inTodaysColumns(cells) { return classShift(cells) === earlierShift ? cells.map(([first, ...rest]) => [first ?? "", "", ...rest]) : cells; }
function layoutIn(cells) { return Number(cellText(cells[0]?.[classColumns.step - 1])) || 0; }

function digest(text) {
	const { imul } = Math;
	const { length } = text;
	let one = 2166136261 | 0;
	let other = 16777619;
	for (let at = 0; at < length; at += 1) {
		const code = text.charCodeAt(at);
		one = imul(one ^ code, 16777619);
		other = (other << 5) - other + code | 0;
	}
	return `${(one >>> 0).toString(36)}-${(other >>> 0).toString(36)}-${length}`;
}

function columnLetters(column) {
	let letters = "";
	for (let rest = column; rest > 0; rest = Math.floor((rest - 1) / 26)) {
		letters = String.fromCharCode(65 + (rest - 1) % 26) + letters;
	}
	return letters;
}
function areaName({ row, column, rows, columns }) { return `${columnLetters(column)}${row}:${columnLetters(column + columns - 1)}${row + rows - 1}`; }
function onSheet(sheetName, reference) { return `'${sheetName.split("'").join("''")}'!${reference}`; }
function literal(words2) { return `"${words2.split('"').join('""')}"`; }

// From lab/texts
var membersTexts = {
	heading: "Your names", earlierHeading: "Who", absent: "not here today", helps: "helps where needed",
	rolesOf: function(day) { return `roles of ${day}`; }
};

// From lab/members
function isInvitation(words2) { return [membersTexts.heading, membersTexts.earlierHeading].some((one) => one.toLowerCase() === words2.toLowerCase()); }

// From workbook
function carriedEntries({ plan, from: given, to }) {
	const { columns, rows, firstRow } = plan.identity;
	const isClass = plan.role.kind === "class";
	const from = isClass ? inTodaysColumns(given) : given;
	const { relettered } = plan;
	const lettersBefore = relettered !== void 0 && isClass && layoutIn(from) < relettered.since ? relettered : void 0;
	const carriedAs = (value, place) => lettersBefore !== void 0 && place.column === lettersBefore.column && lettersBefore.rows.includes(place.row) ? `${lettersBefore.before}${cellText(value)}` : value;
	const nameOf3 = (texts) => texts[0] === "" ? "" : JSON.stringify(texts);
	const nameAt = (cells) => nameOf3(columns.map((column) => cellText(cells?.[column - 1])));
	const placesIn = (all) => {
		const places = new Map();
		all.forEach((cells, index) => {
			const name2 = nameAt(cells);
			if (name2 !== "" && !places.has(name2)) places.set(name2, index);
		});
		return places;
	};
	const rowByName = placesIn(from);
	const standsAt = placesIn(to);
	const placeOf2 = (name2, planned) => {
		const there = nameAt(to[planned - 1]);
		if (!isClass || there === name2) return planned;
		const index = standsAt.get(name2);
		return index === void 0 ? there === "" ? planned : void 0 : index + 1;
	};
	const runs2 = [];
	for (const column of plan.carried) {
		let values = [];
		let start = 0;
		const close = () => {
			if (values.length > 0) runs2.push({ row: start, column, values });
			values = [];
		};
		rows.forEach((texts, index) => {
			const planned = firstRow + index;
			const source = rowByName.get(nameOf3(texts));
			const row = placeOf2(nameOf3(texts), planned);
			if (source === void 0 || row === void 0 || !carries(plan, { row: planned, column })) {
				close();
				return;
			}
			const found = from[source]?.[column - 1];
			const old = isClass && column === classColumns.who && isInvitation(cellText(found)) ? "" : found;
			if (isEmpty(old) || !isEmpty(to[row - 1]?.[column - 1])) {
				close();
				return;
			}
			if (row !== start + values.length) close();
			if (values.length === 0) start = row;
			values.push(carriedAs(old, { row: planned, column }));
		});
		close();
	}
	return plan.carriesAddedRows === true ? [...runs2, ...addedRows({ plan, from, to, rowByName })] : runs2;
}
function addedRows({ plan: { identity, carried }, from, to, rowByName }) {
	const named = new Set(rowByName.values());
	const added = from.filter(
		(cells, index) => index >= identity.firstRow - 1 && !named.has(index) && carried.some((column) => !isEmpty(cells[column - 1]))
	);
	const row = identity.firstRow + identity.rows.length;
	if (added.length === 0) return [];
	return carried.map((column) => ({
		row,
		column,
		values: added.map((cells, index) => {
			const present = to[row - 1 + index]?.[column - 1];
			return isEmpty(present) ? cells[column - 1] ?? "" : present;
		})
	}));
}
function isEmpty(cell) { return cell === "" || cell === null || cell === void 0; }
function carries({ writable, unprotected }, { row, column }) { return [...writable, ...unprotected].some(
	(area) => row >= area.row && row < area.row + area.rows && column >= area.column && column < area.column + area.columns
); }

// From host
function nameOf(line) { return `${cellText(line[classColumns.key - 1])} ${cellText(line[classColumns.step - 1])}`; }
function isNamed(line) { return cellText(line[classColumns.key - 1]) !== ""; }
var mostRounds = 3;

var risky = /^[=+\-@']/;
function isRisky(value) { return typeof value === "string" && risky.test(value); }
function marked(value) { return `'${value}`; }
function writeTexts(range, values, isFormula = () => false) {
	const isText3 = (value, row, column) => isRisky(value) && !isFormula(row, column);
	const guarded2 = values.map(
		(cells, row) => cells.map((value, column) => isText3(value, row, column) ? marked(value) : value ?? "")
	);
	range.setValues(guarded2);
	const places = [];
	values.forEach((cells, row) => {
		cells.forEach((value, column) => {
			if (isText3(value, row, column)) places.push({ row, column, value });
		});
	});
	if (places.length === 0) return;
	const written = range.getValues();
	for (const { row, column, value } of places) {
		if (written[row]?.[column] !== marked(value)) continue;
		const cell = range.getCell(row + 1, column + 1);
		cell.setValue(value);
		if (cell.getFormula() !== "") cell.setValue(marked(value));
	}
}

function carryEntries({ sheet, plan, from }) {
	for (let round = 1; round <= mostRounds; round += 1) {
		const to = valuesOf(sheet);
		const runs2 = carriedEntries({ plan, from, to });
		if (runs2.length === 0) return;
		const lastRow = Math.max(...runs2.map(({ row, values }) => row + values.length - 1));
		const room = sheet.getMaxRows();
		if (room < lastRow) sheet.insertRowsAfter(room, lastRow - room);
		let isWhole = true;
		for (const run of runs2) {
			const cells = sheet.getRange(run.row, run.column, run.values.length, 1);
			if (run.row > plan.rowCount) cells.setNumberFormat("@");
			const blank2 = stillBlank(run, cells.getValues());
			isWhole && (isWhole = blank2.length === 1 && blank2[0]?.values.length === run.values.length);
			for (const { row, column, values } of blank2) {
				writeTexts(sheet.getRange(row, column, values.length, 1), values.map((value) => [value]));
			}
		}
		if (plan.role.kind !== "class") return;
		const now = valuesOf(sheet);
		const nameIn = (cells, row) => plan.identity.columns.map((column) => cellText(cells[row - 1]?.[column - 1])).join("\n");
		const strayed = runs2.flatMap(
			({ row, column, values }) => values.flatMap((value, down) => {
				const place = row + down;
				const moved = nameIn(to, place) !== nameIn(now, place);
				const wasEmpty = cellText(to[place - 1]?.[column - 1]) === "";
				const isOurs2 = cellText(now[place - 1]?.[column - 1]) === cellText(value) && cellText(value) !== "";
				return moved && wasEmpty && isOurs2 ? [{ row: place, column }] : [];
			})
		);
		if (strayed.length === 0 && isWhole) return;
		for (const { row, column } of strayed) sheet.getRange(row, column).setValue("");
	}
}
function stillBlank({ row, column, values }, now) {
	const runs2 = [];
	let blank2 = [];
	values.forEach((value, down) => {
		if (cellText(now[down]?.[0]) !== "") {
			blank2 = [];
			return;
		}
		if (blank2.length === 0) runs2.push({ row: row + down, column, values: blank2 });
		blank2.push(value);
	});
	return runs2;
}

// From workbook
function takesComma(locale) { return /^en(_(US|GB|CA|AU|NZ|IE|IN))?$/.test(locale); }

// From host
function clearWritten(sheet, { checks, spill }, present) {
	const written = checks.flatMap(({ row, column, cells }) => {
		const isWritten = cells[0]?.[0]?.kind === "formula" && present.formulas[row - 1]?.[column - 1] === "" && present.values[row - 1]?.[column - 1] === checkHeadings.check;
		return isWritten ? spill.filter((area) => area.row === row && area.column === column) : [];
	});
	if (written.length > 0) sheet.getRangeList(written.map(areaName)).setValue("");
}

function filledWith({ rows, columns, plain: plain3, areas, of }) {
	const filled = Array.from({ length: rows }, () => Array.from({ length: columns }, () => plain3));
	for (const area of areas) {
		const value = of(area);
		for (let row = area.row; row < area.row + area.rows && row <= rows; row += 1) {
			for (let column = area.column; column < area.column + area.columns && column <= columns; column += 1) {
				const line = filled[row - 1];
				if (line !== void 0) line[column - 1] = value;
			}
		}
	}
	return filled;
}

function separatorIn(formulas) {
	const bare = formulas.flat().map((formula) => formula.replace(/"[^"]*"|'[^']*'/g, ""));
	if (bare.some((formula) => formula.includes(";"))) return ";";
	return bare.some((formula) => formula.includes(",")) ? "," : void 0;
}

function writeFormats(sheet, { formats: formats2 }, { row, column, rows, columns }) {
	if (rows < 1) return;
	const filled = filledWith({
		rows: row + rows - 1, columns: column + columns - 1, plain: "@", areas: formats2, of: ({ format }) => format
	});
	const within = filled.slice(row - 1).map((line) => line.slice(column - 1));
	sheet.getRange(row, column, rows, columns).setNumberFormats(within);
}

// From workbook
var nativeFunctions = [
	"CHAR", "COUNTIF", "COUNTIFS", "DAY", "EXACT", "FIND", "HYPERLINK", "IF", "IFERROR", "INDEX", "ISNUMBER", "MATCH",
	"MONTH", "NOW", "REPT", "RIGHT", "ROW", "TEXTJOIN", "YEAR"
];
function native(name2, ...cells) { return `${name2}(${cells.join(",")})`; }
function withSeparator(formulaText, separator) {
	if (separator === ",") return formulaText;
	let quote = "";
	let written = "";
	for (const character of formulaText) {
		if (quote === "" && (character === '"' || character === "'")) quote = character;
		else if (character === quote) quote = "";
		written += character === "," && quote === "" ? separator : character;
	}
	return written;
}

// From host
function writePlanned({ sheet, plan, blocks, present, separator, formattedFrom = Infinity }) {
	const sheetId = sheet.getSheetId();
	const input = (content) => inputOf({ content, sheetId, separator });
	const wanted = present === void 0 ? blocks : blocks.flatMap((block) => differing({ block, present, input }));
	if (wanted.length === 0) return false;
	const { single, wide } = parted(present === void 0 ? merged(wanted, plan) : wanted);
	const write = (block) => {
		const area = { ...block, rows: block.cells.length, columns: block.cells[0]?.length ?? 1 };
		if (block.row < formattedFrom && hasFormula(block)) writeFormats(sheet, plan, area);
		const range = sheet.getRange(area.row, area.column, area.rows, area.columns);
		writeTexts(
			range,
			block.cells.map((row) => row.map(input)),
			(down, right) => block.cells[down]?.[right]?.kind === "formula"
		);
	};
	const naming = wide.filter((block) => namesRows(block, plan)).sort((one, other) => other.row - one.row);
	naming.forEach(write);
	for (const [words2, places] of single) sheet.getRangeList(places.map(areaName)).setValue(words2);
	wide.filter((block) => !naming.includes(block)).forEach(write);
	return true;
}
function namesRows({ column, cells }, { identity }) { return identity.columns.some((one) => one >= column && one < column + (cells[0]?.length ?? 0)); }
function hasFormula({ cells }) { return cells.some((row) => row.some(({ kind }) => kind === "formula")); }
function inputOf({ content, sheetId, separator }) {
	switch (content.kind) {
		case "text":
			return content.text;
		case "number":
			return content.value;
		case "formula":
			return withSeparator(content.formula, separator);
		case "sheet id":
			return sheetId;
		default:
			return "";
	}
}
function differing({ block, present: { values, formulas }, input }) {
	const stands2 = (content, row, column) => {
		const formula = formulas[row - 1]?.[column - 1] ?? "";
		if (content.kind === "formula") return formula === input(content);
		return formula === "" && (values[row - 1]?.[column - 1] ?? "") === input(content);
	};
	const changed2 = block.cells.flatMap(
		(contents, down) => contents.every((content, right) => stands2(content, block.row + down, block.column + right)) ? [] : [down]
	);
	const [first] = changed2;
	const last = changed2[changed2.length - 1];
	if (first === void 0 || last === void 0) return [];
	return [{ ...block, row: block.row + first, cells: block.cells.slice(first, last + 1) }];
}
var blank = { kind: "blank" };
function merged(blocks, { columnCount, writable }) {
	const firstOpen = Math.min(...writable.map(({ row }) => row));
	const lastOpen = Math.max(...writable.map(({ row, rows }) => row + rows - 1));
	const whole = ([top, bottom]) => {
		const within = blocks.flatMap((block) => partOf(block, [top, bottom], [1, columnCount]));
		return within.length > 0 ? [oneBlock(within)] : [];
	};
	const byColumns = (bottom) => columnsJoined(blocks, { rows: [firstOpen, bottom], columnCount, writable });
	const [once, twice] = [byColumns(Infinity), [...byColumns(lastOpen), ...whole([lastOpen + 1, Infinity])]];
	return [...whole([1, firstOpen - 1]), ...twice.length < once.length ? twice : once];
}
function columnsJoined(blocks, { rows, columnCount, writable }) {
	const joined = [];
	const isWritable = (column) => writable.some((area) => column >= area.column && column < area.column + area.columns);
	for (let first = 1; first <= columnCount; first += 1) {
		const open = !isWritable(first);
		let last = first;
		while (last < columnCount && isWritable(last + 1) !== open) last += 1;
		const within = blocks.flatMap((block) => partOf(block, rows, [first, last]));
		if (open && within.length > 0) joined.push(oneBlock(within));
		else joined.push(...within);
		first = last;
	}
	return joined;
}
function partOf(block, [top, bottom], [left, right]) {
	const cells = block.cells.filter((_, down) => block.row + down >= top && block.row + down <= bottom).map((line) => line.filter((_, across) => block.column + across >= left && block.column + across <= right));
	const isNone = (cells[0]?.length ?? 0) === 0;
	return isNone ? [] : [{ row: Math.max(top, block.row), column: Math.max(left, block.column), cells }];
}
function oneBlock(blocks) {
	const width = (block) => block.cells[0]?.length ?? 0;
	const row = Math.min(...blocks.map((block) => block.row));
	const column = Math.min(...blocks.map((block) => block.column));
	const bottom = Math.max(...blocks.map((block) => block.row + block.cells.length));
	const right = Math.max(...blocks.map((block) => block.column + width(block)));
	const cells = Array.from({ length: bottom - row }, () => Array.from({ length: right - column }, () => blank));
	for (const block of blocks) {
		block.cells.forEach((contents, down) => {
			contents.forEach((content, across) => {
				const line = cells[block.row - row + down];
				if (line !== void 0) line[block.column - column + across] = content;
			});
		});
	}
	return { row, column, cells };
}
function parted(blocks) {
	const byWords = new Map();
	for (const block of blocks) {
		const [content] = block.cells[0] ?? [];
		if (block.cells.length !== 1 || block.cells[0]?.length !== 1 || content?.kind !== "text") continue;
		if (!/^\w/.test(content.text)) continue;
		const found = byWords.get(content.text) ?? { areas: [], blocks: [] };
		found.areas.push({ row: block.row, column: block.column, rows: 1, columns: 1 });
		found.blocks.push(block);
		byWords.set(content.text, found);
	}
	const single = new Map(
		[...byWords].filter(([, { areas }]) => areas.length > 1).map(([words2, { areas }]) => [words2, areas])
	);
	const taken = new Set([...byWords].filter(([words2]) => single.has(words2)).flatMap(([, found]) => found.blocks));
	return { single, wide: blocks.filter((block) => !taken.has(block)) };
}

function writeSheet({ file: file2, target, plan, stands: stands2, carried, firstEntries }) {
	const { sheet } = target;
	makeRoom(sheet, { rows: plan.rowCount, columns: plan.columnCount });
	const present = stands2 === "empty" ? void 0 : read(target, plan);
	target.cells = void 0;
	const firstRow = stands2 === "shorter" ? firstNewRow(plan, present?.values ?? []) : 1;
	const { rowCount, columnCount } = plan;
	writeFormats(sheet, plan, { row: firstRow, column: 1, rows: rowCount - firstRow + 1, columns: columnCount });
	const separator = (present && separatorIn(present.formulas)) ?? argumentSeparator(file2, sheet, plan);
	if (present !== void 0) clearWritten(sheet, plan, present);
	writePlanned({ sheet, plan, blocks: plan.blocks, present, separator, formattedFrom: firstRow });
	writeLooks(sheet, plan, firstRow);
	if (stands2 !== "shorter") writeFrame(sheet, plan, stands2 === "empty");
	writeHeights(sheet, plan, firstRow);
	writeChoices(sheet, plan.choices.filter(({ area }) => area.row >= firstRow));
	if (stands2 === "shorter") renewChoices(sheet, plan, firstRow);
	writeStateRules(sheet, plan, stands2 === "empty");
	if (carried !== void 0) carryEntries({ sheet, plan: carried.wanted, from: carried.from });
	writeFirstEntries({ sheet, firstEntries });
	invite(sheet, plan);
	writePlanned({ sheet, plan, blocks: plan.checks, present, separator, formattedFrom: firstRow });
	protect(sheet, plan, stands2);
}
function rewriteSheet(target, plan) {
	const { sheet } = target;
	const { rowCount: rows, columnCount: columns } = plan;
	const cells = cellsRead(target);
	const isWider = (cells.length < rows || (cells[0]?.length ?? 0) < columns) && makeRoom(sheet, { rows, columns });
	if (isWider) hideColumns(sheet, plan);
	const present = read(target, plan);
	const separator = separatorIn(present.formulas) ?? ",";
	clearWritten(sheet, plan, present);
	const wrote = writePlanned({ sheet, plan, blocks: [...plan.blocks, ...plan.checks], present, separator });
	if (wrote) target.cells = void 0;
	renewChoices(sheet, plan);
	return wrote;
}
function read(target, plan) { return {
	values: cellsRead(target), formulas: target.sheet.getRange(1, 1, plan.rowCount, plan.columnCount).getFormulas()
}; }
function firstNewRow({ identity }, cells) {
	let row = cells.length;
	while (row > 0 && identity.columns.every((column) => (cells[row - 1]?.[column - 1] ?? "") === "")) row -= 1;
	return row + 1;
}
function renewChoices(sheet, plan, before = plan.rowCount + 1) {
	const alike = new Map();
	for (const choice of plan.choices) {
		if (choice.area.row >= before) continue;
		const name2 = JSON.stringify([choice.options, choice.help]);
		alike.set(name2, [...alike.get(name2) ?? [], choice]);
	}
	if (alike.size === 0) return;
	const present = sheet.getRange(1, 1, plan.rowCount, plan.columnCount).getDataValidations();
	const isOther = ({ area, options }) => {
		const offered = present[area.row - 1]?.[area.column - 1]?.getCriteriaValues()[0];
		return Array.isArray(offered) && JSON.stringify(offered) !== JSON.stringify(options);
	};
	for (const choices of alike.values()) {
		const last = choices[choices.length - 1];
		if (last === void 0 || !isOther(last)) continue;
		for (const { area, options, help } of choices.filter(isOther)) {
			sheet.getRange(area.row, area.column, area.rows, area.columns).setDataValidation(choiceOf(options, help));
		}
	}
}
function invite(sheet, { invitation }) {
	if (invitation === void 0) return;
	const cells = valuesOf(sheet);
	const empty = invitation.places.filter(({ row, column }) => (cells[row - 1]?.[column - 1] ?? "") === "");
	if (empty.length > 0) sheet.getRangeList(empty.map(areaName)).setValue(invitation.text);
}
function hideColumns(sheet, { hiddenColumns }) {
	if (hiddenColumns !== void 0) sheet.hideColumns(hiddenColumns.column, hiddenColumns.count);
}
function makeRoom(sheet, { rows, columns }) {
	const presentRows = sheet.getMaxRows();
	if (presentRows < rows) sheet.insertRowsAfter(presentRows, rows - presentRows);
	const presentColumns = sheet.getMaxColumns();
	if (presentColumns < columns) sheet.insertColumnsAfter(presentColumns, columns - presentColumns);
	return presentColumns < columns;
}
function argumentSeparator(file2, sheet, plan) {
	if (file2.separator !== void 0) return file2.separator;
	if (takesComma(file2.locale()) || ![...plan.blocks, ...plan.checks].some(hasFormula)) return ",";
	const cell = sheet.getRange(1, 1);
	cell.setNumberFormat("General");
	cell.setValue("=SUM(1,2)");
	settle();
	const reads = cell.getValue() === 3;
	cell.setValue("");
	cell.setNumberFormat("@");
	file2.separator = reads ? "," : ";";
	return file2.separator;
}
function writeLooks(sheet, plan, firstRow) {
	const { rowCount: rows, columnCount: columns } = plan;
	const each = filledWith({ rows, columns, plain: plainLook, areas: plan.looks, of: ({ look }) => looks[look] }).slice(
		firstRow - 1
	);
	if (each.length === 0) return;
	const range = sheet.getRange(firstRow, 1, each.length, columns);
	const as = (part) => each.map((row) => row.map(part));
	range.setBackgrounds(as(({ background }) => background));
	range.setFontColors(as(({ color }) => color));
	range.setFontWeights(as(({ bold }) => bold ? "bold" : "normal"));
	range.setFontSizes(as(({ size: size2 }) => size2));
	range.setWrapStrategies(as(wrapOf));
	const boxes = new Map();
	for (const area of plan.looks) {
		const { border } = looks[area.look];
		const from = Math.max(area.row, firstRow);
		const rows2 = area.row + area.rows - from;
		if (border !== void 0 && rows2 > 0 && area.columns > 0) {
			boxes.set(border, [...boxes.get(border) ?? [], areaName({ ...area, row: from, rows: rows2 })]);
		}
	}
	for (const [colour, areas] of boxes) boxAround(sheet.getRangeList(areas), colour);
	range.setHorizontalAlignments(as(({ align }) => align));
	range.setVerticalAlignment("top");
}
function writeFrame(sheet, plan, isNew) {
	for (const { from, count, size: size2 } of plan.columnWidths) sheet.setColumnWidths(from, count, size2);
	hideColumns(sheet, plan);
	if (!isNew || plan.frozenRows > 0) sheet.setFrozenRows(plan.frozenRows);
	if (!isNew || plan.frozenColumns > 0) sheet.setFrozenColumns(plan.frozenColumns);
	sheet.setTabColor(tabColors[plan.role.kind]);
}
function writeHeights(sheet, { rowHeights = [] }, firstRow) {
	for (const { from, count, size: size2 } of rowHeights) {
		const first = Math.max(from, firstRow);
		if (first < from + count) sheet.setRowHeightsForced(first, from + count - first, size2);
	}
}
function writeChoices(sheet, choices) {
	if (choices.length === 0) return;
	const known = new Map();
	const ruleOf = ({ options, help }) => {
		const name2 = JSON.stringify([options, help]);
		const rule = known.get(name2) ?? choiceOf(options, help);
		known.set(name2, rule);
		return rule;
	};
	const areas = choices.map((choice) => ({ ...choice.area, choice }));
	const top = Math.min(...areas.map(({ row }) => row));
	const left = Math.min(...areas.map(({ column }) => column));
	const rules = filledWith({
		rows: Math.max(...areas.map(({ row, rows }) => row + rows - 1)),
		columns: Math.max(...areas.map(({ column, columns }) => column + columns - 1)), plain: null, areas,
		of: ({ choice }) => ruleOf(choice)
	}).slice(top - 1).map((row) => row.slice(left - 1));
	sheet.getRange(top, left, rules.length, rules[0]?.length ?? 1).setDataValidations(rules);
}
function writeStateRules(sheet, plan, isNew) {
	const ours = plan.states.filter(({ areas }) => areas.length > 0);
	if (ours.length === 0) return;
	const others = (isNew ? [] : sheet.getConditionalFormatRules()).filter(
		(rule) => !ours.some(({ startsWith }) => isStateRule(rule, startsWith))
	);
	const rules = ours.map(
		({ areas, startsWith, state }) => stateRuleOf({
			startsWith, ...stateLooks[state], ranges: sheet.getRangeList(areas.map(areaName)).getRanges()
		})
	);
	sheet.setConditionalFormatRules([...others, ...rules]);
}
function writeFirstEntries({ sheet, firstEntries }) {
	if (firstEntries.length === 0) return;
	const cells = valuesOf(sheet);
	const at = (row, column) => cells[row - 1]?.[column - 1] ?? "";
	const blank2 = firstEntries.filter(
		({ row, column, texts }) => texts.every((_, down) => at(row + down, column) === "")
	);
	const others = firstEntries.some(
		(run) => !blank2.includes(run) && run.texts.some((text, down) => ![text, ""].includes(String(at(run.row + down, run.column))))
	);
	if (others) return;
	for (const { row, column, texts, counts } of blank2) {
		writeTexts(sheet.getRange(row, column, texts.length, 1), texts.map((text) => [text]));
		if (counts === void 0) continue;
		sheet.getRange(row, counts.column, counts.rows.length, 2).setValues(counts.rows.map((noted) => noted === null ? ["", ""] : [noted[0], new Date(noted[1])]));
		sheet.getRange(row, countedColumn, texts.length, 1).setValues(texts.map((text) => [text === "" ? "" : countedEntry(text)]));
	}
}
function protect(sheet, plan, stands2) {
	const present = stands2 === "empty" ? void 0 : sheetProtections(sheet)[0];
	const description = present?.getDescription() ?? "";
	const isOurs2 = description === hostWords.protection || stands2 === "begun" && description === "";
	if (present !== void 0 && !isOurs2) return;
	const protection = present ?? sheet.protect();
	if (stands2 !== "shorter" || present === void 0) {
		protection.setDescription(hostWords.protection);
		protection.setWarningOnly(true);
	}
	const open = [...plan.writable, ...plan.unprotected];
	if (open.length > 0) protection.setUnprotectedRanges(sheet.getRangeList(open.map(areaName)).getRanges());
}

var marksAbove = 2;
function carryOwn(old, target, width) {
	const all = old.getRange(1, 1, old.getMaxRows(), old.getMaxColumns());
	const found = all.getValues();
	const formulas = inTodaysColumns(all.getFormulas());
	const notes = inTodaysColumns(all.getNotes());
	const there = target === void 0 ? [] : valuesOf(target.sheet);
	const left = [];
	const seen = [];
	inTodaysColumns(found).forEach((line, down) => {
		const name2 = isNamed(line) ? nameOf(line) : "";
		const row = name2 === "" || seen.includes(name2) ? 0 : there.findIndex((one) => nameOf(one) === name2) + 1;
		if (name2 !== "") seen.push(name2);
		line.forEach((cell, right) => {
			const isBeside = right >= width;
			const value = isBeside || name2 === "" && seen.length > marksAbove ? cell : "";
			const note = String(notes[down]?.[right] ?? "");
			if (value === "" && note === "") return;
			const place = { row, column: right + 1 + (isBeside ? (target?.tag.columns ?? width) - width : 0) };
			const stays = row === 0 || value !== "" && formulas[down]?.[right] !== "";
			if (stays || target === void 0 || !put(target.sheet, { ...place, value, note }))
				left.push(`${columnLetters(columnIn(found, right + 1))}${down + 1}`);
		});
	});
	return left;
}
function put(sheet, { row, column, value, note }) {
	makeRoom(sheet, { rows: row, columns: column });
	const cell = sheet.getRange(row, column);
	const noted = cell.getNote();
	const now = value === "" ? "" : String(cell.getValue());
	if (now !== "" && now !== String(value) || noted !== "" && !noted.includes(note)) return false;
	if (now !== String(value)) {
		if (typeof value === "string") cell.setNumberFormat("@");
		writeTexts(cell, [[value]]);
	}
	if (noted === "") cell.setNote(note);
	return true;
}

// From lab/record
var firstRecordFields = [
	"day", "className", "activity", "aim", "present", "finished", "wentWell", "hard", "poll", "next", "notes"
];
var recordFields = [...firstRecordFields, "substance", "concentrations"];

// From lab/texts
var recordLabels = {
	day: "day", className: "class", activity: "activity", aim: "aim", present: "present", finished: "finished",
	wentWell: "what went well", hard: "what was hard", poll: "poll", next: "next time", notes: "in your own words",
	substance: "substance", concentrations: "concentrations"
};
var labelsBefore = { next: "what is next" };
function isRecordLabel(field, text) { return text === recordLabels[field] || text !== "" && text === labelsBefore[field]; }

// From workbook
var sheetHeadings = {
	plan: { setting: "setting", value: "value", key: "key", className: "class", team: "team" },
	progress: { title: "Progress", now: "Now", done: "Done", count: "Steps" },
	help: { title: "Help, in your own words", step: "step", level: "level", wording: "your own wording", link: "link" },
	prepare: {
		title: "Prepare", headings: ["For", "What", "Needed", "With spare", "Unit", "How and what to know"], mark: "prepare"
	}
};

function recognisedSheet(cells) {
	const found = kindOf(cells);
	const lesson = cells.slice(0, 3).flatMap((line) => line.map(cellText)).find((mark) => /^\d{4}-\d\d-\d\d\.\d+$/.test(mark));
	return found && lesson !== void 0 ? { ...found, lesson } : found;
}
function kindOf(cells) {
	const at = (row, column) => cellText(cells[row - 1]?.[column - 1]);
	if (at(1, 1) === scratchSheet.mark) return void 0;
	const shift = classShift(cells);
	if (shift !== void 0) {
		const className = at(shift === 0 ? classRows.title : 1, classColumns.title);
		return { kind: "class", className, layout: layoutIn(inTodaysColumns(cells)) };
	}
	if (at(1, pollColumns.marker) === pollMarker) return { kind: "poll", layout: 0 };
	const has = (...headings) => cells.some((line) => headings.every((heading) => line.some((cell) => cellText(cell) === heading)));
	const { plan, progress, help, prepare } = sheetHeadings;
	if (has(plan.setting, plan.value) && has(plan.key, plan.className, plan.team)) return { kind: "plan", layout: 0 };
	const isHeading = (line) => firstRecordFields.every((field) => line.some((cell) => isRecordLabel(field, cellText(cell))));
	if (cells.some(isHeading)) return { kind: "record", layout: 0 };
	if (at(1, 1) === help.title && has(help.step, help.level, help.wording, help.link))
		return { kind: "help", layout: 0 };
	if (at(1, 1) === prepare.title && has(...prepare.headings, prepare.mark)) return { kind: "prepare", layout: 0 };
	if (at(1, 1) === progress.title && has(progress.now) && has(progress.done, progress.count)) {
		return { kind: "progress", layout: 0 };
	}
	return void 0;
}

// From host
var tagKey = "labrow-sheet";
var keptKey = "labrow-kept";
function isOwn(one) { return one.tag !== void 0; }
function readTag(words2) {
	try {
		const tag = JSON.parse(words2);
		return typeof tag === "object" && tag !== null && "kind" in tag ? tag : void 0;
	} catch {
		return void 0;
	}
}
function tagByContents(one) {
	const found = recognisedSheet(cellsRead(one));
	if (found === void 0) return void 0;
	const name2 = one.sheet.getName();
	return { ...found, state: hostWords.isKeptName(name2) ? "kept" : hostWords.isAwayName(name2) ? "away" : "built" };
}
function ownSheets(file2) {
	if (!file2.isKnown) lookUpTags(file2);
	return file2.sheets.filter(isOwn).filter(({ tag }) => tag.state !== "kept");
}
function otherSheets(file2) {
	const own = ownSheets(file2);
	return file2.sheets.filter(
		(one) => !own.some(({ id }) => id === one.id) && !isKept(file2, one) && one.sheet.getName() !== hostWords.deskSheet.name
	);
}
function tagOf(file2, one) {
	if (!file2.isKnown) lookUpTags(file2);
	return one.tag;
}
function lookUpTags(file2) {
	for (const [one, { entry, words: words2, tag }] of tagged(file2, tagKey)) Object.assign(one, { entry, words: words2, tag });
	const filled = file2.sheets.filter((one) => {
		if (one.tag !== void 0 || one.id === file2.desk?.id || keptIds(file2).includes(one.id)) return false;
		one.isBlank = one.sheet.getLastRow() === 0;
		return !one.isBlank;
	});
	if (filled.length > 0) for (const [one, { tag }] of tagged(file2, keptKey)) one.tag ?? (one.tag = tag);
	const inUse = new Set(file2.sheets.flatMap(({ tag }) => tag === void 0 || isOld(tag) ? [] : [roleName(tag)]));
	for (const one of filled) {
		const tag = one.tag === void 0 ? tagByContents(one) : void 0;
		if (tag === void 0) continue;
		if (!isOld(tag)) {
			if (inUse.has(roleName(tag))) continue;
			inUse.add(roleName(tag));
		}
		one.tag = tag;
	}
	file2.isKnown = true;
}
function tagged(file2, key) {
	const entries = file2.spreadsheet.createDeveloperMetadataFinder().withKey(key).find();
	const found = entries.map((entry) => {
		const words2 = entry.getValue() ?? "";
		return { entry, words: words2, tag: readTag(words2) };
	});
	const places = new Map();
	for (const one of found) {
		const { tag, entry } = one;
		const isNamed2 = tag?.sheet !== void 0 && found.filter((other) => other.tag?.sheet === tag.sheet).length === 1;
		const named = isNamed2 ? sheetById(file2, tag.sheet) : void 0;
		const place = named ?? sheetById(file2, entry.getLocation().getSheet()?.getSheetId());
		if (place !== void 0 && !places.has(place)) places.set(place, one);
	}
	return places;
}
function writeTag(file2, one, wanted) {
	const tag = { ...wanted, sheet: one.id };
	const words2 = JSON.stringify(tag);
	if (one.words !== words2) {
		if (one.words === void 0) one.sheet.addDeveloperMetadata(tagKey, words2, documentVisibility());
		else {
			entryOf(one)?.setValue(words2);
		}
		one.words = words2;
	}
	one.tag = tag;
	if (tag.state === "kept" && tag.emptying !== true) noteKept(file2, one);
}
function entryOf(one) {
	one.entry ?? (one.entry = one.sheet.getDeveloperMetadata().find((entry) => one.isNew === true || entry.getKey() === tagKey));
	return one.entry;
}
var keptProperty = "labrow.kept";
function keptIds(file2) { return file2.store.read(keptProperty).split(" ").filter((id) => id !== "").map(Number); }
function isKept(file2, one) {
	const tag = tagOf(file2, one);
	return tag === void 0 ? keptIds(file2).includes(one.id) : tag.state === "kept";
}
function noteKept(file2, one) {
	const ids = keptIds(file2);
	if (ids.includes(one.id)) return;
	entryOf(one)?.setKey(keptKey);
	file2.store.write(keptProperty, [...ids, one.id].join(" "));
}
function isOld({ state }) { return state !== "building" && state !== "built"; }
function isOf(tag, role) { return roleName(tag) === roleName(role); }
function sheetInUse(own, role) { return own.find(({ tag }) => !isOld(tag) && isOf(tag, role)); }
function sheetLeaving(own, role) { return own.find(({ tag }) => tag.state === "leaving" && isOf(tag, role)); }
function sheetAway(own, role) { return own.find(({ tag }) => tag.state === "away" && isOf(tag, role)); }
function roleName({ kind, className = "", lesson = "" }) { return JSON.stringify([kind, className, lesson]); }

var property = "labrow.taken";
var pieceLength = 8e3;
var typed = [classColumns.entry, classColumns.help, classColumns.who];
function noteTaken({ store }, old, cells, columns = cells[0]?.length ?? 0) {
	const ids = takenIds(store);
	if (old.tag.kind !== "class" || ids.includes(old.id)) return;
	const rows = {};
	for (const line of inTodaysColumns(cells).filter(isNamed)) {
		const name2 = nameOf(line);
		const sums = typed.map((column) => sumOf(cellText(line[column - 1])));
		if (rows[name2] === void 0 && sums.some((sum) => sum !== "")) rows[name2] = sums;
	}
	const { className = "", lesson, activity = "" } = old.tag;
	const taken = { className, lesson, activity, columns: old.tag.columns ?? columns, rows };
	const words2 = JSON.stringify(taken);
	let count = 0;
	for (let from = 0; from < words2.length; from += pieceLength) {
		store.write(`${property}.${old.id}.${count}`, words2.slice(from, from + pieceLength));
		count += 1;
	}
	store.write(property, [...ids, old.id].join(" "));
}
function takenIds(store) { return store.read(property).split(" ").filter((id) => id !== "").map(Number); }
function readTaken(store, id) {
	let words2 = "";
	for (let piece = 0; ; piece += 1) {
		const part = store.read(`${property}.${id}.${piece}`);
		if (part === "") break;
		words2 += part;
	}
	try {
		return JSON.parse(words2);
	} catch {
		return void 0;
	}
}
function forget(store, id) {
	const others = takenIds(store).filter((one) => one !== id);
	if (others.length > 0) store.write(property, others.join(" "));
	else store.remove(property);
	for (let piece = 0; store.read(`${property}.${id}.${piece}`) !== ""; piece += 1) {
		store.remove(`${property}.${id}.${piece}`);
	}
}
function carryLate(file2) {
	let carried = 0;
	let left = 0;
	let away = 0;
	const own = [];
	const kept = [];
	for (const id of takenIds(file2.store)) {
		const old = sheetById(file2, id);
		const taken = readTaken(file2.store, id);
		if (old !== void 0 && taken !== void 0) {
			const { className, lesson } = taken;
			const target = sheetInUse(ownSheets(file2), { kind: "class", className, lesson });
			const late = lateCells(inTodaysColumns(valuesOf(old.sheet)), taken);
			const found = late.some((line) => line.some((cell) => cell !== "")) ? carryOne({ taken, target, late }) : none;
			carried += found.carried;
			if (old.tag?.state === "away") away += found.left;
			else {
				left += found.left;
				const cells = carryOwn(old.sheet, target, taken.columns);
				const name2 = old.sheet.getName();
				kept.push(name2);
				if (cells.length > 0) own.push({ sheet: name2, cells });
			}
		}
		forget(file2.store, id);
	}
	for (const { sheet } of kept.length > 0 ? otherSheets(file2) : []) {
		const cells = sheet.getDataRange().getFormulas().flatMap(
			(line, down) => line.flatMap(
				(formula, right) => kept.some((name2) => formula.includes(onSheet(name2, ""))) ? [`${columnLetters(right + 1)}${down + 1}`] : []
			)
		);
		if (cells.length > 0) own.push({ sheet: sheet.getName(), cells });
	}
	return { carried, left, away, own };
}
var none = { carried: 0, left: 0 };
function lateCells(cells, { rows }) { return cells.map((line) => {
	const kept = line.map(() => "");
	if (!isNamed(line)) return kept;
	const sums = rows[nameOf(line)];
	typed.forEach((column, index) => {
		const value = line[column - 1];
		if (cellText(value) !== "" && sumOf(cellText(value)) !== (sums?.[index] ?? "")) kept[column - 1] = value;
	});
	if (kept.some((cell) => cell !== "")) {
		kept[classColumns.key - 1] = line[classColumns.key - 1];
		kept[classColumns.step - 1] = line[classColumns.step - 1];
	}
	return kept;
}); }
function carryOne({ taken, target, late }) {
	const before = target === void 0 ? [] : valuesOf(target.sheet);
	const isOther = target?.tag.activity !== void 0 && taken.activity !== "" && target.tag.activity !== taken.activity;
	if (target !== void 0 && !isOther) {
		const rows = before.map((line) => [cellText(line[classColumns.key - 1]), cellText(line[classColumns.step - 1])]);
		const area = { row: 1, column: 1, rows: before.length, columns: classColumns.who };
		carryEntries({
			sheet: target.sheet,
			plan: {
				rowCount: before.length, role: target.tag,
				identity: { firstRow: 1, columns: [classColumns.key, classColumns.step], rows }, carried: typed,
				writable: [area], unprotected: []
			},
			from: late
		});
		target.cells = void 0;
	}
	const after = target === void 0 ? [] : valuesOf(target.sheet);
	const standsIn = (cells, line, column) => cellText(cells.find((other) => nameOf(other) === nameOf(line))?.[column - 1]);
	let carried = 0;
	let left = 0;
	for (const line of late.filter(isNamed)) {
		for (const column of typed) {
			const text = cellText(line[column - 1]);
			if (text === "" || !isOther && standsIn(before, line, column) === text) continue;
			if (!isOther && standsIn(after, line, column) === text) carried += 1;
			else left += 1;
		}
	}
	return { carried, left };
}
function sumOf(text) { return text === "" ? "" : digest(text); }

// From workbook
function isAtWork(shown) { return /^Loading|(\.\.\.|…)$/.test(shown); }

var stateWords = [
	{ word: "on target", state: "on target" }, { word: "close", state: "close" }, { word: "follows", state: "follows" },
	{ word: "not yet", state: "not yet" }, { word: "unreadable", state: "unreadable" }, { word: "blank", state: "blank" },
	{ word: "kept", state: "blank" }, { word: closedRow.check, state: "blank" }
];

var writtenColumn = countedColumn + 1;
function writtenSums(words2) { return words2.every((text) => text === "") ? "" : words2.map(digest).join(" "); }
function sumsIn(line) { return cellText(line?.[writtenColumn - 1]); }
function typedOver({ headingRow, closingRow }, cells) {
	const sums = new Set(cells.slice(headingRow, closingRow).flatMap((line) => sumsIn(line).split(" ")));
	const headings = Object.values(checkHeadings);
	return (row, right) => {
		const line = cells[row - 1] ?? [];
		const cell = line[classColumns.check - 1 + right];
		const text = cellText(cell);
		if (text === "") return cell instanceof Date;
		if (row === headingRow) return text !== headings[right] && text !== restWords.checks;
		if (sums.has(digest(text))) return false;
		return sumsIn(line) !== "" || !stateWords.some(({ word }) => word === cellText(line[classColumns.check - 1]));
	};
}

function checksAreWritten(cells) { return cellText(cells[checksMark.row - 1]?.[checksMark.column - 1]) === checksMark.text; }

var failed = /^#/;
function obstaclesIn({ known, headingRow, closingRow }, cells, areTexts = checksAreWritten(cells)) {
	const [first, last] = [columnIn(cells, classColumns.check), columnIn(cells, classColumns.hint)];
	const check = cellText(cells[headingRow - 1]?.[first - 1]);
	const isTyped = areTexts ? typedOver({ headingRow, closingRow }, cells) : void 0;
	if (isTyped === void 0 && (known || isAtWork(check))) return [];
	const found = [];
	for (let row = headingRow; row <= closingRow; row += 1) {
		for (let column = first; column <= last; column += 1) {
			const cell = cells[row - 1]?.[column - 1];
			const text = cell instanceof Date ? cell.toISOString() : cellText(cell);
			const isCheck = row === headingRow && column === first;
			if (text === "" || isCheck && failed.test(text) || isTyped?.(row, column - first) === false) continue;
			found.push({ row, column, cell: `${columnLetters(column)}${row}`, text });
		}
	}
	return found;
}

var notYetKnown = "not yet known";
var checkWords = stateWords.map(function({ word }) { return word; });
function readClassSheet(found) {
	const shift = classShift(found);
	if (shift === void 0) return void 0;
	const cells = inTodaysColumns(found);
	const whoColumn = columnIn(found, classColumns.who);
	const checkColumn = columnIn(found, classColumns.check);
	const blocks = [];
	let row = classRows.firstLink;
	while (row <= cells.length) {
		const key = textAt(cells, row, classColumns.key);
		if (key === "" || textAt(cells, row, classColumns.step) !== "") {
			row += 1;
			continue;
		}
		const block = readBlock({ cells, headingRow: row, key });
		blocks.push({ ...block, whoColumn, checkColumn });
		row = block.closingRow + 1;
	}
	const firstBlock = blocks[0]?.headingRow ?? cells.length + 1;
	const between = shift === 0 ? cautionRows + 1 : 0;
	return { blocks, linkRows: Math.max(0, firstBlock - 1 - between - classRows.firstLink) };
}
function textAt(cells, row, column) { return cellText(cells[row - 1]?.[column - 1]); }
function readBlock({ cells, headingRow, key }) {
	const heading = textAt(cells, headingRow, classColumns.check);
	const known = heading === checkHeadings.check || heading === restWords.checks;
	const steps = [];
	let closingRow = headingRow;
	for (let row = headingRow + 1; row <= cells.length; row += 1) {
		const rowKey = textAt(cells, row, classColumns.key);
		if (rowKey === "") continue;
		if (rowKey !== key) break;
		closingRow = row;
		const step = textAt(cells, row, classColumns.step);
		if (step === "") break;
		steps.push(readStep({ cells, row, key, step, known }));
	}
	const who = textAt(cells, headingRow, classColumns.who);
	return {
		key, team: textAt(cells, headingRow, classColumns.title), who: isInvitation(who) ? "" : who, headingRow, closingRow,
		known, steps
	};
}
function readStep({ cells, row, key, step, known }) {
	const shown = textAt(cells, row, classColumns.check);
	const check = shown.startsWith(restWords.before) ? shown.slice(restWords.before.length) : shown;
	const tries = cells[row - 1]?.[classColumns.tries - 1];
	const lastEntry = cells[row - 1]?.[classColumns.lastEntry - 1];
	const help = Number(textAt(cells, row, classColumns.help));
	return {
		row, key, step, entry: textAt(cells, row, classColumns.entry),
		check: known && (check === "" || checkWords.includes(check)) ? check : notYetKnown,
		lookAt: known ? textAt(cells, row, classColumns.lookAt) : "",
		hint: known ? textAt(cells, row, classColumns.hint) : "",
		helpWanted: Number.isInteger(help) && help >= 0 && help <= 3 ? help : 0, who: textAt(cells, row, classColumns.who),
		tries: typeof tries === "number" && Number.isFinite(tries) ? tries : 0,
		lastEntry: isDate(lastEntry) ? lastEntry.getTime() : void 0
	};
}
function isDate(cell) { return Object.prototype.toString.call(cell) === "[object Date]"; }

// From host
function moveAside(one) {
	const cells = cellsRead(one);
	const rests = one.tag?.sums;
	const obstacles = (readClassSheet(cells)?.blocks ?? []).flatMap((block) => {
		const found = obstaclesIn(block, cells, rests);
		if (found.length === 0) return [];
		const isFormula = one.sheet.getRange(block.headingRow, block.checkColumn).getFormula() !== "";
		const typed2 = rests && isFormula ? obstaclesIn(block, cells) : found;
		const isAtWork2 = isFormula && typed2.some(({ row, column }) => row === block.headingRow && column === block.checkColumn);
		return isAtWork2 ? [] : typed2;
	});
	for (const { row, column, text } of obstacles) {
		const cell = one.sheet.getRange(row, column);
		const note = cell.getNote();
		const words2 = hostWords.movedAside(cell.getFormula() || text);
		if (!note.includes(words2)) cell.setNote(note === "" ? words2 : `${note}
${words2}`);
		cell.setValue("");
	}
	if (obstacles.length > 0) one.cells = void 0;
	return obstacles;
}

function moveTab(file2, one, place = file2.spreadsheet.getNumSheets()) {
	const { spreadsheet, sheets } = file2;
	const { sheet } = one;
	if (sheet.getIndex() !== place) {
		const shown = spreadsheet.getActiveSheet();
		const selected = spreadsheet.getActiveRange();
		if (one.tag.hidden === void 0 && sheet.isSheetHidden()) writeTag(file2, one, { ...one.tag, hidden: true });
		spreadsheet.setActiveSheet(sheet);
		spreadsheet.moveActiveSheet(place);
		if (selected === null) spreadsheet.setActiveSheet(shown);
		else spreadsheet.setActiveRange(selected);
		sheets.splice(sheets.indexOf(one), 1);
		sheets.splice(place - 1, 0, one);
	}
	const { hidden, ...tag } = one.tag;
	if (hidden !== true) return;
	sheet.hideSheet();
	if (tag.state !== "leaving") writeTag(file2, one, tag);
}

function setToRest(file2, old, { instead = sheetInUse(ownSheets(file2), old.tag)?.id, say = hostWords.kept } = {}) {
	const { kind } = old.tag;
	if (kind !== "class" && kind !== "plan" && kind !== "poll") return;
	const cells = kind === "class" ? valuesOf(old.sheet) : void 0;
	if (cells !== void 0) restChecks(file2, old, cells);
	const top = topOf(old, cells);
	if (instead === void 0) {
		writeTexts(top, [[say.alone]]);
		return;
	}
	const link = `=${native("HYPERLINK", literal(`#gid=${instead}`), literal(say.withLink))}`;
	const separator = takesComma(file2.locale()) ? "," : separatorIn(old.sheet.getDataRange().getFormulas());
	top.setNumberFormat("General");
	top.setValue(withSeparator(link, separator ?? ","));
}
function topOf({ sheet }, cells) { return cells !== void 0 && classShift(cells) === 0 ? sheet.getRange(classRows.headings, classColumns.task) : sheet.getRange(1, 1); }
function wakeUp(one) {
	const found = one.tag.kind === "class" ? checksOf(one, valuesOf(one.sheet)) : void 0;
	found?.range.setNumberFormat("General");
	found?.range.setValue("");
}
function checksOf({ sheet }, cells) {
	const blocks = readClassSheet(cells)?.blocks ?? [];
	const first = blocks[0];
	const last = blocks[blocks.length - 1];
	if (first === void 0 || last === void 0) return void 0;
	const [check, hint] = [columnIn(cells, classColumns.check), columnIn(cells, classColumns.hint)];
	const range = sheet.getRange(first.headingRow, check, last.closingRow - first.headingRow + 1, hint - check + 1);
	return { blocks, first, last, check, hint, range };
}
function restChecks(file2, old, cells) {
	const found = checksOf(old, cells);
	if (found === void 0) return;
	const { blocks, first, last, check, hint, range } = found;
	const formulas = range.getFormulas();
	const formulaOf = ({ headingRow }) => formulas[headingRow - first.headingRow]?.[0] ?? "";
	const formula = blocks.map(formulaOf).find((words3) => words3 !== "");
	if (formula === void 0) return;
	const words2 = cells.slice(first.headingRow - 1, last.closingRow).map((line) => line.slice(check - 1, hint));
	for (const block of blocks.filter((one) => formulaOf(one) !== "")) {
		const heading = words2[block.headingRow - first.headingRow];
		if (heading !== void 0) heading[0] = hostWords.kept.checks;
		for (const { row, check: word } of block.known ? block.steps : []) {
			const line = words2[row - first.headingRow];
			if (line !== void 0 && word !== "") line[0] = hostWords.kept.before(word);
		}
	}
	const sums = classShift(cells) === 0;
	writeTag(file2, old, { ...old.tag, check: formula, sums });
	for (const { headingRow, closingRow } of sums ? blocks : []) {
		const lines = words2.slice(headingRow + 1 - first.headingRow, closingRow - first.headingRow);
		if (lines.length === 0) continue;
		writeTexts(
			old.sheet.getRange(headingRow + 1, writtenColumn, lines.length, 1),
			lines.map((line) => [writtenSums(line.map(cellText))])
		);
	}
	range.setNumberFormat("@");
	writeTexts(range, words2);
}

function applySheet(request) { return bringToPlan(request, 1); }
var mostRounds2 = 3;
function bringToPlan(request, round) {
	const { file: file2, plan, keptName, replace = false, firstEntries = [] } = request;
	const role = plan.role;
	let old = sheetLeaving(ownSheets(file2), role);
	const present = sheetInUse(ownSheets(file2), role) ?? woken(file2, role);
	if (present !== void 0 && old === void 0) {
		if (role.kind === "class") moveAside(present);
		const fit = layoutFits(plan, cellsRead(present));
		const unfinished = present.tag.state === "building";
		if (fit === "other" || isOfAnother(present.tag, plan) || replace && !unfinished) {
			leave({ file: file2, old: present, keptName });
			old = present;
		} else if (fit === "same" && !unfinished) {
			writeTag(file2, present, { ...present.tag, ...activityOf(plan) });
			const wrote = rewriteSheet(present, plan);
			if (!wrote || !rowsMoved(present, plan, round)) return applied(present, false);
			return carryOn({ request, moved: present, round });
		}
	} else if (old !== void 0) {
		leave({ file: file2, old, keptName: old.tag.keptName ?? keptName });
		if (present?.tag.state === "built") {
			keep(file2, old);
			return bringToPlan(request, round);
		}
	}
	const found = sheetInUse(ownSheets(file2), role);
	const isNew = found?.tag.state !== "built";
	const target = found ?? newSheet({ file: file2, plan, old });
	const made = found === void 0;
	writeTag(file2, target, { ...target.tag, state: "building" });
	writeSheet({
		file: file2, target, plan, stands: target.isNew ? "empty" : isNew ? "begun" : "shorter",
		...target.tag.from === void 0 ? {} : carriedFrom({ file: file2, from: target.tag.from, plan }),
		firstEntries: isNew ? firstEntries : []
	});
	if (rowsMoved(target, plan, round)) {
		if (old !== void 0) keep(file2, old);
		return carryOn({ request, moved: target, round });
	}
	const { from: _, ...done2 } = target.tag;
	writeTag(file2, target, { ...done2, ...activityOf(plan), layout: layoutVersion, state: "built" });
	if (old === void 0) return applied(target, made);
	keep(file2, old);
	return { ...applied(target, made), keptId: old.id };
}
function rowsMoved({ sheet }, plan, round) { return round < mostRounds2 && plan.role.kind === "class" && layoutFits(plan, valuesOf(sheet)) !== "same"; }
function carryOn({ request, moved, round }) {
	const { file: file2, plan, keptName } = request;
	leave({ file: file2, old: moved, keptName });
	return bringToPlan({ file: file2, plan, keptName }, round + 1);
}
function applied({ id }, made) { return { sheetId: id, made }; }
function activityOf({ activity, columnCount: columns }) { return activity === void 0 ? {} : { activity, columns }; }
function isOfAnother(tag, { activity }) { return tag?.activity !== void 0 && activity !== void 0 && tag.activity !== activity; }
function carriedFrom({ file: file2, from, plan }) {
	const old = sheetById(file2, from);
	if (old === void 0) return {};
	const cells = valuesOf(old.sheet);
	if (old.tag !== void 0) noteTaken(file2, old, cells, plan.columnCount);
	return { carried: { from: cells, wanted: isOfAnother(old.tag, plan) ? teamsAlone(plan) : plan } };
}
function putAside(file2, wish) {
	const { sheetId, was, keptName, about, remove, instead } = wish;
	const present = ownSheets(file2).find(({ id }) => id === sheetId);
	if (present !== void 0) {
		if (remove === true) {
			file2.spreadsheet.deleteSheet(present.sheet);
			file2.sheets.splice(file2.sheets.indexOf(present), 1);
		} else if (about === void 0) {
			noteTaken(file2, present, valuesOf(present.sheet));
			leave({ file: file2, old: present, keptName, was });
			keep(file2, present);
		} else if (present.tag.state !== "away") {
			if (!giveName(present, freeNameFor(file2, present, keptName), was)) return false;
			putAway({ file: file2, present, about, wish });
		}
	}
	if (instead !== void 0) renameTab(file2, instead);
	return true;
}
function renameTab(file2, { sheetId, was, now }) {
	const one = sheetById(file2, sheetId);
	const other = file2.spreadsheet.getSheetByName(now);
	if (one !== void 0 && (other === null || other.getSheetId() === sheetId)) giveName(one, now, was);
}
function giveName({ sheet }, name2, was) {
	const now = sheet.getName();
	if (now === was && now !== name2) sheet.setName(name2);
	return now === was || now === name2;
}
function freeNameFor({ spreadsheet }, { id }, wanted) { return freeSheetName(spreadsheet, wanted, (other) => other.getSheetId() === id); }
function putAway({ file: file2, present, about, wish: { instead } }) {
	const { sheet, tag } = present;
	if (tag.kind === "class") {
		moveAside(present);
		noteTaken(file2, present, valuesOf(sheet));
	}
	setToRest(file2, present, { instead: instead?.sheetId, say: hostWords.away });
	sheet.setTabColor(tabColors.kept);
	const comes = ownSheets(file2).find(({ id }) => id === instead?.sheetId);
	const place = sheet.getIndex();
	if (comes !== void 0) moveTab(file2, comes, Math.min(place, comes.sheet.getIndex()));
	moveTab(file2, present);
	sheet.hideSheet();
	writeTag(file2, present, { ...present.tag, state: "away", about });
}
function woken(file2, role) {
	const one = sheetAway(ownSheets(file2), role);
	if (one === void 0) return void 0;
	if (role.kind === "class") moveAside(one);
	wakeUp(one);
	one.cells = void 0;
	moveTab(file2, one, placeFor({ file: file2, role, old: void 0 }) + 1);
	one.sheet.setTabColor(tabColors[role.kind]);
	if (role.kind === "class") one.sheet.showSheet();
	const { check: _, about: __, sums: ___, ...tag } = one.tag;
	writeTag(file2, one, { ...tag, state: "built" });
	return one;
}
function leave({ file: file2, old, keptName, was = old.sheet.getName() }) {
	const { sheet, tag } = old;
	const name2 = freeNameFor(file2, old, keptName);
	const { from: _, ...rest } = tag;
	const before = tag.name ?? was;
	writeTag(file2, old, {
		...rest, state: "leaving", keptName: name2, name: before, hidden: tag.hidden ?? sheet.isSheetHidden()
	});
	giveName(old, name2, before);
	sheet.setTabColor(tabColors.kept);
}
function keep(file2, old) {
	setToRest(file2, old);
	moveTab(file2, old);
	const { keptName: _, name: __, hidden: ___, ...rest } = old.tag;
	writeTag(file2, old, { ...rest, state: "kept" });
}
function makeBeside({ file: file2, plan, from, firstEntries = [] }) {
	const target = newSheet({ file: file2, plan, old: void 0, state: { state: "kept", emptying: true } });
	const stands2 = target.isNew ? "empty" : "begun";
	const carried = from === void 0 ? {} : carriedFrom({ file: file2, from: from.id, plan });
	writeSheet({ file: file2, target, plan, stands: stands2, ...carried, firstEntries });
	return target;
}
function newSheet({ file: file2, plan, old, state = { state: "building" } }) {
	const { role } = plan;
	let one;
	const name2 = freeSheetName(file2.spreadsheet, old?.tag.name ?? plan.name, (other) => {
		one = orphan(file2, other);
		return one !== void 0;
	});
	one ?? (one = insertedSheet({ file: file2, name: name2, place: placeFor({ file: file2, role, old }) }));
	const tag = {
		kind: role.kind, ...role.className === void 0 ? {} : { className: role.className },
		...role.lesson === void 0 ? {} : { lesson: role.lesson }, ...activityOf(plan), layout: layoutVersion, ...state,
		...old === void 0 ? {} : { from: old.id }
	};
	writeTag(file2, one, tag);
	return one;
}
function orphan(file2, sheet) {
	const one = sheetById(file2, sheet.getSheetId());
	const isFree = one !== void 0 && one.tag === void 0 && !isKept(file2, one);
	return isFree && sheet.getLastRow() === 0 ? one : void 0;
}
function insertedSheet({ file: file2, name: name2, place }) {
	const sheet = file2.spreadsheet.insertSheet(name2, place);
	const one = { sheet, id: sheet.getSheetId(), isNew: true };
	file2.sheets.splice(place, 0, one);
	return one;
}
var tabOrder = { class: 1, poll: 2, progress: 3, plan: 4, help: 5, prepare: 6, record: 7, key: 8 };
function placeFor({ file: file2, role, old }) {
	if (old !== void 0) return old.sheet.getIndex() - 1;
	const inUse = ownSheets(file2).filter(({ tag }) => !isOld(tag));
	const alike = inUse.filter(({ tag }) => tag.kind === role.kind).pop();
	if (alike !== void 0) return file2.sheets.indexOf(alike) + 1;
	const behind = inUse.find(({ tag }) => tabOrder[tag.kind] > tabOrder[role.kind]);
	if (behind !== void 0) return file2.sheets.indexOf(behind);
	const { sheets } = file2;
	const isKeptAt = (index) => {
		const one = sheets[index];
		return one !== void 0 && (isKept(file2, one) || one.tag?.state === "away");
	};
	let place = sheets.length;
	while (isKeptAt(place - 1)) place -= 1;
	return place;
}

var property2 = "labrow.build";
var pieceLength2 = 8e3;
function readNote(store) {
	const count = Number(store.read(property2));
	let note = "";
	for (let piece = 1; piece <= count; piece += 1) note += store.read(`${property2}.${piece}`);
	return note;
}
function saveNote(store, note) {
	let count = 0;
	for (let from = 0; from < note.length; from += pieceLength2) {
		count += 1;
		store.write(`${property2}.${count}`, note.slice(from, from + pieceLength2));
	}
	store.write(property2, String(count));
}

var { name, why, protection: described } = hostWords.deskSheet;
var passing = /service|server|time|again|many/i;
function makeDeskSheet({ spreadsheet, sheets, desk }) {
	const present = desk?.protections[0];
	if (present?.getDescription() === described) return;
	let sheet = desk?.sheet ?? spreadsheet.getSheetByName(name);
	if (sheet === null) {
		const shown = spreadsheet.getActiveSheet();
		sheet = spreadsheet.insertSheet(name, 0);
		sheets.unshift({ sheet, id: sheet.getSheetId() });
		shown.activate();
	}
	sheet.getRange(1, 1).setValue(why);
	sheet.hideSheet();
	const protection = present ?? sheet.protect();
	try {
		protection.removeEditors(protection.getEditors());
		if (protection.canDomainEdit()) protection.setDomainEdit(false);
	} catch (error) {
		if (passing.test(String(error))) throw error;
	}
	protection.setDescription(described);
}
function onDesk(work) {
	const spreadsheet = openSpreadsheet();
	const sheet = spreadsheet.getSheetByName(name);
	const desk = sheet === null ? void 0 : { sheet, id: sheet.getSheetId(), protections: sheetProtections(sheet) };
	const isIn = desk === void 0 || desk.protections.every((protection) => protection.canEdit());
	return isIn ? work(fileInRun(spreadsheet, desk)) : { ok: false, problem: { message: hostWords.notTeacher, reason: "teacher" } };
}

function hideSheets(file2, kinds2 = [], instead) {
	if (kinds2.length === 0) return;
	const own = ownSheets(file2).filter(({ tag }) => kinds2.includes(tag.kind));
	let inView = file2.spreadsheet.getActiveSheet().getSheetId();
	if (instead !== void 0 && own.some(({ id }) => id === inView)) {
		instead.sheet.activate();
		inView = instead.id;
	}
	for (const { sheet, id } of own) if (id !== inView && !sheet.isSheetHidden()) sheet.hideSheet();
}

function isUntouched({ spreadsheet }, sheet) {
	const isBusy = sheet.getLastRow() > 0 || spreadsheet.getNamedRanges().length > 0 || sheet.getFormUrl() !== null || sheet.getCharts().length > 0 || sheet.getImages().length > 0 || sheet.getDrawings().length > 0 || sheet.getConditionalFormatRules().length > 0 || sheetProtections(sheet).length > 0 || sheet.getDeveloperMetadata().length > 0 || sheet.getFrozenRows() > 0 || sheet.getFrozenColumns() > 0;
	if (isBusy) return false;
	const whole = sheet.getRange(1, 1, sheet.getMaxRows(), sheet.getMaxColumns());
	const all = (cells, isPlain) => cells.every((row) => row.every(isPlain));
	return all(whole.getNotes(), (note) => note === "") && all(whole.getDataValidations(), (rule) => rule === null) && all(whole.getBackgrounds(), (color) => color.toLowerCase() === "#ffffff");
}

function cellSent(cell) {
	if (cell === null || cell === void 0) return "";
	if (Object.prototype.toString.call(cell) !== "[object Date]") return cell;
	const moment = cell.getTime();
	return Number.isFinite(moment) ? { date: moment } : "";
}
function cellFromPage(cell) { return typeof cell === "object" ? new Date(cell.date) : cell; }
function isSameCell(one, other) { return JSON.stringify(one) === JSON.stringify(other); }

function markOf(tag, cells) { return digest(
	JSON.stringify([
		tag?.kind === "class" ? structureOf(cells) : cells.map((line) => line.map(cellSent)), tag?.state === "away"
	])
); }
function structureOf(found) {
	const cells = inTodaysColumns(found);
	const rows = cells.map((line) => [cellText(line[classColumns.key - 1]), cellText(line[classColumns.step - 1])]);
	while (rows.length > 0 && rows[rows.length - 1]?.join("") === "") rows.pop();
	return rows;
}

function notePreparedPlan({ file: file2, role, seen }) {
	const sheet = sheetInUse(ownSheets(file2), role)?.sheet;
	const plan = sheetInUse(ownSheets(file2), { ...role, kind: "plan" });
	if (sheet === void 0 || plan === void 0) return;
	settle();
	const { planNow, planThen } = prepareCells;
	const [joined = "", then = ""] = sheet.getRange(planNow.row, planNow.column, planThen.row - planNow.row + 1, 1).getValues().map(([cell]) => String(cell));
	plan.cells = valuesOf(plan.sheet);
	const mark = markOf(plan.tag, plan.cells);
	const note = seen.some((one) => one.id === plan.id && one.mark === mark) ? joined : "";
	if (then !== note) writeTexts(sheet.getRange(planThen.row, planThen.column), [[note]]);
}

function done(value) { return { ok: true, value }; }
function problem({ says, advice, ...parts }, about = {}) { return { ok: false, problem: { message: `${filledText(says, parts)} ${advice}`, ...about } }; }
function busy() { return problem(hostWords.busy, { reason: "busy" }); }
function changed(where) { return problem({ ...hostWords.changed, where }, { reason: "changed" }); }
function guarded(work) {
	try {
		return work();
	} catch (error) {
		const received = error instanceof Error ? error.message : String(error);
		return problem({ ...hostWords.refused, received: `“${received}”` });
	}
}

function applyCall(file2, wish) {
	const { plan, keptName, replace = false, firstEntries = [], also = [], tab, note, show: show2 } = wish;
	if (note?.was !== void 0 && note.was !== readNote(file2.store)) return changed(hostWords.theBuild);
	if (note?.before !== void 0) saveNote(file2.store, note.before);
	const { sheetId, made } = applySheet({ file: file2, plan, keptName, replace, firstEntries });
	const sheet = sheetById(file2, sheetId)?.sheet;
	if (tab !== void 0) renameTab(file2, { sheetId, ...tab });
	if (made && also.length > 0 && sheet?.getName() !== plan.name) return changed(hostWords.theSheet(plan.name));
	const others = also.map((one) => applySheet({ file: file2, ...one }));
	const roles2 = [wish, ...also].map((one) => one.plan.role);
	if (roles2.some(({ kind }) => kind === "plan")) {
		recalculateEveryMinute(file2.spreadsheet);
		makeDeskSheet(file2);
	}
	const prepare = roles2.find(({ kind }) => kind === "prepare");
	if (prepare !== void 0) notePreparedPlan({ file: file2, role: prepare, seen: wish.seen });
	if (show2 === true) sheet?.showSheet().activate();
	const madeAny = made || others.some((other) => other.made);
	const late = afterStep(file2, { ...wish, made: madeAny });
	return done({ sheetId, made: madeAny, ...late === void 0 ? {} : { late } });
}
function afterStep(file2, { note, last, made = false }) {
	if (note?.after !== void 0) saveNote(file2.store, note.after);
	if (last === void 0) return void 0;
	const late = carryLate(file2);
	touchLast(file2, made ? { ...last, madeBefore: true } : last);
	return late.carried + late.left + late.away + late.own.length > 0 ? late : void 0;
}
function touchLast(file2, { show: show2, madeBefore, emptySheet, hide }) {
	const empty = sheetById(file2, emptySheet);
	if (empty !== void 0 && tagOf(file2, empty) === void 0 && isUntouched(file2, empty.sheet)) {
		file2.spreadsheet.deleteSheet(empty.sheet);
		file2.sheets.splice(file2.sheets.indexOf(empty), 1);
	}
	const isOver = readNote(file2.store) === "";
	const shown = isOver ? void 0 : sheetById(file2, show2);
	if (madeBefore) shown?.sheet.activate();
	hideSheets(file2, hide, shown);
	for (const one of file2.sheets) if (one.tag?.state === "kept") noteKept(file2, one);
	saveNote(file2.store, "");
}

function withDocumentLock(milliseconds, work, hasSettled) {
	const lock = LockService.getDocumentLock();
	if (!lock.tryLock(milliseconds)) return { ran: false };
	let settled = false;
	try {
		const value = work();
		settled = hasSettled?.(value) ?? false;
		return { ran: true, value };
	} finally {
		if (!settled) settle();
		lock.releaseLock();
	}
}

var property3 = "labrow.check";
var waitingProperty = "labrow.waiting";
var longestWaitMs = 6e4;
function checkAgain() {
	const locked = withDocumentLock(2e3, () => {
		const file2 = fileInRun(openSpreadsheet());
		let renewed = putBack(file2) ? 1 : 0;
		const missing = new Set();
		const moved = [];
		const before = readNoted(file2.store.read(waitingProperty)) ?? {};
		const waiting = {};
		const now = Date.now();
		for (const one of ownSheets(file2)) {
			const { sheet, id, tag } = one;
			if (tag.kind !== "class" || tag.state === "away") continue;
			const obstacles = moveAside(one);
			moved.push(...obstacles.map(hostWords.inTheWay));
			if (obstacles.length > 0) settle();
			const cells = valuesOf(sheet);
			for (const { key, known, headingRow, checkColumn } of readClassSheet(cells)?.blocks ?? []) {
				if (known) continue;
				const formula = sheet.getRange(headingRow, checkColumn).getFormula();
				const name2 = `${id} ${key}`;
				const since = before[name2] ?? now;
				if (formula === "") missing.add(id);
				else if (isAtWork(cellText(cells[headingRow - 1]?.[checkColumn - 1])) && now - since < longestWaitMs)
					waiting[name2] = since;
				else {
					renew(file2, sheet, { sheetId: id, row: headingRow, column: checkColumn, formula });
					renewed += 1;
				}
			}
		}
		if (Object.keys(waiting).length > 0) file2.store.write(waitingProperty, JSON.stringify(waiting));
		else if (file2.store.read(waitingProperty) !== "") file2.store.remove(waitingProperty);
		return { renewed, waiting: Object.keys(waiting).length, missing: [...missing], moved };
	});
	return locked.ran ? done(locked.value) : busy();
}
function checkCell(sheet, { row, column }) { return sheet.getRange(row, column); }
function renew({ store }, sheet, noted) {
	store.write(property3, JSON.stringify(noted));
	const cell = checkCell(sheet, noted);
	try {
		cell.setValue("");
		settle();
	} finally {
		cell.setValue(noted.formula);
	}
	store.remove(property3);
}
function putBack(file2) {
	const { store } = file2;
	const words2 = store.read(property3);
	if (words2 === "") return false;
	const noted = readNoted(words2);
	const sheet = noted && sheetById(file2, noted.sheetId)?.sheet;
	const isHeading = noted !== void 0 && sheet !== void 0 && readClassSheet(valuesOf(sheet))?.blocks.some(
		({ headingRow, checkColumn }) => headingRow === noted.row && checkColumn === noted.column
	) === true;
	const isEmpty2 = isHeading && checkCell(sheet, noted).getFormula() === "";
	if (isEmpty2) checkCell(sheet, noted).setValue(noted.formula);
	store.remove(property3);
	return isEmpty2;
}
function readNoted(words2) {
	try {
		return JSON.parse(words2);
	} catch {
		return void 0;
	}
}

var ownPrefix = /^labrow/i;
function emptyFile(file2, wish) {
	const { share: say } = hostWords;
	const { spreadsheet, store } = file2;
	const typed2 = wish.fileName.trim();
	if (typed2 !== spreadsheet.getName().trim()) {
		return problem({ ...say.name, received: typed2 === "" ? "a blank" : `“${typed2}”` }, { field: "fileName" });
	}
	const seesPlan = ownSheets(file2).some(({ tag }) => tag.kind === "plan");
	if (!seesPlan || !wish.anew.some(({ plan }) => plan.role.kind === "plan")) return problem(say.noLesson);
	const help = helpToRead(file2);
	removeHalfMade(file2, [...wish.seen.map(({ id }) => id), help?.id]);
	const made = [];
	for (const one of wish.anew) {
		const { plan } = one;
		const anew = makeBeside({ file: file2, ...one, from: plan.role.kind === "help" ? help : void 0 });
		if (!stands(anew.sheet, one)) return problem({ ...say.notWritten, where: `“${plan.name}”` });
		made.push(anew);
	}
	removeOthers({ file: file2, made, everything: wish.removeOthers });
	const taken = file2.sheets.map(({ sheet }) => sheet.getName());
	made.forEach((one, index) => {
		const { emptying: _, ...tag } = one.tag;
		writeTag(file2, one, tag);
		const name2 = wish.anew[index]?.plan.name;
		if (name2 !== void 0 && !taken.includes(name2)) one.sheet.setName(name2);
	});
	for (const entry of spreadsheet.getDeveloperMetadata()) if (ownPrefix.test(entry.getKey())) entry.remove();
	store.clear();
	saveNote(store, wish.note);
	recalculateEveryMinute(spreadsheet);
	return done({ left: file2.sheets.map(({ sheet }) => sheet.getName()) });
}
function removeHalfMade(file2, sources) {
	const leaving = file2.sheets.filter(({ id, tag }) => tag?.emptying === true && !sources.includes(id));
	const isLast = file2.sheets.every((one) => leaving.includes(one) || one.sheet.isSheetHidden());
	if (isLast) sheetById(file2, sources[0])?.sheet.showSheet();
	removeSheets(file2, leaving);
}
function helpToRead(file2) {
	const present = sheetInUse(ownSheets(file2), { kind: "help" });
	if (present?.tag.state === "built") return present;
	return sheetLeaving(ownSheets(file2), { kind: "help" }) ?? present;
}
function stands(sheet, { plan, firstEntries = [] }) {
	const cells = valuesOf(sheet);
	return layoutFits(plan, cells) === "same" && firstEntries.every(
		({ row, column, texts }) => texts.every((text, down) => cellText(cells[row - 1 + down]?.[column - 1]) === text.trim())
	);
}
function removeOthers({ file: file2, made, everything }) {
	const staying = [...made, ...everything ? [] : otherSheets(file2)];
	const leaving = file2.sheets.filter((one) => !staying.includes(one));
	const sources = ownSheets(file2).filter(
		(one) => leaving.includes(one) && (one.tag.kind === "plan" || one.tag.kind === "help")
	);
	const leavingIds = leaving.map(({ id }) => id);
	for (const named of file2.spreadsheet.getNamedRanges()) {
		if (everything || leavingIds.includes(named.getRange().getSheet().getSheetId())) named.remove();
	}
	made[0]?.sheet.activate();
	removeSheets(file2, leaving.filter((one) => !sources.includes(one)));
	for (const one of made) writeTag(file2, one, { ...one.tag, state: "built" });
	removeSheets(file2, sources);
}
function removeSheets({ spreadsheet, sheets }, leaving) {
	for (const one of leaving) {
		spreadsheet.deleteSheet(one.sheet);
		sheets.splice(sheets.indexOf(one), 1);
	}
}

var pageNames = [
	"preparation", "labels", "key", "paper", "period", "done", "particles", "links", "cover", "guide", "trial"
];

var file = "Sidebar";
var bodyStart = "<body>";
var size = { width: 1e3, height: 720 };
function openPage({ page: name2, about: handed }) {
	const output = HtmlService.createHtmlOutputFromFile(file);
	if (name2 === "sidebar") {
		const opened = handed === "" ? output : HtmlService.createHtmlOutput(withMark(output.getContent(), { name: name2, about: handed }));
		ui().showSidebar(opened.setTitle(hostWords.title));
		return done(null);
	}
	const page = pageNames.find((known) => known === name2);
	if (page === void 0) return problem({ ...hostWords.pageUnknown, received: `“${String(name2)}”` });
	const content = output.getContent();
	if (!content.includes(bodyStart))
		return problem({ ...hostWords.pageUnknown, received: `“${page}” with any content` });
	const marked2 = HtmlService.createHtmlOutput(withMark(content, { name: page, about: handed }));
	ui().showModalDialog(marked2.setWidth(size.width).setHeight(size.height), hostWords.pageTitles[page]);
	return done(null);
}
function withMark(content, { name: name2, about }) { return content.replace(bodyStart, () => `<body data-page="${name2}" data-about="${escaped(about)}">`); }
function escaped(text) { return text.replace(/[^\S\n]+/g, " ").replace(/[&<>"'\n]/g, (character) => `&#${character.charCodeAt(0)};`); }

function decimalMarkOf(locale) {
	try {
		return 0.5.toLocaleString(locale.replace("_", "-")).includes(",") ? "comma" : "point";
	} catch {
		return "point";
	}
}

function readBook(file2, { kinds: kinds2, ids = [], address = false, brief = false }) {
	const { spreadsheet, store, sheets } = file2;
	const read2 = [];
	for (const one of ownSheets(file2)) {
		const isWanted = kinds2.includes(one.tag.kind) && one.tag.state !== "away";
		if (isWanted || ids.includes(one.id)) read2.push(sheetRead(one));
	}
	const now = new Date();
	return {
		...brief ? {} : aboutFile(file2, now),
		now: now.getTime(),
		note: readNote(store),
		...address ? { address: spreadsheet.getUrl() } : {},
		sheets: sheets.map((one) => {
			const kept = isKept(file2, one);
			const name2 = brief && one.tag === void 0 ? "" : one.sheet.getName();
			return { id: one.id, name: name2, tag: kept ? null : one.tag ?? null, kept };
		}),
		read: read2
	};
}
function aboutFile(file2, now) {
	const { spreadsheet, sheets: [first, ...others] } = file2;
	const timeZone = spreadsheet.getSpreadsheetTimeZone();
	const [today = "", clock = ""] = Utilities.formatDate(now, timeZone, "yyyy-MM-dd HH:mm").split(" ");
	return {
		fileName: spreadsheet.getName(), decimalMark: decimalMarkOf(file2.locale()), timeZone, today, clock,
		activeSheet: spreadsheet.getActiveSheet().getSheetId(),
		emptySheet: first?.isBlank === true && others.length === 0 ? first.id : null
	};
}
function sheetRead(one) {
	const { sheet, id, tag } = one;
	if (tag.kind !== "plan") one.cells = void 0;
	const cells = cellsRead(one);
	return {
		id, cells: cells.map((line) => line.map(cellSent)),
		formulaEntries: tag.kind === "class" && cells.length > 0 ? formulaEntries(sheet, cells) : [],
		mark: markOf(tag, cells)
	};
}
function formulaEntries(sheet, cells) {
	const formulas = sheet.getRange(1, columnIn(cells, classColumns.entry), cells.length, 1).getFormulas();
	return formulas.flatMap(([formula], index) => formula === void 0 || formula === "" ? [] : [index + 1]);
}

var ownFunctions = ["CHECKTEAM"];
var allowed = new Set([...ownFunctions, ...nativeFunctions]);
var most = { rows: 5e3, columns: 200, items: 5e3, text: 5e3, formula: 4e3, name: 100 };
var kinds = ["poll", "plan", "class", "progress", "help", "prepare", "record", "key"];
var formats = ["@", "General", "0", "hh:mm"];
var states = stateWords.map(function({ state }) { return state; });
var Refusal = class extends Error {
};
function refuse(where) {
	throw new Refusal(where);
}
function fieldsOf(value, where) {
	return typeof value === "object" && value !== null && !Array.isArray(value) ? value : refuse(where);
}
function listOf(value, where, read2, limit) {
	if (!Array.isArray(value) || value.length > limit) return refuse(where);
	return value.map((item, index) => read2(item, `${where} ${index + 1}`));
}
function wholeNumber(value, where, { from, to }) {
	const isWithin = typeof value === "number" && Number.isInteger(value) && value >= from && value <= to;
	return isWithin ? value : refuse(where);
}
function words(value, where, limit = most.text) {
	return typeof value === "string" && value.length <= limit ? value : refuse(where);
}
function oneOf(value, where, list) {
	return list.find((item) => item === value) ?? refuse(where);
}
function readPlanSent(sent) {
	try {
		return { ok: true, plan: readPlan(fieldsOf(sent, "the plan")) };
	} catch (error) {
		if (error instanceof Refusal) return { ok: false, where: error.message };
		throw error;
	}
}
function readPlan(plan) {
	const rowCount = wholeNumber(plan.rowCount, "rowCount", { from: 1, to: most.rows });
	const columnCount = wholeNumber(plan.columnCount, "columnCount", { from: 1, to: most.columns });
	const bounds = { rowCount, columnCount };
	const areas = (value, where) => listOf(value, where, (item, at) => readArea(item, at, bounds), most.items);
	const blocks = (value, where) => listOf(value, where, (item, at) => readBlock2(item, at, bounds), most.items);
	const hidden = plan.hiddenColumns === void 0 || plan.hiddenColumns === null ? void 0 : fieldsOf(plan.hiddenColumns, "hiddenColumns");
	const column = (value, where) => wholeNumber(value, where, { from: 1, to: columnCount });
	const identity = fieldsOf(plan.identity, "identity");
	const text = (value, where) => words(value, where);
	return {
		name: words(plan.name, "name", most.name),
		role: readRole(fieldsOf(plan.role, "role")),
		...plan.activity === void 0 ? {} : { activity: words(plan.activity, "activity", most.name) },
		rowCount,
		columnCount,
		columnWidths: runs(plan.columnWidths, "columnWidths", columnCount),
		...plan.rowHeights === void 0 ? {} : { rowHeights: runs(plan.rowHeights, "rowHeights", rowCount) },
		hiddenColumns: hidden === void 0 ? void 0 : { column: column(hidden.column, "hiddenColumns"), count: column(hidden.count, "hiddenColumns") },
		frozenRows: wholeNumber(plan.frozenRows, "frozenRows", { from: 0, to: rowCount }),
		frozenColumns: wholeNumber(plan.frozenColumns, "frozenColumns", { from: 0, to: columnCount }),
		blocks: blocks(plan.blocks, "blocks"),
		checks: blocks(plan.checks, "checks"),
		looks: listOf(
			plan.looks,
			"looks",
			(item, at) => ({ ...readArea(item, at, bounds), look: oneOf(fieldsOf(item, at).look, at, Object.keys(looks)) }),
			most.items
		),
		formats: listOf(
			plan.formats,
			"formats",
			(item, at) => ({ ...readArea(item, at, bounds), format: oneOf(fieldsOf(item, at).format, at, formats) }),
			most.items
		),
		states: listOf(
			plan.states,
			"states",
			(item, at) => {
				const rule = fieldsOf(item, at);
				return {
					areas: areas(rule.areas, at), startsWith: words(rule.startsWith, at, most.name),
					state: oneOf(rule.state, at, states)
				};
			},
			most.name
		),
		choices: listOf(
			plan.choices,
			"choices",
			(item, at) => {
				const choice = fieldsOf(item, at);
				return {
					area: readArea(choice.area, at, bounds), options: listOf(choice.options, at, text, most.items),
					help: words(choice.help, at)
				};
			},
			most.items
		),
		writable: areas(plan.writable, "writable"),
		...plan.invitation === void 0 ? {} : { invitation: readInvitation(fieldsOf(plan.invitation, "invitation"), areas) },
		unprotected: areas(plan.unprotected, "unprotected"),
		spill: areas(plan.spill, "spill"),
		identity: {
			firstRow: wholeNumber(identity.firstRow, "identity", { from: 1, to: rowCount }),
			columns: listOf(identity.columns, "identity", column, most.columns),
			rows: listOf(identity.rows, "identity", (item, at) => listOf(item, at, text, most.columns), most.rows)
		},
		carried: listOf(plan.carried, "carried", column, most.columns),
		...plan.relettered === void 0 ? {} : { relettered: readRelettered(fieldsOf(plan.relettered, "relettered"), bounds) },
		...plan.carriesAddedRows === true ? { carriesAddedRows: true } : {}
	};
}
function runs(sent, where, count) { return listOf(sent, where, (item, at) => readRun(fieldsOf(item, at), at, count), most.items); }
function readRun(run, where, count) {
	const from = wholeNumber(run.from, where, { from: 1, to: count });
	return {
		from, count: wholeNumber(run.count, where, { from: 1, to: count - from + 1 }),
		size: wholeNumber(run.size, where, { from: 2, to: 2e3 })
	};
}
function readRelettered(sent, { rowCount, columnCount }) {
	const where = "relettered";
	return {
		since: wholeNumber(sent.since, where, { from: 1, to: most.rows }),
		column: wholeNumber(sent.column, where, { from: 1, to: columnCount }),
		rows: listOf(sent.rows, where, (row) => wholeNumber(row, where, { from: 1, to: rowCount }), most.rows),
		before: words(sent.before, where, most.name)
	};
}
function readInvitation(invitation, areas) {
	return { places: areas(invitation.places, "invitation"), text: words(invitation.text, "invitation", most.name) };
}
function readRole(role) {
	const kind = oneOf(role.kind, "role", kinds);
	const { className, lesson } = role;
	return {
		kind, ...className === void 0 ? {} : { className: words(className, "role") },
		...lesson === void 0 ? {} : { lesson: words(lesson, "role", most.name) }
	};
}
function readArea(value, where, { rowCount, columnCount }) {
	const area = fieldsOf(value, where);
	const row = wholeNumber(area.row, where, { from: 1, to: rowCount });
	const column = wholeNumber(area.column, where, { from: 1, to: columnCount });
	return {
		row, column, rows: wholeNumber(area.rows, where, { from: 0, to: rowCount - row + 1 }),
		columns: wholeNumber(area.columns, where, { from: 0, to: columnCount - column + 1 })
	};
}
function readBlock2(value, where, { rowCount, columnCount }) {
	const block = fieldsOf(value, where);
	const row = wholeNumber(block.row, where, { from: 1, to: rowCount });
	const column = wholeNumber(block.column, where, { from: 1, to: columnCount });
	const cells = listOf(
		block.cells,
		where,
		(line, at) => listOf(line, at, readContent, columnCount - column + 1),
		rowCount - row + 1
	);
	const width = cells[0]?.length ?? 0;
	if (cells.some((line) => line.length !== width)) refuse(where);
	return { row, column, cells };
}
function readContent(value, where) {
	const content = fieldsOf(value, where);
	switch (content.kind) {
		case "text":
			return { kind: "text", text: words(content.text, where) };
		case "number":
			return typeof content.value === "number" && Number.isFinite(content.value) ? { kind: "number", value: content.value } : refuse(where);
		case "formula":
			return { kind: "formula", formula: readFormulaSent(content.formula, where) };
		case "sheet id":
			return { kind: "sheet id" };
		case "blank":
			return { kind: "blank" };
		default:
			return refuse(where);
	}
}
function readFormulaSent(value, where) {
	const formula = words(value, where, most.formula);
	if (!formula.startsWith("=")) return refuse(where);
	const bare = formula.replace(/"(?:[^"]|"")*"/g, '""').replace(/'(?:[^']|'')*'/g, "''");
	if (/["'](?!["'])/.test(bare.replace(/""|''/g, ""))) return refuse(where);
	const calls = bare.match(/[A-Za-z_\\][\w.\\]*\s*\(/g) ?? [];
	if (calls.some((call) => !allowed.has(call.slice(0, -1).trim()))) return refuse(where);
	if (/[{}[\]@\\;`]|\)\s*\(/.test(bare)) return refuse(where);
	if (bare.includes("HYPERLINK(") && !/HYPERLINK\("#gid="&/.test(formula)) return refuse(where);
	return formula;
}

var longestName = 100;
var mostCells = 2e3;
function readReadWish(given) {
	const { kinds: kinds2, ids, address, brief } = record(given);
	if (!isList(kinds2) || !kinds2.every(isText)) return void 0;
	return {
		kinds: kindsOf(kinds2), ids: isList(ids) ? ids.filter(isId) : [], address: address === true, brief: brief === true
	};
}
function readApplyWish(given) {
	const { replace, also, show: show2, tab, note, last } = record(given);
	const write = readWriteWish(given);
	const one = readOneSheet(given);
	const more = isList(also) ? allOf(also, readOneSheet) : [];
	const tabRead = tab === void 0 || tab === null ? void 0 : readTab(tab);
	if (write === void 0 || one === void 0 || more === void 0 || tabRead === null) return void 0;
	return {
		...write, ...one, also: more, replace: replace === true, show: show2 === true,
		...tabRead === void 0 ? {} : { tab: tabRead }, ...noteOf(note), ...lastOf(last)
	};
}
function readOneSheet(given) {
	const { plan, keptName, firstEntries } = record(given);
	const planRead = readPlanSent(plan);
	const entries = isList(firstEntries) ? allOf(firstEntries, readFirstEntries) : [];
	if (!planRead.ok || !isName(keptName) || entries === void 0) return void 0;
	return { plan: planRead.plan, keptName, firstEntries: entries };
}
function readAsideWish(given) {
	const { sheetId, was, keptName, about, remove, instead, note, last } = record(given);
	const next = record(instead).sheetId;
	const tab = readTab(instead);
	const write = readWriteWish(given);
	if (write === void 0 || !isId(sheetId) || !isName(was) || !isName(keptName)) return void 0;
	return {
		...write, sheetId, was, keptName, ...isText(about) ? { about } : {}, remove: remove === true,
		...isId(next) && tab !== null ? { instead: { sheetId: next, ...tab } } : {}, ...noteOf(note), ...lastOf(last)
	};
}
function readCellsWish(given) {
	const { cells, heights } = record(given);
	const write = readWriteWish(given);
	const read2 = isList(cells) && cells.length <= mostCells ? allOf(cells, readCell) : void 0;
	if (write === void 0 || read2 === void 0) return void 0;
	return { ...write, cells: read2, heights: isList(heights) ? heights.filter(isHeight) : [] };
}
function isHeight(given) {
	const { sheetId, row, height } = record(given);
	return isId(sheetId) && isPlace(row) && isPlace(height);
}
function readEmptyFileWish(given) {
	const { fileName, anew, removeOthers: removeOthers2, note } = record(given);
	const write = readWriteWish(given);
	const sheets = isList(anew) ? allOf(anew, readOneSheet) : void 0;
	if (write === void 0 || sheets === void 0 || !isText(fileName) || !isText(note)) return void 0;
	return { ...write, fileName, anew: sheets, removeOthers: removeOthers2 === true, note };
}
function readShowWish(given) {
	const { sheetId, cell, hide } = record(given);
	if (!isId(sheetId)) return void 0;
	const wish = { sheetId, hide: kindsOf(hide) };
	if (cell === void 0 || cell === null) return wish;
	const { row, column } = record(cell);
	return isPlace(row) && isPlace(column) ? { ...wish, cell: { row, column } } : void 0;
}
function readPageWish(given) {
	const { page, about } = record(given);
	return isText(page) ? { page, about: isText(about) ? about : "" } : void 0;
}
function readTrialWish(given) {
	const { steps } = record(given);
	return isList(steps) ? { steps } : void 0;
}
function readWriteWish(given) {
	const { seen, read: read2 } = record(given);
	const marks = isList(seen) ? allOf(seen, readSeen) : void 0;
	const wish = readReadWish(read2);
	return marks === void 0 || wish === void 0 ? void 0 : { seen: marks, read: wish };
}
function readSeen(given) {
	const { id, mark } = record(given);
	return isId(id) && isText(mark) ? { id, mark } : void 0;
}
function readCell(given) {
	const { sheetId, row, column, was, now } = record(given);
	const { date } = record(now);
	const isValue = isText(now) || Number.isFinite(now);
	if (!isId(sheetId) || !isPlace(row) || !isPlace(column) || !(isValue || Number.isFinite(date))) return void 0;
	return { sheetId, row, column, was, now: isValue ? now : { date } };
}
function readFirstEntries(given) {
	const { row, column, texts, counts } = record(given);
	if (!isPlace(row) || !isPlace(column) || !isList(texts) || !texts.every(isText)) return void 0;
	const run = { row, column, texts };
	if (counts === void 0 || counts === null) return run;
	const { column: at, rows } = record(counts);
	const isCount = (entry) => entry === null || isList(entry) && entry.length === 2 && entry.every((part) => typeof part === "number");
	return isPlace(at) && isList(rows) && rows.every(isCount) ? { ...run, counts: { column: at, rows } } : void 0;
}
function readTab(given) {
	const { was, now } = record(given);
	return isName(was) && isName(now) ? { was, now } : null;
}
function noteOf(given) {
	if (given === void 0 || given === null) return {};
	const { was, before, after } = record(given);
	return {
		note: { ...isText(was) ? { was } : {}, ...isText(before) ? { before } : {}, ...isText(after) ? { after } : {} }
	};
}
function lastOf(given) {
	if (given === void 0 || given === null) return {};
	const { show: show2, madeBefore, emptySheet, hide } = record(given);
	return {
		last: {
			show: isId(show2) ? show2 : null, madeBefore: madeBefore === true,
			emptySheet: isId(emptySheet) ? emptySheet : null, hide: kindsOf(hide)
		}
	};
}
function record(given) { return typeof given === "object" && given !== null ? given : {}; }
function allOf(items, read2) {
	const all = items.map(read2);
	return all.includes(void 0) ? void 0 : all;
}
function isList(given) { return Array.isArray(given); }
function isText(given) { return typeof given === "string"; }
function isName(given) { return isText(given) && given !== "" && given.length <= longestName; }
function isId(given) { return typeof given === "number" && Number.isInteger(given); }
function kindsOf(given) { return isList(given) ? given.filter(isText) : []; }
function isPlace(given) { return isId(given) && given >= 1; }

function show(wish) {
	const file2 = fileInRun(openSpreadsheet());
	const sheet = sheetById(file2, wish.sheetId)?.sheet;
	if (sheet === void 0) return changed(hostWords.aSheetGone);
	const isHidden = sheet.isSheetHidden();
	if (!isHidden && !wish.hide?.length) return bringToFront(file2, sheet, wish);
	return onDesk(() => {
		if (isHidden) sheet.showSheet();
		return bringToFront(file2, sheet, wish);
	});
}
function bringToFront(file2, sheet, { cell, hide }) {
	sheet.activate();
	if (cell !== void 0) sheet.getRange(cell.row, cell.column).activate();
	hideSheets(file2, hide);
	return done(null);
}

function tryHost({ steps }) {
	const spreadsheet = openSpreadsheet();
	return done(
		steps.map((step) => {
			const start = Date.now();
			try {
				const value = plain2("calls" in step ? endOf(spreadsheet, step) : act(spreadsheet, step));
				return { ms: Date.now() - start, value };
			} catch (error) {
				return { ms: Date.now() - start, refused: String(error.message) };
			}
		})
	);
}
function scratchSheets(spreadsheet) { return spreadsheet.getSheets().filter((sheet) => sheet.getRange(1, 1).getValue() === scratchSheet.mark); }
function act(spreadsheet, { do: what, sheetId }) {
	const shown = spreadsheet.getActiveSheet().getSheetId();
	const old = scratchSheets(spreadsheet);
	if (what === "begin") spreadsheet.insertSheet().getRange(1, 1).setValue(scratchSheet.mark);
	else sheetById(fileInRun(spreadsheet), sheetId)?.sheet.activate();
	for (const sheet of old) spreadsheet.deleteSheet(sheet);
	return what === "begin" ? shown : scratchSheets(spreadsheet).length;
}
function startOf(spreadsheet, on) { return on === "sheet" ? scratchSheets(spreadsheet)[0] : {
	file: spreadsheet, app: SpreadsheetApp, lock: LockService, store: PropertiesService, session: Session,
	tools: Utilities
}[on]; }
var ofFile = /^(getId|getSpreadsheet(Locale|TimeZone)|[gs]etRecalculationInterval)$/;
var elsewhere = /Parent|Active|open/;
function endOf(spreadsheet, { on, calls }) {
	return calls.reduce(
		(at, [name2, ...given]) => {
			if (at === spreadsheet ? !ofFile.test(name2) : elsewhere.test(name2)) throw new Error(name2);
			const member = at[name2];
			if (typeof member !== "function") return member;
			const handed = given.map((one) => isChain(one) ? endOf(spreadsheet, one) : one);
			return member.apply(at, handed);
		},
		startOf(spreadsheet, on)
	);
}
function isChain(given) { return typeof given === "object" && given !== null && !Array.isArray(given); }
function plain2(value) {
	if (Array.isArray(value)) {
		const items = value.map(plain2);
		return items.includes(null) ? items.length : items;
	}
	const sent = cellSent(value);
	return typeof sent !== "object" || "date" in sent ? sent : null;
}
function inCell(wanted, given) {
	if (wanted !== "spill") return given.map(kindOf2).join(" | ");
	return Array.from({ length: 17 }, (_, row) => [row, "spilled", row % 2 === 0]);
}
function kindOf2(given) {
	if (Array.isArray(given)) return `${given.length} x ${given[0].length} of ${kindOf2(given[0][0])}`;
	const kind = Object.prototype.toString.call(given).slice(8, -1);
	return kind === "Date" || given === null || given === void 0 ? kind : `${kind} ${String(given)}`;
}

function rowsBefore(sheet, cells, wanted) {
	const isTeams = ({ row }) => isNamed(cells[row - 1] ?? []);
	if (classShift(cells) !== 0 || !wanted.some(isTeams)) return void 0;
	return { cells, formulas: sheet.getRange(1, 1, cells.length, cells[0]?.length ?? 1).getFormulas() };
}
function putRowsRight(sheet, written, { cells, formulas }) {
	const names = rowNames(cells);
	const rowBefore = rowsByName(names);
	const wishAt = new Map(written.map((wish) => [placeOf(wish), wish]));
	for (let round = 1; round <= mostRounds; round += 1) {
		const now = valuesOf(sheet);
		const namesNow = rowNames(now);
		if (written.every(({ row }) => names[row - 1] === namesNow[row - 1])) return;
		const rowNow = rowsByName(namesNow);
		const places = written.flatMap(({ row, column }) => {
			const moved = rowNow.get(names[row - 1] ?? "");
			return [{ row, column }, ...moved === void 0 ? [] : [{ row: moved, column }]];
		});
		for (const place of new Map(places.map((one) => [placeOf(one), one])).values()) {
			const { row, column } = place;
			const own = rowBefore.get(namesNow[row - 1] ?? "") ?? 0;
			const wish = wishAt.get(placeOf({ row: own, column }));
			const wanted = wish?.now ?? cellSent(cells[own - 1]?.[column - 1]);
			const holds = cellSent(now[row - 1]?.[column - 1]);
			const isOurs2 = isSameCell(holds, wishAt.get(placeOf(place))?.now) || isSameCell(holds, wish?.was);
			if (!isOurs2 || isSameCell(holds, wanted)) continue;
			putBack2(sheet, place, wish === void 0 ? formulas[own - 1]?.[column - 1] ?? "" : "", wanted);
		}
	}
}
function putBack2(sheet, { row, column }, formula, value) {
	const cell = sheet.getRange(row, column);
	if (formula === "" && typeof value === "string") cell.setNumberFormat("@");
	if (formula !== "") cell.setNumberFormat("General").setFormula(formula);
	else writeTexts(cell, [[cellFromPage(value)]]);
}
function placeOf({ row, column }) { return `${row},${column}`; }
function rowsByName(names) { return new Map(names.flatMap((name2, index) => name2 === "" ? [] : [[name2, index + 1]])); }
function rowNames(cells) {
	const counts = new Map();
	return cells.map((line) => {
		if (!isNamed(line)) return "";
		const name2 = nameOf(line);
		const count = counts.get(name2) ?? 0;
		counts.set(name2, count + 1);
		return `${name2} ${count}`;
	});
}

function writeCells(file2, { cells, heights }) {
	const runs2 = runsOf(file2, cells);
	if (runs2 === void 0) return problem({ ...hostWords.notOurs, received: hostWords.aSheetGone });
	const sheets = new Set(runs2.map(({ one }) => one));
	const before = new Map();
	for (const one of sheets) {
		const own = runs2.filter((run) => run.one === one);
		makeRoom(one.sheet, {
			rows: Math.max(...own.map(({ row }) => row)),
			columns: Math.max(...own.map(({ column, cells: wide }) => column + wide.length - 1))
		});
		const there = cellsRead(one);
		const isThere = ({ row, column, was }) => isSameCell(cellSent(there[row - 1]?.[column - 1]), was);
		if (!own.every((run) => run.cells.every(isThere))) return changed(hostWords.theSheet(one.sheet.getName()));
		const rows = rowsBefore(one.sheet, there, wishesIn(own));
		if (rows !== void 0) before.set(one, rows);
	}
	for (const { sheetId, row, height } of heights ?? []) {
		const one = sheetById(file2, sheetId);
		if (one !== void 0 && isOurs(file2, one)) one.sheet.setRowHeightsForced(row, 1, height);
	}
	for (const one of sheets) {
		one.cells = void 0;
		const texts = runs2.filter((run) => run.one === one && isText2(run));
		if (texts.length > 0) one.sheet.getRangeList(texts.map(nameOf2)).setNumberFormat("@");
	}
	for (const { one, row, column, cells: wide } of runs2) {
		writeTexts(one.sheet.getRange(row, column, 1, wide.length), [wide.map(({ now }) => cellFromPage(now))]);
	}
	for (const [one, rows] of before) putRowsRight(one.sheet, wishesIn(runs2.filter((run) => run.one === one)), rows);
	return done({});
}
function wishesIn(runs2) { return runs2.flatMap(({ cells }) => cells); }
function isText2({ cells }) { return typeof cells[0]?.now === "string"; }
function nameOf2({ row, column, cells }) { return areaName({ row, column, rows: 1, columns: cells.length }); }
function isOurs(file2, one) { return tagOf(file2, one) !== void 0 || recognisedSheet(cellsRead(one)) !== void 0; }
function runsOf(file2, cells) {
	const runs2 = [];
	const ours = new Set();
	for (const cell of cells) {
		const last = runs2[runs2.length - 1];
		if (last?.one.id === cell.sheetId && last.row === cell.row && isText2(last) === (typeof cell.now === "string") && last.column + last.cells.length === cell.column) {
			last.cells.push(cell);
			continue;
		}
		const one = sheetById(file2, cell.sheetId);
		if (one === void 0 || !(ours.has(one) || isOurs(file2, one))) return void 0;
		ours.add(one);
		runs2.push({ one, row: cell.row, column: cell.column, cells: [cell] });
	}
	return runs2;
}

var patienceMs = 2e3;
function writing({ seen, read: read2 }, work) {
	return onDesk((file2) => {
		const locked = withDocumentLock(
			patienceMs,
			() => {
				for (const { id, mark } of seen) {
					const one = sheetById(file2, id);
					if (one === void 0) return changed(hostWords.aSheetGone);
					const cells = cellsRead(one);
					if (markOf(tagOf(file2, one) ?? recognisedSheet(cells), cells) !== mark)
						return changed(hostWords.theSheet(one.sheet.getName()));
				}
				const outcome = work(file2);
				if (!outcome.ok) return outcome;
				settle();
				return done({ ...outcome.value, reading: readBook(file2, read2) });
			},
			// Reading writes nothing.
			({ ok }) => ok
		);
		return locked.ran ? locked.value : busy();
	});
}

function openSidebar_() {
	ui().showSidebar(HtmlService.createHtmlOutputFromFile("Sidebar").setTitle(hostWords.title));
}
function buildSampleFromMenu_() { return openFor("sample"); }
function selfCheckFromMenu_() { return openFor("self-check"); }
function openFor(about) {
	const outcome = guarded(() => openPage({ page: "sidebar", about }));
	if (!outcome.ok) tell(outcome.problem.message);
}
function checkAgainFromMenu_() {
	const outcome = guarded(checkAgain);
	tell(outcome.ok ? hostWords.checkedAgain(outcome.value) : outcome.problem.message);
}
function tell(message) {
	openSpreadsheet().toast(message, hostWords.title);
}

var endpoints_ = {
	readBook: function(version, wish) { return asked(version, readReadWish(wish), (read2) => onDesk((file2) => done(readBook(file2, read2)))); },
	applySheet: function(version, wish) { return asked(version, readApplyWish(wish), (read2) => writing(read2, (file2) => applyCall(file2, read2))); },
	writeCells: function(version, wish) { return asked(version, readCellsWish(wish), (read2) => readingOf(writing(read2, (file2) => writeCells(file2, read2)))); },
	putAside: function(version, wish) { return asked(
		version,
		readAsideWish(wish),
		(read2) => writing(read2, (file2) => {
			if (!putAside(file2, read2)) return changed(hostWords.theSheet(read2.was));
			const late = afterStep(file2, read2);
			return done(late === void 0 ? {} : { late });
		})
	); },
	emptyFile: function(version, wish) { return asked(version, readEmptyFileWish(wish), (read2) => writing(read2, (file2) => emptyFile(file2, read2))); },
	show: function(version, wish) { return asked(version, readShowWish(wish), show); },
	openPage: function(version, wish) { return asked(version, readPageWish(wish), openPage); },
	checkAgain: function(version) { return asked(version, {}, checkAgain); },
	tryHost: (function(first, ...rest) { return (
		// Every name that the page may call is one that a cell may call: this one tells a cell what it was given.
		typeof first === "string" ? inCell(first, rest) : asked(first, readTrialWish(rest[0]), tryHost)
	); })
};
function asked(version, wish, work) {
	return guarded(() => {
		if (version !== layoutVersion) return problem(hostWords.olderPage, { reason: "older" });
		return wish === void 0 ? problem(hostWords.oddWish) : work(wish);
	});
}
function readingOf(outcome) { return outcome.ok ? done(outcome.value.reading) : outcome; }
return { buildSampleFromMenu_, checkAgainFromMenu_, endpoints_, openSidebar_, selfCheckFromMenu_ };
},
// Part onEdit: host/dayOf, host/notePollDay, host/onEdit
"onEdit"(part) {
const { cellText, classColumns, classMarker, countedColumn, countedEntry, layoutVersion, pollColumns, pollMarker, pollRows } = part("workbook/layout");


// From host
function dayOf(spreadsheet, moment) { return Utilities.formatDate(new Date(moment), spreadsheet.getSpreadsheetTimeZone(), "yyyy-MM-dd"); }

function notePollDay({ range }) {
	if (range.getLastColumn() > pollColumns.openLine) return;
	const sheet = range.getSheet();
	if (cellText(sheet.getRange(1, pollColumns.marker).getValue()) !== pollMarker) return;
	const firstRow = Math.max(range.getRow(), pollRows.firstAnswer);
	const rowCount = range.getLastRow() - firstRow + 1;
	if (rowCount < 1) return;
	const today = dayOf(sheet.getParent(), Date.now());
	const rows = sheet.getRange(firstRow, 1, rowCount, pollColumns.openLine).getValues();
	rows.forEach((cells, index) => {
		const answered = cells.slice(pollColumns.className).some((cell) => cellText(cell) !== "");
		if (answered && cellText(cells[pollColumns.day - 1]) === "") sheet.getRange(firstRow + index, pollColumns.day).setValue(today);
	});
}

var earlierEntry = classColumns.entry - 1;
function onEdit_(event) {
	try {
		const first = event.range.getColumn();
		if (first === classColumns.entry || first === earlierEntry) entered(event, first);
		else if (first >= pollColumns.className && first <= pollColumns.openLine) notePollDay(event);
	} catch {
	}
}
function entered(event, first) {
	const { range } = event;
	const sheet = range.getSheet();
	const [before, now, layout] = (sheet.getRange(1, classColumns.key - 1, 1, 3).getValues()[0] ?? []).map(cellText);
	const shift = classColumns.entry - first;
	if ((shift === 0 ? now : before) === classMarker) {
		if (shift === 0 && Number(layout) > layoutVersion || range.getLastColumn() > classColumns.who - shift) return;
		countRows({ sheet, firstRow: range.getRow(), rowCount: range.getNumRows(), shift });
	} else if (before === pollMarker) notePollDay(event);
}
function countRows({ sheet, firstRow, rowCount, shift }) {
	const counted = countedColumn - shift;
	const rows = sheet.getRange(firstRow, 1, rowCount, counted).getValues();
	const textIn = (cells, column) => cellText(cells[column - shift - 1]);
	const now = new Date();
	let run;
	const write = () => {
		if (run === void 0) return;
		sheet.getRange(run.row, classColumns.tries - shift, run.counts.length, 2).setValues(run.counts);
		sheet.getRange(run.row, counted, run.entries.length, 1).setValues(run.entries);
		run = void 0;
	};
	rows.forEach((cells, index) => {
		const entry = textIn(cells, classColumns.entry);
		const tries = cells[classColumns.tries - shift - 1];
		const isStep = textIn(cells, classColumns.key) !== "" && textIn(cells, classColumns.step) !== "";
		const isNew = entry !== "" && textIn(cells, countedColumn) !== countedEntry(entry);
		const isCount = typeof tries === "number" || cellText(tries) === "";
		if (!isStep || !isNew || !isCount) {
			write();
			return;
		}
		run = run ?? { row: firstRow + index, counts: [], entries: [] };
		run.counts.push([(typeof tries === "number" ? tries : 0) + 1, now]);
		run.entries.push([countedEntry(entry)]);
	});
	write();
}
return { onEdit_ };
},
// Part onOpen: host/onOpen
"onOpen"(part) {
const { hostWords, ui } = part("host/words");


// From host
function onOpen_() {
	const { menu, title } = hostWords;
	ui().createMenu(title).addItem(menu.openSidebar, "openSidebar").addItem(menu.buildSample, "buildSampleFromMenu").addItem(menu.checkAgain, "checkAgainFromMenu").addItem(menu.selfCheck, "selfCheckFromMenu").addToUi();
}
function onInstall_() { return onOpen_(); }
return { onInstall_, onOpen_ };
},
	};
	const given = {};
	/** What a part gives. */
	const part_ = (name) => {
		if (!(name in given)) given[name] = parts[name](part_);
		return given[name];
	};
	return { part_, callFunction_: (name, cells) => part_(name).entry.call(cells) };
})();

// Cell functions.
/**
 * Molar mass of a substance from its formula.
 *
 * @param {string} formula formula as you write it, such as CuSO4·5H2O
 * @return g/mol, not rounded
 * @customfunction
 */
function MOLARMASS(formula) {
	return Labrow.callFunction_('MOLARMASS', [formula]);
}

/**
 * Elements of a substance with their number, mass and mass percent.
 *
 * @param {string} formula formula as you write it, such as Ca(NO3)2
 * @return a table with a heading row; the mass is atoms × atomic weight, the percentages add up to 100
 * @customfunction
 */
function COMPOSITION(formula) {
	return Labrow.callFunction_('COMPOSITION', [formula]);
}

/**
 * Mass percent of one element in a substance.
 *
 * @param {string} formula formula as you write it, such as Ca(NO3)2
 * @param {string} element symbol of the element, such as N, or of an isotope, such as D
 * @return % by mass, not rounded
 * @customfunction
 */
function ELEMENTPERCENT(formula, element) {
	return Labrow.callFunction_('ELEMENTPERCENT', [formula, element]);
}

/**
 * Amount of a substance from its mass.
 *
 * @param {string} formula formula of the substance
 * @param {number|string} grams its mass (g)
 * @return mol, not rounded
 * @customfunction
 */
function MOLES(formula, grams) {
	return Labrow.callFunction_('MOLES', [formula, grams]);
}

/**
 * Mass of an amount of a substance.
 *
 * @param {string} formula formula of the substance
 * @param {number|string} moles its amount (mol)
 * @return g, not rounded
 * @customfunction
 */
function GRAMS(formula, moles) {
	return Labrow.callFunction_('GRAMS', [formula, moles]);
}

/**
 * Number of particles in an amount of substance.
 *
 * @param {number|string} moles the amount (mol)
 * @return a pure number
 * @customfunction
 */
function PARTICLECOUNT(moles) {
	return Labrow.callFunction_('PARTICLECOUNT', [moles]);
}

/**
 * Ions that one formula unit gives in water.
 *
 * @param {string} formula formula of the substance that is dissolved
 * @return a table with a heading row, and a column of notes if there is something to note
 * @customfunction
 */
function IONS(formula) {
	return Labrow.callFunction_('IONS', [formula]);
}

/**
 * Mass of solid to weigh out for a solution.
 *
 * @param {string} formula formula of the solid as it stands in the bottle, hydrate included
 * @param {number|string} molarity concentration wanted (mol/L)
 * @param {number|string} volume volume of solution wanted (mL)
 * @param {number|string} purity_percent optional: purity of the solid by mass; 100 % if left out (%)
 * @return g to weigh, not rounded
 * @customfunction
 */
function SOLUTEMASS(formula, molarity, volume, purity_percent) {
	return Labrow.callFunction_('SOLUTEMASS', [formula, molarity, volume, purity_percent]);
}

/**
 * Concentration of a solution made from a weighed solid.
 *
 * @param {string} formula formula of the solid, hydrate included
 * @param {number|string} grams mass of solid weighed (g)
 * @param {number|string} volume volume of the solution (mL)
 * @param {number|string} purity_percent optional: purity of the solid by mass; 100 % if left out (%)
 * @return mol/L, not rounded
 * @customfunction
 */
function MOLARITY(formula, grams, volume, purity_percent) {
	return Labrow.callFunction_('MOLARITY', [formula, grams, volume, purity_percent]);
}

/**
 * Volume of solution that a weighed solid is enough for.
 *
 * @param {string} formula formula of the solid, hydrate included
 * @param {number|string} grams mass of solid weighed (g)
 * @param {number|string} molarity concentration wanted (mol/L)
 * @param {number|string} purity_percent optional: purity of the solid by mass; 100 % if left out (%)
 * @return mL, not rounded
 * @customfunction
 */
function SOLUTIONVOLUME(formula, grams, molarity, purity_percent) {
	return Labrow.callFunction_('SOLUTIONVOLUME', [formula, grams, molarity, purity_percent]);
}

/**
 * Concentration of a bottled reagent from its mass percent and density.
 *
 * @param {string} formula formula of the solute in the bottle
 * @param {number|string} mass_percent mass percent on the label; 37 means 37 % (%)
 * @param {number|string} density density of the reagent (g/mL)
 * @return mol/L, not rounded
 * @customfunction
 */
function REAGENTMOLARITY(formula, mass_percent, density) {
	return Labrow.callFunction_('REAGENTMOLARITY', [formula, mass_percent, density]);
}

/**
 * Concentration of one ion in a solution of a salt, acid or base that dissociates completely.
 *
 * @param {string} formula formula of what is dissolved
 * @param {number|string} molarity concentration of the whole (mol/L)
 * @param {string} ion the ion asked for, such as Mg2+ or Cl-
 * @return mol/L of that ion, not rounded
 * @customfunction
 */
function IONMOLARITY(formula, molarity, ion) {
	return Labrow.callFunction_('IONMOLARITY', [formula, molarity, ion]);
}

/**
 * Volume of stock to measure out for a dilution.
 *
 * @param {number|string} stock_molarity concentration of the stock (mol/L)
 * @param {number|string} target_molarity concentration wanted (mol/L)
 * @param {number|string} target_volume final volume wanted (mL)
 * @return mL of stock, not rounded
 * @customfunction
 */
function DILUTIONVOLUME(stock_molarity, target_molarity, target_volume) {
	return Labrow.callFunction_('DILUTIONVOLUME', [stock_molarity, target_molarity, target_volume]);
}

/**
 * Volume of solvent to add for a dilution, volumes taken as additive.
 *
 * @param {number|string} stock_molarity concentration of the stock (mol/L)
 * @param {number|string} target_molarity concentration wanted (mol/L)
 * @param {number|string} target_volume final volume wanted (mL)
 * @return mL of solvent, not rounded
 * @customfunction
 */
function DILUENTVOLUME(stock_molarity, target_molarity, target_volume) {
	return Labrow.callFunction_('DILUENTVOLUME', [stock_molarity, target_molarity, target_volume]);
}

/**
 * Concentration after a dilution.
 *
 * @param {number|string} stock_molarity concentration of the stock (mol/L)
 * @param {number|string} stock_volume volume of stock taken (mL)
 * @param {number|string} final_volume volume after filling up (mL)
 * @return mol/L after the dilution, not rounded
 * @customfunction
 */
function DILUTIONMOLARITY(stock_molarity, stock_volume, final_volume) {
	return Labrow.callFunction_('DILUTIONMOLARITY', [stock_molarity, stock_volume, final_volume]);
}

/**
 * Final volume to dilute a portion of stock to.
 *
 * @param {number|string} stock_molarity concentration of the stock (mol/L)
 * @param {number|string} stock_volume volume of stock taken (mL)
 * @param {number|string} target_molarity concentration wanted (mol/L)
 * @return mL final volume, not rounded
 * @customfunction
 */
function DILUTEDVOLUME(stock_molarity, stock_volume, target_molarity) {
	return Labrow.callFunction_('DILUTEDVOLUME', [stock_molarity, stock_volume, target_molarity]);
}

/**
 * Concentrations of a serial dilution, with the volumes of each stage.
 *
 * @param {number|string} stock_molarity concentration of the stock (mol/L)
 * @param {number|string} factor how many times each stage is diluted, more than 1
 * @param {number|string} stages number of dilutions, one after the other
 * @param {number|string} final_volume optional: final volume of each stage; adds the two columns of volumes (mL)
 * @return a table with a heading row, one row for each stage; the volumes are there if final_volume is given
 * @customfunction
 */
function SERIALDILUTION(stock_molarity, factor, stages, final_volume) {
	return Labrow.callFunction_('SERIALDILUTION', [stock_molarity, factor, stages, final_volume]);
}

/**
 * A concentration in another unit.
 *
 * @param {number|string} value the number to convert; it may carry the unit of from
 * @param {string} from its unit, such as g/L
 * @param {string} to the unit wanted, such as mol/L
 * @param {string} formula optional: formula of the solute; needed between amount and mass only
 * @param {number|string} density optional: density of the solution; needed between a volume and a mass of solution only (g/mL)
 * @return the value in the unit wanted, not rounded
 * @customfunction
 */
function CONVERTCONCENTRATION(value, from, to, formula, density) {
	return Labrow.callFunction_('CONVERTCONCENTRATION', [value, from, to, formula, density]);
}

/**
 * Molality of a solution from the masses of solute and solvent.
 *
 * @param {string} formula formula of the solute
 * @param {number|string} grams mass of solute (g)
 * @param {number|string} solvent_grams mass of solvent (g)
 * @return mol/kg of solvent, not rounded
 * @customfunction
 */
function MOLALITY(formula, grams, solvent_grams) {
	return Labrow.callFunction_('MOLALITY', [formula, grams, solvent_grams]);
}

/**
 * Mole fraction of the first of two substances from their masses.
 *
 * @param {string} formula_1 formula of the first substance
 * @param {number|string} grams_1 its mass (g)
 * @param {string} formula_2 formula of the second substance
 * @param {number|string} grams_2 its mass (g)
 * @return a fraction from 0 to 1, not rounded
 * @customfunction
 */
function MOLEFRACTION(formula_1, grams_1, formula_2, grams_2) {
	return Labrow.callFunction_('MOLEFRACTION', [formula_1, grams_1, formula_2, grams_2]);
}

/**
 * Difference of a measured value from the accepted one, as a percentage of the accepted one.
 *
 * @param {number|string} measured the measured value, with or without a unit
 * @param {number|string} accepted the accepted value; without a unit, in that of the measured one
 * @param {boolean} signed optional: TRUE keeps the sign of measured − accepted; without sign if left out
 * @return %, not rounded, absolute unless signed is TRUE
 * @customfunction
 */
function PERCENTERROR(measured, accepted, signed) {
	return Labrow.callFunction_('PERCENTERROR', [measured, accepted, signed]);
}

/**
 * Difference of two values, as a percentage of their mean.
 *
 * @param {number|string} first one value, with or without a unit
 * @param {number|string} second the other value; without a unit, in that of the first
 * @return %, not rounded
 * @customfunction
 */
function PERCENTDIFFERENCE(first, second) {
	return Labrow.callFunction_('PERCENTDIFFERENCE', [first, second]);
}

/**
 * Number of significant figures in a number as typed.
 *
 * @param {number|string} number_as_text the number as text such as "0.0750"; a number cell has lost its trailing zeros
 * @return the count
 * @customfunction
 */
function SIGFIGS(number_as_text) {
	return Labrow.callFunction_('SIGFIGS', [number_as_text]);
}

/**
 * A number rounded to a given number of significant figures, as text that keeps its zeros.
 *
 * @param {number|string} value the number
 * @param {number|string} figures how many significant figures
 * @param {string} ties optional: half-way cases: even takes the even digit, up goes away from zero; even if left out, but schools differ
 * @return text with exactly that many significant figures; plain digits where they are clear, otherwise 1.2 × 10^3
 * @customfunction
 */
function ROUNDSIG(value, figures, ties) {
	return Labrow.callFunction_('ROUNDSIG', [value, figures, ties]);
}

/**
 * Tolerance of a piece of glassware; ISO graduated pipettes and cylinders, ASTM burettes and some ASTM sizes are from memory.
 *
 * @param {string} kind volumetric flask, volumetric pipette, graduated pipette, burette, graduated cylinder or beaker
 * @param {number|string} volume nominal size (mL)
 * @param {string} glass_class optional: A or B; A if left out
 * @param {string} standard optional: ISO or ASTM; ISO if left out
 * @return ± mL, the half-width within which the true volume lies
 * @customfunction
 */
function GLASSWARETOLERANCE(kind, volume, glass_class, standard) {
	return Labrow.callFunction_('GLASSWARETOLERANCE', [kind, volume, glass_class, standard]);
}

/**
 * Standard uncertainty of a concentration made by weighing and filling up to a mark.
 *
 * @param {string} formula formula of the solid, hydrate included
 * @param {number|string} grams mass of solid weighed (g)
 * @param {number|string} volume volume of the flask (mL)
 * @param {number|string} balance_tolerance ± of one reading of the balance (g)
 * @param {number|string} flask_tolerance ± of the flask (mL)
 * @param {number|string} purity_percent optional: purity of the solid by mass; 100 % if left out (%)
 * @param {number|string} purity_tolerance optional: ± of the purity in percentage points; 0 if left out
 * @return standard uncertainty in mol/L, not rounded
 * @customfunction
 */
function MOLARITYUNCERTAINTY(formula, grams, volume, balance_tolerance, flask_tolerance, purity_percent, purity_tolerance) {
	return Labrow.callFunction_('MOLARITYUNCERTAINTY', [formula, grams, volume, balance_tolerance, flask_tolerance, purity_percent, purity_tolerance]);
}

/**
 * Checks an entry against a target.
 *
 * @param {number|string} entry what was typed, with or without a unit
 * @param {number|string} target the right value, with or without a unit
 * @param {number|string} tolerance_percent optional: how far off may count as on target, in percent; honest rounding decides if left out
 * @param {number|string} figures optional: significant figures asked for, 1 to 15; 3 if left out
 * @return a row: status, feedback
 * @customfunction
 */
function CHECKENTRY(entry, target, tolerance_percent, figures) {
	return Labrow.callFunction_('CHECKENTRY', [entry, target, tolerance_percent, figures]);
}

/**
 * Checks the entry of a step and, where it is not right, names the likely slip.
 *
 * @param {string} quantity what is asked for, such as mass of solute
 * @param {range} given given numbers in two columns, name and value
 * @param {number|string} entry what was typed, with or without a unit
 * @param {number|string} figures optional: significant figures asked for; the usual number for the quantity if left out
 * @param {number|string} atomic_weight_decimals optional: decimals that atomic weights may be rounded to; 2 if left out
 * @return a row: status, feedback, slip
 * @customfunction
 */
function CHECKSTEP(quantity, given, entry, figures, atomic_weight_decimals) {
	return Labrow.callFunction_('CHECKSTEP', [quantity, given, entry, figures, atomic_weight_decimals]);
}

/**
 * Checks a team's whole block of entries, and gives the hints it asks for.
 *
 * @param {range} given_names names of the given numbers
 * @param {range} given_values this team's values, below or beside those names
 * @param {range} settings settings in two columns, name and value
 * @param {range} steps step ids, from the heading row to the closing row
 * @param {range} entries the team's entries, of the same height
 * @param {range} help_wanted optional: help wanted in each row, 0 to 3, of the same height
 * @param {range} own_hints optional: the teacher's own hints and links, as the Help sheet has them
 * @return three columns of text as high as the steps: check, feedback, hint
 * @customfunction
 */
function CHECKTEAM(given_names, given_values, settings, steps, entries, help_wanted, own_hints) {
	return Labrow.callFunction_('CHECKTEAM', [given_names, given_values, settings, steps, entries, help_wanted, own_hints]);
}

/**
 * A hint for a step, at one of three levels, without the answer.
 *
 * @param {string} quantity what is asked for, such as mass of solute
 * @param {range} given given numbers in two columns, name and value
 * @param {number|string} level 1 the idea, 2 the relation, 3 the set-up with these numbers
 * @return text
 * @customfunction
 */
function HINTSTEP(quantity, given, level) {
	return Labrow.callFunction_('HINTSTEP', [quantity, given, level]);
}

/**
 * Hazards of a substance or its solution, and what to do about them.
 *
 * @param {string} formula formula of the substance as it stands in the bottle, or its name, such as glucose
 * @param {number|string} mass_percent optional: grams of the substance in 100 g of a solution in water; as it is sold if left out (%)
 * @return a table with a heading row; its last line defers to the safety data sheet and local rules
 * @customfunction
 */
function CAUTIONS(formula, mass_percent) {
	return Labrow.callFunction_('CAUTIONS', [formula, mass_percent]);
}

// Triggers and menu items; last of all what the sidebar calls.
/** Adds the menu when the file is opened. */
function onOpen(event) {
	return Labrow.part_("onOpen").onOpen_(event);
}

/** Adds the menu when the add-on is installed. */
function onInstall(event) {
	return Labrow.part_("onOpen").onInstall_(event);
}

/** Counts tries in the row that was edited. */
function onEdit(event) {
	return Labrow.part_("onEdit").onEdit_(event);
}

/** Menu: opens the sidebar. */
function openSidebar() {
	return Labrow.part_("desk").openSidebar_();
}

/** Menu: builds an invented class to try. */
function buildSampleFromMenu() {
	return Labrow.part_("desk").buildSampleFromMenu_();
}

/** Menu: enters again the checks that did not finish. */
function checkAgainFromMenu() {
	return Labrow.part_("desk").checkAgainFromMenu_();
}

/** Menu: tries out what this file lets the script do. */
function selfCheckFromMenu() {
	return Labrow.part_("desk").selfCheckFromMenu_();
}

function readBook(...request) {
	return Labrow.part_("desk").endpoints_.readBook(...request);
}

function applySheet(...request) {
	return Labrow.part_("desk").endpoints_.applySheet(...request);
}

function writeCells(...request) {
	return Labrow.part_("desk").endpoints_.writeCells(...request);
}

function putAside(...request) {
	return Labrow.part_("desk").endpoints_.putAside(...request);
}

function emptyFile(...request) {
	return Labrow.part_("desk").endpoints_.emptyFile(...request);
}

function show(...request) {
	return Labrow.part_("desk").endpoints_.show(...request);
}

function openPage(...request) {
	return Labrow.part_("desk").endpoints_.openPage(...request);
}

function checkAgain(...request) {
	return Labrow.part_("desk").endpoints_.checkAgain(...request);
}

function tryHost(...request) {
	return Labrow.part_("desk").endpoints_.tryHost(...request);
}
