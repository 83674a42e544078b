import type { Cautions } from '../../chemistry/cautions.ts';
import { codeTexts, type HazardCode } from '../../chemistry/cautionTexts.ts';
import { readFormula } from '../../chemistry/readFormula.ts';
import type { CautionLanguage } from '../texts/cautionLanguages/cautionLanguage.ts';
import { cautionLanguages } from '../texts/cautionLanguages.ts';
import { tickTexts } from '../texts/ticks.ts';
import type { CautionPiece } from './cautionPieces.ts';
import { careFor, doingFor, type TeamHandling, wearFor } from './cautionWords.ts';
import { handledForms } from './handledForms.ts';
import { keptFromStudents } from './keptFromStudents.ts';
import type { Settings } from './setup.ts';

/** A form of the substance in the second language. */
export interface CautionPieceAlso extends CautionPiece {
  /** Stands where not all of it has room. */
  readonly more: string;
}

/** The language that a lesson wants beside the first; undefined for none, and for a name that nobody knows. */
export const cautionLanguageOf = (settings: Pick<Settings, 'cautions also in'>): CautionLanguage | undefined =>
  Object.entries(cautionLanguages).find(([name]) => name === settings['cautions also in'])?.[1];

const isCode = (code: string): code is HazardCode => Object.keys(codeTexts()).includes(code);

/** Signal word and statements in another language; what is open is said to be. */
export function statementsIn(
  language: CautionLanguage,
  { signalWord, codes, unknownCodes, verdict, listing }: Cautions,
): { readonly signalWord: string; readonly statements: readonly string[] } {
  const isOpen = verdict === 'unsure' || unknownCodes.length > 0 || listing !== 'listed';
  const stated = codes.map((code) => {
    if (!isCode(code)) throw new Error(`${code} is a code without a text.`);
    return language.statements[code];
  });
  return {
    signalWord: signalWord === '' ? '' : language.signalWords[signalWord],
    statements: [
      ...new Set(stated),
      ...(isOpen ? [language.notKnown] : stated.length === 0 ? [language.notClassified] : []),
    ],
  };
}

/**
 * The cautions for what a team handles in another language, a piece for each form as `cautionPieces` has them: signal word
 * and prescribed statements; what to wear and do, and where it goes, once with the first form. The line that defers stands apart.
 */
export function cautionPiecesIn(
  language: CautionLanguage,
  { studentsDilute, ...handling }: TeamHandling,
): readonly CautionPieceAlso[] {
  const formula = readFormula(handling.givens[handling.substance.formula]);
  if (!formula.ok) return [];
  const forms = handledForms({ ...handling, formula: formula.value });
  const isPoured = handling.substance.massPercent !== undefined;
  const goesToDrain = forms.every(({ cautions }) => cautions.waste.goesTo === 'drain');
  const advice = [
    ...(isPoured ? [studentsDilute ? language.withTeacher : language.staffOnly] : []),
    language.wear[wearFor(forms)],
    ...careFor(forms).map((care) => language[care]),
    ...doingFor(forms).map((doing) => language[doing]),
    language.splash,
    goesToDrain ? language.drain : language.beaker,
  ];
  return forms.map(({ cautions, massPercent, short }, place) => {
    const { signalWord, statements } = statementsIn(language, cautions);
    const what = [formula.value.text, short === tickTexts.solid ? language.solid : short].filter((part) => part !== '');
    const marks = [
      signalWord,
      keptFromStudents(cautions, massPercent !== undefined) ? language.staffOnlyForm : '',
    ].filter((part) => part !== '');
    return {
      head: [what.join(', '), marks.join(', ')].filter((part) => part !== '').join(': '),
      effects: statements,
      advice: place === 0 ? advice : [],
      more: language.more,
    };
  });
}
