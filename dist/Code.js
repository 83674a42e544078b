// Labrow. Built by “npm run build” from src/; change the sources, not this file. MIT licence.
"use strict";

var Labrow = (() => {
  // What is in backticks is source in readable form, compiled when it is first used: the host loads this file at every
  // call of a cell function, and a call needs few of the parts. What others build on comes first.
  const sources = {
// Part base: errors/result, measurement/finite, measurement/quantity, chemistry/elementTable.generated, chemistry/elements, chemistry/molarMass and 48 more
"base"() {
  return `
// src/errors/result.ts
var success = (value) => ({ ok: true, value });
var failure = (error) => ({ ok: false, error });

// src/measurement/finite.ts
function finite(value, argument) {
  if (Number.isFinite(value)) return success(value);
  return failure({
    code: "result-not-finite",
    argument,
    expected: "numbers whose result can be written",
    received: "numbers that lead beyond every number",
    advice: "Look at their powers of ten and their units."
  });
}

// src/measurement/quantity.ts
var grams = (value) => value;
var gramsPerMole = (value) => value;
var gramsPerMillilitre = (value) => value;
var millilitres = (value) => value;
var moles = (value) => value;
var molesPerLitre = (value) => value;
var percent = (value) => value;

// src/chemistry/elementTable.generated.ts
var elementTable = \`
H hydrogen 1.0080
He helium 4.002602
Li lithium 6.94
Be beryllium 9.0121831
B boron 10.81
C carbon 12.011
N nitrogen 14.007
O oxygen 15.999
F fluorine 18.998403162
Ne neon 20.1797
Na sodium 22.98976928
Mg magnesium 24.305
Al aluminium 26.9815384
Si silicon 28.085
P phosphorus 30.973761998
S sulfur 32.06
Cl chlorine 35.45
Ar argon 39.95
K potassium 39.0983
Ca calcium 40.078
Sc scandium 44.955907
Ti titanium 47.867
V vanadium 50.9415
Cr chromium 51.9961
Mn manganese 54.938043
Fe iron 55.845
Co cobalt 58.933194
Ni nickel 58.6934
Cu copper 63.546
Zn zinc 65.38
Ga gallium 69.723
Ge germanium 72.630
As arsenic 74.921595
Se selenium 78.971
Br bromine 79.904
Kr krypton 83.798
Rb rubidium 85.4678
Sr strontium 87.62
Y yttrium 88.905838
Zr zirconium 91.222
Nb niobium 92.90637
Mo molybdenum 95.95
Tc technetium ~97
Ru ruthenium 101.07
Rh rhodium 102.90549
Pd palladium 106.42
Ag silver 107.8682
Cd cadmium 112.414
In indium 114.818
Sn tin 118.710
Sb antimony 121.760
Te tellurium 127.60
I iodine 126.90447
Xe xenon 131.293
Cs caesium 132.90545196
Ba barium 137.327
La lanthanum 138.90547
Ce cerium 140.116
Pr praseodymium 140.90766
Nd neodymium 144.242
Pm promethium ~145
Sm samarium 150.36
Eu europium 151.964
Gd gadolinium 157.249
Tb terbium 158.925354
Dy dysprosium 162.500
Ho holmium 164.930329
Er erbium 167.259
Tm thulium 168.934219
Yb ytterbium 173.045
Lu lutetium 174.96669
Hf hafnium 178.486
Ta tantalum 180.94788
W tungsten 183.84
Re rhenium 186.207
Os osmium 190.23
Ir iridium 192.217
Pt platinum 195.084
Au gold 196.966570
Hg mercury 200.592
Tl thallium 204.38
Pb lead 207.2
Bi bismuth 208.98040
Po polonium ~209
At astatine ~210
Rn radon ~222
Fr francium ~223
Ra radium ~226
Ac actinium ~227
Th thorium 232.0377
Pa protactinium 231.03588
U uranium 238.02891
Np neptunium ~237
Pu plutonium ~244
Am americium ~243
Cm curium ~247
Bk berkelium ~247
Cf californium ~251
Es einsteinium ~252
Fm fermium ~257
Md mendelevium ~258
No nobelium ~259
Lr lawrencium ~262
Rf rutherfordium ~267
Db dubnium ~268
Sg seaborgium ~269
Bh bohrium ~270
Hs hassium ~269
Mt meitnerium ~277
Ds darmstadtium ~281
Rg roentgenium ~282
Cn copernicium ~285
Nh nihonium ~286
Fl flerovium ~290
Mc moscovium ~290
Lv livermorium ~293
Ts tennessine ~294
Og oganesson ~294
\`;

// src/chemistry/elements.ts
var bySymbol;
function elements() {
  bySymbol != null ? bySymbol : bySymbol = new Map(
    elementTable.trim().split("\\n").map((line, index) => {
      const [symbol, name, weight] = line.split(" ");
      const isStable = !weight.startsWith("~");
      const element = {
        symbol,
        name,
        atomicNumber: index + 1,
        weight: isStable ? Number(weight) : void 0,
        longestLived: isStable ? void 0 : Number(weight.slice(1))
      };
      return [symbol, element];
    })
  );
  return bySymbol;
}
var isotopeMasses = /* @__PURE__ */ new Map([
  ["[2H]", 2.014101777844],
  ["[3H]", 3.01604928132],
  ["[13C]", 13.003354835336]
]);
var isotopeShape = /^\\[(\\d+)([A-Z][a-z]?)\\]$/;
var elementOf = (label) => {
  var _a, _b;
  return (_b = (_a = isotopeShape.exec(label)) == null ? void 0 : _a[2]) != null ? _b : label;
};
function relativeMass(label) {
  var _a, _b;
  const isotope = isotopeShape.exec(label);
  if (!isotope) return (_a = elements().get(label)) == null ? void 0 : _a.weight;
  return (_b = isotopeMasses.get(label)) != null ? _b : Number(isotope[1]);
}

// src/chemistry/molarMass.ts
function atomicMass(label) {
  const mass = relativeMass(label);
  if (mass !== void 0) return success(mass);
  const element = elements().get(label);
  return failure({
    code: "atomic-weight-none",
    argument: "formula",
    expected: "elements with a standard atomic weight",
    received: \`\${label} (\${element == null ? void 0 : element.name}), which has no stable isotope and so no usual mixture in nature\`,
    advice: \`Name the isotope you mean; the longest-lived is [\${element == null ? void 0 : element.longestLived}\${label}].\`,
    brief: label
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

// src/chemistry/composition.ts
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

// src/errors/quoted.ts
var shownWhole = 60;
var shownAtStart = 40;
var shownAtEnd = 15;
function shortened(text) {
  const characters = Array.from(text);
  if (characters.length <= shownWhole) return text;
  return \`\${characters.slice(0, shownAtStart).join("")} … \${characters.slice(-shownAtEnd).join("")}\`;
}
function quoted(cell) {
  if (typeof cell === "string") return cell.trim() === "" ? "a blank cell" : \`“\${shortened(cell)}”\`;
  if (cell === void 0 || cell === null) return "a blank cell";
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  if (typeof cell === "number") return String(cell);
  if (Object.prototype.toString.call(cell) === "[object Date]") {
    const time = cell.getTime();
    return Number.isFinite(time) ? \`the date \${new Date(time).toISOString().slice(0, 10)}\` : "a date";
  }
  return "something that is neither text nor a number";
}

// src/measurement/aboveZero.ts
var shown = ({ value, unit }) => unit === "" ? quoted(value) : \`\${quoted(value)} \${unit}\`;
function notAboveZero(...numbers) {
  const found = numbers.find(({ value }) => !(value > 0 && Number.isFinite(value)));
  if (found === void 0) return void 0;
  return {
    code: "not-above-zero",
    argument: found.argument,
    expected: found.unit === "" ? "a number above 0" : \`more than 0 \${found.unit}\`,
    received: shown(found),
    advice: "Look at the sign, and at the cell it comes from."
  };
}
function belowZero(...numbers) {
  const found = numbers.find(({ value }) => !(value >= 0 && Number.isFinite(value)));
  if (found === void 0) return void 0;
  return {
    code: "below-zero",
    argument: found.argument,
    expected: found.unit === "" ? "0 or more" : \`0 \${found.unit} or more\`,
    received: shown(found),
    advice: "Look at the sign, and at the cell it comes from."
  };
}

// src/chemistry/density.ts
function density({
  mass,
  volume
}) {
  const error = notAboveZero(
    { value: mass, argument: "mass", unit: "g" },
    { value: volume, argument: "volume", unit: "mL" }
  );
  return error ? failure(error) : finite(gramsPerMillilitre(mass / volume), "mass");
}

// src/chemistry/dilution.ts
function dilutionError({ stock, target }) {
  const error = notAboveZero(
    { value: stock, argument: "stock_molarity", unit: "mol/L" },
    { value: target, argument: "target_molarity", unit: "mol/L" }
  );
  if (error || target < stock) return error;
  return {
    code: "target-not-below-stock",
    argument: "target_molarity",
    expected: \`less than the stock, \${quoted(stock)} mol/L\`,
    received: \`\${quoted(target)} mol/L\`,
    advice: "Use a stronger stock, or swap the two cells."
  };
}

// src/chemistry/stockVolume.ts
function stockVolume({ stock, target, finalVolume }) {
  var _a;
  const error = (_a = dilutionError({ stock, target })) != null ? _a : notAboveZero({ value: finalVolume, argument: "target_volume", unit: "mL" });
  if (error) return failure(error);
  return finite(millilitres(target * finalVolume / stock), "target_volume");
}

// src/chemistry/diluentVolume.ts
function diluentVolume(dilution) {
  const stock = stockVolume(dilution);
  return stock.ok ? success(millilitres(dilution.finalVolume - stock.value)) : stock;
}

// src/chemistry/portionError.ts
function portionError({
  stockVolume: stockVolume2,
  finalVolume
}) {
  if (stockVolume2 <= finalVolume) return void 0;
  return {
    code: "final-below-stock-volume",
    argument: "final_volume",
    expected: \`at least the stock taken, \${quoted(stockVolume2)} mL\`,
    received: \`\${quoted(finalVolume)} mL\`,
    advice: "Filling up only adds volume: swap the two cells, or look at their units."
  };
}

// src/chemistry/dilutedMolarity.ts
function dilutedMolarity({ stock, stockVolume: stockVolume2, finalVolume }) {
  var _a;
  const error = (_a = notAboveZero(
    { value: stock, argument: "stock_molarity", unit: "mol/L" },
    { value: stockVolume2, argument: "stock_volume", unit: "mL" },
    { value: finalVolume, argument: "final_volume", unit: "mL" }
  )) != null ? _a : portionError({ stockVolume: stockVolume2, finalVolume });
  if (error) return failure(error);
  return finite(molesPerLitre(stock * stockVolume2 / finalVolume), "stock_molarity");
}

// src/chemistry/dilutionFactor.ts
function dilutionFactor({ stock, target }) {
  const error = dilutionError({ stock, target });
  return error ? failure(error) : finite(stock / target, "stock_molarity");
}

// src/chemistry/formula.ts
var partsAtoms = (parts, times2, counts) => {
  var _a;
  for (const part of parts) {
    if (part.kind === "group") partsAtoms(part.parts, times2 * part.count, counts);
    else counts.set(part.element, ((_a = counts.get(part.element)) != null ? _a : 0) + times2 * part.count);
  }
};
function atomsOfUnits(units) {
  const counts = /* @__PURE__ */ new Map();
  for (const { coefficient, parts } of units) partsAtoms(parts, coefficient, counts);
  return [...counts].map(([element, count]) => ({ element, count }));
}
var isWater = ({ parts }) => {
  const atoms = atomsOfUnits([{ coefficient: 1, parts }]);
  const count = (symbol) => {
    var _a;
    return (_a = atoms.find(({ element }) => element === symbol)) == null ? void 0 : _a.count;
  };
  return atoms.length === 2 && count("H") === 2 && count("O") === 1;
};
function assembled({ text, units, charge }) {
  const water = units.slice(1).filter(isWater);
  const waters = water.reduce((sum, { coefficient }) => sum + coefficient, 0);
  return { text, units, charge, atoms: atomsOfUnits(units), hydrate: waters > 0 ? { count: waters } : void 0 };
}
var anhydrousAtoms = ({ units }) => atomsOfUnits(units.filter((unit, index) => index === 0 || !isWater(unit)));

// src/chemistry/likelySpellings.ts
var lettersMax = 24;
var offersMax = 2;
var schoolElements = new Set(
  "H Li Be B C N O F Na Mg Al Si P S Cl K Ca Cr Mn Fe Co Ni Cu Zn Br Ag Cd Sn I Ba Pt Au Hg Pb Bi Sr".split(" ")
);
function likelySpellings(text) {
  var _a;
  if (text.replace(/[^A-Za-z]/g, "").length > lettersMax) return [];
  const from = [];
  from[text.length] = [""];
  for (let place = text.length - 1; place >= 0; place -= 1) {
    const letter = text.charAt(place);
    const found = [];
    const add = (written) => {
      var _a2;
      for (const rest of (_a2 = from[place + written.length]) != null ? _a2 : []) found.push(written + rest);
    };
    if (!/[A-Za-z]/.test(letter)) add(letter);
    else {
      const one = letter.toUpperCase();
      const two = one + text.charAt(place + 1).toLowerCase();
      for (const symbol of /* @__PURE__ */ new Set([two, one])) if (schoolElements.has(symbol)) add(symbol);
    }
    from[place] = found.slice(0, offersMax + 1);
  }
  const spellings = ((_a = from[0]) != null ? _a : []).filter((spelling) => spelling !== text);
  return spellings.length > offersMax ? [] : spellings;
}

// src/chemistry/listedIons.ts
var cationList = "H+ Li+ Na+ K+ Rb+ Cs+ Ag+ Cu+ NH4+ Be^2+ Mg^2+ Ca^2+ Sr^2+ Ba^2+ Zn^2+ Cd^2+ Fe^2+ Fe^3+ Co^2+ Co^3+ Ni^2+ Cu^2+ Mn^2+ Cr^2+ Cr^3+ Al^3+ Ga^3+ Sc^3+ Bi^3+ La^3+ Ce^3+ Ce^4+ Sn^2+ Sn^4+ Pb^2+ Hg^2+ Pd^2+ Pt^2+ Au^3+ V^2+ V^3+ Ti^3+ Th^4+ H3O+";
var anionList = "F- Cl- Br- I- OH- NO3- NO2- ClO- ClO2- ClO3- ClO4- BrO- BrO3- IO3- IO4- MnO4- CN- SCN- HCO3- HSO4- HSO3- HS- H2PO4- CH3COO- HCOO- HC8H4O4- HC2O4- S2O3^2- SO4^2- SO3^2- S^2- CO3^2- CrO4^2- Cr2O7^2- MnO4^2- HPO4^2- C2O4^2- S2O8^2- S4O6^2- SiO3^2- B4O7^2- O^2- O2^2- PO4^3- PO3^3- AsO4^3- BO3^3- C6H5O7^3- Fe(CN)6^3- Fe(CN)6^4- N3- HO2- C6H5COO- C4H4O6^2- HC4H4O6- C2H5COO- BF4- MoO4^2- WO4^2- VO3- SeO4^2- SeO3^2- B(OH)4- Al(OH)4-";
var read = (list) => list.split(" ").map((written) => {
  const [, body, digits, sign] = /^(.*?)(?:\\^(\\d))?([+-])$/.exec(written);
  return { body, charge: Number(digits != null ? digits : 1) * (sign === "-" ? -1 : 1) };
});
var cations;
var anions;
var listedCations = () => cations != null ? cations : cations = read(cationList);
var listedAnions = () => anions != null ? anions : anions = read(anionList);
var isListedIon = ({ body, charge }) => [...listedCations(), ...listedAnions()].some((ion) => ion.charge === charge && sameBody(ion.body, body));
var sameBody = (one, other) => one === other.replace(/^\\[(.*)\\]$/, "$1");

// src/chemistry/straightLine.ts
function notALine({
  lighterPercent,
  lighterDensity,
  heavierPercent,
  heavierDensity
}) {
  const error = notAboveZero(
    { value: lighterDensity, argument: "lighter_density", unit: "g/mL" },
    { value: heavierDensity, argument: "heavier_density", unit: "g/mL" }
  );
  if (error) return error;
  for (const [value, argument] of [
    [lighterPercent, "lighter_percent"],
    [heavierPercent, "heavier_percent"]
  ]) {
    if (!(value >= 0 && value <= 100)) {
      return {
        code: "percent-of-line",
        argument,
        expected: "from 0 % to 100 %",
        received: \`\${quoted(value)} %\`,
        advice: "Copy it once more from the table of densities."
      };
    }
  }
  if (lighterDensity !== heavierDensity && lighterPercent !== heavierPercent) return void 0;
  const isDensity = lighterDensity === heavierDensity;
  return {
    code: "lines-alike",
    argument: isDensity ? "heavier_density" : "heavier_percent",
    expected: "another value than that of the lighter line",
    received: isDensity ? \`\${quoted(heavierDensity)} g/mL\` : \`\${quoted(heavierPercent)} %\`,
    advice: "Take two different lines of the table."
  };
}

// src/chemistry/massPercentOfDensity.ts
function massPercentOfDensity({
  density: density2,
  ...line
}) {
  var _a;
  const error = (_a = notALine(line)) != null ? _a : notAboveZero({ value: density2, argument: "density", unit: "g/mL" });
  if (error) return failure(error);
  const { lighterPercent, lighterDensity, heavierPercent, heavierDensity } = line;
  const share = (density2 - lighterDensity) / (heavierDensity - lighterDensity);
  const found = lighterPercent + share * (heavierPercent - lighterPercent);
  if (found >= 0 && found <= 100) return success(percent(found));
  return failure({
    code: "percent-beyond-line",
    argument: "density",
    expected: "a density near those of the two lines",
    received: \`\${quoted(density2)} g/mL\`,
    advice: "On their straight line that would be less than nothing or more than the whole: look at the mass and the volume."
  });
}

// src/measurement/cellValue.ts
var isBlank = (value) => value === void 0 || value === null || typeof value === "string" && value.trim() === "";

// src/chemistry/splitCharge.ts
var signOf = (mark) => /[+＋⁺]/.test(mark) ? 1 : -1;
var size = (digits = "") => Number(digits.normalize("NFKC") || 1);
var tailLength = 14;
var clearShapes = [
  { shape: /\\^\\s*[({]?\\s*(\\d{0,2})\\s*([+＋−–-])\\s*[)}]?$/, size: 1, sign: 2 },
  { shape: /\\^\\s*[({]?\\s*([+＋−–-])\\s*(\\d{1,2})\\s*[)}]?$/, size: 2, sign: 1 },
  { shape: /\\((\\d{0,2})([+＋−–-])\\)$/, size: 1, sign: 2 },
  { shape: /\\(([+＋−–-])(\\d{1,2})\\)$/, size: 2, sign: 1 },
  { shape: /([⁰¹²³⁴⁵⁶⁷⁸⁹]{0,2})([⁺⁻])$/, size: 1, sign: 2 },
  { shape: /([⁺⁻])([¹²³⁴⁵⁶⁷⁸⁹]{1,2})$/, size: 2, sign: 1 },
  { shape: /(?<=[₀-₉\\s])(\\d)([+＋−–-])$/, size: 1, sign: 2 },
  { shape: /([+＋−–-])(\\d{1,2})$/, size: 2, sign: 1 }
];
function splitCharge(text) {
  var _a;
  const tail = text.slice(-tailLength);
  const before = (end) => text.slice(0, text.length - end.length);
  for (const { shape, size: sizeAt, sign: signAt } of clearShapes) {
    const match = shape.exec(tail);
    if (match) {
      return [{ base: before(match[0]).trimEnd(), charge: size(match[sizeAt]) * signOf((_a = match[signAt]) != null ? _a : "") }];
    }
  }
  const bare = /(\\d*)([+＋]+|[−–-]+)$/.exec(tail);
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
      if (isListedIon({ body: reading2.base.replace(/\\s/g, ""), charge: reading2.charge })) return [reading2];
    }
  }
  return [asCharge, asSubscript];
}
var chargeText = ({ base, charge }) => {
  const digits = Math.abs(charge) === 1 ? "" : String(Math.abs(charge));
  return \`\${base}^\${digits}\${charge < 0 ? "-" : "+"}\`;
};

// src/chemistry/readFormula.ts
var formulaLengthMax = 250;
var depthMax = 20;
var numberMax = 99999;
var opening = "([{";
var closing = ")]}";
var separators = "·•*.∙⋅‧・";
var digit = /[0-9₀-₉]/;
var raisedDigit = /[⁰¹²³⁴⁵⁶⁷⁸⁹]/;
var heavyHydrogen = { D: "[2H]", T: "[3H]" };
var capitalsExpected = "a formula with capital letters where symbols begin";
var fractions = { "½": 0.5, "¼": 0.25, "¾": 0.75 };
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
    /** Where the unit began, and whether a plain point between digits began it. */
    this.unitAt = 0;
    this.afterPoint = false;
    this.text = text;
    this.end = end;
    this.argument = argument;
  }
  read() {
    if (/^\\d/.test(this.text)) this.stopAtCoefficient();
    while (this.place < this.end) this.readOne();
    const unclosed = this.open[this.open.length - 1];
    if (unclosed) {
      const wanted2 = closing.charAt(opening.indexOf(unclosed.mark));
      this.stop({
        code: "bracket-not-closed",
        at: unclosed.at,
        expected: \`“\${wanted2}” to close the bracket at \${this.where(unclosed.at)}\`,
        received: "the end of the text",
        advice: "Add the bracket, as in Ca(OH)2.",
        brief: \`“\${wanted2}” missing\`
      });
    }
    this.closeUnit();
    return this.units;
  }
  stop(error) {
    throw new Stop({ ...error, argument: this.argument, at: { text: this.text, from: error.at } });
  }
  /** A place in words, with the text around it. */
  where(at) {
    const around = this.text.length <= 30 ? this.text : \`\${at > 10 ? "…" : ""}\${this.text.slice(Math.max(0, at - 10), at + 14)}\${at + 14 < this.text.length ? "…" : ""}\`;
    return \`character \${at + 1} of “\${around}”\`;
  }
  stopAtCoefficient() {
    return this.stop({
      code: "coefficient-before-formula",
      at: 0,
      expected: "a formula without a number before it",
      received: quoted(this.text),
      advice: "A number in front counts formula units in an equation, not atoms in one unit: leave it out."
    });
  }
  readOne() {
    const mark = this.text.charAt(this.place);
    if (/\\s/.test(mark)) this.place += 1;
    else if (/[A-Z]/.test(mark)) this.readSymbol(void 0, this.place);
    else if (mark === "[" && /\\d/.test(this.text.charAt(this.place + 1))) this.readIsotopeInBrackets();
    else if (raisedDigit.test(mark)) this.readRaisedNumber();
    else if (opening.includes(mark)) this.openBracket(mark);
    else if (closing.includes(mark)) this.closeBracket(mark);
    else if (separators.includes(mark)) this.separate(mark);
    else if (digit.test(mark)) this.stopAtNumber(this.place);
    else if (/[a-z]/.test(mark)) this.stopAtCase(this.place);
    else {
      const [character = mark] = this.text.slice(this.place);
      this.stop({
        code: "formula-character",
        at: this.place,
        expected: \`symbols, numbers and brackets at \${this.where(this.place)}\`,
        received: quoted(character),
        advice: "Type a formula such as KBr or CuSO4·5H2O."
      });
    }
  }
  /** The digits from here on, as plain ones. */
  digitsHere(shape) {
    const from = this.place;
    while (this.place < this.end && shape.test(this.text.charAt(this.place))) this.place += 1;
    return this.text.slice(from, this.place).normalize("NFKC");
  }
  /** A whole number that counts, from 1. */
  countFrom(written, at) {
    if (written.startsWith("0")) {
      this.stop({
        code: "subscript-zero",
        at,
        expected: \`a whole number from 1 at \${this.where(at)}\`,
        received: quoted(written),
        advice: "Leave out what is not there; did you mean the letter O?"
      });
    }
    if (written.length > String(numberMax).length) {
      this.stop({
        code: "subscript-too-large",
        at,
        expected: \`a number up to \${numberMax} at \${this.where(at)}\`,
        received: quoted(written),
        advice: "Check the number of atoms."
      });
    }
    return Number(written);
  }
  passSpaces() {
    while (/\\s/.test(this.text.charAt(this.place))) this.place += 1;
  }
  /** The number after a symbol or a bracket; 1 where none is written. */
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
          code: "isotope-shape",
          at,
          expected: \`one isotope in its own brackets at \${this.where(at)}\`,
          received: quoted(this.text.slice(at, at + 12)),
          advice: "Write the isotope alone in the brackets, as in [13C]H4."
        });
      }
      this.place += 1;
    }
    this.parts.push({ kind: "element", element: label, count: this.countAfter() });
  }
  plainLabel(symbol) {
    var _a, _b;
    const label = (_b = heavyHydrogen[symbol]) != null ? _b : (_a = elements().get(symbol)) == null ? void 0 : _a.symbol;
    return label != null ? label : this.stopAtSymbol(symbol);
  }
  isotope(symbol, massNumber, at) {
    var _a;
    const { atomicNumber } = (_a = elements().get(symbol)) != null ? _a : this.stopAtSymbol(symbol);
    const mass = Number(massNumber);
    if (mass < atomicNumber || mass > 3 * atomicNumber + 4) {
      this.stop({
        code: "isotope-unlikely",
        at,
        expected: \`a mass number that \${symbol} can have at \${this.where(at)}\`,
        received: quoted(\`\${massNumber}\${symbol}\`),
        advice: \`It counts protons and neutrons, and \${symbol} has \${atomicNumber} protons. For a number of atoms write it after the symbol.\`
      });
    }
    return \`[\${mass}\${symbol}]\`;
  }
  readIsotopeInBrackets() {
    const at = this.place;
    this.place += 1;
    const massNumber = this.digitsHere(digit);
    if (!/[A-Z]/.test(this.text.charAt(this.place))) {
      this.stop({
        code: "isotope-shape",
        at,
        expected: \`an isotope such as [13C] at \${this.where(at)}\`,
        received: quoted(this.text.slice(at, at + 12)),
        advice: "Write the mass number and then the symbol between the brackets."
      });
    }
    this.readSymbol(massNumber, at);
  }
  /** Raised digits before a symbol are a mass number; after one they are a number of atoms typed the wrong way up. */
  readRaisedNumber() {
    const at = this.place;
    const written = this.digitsHere(raisedDigit);
    if (/[A-Z]/.test(this.text.charAt(this.place))) this.readSymbol(written, at);
    else this.countLast(this.countFrom(written, at), at);
  }
  countLast(count, at) {
    const last = this.parts.pop();
    if ((last == null ? void 0 : last.count) !== 1) this.stopAtNumber(at);
    this.parts.push({ ...last, count });
  }
  stopAtNumber(at) {
    return this.stop({
      code: "number-out-of-place",
      at,
      expected: \`a symbol or a bracket before the number at \${this.where(at)}\`,
      received: quoted(this.text.slice(at, at + 6)),
      advice: "Write each number after what it counts, as in H2O."
    });
  }
  openBracket(mark) {
    if (this.open.length >= depthMax) {
      this.stop({
        code: "formula-too-deep",
        at: this.place,
        expected: \`brackets at most \${depthMax} deep\`,
        received: \`more at \${this.where(this.place)}\`,
        advice: "Write the formula with fewer brackets."
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
        code: "bracket-not-opened",
        at,
        expected: bracket ? \`“\${wanted2}” at \${this.where(at)}\` : \`a bracket that was opened before \${this.where(at)}\`,
        received: \`“\${mark}”\`,
        advice: bracket ? "Close each bracket with its own kind." : \`Add “\${opening.charAt(closing.indexOf(mark))}” where the group begins, or leave “\${mark}” out.\`,
        brief: \`“\${mark}”\`
      });
    }
    if (this.parts.length === 0) {
      this.stop({
        code: "bracket-empty",
        at,
        expected: \`symbols between the brackets at \${this.where(bracket.at)}\`,
        received: "nothing between them",
        advice: "Fill the brackets or leave them out."
      });
    }
    const inside = this.parts;
    this.stopAtOxidationNumber(bracket.at);
    this.place += 1;
    this.parts = bracket.parts;
    this.parts.push({ kind: "group", parts: inside, count: this.countAfter() });
  }
  /** \`(III)\` would count as three atoms of iodine, and \`(VI)\` as vanadium iodide. */
  stopAtOxidationNumber(at) {
    const inside = this.text.slice(at + 1, this.place);
    if (at === 0 || !/^(I{1,3}|I?V|VI{1,3})$/.test(inside) || digit.test(this.text.charAt(this.place + 1))) return;
    this.stop({
      code: "formula-character",
      at,
      expected: \`symbols, numbers and brackets at \${this.where(at)}\`,
      received: \`the oxidation number \${quoted(\`(\${inside})\`)}\`,
      advice: "Leave it out: the numbers of atoms say it, as in FeCl3."
    });
  }
  separate(mark) {
    const at = this.place;
    const bracket = this.open[this.open.length - 1];
    if (bracket) {
      this.stop({
        code: "separator-in-bracket",
        at,
        expected: \`the bracket at \${this.where(bracket.at)} to be closed before “\${mark}”\`,
        received: quoted(this.text),
        advice: "Close it first, as in Ca(NO3)2·4H2O."
      });
    }
    this.closeUnit();
    this.place += 1;
    this.passSpaces();
    this.unitAt = this.place;
    this.afterPoint = mark === "." && digit.test(this.text.charAt(at - 1));
    this.coefficient = this.coefficientHere();
  }
  /** The one number after a separator; it may be decimal or a fraction. */
  coefficientHere() {
    var _a;
    const written = /^((?:\\d{1,6}(?:[.,]\\d{1,6})?)?)\\s?([½¼¾]?)/.exec(this.text.slice(this.place, this.end));
    const [whole = "", number = "", fraction = ""] = written != null ? written : [];
    if (whole === "") return 1;
    const at = this.place;
    this.place += whole.length;
    const value = Number(number.replace(",", ".")) + ((_a = fractions[fraction]) != null ? _a : 0);
    if (value > 0 && value <= numberMax && !digit.test(this.text.charAt(this.place))) return value;
    return this.stop({
      code: "coefficient-out-of-range",
      at,
      expected: \`a number over 0 and up to \${numberMax} at \${this.where(at)}\`,
      received: quoted(this.text.slice(at, at + 12)),
      advice: "Write how many of them one formula unit holds, as in CuSO4·5H2O."
    });
  }
  closeUnit() {
    if (this.end === 0) {
      this.stop({
        code: "formula-part-missing",
        at: 0,
        expected: "a formula before its charge",
        received: quoted(this.text),
        advice: "Write what carries the charge, as in SO4^2-."
      });
    }
    if (this.parts.length === 0) {
      this.stop({
        code: "formula-part-missing",
        at: Math.min(this.place, this.end - 1),
        expected: \`a formula on both sides of the dot in “\${this.shown()}”\`,
        received: "nothing on one side",
        advice: "Write what is joined by the dot, as in CuSO4·5H2O."
      });
    }
    const unit = { coefficient: this.coefficient, parts: this.parts };
    if (this.afterPoint && atomsOfUnits([unit]).length === 1) {
      this.stop({
        code: "subscript-not-whole",
        at: this.unitAt - 1,
        expected: \`whole numbers after symbols at \${this.where(this.unitAt - 1)}\`,
        received: quoted(this.text),
        advice: "Atoms are counted in whole numbers; only water of hydration may have 0.5 before it."
      });
    }
    this.units.push(unit);
    this.parts = [];
  }
  shown() {
    return this.text.length > 40 ? \`\${this.text.slice(0, 39)}…\` : this.text;
  }
  /** A small letter where a symbol should begin. */
  stopAtCase(at) {
    var _a;
    const [state] = (_a = /\\((s|l|g|aq)\\)$/.exec(this.text)) != null ? _a : [];
    if (state !== void 0) {
      this.stop({
        code: "formula-character",
        at: this.text.length - state.length,
        expected: "a formula without a state of matter",
        received: quoted(this.text),
        advice: \`Leave out \${state}.\`
      });
    }
    this.offerSpellings(at);
    return this.stop({
      code: "formula-case",
      at,
      expected: capitalsExpected,
      received: quoted(this.text),
      advice: \`Look at \${this.where(at)}: write a symbol as in NaCl.\`,
      brief: "formula: capital letters"
    });
  }
  stopAtSymbol(symbol) {
    this.offerSpellings(this.place);
    const shown2 = symbol.length > 12 ? \`\${symbol.slice(0, 11)}…\` : symbol;
    return this.stop({
      code: "element-unknown",
      at: this.place,
      expected: \`the symbol of an element at \${this.where(this.place)}\`,
      received: quoted(shown2),
      advice: "Check the spelling on the periodic table.",
      brief: shown2
    });
  }
  /** Stops with what was probably meant, where only the case of letters is wrong. */
  offerSpellings(at) {
    const meant = likelySpellings(this.text);
    if (meant.length === 0) return;
    const offer = meant.join(" or ");
    this.stop({
      code: "formula-case",
      at,
      expected: capitalsExpected,
      received: quoted(this.text),
      advice: \`Did you mean \${offer}?\`,
      brief: \`\${offer}?\`
    });
  }
};
function readFormula(cell, argument = "formula") {
  if (typeof cell !== "string" || isBlank(cell)) {
    return failure({
      code: "formula-expected",
      argument,
      expected: "a formula such as KBr",
      received: isBlank(cell) ? "nothing" : quoted(cell),
      advice: "Type the formula as text."
    });
  }
  const text = cell.trim();
  if (text.length > formulaLengthMax) {
    return failure({
      code: "formula-too-long",
      argument,
      expected: \`a formula of at most \${formulaLengthMax} characters\`,
      received: \`\${text.length} characters\`,
      advice: "Write repeated groups in brackets with a number, as in (CH2)10."
    });
  }
  const [reading2, other] = splitCharge(text);
  if (other) {
    const both = \`\${chargeText(reading2)} or \${chargeText(other)}\`;
    return failure({
      code: "charge-two-readings",
      argument,
      expected: \`one reading of \${argument}\`,
      received: \`\${quoted(text)}, which could be \${both}\`,
      advice: \`Write the charge after ^, as in \${chargeText(reading2)}.\`,
      brief: \`\${both}?\`,
      at: { text, from: text.length - 2 }
    });
  }
  try {
    const units = new FormulaReader(text, reading2.base.length, argument).read();
    return success(assembled({ text, units, charge: reading2.charge }));
  } catch (stopped) {
    if (stopped instanceof Stop) return failure(stopped.error);
    throw stopped;
  }
}

// src/chemistry/matchIon.ts
var sameAtoms = (one, other) => one.length === other.length && one.every(({ element, count }) => other.some((atom) => atom.element === element && atom.count === count));
function matchIon(text, present) {
  for (const { base, charge } of splitCharge(text.trim())) {
    const read2 = readFormula(base);
    const ion = read2.ok ? assembled({ ...read2.value, charge }) : void 0;
    const found = ion && present.find((one) => one.charge === charge && sameAtoms(one.atoms, ion.atoms));
    if (found) return success(found);
  }
  return failure({
    code: "ion-not-in-formula",
    argument: "ion",
    expected: \`one of \${present.map(({ ion }) => ion).join(", ")}\`,
    received: quoted(text),
    advice: "Type one of the ions that the substance gives, with its charge.",
    brief: present.map(({ ion }) => ion).join(" or ")
  });
}

// src/chemistry/purity.ts
function notAShare(value, argument) {
  if (value > 0 && value <= 100) return void 0;
  return {
    code: "purity-out-of-range",
    argument,
    expected: "more than 0 % and at most 100 %",
    received: \`\${quoted(value)} %\`,
    advice: "A part cannot be more than the whole: look at the label of the bottle."
  };
}
function pureShare(purity) {
  if (purity === void 0) return success(1);
  const error = notAShare(purity, "purity_percent");
  return error === void 0 ? success(purity / 100) : failure(error);
}

// src/chemistry/molarity.ts
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

// src/chemistry/reagentMolarity.ts
function reagentMolarity({ molarMass: molarMass2, massPercent, density: density2 }) {
  var _a;
  const error = (_a = notAShare(massPercent, "mass_percent")) != null ? _a : notAboveZero({ value: density2, argument: "density", unit: "g/mL" });
  if (error) return failure(error);
  return finite(molesPerLitre(10 * massPercent * density2 / molarMass2), "density");
}

// src/chemistry/soluteMass.ts
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

// src/errors/messages.ts
var messages = {
  // measurement
  "number-expected": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {argument}: number expected"
  },
  "number-two-readings": {
    full: "Expected one reading of {argument}, received {received}. {advice}",
    short: "⚠ {brief}?"
  },
  "number-out-of-range": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {argument}: power of ten"
  },
  "figures-out-of-range": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ figures: 1 to 30"
  },
  "accepted-zero": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ accepted is 0"
  },
  "mean-zero": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ mean is 0"
  },
  "quantity-expected": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {brief} expected"
  },
  "unit-other-kind": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {brief}"
  },
  "unit-unknown": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ unit: {brief}?"
  },
  "percent-two-readings": {
    full: "Expected one reading of {argument}, received {received}. {advice}",
    short: "⚠ {brief}?"
  },
  "not-above-zero": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {argument} not above 0"
  },
  "below-zero": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {argument} below 0"
  },
  "glassware-size": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ size: {brief}"
  },
  // chemistry: formulas and ions
  "formula-expected": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ formula expected"
  },
  "formula-too-long": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ formula too long"
  },
  "formula-too-deep": {
    full: "Expected {expected}, received {received}. {advice}",
    short: "⚠ formula: too many brackets"
  },
  "formula-case": {
    full: "Expected {expected}, received {received}. {advice}",
    short: "⚠ {brief}"
  },
  "formula-character": {
    full: "Expected {expected}, received {received}. {advice}",
    short: "⚠ formula: other character"
  },
  "formula-part-missing": {
    full: "Expected {expected}, received {received}. {advice}",
    short: "⚠ formula: part missing"
  },
  "element-unknown": {
    full: "Expected {expected}, received {received}. {advice}",
    short: "⚠ element {brief}?"
  },
  "bracket-not-closed": {
    full: "Expected {expected}, received {received}. {advice}",
    short: "⚠ formula: {brief}"
  },
  "bracket-not-opened": {
    full: "Expected {expected}, received {received}. {advice}",
    short: "⚠ formula: {brief} out of place"
  },
  "bracket-empty": {
    full: "Expected {expected}, received {received}. {advice}",
    short: "⚠ formula: empty brackets"
  },
  "separator-in-bracket": {
    full: "Expected {expected}, received {received}. {advice}",
    short: "⚠ formula: bracket still open"
  },
  "coefficient-before-formula": {
    full: "Expected {expected}, received {received}. {advice}",
    short: "⚠ formula: number in front"
  },
  "coefficient-out-of-range": {
    full: "Expected {expected}, received {received}. {advice}",
    short: "⚠ formula: number after the dot"
  },
  "number-out-of-place": {
    full: "Expected {expected}, received {received}. {advice}",
    short: "⚠ formula: number out of place"
  },
  "subscript-zero": {
    full: "Expected {expected}, received {received}. {advice}",
    short: "⚠ formula: 0 after a symbol"
  },
  "subscript-too-large": {
    full: "Expected {expected}, received {received}. {advice}",
    short: "⚠ formula: number too large"
  },
  "subscript-not-whole": {
    full: "Expected {expected}, received {received}. {advice}",
    short: "⚠ formula: whole numbers"
  },
  "isotope-shape": {
    full: "Expected {expected}, received {received}. {advice}",
    short: "⚠ isotope as in [13C]"
  },
  "isotope-unlikely": {
    full: "Expected {expected}, received {received}. {advice}",
    short: "⚠ mass number?"
  },
  "charge-two-readings": {
    full: "Expected one reading of {argument}, received {received}. {advice}",
    short: "⚠ {brief}"
  },
  "formula-with-charge": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ substance without a charge"
  },
  "atomic-weight-none": {
    full: "Expected {expected}, received {received}. {advice}",
    short: "⚠ {brief}: no atomic weight"
  },
  "element-not-in-formula": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ no {brief} in it"
  },
  "ions-weak": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ weak: mostly undissociated"
  },
  "ions-sparingly": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ hardly dissolves"
  },
  "ions-unknown": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ ions not known here"
  },
  "ion-not-in-formula": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ ion: {brief}?"
  },
  "ion-none": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ gives no ions"
  },
  // chemistry: solutions
  "purity-out-of-range": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {argument}: 0 to 100 %"
  },
  "final-below-stock-volume": {
    full: "Expected {argument} to be {expected}, received {received}. {advice}",
    short: "⚠ final volume too small"
  },
  "factor-not-above-one": {
    full: "Expected {argument} to be {expected}, received {received}. {advice}",
    short: "⚠ factor not above 1"
  },
  "stages-out-of-range": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ stages: 1 to 100"
  },
  "percent-of-line": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {argument}: 0 to 100 %"
  },
  "percent-beyond-line": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {argument} far off the two lines"
  },
  "lines-alike": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ two lines alike"
  },
  "percent-unclear": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ % w/w or % w/v?"
  },
  "concentration-unit-unknown": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {argument}: unit"
  },
  "conversion-needs": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {brief} needed"
  },
  "solute-over-whole": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ more solute than solution"
  },
  "target-not-below-stock": {
    full: "Expected {argument} to be {expected}, received {received}. {advice}",
    short: "⚠ target not below stock"
  },
  // workbook
  "plan-without-lines": {
    full: "Expected {expected} in {argument}, received {received}. {advice}",
    short: "⚠ no lines in the Plan"
  },
  "plan-setting": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ setting"
  },
  "plan-line": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ line of the Plan"
  },
  // lab: a quantity and what it is given
  "quantity-unknown": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ quantity unknown"
  },
  "given-shape": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ given: two columns"
  },
  "given-unknown": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ given: {brief}"
  },
  "given-twice": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ given twice: {brief}"
  },
  "given-missing": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {brief} missing"
  },
  // lab: hints, readings, numbers for teams
  "hint-level": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ level 1, 2 or 3"
  },
  "lesson-setting": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ setting"
  },
  "numbers-shelf": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ not with this shelf"
  },
  "numbers-solute": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ solute"
  },
  "numbers-start": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ number to start from"
  },
  "particles-too-far-apart": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ too far apart to draw"
  },
  // functions: cells and ranges
  "ranges-unfit": {
    full: "Expected {expected}, received {received}. {advice}",
    short: "⚠ ranges do not fit"
  },
  "one-cell-only": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {argument}: one cell only"
  },
  "columns-only": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {argument}: one column only"
  },
  "range-shape": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {argument}: other shape"
  },
  "range-missing": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {argument} missing"
  },
  "arguments-too-many": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ too many arguments"
  },
  "cell-missing": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {argument} missing"
  },
  "cell-holds-error": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {argument}: an error"
  },
  "whole-number-expected": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {argument}: whole number"
  },
  "yes-or-no-expected": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {argument}: TRUE or FALSE"
  },
  "text-expected": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {argument}: text expected"
  },
  "choice-unknown": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {argument}: not one of the choices"
  },
  "out-of-limits": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ {argument}: {expected}"
  },
  "target-zero": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ target 0 needs a tolerance"
  },
  "result-not-finite": {
    full: "Expected {expected} for {argument}, received {received}. {advice}",
    short: "⚠ result beyond all numbers"
  }
};

// src/errors/errorText.ts
var filled = (template, error) => template.replace(
  /\\{(argument|expected|received|advice|brief)\\}/g,
  (_, name) => {
    var _a;
    return String((_a = error[name]) != null ? _a : "");
  }
);
var errorText = (error) => filled(messages[error.code].full, error);
var shortErrorText = (error) => filled(messages[error.code].short, error);

// src/functions/asCell.ts
function asCell(result, place) {
  if (result.ok) return result.value;
  if (place === "alone") throw new Error(errorText(result.error));
  return shortErrorText(result.error);
}

// src/functions/computed.ts
function computed(entry, values) {
  if (!values.ok) return values;
  const result = entry.compute(...values.value);
  if (!result.ok || isAllFinite(result.value)) return result;
  return failure({
    code: "result-not-finite",
    argument: entry.name,
    expected: "values with a result that a number can hold",
    received: "values whose result is beyond that",
    advice: "Look for a number that is far too big or far too small."
  });
}
var isAllFinite = (value) => Array.isArray(value) ? value.every(isAllFinite) : typeof value !== "number" || Number.isFinite(value);

// src/functions/grid.ts
var isList = (value) => Array.isArray(value);
var isDate = (value) => Object.prototype.toString.call(value) === "[object Date]";
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
var shapeOf = (grid) => {
  var _a, _b;
  return { rows: grid.length, columns: (_b = (_a = grid[0]) == null ? void 0 : _a.length) != null ? _b : 1 };
};
var isOneCell = ({ rows, columns }) => rows === 1 && columns === 1;
var cellAt = (grid, row, column) => {
  const line = grid.length === 1 ? grid[0] : grid[row];
  return (line == null ? void 0 : line.length) === 1 ? line[0] : line == null ? void 0 : line[column];
};
var isAllBlank = (grid) => grid.every((row) => row.every(isBlank));
function shapeText({ rows, columns }) {
  const rowsText = \`\${rows} \${rows === 1 ? "row" : "rows"}\`;
  const columnsText = \`\${columns} \${columns === 1 ? "column" : "columns"}\`;
  if (columns === 1) return rowsText;
  return rows === 1 ? columnsText : \`\${rowsText} and \${columnsText}\`;
}

// src/functions/commonShape.ts
function commonShape(shapes) {
  const common = { rows: 1, columns: 1 };
  for (const side of ["rows", "columns"]) {
    const long = shapes.filter((shape) => shape[side] > 1);
    const [first] = long;
    if (first === void 0) continue;
    const other = long.find((shape) => shape[side] !== first[side]);
    if (other !== void 0) {
      return failure({
        code: "ranges-unfit",
        argument: other.name,
        expected: "ranges that fit each other",
        received: \`\${shapeText(first)} for \${first.name} and \${shapeText(other)} for \${other.name}\`,
        advice: \`Make both cover the same \${side}, or give one cell.\`
      });
    }
    common[side] = first[side];
  }
  return success(common);
}

// src/measurement/decimalReadings.ts
var ungrouped = (text, mark) => {
  if (!text.includes(mark)) return text;
  const groups = text.split(mark);
  return /^[1-9][0-9]{0,2}( [0-9]{3})+$/.test(groups.join(" ")) ? groups.join("") : void 0;
};
var reading = (whole, fraction) => whole === void 0 ? [] : [{ whole, fraction }];
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

// src/measurement/restAfter.ts
var restAfter = (text, { end }) => text.slice(end).replace(/[\\u200b\\u2060]/g, "").trim();

// src/measurement/scanNumber.ts
var space = /[\\s\\u200b\\u2060]/;
var digit2 = /[0-9]/;
var markOrDigit = /[0-9.,]/;
var apostrophe = /['’]/;
var times = /[×xX*·⋅∙✕✖]/;
var onTheLine = { digit: digit2, minus: /[-−–‐‑﹣－]/, plus: /[+＋]/ };
var raised = { digit: /[⁰¹²³⁴-⁹]/, minus: /⁻/, plus: /⁺/ };
var exponentDigits = 5;
function scanNumber(text) {
  var _a;
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
  const attempt = (read2) => {
    const before = at;
    const found = read2();
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
  const raisedExponent = () => exponentIn(raised);
  const afterCaret = () => {
    skip(space);
    if (!took(/\\^/)) return void 0;
    skip(space);
    return exponentIn(onTheLine);
  };
  const afterLetter = () => took(/[eE]/) ? exponentIn(onTheLine) : void 0;
  const powerOfTen = () => {
    var _a2;
    return (_a2 = attempt(raisedExponent)) != null ? _a2 : attempt(afterCaret);
  };
  const timesPowerOfTen = () => {
    skip(space);
    const isTimes = took(times);
    skip(space);
    return isTimes && took(/1/) && took(/0/) ? powerOfTen() : void 0;
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
  const ofOne = body === "10" ? attempt(powerOfTen) : void 0;
  if (ofOne !== void 0) return { negative, body: "1", exponent: ofOne, hasExponent: true, end: at };
  const exponent = (_a = attempt(afterLetter)) != null ? _a : attempt(timesPowerOfTen);
  return { negative, body, exponent: exponent != null ? exponent : 0, hasExponent: exponent !== void 0, end: at };
}

// src/measurement/shiftedDecimal.ts
var plainPlaces = 25;
function shiftedDecimal({ digits, lastPlace, negative }) {
  const sign = negative && /[1-9]/.test(digits) ? "-" : "";
  const plain = digits.replace(/^0+(?=\\d)/, "");
  if (Math.abs(lastPlace) > plainPlaces) return \`\${sign}\${plain}e\${lastPlace}\`;
  if (lastPlace >= 0) return plain === "0" ? "0" : sign + plain + "0".repeat(lastPlace);
  const padded = plain.padStart(1 - lastPlace, "0");
  return \`\${sign}\${padded.slice(0, lastPlace)}.\${padded.slice(lastPlace)}\`;
}

// src/measurement/readNumber.ts
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
var shownReading = ({ whole, fraction }) => fraction === void 0 ? whole : \`\${whole}.\${fraction}\`;
function typedNumber({ whole, fraction }, scanned, typed) {
  var _a;
  const { exponent, hasExponent, negative } = scanned;
  const digits = whole + (fraction != null ? fraction : "");
  const significant = digits.replace(/^0+/, "");
  const isWhole2 = fraction === void 0 && !hasExponent;
  const lastPlace = exponent - ((_a = fraction == null ? void 0 : fraction.length) != null ? _a : 0);
  const decimal = shiftedDecimal({ digits, lastPlace, negative });
  return {
    value: Number(decimal),
    decimal,
    figures: Math.max(significant.length, 1),
    lastPlace,
    ambiguousZeros: isWhole2 ? significant.length - significant.replace(/0+$/, "").length : 0,
    isText: true,
    typed
  };
}
var notANumber = (cell, argument) => failure({
  code: "number-expected",
  argument,
  expected: "a number such as 0.25",
  received: quoted(cell),
  advice: "Type a number, with digits only and at most one decimal mark."
});
var twoReadings = (cell, argument, both) => failure({
  code: "number-two-readings",
  argument,
  expected: both,
  received: \`\${quoted(cell)}, which could be \${both}\`,
  advice: "Type it one of those two ways.",
  brief: both
});
var outOfRange = (cell, argument) => failure({
  code: "number-out-of-range",
  argument,
  expected: "a number between 10^-300 and 10^300",
  received: quoted(cell),
  advice: "Look at its power of ten."
});

// src/measurement/unitTable.generated.ts
var unitTable = {
  volume: "L|1e3 dL|1e2 cL|1e1 mL|1e0 µL|1e-3 dm³|1e3 cm³|1e0",
  mass: "kg|1e3 g|1e0 mg|1e-3 µg|1e-6",
  amount: "mol|1e0 mmol|1e-3",
  concentration: "mol/L|1e0 mmol/L|1e-3 mol/dm³|1e0 M|1e0 mM|1e-3 µM|1e-6 µmol/L|1e-6",
  density: "g/mL|1e0 g/cm³|1e0 kg/m³|1e-3"
};

// src/measurement/unit.ts
var names = {
  litre: "L",
  litres: "L",
  liter: "L",
  liters: "L",
  millilitre: "mL",
  millilitres: "mL",
  milliliter: "mL",
  milliliters: "mL",
  cc: "cm3",
  gram: "g",
  grams: "g",
  kilogram: "kg",
  kilograms: "kg",
  milligram: "mg",
  milligrams: "mg",
  mole: "mol",
  moles: "mol",
  millimole: "mmol",
  millimoles: "mmol",
  molar: "M",
  percent: "%"
};
function plainUnit(text) {
  const joined = text.normalize("NFKC").replace(/[−–]/g, "-").replace(/[\\^.]/g, "").replace(
    /[·⋅*\\s]\\s*([A-Za-zμ]+)-([13])$/,
    (_, unit, power) => \`/\${unit}\${power === "3" ? "3" : ""}\`
  ).replace(/\\s/g, "");
  const word = joined.toLowerCase();
  const named = Object.keys(names).includes(word) ? names[word] : void 0;
  return (named != null ? named : joined).replace("u", "μ").replace(/(^|[/mμcd])l/, "$1L");
}
var known;
function knownUnits() {
  if (known) return known;
  known = /* @__PURE__ */ new Map();
  for (const [kind, row] of Object.entries(unitTable)) {
    for (const pair of row.split(" ")) {
      const symbol = pair.slice(0, pair.indexOf("|"));
      known.set(plainUnit(symbol), { kind, symbol, power: Number(pair.split("|1e")[1]) });
    }
  }
  known.set("%", { kind: "percent", symbol: "%", power: 0 });
  return known;
}
var unitNamed = (text) => knownUnits().get(plainUnit(text));
function unitsOfKind(kind) {
  const symbols = [...knownUnits().values()].filter((unit) => unit.kind === kind).map(({ symbol }) => symbol);
  return symbols.join(", ").replace(/, ([^,]*)$/, " or $1");
}

// src/measurement/readQuantity.ts
var longestQuantity = 100;
var called = {
  volume: { one: "a volume", example: "200 mL", advice: "Type the volume of solution you want." },
  mass: { one: "a mass", example: "2.5 g", advice: "Type a mass in grams, or with its unit." },
  amount: { one: "an amount", example: "0.25 mol", advice: "Type an amount in moles, or with its unit." },
  concentration: {
    one: "a concentration",
    example: "0.3 mol/L",
    advice: "Type a concentration in mol/L, or with its unit."
  },
  density: { one: "a density", example: "1.05 g/mL", advice: "Type a density in g/mL, or with its unit." },
  percent: { one: "a percentage", example: "98 %", advice: "Type a percentage, as in 98 or 98 %." }
};
var wanted = (kind) => \`\${called[kind].one} such as \${called[kind].example}\`;
var bareName = (kind) => called[kind].one.replace(/an? /, "");
function readQuantity(cell, kind, argument, options = {}) {
  var _a;
  const refused = () => failure({
    code: "quantity-expected",
    argument,
    expected: wanted(kind),
    received: quoted(cell),
    advice: called[kind].advice,
    brief: bareName(kind)
  });
  if (typeof cell === "number") return withoutUnit(readNumber(cell, argument), kind, { cell, argument });
  if (typeof cell !== "string" || cell.length > longestQuantity) return refused();
  const scanned = scanNumber(cell);
  if (scanned === void 0) return refused();
  const unitTyped = restAfter(cell, scanned);
  const unit = unitNamed(unitTyped);
  const inDefaultUnit = { ...scanned, exponent: scanned.exponent + ((_a = unit == null ? void 0 : unit.power) != null ? _a : 0) };
  const number = numberFromScan(inDefaultUnit, { cell, argument, options });
  if (!number.ok) return number.error.code === "number-expected" ? refused() : number;
  if (unitTyped === "") return withoutUnit(number, kind, { cell, argument });
  if (unit === void 0) {
    return failure({
      code: "unit-unknown",
      argument,
      expected: \`\${called[kind].one} in \${unitsOfKind(kind)}\`,
      received: quoted(cell),
      advice: "Type the number with one of those units.",
      brief: unitTyped.length > 12 ? \`\${unitTyped.slice(0, 12)}…\` : unitTyped
    });
  }
  if (unit.kind !== kind) {
    return failure({
      code: "unit-other-kind",
      argument,
      expected: wanted(kind),
      received: \`\${called[unit.kind].one}, \${quoted(cell)}\`,
      advice: called[kind].advice,
      brief: \`\${bareName(kind)} expected, not \${unitTyped}\`
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
  const both = \`\${number.value} % or \${asPercent} %\`;
  return failure({
    code: "percent-two-readings",
    argument,
    expected: both,
    received: \`\${quoted(cell)}, which could be \${both}\`,
    advice: 'Type it as text with its sign, such as "98 %".',
    brief: both
  });
}

// src/measurement/significantFigures.ts
var significantFigures = (number) => number.figures - number.ambiguousZeros;

// src/functions/readArgument.ts
function readArgument(cell, argument) {
  const { name, kind, optional } = argument;
  if (kind === "entry") return success(cell);
  if (isBlank(cell)) {
    if (optional) return success(void 0);
    return failure({
      code: "cell-missing",
      argument: name,
      expected: exampleOf(argument),
      received: "a blank cell",
      advice: "Type it, or point to the cell that holds it."
    });
  }
  if (typeof cell === "string" && hostErrors.test(cell.trim())) {
    return failure({
      code: "cell-holds-error",
      argument: name,
      expected: exampleOf(argument),
      received: \`the error \${quoted(cell)}\`,
      advice: "Mend the cell that it comes from first."
    });
  }
  switch (kind) {
    case "formula":
      return readFormula(cell, name);
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
      throw new Error(\`Nothing reads \${kind} from one cell.\`);
  }
}
var hostErrors = /^#(N\\/A|REF!|VALUE!|DIV\\/0!|NAME\\?|NUM!|NULL!|ERROR!)/;
var valueIn = (read2) => read2.ok ? success(read2.value.value) : read2;
var withoutPercentSign = (cell) => typeof cell === "string" ? cell.replace(/\\s*%\\s*$/, "") : cell;
function readFigures(cell, name) {
  const options = { sameEitherWay: significantFigures };
  const read2 = readNumber(cell, name, options);
  if (read2.ok || read2.error.code !== "number-expected") return read2;
  for (const kind of ["volume", "mass", "amount", "concentration", "density", "percent"]) {
    const quantity = readQuantity(cell, kind, name, options);
    if (quantity.ok || quantity.error.code === "number-two-readings") return quantity;
  }
  return read2;
}
function readWholeNumber(cell, argument) {
  const read2 = valueIn(readNumber(cell, argument.name));
  if (!read2.ok || Number.isInteger(read2.value)) return read2;
  return failure({
    code: "whole-number-expected",
    argument: argument.name,
    expected: exampleOf(argument),
    received: quoted(cell),
    advice: "Type a number without decimals."
  });
}
function readYesOrNo(cell, argument) {
  if (typeof cell === "boolean") return success(cell);
  const word = typeof cell === "string" ? cell.trim().toLowerCase() : "";
  if (word === "true" || word === "yes") return success(true);
  if (word === "false" || word === "no") return success(false);
  return failure({
    code: "yes-or-no-expected",
    argument: argument.name,
    expected: exampleOf(argument),
    received: quoted(cell),
    advice: "Type TRUE or FALSE."
  });
}
function readText(cell, argument) {
  const { name, oneOf } = argument;
  if (typeof cell !== "string") {
    return failure({
      code: "text-expected",
      argument: name,
      expected: exampleOf(argument),
      received: quoted(cell),
      advice: oneOf ? \`Type one of \${oneOf.join(", ")}.\` : "Type it as text."
    });
  }
  if (!oneOf) return success(cell.trim());
  const plain = cell.trim().toLowerCase().replace(/\\s+/g, " ");
  const chosen = oneOf.find((choice) => choice.toLowerCase() === plain);
  if (chosen !== void 0) return success(chosen);
  return failure({
    code: "choice-unknown",
    argument: name,
    expected: \`one of \${oneOf.join(", ")}\`,
    received: quoted(cell),
    advice: \`Type one of those for \${name}.\`
  });
}
function exampleOf({ kind, about }) {
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
    case "number":
    case "digits":
    case "figures":
      return "a number such as 0.25";
    default:
      return about;
  }
}

// src/functions/readWhole.ts
var isWhole = ({ kind }) => kind === "row" || kind === "column" || kind === "table";
function readWhole(grid, argument) {
  var _a, _b;
  const { name, kind, optional } = argument;
  const shape = shapeOf(grid);
  if (optional && isAllBlank(grid)) return success(void 0);
  if (isOneCell(shape) && ((_a = grid[0]) == null ? void 0 : _a[0]) === void 0) {
    return failure({
      code: "range-missing",
      argument: name,
      expected: expectedText(argument),
      received: "nothing",
      advice: \`Select the cells for \${name}.\`
    });
  }
  if (kind === "row" && shape.rows > 1 || kind === "column" && shape.columns > 1) {
    return failure({
      code: "range-shape",
      argument: name,
      expected: expectedText(argument),
      received: shapeText(shape),
      advice: \`Select one \${kind} only.\`
    });
  }
  if (kind === "row") return success((_b = grid[0]) != null ? _b : []);
  return success(kind === "column" ? grid.map(([cell]) => cell) : grid);
}
var expectedText = ({ kind, about }) => \`a \${kind} of cells: \${about}\`;

// src/functions/spread.ts
function spreadOf(entry, cells) {
  if (cells.slice(entry.arguments.length).some((cell) => !isAllBlank(gridOf(cell)))) {
    return failure({
      code: "arguments-too-many",
      argument: entry.name,
      expected: \`at most \${entry.arguments.length} \${entry.arguments.length === 1 ? "argument" : "arguments"}\`,
      received: String(cells.length),
      advice: \`It takes \${entry.arguments.map(({ name }) => name).join(", ")}.\`
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
      for (const read2 of readers) {
        const value = read2(row, column);
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
  const read2 = /* @__PURE__ */ new Map();
  return (row, column) => {
    const at = (shape.rows === 1 ? 0 : row) * shape.columns + (shape.columns === 1 ? 0 : column);
    const known2 = read2.get(at);
    if (known2 !== void 0) return known2;
    const value = readArgument(cellAt(grid, row, column), argument);
    read2.set(at, value);
    return value;
  };
}

// src/functions/cellByCell.ts
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

// src/functions/oneTable.ts
function oneTable(cells) {
  var _a, _b;
  const spread = asCell(singleCells(this, cells), "alone");
  const rows = asCell(computed(this, spread.valuesAt(0, 0)), "alone");
  return [((_a = this.columns) != null ? _a : []).slice(0, (_b = rows[0]) == null ? void 0 : _b.length), ...rows];
}
function singleCells(entry, cells) {
  for (const [place, argument] of entry.arguments.entries()) {
    const shape = shapeOf(gridOf(cells[place]));
    if (isWhole(argument) || isOneCell(shape)) continue;
    return failure({
      code: "one-cell-only",
      argument: argument.name,
      expected: "one cell",
      received: shapeText(shape),
      advice: \`\${entry.name} fills a table from single values, so call it once for each.\`
    });
  }
  return spreadOf(entry, cells);
}

// src/functions/rowByRow.ts
var blankStatus = "blank";
function rowByRow(cells) {
  var _a, _b;
  const spread = asCell(columnsOnly(this, cells), "alone");
  if (spread.alone) return [asCell(computed(this, spread.valuesAt(0, 0)), "alone")];
  const width = (_b = (_a = this.columns) == null ? void 0 : _a.length) != null ? _b : 1;
  const rowOf = (first) => [first, ...Array.from({ length: width - 1 }, () => "")];
  const entries = gridOf(cells[this.arguments.findIndex(({ kind }) => kind === "entry")]);
  const entryIsRange = !isOneCell(shapeOf(entries));
  return Array.from({ length: spread.shape.rows }, (_, row) => {
    if (entryIsRange && isBlank(cellAt(entries, row, 0))) return rowOf(blankStatus);
    if (spread.isBlankAt(row, 0)) return rowOf("");
    const filled2 = asCell(computed(this, spread.valuesAt(row, 0)), "in a range");
    return typeof filled2 === "string" ? rowOf(filled2) : filled2;
  });
}
function columnsOnly(entry, cells) {
  for (const [place, argument] of entry.arguments.entries()) {
    const shape = shapeOf(gridOf(cells[place]));
    if (isWhole(argument) || shape.columns === 1) continue;
    return failure({
      code: "columns-only",
      argument: argument.name,
      expected: "one column or one cell",
      received: shapeText(shape),
      advice: \`\${entry.name} fills a row for each entry, so put the entries below each other.\`
    });
  }
  return spreadOf(entry, cells);
}

// src/functions/withMolarMass.ts
function withMolarMass(formula, goOn) {
  const mass = molarMass(formula);
  return mass.ok ? goOn(mass.value) : mass;
}

// src/functions/withinLimits.ts
function withinLimits(value, { argument, least, most }) {
  if (value === void 0 || value >= least && value <= most) return success(value);
  return failure({
    code: "out-of-limits",
    argument,
    expected: \`\${least} to \${most}\`,
    received: String(value),
    advice: \`Type a whole number from \${least} to \${most}.\`
  });
}

// src/measurement/glassware.generated.ts
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

// src/measurement/percentError.ts
function percentError({ measured, accepted, signed = false }) {
  if (accepted === 0) {
    return failure({
      code: "accepted-zero",
      argument: "accepted",
      expected: "a value other than 0",
      received: "0",
      advice: "A share of nothing does not exist: compare the plain difference instead."
    });
  }
  const difference = 100 * (measured - accepted) / Math.abs(accepted);
  return finite(percent(signed ? difference : Math.abs(difference)), "measured");
}

return { success, failure, finite, grams, gramsPerMole, gramsPerMillilitre, millilitres, moles, molesPerLitre, percent, elements, elementOf, relativeMass, molarMass, composition, quoted, notAboveZero, belowZero, density, dilutionError, stockVolume, diluentVolume, dilutedMolarity, dilutionFactor, atomsOfUnits, isWater, anhydrousAtoms, listedCations, listedAnions, notALine, massPercentOfDensity, isBlank, readFormula, matchIon, notAShare, pureShare, molarity, reagentMolarity, soluteMass, errorText, asCell, computed, restAfter, scanNumber, readNumber, unitNamed, readQuantity, significantFigures, spreadOf, cellByCell, oneTable, rowByRow, withMolarMass, withinLimits, glassware, percentError };
`;
},
// Part chemistry/cautions: chemistry/cautionTexts, chemistry/cautionList.generated, chemistry/listedHazards, chemistry/pictogramsOf
"chemistry/cautions"() {
  return `
const { failure, molarMass, notAShare, success } = part("base");

// src/chemistry/cautionTexts.ts
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
  lasting: "Take a safer substance where one does. Solid and strong solutions: staff only, gloves, no dust.",
  organs: "Avoid repeated contact; gloves, no dust, wash hands.",
  drain: "Nothing down the drain: collect it in a labelled vessel and follow your local rules.",
  acids: "Never mix it with acid.",
  acidToWater: "Add the acid to water, slowly and with stirring, never water to acid; let it cool.",
  heatOfSolution: "Dissolve it slowly in cold water in heat-proof glass: it gets hot; let it cool before filling up."
};
var corrosive = ["corrosive"];
var irritant = ["eyes", "gloves"];
var lasting = ["lasting", "gloves", "hood"];
var drain = ["drain"];
var code = (means, signal, pictogram, advice) => ({ means, signal, pictogram, advice });
var codeTexts = () => ({
  H226: code("liquid and vapour catch fire", "Warning", "02", ["flame", "hood"]),
  H271: code("can make other things burn or explode", "Danger", "03", ["oxidiser", "eyes"]),
  H272: code("makes a fire burn harder", "Danger", "03", ["oxidiser", "eyes"]),
  "H272/3": code("makes a fire burn harder", "Warning", "03", ["oxidiser", "eyes"]),
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
  H318: code("damages eyes for good", "Danger", "05", corrosive),
  H319: code("irritates eyes strongly", "Warning", "07", irritant),
  H330: code("deadly if breathed in", "Danger", "06", ["poison", "hood"]),
  H331: code("poisonous if breathed in", "Danger", "06", ["hood", "eyes"]),
  H332: code("harms if breathed in", "Warning", "07", ["hood"]),
  H334: code("can start asthma or an allergy when breathed in", "Danger", "08", ["asthma", "hood"]),
  H335: code("irritates the airways", "Warning", "07", ["hood"]),
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
  H400: code("very poisonous to life in water", "Warning", "09", drain),
  H410: code("very poisonous to life in water for a long time", "Warning", "09", drain),
  H411: code("poisonous to life in water for a long time", "", "09", drain),
  H412: code("harms life in water for a long time", "", "", drain),
  EUH031: code("gives off poisonous gas with acid", "", "", ["acids", "hood"]),
  EUH071: code("burns the airways", "", "", ["hood"])
});
var confidenceTexts = {
  h: "harmonised, CLP Annex VI",
  t: "two sources agree",
  o: "one source, not harmonised",
  m: "from memory, not confirmed"
};
var cautionTexts = {
  unlisted: "Unlisted: nothing is known here about this formula. That does not mean that it is harmless.",
  unlistedAdvice: "Read the safety data sheet before anyone opens the bottle; until then treat it as harmful.",
  otherHydrate: (listed) => \`Only \${listed} is listed. What follows is for that form and may differ for the one you typed.\`,
  notClassified: "Not classified: below the limits for labels.",
  notClassifiedAsFarAsKnown: "Not classified by the limits that are known.",
  notClassifiedAsFarAsKnownAdvice: "That is not the same as harmless: eye protection stays on.",
  notClassifiedUndiluted: (confidence) => \`Not classified by the source we have (\${confidence}).\`,
  notClassifiedAdvice: "That is not the same as harmless: eye protection stays on, and ordinary care.",
  notKnown: "Not known: the figures are from memory and could not be confirmed.",
  notKnownAdvice: "See the supplier’s safety data sheet; eye protection stays on.",
  partNotKnown: (codes) => \`Not known at this strength: \${codes}.\`,
  partNotKnownAdvice: "See the supplier’s safety data sheet for this strength.",
  nearEdge: "Close to a limit, so the stricter side is shown.",
  minimumClass: (codes) => \`Just below the limit of \${codes}, which is a least class only: the truth may be stricter.\`,
  extremePh: "At pH 11.5 or more, or 2 or less, it counts as burning skin and eyes unless tests say otherwise.",
  extremePhAdvice: "Measure the pH of what you made; wear eye protection.",
  school: (use) => \`Use in schools, common practice: \${use}.\`,
  schoolAdvice: "Rules differ by place: your school’s own rule decides.",
  deferring: "This is no safety data sheet. Read the one from your supplier; follow local rules and your school’s own assessment."
};

// src/chemistry/cautionList.generated.ts
var cautionList = \`
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
\`;

// src/chemistry/listedHazards.ts
function end(text, isOpenByDefault) {
  if (text === "") return void 0;
  const isTurned = text.startsWith("!");
  return { percent: Number(isTurned ? text.slice(1) : text), isOpen: isTurned !== isOpenByDefault };
}
function limitOf(text) {
  const [code2, from, to, counted, marks] = text.split(",");
  return {
    code: marks.includes("3") ? \`\${code2}/3\` : code2,
    from: end(from, false),
    to: end(to, true),
    countedGramsPerMole: counted === "" ? void 0 : Number(counted),
    confidence: marks.charAt(0),
    isWithoutLimit: marks.includes("n"),
    isMinimum: marks.includes("*"),
    dependsOnPh: marks.includes("p")
  };
}
var list;
function listedHazards() {
  list != null ? list : list = cautionList.trim().split("\\n").map((line2) => {
    const [name, spellings, codes, signalWord, confidence, schoolUse, limits] = line2.split("|");
    return {
      name,
      spellings: spellings.split(" "),
      codes: codes === "*" ? void 0 : codes.split(" ").filter((pair) => pair !== "").map((pair) => {
        const [code2, confidenceOfCode] = pair.split(":");
        return { code: code2, confidence: confidenceOfCode };
      }),
      signalWord,
      confidence,
      schoolUse,
      limits: limits === "" ? [] : limits.split(";").map(limitOf)
    };
  });
  return list;
}

// src/chemistry/pictogramsOf.ts
var irritation = ["H315", "H319"];
var precedence = [
  { where: ["H314", "H318"], drops: irritation },
  { where: ["H334"], drops: ["H317", ...irritation] }
];
function pictogramsOf(codes) {
  const texts = codeTexts();
  const dropped = precedence.filter(({ where }) => where.some((code2) => codes.includes(code2)));
  const digits = new Set(
    codes.filter((code2) => !dropped.some(({ drops }) => drops.includes(code2))).map((code2) => {
      var _a, _b;
      return (_b = (_a = texts[code2]) == null ? void 0 : _a.pictogram) != null ? _b : "";
    }).filter((pictogram) => pictogram !== "")
  );
  if (digits.has("06")) digits.delete("07");
  return [...digits].sort().map((pictogram) => \`GHS\${pictogram}\`);
}

// src/chemistry/cautions.ts
function cautions(formula, massPercent) {
  var _a;
  const error = massPercent === void 0 ? void 0 : notAShare(massPercent, "mass_percent");
  if (error) return failure(error);
  const found = listedAs(formula.text);
  if (found === void 0) {
    return success({
      listing: "unlisted",
      name: "",
      signalWord: "",
      pictograms: [],
      statements: [line(cautionTexts.unlisted, cautionTexts.unlistedAdvice), lastLine]
    });
  }
  const { substance, listing } = found;
  const hazards = massPercent === void 0 && substance.codes !== void 0 ? undiluted(substance) : atStrength(substance, formula, massPercent != null ? massPercent : 100);
  const statements = [
    ...listing === "listed" ? [] : [line(cautionTexts.otherHydrate((_a = substance.spellings[0]) != null ? _a : ""), "")],
    ...hazards.statements,
    ...substance.schoolUse === "" ? [] : [line(cautionTexts.school(substance.schoolUse), cautionTexts.schoolAdvice)],
    lastLine
  ];
  return success({ listing, name: substance.name, ...hazards, statements });
}
var line = (text, advice) => ({ code: "", text, advice, confidence: void 0 });
var lastLine = line("", cautionTexts.deferring);
var plainFormula = (text) => text.normalize("NFKC").replace(/[\\s\\u200b\\ufeff]/g, "").replace(/[[{]/g, "(").replace(/[\\]}]/g, ")").replace(/[•*.⋅∙‧・]/g, "·");
var withoutWater = (spelling) => spelling.replace(/·(\\d+[·,])?[\\d⁄]*H2O$/, "");
function listedAs(text) {
  const wanted = plainFormula(text);
  const substances = listedHazards();
  const exact = substances.find(({ spellings }) => spellings.includes(wanted));
  if (exact) return { substance: exact, listing: "listed" };
  const dry = withoutWater(wanted);
  const other = substances.find(({ spellings }) => spellings.some((spelling) => withoutWater(spelling) === dry));
  return other && { substance: other, listing: "another hydrate" };
}
function undiluted(substance) {
  var _a;
  const codes = (_a = substance.codes) != null ? _a : [];
  if (codes.length > 0) {
    const statements = codes.map(({ code: code2, confidence }) => statementOf(bareCode(code2), confidence));
    return {
      signalWord: substance.signalWord,
      pictograms: pictogramsOf(codes.map(({ code: code2 }) => code2)),
      statements: withCare(statements, substance)
    };
  }
  return {
    signalWord: "",
    pictograms: [],
    statements: [
      substance.confidence === "m" ? line(cautionTexts.notKnown, cautionTexts.notKnownAdvice) : line(
        cautionTexts.notClassifiedUndiluted(confidenceTexts[substance.confidence]),
        cautionTexts.notClassifiedAdvice
      )
    ]
  };
}
var nearEdge = 0.05;
var nearMinimum = 0.5;
function isWithin(percent, { from, to }) {
  if (from && (from.isOpen ? percent <= from.percent : percent < from.percent)) return false;
  return !(to && (to.isOpen ? percent >= to.percent : percent > to.percent));
}
function atStrength(substance, formula, massPercent) {
  var _a, _b;
  const mass = formulaMass(formula);
  const counted = ({ countedGramsPerMole }) => countedGramsPerMole === void 0 || mass === void 0 ? massPercent : massPercent * countedGramsPerMole / mass;
  const known = substance.limits.filter((limit) => !limit.isWithoutLimit);
  const holding = known.filter((limit) => isWithin(counted(limit), limit));
  const near = known.filter((limit) => {
    const percent = counted(limit);
    return limit.from !== void 0 && !isWithin(percent, limit) && percent < limit.from.percent * (1 + 1e-12) && percent >= limit.from.percent * (1 - nearEdge);
  });
  const all = tidied([...holding, ...near]);
  const shown = new Set(all.map(({ code: code2 }) => code2));
  const isSureOfEverything = substance.confidence !== "m";
  const unknown = substance.limits.filter(({ isWithoutLimit, code: code2 }) => isWithoutLimit && !shown.has(code2));
  const minimum = known.filter((limit) => {
    const percent = counted(limit);
    return limit.isMinimum && limit.from !== void 0 && percent < limit.from.percent && percent >= limit.from.percent * nearMinimum && !near.includes(limit);
  });
  const statements = withCare(
    all.map(({ code: code2, confidence }) => statementOf(code2, confidence)),
    substance
  );
  if (all.length === 0) {
    statements.push(
      substance.limits.length === 0 && ((_a = substance.codes) != null ? _a : []).length > 0 ? line(cautionTexts.partNotKnown(codeList((_b = substance.codes) != null ? _b : [])), cautionTexts.partNotKnownAdvice) : !isSureOfEverything ? line(cautionTexts.notKnown, cautionTexts.notKnownAdvice) : unknown.length + minimum.length > 0 ? line(cautionTexts.notClassifiedAsFarAsKnown, cautionTexts.notClassifiedAsFarAsKnownAdvice) : line(cautionTexts.notClassified, cautionTexts.notClassifiedAdvice)
    );
  }
  if (near.length > 0) statements.push(line(cautionTexts.nearEdge, ""));
  if (minimum.length > 0) {
    statements.push(line(cautionTexts.minimumClass(codeList(minimum)), cautionTexts.partNotKnownAdvice));
  }
  if (unknown.length > 0) {
    statements.push(line(cautionTexts.partNotKnown(codeList(unknown)), cautionTexts.partNotKnownAdvice));
  }
  if (substance.limits.some(({ dependsOnPh }) => dependsOnPh)) {
    statements.push(line(cautionTexts.extremePh, cautionTexts.extremePhAdvice));
  }
  return { signalWord: signalOf(all), pictograms: pictogramsOf(all.map(({ code: code2 }) => code2)), statements };
}
function formulaMass(formula) {
  const mass = molarMass(formula);
  return mass.ok ? mass.value : void 0;
}
var bareCode = (code2) => code2.replace("/3", "");
var codeList = (holding) => Array.from(new Set(holding.map(({ code: code2 }) => {
  var _a, _b;
  return \`\${bareCode(code2)} (\${(_b = (_a = codeTexts()[code2]) == null ? void 0 : _a.means) != null ? _b : ""})\`;
}))).join(", ");
var hides = [
  ["H314", ["H318", "H315", "H319"]],
  ["H318", ["H319"]],
  ["H410", ["H400", "H411", "H412"]],
  ["H411", ["H412"]],
  ["H271", ["H272", "H272/3"]],
  ["H272", ["H272/3"]],
  ["H300", ["H301", "H302"]],
  ["H301", ["H302"]],
  ["H310", ["H311", "H312"]],
  ["H311", ["H312"]],
  ["H330", ["H331", "H332"]],
  ["H331", ["H332"]],
  ["H340", ["H341"]],
  ["H350", ["H350i", "H351"]],
  ["H350i", ["H351"]],
  ["H370", ["H371"]],
  ["H372", ["H373"]]
];
function tidied(limits) {
  const codes = new Set(limits.map(({ code: code2 }) => code2));
  for (const [strict, weaker] of hides) {
    if (codes.has(strict)) for (const code2 of weaker) codes.delete(code2);
  }
  return Array.from(codes).map((code2) => {
    var _a, _b;
    return {
      code: code2,
      confidence: (_b = (_a = limits.find((limit) => limit.code === code2)) == null ? void 0 : _a.confidence) != null ? _b : "m"
    };
  });
}
var signalOf = (holding) => {
  const words = holding.map(({ code: code2 }) => {
    var _a, _b;
    return (_b = (_a = codeTexts()[code2]) == null ? void 0 : _a.signal) != null ? _b : "";
  });
  return words.includes("Danger") ? "Danger" : words.includes("Warning") ? "Warning" : "";
};
function statementOf(code2, confidence) {
  var _a, _b;
  const text = codeTexts()[code2];
  const advice = (_a = text == null ? void 0 : text.advice) != null ? _a : [];
  return {
    code: bareCode(code2),
    text: \`\${bareCode(code2)}: \${(_b = text == null ? void 0 : text.means) != null ? _b : ""} (\${confidenceTexts[confidence]})\`,
    advice: advice.map((name) => adviceTexts[name]).join(" "),
    confidence
  };
}
var acids = ["HCl", "H2SO4", "HNO3", "H3PO4", "CH3COOH", "HCOOH", "HClO4", "HF", "HBr"];
var hotBases = ["NaOH", "KOH"];
function withCare(statements, { spellings }) {
  if (!statements.some(({ code: code2 }) => code2 === "H314")) return [...statements];
  const [formula = ""] = spellings;
  const care = acids.includes(formula) ? adviceTexts.acidToWater : hotBases.includes(formula) ? adviceTexts.heatOfSolution : "";
  return care === "" ? [...statements] : [...statements, line("", care)];
}

return { adviceTexts, cautionTexts, cautions };
`;
},
// Part CAUTIONS: functions/entries/cautionsEntry
"CAUTIONS"() {
  return `
const { cautions } = part("chemistry/cautions");
const { oneTable, success } = part("base");

// src/functions/entries/cautionsEntry.ts
var cautionsEntry = {
  name: "CAUTIONS",
  arguments: [
    { name: "formula", kind: "formula", unit: "", about: "formula of the substance as it stands in the bottle" },
    {
      name: "mass_percent",
      kind: "percent",
      unit: "%",
      about: "grams of the substance in 100 g of a solution in water; undiluted if left out",
      optional: true
    }
  ],
  columns: ["signal word", "what it can do", "what to do about it"],
  call: oneTable,
  compute(formula, massPercent) {
    const found = cautions(formula, massPercent);
    if (!found.ok) return found;
    const { signalWord, statements } = found.value;
    return success(
      statements.map(({ text, advice }, line) => [line === 0 ? signalWord : "", text, advice])
    );
  }
};
return { entry: cautionsEntry };
`;
},
// Part lab/texts/feedback: lab/span, lab/place, lab/typedEntry, lab/tolerance
"lab/texts/feedback"() {
  return `
// src/lab/span.ts
var relativeSlack = 1e-12;
var isWithin = (value, { low, high }, room = 0) => {
  const slack = relativeSlack * Math.max(Math.abs(value), Math.abs(low), Math.abs(high));
  return value >= low - room - slack && value <= high + room + slack;
};
var distanceFrom = (value, { low, high }) => value < low ? low - value : value > high ? value - high : 0;

// src/lab/place.ts
var leadingPlace = (value) => {
  const [, exponent] = Math.abs(value).toExponential(12).split("e");
  return Number(exponent);
};
var tenTo = (power) => Number(\`1e\${power}\`);

// src/lab/typedEntry.ts
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

// src/lab/tolerance.ts
var placeAsked = (value, asked) => "decimals" in asked ? tenTo(-asked.decimals) : tenTo(leadingPlace(value) - asked.figures + 1);
function toleranceOf(span, { asked, wideClose, coarsest }) {
  const floor = coarsest ? Math.max(placeAsked(coarsest.low, asked), placeAsked(coarsest.high, asked)) : 0;
  return {
    span,
    asked,
    placeLow: Math.max(placeAsked(span.low, asked), floor),
    placeHigh: Math.max(placeAsked(span.high, asked), floor),
    wideClose
  };
}
var acceptedEnds = ({ span, placeLow, placeHigh }) => ({
  low: span.low - placeLow / 2,
  high: span.high + placeHigh / 2
});
var isOnTarget = (value, tolerance) => tolerance.span.middle === 0 ? value === 0 : isWithin(value, acceptedEnds(tolerance));
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
var isOneFigureOf = (entry, { span, asked }) => entry.value !== 0 && entry.figuresMax === 1 && ("decimals" in asked ? entry.lastPlace > -asked.decimals : asked.figures > 1) && isWithin(entry.value, span, tenTo(leadingPlace(entry.value)) / 2);
function isTruncated(entry, { span, asked }) {
  if (!hasFiguresAsked(entry, asked)) return false;
  const size = Math.abs(entry.value);
  const [low, high] = [Math.abs(span.low), Math.abs(span.high)];
  const next = size + tenTo("decimals" in asked ? -asked.decimals : leadingPlace(size) - asked.figures + 1);
  return Math.min(low, high) > size && Math.max(low, high) < next;
}

// src/lab/texts/feedback.ts
var workedWith = (text) => ({ "mass of solute": text, molarity: text });
var slipTexts = {
  "volume-in-mL": {
    fits: "work with the volume left in mL",
    ask: "Which unit of volume goes with mol/L?"
  },
  "litres-reported": {
    fits: "the right volume in litres",
    ask: "Which unit does this row ask for?"
  },
  "volume-ignored": {
    fits: "work that leaves out the volume",
    ask: "Would a small flask and a big flask need the same amount?"
  },
  "moles-reported": {
    fits: "the amount in moles",
    ask: "You have the moles. What does the balance read?"
  },
  "molar-mass-ignored": {
    fits: "grams in each litre",
    ask: "Molarity counts moles. How do you get from grams to moles?"
  },
  "ratio-inverted": {
    fits: "work with one step turned upside down",
    ask: "Should this step multiply or divide?",
    in: {
      "mass of solute": {
        fits: "moles divided by the molar mass",
        ask: "One mole has a mass of many grams. So should the grams be more or less than the moles?"
      },
      molarity: {
        fits: "grams times the molar mass",
        ask: "If one mole weighs more, do the same grams hold more moles or fewer?"
      },
      "stock volume": {
        fits: "the two molarities the other way up",
        ask: "Can you take out more stock than the flask holds?"
      },
      "dilution factor": {
        fits: "the part of the stock that is left",
        ask: "Your ratio is the other way up. How many times as big is the volume at the end?"
      },
      "diluted molarity": {
        fits: "the two volumes the other way up",
        ask: "Can adding water make a solution stronger?"
      },
      "ion molarity": {
        fits: "the molarity shared out among the ions",
        ask: "Is it shared out, or does each ion count?"
      },
      "reagent molarity": {
        fits: "grams times the molar mass",
        ask: "How do you turn grams in a litre into moles?"
      },
      density: {
        fits: "the volume of one gram",
        ask: "Grams for each mL: which of the two goes below the line?"
      },
      "mass percent": {
        fits: "a share of the way that is turned upside down",
        ask: "Which gap of the densities is the whole way, and which is your part?"
      }
    }
  },
  "volumes-multiplied": {
    fits: "work that divides by the volume",
    ask: "Does a bigger flask of it need more of the solute or less?",
    in: {
      molarity: {
        fits: "work that multiplies by the volume",
        ask: "The same solute in a bigger flask: is it more crowded or less?"
      },
      density: {
        fits: "the mass times the volume",
        ask: "What would just one mL of it weigh?"
      }
    }
  },
  "water-of-hydration-left-out": {
    fits: "the molar mass of the salt with no water in it",
    ask: "What stands after the dot in the formula?",
    in: workedWith({
      fits: "work with the molar mass of the salt without its water",
      ask: "What stands after the dot in the formula?"
    })
  },
  "one-water-only": {
    fits: "the molar mass with just one water",
    ask: "How many waters does the formula show after the dot?",
    in: workedWith({
      fits: "work with the molar mass of the salt with just one water",
      ask: "How many waters does the formula show after the dot?"
    })
  },
  "group-subscript-ignored": {
    fits: "a molar mass without the number after a bracket",
    ask: "What does the small number after the bracket act on?",
    in: workedWith({
      fits: "work with a molar mass that leaves out the number after a bracket",
      ask: "What does the small number after the bracket act on?"
    })
  },
  "bracket-number-on-one-atom": {
    fits: "a molar mass where the number after a bracket acts on one atom only",
    ask: "Which atoms stand inside the bracket?",
    in: workedWith({
      fits: "work with a molar mass where a bracket’s number acts on one atom only",
      ask: "Which atoms stand inside the bracket?"
    })
  },
  "subscripts-ignored": {
    fits: "a molar mass with each atom counted just once",
    ask: "What do the small numbers in the formula tell you?",
    in: workedWith({
      fits: "work with a molar mass that counts each atom just once",
      ask: "What do the small numbers in the formula tell you?"
    })
  },
  "atomic-numbers-used": {
    fits: "the sum of atomic numbers",
    ask: "Which number on the periodic table tells you the mass?",
    in: workedWith({
      fits: "work with a sum of atomic numbers",
      ask: "Which number on the periodic table tells you the mass?"
    })
  },
  "weights-rounded-early": {
    fits: "a molar mass from weights with few decimal places",
    ask: "To how many places were the atomic weights taken?"
  },
  "purity-ignored": {
    fits: "work with a solid that is all pure",
    ask: "How much of your solid is the salt itself?"
  },
  "purity-inverted": {
    fits: "work with the purity turned upside down",
    ask: "If only part of the solid is the salt, do you need more of it or less?",
    in: {
      molarity: {
        fits: "work with the purity turned upside down",
        ask: "If only part of the solid is the salt, does it give more moles or fewer?"
      }
    }
  },
  "amount-as-molarity": {
    fits: "the moles in the flask",
    ask: "What volume are those moles in?"
  },
  "volume-over-amount": {
    fits: "litres for each mole",
    ask: "Moles per litre: which of the two goes below the line?"
  },
  "water-for-stock": {
    fits: "the volume of water",
    ask: "Which bottle do you draw from with the pipette?"
  },
  "stock-for-water": {
    fits: "the volume of stock",
    ask: "Once the stock is in, how much room is left?"
  },
  "final-volume-for-water": {
    fits: "the whole volume at the end",
    ask: "What is in the flask before the water goes in?"
  },
  "volumes-added": {
    fits: "the two volumes added up",
    ask: "Can the total be more than the flask holds?"
  },
  "parts-miscounted": {
    fits: "a ratio with the parts counted in another way",
    ask: "One part of stock in how many parts of the whole?"
  },
  "volume-left-out": {
    fits: "the ratio of the two molarities",
    ask: "How big is the flask that you fill?"
  },
  "amount-for-volume": {
    fits: "molarity times volume, which is an amount",
    ask: "What unit do you get from mol/L times a volume?"
  },
  "factor-less-one": {
    fits: "parts of water for each part of stock",
    ask: "Did the part of stock get counted in the total?"
  },
  "total-counted-twice": {
    fits: "the ratio with one part too many",
    ask: "Is the stock already part of the total?"
  },
  "total-over-water": {
    fits: "the total divided by the water",
    ask: "Which part is being diluted?"
  },
  "difference-for-ratio": {
    fits: "the difference of the two molarities",
    ask: "Does the factor say how much less, or how many times?"
  },
  "solvent-added-to-final": {
    fits: "work where the final volume counts as added water",
    ask: "Is the final volume the water you add, or all that is in the flask?"
  },
  "water-as-final": {
    fits: "work that divides by the volume of water",
    ask: "Which volume is the solute in now?"
  },
  "molarity-unchanged": {
    fits: "the molarity of the stock",
    ask: "What stays the same when you add water, and what changes?"
  },
  "ion-count-ignored": {
    fits: "the molarity of the whole salt",
    ask: "How many of this ion does one formula unit give?"
  },
  "all-ions-counted": {
    fits: "the molarity of all the ions at once",
    ask: "Which ion does this row ask about?"
  },
  "other-ion's-count": {
    fits: "the number of the other ion",
    ask: "Which ion is asked for, and how many of it are there?"
  },
  "divided-by-measured": {
    fits: "the gap divided by the measured value",
    ask: "Which of the two values do you judge against?"
  },
  "mean-as-base": {
    fits: "the gap divided by the mean of the two",
    ask: "Is one of the two values the accepted one?"
  },
  "ratio-reported": {
    fits: "the measured value as a percent of the accepted one",
    ask: "Does the row ask what share it is, or how far off?"
  },
  "difference-reported": {
    fits: "the plain gap between the two values",
    ask: "Percent of what?"
  },
  "fraction-reported": {
    fits: "a fraction",
    ask: "How do you turn a fraction into a percent?"
  },
  "sign-reversed": {
    fits: "the two values taken away the other way round",
    ask: "Which one comes first?"
  },
  "density-divided": {
    fits: "work that divides by the density",
    ask: "If the liquid is heavier than water, does a litre of it hold more grams or fewer?"
  },
  "percent-not-divided": {
    fits: "a percent used as a plain number",
    ask: "A percent means out of how many?"
  },
  "percent-left-out": {
    fits: "a liquid that is all solute",
    ask: "What share of the liquid is the solute?"
  },
  "density-ignored": {
    fits: "a litre with the mass of a litre of water",
    ask: "What is the mass of one litre of this liquid?"
  },
  "per-mL-not-L": {
    fits: "the moles in one mL",
    ask: "Molarity is moles in how much solution?"
  },
  "volume-in-litres": {
    fits: "the mass of one litre",
    ask: "Which unit of volume does this row ask for?"
  },
  "table-line-taken": {
    fits: "a line of the table as it stands",
    ask: "Is your density just that of the line, or some way along?"
  },
  "middle-of-lines": {
    fits: "the middle of the two lines",
    ask: "Is your density in the middle too?"
  },
  "share-mirrored": {
    fits: "a way that is counted from the other line",
    ask: "Is your density closer to the lighter line or to the heavier?"
  },
  "step-unscaled": {
    fits: "the percent of the lighter line plus the share of the way",
    ask: "How many percent is that share worth?"
  },
  "line-not-added": {
    fits: "the part of the way from the lighter line",
    ask: "At what percent does the way begin?"
  },
  "share-reported": {
    fits: "only the share of the way between the lines",
    ask: "How many percent is that share worth, and from where does it count?"
  },
  "planned-for-made": {
    fits: "the molarity of the plan",
    ask: "Which mass did the balance really show?",
    in: {
      "reagent molarity": {
        fits: "the molarity on the label",
        ask: "Which molarity do your mass percent and your density give?"
      }
    }
  },
  "mass-reported": {
    fits: "the mass in grams",
    ask: "This row asks for moles. Which step comes before the mass?",
    in: {
      density: {
        fits: "the mass of the whole portion",
        ask: "How many mL share that mass?"
      }
    }
  },
  "flasks-compared": {
    fits: "the sizes of the two flasks compared",
    ask: "Does all of the stock go into the second flask?"
  },
  "power-of-ten": {
    fits: "the right digits with the point moved",
    ask: "What size of number makes sense here? Look at the units."
  }
};
var remarks = {
  onTarget: "Yes, this fits your numbers.",
  closeRounding: "Close. Keep spare digits as you work and round at the end.",
  closeCutOff: "Close. Look at the next digit of your result: round up or down?",
  closePlanned: "Close. Is it worked from the mass that the balance really showed?",
  closeFewFigures: "Close. Give the value to {figures}.",
  wrongFigures: "The value is right. Give it to {figures}.",
  follows: "This step fits the value in “{row}”. Look at that row first.",
  oneFigure: "Not yet. One figure says too little here. Give the value to {figures}.",
  notYet: "Not yet. Look at each number that goes in and at its unit. Does the size make sense?",
  signOfError: "Look at the sign. Is the measured value above or below the accepted one?",
  negative: "Not yet. Can this value be below zero?",
  unitWanted: "Look at the unit. This row asks for {unit}. Does yours measure the same thing?",
  unitNone: "Look at the unit. This row asks for a plain number. What cancels out?",
  unitEvidently: "The number looks fine. Does the unit with it fit? This row asks for {unit}.",
  signOnly: "Not yet. Look at the sign.",
  shifted: "Not yet. The digits fit, but the point has moved. Look at the units.",
  figuresAsked: "the figures asked",
  blank: "",
  needsRow: "Fill in “{row}” first. This row is worked from it.",
  lookFirst: "Look at “{row}” first. This row is worked from it.",
  waitForRow: "Wait at the bench. Look at “{row}” first.",
  farFromTarget: "Not yet. Look at it once more.",
  severalFit: "Your value fits more than one way of working: {fits}. {ask}",
  oneFits: "Your value matches {fits}. {ask}"
};
var unreadableTexts = {
  "not a number": "Type one number here, with or without its unit.",
  "two ways": "This can be read in two ways. Type it with no mark between the thousands.",
  "other kind": "Type a number here. This cell holds something else.",
  calculation: "Work it out and type one number.",
  "more than a number": "Type the number alone, with or without its unit."
};
var badGiven = (name) => name === "formula" || name === "ion" ? \`⚠ \${name}. The one for your team is missing or cannot be read. Tell your teacher.\` : \`⚠ \${name}. The number for your team is missing or cannot be read. Tell your teacher.\`;
var badSetting = (name) => \`⚠ \${name}. This setting cannot be read. Tell your teacher.\`;
var badStep = (id) => \`⚠ \${id}. This row is not known here. Tell your teacher.\`;
var figureWords = [
  "no figures",
  "one figure",
  "two figures",
  "three figures",
  "four figures",
  "five figures",
  "six figures"
];
var decimalWords = [
  "a whole number",
  "one decimal",
  "two decimals",
  "three decimals",
  "four decimals",
  "five decimals",
  "six decimals"
];
var checkHeadings = { check: "Check", lookAt: "What to look at", hint: "Hint" };

return { slipTexts, remarks, unreadableTexts, badGiven, badSetting, badStep, figureWords, decimalWords, checkHeadings, relativeSlack, isWithin, leadingPlace, tenTo, lastFigureFilledUp, hasFiguresAsked, toleranceOf, acceptedEnds, isOnTarget, closeness, isOneFigureOf, isTruncated };
`;
},
// Part lab/readEntry: lab/feedbackText
"lab/readEntry"() {
  return `
const { decimalWords, figureWords, remarks, slipTexts, unreadableTexts } = part("lab/texts/feedback");
const { isBlank, readNumber, readQuantity, unitNamed } = part("base");

// src/lab/feedbackText.ts
var filled = (text, words) => text.replace(/\\{(\\w+)\\}/g, (whole, name) => {
  var _a;
  return (_a = words[name]) != null ? _a : whole;
});
var slipText = (id, quantity) => {
  var _a, _b;
  const text = slipTexts[id];
  return (_b = (_a = text.in) == null ? void 0 : _a[quantity]) != null ? _b : text;
};
function slipsText(slips, quantity) {
  const texts = slips.map((id) => slipText(id, quantity));
  return filled(texts.length === 1 ? remarks.oneFits : remarks.severalFit, {
    fits: texts.map(({ fits }) => fits).join(", or "),
    ask: texts.map(({ ask }) => ask).join(" ")
  });
}
var askedWords = (asked) => {
  var _a;
  return (_a = "decimals" in asked ? decimalWords[asked.decimals] : figureWords[asked.figures]) != null ? _a : remarks.figuresAsked;
};
var unitQuestion = (text, unit) => unit === "" ? remarks.unitNone : filled(text, { unit });
var unreadableText = (because) => unreadableTexts[because];
function feedbackText(judgement, { name, unit }) {
  switch (judgement.status) {
    case "blank":
      return remarks.blank;
    case "unreadable":
      return unreadableText(judgement.because);
    case "on target":
      return remarks.onTarget;
    case "close": {
      if (judgement.because === "rounding") return remarks.closeRounding;
      if (judgement.because === "cut off") return remarks.closeCutOff;
      if (judgement.because === "planned for made") return remarks.closePlanned;
      const text = judgement.because === "few figures" ? remarks.closeFewFigures : remarks.wrongFigures;
      return filled(text, { figures: askedWords(judgement.asked) });
    }
    case "follows":
      return filled(remarks.follows, { row: judgement.lookAt });
    case "not yet":
      switch (judgement.question) {
        case "unit of another kind":
          return unitQuestion(remarks.unitWanted, unit);
        case "unit does not fit":
          return unitQuestion(remarks.unitEvidently, unit);
        case "sign":
          return remarks.signOfError;
        case "negative":
          return remarks.negative;
        case "one figure":
          return filled(remarks.oneFigure, { figures: askedWords(judgement.asked) });
        default:
          return judgement.slips.length > 0 ? slipsText(judgement.slips, name) : remarks.notYet;
      }
  }
}

// src/lab/readEntry.ts
var measurementKinds = ["volume", "mass", "amount", "concentration", "density", "percent"];
var ownUnits = {
  "molar mass": { "g/mol": 1, "gmol-1": 1, "g*mol-1": 1, "kg/mol": 1e3, "kg/kmol": 1, "mg/mmol": 1 },
  ratio: { x: 1, times: 1, fold: 1, "-fold": 1 },
  percent: { "%": 1, percent: 1, percenterror: 1 }
};
var plainUnit = (unit) => unit.normalize("NFKC").replace(/[\\s^]/gu, "").replace(/[−–⁻]/gu, "-").replace(/[·⋅×.]/gu, "*").replace(/^\\*$/, "x");
var typedEntry = (typed, value = typed.value) => {
  const shift = typed.value === 0 ? 0 : Math.round(Math.log10(value / typed.value));
  return {
    value,
    figuresMin: typed.figures - typed.ambiguousZeros,
    figuresMax: typed.figures,
    lastPlace: typed.lastPlace + shift,
    isText: typed.isText
  };
};
var thousandsOrDecimals = /^[^\\d]*[1-9]\\d{0,2},\\d{3}(?:\\D|$)/;
function splitAtUnit(text) {
  const match = /^(.*?\\d[\\d\\s.,'’]*(?:(?:[eE]|\\s*[×x*·]\\s*10\\s*\\^?)\\s*[-+−]?\\d+|\\s*[×x*·]\\s*10[⁻⁺⁰¹²³⁴⁵⁶⁷⁸⁹]+)?)\\s*(-?[^\\d\\s.,;:'’+−-].*)$/su.exec(
    text.trim()
  );
  return (match == null ? void 0 : match[1]) !== void 0 && match[2] !== void 0 ? { number: match[1].trim(), unit: match[2].trim() } : void 0;
}
var signsOfSpellings = /(?<=\\p{L})\\s*[/*]\\s*\\(?(?=\\p{L})|(?<=\\p{L})\\^?[-−–]?\\d+|(?<=[\\p{L}\\d])[*.·]\\d*H2O/gu;
function unreadableBehind(unit) {
  const rest = unit.normalize("NFKC").replace(signsOfSpellings, "");
  if (/[/*÷^+√]|^[×x·⋅−–-]\\s*[\\d(.]|=\\s*\\S/u.test(rest)) return "calculation";
  return /[=?]/.test(rest) ? "more than a number" : void 0;
}
function unreadableText2(text) {
  const plain = text.normalize("NFKC");
  if (/^\\s*=.*\\d.*[-+*/^÷×(]|^\\s*=.*[-+*/^÷×(].*\\d|[\\d)]\\s*[-+−*/^÷×x·⋅]\\s*[\\d(]/su.test(plain)) {
    return /\\d-\\d+-\\d/.test(plain) ? "not a number" : "calculation";
  }
  if (thousandsOrDecimals.test(text)) return "two ways";
  return /\\d/.test(plain) && /[=?]/.test(plain) ? "more than a number" : "not a number";
}
function readEntry(cell, kind, options = {}) {
  if (isBlank(cell)) return { kind: "blank" };
  if (typeof cell !== "string" && typeof cell !== "number") return { kind: "unreadable", because: "other kind" };
  const marks = options.decimalMark ? { decimalMark: options.decimalMark } : {};
  const plain = readNumber(cell, "entry", marks);
  if (plain.ok) return { kind: "number", entry: typedEntry(plain.value), bare: typedEntry(plain.value), unit: "none" };
  const split = typeof cell === "string" ? splitAtUnit(cell) : void 0;
  const number = split && readNumber(split.number, "entry", marks);
  if (!split || !(number == null ? void 0 : number.ok)) {
    return { kind: "unreadable", because: typeof cell === "string" ? unreadableText2(cell) : "not a number" };
  }
  const bare = typedEntry(number.value);
  const own = kind === "molar mass" || kind === "ratio" || kind === "percent" ? ownUnits[kind] : void 0;
  const factor = own == null ? void 0 : own[plainUnit(split.unit)];
  if (factor !== void 0) {
    return { kind: "number", entry: typedEntry(number.value, number.value.value * factor), bare, unit: "fits" };
  }
  const measured = measurementKinds.find((known) => known === kind);
  const quantity = measured && readQuantity(cell, measured, "entry", marks);
  if (quantity == null ? void 0 : quantity.ok)
    return { kind: "number", entry: typedEntry(number.value, quantity.value.value), bare, unit: "fits" };
  const because = unitNamed(split.unit) ? void 0 : unreadableBehind(split.unit);
  return because ? { kind: "unreadable", because } : { kind: "number", entry: bare, bare, unit: "other kind" };
}

return { filled, unreadableText, feedbackText, readEntry };
`;
},
// Part CHECKENTRY: lab/checkEntry, functions/entries/checkEntryEntry
"CHECKENTRY"() {
  return `
const { filled, readEntry, unreadableText } = part("lab/readEntry");
const { closeness, figureWords, isOnTarget, isOneFigureOf, isTruncated, isWithin, remarks, toleranceOf } = part("lab/texts/feedback");
const { failure, rowByRow, success, withinLimits } = part("base");

// src/lab/checkEntry.ts
var kinds = ["volume", "mass", "amount", "concentration", "density", "percent"];
function readings(cell, decimalMark) {
  const asTyped = readEntry(cell, "ratio", { decimalMark });
  if (asTyped.kind !== "number" || asTyped.unit === "none") return [asTyped];
  const converted = kinds.map((kind) => readEntry(cell, kind, { decimalMark })).filter((read) => read.kind === "number" && read.unit === "fits");
  return [asTyped, ...converted];
}
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
      return { status: "close", lookAt: filled(remarks.closeFewFigures, { figures: figures != null ? figures : remarks.figuresAsked }) };
    }
    if (near) {
      return { status: "close", lookAt: isTruncated(entry, tolerance) ? remarks.closeCutOff : remarks.closeRounding };
    }
    if (isOneFigureOf(entry, tolerance)) {
      return { status: "not yet", lookAt: filled(remarks.oneFigure, { figures: figures != null ? figures : remarks.figuresAsked }) };
    }
  }
  if (entry.value === -target) return { status: "not yet", lookAt: remarks.signOnly };
  const power = Math.log10(Math.abs(entry.value / target));
  const isShifted = Number.isFinite(power) && Math.round(power) !== 0 && Math.abs(power - Math.round(power)) < 2e-3 && entry.value * target > 0;
  return { status: "not yet", lookAt: isShifted ? remarks.shifted : remarks.notYet };
}
function checkEntry(cell, wanted) {
  var _a;
  const { target, tolerancePercent, figures = 3, decimalMark } = wanted;
  const tolerance = toleranceOf({ low: target, middle: target, high: target }, { asked: { figures }, wideClose: true });
  const checks = readings(cell, decimalMark).map((read) => {
    if (read.kind === "blank") return { status: "blank", lookAt: "" };
    if (read.kind === "unreadable") return { status: "unreadable", lookAt: unreadableText(read.because) };
    return judge(read.entry, tolerance, tolerancePercent);
  });
  const [asTyped = { status: "blank", lookAt: "" }] = checks;
  return (_a = ["on target", "close"].map((best) => checks.find(({ status }) => status === best)).find(Boolean)) != null ? _a : asTyped;
}

// src/functions/entries/checkEntryEntry.ts
var checkEntryEntry = {
  name: "CHECKENTRY",
  arguments: [
    { name: "entry", kind: "entry", unit: "", about: "what was typed, with or without a unit" },
    { name: "target", kind: "number", unit: "", about: "the right value" },
    {
      name: "tolerance_percent",
      kind: "percentage points",
      unit: "%",
      about: "share of the target that counts as on target; honest rounding decides if left out",
      optional: true
    },
    {
      name: "figures",
      kind: "whole number",
      unit: "",
      about: "significant figures asked for, 1 to 15; 3 if left out",
      optional: true
    }
  ],
  columns: ["status", "what to look at"],
  call: rowByRow,
  compute(entry, target, tolerancePercent, figures) {
    if (target === 0 && tolerancePercent === void 0) {
      return failure({
        code: "target-zero",
        argument: "tolerance_percent",
        expected: "a tolerance with a target of 0",
        received: "none",
        advice: "Give a tolerance, such as 5."
      });
    }
    if (tolerancePercent !== void 0 && tolerancePercent < 0) {
      return failure({
        code: "out-of-limits",
        argument: "tolerance_percent",
        expected: "0 or more",
        received: \`\${tolerancePercent} %\`,
        advice: "Type it without the minus sign."
      });
    }
    const asked = withinLimits(figures, { argument: "figures", least: 1, most: 15 });
    if (!asked.ok) return asked;
    const { status, lookAt } = checkEntry(entry, { target, tolerancePercent, figures });
    return success([status, lookAt]);
  }
};
return { entry: checkEntryEntry };
`;
},
// Part chemistry/ions: chemistry/electrolytes
"chemistry/ions"() {
  return `
const { anhydrousAtoms, failure, listedAnions, listedCations, quoted, success } = part("base");

// src/chemistry/electrolytes.ts
var strongAcids = ["HCl", "HBr", "HI", "HNO3", "HClO4", "HClO3", "H2SO4"];
var weakElectrolytes = "CH3COOH HCOOH HF H3PO4 H3PO3 H2CO3 NH3 H2S HNO2 HClO HClO2 HBrO HCN H2SO3 H3BO3 C6H8O7 H2C2O4 C6H5COOH C2H5COOH C3H6O3 C4H6O6 C6H8O6 C6H5OH CH3NH2 C2H5NH2 (CH3)2NH C5H5N N2H4 H2O2S HIO3 C8H6O4 C7H6O3 H2CrO4 HSCN FeF3".split(" ");
var molecularSolutes = "C6H12O6 C12H22O11 CO(NH2)2 H2O2 C2H5OH CH3OH C3H7OH C3H8O3 C2H6O2 (CH3)2CO C6H14O6 C8H10N4O2 C4H8O HCHO CH3CN CS(NH2)2 O2 N2 CO2 C5H10O5 C18H32O16 C6H12O5 H2O".split(" ");
var solubleHydroxides = /* @__PURE__ */ new Set(["Li", "Na", "K", "Rb", "Cs", "Ba", "Sr", "NH4"]);
var always = /* @__PURE__ */ new Set(["Li", "Na", "K", "Rb", "Cs", "NH4", "H"]);
var except = {
  "Li F": false,
  "Li PO4": false,
  "Mg CrO4": true,
  "Ca CrO4": true,
  "Mg SO3": false,
  "Ag F": true,
  "Ag NO2": false,
  "Be SO4": true,
  "Hg Br": false,
  "Hg I": false,
  "Hg SCN": false,
  "Sn I": false,
  "Co NO2": false,
  "Ag BrO3": false,
  "Ba BrO3": false,
  "K IO4": false,
  "K BF4": false
};
var lowWith = {
  halide: /* @__PURE__ */ new Set(["Ag", "Pb", "Cu 1"]),
  fluoride: /* @__PURE__ */ new Set(["Mg", "Ca", "Sr", "Ba", "Pb", "Al", "Cu", "Fe 2", "Cr", "Th", "La", "Ce"]),
  iodate: /* @__PURE__ */ new Set(["Ag", "Ba", "Ca", "Cd", "Mn", "Pb", "Sr", "Zn"]),
  sulfate: /* @__PURE__ */ new Set(["Ba", "Sr", "Pb", "Ca", "Ag"])
};
var lowAnions = /* @__PURE__ */ new Set([
  "CO3",
  "PO4",
  "PO3",
  "AsO4",
  "BO3",
  "SiO3",
  "S",
  "SO3",
  "C2O4",
  "CrO4",
  "MoO4",
  "WO4",
  "B4O7",
  "C4H4O6",
  "SeO3",
  "HPO4"
]);
function isSparinglySoluble({
  cation,
  cationCharge,
  anion
}) {
  const own = except[\`\${cation} \${anion}\`];
  if (own !== void 0) return !own;
  if (anion === "OH") return !solubleHydroxides.has(cation);
  if (always.has(cation)) return false;
  if (anion === "S") return !["Mg", "Ca", "Sr", "Ba"].includes(cation);
  if (lowAnions.has(anion)) return true;
  const isAmong = (cations) => cations.has(cation) || cations.has(\`\${cation} \${cationCharge}\`);
  if (["Cl", "Br", "I", "SCN", "CN"].includes(anion)) return isAmong(lowWith.halide);
  if (anion === "F") return isAmong(lowWith.fluoride);
  if (anion === "IO3") return isAmong(lowWith.iodate);
  if (anion === "SO4") return isAmong(lowWith.sulfate);
  return false;
}

// src/chemistry/ions.ts
var countsOf = (atoms) => new Map(atoms.map(({ element, count }) => [element === "[2H]" ? "H" : element, count]));
var key = (counts) => [...counts].map(([element, count]) => \`\${element}\${count}\`).sort().join();
function atomsOfListed(body) {
  const counts = /* @__PURE__ */ new Map();
  const flat = body.replace(
    /\\(([^()]*)\\)(\\d*)/g,
    (_, inside, times) => inside.repeat(Number(times || 1))
  );
  const left = flat.replace(/([A-Z][a-z]?)(\\d*)/g, (_, element, count) => {
    var _a;
    counts.set(element, ((_a = counts.get(element)) != null ? _a : 0) + Number(count || 1));
    return "";
  });
  if (left !== "") throw new Error(\`The list of ions has \${body}, which is no plain formula.\`);
  return [...counts].map(([element, count]) => ({ element, count }));
}
var lists;
var byAtoms = () => lists != null ? lists : lists = {
  strong: new Set(strongAcids.map((body) => key(countsOf(atomsOfListed(body))))),
  weak: new Set(weakElectrolytes.map((body) => key(countsOf(atomsOfListed(body))))),
  molecular: new Set(molecularSolutes.map((body) => key(countsOf(atomsOfListed(body)))))
};
var knownIons;
var ionLists = () => knownIons != null ? knownIons : knownIons = {
  cations: listedCations().map((ion) => ({ ...ion, atoms: atomsOfListed(ion.body) })),
  // Larger ones first: hydrogen carbonate is looked for before carbonate.
  anions: listedAnions().filter(({ body }) => body !== "O" && body !== "O2").map((ion) => ({ ...ion, atoms: atomsOfListed(ion.body) })).sort((one, other) => total(other.atoms) - total(one.atoms))
};
var total = (atoms) => atoms.reduce((sum, { count }) => sum + count, 0);
var raised = (charge) => {
  const digits = Math.abs(charge) === 1 ? "" : "⁰¹²³⁴⁵⁶⁷⁸⁹".charAt(Math.abs(charge));
  return digits + (charge < 0 ? "⁻" : "⁺");
};
var lowered = (body) => body.replace(/\\d/g, (digit) => "₀₁₂₃₄₅₆₇₈₉".charAt(Number(digit)));
var ionText = ({ body, charge }) => \`\${body.includes("(CN)") || body.includes("(OH)") ? \`[\${lowered(body)}]\` : lowered(body)}\${raised(charge)}\`;
function without(counts, atoms, times) {
  var _a;
  const left = new Map(counts);
  for (const { element, count } of atoms) {
    const rest = ((_a = left.get(element)) != null ? _a : 0) - count * times;
    if (rest === 0) left.delete(element);
    else left.set(element, rest);
  }
  return left;
}
var countMax = 50;
function possibleCounts(counts, atoms) {
  var _a;
  const most = Math.min(...atoms.map(({ element, count }) => {
    var _a2;
    return Math.floor(((_a2 = counts.get(element)) != null ? _a2 : 0) / count);
  }));
  if (most < 1) return [];
  const own = atoms.find(({ element }) => !cationElements().has(element));
  if (own === void 0) return Array.from({ length: Math.min(most, countMax) }, (_, place) => most - place);
  const needed = ((_a = counts.get(own.element)) != null ? _a : 0) / own.count;
  return needed === most ? [needed] : [];
}
var elementsOfCations;
var cationElements = () => elementsOfCations != null ? elementsOfCations : elementsOfCations = new Set(
  ionLists().cations.flatMap(({ atoms }) => atoms.map(({ element }) => element)).filter((element) => element !== "O")
);
function cationsFor(counts, charge, mayHoldAmmonium) {
  var _a, _b;
  const [next] = [...counts.keys()].filter((element) => element !== "N" && element !== "H");
  if (next === void 0) {
    if (counts.size === 0) return charge === 0 ? [] : void 0;
    const nitrogen = counts.get("N");
    const symbol = nitrogen === void 0 ? "H" : "NH4";
    const ion = ionLists().cations.find(({ body }) => body === symbol);
    if (!ion || symbol === "NH4" && !mayHoldAmmonium) return void 0;
    const count2 = (_a = nitrogen != null ? nitrogen : counts.get("H")) != null ? _a : 0;
    const left = without(counts, ion.atoms, count2);
    return left.size === 0 && count2 === charge ? [{ ion, count: count2 }] : void 0;
  }
  const count = (_b = counts.get(next)) != null ? _b : 0;
  for (const ion of ionLists().cations.filter(({ body }) => body === next)) {
    const left = without(counts, ion.atoms, count);
    const rest = cationsFor(left, charge - count * ion.charge, mayHoldAmmonium);
    if (rest) return [{ ion, count }, ...rest];
  }
  return void 0;
}
function takenApart(formula) {
  const counts = countsOf(anhydrousAtoms(formula));
  const mayHoldAmmonium = /N\\s*H\\s*[4₄]|H4N/.test(formula.text);
  for (const ion of ionLists().anions) {
    for (const count of possibleCounts(counts, ion.atoms)) {
      const left = without(counts, ion.atoms, count);
      const cations = cationsFor(left, -ion.charge * count, mayHoldAmmonium);
      const hasHydrogen = (cations == null ? void 0 : cations.some(({ ion: { body } }) => body === "H")) === true;
      const isHalfDone = hasHydrogen && (cations.length > 1 || ion.body.startsWith("H"));
      if (cations && !isHalfDone) return { cations, anion: { ion, count } };
    }
  }
  return void 0;
}
var refusal = (error) => failure({ ...error, argument: "formula", expected: "a strong electrolyte or a molecular solute" });
function ions(formula) {
  const shown = quoted(formula.text);
  if (formula.charge !== 0) {
    return refusal({
      code: "formula-with-charge",
      received: \`the ion \${shown}\`,
      advice: "Type the substance that is dissolved, without a charge."
    });
  }
  const atoms = anhydrousAtoms(formula);
  const atomKey = key(countsOf(atoms));
  const { strong, weak, molecular } = byAtoms();
  const weakRefusal = () => refusal({
    code: "ions-weak",
    received: \`\${shown}, a weak electrolyte\`,
    advice: "Most of it stays whole in water: a formula alone cannot count its ions."
  });
  if (weak.has(atomKey)) return weakRefusal();
  const salt = takenApart(formula);
  const isAcid = (salt == null ? void 0 : salt.cations.every(({ ion: { body } }) => body === "H")) === true;
  if (molecular.has(atomKey) && (!salt || isAcid)) {
    const [ion = ""] = formula.text.split(/[·•*.∙⋅‧・]/);
    return success([{ ion: ion.trim(), count: 1, charge: 0, atoms }]);
  }
  if (!salt) {
    return refusal({
      code: "ions-unknown",
      received: \`\${shown}, which is not among those known here\`,
      advice: "Look up how it dissolves, and count its ions by hand."
    });
  }
  const { cations, anion } = salt;
  if (isAcid && !strong.has(atomKey)) return weakRefusal();
  const isLow = cations.some(
    ({ ion: { body, charge } }) => isSparinglySoluble({ cation: body, cationCharge: charge, anion: anion.ion.body })
  );
  if (isLow) {
    return refusal({
      code: "ions-sparingly",
      received: \`\${shown}, which dissolves below 1 g in 100 g of water\`,
      advice: "Choose a salt that dissolves."
    });
  }
  const isSulfuric = isAcid && anion.ion.body === "SO4";
  return success(
    [...cations, anion].map(({ ion, count }) => ({
      ion: ionText(ion),
      count,
      charge: ion.charge,
      atoms: ion.atoms,
      ...isSulfuric ? { note: "the second step is partial: some HSO₄⁻ stays whole" } : {}
    }))
  );
}

return { ions };
`;
},
// Part chemistry/namedIon
"chemistry/namedIon"() {
  return `
const { ions } = part("chemistry/ions");
const { failure, matchIon, quoted, success } = part("base");

// src/chemistry/namedIon.ts
function namedIon(formula, ion) {
  const present = ions(formula);
  if (!present.ok) return present;
  if (present.value.every(({ charge }) => charge === 0)) {
    return failure({
      code: "ion-none",
      argument: "formula",
      expected: "a substance that gives ions in water",
      received: \`\${quoted(formula.text)}, which stays whole\`,
      advice: "Its molecules are the particles: their molarity is that of the solution."
    });
  }
  const matched = matchIon(ion, present.value);
  if (!matched.ok) return matched;
  return success({ ion: matched.value, others: present.value.filter((one) => one !== matched.value) });
}

return { namedIon };
`;
},
// Part lesson: lab/givenCells, lab/ionCounts, lab/roundedWeight, lab/molarMassSpan, lab/worked, lab/stepTolerance and 19 more
"lesson"() {
  return `
const { namedIon } = part("chemistry/namedIon");
const { acceptedEnds, closeness, hasFiguresAsked, isOnTarget, isOneFigureOf, isTruncated, isWithin, lastFigureFilledUp, leadingPlace, relativeSlack, tenTo, toleranceOf } = part("lab/texts/feedback");
const { anhydrousAtoms, atomsOfUnits, density, diluentVolume, dilutedMolarity, dilutionFactor, elementOf, elements, failure, grams, gramsPerMillilitre, gramsPerMole, isBlank, isWater, massPercentOfDensity, millilitres, molarMass, molarity, molesPerLitre, percent, percentError, quoted, readFormula, readNumber, readQuantity, reagentMolarity, relativeMass, soluteMass, stockVolume, success } = part("base");

// src/lab/givenCells.ts
var plainName = (cell) => typeof cell === "string" ? cell.trim().toLowerCase().replace(/[\\s_]+/g, " ") : "";
var namesTaken = ({ takes }) => takes.map(({ name, optional }) => optional ? \`\${name} if you have one\` : name).join(", ");
function readGivenCells(quantity, table) {
  const cells = /* @__PURE__ */ Object.create(null);
  for (const row of table) {
    if (row.length !== 2) {
      return failure({
        code: "given-shape",
        argument: "given",
        expected: "two columns, name and value,",
        received: row.length === 1 ? "one column" : \`\${row.length} columns\`,
        advice: \`Put the names in the first column: \${namesTaken(quantity)}.\`
      });
    }
    const [nameCell, value] = row;
    if (isBlank(nameCell)) continue;
    const name = plainName(nameCell);
    if (!quantity.takes.some((argument) => argument.name === name)) {
      return failure({
        code: "given-unknown",
        argument: "given",
        expected: \`names that \${quantity.name} takes\`,
        received: quoted(nameCell),
        advice: \`It takes \${namesTaken(quantity)}.\`,
        brief: quoted(nameCell)
      });
    }
    if (name in cells) {
      return failure({
        code: "given-twice",
        argument: "given",
        expected: \`each name once\`,
        received: \`\${quoted(nameCell)} twice\`,
        advice: \`Keep one row for each of \${namesTaken(quantity)}.\`,
        brief: name
      });
    }
    cells[name] = value;
  }
  return success(cells);
}

// src/lab/ionCounts.ts
function ionCounts(formula, ion) {
  const named = namedIon(formula, String(ion));
  if (!named.ok) return named;
  return success({ ionCount: named.value.ion.count, otherIonCounts: named.value.others.map(({ count }) => count) });
}

// src/lab/roundedWeight.ts
function shortenedWeight(weight, kept) {
  if (decimalsOf(weight) <= kept) return { halfUp: weight, halfEven: weight, cutOff: weight };
  const shifted = Number(\`\${weight}e\${kept}\`);
  const below = Math.floor(shifted);
  const part = shifted - below;
  const halfUp = part >= 0.5 ? below + 1 : below;
  const halfEven = part === 0.5 && below % 2 === 0 ? below : halfUp;
  const unshifted = (whole) => Number(\`\${whole}e-\${kept}\`);
  return { halfUp: unshifted(halfUp), halfEven: unshifted(halfEven), cutOff: unshifted(below) };
}
function decimalsOf(weight) {
  const printed = String(weight);
  const point = printed.indexOf(".");
  return point < 0 ? 0 : printed.length - point - 1;
}
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

// src/lab/molarMassSpan.ts
function molarMassSpan({ atoms, byAtomicNumber, shortened }, decimals) {
  var _a;
  let low = 0;
  let middle = 0;
  let high = 0;
  for (const { element, count } of atoms) {
    const weight = byAtomicNumber ? (_a = elements().get(elementOf(element))) == null ? void 0 : _a.atomicNumber : relativeMass(element);
    if (weight === void 0) throw new Error(\`\${element} has no atomic weight, which is found before this\`);
    const own = shortened ? shortenedWeight(weight, shortened.decimals)[shortened.way] : weight;
    const rounded = byAtomicNumber || shortened ? { low: own, high: own } : roundedWeight(weight, decimals);
    low += count * rounded.low;
    middle += count * own;
    high += count * rounded.high;
  }
  return { low, middle, high };
}

// src/lab/worked.ts
function numbersWith(step2, molarMass2, carried) {
  const numbers = {
    ...step2.numbers,
    "molar mass": molarMass2,
    ...carried
  };
  for (const { name, relation } of step2.quantity.buildsOn) {
    if (carried[name] === void 0 && relation) numbers[name] = relation(numbers);
  }
  return numbers;
}
var ordered = (first, middle, last) => ({
  low: Math.min(first, middle, last),
  middle,
  high: Math.max(first, middle, last)
});
function spansOver(step2, calculation, {
  molarMass: molarMass2 = step2.molarMass,
  carried = {}
} = {}) {
  const at = (mass) => {
    const result = calculation(numbersWith(step2, mass, carried));
    return typeof result === "number" ? [result] : result;
  };
  if (!molarMass2) return at(Number.NaN).map((value) => ordered(value, value, value));
  const [low, high] = [at(molarMass2.low), at(molarMass2.high)];
  return at(molarMass2.middle).map((middle, index) => {
    var _a, _b;
    return ordered((_a = low[index]) != null ? _a : middle, middle, (_b = high[index]) != null ? _b : middle);
  });
}
function spanOver(step2, calculation, carried = {}) {
  const [span] = spansOver(step2, calculation, { carried });
  if (!span) throw new Error(\`\${step2.quantity.name}: a calculation gave no value\`);
  return span;
}

// src/lab/stepTolerance.ts
function stepTolerance(step2, carried = {}) {
  const { quantity, asked } = step2;
  return toleranceOf(spanOver(step2, quantity.relation, carried), {
    asked,
    wideClose: quantity.wideClose,
    ...quantity.neverFinerThan ? { coarsest: spanOver(step2, quantity.neverFinerThan, carried) } : {}
  });
}

// src/lab/slipsFound.ts
function slipSpans(step2, slip, carried = {}) {
  if ("value" in slip) return spansOver(step2, slip.value, { carried });
  if (!step2.formula) return [];
  const { decimals, quantity } = step2;
  return slip.molarMasses(step2.formula).flatMap((wrong) => spansOver(step2, quantity.relation, { molarMass: molarMassSpan(wrong, decimals), carried }));
}
var tellsApart = (span, tolerance) => {
  const accepted = acceptedEnds(tolerance);
  const slack = relativeSlack * Math.max(Math.abs(span.high), Math.abs(accepted.high));
  return span.high < accepted.low - slack || span.low > accepted.high + slack;
};
var usualFigures = 3;
var askedOfSlip = (asked) => "decimals" in asked ? asked : { figures: Math.min(asked.figures, usualFigures) };
var fitsSlip = (span, { entry, tolerance }) => tellsApart(span, tolerance) && isWithin(entry.value, span, entry.value === 0 ? 0 : lastFigureFilledUp(entry, askedOfSlip(tolerance.asked)) / 2);
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
  if (found.length > 0) return found.filter((id, index) => found.indexOf(id) === index);
  return isPowerOfTen(entry, tolerance) ? ["power-of-ten"] : [];
}
function slipsFound(step2, entry, others) {
  for (const carried of [{}, ...others]) {
    const found = slipsWith(step2, entry, carried);
    if (found.length > 0) return found;
  }
  return [];
}

// src/lab/judgeEntry.ts
function withoutHonestSign({ quantity, numbers }, entry) {
  const isSigned = quantity.name === "percent error" && entry.value < 0;
  return isSigned && numbers.measured < numbers.accepted ? { ...entry, value: -entry.value } : entry;
}
var figuresFit = (entry, { asked, placeLow, placeHigh }) => hasFiguresAsked(entry, asked) || // Where the last place is bound otherwise, as in a difference, that place is right too.
entry.lastPlace === leadingPlace(placeLow) || entry.lastPlace === leadingPlace(placeHigh);
function judgeEntry(step2, read, { rows = [], judgeFigures = false } = {}) {
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
  const near = closeness(entry, tolerance);
  if (near) {
    const isCutOff = near === "rounding" && isTruncated(entry, tolerance);
    return { status: "close", because: isCutOff ? "cut off" : near, asked };
  }
  const [followed] = fits;
  if (followed) return { status: "follows", lookAt: followed.lookAt };
  if (read.unit === "fits" && isOnTarget(read.bare.value, tolerance)) {
    return { status: "not yet", slips: [], question: "unit does not fit" };
  }
  const slips = slipsFound(
    step2,
    entry,
    rows.filter(({ sound }) => sound).map(({ carried }) => carried)
  );
  const saysShortAlone = slips.every((id) => id === "weights-rounded-early");
  if (saysShortAlone && isOneFigureOf(entry, tolerance)) {
    return { status: "not yet", slips: [], question: "one figure", asked };
  }
  if (slips.length === 0 && entry.value < 0) {
    const isSignAlone = step2.quantity.name === "percent error" && isOnTarget(-entry.value, tolerance);
    return { status: "not yet", slips, question: isSignAlone ? "sign" : "negative" };
  }
  return { status: "not yet", slips };
}

// src/lab/prepareStep.ts
var noNumbers = {
  molarity: Number.NaN,
  volume: Number.NaN,
  mass: Number.NaN,
  purity: 100,
  "stock molarity": Number.NaN,
  "target molarity": Number.NaN,
  "target volume": Number.NaN,
  "stock volume": Number.NaN,
  "final volume": Number.NaN,
  measured: Number.NaN,
  accepted: Number.NaN,
  "mass percent": Number.NaN,
  density: Number.NaN,
  "lighter percent": Number.NaN,
  "lighter density": Number.NaN,
  "heavier percent": Number.NaN,
  "heavier density": Number.NaN,
  "molar mass": Number.NaN,
  "moles of solute": Number.NaN,
  "dilution factor": Number.NaN,
  ionCount: Number.NaN,
  otherIonCounts: []
};
function askedOf(quantity, { figures, decimals = 2 }) {
  if (figures !== void 0) return { figures };
  return quantity.figures === "decimals" ? { decimals } : { figures: quantity.figures };
}
var comparedKinds = ["concentration", "mass", "volume", "density", "amount", "percent"];
function readAnyNumber(cell, name, { marks, kind }) {
  const plain = readNumber(cell, name, marks);
  if (plain.ok) return success({ value: plain.value.value, kind });
  for (const tried of kind ? [kind] : comparedKinds) {
    const quantity = readQuantity(cell, tried, name, marks);
    if (quantity.ok) return success({ value: quantity.value.value, kind: tried });
    if (kind) return quantity;
  }
  return plain;
}
function prepareStep(quantity, cells, preparation = {}) {
  var _a;
  const { decimals = 2, numbers: ready = {}, names = {} } = preparation;
  const marks = preparation.decimalMark ? { decimalMark: preparation.decimalMark } : {};
  const called = ({ name }) => {
    var _a2;
    return (_a2 = names[name]) != null ? _a2 : name;
  };
  const numbers = {};
  let formula;
  let compared;
  let ions;
  for (const argument of quantity.takes) {
    const cell = cells[argument.name];
    if (argument.kind !== "formula" && argument.kind !== "ion" && argument.name in ready) continue;
    if (isBlank(cell)) {
      if (argument.optional) continue;
      return failure({
        code: "given-missing",
        argument: called(argument),
        expected: "a value",
        received: "a blank",
        advice: \`\${quantity.name} takes \${namesTaken(quantity)}.\`,
        brief: called(argument)
      });
    }
    if (argument.kind === "formula") {
      const read = readFormula(cell, called(argument));
      if (!read.ok) return read;
      formula = read.value;
    } else if (argument.kind === "ion") {
      if (!formula) throw new Error(\`\${quantity.name}: the ion comes after its formula\`);
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
    quantity,
    formula: weighed,
    molarMass: span,
    numbers: { ...noNumbers, ...ions, ...numbers, ...ready },
    asked: askedOf(quantity, preparation),
    decimals
  };
  if (Object.values(ready).some(Number.isNaN)) return success(step2);
  const refused = quantity.chemistry({ ...step2.numbers, "molar mass": (_a = span == null ? void 0 : span.middle) != null ? _a : Number.NaN });
  return refused.ok ? success(step2) : failure({ ...refused.error, argument: sheetName(refused.error.argument, names) });
}
var givenNames = { grams: "mass", "purity percent": "purity" };
var sheetName = (argument, names) => {
  var _a, _b;
  const spaced = argument.replace(/_/g, " ");
  const name = (_a = givenNames[spaced]) != null ? _a : spaced;
  return (_b = names[name]) != null ? _b : name;
};

// src/lab/quantities/densityQuantity.ts
var densityQuantity = {
  name: "density",
  takes: [
    { name: "mass", kind: "mass", unit: "g" },
    { name: "volume", kind: "volume", unit: "mL" }
  ],
  entryKind: "density",
  unit: "g/mL",
  figures: 5,
  ownFigures: true,
  wideClose: false,
  buildsOn: [],
  chemistry: (n) => density({ mass: grams(n.mass), volume: millilitres(n.volume) }),
  relation: (n) => n.mass / n.volume,
  slips: [
    { id: "ratio-inverted", value: (n) => n.volume / n.mass },
    { id: "volume-in-litres", value: (n) => n.mass / (n.volume / 1e3) },
    { id: "mass-reported", value: (n) => n.mass },
    { id: "volumes-multiplied", value: (n) => n.mass * n.volume }
  ]
};

// src/lab/quantities/dilutedMolarityQuantity.ts
var dilutedMolarityQuantity = {
  name: "diluted molarity",
  takes: [
    { name: "stock molarity", kind: "concentration", unit: "mol/L" },
    { name: "stock volume", kind: "volume", unit: "mL" },
    { name: "final volume", kind: "volume", unit: "mL" }
  ],
  entryKind: "concentration",
  unit: "mol/L",
  figures: 3,
  wideClose: true,
  buildsOn: [],
  chemistry: (n) => dilutedMolarity({
    stock: molesPerLitre(n["stock molarity"]),
    stockVolume: millilitres(n["stock volume"]),
    finalVolume: millilitres(n["final volume"])
  }),
  relation: (n) => n["stock molarity"] * n["stock volume"] / n["final volume"],
  slips: [
    { id: "ratio-inverted", value: (n) => n["stock molarity"] * n["final volume"] / n["stock volume"] },
    {
      id: "solvent-added-to-final",
      value: (n) => n["stock molarity"] * n["stock volume"] / (n["stock volume"] + n["final volume"])
    },
    {
      id: "water-as-final",
      value: (n) => n["stock molarity"] * n["stock volume"] / (n["final volume"] - n["stock volume"])
    },
    { id: "molarity-unchanged", value: (n) => n["stock molarity"] }
  ]
};

// src/lab/quantities/dilutionFactor.ts
var dilutionFactor2 = {
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
  chemistry: (n) => dilutionFactor({ stock: molesPerLitre(n["stock molarity"]), target: molesPerLitre(n["target molarity"]) }),
  relation: (n) => n["stock molarity"] / n["target molarity"],
  slips: [
    { id: "ratio-inverted", value: (n) => n["target molarity"] / n["stock molarity"] },
    { id: "factor-less-one", value: (n) => n["stock molarity"] / n["target molarity"] - 1 },
    { id: "total-counted-twice", value: (n) => n["stock molarity"] / n["target molarity"] + 1 },
    { id: "total-over-water", value: (n) => n["stock molarity"] / (n["stock molarity"] - n["target molarity"]) },
    { id: "difference-for-ratio", value: (n) => n["stock molarity"] - n["target molarity"] }
  ]
};

// src/lab/quantities/ionMolarityQuantity.ts
var ionMolarityQuantity = {
  name: "ion molarity",
  takes: [
    { name: "formula", kind: "formula", unit: "" },
    { name: "molarity", kind: "concentration", unit: "mol/L" },
    { name: "ion", kind: "ion", unit: "" }
  ],
  entryKind: "concentration",
  unit: "mol/L",
  figures: 3,
  wideClose: true,
  buildsOn: [],
  chemistry: (n) => success(n.molarity * n.ionCount),
  relation: (n) => n.molarity * n.ionCount,
  slips: [
    { id: "ratio-inverted", value: (n) => n.molarity / n.ionCount },
    { id: "ion-count-ignored", value: (n) => n.molarity },
    {
      id: "all-ions-counted",
      value: (n) => n.molarity * n.otherIonCounts.reduce((all, count) => all + count, n.ionCount)
    },
    // One of another ion looks the same as no count at all, which is the plainer reading.
    {
      id: "other-ion's-count",
      value: (n) => n.otherIonCounts.filter((count) => count !== 1).map((count) => n.molarity * count)
    }
  ]
};

// src/lab/quantities/wrongAtoms.ts
var water = {
  coefficient: 1,
  parts: [
    { kind: "element", element: "H", count: 2 },
    { kind: "element", element: "O", count: 1 }
  ]
};
var isOfSalt = (unit, index) => index === 0 || !isWater(unit);
var withoutWater = (formula) => formula.hydrate ? [anhydrousAtoms(formula)] : [];
var oneWater = (formula) => formula.hydrate ? [atomsOfUnits([...formula.units.filter(isOfSalt), water])] : [];
function bracketsReplaced(parts, replace) {
  return parts.flatMap((part, index) => {
    if (part.kind === "element") return [];
    const put = (others) => [...parts.slice(0, index), ...others, ...parts.slice(index + 1)];
    const deeper = bracketsReplaced(part.parts, replace).map((inside) => put([{ ...part, parts: inside }]));
    return part.count === 1 ? deeper : [...replace(part.parts, part.count).map(put), ...deeper];
  });
}
var inUnits = ({ units }, replace) => units.flatMap(
  (unit, index) => bracketsReplaced(unit.parts, replace).map(
    (parts) => atomsOfUnits([...units.slice(0, index), { ...unit, parts }, ...units.slice(index + 1)])
  )
);
var bracketNumbersDropped = (formula) => inUnits(formula, (inside) => [inside]);
var bracketNumberOnOneAtom = (formula) => inUnits(formula, (inside, count) => {
  const last = inside.length - 1;
  if (last < 1) return [];
  return [0, last].map(
    (only) => inside.map((part, index) => index === only ? { ...part, count: part.count * count } : part)
  );
});
var onceEach = (parts) => parts.flatMap((part) => part.kind === "element" ? [{ ...part, count: 1 }] : onceEach(part.parts));
var symbolsCountedOnce = ({ units }) => [
  atomsOfUnits(
    units.map((unit, index) => isOfSalt(unit, index) ? { coefficient: 1, parts: onceEach(unit.parts) } : unit)
  )
];

// src/lab/quantities/formulaSlips.ts
var formulaSlips = [
  { id: "water-of-hydration-left-out", molarMasses: (formula) => withoutWater(formula).map((atoms) => ({ atoms })) },
  { id: "one-water-only", molarMasses: (formula) => oneWater(formula).map((atoms) => ({ atoms })) },
  {
    id: "group-subscript-ignored",
    molarMasses: (formula) => bracketNumbersDropped(formula).map((atoms) => ({ atoms }))
  },
  {
    id: "bracket-number-on-one-atom",
    molarMasses: (formula) => bracketNumberOnOneAtom(formula).map((atoms) => ({ atoms }))
  },
  { id: "subscripts-ignored", molarMasses: (formula) => symbolsCountedOnce(formula).map((atoms) => ({ atoms })) },
  { id: "atomic-numbers-used", molarMasses: ({ atoms }) => [{ atoms, byAtomicNumber: true }] }
];

// src/lab/quantities/molesOfSolute.ts
var molesOfSolute = {
  name: "moles of solute",
  takes: [
    { name: "molarity", kind: "concentration", unit: "mol/L" },
    { name: "volume", kind: "volume", unit: "mL" }
  ],
  entryKind: "amount",
  unit: "mol",
  figures: 3,
  wideClose: true,
  buildsOn: [],
  // As many grams as moles, where a mole has one gram.
  chemistry: (n) => soluteMass({
    molarMass: gramsPerMole(1),
    molarity: molesPerLitre(n.molarity),
    volume: millilitres(n.volume)
  }),
  relation: (n) => n.molarity * n.volume / 1e3,
  slips: [
    { id: "volume-in-mL", value: (n) => n.molarity * n.volume },
    { id: "volume-ignored", value: (n) => n.molarity },
    { id: "volumes-multiplied", value: (n) => n.molarity / (n.volume / 1e3) }
  ]
};

// src/lab/quantities/massOfSolute.ts
var massOfSolute = {
  name: "mass of solute",
  takes: [
    { name: "formula", kind: "formula", unit: "" },
    { name: "molarity", kind: "concentration", unit: "mol/L" },
    { name: "volume", kind: "volume", unit: "mL" },
    { name: "purity", kind: "percent", unit: "%", optional: true }
  ],
  entryKind: "mass",
  unit: "g",
  figures: 3,
  wideClose: true,
  buildsOn: [{ name: "molar mass" }, { name: "moles of solute", relation: molesOfSolute.relation }],
  chemistry: (n) => soluteMass({
    molarMass: gramsPerMole(n["molar mass"]),
    molarity: molesPerLitre(n.molarity),
    volume: millilitres(n.volume),
    purity: percent(n.purity)
  }),
  relation: (n) => n["moles of solute"] * n["molar mass"] / (n.purity / 100),
  slips: [
    { id: "volume-in-mL", value: (n) => n.molarity * n.volume * n["molar mass"] / (n.purity / 100) },
    { id: "volume-ignored", value: (n) => n.molarity * n["molar mass"] / (n.purity / 100) },
    { id: "moles-reported", value: (n) => n["moles of solute"] },
    { id: "ratio-inverted", value: (n) => n["moles of solute"] / n["molar mass"] / (n.purity / 100) },
    {
      id: "volumes-multiplied",
      value: (n) => n.molarity / (n.volume / 1e3) * n["molar mass"] / (n.purity / 100)
    },
    ...formulaSlips,
    { id: "purity-ignored", value: (n) => n["moles of solute"] * n["molar mass"] },
    { id: "purity-inverted", value: (n) => n["moles of solute"] * n["molar mass"] * (n.purity / 100) }
  ]
};

// src/lab/quantities/massPercentQuantity.ts
var share = (n) => (n.density - n["lighter density"]) / (n["heavier density"] - n["lighter density"]);
var step = (n) => n["heavier percent"] - n["lighter percent"];
var massPercentQuantity = {
  name: "mass percent",
  takes: [
    { name: "density", kind: "density", unit: "g/mL" },
    { name: "lighter percent", kind: "percent", unit: "%" },
    { name: "lighter density", kind: "density", unit: "g/mL" },
    { name: "heavier percent", kind: "percent", unit: "%" },
    { name: "heavier density", kind: "density", unit: "g/mL" }
  ],
  entryKind: "percent",
  unit: "%",
  figures: 3,
  wideClose: true,
  buildsOn: [],
  chemistry: (n) => massPercentOfDensity({
    density: gramsPerMillilitre(n.density),
    lighterPercent: percent(n["lighter percent"]),
    lighterDensity: gramsPerMillilitre(n["lighter density"]),
    heavierPercent: percent(n["heavier percent"]),
    heavierDensity: gramsPerMillilitre(n["heavier density"])
  }),
  relation: (n) => n["lighter percent"] + share(n) * step(n),
  slips: [
    { id: "table-line-taken", value: (n) => [n["lighter percent"], n["heavier percent"]] },
    { id: "middle-of-lines", value: (n) => (n["lighter percent"] + n["heavier percent"]) / 2 },
    { id: "share-mirrored", value: (n) => n["heavier percent"] - share(n) * step(n) },
    // From a line of 0 % it is the bare share, which has a slip of its own.
    { id: "step-unscaled", value: (n) => n["lighter percent"] === 0 ? [] : n["lighter percent"] + share(n) },
    { id: "line-not-added", value: (n) => share(n) * step(n) },
    { id: "share-reported", value: share },
    { id: "ratio-inverted", value: (n) => n["lighter percent"] + step(n) / share(n) }
  ]
};

// src/lab/quantities/molarity.ts
var pure = (n) => n.mass * (n.purity / 100);
var molarity2 = {
  name: "molarity",
  takes: [
    { name: "formula", kind: "formula", unit: "" },
    { name: "mass", kind: "mass", unit: "g" },
    { name: "volume", kind: "volume", unit: "mL" },
    { name: "purity", kind: "percent", unit: "%", optional: true }
  ],
  entryKind: "concentration",
  unit: "mol/L",
  figures: 3,
  wideClose: true,
  buildsOn: [{ name: "molar mass" }],
  chemistry: (n) => molarity({
    molarMass: gramsPerMole(n["molar mass"]),
    mass: grams(n.mass),
    volume: millilitres(n.volume),
    purity: percent(n.purity)
  }),
  relation: (n) => pure(n) / n["molar mass"] / (n.volume / 1e3),
  slips: [
    { id: "volume-in-mL", value: (n) => pure(n) / n["molar mass"] / n.volume },
    // Grams over litres, whether or not the purity was seen to.
    { id: "molar-mass-ignored", value: (n) => [n.mass / (n.volume / 1e3), pure(n) / (n.volume / 1e3)] },
    { id: "ratio-inverted", value: (n) => pure(n) * n["molar mass"] / (n.volume / 1e3) },
    { id: "volumes-multiplied", value: (n) => pure(n) / n["molar mass"] * (n.volume / 1e3) },
    { id: "amount-as-molarity", value: (n) => pure(n) / n["molar mass"] },
    { id: "volume-over-amount", value: (n) => n.volume / 1e3 / (pure(n) / n["molar mass"]) },
    ...formulaSlips,
    { id: "purity-ignored", value: (n) => n.mass / n["molar mass"] / (n.volume / 1e3) },
    { id: "purity-inverted", value: (n) => n.mass / (n.purity / 100) / n["molar mass"] / (n.volume / 1e3) }
  ]
};

// src/lab/quantities/molarMassQuantity.ts
var shortenings = [
  { decimals: 0, way: "halfUp" },
  { decimals: 1, way: "halfUp" },
  { decimals: 1, way: "halfEven" },
  { decimals: 1, way: "cutOff" }
];
var molarMassQuantity = {
  name: "molar mass",
  takes: [{ name: "formula", kind: "formula", unit: "" }],
  entryKind: "molar mass",
  unit: "g/mol",
  figures: "decimals",
  wideClose: false,
  buildsOn: [],
  chemistry: (n) => success(n["molar mass"]),
  relation: (n) => n["molar mass"],
  slips: [
    ...formulaSlips,
    { id: "weights-rounded-early", molarMasses: ({ atoms }) => shortenings.map((shortened) => ({ atoms, shortened })) }
  ]
};

// src/lab/quantities/percentErrorQuantity.ts
var gap = (n) => Math.abs(n.measured - n.accepted);
var percentErrorQuantity = {
  name: "percent error",
  takes: [
    { name: "measured", kind: "number", unit: "" },
    { name: "accepted", kind: "number", unit: "" }
  ],
  entryKind: "percent",
  unit: "%",
  figures: 2,
  ownFigures: true,
  wideClose: false,
  buildsOn: [],
  chemistry: (n) => percentError({ measured: n.measured, accepted: n.accepted }),
  relation: (n) => 100 * gap(n) / Math.abs(n.accepted),
  slips: [
    { id: "divided-by-measured", value: (n) => 100 * gap(n) / Math.abs(n.measured) },
    { id: "ratio-reported", value: (n) => 100 * n.measured / n.accepted },
    { id: "fraction-reported", value: (n) => gap(n) / Math.abs(n.accepted) },
    { id: "mean-as-base", value: (n) => 200 * gap(n) / Math.abs(n.measured + n.accepted) },
    { id: "difference-reported", value: (n) => gap(n) }
  ]
};

// src/lab/quantities/reagentMolarityQuantity.ts
var reagentMolarityQuantity = {
  name: "reagent molarity",
  takes: [
    { name: "formula", kind: "formula", unit: "" },
    { name: "mass percent", kind: "percent", unit: "%" },
    { name: "density", kind: "density", unit: "g/mL" }
  ],
  entryKind: "concentration",
  unit: "mol/L",
  figures: 3,
  wideClose: true,
  buildsOn: [{ name: "molar mass" }],
  chemistry: (n) => reagentMolarity({
    molarMass: gramsPerMole(n["molar mass"]),
    massPercent: percent(n["mass percent"]),
    density: gramsPerMillilitre(n.density)
  }),
  relation: (n) => 10 * n["mass percent"] * n.density / n["molar mass"],
  slips: [
    { id: "ratio-inverted", value: (n) => 10 * n["mass percent"] * n.density * n["molar mass"] },
    { id: "density-divided", value: (n) => 10 * n["mass percent"] / n.density / n["molar mass"] },
    { id: "percent-not-divided", value: (n) => 1e3 * n["mass percent"] * n.density / n["molar mass"] },
    { id: "percent-left-out", value: (n) => 1e3 * n.density / n["molar mass"] },
    { id: "density-ignored", value: (n) => 10 * n["mass percent"] / n["molar mass"] },
    { id: "per-mL-not-L", value: (n) => n["mass percent"] / 100 * (n.density / n["molar mass"]) }
  ]
};

// src/lab/quantities/stockVolumeQuantity.ts
var stockVolumeQuantity = {
  name: "stock volume",
  takes: [
    { name: "stock molarity", kind: "concentration", unit: "mol/L" },
    { name: "target molarity", kind: "concentration", unit: "mol/L" },
    { name: "target volume", kind: "volume", unit: "mL" }
  ],
  entryKind: "volume",
  unit: "mL",
  figures: 3,
  wideClose: true,
  buildsOn: [{ name: "dilution factor", relation: dilutionFactor2.relation }],
  chemistry: (n) => stockVolume({
    stock: molesPerLitre(n["stock molarity"]),
    target: molesPerLitre(n["target molarity"]),
    finalVolume: millilitres(n["target volume"])
  }),
  relation: (n) => n["target volume"] / n["dilution factor"],
  slips: [
    { id: "litres-reported", value: (n) => n["target volume"] / n["dilution factor"] / 1e3 },
    { id: "ratio-inverted", value: (n) => n["target volume"] * n["dilution factor"] },
    { id: "water-for-stock", value: (n) => n["target volume"] - n["target volume"] / n["dilution factor"] },
    { id: "volume-left-out", value: (n) => n["target molarity"] / n["stock molarity"] },
    {
      id: "amount-for-volume",
      value: (n) => [n["target molarity"] * n["target volume"], n["target molarity"] * n["target volume"] / 1e3]
    },
    {
      id: "parts-miscounted",
      value: (n) => [n["target volume"] / (n["dilution factor"] - 1), n["target volume"] / (n["dilution factor"] + 1)]
    }
  ]
};

// src/lab/quantities/waterVolume.ts
var stockVolume2 = (n) => n["target molarity"] / n["stock molarity"] * n["target volume"];
var waterVolume = {
  name: "water volume",
  takes: stockVolumeQuantity.takes,
  entryKind: "volume",
  unit: "mL",
  figures: 3,
  wideClose: true,
  buildsOn: [{ name: "stock volume", relation: stockVolume2 }],
  chemistry: (n) => diluentVolume({
    stock: molesPerLitre(n["stock molarity"]),
    target: molesPerLitre(n["target molarity"]),
    finalVolume: millilitres(n["target volume"])
  }),
  relation: (n) => n["target volume"] - n["stock volume"],
  // A difference is no finer than what was taken away.
  neverFinerThan: (n) => n["stock volume"],
  slips: [
    { id: "litres-reported", value: (n) => (n["target volume"] - n["stock volume"]) / 1e3 },
    { id: "stock-for-water", value: (n) => n["stock volume"] },
    { id: "final-volume-for-water", value: (n) => n["target volume"] },
    { id: "volumes-added", value: (n) => n["target volume"] + n["stock volume"] },
    { id: "sign-reversed", value: (n) => n["stock volume"] - n["target volume"] }
  ]
};

// src/lab/quantities.ts
var quantities = {
  "molar mass": molarMassQuantity,
  "moles of solute": molesOfSolute,
  "mass of solute": massOfSolute,
  molarity: molarity2,
  "stock volume": stockVolumeQuantity,
  "water volume": waterVolume,
  "dilution factor": dilutionFactor2,
  "diluted molarity": dilutedMolarityQuantity,
  "ion molarity": ionMolarityQuantity,
  "percent error": percentErrorQuantity,
  "reagent molarity": reagentMolarityQuantity,
  density: densityQuantity,
  "mass percent": massPercentQuantity
};
var quantityNames = Object.keys(quantities);
var isQuantityName = (text) => quantityNames.includes(text);

return { plainName, readGivenCells, ionCounts, spanOver, stepTolerance, slipSpans, fitsSlip, judgeEntry, prepareStep, quantities, isQuantityName };
`;
},
// Part lab/checkStep
"lab/checkStep"() {
  return `
const { isQuantityName, judgeEntry, plainName, prepareStep, quantities, readGivenCells } = part("lesson");
const { feedbackText, readEntry } = part("lab/readEntry");
const { failure, quoted, success } = part("base");

// src/lab/checkStep.ts
function readQuantityName(cell) {
  const name = plainName(cell);
  if (isQuantityName(name)) return success(name);
  return failure({
    code: "quantity-unknown",
    argument: "quantity",
    expected: "the name of a quantity",
    received: quoted(cell),
    advice: \`Use one of \${Object.keys(quantities).join(", ")}.\`
  });
}
function readStep(quantity, given, options = {}) {
  const name = readQuantityName(quantity);
  if (!name.ok) return name;
  const cells = readGivenCells(quantities[name.value], given);
  return cells.ok ? prepareStep(quantities[name.value], cells.value, options) : cells;
}
function checkReadyStep(step, entry) {
  const judgement = judgeEntry(step, readEntry(entry, step.quantity.entryKind));
  return {
    status: judgement.status,
    feedback: feedbackText(judgement, step.quantity),
    slip: judgement.status === "not yet" ? judgement.slips.join(" or ") : ""
  };
}

return { readQuantityName, readStep, checkReadyStep };
`;
},
// Part CHECKSTEP: functions/entries/checkStepEntry
"CHECKSTEP"() {
  return `
const { checkReadyStep, readStep } = part("lab/checkStep");





const { rowByRow, success, withinLimits } = part("base");

// src/functions/entries/checkStepEntry.ts
var checkStepEntry = {
  name: "CHECKSTEP",
  arguments: [
    { name: "quantity", kind: "text", unit: "", about: "what is asked for, such as mass of solute" },
    { name: "given", kind: "table", unit: "", about: "given numbers in two columns, name and value" },
    { name: "entry", kind: "entry", unit: "", about: "what was typed, with or without a unit" },
    {
      name: "figures",
      kind: "whole number",
      unit: "",
      about: "significant figures asked for; the usual number for the quantity if left out",
      optional: true
    },
    {
      name: "atomic_weight_decimals",
      kind: "whole number",
      unit: "",
      about: "decimals that atomic weights may be rounded to; 2 if left out",
      optional: true
    }
  ],
  columns: ["status", "feedback", "slip"],
  call: rowByRow,
  compute(quantity, given, entry, figures, decimals) {
    const asked = withinLimits(figures, { argument: "figures", least: 1, most: 15 });
    if (!asked.ok) return asked;
    const rounded = withinLimits(decimals, { argument: "atomic_weight_decimals", least: 0, most: 10 });
    if (!rounded.ok) return rounded;
    const step = readStep(quantity, given, { figures, decimals });
    if (!step.ok) return step;
    const { status, feedback, slip } = checkReadyStep(step.value, entry);
    return success([status, feedback, slip]);
  }
};
return { entry: checkStepEntry };
`;
},
// Part measurement/glasswareTolerance
"measurement/glasswareTolerance"() {
  return `
const { failure, glassware, millilitres, quoted, success } = part("base");

// src/measurement/glasswareTolerance.ts
var glasswareKinds = {
  "volumetric flask": { ISO: "ISO 1042", ASTM: "ASTM E288" },
  "volumetric pipette": { ISO: "ISO 648", ASTM: "ASTM E969" },
  "graduated pipette": { ISO: "ISO 835", ASTM: "ASTM E1293" },
  burette: { ISO: "ISO 385", ASTM: "ASTM E287" },
  "graduated cylinder": { ISO: "ISO 4788", ASTM: "ASTM E1272" },
  beaker: void 0
};
var bases = { m: "memory", c: "practice" };
function glasswareFigures({
  kind,
  glassClass = "A",
  standard = "ISO"
}) {
  var _a;
  const list = (_a = glassware[glasswareKinds[kind] === void 0 ? kind : \`\${standard} \${kind} \${glassClass}\`]) != null ? _a : "";
  return list.split(" ").map((line) => {
    const [size, tolerance, mark] = line.split(":");
    return {
      volume: millilitres(Number(size)),
      tolerance: millilitres(Number(tolerance)),
      basis: mark === "m" || mark === "c" ? bases[mark] : "source"
    };
  });
}
var sizeText = ({ volume, tolerance }) => \`\${volume} mL (± \${tolerance} mL)\`;
function glasswareTolerance(wanted) {
  var _a, _b;
  const { kind, volume, standard = "ISO" } = wanted;
  const figures = glasswareFigures(wanted);
  const found = figures.find((figure) => Math.abs(figure.volume - volume) <= 1e-9 * figure.volume);
  if (found) return success(found);
  const smaller = figures.filter((figure) => figure.volume < volume).pop();
  const larger = figures.find((figure) => figure.volume > volume);
  const neighbours = [smaller, larger].flatMap((figure) => figure ? [figure] : []);
  const table = (_b = (_a = glasswareKinds[kind]) == null ? void 0 : _a[standard]) != null ? _b : "the table of beakers";
  return failure({
    code: "glassware-size",
    argument: "volume",
    expected: \`a size of \${kind} in \${table}\`,
    received: \`\${quoted(volume)} mL\`,
    advice: \`Take \${neighbours.map(sizeText).join(" or ")}.\`,
    brief: neighbours.map((figure) => \`\${figure.volume}\`).join(" or ")
  });
}

return { glasswareFigures, glasswareTolerance };
`;
},
// Part chemistry/atomsKey: lab/activities/commonGivens, lab/letterOf, lab/seededRandom, lab/lettered, lab/questions/crystalWater, lab/questions/diluteAcid and 51 more
"chemistry/atomsKey"() {
  return `
const { glasswareFigures } = part("measurement/glasswareTolerance");
const { cautionTexts, cautions } = part("chemistry/cautions");
const { plainName } = part("lesson");
const { anhydrousAtoms, failure, finite, gramsPerMillilitre, isBlank, millilitres, molarMass, molesPerLitre, notALine, notAboveZero, percent, quoted, readFormula, readQuantity, restAfter, scanNumber, success } = part("base");

// src/lab/activities/commonGivens.ts
var commonGivens = {
  formula: { name: "formula", unit: "", about: "solute as its bottle says, with water of hydration", start: "KBr" },
  molarity: { name: "molarity", unit: "mol/L", about: "concentration that is made", start: "0.250" },
  stock: { name: "stock molarity", unit: "mol/L", about: "concentration of the stock", start: "0.300" },
  flask: { name: "flask", unit: "mL", about: "volume of the flask that is filled", start: "200" },
  target: { name: "target molarity", unit: "mol/L", about: "concentration after the dilution", start: "0.0450" },
  volume: { name: "target volume", unit: "mL", about: "volume after the dilution", start: "100" },
  ion: { name: "ion", unit: "", about: "ion that is asked about", start: "Br-" },
  purity: { name: "purity", unit: "%", about: "mass percent of solute in the solid" }
};

// src/lab/letterOf.ts
var letterOf = (place) => String.fromCharCode(97 + place);

// src/lab/seededRandom.ts
var hashOf = (text) => {
  let hash = 2166136261;
  for (let at = 0; at < text.length; at += 1) hash = Math.imul(hash ^ text.charCodeAt(at), 16777619);
  return hash >>> 0;
};
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
  for (let last = dealt.length - 1; last > 0; last -= 1) {
    const drawn = Math.floor(random() * (last + 1));
    const moved = dealt[last];
    dealt[last] = dealt[drawn];
    dealt[drawn] = moved;
  }
  return dealt;
}

// src/lab/lettered.ts
var lettered = (name, items) => shuffled(items, seededRandom(name)).map((item, place) => ({ letter: letterOf(place), item }));

// src/lab/questions/crystalWater.ts
var crystalWater = {
  name: "crystal water",
  // True of every formula, since a team may have one without water.
  stem: [
    "Look at ",
    { given: "formula" },
    ". Water after a dot in a formula is part of the crystals. Where is such water once the flask is full?"
  ],
  right: {
    id: "joins the rest",
    text: ["It is part of the water in the flask, and the mark takes care of the volume."],
    reply: "Yes: it counted on the balance, and in the flask it is water like the rest."
  },
  others: [
    {
      id: "stays bound",
      text: ["It stays bound to the salt, in little crystals."],
      reply: "The solution is clear. What has happened to the crystals that held the water?"
    },
    {
      id: "extra volume",
      text: ["It is extra, so the volume is more than the flask says."],
      reply: "Up to where did you fill, and was that water in the flask already?"
    },
    {
      id: "more moles",
      text: ["It makes more moles of salt, one for each water."],
      reply: "One formula unit comes with its waters. How many units of the salt itself is that?"
    },
    {
      id: "gone on balance",
      text: ["It does not count at all, not on the balance either."],
      reply: "If the water weighed nothing, would the molar mass need the part after the dot?"
    }
  ],
  hints: [
    "Follow the water: from the bottle to the balance, and from there to the flask.",
    "The mark fixes the volume of everything together, whichever way the water came in.",
    ["Your flask holds ", { given: "flask" }, " mL in all. Whose water fills it up to there?"]
  ]
};

// src/lab/questions/diluteAcid.ts
var diluteAcid = {
  name: "dilute acid",
  stem: [
    "The ",
    { given: "formula" },
    " from the bottle now has ",
    { given: "target molarity" },
    " mol/L. What did the water do?"
  ],
  right: {
    id: "spread out",
    text: ["It spread the acid out. It is the same acid, and fewer particles of it are in each mL."],
    reply: "Yes: dilute says how crowded. Strong and weak say how far an acid comes apart."
  },
  others: [
    {
      id: "used up",
      text: ["It used up most of the acid."],
      reply: "If the acid were used up, what would have taken its place?"
    },
    {
      id: "neutral",
      text: ["It made the acid neutral, so no care is needed."],
      reply: "Would you leave the goggles off? What is still in the flask?"
    },
    {
      id: "another acid",
      text: ["It turned it into another, weaker kind of acid."],
      reply: "Does the word weak tell you how much water there is, or what the acid itself does?"
    }
  ],
  hints: [
    "Keep two words apart: dilute and weak.",
    "Dilution changes how many particles are in each mL. Does it change what they are?",
    ["Each litre in the flask now holds ", { given: "target molarity" }, " mol. Where did they come from?"]
  ]
};

// src/lab/questions/dilutionParticles.ts
var dilutionParticles = {
  name: "dilution particles",
  stem: [
    "Your portion of stock is now part of ",
    { given: "target volume" },
    " mL. Compare the dissolved ",
    { given: "formula" },
    " before and after the water went in."
  ],
  right: {
    id: "spread out",
    text: ["Just as much of it, spread through more water."],
    reply: "Yes: the water spreads the particles out. None are made or lost, so each mL holds fewer of them."
  },
  others: [
    {
      id: "amount falls",
      text: ["Less of it, because the molarity went down."],
      reply: "Molarity says how crowded the particles are. If none left the flask, where could the others have gone?"
    },
    {
      id: "amount grows",
      text: ["More of it, because there is more solution."],
      reply: "The volume grew because of water. Does water bring any of the solute with it?"
    },
    {
      id: "same molarity",
      text: ["Just as much of it, and just as much in each mL."],
      reply: "Picture one mL before and one mL after. Would you count the same number in both?"
    },
    {
      id: "weaker particles",
      text: ["The same number of particles, but each one is weaker."],
      reply: "Can water change one particle, or only how far apart they are?"
    }
  ],
  hints: [
    "Keep two things apart: how much there is, and how crowded it is.",
    "amount = molarity × volume. If one of the two goes down and the other up, what does the amount do?",
    [
      "Before: ",
      { given: "stock molarity" },
      " mol/L in your portion. After: ",
      { given: "target molarity" },
      " mol/L in ",
      { given: "target volume" },
      " mL. Picture every particle of the portion, then pour in the water."
    ]
  ]
};

// src/lab/questions/impureSolidQuestion.ts
var impureSolidQuestion = {
  name: "impure solid",
  stem: [
    "Your solid is ",
    { given: "purity" },
    " % ",
    { given: "formula" },
    ". Compare it with a pure one of the same mass, each in its own flask of the same size."
  ],
  right: {
    id: "fewer",
    text: ["Its flask holds fewer particles of the solute."],
    reply: "Yes: part of what the balance showed is something else. That is why you weigh out more."
  },
  others: [
    {
      id: "same",
      text: ["Both flasks hold just as many, since the balance showed the same."],
      reply: "Can the balance tell the solute from what is mixed into it?"
    },
    {
      id: "more",
      text: ["Its flask holds more particles of the solute."],
      reply: "If part of the mass is something else, what is left for the solute?"
    },
    {
      id: "smaller",
      text: ["It holds as many, but the particles are less pure ones."],
      reply: "Look at one particle. Is it the particle that is impure, or the heap it came from?"
    }
  ],
  hints: [
    "A balance weighs all that lies on it.",
    "mass of solute = mass of solid × purity ÷ 100",
    ["Of every 100 g of your solid, ", { given: "purity" }, " g are solute. What are the rest?"]
  ]
};

// src/lab/questions/ionShare.ts
var ionShare = {
  name: "ion share",
  stem: [
    "More water goes into the ",
    { given: "formula" },
    " solution. Count each kind of ion in one mL, before and after. How do the kinds compare?"
  ],
  right: {
    id: "same ratio",
    text: ["There are fewer of each, in the same ratio to each other as before."],
    reply: "Yes: the formula sets the ratio. Water spreads all kinds out alike."
  },
  others: [
    {
      id: "equal",
      text: ["The more water, the closer the numbers come to each other."],
      reply: "To come closer, one kind would have to thin out faster. What would hold the others back?"
    },
    {
      id: "only one",
      text: ["Only the positive ones get fewer."],
      reply: "What would the charges in that mL add up to?"
    },
    {
      id: "depends",
      text: ["That depends on how much water went in."],
      reply: "Does water bring ions of the salt, or take some of one kind away?"
    }
  ],
  hints: [
    "Follow one formula unit and all of its ions while the water goes in.",
    "Each kind is spread through the same, larger volume. By which factor does each get less crowded?",
    ["Draw ten units of ", { given: "formula" }, " as ions in a small box, then the same ions in a larger one."]
  ]
};

// src/lab/questions/lastFlask.ts
var lastFlask = {
  name: "last flask",
  stem: [
    "Take one mL from the first flask and one mL from the third. Compare the dissolved ",
    { given: "formula" },
    "."
  ],
  right: {
    id: "fewer in each mL",
    text: ["The same kind of particles, and fewer of them in the mL from the third."],
    reply: "Yes: each flask spreads its portion out again, and the particles stay what they are."
  },
  others: [
    {
      id: "same number",
      text: ["Just as many in both, since each flask got the same portion."],
      reply: "The portions had the same volume. Were they equally crowded?"
    },
    {
      id: "smaller",
      text: ["Just as many in both, but smaller ones in the third."],
      reply: "Can water cut a particle, or only move in between?"
    },
    {
      id: "same steps",
      text: ["Fewer in the third, by the same number as in the step before."],
      reply: "Does each flask take the same number away, or the same share?"
    },
    {
      id: "more",
      text: ["More of them in the third, since it was diluted more often."],
      reply: "What joined the portion each time: solute or water?"
    }
  ],
  hints: [
    "Follow one portion: what comes along with it, and what joins it?",
    "Each flask keeps the same share of the molarity before: portion ÷ flask.",
    [
      "Each time ",
      { given: "portion" },
      " mL become ",
      { given: "flask" },
      " mL. What does that do to how crowded they are?"
    ]
  ]
};

// src/lab/questions/overNight.ts
var overNight = {
  name: "over night",
  stem: [
    "A clear, well mixed ",
    { given: "formula" },
    " solution stands overnight with its stopper in. Where is it stronger in the morning?"
  ],
  right: {
    id: "even",
    text: ["It is as strong at the top as at the bottom."],
    reply: "Yes: particles never stop moving about, and nothing sorts them once they are spread out."
  },
  others: [
    {
      id: "bottom",
      text: ["At the bottom, since the solute is heavier."],
      reply: "Sand settles. Is a single particle among water like a grain of sand?"
    },
    {
      id: "top",
      text: ["At the top, since the water sinks."],
      reply: "What would have to hold the water and the solute apart for one of them to sink?"
    },
    {
      id: "solid",
      text: ["Nowhere: the solid is back at the bottom by then."],
      reply: "No water left the flask. What would push the particles out of it?"
    }
  ],
  hints: [
    "Think of what particles do when nobody is looking.",
    "Mixing happens by itself. Does unmixing?",
    ["Follow one particle of ", { given: "formula" }, " through the night. Does it rest?"]
  ]
};

// src/lab/questions/portionStrength.ts
var portionStrength = {
  name: "portion strength",
  stem: ["Half of your ", { given: "formula" }, " solution is poured into a clean, dry beaker. What is in the beaker?"],
  right: {
    id: "same molarity",
    text: ["A solution of the same molarity, with half of the amount."],
    reply: "Yes: each mL holds what it held before. There are just fewer mL."
  },
  others: [
    {
      id: "half molarity",
      text: ["A solution of half the molarity."],
      reply: "Does a spoonful taste weaker than the bowl that it came from?"
    },
    {
      id: "double molarity",
      text: ["A solution of twice the molarity, since it is in less space."],
      reply: "The particles moved together with their water. Did anything bring them closer to each other?"
    },
    {
      id: "same amount",
      text: ["A solution of the same molarity, with the same amount."],
      reply: "What stayed in the flask? Can all of the solute be in the beaker?"
    },
    {
      id: "beaker decides",
      text: ["That depends on the size of the beaker."],
      reply: "Does an empty, dry beaker add anything or take anything away?"
    }
  ],
  hints: [
    "Keep two things apart: how much there is, and how crowded it is.",
    "amount = molarity × volume. Which of the three changes when you pour?",
    ["Think of one mL of your ", { given: "molarity" }, " mol/L solution. Is that mL changed by being poured?"]
  ]
};

// src/lab/questions/separateIons.ts
var separateIons = {
  name: "separate ions",
  stem: ["The ", { given: "formula" }, " has all dissolved. What comes from one formula unit?"],
  right: {
    id: "separate",
    text: ["Each ion by itself, as many of each kind as the formula says."],
    reply: "Yes: water comes between the ions, and a small number in the formula counts ions that are apart."
  },
  others: [
    {
      id: "one piece",
      text: ["One piece: the ions of a unit stay side by side."],
      reply: "Salt water carries a current. Could it, if each piece had no charge left over?"
    },
    {
      id: "clump",
      text: ["Ions of the same kind stuck together in one clump."],
      reply: "Ions of the same kind have the same charge. Would they hold on to each other?"
    },
    {
      id: "atoms",
      text: ["Atoms without a charge, one for each letter of the formula."],
      reply: "What would have to happen for an ion to lose its charge? Does water do that?"
    },
    {
      id: "one each",
      text: ["One ion of each kind, whatever the formula says."],
      reply: "Add up the charges of what you chose. Does the solution as a whole have a charge?"
    }
  ],
  hints: [
    "Ask what water does to a crystal: which parts can it pull apart?",
    "All charges in a solution add up to nothing. Count ions until they do.",
    ["Write ", { given: "formula" }, " as its ions, each with its charge. How many of each make the charges even?"]
  ]
};

// src/lab/questions/wholeMolecules.ts
var wholeMolecules = {
  name: "whole molecules",
  stem: ["The ", { given: "formula" }, " has all dissolved, and the solution looks like water. What is in it?"],
  right: {
    id: "whole",
    text: ["Whole molecules of it, apart from each other, among those of water."],
    reply: "Yes: water pulls the molecules away from each other and leaves each of them whole."
  },
  others: [
    {
      id: "atoms",
      text: ["The atoms of its formula, each by itself."],
      reply: "Dry the solution and the solid is back. Could loose atoms find their places again?"
    },
    {
      id: "ions",
      text: ["Positive and negative ions."],
      reply: "Would this solution carry a current the way salt water does?"
    },
    {
      id: "melted",
      text: ["The solid in liquid form: it has melted."],
      reply: "Melting needs warmth and only one substance. What did the water do here?"
    },
    {
      id: "gone",
      text: ["Only water: the solid is gone."],
      reply: "Put the flask on a balance before and after. Would the reading drop?"
    }
  ],
  hints: [
    "Not to be seen is not the same as not there.",
    "Water can part molecules from each other. Parting the atoms of one takes a reaction.",
    ["Picture one molecule of ", { given: "formula" }, " at the edge of the solid. What does the water pull on?"]
  ]
};

// src/lab/questions.ts
var allQuestions = () => [
  dilutionParticles,
  portionStrength,
  crystalWater,
  impureSolidQuestion,
  lastFlask,
  diluteAcid,
  separateIons,
  ionShare,
  wholeMolecules,
  overNight
];
function questionByName(name) {
  const found = allQuestions().find((question) => question.name === name);
  if (found === void 0) throw new Error(\`No question is called “\${name}”.\`);
  return found;
}

// src/lab/texts/choosing.ts
var choiceTexts = {
  oneLetter: (letters) => \`Write one letter, \${letters[0]} to \${letters[letters.length - 1]}. Your reason can follow after a comma.\`
};

// src/lab/checkChoice.ts
function letteredOptions(questionName) {
  const { right, others } = questionByName(questionName);
  return lettered(questionName, [right, ...others]);
}
function chosenLetter(entry) {
  if (typeof entry !== "string") return void 0;
  const read = /^[\\s([{"'“‘]*(\\p{L})[\\s)\\]}.:;,"'”’–—-]*(?:$|(?<=[).:;,–—-]\\s*)\\S.{2,}|because\\b.*)/su.exec(
    entry.normalize("NFKC").toLowerCase()
  );
  return read == null ? void 0 : read[1];
}
function checkChoice(questionName, entry) {
  if (isBlank(entry)) return { status: "blank", lookAt: "" };
  const options = letteredOptions(questionName);
  const letter = chosenLetter(entry);
  const chosen2 = options.find((option) => option.letter === letter);
  if (chosen2 === void 0) {
    return { status: "unreadable", lookAt: choiceTexts.oneLetter(options.map((option) => option.letter)) };
  }
  const isRight = chosen2.item.id === questionByName(questionName).right.id;
  return { status: isRight ? "on target" : "not yet", lookAt: chosen2.item.reply };
}

// src/lab/procedures/concentratedAcid.ts
var concentratedAcid = {
  name: "concentrated acid",
  actions: [
    { id: "protect", text: "Read the safety data sheet; goggles, gloves and coat on; fume hood running." },
    { id: "water", text: "Pour a good part of the water into a heat-proof beaker." },
    { id: "acid", text: "Let the acid run slowly into the beaker while you stir." },
    { id: "stir", text: "Stir on until it is even throughout." },
    { id: "cool", text: "Let it cool to room temperature." },
    { id: "transfer", text: "Pour it into the volumetric flask and rinse the beaker in." },
    { id: "mark", text: "Add water drop by drop to the mark, at eye level." },
    { id: "mix", text: "Put the stopper in and turn the flask over many times." },
    { id: "label", text: "Label the flask before it is put away." }
  ],
  rules: [
    {
      before: "protect",
      after: "acid",
      weight: "safety",
      ask: "Stop: be protected before any acid is poured. What could a splash or the vapour reach?"
    },
    {
      before: "water",
      after: "acid",
      weight: "safety",
      ask: "Stop: water goes in first, then the acid, slowly. What would the heat do to a little water on top of acid?"
    },
    { before: "acid", after: "stir", weight: "needed", ask: "What is there to mix while there is only water?" },
    {
      before: "stir",
      after: "cool",
      weight: "needed",
      ask: "Mixing sets heat free. So when is the waiting of use?"
    },
    {
      before: "cool",
      after: "transfer",
      weight: "needed",
      ask: "What can heat do to a flask that is made to hold one exact volume?"
    },
    { before: "transfer", after: "mark", weight: "needed", ask: "What is in the flask when you reach the mark?" },
    {
      before: "mark",
      after: "mix",
      weight: "needed",
      ask: "Water added after the mixing stays on top. Is the solution the same all through?"
    },
    { before: "transfer", after: "label", weight: "needed", ask: "What would the label say while the flask is empty?" },
    {
      before: "mix",
      after: "label",
      weight: "advised",
      ask: "A tip: write the label as soon as you know what is inside, and check it again at the end."
    }
  ],
  hints: [
    "Heat is what makes this one different. Where can it go, and whom can it hurt?",
    "Think of three places: outside the hood, the beaker, the flask. Which letters belong to which?",
    "Ask of each letter: would you do this with acid that is hot, or with no goggles on?"
  ]
};

// src/lab/procedures/dryResidue.ts
var dryResidue = {
  name: "weighed residue",
  actions: [
    { id: "protect", text: "Goggles on, hair tied back, face away: a drying salt can spatter." },
    { id: "dish", text: "Weigh the clean, dry dish." },
    { id: "portion", text: "Let a pipette of solution run into the dish." },
    { id: "heat", text: "Heat gently until the salt is dry." },
    { id: "cool", text: "Let the dish cool to room temperature in a dry place." },
    { id: "weigh", text: "Weigh the dish with the dry salt." },
    { id: "again", text: "Heat, cool and weigh again until two weighings agree." }
  ],
  rules: [
    {
      before: "protect",
      after: "heat",
      weight: "safety",
      ask: "Stop: be protected before anything is heated. Where can hot salt fly?"
    },
    {
      before: "dish",
      after: "portion",
      weight: "needed",
      ask: "How will you know later which part of the mass is the dish?"
    },
    { before: "portion", after: "heat", weight: "needed", ask: "What is there to dry in an empty dish?" },
    {
      before: "heat",
      after: "cool",
      weight: "needed",
      ask: "When does a dish need time to cool?"
    },
    {
      before: "cool",
      after: "weigh",
      weight: "needed",
      ask: "Warm air rises from a hot dish. What does that do to the reading?"
    },
    {
      before: "weigh",
      after: "again",
      weight: "needed",
      ask: "With what can a second weighing agree?"
    }
  ],
  hints: [
    "Only the salt may count: not the dish, not the water, not the warm air above a hot dish.",
    "Two masses make a difference. Which things have to be done before each of them?",
    "Ask of each letter: would the balance tell the truth if this were still to come?"
  ]
};

// src/lab/procedures/pipetteToFlask.ts
var pipetteToFlask = {
  name: "pipette to flask",
  actions: [
    { id: "rinse flask", text: "Rinse the flask with water only, and empty it." },
    { id: "rinse pipette", text: "Rinse the pipette with a little stock, and throw that stock away." },
    { id: "deliver", text: "Fill the pipette to its mark and let it run into the flask." },
    { id: "water", text: "Add water and swirl, staying under the mark." },
    { id: "mark", text: "Add water drop by drop to the mark, at eye level." },
    { id: "stopper", text: "Put the stopper in." },
    { id: "mix", text: "Turn the flask over many times." }
  ],
  rules: [
    {
      before: "rinse flask",
      after: "deliver",
      weight: "needed",
      ask: "What would rinsing and emptying do to the stock that you put in?"
    },
    {
      before: "rinse flask",
      after: "water",
      weight: "needed",
      ask: "What would rinsing and emptying do to the water that you added?"
    },
    {
      before: "rinse pipette",
      after: "deliver",
      weight: "needed",
      ask: "A pipette is often wet inside. What would a few drops of water do to your portion of stock?"
    },
    {
      before: "deliver",
      after: "mark",
      weight: "needed",
      ask: "If the water is at the mark already, where will the stock take the level?"
    },
    {
      before: "water",
      after: "mark",
      weight: "needed",
      ask: "You cannot take water out again. How do you come up to the mark without passing it?"
    },
    { before: "mark", after: "stopper", weight: "needed", ask: "Can water go in while the flask is closed?" },
    {
      before: "stopper",
      after: "mix",
      weight: "needed",
      ask: "What happens to the solution if you turn an open flask over?"
    }
  ],
  hints: [
    "Only the stock that you measured may bring solute, and the water must end at the mark.",
    "Rinsing comes with emptying. Some things need an open flask, some a closed one. Sort the letters.",
    "Ask of each letter: what would go wrong if the stock were in the flask already?"
  ]
};

// src/lab/procedures/serialFlasks.ts
var serialFlasks = {
  name: "serial dilution",
  actions: [
    { id: "rinse flasks", text: "Rinse both flasks with water only, and empty them." },
    { id: "first portion", text: "Let a pipette of stock run into the first flask." },
    { id: "first mark", text: "Fill the first flask with water to its mark." },
    { id: "first mix", text: "Close the first flask and turn it over many times." },
    { id: "rinse pipette", text: "Rinse the pipette with solution from the first flask, and throw that away." },
    { id: "second portion", text: "Let a pipette from the first flask run into the second." },
    { id: "second mark", text: "Fill the second flask with water to its mark." },
    { id: "second mix", text: "Close the second flask and turn it over many times." },
    { id: "label", text: "Write the first molarity on the first flask." }
  ],
  rules: [
    {
      before: "rinse flasks",
      after: "first portion",
      weight: "needed",
      ask: "What would rinsing and emptying do to the stock that you put in?"
    },
    {
      before: "first portion",
      after: "first mark",
      weight: "needed",
      ask: "If the water is at the mark already, where will the stock take the level?"
    },
    {
      before: "first mark",
      after: "first mix",
      weight: "needed",
      ask: "Water added after the mixing stays on top. Is the solution the same all through?"
    },
    {
      before: "first mix",
      after: "rinse pipette",
      weight: "needed",
      ask: "Is what you rinse with the same as what you will measure, while the flask is not mixed?"
    },
    {
      before: "rinse pipette",
      after: "second portion",
      weight: "needed",
      ask: "Drops of the stronger stock are still in the pipette. What do they do to the next flask?"
    },
    {
      before: "second portion",
      after: "second mark",
      weight: "needed",
      ask: "If the water is at the mark already, where will the portion take the level?"
    },
    {
      before: "second mark",
      after: "second mix",
      weight: "needed",
      ask: "Water added after the mixing stays on top. Is the solution the same all through?"
    },
    {
      before: "first portion",
      after: "label",
      weight: "needed",
      ask: "What would the label say while the flask is empty?"
    }
  ],
  hints: [
    "Each flask is a dilution of its own. When is a flask ready to give a portion away?",
    "Sort the letters: those about the first flask, those about the second, those about the pipette.",
    "Ask of each letter: would the portion be right if this were still to come?"
  ]
};

// src/lab/procedures/solidToFlask.ts
var solidToFlask = {
  name: "solid to flask",
  actions: [
    { id: "weigh", text: "Weigh the solid and write down what the balance shows." },
    { id: "dissolve", text: "Dissolve the solid in water, about half of the final volume." },
    { id: "cool", text: "Let it come to room temperature." },
    { id: "transfer", text: "Move it through a funnel into the volumetric flask." },
    { id: "rinse", text: "Rinse what held it, and the funnel, into the flask." },
    { id: "near", text: "Add water to just under the mark." },
    { id: "mark", text: "Add water drop by drop to the mark, at eye level." },
    { id: "stopper", text: "Put the stopper in." },
    { id: "mix", text: "Turn the flask over many times." }
  ],
  rules: [
    { before: "weigh", after: "dissolve", weight: "needed", ask: "Can you still weigh a solid that is in the water?" },
    { before: "weigh", after: "transfer", weight: "needed", ask: "How will you know what mass went into the flask?" },
    {
      before: "dissolve",
      after: "cool",
      weight: "needed",
      ask: "Dissolving can warm or chill the water. So when is it worth waiting for room temperature?"
    },
    {
      before: "dissolve",
      after: "near",
      weight: "needed",
      ask: "How easily does a solid dissolve when the flask is almost full? And can the volume still change?"
    },
    {
      before: "cool",
      after: "mark",
      weight: "needed",
      ask: "The mark is right at room temperature. What happens to the level of a warm solution later?"
    },
    {
      before: "transfer",
      after: "rinse",
      weight: "needed",
      ask: "What is there to rinse while everything is still where it was?"
    },
    {
      before: "transfer",
      after: "near",
      weight: "needed",
      ask: "If the flask is almost full of water, is there room for the rest?"
    },
    {
      before: "rinse",
      after: "mark",
      weight: "needed",
      ask: "Where would the rinsing water take the level, once it stands at the mark?"
    },
    {
      before: "near",
      after: "mark",
      weight: "needed",
      ask: "You cannot take water out again. How do you come up to the mark without passing it?"
    },
    { before: "mark", after: "stopper", weight: "needed", ask: "Can water go in while the flask is closed?" },
    {
      before: "stopper",
      after: "mix",
      weight: "needed",
      ask: "What happens to the solution if you turn an open flask over?"
    },
    {
      before: "cool",
      after: "transfer",
      weight: "advised",
      ask: "A tip: hot liquid can strain the flask, so check that it is cool to the touch as you pour.",
      unless: { before: "transfer", after: "dissolve" }
    },
    {
      before: "rinse",
      after: "near",
      weight: "advised",
      ask: "A tip: leave room for the rinsing water, or the level may pass the mark."
    }
  ],
  hints: [
    "The flask is right only if all the solute is in it, at room temperature, with the water at the mark.",
    "Some things need an empty flask, some an open one, some a closed one. Sort the letters into those three.",
    "Ask of each letter: what would go wrong if the water were at the mark already?"
  ]
};

// src/lab/procedures/weighPortion.ts
var weighPortion = {
  name: "weighed portion",
  actions: [
    { id: "protect", text: "Goggles on, and a filler on the pipette: nothing is drawn up by mouth." },
    { id: "temperature", text: "Let the solution come to the temperature of the table, and write it down." },
    { id: "empty", text: "Weigh the clean, dry vessel with its lid." },
    { id: "rinse", text: "Rinse the pipette with a little of the solution, and throw that away." },
    { id: "deliver", text: "Fill the pipette to its mark and let it run into the vessel." },
    { id: "close", text: "Put the lid on at once." },
    { id: "full", text: "Weigh the closed vessel with the solution in it." }
  ],
  rules: [
    {
      before: "protect",
      after: "rinse",
      weight: "safety",
      ask: "Stop: be protected before any solution is drawn up. Where could a splash go?"
    },
    {
      before: "empty",
      after: "deliver",
      weight: "needed",
      ask: "How will you know later which part of the mass is the vessel?"
    },
    {
      before: "rinse",
      after: "deliver",
      weight: "needed",
      ask: "A pipette is often wet inside. What would a few drops of water do to the density?"
    },
    { before: "deliver", after: "close", weight: "needed", ask: "How does the portion get in once the lid is on?" },
    {
      before: "close",
      after: "full",
      weight: "needed",
      ask: "Water leaves an open vessel while you read. And was the lid there the first time?"
    },
    {
      before: "temperature",
      after: "deliver",
      weight: "advised",
      ask: "A tip: a warm solution fills the pipette with less mass, so look at the temperature early."
    }
  ],
  hints: [
    "Only the solution may count: not the vessel, not the lid, not drops of water in the pipette.",
    "Two masses make a difference. Which things have to be just the same both times?",
    "Ask of each letter: would the balance tell the mass of the portion if this were still to come?"
  ]
};

// src/lab/procedures.ts
var allProcedures = () => [
  solidToFlask,
  pipetteToFlask,
  concentratedAcid,
  serialFlasks,
  dryResidue,
  weighPortion
];
function procedureByName(name) {
  const found = allProcedures().find((procedure) => procedure.name === name);
  if (found === void 0) throw new Error(\`No procedure is called “\${name}”.\`);
  return found;
}

// src/lab/orderedActions.ts
var brokenRules = (procedure, order) => procedure.rules.filter(
  ({ before, after, weight }) => weight !== "advised" && order.indexOf(after) < order.indexOf(before)
).length;
function orderedActions(name) {
  const procedure = procedureByName(name);
  for (let mix = 1; ; mix += 1) {
    const actions = shuffled(procedure.actions, seededRandom(\`\${name} \${mix}\`));
    const order = actions.map(({ id }) => id);
    if (brokenRules(procedure, order) >= 3) return lettered(\`\${name} \${mix}\`, procedure.actions);
  }
}

// src/lab/activities/sharedSteps.ts
var purityShown = { given: "purity", before: " The solid is ", after: " % pure." };
var calculated = (step) => ({
  ...step,
  kind: "calculated",
  bench: false
});
var measured = (step) => ({
  ...step,
  kind: "measured",
  bench: true
});
var told = (step) => ({
  ...step,
  kind: "told",
  unit: "",
  bench: false
});
var cautionsRead = ({
  aim: aim8,
  substance
}) => ({
  id: "cautions read",
  title: "Aim and cautions",
  unit: "",
  shown: [\`\${aim8}
Read the cautions beside this row, then choose “yes, \`, { given: substance.formula }, "”."],
  period: 1,
  kind: "ticked",
  bench: false,
  substance
});
var ordered = (step) => ({
  ...step,
  kind: "ordered",
  unit: "",
  bench: false,
  shown: [
    "Write the letters in an order that works.",
    ...orderedActions(step.procedure).map(({ letter, item }) => \`
\${letter}) \${item.text}\`)
  ]
});
var chosen = (step) => ({
  ...step,
  kind: "chosen",
  unit: "",
  bench: false,
  shown: [
    ...questionByName(step.question).stem,
    ...letteredOptions(step.question).flatMap(({ letter, item }) => [\`
\${letter}) \`, ...item.text]),
    "\\nAnswer with a letter."
  ]
});

// src/lab/activities/solidSteps.ts
var purityTaken = ({ purity }) => purity === void 0 ? {} : { purity: { given: purity } };
var purityPieces = ({ purity }) => purity === void 0 ? [] : [{ ...purityShown, given: purity }];
var molarMassStep = () => calculated({
  id: "molar mass",
  title: "Molar mass",
  unit: "g/mol",
  shown: ["Molar mass of ", { given: "formula" }, "."],
  period: 1,
  quantity: "molar mass",
  takes: { formula: { given: "formula" } },
  buildsOn: {}
});
var molesStep = ({ molarity, volume }) => calculated({
  id: "moles of solute",
  title: "Moles of solute",
  unit: "mol",
  shown: ["Amount in ", { given: volume }, " mL of ", { given: molarity }, " mol/L solution."],
  period: 1,
  quantity: "moles of solute",
  takes: { molarity: { given: molarity }, volume: { given: volume } },
  buildsOn: {}
});
var massStep = (names5) => calculated({
  id: "mass of solute",
  title: "Mass to weigh",
  unit: "g",
  shown: [
    "Mass of ",
    { given: "formula" },
    " for ",
    { given: names5.volume },
    " mL of ",
    { given: names5.molarity },
    " mol/L solution.",
    ...purityPieces(names5)
  ],
  period: 1,
  quantity: "mass of solute",
  takes: {
    formula: { given: "formula" },
    molarity: { given: names5.molarity },
    volume: { given: names5.volume },
    ...purityTaken(names5)
  },
  buildsOn: { "molar mass": "molar mass", "moles of solute": "moles of solute" }
});
var massWeighedStep = () => measured({
  id: "mass weighed",
  title: "Mass really weighed",
  unit: "g",
  shown: ["What the balance shows for your solid, every figure of it."],
  period: 1,
  expects: "mass of solute",
  instrument: "balance"
});
var stockMadeStep = (names5) => calculated({
  id: "stock made",
  title: "Molarity really made",
  unit: "mol/L",
  shown: [
    "Molarity of your solution, from the mass you weighed, in ",
    { given: names5.volume },
    " mL.",
    ...purityPieces(names5)
  ],
  period: 1,
  quantity: "molarity",
  takes: {
    formula: { given: "formula" },
    mass: { entryOf: "mass weighed" },
    volume: { given: names5.volume },
    ...purityTaken(names5)
  },
  buildsOn: { "molar mass": "molar mass" }
});

// src/lab/activities/benchReading.ts
var names = { molarity: "molarity", volume: "flask" };
var aim = "Make a solution at a real or simulated bench, read its molarity there, and say how far off it is.";
var benchReading = () => ({
  id: "bench reading",
  title: "A reading at the bench: what did we really make?",
  aim,
  extension: "Your reading is off by a little. Which single slip at the bench would explain just that?",
  givens: [
    commonGivens.formula,
    { ...commonGivens.molarity, about: "concentration that is planned" },
    commonGivens.flask
  ],
  numbers: { formula: "formula", solid: { molarity: "molarity", flask: "flask" } },
  steps: [
    cautionsRead({ aim, substance: { formula: "formula", solid: true, molarity: "molarity" } }),
    molarMassStep(),
    molesStep(names),
    massStep(names),
    ordered({ id: "procedure", title: "How to make it", procedure: "solid to flask", period: 1 }),
    measured({
      id: "molarity read",
      title: "Molarity read at the bench",
      unit: "mol/L",
      shown: ["What the bench shows for the solution in your ", { given: "flask" }, " mL flask, every figure of it."],
      period: 1,
      expects: { given: "molarity" },
      instrument: "bench",
      tools: [{ tool: "flask", volume: "flask" }]
    }),
    calculated({
      id: "percent error",
      title: "Percent error",
      unit: "%",
      shown: ["How far your reading is from the ", { given: "molarity" }, " mol/L of the plan."],
      period: 1,
      quantity: "percent error",
      takes: { measured: { entryOf: "molarity read" }, accepted: { given: "molarity" } },
      buildsOn: {}
    }),
    chosen({ id: "particles", title: "What the particles do", question: "portion strength", period: 1 }),
    told({
      id: "in your words",
      title: "In your own words",
      shown: ["One sentence, or a link to your recording: what may have made your reading too high or too low?"],
      period: 1
    })
  ]
});

// src/lab/activities/dilutionSteps.ts
var stockShown = ({ stock }) => "given" in stock ? [{ given: stock.given }, " mol/L stock"] : ["the stock whose molarity you found"];
var dilutionTaken = ({ stock, target, volume }) => ({
  "stock molarity": stock,
  "target molarity": { given: target },
  "target volume": { given: volume }
});
var factorStep = (names5) => calculated({
  id: "dilution factor",
  title: "Dilution factor",
  unit: "",
  shown: [
    "How many times larger the volume gets, from ",
    ...stockShown(names5),
    " to ",
    { given: names5.target },
    " mol/L."
  ],
  period: names5.period,
  quantity: "dilution factor",
  takes: { "stock molarity": names5.stock, "target molarity": { given: names5.target } },
  buildsOn: {}
});
var stockVolumeStep = (names5) => calculated({
  id: "stock volume",
  title: "Stock to take",
  unit: "mL",
  shown: [
    "Volume of ",
    ...stockShown(names5),
    " for ",
    { given: names5.volume },
    " mL of ",
    { given: names5.target },
    " mol/L."
  ],
  period: names5.period,
  quantity: "stock volume",
  takes: dilutionTaken(names5),
  buildsOn: { "dilution factor": "dilution factor" }
});
var waterVolumeStep = (names5) => calculated({
  id: "water volume",
  title: "Water, about",
  unit: "mL",
  shown: ["About how much water joins the stock, up to ", { given: names5.volume }, " mL."],
  period: names5.period,
  quantity: "water volume",
  takes: dilutionTaken(names5),
  buildsOn: { "stock volume": "stock volume" }
});
var ionStep = ({ molarity, period }) => calculated({
  id: "ion molarity",
  title: "Molarity of one ion",
  unit: "mol/L",
  shown: ["Molarity of ", { given: "ion" }, " in ", { given: molarity }, " mol/L ", { given: "formula" }, "."],
  period,
  quantity: "ion molarity",
  takes: { formula: { given: "formula" }, molarity: { given: molarity }, ion: { given: "ion" } },
  buildsOn: {}
});

// src/lab/activities/concentratedReagent.ts
var names2 = {
  stock: { entryOf: "reagent molarity" },
  target: "target molarity",
  volume: "target volume",
  period: 1
};
var aim2 = "Work out how a concentrated acid is diluted, and in which order that is safe. Staff make the solution.";
var concentratedReagent = () => ({
  id: "concentrated reagent",
  title: "A solution from a concentrated acid",
  aim: aim2,
  extension: "The bottle stood open and lost some vapour. What does that do to your solution, and how would you notice?",
  givens: [
    { ...commonGivens.formula, about: "acid in the bottle", start: "HCl" },
    { name: "mass percent", unit: "%", about: "mass percent on the label of the bottle", start: "37.2" },
    { name: "density", unit: "g/mL", about: "density on the label of the bottle", start: "1.18" },
    { ...commonGivens.target, start: "0.500" },
    { ...commonGivens.volume, start: "250" }
  ],
  numbers: {
    formula: "formula",
    reagent: { massPercent: "mass percent", density: "density", target: "target molarity", volume: "target volume" }
  },
  steps: [
    cautionsRead({ aim: aim2, substance: { formula: "formula", massPercent: "mass percent", molarity: "target molarity" } }),
    molarMassStep(),
    calculated({
      id: "reagent molarity",
      title: "Molarity in the bottle",
      unit: "mol/L",
      shown: [
        "Molarity of ",
        { given: "mass percent" },
        " % ",
        { given: "formula" },
        " with a density of ",
        { given: "density" },
        " g/mL."
      ],
      period: 1,
      quantity: "reagent molarity",
      takes: {
        formula: { given: "formula" },
        "mass percent": { given: "mass percent" },
        density: { given: "density" }
      },
      buildsOn: { "molar mass": "molar mass" }
    }),
    { ...stockVolumeStep(names2), title: "Acid to take", buildsOn: {} },
    waterVolumeStep(names2),
    ordered({ id: "procedure", title: "How to dilute it safely", procedure: "concentrated acid", period: 1 }),
    chosen({ id: "particles", title: "What the particles do", question: "dilute acid", period: 1 }),
    told({
      id: "in your words",
      title: "In your own words",
      shown: ["One sentence, or a link to your recording: why does the water go in first?"],
      period: 1
    })
  ]
});

// src/lab/activities/dilutionAlone.ts
var names3 = {
  stock: { given: "stock molarity" },
  target: "target molarity",
  volume: "target volume",
  period: 1
};
var aim3 = "Make a weaker solution from a stock, and say what is in the flask.";
var dilutionAlone = () => ({
  id: "dilution",
  title: "A dilution",
  aim: aim3,
  extension: "Is there a way to the same solution in two smaller dilutions, and when would that be better?",
  givens: [commonGivens.formula, commonGivens.stock, commonGivens.target, commonGivens.volume, commonGivens.ion],
  numbers: {
    formula: "formula",
    ion: "ion",
    dilution: { stock: "stock molarity", target: "target molarity", volume: "target volume" }
  },
  steps: [
    cautionsRead({ aim: aim3, substance: { formula: "formula", molarity: "stock molarity" } }),
    factorStep(names3),
    stockVolumeStep(names3),
    waterVolumeStep(names3),
    ordered({ id: "procedure", title: "How to dilute", procedure: "pipette to flask", period: 1 }),
    ionStep({ molarity: "target molarity", period: 1 }),
    chosen({ id: "particles", title: "What the particles do", question: "dilution particles", period: 1 }),
    told({
      id: "in your words",
      title: "In your own words",
      shown: ["One sentence, or a link to your recording: what changed in the dilution, and what did not?"],
      period: 1
    })
  ]
});

// src/lab/activities/fromSolid.ts
var fromSolid = ({ id, title, aim: aim8, extension, formula, start, impure, hydrate, question }) => {
  const names5 = { molarity: "molarity", volume: "flask", ...impure ? { purity: "purity" } : {} };
  const { molarity, flask, ion, purity } = commonGivens;
  return {
    id,
    title,
    aim: aim8,
    extension,
    givens: [
      formula,
      molarity,
      flask,
      { ...ion, start: start.ion },
      ...impure ? [{ ...purity, ...start.purity === void 0 ? {} : { start: start.purity } }] : []
    ],
    numbers: {
      formula: "formula",
      ion: "ion",
      ...hydrate ? { hydrate } : {},
      solid: { molarity: "molarity", flask: "flask", ...impure ? { purity: "purity" } : {} }
    },
    steps: [
      cautionsRead({ aim: aim8, substance: { formula: "formula", solid: true, molarity: "molarity" } }),
      molarMassStep(),
      molesStep(names5),
      massStep(names5),
      ordered({ id: "procedure", title: "How to make it", procedure: "solid to flask", period: 1 }),
      massWeighedStep(),
      stockMadeStep(names5),
      ionStep({ molarity: "molarity", period: 1 }),
      chosen({ id: "particles", title: "What the particles do", question, period: 1 }),
      told({
        id: "in your words",
        title: "In your own words",
        shown: [
          "One sentence, or a link to your recording: how do you know that your flask holds what its label says?"
        ],
        period: 1
      })
    ]
  };
};
var plainSolid = () => fromSolid({
  id: "solution from a solid",
  title: "A solution from a solid",
  aim: "Make a solution of a chosen molarity from a solid that is pure and dry.",
  extension: "The flask was filled past its mark. Can the solution be saved, and how?",
  formula: { ...commonGivens.formula, about: "solute as its bottle says" },
  start: { ion: "Br-" },
  impure: false,
  question: "portion strength"
});
var hydrateSolid = () => fromSolid({
  id: "solution from a hydrate",
  title: "A solution from a hydrate",
  aim: "Make a solution of a chosen molarity from crystals that hold water.",
  extension: "The crystals lost some of their water in the jar. Is your solution stronger or weaker than planned?",
  formula: {
    ...commonGivens.formula,
    about: "solute with its water of hydration, as in CuSO4·5H2O",
    start: "CuSO4·5H2O"
  },
  start: { ion: "Cu^2+" },
  impure: false,
  hydrate: true,
  question: "crystal water"
});
var impureSolid = () => fromSolid({
  id: "solution from an impure solid",
  title: "A solution from a solid that is not pure",
  aim: "Make a solution of a chosen molarity from a solid of known purity.",
  extension: "What would you need to know about the rest of the solid before you use the solution?",
  formula: { ...commonGivens.formula, start: "Na2CO3" },
  start: { ion: "Na+", purity: "94.5" },
  impure: true,
  question: "impure solid"
});

// src/lab/activities/labelErrorStep.ts
var labelErrorStep = () => calculated({
  id: "percent error",
  title: "Percent error",
  unit: "%",
  shown: ["How far your molarity is from the label’s ", { given: "molarity" }, " mol/L."],
  period: 1,
  quantity: "percent error",
  takes: { measured: { entryOf: "molarity found" }, accepted: { given: "molarity" } },
  buildsOn: {}
});

// src/lab/activities/measuredDensity.ts
var aim4 = "Weigh a portion of a solution, find its molarity from its density, and compare it with the label.";
var about = (what, line) => \`\${what} of the \${line} line in a table of densities; left empty, our table at 20 °C fills it in\`;
var lines = {
  "lighter percent": { given: "lighter percent" },
  "lighter density": { given: "lighter density" },
  "heavier percent": { given: "heavier percent" },
  "heavier density": { given: "heavier density" }
};
var techniqueShare = 0.1;
var measuredDensity = () => ({
  id: "measured density",
  title: "A measured density: what did we really make?",
  aim: aim4,
  extension: "Your solution was warmer than the table says. Does the molarity come out too high or too low, and why?",
  givens: [
    {
      ...commonGivens.formula,
      about: "solute in the table of densities, written without water of hydration",
      start: "C12H22O11"
    },
    { ...commonGivens.molarity, about: "concentration on the label", start: "0.500" },
    { name: "portion", unit: "mL", about: "volume that is pipetted and weighed", start: "25" },
    { name: "lighter percent", unit: "%", about: about("mass percent", "lighter"), fromTable: true },
    { name: "lighter density", unit: "g/mL", about: about("density", "lighter"), fromTable: true },
    { name: "heavier percent", unit: "%", about: about("mass percent", "heavier"), fromTable: true },
    { name: "heavier density", unit: "g/mL", about: about("density", "heavier"), fromTable: true }
  ],
  numbers: {
    formula: "formula",
    density: {
      molarity: "molarity",
      portion: "portion",
      lighterPercent: "lighter percent",
      lighterDensity: "lighter density",
      heavierPercent: "heavier percent",
      heavierDensity: "heavier density"
    }
  },
  steps: [
    cautionsRead({ aim: aim4, substance: { formula: "formula", molarity: "molarity" } }),
    molarMassStep(),
    ordered({ id: "procedure", title: "How to weigh a portion", procedure: "weighed portion", period: 1 }),
    measured({
      id: "portion weighed",
      title: "Mass of the portion",
      unit: "g",
      shown: ["What ", { given: "portion" }, " mL of your solution weigh, every figure that the balance shows."],
      period: 1,
      expects: {
        expected: "mass of portion",
        takes: {
          formula: { given: "formula" },
          molarity: { given: "molarity" },
          volume: { given: "portion" },
          ...lines
        }
      },
      instrument: "balance",
      tools: [{ tool: "balance" }, { tool: "pipette", volume: "portion" }],
      techniqueShare,
      hints: "portion"
    }),
    calculated({
      id: "density",
      title: "Density",
      unit: "g/mL",
      shown: ["Mass of one mL, from your ", { given: "portion" }, " mL. Give it to as many decimals as the table has."],
      period: 1,
      quantity: "density",
      takes: { mass: { entryOf: "portion weighed" }, volume: { given: "portion" } },
      buildsOn: {}
    }),
    calculated({
      id: "mass percent",
      title: "Mass percent",
      unit: "%",
      shown: [
        "In the table mass percent ",
        { given: "lighter percent" },
        " has ",
        { given: "lighter density" },
        " g/mL, and ",
        { given: "heavier percent" },
        " has ",
        { given: "heavier density" },
        " g/mL. Which one goes with your density, on a straight line?"
      ],
      period: 1,
      quantity: "mass percent",
      takes: { density: { entryOf: "density" }, ...lines },
      buildsOn: {}
    }),
    calculated({
      id: "molarity found",
      title: "Molarity found",
      unit: "mol/L",
      shown: ["Molarity of ", { given: "formula" }, " from your mass percent and your density."],
      period: 1,
      quantity: "reagent molarity",
      takes: {
        formula: { given: "formula" },
        "mass percent": { entryOf: "mass percent" },
        density: { entryOf: "density" }
      },
      buildsOn: { "molar mass": "molar mass" }
    }),
    labelErrorStep(),
    chosen({ id: "particles", title: "What the particles do", question: "portion strength", period: 1 }),
    told({
      id: "in your words",
      title: "In your own words",
      shown: ["One sentence, or a link to your recording: what may have made your density too high or too low?"],
      period: 1
    })
  ]
});

// src/lab/activities/serialDilution.ts
var flaskStep = ({
  id,
  title,
  from
}) => calculated({
  id,
  title,
  unit: "mol/L",
  shown: from === void 0 ? [
    { given: "portion" },
    " mL of ",
    { given: "stock molarity" },
    " mol/L stock, made up to ",
    { given: "flask" },
    " mL."
  ] : [{ given: "portion" }, " mL from the flask before, made up to ", { given: "flask" }, " mL."],
  period: 1,
  quantity: "diluted molarity",
  takes: {
    "stock molarity": from === void 0 ? { given: "stock molarity" } : { entryOf: from },
    "stock volume": { given: "portion" },
    "final volume": { given: "flask" }
  },
  buildsOn: {}
});
var aim5 = "Dilute again and again, and follow what happens to the molarity.";
var serialDilution = () => ({
  id: "serial dilution",
  title: "A serial dilution",
  aim: aim5,
  extension: "After how many more flasks would fewer than one particle be left in each mL?",
  givens: [
    commonGivens.formula,
    commonGivens.stock,
    { name: "portion", unit: "mL", about: "volume that is taken each time", start: "10" },
    { ...commonGivens.flask, about: "volume that it is made up to each time", start: "100" }
  ],
  numbers: { formula: "formula", serial: { stock: "stock molarity", portion: "portion", flask: "flask" } },
  steps: [
    cautionsRead({ aim: aim5, substance: { formula: "formula", molarity: "stock molarity" } }),
    flaskStep({ id: "first flask", title: "Molarity in the first flask" }),
    flaskStep({ id: "second flask", title: "Molarity in the second flask", from: "first flask" }),
    flaskStep({ id: "third flask", title: "Molarity in the third flask", from: "second flask" }),
    ordered({ id: "procedure", title: "How to dilute twice", procedure: "serial dilution", period: 1 }),
    chosen({ id: "particles", title: "What the particles do", question: "last flask", period: 1 }),
    told({
      id: "in your words",
      title: "In your own words",
      shown: ["One sentence, or a link to your recording: why not take a tiny portion once?"],
      period: 1
    })
  ]
});

// src/lab/activities/stockAndDilution.ts
var solid = { molarity: "stock molarity", volume: "flask", purity: "purity" };
var dilutionOf = (fromRealStock) => ({
  stock: fromRealStock ? { entryOf: "stock made" } : { given: "stock molarity" },
  target: "target molarity",
  volume: "target volume",
  period: 2
});
var aim6 = "Make a solution of a molarity you chose, dilute it, and say what is in the flask.";
function stockAndDilution({ fromRealStock }) {
  const dilution = dilutionOf(fromRealStock);
  return {
    id: "stock and dilution",
    title: "A stock solution and its dilution",
    aim: aim6,
    extension: "If two stocks are mixed in one flask, how would you find the molarity of the mixture?",
    givens: [
      commonGivens.formula,
      commonGivens.stock,
      { ...commonGivens.flask, about: "volume of stock that is made" },
      commonGivens.target,
      commonGivens.volume,
      commonGivens.ion,
      { ...commonGivens.purity, optional: true }
    ],
    numbers: {
      formula: "formula",
      ion: "ion",
      solid: { molarity: "stock molarity", flask: "flask", purity: "purity" },
      dilution: { stock: "stock molarity", target: "target molarity", volume: "target volume" }
    },
    steps: [
      cautionsRead({ aim: aim6, substance: { formula: "formula", solid: true, molarity: "stock molarity" } }),
      molarMassStep(),
      molesStep(solid),
      massStep(solid),
      ordered({ id: "stock procedure", title: "How to make the stock", procedure: "solid to flask", period: 1 }),
      massWeighedStep(),
      stockMadeStep(solid),
      factorStep(dilution),
      stockVolumeStep(dilution),
      waterVolumeStep(dilution),
      ordered({ id: "dilution procedure", title: "How to dilute", procedure: "pipette to flask", period: 2 }),
      calculated({
        id: "diluted molarity",
        title: "Molarity after dilution",
        unit: "mol/L",
        shown: ["From the stock you really made and the stock you take, in ", { given: "target volume" }, " mL."],
        period: 2,
        quantity: "diluted molarity",
        takes: {
          "stock molarity": { entryOf: "stock made" },
          "stock volume": { entryOf: "stock volume" },
          "final volume": { given: "target volume" }
        },
        buildsOn: {}
      }),
      ionStep({ molarity: "target molarity", period: 2 }),
      chosen({ id: "particles", title: "What the particles do", question: "dilution particles", period: 2 }),
      told({
        id: "in your words",
        title: "In your own words",
        shown: ["One sentence, or a link to your recording: what changed in the dilution, and what did not?"],
        period: 2
      })
    ]
  };
}

// src/lab/activities/weighedResidue.ts
var names4 = { molarity: "molarity", volume: "portion" };
var aim7 = "Dry a portion of a solution, weigh what stays, and compare the molarity with the label.";
var weighedResidue = () => ({
  id: "weighed residue",
  title: "A weighed residue: what did we really make?",
  aim: aim7,
  extension: "Water is left in the residue. Does your molarity come out too high or too low, and why?",
  givens: [
    { ...commonGivens.formula, about: "a salt that survives drying: NaCl, KCl, KBr, Na2SO4 or K2SO4" },
    { ...commonGivens.molarity, about: "concentration on the label", start: "0.500" },
    { name: "portion", unit: "mL", about: "volume that is dried", start: "25" }
  ],
  numbers: { formula: "formula", residue: { molarity: "molarity", portion: "portion" } },
  steps: [
    cautionsRead({ aim: aim7, substance: { formula: "formula", solid: true, molarity: "molarity" } }),
    molarMassStep(),
    molesStep(names4),
    { ...massStep(names4), title: "Mass that should stay" },
    ordered({ id: "procedure", title: "How to dry and weigh", procedure: "weighed residue", period: 1 }),
    measured({
      id: "residue weighed",
      title: "Mass of the dry residue",
      unit: "g",
      shown: ["The salt from ", { given: "portion" }, " mL, dried until two weighings agree."],
      period: 1,
      expects: "mass of solute",
      instrument: "balance",
      tools: [{ tool: "balance" }, { tool: "pipette", volume: "portion" }]
    }),
    calculated({
      id: "molarity found",
      title: "Molarity found",
      unit: "mol/L",
      shown: ["Molarity from your residue, in ", { given: "portion" }, " mL."],
      period: 1,
      quantity: "molarity",
      takes: { formula: { given: "formula" }, mass: { entryOf: "residue weighed" }, volume: { given: "portion" } },
      buildsOn: { "molar mass": "molar mass" }
    }),
    labelErrorStep(),
    chosen({ id: "particles", title: "What the particles do", question: "portion strength", period: 1 }),
    told({
      id: "in your words",
      title: "In your own words",
      shown: ["One sentence, or a link to your recording: what may have made your result too high or too low?"],
      period: 1
    })
  ]
});

// src/lab/activities.ts
var asPlanned = { fromRealStock: false };
var activities = {
  "stock and dilution": stockAndDilution,
  "solution from a solid": plainSolid,
  "solution from a hydrate": hydrateSolid,
  "solution from an impure solid": impureSolid,
  dilution: dilutionAlone,
  "serial dilution": serialDilution,
  "concentrated reagent": concentratedReagent,
  "weighed residue": weighedResidue,
  "measured density": measuredDensity,
  "bench reading": benchReading
};
var allActivities = () => Object.values(activities).map((build) => build(asPlanned));
function activityById(id, variant = asPlanned) {
  var _a;
  const wanted = id.trim().replace(/\\s+/g, " ").toLowerCase();
  return Object.keys(activities).includes(wanted) ? (_a = activities[wanted]) == null ? void 0 : _a.call(activities, variant) : void 0;
}

// src/chemistry/strengths.generated.ts
var densityList = \`
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
\`;
var bottleList = \`
HCl 37.2 1.18
H2SO4 96 1.84
HNO3 69.6 1.41
H3PO4 85.5 1.71
CH3COOH 99.8 1.05
HCOOH 90 1.13
HClO4 70.5 1.67
HF 49 1.19
NH3 28.0 0.90
H2O2 30 1.11
\`;

// src/chemistry/densityLines.ts
var waterAt20 = { massPercent: 0, density: 0.9982 };
var lineOf = (formula) => densityList.split("\\n").find((candidate) => candidate.startsWith(\`\${formula} \`));
function densityLines(formula) {
  var _a;
  const listed = (_a = lineOf(formula)) == null ? void 0 : _a.split(" ").slice(1).map((pair) => {
    const [massPercent = "", density = ""] = pair.split(":");
    return { massPercent: Number(massPercent), density: Number(density) };
  });
  return listed && [waterAt20, ...listed.filter(({ massPercent }) => massPercent > 0)];
}
var densityFormulas = () => densityList.trim().split("\\n").map((line) => {
  var _a;
  return (_a = line.split(" ")[0]) != null ? _a : "";
});

// src/chemistry/solutionStrength.ts
var withoutWater = (text) => text.replace(/\\s/g, "").replace(/[·.*•][\\d.,½]*H2O$/, "");
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
  var _a, _b;
  const written = molarMass(formula);
  if (!written.ok) return written;
  const dry = molarMass({ atoms: anhydrousAtoms(formula) });
  if (!dry.ok) return dry;
  const dryText = withoutWater(formula.text);
  const points = densityLines(dryText);
  const strength = (gramsPerMl2, mass) => molarity * mass / (10 * gramsPerMl2);
  if (points === void 0) return success(percent(Math.min(100, strength(densityUnlisted, written.value))));
  const last = (_b = (_a = points[points.length - 1]) == null ? void 0 : _a.massPercent) != null ? _b : 0;
  let gramsPerMl = waterAt20.density;
  for (let round = 0; round < 40; round += 1) gramsPerMl = densityAt(strength(gramsPerMl, dry.value), points);
  if (dryText === "NH3" && strength(gramsPerMl, dry.value) > last) gramsPerMl = densityOfStrongAmmonia;
  return success(percent(Math.min(100, strength(gramsPerMl, written.value))));
}
function bottleOf(formula) {
  const line = bottleList.split("\\n").find((candidate) => candidate.startsWith(\`\${withoutWater(formula)} \`));
  if (line === void 0) return void 0;
  const [, massPercent, density] = line.split(" ");
  return { massPercent: Number(massPercent), density: Number(density) };
}

// src/chemistry/strengthPercent.ts
function strengthPercent(formula, strength) {
  if (strength === "undiluted") return void 0;
  if ("massPercent" in strength) return strength.massPercent;
  const found = massPercentOf(formula, strength.molarity);
  return found.ok ? found.value : void 0;
}

// src/chemistry/cautionsAt.ts
function cautionsAt(formula, strength) {
  const found = cautions(formula, strengthPercent(formula, strength));
  if (found.ok) return found.value;
  const undiluted = cautions(formula);
  if (!undiluted.ok) throw new Error(\`cautions for \${formula.text}: \${undiluted.error.code}\`);
  return undiluted.value;
}

// src/measurement/isBareNumber.ts
function isBareNumber(text) {
  const scanned = scanNumber(text);
  return scanned !== void 0 && restAfter(text, scanned) === "";
}

// src/lab/texts/ticks.ts
var tickTexts = {
  /** The one answer that the sheet offers: it names the substance that the cautions are for. */
  answer: (formula) => formula === "" ? "yes" : \`yes, \${formula}\`,
  readFirst: (answer) => \`Read this, then choose “\${answer}”:\`,
  nameIt: (answer) => \`Say for which substance. Read this, then choose “\${answer}”:\`,
  anotherSubstance: (answer) => \`That is another substance. Read this about the one you have now, then choose “\${answer}”:\`,
  notYes: (answer) => \`Only “\${answer}” counts here. Read this, then choose it:\`,
  noFormula: "We do not know this substance. Read its safety data sheet and ask your teacher before you touch it.",
  staffOnly: "Your teacher makes this solution. You work it out and watch.",
  withTeacher: "Only with your teacher beside you, and only as your school’s own assessment allows.",
  solid: "solid",
  inBottle: (share) => \`\${share} in the bottle\`,
  noSignal: "no signal word known",
  waitForTick: (row) => \`Wait at the bench. Read the cautions and tick “\${row}” first.\`
};
var tickHints = [
  "Who might be hurt at the bench, and by what?",
  "Each line says what the substance can do, and then what you do about it.",
  "Tell your team in your own words what to wear and what not to do. Then tick that you have read them."
];

// src/lab/handledForms.ts
var withUnit = (typed, unit) => {
  const text = String(typed).trim();
  return isBareNumber(text) ? \`\${text} \${unit}\` : text;
};
function handledForms({ substance, formula, givens, decimalMark }) {
  const { solid: solid2, massPercent, molarity } = substance;
  const read = (name, kind) => {
    const quantity = isBlank(givens[name]) ? void 0 : readQuantity(givens[name], kind, name, { decimalMark });
    return (quantity == null ? void 0 : quantity.ok) ? quantity.value.value : void 0;
  };
  const formOf = (strength, words) => ({
    words,
    massPercent: strengthPercent(formula, strength),
    cautions: cautionsAt(formula, strength)
  });
  const forms = [];
  if (solid2) forms.push(formOf("undiluted", tickTexts.solid));
  if (massPercent !== void 0) {
    const share = read(massPercent, "percent");
    forms.push(
      share === void 0 ? formOf("undiluted", "") : formOf({ massPercent: percent(share) }, tickTexts.inBottle(withUnit(givens[massPercent], "%")))
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

// src/lab/cautionWords.ts
function cautionWords({
  studentsDilute,
  ...handling
}) {
  const { substance, givens } = handling;
  const formula = readFormula(givens[substance.formula]);
  const maker = substance.massPercent === void 0 ? [] : [studentsDilute ? tickTexts.withTeacher : tickTexts.staffOnly];
  if (!formula.ok) return [...maker, tickTexts.noFormula].join("\\n");
  const forms = handledForms({ ...handling, formula: formula.value });
  const blocks = forms.flatMap((form, place) => {
    const { listing, statements } = form.cautions;
    const own = statements.slice(listing === "another hydrate" && place > 0 ? 1 : 0, -1);
    return blockOf(formula.value.text, form, place === 0 ? own : own.filter(({ advice }) => advice !== schoolAdvice));
  });
  return [...maker, ...blocks, deferringOf(forms)].filter((line) => line !== "").join("\\n");
}
var { schoolAdvice } = cautionTexts;
var deferringOf = ([form]) => {
  var _a, _b;
  return (_b = (_a = form == null ? void 0 : form.cautions.statements[form.cautions.statements.length - 1]) == null ? void 0 : _a.advice) != null ? _b : "";
};
function blockOf(written, { words, cautions: { listing, name, signalWord } }, lines2) {
  const advice = new Set(lines2.flatMap((line) => line.advice.split(/(?<=\\.) /)));
  const isUnlisted = listing === "unlisted";
  const what = isUnlisted || words === "" ? [name || written] : [name, words];
  return [
    \`\${what.join(", ")}\${isUnlisted ? "" : \`: \${signalWord || tickTexts.noSignal}\`}\`,
    ...lines2.map(({ text }) => text),
    [...advice].filter((line) => line !== "").join(" ")
  ];
}

// src/lab/lessonSettings.ts
var whole = (cell) => {
  const typed = typeof cell === "number" ? cell : typeof cell === "string" ? Number(cell.trim()) : Number.NaN;
  return Number.isInteger(typed) ? typed : Number.NaN;
};
var isYes = (cell) => cell === true || typeof cell === "string" && /^(?:yes|on|true)$/i.test(cell.trim());
function readLessonSettings(table) {
  const cells = /* @__PURE__ */ Object.create(null);
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
    decimalMark: plainName(cells["decimal mark"]) === "comma" ? "comma" : "point",
    judgeFigures: isYes(cells["judge figures"]),
    highestHelpLevel: level("highest help level", { least: 0, most: 3, otherwise: 3 }),
    studentsDilute: plainName(cells["concentrated reagents"]) === "students",
    fromRealStock: plainName(cells["work the dilution from"]) === "real stock",
    bad,
    cells
  };
}

// src/lab/lessonFigures.ts
var takesLessonFigures = ({ figures, ownFigures }) => figures !== "decimals" && ownFigures !== true;

// src/lab/defaultSettings.ts
var defaultSettings = {
  activity: "stock and dilution",
  periods: "2",
  figures: "3",
  "atomic-weight decimals": "2",
  "decimal mark": "point",
  "judge figures": "no",
  "highest help level": "3",
  "glassware class": "B",
  "glassware standard": "ISO",
  balance: "0.01 g",
  "allowance for technique": "2 %",
  spare: "10 %",
  "spare glassware": "10 %",
  "work the dilution from": "nominal stock",
  "concentrated reagents": "staff",
  seed: "1"
};
var defaultShelf = {
  flasksMl: [100, 200, 250, 500],
  pipettesMl: [5, 10, 15, 20, 25],
  balanceReadabilityG: 0.01,
  balanceMaxG: 200
};

// src/measurement/volumetricTolerance.ts
function volumetricTolerance({ vessel, volume, glassClass, standard }) {
  var _a;
  const figures = glasswareFigures({
    kind: vessel === "flask" ? "volumetric flask" : "volumetric pipette",
    glassClass,
    standard
  });
  const found = (_a = figures.find((figure) => figure.volume >= volume)) != null ? _a : figures[figures.length - 1];
  if (found === void 0) throw new Error(\`No figures for a \${vessel} of class \${glassClass} by \${standard}.\`);
  const share = Math.max(1, volume / found.volume);
  return {
    tolerance: millilitres(found.tolerance * share),
    readAt: found.volume,
    confirmed: found.basis === "source"
  };
}

// src/lab/texts/readings.ts
var readingTexts = {
  onTarget: "Yes, this is as close to what your numbers promise as the tools and careful work allow.",
  above: "The reading is above what your numbers promise, by more than careful work allows. Was the empty boat or dish taken off? Read again, or go on with what you have.",
  below: "The reading is below what your numbers promise, by more than careful work allows. Did some of it stay behind on the way? Read again, or go on with what you have.",
  farAbove: "Stop before you go on: the reading is far above what your numbers promise. Do both have the same unit?",
  farBelow: "Stop before you go on: the reading is far below what your numbers promise. Do both have the same unit?",
  unit: "Look at the unit. What does the instrument show, and what does this row ask for?",
  unreadable: "Write the number that the instrument shows, with or without its unit.",
  decimals: "Close. Write every figure the balance shows."
};
var toleranceTexts = {
  balance: (toleranceG) => \`the balance (±\${toleranceG} g, read empty and loaded)\`,
  flask: (part) => \`the \${part.size} mL flask (±\${part.tolerance} mL\${part.note})\`,
  pipette: (part) => \`the \${part.size} mL pipette (±\${part.tolerance} mL\${part.note})\`,
  fromMemory: ", a figure not confirmed",
  readAt: (size) => \`, the figure of the \${size} mL size\`,
  /** In lines that fit beside the settings. */
  whole: (parts) => \`Twice the standard uncertainty of \${parts.tools},
as rectangular distributions by JCGM 100, plus \${parts.percent} % of what is expected for technique.\`,
  /** Worked for round readings of no team, so that nothing is given away. */
  examples: (unit, parts) => \`So \${parts.map(({ reading, limit }) => \`\${reading} \${unit} may be off by \${limit} \${unit}\`).join(", and ")}.\`
};

// src/lab/readingTolerance.ts
var settingCell = (settings, name) => isBlank(settings[name]) ? defaultSettings[name] : settings[name];
var badSetting = (name, wanted) => failure({
  code: "lesson-setting",
  argument: name,
  expected: wanted.expected,
  received: quoted(wanted.received),
  advice: "Change it in the settings of the Plan."
});
function allowancePercent(settings) {
  var _a, _b;
  const name = "allowance for technique";
  const cell = settingCell(settings, name);
  const typed = (_b = (_a = /^\\s*(\\d+(?:[.,]\\d+)?)\\s*%?\\s*$/.exec(String(cell))) == null ? void 0 : _a[1]) == null ? void 0 : _b.replace(",", ".");
  const percent2 = Number(typed);
  return typed !== void 0 && percent2 <= 50 ? success(percent2) : badSetting(name, { expected: "a percentage from 0 to 50, such as 2 %,", received: cell });
}
function glassware(settings) {
  const classCell = settingCell(settings, "glassware class");
  const standardCell = settingCell(settings, "glassware standard");
  const glassClass = String(classCell).trim().toUpperCase();
  const standard = String(standardCell).trim().toUpperCase();
  if (glassClass !== "A" && glassClass !== "B" && glassClass !== "AS") {
    return badSetting("glassware class", { expected: "A or B", received: classCell });
  }
  if (standard !== "ISO" && standard !== "ASTM") {
    return badSetting("glassware standard", { expected: "ISO or ASTM", received: standardCell });
  }
  return success({ glassClass: glassClass === "B" ? "B" : "A", standard });
}
function balanceReadability(settings) {
  const cell = settingCell(settings, "balance");
  const read = readQuantity(cell, "mass", "balance");
  return read.ok && read.value.value > 0 ? success(read.value) : badSetting("balance", { expected: "how finely the balance reads, such as 0.01 g,", received: cell });
}
var short = (value) => String(Number(value.toPrecision(3)));
function toolPart(used, settings) {
  if (used.tool === "balance") {
    const readability = balanceReadability(settings);
    if (!readability.ok) return readability;
    const tolerance2 = readability.value.value;
    const uncertainty = tolerance2 / Math.sqrt(3) * Math.SQRT2;
    return success({ relative: uncertainty / used.mass, words: toleranceTexts.balance(short(tolerance2)) });
  }
  const kind = glassware(settings);
  if (!kind.ok) return kind;
  const { tolerance, readAt, confirmed } = volumetricTolerance({
    vessel: used.tool,
    volume: used.volume,
    ...kind.value
  });
  const note = [
    readAt === used.volume ? "" : toleranceTexts.readAt(short(readAt)),
    confirmed ? "" : toleranceTexts.fromMemory
  ].join("");
  return success({
    relative: tolerance / Math.sqrt(3) / used.volume,
    words: toleranceTexts[used.tool]({ size: short(used.volume), tolerance: short(tolerance), note })
  });
}
function readingTolerance({
  expected,
  tools,
  techniqueShare: techniqueShare2 = 1
}, settings) {
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
      tools: parts.map(({ words }) => words).join(" and of "),
      percent: short(counted)
    })
  });
}

// src/lab/unitKind.ts
var kinds = {
  g: "mass",
  mL: "volume",
  mol: "amount",
  "mol/L": "concentration",
  "g/mL": "density"
};
function unitKind(unit) {
  const kind = kinds[unit];
  if (kind === void 0) throw new Error(\`No reading is asked for in “\${unit}”.\`);
  return kind;
}

// src/chemistry/densityOfMolarity.ts
function densityOfMolarity({
  molarMass: molarMass2,
  molarity,
  ...line
}) {
  var _a;
  const error = (_a = notALine(line)) != null ? _a : notAboveZero({ value: molarity, argument: "molarity", unit: "mol/L" });
  if (error) return failure(error);
  const { lighterPercent, lighterDensity, heavierPercent, heavierDensity } = line;
  const b = (heavierDensity - lighterDensity) / (heavierPercent - lighterPercent);
  const a = lighterDensity - b * lighterPercent;
  const grams = molarity * molarMass2 / 10;
  const massPercent = 2 * grams / (a + Math.sqrt(a * a + 4 * b * grams));
  return finite(gramsPerMillilitre(a + b * massPercent), "molarity");
}

// src/lab/expectedValue.ts
function expectedValue({ takes }, {
  givens,
  decimalMark
}) {
  const named = (argument) => {
    var _a, _b;
    return (_b = (_a = takes[argument]) == null ? void 0 : _a.given) != null ? _b : argument;
  };
  let trouble;
  const read = (argument, kind) => {
    const name = named(argument);
    const quantity = readQuantity(givens[name], kind, name, { decimalMark });
    if (quantity.ok) return quantity.value.value;
    trouble != null ? trouble : trouble = quantity.error;
    return Number.NaN;
  };
  const formula = readFormula(givens[named("formula")], named("formula"));
  if (!formula.ok) return formula;
  const mass = molarMass(formula.value);
  if (!mass.ok) return mass;
  const volume = read("volume", "volume");
  const numbers = {
    molarMass: mass.value,
    molarity: molesPerLitre(read("molarity", "concentration")),
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

// src/lab/ownHint.ts
var textOf = (cell) => typeof cell === "string" ? cell.trim() : typeof cell === "number" ? String(cell) : "";
var linkOf = (cell) => {
  const typed = textOf(cell);
  return /^https?:\\/\\/[^\\s"'<>]+$/i.test(typed) ? typed : "";
};
function ownHint(rows, { stepId, level }) {
  const wanted = stepId.trim().toLowerCase();
  const line = rows.find(
    ([step, at, words, link]) => wanted !== "" && textOf(step).toLowerCase() === wanted && textOf(at) === String(level) && !(isBlank(words) && isBlank(link))
  );
  return line === void 0 ? { words: "", link: "" } : { words: textOf(line[2]), link: linkOf(line[3]) };
}

// src/chemistry/atomsKey.ts
var atomsKey = ({ atoms }) => atoms.map(({ element, count }) => \`\${element}\${count}\`).sort().join(" ");

return { seededRandom, shuffled, questionByName, letteredOptions, checkChoice, procedureByName, orderedActions, stockAndDilution, allActivities, activityById, takesLessonFigures, defaultSettings, defaultShelf, readingTexts, toleranceTexts, balanceReadability, readingTolerance, unitKind, densityOfMolarity, expectedValue, waterAt20, densityLines, densityFormulas, bottleOf, cautionsAt, isBareNumber, tickTexts, tickHints, handledForms, cautionWords, atomsKey, readLessonSettings, ownHint };
`;
},
// Part lab/shownCell: lab/texts/hints, lab/quantityHint
"lab/shownCell"() {
  return `
const { isBlank, readFormula, readNumber, readQuantity } = part("base");

// src/lab/texts/hints.ts
var atomsShown = "atoms";
var litres = ["(", { given: "volume" }, " mL ÷ 1000)"];
var quantityHints = {
  "molar mass": {
    idea: "A molar mass is the mass of one mole of the whole formula, so each atom in it counts.",
    relation: "Add up atomic weight × number of atoms. A number after a bracket counts for all that is in it; after a dot, for the whole part.",
    setUp: ["Put the atomic weight in place of each symbol: ", { given: atomsShown }, " = ?"]
  },
  "moles of solute": {
    idea: "Molarity says how many moles are in one litre. How many litres do you have?",
    relation: "moles = molarity × volume in litres",
    setUp: [{ given: "molarity" }, " mol/L × ", ...litres, " = ?"]
  },
  "mass of solute": {
    idea: "First find how many moles you need, then what that many moles weigh.",
    relation: "mass = moles × molar mass, where moles = molarity × volume in litres.",
    impure: "Your solid is not pure, so you need more of it.",
    setUp: [
      { given: "molarity" },
      " mol/L × ",
      ...litres,
      " × molar mass of ",
      { given: "formula" },
      { given: "purity", before: " ÷ (", after: " ÷ 100)" },
      " = ?"
    ]
  },
  molarity: {
    idea: "Molarity says how crowded the solute is: how many moles are in each litre of solution?",
    relation: "molarity = moles ÷ volume in litres, where moles = mass ÷ molar mass.",
    impure: "Only the pure part of your solid counts.",
    setUp: [
      { given: "mass" },
      " g",
      { given: "purity", before: " × (", after: " ÷ 100)" },
      " ÷ molar mass of ",
      { given: "formula" },
      " ÷ ",
      ...litres,
      " = ?"
    ]
  },
  "stock volume": {
    idea: "All the solute in the diluted solution comes from the stock you take. Water brings none.",
    relation: "stock molarity × stock volume = target molarity × target volume",
    setUp: [
      { given: "target molarity" },
      " mol/L × ",
      { given: "target volume" },
      " mL ÷ ",
      { given: "stock molarity" },
      " mol/L = ?"
    ]
  },
  "water volume": {
    idea: "Stock and water share the flask. What room is left for the water?",
    relation: "water volume = target volume − stock volume (about, since volumes need not add up exactly)",
    setUp: [
      { given: "target volume" },
      " mL − (",
      { given: "target molarity" },
      " × ",
      { given: "target volume" },
      " ÷ ",
      { given: "stock molarity" },
      ") mL = ?"
    ]
  },
  "dilution factor": {
    idea: "How many times as big does the volume get? The stock is part of the total.",
    relation: "dilution factor = final volume ÷ stock volume = stock molarity ÷ target molarity",
    setUp: [{ given: "stock molarity" }, " ÷ ", { given: "target molarity" }, " = ?"]
  },
  "diluted molarity": {
    idea: "The moles that you took are spread through a bigger volume now.",
    relation: "molarity after = stock molarity × stock volume ÷ final volume",
    setUp: [
      { given: "stock molarity" },
      " mol/L × ",
      { given: "stock volume" },
      " mL ÷ ",
      { given: "final volume" },
      " mL = ?"
    ]
  },
  "ion molarity": {
    idea: "One formula unit comes apart in water. How many of this ion does it give?",
    relation: "ion molarity = molarity of the salt × number of that ion in one formula unit",
    setUp: [{ given: "molarity" }, " mol/L × number of ", { given: "ion" }, " in one ", { given: "formula" }, " = ?"]
  },
  "percent error": {
    idea: "How far off is the result, as a share of the accepted value?",
    relation: "percent error = gap between the two ÷ accepted value × 100",
    setUp: [
      "gap between ",
      { given: "measured" },
      " and ",
      { given: "accepted" },
      ", ÷ ",
      { given: "accepted" },
      " × 100 = ?"
    ]
  },
  density: {
    idea: "Density says what one mL of the solution weighs. What does your whole portion weigh?",
    relation: "density = mass of the portion ÷ its volume in mL",
    setUp: [{ given: "mass" }, " g ÷ ", { given: "volume" }, " mL = ?"]
  },
  "mass percent": {
    idea: "Your density lies between two lines of the table, or close to them. How far along the way is it?",
    relation: "mass percent = lighter percent + share × gap of the percents, where share = gap up to your density ÷ gap of the densities.",
    setUp: [
      { given: "lighter percent" },
      " + (",
      { given: "density" },
      " − ",
      { given: "lighter density" },
      ") ÷ (",
      { given: "heavier density" },
      " − ",
      { given: "lighter density" },
      ") × (",
      { given: "heavier percent" },
      " − ",
      { given: "lighter percent" },
      ") = ?"
    ]
  },
  "reagent molarity": {
    idea: "Picture one litre from the bottle. What does it weigh, and how much of that is the solute?",
    relation: "molarity = mass of one litre × (mass percent ÷ 100) ÷ molar mass",
    setUp: [
      "1000 mL × ",
      { given: "density" },
      " g/mL × (",
      { given: "mass percent" },
      " ÷ 100) ÷ molar mass of ",
      { given: "formula" },
      " = ?"
    ]
  }
};
var readingHints = {
  balance: [
    "The balance tells what is really there. It need not agree with your plan to the last digit.",
    "Mass of the solid = reading with the solid − reading of the empty boat. Some balances do this with one key.",
    "Your plan stands in “{row}”. Come close to it, then write every figure that the balance shows."
  ],
  flask: [
    "The flask holds its volume when the lowest point of the curve touches the mark.",
    "Look with your eye level with the mark. From above or below the level seems to be elsewhere.",
    "Your plan stands in “{row}”. Read the scale at eye level and write every figure of it."
  ],
  pipette: [
    "A pipette gives its volume from its mark to its tip, with the last drop left in.",
    "Fill past the mark, wipe the tip, let down to the mark at eye level, then let it run out.",
    "Your plan stands in “{row}”. Which mark did you start from, and where did you stop?"
  ],
  portion: [
    "The balance tells what is really there. A few drops more or less can be seen at once.",
    "Mass of the portion = reading with the solution − reading of the same dry vessel with its lid.",
    "What would the same volume of water weigh? A portion that is far from that needs another look. Write every figure."
  ],
  bench: [
    "A reading tells what is in the flask now. The plan tells what should be.",
    "Write every figure that is shown, and its unit. Read it twice.",
    "Your plan is the {row} you were given. If the reading is far off, go back over what went into the flask."
  ]
};
var toldHints = [
  "Think of a friend who missed the lab. What would you show first?",
  "Say what you saw or worked out first, then how it fits together. Use words of this lab, such as molarity.",
  "Begin with: “We know that …, because …”."
];
var levelAsked = "Choose 0, 1, 2 or 3.";
var rowShown = (title) => \`(your “\${title}”)\`;

// src/lab/quantityHint.ts
function atomsOf(formula) {
  const read = readFormula(formula);
  if (!read.ok) return void 0;
  return read.value.atoms.map(({ element, count }) => \`\${count} × \${element}\`).join(" + ");
}
var filledIn = (pieces, shown) => pieces.map((piece) => {
  var _a, _b;
  if (typeof piece === "string") return piece;
  const value = shown(piece.given);
  return value === void 0 ? "" : \`\${(_a = piece.before) != null ? _a : ""}\${value}\${(_b = piece.after) != null ? _b : ""}\`;
}).join("");
function quantityHint(quantity, { level, shown }) {
  const { idea, relation, impure, setUp } = quantityHints[quantity];
  if (level === 1) return idea;
  if (level === 2) return impure !== void 0 && shown("purity") !== void 0 ? \`\${relation} \${impure}\` : relation;
  return filledIn(setUp, (name) => name === atomsShown ? atomsOf(shown("formula")) : shown(name));
}

// src/lab/shownCell.ts
function shownCell(cell, { argument, decimalMark }) {
  if (isBlank(cell)) return void 0;
  const { kind, name } = argument;
  if (kind === "formula" || kind === "ion") return typeof cell === "string" ? cell.trim() : void 0;
  if (kind === "number") {
    const read2 = readNumber(cell, name, { decimalMark });
    return read2.ok ? read2.value.typed.trim() : void 0;
  }
  const read = readQuantity(cell, kind, name, { decimalMark });
  if (!read.ok) return void 0;
  return read.value.unit === "" ? read.value.typed.trim() : String(read.value.value);
}

return { readingHints, toldHints, levelAsked, rowShown, filledIn, quantityHint, shownCell };
`;
},
// Part CHECKTEAM: lab/judging/bareStep, lab/texts/ordering, lab/checkOrder, lab/judging/carriedRows, lab/judging/isFact, lab/judging/isSound and 19 more
"CHECKTEAM"() {
  return `
const { activityById, atomsKey, balanceReadability, cautionWords, checkChoice, expectedValue, orderedActions, ownHint, procedureByName, questionByName, readLessonSettings, readingTexts, readingTolerance, takesLessonFigures, tickHints, tickTexts, unitKind } = part("chemistry/atomsKey");

const { filledIn, levelAsked, quantityHint, readingHints, rowShown, shownCell, toldHints } = part("lab/shownCell");

const { fitsSlip, isQuantityName, judgeEntry, plainName, prepareStep, quantities, spanOver, stepTolerance } = part("lesson");


const { feedbackText, filled, readEntry } = part("lab/readEntry");
const { badGiven, badSetting, badStep, checkHeadings, remarks } = part("lab/texts/feedback");
const { asCell, computed, failure, grams, isBlank, millilitres, readFormula, readQuantity, spreadOf, success } = part("base");

// src/lab/judging/bareStep.ts
function bareStep(id) {
  if (!isQuantityName(id)) return void 0;
  const { takes, buildsOn, unit } = quantities[id];
  return {
    kind: "calculated",
    id,
    title: id,
    unit,
    shown: [],
    period: 1,
    bench: false,
    quantity: id,
    takes: Object.fromEntries(takes.map(({ name }) => [name, { given: name }])),
    buildsOn: Object.fromEntries(buildsOn.map(({ name }) => [name, name]))
  };
}

// src/lab/texts/ordering.ts
var several = (letters) => letters.join(", ");
var orderTexts = {
  works: "Yes, this order works.",
  lettersOnly: (known) => \`Write the letters \${known[0]} to \${known[known.length - 1]}, each once, in the order you would work.\`,
  wordsTyped: (known) => \`Letters only, such as c a b. \${orderTexts.lettersOnly(known)}\`,
  lettersAmiss: (found) => [
    orderTexts.lettersOnly(found.known),
    found.strange.length > 0 ? \`Not in the list: \${several(found.strange)}.\` : "",
    found.missing.length > 0 ? \`Still missing: \${several(found.missing)}.\` : "",
    found.twice.length > 0 ? \`More than once: \${several(found.twice)}.\` : ""
  ].filter((part) => part !== "").join(" "),
  brokenPair: ({ sooner, later, ask }) => \`Look at \${sooner} and \${later}. \${ask}\`
};

// src/lab/checkOrder.ts
var linkingWords = /\\b(?:and|then|next)\\b/g;
function lettersIn(entry) {
  const plain = entry.normalize("NFKC").toLowerCase();
  const linked = plain.replace(linkingWords, " ");
  if (/[\\p{N}]/u.test(linked)) return void 0;
  const letters = linked.match(/\\p{L}/gu);
  return letters != null ? letters : void 0;
}
var brokenFirst = (rules, order) => {
  const place = (id) => order.indexOf(id);
  const isBroken = ({ before, after, unless }) => place(after) < place(before) && !(unless !== void 0 && place(unless.before) < place(unless.after));
  const broken = rules.filter(isBroken);
  for (const weight of ["safety", "needed", "advised"]) {
    const [earliest] = broken.filter((rule) => rule.weight === weight).sort((one, other) => place(one.after) - place(other.after) || place(one.before) - place(other.before));
    if (earliest !== void 0) return earliest;
  }
  return void 0;
};
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
function checkOrder(procedureName, entry) {
  var _a, _b;
  if (isBlank(entry)) return { status: "blank", lookAt: "" };
  const actions = orderedActions(procedureName);
  const letters = lettersAmiss(entry, actions);
  if (typeof letters === "string") return { status: "unreadable", lookAt: letters };
  const order = letters.map((letter) => {
    var _a2, _b2;
    return (_b2 = (_a2 = actions.find((action) => action.letter === letter)) == null ? void 0 : _a2.item.id) != null ? _b2 : "";
  });
  const broken = brokenFirst(procedureByName(procedureName).rules, order);
  if (broken === void 0) return { status: "on target", lookAt: orderTexts.works };
  if (broken.weight === "advised") return { status: "on target", lookAt: \`\${orderTexts.works} \${broken.ask}\` };
  const pair = {
    sooner: (_a = letters[order.indexOf(broken.after)]) != null ? _a : "",
    later: (_b = letters[order.indexOf(broken.before)]) != null ? _b : ""
  };
  return { status: "not yet", lookAt: orderTexts.brokenPair({ ...pair, ask: broken.ask }) };
}

// src/lab/judging/carriedRows.ts
function someOf(items) {
  const chosen = [[]];
  for (const item of items) {
    for (const some of chosen.slice()) chosen.push([...some, item]);
  }
  return chosen.slice(1);
}
function carriedRows({ buildsOn }, { rowOf }) {
  const held = Object.keys(buildsOn).flatMap((name) => {
    var _a;
    const row = rowOf((_a = buildsOn[name]) != null ? _a : "");
    return (row == null ? void 0 : row.value) === void 0 ? [] : [{ name, row, value: row.value }];
  });
  return someOf(held).map((some) => {
    var _a;
    const carried = Object.fromEntries(some.map(({ name, value }) => [name, value]));
    const unsound = some.find(({ row }) => row.status !== "on target");
    return { carried, sound: !unsound, lookAt: (_a = unsound == null ? void 0 : unsound.row.root) != null ? _a : "" };
  });
}

// src/lab/judging/isFact.ts
var isFact = ({ step, value }) => (step == null ? void 0 : step.kind) === "measured" && value !== void 0;

// src/lab/judging/isSound.ts
var isSound = ({ status }) => status === "on target" || status === "close";

// src/lab/judging/readyStep.ts
function readyStep(step, { settings, givens, stepOf, rowOf }) {
  var _a, _b, _c, _d;
  const quantity = quantities[step.quantity];
  const cells = {};
  const names = {};
  const numbers = {};
  const from = [];
  let waitsFor = "";
  for (const { name } of quantity.takes) {
    const source = step.takes[name];
    if (!source) continue;
    if ("given" in source) {
      cells[name] = givens[source.given];
      names[name] = source.given;
      continue;
    }
    const row = rowOf(source.entryOf);
    const title = (_b = (_a = stepOf(source.entryOf)) == null ? void 0 : _a.title) != null ? _b : source.entryOf;
    names[name] = title;
    if ((row == null ? void 0 : row.value) === void 0) waitsFor || (waitsFor = filled(remarks.needsRow, { row: (row == null ? void 0 : row.root) || title }));
    else from.push(row);
    numbers[name] = (_c = row == null ? void 0 : row.value) != null ? _c : Number.NaN;
  }
  const figuresRead = takesLessonFigures(quantity);
  const weightsRead = "formula" in cells && !("ion" in cells);
  const badName = [...figuresRead ? ["figures"] : [], ...weightsRead ? ["atomic-weight decimals"] : []].find(
    (name) => settings.bad.includes(name)
  );
  const prepareWith = (fromEntries) => prepareStep(quantity, cells, {
    ...figuresRead ? { figures: settings.figures } : {},
    decimals: settings.decimals,
    decimalMark: settings.decimalMark,
    numbers: fromEntries,
    names
  });
  let result = prepareWith(numbers);
  const [first] = from;
  if (!result.ok && first) {
    const open = prepareWith(Object.fromEntries(Object.keys(numbers).map((name) => [name, Number.NaN])));
    if (open.ok) {
      result = open;
      waitsFor || (waitsFor = filled(remarks.lookFirst, { row: ((_d = from.find((row) => !isSound(row))) != null ? _d : first).root }));
    }
  }
  const bad = result.ok ? badName === void 0 ? "" : badSetting(badName) : badGiven(result.error.argument);
  return { bad, ready: result.ok ? result.value : void 0, from, waitsFor };
}

// src/lab/judging/sourceSets.ts
var workedFrom = (row) => row.value === void 0 ? [] : isSound(row) ? [.../* @__PURE__ */ new Set([row.value, ...row.unrounded])] : [row.value];
function sourceSets({ takes }, { rowOf }) {
  let sets = [{}];
  for (const [name, source] of Object.entries(takes)) {
    const row = "entryOf" in source ? rowOf(source.entryOf) : void 0;
    if (row) sets = workedFrom(row).flatMap((value) => sets.map((set) => ({ ...set, [name]: value })));
  }
  return sets;
}

// src/lab/activitySlips.ts
var exactly = (value) => ({ low: value, middle: value, high: value });
function plannedMolarity(step, { stepOf, readyOf }) {
  const { mass } = step.takes;
  const weighed = mass && "entryOf" in mass ? stepOf(mass.entryOf) : void 0;
  const planned = (weighed == null ? void 0 : weighed.kind) === "measured" && typeof weighed.expects === "string" ? stepOf(weighed.expects) : void 0;
  if ((planned == null ? void 0 : planned.kind) !== "calculated" || planned.quantity !== "mass of solute") return [];
  const ready = readyOf(planned);
  return ready ? [exactly(ready.numbers.molarity)] : [];
}
function labelledMolarity(step, { activity, givens, decimalMark }) {
  var _a;
  const name = (_a = activity == null ? void 0 : activity.numbers.density) == null ? void 0 : _a.molarity;
  const { density } = step.takes;
  if (name === void 0 || !density || !("entryOf" in density)) return [];
  const label = readQuantity(givens[name], "concentration", name, { decimalMark });
  return label.ok ? [exactly(label.value.value)] : [];
}
function massToWeigh({ id }, { activity, readyOf }) {
  const mass = activity == null ? void 0 : activity.steps.find(
    (step) => step.kind === "calculated" && step.quantity === "mass of solute" && step.buildsOn["moles of solute"] === id
  );
  const ready = mass && readyOf(mass);
  return ready ? [spanOver(ready, ready.quantity.relation)] : [];
}
function flasksCompared({ activity, givens, decimalMark }) {
  var _a;
  const { solid, dilution } = (_a = activity == null ? void 0 : activity.numbers) != null ? _a : {};
  if (!solid || !dilution) return [];
  const stock = readQuantity(givens[solid.flask], "volume", solid.flask, { decimalMark });
  const diluted = readQuantity(givens[dilution.volume], "volume", dilution.volume, { decimalMark });
  if (!stock.ok || !diluted.ok) return [];
  const ratio = stock.value.value / diluted.value.value;
  return [exactly(ratio), exactly(1 / ratio)];
}
function activitySlips(step, { ready, entry, ...around }) {
  const tolerance = stepTolerance(ready);
  const agrees = (spans) => spans.some((span) => fitsSlip(span, { entry, tolerance }));
  switch (step.quantity) {
    case "molarity":
      return agrees(plannedMolarity(step, around)) ? ["planned-for-made"] : [];
    case "reagent molarity":
      return agrees(labelledMolarity(step, around)) ? ["planned-for-made"] : [];
    case "moles of solute":
      return agrees(massToWeigh(step, around)) ? ["mass-reported"] : [];
    case "dilution factor":
      return agrees(flasksCompared(around)) ? ["flasks-compared"] : [];
    default:
      return [];
  }
}

// src/lab/judging/withActivitySlips.ts
function withActivitySlips({ judgement, step, ready, entry }, around) {
  if (judgement.status !== "close" && judgement.status !== "not yet") return judgement;
  const isOpen = judgement.status === "close" ? judgement.because === "rounding" || judgement.because === "cut off" : judgement.question === void 0 || judgement.question === "one figure";
  if (!isOpen || entry.kind !== "number") return judgement;
  const more = activitySlips(step, {
    activity: around.activity,
    stepOf: around.stepOf,
    readyOf: (other) => readyStep(other, around).ready,
    givens: around.givens,
    decimalMark: around.settings.decimalMark,
    ready,
    entry: entry.entry
  });
  if (more.length === 0) return judgement;
  if (judgement.status === "close") {
    return more.includes("planned-for-made") ? { ...judgement, because: "planned for made" } : judgement;
  }
  return { status: "not yet", slips: [...judgement.slips.filter((id) => id !== "power-of-ten"), ...more] };
}

// src/lab/judging/judgeCalculated.ts
function judgeCalculated(step, cell, around) {
  const { settings } = around;
  const { bad, ready, from, waitsFor } = readyStep(step, around);
  if (bad !== "" || !ready) return { status: "unreadable", lookAt: bad };
  const entry = readEntry(cell, ready.quantity.entryKind, settings);
  if (entry.kind === "number" && waitsFor !== "") {
    return { status: "not yet", lookAt: waitsFor, value: entry.entry.value };
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
  const own = judgeEntry(ready, entry, { rows, judgeFigures: settings.judgeFigures });
  const judgement = withActivitySlips({ judgement: own, step, ready, entry }, around);
  const value = entry.kind === "number" ? { value: entry.entry.value } : {};
  const spans = entry.kind === "number" ? sets.map((set) => spanOver(ready, ready.quantity.relation, set)) : [];
  const unrounded = [...new Set(spans.flatMap(({ low, middle, high }) => [middle, low, high]))];
  const unsound = from.find((row) => !isSound(row) && !isFact(row));
  const final = isSound(judgement) && unsound ? { status: "follows", lookAt: unsound.root } : judgement;
  return {
    ...value,
    unrounded,
    status: final.status,
    lookAt: feedbackText(final, ready.quantity),
    slips: final.status === "not yet" ? final.slips : [],
    ...final.status === "follows" ? { root: final.lookAt } : {}
  };
}

// src/lab/checkReading.ts
var farTimes = 3;
function showsEveryFigure({ isText, lastPlace, figuresMin, figuresMax }, settings) {
  const finest = balanceReadability(settings);
  if (!isText || !finest.ok) return true;
  const place = finest.value.lastPlace;
  return lastPlace <= place && place <= lastPlace + figuresMax - figuresMin;
}
function checkReading(entry, reading) {
  const read = readEntry(entry, unitKind(reading.unit), { decimalMark: reading.decimalMark });
  if (read.kind === "blank") return { status: "blank", lookAt: "" };
  if (read.kind === "unreadable") return { status: "unreadable", lookAt: readingTexts.unreadable };
  if (read.unit === "other kind") return { status: "not yet", lookAt: readingTexts.unit };
  const tolerance = readingTolerance(reading, reading.settings);
  if (!tolerance.ok) return { status: "unreadable", lookAt: badSetting(tolerance.error.argument) };
  const { value } = read.entry;
  const { expected } = reading;
  const slack = 1e-12 * Math.max(Math.abs(value), Math.abs(expected));
  if (Math.abs(value - expected) <= tolerance.value.limit + slack) {
    const isOfBalance = reading.unit === "g" && reading.tools.some(({ tool }) => tool === "balance");
    return isOfBalance && !showsEveryFigure(read.entry, reading.settings) ? { status: "close", lookAt: readingTexts.decimals } : { status: "on target", lookAt: readingTexts.onTarget };
  }
  if (value > expected * farTimes) return { status: "not yet", lookAt: readingTexts.farAbove };
  if (value < expected / farTimes) return { status: "not yet", lookAt: readingTexts.farBelow };
  return { status: "not yet", lookAt: value > expected ? readingTexts.above : readingTexts.below };
}

// src/lab/judging/expectedReading.ts
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
  if ((row == null ? void 0 : row.kind) !== "calculated") throw new Error(\`the step “\${id}” expects no calculated step\`);
  const { bad, ready, waitsFor } = readyStep(row, around);
  return { bad, expected: ready && spanOver(ready, ready.quantity.relation).middle, waitsFor };
}

// src/lab/judging/toolsOfReading.ts
function toolsOfReading({ tools, instrument, expected }, { givens, settings }) {
  var _a;
  const used = [];
  for (const one of tools != null ? tools : instrument === "bench" ? [] : [{ tool: instrument }]) {
    if (one.tool === "balance") {
      used.push({ tool: one.tool, mass: grams(expected) });
      continue;
    }
    const name = "volume" in one ? one.volume : void 0;
    const size = name === void 0 ? void 0 : readQuantity(givens[name], "volume", name, settings);
    if ((size == null ? void 0 : size.ok) === false) return size;
    used.push({ tool: one.tool, volume: millilitres((_a = size == null ? void 0 : size.value.value) != null ? _a : expected) });
  }
  return success(used);
}

// src/lab/judging/judgeMeasured.ts
function judgeMeasured(step, cell, around) {
  const { bad, expected, waitsFor } = expectedReading(step, around);
  if (bad !== "" || expected === void 0) return { status: "unreadable", lookAt: bad };
  const { unit, techniqueShare } = step;
  const { settings } = around;
  const entry = readEntry(cell, unitKind(unit), settings);
  const value = entry.kind === "number" ? { value: entry.entry.value } : {};
  if (entry.kind === "number" && waitsFor !== "") return { ...value, status: "not yet", lookAt: waitsFor };
  const tools = toolsOfReading({ ...step, expected }, around);
  if (!tools.ok) return { status: "unreadable", lookAt: badGiven(tools.error.argument) };
  const reading = {
    expected,
    unit,
    tools: tools.value,
    ...techniqueShare === void 0 ? {} : { techniqueShare },
    settings: settings.cells,
    decimalMark: settings.decimalMark
  };
  return { ...value, ...checkReading(cell, reading) };
}

// src/lab/checkTick.ts
var tick = /^(?:yes|y|x|ok|read|done|[✓✔☑])(?:[\\s,:;–-]+|$)/i;
function checkTick(entry, { substance, cautionLines }) {
  const formula = String(substance != null ? substance : "").trim();
  const answer = tickTexts.answer(formula);
  const withLines = (status, said) => ({
    status,
    lookAt: \`\${said}
\${cautionLines}\`
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

// src/lab/judging/judgeTicked.ts
function judgeTicked({ substance }, cell, { givens, settings: { decimalMark, studentsDilute } }) {
  return checkTick(cell, {
    substance: givens[substance.formula],
    cautionLines: cautionWords({ substance, givens, decimalMark, studentsDilute })
  });
}

// src/lab/judging/judgeStep.ts
function judgeStep(step, cell, around) {
  switch (step.kind) {
    case "calculated":
      return judgeCalculated(step, cell, around);
    case "measured":
      return judgeMeasured(step, cell, around);
    case "ordered":
      return checkOrder(step.procedure, cell);
    case "chosen":
      return checkChoice(step.question, cell);
    case "ticked":
      return judgeTicked(step, cell, around);
    case "told":
      return {};
  }
}

// src/lab/judging/withWait.ts
var needsAnotherLook = ({ status }) => status === "not yet" || status === "follows" || status === "unreadable";
function withWait(row, earlier) {
  var _a, _b;
  if (((_a = row.step) == null ? void 0 : _a.kind) === "told" || !((_b = row.step) == null ? void 0 : _b.bench) || row.status === "on target") return row;
  const unticked = earlier.find(({ step, status }) => (step == null ? void 0 : step.kind) === "ticked" && status !== "on target");
  if (unticked == null ? void 0 : unticked.step) return { ...row, lookAt: tickTexts.waitForTick(unticked.step.title) };
  const first = earlier.find(
    (other) => other.step && other.step.kind !== "chosen" && needsAnotherLook(other) && !isFact(other)
  );
  return first ? { ...row, lookAt: filled(remarks.waitForRow, { row: first.root }) } : row;
}

// src/lab/teamGivens.ts
function teamGivens(names, values) {
  const cells = /* @__PURE__ */ Object.create(null);
  const plain = names.map(plainName);
  plain.forEach((name, column) => {
    if (name !== "" && plain.indexOf(name) === plain.lastIndexOf(name)) cells[name] = values[column];
  });
  return cells;
}

// src/lab/judgeTeam.ts
var quietRow = {
  step: void 0,
  status: "",
  lookAt: "",
  slips: [],
  value: void 0,
  unrounded: [],
  root: ""
};
function judgeTeam(block) {
  const settings = readLessonSettings(block.settings);
  const activity = activityById(settings.activity, settings);
  const ids = block.steps.map(plainName);
  const around = {
    activity,
    settings,
    givens: teamGivens(block.givenNames, block.givenValues),
    stepOf: (id) => {
      var _a;
      return (_a = activity == null ? void 0 : activity.steps.find((step) => step.id === id)) != null ? _a : bareStep(id);
    },
    rowOf: (id) => {
      const index = ids.indexOf(id);
      return index < 0 ? void 0 : judge(index);
    }
  };
  const judged = [];
  function judge(index) {
    const known = judged[index];
    if (known === "under way") throw new Error(\`the step “\${ids[index]}” builds on itself\`);
    if (known) return known;
    judged[index] = "under way";
    const row = judgeFresh(index);
    judged[index] = row;
    return row;
  }
  function judgeFresh(index) {
    var _a;
    const step = around.stepOf((_a = ids[index]) != null ? _a : "");
    if (step) return { ...quietRow, step, root: step.title, ...judgeStep(step, block.entries[index], around) };
    const isNamed = !isBlank(block.steps[index]);
    return isNamed ? { ...quietRow, status: "unreadable", lookAt: badStep(String(block.steps[index])) } : quietRow;
  }
  const rows = ids.map((_, index) => judge(index));
  return rows.map((row, index) => withWait(row, rows.slice(0, index)));
}

// src/lab/stepHint.ts
var titleOf = (activity, id) => {
  var _a, _b;
  return (_b = (_a = activity == null ? void 0 : activity.steps.find((step) => step.id === id)) == null ? void 0 : _a.title) != null ? _b : id;
};
var expectedName = ({ expects }, activity) => {
  if (typeof expects === "string") return titleOf(activity, expects);
  return "given" in expects ? expects.given : expects.expected;
};
function calculatedHint(step, level, wanted) {
  const shown = (name) => {
    const argument = quantities[step.quantity].takes.find((taken) => taken.name === name);
    const source = step.takes[name];
    if (argument === void 0 || source === void 0) return void 0;
    if ("given" in source) {
      return shownCell(wanted.givens[source.given], { argument, decimalMark: wanted.decimalMark });
    }
    const entry = shownCell(wanted.entries[source.entryOf], { argument, decimalMark: wanted.decimalMark });
    return entry != null ? entry : rowShown(titleOf(wanted.activity, source.entryOf));
  };
  return quantityHint(step.quantity, { level, shown });
}
function ourHint(step, level, wanted) {
  var _a, _b, _c, _d, _e, _f, _g;
  switch (step.kind) {
    case "calculated":
      return calculatedHint(step, level, wanted);
    case "measured":
      return (_c = (_b = readingHints[(_a = step.hints) != null ? _a : step.instrument][level - 1]) == null ? void 0 : _b.replace("{row}", expectedName(step, wanted.activity))) != null ? _c : "";
    case "ordered":
      return (_d = procedureByName(step.procedure).hints[level - 1]) != null ? _d : "";
    case "chosen": {
      const hint = (_e = questionByName(step.question).hints[level - 1]) != null ? _e : "";
      return typeof hint === "string" ? hint : filledIn(hint, (name) => plainCell(wanted.givens[name]));
    }
    case "ticked":
      return (_f = tickHints[level - 1]) != null ? _f : "";
    case "told":
      return (_g = toldHints[level - 1]) != null ? _g : "";
  }
}
var plainCell = (cell) => typeof cell === "number" ? String(cell) : typeof cell === "string" && cell.trim() !== "" ? cell.trim() : void 0;
function bareQuantityHint(name, level, { givens, decimalMark }) {
  if (!isQuantityName(name)) return "";
  const takes = quantities[name].takes;
  const shown = (wanted) => {
    const argument = takes.find((taken) => taken.name === wanted);
    return argument && shownCell(givens[wanted], { argument, decimalMark });
  };
  return quantityHint(name, { level, shown });
}
function stepHint(wanted) {
  const { activity, stepId, level, ownHints = [] } = wanted;
  if (level !== 1 && level !== 2 && level !== 3) return "";
  const step = activity == null ? void 0 : activity.steps.find(({ id }) => id === stepId);
  const { words, link } = ownHint(ownHints, { stepId, level });
  const ours = () => step ? ourHint(step, level, wanted) : bareQuantityHint(stepId, level, wanted);
  return [words === "" ? ours() : words, link].filter((part) => part !== "").join(" ");
}

// src/lab/checkTeam.ts
function levelWanted(cell) {
  var _a;
  if (isBlank(cell)) return 0;
  const typed = typeof cell === "string" ? (_a = /^\\s*([0-3])(?![\\d.,/])/.exec(cell)) == null ? void 0 : _a[1] : cell;
  const level = typeof typed === "string" ? Number(typed) : typed;
  return level === 0 || level === 1 || level === 2 || level === 3 ? level : void 0;
}
function checkTeam(table) {
  const settings = readLessonSettings(table.settings);
  const activity = activityById(settings.activity, settings);
  const givens = teamGivens(table.givenNames, table.givenValues);
  const entries = /* @__PURE__ */ Object.create(null);
  table.steps.forEach((cell, index) => {
    const id = plainName(cell);
    if (id !== "" && !(id in entries)) entries[id] = table.entries[index];
  });
  const hintFor = (row, index) => {
    var _a;
    if (!row.step) return "";
    const wanted = levelWanted((_a = table.helpWanted) == null ? void 0 : _a[index]);
    if (wanted === void 0) return levelAsked;
    const level = Math.min(wanted, settings.highestHelpLevel);
    return stepHint({
      activity,
      stepId: row.step.id,
      level,
      givens,
      entries,
      decimalMark: settings.decimalMark,
      ownHints: table.ownHints
    });
  };
  return judgeTeam(table).map(
    (row, index) => index === 0 && isBlank(table.steps[0]) ? checkHeadings : { check: row.status, lookAt: row.lookAt, hint: hintFor(row, index) }
  );
}

// src/functions/wholeBlock.ts
function wholeBlock(cells) {
  const spread = asCell(spreadOf(this, cells), "alone");
  return asCell(computed(this, spread.valuesAt(0, 0)), "alone");
}

// src/functions/entries/checkTeamEntry.ts
var checkTeamEntry = {
  name: "CHECKTEAM",
  arguments: [
    { name: "given_names", kind: "row", unit: "", about: "names of the given numbers" },
    { name: "given_values", kind: "row", unit: "", about: "this team's values, below or beside those names" },
    { name: "settings", kind: "table", unit: "", about: "settings in two columns, name and value" },
    { name: "steps", kind: "column", unit: "", about: "step ids, from the heading row to the closing row" },
    { name: "entries", kind: "column", unit: "", about: "the team's entries, of the same height" },
    {
      name: "help_wanted",
      kind: "column",
      unit: "",
      about: "help wanted in each row, 0 to 3, of the same height",
      optional: true
    },
    {
      name: "own_hints",
      kind: "table",
      unit: "",
      about: "the teacher's own hints and links, as the Help sheet has them",
      optional: true
    }
  ],
  columns: ["check", "what to look at", "hint"],
  call: wholeBlock,
  compute(givenNames, givenValues, settings, steps, entries, helpWanted, ownHints) {
    var _a, _b;
    if (givenNames.length !== givenValues.length) {
      return unequal("given_values", "as many cells as given_names", [givenNames.length, givenValues.length, "cells"]);
    }
    if (steps.length !== entries.length) {
      return unequal("entries", "as many rows as steps", [steps.length, entries.length, "rows"]);
    }
    if (helpWanted !== void 0 && helpWanted.length !== steps.length) {
      return unequal("help_wanted", "as many rows as steps", [steps.length, helpWanted.length, "rows"]);
    }
    if (((_b = (_a = settings[0]) == null ? void 0 : _a.length) != null ? _b : 0) < 2) {
      return failure({
        code: "range-shape",
        argument: "settings",
        expected: "two columns, name and value,",
        received: "one column",
        advice: "Select the names together with the values beside them."
      });
    }
    const rows = checkTeam({ givenNames, givenValues, settings, steps, entries, helpWanted, ownHints });
    return success(rows.map(({ check, lookAt, hint }) => [check, lookAt, hint]));
  }
};
var unequal = (argument, expected, [wanted, found, what]) => failure({
  code: "range-shape",
  argument,
  expected: \`\${expected}, \${wanted},\`,
  received: \`\${found} \${what}\`,
  advice: "Make both cover the same rows and columns of the block."
});
return { entry: checkTeamEntry };
`;
},
// Part COMPOSITION: functions/entries/compositionEntry
"COMPOSITION"() {
  return `
const { composition, oneTable, success } = part("base");

// src/functions/entries/compositionEntry.ts
var compositionEntry = {
  name: "COMPOSITION",
  arguments: [{ name: "formula", kind: "formula", unit: "", about: "formula as you write it, such as Ca(NO3)2" }],
  columns: ["element", "atoms", "g/mol", "mass percent"],
  call: oneTable,
  compute(formula) {
    const parts = composition(formula);
    if (!parts.ok) return parts;
    return success(parts.value.map(({ element, atoms, mass, percent }) => [element, atoms, mass, percent]));
  }
};
return { entry: compositionEntry };
`;
},
// Part CONVERTCONCENTRATION: chemistry/concentrationUnit, chemistry/convertConcentration, functions/entries/convertConcentrationEntry
"CONVERTCONCENTRATION"() {
  return `
const { belowZero, cellByCell, failure, finite, notAboveZero, quoted, success, withMolarMass } = part("base");

// src/chemistry/concentrationUnit.ts
var units = {
  "amount in volume": { "mol/L": 0, M: 0, "mmol/L": -3, mM: -3, "µmol/L": -6, µM: -6 },
  "mass in volume": { "g/L": 0, "mg/L": -3, "mg/dL": -2, "g/dL": 1, "µg/mL": -3, "mg/mL": 0, "% w/v": 1 },
  "mass in mass": { "% w/w": -2, ppm: -6, ppb: -9 },
  "amount in solvent": { "mol/kg": 0 }
};
var concentrationUnits = [
  "mol/L",
  "M",
  "mmol/L",
  "mM",
  "µmol/L",
  "g/L",
  "mg/L",
  "mg/dL",
  "g/dL",
  "µg/mL",
  "% w/v",
  "% w/w",
  "ppm",
  "ppb",
  "mol/kg"
];
var plain = (text) => text.normalize("NFKC").replace(/[\\s()]/g, "").replace("μ", "u").replace(/l/g, "L").replace(/(w\\/[wv]|m\\/[mv])%/, "%$1").replace("%m/m", "%w/w").replace("%m/v", "%w/v");
function readConcentrationUnit(cell, argument) {
  const wanted = plain(String(cell));
  for (const kind of Object.keys(units)) {
    for (const [symbol, power] of Object.entries(units[kind])) {
      if (plain(symbol) === wanted) return success({ symbol, kind, power });
    }
  }
  if (wanted === "%") {
    return failure({
      code: "percent-unclear",
      argument,
      expected: "one kind of percentage",
      received: \`\${quoted(cell)}, which could be % w/w or % w/v\`,
      advice: "Type % w/w for grams in 100 g, or % w/v for grams in 100 mL."
    });
  }
  return failure({
    code: "concentration-unit-unknown",
    argument,
    expected: \`one of \${concentrationUnits.join(", ")}\`,
    received: quoted(cell),
    advice: "Type one of those units."
  });
}

// src/chemistry/convertConcentration.ts
function conversionNeeds(from, to) {
  const isAmount = (kind) => kind.startsWith("amount");
  const isInVolume = (kind) => kind.endsWith("volume");
  return {
    formula: from !== to && (isAmount(from) || isAmount(to)),
    density: isInVolume(from) !== isInVolume(to)
  };
}
function convertConcentration({ value, from, to, molarMass, density }) {
  var _a, _b, _c;
  const needs = conversionNeeds(from.kind, to.kind);
  const error = (_c = (_b = (_a = belowZero({ value, argument: "value", unit: from.symbol })) != null ? _a : missing(needs.formula && molarMass === void 0, "formula", { from, to })) != null ? _b : missing(needs.density && density === void 0, "density", { from, to })) != null ? _c : density === void 0 ? void 0 : notAboveZero({ value: density, argument: "density", unit: "g/mL" });
  if (error) return failure(error);
  const [perMole, perMillilitre] = [molarMass != null ? molarMass : Number.NaN, density != null ? density : Number.NaN];
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
var shifted = (value, power) => power < 0 ? value / 10 ** -power : value * 10 ** power;
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
function fromShare({
  kind,
  share,
  perMole,
  perMillilitre
}) {
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
    code: "conversion-needs",
    argument,
    expected: argument === "formula" ? "a formula such as KBr" : "the density of the solution, such as 1.05 g/mL,",
    received: "nothing",
    advice: \`From \${from.symbol} to \${to.symbol} the \${argument === "formula" ? "molar mass" : "density"} is needed: type it.\`,
    brief: argument
  };
}
var soluteOverWhole = (value, { symbol }) => failure({
  code: "solute-over-whole",
  argument: "value",
  expected: "no more solute than solution",
  received: \`\${quoted(value)} \${symbol}\`,
  advice: "Look at the units, the density and the powers of ten."
});

// src/functions/entries/convertConcentrationEntry.ts
var convertConcentrationEntry = {
  name: "CONVERTCONCENTRATION",
  arguments: [
    { name: "value", kind: "number", unit: "", about: "the number to convert" },
    { name: "from", kind: "text", unit: "", about: "its unit, such as g/L" },
    { name: "to", kind: "text", unit: "", about: "the unit wanted, such as mol/L" },
    {
      name: "formula",
      kind: "formula",
      unit: "",
      about: "formula of the solute; needed between amount and mass only",
      optional: true
    },
    {
      name: "density",
      kind: "density",
      unit: "g/mL",
      about: "density of the solution; needed between a volume and a mass of solution only",
      optional: true
    }
  ],
  call: cellByCell,
  compute(value, fromText, toText, formula, density) {
    const from = readConcentrationUnit(fromText, "from");
    if (!from.ok) return from;
    const to = readConcentrationUnit(toText, "to");
    if (!to.ok) return to;
    const conversion = { value, from: from.value, to: to.value, density };
    if (formula === void 0 || !conversionNeeds(from.value.kind, to.value.kind).formula) {
      return convertConcentration(conversion);
    }
    return withMolarMass(formula, (molarMass) => convertConcentration({ ...conversion, molarMass }));
  }
};
return { entry: convertConcentrationEntry };
`;
},
// Part DILUENTVOLUME: functions/entries/diluentVolumeEntry
"DILUENTVOLUME"() {
  return `
const { cellByCell, diluentVolume } = part("base");

// src/functions/entries/diluentVolumeEntry.ts
var diluentVolumeEntry = {
  name: "DILUENTVOLUME",
  arguments: [
    { name: "stock_molarity", kind: "concentration", unit: "mol/L", about: "concentration of the stock" },
    { name: "target_molarity", kind: "concentration", unit: "mol/L", about: "concentration wanted" },
    { name: "target_volume", kind: "volume", unit: "mL", about: "final volume wanted" }
  ],
  call: cellByCell,
  compute: (stock, target, finalVolume) => diluentVolume({ stock, target, finalVolume })
};
return { entry: diluentVolumeEntry };
`;
},
// Part DILUTEDVOLUME: chemistry/dilutedVolume, functions/entries/dilutedVolumeEntry
"DILUTEDVOLUME"() {
  return `
const { cellByCell, dilutionError, failure, finite, millilitres, notAboveZero } = part("base");

// src/chemistry/dilutedVolume.ts
function dilutedVolume({ stock, stockVolume, target }) {
  var _a;
  const error = (_a = dilutionError({ stock, target })) != null ? _a : notAboveZero({ value: stockVolume, argument: "stock_volume", unit: "mL" });
  if (error) return failure(error);
  return finite(millilitres(stock * stockVolume / target), "stock_volume");
}

// src/functions/entries/dilutedVolumeEntry.ts
var dilutedVolumeEntry = {
  name: "DILUTEDVOLUME",
  arguments: [
    { name: "stock_molarity", kind: "concentration", unit: "mol/L", about: "concentration of the stock" },
    { name: "stock_volume", kind: "volume", unit: "mL", about: "volume of stock taken" },
    { name: "target_molarity", kind: "concentration", unit: "mol/L", about: "concentration wanted" }
  ],
  call: cellByCell,
  compute: (stock, stockVolume, target) => dilutedVolume({ stock, stockVolume, target })
};
return { entry: dilutedVolumeEntry };
`;
},
// Part DILUTIONMOLARITY: functions/entries/dilutionMolarityEntry
"DILUTIONMOLARITY"() {
  return `
const { cellByCell, dilutedMolarity } = part("base");

// src/functions/entries/dilutionMolarityEntry.ts
var dilutionMolarityEntry = {
  name: "DILUTIONMOLARITY",
  arguments: [
    { name: "stock_molarity", kind: "concentration", unit: "mol/L", about: "concentration of the stock" },
    { name: "stock_volume", kind: "volume", unit: "mL", about: "volume of stock taken" },
    { name: "final_volume", kind: "volume", unit: "mL", about: "volume after filling up" }
  ],
  call: cellByCell,
  compute: (stock, stockVolume, finalVolume) => dilutedMolarity({ stock, stockVolume, finalVolume })
};
return { entry: dilutionMolarityEntry };
`;
},
// Part DILUTIONVOLUME: functions/entries/dilutionVolumeEntry
"DILUTIONVOLUME"() {
  return `
const { cellByCell, stockVolume } = part("base");

// src/functions/entries/dilutionVolumeEntry.ts
var dilutionVolumeEntry = {
  name: "DILUTIONVOLUME",
  arguments: [
    { name: "stock_molarity", kind: "concentration", unit: "mol/L", about: "concentration of the stock" },
    { name: "target_molarity", kind: "concentration", unit: "mol/L", about: "concentration wanted" },
    { name: "target_volume", kind: "volume", unit: "mL", about: "final volume wanted" }
  ],
  call: cellByCell,
  compute: (stock, target, finalVolume) => stockVolume({ stock, target, finalVolume })
};
return { entry: dilutionVolumeEntry };
`;
},
// Part ELEMENTPERCENT: chemistry/elementPercent, functions/entries/elementPercentEntry
"ELEMENTPERCENT"() {
  return `
const { cellByCell, composition, elementOf, elements, failure, quoted, readFormula, success } = part("base");

// src/chemistry/elementPercent.ts
function elementPercent(formula, element) {
  var _a;
  const typed = element.trim();
  const named = [...elements().values()].find(({ name }) => name === typed.toLowerCase());
  const wanted = (_a = named == null ? void 0 : named.symbol) != null ? _a : typed;
  if (!elements().has(wanted)) {
    const read = readFormula(typed, "element");
    if (!read.ok) return read;
    return failure({
      code: "element-unknown",
      argument: "element",
      expected: "the symbol of one element such as N for element",
      received: quoted(element),
      advice: "Type one symbol, without a number.",
      brief: typed
    });
  }
  const shares = composition(formula);
  if (!shares.ok) return shares;
  const found = shares.value.filter((share) => elementOf(share.element) === wanted);
  if (found.length > 0) return success(found.reduce((sum, { percent }) => sum + percent, 0));
  const present = [...new Set(shares.value.map((share) => elementOf(share.element)))];
  return failure({
    code: "element-not-in-formula",
    argument: "element",
    expected: \`one of \${present.join(", ")}\`,
    received: quoted(element),
    advice: "Choose an element that the formula has.",
    brief: wanted
  });
}

// src/functions/entries/elementPercentEntry.ts
var elementPercentEntry = {
  name: "ELEMENTPERCENT",
  arguments: [
    { name: "formula", kind: "formula", unit: "", about: "formula as you write it, such as Ca(NO3)2" },
    { name: "element", kind: "text", unit: "", about: "symbol of the element, such as N" }
  ],
  call: cellByCell,
  compute: (formula, element) => elementPercent(formula, element)
};
return { entry: elementPercentEntry };
`;
},
// Part GLASSWARETOLERANCE: functions/entries/glasswareToleranceEntry
"GLASSWARETOLERANCE"() {
  return `
const { glasswareTolerance } = part("measurement/glasswareTolerance");
const { cellByCell, success } = part("base");

// src/functions/entries/glasswareToleranceEntry.ts
var glasswareToleranceEntry = {
  name: "GLASSWARETOLERANCE",
  arguments: [
    {
      name: "kind",
      kind: "text",
      unit: "",
      about: "volumetric flask, volumetric pipette, graduated pipette, burette, graduated cylinder or beaker",
      oneOf: ["volumetric flask", "volumetric pipette", "graduated pipette", "burette", "graduated cylinder", "beaker"]
    },
    { name: "volume", kind: "volume", unit: "mL", about: "nominal size" },
    {
      name: "glass_class",
      kind: "text",
      unit: "",
      about: "A or B; A if left out",
      optional: true,
      oneOf: ["A", "B"]
    },
    {
      name: "standard",
      kind: "text",
      unit: "",
      about: "ISO or ASTM; ISO if left out",
      optional: true,
      oneOf: ["ISO", "ASTM"]
    }
  ],
  call: cellByCell,
  compute(kind, volume, glassClass, standard) {
    const figure = glasswareTolerance({ kind, volume, glassClass, standard });
    return figure.ok ? success(figure.value.tolerance) : figure;
  }
};
return { entry: glasswareToleranceEntry };
`;
},
// Part GRAMS: chemistry/massOf, functions/entries/gramsEntry
"GRAMS"() {
  return `
const { belowZero, cellByCell, failure, finite, grams, withMolarMass } = part("base");

// src/chemistry/massOf.ts
function massOf({
  molarMass,
  amount
}) {
  const error = belowZero({ value: amount, argument: "moles", unit: "mol" });
  return error ? failure(error) : finite(grams(amount * molarMass), "moles");
}

// src/functions/entries/gramsEntry.ts
var gramsEntry = {
  name: "GRAMS",
  arguments: [
    { name: "formula", kind: "formula", unit: "", about: "formula of the substance" },
    { name: "moles", kind: "amount", unit: "mol", about: "its amount" }
  ],
  call: cellByCell,
  compute: (formula, amount) => withMolarMass(formula, (molarMass) => massOf({ molarMass, amount }))
};
return { entry: gramsEntry };
`;
},
// Part HINTSTEP: lab/hintStep, functions/entries/hintStepEntry
"HINTSTEP"() {
  return `
const { readQuantityName } = part("lab/checkStep");
const { quantityHint, shownCell } = part("lab/shownCell");
const { plainName, prepareStep, quantities, readGivenCells } = part("lesson");




const { cellByCell, failure, quoted, success } = part("base");

// src/lab/hintStep.ts
function hintStep(quantity, table, level) {
  const wanted = typeof level === "string" ? Number(plainName(level)) : level;
  if (wanted !== 1 && wanted !== 2 && wanted !== 3) {
    return failure({
      code: "hint-level",
      argument: "level",
      expected: "1, 2 or 3",
      received: quoted(level),
      advice: "Level 1 is the idea, 2 the relation, 3 the set-up with your numbers."
    });
  }
  const entry = quantities[quantity];
  const cells = readGivenCells(entry, table);
  if (!cells.ok) return cells;
  const prepared = prepareStep(entry, cells.value, {});
  if (!prepared.ok) return prepared;
  const shown = (name) => {
    const argument = entry.takes.find((taken) => taken.name === name);
    return argument && shownCell(cells.value[name], { argument, decimalMark: "point" });
  };
  return success(quantityHint(quantity, { level: wanted, shown }));
}

// src/functions/entries/hintStepEntry.ts
var hintStepEntry = {
  name: "HINTSTEP",
  arguments: [
    { name: "quantity", kind: "text", unit: "", about: "what is asked for, such as mass of solute" },
    { name: "given", kind: "table", unit: "", about: "given numbers in two columns, name and value" },
    {
      name: "level",
      kind: "whole number",
      unit: "",
      about: "1 the idea, 2 the relation, 3 the set-up with these numbers"
    }
  ],
  call: cellByCell,
  compute(quantity, given, level) {
    const name = readQuantityName(quantity);
    return name.ok ? hintStep(name.value, given, level) : name;
  }
};
return { entry: hintStepEntry };
`;
},
// Part IONMOLARITY: chemistry/ionMolarity, functions/entries/ionMolarityEntry
"IONMOLARITY"() {
  return `
const { namedIon } = part("chemistry/namedIon");

const { belowZero, cellByCell, failure, finite, molesPerLitre } = part("base");

// src/chemistry/ionMolarity.ts
function ionMolarity({
  formula,
  molarity,
  ion
}) {
  const named = namedIon(formula, ion);
  if (!named.ok) return named;
  const negative = belowZero({ value: molarity, argument: "molarity", unit: "mol/L" });
  return negative ? failure(negative) : finite(molesPerLitre(molarity * named.value.ion.count), "molarity");
}

// src/functions/entries/ionMolarityEntry.ts
var ionMolarityEntry = {
  name: "IONMOLARITY",
  arguments: [
    { name: "formula", kind: "formula", unit: "", about: "formula of what is dissolved" },
    { name: "molarity", kind: "concentration", unit: "mol/L", about: "concentration of the whole" },
    { name: "ion", kind: "text", unit: "", about: "the ion asked for, such as Mg2+ or Cl-" }
  ],
  call: cellByCell,
  compute: (formula, molarity, ion) => ionMolarity({ formula, molarity, ion })
};
return { entry: ionMolarityEntry };
`;
},
// Part IONS: functions/entries/ionsEntry
"IONS"() {
  return `
const { ions } = part("chemistry/ions");
const { oneTable, success } = part("base");

// src/functions/entries/ionsEntry.ts
var ionsEntry = {
  name: "IONS",
  arguments: [{ name: "formula", kind: "formula", unit: "", about: "formula of the substance that is dissolved" }],
  columns: ["ion", "number per formula unit", "note"],
  call: oneTable,
  compute(formula) {
    const found = ions(formula);
    if (!found.ok) return found;
    const isNoted = found.value.some(({ note }) => note !== void 0);
    return success(
      found.value.map(({ ion, count, note = "" }) => isNoted ? [ion, count, note] : [ion, count])
    );
  }
};
return { entry: ionsEntry };
`;
},
// Part MOLALITY: chemistry/molality, functions/entries/molalityEntry
"MOLALITY"() {
  return `
const { cellByCell, failure, finite, notAboveZero, withMolarMass } = part("base");

// src/chemistry/molality.ts
function molality({ molarMass, mass, solventMass }) {
  const error = notAboveZero(
    { value: mass, argument: "grams", unit: "g" },
    { value: solventMass, argument: "solvent_grams", unit: "g" }
  );
  if (error) return failure(error);
  return finite(1e3 * (mass / molarMass) / solventMass, "grams");
}

// src/functions/entries/molalityEntry.ts
var molalityEntry = {
  name: "MOLALITY",
  arguments: [
    { name: "formula", kind: "formula", unit: "", about: "formula of the solute" },
    { name: "grams", kind: "mass", unit: "g", about: "mass of solute" },
    { name: "solvent_grams", kind: "mass", unit: "g", about: "mass of solvent" }
  ],
  call: cellByCell,
  compute: (formula, mass, solventMass) => withMolarMass(formula, (molarMass) => molality({ molarMass, mass, solventMass }))
};
return { entry: molalityEntry };
`;
},
// Part MOLARITY: functions/entries/molarityEntry
"MOLARITY"() {
  return `
const { cellByCell, molarity, withMolarMass } = part("base");

// src/functions/entries/molarityEntry.ts
var molarityEntry = {
  name: "MOLARITY",
  arguments: [
    { name: "formula", kind: "formula", unit: "", about: "formula of the solid, hydrate included" },
    { name: "grams", kind: "mass", unit: "g", about: "mass of solid weighed" },
    { name: "volume", kind: "volume", unit: "mL", about: "volume of the solution" },
    {
      name: "purity_percent",
      kind: "percent",
      unit: "%",
      about: "purity of the solid by mass; 100 % if left out",
      optional: true
    }
  ],
  call: cellByCell,
  compute: (formula, mass, volume, purity) => withMolarMass(formula, (molarMass) => molarity({ molarMass, mass, volume, purity }))
};
return { entry: molarityEntry };
`;
},
// Part MOLARITYUNCERTAINTY: chemistry/molarityUncertainty, functions/entries/molarityUncertaintyEntry
"MOLARITYUNCERTAINTY"() {
  return `
const { belowZero, cellByCell, failure, finite, molarity, molesPerLitre, notAboveZero, withMolarMass } = part("base");

// src/chemistry/molarityUncertainty.ts
var rectangular = (halfWidth, value) => halfWidth / Math.sqrt(3) / value;
function molarityUncertainty(solution) {
  var _a;
  const { mass, volume, balanceTolerance, flaskTolerance, purity = 100, purityTolerance = 0 } = solution;
  const made = molarity(solution);
  if (!made.ok) return made;
  const error = (_a = belowZero(
    { value: balanceTolerance, argument: "balance_tolerance", unit: "g" },
    { value: flaskTolerance, argument: "flask_tolerance", unit: "mL" },
    { value: purityTolerance, argument: "purity_tolerance", unit: "percentage points" }
  )) != null ? _a : notAboveZero({ value: made.value, argument: "grams", unit: "mol/L" });
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

// src/functions/entries/molarityUncertaintyEntry.ts
var molarityUncertaintyEntry = {
  name: "MOLARITYUNCERTAINTY",
  arguments: [
    { name: "formula", kind: "formula", unit: "", about: "formula of the solid, hydrate included" },
    { name: "grams", kind: "mass", unit: "g", about: "mass of solid weighed" },
    { name: "volume", kind: "volume", unit: "mL", about: "volume of the flask" },
    { name: "balance_tolerance", kind: "mass", unit: "g", about: "± of one reading of the balance" },
    { name: "flask_tolerance", kind: "volume", unit: "mL", about: "± of the flask" },
    {
      name: "purity_percent",
      kind: "percent",
      unit: "%",
      about: "purity of the solid by mass; 100 % if left out",
      optional: true
    },
    {
      name: "purity_tolerance",
      kind: "percentage points",
      unit: "percentage points",
      about: "± of the purity; 0 if left out",
      optional: true
    }
  ],
  call: cellByCell,
  compute: (formula, mass, volume, balanceTolerance, flaskTolerance, purity, purityTolerance) => withMolarMass(
    formula,
    (molarMass) => molarityUncertainty({ molarMass, mass, volume, balanceTolerance, flaskTolerance, purity, purityTolerance })
  )
};
return { entry: molarityUncertaintyEntry };
`;
},
// Part MOLARMASS: functions/entries/molarMassEntry
"MOLARMASS"() {
  return `
const { cellByCell, molarMass } = part("base");

// src/functions/entries/molarMassEntry.ts
var molarMassEntry = {
  name: "MOLARMASS",
  arguments: [{ name: "formula", kind: "formula", unit: "", about: "formula as you write it, such as CuSO4·5H2O" }],
  call: cellByCell,
  compute: (formula) => molarMass(formula)
};
return { entry: molarMassEntry };
`;
},
// Part MOLEFRACTION: chemistry/moleFraction, functions/entries/moleFractionEntry
"MOLEFRACTION"() {
  return `
const { belowZero, cellByCell, failure, finite, notAboveZero, withMolarMass } = part("base");

// src/chemistry/moleFraction.ts
function moleFraction({
  first,
  second
}) {
  var _a;
  const error = (_a = belowZero(
    { value: first.mass, argument: "grams_1", unit: "g" },
    { value: second.mass, argument: "grams_2", unit: "g" }
  )) != null ? _a : notAboveZero({ value: first.mass + second.mass, argument: "grams_1", unit: "g" });
  if (error) return failure(error);
  const amount = first.mass / first.molarMass;
  return finite(amount / (amount + second.mass / second.molarMass), "grams_1");
}

// src/functions/entries/moleFractionEntry.ts
var moleFractionEntry = {
  name: "MOLEFRACTION",
  arguments: [
    { name: "formula_1", kind: "formula", unit: "", about: "formula of the first substance" },
    { name: "grams_1", kind: "mass", unit: "g", about: "its mass" },
    { name: "formula_2", kind: "formula", unit: "", about: "formula of the second substance" },
    { name: "grams_2", kind: "mass", unit: "g", about: "its mass" }
  ],
  call: cellByCell,
  compute: (first, firstMass, second, secondMass) => withMolarMass(
    first,
    (firstMolarMass) => withMolarMass(
      second,
      (secondMolarMass) => moleFraction({
        first: { molarMass: firstMolarMass, mass: firstMass },
        second: { molarMass: secondMolarMass, mass: secondMass }
      })
    )
  )
};
return { entry: moleFractionEntry };
`;
},
// Part MOLES: chemistry/amountOf, functions/entries/molesEntry
"MOLES"() {
  return `
const { belowZero, cellByCell, failure, finite, moles, withMolarMass } = part("base");

// src/chemistry/amountOf.ts
function amountOf({
  molarMass,
  mass
}) {
  const error = belowZero({ value: mass, argument: "grams", unit: "g" });
  return error ? failure(error) : finite(moles(mass / molarMass), "grams");
}

// src/functions/entries/molesEntry.ts
var molesEntry = {
  name: "MOLES",
  arguments: [
    { name: "formula", kind: "formula", unit: "", about: "formula of the substance" },
    { name: "grams", kind: "mass", unit: "g", about: "its mass" }
  ],
  call: cellByCell,
  compute: (formula, mass) => withMolarMass(formula, (molarMass) => amountOf({ molarMass, mass }))
};
return { entry: molesEntry };
`;
},
// Part PARTICLECOUNT: chemistry/particleCount, functions/entries/particleCountEntry
"PARTICLECOUNT"() {
  return `
const { belowZero, cellByCell, failure, finite } = part("base");

// src/chemistry/particleCount.ts
var avogadroConstant = 602214076e15;
function particleCount(amount) {
  const error = belowZero({ value: amount, argument: "moles", unit: "mol" });
  return error ? failure(error) : finite(amount * avogadroConstant, "moles");
}

// src/functions/entries/particleCountEntry.ts
var particleCountEntry = {
  name: "PARTICLECOUNT",
  arguments: [{ name: "moles", kind: "amount", unit: "mol", about: "the amount" }],
  call: cellByCell,
  compute: (amount) => particleCount(amount)
};
return { entry: particleCountEntry };
`;
},
// Part PERCENTDIFFERENCE: measurement/percentDifference, functions/entries/percentDifferenceEntry
"PERCENTDIFFERENCE"() {
  return `
const { cellByCell, failure, finite, percent } = part("base");

// src/measurement/percentDifference.ts
function percentDifference({
  first,
  second
}) {
  const mean = Math.abs(first / 2 + second / 2);
  if (mean === 0) {
    return failure({
      code: "mean-zero",
      argument: "second",
      expected: "two values whose mean is not 0",
      received: \`\${first} and \${second}\`,
      advice: "A share of nothing does not exist: compare the plain difference instead."
    });
  }
  return finite(percent(100 * Math.abs(first - second) / mean), "first");
}

// src/functions/entries/percentDifferenceEntry.ts
var percentDifferenceEntry = {
  name: "PERCENTDIFFERENCE",
  arguments: [
    { name: "first", kind: "number", unit: "", about: "one value" },
    { name: "second", kind: "number", unit: "", about: "the other value, in the same unit" }
  ],
  call: cellByCell,
  compute: (first, second) => percentDifference({ first, second })
};
return { entry: percentDifferenceEntry };
`;
},
// Part PERCENTERROR: functions/entries/percentErrorEntry
"PERCENTERROR"() {
  return `
const { cellByCell, percentError } = part("base");

// src/functions/entries/percentErrorEntry.ts
var percentErrorEntry = {
  name: "PERCENTERROR",
  arguments: [
    { name: "measured", kind: "number", unit: "", about: "the measured value" },
    { name: "accepted", kind: "number", unit: "", about: "the accepted value, in the same unit" },
    {
      name: "signed",
      kind: "yes or no",
      unit: "",
      about: "TRUE keeps the sign of measured − accepted; without sign if left out",
      optional: true
    }
  ],
  call: cellByCell,
  compute: (measured, accepted, signed) => percentError({ measured, accepted, signed })
};
return { entry: percentErrorEntry };
`;
},
// Part REAGENTMOLARITY: functions/entries/reagentMolarityEntry
"REAGENTMOLARITY"() {
  return `
const { cellByCell, reagentMolarity, withMolarMass } = part("base");

// src/functions/entries/reagentMolarityEntry.ts
var reagentMolarityEntry = {
  name: "REAGENTMOLARITY",
  arguments: [
    { name: "formula", kind: "formula", unit: "", about: "formula of the solute in the bottle" },
    { name: "mass_percent", kind: "percent", unit: "%", about: "mass percent on the label; 37 means 37 %" },
    { name: "density", kind: "density", unit: "g/mL", about: "density of the reagent" }
  ],
  call: cellByCell,
  compute: (formula, massPercent, density) => withMolarMass(formula, (molarMass) => reagentMolarity({ molarMass, massPercent, density }))
};
return { entry: reagentMolarityEntry };
`;
},
// Part ROUNDSIG: big.js/big, measurement/roundToFigures, functions/entries/roundSigEntry
"ROUNDSIG"() {
  return `
const { cellByCell, failure, success } = part("base");

// node_modules/big.js/big.mjs
var DP = 20;
var RM = 1;
var MAX_DP = 1e6;
var MAX_POWER = 1e6;
var NE = -7;
var PE = 21;
var STRICT = false;
var NAME = "[big.js] ";
var INVALID = NAME + "Invalid ";
var INVALID_DP = INVALID + "decimal places";
var INVALID_RM = INVALID + "rounding mode";
var DIV_BY_ZERO = NAME + "Division by zero";
var P = {};
var UNDEFINED = void 0;
var NUMERIC = /^-?(\\d+(\\.\\d*)?|\\.\\d+)(e[+-]?\\d+)?$/i;
function _Big_() {
  function Big2(n) {
    var x = this;
    if (!(x instanceof Big2)) {
      return n === UNDEFINED && arguments.length === 0 ? _Big_() : new Big2(n);
    }
    if (n instanceof Big2) {
      x.s = n.s;
      x.e = n.e;
      x.c = n.c.slice();
    } else {
      if (typeof n !== "string") {
        if (Big2.strict === true && typeof n !== "bigint") {
          throw TypeError(INVALID + "value");
        }
        n = n === 0 && 1 / n < 0 ? "-0" : String(n);
      }
      parse(x, n);
    }
    x.constructor = Big2;
  }
  Big2.prototype = P;
  Big2.DP = DP;
  Big2.RM = RM;
  Big2.NE = NE;
  Big2.PE = PE;
  Big2.strict = STRICT;
  Big2.roundDown = 0;
  Big2.roundHalfUp = 1;
  Big2.roundHalfEven = 2;
  Big2.roundUp = 3;
  return Big2;
}
function parse(x, n) {
  var e, i, nl;
  if (!NUMERIC.test(n)) {
    throw Error(INVALID + "number");
  }
  x.s = n.charAt(0) == "-" ? (n = n.slice(1), -1) : 1;
  if ((e = n.indexOf(".")) > -1) n = n.replace(".", "");
  if ((i = n.search(/e/i)) > 0) {
    if (e < 0) e = i;
    e += +n.slice(i + 1);
    n = n.substring(0, i);
  } else if (e < 0) {
    e = n.length;
  }
  nl = n.length;
  for (i = 0; i < nl && n.charAt(i) == "0"; ) ++i;
  if (i == nl) {
    x.c = [x.e = 0];
  } else {
    for (; nl > 0 && n.charAt(--nl) == "0"; ) ;
    x.e = e - i - 1;
    x.c = [];
    for (e = 0; i <= nl; ) x.c[e++] = +n.charAt(i++);
  }
  return x;
}
function round(x, sd, rm, more) {
  var xc = x.c;
  if (rm === UNDEFINED) rm = x.constructor.RM;
  if (rm !== 0 && rm !== 1 && rm !== 2 && rm !== 3) {
    throw Error(INVALID_RM);
  }
  if (sd < 1) {
    more = rm === 3 && (more || !!xc[0]) || sd === 0 && (rm === 1 && xc[0] >= 5 || rm === 2 && (xc[0] > 5 || xc[0] === 5 && (more || xc[1] !== UNDEFINED)));
    xc.length = 1;
    if (more) {
      x.e = x.e - sd + 1;
      xc[0] = 1;
    } else {
      xc[0] = x.e = 0;
    }
  } else if (sd < xc.length) {
    more = rm === 1 && xc[sd] >= 5 || rm === 2 && (xc[sd] > 5 || xc[sd] === 5 && (more || xc[sd + 1] !== UNDEFINED || xc[sd - 1] & 1)) || rm === 3 && (more || !!xc[0]);
    xc.length = sd;
    if (more) {
      for (; ++xc[--sd] > 9; ) {
        xc[sd] = 0;
        if (sd === 0) {
          ++x.e;
          xc.unshift(1);
          break;
        }
      }
    }
    for (sd = xc.length; !xc[--sd]; ) xc.pop();
  }
  return x;
}
function stringify(x, doExponential, isNonzero) {
  var e = x.e, s = x.c.join(""), n = s.length;
  if (doExponential) {
    s = s.charAt(0) + (n > 1 ? "." + s.slice(1) : "") + (e < 0 ? "e" : "e+") + e;
  } else if (e < 0) {
    for (; ++e; ) s = "0" + s;
    s = "0." + s;
  } else if (e > 0) {
    if (++e > n) {
      for (e -= n; e--; ) s += "0";
    } else if (e < n) {
      s = s.slice(0, e) + "." + s.slice(e);
    }
  } else if (n > 1) {
    s = s.charAt(0) + "." + s.slice(1);
  }
  return x.s < 0 && isNonzero ? "-" + s : s;
}
P.abs = function() {
  var x = new this.constructor(this);
  x.s = 1;
  return x;
};
P.cmp = function(y) {
  var isneg, x = this, xc = x.c, yc = (y = new x.constructor(y)).c, i = x.s, j = y.s, k = x.e, l = y.e;
  if (!xc[0] || !yc[0]) return !xc[0] ? !yc[0] ? 0 : -j : i;
  if (i != j) return i;
  isneg = i < 0;
  if (k != l) return k > l ^ isneg ? 1 : -1;
  j = (k = xc.length) < (l = yc.length) ? k : l;
  for (i = -1; ++i < j; ) {
    if (xc[i] != yc[i]) return xc[i] > yc[i] ^ isneg ? 1 : -1;
  }
  return k == l ? 0 : k > l ^ isneg ? 1 : -1;
};
P.div = function(y) {
  var x = this, Big2 = x.constructor, a = x.c, b = (y = new Big2(y)).c, k = x.s == y.s ? 1 : -1, dp = Big2.DP;
  if (dp !== ~~dp || dp < 0 || dp > MAX_DP) {
    throw Error(INVALID_DP);
  }
  if (!b[0]) {
    throw Error(DIV_BY_ZERO);
  }
  if (!a[0]) {
    y.s = k;
    y.c = [y.e = 0];
    return y;
  }
  var bl, bt, n, cmp, ri, bz = b.slice(), ai = bl = b.length, al = a.length, r = a.slice(0, bl), rl = r.length, q = y, qc = q.c = [], qi = 0, p = dp + (q.e = x.e - y.e) + 1;
  q.s = k;
  k = p < 0 ? 0 : p;
  bz.unshift(0);
  for (; rl++ < bl; ) r.push(0);
  do {
    for (n = 0; n < 10; n++) {
      if (bl != (rl = r.length)) {
        cmp = bl > rl ? 1 : -1;
      } else {
        for (ri = -1, cmp = 0; ++ri < bl; ) {
          if (b[ri] != r[ri]) {
            cmp = b[ri] > r[ri] ? 1 : -1;
            break;
          }
        }
      }
      if (cmp < 0) {
        for (bt = rl == bl ? b : bz; rl; ) {
          if (r[--rl] < bt[rl]) {
            ri = rl;
            for (; ri && !r[--ri]; ) r[ri] = 9;
            --r[ri];
            r[rl] += 10;
          }
          r[rl] -= bt[rl];
        }
        for (; !r[0]; ) r.shift();
      } else {
        break;
      }
    }
    qc[qi++] = cmp ? n : ++n;
    if (r[0] && cmp) r[rl] = a[ai] || 0;
    else r = [a[ai]];
  } while ((ai++ < al || r[0] !== UNDEFINED) && k--);
  if (!qc[0] && qi != 1) {
    qc.shift();
    q.e--;
    p--;
  }
  if (qi > p) round(q, p, Big2.RM, r[0] !== UNDEFINED);
  return q;
};
P.eq = function(y) {
  return this.cmp(y) === 0;
};
P.gt = function(y) {
  return this.cmp(y) > 0;
};
P.gte = function(y) {
  return this.cmp(y) > -1;
};
P.lt = function(y) {
  return this.cmp(y) < 0;
};
P.lte = function(y) {
  return this.cmp(y) < 1;
};
P.minus = P.sub = function(y) {
  var i, j, t, xlty, x = this, Big2 = x.constructor, a = x.s, b = (y = new Big2(y)).s;
  if (a != b) {
    y.s = -b;
    return x.plus(y);
  }
  var xc = x.c.slice(), xe = x.e, yc = y.c, ye = y.e;
  if (!xc[0] || !yc[0]) {
    if (yc[0]) {
      y.s = -b;
    } else if (xc[0]) {
      y = new Big2(x);
    } else {
      y.s = 1;
    }
    return y;
  }
  if (a = xe - ye) {
    if (xlty = a < 0) {
      a = -a;
      t = xc;
    } else {
      ye = xe;
      t = yc;
    }
    t.reverse();
    for (b = a; b--; ) t.push(0);
    t.reverse();
  } else {
    j = ((xlty = xc.length < yc.length) ? xc : yc).length;
    for (a = b = 0; b < j; b++) {
      if (xc[b] != yc[b]) {
        xlty = xc[b] < yc[b];
        break;
      }
    }
  }
  if (xlty) {
    t = xc;
    xc = yc;
    yc = t;
    y.s = -y.s;
  }
  if ((b = (j = yc.length) - (i = xc.length)) > 0) for (; b--; ) xc[i++] = 0;
  for (b = i; j > a; ) {
    if (xc[--j] < yc[j]) {
      for (i = j; i && !xc[--i]; ) xc[i] = 9;
      --xc[i];
      xc[j] += 10;
    }
    xc[j] -= yc[j];
  }
  for (; xc[--b] === 0; ) xc.pop();
  for (; xc[0] === 0; ) {
    xc.shift();
    --ye;
  }
  if (!xc[0]) {
    y.s = 1;
    xc = [ye = 0];
  }
  y.c = xc;
  y.e = ye;
  return y;
};
P.mod = function(y) {
  var ygtx, x = this, Big2 = x.constructor, a = x.s, b = (y = new Big2(y)).s;
  if (!y.c[0]) {
    throw Error(DIV_BY_ZERO);
  }
  x.s = y.s = 1;
  ygtx = y.cmp(x) == 1;
  x.s = a;
  y.s = b;
  if (ygtx) return new Big2(x);
  a = Big2.DP;
  b = Big2.RM;
  Big2.DP = Big2.RM = 0;
  x = x.div(y);
  Big2.DP = a;
  Big2.RM = b;
  return this.minus(x.times(y));
};
P.neg = function() {
  var x = new this.constructor(this);
  x.s = -x.s;
  return x;
};
P.plus = P.add = function(y) {
  var e, k, t, x = this, Big2 = x.constructor;
  y = new Big2(y);
  if (x.s != y.s) {
    y.s = -y.s;
    return x.minus(y);
  }
  var xe = x.e, xc = x.c, ye = y.e, yc = y.c;
  if (!xc[0] || !yc[0]) {
    if (!yc[0]) {
      if (xc[0]) {
        y = new Big2(x);
      } else {
        y.s = x.s;
      }
    }
    return y;
  }
  xc = xc.slice();
  if (e = xe - ye) {
    if (e > 0) {
      ye = xe;
      t = yc;
    } else {
      e = -e;
      t = xc;
    }
    t.reverse();
    for (; e--; ) t.push(0);
    t.reverse();
  }
  if (xc.length - yc.length < 0) {
    t = yc;
    yc = xc;
    xc = t;
  }
  e = yc.length;
  for (k = 0; e; xc[e] %= 10) k = (xc[--e] = xc[e] + yc[e] + k) / 10 | 0;
  if (k) {
    xc.unshift(k);
    ++ye;
  }
  for (e = xc.length; xc[--e] === 0; ) xc.pop();
  y.c = xc;
  y.e = ye;
  return y;
};
P.pow = function(n) {
  var x = this, one = new x.constructor("1"), y = one, isneg = n < 0;
  if (n !== ~~n || n < -MAX_POWER || n > MAX_POWER) {
    throw Error(INVALID + "exponent");
  }
  if (isneg) n = -n;
  for (; ; ) {
    if (n & 1) y = y.times(x);
    n >>= 1;
    if (!n) break;
    x = x.times(x);
  }
  return isneg ? one.div(y) : y;
};
P.prec = function(sd, rm) {
  if (sd !== ~~sd || sd < 1 || sd > MAX_DP) {
    throw Error(INVALID + "precision");
  }
  return round(new this.constructor(this), sd, rm);
};
P.round = function(dp, rm) {
  if (dp === UNDEFINED) dp = 0;
  else if (dp !== ~~dp || dp < -MAX_DP || dp > MAX_DP) {
    throw Error(INVALID_DP);
  }
  return round(new this.constructor(this), dp + this.e + 1, rm);
};
P.sqrt = function() {
  var r, c, t, x = this, Big2 = x.constructor, s = x.s, e = x.e, half = new Big2("0.5");
  if (!x.c[0]) return new Big2(x);
  if (s < 0) {
    throw Error(NAME + "No square root");
  }
  s = Math.sqrt(+stringify(x, true, true));
  if (s === 0 || s === 1 / 0) {
    c = x.c.join("");
    if (!(c.length + e & 1)) c += "0";
    s = Math.sqrt(c);
    e = ((e + 1) / 2 | 0) - (e < 0 || e & 1);
    r = new Big2((s == 1 / 0 ? "5e" : (s = s.toExponential()).slice(0, s.indexOf("e") + 1)) + e);
  } else {
    r = new Big2(s + "");
  }
  e = r.e + (Big2.DP += 4);
  do {
    t = r;
    r = half.times(t.plus(x.div(t)));
  } while (t.c.slice(0, e).join("") !== r.c.slice(0, e).join(""));
  return round(r, (Big2.DP -= 4) + r.e + 1, Big2.RM);
};
P.times = P.mul = function(y) {
  var c, x = this, Big2 = x.constructor, xc = x.c, yc = (y = new Big2(y)).c, a = xc.length, b = yc.length, i = x.e, j = y.e;
  y.s = x.s == y.s ? 1 : -1;
  if (!xc[0] || !yc[0]) {
    y.c = [y.e = 0];
    return y;
  }
  y.e = i + j;
  if (a < b) {
    c = xc;
    xc = yc;
    yc = c;
    j = a;
    a = b;
    b = j;
  }
  for (c = new Array(j = a + b); j--; ) c[j] = 0;
  for (i = b; i--; ) {
    b = 0;
    for (j = a + i; j > i; ) {
      b = c[j] + yc[i] * xc[j - i - 1] + b;
      c[j--] = b % 10;
      b = b / 10 | 0;
    }
    c[j] = b;
  }
  if (b) ++y.e;
  else c.shift();
  for (i = c.length; !c[--i]; ) c.pop();
  y.c = c;
  return y;
};
P.toExponential = function(dp, rm) {
  var x = this, n = x.c[0];
  if (dp !== UNDEFINED) {
    if (dp !== ~~dp || dp < 0 || dp > MAX_DP) {
      throw Error(INVALID_DP);
    }
    x = round(new x.constructor(x), ++dp, rm);
    for (; x.c.length < dp; ) x.c.push(0);
  }
  return stringify(x, true, !!n);
};
P.toFixed = function(dp, rm) {
  var x = this, n = x.c[0];
  if (dp !== UNDEFINED) {
    if (dp !== ~~dp || dp < 0 || dp > MAX_DP) {
      throw Error(INVALID_DP);
    }
    x = round(new x.constructor(x), dp + x.e + 1, rm);
    for (dp = dp + x.e + 1; x.c.length < dp; ) x.c.push(0);
  }
  return stringify(x, false, !!n);
};
P.toJSON = P.toString = function() {
  var x = this, Big2 = x.constructor;
  return stringify(x, x.e <= Big2.NE || x.e >= Big2.PE, !!x.c[0]);
};
if (typeof Symbol !== "undefined") {
  P[/* @__PURE__ */ Symbol.for("nodejs.util.inspect.custom")] = P.toJSON;
}
P.toNumber = function() {
  var n = +stringify(this, true, true);
  if (this.constructor.strict === true && !this.eq(n.toString())) {
    throw Error(NAME + "Imprecise conversion");
  }
  return n;
};
P.toPrecision = function(sd, rm) {
  var x = this, Big2 = x.constructor, n = x.c[0];
  if (sd !== UNDEFINED) {
    if (sd !== ~~sd || sd < 1 || sd > MAX_DP) {
      throw Error(INVALID + "precision");
    }
    x = round(new Big2(x), sd, rm);
    for (; x.c.length < sd; ) x.c.push(0);
  }
  return stringify(x, sd <= x.e || x.e <= Big2.NE || x.e >= Big2.PE, !!n);
};
P.valueOf = function() {
  var x = this, Big2 = x.constructor;
  if (Big2.strict === true) {
    throw Error(NAME + "valueOf disallowed");
  }
  return stringify(x, x.e <= Big2.NE || x.e >= Big2.PE, true);
};
var Big = _Big_();
var big_default = Big;

// src/measurement/roundToFigures.ts
var mostFigures = 30;
var smallestPlain = -7;
function roundToFigures(number, { figures, ties }) {
  if (!Number.isInteger(figures) || figures < 1 || figures > mostFigures) {
    return failure({
      code: "figures-out-of-range",
      argument: "figures",
      expected: \`a whole number from 1 to \${mostFigures}\`,
      received: String(figures),
      advice: "Type how many significant figures you want, such as 3."
    });
  }
  const exact = new big_default(number.decimal);
  if (exact.eq(0)) return success("0");
  const rounded = exact.prec(figures, ties === "up" ? 1 : 2);
  const place = rounded.e;
  const decimals = figures - 1 - place;
  const plain = rounded.toFixed(Math.max(decimals, 0));
  const isClear = place >= smallestPlain && (decimals > 0 || !plain.endsWith("0"));
  return success(isClear ? plain : rounded.toExponential(figures - 1).replace(/e\\+?/, " × 10^"));
}

// src/functions/entries/roundSigEntry.ts
var roundSigEntry = {
  name: "ROUNDSIG",
  arguments: [
    { name: "value", kind: "digits", unit: "", about: "the number" },
    { name: "figures", kind: "whole number", unit: "", about: "how many significant figures" },
    {
      name: "ties",
      kind: "text",
      unit: "",
      about: "half-way cases: even takes the even digit, up goes away from zero; even if left out, but schools differ",
      optional: true,
      oneOf: ["even", "up"]
    }
  ],
  call: cellByCell,
  compute: (value, figures, ties) => roundToFigures(value, { figures, ties })
};
return { entry: roundSigEntry };
`;
},
// Part SERIALDILUTION: chemistry/serialDilution, functions/entries/serialDilutionEntry
"SERIALDILUTION"() {
  return `
const { failure, molesPerLitre, notAboveZero, oneTable, quoted, success } = part("base");

// src/chemistry/serialDilution.ts
var mostStages = 100;
function serialDilution({
  stock,
  factor,
  stages,
  finalVolume
}) {
  const error = notAboveZero(
    { value: stock, argument: "stock_molarity", unit: "mol/L" },
    ...finalVolume === void 0 ? [] : [{ value: finalVolume, argument: "final_volume", unit: "mL" }]
  );
  if (error) return failure(error);
  if (!(factor > 1 && Number.isFinite(factor))) {
    return failure({
      code: "factor-not-above-one",
      argument: "factor",
      expected: "more than 1",
      received: quoted(factor),
      advice: "Type how many times the volume grows at each stage, such as 10."
    });
  }
  if (!(Number.isInteger(stages) && stages >= 1 && stages <= mostStages)) {
    return failure({
      code: "stages-out-of-range",
      argument: "stages",
      expected: \`a whole number from 1 to \${mostStages}\`,
      received: quoted(stages),
      advice: "Type how many dilutions follow each other."
    });
  }
  const volumes = finalVolume === void 0 ? {} : volumesOf(finalVolume, factor);
  const rows = [];
  for (let stage = 1; stage <= stages; stage += 1) {
    const molarity = molesPerLitre(stock / factor ** stage);
    if (!(molarity > 0)) {
      return failure({
        code: "stages-out-of-range",
        argument: "stages",
        expected: \`at most \${stage - 1} \${stage === 2 ? "stage" : "stages"} with this factor\`,
        received: quoted(stages),
        advice: "Nothing is left to dilute after that: take fewer stages or a smaller factor."
      });
    }
    rows.push({ stage, molarity, ...volumes });
  }
  return success(rows);
}
var volumesOf = (finalVolume, factor) => ({
  taken: finalVolume / factor,
  solvent: finalVolume - finalVolume / factor
});

// src/functions/entries/serialDilutionEntry.ts
var serialDilutionEntry = {
  name: "SERIALDILUTION",
  arguments: [
    { name: "stock_molarity", kind: "concentration", unit: "mol/L", about: "concentration of the stock" },
    { name: "factor", kind: "number", unit: "", about: "how many times each stage is diluted, more than 1" },
    { name: "stages", kind: "whole number", unit: "", about: "how many dilutions follow each other" },
    {
      name: "final_volume",
      kind: "volume",
      unit: "mL",
      about: "final volume of each stage; adds the two columns of volumes",
      optional: true
    }
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
`;
},
// Part SIGFIGS: functions/entries/sigFigsEntry
"SIGFIGS"() {
  return `
const { cellByCell, significantFigures, success } = part("base");

// src/functions/entries/sigFigsEntry.ts
var sigFigsEntry = {
  name: "SIGFIGS",
  arguments: [
    {
      name: "number_as_text",
      kind: "figures",
      unit: "",
      about: 'the number as text such as "0.0750"; a number cell has lost its trailing zeros'
    }
  ],
  call: cellByCell,
  compute: (number) => success(significantFigures(number))
};
return { entry: sigFigsEntry };
`;
},
// Part SOLUTEMASS: functions/entries/soluteMassEntry
"SOLUTEMASS"() {
  return `
const { cellByCell, soluteMass, withMolarMass } = part("base");

// src/functions/entries/soluteMassEntry.ts
var soluteMassEntry = {
  name: "SOLUTEMASS",
  arguments: [
    {
      name: "formula",
      kind: "formula",
      unit: "",
      about: "formula of the solid as it stands in the bottle, hydrate included"
    },
    { name: "molarity", kind: "concentration", unit: "mol/L", about: "concentration wanted" },
    { name: "volume", kind: "volume", unit: "mL", about: "volume of solution wanted" },
    {
      name: "purity_percent",
      kind: "percent",
      unit: "%",
      about: "purity of the solid by mass; 100 % if left out",
      optional: true
    }
  ],
  call: cellByCell,
  compute: (formula, molarity, volume, purity) => withMolarMass(formula, (molarMass) => soluteMass({ molarMass, molarity, volume, purity }))
};
return { entry: soluteMassEntry };
`;
},
// Part SOLUTIONVOLUME: chemistry/solutionVolume, functions/entries/solutionVolumeEntry
"SOLUTIONVOLUME"() {
  return `
const { cellByCell, failure, finite, millilitres, notAboveZero, pureShare, withMolarMass } = part("base");

// src/chemistry/solutionVolume.ts
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

// src/functions/entries/solutionVolumeEntry.ts
var solutionVolumeEntry = {
  name: "SOLUTIONVOLUME",
  arguments: [
    { name: "formula", kind: "formula", unit: "", about: "formula of the solid, hydrate included" },
    { name: "grams", kind: "mass", unit: "g", about: "mass of solid weighed" },
    { name: "molarity", kind: "concentration", unit: "mol/L", about: "concentration wanted" },
    {
      name: "purity_percent",
      kind: "percent",
      unit: "%",
      about: "purity of the solid by mass; 100 % if left out",
      optional: true
    }
  ],
  call: cellByCell,
  compute: (formula, mass, molarity, purity) => withMolarMass(formula, (molarMass) => solutionVolume({ molarMass, mass, molarity, purity }))
};
return { entry: solutionVolumeEntry };
`;
},
// Part host/spreadsheet
"host/spreadsheet"() {
  return `
// src/host/spreadsheet.ts
var openSpreadsheet = () => SpreadsheetApp.getActiveSpreadsheet();
var ui = () => SpreadsheetApp.getUi();
var settle = () => SpreadsheetApp.flush();
var choiceOf = (options, help) => SpreadsheetApp.newDataValidation().requireValueInList([...options], true).setAllowInvalid(true).setHelpText(help).build();
var stateRuleOf = ({
  startsWith,
  background,
  color,
  ranges
}) => SpreadsheetApp.newConditionalFormatRule().whenTextStartsWith(startsWith).setBackground(background).setFontColor(color).setRanges(ranges).build();
var isStateRule = (rule, startsWith) => {
  const condition = rule.getBooleanCondition();
  return condition !== null && condition.getCriteriaType() === SpreadsheetApp.BooleanCriteria.TEXT_STARTS_WITH && condition.getCriteriaValues()[0] === startsWith;
};
var sheetProtections = (sheet) => sheet.getProtections(SpreadsheetApp.ProtectionType.SHEET);
var recalculateEveryMinute = (spreadsheet) => {
  spreadsheet.setRecalculationInterval(SpreadsheetApp.RecalculationInterval.MINUTE);
};
var documentVisibility = () => SpreadsheetApp.DeveloperMetadataVisibility.DOCUMENT;

return { openSpreadsheet, ui, settle, choiceOf, stateRuleOf, isStateRule, sheetProtections, recalculateEveryMinute, documentVisibility };
`;
},
// Part host/dayOf: workbook/cellText, workbook/layout, host/countedEntry, host/documentLock
"host/dayOf"() {
  return `
const { settle } = part("host/spreadsheet");

// src/workbook/cellText.ts
function cellText(cell) {
  if (cell === null || cell === void 0 || cell instanceof Date) return "";
  return String(cell).trim();
}

// src/workbook/layout.ts
var layoutVersion = 2;
var classColumns = {
  find: 1,
  entry: 2,
  unit: 3,
  check: 4,
  lookAt: 5,
  hint: 6,
  help: 7,
  who: 8,
  tries: 9,
  lastEntry: 10,
  key: 11,
  step: 12,
  /** In a heading row the first given; in a step row the entry that was counted last. */
  givens: 13
};
var countedColumn = classColumns.givens;
var classMarker = "Labrow class";
var classRows = { title: 1, caution: 2, note: 3, notice: 4, find: 5, firstLink: 6 };
var planRows = { title: 1, note: 2, notice: 3, settingsHeading: 5 };
var planColumns = { key: 1, className: 2, team: 3, firstGiven: 4 };
var spareTeamLines = 60;
var prepareCells = {
  freshness: { row: 2, column: 1 },
  planNow: { row: 1, column: 8 },
  planThen: { row: 2, column: 8 }
};
var helpRows = { title: 1, firstNote: 2 };
var pollColumns = {
  row: 1,
  day: 2,
  className: 3,
  from: 4,
  firstStatement: 5,
  openLine: 9,
  /** Far to the right, where the trigger looks in a class sheet as well. */
  marker: classColumns.key
};
var pollRows = { title: 1, invented: 6, firstCount: 8, headings: 13, firstAnswer: 14 };
var pollMarker = "Labrow poll";

// src/host/countedEntry.ts
var countedEntry = (entry) => \`“\${entry}\`;

// src/host/documentLock.ts
function withDocumentLock(milliseconds, work) {
  const lock = LockService.getDocumentLock();
  if (!lock.tryLock(milliseconds)) return { ran: false };
  try {
    return { ran: true, value: work() };
  } finally {
    settle();
    lock.releaseLock();
  }
}

// src/host/dayOf.ts
var dayOf = (spreadsheet, moment) => Utilities.formatDate(new Date(moment), spreadsheet.getSpreadsheetTimeZone(), "yyyy-MM-dd");

return { cellText, layoutVersion, classColumns, countedColumn, classMarker, classRows, planRows, planColumns, spareTeamLines, prepareCells, helpRows, pollColumns, pollRows, pollMarker, countedEntry, withDocumentLock, dayOf };
`;
},
// Part host/words
"host/words"() {
  return `
// src/host/words.ts
var hostWords = {
  title: "Labrow",
  menu: {
    openSidebar: "Open the sidebar",
    buildSample: "Build a sample class",
    checkAgain: "Check again"
  },
  protection: "Labrow: a reminder before anything but the tinted cells is changed",
  keptName: (name, stamp) => \`\${name}, kept \${stamp}\`,
  sampleBuilt: "The sample class is ready. Everything in it is invented.",
  checkedAgain: (renewed) => renewed === 0 ? "Every check is there already." : \`Entered again: \${renewed} of the checks.\`,
  problem: ({
    expected,
    where,
    received,
    advice
  }) => \`Expected \${expected} for \${where}, received \${received}. \${advice}\`,
  firstClass: "First class",
  teamNumber: (number) => \`Team \${number}\`,
  refused: {
    expected: "the file to take the change",
    where: "this step",
    advice: "Nothing that was typed is lost. Wait a moment and press the button again."
  },
  buildLabels: {
    plan: "Plan",
    help: "Help",
    prepare: "Prepare",
    progress: "Progress",
    poll: "Poll",
    putAside: (className) => \`keeping \${className} aside\`
  },
  keyTwice: {
    expected: "each key in one line of the Plan",
    where: "building again",
    advice: "Give one of these lines another key in the Plan, then build."
  },
  lessonThere: {
    expected: "a file without a lesson",
    where: "the sample class",
    advice: "Make a new spreadsheet from the template and build the sample there."
  },
  lessonOf: (teams) => \`a Plan with \${teams} teams\`,
  planUnfinished: {
    expected: "a finished Plan",
    where: "the build",
    advice: "Press build once more; it goes on where it stopped."
  },
  headingMissing: (name) => ({
    expected: \`the heading “\${name}”\`,
    where: "the lines of the Plan",
    advice: "Type the heading again above its numbers, or build from the sidebar."
  }),
  classUnknown: {
    expected: "a class that has been built",
    where: "the class",
    advice: "Choose one from the list, or build it."
  },
  classUnreadable: {
    expected: "the marks of a class sheet in columns K and L",
    advice: "Undo what moved the columns, or build the class again: what was typed is copied."
  },
  noLesson: {
    expected: "a Plan with an activity",
    where: "what to prepare",
    advice: "Plan a lesson in the sidebar and build it, or build the sample class."
  },
  fileBusy: {
    expected: "the file to be free",
    received: "one that is being written",
    advice: "Wait a moment and press the button again."
  },
  keyUnconfirmed: {
    expected: "a yes to the warning",
    where: "the key in a sheet",
    advice: "Press the button again and read what it says first."
  },
  keySheet: {
    name: (date) => \`Key \${date}\`,
    warning: "The key. Everyone who can edit this file can read it. Delete this sheet before you share the file.",
    headings: ["class", "team", "step", "answer", "unit", "note"]
  },
  pageTitles: {
    preparation: "What to prepare",
    labels: "Labels to print",
    key: "The key, for the teacher",
    paper: "A table on paper",
    period: "The period in minutes",
    done: "Steps done by team",
    particles: "Particles"
  },
  pageUnknown: {
    expected: "a page of this script",
    where: "the page to open",
    advice: "Close the sidebar, open it again from the menu and press the button once more."
  },
  record: {
    rows: { expected: "the entries of the day", where: "the record", advice: "Open the Record again in the sidebar." },
    headings: {
      expected: "its headings in one row",
      where: "the Record sheet",
      received: "a sheet without some of them",
      advice: "Undo the change to the headings; what you wrote stays in the sidebar."
    },
    named: {
      expected: "words without names",
      advice: "Say “one team” there; names may stand in the text that you copy."
    },
    tooLong: { expected: "at most 2000 characters", advice: "Shorten it." },
    busy: {
      expected: "the file to be free",
      where: "the record",
      received: "one that is being written",
      advice: "Wait a moment and save again."
    }
  },
  share: {
    entries: {
      expected: "the name of this file, since it has entries of today,",
      where: "emptying it",
      advice: "Is this the copy? Then type its name as it stands above. If it is the class’s file, leave it."
    },
    noLesson: {
      expected: "a file with a Plan",
      where: "emptying it",
      received: "one without",
      advice: "Open the copy that was made from a lesson."
    },
    busy: {
      expected: "the file to be free",
      where: "emptying it",
      received: "one that is being written",
      advice: "Wait a moment and press again."
    }
  },
  teams: {
    noLesson: {
      expected: "a lesson that has been built",
      where: "a late team or another class",
      received: "a file without one",
      advice: "Plan and build it first."
    },
    unknown: {
      expected: "a team of the Plan",
      where: "the team",
      advice: "Look again in the sidebar and choose one from the list."
    },
    columnTaken: {
      expected: "the heading “today” behind the numbers",
      where: "the Plan",
      advice: "Type that heading there, or leave the column empty."
    }
  },
  noPoll: {
    expected: "a Poll sheet",
    where: "the poll",
    received: "a file without one",
    advice: "Build the table again to get one; what is typed stays."
  },
  members: {
    shape: {
      expected: "names and who is absent",
      where: "the team",
      advice: "Open Teams again in the sidebar and try once more."
    },
    changed: {
      expected: "the names as the sidebar has read them",
      where: "the team",
      received: "another text in its cell “Who”",
      advice: "Somebody wrote there meanwhile, and it was left alone. Look again, then change it."
    },
    tooMany: (most) => ({ expected: \`at most \${most} people\`, advice: "Make it two teams." }),
    long: (longest) => ({
      expected: \`names of at most \${longest} letters\`,
      advice: "A first name or initials are enough."
    }),
    twice: { expected: "a different name for each person", advice: "Add a letter to one of the two." },
    sameTwice: (name) => \`“\${name}” twice\`,
    namesIn: (team) => \`the names in \${team}\`
  },
  teamUnknown: {
    expected: "a team of this class",
    where: "the team",
    advice: "Read the class again and choose one from the list."
  },
  setupProblems: {
    shape: { expected: "a whole plan", where: "the build", advice: "Open the sidebar again and try once more." },
    activity: { expected: "an activity from the list", where: "the activity", advice: "Choose one in the sidebar." },
    given: { expected: "a value", advice: "Fill it in; every team starts from it." },
    sizes: { expected: "sizes in mL, such as 100 and 250,", advice: "Say what is on the shelf." },
    balance: {
      expected: "a mass in g, such as 0.01,",
      where: "the balance",
      advice: "Say what the balance reads to and holds."
    },
    className: { expected: "a name", where: "each class", advice: "Type one, such as Second period." },
    classTwice: { expected: "a different name", where: "each class", advice: "Change one of the two." },
    noClasses: { expected: "at least one class", where: "the lesson", advice: "Add a class and its teams." },
    noTeams: { expected: "at least one team", advice: "Add a team." },
    teamName: { expected: "a name for each team", advice: "Type one, or remove the team." },
    teamTwice: { expected: "a different name for each team", advice: "Change one of the two." },
    tooMany: { expected: "at most 200 teams", where: "one file", advice: "Use a second file for some of the classes." }
  }
};

return { hostWords };
`;
},
// Part desk: lab/lessonActivity, lab/numbers/lessonNumbers, lab/numbers/lineTexts, lab/numbers/nearbyNumbers, chemistry/listedFormula, lab/reagentList.generated and 147 more
"desk"() {
  return `
const { cellText, classColumns, classMarker, classRows, countedColumn, countedEntry, dayOf, helpRows, layoutVersion, planColumns, planRows, pollColumns, pollMarker, pollRows, prepareCells, spareTeamLines, withDocumentLock } = part("host/dayOf");
const { hostWords } = part("host/words");
const { choiceOf, documentVisibility, isStateRule, openSpreadsheet, recalculateEveryMinute, settle, sheetProtections, stateRuleOf, ui } = part("host/spreadsheet");
const { activityById, allActivities, atomsKey, balanceReadability, bottleOf, cautionWords, cautionsAt, defaultSettings, defaultShelf, densityFormulas, densityLines, densityOfMolarity, expectedValue, handledForms, isBareNumber, letteredOptions, orderedActions, ownHint, procedureByName, questionByName, readLessonSettings, readingTolerance, seededRandom, shuffled, stockAndDilution, takesLessonFigures, tickTexts, toleranceTexts, unitKind, waterAt20 } = part("chemistry/atomsKey");

const { adviceTexts, cautionTexts } = part("chemistry/cautions");
const { ionCounts, prepareStep, quantities, slipSpans, spanOver, stepTolerance } = part("lesson");


const { acceptedEnds, checkHeadings, remarks, slipTexts } = part("lab/texts/feedback");
const { errorText, failure, grams, gramsPerMillilitre, gramsPerMole, isBlank, millilitres, molarMass, molesPerLitre, notALine, percent, quoted, readFormula, readNumber, readQuantity, reagentMolarity, soluteMass, stockVolume, success } = part("base");

// src/lab/lessonActivity.ts
var lessonActivity = (settings) => activityById(settings.activity, { fromRealStock: settings["work the dilution from"] === "real stock" });

// src/lab/numbers/lessonNumbers.ts
var portionOf = ({ stock, target, volume }) => target / stock * volume;
var isSame = (one, other) => Math.abs(one - other) <= 1e-9 * Math.max(Math.abs(one), Math.abs(other));

// src/lab/numbers/lineTexts.ts
var densityDecimals = 4;
var lineTexts = (names2, pair) => ({
  [names2.lighterPercent]: String(pair.lighterPercent),
  [names2.lighterDensity]: pair.lighterDensity.toFixed(densityDecimals),
  [names2.heavierPercent]: String(pair.heavierPercent),
  [names2.heavierDensity]: pair.heavierDensity.toFixed(densityDecimals)
});

// src/lab/numbers/nearbyNumbers.ts
function plainText(value, figures) {
  const shown = Number(value.toPrecision(figures));
  if (!isSame(shown, value)) return void 0;
  const places = figures - 1 - Math.floor(Math.log10(shown) + 1e-12);
  return places < 0 ? shown.toFixed(0) : shown.toFixed(Math.min(places, 100));
}
var nearest = { least: 0.6, most: 1.6 };
var mostFigures = 3;
function nearbyNumbers({ value, figures }) {
  const resolved = Math.min(figures, mostFigures);
  const place = Math.floor(Math.log10(value) + 1e-12) - resolved + 1;
  const step = resolved === mostFigures ? 5 : 1;
  const scaled = (count2) => place < 0 ? count2 / 10 ** -place : count2 * 10 ** place;
  const first = Math.ceil(nearest.least * value / scaled(1) / step);
  const last2 = Math.floor(nearest.most * value / scaled(1) / step + 1e-9);
  const found = [];
  for (let count2 = first; count2 <= last2; count2 += 1) {
    const near = scaled(count2 * step);
    if (near > 0 && plainText(near, figures) !== void 0) found.push(near);
  }
  return found;
}

// src/chemistry/listedFormula.ts
function listedFormula(formula2) {
  if (formula2.hydrate) return void 0;
  const wanted = atomsKey(formula2);
  return densityFormulas().find((written) => {
    const read = readFormula(written);
    return read.ok && atomsKey(read.value) === wanted;
  });
}

// src/lab/reagentList.generated.ts
var reagentList = \`
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
\`;

// src/lab/concentratedReagents.ts
var concentratedReagents = () => reagentList.trim().split("\\n").map((line) => {
  const [formula2 = "", use = "", name = "", kind = ""] = line.split("|");
  return { name, formula: formula2, kind: kind === "acid" ? "acid" : "base", forStaff: use !== "not for students" };
});

// src/lab/texts/numbers.ts
var cautionTexts2 = {
  hydrofluoric: "Hydrofluoric acid goes through the skin and can kill. It has no place in a class.",
  perchloric: "Perchloric acid can explode when it dries out or meets anything that burns.",
  sulfuric: "Concentrated sulfuric acid burns at once and boils when water meets it. Let staff make a dilute stock.",
  nitric: "Concentrated nitric acid burns, feeds fires and gives off a poisonous gas. Let staff make a dilute stock.",
  formic: "Concentrated formic acid burns the skin and its vapour burns too. Let staff make a dilute stock.",
  chromium: "Chromium(VI) can cause cancer and harms fertility and waters.",
  lead: "Lead salts harm the unborn child and build up in the body.",
  mercury: "Mercury salts are poisonous in small amounts and build up in the body.",
  cobalt: "Cobalt salts can cause cancer and allergies.",
  nickel: "Nickel salts can cause cancer and allergies.",
  barium: "Barium salts that dissolve are poisonous if swallowed.",
  boric: "Boric acid can harm fertility and the unborn child.",
  oxalic: "Oxalic acid is poisonous and harms the eyes."
};
var cautionWithAdvice = (reason) => \`\${reason} Choose another solute, or read the safety data sheet and your school’s own rules first.\`;
var sizes = (list2) => list2.length === 0 ? "none" : \`\${list2.join(", ")} mL\`;
var limitText = (value) => {
  const unit = 10 ** (Math.floor(Math.log10(value)) - 1);
  return String(Number((Math.floor(value / unit) * unit).toPrecision(2)));
};
var demandTexts = {
  stockAboveTarget: ({ stock, target }) => ({
    expected: \`less than the stock, \${stock} mol/L,\`,
    received: \`\${target} mol/L\`,
    advice: "Dilution only lowers a molarity: use a stronger stock or a weaker target."
  }),
  flask: ({ size: size2, shelf }) => ({
    expected: \`a flask on the shelf (\${sizes(shelf)})\`,
    received: \`\${size2} mL\`,
    advice: \`Choose one of those sizes, or add a \${size2} mL flask to the shelf.\`
  }),
  portion: ({ pipettes }) => ({
    expected: \`a portion of stock that one or two fillings of a pipette on the shelf (\${sizes(pipettes)}) deliver\`,
    received: "another volume",
    advice: "Change the target a little, or add a pipette of that size to the shelf."
  }),
  portionWithinStock: ({ flask }) => ({
    expected: "a flask of stock that holds at least twice the portion taken from it",
    received: \`\${flask} mL\`,
    advice: "Make more stock in a bigger flask, or dilute to a smaller volume."
  }),
  portionWithinFlask: ({ flask, portion }) => ({
    expected: \`a portion of at most half the flask of \${flask} mL\`,
    received: \`\${portion} mL\`,
    advice: "Take a smaller portion, or a bigger flask."
  }),
  massFine: ({ least, readability }) => ({
    expected: \`a mass of at least \${Number(least.toPrecision(3))} g, a hundred times what the balance can tell apart,\`,
    received: "less than that",
    advice: \`Use a stronger solution, a bigger flask, or a balance that reads finer than \${readability} g.\`
  }),
  massRange: ({ most }) => ({
    expected: \`a mass within the balance’s range, up to \${most} g,\`,
    received: "more than that",
    advice: "Use a weaker solution, a smaller flask, or a balance with a wider range."
  }),
  withinTable: (found) => ({
    expected: \`a molarity whose density lies between two lines of the table for \${found.formula}\`,
    received: \`\${found.molarity} mol/L\`,
    advice: "Use a weaker solution, or type two lines of another table that enclose it."
  }),
  densityDiffers: ({ molarity }) => ({
    expected: "a solution whose density differs from that of water by 1 % at least",
    received: \`\${molarity} mol/L\`,
    advice: "Use a stronger solution: below that the pipette decides more than the solute."
  }),
  portionFine: ({ portion, readability }) => ({
    expected: "a portion that weighs a thousand times what the balance can tell apart",
    received: \`\${portion} mL\`,
    advice: \`Use a larger portion, or a balance that reads finer than \${readability} g.\`
  }),
  portionRange: ({ portion, most }) => ({
    expected: \`a portion that stays within the balance’s range, up to \${most} g, with its vessel\`,
    received: \`\${portion} mL\`,
    advice: "Use a smaller portion, or a balance with a wider range."
  }),
  dissolves: (found) => ({
    expected: \`a molarity at which \${found.formula} dissolves at room temperature, up to about \${limitText(found.limit)} mol/L,\`,
    received: \`\${found.molarity} mol/L\`,
    advice: "Use a weaker solution, or another solute."
  })
};
var numbersRemarks = {
  looksRight: (found) => \`In “\${found.step}”, \${found.slip} would look right (\${found.teams}). \${found.frees === "portion" ? "Another portion" : "Other sizes of flask or pipette"} would free this.\`,
  lookAlike: (found) => \`In “\${found.step}”, two mistakes give the same number (\${found.teams}): \${found.slips}.\`,
  teams: (count2, all) => count2 === all ? "all teams" : count2 === 1 ? "1 team" : \`\${count2} teams\`,
  twoFillings: "Some portions take two fillings of a pipette, since one filling gives too few different numbers.",
  mixedFactors: "Some teams have a whole number as dilution factor and some have not, since the shelf gives too few of one kind.",
  otherDigits: "Flask sizes have different numbers of digits, since the shelf has too few of one kind.",
  otherRatios: "Some teams dilute much more, or much less, than these numbers do, since the shelf gives too few sets that are closer.",
  portionInTwo: "The portion takes two fillings of a pipette, since no pipette on the shelf gives it in one.",
  otherPortion: ({ asked, portion }) => \`All teams take \${portion} mL, since the pipettes on the shelf do not give \${asked} mL.\`,
  shared: ({
    teams: teams2,
    different,
    frees
  }) => frees === "sizes" ? \`The shelf gives \${different} different sets of numbers for \${teams2} teams, so some teams share theirs. Add a flask or a pipette to free this.\` : \`With one portion for all there are \${different} different sets of numbers for \${teams2} teams, so some teams share theirs.\${frees === "figures" ? " Type the molarity with one more figure to free this." : ""}\`,
  solubilityUnknown: (formula2) => \`No solubility figure is known here for \${formula2}: make sure that it dissolves at room temperature.\`,
  noIons: (formula2) => \`\${formula2} gives no ions that can be counted here, so the build leaves out the rows about one ion.\`,
  caution: (formula2, reason) => \`\${formula2}: \${reason}\`
};
var startTexts = {
  missing: (about) => ({
    expected: \`a value, \${about},\`,
    received: "a blank",
    advice: "Fill it in; every team’s numbers begin from it."
  }),
  notPositive: (received) => ({
    expected: "a number above 0",
    received,
    advice: "Change it; every team’s numbers begin from it."
  }),
  activity: (received, known) => ({
    expected: \`an activity (\${known.join(", ")})\`,
    received,
    advice: "Choose one of these in the plan."
  }),
  noPipette: (size2, what) => ({
    expected: "a pipette on the shelf that gives a portion near these numbers",
    received: "none that does",
    advice: size2 === void 0 ? \`Add a flask or a pipette to the shelf, or change the \${what}.\` : \`Add a \${size2} mL pipette to the shelf, or change the \${what}.\`
  }),
  dryingSalt: (received, salts) => ({
    expected: \`a salt that survives drying (\${salts.join(", ")})\`,
    received,
    advice: "Choose one of these; others change or spatter when they are heated."
  }),
  densityTable: (received, formulas) => ({
    expected: \`a solute in the table of densities, without water of hydration (\${formulas.join(", ")})\`,
    received,
    advice: "Choose one of these; of a hydrate write the formula without its water."
  }),
  linesTogether: {
    expected: "two whole lines of a table of densities, or none of their values",
    received: "a blank",
    advice: "Fill in both lines, or clear them: then our own table at 20 °C fills them in."
  },
  hydrate: (received, hydrates) => ({
    expected: \`a formula with water of hydration (such as \${hydrates.join(", ")})\`,
    received,
    advice: "Write the water after a dot, or choose the activity with a plain solid."
  }),
  concentratedReagent: (received, reagents) => ({
    expected: \`an acid or base that is sold concentrated (\${reagents.join(", ")})\`,
    received,
    advice: "Choose one of these, or an activity that starts from a solid."
  }),
  noFlask: {
    expected: "a flask on the shelf near this size",
    received: "none",
    advice: "Add a flask to the shelf, or change the size."
  }
};

// src/lab/plannerCaution.ts
var cautions = [
  { reason: "hydrofluoric", applies: (n) => isExactly(n, { H: 1, F: 1 }) },
  { reason: "perchloric", applies: (n) => isExactly(n, { H: 1, Cl: 1, O: 4 }) },
  { reason: "sulfuric", applies: (n) => isExactly(n, { H: 2, S: 1, O: 4 }) },
  { reason: "nitric", applies: (n) => isExactly(n, { H: 1, N: 1, O: 3 }) },
  { reason: "formic", applies: (n) => isExactly(n, { H: 2, C: 1, O: 2 }) },
  { reason: "boric", applies: (n) => isExactly(n, { H: 3, B: 1, O: 3 }) },
  { reason: "oxalic", applies: (n) => isExactly(n, { H: 2, C: 2, O: 4 }) },
  // Chromium(III) salts are not meant, and the numbers of atoms alone cannot tell the two apart.
  { reason: "chromium", applies: (_, written) => /CrO[34](?!\\d)|Cr2O7|CrO2Cl2/.test(written) },
  { reason: "lead", applies: (n) => has(n, "Pb") },
  { reason: "mercury", applies: (n) => has(n, "Hg") },
  { reason: "cobalt", applies: (n) => has(n, "Co") },
  { reason: "nickel", applies: (n) => has(n, "Ni") },
  { reason: "barium", applies: (n) => has(n, "Ba") && !isExactly(n, { Ba: 1, S: 1, O: 4 }) }
];
var has = (counts, element) => {
  var _a;
  return ((_a = counts[element]) != null ? _a : 0) > 0;
};
var isExactly = (counts, wanted) => Object.keys(wanted).every((element) => counts[element] === wanted[element]) && Object.keys(counts).every((element) => {
  var _a;
  return ((_a = counts[element]) != null ? _a : 0) === 0 || wanted[element] !== void 0;
});
function plannerCaution(formula2) {
  var _a, _b, _c, _d;
  const read = readFormula(formula2);
  if (!read.ok) return "";
  const counts = /* @__PURE__ */ Object.create(null);
  for (const { element, count: count2 } of read.value.atoms) counts[element] = count2;
  const waters = (_b = (_a = read.value.hydrate) == null ? void 0 : _a.count) != null ? _b : 0;
  counts.H = ((_c = counts.H) != null ? _c : 0) - 2 * waters;
  counts.O = ((_d = counts.O) != null ? _d : 0) - waters;
  const written = String(formula2).normalize("NFKC").replace(/\\s/g, "");
  const found = cautions.find(({ applies }) => applies(counts, written));
  return found === void 0 ? "" : cautionWithAdvice(cautionTexts2[found.reason]);
}

// src/lab/soluteList.generated.ts
var soluteList = \`
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
\`;

// src/lab/solutes.ts
var listedSolutes = () => soluteList.trim().split("\\n").map((line) => {
  const [name = "", formula2 = "", solubility = "", basis = "", use = ""] = line.split("|");
  return { name, formula: formula2, basis, use, solubility: solubility === "" ? void 0 : Number(solubility) };
});
var soluteNeeded = 5;
var proposedSolutes = () => listedSolutes().filter(
  ({ formula: formula2, solubility, use }) => use === "" && solubility !== void 0 && solubility >= soluteNeeded && plannerCaution(formula2) === ""
).map(({ name, formula: formula2 }) => ({ name, formula: formula2, caution: "" })).sort((one, other) => one.name < other.name ? -1 : 1);
var plainFormula = (typed2) => typed2.normalize("NFKC").replace(/\\s/g, "").replace(/[•*.⋅∙]/g, "·").replace(/[[{]/g, "(").replace(/[\\]}]/g, ")");
function solubleMolarity(formula2) {
  const listed = listedSolutes().find((solute) => plainFormula(solute.formula) === plainFormula(formula2));
  if ((listed == null ? void 0 : listed.solubility) === void 0) return void 0;
  const basis = readFormula(listed.basis);
  const mass = basis.ok ? molarMass(basis.value) : basis;
  if (!mass.ok) return void 0;
  return 1e3 * listed.solubility / mass.value / (100 + listed.solubility);
}

// src/lab/numbers/linePair.ts
var straightLineOf = (pair) => ({
  lighterPercent: percent(pair.lighterPercent),
  lighterDensity: gramsPerMillilitre(pair.lighterDensity),
  heavierPercent: percent(pair.heavierPercent),
  heavierDensity: gramsPerMillilitre(pair.heavierDensity)
});

// src/lab/numbers/densityOnLine.ts
function densityOnLine(pair, { molarMass: molarMass2, molarity }) {
  const found = densityOfMolarity({
    ...straightLineOf(pair),
    molarMass: gramsPerMole(molarMass2),
    molarity: molesPerLitre(molarity)
  });
  return found.ok ? found.value : void 0;
}

// src/lab/numbers/liesBetween.ts
var liesBetween = (density, { lighterDensity, heavierDensity }) => density >= Math.min(lighterDensity, heavierDensity) && density <= Math.max(lighterDensity, heavierDensity);

// src/lab/numbers/tableLines.ts
var pairOf = (one, other) => {
  const [lighter, heavier] = one.density <= other.density ? [one, other] : [other, one];
  return {
    lighterPercent: lighter.massPercent,
    lighterDensity: lighter.density,
    heavierPercent: heavier.massPercent,
    heavierDensity: heavier.density
  };
};
var room = 5e-3;
var widest = 2;
var unclearUpTo = 1;
function tableLines(table, label) {
  const lines = table.filter(({ massPercent }) => massPercent === 0 || massPercent > unclearUpTo);
  for (let at = 1; at < lines.length; at += 1) {
    const [before, after] = [lines[at - 1], lines[at]];
    if (!before || !after) continue;
    const density = densityOnLine(pairOf(before, after), label);
    if (density === void 0 || !liesBetween(density, pairOf(before, after))) continue;
    const further = (from2, step) => {
      const [line, next] = [lines[from2], lines[from2 + step]];
      if (!line || !next || Math.abs(line.density - density) >= room * density) return line;
      return Math.abs(next.massPercent - line.massPercent) > widest ? line : further(from2 + step, step);
    };
    const [weaker, stronger] = [further(at - 1, -1), further(at, 1)];
    return weaker && stronger && pairOf(weaker, stronger);
  }
  return void 0;
}

// src/lab/numbers/readTableLines.ts
function readTableLines({ numbers: { density } }, {
  typed: typed2,
  formula: formula2,
  molarMass: mass
}) {
  var _a, _b;
  if (density === void 0) return success({ filled: {}, table: void 0 });
  const names2 = [density.lighterPercent, density.lighterDensity, density.heavierPercent, density.heavierDensity];
  const blank2 = names2.filter((name) => typed2[name] === void 0);
  const value = (name) => {
    var _a2, _b2;
    return (_b2 = (_a2 = typed2[name]) == null ? void 0 : _a2.value) != null ? _b2 : Number.NaN;
  };
  if (blank2.length === 0) {
    const error = notALine(
      straightLineOf({
        lighterPercent: value(density.lighterPercent),
        lighterDensity: value(density.lighterDensity),
        heavierPercent: value(density.heavierPercent),
        heavierDensity: value(density.heavierDensity)
      })
    );
    return error ? failure({ ...error, argument: error.argument.replace("_", " ") }) : success({ filled: {}, table: void 0 });
  }
  if (blank2.length < names2.length) {
    return failure({ code: "numbers-start", argument: (_a = blank2[0]) != null ? _a : "", ...startTexts.linesTogether });
  }
  const table = densityLines((_b = listedFormula(formula2)) != null ? _b : "");
  const molarity = value(density.molarity);
  const pair = table && tableLines(table, { molarMass: mass, molarity });
  if (!pair) {
    const found = demandTexts.withinTable({ molarity, formula: formula2.text });
    return failure({ code: "numbers-shelf", argument: density.molarity, ...found });
  }
  const filled = {};
  for (const [name, text2] of Object.entries(lineTexts(density, pair))) {
    const isPercent = name === density.lighterPercent || name === density.heavierPercent;
    const read = readQuantity(text2, isPercent ? "percent" : "density", name, { decimalMark: "point" });
    if (!read.ok) return read;
    filled[name] = read.value;
  }
  return success({ filled, table });
}

// src/lab/numbers/startNumbers.ts
var kinds = { "mol/L": "concentration", mL: "volume", g: "mass", "g/mL": "density", "%": "percent" };
var kindOf = ({ unit }) => unit in kinds ? kinds[unit] : void 0;
function lessonNumbers({ numbers }, { values, molarMass: molarMass2 }) {
  const value = (name) => {
    var _a;
    return (_a = values[name]) != null ? _a : Number.NaN;
  };
  const { solid, dilution, reagent, serial, residue, density } = numbers;
  return {
    ...solid ? { solid: { molarity: value(solid.molarity), flask: value(solid.flask) } } : {},
    ...dilution ? { dilution: { stock: value(dilution.stock), target: value(dilution.target), volume: value(dilution.volume) } } : {},
    ...reagent ? {
      reagent: {
        stock: 10 * value(reagent.massPercent) * value(reagent.density) / molarMass2,
        target: value(reagent.target),
        volume: value(reagent.volume)
      }
    } : {},
    ...serial ? { serial: { stock: value(serial.stock), portion: value(serial.portion), flask: value(serial.flask) } } : {},
    ...residue ? { residue: { molarity: value(residue.molarity), portion: value(residue.portion) } } : {},
    ...density ? {
      density: {
        molarity: value(density.molarity),
        portion: value(density.portion),
        lighterPercent: value(density.lighterPercent),
        lighterDensity: value(density.lighterDensity),
        heavierPercent: value(density.heavierPercent),
        heavierDensity: value(density.heavierDensity)
      }
    } : {}
  };
}
var dryingSalts = ["NaCl", "KCl", "KBr", "Na2SO4", "K2SO4"];
var someHydrates = ["CuSO4·5H2O", "MgSO4·7H2O", "CaCl2·2H2O"];
var isAmong = (formula2, list2) => list2.some((written) => {
  const known = readFormula(written);
  return known.ok && atomsKey(known.value) === atomsKey(formula2);
});
function unfitSubstance({ residue, hydrate, reagent, density }, { formula: formula2, received }) {
  if (residue && !isAmong(formula2, dryingSalts)) return startTexts.dryingSalt(received, dryingSalts);
  if (density && listedFormula(formula2) === void 0) return startTexts.densityTable(received, densityFormulas());
  if (hydrate && !formula2.hydrate) return startTexts.hydrate(received, someHydrates);
  if (reagent) {
    const listed = concentratedReagents();
    if (!isAmong(
      formula2,
      listed.map((one) => one.formula)
    )) {
      return startTexts.concentratedReagent(
        received,
        listed.filter(({ forStaff }) => forStaff).map((one) => one.formula)
      );
    }
  }
  return void 0;
}
function readStartNumbers(activity, setup) {
  var _a, _b, _c, _d, _e;
  const decimalMark = setup.settings["decimal mark"] === "comma" ? "comma" : "point";
  const typed2 = {};
  for (const given of activity.givens) {
    const cell = setup.givens[given.name];
    if (isBlank(cell)) {
      if (given.optional || given.fromTable || given.name === activity.numbers.ion) continue;
      return failure({ code: "numbers-start", argument: given.name, ...startTexts.missing(given.about) });
    }
    const kind = kindOf(given);
    if (kind === void 0) continue;
    const read = readQuantity(cell, kind, given.name, { decimalMark });
    if (!read.ok) return read;
    if (!(read.value.value > 0) && !(given.fromTable && read.value.value === 0)) {
      return failure({ code: "numbers-start", argument: given.name, ...startTexts.notPositive(quoted(cell)) });
    }
    typed2[given.name] = read.value;
  }
  const { numbers } = activity;
  const formulaText = (_a = setup.givens[numbers.formula]) != null ? _a : "";
  const formula2 = readFormula(formulaText, numbers.formula);
  if (!formula2.ok) return formula2;
  const mass = molarMass(formula2.value);
  if (!mass.ok) return mass;
  const unfit = unfitSubstance(numbers, { formula: formula2.value, received: quoted(formulaText) });
  if (unfit) return failure({ code: "numbers-solute", argument: numbers.formula, ...unfit });
  const remarks2 = [];
  if (numbers.ion !== void 0) {
    const ion = setup.givens[numbers.ion];
    const counts = ionCounts(formula2.value, ion);
    if (!counts.ok && counts.error.code !== "ion-not-in-formula") {
      remarks2.push(numbersRemarks.noIons(formulaText.trim()));
    } else if (isBlank(ion)) {
      const about = (_c = (_b = activity.givens.find(({ name }) => name === numbers.ion)) == null ? void 0 : _b.about) != null ? _c : "";
      return failure({ code: "numbers-start", argument: numbers.ion, ...startTexts.missing(about) });
    } else if (!counts.ok) {
      return failure({ ...counts.error, argument: numbers.ion });
    }
  }
  const lines = readTableLines(activity, { typed: typed2, formula: formula2.value, molarMass: mass.value });
  if (!lines.ok) return lines;
  const values = Object.fromEntries(
    Object.entries({ ...typed2, ...lines.value.filled }).map(([name, { value }]) => [name, value])
  );
  const purity = (_d = numbers.solid) == null ? void 0 : _d.purity;
  return success({
    typed: { ...typed2, ...lines.value.filled },
    table: lines.value.table,
    remarks: remarks2,
    substance: {
      formula: formulaText.trim(),
      molarMass: mass.value,
      purityPercent: (_e = purity === void 0 ? void 0 : values[purity]) != null ? _e : 100,
      solubleMolarity: solubleMolarity(formulaText)
    },
    lesson: lessonNumbers(activity, { values, molarMass: mass.value })
  });
}

// src/lab/numbers/candidates.ts
var digitsOf = (volume) => String(Math.trunc(volume)).length;
function flasksNear(size2, flasksMl) {
  const near = flasksMl.filter((flask) => flask >= size2 / 4 && flask <= size2 * 4);
  const alike = near.filter((flask) => digitsOf(flask) === digitsOf(size2));
  return alike.length > 0 ? { sizes: alike, otherDigits: false } : { sizes: near, otherDigits: near.length > 0 };
}
var isWholeFactor = ({ stock, target }) => isSame(stock / target, Math.round(stock / target));
var hasWholeFactor = ({ dilution, serial }) => dilution !== void 0 ? isWholeFactor(dilution) : serial !== void 0 && isWholeFactor({ stock: serial.flask, target: serial.portion });
var factorRange = 2.5;
var ratioRange = 1.6;
function isNearRatio(serial, start) {
  if (serial === void 0 || start === void 0) return true;
  const away = serial.flask / serial.portion / (start.flask / start.portion);
  return away <= ratioRange * (1 + 1e-9) && away >= 1 / ratioRange / (1 + 1e-9);
}
var portionRoom = 0.25;
function portionLike(from2, deliverable) {
  const away = ({ volume }) => Math.abs(volume - from2);
  const near = deliverable.filter((portion) => away(portion) <= portionRoom * from2 * (1 + 1e-9)).sort((one, other) => away(one) - away(other) || one.fillings - other.fillings);
  return near.slice(0, 1);
}
function dilutionsNear(start, { dilution }, {
  stocks,
  volumes,
  deliverable
}) {
  var _a;
  const from2 = start.lesson.dilution;
  const figures = (_a = start.typed[dilution.target]) == null ? void 0 : _a.figures;
  if (from2 === void 0 || figures === void 0) return [];
  const factor = from2.stock / from2.target;
  const found = [];
  for (const volume of volumes) {
    for (const { volume: portion, fillings } of deliverable) {
      const here = volume / portion;
      if (here < factor / factorRange || here > factor * factorRange || here < 1.2) continue;
      for (const stock of stocks) {
        const target = Number((stock * portion / volume).toPrecision(15));
        const targetText = plainText(target, figures);
        if (targetText !== void 0) found.push({ stock, target: Number(targetText), volume, targetText, fillings });
      }
    }
  }
  return found;
}
var joined = (one, other) => one.flatMap(
  (first) => other.map(
    (second) => ({
      values: { ...first.values, ...second.values },
      texts: { ...first.texts, ...second.texts },
      fillings: second.fillings === 0 ? first.fillings : second.fillings
    })
  )
);
var valuesOf = (name, list2) => list2.map(({ value, text: text2 }) => ({ values: { [name]: value }, texts: { [name]: text2 }, fillings: 0 }));
function candidatesNear(activity, start, bench3) {
  const { solid, dilution, reagent, serial, residue, density } = activity.numbers;
  let lacks;
  let otherDigits = false;
  const lacking = (what, parts2) => {
    if (parts2.length === 0) lacks != null ? lacks : lacks = what;
    return parts2;
  };
  const nearby = (name) => {
    const typed2 = start.typed[name];
    if (typed2 === void 0) return [];
    const shown = (value) => {
      var _a;
      return (_a = plainText(value, typed2.figures)) != null ? _a : String(value);
    };
    return valuesOf(
      name,
      nearbyNumbers(typed2).map((value) => ({ value, text: shown(value) }))
    );
  };
  const flasks = (name, what) => {
    var _a, _b;
    const near = flasksNear((_b = (_a = start.typed[name]) == null ? void 0 : _a.value) != null ? _b : Number.NaN, bench3.shelf.flasksMl);
    otherDigits = otherDigits || near.otherDigits;
    return lacking(
      what,
      valuesOf(
        name,
        near.sizes.map((value) => ({ value, text: String(value) }))
      )
    );
  };
  const portionParts = (name, near) => lacking(
    "portion",
    near.map(
      ({ volume, fillings }) => ({ values: { [name]: volume }, texts: { [name]: String(volume) }, fillings })
    )
  );
  const portionsNear = (name) => {
    var _a, _b;
    const from2 = (_b = (_a = start.typed[name]) == null ? void 0 : _a.value) != null ? _b : Number.NaN;
    return portionParts(
      name,
      bench3.deliverable.filter(({ volume }) => volume >= from2 / factorRange && volume <= from2 * factorRange)
    );
  };
  const weighedPortion = (name) => {
    var _a, _b;
    return portionParts(name, portionLike((_b = (_a = start.typed[name]) == null ? void 0 : _a.value) != null ? _b : Number.NaN, bench3.deliverable));
  };
  const diluted = (names2) => {
    const stocks = nearby(names2.stock);
    const volumes = flasks(names2.volume, "final flask");
    const stockText = (value) => {
      var _a, _b;
      return (_b = (_a = stocks.find(({ values }) => values[names2.stock] === value)) == null ? void 0 : _a.texts[names2.stock]) != null ? _b : "";
    };
    const made = dilutionsNear(
      start,
      { dilution: names2 },
      {
        stocks: stocks.map(({ values }) => {
          var _a;
          return (_a = values[names2.stock]) != null ? _a : Number.NaN;
        }),
        volumes: volumes.map(({ values }) => {
          var _a;
          return (_a = values[names2.volume]) != null ? _a : Number.NaN;
        }),
        deliverable: bench3.deliverable
      }
    );
    return lacking(
      "portion",
      made.map(
        ({ stock, target, volume, targetText, fillings }) => ({
          values: { [names2.stock]: stock, [names2.target]: target, [names2.volume]: volume },
          texts: { [names2.stock]: stockText(stock), [names2.target]: targetText, [names2.volume]: String(volume) },
          fillings
        })
      )
    );
  };
  const withLines = (names2, molarities) => {
    const { table, substance } = start;
    if (table === void 0) return molarities;
    return molarities.flatMap((part) => {
      var _a;
      const molarity = (_a = part.values[names2.molarity]) != null ? _a : Number.NaN;
      const pair = tableLines(table, { molarMass: substance.molarMass, molarity });
      if (pair === void 0) return [];
      const texts = lineTexts(names2, pair);
      const values = Object.fromEntries(Object.entries(texts).map(([name, text2]) => [name, Number(text2)]));
      return [{ ...part, values: { ...part.values, ...values }, texts: { ...part.texts, ...texts } }];
    });
  };
  const parts = [
    ...solid ? [flasks(solid.flask, "flask")] : [],
    ...solid && !dilution ? [nearby(solid.molarity)] : [],
    ...dilution ? [diluted(dilution)] : [],
    ...reagent ? [nearby(reagent.target), flasks(reagent.volume, "final flask")] : [],
    ...serial ? [nearby(serial.stock), flasks(serial.flask, "flask"), portionsNear(serial.portion)] : [],
    ...residue ? [nearby(residue.molarity), weighedPortion(residue.portion)] : [],
    ...density ? [withLines(density, nearby(density.molarity)), weighedPortion(density.portion)] : []
  ];
  const fixed2 = Object.fromEntries(Object.entries(start.typed).map(([name, { value }]) => [name, value]));
  const candidates = parts.reduce(joined, [{ values: {}, texts: {}, fillings: 0 }]).map(({ values, texts, fillings }) => {
    const lesson = lessonNumbers(activity, {
      values: { ...fixed2, ...values },
      molarMass: start.substance.molarMass
    });
    const nearRatio = isNearRatio(lesson.serial, start.lesson.serial);
    return { lesson, values, texts, fillings, wholeFactor: hasWholeFactor(lesson), nearRatio };
  });
  return { candidates, otherDigits, lacks };
}

// src/lab/numbers/confusions.ts
function readySteps({ steps }, givens, settings) {
  const ready = [];
  for (const step of steps) {
    if (step.kind !== "calculated") continue;
    const reads = {};
    for (const [name, source] of Object.entries(step.takes)) if ("given" in source) reads[name] = source.given;
    if (Object.keys(reads).length < Object.keys(step.takes).length) continue;
    const cells = Object.fromEntries(Object.entries(reads).map(([name, given]) => [name, givens[given]]));
    const prepared = prepareStep(quantities[step.quantity], cells, {
      ...takesLessonFigures(quantities[step.quantity]) ? { figures: settings.figures } : {},
      decimals: settings.decimals,
      decimalMark: settings.decimalMark,
      names: reads
    });
    if (prepared.ok) ready.push({ step, prepared: prepared.value, reads });
  }
  return ready;
}
var withNumbers = ({ prepared, reads }, own) => {
  const changed = {};
  for (const [name, given] of Object.entries(reads)) {
    const value = own[given];
    if (value !== void 0) changed[name] = value;
  }
  return { ...prepared, numbers: { ...prepared.numbers, ...changed } };
};
var overlaps = (one, other, place) => one.low - place / 2 <= other.high + place / 2 && other.low - place / 2 <= one.high + place / 2;
var placeNear = (value, { asked, placeLow }) => "decimals" in asked || value === 0 ? placeLow : 10 ** (Math.floor(Math.log10(Math.abs(value))) - asked.figures + 1);
function confusions(steps, own) {
  const found = [];
  for (const ready of steps) {
    const prepared = withNumbers(ready, own);
    const tolerance = stepTolerance(prepared);
    const accepted = acceptedEnds(tolerance);
    const told = [];
    for (const slip of prepared.quantity.slips) {
      for (const span of slipSpans(prepared, slip)) {
        if (!Number.isFinite(span.middle)) continue;
        const place = placeNear(span.middle, tolerance);
        if (span.low <= accepted.high && span.high >= accepted.low) {
          found.push({ step: ready.step, slips: [slip.id] });
          continue;
        }
        for (const other of told) {
          if (other.id !== slip.id && overlaps(span, other.span, place)) {
            found.push({ step: ready.step, slips: [other.id, slip.id] });
          }
        }
        told.push({ id: slip.id, span });
      }
    }
  }
  return found;
}
var confusionName = ({ step, slips }) => \`\${step.id} \${slips.join(" ")}\`;

// src/lab/numbers/dealtCandidates.ts
var tasksOf = ({ lesson }) => Object.entries(lesson).map(([name, numbers]) => \`\${name} \${Object.values(numbers).join(" ")}\`);
var startOf = ({ lesson }) => {
  var _a, _b, _c, _d, _e, _f, _g, _h, _i, _j, _k;
  return (_k = (_i = (_g = (_e = (_c = (_a = lesson.solid) == null ? void 0 : _a.molarity) != null ? _c : (_b = lesson.dilution) == null ? void 0 : _b.stock) != null ? _e : (_d = lesson.reagent) == null ? void 0 : _d.target) != null ? _g : (_f = lesson.serial) == null ? void 0 : _f.stock) != null ? _i : (_h = lesson.residue) == null ? void 0 : _h.molarity) != null ? _k : (_j = lesson.density) == null ? void 0 : _j.molarity;
};
function dealtCandidates(pool, places, seed) {
  const tasks = /* @__PURE__ */ new Set();
  const wholes = /* @__PURE__ */ new Set();
  const startsOfClass = /* @__PURE__ */ new Set();
  let shared = 0;
  const given = places.map((place) => {
    const start = Math.floor(seededRandom(\`\${seed} \${place.key}\`)() * pool.length);
    const startInClass = (candidate2) => \`\${place.className} \${startOf(candidate2)}\`;
    const isFree = (candidate2) => !wholes.has(tasksOf(candidate2).join());
    const partsFree = (candidate2) => !tasksOf(candidate2).some((task) => tasks.has(task));
    const wishes = [
      (candidate2) => partsFree(candidate2) && !startsOfClass.has(startInClass(candidate2)),
      partsFree,
      isFree
    ];
    let found;
    for (const wish of wishes) {
      for (let step = 0; step < pool.length && found === void 0; step += 1) {
        const candidate2 = pool[(start + step) % pool.length];
        if (candidate2 && wish(candidate2)) found = candidate2;
      }
    }
    const candidate = found != null ? found : pool[start];
    if (candidate === void 0) throw new Error("There are no numbers to deal.");
    if (found === void 0) shared += 1;
    for (const task of tasksOf(candidate)) tasks.add(task);
    wholes.add(tasksOf(candidate).join());
    startsOfClass.add(startInClass(candidate));
    return { place, candidate };
  });
  return { given, shared };
}

// src/lab/numbers/demands.ts
var massOf = ({ molarity, flask }, { molarMass: molarMass2, purityPercent }) => molarity * flask * molarMass2 / 1e3 / (purityPercent / 100);
var readabilitiesNeeded = 100;
var readabilitiesOfPortion = 1e3;
var vesselG = 60;
var differenceNeeded = 0.01;
function unmetOfDensity(density, { shelf, substance }) {
  const { molarity, portion } = density;
  const { formula: formula2, molarMass: molarMass2 } = substance;
  const expected = densityOnLine(density, { molarMass: molarMass2, molarity });
  if (expected === void 0 || !liesBetween(expected, density)) {
    return [{ demand: "within table", about: "molarity", ...demandTexts.withinTable({ molarity, formula: formula2 }) }];
  }
  const unmet = [];
  if (Math.abs(expected / waterAt20.density - 1) < differenceNeeded) {
    unmet.push({ demand: "density differs", about: "molarity", ...demandTexts.densityDiffers({ molarity }) });
  }
  const mass = expected * portion;
  if (mass < readabilitiesOfPortion * shelf.balanceReadabilityG) {
    const found = { portion, readability: shelf.balanceReadabilityG };
    unmet.push({ demand: "portion fine enough", about: "portion", ...demandTexts.portionFine(found) });
  }
  if (mass + vesselG > shelf.balanceMaxG) {
    const found = { portion, most: shelf.balanceMaxG };
    unmet.push({ demand: "mass within range", about: "portion", ...demandTexts.portionRange(found) });
  }
  return unmet;
}
function unmetDemands({ solid, dilution, reagent, serial, residue, density }, { shelf, deliverable, substance }) {
  var _a, _b, _c, _d;
  const unmet = [];
  const isOnShelf = (volume) => shelf.flasksMl.some((size2) => isSame(size2, volume));
  const isDeliverable = (volume) => deliverable.some((portion2) => isSame(portion2.volume, volume));
  const made = dilution != null ? dilution : reagent;
  if (made && !(made.target < made.stock && !isSame(made.target, made.stock))) {
    unmet.push({ demand: "stock above target", about: "target", ...demandTexts.stockAboveTarget(made) });
  }
  const flask = (_a = solid == null ? void 0 : solid.flask) != null ? _a : serial == null ? void 0 : serial.flask;
  if (flask !== void 0 && !isOnShelf(flask)) {
    unmet.push({
      demand: "flask on shelf",
      about: "flask",
      ...demandTexts.flask({ size: flask, shelf: shelf.flasksMl })
    });
  }
  if (made && !isOnShelf(made.volume)) {
    unmet.push({
      demand: "final flask on shelf",
      about: "volume",
      ...demandTexts.flask({ size: made.volume, shelf: shelf.flasksMl })
    });
  }
  if (dilution && unmet.length === 0) {
    const portion2 = portionOf(dilution);
    if (!isDeliverable(portion2)) {
      unmet.push({
        demand: "portion deliverable",
        about: "target",
        ...demandTexts.portion({ pipettes: shelf.pipettesMl })
      });
    }
    if (solid && portion2 > solid.flask / 2) {
      unmet.push({ demand: "portion within stock", about: "flask", ...demandTexts.portionWithinStock(solid) });
    }
  }
  const portion = (_c = (_b = serial == null ? void 0 : serial.portion) != null ? _b : residue == null ? void 0 : residue.portion) != null ? _c : density == null ? void 0 : density.portion;
  if (portion !== void 0 && !isDeliverable(portion)) {
    unmet.push({
      demand: "portion deliverable",
      about: "portion",
      ...demandTexts.portion({ pipettes: shelf.pipettesMl })
    });
  }
  if (serial && !(serial.portion <= serial.flask / 2)) {
    unmet.push({ demand: "portion within stock", about: "portion", ...demandTexts.portionWithinFlask(serial) });
  }
  const weighed = solid != null ? solid : residue && { molarity: residue.molarity, flask: residue.portion };
  if (weighed) {
    const mass = massOf(weighed, substance);
    const least = readabilitiesNeeded * shelf.balanceReadabilityG;
    if (mass < least) {
      const found = { least, readability: shelf.balanceReadabilityG };
      unmet.push({ demand: "mass fine enough", about: "molarity", ...demandTexts.massFine(found) });
    }
    if (mass > shelf.balanceMaxG) {
      unmet.push({
        demand: "mass within range",
        about: "molarity",
        ...demandTexts.massRange({ most: shelf.balanceMaxG })
      });
    }
  }
  if (density) unmet.push(...unmetOfDensity(density, { shelf, substance }));
  const dissolved = (_d = weighed == null ? void 0 : weighed.molarity) != null ? _d : density == null ? void 0 : density.molarity;
  const limit = substance.solubleMolarity;
  if (dissolved !== void 0 && limit !== void 0 && dissolved > limit) {
    const found = { formula: substance.formula, molarity: dissolved, limit };
    unmet.push({ demand: "dissolves", about: "molarity", ...demandTexts.dissolves(found) });
  }
  return unmet;
}

// src/lab/numbers/portions.ts
function portions({ pipettesMl }) {
  const once = pipettesMl.map((volume) => ({ volume, fillings: 1 }));
  const twice = pipettesMl.flatMap(
    (first) => pipettesMl.map((second) => ({ volume: first + second, fillings: 2 }))
  );
  return [...once, ...twice].filter(({ volume }, index, all) => all.findIndex((other) => isSame(other.volume, volume)) === index).sort((one, other) => one.volume - other.volume);
}

// src/lab/numbers/teamKeys.ts
var plain = (name) => name.normalize("NFKC").toLowerCase().replace(/[^\\p{L}\\p{N}]+/gu, "-").replace(/^-+|-+$/g, "") || "x";
function teamKeys(classes) {
  const taken = /* @__PURE__ */ new Set();
  return classes.flatMap(
    ({ name, teams: teams2 }) => teams2.map((team) => {
      const wanted = \`\${plain(name)}/\${plain(team)}\`;
      let key = wanted;
      for (let copy = 2; taken.has(key); copy += 1) key = \`\${wanted}-\${copy}\`;
      taken.add(key);
      return { key, className: name, team };
    })
  );
}

// src/lab/numbersForTeams.ts
function givenOf({ numbers }, about) {
  var _a, _b, _c, _d, _e, _f, _g, _h, _i;
  const { solid, dilution, reagent, serial, residue, density } = numbers;
  const names2 = {
    molarity: (_b = (_a = solid == null ? void 0 : solid.molarity) != null ? _a : residue == null ? void 0 : residue.molarity) != null ? _b : density == null ? void 0 : density.molarity,
    flask: (_c = solid == null ? void 0 : solid.flask) != null ? _c : serial == null ? void 0 : serial.flask,
    stock: (_d = dilution == null ? void 0 : dilution.stock) != null ? _d : serial == null ? void 0 : serial.stock,
    target: (_e = dilution == null ? void 0 : dilution.target) != null ? _e : reagent == null ? void 0 : reagent.target,
    volume: (_f = dilution == null ? void 0 : dilution.volume) != null ? _f : reagent == null ? void 0 : reagent.volume,
    portion: (_h = (_g = serial == null ? void 0 : serial.portion) != null ? _g : residue == null ? void 0 : residue.portion) != null ? _h : density == null ? void 0 : density.portion
  };
  return (_i = names2[about]) != null ? _i : numbers.formula;
}
var refused = (activity, { about, expected, received, advice }) => failure({ code: "numbers-shelf", argument: givenOf(activity, about), expected, received, advice });
var usualPipettesMl = [1, 2, 5, 10, 15, 20, 25, 50, 100];
var usualPipettesFor = (portion) => portion === void 0 ? usualPipettesMl : [...usualPipettesMl].sort((one, other) => Math.abs(one - portion) - Math.abs(other - portion));
function nothingFits(activity, { start, bench: bench3, list: list2 }) {
  var _a, _b;
  if (list2.lacks === "portion") {
    const size2 = usualPipettesFor(weighedPortionOf(start.lesson)).find((volume) => {
      const shelf = { ...bench3.shelf, pipettesMl: [...bench3.shelf.pipettesMl, volume] };
      const richer = { ...bench3, shelf, deliverable: portions(shelf) };
      return candidatesNear(activity, start, richer).candidates.some(
        ({ lesson }) => unmetDemands(lesson, richer).length === 0
      );
    });
    return failure({
      code: "numbers-shelf",
      argument: givenOf(activity, activity.numbers.dilution ? "target" : "portion"),
      ...startTexts.noPipette(size2, activity.numbers.dilution ? "target" : "portion")
    });
  }
  if (list2.lacks !== void 0) {
    return failure({
      code: "numbers-shelf",
      argument: givenOf(activity, list2.lacks === "flask" ? "flask" : "volume"),
      ...startTexts.noFlask
    });
  }
  const standing = {};
  for (const { lesson } of list2.candidates) {
    const unmet = unmetDemands(lesson, bench3);
    for (const one of unmet) {
      (_b = standing[_a = one.demand]) != null ? _b : standing[_a] = { unmet: one, alone: 0, all: 0 };
      const counted = standing[one.demand];
      if (counted) {
        counted.all += 1;
        if (unmet.length === 1) counted.alone += 1;
      }
    }
  }
  const [worst] = Object.values(standing).sort((one, other) => other.alone - one.alone || other.all - one.all);
  if (worst === void 0) throw new Error("Numbers were refused though every demand was met.");
  const atStart = unmetDemands(start.lesson, bench3).find(
    ({ demand }) => demand === worst.unmet.demand
  );
  return refused(activity, atStart != null ? atStart : worst.unmet);
}
var compared = 500;
var poolLeast = 150;
function clearest(sets, steps, { least }) {
  var _a, _b;
  const scored = sets.slice(0, Math.max(compared, least)).map((candidate) => ({ candidate, hidden: confusions(steps, candidate.values).length })).sort((one, other) => one.hidden - other.hidden);
  const best = (_b = (_a = scored[0]) == null ? void 0 : _a.hidden) != null ? _b : 0;
  return scored.filter(({ hidden }, place) => hidden === best || place < least).map(({ candidate }) => candidate);
}
var oddNumbers = { molarity: 0.3173, flask: 237.1, target: 0.04519, volume: 173.3, portion: 13.7 };
function inherentConfusions({ numbers }, steps) {
  const { solid, dilution, reagent, serial, residue, density } = numbers;
  const values = {};
  const put = (name, value) => {
    if (name !== void 0) values[name] = value;
  };
  for (const name of [solid == null ? void 0 : solid.molarity, dilution == null ? void 0 : dilution.stock, serial == null ? void 0 : serial.stock, residue == null ? void 0 : residue.molarity, density == null ? void 0 : density.molarity])
    put(name, oddNumbers.molarity);
  for (const name of [solid == null ? void 0 : solid.flask, serial == null ? void 0 : serial.flask]) put(name, oddNumbers.flask);
  for (const name of [dilution == null ? void 0 : dilution.target, reagent == null ? void 0 : reagent.target]) put(name, oddNumbers.target);
  for (const name of [dilution == null ? void 0 : dilution.volume, reagent == null ? void 0 : reagent.volume]) put(name, oddNumbers.volume);
  for (const name of [serial == null ? void 0 : serial.portion, residue == null ? void 0 : residue.portion, density == null ? void 0 : density.portion]) put(name, oddNumbers.portion);
  return new Set(confusions(steps, values).map(confusionName));
}
var slipWords = (id, { step }) => {
  var _a, _b;
  const text2 = slipTexts[id];
  return ((_b = (_a = text2.in) == null ? void 0 : _a[step.quantity]) != null ? _b : text2).fits;
};
function givenUp(activity, steps, teams2) {
  var _a, _b, _c;
  const inherent = inherentConfusions(activity, steps);
  const frees = ((_a = activity.numbers.residue) != null ? _a : activity.numbers.density) ? "portion" : "sizes";
  const counts = {};
  for (const values of teams2) {
    const here = {};
    for (const confusion of confusions(steps, values)) here[confusionName(confusion)] = confusion;
    for (const [name, confusion] of Object.entries(here)) {
      if (inherent.has(name)) continue;
      counts[name] = { confusion, teams: ((_c = (_b = counts[name]) == null ? void 0 : _b.teams) != null ? _c : 0) + 1 };
    }
  }
  return Object.values(counts).sort((one, other) => other.teams - one.teams).map(({ confusion, teams: count2 }) => {
    const words2 = { step: confusion.step.title, teams: numbersRemarks.teams(count2, teams2.length) };
    const [first, second] = confusion.slips;
    return second === void 0 ? numbersRemarks.looksRight({ ...words2, slip: slipWords(first, confusion), frees }) : numbersRemarks.lookAlike({
      ...words2,
      slips: \`\${slipWords(first, confusion)}; \${slipWords(second, confusion)}\`
    });
  });
}
var weighedPortionOf = ({ residue, density }) => {
  var _a;
  return (_a = residue != null ? residue : density) == null ? void 0 : _a.portion;
};
function dealt(sets, {
  activity,
  setup,
  start,
  steps
}) {
  var _a, _b, _c;
  const places = teamKeys(setup.classes);
  const whole = hasWholeFactor(start.lesson);
  const asWhole = ({ wholeFactor }) => wholeFactor === whole;
  const oneFilling = ({ fillings }) => fillings < 2;
  const kindsOf = (all) => [
    all.filter((candidate) => asWhole(candidate) && oneFilling(candidate)),
    all.filter((candidate) => !asWhole(candidate) && oneFilling(candidate)),
    all.filter(asWhole),
    all
  ];
  const near = sets.filter(({ nearRatio }) => nearRatio);
  const kinds2 = near.length < sets.length ? [...kindsOf(near), ...kindsOf(sets)] : kindsOf(sets);
  let outcome;
  for (const kind of kinds2) {
    if (kind.length === 0) continue;
    const pool = clearest(kind, steps, { least: Math.max(poolLeast, 3 * places.length) });
    const attempt = { ...dealtCandidates(pool, places, setup.settings.seed), different: pool.length };
    if (outcome === void 0 || attempt.shared < outcome.shared) outcome = attempt;
    if (outcome.shared === 0) break;
  }
  if (outcome === void 0) throw new Error("There are no numbers to deal.");
  const given = outcome.given.map(({ candidate }) => candidate);
  const asked = weighedPortionOf(start.lesson);
  const portion = given[0] && weighedPortionOf(given[0].lesson);
  const otherPortion = asked === void 0 || portion === void 0 || isSame(asked, portion) ? [] : [numbersRemarks.otherPortion({ asked, portion })];
  const molarity = start.typed[(_c = (_b = (_a = activity.numbers.residue) != null ? _a : activity.numbers.density) == null ? void 0 : _b.molarity) != null ? _c : ""];
  const frees = molarity === void 0 ? "sizes" : molarity.figures < mostFigures ? "figures" : "nothing";
  const twoFillings = asked === void 0 ? numbersRemarks.twoFillings : numbersRemarks.portionInTwo;
  return {
    ...outcome,
    remarks: [
      ...given.some(({ fillings }) => fillings === 2) ? [twoFillings] : [],
      ...given.some(asWhole) && !given.every(asWhole) ? [numbersRemarks.mixedFactors] : [],
      ...given.every(({ nearRatio }) => nearRatio) ? [] : [numbersRemarks.otherRatios],
      ...otherPortion,
      ...outcome.shared > 0 ? [numbersRemarks.shared({ teams: places.length, different: outcome.different, frees })] : []
    ]
  };
}
function substanceRemarks({ numbers }, { substance, remarks: remarks2 }) {
  var _a, _b;
  const caution = plannerCaution(substance.formula);
  return [
    ...caution === "" ? [] : [numbersRemarks.caution(substance.formula, caution)],
    ...((_b = (_a = numbers.solid) != null ? _a : numbers.residue) != null ? _b : numbers.density) && substance.solubleMolarity === void 0 ? [numbersRemarks.solubilityUnknown(substance.formula)] : [],
    ...remarks2
  ];
}
function numbersForTeams(setup) {
  const activity = activityById(setup.activity);
  if (activity === void 0) {
    const known = allActivities().map(({ id }) => id);
    return failure({
      code: "numbers-start",
      argument: "activity",
      ...startTexts.activity(quoted(setup.activity), known)
    });
  }
  const start = readStartNumbers(activity, setup);
  if (!start.ok) return start;
  const { settings, shelf } = setup;
  const bench3 = { shelf, deliverable: portions(shelf), substance: start.value.substance };
  const decimalMark = settings["decimal mark"] === "comma" ? "comma" : "point";
  const steps = readySteps(activity, setup.givens, {
    figures: Number(settings.figures) || 3,
    decimals: Number(settings["atomic-weight decimals"]) || 2,
    decimalMark
  });
  const inMark = (text2) => decimalMark === "comma" ? text2.replace(".", ",") : text2;
  const asTyped = Object.fromEntries(
    activity.givens.map(({ name, fromTable }) => {
      var _a, _b, _c;
      const own = ((_a = setup.givens[name]) != null ? _a : "").trim();
      return [name, own === "" && fromTable ? inMark((_c = (_b = start.value.typed[name]) == null ? void 0 : _b.typed) != null ? _c : "") : own];
    })
  );
  const about = substanceRemarks(activity, start.value);
  if (!setup.ownNumbers) {
    const [unmet] = unmetDemands(start.value.lesson, bench3);
    if (unmet) return refused(activity, unmet);
    const values = Object.fromEntries(Object.entries(start.value.typed).map(([name, { value }]) => [name, value]));
    const teams2 = teamKeys(setup.classes).map((place) => ({ ...place, givens: asTyped }));
    return success({
      teams: teams2,
      remarks: [
        ...about,
        ...givenUp(
          activity,
          steps,
          teams2.map(() => values)
        )
      ]
    });
  }
  const list2 = candidatesNear(activity, start.value, bench3);
  const sets = shuffled(
    list2.candidates.filter(({ lesson }) => unmetDemands(lesson, bench3).length === 0),
    seededRandom(\`\${settings.seed} sets\`)
  );
  if (sets.length === 0) return nothingFits(activity, { start: start.value, bench: bench3, list: list2 });
  const { given, remarks: remarks2 } = dealt(sets, { activity, setup, start: start.value, steps });
  return success({
    teams: given.map(({ place, candidate }) => {
      const own = Object.fromEntries(Object.entries(candidate.texts).map(([name, text2]) => [name, inMark(text2)]));
      return { ...place, givens: { ...asTyped, ...own } };
    }),
    remarks: [
      ...about,
      ...remarks2,
      ...list2.otherDigits ? [numbersRemarks.otherDigits] : [],
      ...givenUp(
        activity,
        steps,
        given.map(({ candidate }) => candidate.values)
      )
    ]
  });
}

// src/workbook/activityInUse.ts
function activityInUse(activity, teams2) {
  const { ion } = activity.numbers;
  if (ion === void 0 || teams2.length === 0 || teams2.some(({ givens }) => {
    var _a;
    return ((_a = givens[ion]) != null ? _a : "").trim() !== "";
  })) {
    return activity;
  }
  const asksIon = (step) => step.kind === "calculated" && Object.values(step.takes).some((from2) => "given" in from2 && from2.given === ion);
  return { ...activity, steps: activity.steps.filter((step) => !asksIon(step)) };
}

// src/workbook/keptTeams.ts
function sameNumbersWanted(before, now) {
  const key = ({ activity, givens, ownNumbers, settings, shelf }) => JSON.stringify([
    activity,
    Object.keys(givens).filter((name) => givens[name] !== "").sort().map((name) => [name, givens[name]]),
    ownNumbers,
    settings.seed,
    shelf.flasksMl,
    shelf.pipettesMl,
    shelf.balanceReadabilityG,
    shelf.balanceMaxG
  ]);
  return key(before) === key(now);
}
var plainKey = /^[a-z][a-z0-9-]*$/;
function keptTeams({
  drafted,
  before,
  setup
}) {
  var _a;
  const same2 = (one) => (other) => one.className === other.className && one.team === other.team;
  const usedKeys = ((_a = before == null ? void 0 : before.teams) != null ? _a : []).map(({ key }) => key.toLowerCase());
  const freshKey = ({ key, className }) => {
    if (plainKey.test(key) && !usedKeys.includes(key)) return claim(key);
    const classNumber = setup.classes.findIndex(({ name }) => name === className) + 1;
    for (let number2 = 1; ; number2 += 1) {
      const made = \`c\${classNumber}-t\${number2}\`;
      if (!usedKeys.includes(made)) return claim(made);
    }
  };
  const claim = (key) => {
    usedKeys.push(key);
    return key;
  };
  if (before === void 0) return drafted.map((team) => ({ ...team, key: freshKey(team) }));
  const keepNumbers = sameNumbersWanted(before.setup, setup);
  const kept = [];
  for (const line of before.teams) {
    const wanted = drafted.find(same2(line));
    if (wanted !== void 0)
      kept.push({ ...wanted, key: line.key, givens: keepNumbers ? line.givens : wanted.givens });
  }
  const added = drafted.filter((team) => !before.teams.some(same2(team)));
  return [...kept, ...added.map((team) => ({ ...team, key: freshKey(team) }))];
}

// src/lab/roles.ts
var roles = ["calculates", "writes", "runs the bench", "records"];

// src/lab/texts/members.ts
var membersTexts = {
  /** Stands in the cell until somebody writes there. */
  heading: "Who",
  absent: "not here today",
  /** For a fifth person, when all roles are given. */
  helps: "helps where needed",
  rolesOf: (day) => \`roles of \${day}\`
};

// src/chemistry/shortCautions.ts
var mostStatements = 3;
var gravest = [
  /^H3[013]0$/,
  /^H3[456]0/,
  /^H3[013]1$/,
  /^(H314|H318)$/,
  /^(H334|H370|H372)$/,
  /^H27[12]$/,
  /^H226$/
];
var last = /^(H290|H4\\d\\d)$/;
var rank = (code) => {
  const place = gravest.findIndex((family) => family.test(code));
  return place >= 0 ? place : last.test(code) ? gravest.length + 1 : gravest.length;
};
function shortCautions(formula2, massPercent) {
  var _a;
  const { listing, signalWord, statements: statements2 } = cautionsAt(
    formula2,
    massPercent === void 0 ? "undiluted" : { massPercent }
  );
  if (listing === "unlisted") return { listing, signalWord, statements: [], advice: "", use: "", otherForm: "" };
  const [otherForm = ""] = listing === "listed" ? [] : statements2.map(({ text: text2 }) => text2);
  const worst = statements2.filter(({ code }) => code !== "").sort((one, other) => rank(one.code) - rank(other.code));
  const care = statements2.find(
    ({ advice }) => advice === adviceTexts.acidToWater || advice === adviceTexts.heatOfSolution
  );
  const use = statements2.find(({ advice }) => advice === cautionTexts.schoolAdvice);
  const shown = worst.length > 0 ? worst : statements2.filter(({ text: text2 }) => text2 !== otherForm).slice(0, 1);
  return {
    listing,
    signalWord,
    statements: shown.slice(0, mostStatements).map(({ text: text2 }) => text2),
    advice: [shown[0], care].map((one) => {
      var _a2;
      return (_a2 = one == null ? void 0 : one.advice) != null ? _a2 : "";
    }).filter((words2) => words2 !== "").join(" "),
    use: (_a = use == null ? void 0 : use.text) != null ? _a : "",
    otherForm
  };
}

// src/workbook/words.ts
var words = {
  plan: {
    sheet: "Plan",
    title: "Plan",
    note: "The settings and numbers of this lesson. Change a number here and every check, hint and question follows at once.",
    notice: "Each line below belongs to the team with its key: sort the lines as you like, but keep each key once.",
    invented: "An invented school, with invented classes and teams, to try things out.",
    setting: "setting",
    value: "value",
    about: "what it is for",
    key: "key",
    className: "class",
    team: "team",
    today: "today",
    absent: "absent",
    absentHelp: "absent for a team that is not here; clear the cell when it is",
    readings: "readings",
    readingsAbout: "how far a reading may be off, by the settings as they were when this was built"
  },
  class: {
    notice: "This is practice, not a test. The checks answer whoever types, and protected cells guard against accidents only.",
    invented: "An invented class with invented teams, to try things out.",
    how: "Type in the tinted cells of your team, with or without a unit. The check stands beside them.",
    caution: ({ formula: formula2, signalWord }) => signalWord === "" ? \`\${formula2}: no signal word is known here.\` : \`\${formula2}: \${signalWord}.\`,
    cautionUpTo: ({ formula: formula2, strength }) => \`\${formula2} up to \${strength}\`,
    cautionUnlisted: (formula2) => \`\${formula2}: not listed here, so treat it as harmful.\`,
    deferring: "Read the safety data sheet first; local rules decide.",
    find: "Find your team",
    keptForLate: "kept for a late team",
    entry: "Your entry",
    unit: "Unit",
    help: "Help 0–3",
    tries: "Tries",
    lastEntry: "Last entry",
    key: "team",
    step: "step",
    keyMissing: "⚠ no line of the Plan has this team’s key",
    keyTwice: "⚠ two lines of the Plan have this team’s key",
    closing: " on target so far",
    whoChoice: "a role or a name, or leave it empty",
    tickChoice: "once your team has read the cautions beside this row",
    helpChoice: "0 for none, 1 for the idea, 2 for how things are related, 3 for the set-up with your numbers"
  },
  progress: {
    sheet: "Progress",
    title: "Progress",
    note: "How far each team has come. Fit for the projector: no numbers and no reasons, only where the work stands.",
    now: "Now",
    done: "Done",
    count: "Steps",
    /** Beside a team that is marked absent in the Plan, for that day. */
    absent: "not here today",
    of: " of ",
    /** Neutral words with a sign each, fit for everybody’s eyes. */
    states: {
      done: "✓ done",
      nearly: "≈ nearly",
      inWork: "○ in work",
      toCome: "· to come",
      written: "✓ written",
      notYetKnown: "… not yet known"
    }
  },
  help: {
    sheet: "Help",
    title: "Help, in your own words",
    notes: [
      "Write a hint of your own beside any step and level; it is shown in place of ours. An empty cell leaves ours.",
      "Level 1 is the idea, 2 how things are related, 3 the set-up with the team’s numbers.",
      "A team asks for help by choosing 1, 2 or 3 in its own row. The setting “highest help level” in the Plan is the limit.",
      "Links begin with http or https.",
      "The checks answer whoever types them: this is a practice tool and not a test.",
      "Whoever can edit this file can also read its script. Protection is against accidents, not against intent."
    ],
    step: "step",
    level: "level",
    wording: "your own wording",
    link: "link",
    where: ({ step, level }) => \`the link of \${step}, level \${level}, in Help\`,
    linkExpected: "a web address that begins with http:// or https://",
    linkAdvice: "Copy it whole from the address line; until then it is shown to nobody."
  },
  poll: {
    sheet: "Poll",
    title: "Poll",
    notes: [
      "How did it go? Take a free row below: choose your class and, for each statement, how far you agree. Leave out what you like.",
      "One row for each answer, by one student or by a team. No names are asked, and please write none.",
      "To be honest: the edit history of this file can show which account typed what. If that matters to you, let one person type for the team.",
      "Answers are for talking about how the lesson went. Nobody is marked by them."
    ],
    soFar: "All answers so far",
    row: "Row",
    day: "Day",
    className: "Class",
    from: "Answer from",
    openLine: "One thing that is clear now, or one that still puzzles you",
    classHelp: "your class",
    fromHelp: "one student, or a team together",
    scaleHelp: "how far you agree; leave it empty if you would rather not say"
  },
  prepare: {
    sheet: "Prepare",
    title: "Prepare",
    upToDate: "Worked out from the Plan as it is now.",
    /** The sign at the beginning is what the tint goes by. */
    outOfDate: "⚠ The Plan has changed since this list was written. Open Prepare in the sidebar: it brings this sheet up to the Plan.",
    notes: [
      "Students can read this sheet: masses and volumes that a team has to find stand in the sidebar only.",
      "This is no safety data sheet. Read the one from your supplier; follow local rules and your school’s own assessment."
    ],
    headings: ["For", "What", "Needed", "With spare", "Unit", "How and what to know"],
    mark: "prepare"
  },
  share: {
    /** Neutral names for a file that is given on. */
    className: (number2) => \`Class \${number2}\`,
    team: (number2) => \`Team \${number2}\`
  },
  record: {
    sheet: "Record",
    title: "Record",
    note: "One row for each class and day: counts and plain words, no names of pupils or teams. Reword a row as you like; the sidebar keeps your words."
  },
  classNow: {
    askedForHelp: ({ step, level }) => \`Asked for help, level \${level}, at \${step}.\`,
    sameTwice: ({ first, second }) => \`The same question twice, at \${first} and \${second}.\`,
    manyTries: ({ step, tries }) => \`At least \${tries} tries at \${step}.\`,
    quiet: ({ minutes, step }) => \`Nothing new for \${minutes} minutes, at \${step}.\`,
    notYet: (step) => \`Not yet right at \${step}.\`,
    allDone: (question) => \`Everything on target: ready for more. \${question}\`,
    theme: ({ teams: teams2, lookAt }) => \`\${teams2} teams read this now: \${lookAt}\`
  },
  settings: {
    layout: "layout",
    invented: "invented",
    numbers: "numbers",
    ownNumbers: "each team its own",
    sharedNumbers: "the same for all",
    flasks: "flasks on the shelf",
    pipettes: "pipettes on the shelf",
    balanceReadability: "balance readability",
    balanceRange: "balance range",
    startPrefix: "start from "
  },
  settingNotes: {
    activity: "what the teams do; change it in the sidebar, which builds new sheets",
    periods: "how many periods the activity takes",
    figures: "significant figures asked for, unless a step says otherwise",
    "atomic-weight decimals": "decimals of the atomic weights that your class uses",
    "decimal mark": "point or comma: how your class writes numbers",
    "judge figures": "yes: a right number with the wrong number of figures is only close",
    "highest help level": "0 to 3: how far hints may go",
    "glassware class": "A or B, for what a measured answer may differ by",
    "glassware standard": "ISO or ASTM",
    balance: "readability of the balance",
    "allowance for technique": "your own share for how people handle glassware",
    spare: "share of solids, stocks and water to prepare beyond what the teams take",
    "spare glassware": "share of glassware to lay out beyond what is used at once, for breakages",
    "work the dilution from": "nominal stock: the molarity planned; real stock: what the team really made. Build again after a change",
    "concentrated reagents": "staff make the solution and students watch; students: only where your school’s own assessment and the safety data sheet allow it",
    seed: "the same seed gives the teams the same numbers again; any whole number",
    layout: "the arrangement of these sheets; leave it as it is",
    invented: "yes: a sample to try things out",
    numbers: "each team its own, or the same for all",
    "flasks on the shelf": "mL, between semicolons",
    "pipettes on the shelf": "mL, between semicolons",
    "balance readability": "g",
    "balance range": "g, the most it can weigh",
    start: "what the sidebar starts from when it gives numbers; the checks read the team lines below"
  }
};

// src/workbook/cautionLine.ts
function cautionLine({ activity, setup }, teams2) {
  var _a;
  const name = activity.numbers.formula;
  const ticked = activity.steps.find((step) => step.kind === "ticked");
  const substance = (_a = ticked == null ? void 0 : ticked.substance) != null ? _a : { formula: name };
  const decimalMark = setup.settings["decimal mark"] === "comma" ? "comma" : "point";
  const written = teams2.map(({ givens }) => {
    var _a2;
    return ((_a2 = givens[name]) != null ? _a2 : "").trim();
  });
  const heads = [];
  const advices = /* @__PURE__ */ new Set();
  for (const formula2 of new Set(written)) {
    const read = readFormula(formula2);
    if (!read.ok) continue;
    const [strongest] = teams2.filter((_, place) => written[place] === formula2).flatMap(({ givens }) => handledForms({ substance, formula: read.value, givens, decimalMark })).sort((one, other) => {
      var _a2, _b;
      return ((_a2 = other.massPercent) != null ? _a2 : undiluted) - ((_b = one.massPercent) != null ? _b : undiluted);
    });
    const { listing, signalWord, advice, use } = shortCautions(read.value, strongest == null ? void 0 : strongest.massPercent);
    const isSolution = (strongest == null ? void 0 : strongest.massPercent) !== void 0;
    const what = isSolution ? words.class.cautionUpTo({ formula: formula2, strength: strongest.words }) : formula2;
    heads.push(
      listing === "unlisted" ? words.class.cautionUnlisted(formula2) : words.class.caution({ formula: what, signalWord })
    );
    for (const told of [use, advice]) if (told !== "") advices.add(told);
  }
  return heads.length === 0 ? "" : [...heads, words.class.deferring, ...advices].join(" ");
}
var undiluted = 101;

// src/workbook/formula.ts
var formula = (name, ...cells) => \`=\${name}(\${cells.join(",")})\`;
var native = (name, ...cells) => \`\${name}(\${cells.join(",")})\`;
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

// src/workbook/workbook.ts
var text = (words2) => words2 === "" ? blank : { kind: "text", text: words2 };
var blank = { kind: "blank" };
var computed = (formula2) => ({ kind: "formula", formula: formula2 });

// src/workbook/planHelpSheet.ts
var spareLines = 10;
var levels = ["1", "2", "3"];
var columns = { step: 1, level: 2, wording: 3, link: 4 };
var headingRow = helpRows.firstNote + words.help.notes.length + 1;
var ownHintsArea = ({ steps }) => ({
  row: headingRow,
  column: columns.step,
  rows: 1 + steps.length * levels.length + spareLines,
  columns: columns.link
});
function planHelpSheet({ activity }, names2) {
  const { help } = words;
  const lines = activity.steps.flatMap(({ id }) => levels.map((level) => [id, level]));
  const own = { row: headingRow + 1, column: columns.wording, columns: 2 };
  const spare = { row: headingRow + 1 + lines.length, rows: spareLines };
  return {
    name: names2.help,
    role: { kind: "help" },
    rowCount: headingRow + lines.length + spareLines,
    columnCount: columns.link,
    columnWidths: [160, 50, 420, 240],
    hiddenColumns: void 0,
    frozenRows: 1,
    frozenColumns: 0,
    blocks: [
      { row: helpRows.title, column: 1, cells: [[text(help.title)], ...help.notes.map((note) => [text(note)])] },
      { row: headingRow, column: 1, cells: [[text(help.step), text(help.level), text(help.wording), text(help.link)]] },
      { row: headingRow + 1, column: 1, cells: lines.map((line) => line.map(text)) }
    ],
    checks: [],
    looks: [
      { row: helpRows.title, column: 1, rows: 1, columns: columns.link, look: "title" },
      { row: helpRows.firstNote, column: 1, rows: help.notes.length, columns: columns.link, look: "note" },
      { row: headingRow, column: 1, rows: 1, columns: columns.link, look: "heading" },
      { row: headingRow + 1, column: columns.step, rows: lines.length + spareLines, columns: 2, look: "setting name" },
      { ...own, rows: lines.length + spareLines, look: "helper" }
    ],
    formats: [],
    states: [],
    choices: [],
    writable: [
      { ...own, rows: lines.length },
      { ...spare, column: columns.step, columns: columns.link }
    ],
    unprotected: [],
    spill: [],
    identity: {
      firstRow: headingRow,
      columns: [columns.step, columns.level],
      rows: [[help.step, help.level], ...lines]
    },
    carried: [columns.wording, columns.link]
  };
}

// src/workbook/reference.ts
function columnLetters(column) {
  let letters = "";
  for (let rest = column; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + (rest - 1) % 26) + letters;
  }
  return letters;
}
var fixed = ({ row, column }) => \`$\${columnLetters(column)}$\${row}\`;
var fixedArea = ({ row, column, rows, columns: columns4 }) => \`\${fixed({ row, column })}:\${fixed({ row: row + rows - 1, column: column + columns4 - 1 })}\`;
var areaName = ({ row, column, rows, columns: columns4 }) => \`\${columnLetters(column)}\${row}:\${columnLetters(column + columns4 - 1)}\${row + rows - 1}\`;
var fixedBelow = (place) => \`\${fixed(place)}:$\${columnLetters(place.column)}\`;
var wholeColumn = (column) => \`$\${columnLetters(column)}:$\${columnLetters(column)}\`;
var onSheet = (sheetName, reference) => \`'\${sheetName.split("'").join("''")}'!\${reference}\`;
var literal = (words2) => \`"\${words2.split('"').join('""')}"\`;
var literalLines = (words2) => words2.split("\\n").map(literal).join("&CHAR(10)&");

// src/workbook/stateWords.ts
var stateWords = [
  { word: "on target", state: "on target" },
  { word: "close", state: "close" },
  { word: "follows", state: "follows" },
  { word: "not yet", state: "not yet" },
  { word: "unreadable", state: "unreadable" },
  { word: "blank", state: "blank" }
];

// src/workbook/planClassSheet.ts
var linkRowsFor = (teamCount) => teamCount + 2;
function planClassSheet({ lesson, className, teams: teams2, names: names2, places, linkRows }) {
  var _a;
  const { steps } = lesson.activity;
  const givens = lesson.givenNames;
  const unitOf = (name) => {
    var _a2, _b;
    return (_b = (_a2 = lesson.activity.givens.find((given) => given.name === name)) == null ? void 0 : _a2.unit) != null ? _b : "";
  };
  const caution = cautionLine(lesson, teams2);
  const room2 = Math.max(linkRows != null ? linkRows : linkRowsFor(teams2.length), teams2.length);
  const firstBlock = classRows.firstLink + room2 + 1;
  const height = steps.length + 2;
  const lineColumn = classColumns.givens + givens.length;
  const columnCount = lineColumn;
  const rowCount = firstBlock + teams2.length * height - 1;
  const headingRowOf = (index) => firstBlock + index * height;
  const references = planReferences({ names: names2, places });
  const unitCells = [];
  const findCells = [];
  const keyCells = [];
  const blocks = [];
  const checks = [];
  const writable = [];
  const memberCells = [];
  const unprotected = [];
  const spill = [];
  const choices = [];
  const formats = [];
  const looks2 = [
    { row: classRows.title, column: 1, rows: 1, columns: classColumns.lastEntry, look: "title" },
    { row: classRows.caution, column: 1, rows: 1, columns: classColumns.lastEntry, look: caution === "" ? "note" : "caution" },
    { row: classRows.note, column: 1, rows: 2, columns: classColumns.lastEntry, look: "note" },
    { row: classRows.find, column: 1, rows: 1, columns: classColumns.lastEntry, look: "heading" },
    { row: classRows.firstLink, column: 1, rows: room2, columns: 1, look: "link" },
    { row: classRows.firstLink + teams2.length, column: 1, rows: room2 - teams2.length, columns: 1, look: "note" },
    { row: 1, column: classColumns.key, rows: rowCount, columns: columnCount - classColumns.key + 1, look: "mark" }
  ];
  teams2.forEach((team, index) => {
    const heading = headingRowOf(index);
    const closing = heading + height - 1;
    const column = (number2) => ({ row: heading, column: number2, rows: height, columns: 1 });
    const lineCell = fixed({ row: heading, column: lineColumn });
    const keyCell = \`$\${columnLetters(classColumns.key)}\${heading}\`;
    findCells.push([computed(\`=\${references.teamName(lineCell)}\`)]);
    for (const step of steps) findCells.push([whatToFind({ step, givens, unitOf, heading, lineCell })]);
    findCells.push([
      computed(
        \`=\${native("COUNTIF", fixedArea(column(classColumns.check)), literal("on target"))}&\${literal(words.class.closing)}\`
      )
    ]);
    unitCells.push([text(words.class.unit)], ...steps.map(({ unit }) => [text(unit)]), [blank]);
    keyCells.push([text(team.key), blank], ...steps.map(({ id }) => [text(team.key), text(id)]), [
      text(team.key),
      blank
    ]);
    blocks.push(
      { row: heading, column: classColumns.entry, cells: [[text(words.class.entry)]] },
      { row: heading, column: classColumns.help, cells: [[text(words.class.help)]] },
      {
        row: heading,
        column: classColumns.tries,
        cells: [
          [
            text(words.class.tries),
            text(words.class.lastEntry),
            text(team.key),
            blank,
            ...givens.map((_, place) => computed(\`=\${references.given({ lineCell, place: place + 1 })}\`)),
            computed(\`=\${references.line(keyCell)}\`)
          ]
        ]
      }
    );
    checks.push({
      row: heading,
      column: classColumns.check,
      cells: [
        [
          computed(
            formula(
              "CHECKTEAM",
              references.givenHeadings,
              fixedArea({ row: heading, column: classColumns.givens, rows: 1, columns: Math.max(1, givens.length) }),
              references.settings,
              fixedArea(column(classColumns.step)),
              fixedArea(column(classColumns.entry)),
              fixedArea(column(classColumns.help)),
              onSheet(names2.help, fixedArea(ownHintsArea(lesson.activity)))
            )
          )
        ]
      ]
    });
    const stepRows = { row: heading + 1, rows: steps.length };
    const members = { row: heading, column: classColumns.who, rows: 1, columns: 1 };
    memberCells.push(members);
    writable.push({ ...stepRows, column: classColumns.entry, columns: 1 }, { ...stepRows, column: classColumns.help, columns: 2 }, members);
    unprotected.push({ ...stepRows, column: classColumns.tries, columns: 2 }, { ...stepRows, column: classColumns.givens, columns: 1 });
    spill.push({ row: heading, column: classColumns.check, rows: height, columns: 3 });
    choices.push({
      area: { ...stepRows, column: classColumns.help, columns: 1 },
      options: ["0", "1", "2", "3"],
      help: words.class.helpChoice
    });
    choices.push({
      area: { ...stepRows, column: classColumns.who, columns: 1 },
      options: roles,
      help: words.class.whoChoice
    });
    steps.forEach((step, place) => {
      var _a2;
      if (step.kind !== "ticked") return;
      choices.push({
        area: { row: heading + 1 + place, column: classColumns.entry, rows: 1, columns: 1 },
        options: [tickTexts.answer(((_a2 = team.givens[step.substance.formula]) != null ? _a2 : "").trim())],
        help: words.class.tickChoice
      });
    });
    formats.push(
      { ...stepRows, column: classColumns.tries, columns: 1, format: "0" },
      { ...stepRows, column: classColumns.lastEntry, columns: 1, format: "hh:mm" },
      { row: heading, column: classColumns.check, rows: height, columns: 3, format: "General" },
      { row: heading, column: classColumns.givens, rows: 1, columns: givens.length + 1, format: "General" }
    );
    looks2.push(
      { row: heading, column: classColumns.find, rows: 1, columns: 1, look: "team heading" },
      { row: heading, column: classColumns.entry, rows: 1, columns: classColumns.lastEntry - 1, look: "heading" },
      { ...members, look: "helper" },
      { ...stepRows, column: classColumns.find, columns: 1, look: "question" },
      { ...stepRows, column: classColumns.entry, columns: 1, look: "entry" },
      { ...stepRows, column: classColumns.unit, columns: 1, look: "question" },
      { ...stepRows, column: classColumns.check, columns: 3, look: "spilled" },
      { ...stepRows, column: classColumns.help, columns: 2, look: "helper" },
      { ...stepRows, column: classColumns.tries, columns: 2, look: "quiet" },
      { row: closing, column: classColumns.find, rows: 1, columns: classColumns.lastEntry, look: "closing" }
    );
  });
  formats.push(
    { row: classRows.firstLink, column: 1, rows: room2, columns: 1, format: "General" },
    { row: 1, column: classColumns.givens, rows: 1, columns: 1, format: "0" }
  );
  if (teams2.length > 0) {
    formats.push({ row: firstBlock, column: classColumns.find, rows: teams2.length * height, columns: 1, format: "General" });
    blocks.unshift(
      { row: firstBlock, column: classColumns.key, cells: keyCells },
      { row: firstBlock, column: classColumns.find, cells: findCells },
      { row: firstBlock, column: classColumns.unit, cells: unitCells }
    );
  }
  const sheetNumber = fixed({ row: 1, column: classColumns.givens });
  blocks.unshift(
    {
      row: 1,
      column: 1,
      cells: [
        [text(className)],
        [text(caution)],
        [text(\`\${lesson.activity.title}. \${words.class.how}\`)],
        [text(lesson.invented ? \`\${words.class.invented} \${words.class.notice}\` : words.class.notice)],
        [text(words.class.find)]
      ]
    },
    {
      row: 1,
      column: classColumns.key,
      cells: [[text(classMarker), text(String(layoutVersion)), { kind: "sheet id" }]]
    },
    {
      row: classRows.firstLink,
      column: 1,
      cells: Array.from({ length: room2 }, (_, index) => {
        if (index >= teams2.length) return [text(words.class.keptForLate)];
        const target = \`\${columnLetters(classColumns.find)}\${headingRowOf(index)}\`;
        const place = \`\${literal("#gid=")}&\${sheetNumber}&\${literal("&range=A")}&\${native("ROW", target)}\`;
        return [computed(\`=\${native("HYPERLINK", place, target)}\`)];
      })
    }
  );
  return {
    name: (_a = names2.classes[className]) != null ? _a : className,
    role: { kind: "class", className },
    activity: lesson.activity.id,
    rowCount,
    columnCount,
    columnWidths: [
      230,
      110,
      60,
      95,
      260,
      240,
      75,
      160,
      45,
      60,
      28,
      28,
      ...Array.from({ length: columnCount - classColumns.step }, () => 28)
    ],
    hiddenColumns: { column: classColumns.givens, count: columnCount - classColumns.givens + 1 },
    frozenRows: 1,
    frozenColumns: 0,
    blocks,
    checks,
    looks: looks2,
    formats,
    states: stateWords.map(({ word, state }) => ({ areas: spill.map(checkColumn), startsWith: word, state })),
    choices,
    writable,
    ...memberCells.length === 0 ? {} : { invitation: { places: memberCells, text: membersTexts.heading } },
    unprotected,
    spill,
    identity: {
      firstRow: 1,
      columns: [classColumns.key, classColumns.step],
      rows: [
        [classMarker, String(layoutVersion)],
        ...Array.from({ length: firstBlock - 2 }, () => ["", ""]),
        ...keyCells.map((cells) => cells.map((cell) => cell.kind === "text" ? cell.text : ""))
      ]
    },
    carried: [classColumns.entry, classColumns.help, classColumns.who, classColumns.tries, classColumns.lastEntry, classColumns.givens]
  };
}
var checkColumn = ({ row, rows }) => ({ row, column: classColumns.check, rows, columns: 1 });
function planReferences({ names: names2, places }) {
  const inPlan = (area) => onSheet(names2.plan, fixedArea(area));
  const keys = inPlan(places.keys);
  const givens = inPlan({ ...places.givenHeadings, rows: places.keys.rows });
  const teamNames = inPlan({ ...places.keys, column: planColumns.team });
  return {
    settings: inPlan(places.settings),
    givenHeadings: inPlan(places.givenHeadings),
    /** Which line of the Plan is this team's, or ⚠ and why there is not exactly one. */
    line: (keyCell) => native(
      "IF",
      \`\${native("COUNTIF", keys, keyCell)}=1\`,
      native("MATCH", keyCell, keys, "0"),
      native(
        "IF",
        \`\${native("COUNTIF", keys, keyCell)}=0\`,
        literal(words.class.keyMissing),
        literal(words.class.keyTwice)
      )
    ),
    /** A given as it stands in the Plan; a blank stays blank, where INDEX alone would give 0. */
    given: ({ lineCell, place }) => {
      const cell = native("INDEX", givens, lineCell, String(place));
      return native("IF", native("ISNUMBER", lineCell), native("IF", \`\${cell}=""\`, literal(""), cell), lineCell);
    },
    teamName: (lineCell) => native("IF", native("ISNUMBER", lineCell), native("INDEX", teamNames, lineCell), lineCell)
  };
}
function whatToFind({
  step,
  givens,
  unitOf,
  heading,
  lineCell
}) {
  const given = (name) => {
    const place = givens.indexOf(name);
    if (place < 0) throw new Error(\`Expected a given of the activity in \${step.id}, received \${name}.\`);
    return fixed({ row: heading, column: classColumns.givens + place });
  };
  if (step.shown.length === 0) return computed(\`=\${literalLines(step.title)}\`);
  const following2 = ({ words: plain3, name }) => {
    const unit = name === void 0 ? "" : unitOf(name);
    const start = \` \${unit}\`;
    if (name === void 0 || unit === "" || !plain3.startsWith(start) || /^[\\w/]/.test(plain3.slice(start.length))) {
      return literalLines(plain3);
    }
    const lastSign = native("RIGHT", given(name), "1");
    const endsInDigit = native("ISNUMBER", native("FIND", lastSign, literal("0123456789.,")));
    const hasMetres = native("ISNUMBER", native("FIND", literal("m"), given(name)));
    const unlessTyped = native("IF", endsInDigit, literal(start), literal(""));
    const shownUnit = unit === "%" ? unlessTyped : native("IF", hasMetres, literal(""), unlessTyped);
    const rest = plain3.slice(start.length);
    return rest === "" ? shownUnit : \`\${shownUnit}&\${literalLines(rest)}\`;
  };
  const pieces = step.shown.map((piece, index) => {
    if (typeof piece === "string") {
      const before = step.shown[index - 1];
      return following2({ words: piece, name: typeof before === "object" ? before.given : void 0 });
    }
    const cell = given(piece.given);
    const around = [piece.before, void 0, piece.after].map(
      (plain3, place) => place === 1 ? cell : plain3 === void 0 ? "" : following2({ words: plain3, name: place === 2 ? piece.given : void 0 })
    );
    const joined2 = around.filter((part) => part !== "").join("&");
    return joined2 === cell ? cell : native("IF", \`\${cell}=""\`, literal(""), joined2);
  });
  const shown = [native("CHAR", "10"), ...pieces].join("&");
  return computed(\`=\${literalLines(step.title)}&\${native("IF", native("ISNUMBER", lineCell), shown, literal(""))}\`);
}

// src/lab/readingNotes.ts
var anyVolume = 100;
var roundReadings = { g: [1, 10], mL: [10, 100] };
var anyReadings = [1];
function toolsOf({ tools, instrument, unit }, reading, givens) {
  const load = unit === "g" ? reading : 10;
  return (tools != null ? tools : instrument === "bench" ? [] : [{ tool: instrument }]).map((used) => {
    if (used.tool === "balance") return { tool: used.tool, mass: grams(load) };
    const name = "volume" in used ? used.volume : void 0;
    const size2 = name === void 0 || isBlank(givens[name]) ? void 0 : readQuantity(givens[name], "volume", name, { decimalMark: "point" });
    const held = unit === "mL" && name === void 0 ? reading : anyVolume;
    return { tool: used.tool, volume: millilitres((size2 == null ? void 0 : size2.ok) ? size2.value.value : held) };
  });
}
var shortLimit = (limit) => String(Number(limit.toPrecision(2)));
function readingNotes(activity, { settings, givens }) {
  var _a;
  const notes = [];
  for (const step of activity.steps) {
    if (step.kind !== "measured") continue;
    const examples = [];
    let words2 = "";
    for (const reading of (_a = roundReadings[step.unit]) != null ? _a : anyReadings) {
      const tolerance = readingTolerance(
        { expected: reading, tools: toolsOf(step, reading, givens), techniqueShare: step.techniqueShare },
        settings
      );
      if (!tolerance.ok) return tolerance;
      examples.push({ reading: String(reading), limit: shortLimit(tolerance.value.limit) });
      words2 = tolerance.value.words;
    }
    notes.push({ step: step.title, lines: [...words2.split("\\n"), toleranceTexts.examples(step.unit, examples)] });
  }
  return success(notes);
}

// src/lab/setup.ts
var settingNames = [
  "activity",
  "periods",
  "figures",
  "atomic-weight decimals",
  "decimal mark",
  "judge figures",
  "highest help level",
  "glassware class",
  "glassware standard",
  "balance",
  "allowance for technique",
  "spare",
  "spare glassware",
  "work the dilution from",
  "concentrated reagents",
  "seed"
];

// src/workbook/settingOptions.ts
var settingOptions = {
  periods: ["1", "2"],
  "decimal mark": ["point", "comma"],
  "judge figures": ["yes", "no"],
  "highest help level": ["0", "1", "2", "3"],
  "glassware class": ["A", "B"],
  "glassware standard": ["ISO", "ASTM"],
  "work the dilution from": ["nominal stock", "real stock"],
  "concentrated reagents": ["staff", "students"]
};

// src/workbook/planPlanSheet.ts
var sizes2 = (list2) => list2.map(String).join("; ");
function settingLines({ setup, activity, invented }) {
  var _a;
  const { settings: names2, settingNotes: notes } = words;
  const { shelf } = setup;
  const lines = settingNames.map((name) => {
    const options = settingOptions[name];
    const value = name === "balance" ? \`\${shelf.balanceReadabilityG} g\` : setup.settings[name];
    return { name, value, about: notes[name], ...options === void 0 ? {} : { options } };
  });
  lines.push(
    { name: names2.flasks, value: sizes2(shelf.flasksMl), about: notes[names2.flasks] },
    { name: names2.pipettes, value: sizes2(shelf.pipettesMl), about: notes[names2.pipettes] },
    { name: names2.balanceRange, value: \`\${shelf.balanceMaxG} g\`, about: notes[names2.balanceRange] },
    {
      name: names2.numbers,
      value: setup.ownNumbers ? names2.ownNumbers : names2.sharedNumbers,
      about: notes.numbers,
      options: [names2.ownNumbers, names2.sharedNumbers]
    }
  );
  for (const { name } of activity.givens) {
    lines.push({ name: \`\${names2.startPrefix}\${name}\`, value: (_a = setup.givens[name]) != null ? _a : "", about: notes.start });
  }
  lines.push({ name: names2.layout, value: String(layoutVersion), about: notes.layout });
  if (invented) lines.push({ name: names2.invented, value: "yes", about: notes.invented });
  return lines;
}
function readingLines({ setup, activity }) {
  const settings = { ...setup.settings, balance: \`\${setup.shelf.balanceReadabilityG} g\` };
  const notes = readingNotes(activity, { settings, givens: setup.givens });
  if (!notes.ok || notes.value.length === 0) return [];
  return [
    [words.plan.readings, words.plan.readingsAbout],
    ...notes.value.flatMap(
      ({ step, lines }) => lines.map((line, index) => [index === 0 ? step : "", line])
    )
  ];
}
function planPlaces(lesson) {
  const first = planRows.settingsHeading;
  const readings = readingLines(lesson).length;
  const blankRow = first + settingLines(lesson).length + 1 + (readings === 0 ? 0 : readings + 1);
  const headingRow4 = blankRow + 1;
  return {
    settings: { row: first, column: 1, rows: blankRow - first + 1, columns: 2 },
    keys: { row: headingRow4, column: planColumns.key, rows: 1 + lesson.teams.length + spareTeamLines, columns: 1 },
    givenHeadings: {
      row: headingRow4,
      column: planColumns.firstGiven,
      rows: 1,
      columns: Math.max(1, lesson.givenNames.length)
    }
  };
}
function planPlanSheet(lesson, names2) {
  const { plan } = words;
  const places = planPlaces(lesson);
  const lines = settingLines(lesson);
  const readings = readingLines(lesson);
  const readingsRow = planRows.settingsHeading + lines.length + 2;
  const givens = lesson.givenNames;
  const headingRow4 = places.keys.row;
  const todayColumn = planColumns.firstGiven + givens.length;
  const columnCount = Math.max(todayColumn, 8);
  const lastRow = headingRow4 + lesson.teams.length;
  const settingCells = [
    [text(plan.setting), text(plan.value), text(plan.about)],
    ...lines.map(({ name, value, about }) => [text(name), text(value), text(about)])
  ];
  const teamCells = [
    [text(plan.key), text(plan.className), text(plan.team), ...givens.map(text)],
    ...lesson.teams.map((team) => [
      text(team.key),
      text(team.className),
      text(team.team),
      ...givens.map((name) => {
        var _a;
        return text((_a = team.givens[name]) != null ? _a : "");
      })
    ])
  ];
  const choices = [];
  lines.forEach(({ options, about }, index) => {
    if (options !== void 0) {
      choices.push({
        area: { row: planRows.settingsHeading + 1 + index, column: 2, rows: 1, columns: 1 },
        options,
        help: about
      });
    }
  });
  choices.push({
    area: { row: headingRow4 + 1, column: todayColumn, rows: lesson.teams.length + spareTeamLines, columns: 1 },
    options: [plan.absent],
    help: plan.absentHelp
  });
  const looks2 = [
    { row: planRows.title, column: 1, rows: 1, columns: columnCount, look: "title" },
    { row: planRows.note, column: 1, rows: 2, columns: columnCount, look: "note" },
    { row: planRows.settingsHeading, column: 1, rows: 1, columns: 3, look: "heading" },
    { row: planRows.settingsHeading + 1, column: 1, rows: lines.length, columns: 1, look: "setting name" },
    { row: planRows.settingsHeading + 1, column: 2, rows: lines.length, columns: 1, look: "setting value" },
    { row: planRows.settingsHeading + 1, column: 3, rows: lines.length, columns: 1, look: "note" },
    { row: headingRow4, column: 1, rows: 1, columns: 4 + givens.length, look: "heading" }
  ];
  if (readings.length > 0) {
    looks2.push(
      { row: readingsRow, column: 1, rows: 1, columns: 1, look: "heading" },
      { row: readingsRow, column: 2, rows: 1, columns: columnCount - 1, look: "note" },
      { row: readingsRow + 1, column: 1, rows: readings.length - 1, columns: 1, look: "setting name" },
      { row: readingsRow + 1, column: 2, rows: readings.length - 1, columns: columnCount - 1, look: "note" }
    );
  }
  if (lesson.teams.length > 0) {
    looks2.push(
      { row: headingRow4 + 1, column: 1, rows: lesson.teams.length, columns: 1, look: "note" },
      { row: headingRow4 + 1, column: 2, rows: lesson.teams.length, columns: 3 + givens.length, look: "setting value" }
    );
  }
  return {
    name: names2.plan,
    role: { kind: "plan" },
    rowCount: lastRow + spareTeamLines,
    columnCount,
    columnWidths: [210, 170, 130, ...Array.from({ length: columnCount - 3 }, () => 100)],
    hiddenColumns: void 0,
    frozenRows: 1,
    frozenColumns: 0,
    blocks: [
      {
        row: planRows.title,
        column: 1,
        cells: [[text(plan.title)], [text(plan.note)], [text(lesson.invented ? plan.invented : plan.notice)]]
      },
      { row: planRows.settingsHeading, column: 1, cells: settingCells },
      ...readings.length > 0 ? [{ row: readingsRow, column: 1, cells: readings.map((line) => line.map(text)) }] : [],
      { row: headingRow4, column: 1, cells: teamCells },
      { row: headingRow4, column: todayColumn, cells: [[text(plan.today)]] }
    ],
    checks: [],
    looks: looks2,
    formats: [],
    states: [],
    choices,
    writable: [],
    unprotected: [
      { row: planRows.settingsHeading + 1, column: 2, rows: lines.length, columns: 1 },
      { row: headingRow4 + 1, column: 2, rows: lesson.teams.length + spareTeamLines, columns: 3 + givens.length }
    ],
    spill: [],
    identity: {
      firstRow: planRows.settingsHeading,
      columns: [1],
      rows: [
        ...settingCells.map(([name]) => [(name == null ? void 0 : name.kind) === "text" ? name.text : ""]),
        [""],
        ...readings.length > 0 ? [...readings.map(([title]) => [title]), [""]] : [],
        [plan.key],
        ...lesson.teams.map(({ key }) => [key])
      ]
    },
    carried: []
  };
}

// src/lab/texts/poll.ts
var pollTexts = {
  statements: [
    "I knew what to do next.",
    "I can explain what is in our flask.",
    "The checks and hints helped us think.",
    "Everybody in our team had a part in it."
  ],
  /** From most to least; the first two count as agreeing. */
  scale: ["agree fully", "agree mostly", "agree a little", "do not agree"],
  from: { student: "one student", team: "a team" },
  /** For the day's record: counts and plain words. */
  line: ({ answers, best, least }) => \`\${answersInAll(answers)} Most agreed with “\${best.statement}” (\${best.agree} of \${best.marked}), fewest with “\${least.statement}” (\${least.agree} of \${least.marked}).\`,
  /** Where no statement stands out from the others. */
  lineAlike: ({ answers, each: { agree, marked: marked2 } }) => \`\${answersInAll(answers)} \${agree === marked2 ? "Every statement was agreed with each time." : agree === 0 ? "No statement was agreed with." : \`Every statement was agreed with as often (\${agree} of \${marked2}).\`}\`
};
var answersInAll = (answers) => \`\${answers} \${answers === 1 ? "answer" : "answers"}.\`;

// src/workbook/planPollSheet.ts
var answerRows = 240;
var { statements, scale, from } = pollTexts;
function planPollSheet(lesson, names2) {
  const { poll } = words;
  const answers = (column, columns4 = 1) => ({
    row: pollRows.firstAnswer,
    column,
    rows: answerRows,
    columns: columns4
  });
  const rowNames = Array.from({ length: answerRows }, (_, index) => [columnLetters(index + 1)]);
  const counts = {
    row: pollRows.firstCount,
    column: pollColumns.firstStatement,
    rows: scale.length,
    columns: statements.length
  };
  const countLine = (word, index) => [
    text(word),
    ...statements.map((_, place) => {
      const column = pollColumns.firstStatement + place;
      return computed(
        \`=\${native("COUNTIF", fixedBelow({ row: pollRows.firstAnswer, column }), wordCell(pollRows.firstCount + index))}\`
      );
    })
  ];
  return {
    name: names2.poll,
    role: { kind: "poll" },
    rowCount: pollRows.firstAnswer + answerRows - 1,
    columnCount: pollColumns.marker + 1,
    columnWidths: [44, 90, 120, 110, ...statements.map(() => 130), 300, 20, 20, 20],
    hiddenColumns: { column: pollColumns.marker - 1, count: 3 },
    frozenRows: 1,
    frozenColumns: 0,
    blocks: [
      { row: pollRows.title, column: 1, cells: [[text(poll.title)], ...poll.notes.map((note) => [text(note)])] },
      { row: pollRows.invented, column: 1, cells: [[text(lesson.invented ? words.class.invented : "")]] },
      { row: pollRows.title, column: pollColumns.marker, cells: [[text(pollMarker), text(String(layoutVersion))]] },
      { row: pollRows.firstCount - 1, column: pollColumns.from, cells: [[text(poll.soFar), ...statements.map(text)]] },
      { row: pollRows.firstCount, column: pollColumns.from, cells: scale.map(countLine) },
      {
        row: pollRows.headings,
        column: 1,
        cells: [
          [
            text(poll.row),
            text(poll.day),
            text(poll.className),
            text(poll.from),
            ...statements.map(text),
            text(poll.openLine)
          ]
        ]
      },
      { row: pollRows.firstAnswer, column: pollColumns.row, cells: rowNames.map((line) => line.map(text)) }
    ],
    checks: [],
    looks: [
      { row: pollRows.title, column: 1, rows: 1, columns: pollColumns.openLine, look: "title" },
      { row: pollRows.title + 1, column: 1, rows: 1 + poll.notes.length, columns: pollColumns.openLine, look: "note" },
      { row: pollRows.firstCount - 1, column: pollColumns.from, rows: 1, columns: 1 + statements.length, look: "heading" },
      { row: pollRows.firstCount, column: pollColumns.from, rows: scale.length, columns: 1, look: "setting name" },
      { ...counts, look: "progress" },
      { row: pollRows.headings, column: 1, rows: 1, columns: pollColumns.openLine, look: "heading" },
      { ...answers(pollColumns.row, 2), look: "quiet" },
      { ...answers(pollColumns.className, pollColumns.openLine - pollColumns.className + 1), look: "helper" },
      { row: pollRows.title, column: pollColumns.marker, rows: 1, columns: 2, look: "quiet" }
    ],
    formats: [{ ...counts, format: "General" }],
    states: [],
    choices: [
      {
        area: answers(pollColumns.className),
        options: [...new Set(lesson.teams.map(({ className }) => className))],
        help: poll.classHelp
      },
      { area: answers(pollColumns.from), options: [from.student, from.team], help: poll.fromHelp },
      { area: answers(pollColumns.firstStatement, statements.length), options: scale, help: poll.scaleHelp }
    ],
    writable: [answers(pollColumns.day, pollColumns.openLine - pollColumns.day + 1)],
    unprotected: [],
    spill: [],
    // The headings are left out: they may be worded anew over answers that stand where they are.
    identity: { firstRow: pollRows.firstAnswer, columns: [pollColumns.row], rows: rowNames },
    carriesAddedRows: true,
    carried: Array.from({ length: pollColumns.openLine - pollColumns.day + 1 }, (_, index) => pollColumns.day + index)
  };
}
var wordCell = (row) => fixed({ row, column: pollColumns.from });

// src/lab/preparation/cautionBlocks.ts
function cautionBlocks(uses, staffMade) {
  var _a, _b, _c;
  const formulas = /* @__PURE__ */ new Map();
  const strengths = /* @__PURE__ */ new Map();
  const bottles = /* @__PURE__ */ new Map();
  const weighed = /* @__PURE__ */ new Set();
  const pours = (text2, bottle) => {
    var _a2;
    return bottles.set(text2, ((_a2 = bottles.get(text2)) != null ? _a2 : /* @__PURE__ */ new Set()).add(bottle));
  };
  for (const { formula: formula2, from: from2 } of staffMade) {
    if (from2.kind === "solid") weighed.add(formula2.text);
    else pours(formula2.text, from2.massPercent);
  }
  for (const use of uses) {
    const { text: text2 } = use.formula;
    formulas.set(text2, use.formula);
    if (use.solid || use.driedCount > 0) weighed.add(text2);
    const known = (_a = strengths.get(text2)) != null ? _a : /* @__PURE__ */ new Set();
    for (const portion of [use.made, use.taken, use.madeByStaff, ...use.diluted]) {
      if (portion) known.add(portion.molarity);
    }
    strengths.set(text2, known);
    if (use.poured) pours(text2, use.poured.massPercent);
  }
  const blocks = [];
  for (const [text2, formula2] of formulas) {
    if (weighed.has(text2))
      blocks.push({ formula: text2, form: { kind: "solid" }, cautions: cautionsAt(formula2, "undiluted") });
    for (const massPercent of (_b = bottles.get(text2)) != null ? _b : []) {
      blocks.push({
        formula: text2,
        form: { kind: "bottle", massPercent },
        cautions: cautionsAt(formula2, { massPercent })
      });
    }
    const alike = /* @__PURE__ */ new Map();
    for (const molarity of [...(_c = strengths.get(text2)) != null ? _c : []].sort((one, other) => other - one)) {
      const found = cautionsAt(formula2, { molarity });
      const key = JSON.stringify([found.signalWord, found.statements]);
      const block = alike.get(key);
      if (block) block.from = molarity;
      else alike.set(key, { from: molarity, to: molarity, cautions: found });
    }
    for (const { from: from2, to, cautions: found } of alike.values()) {
      blocks.push({ formula: text2, form: { kind: "solution", from: from2, to }, cautions: found });
    }
  }
  return blocks;
}

// src/lab/preparation/spare.ts
function spareShare(setting) {
  var _a;
  const typed2 = (_a = /^\\s*(\\d+(?:[.,]\\d+)?)\\s*%?\\s*$/.exec(setting)) == null ? void 0 : _a[1];
  const share = Number(typed2 == null ? void 0 : typed2.replace(",", ".")) / 100;
  return share >= 0 && share <= 1 ? share : void 0;
}
function roundedUp(value, step) {
  const steps = Math.ceil(value / step - 1e-9);
  const decimals = Math.max(0, Math.ceil(-Math.log10(step)));
  return Number((steps * step).toFixed(decimals));
}
var withSparePieces = (count2, share) => count2 + Math.ceil(count2 * share - 1e-9);

// src/lab/preparation/glassware.ts
function pipettesFor(volumeMl, { pipettesMl }) {
  const pipette = (sizeMl) => ({ kind: "pipette", sizeMl });
  const single = pipettesMl.find((size2) => isSame(size2, volumeMl));
  if (single !== void 0) return [pipette(single)];
  for (const first of pipettesMl) {
    const second = pipettesMl.find((size2) => isSame(first + size2, volumeMl));
    if (second !== void 0) return first === second ? [pipette(first)] : [pipette(first), pipette(second)];
  }
  return [{ kind: "graduated pipette", sizeMl: Number(volumeMl.toPrecision(3)), isOnShelf: false }];
}
function piecesOf(use, shelf) {
  const pieces = use.flasksMl.map(
    (sizeMl) => shelf.flasksMl.some((size2) => isSame(size2, sizeMl)) ? { kind: "volumetric flask", sizeMl } : { kind: "volumetric flask", sizeMl, isOnShelf: false }
  );
  for (const volume of use.deliveredMl) pieces.push(...pipettesFor(volume, shelf));
  if (use.deliveredMl.length > 0) pieces.push({ kind: "pipette filler" }, { kind: "beaker" });
  if (use.solid) {
    pieces.push(
      { kind: "beaker" },
      { kind: "funnel" },
      { kind: "weighing boat" },
      { kind: "spatula" },
      { kind: "stirring rod" }
    );
  }
  if (use.poured) pieces.push({ kind: "measuring cylinder" }, { kind: "beaker" }, { kind: "stirring rod" });
  if (use.flasksMl.length > 0) pieces.push({ kind: "dropper" }, { kind: "wash bottle" });
  for (let dried = 0; dried < use.driedCount; dried += 1) pieces.push({ kind: "evaporating dish" });
  for (let closed = 0; closed < use.closedCount; closed += 1) {
    pieces.push({ kind: "closed vessel" }, { kind: "thermometer" });
  }
  return pieces;
}
var order = [
  "volumetric flask",
  "pipette",
  "graduated pipette",
  "pipette filler",
  "measuring cylinder",
  "beaker",
  "funnel",
  "weighing boat",
  "spatula",
  "stirring rod",
  "dropper",
  "wash bottle",
  "evaporating dish",
  "closed vessel",
  "thermometer"
];
function glasswareCounts(uses, { shelf, spare }) {
  var _a, _b, _c;
  const counts = /* @__PURE__ */ new Map();
  for (const use of uses) {
    for (const piece of piecesOf(use, shelf)) {
      const key = \`\${piece.kind} \${(_a = piece.sizeMl) != null ? _a : ""}\`;
      const line = (_b = counts.get(key)) != null ? _b : { piece, byClass: /* @__PURE__ */ new Map() };
      line.byClass.set(use.team.className, ((_c = line.byClass.get(use.team.className)) != null ? _c : 0) + 1);
      counts.set(key, line);
    }
  }
  return [...counts.values()].map(({ piece, byClass }) => {
    const perClass = [...byClass.values()];
    const atOnce = Math.max(...perClass);
    return {
      kind: piece.kind,
      sizeMl: piece.sizeMl,
      atOnce,
      withSpare: withSparePieces(atOnce, spare),
      allDay: perClass.reduce((sum, count2) => sum + count2, 0),
      isOnShelf: piece.isOnShelf !== false
    };
  }).sort(
    (one, other) => {
      var _a2, _b2;
      return order.indexOf(one.kind) - order.indexOf(other.kind) || ((_a2 = one.sizeMl) != null ? _a2 : 0) - ((_b2 = other.sizeMl) != null ? _b2 : 0);
    }
  );
}

// src/lab/preparation/staffSolutions.ts
var rinseMl = 10;
function flaskFor(volumeMl, { flasksMl }) {
  const largest = Math.max(...flasksMl);
  const choices = flasksMl.map((flaskMl) => ({ flaskMl, fillings: Math.max(1, Math.ceil(volumeMl / flaskMl - 1e-9)) })).filter(({ flaskMl, fillings }) => fillings <= 4 || flaskMl === largest);
  return choices.reduce((best, choice) => {
    const waste = choice.flaskMl * choice.fillings - best.flaskMl * best.fillings;
    return waste < 0 || waste === 0 && choice.fillings < best.fillings ? choice : best;
  });
}
function staffSolutions(uses, { shelf, spare }) {
  const needs = /* @__PURE__ */ new Map();
  const add = (key, need, volume) => {
    var _a;
    const line = (_a = needs.get(key)) != null ? _a : { ...need, teams: 0, neededMl: 0 };
    line.teams += 1;
    line.neededMl += volume;
    needs.set(key, line);
  };
  for (const { taken, madeByStaff } of uses) {
    if (taken) {
      const table = bottleOf(taken.formula.text);
      const bottle = table && { massPercent: percent(table.massPercent), density: table.density, isFromTable: true };
      const { formula: formula2, molarity, typed: typed2 } = taken;
      add(\`\${formula2.text} \${molarity}\`, { formula: formula2, molarity, typed: typed2, bottle }, taken.volume + rinseMl);
    }
    if (madeByStaff) {
      const { formula: formula2, molarity, massPercent, density, volume, typed: typed2 } = madeByStaff;
      const bottle = { massPercent, density, isFromTable: false };
      add(\`\${formula2.text} \${molarity} \${massPercent} \${density}\`, { formula: formula2, molarity, typed: typed2, bottle }, volume);
    }
  }
  return [...needs.values()].map((need) => solutionOf(need, { shelf, spare })).sort(
    (one, other) => one.formula.text === other.formula.text ? other.molarity - one.molarity : one.formula.text < other.formula.text ? -1 : 1
  );
}
function solutionOf({ formula: formula2, molarity, typed: typed2, bottle, teams: teams2, neededMl }, { shelf, spare }) {
  const withSpareMl = roundedUp(neededMl * (1 + spare), 1);
  const { flaskMl, fillings } = flaskFor(withSpareMl, shelf);
  const mass = molarMass(formula2);
  const perMole = mass.ok ? mass.value : Number.NaN;
  const shared = {
    formula: formula2,
    molarity,
    ...typed2 === void 0 ? {} : { typed: typed2 },
    teams: teams2,
    neededMl,
    withSpareMl,
    flaskMl,
    fillings
  };
  const strength = bottle && reagentMolarity({
    molarMass: perMole,
    massPercent: bottle.massPercent,
    density: gramsPerMillilitre(bottle.density)
  });
  if (bottle && (strength == null ? void 0 : strength.ok) && strength.value > molarity) {
    const each2 = molarity * flaskMl / strength.value;
    return {
      ...shared,
      from: {
        kind: "bottle",
        ...bottle,
        millilitresEach: Number(each2.toFixed(1)),
        millilitresInAll: Number((each2 * fillings).toFixed(1))
      }
    };
  }
  const each = molarity * flaskMl * perMole / 1e3;
  const step = shelf.balanceReadabilityG;
  const places = Math.max(0, Math.round(-Math.log10(step)));
  const shown = Number((Math.round(each / step) * step).toFixed(places));
  return {
    ...shared,
    from: { kind: "solid", gramsEach: shown, gramsInAll: Number((shown * fillings).toFixed(places)) }
  };
}

// src/lab/dilutionsIn.ts
var dilutionsIn = ({ steps }) => steps.filter((step) => step.kind === "calculated" && step.quantity === "diluted molarity").length;

// src/lab/preparation/teamUse.ts
var weighingsOfResidue = 3;
var weighingsOfPortion = 2;
function teamUse(activity, team, {
  decimalMark,
  studentsDilute
}) {
  var _a;
  const { numbers } = activity;
  const formula2 = readFormula(team.givens[numbers.formula], numbers.formula);
  if (!formula2.ok) return formula2;
  const mass = molarMass(formula2.value);
  if (!mass.ok) return mass;
  let trouble;
  const read = (name, kind) => {
    const cell = team.givens[name];
    const quantity = isBlank(cell) ? failure({
      code: "given-missing",
      argument: name,
      expected: "a value",
      received: "a blank",
      advice: "Fill in the cell in the Plan.",
      brief: name
    }) : readQuantity(cell, kind, name, { decimalMark });
    if (quantity.ok) return quantity.value.value;
    trouble != null ? trouble : trouble = quantity;
    return Number.NaN;
  };
  const use = {
    team,
    formula: formula2.value,
    diluted: [],
    flasksMl: [],
    deliveredMl: [],
    driedCount: 0,
    closedCount: 0,
    weighings: []
  };
  const portion = (molarity, volume, given) => {
    var _a2;
    const cell = (given === void 0 ? "" : (_a2 = team.givens[given]) != null ? _a2 : "").trim();
    return { formula: formula2.value, molarity, volume, ...isBareNumber(cell) ? { typed: cell } : {} };
  };
  const { solid, dilution, reagent, serial, residue, density } = numbers;
  if (solid) {
    const molarity = read(solid.molarity, "concentration");
    const volume = read(solid.flask, "volume");
    const isPure = solid.purity === void 0 || isBlank(team.givens[solid.purity]);
    const purity = isPure ? void 0 : read((_a = solid.purity) != null ? _a : "", "percent");
    if (trouble) return trouble;
    const weighed = soluteMass({ molarMass: mass.value, molarity, volume, purity });
    if (!weighed.ok) return weighed;
    use.solid = { mass: weighed.value, ...purity === void 0 ? {} : { purity } };
    use.made = portion(molarity, volume, solid.molarity);
    use.flasksMl = [volume];
    use.weighings = [weighed.value];
  }
  if (dilution) {
    const stock = read(dilution.stock, "concentration");
    const target = read(dilution.target, "concentration");
    const finalVolume = read(dilution.volume, "volume");
    if (trouble) return trouble;
    const taken = stockVolume({ stock, target, finalVolume });
    if (!taken.ok) return taken;
    use[solid ? "takenFromOwn" : "taken"] = portion(stock, taken.value, dilution.stock);
    use.diluted = [portion(target, finalVolume, dilution.target)];
    use.flasksMl = [...use.flasksMl, finalVolume];
    use.deliveredMl = [taken.value];
  }
  if (serial) {
    const stock = read(serial.stock, "concentration");
    const taken = read(serial.portion, "volume");
    const flask = read(serial.flask, "volume");
    if (trouble) return trouble;
    use.taken = portion(stock, taken, serial.stock);
    const flasks = Array.from({ length: dilutionsIn(activity) }, (_, index) => index + 1);
    use.diluted = flasks.map((times) => portion(molesPerLitre(stock * (taken / flask) ** times), flask));
    use.flasksMl = flasks.map(() => flask);
    use.deliveredMl = [taken];
  }
  if (reagent) {
    const massPercent = read(reagent.massPercent, "percent");
    const density2 = read(reagent.density, "density");
    const target = read(reagent.target, "concentration");
    const volume = read(reagent.volume, "volume");
    if (trouble) return trouble;
    const bottle = reagentMolarity({ molarMass: mass.value, massPercent, density: density2 });
    if (!bottle.ok) return bottle;
    const taken = stockVolume({ stock: bottle.value, target, finalVolume: volume });
    if (!taken.ok) return taken;
    if (studentsDilute) {
      use.poured = { volume: taken.value, massPercent };
      use.diluted = [portion(target, volume, reagent.target)];
      use.flasksMl = [volume];
      return success(use);
    }
    use.madeByStaff = { ...portion(target, volume, reagent.target), massPercent, density: density2 };
  }
  if (residue) {
    const molarity = read(residue.molarity, "concentration");
    const volume = read(residue.portion, "volume");
    if (trouble) return trouble;
    const left = soluteMass({ molarMass: mass.value, molarity, volume });
    if (!left.ok) return left;
    use.taken = portion(molarity, volume, residue.molarity);
    use.deliveredMl = [millilitres(volume)];
    use.driedCount = 1;
    use.weighings = Array.from({ length: weighingsOfResidue }, () => left.value);
  }
  if (density) {
    const molarity = read(density.molarity, "concentration");
    const volume = read(density.portion, "volume");
    const line = {
      lighterPercent: read(density.lighterPercent, "percent"),
      lighterDensity: read(density.lighterDensity, "density"),
      heavierPercent: read(density.heavierPercent, "percent"),
      heavierDensity: read(density.heavierDensity, "density")
    };
    if (trouble) return trouble;
    const expected = densityOfMolarity({ ...line, molarMass: mass.value, molarity });
    if (!expected.ok) return expected;
    use.taken = portion(molarity, volume, density.molarity);
    use.deliveredMl = [volume];
    use.closedCount = 1;
    use.weighings = Array.from({ length: weighingsOfPortion }, () => grams(expected.value * volume));
  }
  return success(use);
}

// src/lab/preparation/dayPreparation.ts
var usualSpare = 0.1;
var teamsPerBalance = 3;
function dayPreparation({ activity, teams: teams2, shelf, settings }) {
  var _a, _b;
  const spare = (_a = spareShare(settings.spare)) != null ? _a : usualSpare;
  const glasswareSpare = (_b = spareShare(settings["spare glassware"])) != null ? _b : usualSpare;
  const decimalMark = settings["decimal mark"] === "comma" ? "comma" : "point";
  const studentsDilute = settings["concentrated reagents"] === "students";
  const uses = [];
  const problems = [];
  for (const team of teams2) {
    const use = teamUse(activity, team, { decimalMark, studentsDilute });
    if (use.ok) uses.push(use.value);
    else problems.push({ team, message: errorText(use.error) });
  }
  const staffMade = staffSolutions(uses, { shelf, spare });
  const filledMl = uses.flatMap(({ flasksMl }) => flasksMl).reduce((sum, size2) => sum + size2, 0);
  const madeMl = staffMade.reduce((sum, { flaskMl, fillings }) => sum + flaskMl * fillings, 0);
  return {
    activity,
    classes: classesOf(teams2),
    spare,
    glasswareSpare,
    uses,
    solids: solidTotals(uses, { spare, step: shelf.balanceReadabilityG }),
    ownStocks: ownStockTotals(uses),
    staffMade,
    poured: pouredTotals(uses, spare),
    glassware: glasswareCounts(uses, { shelf, spare: glasswareSpare }),
    balance: balanceNeed(uses, shelf),
    waterMl: roundedUp((filledMl + madeMl) * (1 + spare), 10),
    cautions: cautionBlocks(uses, staffMade),
    problems
  };
}
function classesOf(teams2) {
  var _a;
  const counts = /* @__PURE__ */ new Map();
  for (const { className } of teams2) counts.set(className, ((_a = counts.get(className)) != null ? _a : 0) + 1);
  return [...counts].map(([name, count2]) => ({ name, teams: count2 }));
}
function solidTotals(uses, { spare, step }) {
  var _a, _b;
  const totals = /* @__PURE__ */ new Map();
  for (const { formula: formula2, solid } of uses) {
    if (!solid) continue;
    const key = \`\${formula2.text} \${(_a = solid.purity) != null ? _a : ""}\`;
    const line = (_b = totals.get(key)) != null ? _b : { formula: formula2.text, purityPercent: solid.purity, teams: 0, grams: 0 };
    line.teams += 1;
    line.grams += solid.mass;
    totals.set(key, line);
  }
  return [...totals.values()].map((line) => ({
    ...line,
    grams: roundedUp(line.grams, step),
    gramsWithSpare: roundedUp(line.grams * (1 + spare), step)
  }));
}
function pouredTotals(uses, spare) {
  var _a;
  const totals = /* @__PURE__ */ new Map();
  for (const { formula: formula2, poured } of uses) {
    if (!poured) continue;
    const key = \`\${formula2.text} \${poured.massPercent}\`;
    const line = (_a = totals.get(key)) != null ? _a : {
      formula: formula2.text,
      massPercent: poured.massPercent,
      teams: 0,
      millilitres: 0
    };
    line.teams += 1;
    line.millilitres += poured.volume;
    totals.set(key, line);
  }
  return [...totals.values()].map((line) => ({
    ...line,
    millilitres: roundedUp(line.millilitres, 0.1),
    withSpare: roundedUp(line.millilitres * (1 + spare), 1)
  }));
}
function ownStockTotals(uses) {
  var _a, _b;
  const totals = /* @__PURE__ */ new Map();
  for (const { formula: formula2, made, takenFromOwn } of uses) {
    if (!made) continue;
    const { molarity } = made;
    const line = (_a = totals.get(formula2.text)) != null ? _a : {
      formula: formula2.text,
      teams: 0,
      from: molarity,
      to: molarity,
      madeMl: 0,
      takenMl: 0
    };
    line.teams += 1;
    line.from = Math.min(line.from, molarity);
    line.to = Math.max(line.to, molarity);
    line.madeMl += made.volume;
    line.takenMl += (_b = takenFromOwn == null ? void 0 : takenFromOwn.volume) != null ? _b : 0;
    totals.set(formula2.text, line);
  }
  return [...totals.values()].map((line) => ({ ...line, takenMl: Number(line.takenMl.toFixed(1)) }));
}
function balanceNeed(uses, shelf) {
  const masses = uses.flatMap(({ weighings }) => weighings);
  if (masses.length === 0) return void 0;
  const teamsAtOnce = Math.max(
    ...classesOf(uses.filter(({ weighings }) => weighings.length > 0).map(({ team }) => team)).map(
      ({ teams: teams2 }) => teams2
    )
  );
  const shown = (mass) => Number(mass.toFixed(Math.max(0, Math.round(-Math.log10(shelf.balanceReadabilityG)))));
  return {
    weighings: masses.length,
    smallestG: shown(Math.min(...masses)),
    largestG: shown(Math.max(...masses)),
    readabilityG: shelf.balanceReadabilityG,
    maxG: shelf.balanceMaxG,
    balances: Math.ceil(teamsAtOnce / teamsPerBalance)
  };
}

// src/chemistry/pictogramNamed.ts
var names = {
  "01": "exploding bomb",
  "02": "flame",
  "03": "flame over circle",
  "04": "gas cylinder",
  "05": "corrosion",
  "06": "skull and crossbones",
  "07": "exclamation mark",
  "08": "health hazard",
  "09": "environment"
};
var pictogramNamed = (code) => {
  var _a;
  return {
    code,
    name: (_a = names[code.replace("GHS", "")]) != null ? _a : code
  };
};

// src/lab/decimalText.ts
function decimalText(value, decimalMark) {
  const rounded = Number(value.toPrecision(6));
  const plain3 = Math.abs(rounded) >= 1e-6 || rounded === 0 ? String(rounded) : rounded.toFixed(9);
  return decimalMark === "comma" ? plain3.replace(".", ",") : plain3;
}

// src/lab/texts/preparation.ts
var count = (number2, one, more) => \`\${number2} \${number2 === 1 ? one : more}\`;
var preparationTexts = {
  sections: {
    day: "the day",
    solids: "to weigh out",
    stocks: "teams’ own stocks",
    make: "make beforehand",
    lay: "lay out",
    balance: "balance",
    water: "water",
    cautions: "cautions",
    disposal: "afterwards"
  },
  day: (classes, teams2) => \`\${count(classes, "class", "classes")}, \${count(teams2, "team", "teams")}\`,
  spareNote: ({ spare, glassware }) => \`Spare: \${spare} of solids, stocks and water, \${glassware} of glassware. Change both in the Plan.\`,
  solid: (formula2, purity) => purity === "" ? \`\${formula2}, solid\` : \`\${formula2}, solid of \${purity} %\`,
  solidNote: (teams2) => teams2 === 1 ? "One team weighs its own portion." : \`\${teams2} teams weigh their own portions.\`,
  ownStock: (formula2, strength) => \`\${formula2}, \${strength}\`,
  ownStockNote: ({ teams: teams2, taken }) => \`Made by \${count(teams2, "team", "teams")}; for the dilutions they take \${taken} mL of it in all.\`,
  ownStockOnly: (teams2) => \`Made by \${count(teams2, "team", "teams")}.\`,
  made: (formula2, strength) => \`\${formula2}, \${strength}\`,
  madeFromSolid: ({
    each,
    flask,
    fillings,
    inAll
  }) => fillings === 1 ? \`Weigh \${each} g, dissolve it in about half the water, let it come to room temperature, make up to \${flask} mL, mix and label.\` : \`Fill a \${flask} mL flask \${fillings} times: \${each} g each time, \${inAll} g in all. Dissolve in about half the water, let it come to room temperature, make up to the mark, mix and label.\`,
  madeFromBottle: ({
    each,
    flask,
    fillings,
    inAll,
    label,
    isFromTable
  }) => [
    "Staff only, in the fume hood.",
    \`Water in the beaker first, about half of \${flask} mL; then let \${each} mL of the \${label} bottle run in slowly while stirring, never the other way round.\`,
    \`Let it cool, then make up to \${flask} mL, mix and label.\`,
    ...fillings === 1 ? [] : [\`Do this \${fillings} times, \${inAll} mL of the bottle in all.\`],
    ...isFromTable ? [
      "The strength of the bottle is from a supplier’s table: compare it with your label and work it out again if it differs."
    ] : []
  ].join(" "),
  inSidebar: "How, and how much of the bottle: under Prepare in the sidebar.",
  poured: (formula2, strength) => \`\${formula2}, \${strength}\`,
  pouredNote: (teams2) => \`Concentrated: \${count(teams2, "team dilutes", "teams dilute")} it because the Plan says so. Only where your school’s own assessment and the safety data sheet allow it: staff set out small portions in the fume hood and stand by; water in the beaker first, then the acid, slowly.\`,
  staffByDefault: (teams2) => \`\${count(teams2, "team calculates and watches", "teams calculate and watch")}; staff make it.\`,
  forTeams: (teams2, rinse) => \`For \${count(teams2, "team", "teams")}, with \${rinse} mL each to rinse the pipette.\`,
  glassware: {
    "volumetric flask": "volumetric flask",
    pipette: "pipette",
    "graduated pipette": "graduated pipette or burette",
    "pipette filler": "pipette filler",
    "measuring cylinder": "measuring cylinder",
    beaker: "beaker",
    funnel: "funnel",
    "weighing boat": "weighing boat",
    spatula: "spatula",
    "stirring rod": "stirring rod",
    dropper: "dropper",
    "wash bottle": "wash bottle with water",
    "evaporating dish": "evaporating dish",
    "closed vessel": "small vessel with a lid, to weigh a portion in",
    thermometer: "thermometer"
  },
  sized: (name, size2) => \`\${name} \${size2} mL\`,
  atOnce: (allDay) => \`At once, in the largest class; \${allDay} for the day if nothing is washed between classes.\`,
  notOnShelf: "The Plan’s shelf has no such size.",
  goggles: "eye protection",
  gogglesNote: "One for everybody in the room, staff included.",
  piece: (number2) => number2 === 1 ? "piece" : "pieces",
  weighings: (number2) => count(number2, "weighing", "weighings"),
  balances: (number2) => number2 === 1 ? "balance" : "balances",
  balanceNote: ({ smallest, largest, readability }) => \`Reads to \${readability} g; loads from \${smallest} to \${largest} g, the boat not counted. One balance for three teams is common practice.\`,
  tooFine: "The smallest load is less than a hundred times what the balance reads to: use a finer one for it.",
  tooHeavy: "The largest load is more than the balance takes.",
  water: "deionised water",
  waterNote: "Enough to fill every flask; more for rinsing.",
  form: (formula2, form, number2) => {
    if (form.kind === "solid") return \`\${formula2}, as it stands in the bottle\`;
    if (form.kind === "bottle") return \`\${formula2}, \${number2(form.massPercent)} % in the bottle\`;
    return \`\${formula2}, \${preparationTexts.strength(number2(form.from), number2(form.to))}\`;
  },
  strength: (from2, to) => from2 === to ? \`\${from2} mol/L\` : \`\${from2} to \${to} mol/L\`,
  noSignal: "no signal word known",
  fullLine: (text2, advice) => [text2, advice].filter((words2) => words2 !== "").join(" "),
  disposal: "what is left over",
  disposalNote: "Local rules decide what may go down a drain and what is collected. Ask the person who is in charge of it at your school before the day.",
  unreadable: "not counted",
  more: (rows) => \`\${rows} more lines: see Prepare in the sidebar.\`,
  solidStrength: "solid",
  bottleStrength: (massPercent) => \`\${massPercent} % by mass\`,
  forDay: "for the day"
};

// src/lab/preparation/preparationRows.ts
var fewTeams = 3;
function oneFigure(value, round) {
  const place = Math.floor(Math.log10(value));
  return Number((round(Number((value / 10 ** place).toPrecision(12))) * 10 ** place).toPrecision(1));
}
var coarse = (value) => oneFigure(value, Math.ceil);
function preparationRows(day, decimalMark, { forEveryone = false } = {}) {
  const number2 = (value) => decimalText(value, decimalMark);
  const percentText = (share) => \`\${number2(Number((share * 100).toFixed(2)))} %\`;
  const teams2 = day.uses.length + day.problems.length;
  const bare = { amount: void 0, withSpare: void 0, unit: "" };
  return [
    {
      section: "day",
      what: day.activity.title,
      ...bare,
      note: \`\${preparationTexts.day(day.classes.length, teams2)}. \${preparationTexts.spareNote({
        spare: percentText(day.spare),
        glassware: percentText(day.glasswareSpare)
      })}\`
    },
    ...day.problems.map(
      ({ team, message }) => ({
        section: "day",
        what: \`\${preparationTexts.unreadable}: \${team.className}, \${team.team}\`,
        ...bare,
        note: message
      })
    ),
    ...day.solids.map(
      ({ formula: formula2, purityPercent, teams: count2, grams: grams2, gramsWithSpare }) => ({
        section: "solids",
        what: preparationTexts.solid(formula2, purityPercent === void 0 ? "" : number2(purityPercent)),
        amount: forEveryone && count2 < fewTeams ? void 0 : grams2,
        withSpare: forEveryone && count2 < fewTeams ? coarse(gramsWithSpare) : gramsWithSpare,
        unit: "g",
        note: preparationTexts.solidNote(count2)
      })
    ),
    ...day.ownStocks.map(
      ({ formula: formula2, from: from2, to, teams: count2, madeMl, takenMl }) => ({
        section: "stocks",
        what: preparationTexts.ownStock(formula2, preparationTexts.strength(number2(from2), number2(to))),
        amount: madeMl,
        withSpare: void 0,
        unit: "mL",
        note: takenMl === 0 || forEveryone && count2 < fewTeams ? preparationTexts.ownStockOnly(count2) : preparationTexts.ownStockNote({ teams: count2, taken: number2(takenMl) })
      })
    ),
    ...day.staffMade.map((solution) => madeRow(solution, number2, forEveryone)),
    ...day.poured.map(
      ({ formula: formula2, massPercent, teams: count2, millilitres: millilitres2, withSpare }) => ({
        section: "make",
        what: preparationTexts.poured(formula2, preparationTexts.bottleStrength(number2(massPercent))),
        amount: forEveryone && count2 < fewTeams ? void 0 : millilitres2,
        withSpare: forEveryone && count2 < fewTeams ? coarse(withSpare) : withSpare,
        unit: "mL",
        note: preparationTexts.pouredNote(count2)
      })
    ),
    ...layRows(day, number2, forEveryone),
    ...balanceRows(day, number2, forEveryone),
    ...day.waterMl === 0 ? [] : [
      {
        section: "water",
        what: preparationTexts.water,
        amount: void 0,
        withSpare: Number((day.waterMl / 1e3).toFixed(2)),
        unit: "L",
        note: preparationTexts.waterNote
      }
    ],
    ...day.cautions.flatMap((block) => cautionRowsOf(block, number2)),
    { section: "disposal", what: preparationTexts.disposal, ...bare, note: preparationTexts.disposalNote }
  ];
}
function madeRow(solution, number2, forEveryone) {
  const {
    formula: formula2,
    molarity,
    typed: typed2 = number2(molarity),
    teams: teams2,
    neededMl,
    withSpareMl,
    flaskMl,
    fillings,
    from: from2
  } = solution;
  const flask = number2(flaskMl);
  const how = from2.kind === "solid" ? preparationTexts.madeFromSolid({ each: number2(from2.gramsEach), inAll: number2(from2.gramsInAll), flask, fillings }) : preparationTexts.madeFromBottle({
    each: number2(from2.millilitresEach),
    inAll: number2(from2.millilitresInAll),
    flask,
    fillings,
    label: preparationTexts.bottleStrength(number2(from2.massPercent)),
    isFromTable: from2.isFromTable
  });
  const isWatched = from2.kind === "bottle" && !from2.isFromTable;
  return {
    section: "make",
    what: preparationTexts.made(formula2.text, preparationTexts.strength(typed2, typed2)),
    amount: Number(neededMl.toFixed(1)),
    withSpare: withSpareMl,
    unit: "mL",
    // What students calculate and watch is the very volume that staff pour.
    note: \`\${isWatched ? preparationTexts.staffByDefault(teams2) : preparationTexts.forTeams(teams2, number2(rinseMl))} \${isWatched && forEveryone ? preparationTexts.inSidebar : how}\`
  };
}
var layRows = ({ glassware, uses }, number2, forEveryone) => [
  ...glassware.map(({ kind, sizeMl, atOnce, withSpare, allDay, isOnShelf }) => {
    const name = preparationTexts.glassware[kind];
    return {
      section: "lay",
      what: sizeMl === void 0 || forEveryone && kind === "graduated pipette" ? name : preparationTexts.sized(name, number2(sizeMl)),
      amount: atOnce,
      withSpare,
      unit: preparationTexts.piece(withSpare),
      note: \`\${preparationTexts.atOnce(allDay)}\${isOnShelf ? "" : \` \${preparationTexts.notOnShelf}\`}\`
    };
  }),
  ...uses.length === 0 ? [] : [
    {
      section: "lay",
      what: preparationTexts.goggles,
      amount: void 0,
      withSpare: void 0,
      unit: "",
      note: preparationTexts.gogglesNote
    }
  ]
];
function balanceRows({ balance }, number2, forEveryone) {
  if (!balance) return [];
  const { weighings, smallestG, largestG, readabilityG, maxG, balances } = balance;
  const remarks2 = [
    preparationTexts.balanceNote({
      smallest: number2(forEveryone ? oneFigure(smallestG, Math.floor) : smallestG),
      largest: number2(forEveryone ? oneFigure(largestG, Math.ceil) : largestG),
      readability: number2(readabilityG)
    }),
    // A hundred times the readability keeps three figures, as the numbers for teams do.
    ...smallestG < 100 * readabilityG * (1 - 1e-9) ? [preparationTexts.tooFine] : [],
    ...largestG > maxG ? [preparationTexts.tooHeavy] : []
  ];
  return [
    {
      section: "balance",
      what: preparationTexts.weighings(weighings),
      amount: balances,
      withSpare: void 0,
      unit: preparationTexts.balances(balances),
      note: remarks2.join(" ")
    }
  ];
}
var cautionRowsOf = ({ formula: formula2, form, cautions: cautions2 }, number2) => cautions2.statements.map(
  ({ text: text2, advice }, index) => ({
    section: "cautions",
    what: preparationTexts.form(formula2, form, number2),
    amount: void 0,
    withSpare: void 0,
    unit: index === 0 ? cautions2.signalWord || preparationTexts.noSignal : "",
    note: preparationTexts.fullLine(text2, advice),
    ...index === 0 && cautions2.pictograms.length > 0 ? { pictograms: cautions2.pictograms.map(pictogramNamed) } : {}
  })
);

// src/workbook/planPrepareSheet.ts
var headingRow2 = 5;
var lineCount = 150;
var columns2 = { section: 1, what: 2, amount: 3, withSpare: 4, unit: 5, note: 6, mark: 7, hidden: 8 };
var amount = (value) => value === void 0 ? blank : { kind: "number", value };
var cellsOf = ({ section, what, amount: needed, withSpare, unit, note }) => [
  text(preparationTexts.sections[section]),
  text(what),
  amount(needed),
  amount(withSpare),
  text(unit),
  text(note)
];
function planPrepareSheet({ setup, activity, teams: teams2 }, names2, places) {
  const { prepare } = words;
  const { settings, shelf } = setup;
  const day = dayPreparation({ activity, teams: teams2, shelf, settings });
  const rows = preparationRows(day, settings["decimal mark"] === "comma" ? "comma" : "point", { forEveryone: true });
  const fits = rows.length <= lineCount;
  const shown = (fits ? rows : rows.slice(0, lineCount - 1)).map(cellsOf);
  if (!fits) {
    const more = preparationTexts.more(rows.length - lineCount + 1);
    shown.push([blank, text(more), blank, blank, blank, blank]);
  }
  const empty = Array.from(
    { length: lineCount - shown.length },
    () => Array.from({ length: columns2.note }, () => blank)
  );
  const lines = { row: headingRow2 + 1, rows: lineCount };
  return {
    name: names2.prepare,
    role: { kind: "prepare" },
    rowCount: headingRow2 + lineCount,
    columnCount: columns2.hidden,
    columnWidths: [120, 230, 70, 80, 80, 560, 28, 28],
    hiddenColumns: { column: columns2.hidden, count: 1 },
    frozenRows: 1,
    frozenColumns: 0,
    blocks: [
      {
        row: 1,
        column: 1,
        cells: [[text(prepare.title)], [computed(\`=\${freshness()}\`)], ...prepare.notes.map((note) => [text(note)])]
      },
      { ...prepareCells.planNow, cells: [[computed(\`=\${planText({ names: names2, places })}\`)]] },
      {
        row: headingRow2,
        column: 1,
        cells: [[...prepare.headings.map(text), text(prepare.mark)]]
      },
      { row: headingRow2 + 1, column: 1, cells: [...shown, ...empty] }
    ],
    checks: [],
    looks: [
      { row: 1, column: 1, rows: 1, columns: columns2.note, look: "title" },
      { row: 2, column: 1, rows: 1 + prepare.notes.length, columns: columns2.note, look: "note" },
      { row: headingRow2, column: 1, rows: 1, columns: columns2.note, look: "heading" },
      { row: headingRow2, column: columns2.mark, rows: 1, columns: 1, look: "quiet" },
      { row: 1, column: columns2.hidden, rows: headingRow2, columns: 1, look: "mark" },
      { ...lines, column: columns2.section, columns: 1, look: "quiet" },
      { ...lines, column: columns2.what, columns: 1, look: "question" },
      { ...lines, column: columns2.amount, columns: 2, look: "progress" },
      { ...lines, column: columns2.unit, columns: 2, look: "question" }
    ],
    formats: [
      { ...lines, column: columns2.amount, columns: 2, format: "General" },
      { ...prepareCells.freshness, rows: 1, columns: 1, format: "General" },
      { ...prepareCells.planNow, rows: 1, columns: 1, format: "General" }
    ],
    states: [
      { areas: [{ ...prepareCells.freshness, rows: 1, columns: columns2.note }], startsWith: "⚠", state: "not yet" }
    ],
    choices: [],
    writable: [],
    unprotected: [],
    spill: [],
    // One mark, so that another list is written in place and never makes another sheet.
    identity: { firstRow: headingRow2, columns: [columns2.mark], rows: [[prepare.mark]] },
    carried: []
  };
}
var freshness = () => native(
  "IF",
  native("EXACT", fixed(prepareCells.planNow), fixed(prepareCells.planThen)),
  literal(words.prepare.upToDate),
  literal(words.prepare.outOfDate)
);
function planText({ names: names2, places }) {
  const { settings, keys, givenHeadings } = places;
  const lines = { ...keys, columns: planColumns.firstGiven - 1 + givenHeadings.columns };
  return [settings, lines].map((area) => native("TEXTJOIN", literal("|"), "0", onSheet(names2.plan, fixedArea(area)))).join("&");
}

// src/workbook/planProgressSheet.ts
var columns3 = { team: 1, tube: 2, count: 3, firstStep: 4 };
var firstTable = 4;
var states = words.progress.states;
var roomFor = (teamCount) => Math.ceil((teamCount + 1) / 4) * 4;
function planProgressSheet({ lesson, classes, names: names2, places }) {
  const { progress: progress2 } = words;
  const { steps } = lesson.activity;
  const keyColumn = columns3.firstStep + steps.length;
  const blocks = [
    { row: 1, column: 1, cells: [[text(progress2.title)], [text(progress2.note)]] },
    { row: 1, column: columns3.tube, cells: [[text(progress2.now), computed(\`=\${native("NOW")}\`)]] },
    { row: 1, column: keyColumn, cells: [[computed(\`=\${dayText(fixed({ row: 1, column: columns3.count }))}\`)]] }
  ];
  const looks2 = [
    { row: 1, column: 1, rows: 1, columns: columns3.count, look: "title" },
    { row: 2, column: 1, rows: 1, columns: columns3.count, look: "note" },
    { row: 1, column: keyColumn, rows: 1, columns: 1, look: "mark" }
  ];
  const formats = [
    { row: 1, column: columns3.count, rows: 1, columns: 1, format: "hh:mm" },
    { row: 1, column: keyColumn, rows: 1, columns: 1, format: "General" }
  ];
  const stepAreas = [];
  const identityRows = [];
  let row = firstTable;
  for (const { className, teams: teams2 } of classes) {
    const headingRow4 = row;
    const room2 = roomFor(teams2.length);
    const cells = [
      [
        text(className),
        text(progress2.done),
        text(progress2.count),
        ...steps.map(({ title }) => text(title)),
        // The class once more, where the layout is told by the keys.
        text(className)
      ],
      ...teams2.map((team, index) => teamLine({ team, row: headingRow4 + 1 + index, className })),
      ...Array.from({ length: room2 - teams2.length }, () => Array.from({ length: keyColumn }, () => blank))
    ];
    blocks.push({ row: headingRow4, column: 1, cells });
    identityRows.push(
      [className],
      ...teams2.map(({ key }) => [key]),
      ...Array.from({ length: room2 - teams2.length + 1 }, () => [""])
    );
    looks2.push({ row: headingRow4, column: 1, rows: 1, columns: keyColumn - 1, look: "heading" });
    const area = { row: headingRow4 + 1, column: columns3.firstStep, rows: room2, columns: steps.length };
    stepAreas.push(area);
    looks2.push(
      { row: headingRow4 + 1, column: columns3.team, rows: room2, columns: 1, look: "setting name" },
      { row: headingRow4 + 1, column: columns3.tube, rows: room2, columns: 1, look: "link" },
      { row: headingRow4 + 1, column: columns3.count, rows: room2, columns: 1, look: "progress" },
      { ...area, look: "progress" },
      { row: headingRow4, column: keyColumn, rows: room2 + 1, columns: 1, look: "quiet" }
    );
    formats.push({
      row: headingRow4 + 1,
      column: columns3.team,
      rows: room2,
      columns: columns3.count + steps.length,
      format: "General"
    });
    row += cells.length + 1;
  }
  function teamLine({ team, row: row2, className }) {
    var _a;
    const keyCell = \`$\${columnLetters(keyColumn)}\${row2}\`;
    const sheet = (_a = names2.classes[className]) != null ? _a : className;
    const keys = onSheet(names2.plan, fixedArea(places.keys));
    const teamNames = onSheet(names2.plan, fixedArea({ ...places.keys, column: planColumns.team }));
    const name = native(
      "IF",
      \`\${native("COUNTIF", keys, keyCell)}=1\`,
      native("INDEX", teamNames, native("MATCH", keyCell, keys, "0")),
      keyCell
    );
    const line = fixedArea({ row: row2, column: columns3.firstStep, rows: 1, columns: steps.length });
    const scored = steps.filter(({ kind }) => kind !== "told").length;
    const done2 = native("COUNTIF", line, literal(states.done));
    const tube = \`\${native("REPT", literal("●"), done2)}&\${native("REPT", literal("○"), \`\${scored}-\${done2}\`)}\`;
    const today = onSheet(
      names2.plan,
      fixedArea({ ...places.keys, column: planColumns.firstGiven + lesson.givenNames.length })
    );
    const isAbsent = (mark) => \`\${native("COUNTIFS", keys, keyCell, today, mark)}>0\`;
    const ofToday = \`\${literal(\`\${words.plan.absent} \`)}&\${fixed({ row: 1, column: keyColumn })}\`;
    const unlessAbsent = ({ absent, here }) => native(
      "IF",
      isAbsent(ofToday),
      literal(absent),
      native("IF", isAbsent(literal(words.plan.absent)), literal(absent), here)
    );
    return [
      computed(\`=\${name}\`),
      computed(\`=\${unlessAbsent({ absent: progress2.absent, here: tube })}\`),
      computed(\`=\${unlessAbsent({ absent: "", here: \`\${done2}&\${literal(\`\${progress2.of}\${scored}\`)}\` })}\`),
      ...steps.map((step) => computed(\`=\${stepState({ step, keyCell, sheet })}\`)),
      text(team.key)
    ];
  }
  const stateRules = stepAreas.length === 0 ? [] : [
    { areas: stepAreas, startsWith: "✓", state: "on target" },
    { areas: stepAreas, startsWith: "≈", state: "close" },
    { areas: stepAreas, startsWith: "○", state: "follows" },
    { areas: stepAreas, startsWith: "·", state: "blank" },
    { areas: stepAreas, startsWith: "…", state: "blank" }
  ];
  return {
    name: names2.progress,
    role: { kind: "progress" },
    rowCount: Math.max(row - 1, firstTable),
    columnCount: keyColumn,
    columnWidths: [130, Math.max(130, 16 + 12 * steps.length), 70, ...steps.map(() => 92), 28],
    hiddenColumns: void 0,
    frozenRows: 1,
    frozenColumns: 1,
    blocks,
    checks: [],
    looks: looks2,
    formats,
    states: stateRules,
    choices: [],
    writable: [],
    unprotected: [],
    spill: [],
    identity: { firstRow: firstTable, columns: [keyColumn], rows: identityRows },
    carried: []
  };
}
function dayText(moment) {
  const two = (part) => native("RIGHT", \`\${literal("0")}&\${native(part, moment)}\`, "2");
  return [native("YEAR", moment), two("MONTH"), two("DAY")].join(\`&\${literal("-")}&\`);
}
function stepState({ step, keyCell, sheet }) {
  const column = (number2) => onSheet(sheet, wholeColumn(number2));
  const rows = [column(classColumns.key), keyCell, column(classColumns.step), literal(step.id)];
  const some = (number2, criterion) => \`\${native("COUNTIFS", ...rows, column(number2), literal(criterion))}>0\`;
  const check = (word) => some(classColumns.check, word);
  if (step.kind === "told") {
    return native("IF", some(classColumns.entry, "?*"), literal(states.written), literal(states.toCome));
  }
  const inWork = ["not yet", "follows", "unreadable"].reduceRight(
    (otherwise, word) => native("IF", check(word), literal(states.inWork), otherwise),
    literal(states.notYetKnown)
  );
  return native(
    "IF",
    check("on target"),
    literal(states.done),
    native("IF", check("close"), literal(states.nearly), native("IF", check("blank"), literal(states.toCome), inWork))
  );
}

// src/workbook/sheetNames.ts
var awkward = /[[\\]*?:/\\\\\\s]+/g;
var longest = 80;
function tabName(typed2) {
  const name = typed2.split("'").join("’").replace(awkward, " ").trim().slice(0, longest).trim();
  return name === "" ? "Class" : name;
}
function freeName(wanted, taken) {
  const used = taken.map((name) => name.toLowerCase());
  if (!used.includes(wanted.toLowerCase())) return wanted;
  for (let number2 = 2; ; number2 += 1) {
    const name = \`\${wanted} \${number2}\`;
    if (!used.includes(name.toLowerCase())) return name;
  }
}
function newSheetNames(classNames2, taken = []) {
  const used = [...taken];
  const claim = (wanted) => {
    const name = freeName(wanted, used);
    used.push(name);
    return name;
  };
  const plan = claim(words.plan.sheet);
  const progress2 = claim(words.progress.sheet);
  const help = claim(words.help.sheet);
  const prepare = claim(words.prepare.sheet);
  const poll = claim(words.poll.sheet);
  const classes = /* @__PURE__ */ Object.create(null);
  for (const className of classNames2) classes[className] = claim(tabName(className));
  return { plan, progress: progress2, help, prepare, poll, classes };
}

// src/workbook/planWorkbook.ts
var classNames = ({ teams: teams2 }) => [
  ...new Set(teams2.map(({ className }) => className))
];
var teamsOf = ({ teams: teams2 }, className) => teams2.filter((team) => team.className === className);

// src/workbook/readClassSheet.ts
var notYetKnown = "not yet known";
var checkWords = stateWords.map(({ word }) => word);
function readClassSheet(cells) {
  var _a, _b, _c;
  if (cellText((_a = cells[0]) == null ? void 0 : _a[classColumns.key - 1]) !== classMarker) return void 0;
  const blocks = [];
  let row = classRows.firstLink;
  while (row <= cells.length) {
    const key = textAt(cells, row, classColumns.key);
    if (key === "" || textAt(cells, row, classColumns.step) !== "") {
      row += 1;
      continue;
    }
    const block = readBlock({ cells, headingRow: row, key });
    blocks.push(block);
    row = block.closingRow + 1;
  }
  const firstBlock = (_c = (_b = blocks[0]) == null ? void 0 : _b.headingRow) != null ? _c : cells.length + 1;
  return { blocks, linkRows: Math.max(0, firstBlock - 1 - classRows.firstLink) };
}
var textAt = (cells, row, column) => {
  var _a;
  return cellText((_a = cells[row - 1]) == null ? void 0 : _a[column - 1]);
};
function readBlock({ cells, headingRow: headingRow4, key }) {
  const known = textAt(cells, headingRow4, classColumns.check) === checkHeadings.check;
  const steps = [];
  let closingRow = headingRow4;
  for (let row = headingRow4 + 1; row <= cells.length; row += 1) {
    const rowKey = textAt(cells, row, classColumns.key);
    if (rowKey === "") continue;
    if (rowKey !== key) break;
    closingRow = row;
    const step = textAt(cells, row, classColumns.step);
    if (step === "") break;
    steps.push(readStep({ cells, row, key, step, known }));
  }
  const who = textAt(cells, headingRow4, classColumns.who);
  return {
    key,
    team: textAt(cells, headingRow4, classColumns.find),
    who: who === membersTexts.heading ? "" : who,
    headingRow: headingRow4,
    closingRow,
    known,
    steps
  };
}
function readStep({
  cells,
  row,
  key,
  step,
  known
}) {
  var _a, _b;
  const check = textAt(cells, row, classColumns.check);
  const tries = (_a = cells[row - 1]) == null ? void 0 : _a[classColumns.tries - 1];
  const lastEntry = (_b = cells[row - 1]) == null ? void 0 : _b[classColumns.lastEntry - 1];
  const help = Number(textAt(cells, row, classColumns.help));
  return {
    row,
    key,
    step,
    entry: textAt(cells, row, classColumns.entry),
    check: known && (check === "" || checkWords.includes(check)) ? check : notYetKnown,
    lookAt: known ? textAt(cells, row, classColumns.lookAt) : "",
    hint: known ? textAt(cells, row, classColumns.hint) : "",
    helpWanted: Number.isInteger(help) && help >= 0 && help <= 3 ? help : 0,
    who: textAt(cells, row, classColumns.who),
    tries: typeof tries === "number" && Number.isFinite(tries) ? tries : 0,
    lastEntry: isDate(lastEntry) ? lastEntry.getTime() : void 0
  };
}
var isDate = (cell) => Object.prototype.toString.call(cell) === "[object Date]";

// src/workbook/readLesson.ts
function readLesson(cells) {
  var _a, _b, _c;
  const at = (row, column) => {
    var _a2;
    return (_a2 = cells[row - 1]) == null ? void 0 : _a2[column - 1];
  };
  const textAt2 = (row, column) => cellText(at(row, column));
  const rowWith = (first, second) => cells.findIndex((_, index) => textAt2(index + 1, 1) === first && textAt2(index + 1, 2) === second) + 1;
  const settingsRow = rowWith(words.plan.setting, words.plan.value);
  const headingRow4 = rowWith(words.plan.key, words.plan.className);
  if (headingRow4 === 0 || settingsRow === 0 || settingsRow > headingRow4) {
    return failure({
      code: "plan-without-lines",
      argument: "the Plan",
      expected: \`a row “\${words.plan.setting}, \${words.plan.value}” and below it a row “\${words.plan.key}, \${words.plan.className}, \${words.plan.team}”\`,
      received: "a sheet without them",
      advice: "Undo the change to the headings, or build the class again from the sidebar."
    });
  }
  const problems = [];
  const table = settingsTable({ cells, from: settingsRow + 1, to: headingRow4 - 1 });
  const settings = readSettings({ table, problems });
  const givenNames = headings({ textAt: textAt2, headingRow: headingRow4 });
  const { teams: teams2, keysUsedTwice, lastLine } = teamLines({ cells, headingRow: headingRow4, givenNames, problems });
  const setup = readSetup({ table, settings, teams: teams2, givenNames, problems });
  return success({
    setup,
    teams: teams2,
    givenNames,
    absent: absentTeams({ cells, headingRow: headingRow4, givenNames }),
    places: {
      settings: { row: settingsRow, column: 1, rows: headingRow4 - settingsRow, columns: 2 },
      keys: { row: headingRow4, column: planColumns.key, rows: lastLine - headingRow4 + 1 + spareTeamLines, columns: 1 },
      givenHeadings: {
        row: headingRow4,
        column: planColumns.firstGiven,
        rows: 1,
        columns: Math.max(1, givenNames.length)
      }
    },
    invented: ((_a = table.get(words.settings.invented)) == null ? void 0 : _a.value) === "yes",
    layout: (_c = (_b = table.get(words.settings.layout)) == null ? void 0 : _b.value) != null ? _c : "",
    keysUsedTwice,
    problems: problems.map(errorText)
  });
}
function settingsTable({ cells, from: from2, to }) {
  var _a, _b;
  const table = /* @__PURE__ */ new Map();
  for (let row = from2; row <= to; row += 1) {
    const name = cellText((_a = cells[row - 1]) == null ? void 0 : _a[0]).toLowerCase();
    if (name !== "" && !table.has(name)) table.set(name, { value: cellText((_b = cells[row - 1]) == null ? void 0 : _b[1]) });
  }
  return table;
}
function readSettings({ table, problems }) {
  var _a, _b;
  const settings = {};
  for (const name of settingNames) {
    const value = (_b = (_a = table.get(name)) == null ? void 0 : _a.value) != null ? _b : "";
    const options = settingOptions[name];
    if (value === "") {
      problems.push({
        code: "plan-setting",
        argument: \`the setting “\${name}”\`,
        expected: \`a value such as \${defaultSettings[name]}\`,
        received: table.has(name) ? "a blank cell" : "no such line in the Plan",
        advice: \`Type one; until then \${defaultSettings[name]} is used.\`
      });
    } else if (options !== void 0 && !options.includes(value)) {
      problems.push({
        code: "plan-setting",
        argument: \`the setting “\${name}”\`,
        expected: options.join(" or "),
        received: \`“\${value}”\`,
        advice: "Choose one of these in the Plan."
      });
    }
    settings[name] = value === "" ? defaultSettings[name] : value;
  }
  return settings;
}
function headings({
  textAt: textAt2,
  headingRow: headingRow4
}) {
  const names2 = [];
  for (let column = planColumns.firstGiven; textAt2(headingRow4, column) !== ""; column += 1) {
    if (textAt2(headingRow4, column) === words.plan.today) break;
    names2.push(textAt2(headingRow4, column));
  }
  return names2;
}
function absentTeams({
  cells,
  headingRow: headingRow4,
  givenNames
}) {
  var _a;
  const column = planColumns.firstGiven + givenNames.length;
  if (cellText((_a = cells[headingRow4 - 1]) == null ? void 0 : _a[column - 1]) !== words.plan.today) return [];
  return cells.slice(headingRow4).flatMap((line) => {
    const key = cellText(line[planColumns.key - 1]);
    const said2 = cellText(line[column - 1]);
    if (key === "" || !said2.startsWith(words.plan.absent)) return [];
    return [{ key, day: said2.slice(words.plan.absent.length).trim() }];
  });
}
function teamLines({
  cells,
  headingRow: headingRow4,
  givenNames,
  problems
}) {
  var _a, _b;
  const teams2 = [];
  let lastLine = headingRow4;
  const linesByKey = /* @__PURE__ */ new Map();
  for (let row = headingRow4 + 1; row <= cells.length; row += 1) {
    const line = (_a = cells[row - 1]) != null ? _a : [];
    const key = cellText(line[planColumns.key - 1]);
    const className = cellText(line[planColumns.className - 1]);
    const team = cellText(line[planColumns.team - 1]);
    if (key === "" && className === "" && team === "") continue;
    lastLine = row;
    if (key === "" || className === "" || team === "") {
      problems.push({
        code: "plan-line",
        argument: \`line \${row} of the Plan\`,
        expected: "a key, a class and a team",
        received: [key || "no key", className || "no class", team || "no team"].join(", "),
        advice: "Fill in what is missing, or clear the line."
      });
      if (key === "") continue;
    }
    const sameKey = key.toLowerCase();
    linesByKey.set(sameKey, [...(_b = linesByKey.get(sameKey)) != null ? _b : [], row]);
    const givens = {};
    givenNames.forEach((name, index) => {
      const cell = line[planColumns.firstGiven - 1 + index];
      if (cell instanceof Date || typeof cell === "boolean") {
        problems.push({
          code: "plan-line",
          argument: \`\${name} of \${team} in line \${row} of the Plan\`,
          expected: "a number or text",
          received: cell instanceof Date ? "a date" : String(cell),
          advice: "Set the cell to plain text and type the value again."
        });
      }
      givens[name] = cellText(cell);
    });
    teams2.push({ key, className, team, givens });
  }
  const keysUsedTwice = [];
  for (const [key, rows] of linesByKey) {
    if (rows.length < 2) continue;
    keysUsedTwice.push(key);
    problems.push({
      code: "plan-line",
      argument: "each team’s key",
      expected: "a key that stands in one line of the Plan",
      received: \`“\${key}” in lines \${rows.join(" and ")}\`,
      advice: "Give one of these lines another key; until then neither team’s numbers are shown."
    });
  }
  return { teams: teams2, keysUsedTwice, lastLine };
}
function readSetup({
  table,
  settings,
  teams: teams2,
  givenNames,
  problems
}) {
  var _a, _b, _c, _d, _e, _f, _g;
  const names2 = words.settings;
  const decimalMark = settings["decimal mark"] === "comma" ? "comma" : "point";
  const read = (cell, kind, name) => {
    const quantity = readQuantity(cell, kind, \`the setting “\${name}”\`, { decimalMark });
    if (quantity.ok) return quantity.value.value;
    problems.push(quantity.error);
    return void 0;
  };
  const sizesOf = (name, otherwise) => {
    var _a2, _b2;
    const typed2 = (_b2 = (_a2 = table.get(name)) == null ? void 0 : _a2.value) != null ? _b2 : "";
    if (typed2 === "") return otherwise;
    return typed2.split(";").filter((part) => !isBlank(part)).map((part) => read(part.trim(), "volume", name)).filter((size2) => size2 !== void 0);
  };
  const massOf2 = (name, typed2, otherwise) => {
    var _a2;
    return typed2 === "" ? otherwise : (_a2 = read(typed2, "mass", name)) != null ? _a2 : otherwise;
  };
  const classes = [];
  for (const { className, team } of teams2) {
    const known = classes.find(({ name }) => name === className);
    if (known === void 0) classes.push({ name: className, teams: [team] });
    else known.teams.push(team);
  }
  const givens = {};
  for (const name of givenNames) {
    givens[name] = (_d = (_c = (_a = table.get(\`\${names2.startPrefix}\${name}\`)) == null ? void 0 : _a.value) != null ? _c : (_b = teams2[0]) == null ? void 0 : _b.givens[name]) != null ? _d : "";
  }
  return {
    activity: settings.activity,
    givens,
    ownNumbers: ((_e = table.get(names2.numbers)) == null ? void 0 : _e.value) !== names2.sharedNumbers,
    settings,
    shelf: {
      flasksMl: sizesOf(names2.flasks, defaultShelf.flasksMl),
      pipettesMl: sizesOf(names2.pipettes, defaultShelf.pipettesMl),
      balanceReadabilityG: massOf2("balance", settings.balance, defaultShelf.balanceReadabilityG),
      balanceMaxG: massOf2(names2.balanceRange, (_g = (_f = table.get(names2.balanceRange)) == null ? void 0 : _f.value) != null ? _g : "", defaultShelf.balanceMaxG)
    },
    classes
  };
}

// src/workbook/carriedEntries.ts
function carriedEntries({ plan, from: from2, to }) {
  const { columns: columns4, rows, firstRow } = plan.identity;
  const nameOf3 = (texts) => texts[0] === "" ? "" : JSON.stringify(texts);
  const rowByName = /* @__PURE__ */ new Map();
  from2.forEach((cells, index) => {
    const name = nameOf3(columns4.map((column) => cellText(cells[column - 1])));
    if (name !== "" && !rowByName.has(name)) rowByName.set(name, index);
  });
  const runs = [];
  for (const column of plan.carried) {
    let values = [];
    let changed = false;
    let start = 0;
    const close = () => {
      if (changed) runs.push({ row: start, column, values });
      values = [];
      changed = false;
    };
    rows.forEach((texts, index) => {
      var _a, _b;
      const row = firstRow + index;
      const source = rowByName.get(nameOf3(texts));
      if (source === void 0 || !carries(plan, { row, column })) {
        close();
        return;
      }
      const present = (_a = to[row - 1]) == null ? void 0 : _a[column - 1];
      const old = (_b = from2[source]) == null ? void 0 : _b[column - 1];
      if (values.length === 0) start = row;
      const keeps = isEmpty(present) && !isEmpty(old);
      values.push(keeps ? old : present);
      changed = changed || keeps;
    });
    close();
  }
  return plan.carriesAddedRows === true ? [...runs, ...addedRows({ plan, from: from2, to, rowByName })] : runs;
}
function addedRows({
  plan: { identity, carried },
  from: from2,
  to,
  rowByName
}) {
  const named = new Set(rowByName.values());
  const added = from2.filter(
    (cells, index) => index >= identity.firstRow - 1 && !named.has(index) && carried.some((column) => !isEmpty(cells[column - 1]))
  );
  const row = identity.firstRow + identity.rows.length;
  if (added.length === 0) return [];
  return carried.map((column) => ({
    row,
    column,
    values: added.map((cells, index) => {
      var _a, _b;
      const present = (_a = to[row - 1 + index]) == null ? void 0 : _a[column - 1];
      return isEmpty(present) ? (_b = cells[column - 1]) != null ? _b : "" : present;
    })
  }));
}
var isEmpty = (cell) => cell === "" || cell === null || cell === void 0;
var carries = ({ writable, unprotected }, { row, column }) => [...writable, ...unprotected].some(
  (area) => row >= area.row && row < area.row + area.rows && column >= area.column && column < area.column + area.columns
);

// src/workbook/layoutFits.ts
function layoutFits({ identity, rowCount, writable }, cells) {
  var _a;
  const { firstRow, columns: columns4, rows } = identity;
  const found = (row) => columns4.map((column) => {
    var _a2;
    return cellText((_a2 = cells[row - 1]) == null ? void 0 : _a2[column - 1]);
  });
  let last2 = 0;
  let lastPlanned = 0;
  rows.forEach((texts, index) => {
    if (found(firstRow + index).some((text2) => text2 !== "")) last2 = index;
    if (texts.some((text2) => text2 !== "")) lastPlanned = index;
  });
  const isTheirs = (row) => writable.some(
    ({ row: first, rows: high, column, columns: wide }) => {
      var _a2, _b;
      return column <= ((_a2 = columns4[0]) != null ? _a2 : 1) && column + wide > ((_b = columns4[0]) != null ? _b : 1) && row >= first && row < first + high;
    }
  );
  for (let row = firstRow; row <= cells.length; row += 1) {
    if (isTheirs(row)) continue;
    const planned = rows[row - firstRow];
    if (found(row).some((text2, index) => text2 !== "" && text2 !== (planned == null ? void 0 : planned[index]))) return "other";
  }
  const firstNew = firstRow + last2 + 1;
  if (last2 === lastPlanned) return "same";
  for (let row = firstNew; row <= Math.min(rowCount, cells.length); row += 1) {
    if ((_a = cells[row - 1]) == null ? void 0 : _a.some((cell) => cellText(cell) !== "")) return last2 === 0 ? "same" : "other";
  }
  return "longer";
}

// src/workbook/looks.ts
var ink = "#17212b";
var soft = "#51606f";
var pale = "#6b7885";
var paper = "#ffffff";
var bench = "#f3f6f8";
var glass = "#0b5c6b";
var glassSoft = "#ddf1f3";
var entryGround = "#eef8f9";
var plain2 = { color: ink, background: paper, bold: false, size: 10, wrap: false, align: "left" };
var plainLook = plain2;
var looks = {
  title: { ...plain2, bold: true, size: 14 },
  note: { ...plain2, color: soft, size: 10 },
  heading: { ...plain2, color: soft, background: bench, bold: true, size: 9, wrap: true },
  "team heading": { ...plain2, background: bench, bold: true, size: 13, wrap: true },
  question: { ...plain2, size: 11, wrap: true },
  entry: { ...plain2, background: entryGround, size: 11, wrap: true },
  helper: { ...plain2, background: entryGround, wrap: true },
  quiet: { ...plain2, color: soft, size: 8 },
  caution: { ...plain2, color: "#744400", background: "#fbebd2", size: 9 },
  mark: { ...plain2, color: pale, size: 6, clip: true },
  spilled: { ...plain2, wrap: true },
  "setting name": { ...plain2, bold: true },
  "setting value": { ...plain2, background: entryGround },
  link: { ...plain2, color: glass },
  progress: { ...plain2, align: "center", wrap: true },
  closing: { ...plain2, color: soft, background: bench, size: 9 }
};
var stateLooks = {
  "on target": { color: "#0b5c6b", background: glassSoft },
  close: { color: "#56398f", background: "#ece6f8" },
  follows: { color: "#3f4a5a", background: "#e5eaf0" },
  "not yet": { color: "#744400", background: "#fbebd2" },
  unreadable: { color: "#851c58", background: "#f9e3ef" },
  blank: { color: "#5d6b78", background: paper }
};
var tabColors = {
  plan: "#51606f",
  class: glass,
  progress: "#56398f",
  help: "#744400",
  prepare: "#3f4a5a",
  record: "#851c58",
  poll: "#3f4a5a",
  kept: "#a5b3c0"
};

// src/workbook/teamsAlone.ts
var teamsAlone = (plan) => ({
  ...plan,
  carried: [classColumns.who],
  identity: { ...plan.identity, rows: plan.identity.rows.map((texts) => texts[1] === "" ? texts : ["", ""]) }
});

// src/host/buildMemo.ts
var property = "labrow.build";
var pieceLength = 8e3;
function readMemo() {
  var _a, _b;
  const stored = PropertiesService.getDocumentProperties().getProperties();
  const count2 = Number((_a = stored[property]) != null ? _a : "0");
  let words2 = "";
  for (let piece = 1; piece <= count2; piece += 1) words2 += (_b = stored[\`\${property}.\${piece}\`]) != null ? _b : "";
  try {
    return words2 === "" ? void 0 : JSON.parse(words2);
  } catch {
    return void 0;
  }
}
function saveMemo(memo) {
  const words2 = JSON.stringify(memo);
  const store = PropertiesService.getDocumentProperties();
  let count2 = 0;
  for (let from2 = 0; from2 < words2.length; from2 += pieceLength) {
    count2 += 1;
    store.setProperty(\`\${property}.\${count2}\`, words2.slice(from2, from2 + pieceLength));
  }
  store.setProperty(property, String(count2));
}

// src/host/moveBehindAll.ts
function moveBehindAll(spreadsheet, sheet) {
  const last2 = spreadsheet.getSheets().length;
  if (sheet.getIndex() === last2) return;
  const shown = spreadsheet.getActiveSheet();
  const selected = spreadsheet.getActiveRange();
  const wasHidden = sheet.isSheetHidden();
  spreadsheet.setActiveSheet(sheet);
  spreadsheet.moveActiveSheet(last2);
  if (selected === null) spreadsheet.setActiveSheet(shown);
  else spreadsheet.setActiveRange(selected);
  if (wasHidden) sheet.hideSheet();
}

// src/host/ownSheets.ts
var tagKey = "labrow-sheet";
var tagOn = (sheet) => sheet.getDeveloperMetadata().find((entry) => entry.getKey() === tagKey);
function tagOf(sheet) {
  var _a, _b;
  try {
    const tag = JSON.parse((_b = (_a = tagOn(sheet)) == null ? void 0 : _a.getValue()) != null ? _b : "");
    return typeof tag === "object" && tag !== null && "kind" in tag ? tag : void 0;
  } catch {
    return void 0;
  }
}
function ownSheets(spreadsheet) {
  const own = [];
  for (const sheet of spreadsheet.getSheets()) {
    const tag = tagOf(sheet);
    if (tag !== void 0) own.push({ sheet, tag });
  }
  return own;
}
function writeTag(sheet, tag) {
  const found = tagOn(sheet);
  const words2 = JSON.stringify(tag);
  if (found === void 0) sheet.addDeveloperMetadata(tagKey, words2, documentVisibility());
  else if (found.getValue() !== words2) found.setValue(words2);
}
var sheetInUse = (own, role2) => own.find(
  ({ tag }) => {
    var _a, _b;
    return tag.state !== "kept" && tag.kind === role2.kind && ((_a = tag.className) != null ? _a : "") === ((_b = role2.className) != null ? _b : "");
  }
);
var roleName = ({ kind, className }) => JSON.stringify([kind, className != null ? className : ""]);

// src/host/sheetById.ts
var sheetById = (spreadsheet, id) => spreadsheet.getSheets().find((sheet) => sheet.getSheetId() === id);

// src/host/writeTexts.ts
var risky = /^[=+\\-@']/;
var isRisky = (value) => typeof value === "string" && risky.test(value);
var marked = (value) => \`'\${value}\`;
function writeTexts(range, values, isFormula = () => false) {
  var _a;
  const isText = (value, row, column) => isRisky(value) && !isFormula(row, column);
  const guarded2 = values.map(
    (cells, row) => cells.map((value, column) => isText(value, row, column) ? marked(value) : value != null ? value : "")
  );
  range.setValues(guarded2);
  const places = [];
  values.forEach((cells, row) => {
    cells.forEach((value, column) => {
      if (isText(value, row, column)) places.push({ row, column, value });
    });
  });
  if (places.length === 0) return;
  const written = range.getValues();
  for (const { row, column, value } of places) {
    if (((_a = written[row]) == null ? void 0 : _a[column]) !== marked(value)) continue;
    const cell = range.getCell(row + 1, column + 1);
    cell.setValue(value);
    if (cell.getFormula() !== "") cell.setValue(marked(value));
  }
}

// src/host/applyWorkbook.ts
function applySheet({ spreadsheet, plan, memo, replace = false, firstEntries = [] }) {
  const role2 = plan.role;
  finishReplacement({ spreadsheet, memo, role: role2 });
  const present = sheetInUse(ownSheets(spreadsheet), role2);
  if (present !== void 0) {
    const fit = layoutFits(plan, valuesOf2(present.sheet));
    const unfinished = present.tag.state === "building";
    if (fit === "other" || isOfAnother(present.tag, plan) || replace && !unfinished) {
      startReplacement({ spreadsheet, memo, role: role2, sheet: present.sheet });
    } else if (fit === "same" && !unfinished) {
      rewrite(present.sheet, plan);
      endReplacement({ spreadsheet, memo, role: role2 });
      return;
    }
  }
  const isNew = (present == null ? void 0 : present.tag.state) !== "built";
  const { sheet, tag } = sheetFor({ spreadsheet, plan, memo });
  writeTag(sheet, { ...tag, state: "building" });
  writeWhole({ spreadsheet, sheet, plan, tag, isNew, firstEntries: isNew ? firstEntries : [] });
  const { from: _, ...done2 } = tag;
  writeTag(sheet, { ...done2, ...activityOf(plan), layout: layoutVersion, state: "built" });
  endReplacement({ spreadsheet, memo, role: role2 });
}
var activityOf = (of) => (of == null ? void 0 : of.activity) === void 0 ? {} : { activity: of.activity };
var isOfAnother = (tag, { activity }) => (tag == null ? void 0 : tag.activity) !== void 0 && activity !== void 0 && tag.activity !== activity;
function putAside({ spreadsheet, memo, role: role2 }) {
  const present = sheetInUse(ownSheets(spreadsheet), role2);
  if (present !== void 0) startReplacement({ spreadsheet, memo, role: role2, sheet: present.sheet });
  finishReplacement({ spreadsheet, memo, role: role2 });
  endReplacement({ spreadsheet, memo, role: role2 });
}
function endReplacement({ spreadsheet, memo, role: role2 }) {
  const replacement = memo.replacements[roleName(role2)];
  if (replacement === void 0) return;
  const kept = sheetById(spreadsheet, replacement.sheetId);
  if (kept !== void 0) moveBehindAll(spreadsheet, kept);
  delete memo.replacements[roleName(role2)];
  saveMemo(memo);
}
var valuesOf2 = (sheet) => sheet.getDataRange().getValues();
function startReplacement({ spreadsheet, memo, role: role2, sheet }) {
  const taken = spreadsheet.getSheets().map((other) => other.getName());
  const keptName = freeName(hostWords.keptName(sheet.getName(), memo.stamp), taken);
  memo.names[roleName(role2)] = sheet.getName();
  memo.replacements[roleName(role2)] = { sheetId: sheet.getSheetId(), keptName };
  saveMemo(memo);
  finishReplacement({ spreadsheet, memo, role: role2 });
}
function finishReplacement({ spreadsheet, memo, role: role2 }) {
  const replacement = memo.replacements[roleName(role2)];
  if (replacement === void 0) return;
  const old = sheetById(spreadsheet, replacement.sheetId);
  if (old === void 0) return;
  if (old.getName() !== replacement.keptName) old.setName(replacement.keptName);
  old.setTabColor(tabColors.kept);
  writeTag(old, {
    kind: role2.kind,
    ...role2.className === void 0 ? {} : { className: role2.className },
    ...activityOf(tagOf(old)),
    layout: layoutVersion,
    state: "kept"
  });
}
function sheetFor({ spreadsheet, plan, memo }) {
  var _a, _b;
  const { role: role2 } = plan;
  const name = roleName(role2);
  const own = ownSheets(spreadsheet);
  const present = sheetInUse(own, role2);
  if (present !== void 0) return present;
  const from2 = (_a = memo.replacements[name]) == null ? void 0 : _a.sheetId;
  const wanted = (_b = memo.names[name]) != null ? _b : plan.name;
  const orphan = spreadsheet.getSheetByName(wanted);
  const isOrphan = orphan !== null && !own.some(({ sheet: sheet2 }) => sheet2.getSheetId() === orphan.getSheetId()) && orphan.getLastRow() === 0;
  let sheet = isOrphan ? orphan : void 0;
  if (sheet === void 0) {
    const taken = spreadsheet.getSheets().map((other) => other.getName());
    memo.names[name] = freeName(wanted, taken);
    memo.made = true;
    saveMemo(memo);
    sheet = spreadsheet.insertSheet(memo.names[name], placeFor({ spreadsheet, role: role2, from: from2 }));
  }
  const tag = {
    kind: role2.kind,
    ...role2.className === void 0 ? {} : { className: role2.className },
    ...activityOf(plan),
    layout: layoutVersion,
    state: "building",
    ...from2 === void 0 ? {} : { from: from2 }
  };
  writeTag(sheet, tag);
  return { sheet, tag };
}
function placeFor({
  spreadsheet,
  role: role2,
  from: from2
}) {
  var _a, _b;
  const sheets = spreadsheet.getSheets();
  if (from2 !== void 0) {
    const old = sheets.findIndex((sheet) => sheet.getSheetId() === from2);
    if (old >= 0) return old;
  }
  const own = ownSheets(spreadsheet);
  const behind = own.find(
    ({ tag }) => tag.state !== "kept" && (role2.kind === "plan" && tag.kind !== "plan" || role2.kind === "class" && (tag.kind === "progress" || tag.kind === "help") || role2.kind === "progress" && tag.kind === "help" || role2.kind === "poll" && (tag.kind === "record" || tag.kind === "help"))
  );
  if (behind !== void 0) return behind.sheet.getIndex() - 1;
  const kept = own.filter(({ tag }) => tag.state === "kept").map(({ sheet }) => sheet.getSheetId());
  let place = sheets.length;
  while (place > 0 && kept.includes((_b = (_a = sheets[place - 1]) == null ? void 0 : _a.getSheetId()) != null ? _b : Number.NaN)) place -= 1;
  return place;
}
function writeWhole({
  spreadsheet,
  sheet,
  plan,
  tag,
  isNew,
  firstEntries
}) {
  const { rowCount: rows, columnCount: columns4 } = plan;
  makeRoom(sheet, { rows, columns: columns4 });
  const whole = sheet.getRange(1, 1, rows, columns4);
  whole.setNumberFormats(formatsOf(plan));
  const separator = argumentSeparator(spreadsheet, sheet, plan);
  for (const block of plan.blocks) writeBlock({ sheet, block, separator });
  writeLooks(sheet, plan);
  writeChoices(sheet, plan);
  writeStateRules(sheet, plan);
  if (tag.from !== void 0) carryEntries({ spreadsheet, sheet, plan, from: tag.from });
  writeFirstEntries({ sheet, firstEntries });
  invite(sheet, plan);
  for (const block of plan.checks) writeBlock({ sheet, block, separator });
  protect(sheet, plan, isNew);
}
function rewrite(sheet, plan) {
  const range = sheet.getRange(1, 1, plan.rowCount, plan.columnCount);
  const values = range.getValues();
  const formulas = range.getFormulas();
  let separator = ",";
  const usesSemicolons = formulas.some(
    (row) => row.some((formula2) => /;/.test(formula2.replace(/"[^"]*"|'[^']*'/g, "")))
  );
  if (usesSemicolons) separator = ";";
  const sheetId = sheet.getSheetId();
  const stands = ({ row, column, cells }) => cells.every(
    (contents, down) => contents.every((content, right) => {
      var _a, _b, _c;
      const value = (_a = values[row - 1 + down]) == null ? void 0 : _a[column - 1 + right];
      const formula2 = (_c = (_b = formulas[row - 1 + down]) == null ? void 0 : _b[column - 1 + right]) != null ? _c : "";
      switch (content.kind) {
        case "formula":
          return formula2 === withSeparator(content.formula, separator);
        case "text":
          return formula2 === "" && value === content.text;
        case "number":
          return formula2 === "" && value === content.value;
        case "sheet id":
          return formula2 === "" && value === sheetId;
        default:
          return formula2 === "" && value === "";
      }
    })
  );
  for (const block of [...plan.blocks, ...plan.checks]) {
    if (stands(block)) continue;
    writeFormats({ sheet, plan, block });
    writeBlock({ sheet, block, separator });
  }
  renewChoices(sheet, plan);
}
function writeFormats({ sheet, plan, block }) {
  var _a, _b;
  const { row, column, cells } = block;
  const width = (_b = (_a = cells[0]) == null ? void 0 : _a.length) != null ? _b : 0;
  if (width === 0 || !cells.some((line) => line.some(({ kind }) => kind === "formula"))) return;
  const formats = formatsOf(plan);
  sheet.getRange(row, column, cells.length, width).setNumberFormats(cells.map((_, down) => {
    var _a2, _b2;
    return (_b2 = (_a2 = formats[row - 1 + down]) == null ? void 0 : _a2.slice(column - 1, column - 1 + width)) != null ? _b2 : [];
  }));
}
var formatsOf = ({ rowCount: rows, columnCount: columns4, formats }) => filledWith({ rows, columns: columns4, plain: "@", areas: formats, of: ({ format }) => format });
function renewChoices(sheet, plan) {
  if (plan.choices.length === 0) return;
  const present = sheet.getRange(1, 1, plan.rowCount, plan.columnCount).getDataValidations();
  const changed = plan.choices.filter(({ area, options }) => {
    var _a;
    const rule = (_a = present[area.row - 1]) == null ? void 0 : _a[area.column - 1];
    const offered = rule == null ? void 0 : rule.getCriteriaValues()[0];
    return Array.isArray(offered) && JSON.stringify(offered) !== JSON.stringify(options);
  });
  writeChoices(sheet, { ...plan, choices: changed });
}
function invite(sheet, { invitation }) {
  if (invitation === void 0) return;
  const cells = valuesOf2(sheet);
  const empty = invitation.places.filter(({ row, column }) => {
    var _a, _b;
    return ((_b = (_a = cells[row - 1]) == null ? void 0 : _a[column - 1]) != null ? _b : "") === "";
  });
  if (empty.length > 0) sheet.getRangeList(empty.map(areaName)).setValue(invitation.text);
}
function makeRoom(sheet, { rows, columns: columns4 }) {
  const presentRows = sheet.getMaxRows();
  if (presentRows < rows) sheet.insertRowsAfter(presentRows, rows - presentRows);
  const presentColumns = sheet.getMaxColumns();
  if (presentColumns < columns4) sheet.insertColumnsAfter(presentColumns, columns4 - presentColumns);
}
function writeBlock({ sheet, block, separator }) {
  var _a, _b;
  const { row, column, cells } = block;
  const width = (_b = (_a = cells[0]) == null ? void 0 : _a.length) != null ? _b : 0;
  if (width === 0) return;
  const range = sheet.getRange(row, column, cells.length, width);
  const values = cells.map((contents) => contents.map((content) => inputOf({ content, sheet, separator })));
  writeTexts(range, values, (down, right) => {
    var _a2, _b2;
    return ((_b2 = (_a2 = cells[down]) == null ? void 0 : _a2[right]) == null ? void 0 : _b2.kind) === "formula";
  });
}
function inputOf({
  content,
  sheet,
  separator
}) {
  switch (content.kind) {
    case "text":
      return content.text;
    case "number":
      return content.value;
    case "formula":
      return withSeparator(content.formula, separator);
    case "sheet id":
      return sheet.getSheetId();
    default:
      return "";
  }
}
function argumentSeparator(spreadsheet, sheet, plan) {
  if (/^en/i.test(spreadsheet.getSpreadsheetLocale()) || !hasFormula(plan)) return ",";
  const cell = sheet.getRange(1, 1);
  cell.setNumberFormat("General");
  cell.setValue("=SUM(1,2)");
  settle();
  const reads = cell.getValue() === 3;
  cell.setValue("");
  cell.setNumberFormat("@");
  return reads ? "," : ";";
}
var hasFormula = ({ blocks, checks }) => [...blocks, ...checks].some(({ cells }) => cells.some((row) => row.some(({ kind }) => kind === "formula")));
function filledWith({
  rows,
  columns: columns4,
  plain: plain3,
  areas,
  of
}) {
  const filled = Array.from({ length: rows }, () => Array.from({ length: columns4 }, () => plain3));
  for (const area of areas) {
    const value = of(area);
    for (let row = area.row; row < area.row + area.rows && row <= rows; row += 1) {
      for (let column = area.column; column < area.column + area.columns && column <= columns4; column += 1) {
        const line = filled[row - 1];
        if (line !== void 0) line[column - 1] = value;
      }
    }
  }
  return filled;
}
function writeLooks(sheet, plan) {
  const { rowCount: rows, columnCount: columns4 } = plan;
  const whole = sheet.getRange(1, 1, rows, columns4);
  const each = filledWith({ rows, columns: columns4, plain: plainLook, areas: plan.looks, of: ({ look }) => looks[look] });
  const as = (read) => each.map((row) => row.map(read));
  whole.setBackgrounds(as(({ background }) => background));
  whole.setFontColors(as(({ color }) => color));
  whole.setFontWeights(as(({ bold }) => bold ? "bold" : "normal"));
  whole.setFontSizes(as(({ size: size2 }) => size2));
  whole.setWraps(as(({ wrap }) => wrap));
  for (const { look, row, column, rows: high, columns: wide } of plan.looks) {
    if (looks[look].clip !== true) continue;
    sheet.getRange(row, column, high, wide).setWrapStrategy(SpreadsheetApp.WrapStrategy.CLIP);
  }
  whole.setHorizontalAlignments(as(({ align }) => align));
  whole.setVerticalAlignment("top");
  let from2 = 0;
  plan.columnWidths.forEach((width, index) => {
    if (plan.columnWidths[index + 1] === width) return;
    sheet.setColumnWidths(from2 + 1, index - from2 + 1, width);
    from2 = index + 1;
  });
  if (plan.hiddenColumns !== void 0) sheet.hideColumns(plan.hiddenColumns.column, plan.hiddenColumns.count);
  sheet.setFrozenRows(plan.frozenRows);
  sheet.setFrozenColumns(plan.frozenColumns);
  sheet.setTabColor(tabColors[plan.role.kind]);
}
function writeChoices(sheet, plan) {
  const written = /* @__PURE__ */ new Set();
  for (const choice of plan.choices) {
    if (written.has(choice)) continue;
    const { area, options, help } = choice;
    const rule = choiceOf(options, help);
    const beside = plan.choices.find((other) => standsBeside(other, choice));
    if (beside === void 0) {
      sheet.getRange(area.row, area.column, area.rows, area.columns).setDataValidation(rule);
      continue;
    }
    written.add(beside);
    const both = [rule, choiceOf(beside.options, beside.help)];
    sheet.getRange(area.row, area.column, area.rows, 2).setDataValidations(Array.from({ length: area.rows }, () => both));
  }
}
var standsBeside = ({ area }, { area: left }) => area.row === left.row && area.rows === left.rows && area.columns === 1 && left.columns === 1 && area.column === left.column + 1;
function writeStateRules(sheet, plan) {
  const ours2 = plan.states.filter(({ areas }) => areas.length > 0);
  if (ours2.length === 0) return;
  const others = sheet.getConditionalFormatRules().filter((rule) => !ours2.some(({ startsWith }) => isStateRule(rule, startsWith)));
  const rules = ours2.map(
    ({ areas, startsWith, state }) => stateRuleOf({
      startsWith,
      ...stateLooks[state],
      ranges: sheet.getRangeList(areas.map(areaName)).getRanges()
    })
  );
  sheet.setConditionalFormatRules([...others, ...rules]);
}
function carryEntries({
  spreadsheet,
  sheet,
  plan,
  from: from2
}) {
  const old = sheetById(spreadsheet, from2);
  if (old === void 0) return;
  const wanted = isOfAnother(tagOf(old), plan) ? teamsAlone(plan) : plan;
  const runs = carriedEntries({ plan: wanted, from: valuesOf2(old), to: valuesOf2(sheet) });
  const lastRow = Math.max(plan.rowCount, ...runs.map(({ row, values }) => row + values.length - 1));
  makeRoom(sheet, { rows: lastRow, columns: plan.columnCount });
  for (const { row, column, values } of runs) {
    const cells = sheet.getRange(row, column, values.length, 1);
    if (row > plan.rowCount) cells.setNumberFormat("@");
    writeTexts(
      cells,
      values.map((value) => [value])
    );
  }
}
function writeFirstEntries({ sheet, firstEntries }) {
  if (firstEntries.length === 0) return;
  const cells = valuesOf2(sheet);
  const at = (row, column) => {
    var _a, _b;
    return (_b = (_a = cells[row - 1]) == null ? void 0 : _a[column - 1]) != null ? _b : "";
  };
  const blank2 = firstEntries.filter(
    ({ row, column, texts }) => texts.every((_, down) => at(row + down, column) === "")
  );
  const others = firstEntries.some(
    (run) => !blank2.includes(run) && run.texts.some((text2, down) => ![text2, ""].includes(String(at(run.row + down, run.column))))
  );
  if (others) return;
  for (const { row, column, texts, counts } of blank2) {
    writeTexts(
      sheet.getRange(row, column, texts.length, 1),
      texts.map((text2) => [text2])
    );
    if (counts === void 0) continue;
    if (counts === void 0) continue;
    sheet.getRange(row, counts.column, counts.rows.length, 2).setValues(counts.rows.map((cells2) => [...cells2]));
    sheet.getRange(row, countedColumn, texts.length, 1).setValues(texts.map((text2) => [text2 === "" ? "" : countedEntry(text2)]));
  }
}
function protect(sheet, plan, isNew) {
  var _a;
  const present = sheetProtections(sheet)[0];
  const description = (_a = present == null ? void 0 : present.getDescription()) != null ? _a : "";
  if (present !== void 0 && description !== hostWords.protection && !(isNew && description === "")) return;
  const protection = present != null ? present : sheet.protect();
  protection.setDescription(hostWords.protection);
  protection.setWarningOnly(true);
  const open = [...plan.writable, ...plan.unprotected];
  if (open.length > 0) protection.setUnprotectedRanges(sheet.getRangeList(open.map(areaName)).getRanges());
}

// src/host/isUntouched.ts
function isUntouched(sheet) {
  if (sheet.getLastRow() > 0 || sheet.getLastColumn() > 0) return false;
  const isBusy = sheet.getFormUrl() !== null || sheet.getCharts().length > 0 || sheet.getImages().length > 0 || sheet.getDrawings().length > 0 || sheet.getConditionalFormatRules().length > 0 || sheetProtections(sheet).length > 0 || sheet.getDeveloperMetadata().length > 0 || sheet.getFrozenRows() > 0 || sheet.getFrozenColumns() > 0;
  if (isBusy) return false;
  const whole = sheet.getRange(1, 1, sheet.getMaxRows(), sheet.getMaxColumns());
  const all = (cells, isPlain) => cells.every((row) => row.every(isPlain));
  return all(whole.getNotes(), (note) => note === "") && all(whole.getDataValidations(), (rule) => rule === null) && all(whole.getBackgrounds(), (color) => color.toLowerCase() === "#ffffff");
}

// src/host/emptyFirstSheet.ts
function emptyFirstSheet(spreadsheet) {
  const [sheet, ...others] = spreadsheet.getSheets();
  const isAlone = sheet !== void 0 && others.length === 0 && spreadsheet.getNamedRanges().length === 0;
  return isAlone && isUntouched(sheet) ? sheet : void 0;
}

// src/host/notePreparedPlan.ts
function notePreparedPlan({
  spreadsheet,
  writtenFrom,
  readPlan
}) {
  var _a;
  const sheet = (_a = sheetInUse(ownSheets(spreadsheet), { kind: "prepare" })) == null ? void 0 : _a.sheet;
  if (sheet === void 0) return;
  settle();
  const { planNow, planThen } = prepareCells;
  const joined2 = String(sheet.getRange(planNow.row, planNow.column).getValue());
  const same2 = JSON.stringify(readPlan()) === JSON.stringify(writtenFrom);
  const note = same2 ? joined2 : "";
  const cell = sheet.getRange(planThen.row, planThen.column);
  if (cell.getValue() !== note) writeTexts(cell, [[note]]);
}

// src/host/outcome.ts
var done = (value) => ({ ok: true, value });
var problem = (parts, field) => ({
  ok: false,
  problem: { message: hostWords.problem(parts), ...field === void 0 ? {} : { field } }
});
var problemOf = (error, field) => ({
  ok: false,
  problem: { message: errorText(error), ...field === void 0 ? {} : { field } }
});
function guarded(work) {
  try {
    return work();
  } catch (error) {
    const received = error instanceof Error ? error.message : String(error);
    return problem({ ...hostWords.refused, received: \`“\${received}”\` });
  }
}
var numbersProblem = (error) => problemOf(error, error.argument === "activity" ? "activity" : \`givens.\${error.argument}\`);

// src/lab/members/memberWords.ts
function memberWords({ name, absent, roles: roles2 }) {
  const said2 = [...absent ? [membersTexts.absent] : [], ...roles2];
  return said2.length === 0 ? name : \`\${name}: \${said2.join(", ")}\`;
}

// src/lab/members/membersText.ts
function membersText({ members, day }) {
  if (members.length === 0) return "";
  return [...members.map(memberWords), ...day === "" ? [] : [membersTexts.rolesOf(day)]].join("\\n");
}

// src/lab/members/shareRoles.ts
var [calculates] = roles;
var ours = [...roles, membersTexts.helps];
function shareRoles({ before, members, day, passOn }) {
  var _a;
  const present = members.filter(({ absent }) => !absent).map(({ name }) => name);
  const first = present.indexOf((_a = whoCalculates({ before, members, passOn })) != null ? _a : "");
  const given = /* @__PURE__ */ new Map();
  if (present.length > 0) {
    roles.forEach((role2, place) => {
      var _a2, _b;
      const name = (_a2 = present[(Math.max(first, 0) + place) % present.length]) != null ? _a2 : "";
      given.set(name, [...(_b = given.get(name)) != null ? _b : [], role2]);
    });
  }
  return {
    day,
    members: members.map(({ name, absent }) => {
      var _a2, _b, _c;
      const own = ((_b = (_a2 = before.members.find((one) => one.name === name)) == null ? void 0 : _a2.roles) != null ? _b : []).filter((role2) => !ours.includes(role2));
      const shared = absent ? [] : (_c = given.get(name)) != null ? _c : [membersTexts.helps];
      return { name, absent, roles: [...shared, ...own] };
    })
  };
}
function whoCalculates({ before, members, passOn }) {
  const order2 = before.members.map(({ name }) => name);
  const last2 = before.members.findIndex((member) => member.roles.includes(calculates));
  const isHere = (name) => members.some((member) => member.name === name && !member.absent);
  if (last2 < 0) return void 0;
  const from2 = last2 + (passOn ? 1 : 0);
  return order2.map((_, step) => {
    var _a;
    return (_a = order2[(from2 + step) % order2.length]) != null ? _a : "";
  }).find(isHere);
}

// src/lab/letterOfOption.ts
var letterOfOption = (question, option) => {
  var _a, _b;
  return (_b = (_a = letteredOptions(question).find(({ item }) => item.id === (option == null ? void 0 : option.id))) == null ? void 0 : _a.letter) != null ? _b : "";
};

// src/lab/lettersInOrder.ts
function lettersInOrder(procedure) {
  const lettered = orderedActions(procedure);
  return procedureByName(procedure).actions.map(({ id }) => {
    var _a, _b;
    return (_b = (_a = lettered.find(({ item }) => item.id === id)) == null ? void 0 : _a.letter) != null ? _b : "";
  });
}

// src/lab/startingGivens.ts
var startingGivens = ({ givens }) => Object.fromEntries(givens.map(({ name, start }) => [name, start != null ? start : ""]));

// src/lab/texts/sample.ts
var sampleTexts = {
  school: "Larkspur Hollow School (invented)",
  classes: [
    { name: "Second period", teams: ["Basalt", "Quartz", "Granite", "Slate", "Marble", "Pumice"] },
    { name: "Fourth period", teams: ["Obsidian", "Gneiss", "Chalk", "Flint", "Jasper", "Shale"] }
  ],
  members: [
    {
      className: "Second period",
      team: "Basalt",
      people: [
        { name: "Ana", absent: false },
        { name: "Ben", absent: false },
        { name: "Cy", absent: true },
        { name: "Dov", absent: false }
      ]
    },
    {
      className: "Second period",
      team: "Quartz",
      people: [
        { name: "Eda", absent: false },
        { name: "Finn", absent: false }
      ]
    }
  ],
  pollBefore: ["I mixed up millilitres and litres.", "", "What is a mole again?"],
  poll: ["The ions do not go away!", "", "Why is the water never measured?", "More time for the balance."],
  words: "about half a mole?",
  told: "The water spread the ions out, but none of them left the flask."
};

// src/lab/sampleLesson.ts
var minutesEach = 2;
var progress = [
  [
    { steps: 15 },
    {
      steps: 4,
      manners: { "mass of solute": { slip: "volume-in-mL" } },
      tries: { "moles of solute": 2, "mass of solute": 4 }
    },
    { steps: 7, manners: { "mass of solute": { as: "with unit" }, "stock made": { figures: 2 } }, minutesAgo: 11 },
    { steps: 10, manners: { "stock volume": { slip: "water-for-stock" } } },
    { steps: 5, manners: { "stock procedure": { as: "wrong order" } }, tries: { "stock procedure": 2 } },
    { steps: 0 }
  ],
  [
    { steps: 4, manners: { "mass of solute": { slip: "moles-reported" } } },
    { steps: 9, manners: { "dilution factor": { slip: "ratio-inverted" } }, tries: { "dilution factor": 3 } },
    { steps: 3, manners: { "moles of solute": { slip: "volume-in-mL" } } },
    { steps: 14, manners: { particles: { as: "wrong choice" } } },
    { steps: 3, manners: { "moles of solute": { as: "words" } }, minutesAgo: 14 },
    { steps: 2 }
  ]
];
var weighedShare = 1.004;
function certain(result, about) {
  if (!result.ok) throw new Error(\`The sample lesson cannot be made: \${about}, \${result.error.code}.\`);
  return result.value;
}
var typed = (value, figures) => {
  var _a;
  return (_a = plainText(Number(value.toPrecision(figures)), figures)) != null ? _a : String(Number(value.toPrecision(figures)));
};
function teamEntries(activity, team, { steps: count2, manners = {}, tries = {}, minutesAgo = 1 }) {
  const values = {};
  const figures = Number(defaultSettings.figures);
  const prepared = (step) => {
    var _a;
    const cells = {};
    const numbers = {};
    for (const [name, source] of Object.entries(step.takes)) {
      if ("given" in source) cells[name] = team.givens[source.given];
      else numbers[name] = (_a = values[source.entryOf]) != null ? _a : Number.NaN;
    }
    return certain(prepareStep(quantities[step.quantity], cells, { numbers }), step.id);
  };
  const calculatedEntry = (step, manner) => {
    const ready = prepared(step);
    let value = spanOver(ready, ready.quantity.relation).middle;
    if (manner && "slip" in manner) {
      const slip = ready.quantity.slips.find(({ id }) => id === manner.slip);
      const wrong = slip && slipSpans(ready, slip)[0];
      if (!wrong) throw new Error(\`The sample lesson cannot be made: \${step.id} has no slip \${manner.slip}.\`);
      value = wrong.middle;
    }
    if (manner && "as" in manner && manner.as === "words") return sampleTexts.words;
    const text2 = "decimals" in ready.asked ? value.toFixed(ready.asked.decimals) : typed(value, manner && "figures" in manner ? manner.figures : figures);
    values[step.id] = Number(text2);
    return manner && "as" in manner && manner.as === "with unit" ? \`\${text2} \${step.unit}\` : text2;
  };
  const weighed = (expects) => {
    const step = activity.steps.find(({ id }) => id === expects);
    if ((step == null ? void 0 : step.kind) !== "calculated")
      throw new Error(\`The sample lesson cannot be made: nothing is expected by \${String(expects)}.\`);
    const ready = prepared(step);
    const decimals = Math.max(0, Math.round(-Math.log10(defaultShelf.balanceReadabilityG)));
    return (spanOver(ready, ready.quantity.relation).middle * weighedShare).toFixed(decimals);
  };
  const orderTyped = (procedure, isWrong2) => {
    const order2 = [...lettersInOrder(procedure)];
    const [last2 = "", before = ""] = [order2.pop(), order2.pop()];
    return [...order2, ...isWrong2 ? [last2, before] : [before, last2]].join(" ");
  };
  const entryOf = (step) => {
    var _a;
    const manner = manners[step.id];
    const as = manner && "as" in manner ? manner.as : void 0;
    switch (step.kind) {
      case "calculated":
        return calculatedEntry(step, manner);
      case "measured": {
        const reading = weighed(step.expects);
        values[step.id] = Number(reading);
        return reading;
      }
      case "ordered":
        return orderTyped(step.procedure, as === "wrong order");
      case "chosen": {
        const { right, others } = questionByName(step.question);
        const chosen = as === "wrong choice" ? others[0] : right;
        return letterOfOption(step.question, chosen);
      }
      case "ticked":
        return tickTexts.answer((_a = team.givens[step.substance.formula]) != null ? _a : "");
      case "told":
        return sampleTexts.told;
    }
  };
  return activity.steps.slice(0, count2).map((step, index) => {
    var _a;
    return {
      className: team.className,
      team: team.team,
      step: step.id,
      entry: entryOf(step),
      tries: (_a = tries[step.id]) != null ? _a : 1,
      minutesAgo: minutesAgo + minutesEach * (count2 - 1 - index)
    };
  });
}
var sampleSetup = () => ({
  activity: "stock and dilution",
  givens: startingGivens(stockAndDilution({ fromRealStock: false })),
  ownNumbers: true,
  settings: defaultSettings,
  shelf: defaultShelf,
  classes: sampleTexts.classes
});
function sampleLesson() {
  const setup = sampleSetup();
  const activity = activityById(setup.activity);
  if (activity === void 0) throw new Error("The sample lesson has no activity.");
  const { teams: teams2 } = certain(numbersForTeams(setup), "numbers");
  const entries = setup.classes.flatMap(
    ({ name, teams: names2 }, classAt) => names2.flatMap((team, teamAt) => {
      var _a;
      const plan = teams2.find((line) => line.className === name && line.team === team);
      const done2 = (_a = progress[classAt]) == null ? void 0 : _a[teamAt];
      return plan && done2 ? teamEntries(activity, plan, done2) : [];
    })
  );
  return { school: sampleTexts.school, setup, entries, members: sampleTexts.members };
}

// src/host/sampleEntries.ts
var minuteMs = 6e4;
function sampleEntries({
  plan,
  className,
  teams: teams2,
  day
}) {
  var _a, _b;
  const sample = sampleLesson();
  const entries = sample.entries.filter((entry) => entry.className === className);
  const { rows, firstRow } = plan.identity;
  const now = Date.now();
  const runs = [];
  for (const { key, team } of teams2) {
    const people = (_b = (_a = sample.members.find((one) => one.className === className && one.team === team)) == null ? void 0 : _a.people) != null ? _b : [];
    const heading = rows.findIndex(([rowKey]) => rowKey === key);
    if (people.length > 0 && heading >= 0) {
      const before = { members: [], day: "" };
      const text2 = membersText(shareRoles({ before, members: people, day, passOn: false }));
      runs.push({ row: firstRow + heading, column: classColumns.who, texts: [text2] });
    }
    const ofTeam = entries.filter((entry) => entry.team === team);
    const first = rows.findIndex(([rowKey, step]) => rowKey === key && step !== "");
    if (ofTeam.length === 0 || first < 0) continue;
    const steps = rows.slice(first).filter(([rowKey, step]) => rowKey === key && step !== "");
    const found = steps.map(([, step]) => ofTeam.find((entry) => entry.step === step));
    runs.push({
      row: firstRow + first,
      column: classColumns.entry,
      texts: found.map((entry) => {
        var _a2;
        return (_a2 = entry == null ? void 0 : entry.entry) != null ? _a2 : "";
      }),
      counts: {
        column: classColumns.tries,
        rows: found.map(
          (entry) => entry === void 0 ? ["", ""] : [entry.tries, new Date(now - entry.minutesAgo * minuteMs)]
        )
      }
    });
  }
  return runs;
}

// src/lab/poll/samplePoll.ts
var earlier = [
  ["1322", "2311", "2220", "1331", "0210"],
  ["2231", "1310", "2-21", "3320"]
];
var latest = [
  ["0110", "1210", "0011", "11-0", "2120", "0101"],
  ["1121", "0210", "2131", "1010", "0120"]
];
function samplePoll({
  today,
  dayBefore
}) {
  const { statements: statements2, scale: scale2, from: from2 } = pollTexts;
  const round = (day, marks, lines) => sampleTexts.classes.flatMap(
    ({ name }, classAt) => {
      var _a;
      return ((_a = marks[classAt]) != null ? _a : []).map((places, index) => {
        var _a2;
        return {
          day,
          className: name,
          from: index % 3 === 2 ? from2.student : from2.team,
          marks: statements2.map((_, place) => {
            var _a3;
            return (_a3 = scale2[Number(places.charAt(place))]) != null ? _a3 : "";
          }),
          openLine: (_a2 = classAt === 0 ? lines[index] : "") != null ? _a2 : ""
        };
      });
    }
  );
  return [...round(dayBefore, earlier, sampleTexts.pollBefore), ...round(today, latest, sampleTexts.poll)];
}

// src/host/samplePollEntries.ts
var dayMs = 864e5;
function samplePollEntries(spreadsheet) {
  const now = Date.now();
  const answers = samplePoll({ today: dayOf(spreadsheet, now), dayBefore: dayOf(spreadsheet, now - dayMs) });
  const rows = answers.map(({ day, className, from: from2, marks, openLine }) => [day, className, from2, ...marks, openLine]);
  return Array.from({ length: pollColumns.openLine - pollColumns.day + 1 }, (_, place) => ({
    row: pollRows.firstAnswer,
    column: pollColumns.day + place,
    texts: rows.map((row) => {
      var _a;
      return (_a = row[place]) != null ? _a : "";
    })
  }));
}

// src/host/showAfterBuild.ts
function showAfterBuild(spreadsheet, memo) {
  var _a, _b;
  removeEmptySheet(spreadsheet, memo);
  if (memo.made !== true) return;
  const before = sheetById(spreadsheet, memo.shownBefore);
  if (before !== void 0 && ((_a = tagOf(before)) == null ? void 0 : _a.state) !== "kept") {
    before.activate();
    return;
  }
  (_b = ownSheets(spreadsheet).find(({ tag }) => tag.kind === "class" && tag.state === "built")) == null ? void 0 : _b.sheet.activate();
}
function removeEmptySheet(spreadsheet, { emptySheet }) {
  if (emptySheet === void 0) return;
  const sheet = sheetById(spreadsheet, emptySheet);
  if (sheet !== void 0 && tagOf(sheet) === void 0 && isUntouched(sheet)) spreadsheet.deleteSheet(sheet);
}

// src/host/build.ts
var patienceMs = 2e3;
var planRole = { kind: "plan" };
var helpRole = { kind: "help" };
var progressRole = { kind: "progress" };
var pollRole = { kind: "poll" };
var prepareRole = { kind: "prepare" };
var classRole = (className) => ({ kind: "class", className });
function sheetToRead(spreadsheet, role2, memo) {
  var _a;
  const present = sheetInUse(ownSheets(spreadsheet), role2);
  const aside = memo == null ? void 0 : memo.replacements[roleName(role2)];
  if (aside === void 0 || (present == null ? void 0 : present.tag.state) === "built") return present == null ? void 0 : present.sheet;
  return (_a = sheetById(spreadsheet, aside.sheetId)) != null ? _a : present == null ? void 0 : present.sheet;
}
function planInUse(spreadsheet, memo) {
  const sheet = sheetToRead(spreadsheet, planRole, memo);
  if (sheet === void 0) return void 0;
  const reading = readLesson(valuesOf2(sheet));
  return reading.ok ? reading.value : void 0;
}
function startBuild(setup, { sample }) {
  const numbers = numbersForTeams(setup);
  if (!numbers.ok) return numbersProblem(numbers.error);
  const activity = lessonActivity(setup.settings);
  if (activity === void 0)
    return problem({ ...hostWords.setupProblems.activity, received: \`“\${setup.activity}”\` }, "activity");
  const locked = withDocumentLock(patienceMs, () => {
    const spreadsheet = openSpreadsheet();
    const earlier2 = readMemo();
    const before = planInUse(spreadsheet, earlier2);
    if (before !== void 0 && before.keysUsedTwice.length > 0) {
      return problem({ ...hostWords.keyTwice, received: \`“\${before.keysUsedTwice.join("”, “")}” twice\` });
    }
    if (sample && before !== void 0 && !before.invented) {
      return problem({ ...hostWords.lessonThere, received: hostWords.lessonOf(before.teams.length) });
    }
    const teams2 = keptTeams({ drafted: numbers.value.teams, before, setup });
    const lesson = {
      setup,
      activity: activityInUse(activity, teams2),
      teams: teams2,
      givenNames: activity.givens.map(({ name }) => name),
      invented: sample || staysInvented(before, teams2)
    };
    const memo = newMemo({ spreadsheet, lesson, earlier: earlier2, sample });
    saveMemo(memo);
    const plan = planPlanSheet(lesson, namesIn(memo, lesson));
    applySheet({ spreadsheet, plan, memo, replace: before !== void 0 && loses(before, lesson) });
    recalculateEveryMinute(spreadsheet);
    return done(advance(memo));
  });
  return locked.ran ? locked.value : done(stateOf(readMemo()));
}
var staysInvented = (before, teams2) => (before == null ? void 0 : before.invented) === true && teams2.every(({ key }) => before.teams.some((line) => line.key === key));
function beginAfresh(spreadsheet, lesson) {
  const memo = newMemo({ spreadsheet, lesson, earlier: void 0, sample: false });
  saveMemo(memo);
  recalculateEveryMinute(spreadsheet);
  return advance(memo);
}
function loses(before, lesson) {
  return before.teams.some(({ key, givens }, index) => {
    const line = lesson.teams[index];
    return (line == null ? void 0 : line.key) !== key || before.givenNames.some((name) => {
      var _a, _b;
      return ((_a = line.givens[name]) != null ? _a : "") !== ((_b = givens[name]) != null ? _b : "");
    });
  });
}
function newMemo({
  spreadsheet,
  lesson,
  earlier: earlier2,
  sample
}) {
  var _a, _b, _c;
  const own = ownSheets(spreadsheet);
  const classes = classNames(lesson);
  const gone = own.filter(
    ({ tag }) => {
      var _a2;
      return tag.kind === "class" && tag.state !== "kept" && !classes.includes((_a2 = tag.className) != null ? _a2 : "");
    }
  );
  const tasks = [
    { role: planRole, label: hostWords.buildLabels.plan },
    { role: helpRole, label: hostWords.buildLabels.help },
    { role: prepareRole, label: hostWords.buildLabels.prepare },
    ...classes.map((className) => ({ role: classRole(className), label: className })),
    ...gone.map(({ tag }) => {
      var _a2, _b2;
      return {
        role: classRole((_a2 = tag.className) != null ? _a2 : ""),
        label: hostWords.buildLabels.putAside((_b2 = tag.className) != null ? _b2 : ""),
        putAside: true
      };
    }),
    { role: progressRole, label: hostWords.buildLabels.progress },
    { role: pollRole, label: hostWords.buildLabels.poll }
  ];
  const unfinished = earlier2 !== void 0 && earlier2.done < earlier2.tasks.length ? earlier2 : void 0;
  const names2 = {};
  const promised = { ...unfinished == null ? void 0 : unfinished.names };
  for (const { sheet, tag } of own) {
    const isLeaving = ((_a = unfinished == null ? void 0 : unfinished.replacements[roleName(tag)]) == null ? void 0 : _a.sheetId) === sheet.getSheetId();
    if (tag.state !== "kept" && !isLeaving) promised[roleName(tag)] = sheet.getName();
  }
  const taken = [...spreadsheet.getSheets().map((sheet) => sheet.getName()), ...Object.values(promised)];
  const fresh = newSheetNames(classes, taken);
  const freshName = ({ kind, className = "" }) => {
    var _a2;
    return kind === "class" ? (_a2 = fresh.classes[className]) != null ? _a2 : className : kind === "record" ? words.record.sheet : fresh[kind];
  };
  for (const { role: role2, putAside: aside } of tasks) {
    if (!aside) names2[roleName(role2)] = (_b = promised[roleName(role2)]) != null ? _b : freshName(role2);
  }
  return {
    tasks,
    done: 0,
    stamp: (_c = unfinished == null ? void 0 : unfinished.stamp) != null ? _c : stampOf(spreadsheet),
    sample,
    names: names2,
    replacements: { ...unfinished == null ? void 0 : unfinished.replacements },
    ...viewBefore({ spreadsheet, isFirst: own.length === 0, unfinished })
  };
}
function viewBefore({
  spreadsheet,
  isFirst,
  unfinished
}) {
  if (unfinished !== void 0) {
    const { emptySheet, shownBefore, made } = unfinished;
    return {
      ...emptySheet === void 0 ? {} : { emptySheet },
      ...shownBefore === void 0 ? {} : { shownBefore },
      ...made === void 0 ? {} : { made }
    };
  }
  if (!isFirst) return { shownBefore: spreadsheet.getActiveSheet().getSheetId() };
  const empty = emptyFirstSheet(spreadsheet);
  return empty === void 0 ? {} : { emptySheet: empty.getSheetId() };
}
var stampOf = (spreadsheet) => Utilities.formatDate(/* @__PURE__ */ new Date(), spreadsheet.getSpreadsheetTimeZone(), "yyyy-MM-dd HH.mm");
function namesIn(memo, lesson) {
  var _a;
  const name = (role2, otherwise) => {
    var _a2;
    return (_a2 = memo.names[roleName(role2)]) != null ? _a2 : otherwise;
  };
  const fresh = newSheetNames(classNames(lesson));
  const classes = /* @__PURE__ */ Object.create(null);
  for (const className of classNames(lesson)) {
    classes[className] = name(classRole(className), (_a = fresh.classes[className]) != null ? _a : className);
  }
  return {
    plan: name(planRole, fresh.plan),
    progress: name(progressRole, fresh.progress),
    help: name(helpRole, fresh.help),
    prepare: name(prepareRole, fresh.prepare),
    poll: name(pollRole, fresh.poll),
    classes
  };
}
function continueBuild() {
  const locked = withDocumentLock(patienceMs, () => {
    const memo = readMemo();
    const task = memo == null ? void 0 : memo.tasks[memo.done];
    if (memo === void 0 || task === void 0) return done(stateOf(memo));
    const spreadsheet = openSpreadsheet();
    const finished = () => {
      if (memo.done + 1 === memo.tasks.length) showAfterBuild(spreadsheet, memo);
      return done(advance(memo));
    };
    if (task.putAside) {
      putAside({ spreadsheet, memo, role: task.role });
      return finished();
    }
    if (task.role.kind === "plan") return problem({ ...hostWords.planUnfinished, received: "one that stopped" });
    const lesson = lessonInFile(spreadsheet);
    if (!lesson.ok) return lesson;
    refreshNames(spreadsheet, memo);
    const { kind, className } = task.role;
    const isGone = kind === "class" && !lesson.value.lesson.teams.some((team) => team.className === className);
    if (isGone) return finished();
    const plan = sheetPlan({ spreadsheet, memo, task, ...lesson.value });
    const firstEntries = memo.sample && kind === "class" && className !== void 0 ? sampleEntries({
      plan,
      className,
      teams: teamsOf(lesson.value.lesson, className),
      day: dayOf(spreadsheet, Date.now())
    }) : memo.sample && kind === "poll" ? samplePollEntries(spreadsheet) : [];
    applySheet({ spreadsheet, plan, memo, firstEntries });
    if (kind === "prepare") {
      const { reading } = lesson.value;
      notePreparedPlan({ spreadsheet, writtenFrom: reading, readPlan: () => planInUse(spreadsheet) });
    }
    return finished();
  });
  return locked.ran ? locked.value : done(stateOf(readMemo()));
}
function refreshNames(spreadsheet, memo) {
  for (const { sheet, tag } of ownSheets(spreadsheet)) {
    if (tag.state !== "kept" && memo.replacements[roleName(tag)] === void 0)
      memo.names[roleName(tag)] = sheet.getName();
  }
}
function lessonInFile(spreadsheet) {
  var _a;
  const sheet = (_a = sheetInUse(ownSheets(spreadsheet), planRole)) == null ? void 0 : _a.sheet;
  if (sheet === void 0) return problem({ ...hostWords.planUnfinished, received: "none" });
  const reading = readLesson(valuesOf2(sheet));
  if (!reading.ok) return problemOf(reading.error);
  const activity = lessonActivity(reading.value.setup.settings);
  if (activity === void 0) {
    return problem({ ...hostWords.setupProblems.activity, received: \`“\${reading.value.setup.activity}”\` });
  }
  const missing = activity.givens.find(({ name }) => !reading.value.givenNames.includes(name));
  if (missing !== void 0)
    return problem({ ...hostWords.headingMissing(missing.name), received: "a Plan without it" });
  const { setup, teams: teams2, givenNames, invented } = reading.value;
  const lesson = { setup, activity: activityInUse(activity, teams2), teams: teams2, givenNames, invented };
  return done({ lesson, reading: reading.value });
}
function sheetPlan({
  spreadsheet,
  memo,
  task,
  lesson,
  reading
}) {
  var _a;
  const names2 = namesIn(memo, lesson);
  const { places } = reading;
  const { kind, className = "" } = task.role;
  if (kind === "poll") return planPollSheet(lesson, names2);
  if (kind === "help") return planHelpSheet(lesson, names2);
  if (kind === "prepare") return planPrepareSheet(lesson, names2, places);
  if (kind === "progress") {
    const classes = classNames(lesson).map((name) => ({ className: name, teams: teamsOf(lesson, name) }));
    return planProgressSheet({ lesson, classes, names: names2, places });
  }
  const present = sheetToRead(spreadsheet, task.role, memo);
  const found = present === void 0 ? void 0 : readClassSheet(valuesOf2(present));
  const order2 = (_a = found == null ? void 0 : found.blocks.map(({ key }) => key)) != null ? _a : [];
  const place = (key) => order2.includes(key) ? order2.indexOf(key) : order2.length;
  const teams2 = [...teamsOf(lesson, className)].sort((one, other) => place(one.key) - place(other.key));
  const keepsRows = found !== void 0 && found.blocks.length > 0;
  return planClassSheet({
    lesson,
    className,
    teams: teams2,
    names: names2,
    places,
    ...keepsRows ? { linkRows: found.linkRows } : {}
  });
}
function advance(memo) {
  memo.done += 1;
  saveMemo(memo);
  return stateOf(memo);
}
function stateOf(memo) {
  var _a, _b, _c, _d;
  const total2 = (_a = memo == null ? void 0 : memo.tasks.length) != null ? _a : 0;
  const built = (_b = memo == null ? void 0 : memo.done) != null ? _b : 0;
  const label = (_d = (_c = memo == null ? void 0 : memo.tasks[Math.min(built, total2 - 1)]) == null ? void 0 : _c.label) != null ? _d : "";
  return { done: built, total: total2, label, finished: built >= total2 };
}

// src/host/readSetup.ts
var longestName = 60;
var mostTeams = 200;
function readSetup2(given) {
  const { setupProblems: words2 } = hostWords;
  if (!isRecord(given)) return problem({ ...words2.shape, received: typeof given });
  const { activity, givens, settings, shelf, classes, ownNumbers } = given;
  const plan = typeof activity === "string" ? activityById(activity) : void 0;
  if (plan === void 0) return problem({ ...words2.activity, received: said(activity) }, "activity");
  if (!isRecord(givens) || !isRecord(settings) || !isRecord(shelf) || !Array.isArray(classes)) {
    return problem({ ...words2.shape, received: "a part of it" });
  }
  const readGivens = {};
  for (const { name, optional, fromTable } of plan.givens) {
    const value = textOf(givens[name]);
    if (value === "" && optional !== true && fromTable !== true && name !== plan.numbers.ion) {
      return problem({ ...words2.given, where: name, received: "a blank" }, \`givens.\${name}\`);
    }
    readGivens[name] = value;
  }
  const readSettings2 = {};
  for (const name of settingNames) readSettings2[name] = textOf(settings[name]) || defaultSettings[name];
  readSettings2.activity = plan.id;
  const flasksMl = sizes3(shelf.flasksMl);
  if (flasksMl === void 0)
    return problem({ ...words2.sizes, where: "flasks", received: said(shelf.flasksMl) }, "shelf.flasksMl");
  const pipettesMl = sizes3(shelf.pipettesMl);
  if (pipettesMl === void 0) {
    return problem({ ...words2.sizes, where: "pipettes", received: said(shelf.pipettesMl) }, "shelf.pipettesMl");
  }
  const { balanceReadabilityG, balanceMaxG } = shelf;
  if (!isSize(balanceReadabilityG)) {
    return problem({ ...words2.balance, received: said(balanceReadabilityG) }, "shelf.balanceReadabilityG");
  }
  if (!isSize(balanceMaxG)) return problem({ ...words2.balance, received: said(balanceMaxG) }, "shelf.balanceMaxG");
  const readClasses = classesOf2(classes);
  if (!readClasses.ok) return readClasses;
  return done({
    activity: plan.id,
    givens: readGivens,
    ownNumbers: ownNumbers === true,
    settings: readSettings2,
    shelf: { flasksMl, pipettesMl, balanceReadabilityG, balanceMaxG },
    classes: readClasses.value
  });
}
function classesOf2(classes) {
  const { setupProblems: words2 } = hostWords;
  const read = [];
  const classNames2 = [];
  let count2 = 0;
  for (const entry of classes) {
    const name = isRecord(entry) ? nameOf(entry.name) : "";
    const teams2 = isRecord(entry) && Array.isArray(entry.teams) ? entry.teams.map(nameOf) : [];
    if (name === "") return problem({ ...words2.className, received: "a blank" }, "classes");
    if (classNames2.includes(name.toLowerCase()))
      return problem({ ...words2.classTwice, received: \`“\${name}” twice\` }, "classes");
    classNames2.push(name.toLowerCase());
    if (teams2.length === 0) return problem({ ...words2.noTeams, where: name, received: "none" }, "classes");
    const blankTeam = teams2.includes("");
    if (blankTeam) return problem({ ...words2.teamName, where: name, received: "a blank" }, "classes");
    const twice = teams2.find((team, index) => teams2.indexOf(team) !== index);
    if (twice !== void 0)
      return problem({ ...words2.teamTwice, where: name, received: \`“\${twice}” twice\` }, "classes");
    count2 += teams2.length;
    read.push({ name, teams: teams2 });
  }
  if (read.length === 0) return problem({ ...words2.noClasses, received: "none" }, "classes");
  if (count2 > mostTeams) return problem({ ...words2.tooMany, received: String(count2) }, "classes");
  return done(read);
}
var isRecord = (given) => typeof given === "object" && given !== null && !Array.isArray(given);
var textOf = (given) => typeof given === "string" ? given.trim() : typeof given === "number" && Number.isFinite(given) ? String(given) : "";
var nameOf = (given) => textOf(given).replace(/\\s+/g, " ").slice(0, longestName).trim();
var isSize = (given) => typeof given === "number" && Number.isFinite(given) && given > 0;
var sizes3 = (given) => Array.isArray(given) && given.length > 0 && given.every(isSize) ? given : void 0;
var said = (given) => given === void 0 || given === null ? "nothing" : \`“\${String(given)}”\`;

// src/host/endpoints/addTeams.ts
function addTeam(className, team) {
  return withClasses((classes) => {
    if (!classes.some(({ name }) => name === className))
      return problem({ ...hostWords.classUnknown, received: \`“\${String(className)}”\` }, "class");
    return {
      ok: true,
      value: classes.map(
        ({ name, teams: teams2 }) => name === className ? { name, teams: [...teams2, String(team != null ? team : "")] } : { name, teams: teams2 }
      )
    };
  });
}
function addClass(className, teams2) {
  return withClasses((classes) => ({
    ok: true,
    value: [
      ...classes,
      { name: String(className != null ? className : ""), teams: Array.isArray(teams2) ? teams2.map((team) => String(team != null ? team : "")) : [] }
    ]
  }));
}
function withClasses(change) {
  const plan = planInUse(openSpreadsheet(), readMemo());
  if (plan === void 0) return problem(hostWords.teams.noLesson);
  const classes = change(plan.setup.classes);
  if (!classes.ok) return classes;
  const setup = readSetup2({ ...plan.setup, classes: classes.value });
  return setup.ok ? startBuild(setup.value, { sample: plan.invented }) : setup;
}

// src/host/endpoints/checkAgain.ts
function checkAgain() {
  const locked = withDocumentLock(2e3, () => {
    var _a, _b;
    let renewed = 0;
    for (const { sheet, tag } of ownSheets(openSpreadsheet())) {
      if (tag.kind !== "class" || tag.state === "kept") continue;
      for (const { known, headingRow: headingRow4 } of (_b = (_a = readClassSheet(valuesOf2(sheet))) == null ? void 0 : _a.blocks) != null ? _b : []) {
        if (known) continue;
        const cell = sheet.getRange(headingRow4, classColumns.check);
        const formula2 = cell.getFormula();
        if (formula2 === "") continue;
        cell.setValue("");
        settle();
        cell.setFormula(formula2);
        renewed += 1;
      }
    }
    return renewed;
  });
  return done({ renewed: locked.ran ? locked.value : 0 });
}

// src/host/endpoints/draftTeams.ts
function draftTeams(given) {
  var _a, _b;
  const setup = readSetup2(given);
  if (!setup.ok) return setup;
  const numbers = numbersForTeams(setup.value);
  if (!numbers.ok) return numbersProblem(numbers.error);
  const before = planInUse(openSpreadsheet(), readMemo());
  return done({
    givenNames: ((_b = (_a = activityById(setup.value.activity)) == null ? void 0 : _a.givens) != null ? _b : []).map(({ name }) => name),
    teams: keptTeams({ drafted: numbers.value.teams, before, setup: setup.value }),
    remarks: numbers.value.remarks
  });
}

// src/workbook/addedHints.ts
function addedHints(cells, plan) {
  const { help } = words;
  const planned = new Set(plan.identity.rows.map((row) => row.join("\\n")));
  const heading = cells.findIndex((line) => cellText(line[0]) === help.step && cellText(line[1]) === help.level);
  if (heading < 0) return [];
  return cells.slice(heading + 1).map((line) => [0, 1, 2, 3].map((column) => cellText(line[column]))).filter(
    ([step = "", level = "", ...own]) => step !== "" && own.join("") !== "" && !planned.has(\`\${step}
\${level}\`)
  );
}

// src/workbook/neutralLesson.ts
var number = /^[\\d.,]+( ?[%a-z]{1,3})?$/i;
function neutralLesson(reading, activity) {
  var _a;
  const classes = classNames(reading);
  const givenNames = activity.givens.map(({ name }) => name);
  const teamsSoFar = classes.map(() => 0);
  const teams2 = reading.teams.map((line) => {
    var _a2, _b;
    const place = classes.indexOf(line.className);
    const teamNumber = ((_a2 = teamsSoFar[place]) != null ? _a2 : 0) + 1;
    teamsSoFar[place] = teamNumber;
    const givens2 = {};
    for (const name of givenNames) givens2[name] = (_b = line.givens[name]) != null ? _b : "";
    return {
      key: \`c\${place + 1}-t\${teamNumber}\`,
      className: words.share.className(place + 1),
      team: words.share.team(teamNumber),
      givens: givens2
    };
  });
  const givens = {};
  for (const name of givenNames) givens[name] = (_a = reading.setup.givens[name]) != null ? _a : "";
  return {
    setup: {
      ...reading.setup,
      givens,
      settings: plainSettings(reading.setup.settings, activity),
      classes: classes.map((_, index) => {
        var _a2;
        return {
          name: words.share.className(index + 1),
          teams: Array.from({ length: (_a2 = teamsSoFar[index]) != null ? _a2 : 0 }, (__, team) => words.share.team(team + 1))
        };
      })
    },
    activity,
    teams: teams2,
    givenNames,
    invented: false
  };
}
function plainSettings(settings, activity) {
  const plain3 = {};
  for (const name of settingNames) {
    const value = settings[name];
    const options = settingOptions[name];
    const fits = options === void 0 ? number.test(value) : options.includes(value);
    plain3[name] = fits ? value : defaultSettings[name];
  }
  plain3.activity = activity.id;
  return plain3;
}

// src/host/entriesOfToday.ts
function entriesOfToday(spreadsheet) {
  var _a, _b;
  const day = dayOf(spreadsheet, Date.now());
  let count2 = 0;
  for (const { sheet, tag } of ownSheets(spreadsheet)) {
    if (tag.kind !== "class") continue;
    for (const { steps } of (_b = (_a = readClassSheet(valuesOf2(sheet))) == null ? void 0 : _a.blocks) != null ? _b : []) {
      count2 += steps.filter(
        ({ entry, lastEntry }) => entry !== "" && (lastEntry === void 0 || dayOf(spreadsheet, lastEntry) === day)
      ).length;
    }
  }
  return count2;
}

// src/lab/record/recordEntry.ts
var recordFields = [
  "day",
  "className",
  "activity",
  "aim",
  "present",
  "finished",
  "wentWell",
  "hard",
  "poll",
  "next",
  "notes"
];
var wordFields = ["present", "finished", "wentWell", "hard", "poll", "next", "notes"];

// src/lab/texts/record.ts
var teams = (number2) => number2 === 1 ? "1 team" : \`\${number2} teams\`;
var list = (parts) => parts.join(", ");
var recordWords = {
  ofTeams: ({ some, all }) => \`\${some} of \${teams(all)}\`,
  absent: (number2) => \`\${teams(number2)} absent\`,
  wentWell: (titles) => \`On target in every team: \${list(titles)}.\`,
  mostTries: (rows) => \`Most tries: \${list(rows.map(({ title, tries, teams: some }) => \`\${title} (at least \${tries}, several in \${teams(some)})\`))}.\`,
  stillOpen: (matches) => \`Still open: \${list(matches.map(({ words: words2, teams: some }) => \`\${words2} (\${teams(some)})\`))}.\`,
  goOnAt: ({ title, teams: some }) => \`Go on at \${title} (\${teams(some)}).\`,
  absentLabel: "absent",
  missingLabel: "not here",
  missing: (teams2) => list(teams2.map(({ team, names: names2 }) => \`\${list(names2)} (\${team})\`)),
  day: (day) => \`Record of \${day}\`,
  nothing: "No class has entries today.",
  named: (words2, names2) => \`\${words2} (\${list(names2)})\`,
  labels: {
    day: "day",
    className: "class",
    activity: "activity",
    aim: "aim",
    present: "present",
    finished: "finished",
    wentWell: "what went well",
    hard: "what was hard",
    poll: "poll",
    next: "what is next",
    notes: "in your own words"
  }
};

// src/workbook/planRecordSheet.ts
var recordLines = 400;
var headingRow3 = 4;
function planRecordSheet() {
  const { record } = words;
  const headings2 = recordFields.map((field) => recordWords.labels[field]);
  const lines = { row: headingRow3 + 1, column: 1, rows: recordLines, columns: recordFields.length };
  return {
    name: record.sheet,
    role: { kind: "record" },
    rowCount: headingRow3 + recordLines,
    columnCount: recordFields.length,
    columnWidths: [100, 110, 150, 220, 120, 100, 200, 300, 200, 200, 260],
    hiddenColumns: void 0,
    frozenRows: headingRow3,
    frozenColumns: 2,
    blocks: [
      { row: 1, column: 1, cells: [[text(record.title)], [text(record.note)]] },
      { row: headingRow3, column: 1, cells: [headings2.map(text)] }
    ],
    checks: [],
    looks: [
      { row: 1, column: 1, rows: 1, columns: recordFields.length, look: "title" },
      { row: 2, column: 1, rows: 1, columns: recordFields.length, look: "note" },
      { row: headingRow3, column: 1, rows: 1, columns: recordFields.length, look: "heading" },
      { ...lines, look: "question" }
    ],
    formats: [],
    states: [],
    choices: [],
    writable: [lines],
    unprotected: [],
    spill: [],
    identity: { firstRow: headingRow3, columns: [1, 2], rows: [headings2.slice(0, 2)] },
    carried: []
  };
}

// src/host/recordSheet.ts
var role = { kind: "record" };
function recordSheet(spreadsheet) {
  const found = sheetInUse(ownSheets(spreadsheet), role);
  return (found == null ? void 0 : found.tag.state) === "built" ? found.sheet : void 0;
}
function recordSheetMade(spreadsheet) {
  var _a;
  const present = recordSheet(spreadsheet);
  if (present !== void 0) return present;
  applySheet({ spreadsheet, plan: planRecordSheet(), memo: (_a = readMemo()) != null ? _a : noBuild() });
  return recordSheet(spreadsheet);
}
var noBuild = () => ({
  tasks: [],
  done: 0,
  stamp: "",
  sample: false,
  names: {},
  replacements: {}
});

// src/host/endpoints/emptyCopy.ts
var patienceMs2 = 2e3;
var ownPrefix = /^labrow/i;
function emptyCopy(given) {
  const { share: say2 } = hostWords;
  const wish = readWish(given);
  const locked = withDocumentLock(patienceMs2, () => {
    const spreadsheet = openSpreadsheet();
    const reading = planInUse(spreadsheet, readMemo());
    const activity = reading && lessonActivity(reading.setup.settings);
    if (reading === void 0 || activity === void 0) return problem(say2.noLesson);
    if (entriesOfToday(spreadsheet) > 0 && wish.fileName !== spreadsheet.getName().trim()) {
      const received = wish.fileName === "" ? "no name" : \`“\${wish.fileName}”\`;
      return problem({ ...say2.entries, received }, "fileName");
    }
    const lesson = neutralLesson(reading, activity);
    const kept = writeAnew({ spreadsheet, lesson, keepHints: wish.keepHints });
    removeOthers({ spreadsheet, kept, everything: wish.removeOthers });
    for (const entry of spreadsheet.getDeveloperMetadata()) if (ownPrefix.test(entry.getKey())) entry.remove();
    PropertiesService.getDocumentProperties().deleteAllProperties();
    return done(beginAfresh(spreadsheet, lesson));
  });
  return locked.ran ? locked.value : problem(say2.busy);
}
function writeAnew({
  spreadsheet,
  lesson,
  keepHints
}) {
  const names2 = newSheetNames(classNames(lesson));
  const memo = noBuild();
  applySheet({ spreadsheet, plan: planPlanSheet(lesson, names2), memo, replace: true });
  const inUse = (kind) => {
    var _a;
    return (_a = sheetInUse(ownSheets(spreadsheet), { kind })) == null ? void 0 : _a.sheet;
  };
  const before = inUse("help");
  if (keepHints && before !== void 0) {
    const plan = planHelpSheet(lesson, names2);
    const added = addedHints(valuesOf2(before), plan);
    applySheet({ spreadsheet, plan, memo, replace: true });
    const after = inUse("help");
    const spare = plan.writable[1];
    if (after !== void 0 && spare !== void 0 && added.length > 0) {
      const lines = added.slice(0, spare.rows);
      writeTexts(after.getRange(spare.row, spare.column, lines.length, spare.columns), lines);
    }
  }
  const kept = [];
  const keep = (sheet, name) => {
    if (sheet !== void 0) kept.push({ sheet, name });
  };
  keep(inUse("plan"), words.plan.sheet);
  if (keepHints) keep(inUse("help"), words.help.sheet);
  return kept;
}
function removeOthers({
  spreadsheet,
  kept,
  everything
}) {
  var _a;
  const keptIds = kept.map(({ sheet }) => sheet.getSheetId());
  const own = ownSheets(spreadsheet).map(({ sheet }) => sheet.getSheetId());
  const leaving = spreadsheet.getSheets().filter((sheet) => !keptIds.includes(sheet.getSheetId())).filter((sheet) => everything || own.includes(sheet.getSheetId()));
  const leavingIds = leaving.map((sheet) => sheet.getSheetId());
  for (const named of spreadsheet.getNamedRanges()) {
    if (everything || leavingIds.includes(named.getRange().getSheet().getSheetId())) named.remove();
  }
  (_a = kept[0]) == null ? void 0 : _a.sheet.activate();
  for (const sheet of leaving) spreadsheet.deleteSheet(sheet);
  const taken = spreadsheet.getSheets().map((sheet) => sheet.getName());
  for (const { sheet, name } of kept) if (!taken.includes(name)) sheet.setName(name);
}
function readWish(given) {
  const wish = typeof given === "object" && given !== null ? given : {};
  return {
    fileName: typeof wish.fileName === "string" ? wish.fileName.trim() : "",
    keepHints: wish.keepHints === true,
    removeOthers: wish.removeOthers === true
  };
}

// src/host/endpoints/goToPoll.ts
function goToPoll() {
  var _a;
  const sheet = (_a = sheetInUse(ownSheets(openSpreadsheet()), { kind: "poll" })) == null ? void 0 : _a.sheet;
  if (sheet === void 0) return problem(hostWords.noPoll);
  sheet.activate();
  return done(null);
}

// src/host/classSheet.ts
function classSheet(spreadsheet, className) {
  var _a, _b;
  if (typeof className !== "string") return problem({ ...hostWords.classUnknown, received: typeof className });
  const own = ownSheets(spreadsheet);
  const byName = sheetInUse(own, { kind: "class", className });
  if (byName !== void 0) return done(byName.sheet);
  const keys = ((_b = (_a = planInUse(spreadsheet)) == null ? void 0 : _a.teams) != null ? _b : []).filter((team) => team.className === className).map(({ key }) => key);
  const byKeys = own.find(
    ({ sheet, tag }) => {
      var _a2;
      return tag.kind === "class" && tag.state !== "kept" && ((_a2 = readClassSheet(valuesOf2(sheet))) == null ? void 0 : _a2.blocks.some(({ key }) => keys.includes(key)));
    }
  );
  if (byKeys !== void 0) return done(byKeys.sheet);
  return problem({ ...hostWords.classUnknown, received: \`“\${className}”\` });
}

// src/host/endpoints/goToTeam.ts
function goToTeam(className, key) {
  var _a;
  const found = classSheet(openSpreadsheet(), className);
  if (!found.ok) return found;
  const block = (_a = readClassSheet(valuesOf2(found.value))) == null ? void 0 : _a.blocks.find((candidate) => candidate.key === key);
  if (block === void 0) return problem({ ...hostWords.teamUnknown, received: \`“\${String(key)}”\` });
  found.value.activate();
  found.value.getRange(block.headingRow, 1).activate();
  return done(null);
}

// src/host/pages.ts
var pageNames = ["preparation", "labels", "key", "paper", "period", "done", "particles"];

// src/host/endpoints/openPage.ts
var file = "Sidebar";
var bodyStart = "<body>";
var size = { width: 1e3, height: 720 };
function openPage(name, about = "") {
  const output = HtmlService.createHtmlOutputFromFile(file);
  const handed = typeof about === "string" ? about : "";
  if (name === "sidebar") {
    const opened = handed === "" ? output : HtmlService.createHtmlOutput(withMark(output.getContent(), { name, about: handed }));
    ui().showSidebar(opened.setTitle(hostWords.title));
    return done(null);
  }
  const page = pageNames.find((known) => known === name);
  if (page === void 0) return problem({ ...hostWords.pageUnknown, received: \`“\${String(name)}”\` });
  const content = output.getContent();
  if (!content.includes(bodyStart)) return problem({ ...hostWords.pageUnknown, received: "a page without a body" });
  const marked2 = HtmlService.createHtmlOutput(withMark(content, { name: page, about: handed }));
  ui().showModalDialog(marked2.setWidth(size.width).setHeight(size.height), hostWords.pageTitles[page]);
  return done(null);
}
var withMark = (content, { name, about }) => content.replace(bodyStart, () => \`<body data-page="\${name}" data-about="\${escaped(about)}">\`);
var escaped = (text2) => text2.replace(/[&<>"']/g, (character) => \`&#\${character.charCodeAt(0)};\`).replace(/\\s+/g, " ");

// src/lab/members/membersOn.ts
var membersOn = (team, day) => team.day === "" || team.day === day ? team : { ...team, members: team.members.map((member) => ({ ...member, absent: false })) };

// src/lab/members/readMembers.ts
var dayLine = /^[^:]*?(\\d{4}-\\d{2}-\\d{2})$/;
var absence = /^(?:(?:is )?(?:not here|absent|away)(?: today)?)$/i;
var spellings = [
  /^calc(?:ulat(?:es?|ing|or))?$/i,
  /^writ(?:es?|ing|er)$/i,
  /^(?:(?:runs?|running) )?(?:the )?bench$/i,
  /^record(?:s|ing|er)?$/i
];
function readMembers(cell) {
  var _a;
  const members = [];
  let day = "";
  for (const part of cell.split(/[\\r\\n,;]+/)) {
    const piece = part.trim();
    if (piece === "" || piece.toLowerCase() === membersTexts.heading.toLowerCase()) continue;
    const dated = (_a = dayLine.exec(piece)) == null ? void 0 : _a[1];
    const last2 = members[members.length - 1];
    if (dated !== void 0) day = dated;
    else if (last2 !== void 0 && isKnown(piece)) say(last2, piece);
    else {
      const { name, said: said2 } = nameAndWords(piece);
      const member = { name, absent: false, roles: [] };
      members.push(member);
      say(member, said2);
    }
  }
  return { members, day };
}
var roleIn = (words2) => roles[spellings.findIndex((spelling) => spelling.test(words2))];
var isKnown = (words2) => absence.test(words2) || roleIn(words2) !== void 0 || words2.toLowerCase() === membersTexts.helps;
function nameAndWords(piece) {
  var _a, _b, _c;
  const split = (_a = /^(.+?)(?:\\s*:|\\s+[-–—]\\s)\\s*(.*)$/.exec(piece)) != null ? _a : /^(.+?)\\s*\\(([^)]*)\\)$/.exec(piece);
  if (split !== null) return { name: ((_b = split[1]) != null ? _b : "").trim(), said: ((_c = split[2]) != null ? _c : "").trim() };
  for (let space = piece.indexOf(" "); space > 0; space = piece.indexOf(" ", space + 1)) {
    const said2 = piece.slice(space + 1).trim();
    if (isKnown(said2)) return { name: piece.slice(0, space).trim(), said: said2 };
  }
  return { name: piece, said: "" };
}
function say(member, said2) {
  var _a;
  if (said2 === "") return;
  if (absence.test(said2)) {
    member.absent = true;
    return;
  }
  const parts = said2.split(/\\s+and\\s+|\\s*[&/+]\\s*/i);
  const each = parts.every((part) => roleIn(part) !== void 0) ? parts : [said2];
  for (const part of each) {
    const role2 = (_a = roleIn(part)) != null ? _a : part;
    if (!member.roles.includes(role2)) member.roles.push(role2);
  }
}

// src/host/writeMembers.ts
function writeMembers(sheet, { headingRow: headingRow4, text: text2 }) {
  const cell = sheet.getRange(headingRow4, classColumns.who);
  cell.setNumberFormat("@");
  writeTexts(cell, [[text2]]);
}

// src/host/endpoints/passRoles.ts
function passRoles(className) {
  var _a, _b;
  const spreadsheet = openSpreadsheet();
  const found = classSheet(spreadsheet, className);
  if (!found.ok) return found;
  const day = dayOf(spreadsheet, Date.now());
  let passed = 0;
  for (const { who, headingRow: headingRow4 } of (_b = (_a = readClassSheet(valuesOf2(found.value))) == null ? void 0 : _a.blocks) != null ? _b : []) {
    const before = readMembers(who);
    if (before.members.length === 0 || before.day === day) continue;
    const { members } = membersOn(before, day);
    const text2 = membersText(shareRoles({ before, members, day, passOn: true }));
    writeMembers(found.value, { headingRow: headingRow4, text: text2 });
    passed += 1;
  }
  return done({ passed });
}

// src/workbook/classNow.ts
var manyTries = 3;
var quietMinutes = 8;
var teamsForTheme = 2;
var minuteMs2 = 6e4;
function classNow({ reading, titles, told, absent = [], extension, now }) {
  const concerns = reading.blocks.filter(({ key }) => !absent.includes(key)).map((block) => ({ block, concern: concernOf({ block, titles, told, extension, now }) })).filter((entry) => entry.concern !== void 0);
  concerns.sort(({ concern: one }, { concern: other }) => one.rank - other.rank || other.weight - one.weight);
  return {
    talkFirst: concerns.map(({ block, concern: { rank: rank2, reason } }) => ({
      team: block.team,
      reason,
      ...rank2 === ranks.ready ? { ready: true } : {}
    })),
    sayToClass: themeOf(reading),
    notYetKnown: reading.blocks.reduce(
      (sum, { steps }) => sum + steps.filter(({ check }) => check === notYetKnown).length,
      0
    )
  };
}
var ranks = { asks: 1, sameTwice: 2, manyTries: 3, quiet: 4, notYet: 5, ready: 6 };
var isOpen = ({ check }) => check !== "on target" && check !== notYetKnown;
var isWrong = ({ check, entry }) => check === "not yet" && entry !== "";
function concernOf({
  block,
  titles,
  told,
  extension,
  now
}) {
  const { classNow: say2 } = words;
  const title = (step) => {
    var _a;
    return (_a = titles.get(step)) != null ? _a : step;
  };
  const scored = block.steps.filter(({ step }) => !told.includes(step));
  const open = scored.filter(isOpen);
  const asking = open.find(({ helpWanted }) => helpWanted > 0);
  if (asking !== void 0) {
    return {
      rank: ranks.asks,
      weight: asking.helpWanted,
      reason: say2.askedForHelp({ step: title(asking.step), level: asking.helpWanted })
    };
  }
  const repeated = repeatedFeedback(scored);
  if (repeated !== void 0) {
    const [first, second] = repeated;
    return {
      rank: ranks.sameTwice,
      weight: first.tries + second.tries,
      reason: say2.sameTwice({ first: title(first.step), second: title(second.step) })
    };
  }
  const tried = [...open].sort((one, other) => other.tries - one.tries)[0];
  if (tried !== void 0 && tried.tries >= manyTries && tried.entry !== "") {
    return {
      rank: ranks.manyTries,
      weight: tried.tries,
      reason: say2.manyTries({ step: title(tried.step), tries: tried.tries })
    };
  }
  const next = open[0];
  const last2 = block.steps.reduce((latest2, { lastEntry }) => Math.max(latest2, lastEntry != null ? lastEntry : 0), 0);
  const minutes = Math.floor((now - last2) / minuteMs2);
  if (next !== void 0 && last2 > 0 && minutes >= quietMinutes) {
    return { rank: ranks.quiet, weight: minutes, reason: say2.quiet({ minutes, step: title(next.step) }) };
  }
  const wrong = open.find(isWrong);
  if (wrong !== void 0) return { rank: ranks.notYet, weight: wrong.tries, reason: say2.notYet(title(wrong.step)) };
  if (scored.length > 0 && scored.every(({ check }) => check === "on target")) {
    return { rank: ranks.ready, weight: 0, reason: say2.allDone(extension) };
  }
  return void 0;
}
var general = ["notYet", "farFromTarget", "follows", "needsRow", "lookFirst", "waitForRow"];
var namesASlip = ({ lookAt }) => lookAt !== "" && !general.some((name) => {
  var _a;
  return lookAt.startsWith((_a = remarks[name].split("{")[0]) != null ? _a : "");
});
function repeatedFeedback(steps) {
  const wrong = steps.filter((step) => isWrong(step) && namesASlip(step));
  for (const [index, first] of wrong.entries()) {
    const second = wrong.slice(index + 1).find(({ lookAt }) => lookAt === first.lookAt);
    if (second !== void 0) return [first, second];
  }
  return void 0;
}
function themeOf({ blocks }) {
  var _a;
  const teamsByWords = /* @__PURE__ */ new Map();
  for (const { steps } of blocks) {
    const said2 = new Set(steps.filter((step) => isWrong(step) && namesASlip(step)).map(({ lookAt }) => lookAt));
    for (const lookAt of said2) teamsByWords.set(lookAt, ((_a = teamsByWords.get(lookAt)) != null ? _a : 0) + 1);
  }
  const [theme] = [...teamsByWords.entries()].sort(([, one], [, other]) => other - one);
  return theme === void 0 || theme[1] < teamsForTheme ? "" : words.classNow.theme({ teams: theme[1], lookAt: theme[0] });
}

// src/workbook/percentErrors.ts
var soundChecks = ["on target", "close"];
function percentErrors({ blocks }, { steps, decimalMark }) {
  const asked = steps.filter((step) => step.kind === "calculated" && step.quantity === "percent error").map(({ id }) => id);
  if (asked.length === 0) return void 0;
  return blocks.flatMap(({ steps: rows }) => rows.filter(({ step, check }) => asked.includes(step) && soundChecks.includes(check))).flatMap(({ entry, step }) => {
    const plain3 = readNumber(entry, step, { decimalMark });
    const read = plain3.ok ? plain3 : readQuantity(entry, "percent", step, { decimalMark });
    return read.ok ? [Math.abs(read.value.value)] : [];
  }).sort((one, other) => one - other);
}

// src/host/absentKeys.ts
var absentKeys = (plan, day) => {
  var _a;
  return ((_a = plan == null ? void 0 : plan.absent) != null ? _a : []).filter((mark) => mark.day === "" || mark.day === day).map(({ key }) => key);
};

// src/host/membersView.ts
function membersView(who, day) {
  const read = readMembers(who);
  const { members } = membersOn(read, day);
  return {
    who,
    day: read.day,
    members: members.map(({ name, absent, roles: roles2 }) => ({ name, absent, roles: [...roles2] }))
  };
}

// src/host/endpoints/readClass.ts
function readClass(className) {
  var _a, _b, _c;
  const spreadsheet = openSpreadsheet();
  const found = classSheet(spreadsheet, className);
  if (!found.ok) return found;
  const reading = readClassSheet(valuesOf2(found.value));
  if (reading === void 0)
    return problem({ ...hostWords.classUnreadable, where: String(className), received: "one without" });
  const plan = planInUse(spreadsheet);
  const activity = activityById((_a = plan == null ? void 0 : plan.setup.activity) != null ? _a : "");
  const steps = activity === void 0 ? [] : activityInUse(activity, (_b = plan == null ? void 0 : plan.teams) != null ? _b : []).steps;
  const titles = new Map(steps.map(({ id, title }) => [id, title]));
  const told = steps.filter(({ kind }) => kind === "told").map(({ id }) => id);
  const now = /* @__PURE__ */ new Date();
  const day = dayOf(spreadsheet, now.getTime());
  const absent = absentKeys(plan, day);
  const formulas = entryFormulaRows(found.value);
  const errors = percentErrors(reading, {
    steps,
    decimalMark: (plan == null ? void 0 : plan.setup.settings["decimal mark"]) === "comma" ? "comma" : "point"
  });
  const { talkFirst, sayToClass, notYetKnown: notYetKnown2 } = classNow({
    reading,
    titles,
    told,
    absent,
    extension: (_c = activity == null ? void 0 : activity.extension) != null ? _c : "",
    now: now.getTime()
  });
  const scored = (step) => !told.includes(step);
  return done({
    className: String(className),
    clock: Utilities.formatDate(now, spreadsheet.getSpreadsheetTimeZone(), "HH:mm"),
    stepCount: steps.filter(({ kind }) => kind !== "told").length,
    teams: reading.blocks.map((block) => ({
      team: block.team,
      key: block.key,
      ...absent.includes(block.key) ? { absent: true } : {},
      members: membersView(block.who, day).members,
      done: block.steps.filter(({ step, check }) => scored(step) && check === "on target").length,
      steps: block.steps.map(({ row, step, check, entry, lookAt, tries, helpWanted, who }) => {
        var _a2;
        return {
          id: step,
          title: (_a2 = titles.get(step)) != null ? _a2 : step,
          check,
          entry,
          lookAt,
          tries,
          helpWanted,
          who,
          isFormula: formulas.has(row)
        };
      })
    })),
    talkFirst,
    sayToClass,
    notYetKnown: notYetKnown2,
    ...errors === void 0 ? {} : { percentErrors: errors }
  });
}
function entryFormulaRows(sheet) {
  const rows = /* @__PURE__ */ new Set();
  const lastRow = sheet.getLastRow();
  if (lastRow === 0) return rows;
  sheet.getRange(1, 2, lastRow, 1).getFormulas().forEach(([formula2], index) => {
    if (formula2 !== void 0 && formula2 !== "") rows.add(index + 1);
  });
  return rows;
}

// src/lab/texts/key.ts
var keyTexts = {
  needs: (row) => \`Works from “\${row}”, which has no answer here.\`,
  about: (value) => \`about \${value}\`,
  reading: "What the instrument shows decides; this is what the plan gives.",
  fromReading: "If the reading is as planned; otherwise it follows from the team’s own reading.",
  oneOrder: "One order that is right; others may be.",
  told: "In their own words: read it and talk about it. It is never scored."
};

// src/lab/key/checkFigure.ts
var weights = [1, 3, 7, 9];
function checkFigure(typed2) {
  var _a, _b;
  const plain3 = typed2.replace(",", ".").replace(/^[-+]/, "");
  const [whole = "", decimals = ""] = plain3.split(".");
  const digits = \`\${whole}\${decimals}\`.replace(/^0+/, "");
  const leadingZeros = (_b = (_a = /^0*/.exec(decimals)) == null ? void 0 : _a[0].length) != null ? _b : 0;
  const power = Number(whole) === 0 ? -leadingZeros - 1 : whole.replace(/^0+/, "").length - 1;
  const sum = [...digits].reduce((total2, digit, place) => {
    var _a2;
    return total2 + Number(digit) * ((_a2 = weights[place % 4]) != null ? _a2 : 1);
  }, 0);
  return ((sum + (digits === "" ? 0 : power)) % 10 + 10) % 10;
}

// src/lab/key/teamKey.ts
function teamKey({
  activity,
  team,
  settings: given
}) {
  const settings = readLessonSettings(Object.entries(given));
  const { decimalMark } = settings;
  const worked = /* @__PURE__ */ new Map();
  const stepOf = (id) => activity.steps.find((step) => step.id === id);
  function prepared(step) {
    var _a, _b;
    const quantity = quantities[step.quantity];
    const cells = {};
    const names2 = {};
    const numbers = {};
    let rests = false;
    for (const [name, source] of Object.entries(step.takes)) {
      if ("given" in source) {
        cells[name] = team.givens[source.given];
        names2[name] = source.given;
        continue;
      }
      const from2 = worked.get(source.entryOf);
      if (from2 === void 0) return { rests, trouble: keyTexts.needs((_b = (_a = stepOf(source.entryOf)) == null ? void 0 : _a.title) != null ? _b : source.entryOf) };
      numbers[name] = from2.value;
      rests || (rests = from2.rests);
    }
    const figuresRead = takesLessonFigures(quantity);
    const result = prepareStep(quantity, cells, {
      ...figuresRead ? { figures: settings.figures } : {},
      decimals: settings.decimals,
      decimalMark,
      numbers,
      names: names2
    });
    return result.ok ? { ready: result.value, rests, trouble: "" } : { rests, trouble: errorText(result.error) };
  }
  const inMark = (text2) => decimalMark === "comma" ? text2.replace(".", ",") : text2;
  const shown = (value, { asked }) => {
    var _a;
    if (Math.abs(value) < 1e-12) return "0";
    const text2 = "decimals" in asked ? value.toFixed(asked.decimals) : (_a = plainText(Number(value.toPrecision(asked.figures)), asked.figures)) != null ? _a : String(Number(value.toPrecision(asked.figures)));
    return inMark(text2);
  };
  function calculatedLine(step) {
    var _a, _b;
    const { ready, rests, trouble } = prepared(step);
    if (!ready) return { answer: "", note: trouble, checkFigures: [] };
    const span = spanOver(ready, ready.quantity.relation);
    const texts = [span.middle, span.low, span.high].map((value2) => shown(value2, ready));
    const value = rests ? Number(((_a = texts[0]) != null ? _a : "").replace(",", ".")) : span.middle;
    worked.set(step.id, { value, rests });
    return {
      answer: (_b = texts[0]) != null ? _b : "",
      note: rests ? keyTexts.fromReading : "",
      checkFigures: rests ? [] : [...new Set(texts.map(checkFigure))]
    };
  }
  function reading(expected, unit) {
    const finest = unit === "g" ? balanceReadability(given) : void 0;
    return (finest == null ? void 0 : finest.ok) ? expected.toFixed(Math.max(0, -finest.value.lastPlace)) : decimalText(Number(expected.toPrecision(4)), "point");
  }
  function measuredLine({ id, expects, unit }) {
    var _a, _b, _c;
    let expected;
    if (typeof expects === "string") {
      expected = (_a = worked.get(expects)) == null ? void 0 : _a.value;
      if (expected === void 0) return { answer: "", note: keyTexts.needs((_c = (_b = stepOf(expects)) == null ? void 0 : _b.title) != null ? _c : expects) };
    } else if ("expected" in expects) {
      const found = expectedValue(expects, { givens: team.givens, decimalMark });
      if (!found.ok) return { answer: "", note: errorText(found.error) };
      expected = found.value;
    } else {
      const read = readQuantity(team.givens[expects.given], unitKind(unit), expects.given, { decimalMark });
      if (!read.ok) return { answer: "", note: errorText(read.error) };
      expected = read.value.value;
    }
    const shownReading = reading(expected, unit);
    worked.set(id, { value: Number(shownReading), rests: true });
    return { answer: keyTexts.about(inMark(shownReading)), note: keyTexts.reading };
  }
  function lineOf(step) {
    var _a;
    switch (step.kind) {
      case "calculated":
        return calculatedLine(step);
      case "measured":
        return measuredLine(step);
      case "ordered":
        return { answer: lettersInOrder(step.procedure).join(" "), note: keyTexts.oneOrder };
      case "chosen": {
        const { right } = questionByName(step.question);
        return { answer: letterOfOption(step.question, right), note: right.reply };
      }
      case "ticked":
        return { answer: tickTexts.answer((_a = team.givens[step.substance.formula]) != null ? _a : ""), note: "" };
      case "told":
        return { answer: "", note: keyTexts.told };
    }
  }
  return activity.steps.map((step) => ({
    step: step.id,
    title: step.title,
    unit: step.unit,
    checkFigures: [],
    ...lineOf(step)
  }));
}

// src/host/lessonNow.ts
function lessonNow() {
  const plan = planInUse(openSpreadsheet(), readMemo());
  const activity = plan && lessonActivity(plan.setup.settings);
  if (plan === void 0 || activity === void 0) {
    return problem({ ...hostWords.noLesson, received: plan === void 0 ? "none" : \`“\${plan.setup.activity}”\` });
  }
  return done({ plan, activity });
}
var markOf = ({ setup }) => setup.settings["decimal mark"] === "comma" ? "comma" : "point";
var todayText = () => Utilities.formatDate(/* @__PURE__ */ new Date(), openSpreadsheet().getSpreadsheetTimeZone(), "yyyy-MM-dd");

// src/host/endpoints/readKey.ts
function readKey() {
  const lesson = lessonNow();
  if (!lesson.ok) return lesson;
  const { plan, activity } = lesson.value;
  const { settings } = plan.setup;
  return done({
    date: todayText(),
    activity: activity.title,
    teams: plan.teams.map((team) => ({
      className: team.className,
      team: team.team,
      key: team.key,
      lines: teamKey({ activity, team, settings }).map(({ title, unit, answer, note }) => ({
        title,
        unit,
        answer,
        note
      }))
    }))
  });
}

// src/lab/texts/period.ts
var periodTexts = {
  opening: "Aim of the day, who does what, eye protection on",
  bench: "At the bench",
  clearing: "Clear up, wash hands, one sentence about the day"
};

// src/lab/periodPlan.ts
var usualMinutes = {
  ticked: 3,
  calculated: 3,
  ordered: 6,
  measured: 12,
  chosen: 3,
  told: 3
};
var opening = 4;
var clearing = 5;
var bench2 = 10;
var periodsOf = (steps) => [...new Set(steps.map(({ period }) => period))].sort();
var periodCount = ({ steps }) => periodsOf(steps).length;
function periodPlans({ steps }, periods) {
  const numbers = periods > 1 ? periodsOf(steps) : [1];
  return numbers.map((period) => {
    const lines = [
      { title: periodTexts.opening, minutes: opening },
      ...stepLines(steps.filter((step) => numbers.length === 1 || step.period === period)),
      { title: periodTexts.clearing, minutes: clearing }
    ];
    return { period, lines, minutes: total(lines) };
  });
}
var stepLines = (steps) => steps.flatMap(({ title, kind }, index) => {
  var _a;
  return [
    { title, minutes: usualMinutes[kind] },
    ...kind === "ordered" && ((_a = steps[index + 1]) == null ? void 0 : _a.kind) !== "measured" ? [{ title: periodTexts.bench, minutes: bench2 }] : []
  ];
});
var total = (lines) => lines.reduce((sum, { minutes }) => sum + minutes, 0);

// src/workbook/linkProblems.ts
function linkProblems(cells) {
  const { help } = words;
  const heading = cells.findIndex((line) => cellText(line[0]) === help.step && cellText(line[3]) === help.link);
  if (heading < 0) return [];
  const problems = [];
  for (const line of cells.slice(heading + 1)) {
    const [step, level, , link] = line.map(cellText);
    if (step === void 0 || step === "" || link === void 0 || link === "") continue;
    if (ownHint([line], { stepId: step, level: Number(level) }).link !== "") continue;
    problems.push(
      errorText({
        code: "plan-line",
        argument: help.where({ step, level: level != null ? level : "" }),
        expected: help.linkExpected,
        received: quoted(link),
        advice: help.linkAdvice
      })
    );
  }
  return problems;
}

// src/host/decimalMark.ts
function decimalMarkOf(locale) {
  try {
    return 0.5.toLocaleString(locale.replace("_", "-")).includes(",") ? "comma" : "point";
  } catch {
    return "point";
  }
}

// src/host/firstSetup.ts
var firstTeams = 6;
function firstSetup(decimalMark) {
  const setup = sampleSetup();
  return {
    activity: setup.activity,
    givens: setup.givens,
    ownNumbers: true,
    settings: { ...defaultSettings, activity: setup.activity, "decimal mark": decimalMark },
    shelf: defaultShelf,
    classes: [
      {
        name: hostWords.firstClass,
        teams: Array.from({ length: firstTeams }, (_, index) => hostWords.teamNumber(index + 1))
      }
    ]
  };
}

// src/host/solutesFor.ts
var isHydrate = (formula2) => {
  const read = readFormula(formula2);
  return read.ok && read.value.hydrate !== void 0;
};
function isAccepted(activity, formula2) {
  const read = readStartNumbers(activity, {
    activity: activity.id,
    givens: { ...startingGivens(activity), [activity.numbers.formula]: formula2 },
    ownNumbers: false,
    settings: defaultSettings,
    shelf: defaultShelf,
    classes: []
  });
  return read.ok || read.error.argument !== activity.numbers.formula;
}
function solutesFor(activity) {
  var _a, _b;
  const all = proposedSolutes();
  const start = (_b = (_a = activity.givens.find(({ name }) => name === activity.numbers.formula)) == null ? void 0 : _a.start) != null ? _b : "";
  const offered = activity.numbers.reagent ? concentratedReagents().filter(({ kind, forStaff }) => kind === "acid" && forStaff).map(({ name, formula: formula2 }) => ({ name, formula: formula2, caution: plannerCaution(formula2) })) : all.filter(({ formula: formula2 }) => !isHydrate(start) || isHydrate(formula2));
  const accepted = offered.filter(({ formula: formula2 }) => isAccepted(activity, formula2));
  return !activity.numbers.reagent && accepted.length === all.length ? void 0 : accepted;
}

// src/host/endpoints/readLesson.ts
function readLesson2() {
  var _a, _b;
  const spreadsheet = openSpreadsheet();
  const own = ownSheets(spreadsheet);
  const memo = readMemo();
  const localMark = decimalMarkOf(spreadsheet.getSpreadsheetLocale());
  const offer = {
    activities: activityViews(),
    solutes: proposedSolutes(),
    classes: own.filter(({ tag }) => tag.kind === "class" && tag.state === "built").map(({ tag }) => {
      var _a2;
      return (_a2 = tag.className) != null ? _a2 : "";
    }),
    ...memo !== void 0 && memo.done < memo.tasks.length ? { building: stateOf(memo) } : {}
  };
  const sheet = (_a = sheetInUse(own, { kind: "plan" })) == null ? void 0 : _a.sheet;
  const cells = sheet === void 0 ? [] : valuesOf2(sheet);
  if (sheet === void 0 || (memo == null ? void 0 : memo.done) === 0 && cells.length < 2) {
    return done({ ...offer, built: false, setup: firstSetup(localMark), decimalMark: localMark, problems: [] });
  }
  const reading = readLesson(cells);
  if (!reading.ok) return problemOf(reading.error);
  const { setup, problems } = reading.value;
  const help = (_b = sheetInUse(own, { kind: "help" })) == null ? void 0 : _b.sheet;
  return done({
    ...offer,
    built: offer.classes.length > 0,
    setup,
    decimalMark: setup.settings["decimal mark"] === "comma" ? "comma" : "point",
    problems: [...problems, ...help === void 0 ? [] : linkProblems(valuesOf2(help))]
  });
}
function activityViews() {
  return allActivities().map((activity) => {
    const { id, title, aim, givens } = activity;
    const flasks = flaskGivens(activity);
    const solutes = solutesFor(activity);
    return {
      id,
      title,
      aim,
      periods: periodCount(activity),
      givens: givens.map(({ name, unit, about, optional, fromTable, start }) => ({
        name,
        unit,
        about,
        optional: optional === true || fromTable === true,
        ...flasks.includes(name) ? { flask: true } : {},
        ...start === void 0 ? {} : { start }
      })),
      ...solutes === void 0 ? {} : { solutes }
    };
  });
}
var flaskGivens = ({ numbers: { solid, dilution, reagent, serial } }) => [solid == null ? void 0 : solid.flask, dilution == null ? void 0 : dilution.volume, reagent == null ? void 0 : reagent.volume, serial == null ? void 0 : serial.flask].filter((name) => name !== void 0);

// src/host/endpoints/readNumbers.ts
function readNumbers() {
  var _a, _b;
  const spreadsheet = openSpreadsheet();
  const plan = planInUse(spreadsheet);
  const setup = (_a = plan == null ? void 0 : plan.setup) != null ? _a : firstSetup(decimalMarkOf(spreadsheet.getSpreadsheetLocale()));
  return done({
    activity: setup.activity,
    decimalMark: setup.settings["decimal mark"] === "comma" ? "comma" : "point",
    typical: setup.givens,
    teams: (_b = plan == null ? void 0 : plan.teams) != null ? _b : []
  });
}

// src/lab/shownWords.ts
var shownWords = ({ shown }, team) => shown.map((piece, place) => pieceWords({ piece, before: shown[place - 1] }, team)).join("");
var typedFor = (name, { values }) => {
  var _a;
  return ((_a = values[name]) != null ? _a : "").trim();
};
function pieceWords({ piece, before }, team) {
  var _a, _b;
  if (typeof piece === "string") return typeof before === "object" ? following(piece, before.given, team) : piece;
  const value = typedFor(piece.given, team);
  return value === "" ? "" : \`\${(_a = piece.before) != null ? _a : ""}\${value}\${following((_b = piece.after) != null ? _b : "", piece.given, team)}\`;
}
function following(words2, name, team) {
  var _a, _b;
  const unit = (_b = (_a = team.givens.find((given) => given.name === name)) == null ? void 0 : _a.unit) != null ? _b : "";
  const start = \` \${unit}\`;
  if (unit === "" || !words2.startsWith(start) || /^[\\w/]/.test(words2.slice(start.length))) return words2;
  const typed2 = typedFor(name, team);
  return typed2 === "" || isBareNumber(typed2) ? words2 : words2.slice(start.length);
}

// src/host/endpoints/readPaper.ts
function readPaper() {
  const lesson = lessonNow();
  if (!lesson.ok) return lesson;
  const { plan, activity } = lesson.value;
  const { settings } = plan.setup;
  return done({
    date: todayText(),
    activity: activity.title,
    aim: activity.aim,
    teams: plan.teams.map((team) => {
      const key = teamKey({ activity, team, settings });
      return {
        className: team.className,
        team: team.team,
        key: team.key,
        steps: activity.steps.map((step, index) => {
          var _a, _b;
          return {
            title: step.title,
            // On paper nothing stands beside the row, so the cautions stand in it.
            shown: step.kind === "ticked" ? cautionWords({
              substance: step.substance,
              givens: team.givens,
              decimalMark: markOf(plan),
              studentsDilute: settings["concentrated reagents"] === "students"
            }) : shownWords(step, { values: team.givens, givens: activity.givens }),
            unit: step.unit,
            kind: step.kind,
            checkFigures: (_b = (_a = key[index]) == null ? void 0 : _a.checkFigures) != null ? _b : []
          };
        })
      };
    })
  });
}

// src/workbook/readPollSheet.ts
function readPollSheet(cells) {
  const answers = [];
  for (const line of cells.slice(pollRows.firstAnswer - 1)) {
    const text2 = (column) => cellText(line[column - 1]);
    const answer = {
      day: text2(pollColumns.day),
      className: text2(pollColumns.className),
      from: text2(pollColumns.from),
      marks: pollTexts.statements.map((_, place) => text2(pollColumns.firstStatement + place)),
      openLine: text2(pollColumns.openLine)
    };
    if (answer.openLine !== "" || answer.marks.some((mark) => mark !== "")) answers.push(answer);
  }
  return answers;
}

// src/host/endpoints/readPoll.ts
function readPoll() {
  var _a;
  const spreadsheet = openSpreadsheet();
  const today = dayOf(spreadsheet, Date.now());
  const sheet = (_a = sheetInUse(ownSheets(spreadsheet), { kind: "poll" })) == null ? void 0 : _a.sheet;
  if (sheet === void 0) return done({ sheet: "", today, answers: [] });
  return done({ sheet: sheet.getName(), today, answers: readPollSheet(valuesOf2(sheet)) });
}

// src/lab/preparation/labels.ts
function labels(day, decimalMark) {
  var _a;
  const number2 = (value) => decimalText(value, decimalMark);
  const molar = ({ molarity, typed: typed2 }) => {
    const shown = typed2 != null ? typed2 : number2(molarity);
    return preparationTexts.strength(shown, shown);
  };
  const named = [];
  for (const { formula: text2 } of day.solids) {
    const formula2 = (_a = day.uses.find((use) => use.formula.text === text2)) == null ? void 0 : _a.formula;
    const isThere = named.some((label) => label.formula.text === text2);
    if (formula2 === void 0 || isThere) continue;
    named.push({
      formula: formula2,
      strength: preparationTexts.solidStrength,
      cautions: cautionsAt(formula2, "undiluted"),
      whose: preparationTexts.forDay,
      copies: 1
    });
  }
  for (const solution of day.staffMade) {
    const { formula: formula2, molarity, fillings } = solution;
    named.push({
      formula: formula2,
      strength: molar(solution),
      cautions: cautionsAt(formula2, { molarity }),
      whose: preparationTexts.forDay,
      copies: fillings
    });
  }
  for (const { team, formula: formula2, poured, made, diluted } of day.uses) {
    if (poured) {
      const { massPercent } = poured;
      named.push({
        formula: formula2,
        strength: preparationTexts.bottleStrength(number2(massPercent)),
        cautions: cautionsAt(formula2, { massPercent }),
        whose: \`\${team.className} · \${team.team}\`,
        copies: 1
      });
    }
    for (const portion of [...made ? [made] : [], ...diluted]) {
      named.push({
        formula: portion.formula,
        strength: molar(portion),
        cautions: cautionsAt(portion.formula, { molarity: portion.molarity }),
        whose: \`\${team.className} · \${team.team}\`,
        copies: 1
      });
    }
  }
  return named.map(labelOf);
}
var sureness = / \\((?:harmonised|two sources|one source)[^()]*\\)$/;
function labelOf({ formula: formula2, strength, cautions: cautions2, whose, copies }) {
  var _a, _b;
  const { statements: statements2, signalWord, pictograms } = cautions2;
  const told = statements2.slice(0, -1);
  const advice = new Set(told.flatMap(({ advice: words2 }) => words2.split(/(?<=\\.) /)).filter((line) => line !== ""));
  return {
    name: nameOf2(formula2, cautions2),
    formula: formula2.text,
    strength,
    signalWord,
    pictograms: pictograms.map(pictogramNamed),
    statements: told.filter(({ text: text2 }) => text2 !== "").map(({ text: text2 }) => text2.replace(sureness, "")),
    advice: [...advice],
    deferring: (_b = (_a = statements2[statements2.length - 1]) == null ? void 0 : _a.advice) != null ? _b : "",
    whose,
    copies
  };
}
function nameOf2({ text: text2 }, { listing, name }) {
  var _a, _b;
  if (listing === "listed") return name;
  const dotted = text2.replace(/\\s/g, "").replace(/[.*•]/g, "·");
  return (_b = (_a = listedSolutes().find(({ formula: formula2 }) => formula2 === dotted)) == null ? void 0 : _a.name) != null ? _b : text2;
}

// src/host/isPrepareOutOfDate.ts
function isPrepareOutOfDate(sheet) {
  const { freshness: freshness2 } = prepareCells;
  return String(sheet.getRange(freshness2.row, freshness2.column).getValue()).startsWith("⚠");
}

// src/host/endpoints/readPreparation.ts
function readPreparation() {
  var _a;
  const lesson = lessonNow();
  if (!lesson.ok) return lesson;
  const { plan, activity } = lesson.value;
  const { settings, shelf } = plan.setup;
  const day = dayPreparation({ activity, teams: plan.teams, shelf, settings });
  const mark = markOf(plan);
  const sheet = (_a = sheetInUse(ownSheets(openSpreadsheet()), { kind: "prepare" })) == null ? void 0 : _a.sheet;
  const rows = preparationRows(day, mark);
  const names2 = Object.keys(preparationTexts.sections);
  return done({
    date: todayText(),
    decimalMark: mark,
    activity: activity.title,
    aim: activity.aim,
    sections: names2.map((name) => ({
      name,
      title: preparationTexts.sections[name],
      rows: rows.filter(({ section }) => section === name).map(({ what, amount: amount2, withSpare, unit, note, pictograms }) => ({
        what,
        unit,
        note,
        amount: amount2 != null ? amount2 : null,
        withSpare: withSpare != null ? withSpare : null,
        ...pictograms === void 0 ? {} : { pictograms }
      }))
    })).filter((section) => section.rows.length > 0),
    sheet: sheet === void 0 ? "none" : isPrepareOutOfDate(sheet) ? "out of date" : "up to date",
    labels: labels(day, mark),
    periods: periodPlans(activity, Number(settings.periods))
  });
}

// src/lab/record/classFacts.ts
var manyTries2 = 3;
var mostNamed = 3;
function classFacts({ day, className, activity, aim, teams: teams2, poll }) {
  const present = teams2.filter(({ here }) => here);
  const absent = teams2.filter((team) => team.absent && !team.here);
  const finished = present.filter(({ steps }) => steps.every(({ scored, check }) => !scored || check === "on target"));
  const count2 = (some) => recordWords.ofTeams({ some: some.length, all: teams2.length });
  return {
    entry: {
      day,
      className,
      activity,
      aim,
      present: absent.length === 0 ? count2(present) : \`\${count2(present)}, \${recordWords.absent(absent.length)}\`,
      finished: count2(finished),
      wentWell: wentWell(present),
      hard: hard(present),
      poll,
      next: finished.length === teams2.length ? "" : nextStep(present),
      notes: ""
    },
    names: {
      present: present.map(({ team }) => team),
      absent: absent.map(({ team }) => team),
      finished: finished.map(({ team }) => team),
      absentMembers: present.filter(({ absentMembers }) => absentMembers.length > 0).map(({ team, absentMembers }) => ({ team, names: absentMembers }))
    }
  };
}
var titlesOf = (teams2) => [
  ...new Set(teams2.flatMap(({ steps }) => steps.filter(({ scored }) => scored).map(({ title }) => title)))
];
var rowsOf = (teams2, title) => teams2.flatMap(({ steps }) => steps.filter((step) => step.scored && step.title === title));
function wentWell(present) {
  if (present.length === 0) return "";
  const titles = titlesOf(present).filter(
    (title) => rowsOf(present, title).every(({ check, tries }) => check === "on target" && tries <= 1)
  );
  return titles.length === 0 ? "" : recordWords.wentWell(titles.slice(0, mostNamed));
}
function hard(present) {
  var _a;
  const rows = titlesOf(present).map((title) => {
    const steps = rowsOf(present, title);
    return {
      title,
      tries: steps.reduce((sum, { tries }) => sum + tries, 0),
      teams: steps.filter(({ tries }) => tries > 1).length
    };
  }).filter(({ tries, teams: teams2 }) => tries >= manyTries2 && teams2 > 0).sort((one, other) => other.tries - one.tries).slice(0, mostNamed);
  const matches = /* @__PURE__ */ new Map();
  for (const { steps } of present) {
    const said2 = new Set(
      steps.filter(({ check, entry }) => check === "not yet" && entry !== "").map(({ lookAt }) => matchedBy(lookAt))
    );
    for (const words2 of said2) if (words2 !== "") matches.set(words2, ((_a = matches.get(words2)) != null ? _a : 0) + 1);
  }
  const commonest = [...matches.entries()].sort(([, one], [, other]) => other - one).slice(0, 2);
  return [
    ...rows.length === 0 ? [] : [recordWords.mostTries(rows)],
    ...commonest.length === 0 ? [] : [recordWords.stillOpen(commonest.map(([words2, teams2]) => ({ words: words2, teams: teams2 })))]
  ].join(" ");
}
function matchedBy(lookAt) {
  const opening2 = remarks.oneFits.slice(0, remarks.oneFits.indexOf("{fits}"));
  if (!lookAt.startsWith(opening2)) return "";
  const end = lookAt.indexOf(". ");
  return lookAt.slice(opening2.length, end < 0 ? lookAt.length : end);
}
function nextStep(present) {
  var _a, _b, _c;
  const waiting = /* @__PURE__ */ new Map();
  for (const { steps } of present) {
    const isOpen2 = ({ scored, check }) => scored && check !== "on target";
    const reached = steps.reduce((last2, { entry }, index) => entry === "" ? last2 : index, -1);
    const open = (_b = (_a = steps.find((step) => isOpen2(step) && step.entry !== "")) != null ? _a : steps.slice(reached + 1).find(isOpen2)) != null ? _b : steps.find(isOpen2);
    if (open !== void 0) waiting.set(open.title, ((_c = waiting.get(open.title)) != null ? _c : 0) + 1);
  }
  const [first] = [...waiting.entries()].sort(([, one], [, other]) => other - one);
  return first === void 0 ? "" : recordWords.goOnAt({ title: first[0], teams: first[1] });
}

// src/workbook/readRecordSheet.ts
function readRecordSheet(cells) {
  var _a;
  const labels2 = recordFields.map((field) => recordWords.labels[field]);
  const heading = cells.findIndex((line2) => labels2.every((label) => line2.some((cell) => cellText(cell) === label)));
  const line = cells[heading];
  if (line === void 0) return void 0;
  const columns4 = {};
  for (const field of recordFields) {
    columns4[field] = line.findIndex((cell) => cellText(cell) === recordWords.labels[field]) + 1;
  }
  const rows = [];
  let freeRow = heading + 2;
  for (let index = heading + 1; index < cells.length; index += 1) {
    const found = (_a = cells[index]) != null ? _a : [];
    if (found.every((cell) => cellText(cell) === "")) continue;
    freeRow = index + 2;
    const entry = {};
    for (const field of recordFields) entry[field] = cellText(found[columns4[field] - 1]);
    rows.push({ row: index + 1, entry });
  }
  return { columns: columns4, rows, freeRow };
}
var rowFor = ({ rows }, { day, className }) => rows.find(({ entry }) => entry.day === day && entry.className === className);

// src/lab/poll/pollSummary.ts
var same = (one, other) => one.toLowerCase() === other.toLowerCase();
var agreeing = 2;
function pollSummary(answers) {
  const { statements: statements2, scale: scale2, from: from2 } = pollTexts;
  const given = (words2) => answers.filter((answer) => same(answer.from, words2)).length;
  return {
    answers: answers.length,
    fromStudents: given(from2.student),
    fromTeams: given(from2.team),
    statements: statements2.map((statement, place) => {
      const marks = answers.map((answer) => {
        var _a;
        return (_a = answer.marks[place]) != null ? _a : "";
      }).filter((mark) => mark !== "");
      const counts = scale2.map((word) => marks.filter((mark) => same(mark, word)).length);
      const marked2 = counts.reduce((sum, count2) => sum + count2, 0);
      const agree = counts.slice(0, agreeing).reduce((sum, count2) => sum + count2, 0);
      return { statement, counts, other: marks.length - marked2, marked: marked2, agree };
    }),
    openLines: answers.map(({ openLine }) => openLine).filter((line) => line !== "")
  };
}
var answersOf = (answers, { className, day }) => answers.filter((answer) => answer.day === day && (className === "" || answer.className === className));
function pollLine({ answers, statements: statements2 }) {
  const marked2 = statements2.filter((statement) => statement.marked > 0);
  const share = ({ agree, marked: of }) => agree / of;
  const ordered = [...marked2].sort((one, other) => share(other) - share(one));
  const [best] = ordered;
  const least = ordered[ordered.length - 1];
  if (best === void 0 || least === void 0) return "";
  return share(best) === share(least) ? pollTexts.lineAlike({ answers, each: best }) : pollTexts.line({ answers, best, least });
}

// src/host/pollLine.ts
function pollLine2(spreadsheet, className) {
  var _a;
  const sheet = (_a = sheetInUse(ownSheets(spreadsheet), { kind: "poll" })) == null ? void 0 : _a.sheet;
  if (sheet === void 0) return "";
  const day = dayOf(spreadsheet, Date.now());
  return pollLine(pollSummary(answersOf(readPollSheet(valuesOf2(sheet)), { className, day })));
}

// src/host/classDays.ts
function classDays(spreadsheet, day) {
  var _a, _b, _c, _d, _e, _f;
  const plan = planInUse(spreadsheet);
  const activity = plan && lessonActivity(plan.setup.settings);
  const absent = absentKeys(plan, day);
  const found = [];
  for (const { sheet, tag } of ownSheets(spreadsheet)) {
    if (tag.kind !== "class" || tag.state !== "built") continue;
    const reading = readClassSheet(valuesOf2(sheet));
    if (reading === void 0) continue;
    const className = (_c = (_b = classNameNow((_a = plan == null ? void 0 : plan.teams) != null ? _a : [], reading)) != null ? _b : tag.className) != null ? _c : "";
    const isToday = (moment) => moment !== void 0 && dayOf(spreadsheet, moment) === day;
    const steps = reading.blocks.flatMap((block) => block.steps);
    const hasTimes = steps.some(({ lastEntry }) => lastEntry !== void 0);
    found.push({
      day,
      className,
      activity: (_e = (_d = activity == null ? void 0 : activity.title) != null ? _d : plan == null ? void 0 : plan.setup.activity) != null ? _e : "",
      aim: (_f = activity == null ? void 0 : activity.aim) != null ? _f : "",
      hasEntriesToday: steps.some(({ lastEntry }) => isToday(lastEntry)),
      teams: reading.blocks.map((block) => ({
        team: block.team,
        absent: absent.includes(block.key),
        absentMembers: membersOn(readMembers(block.who), day).members.filter((member) => member.absent).map(({ name }) => name),
        here: block.steps.some(({ entry, lastEntry }) => hasTimes ? isToday(lastEntry) : entry !== ""),
        steps: block.steps.map(({ step, check, entry, lookAt, tries }) => {
          var _a2;
          const planned = activity == null ? void 0 : activity.steps.find(({ id }) => id === step);
          return {
            title: (_a2 = planned == null ? void 0 : planned.title) != null ? _a2 : step,
            scored: planned !== void 0 && planned.kind !== "told",
            check,
            entry,
            lookAt,
            tries
          };
        })
      })),
      poll: pollLine2(spreadsheet, className)
    });
  }
  return found;
}
function classNameNow(teams2, { blocks }) {
  var _a;
  const keys = blocks.map(({ key }) => key);
  return (_a = teams2.find(({ key }) => keys.includes(key))) == null ? void 0 : _a.className;
}

// src/host/endpoints/readRecord.ts
function readRecord() {
  const spreadsheet = openSpreadsheet();
  const day = dayOf(spreadsheet, Date.now());
  const reading = recordReading(spreadsheet);
  const classes = classDays(spreadsheet, day).map((found) => {
    var _a;
    const { entry, names: names2 } = classFacts(found);
    const saved = reading === void 0 ? void 0 : (_a = rowFor(reading, entry)) == null ? void 0 : _a.entry;
    return {
      proposal: entry,
      names: names2,
      hasEntriesToday: found.hasEntriesToday,
      ...saved === void 0 ? {} : { saved }
    };
  });
  return done({ day, classes });
}
function recordDue() {
  var _a, _b, _c;
  const spreadsheet = openSpreadsheet();
  const day = dayOf(spreadsheet, Date.now());
  const rows = (_b = (_a = recordReading(spreadsheet)) == null ? void 0 : _a.rows) != null ? _b : [];
  const written = rows.filter(({ entry }) => entry.day === day).map(({ entry }) => entry.className);
  const due = [];
  for (const { sheet, tag } of ownSheets(spreadsheet)) {
    const name = (_c = tag.className) != null ? _c : "";
    if (tag.kind !== "class" || tag.state !== "built" || written.includes(name)) continue;
    const times = sheet.getRange(1, classColumns.lastEntry, Math.max(1, sheet.getLastRow()), 1).getValues();
    const title = cellText(sheet.getRange(1, 1).getValue());
    const isToday = (cell) => Object.prototype.toString.call(cell) === "[object Date]" && dayOf(spreadsheet, cell.getTime()) === day;
    if (times.some(([cell]) => isToday(cell)) && !written.includes(title)) due.push(name);
  }
  return done({ due });
}
function recordReading(spreadsheet) {
  const sheet = recordSheet(spreadsheet);
  return sheet === void 0 ? void 0 : readRecordSheet(valuesOf2(sheet));
}

// src/host/endpoints/readShare.ts
function readShare() {
  const spreadsheet = openSpreadsheet();
  const own = ownSheets(spreadsheet).map(({ sheet }) => sheet.getSheetId());
  return done({
    fileName: spreadsheet.getName(),
    entriesToday: entriesOfToday(spreadsheet),
    otherSheets: spreadsheet.getSheets().filter((sheet) => !own.includes(sheet.getSheetId())).map((sheet) => sheet.getName())
  });
}

// src/host/endpoints/readTeams.ts
function readTeams() {
  var _a, _b;
  const spreadsheet = openSpreadsheet();
  const plan = planInUse(spreadsheet, readMemo());
  if (plan === void 0) return problem(hostWords.teams.noLesson);
  const day = dayOf(spreadsheet, Date.now());
  const absent = absentKeys(plan, day);
  const cells = /* @__PURE__ */ new Map();
  for (const { sheet, tag } of ownSheets(spreadsheet)) {
    if (tag.kind !== "class" || tag.state !== "built") continue;
    for (const { key, who } of (_b = (_a = readClassSheet(valuesOf2(sheet))) == null ? void 0 : _a.blocks) != null ? _b : []) cells.set(key, who);
  }
  return done({
    classes: plan.setup.classes.map(({ name }) => ({
      name,
      teams: plan.teams.filter(({ className }) => className === name).map(({ team, key }) => {
        const who = cells.get(key);
        return {
          team,
          key,
          absent: absent.includes(key),
          ...who === void 0 ? {} : { members: membersView(who, day) }
        };
      })
    })),
    day
  });
}

// src/lab/record/mergedWords.ts
function mergedWords({
  base,
  there,
  typed: typed2
}) {
  if (there === base || there === typed2) return typed2;
  if (typed2 === base || there.includes(typed2)) return there;
  return typed2.includes(there) ? typed2 : \`\${there}
\${typed2}\`;
}

// src/lab/record/nameIn.ts
var shortest = 2;
var wordCharacter = /[\\p{L}\\p{N}]/u;
function nameIn(words2, names2) {
  return names2.find((name) => name.length >= shortest && standsIn(words2, name));
}
function standsIn(words2, name) {
  var _a, _b;
  for (let from2 = words2.indexOf(name); from2 >= 0; from2 = words2.indexOf(name, from2 + 1)) {
    const before = (_a = words2[from2 - 1]) != null ? _a : "";
    const after = (_b = words2[from2 + name.length]) != null ? _b : "";
    if (!wordCharacter.test(before) && !wordCharacter.test(after)) return true;
  }
  return false;
}

// src/host/endpoints/saveRecord.ts
var patienceMs3 = 2e3;
var longest2 = 2e3;
var mostRows = 50;
function saveRecord(given) {
  const { record: say2 } = hostWords;
  if (!Array.isArray(given) || given.length === 0 || given.length > mostRows)
    return problem({ ...say2.rows, received: Array.isArray(given) ? \`\${given.length} of them\` : typeof given });
  const rows = [];
  for (const sent of given) {
    const row = readRow(sent);
    if (row === void 0) return problem({ ...say2.rows, received: "one of another shape" });
    rows.push(row);
  }
  const spreadsheet = openSpreadsheet();
  const names2 = namesInFile(spreadsheet);
  for (const { entry } of rows) {
    for (const field of wordFields) {
      const where = \`“\${recordWords.labels[field]}” of \${entry.className}\`;
      if (entry[field].length > longest2)
        return problem({ ...say2.tooLong, where, received: String(entry[field].length) }, \`\${entry.className}.\${field}\`);
      const name = nameIn(entry[field], names2);
      if (name !== void 0)
        return problem({ ...say2.named, where, received: \`“\${name}”\` }, \`\${entry.className}.\${field}\`);
    }
  }
  const locked = withDocumentLock(patienceMs3, () => write(spreadsheet, rows));
  return locked.ran ? locked.value : problem(say2.busy);
}
function write(spreadsheet, rows) {
  var _a, _b;
  const sheet = recordSheetMade(spreadsheet);
  const saved = [];
  for (const { entry, base } of rows) {
    const reading = sheet === void 0 ? void 0 : readRecordSheet(valuesOf2(sheet));
    if (sheet === void 0 || reading === void 0) return problem(hostWords.record.headings);
    const there = rowFor(reading, entry);
    const written = {};
    for (const field of recordFields) {
      written[field] = there === void 0 ? entry[field] : mergedWords({ base: (_a = base == null ? void 0 : base[field]) != null ? _a : "", there: there.entry[field], typed: entry[field] });
    }
    writeRow({ sheet, reading, row: (_b = there == null ? void 0 : there.row) != null ? _b : reading.freeRow, entry: written, there: there == null ? void 0 : there.entry });
    saved.push(written);
  }
  return done({ saved });
}
function writeRow({
  sheet,
  reading,
  row,
  entry,
  there
}) {
  var _a;
  const { columns: columns4 } = reading;
  if (row > sheet.getMaxRows()) sheet.insertRowsAfter(sheet.getMaxRows(), row - sheet.getMaxRows());
  const first = columns4[recordFields[0]];
  const sideBySide = recordFields.every((field, index) => columns4[field] === first + index);
  if (there === void 0 && sideBySide) {
    const range = sheet.getRange(row, first, 1, recordFields.length);
    range.setNumberFormat("@");
    writeTexts(range, [recordFields.map((field) => entry[field])]);
    return;
  }
  for (const field of recordFields) {
    if (entry[field] === ((_a = there == null ? void 0 : there[field]) != null ? _a : "")) continue;
    const cell = sheet.getRange(row, columns4[field], 1, 1);
    cell.setNumberFormat("@");
    writeTexts(cell, [[entry[field]]]);
  }
}
function namesInFile(spreadsheet) {
  var _a, _b, _c, _d;
  const names2 = new Set(((_b = (_a = planInUse(spreadsheet)) == null ? void 0 : _a.teams) != null ? _b : []).map(({ team }) => team));
  const known = roles;
  for (const { sheet, tag } of ownSheets(spreadsheet)) {
    if (tag.kind !== "class" || tag.state !== "built") continue;
    for (const { who: team, steps } of (_d = (_c = readClassSheet(valuesOf2(sheet))) == null ? void 0 : _c.blocks) != null ? _d : []) {
      for (const { name } of readMembers(team).members) names2.add(name);
      for (const { who } of steps) if (who !== "" && !known.includes(who)) names2.add(who);
    }
  }
  return [...names2];
}
function readRow(sent) {
  if (typeof sent !== "object" || sent === null || !("entry" in sent)) return void 0;
  const entry = readEntry(sent.entry);
  if (entry === void 0 || entry.className === "" || !/^\\d{4}-\\d{2}-\\d{2}$/.test(entry.day)) return void 0;
  return { entry, base: "base" in sent ? readEntry(sent.base) : void 0 };
}
function readEntry(given) {
  if (typeof given !== "object" || given === null) return void 0;
  const entry = {};
  for (const field of recordFields) {
    const words2 = given[field];
    if (typeof words2 !== "string") return void 0;
    entry[field] = words2.trim();
  }
  return entry;
}

// src/host/endpoints/setAbsent.ts
function setAbsent(key, absent) {
  var _a, _b;
  const spreadsheet = openSpreadsheet();
  const sheet = (_a = sheetInUse(ownSheets(spreadsheet), { kind: "plan" })) == null ? void 0 : _a.sheet;
  if (sheet === void 0) return problem(hostWords.teams.noLesson);
  const cells = valuesOf2(sheet);
  const reading = readLesson(cells);
  if (!reading.ok) return problemOf(reading.error);
  const headingRow4 = reading.value.places.keys.row;
  const column = planColumns.firstGiven + reading.value.givenNames.length;
  const heading = cellText((_b = cells[headingRow4 - 1]) == null ? void 0 : _b[column - 1]);
  if (heading !== "" && heading !== words.plan.today)
    return problem({ ...hostWords.teams.columnTaken, received: \`“\${heading}”\` });
  const index = cells.findIndex((line, row) => row >= headingRow4 && cellText(line[planColumns.key - 1]) === key);
  if (index < 0) return problem({ ...hostWords.teams.unknown, received: \`“\${String(key)}”\` });
  if (heading === "") writeTexts(sheet.getRange(headingRow4, column), [[words.plan.today]]);
  const today = dayOf(spreadsheet, Date.now());
  for (const mark of reading.value.absent) {
    if (mark.day === "" || mark.day === today) continue;
    const row = cells.findIndex((line, at) => at >= headingRow4 && cellText(line[planColumns.key - 1]) === mark.key);
    if (row >= 0) sheet.getRange(row + 1, column).setValue("");
  }
  const cell = sheet.getRange(index + 1, column);
  cell.setNumberFormat("@");
  writeTexts(cell, [[absent === true ? \`\${words.plan.absent} \${today}\` : ""]]);
  return done(null);
}

// src/host/teamBlock.ts
function teamBlock({
  spreadsheet,
  className,
  key
}) {
  var _a;
  const found = classSheet(spreadsheet, className);
  if (!found.ok) return found;
  const block = (_a = readClassSheet(valuesOf2(found.value))) == null ? void 0 : _a.blocks.find((candidate) => candidate.key === key);
  if (block === void 0) return problem({ ...hostWords.teamUnknown, received: \`“\${String(key)}”\` });
  return done({ sheet: found.value, block });
}

// src/host/endpoints/setMembers.ts
var longestName2 = 40;
var mostMembers = 8;
function setMembers(className, key, wish) {
  const { members: say2 } = hostWords;
  const read = readWish2(wish);
  if (read === void 0) return problem({ ...say2.shape, received: typeof wish });
  const spreadsheet = openSpreadsheet();
  const found = teamBlock({ spreadsheet, className, key });
  if (!found.ok) return found;
  const { sheet, block } = found.value;
  const { who, headingRow: headingRow4 } = block;
  if (who !== read.base) return problem(say2.changed, "names");
  const names2 = readMembers(read.names).members.map(({ name }) => name);
  const where = say2.namesIn(block.team);
  if (names2.length > mostMembers)
    return problem({ ...say2.tooMany(mostMembers), where, received: String(names2.length) }, "names");
  const long = names2.find((name) => name.length > longestName2);
  if (long !== void 0) return problem({ ...say2.long(longestName2), where, received: \`“\${long}”\` }, "names");
  const twice = names2.find((name, index) => names2.indexOf(name) < index);
  if (twice !== void 0) return problem({ ...say2.twice, where, received: say2.sameTwice(twice) }, "names");
  const day = dayOf(spreadsheet, Date.now());
  const before = readMembers(who);
  const team = shareRoles({
    before,
    members: names2.map((name) => ({ name, absent: read.absent.includes(name) })),
    day,
    passOn: before.day !== "" && before.day !== day
  });
  const text2 = membersText(team);
  writeMembers(sheet, { headingRow: headingRow4, text: text2 === "" ? membersTexts.heading : text2 });
  return done(membersView(text2, day));
}
function readWish2(wish) {
  if (typeof wish !== "object" || wish === null) return void 0;
  const { names: names2, absent, base } = wish;
  if (typeof names2 !== "string" || typeof base !== "string" || !Array.isArray(absent)) return void 0;
  return { names: names2, base, absent: absent.map(String) };
}

// src/host/endpoints/startBuild.ts
function startBuild2(given) {
  const setup = readSetup2(given);
  return setup.ok ? startBuild(setup.value, { sample: false }) : setup;
}

// src/host/endpoints/startSample.ts
var startSample = () => startBuild(sampleSetup(), { sample: true });

// src/host/endpoints/writeKeySheet.ts
function writeKeySheet(confirmed) {
  if (confirmed !== true) return problem({ ...hostWords.keyUnconfirmed, received: "none" });
  const lesson = lessonNow();
  if (!lesson.ok) return lesson;
  const { plan, activity } = lesson.value;
  const { keySheet } = hostWords;
  const rows = plan.teams.flatMap(
    (team) => teamKey({ activity, team, settings: plan.setup.settings }).map(({ title, unit, answer, note }) => [
      team.className,
      team.team,
      title,
      answer,
      unit,
      note
    ])
  );
  const locked = withDocumentLock(2e3, () => {
    const spreadsheet = openSpreadsheet();
    const taken = spreadsheet.getSheets().map((sheet2) => sheet2.getName());
    const name = freeName(keySheet.name(todayText()), taken);
    const sheet = spreadsheet.insertSheet(name, spreadsheet.getSheets().length);
    const width = keySheet.headings.length;
    const lines = [[keySheet.warning, ...Array.from({ length: width - 1 }, () => "")], [...keySheet.headings], ...rows];
    const room2 = sheet.getMaxRows();
    if (room2 < lines.length) sheet.insertRowsAfter(room2, lines.length - room2);
    const range = sheet.getRange(1, 1, lines.length, width);
    range.setNumberFormats(lines.map((line) => line.map(() => "@")));
    writeTexts(range, lines);
    sheet.setFrozenRows(2);
    return name;
  });
  return locked.ran ? done({ name: locked.value }) : problem({ ...hostWords.fileBusy, where: "the key" });
}

// src/host/endpoints/writePrepareSheet.ts
function writePrepareSheet(stay) {
  const lesson = lessonNow();
  if (!lesson.ok) return lesson;
  const { plan, activity } = lesson.value;
  const spreadsheet = openSpreadsheet();
  const role2 = { kind: "prepare" };
  const sheetNow = () => {
    var _a;
    return (_a = sheetInUse(ownSheets(spreadsheet), role2)) == null ? void 0 : _a.sheet;
  };
  const locked = withDocumentLock(2e3, () => {
    var _a, _b, _c, _d, _e;
    const taken = spreadsheet.getSheets().map((sheet) => sheet.getName());
    const { prepare } = newSheetNames([], taken);
    const planSheet = (_a = sheetInUse(ownSheets(spreadsheet), { kind: "plan" })) == null ? void 0 : _a.sheet;
    if (planSheet === void 0) return;
    const { setup, teams: teams2, givenNames, invented } = plan;
    applySheet({
      spreadsheet,
      plan: planPrepareSheet(
        { setup, activity, teams: teams2, givenNames, invented },
        { prepare: (_c = (_b = sheetNow()) == null ? void 0 : _b.getName()) != null ? _c : prepare, plan: planSheet.getName() },
        plan.places
      ),
      memo: (_d = readMemo()) != null ? _d : noBuild()
    });
    notePreparedPlan({ spreadsheet, writtenFrom: plan, readPlan: () => planInUse(spreadsheet, readMemo()) });
    if (stay !== true) (_e = sheetNow()) == null ? void 0 : _e.activate();
  });
  return locked.ran ? done(null) : problem({ ...hostWords.fileBusy, where: "the Prepare sheet" });
}

// src/host/menu.ts
function openSidebar_() {
  ui().showSidebar(HtmlService.createHtmlOutputFromFile("Sidebar").setTitle(hostWords.title));
}
function buildSampleFromMenu_() {
  let state = guarded(startSample);
  while (state.ok && !state.value.finished) state = guarded(continueBuild);
  tell(state.ok ? hostWords.sampleBuilt : state.problem.message);
}
function checkAgainFromMenu_() {
  const outcome = guarded(checkAgain);
  tell(outcome.ok ? hostWords.checkedAgain(outcome.value.renewed) : outcome.problem.message);
}
var tell = (message) => {
  openSpreadsheet().toast(message, hostWords.title);
};

// src/host/main.ts
var endpoints_ = {
  readRecord: () => guarded(readRecord),
  saveRecord: (rows) => guarded(() => saveRecord(rows)),
  recordDue: () => guarded(recordDue),
  readShare: () => guarded(readShare),
  emptyCopy: (wish) => guarded(() => emptyCopy(wish)),
  readTeams: () => guarded(readTeams),
  addTeam: (className, team) => guarded(() => addTeam(className, team)),
  addClass: (className, teams2) => guarded(() => addClass(className, teams2)),
  setAbsent: (key, absent) => guarded(() => setAbsent(key, absent)),
  setMembers: (className, key, wish) => guarded(() => setMembers(className, key, wish)),
  passRoles: (className) => guarded(() => passRoles(className)),
  readLesson: () => guarded(readLesson2),
  draftTeams: (setup) => guarded(() => draftTeams(setup)),
  startBuild: (setup) => guarded(() => startBuild2(setup)),
  continueBuild: () => guarded(continueBuild),
  startSample: () => guarded(startSample),
  readClass: (className) => guarded(() => readClass(className)),
  checkAgain: () => guarded(checkAgain),
  goToTeam: (className, key) => guarded(() => goToTeam(className, key)),
  openPage: (page, about) => guarded(() => openPage(page, about)),
  readPreparation: () => guarded(readPreparation),
  readKey: () => guarded(readKey),
  readPaper: () => guarded(readPaper),
  writePrepareSheet: (stay) => guarded(() => writePrepareSheet(stay)),
  writeKeySheet: (confirmed) => guarded(() => writeKeySheet(confirmed)),
  readNumbers: () => guarded(readNumbers),
  readPoll: () => guarded(readPoll),
  goToPoll: () => guarded(goToPoll)
};
return { buildSampleFromMenu_, checkAgainFromMenu_, endpoints_, openSidebar_ };
`;
},
// Part onEdit: host/notePollDay, host/onEdit
"onEdit"() {
  return `
const { cellText, classColumns, classMarker, countedColumn, countedEntry, dayOf, pollColumns, pollMarker, pollRows, withDocumentLock } = part("host/dayOf");



// src/host/notePollDay.ts
var patienceMs = 300;
function notePollDay({ range }) {
  if (range.getLastColumn() > pollColumns.openLine) return;
  const sheet = range.getSheet();
  if (cellText(sheet.getRange(1, pollColumns.marker).getValue()) !== pollMarker) return;
  const firstRow = Math.max(range.getRow(), pollRows.firstAnswer);
  const rowCount = range.getLastRow() - firstRow + 1;
  if (rowCount < 1) return;
  withDocumentLock(patienceMs, () => {
    const today = dayOf(sheet.getParent(), Date.now());
    const rows = sheet.getRange(firstRow, 1, rowCount, pollColumns.openLine).getValues();
    rows.forEach((cells, index) => {
      const answered = cells.slice(pollColumns.className).some((cell) => cellText(cell) !== "");
      if (answered && cellText(cells[pollColumns.day - 1]) === "") sheet.getRange(firstRow + index, pollColumns.day).setValue(today);
    });
  });
}

// src/host/onEdit.ts
var patienceMs2 = 300;
function onEdit_(event) {
  try {
    const first = event.range.getColumn();
    if (first === classColumns.entry) countTries(event);
    else if (first >= pollColumns.className && first <= pollColumns.openLine) notePollDay(event);
  } catch {
  }
}
function countTries({ range }) {
  const last = range.getLastColumn();
  if (last > classColumns.who) return;
  const sheet = range.getSheet();
  if (cellText(sheet.getRange(1, classColumns.key).getValue()) !== classMarker) return;
  const firstRow = range.getRow();
  const rowCount = range.getNumRows();
  withDocumentLock(patienceMs2, () => countRows({ sheet, firstRow, rowCount }));
}
function countRows({ sheet, firstRow, rowCount }) {
  const rows = sheet.getRange(firstRow, 1, rowCount, countedColumn).getValues();
  const now = /* @__PURE__ */ new Date();
  let run;
  const write = () => {
    if (run === void 0) return;
    sheet.getRange(run.row, classColumns.tries, run.counts.length, 2).setValues(run.counts);
    sheet.getRange(run.row, countedColumn, run.entries.length, 1).setValues(run.entries);
    run = void 0;
  };
  rows.forEach((cells, index) => {
    const entry = cellText(cells[classColumns.entry - 1]);
    const tries = cells[classColumns.tries - 1];
    const isStep = cellText(cells[classColumns.key - 1]) !== "" && cellText(cells[classColumns.step - 1]) !== "";
    const isNew = entry !== "" && cellText(cells[countedColumn - 1]) !== countedEntry(entry);
    const isCount = typeof tries === "number" || cellText(tries) === "";
    if (!isStep || !isNew || !isCount) {
      write();
      return;
    }
    run = run != null ? run : { row: firstRow + index, counts: [], entries: [] };
    run.counts.push([(typeof tries === "number" ? tries : 0) + 1, now]);
    run.entries.push([countedEntry(entry)]);
  });
  write();
}
return { onEdit_ };
`;
},
// Part onOpen: host/onOpen
"onOpen"() {
  return `
const { hostWords } = part("host/words");
const { ui } = part("host/spreadsheet");


// src/host/onOpen.ts
function onOpen_() {
  const { menu, title } = hostWords;
  ui().createMenu(title).addItem(menu.openSidebar, "openSidebar").addItem(menu.buildSample, "buildSampleFromMenu").addItem(menu.checkAgain, "checkAgainFromMenu").addToUi();
}
var onInstall_ = () => onOpen_();
return { onInstall_, onOpen_ };
`;
},
  };
  const compiled = {};
  /** A part's exports. It is compiled once, with the parts it builds on, and sees nothing but these and the host. */
  const part_ = (name) => {
    if (!(name in compiled)) {
      const source = '(function (part) {\n"use strict";\n' + sources[name]() + "\n})\n//# sourceURL=Labrow/" + name;
      compiled[name] = (0, eval)(source)(part_);
    }
    return compiled[name];
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
 * @param {string} element symbol of the element, such as N
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
 * @return a table with a heading row; the column of notes stands there where there is something to note
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
 * Volume of solution that a weighed solid makes.
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
 * Volume of solvent that makes up a dilution, volumes taken as additive.
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
 * Final volume to which a portion of stock is filled up.
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
 * @param {number|string} stages how many dilutions follow each other
 * @param {number|string} final_volume optional: final volume of each stage; adds the two columns of volumes (mL)
 * @return a table with a heading row, one row for each stage; the volumes stand there where final_volume is given
 * @customfunction
 */
function SERIALDILUTION(stock_molarity, factor, stages, final_volume) {
  return Labrow.callFunction_('SERIALDILUTION', [stock_molarity, factor, stages, final_volume]);
}

/**
 * A concentration in another unit.
 *
 * @param {number|string} value the number to convert
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
 * How far a measured value lies from an accepted one, in percent of the accepted one.
 *
 * @param {number|string} measured the measured value
 * @param {number|string} accepted the accepted value, in the same unit
 * @param {boolean} signed optional: TRUE keeps the sign of measured − accepted; without sign if left out
 * @return %, not rounded, absolute unless signed is TRUE
 * @customfunction
 */
function PERCENTERROR(measured, accepted, signed) {
  return Labrow.callFunction_('PERCENTERROR', [measured, accepted, signed]);
}

/**
 * How far two values of equal standing lie apart, in percent of their mean.
 *
 * @param {number|string} first one value
 * @param {number|string} second the other value, in the same unit
 * @return %, not rounded
 * @customfunction
 */
function PERCENTDIFFERENCE(first, second) {
  return Labrow.callFunction_('PERCENTDIFFERENCE', [first, second]);
}

/**
 * How many significant figures a number is typed with.
 *
 * @param {number|string} number_as_text the number as text such as "0.0750"; a number cell has lost its trailing zeros
 * @return the count
 * @customfunction
 */
function SIGFIGS(number_as_text) {
  return Labrow.callFunction_('SIGFIGS', [number_as_text]);
}

/**
 * A number rounded to so many significant figures, as text that keeps its zeros.
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
 * @param {number|string} purity_tolerance optional: ± of the purity; 0 if left out (percentage points)
 * @return standard uncertainty in mol/L, not rounded
 * @customfunction
 */
function MOLARITYUNCERTAINTY(formula, grams, volume, balance_tolerance, flask_tolerance, purity_percent, purity_tolerance) {
  return Labrow.callFunction_('MOLARITYUNCERTAINTY', [formula, grams, volume, balance_tolerance, flask_tolerance, purity_percent, purity_tolerance]);
}

/**
 * Judges an entry against a target.
 *
 * @param {number|string} entry what was typed, with or without a unit
 * @param {number|string} target the right value
 * @param {number|string} tolerance_percent optional: share of the target that counts as on target; honest rounding decides if left out (%)
 * @param {number|string} figures optional: significant figures asked for, 1 to 15; 3 if left out
 * @return a row: status, what to look at
 * @customfunction
 */
function CHECKENTRY(entry, target, tolerance_percent, figures) {
  return Labrow.callFunction_('CHECKENTRY', [entry, target, tolerance_percent, figures]);
}

/**
 * Judges an entry of a step and names the likely reason where it is wrong.
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
 * @return three columns of text as high as the steps: check, what to look at, hint
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
 * What a substance or a solution of it can do, and what to do about it.
 *
 * @param {string} formula formula of the substance as it stands in the bottle
 * @param {number|string} mass_percent optional: grams of the substance in 100 g of a solution in water; undiluted if left out (%)
 * @return a table with a heading row; its last line defers to the safety data sheet and local rules
 * @customfunction
 */
function CAUTIONS(formula, mass_percent) {
  return Labrow.callFunction_('CAUTIONS', [formula, mass_percent]);
}

// Triggers, menu items, and calls from the sidebar.
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

/** Called from the sidebar. */
function readRecord(...request) {
  return Labrow.part_("desk").endpoints_.readRecord(...request);
}

/** Called from the sidebar. */
function saveRecord(...request) {
  return Labrow.part_("desk").endpoints_.saveRecord(...request);
}

/** Called from the sidebar. */
function recordDue(...request) {
  return Labrow.part_("desk").endpoints_.recordDue(...request);
}

/** Called from the sidebar. */
function readShare(...request) {
  return Labrow.part_("desk").endpoints_.readShare(...request);
}

/** Called from the sidebar. */
function emptyCopy(...request) {
  return Labrow.part_("desk").endpoints_.emptyCopy(...request);
}

/** Called from the sidebar. */
function readTeams(...request) {
  return Labrow.part_("desk").endpoints_.readTeams(...request);
}

/** Called from the sidebar. */
function addTeam(...request) {
  return Labrow.part_("desk").endpoints_.addTeam(...request);
}

/** Called from the sidebar. */
function addClass(...request) {
  return Labrow.part_("desk").endpoints_.addClass(...request);
}

/** Called from the sidebar. */
function setAbsent(...request) {
  return Labrow.part_("desk").endpoints_.setAbsent(...request);
}

/** Called from the sidebar. */
function setMembers(...request) {
  return Labrow.part_("desk").endpoints_.setMembers(...request);
}

/** Called from the sidebar. */
function passRoles(...request) {
  return Labrow.part_("desk").endpoints_.passRoles(...request);
}

/** Called from the sidebar. */
function readLesson(...request) {
  return Labrow.part_("desk").endpoints_.readLesson(...request);
}

/** Called from the sidebar. */
function draftTeams(...request) {
  return Labrow.part_("desk").endpoints_.draftTeams(...request);
}

/** Called from the sidebar. */
function startBuild(...request) {
  return Labrow.part_("desk").endpoints_.startBuild(...request);
}

/** Called from the sidebar. */
function continueBuild(...request) {
  return Labrow.part_("desk").endpoints_.continueBuild(...request);
}

/** Called from the sidebar. */
function startSample(...request) {
  return Labrow.part_("desk").endpoints_.startSample(...request);
}

/** Called from the sidebar. */
function readClass(...request) {
  return Labrow.part_("desk").endpoints_.readClass(...request);
}

/** Called from the sidebar. */
function checkAgain(...request) {
  return Labrow.part_("desk").endpoints_.checkAgain(...request);
}

/** Called from the sidebar. */
function goToTeam(...request) {
  return Labrow.part_("desk").endpoints_.goToTeam(...request);
}

/** Called from the sidebar. */
function openPage(...request) {
  return Labrow.part_("desk").endpoints_.openPage(...request);
}

/** Called from the sidebar. */
function readPreparation(...request) {
  return Labrow.part_("desk").endpoints_.readPreparation(...request);
}

/** Called from the sidebar. */
function readKey(...request) {
  return Labrow.part_("desk").endpoints_.readKey(...request);
}

/** Called from the sidebar. */
function readPaper(...request) {
  return Labrow.part_("desk").endpoints_.readPaper(...request);
}

/** Called from the sidebar. */
function writePrepareSheet(...request) {
  return Labrow.part_("desk").endpoints_.writePrepareSheet(...request);
}

/** Called from the sidebar. */
function writeKeySheet(...request) {
  return Labrow.part_("desk").endpoints_.writeKeySheet(...request);
}

/** Called from the sidebar. */
function readNumbers(...request) {
  return Labrow.part_("desk").endpoints_.readNumbers(...request);
}

/** Called from the sidebar. */
function readPoll(...request) {
  return Labrow.part_("desk").endpoints_.readPoll(...request);
}

/** Called from the sidebar. */
function goToPoll(...request) {
  return Labrow.part_("desk").endpoints_.goToPoll(...request);
}
