/** More letters than this are no slip of the shift key. */
const lettersMax = 24;
const offersMax = 2;

/** Elements that a school bottle may hold: a guess with others, such as actinium, is worse than none. */
const schoolElements = new Set(
  'H Li Be B C N O F Na Mg Al Si P S Cl K Ca Cr Mn Fe Co Ni Cu Zn Br Ag Cd Sn I Ba Pt Au Hg Pb Bi Sr'.split(' '),
);

/**
 * How a formula was probably meant where only the case of its letters is wrong: `nacl` gives `NaCl`. Empty where there
 * is no such spelling, or more than two.
 */
export function likelySpellings(text: string): readonly string[] {
  if (text.replace(/[^A-Za-z]/g, '').length > lettersMax) return [];
  /** Spellings of what stands from each place on; filled from the end, kept to one more than is offered. */
  const from: string[][] = [];
  from[text.length] = [''];
  for (let place = text.length - 1; place >= 0; place -= 1) {
    const letter = text.charAt(place);
    const found: string[] = [];
    const add = (written: string) => {
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
