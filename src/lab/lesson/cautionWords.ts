import { adviceTexts } from '../../chemistry/cautionTexts.ts';
import { gravityOf } from '../../chemistry/gravityOf.ts';
import { hiddenBy } from '../../chemistry/hiddenBy.ts';
import { readFormula } from '../../chemistry/readFormula.ts';
import { shortEffects, tickTexts } from '../texts/ticks.ts';
import { type HandledForm, type Handling, handledForms } from './handledForms.ts';
import { keptFromStudents } from './keptFromStudents.ts';

/** Words that a team reads in its row; with what is said before them they stay within sixty. */
export const mostCautionWords = 54;

/** Lines of its row, which is as high as any in a class sheet may be. */
const mostLines = 10;
/** How much a line holds where a usual letter takes ten, a narrow one and a space five, and a wide one sixteen. */
const lineHolds = 317;
const narrow = /[fijlrtI,.:;’()]/g;
const wide = /[mwMWCDGHNOQRU]/g;

export interface TeamHandling extends Omit<Handling, 'formula'> {
  /** Staff pour from the bottle of a concentrated reagent where this is false. */
  readonly studentsDilute: boolean;
}

/**
 * The cautions for what a team handles, in at most `mostCautionWords` words. For each form, the strongest first: signal
 * word and what it does, the gravest first; then what to wear and do, where it goes, and whom to ask. Where not every effect
 * has room the row says where the others stand: all of them are in `wholeCautions`. Never empty, and never says that a
 * thing is safe.
 */
export function cautionWords({ studentsDilute, ...handling }: TeamHandling): string {
  const { substance, givens } = handling;
  const formula = readFormula(givens[substance.formula]);
  const maker =
    substance.massPercent === undefined ? [] : [studentsDilute ? tickTexts.withTeacher : tickTexts.staffOnly];
  if (!formula.ok) return [...maker, tickTexts.noFormula].join('\n');
  const forms = handledForms({ ...handling, formula: formula.value });
  const isUnlisted = forms.some(({ cautions }) => cautions.listing === 'unlisted');
  const before = tickTexts.readFirst(tickTexts.answer(String(givens[substance.formula] ?? '').trim()));
  const told = (lines: readonly FormLine[], { parting, doing, isAll }: Telling) =>
    [
      ...maker,
      ...lines.map(sentences),
      ...(isUnlisted ? [tickTexts.readSheetFirst] : []),
      // In one paragraph: each line of its own would leave part of a line empty.
      [
        ...(isAll ? [] : [tickTexts.moreAbove]),
        tickTexts.wear[wearFor(forms)],
        ...careFor(forms).map((care) => tickTexts[care]),
        ...doing,
        wasteFor(forms),
        tickTexts.deferring,
      ].join(' '),
    ].join(parting);
  const fits = (text: string) => wordsIn(text) <= mostCautionWords && linesOf(`${before}\n${text}`) <= mostLines;

  const all = forms.map((_, place) => codesOfForm(forms, place, false));
  const news = forms.map((_, place) => codesOfForm(forms, place, true));
  /** The substance by its name up to so many words, by its formula, or, as the row's answer has it too, not at all. */
  const linesWith = (codes: readonly (readonly string[])[], nameLength: number | undefined) =>
    toldAlike(
      forms.map((form, place) =>
        lineOf(form, {
          written: place === 0 && nameLength !== undefined ? formula.value.text : '',
          nameLength: nameLength ?? 0,
          codes: codes[place] ?? [],
        }),
      ),
    );
  const doing = doingFor(forms).map((what) => tickTexts[what]);
  // From the fullest words to the fewest.
  for (const [codes, nameLength, parting] of [
    [all, mostWordsOfName, '\n'],
    [news, mostWordsOfName, '\n'],
    [news, 0, '\n'],
    [news, 0, ' '],
    [news, undefined, ' '],
  ] as const) {
    const whole = told(linesWith(codes, nameLength), { parting, doing, isAll: true });
    if (fits(whole)) return whole;
  }

  // The gravest effect stands; what to do comes before other effects.
  let kept = { doing: [] as readonly string[], codes: news.map((codes, place) => codes.slice(0, place === 0 ? 1 : 0)) };
  const now = ({ doing, codes } = kept) => told(linesWith(codes, undefined), { parting: ' ', doing, isAll: false });
  const keep = (more: typeof kept) => {
    if (fits(now(more))) kept = more;
  };
  for (const what of doing) keep({ ...kept, doing: [...kept.doing, what] });
  for (const [place, codes] of news.entries()) {
    for (const code of codes.slice(kept.codes[place]?.length ?? 0))
      keep({ ...kept, codes: kept.codes.map((list, at) => (at === place ? [...list, code] : list)) });
  }
  return now();
}

interface Telling {
  /** Between the forms, and before what to do. */
  readonly parting: string;
  readonly doing: readonly string[];
  /** Whether every effect stands there. */
  readonly isAll: boolean;
}

/** Lines of a text where words stay whole: as good as never fewer than a browser makes of it. */
function linesOf(text: string): number {
  let lines = 0;
  for (const paragraph of text.split('\n')) {
    let left = 0;
    for (const word of paragraph.split(' ')) {
      const own = 10 * word.length - 5 * (word.match(narrow)?.length ?? 0) + 6 * (word.match(wide)?.length ?? 0);
      if (left < own + 5) {
        lines += 1;
        left = lineHolds + 5;
      }
      left -= own + 5;
    }
  }
  return lines;
}

/** Codes of a form, the gravest first; those that a stronger form has told, or a stricter code in it, only where asked. */
function codesOfForm(forms: readonly HandledForm[], place: number, isNewOnly: boolean): readonly string[] {
  const codes = forms[place]?.cautions.codes ?? [];
  const stronger = codesOf(forms.slice(0, place));
  const told = new Set(isNewOnly ? [...stronger, ...hiddenBy(new Set([...stronger, ...codes]))] : []);
  return codes.filter((code) => !told.has(code)).sort((one, other) => gravityOf(one) - gravityOf(other));
}

const wordsIn = (text: string): number => text.split(/\s+/).filter((word) => word !== '').length;

/** Longer names give way to the formula, which the row has in its title too. */
const mostWordsOfName = 3;

interface FormLine {
  readonly what: string;
  /** Signal word, and whether it is for staff only. */
  readonly marks: readonly string[];
  /** Each once, the gravest first. */
  readonly effects: string;
}

function lineOf(
  { cautions, massPercent, short }: HandledForm,
  {
    written,
    nameLength,
    codes,
  }: { readonly written: string; readonly nameLength: number; readonly codes: readonly string[] },
): FormLine {
  const { listing, name, verdict, signalWord } = cautions;
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
  return {
    what: [written === '' ? '' : called, short].filter((words) => words !== '').join(', '),
    marks: [isKept && verdict !== 'hazards' ? '' : signal, isKept ? tickTexts.staffOnlyForm : ''].filter(
      (words) => words !== '',
    ),
    effects: effectsOf(codes),
  };
}

/** What does the same is said together. */
function effectsOf(codes: readonly string[]): string {
  const byDoing = new Map<string, Set<string>>();
  for (const code of codes) {
    const [does = '', ...what] = (shortEffects[code] ?? code).split('|');
    byDoing.set(does, new Set([...(byDoing.get(does) ?? []), ...what]));
  }
  return [...byDoing]
    .map(([does, what]) => {
      const last = [...what].pop() ?? '';
      const others = [...what].slice(0, -1).join(', ');
      const joint = others === '' ? '' : does.endsWith(' if') ? tickTexts.or : tickTexts.and;
      return `${does} ${others}${joint}${last}`.trim();
    })
    .join(', ');
}

/** Forms of which the same is told, or nothing new, stand in one line. */
function toldAlike(lines: readonly FormLine[]): readonly FormLine[] {
  const alike = (line: FormLine) =>
    lines.findIndex(
      ({ marks, effects }) => marks.join() === line.marks.join() && (effects === line.effects || line.effects === ''),
    );
  return lines.flatMap((line, place) =>
    alike(line) < place
      ? []
      : [
          {
            ...line,
            what: lines
              .filter((other) => alike(other) === place)
              .map(({ what }) => what)
              .join(tickTexts.and),
          },
        ],
  );
}

const capital = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

function sentences({ what, marks, effects }: FormLine): string {
  const head = [what, marks.join(', ')].filter((part) => part !== '').join(': ');
  return [head, effects]
    .filter((part) => part !== '')
    .map((part) => `${capital(part)}.`)
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
