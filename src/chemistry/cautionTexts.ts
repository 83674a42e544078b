/**
 * What each code of the GHS stands for, in our own words, and what to do about it. Meanings of the codes: CLP Annex III
 * (its own wording stands in `hazardStatements`); signal words: CLP Annex I, from memory. Nothing here is a safety data
 * sheet.
 */
type AdviceName = keyof typeof adviceTexts;

interface CodeText {
  readonly means: string;
  readonly signal: 'Danger' | 'Warning' | '';
  /** Two digits of the pictogram; empty where the code has none. */
  readonly pictogram: string;
  readonly advice: readonly AdviceName[];
}

export const adviceTexts = {
  eyes: 'Wear eye protection.',
  corrosive: 'Wear goggles, gloves and a lab coat; rinse skin or eyes with plenty of water at once and get help.',
  gloves: 'Wear gloves; wash off splashes and wash hands afterwards.',
  hood: 'Use a fume hood or strong ventilation; breathe in no dust, mist or vapour.',
  mouth: 'Never eat, drink or pipette by mouth here; wash hands afterwards.',
  poison: 'Staff only, behind lock and key; call a doctor at once after any contact or swallowing.',
  flame: 'Keep away from flames, sparks and hot surfaces.',
  oxidiser: 'Keep away from anything that burns; never grind or heat it with other substances.',
  metal: 'Keep it off metal; use its own bottle or glass.',
  asthma: 'Not for people with asthma or allergies; raise no dust or spray.',
  lasting: 'Choose a safer substance if it does the job. Solid and strong solutions: staff only, gloves, no dust.',
  organs: 'Avoid repeated contact; gloves, no dust, wash hands.',
  waters: 'Keep it out of drains, rivers and soil.',
  dries: 'Wear gloves; wash hands afterwards.',
  acids: 'Never mix it with acid.',
  acidToWater: 'Add the acid to water, slowly and with stirring, never water to acid; let it cool.',
  heatOfSolution: 'Dissolve it slowly in cold water in heat-proof glass: it gets hot; let it cool before filling up.',
} as const;

const corrosive = ['corrosive'] as const;
const irritant = ['eyes', 'gloves'] as const;
const lasting = ['lasting', 'gloves', 'hood'] as const;
const waters = ['waters'] as const;

const code = (
  means: string,
  signal: CodeText['signal'],
  pictogram: string,
  advice: readonly AdviceName[],
): CodeText => ({ means, signal, pictogram, advice });

let byCode: Readonly<Record<string, CodeText>> | undefined;

/** By code; `H272/3` is the weaker category of an oxidiser. */
export function codeTexts(): Readonly<Record<string, CodeText>> {
  byCode ??= allCodeTexts();
  return byCode;
}

const allCodeTexts = () => ({
  H225: code('liquid and vapour catch fire very easily', 'Danger', '02', ['flame', 'hood']),
  H226: code('liquid and vapour catch fire', 'Warning', '02', ['flame', 'hood']),
  H271: code('can make other things burn or explode', 'Danger', '03', ['oxidiser', 'eyes']),
  H272: code('makes a fire burn more fiercely', 'Danger', '03', ['oxidiser', 'eyes']),
  'H272/3': code('makes a fire burn more fiercely', 'Warning', '03', ['oxidiser', 'eyes']),
  H290: code('eats away some metals', 'Warning', '05', ['metal']),
  H300: code('deadly if swallowed', 'Danger', '06', ['poison', 'mouth']),
  H301: code('poisonous if swallowed', 'Danger', '06', ['mouth', 'gloves', 'eyes']),
  H302: code('harms if swallowed', 'Warning', '07', ['mouth']),
  H310: code('deadly through the skin', 'Danger', '06', ['poison', 'gloves']),
  H311: code('poisonous through the skin', 'Danger', '06', ['gloves', 'eyes']),
  H312: code('harms through the skin', 'Warning', '07', ['gloves']),
  H314: code('burns skin badly and damages eyes', 'Danger', '05', corrosive),
  H315: code('irritates skin', 'Warning', '07', ['gloves']),
  H317: code('can start a skin allergy', 'Warning', '07', ['gloves']),
  H318: code('damages eyes permanently', 'Danger', '05', corrosive),
  H319: code('irritates eyes strongly', 'Warning', '07', irritant),
  H330: code('deadly if breathed in', 'Danger', '06', ['poison', 'hood']),
  H331: code('poisonous if breathed in', 'Danger', '06', ['hood', 'eyes']),
  H332: code('harms if breathed in', 'Warning', '07', ['hood']),
  H334: code('can start asthma or an allergy when breathed in', 'Danger', '08', ['asthma', 'hood']),
  H335: code('irritates the airways', 'Warning', '07', ['hood']),
  H336: code('makes sleepy or dizzy', 'Warning', '07', ['hood']),
  H340: code('changes inherited genes', 'Danger', '08', lasting),
  H341: code('may change inherited genes', 'Warning', '08', lasting),
  H350: code('causes cancer', 'Danger', '08', lasting),
  H350i: code('causes cancer when breathed in', 'Danger', '08', lasting),
  H351: code('may cause cancer', 'Warning', '08', lasting),
  H360: code('harms fertility or the unborn child', 'Danger', '08', lasting),
  H360D: code('harms the unborn child', 'Danger', '08', lasting),
  H360Df: code('harms the unborn child and may harm fertility', 'Danger', '08', lasting),
  H360F: code('harms fertility', 'Danger', '08', lasting),
  H360FD: code('harms fertility and the unborn child', 'Danger', '08', lasting),
  H361: code('may harm fertility or the unborn child', 'Warning', '08', lasting),
  H361d: code('may harm the unborn child', 'Warning', '08', lasting),
  H361f: code('may harm fertility', 'Warning', '08', lasting),
  H362: code('may harm breast-fed children', '', '', lasting),
  H370: code('damages organs', 'Danger', '08', ['organs', 'hood']),
  H371: code('may damage organs', 'Warning', '08', ['organs', 'hood']),
  H372: code('damages organs with long or repeated contact', 'Danger', '08', ['organs']),
  H373: code('may damage organs with long or repeated contact', 'Warning', '08', ['organs']),
  H400: code('very poisonous to life in water', 'Warning', '09', waters),
  H410: code('very poisonous to life in water for a long time', 'Warning', '09', waters),
  H411: code('poisonous to life in water for a long time', '', '09', waters),
  H412: code('harms life in water for a long time', '', '', waters),
  EUH031: code('gives off poisonous gas with acid', '', '', ['acids', 'hood']),
  EUH032: code('gives off very poisonous gas with acid', '', '', ['acids', 'hood']),
  EUH066: code('dries and cracks skin on repeated contact', '', '', ['dries']),
  EUH071: code('burns the airways', '', '', ['hood']),
});

/** Every code that the list of hazards can have; `H272/3` is the weaker category of an oxidiser. */
export type HazardCode = keyof ReturnType<typeof allCodeTexts>;

export const confidenceTexts = {
  h: 'harmonised, CLP Annex VI',
  t: 'two sources agree',
  o: 'one source, not harmonised',
  m: 'from memory, not confirmed',
} as const;

export const cautionTexts = {
  unlisted: 'Unlisted: nothing is known here about this formula. That does not mean that it is harmless.',
  unlistedAdvice: 'Read the safety data sheet before anyone opens the bottle; until then treat it as harmful.',
  otherHydrate: (listed: string) =>
    `Only ${listed} is listed. What follows is for that form and may differ for the one you typed.`,
  notClassified: 'Not classified: below the limits for labels.',
  notClassifiedAsFarAsKnown: 'Not classified by the limits that are known.',
  notClassifiedAsFarAsKnownAdvice: 'That is not the same as harmless: eye protection stays on.',
  notClassifiedUndiluted: (confidence: string) => `Not classified by the source we have (${confidence}).`,
  notClassifiedAdvice: 'That is not the same as harmless: eye protection stays on, and ordinary care.',
  /** Before what is said of each of several substances with one formula. */
  ifItIs: (name: string) => `If it is ${name}:`,
  asSold: (strength: string) => `As it is sold, about ${strength} %. Give its mass percent for another strength.`,
  strictest: (strength: string) =>
    `Sold in several strengths, often about ${strength} %: this is the strictest. Give the mass percent of your bottle.`,
  notKnown: 'Not known: the figures are from memory and could not be confirmed.',
  notKnownPlain: 'Its hazards are not known for sure, so treat it as harmful.',
  notClassifiedPlain: 'Not classified.',
  notKnownAdvice: 'See the supplier’s safety data sheet; eye protection stays on.',
  strengthNotKnown: 'Not known: only a weaker solution is listed.',
  partNotKnown: (codes: string) => `Not known at this strength: ${codes}.`,
  partNotKnownAdvice: 'See the supplier’s safety data sheet for this strength.',
  nearEdge: 'Close to a limit, so the stricter side is shown.',
  minimumClass: (codes: string) =>
    `Just below the limit of ${codes}, which is a least class only: the truth may be stricter.`,
  minimumClassPlain: 'Just below a limit, so treat it as if it were above.',
  extremePh: 'At pH 11.5 or more, or 2 or less, it counts as burning skin and eyes unless tests say otherwise.',
  extremePhAdvice: 'Measure the pH of what you made; wear eye protection.',
  drain: 'Leftovers may go down the drain with plenty of water, where your local rules allow it.',
  beaker: 'Nothing down the drain: all of it, rinsings too, into the waste beaker. Staff deal with it.',
  metalBeaker: (metal: string) =>
    `Nothing down the drain: all of it, rinsings too, into the waste beaker for ${metal}. Staff deal with it.`,
  school: (use: string) => `Use in schools, common practice: ${use}.`,
  schoolAdvice: 'Rules differ by place: your school’s own rule decides.',
  deferring:
    'This is no safety data sheet. Read the one from your supplier; follow local rules and your school’s own assessment.',
} as const;
