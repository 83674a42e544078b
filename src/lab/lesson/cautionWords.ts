import { adviceTexts } from '../../chemistry/cautionTexts.ts';
import { gravityOf } from '../../chemistry/gravityOf.ts';
import { readFormula } from '../../chemistry/readFormula.ts';
import { shortEffects, tickTexts } from '../texts/ticks.ts';
import { type HandledForm, type Handling, handledForms } from './handledForms.ts';
import { keptFromStudents } from './keptFromStudents.ts';

/** Words that a team reads in its row; with what is said before them they stay below sixty. */
export const mostCautionWords = 52;

/** Letters of the same, so that the row is no higher than others: what is left out stands in the cautions of the class. */
const mostCautionLetters = 244;

export interface TeamHandling extends Omit<Handling, 'formula'> {
  /** Staff pour from the bottle of a concentrated reagent where this is false. */
  readonly studentsDilute: boolean;
}

/**
 * The cautions for what a team handles, in at most `mostCautionWords` words. For each form, the strongest first: signal
 * word and what it does, the gravest first; then what to wear and do, where it goes, and whom to ask. What does not fit
 * stands in `wholeCautions`. Never empty, and never says that a thing is safe.
 */
export function cautionWords({ studentsDilute, ...handling }: TeamHandling): string {
  const { substance, givens } = handling;
  const formula = readFormula(givens[substance.formula]);
  const maker =
    substance.massPercent === undefined ? [] : [studentsDilute ? tickTexts.withTeacher : tickTexts.staffOnly];
  if (!formula.ok) return [...maker, tickTexts.noFormula].join('\n');
  const forms = handledForms({ ...handling, formula: formula.value });
  const isUnlisted = forms.some(({ cautions }) => cautions.listing === 'unlisted');
  const linesWith = (nameLength: number) =>
    toldAlike(forms.map((form, place) => lineOf(form, { written: place === 0 ? formula.value.text : '', nameLength })));
  let lines = linesWith(mostWordsOfName);
  // The first effect of every form stands; what to do comes before second effects.
  let shown = lines.map(({ effects }) => effects.slice(0, 1));
  const doing: string[] = [];
  let parting = '\n';
  const told = () =>
    [
      ...maker,
      lines.map((line, place) => sentences(line, shown[place] ?? [])).join(parting),
      ...(isUnlisted ? [tickTexts.readSheetFirst] : []),
      // In one paragraph: each line of its own would leave part of a line empty.
      [
        tickTexts.wear[wearFor(forms)],
        ...careFor(forms).map((care) => tickTexts[care]),
        ...doing,
        wasteFor(forms),
        tickTexts.deferring,
      ].join(' '),
    ].join('\n');
  const isLong = () => wordsIn(told()) > mostCautionWords || told().length > mostCautionLetters;
  if (isLong()) {
    lines = linesWith(0);
    // Of the weaker forms the signal word has to do.
    shown = lines.map(({ effects }, place) => (place === 0 ? effects.slice(0, 1) : []));
  }
  if (isLong()) parting = ' ';
  /** Keeps a piece where there is room for it. */
  const keep = (list: string[], piece: string) => {
    list.push(piece);
    if (isLong()) list.pop();
  };
  for (const what of doingFor(forms)) keep(doing, tickTexts[what]);
  for (const [place, { effects }] of lines.entries()) {
    const list = shown[place] ?? [];
    for (const effect of effects.slice(list.length)) keep(list, effect);
  }
  return told();
}

const wordsIn = (text: string): number => text.split(/\s+/).filter((word) => word !== '').length;

/** Longer names give way to the formula, which the row has in its title too. */
const mostWordsOfName = 3;

interface FormLine {
  readonly what: string;
  /** Signal word, and whether it is for staff only. */
  readonly marks: readonly string[];
  /** Each once, the gravest first. */
  readonly effects: readonly string[];
}

function lineOf(
  { cautions, massPercent, short }: HandledForm,
  { written, nameLength }: { readonly written: string; readonly nameLength: number },
): FormLine {
  const { listing, name, verdict, signalWord, codes } = cautions;
  const called = name !== '' && wordsIn(name) <= nameLength ? name : written;
  const signal =
    listing === 'unlisted'
      ? tickTexts.unlisted
      : verdict === 'hazards'
        ? signalWord
        : verdict === 'none'
          ? tickTexts.notClassified
          : tickTexts.notKnown;
  const isKept = keptFromStudents(cautions, massPercent !== undefined);
  const gravest = [...codes].sort((one, other) => gravityOf(one) - gravityOf(other));
  return {
    what: [written === '' ? '' : called, short].filter((words) => words !== '').join(', '),
    marks: [isKept && verdict !== 'hazards' ? '' : signal, isKept ? tickTexts.staffOnlyForm : ''].filter(
      (words) => words !== '',
    ),
    effects: Array.from(new Set(gravest.map((code) => shortEffects[code] ?? code))),
  };
}

/** Forms of which the same is told stand in one line. */
function toldAlike(lines: readonly FormLine[]): readonly FormLine[] {
  const told = ({ marks, effects }: FormLine) => JSON.stringify([marks, effects]);
  return lines.flatMap((line, place) =>
    lines.findIndex((other) => told(other) === told(line)) < place
      ? []
      : [
          {
            ...line,
            what: lines
              .filter((other) => told(other) === told(line))
              .map(({ what }) => what)
              .join(tickTexts.and),
          },
        ],
  );
}

function sentences({ what, marks }: FormLine, effects: readonly string[]): string {
  const words = effects.join(', ');
  const head = [what, marks.join(', ')].filter((part) => part !== '').join(': ');
  return [head, `${words.charAt(0).toUpperCase()}${words.slice(1)}`]
    .filter((part) => part !== '')
    .map((part) => `${part}.`)
    .join(' ');
}

const codesOf = (forms: readonly HandledForm[]): readonly string[] => forms.flatMap(({ cautions }) => cautions.codes);

/** What to wear, by its name in the texts. */
export function wearFor(forms: readonly HandledForm[]): keyof typeof tickTexts.wear {
  const codes = codesOf(forms);
  if (codes.some((code) => /^H(314|318|310|311|300|330)$/.test(code))) return 'all';
  const isOpen = forms.some(({ cautions }) => cautions.verdict === 'unsure');
  return isOpen || codes.some((code) => /^(H3|EUH066)/.test(code)) ? 'hands' : 'eyes';
}

/** How to dilute or dissolve what burns: always said. */
export function careFor(forms: readonly HandledForm[]): readonly ('acidToWater' | 'heatOfSolution')[] {
  const cares = forms.flatMap(({ cautions: { statements } }) => statements.filter(({ about }) => about === 'care'));
  if (cares.length === 0) return [];
  return [cares.some(({ advice }) => advice === adviceTexts.acidToWater) ? 'acidToWater' : 'heatOfSolution'];
}

/** What else to do, what matters most first, as far as there is room. */
export function doingFor(
  forms: readonly HandledForm[],
): readonly ('neverWithAcid' | 'noFlames' | 'awayFromFuel' | 'hood')[] {
  const codes = codesOf(forms);
  const has = (pattern: RegExp) => codes.some((code) => pattern.test(code));
  return [
    ...(has(/^EUH03[12]$/) ? (['neverWithAcid'] as const) : []),
    ...(has(/^H22/) ? (['noFlames'] as const) : []),
    ...(has(/^H27/) ? (['awayFromFuel'] as const) : []),
    ...(has(/^(H33[0-6]|EUH071)$/) ? (['hood'] as const) : []),
  ];
}

function wasteFor(forms: readonly HandledForm[]): string {
  const wastes = forms.map(({ cautions }) => cautions.waste);
  if (wastes.every(({ goesTo }) => goesTo === 'drain')) return tickTexts.drain;
  const metal = wastes.map((waste) => waste.metal).find((name) => name !== '');
  return metal === undefined ? tickTexts.beaker : tickTexts.metalBeaker(metal);
}
