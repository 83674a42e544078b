/**
 * The wording that CLP Annex III prescribes for each code, as far as the list of substances has it. Compared word by word
 * with two public transcriptions, the data of an open library of GHS statements (cheminfo/ghs-hazard, MIT) and a list in a
 * program that writes data sheets; none of it stands on memory alone. A label quotes these words and no others; plain ones
 * for a class stand in `cautionTexts`. Where CLP lets a label name the organ or the route, the short form stands.
 */
const wording = `
H225 Highly flammable liquid and vapour.
H226 Flammable liquid and vapour.
H271 May cause fire or explosion; strong oxidiser.
H272 May intensify fire; oxidiser.
H290 May be corrosive to metals.
H300 Fatal if swallowed.
H301 Toxic if swallowed.
H302 Harmful if swallowed.
H310 Fatal in contact with skin.
H311 Toxic in contact with skin.
H312 Harmful in contact with skin.
H314 Causes severe skin burns and eye damage.
H315 Causes skin irritation.
H317 May cause an allergic skin reaction.
H318 Causes serious eye damage.
H319 Causes serious eye irritation.
H330 Fatal if inhaled.
H331 Toxic if inhaled.
H332 Harmful if inhaled.
H334 May cause allergy or asthma symptoms or breathing difficulties if inhaled.
H335 May cause respiratory irritation.
H336 May cause drowsiness or dizziness.
H340 May cause genetic defects.
H341 Suspected of causing genetic defects.
H350 May cause cancer.
H350i May cause cancer by inhalation.
H351 Suspected of causing cancer.
H360 May damage fertility or the unborn child.
H360D May damage the unborn child.
H360Df May damage the unborn child. Suspected of damaging fertility.
H360F May damage fertility.
H360FD May damage fertility. May damage the unborn child.
H361 Suspected of damaging fertility or the unborn child.
H361d Suspected of damaging the unborn child.
H361f Suspected of damaging fertility.
H362 May cause harm to breast-fed children.
H370 Causes damage to organs.
H371 May cause damage to organs.
H372 Causes damage to organs through prolonged or repeated exposure.
H373 May cause damage to organs through prolonged or repeated exposure.
H400 Very toxic to aquatic life.
H410 Very toxic to aquatic life with long lasting effects.
H411 Toxic to aquatic life with long lasting effects.
H412 Harmful to aquatic life with long lasting effects.
EUH031 Contact with acids liberates toxic gas.
EUH032 Contact with acids liberates very toxic gas.
EUH066 Repeated exposure may cause skin dryness or cracking.
EUH071 Corrosive to the respiratory tract.
`;

/** The prescribed statement of a code; empty where the list has no such code. */
export function hazardStatement(code: string): string {
  const line = wording.split('\n').find((candidate) => candidate.startsWith(`${code} `));
  return line === undefined ? '' : line.slice(code.length + 1);
}
