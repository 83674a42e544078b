import type { CalculatedStep } from '../lesson/activity.ts';
import type { QuantityEntry } from '../quantities/quantityEntry.ts';
import {
  decimalWords,
  figureWords,
  remarks,
  type SlipId,
  type SlipText,
  slipTexts,
  unreadableTexts,
  type Wording,
} from '../texts/feedback.ts';
import type { Judgement } from './judgeEntry.ts';
import type { Unreadable } from './readEntry.ts';
import type { Asked } from './tolerance.ts';

/** Puts words in place of the names in braces. */
export const filled = (text: string, words: Readonly<Record<string, string>>): string =>
  text.replace(/\{(\w+)\}/g, (whole, name: string) => words[name] ?? whole);

/** The words of a slip for the most special of some wordings that it has any for. */
export const slipWords = (id: SlipId, wordings: readonly Wording[]): SlipText => {
  const text: SlipText & { readonly in?: Partial<Record<Wording, SlipText>> } = slipTexts[id];
  const own = wordings.find((wording) => text.in?.[wording]);
  return (own && text.in?.[own]) ?? text;
};

interface Wishes {
  /** Wordings that come before those for the quantity. */
  readonly special?: readonly Wording[];
  /** Questions of the step's own, which win over those of its quantity. */
  readonly asks?: CalculatedStep['asks'];
  /** For a row that is too low for more: one question, without what the value matches. */
  readonly isBrief?: boolean;
}

/** Letters that a row holds where one slip is named; a test compares them with the heights that are planned. */
const mostLettersOfSeveral = 138;

/**
 * One slip is named alone. Of several that give one value only the questions are asked, each once and as many as have room:
 * every one of them fits, and the row is no higher for it. Where they ask the same, one of them is named.
 */
function slipsText(
  slips: readonly SlipId[],
  wordings: readonly Wording[],
  { asks = {}, isBrief = false }: Pick<Wishes, 'asks' | 'isBrief'>,
): string {
  const texts = slips.map((id) => ({
    ...slipWords(id, wordings),
    ...(asks[id] === undefined ? {} : { ask: asks[id] }),
  }));
  const questions = [...new Set(texts.map(({ ask }) => ask))];
  if (isBrief) return questions.length === 1 ? (questions[0] ?? '') : remarks.notYetBrief;
  const [{ fits = '' } = {}] = texts;
  if (questions.length === 1) return filled(remarks.oneFits, { fits, ask: questions[0] ?? '' });
  return questions
    .map((_, last) => filled(remarks.severalFit, { ask: questions.slice(0, last + 1).join(' ') }))
    .reduce((asked, more) => (more.length > mostLettersOfSeveral ? asked : more));
}

const askedWords = (asked: Asked): string =>
  ('decimals' in asked ? decimalWords[asked.decimals] : figureWords[asked.figures]) ?? remarks.figuresAsked;

const unitQuestion = (text: string, unit: string): string => (unit === '' ? remarks.unitNone : filled(text, { unit }));

export const unreadableText = (because: Unreadable): string => unreadableTexts[because];

/**
 * What an entry's row says: about the work, without a digit of the answer.
 */
export function feedbackText(
  judgement: Judgement,
  { name, unit }: QuantityEntry,
  { special = [], asks, isBrief = false }: Wishes = {},
): string {
  switch (judgement.status) {
    case 'blank':
      return remarks.blank;
    case 'unreadable':
      return unreadableText(isBrief ? 'not a number' : judgement.because);
    case 'on target':
      return remarks.onTarget;
    case 'close': {
      if (judgement.because === 'rounding') return remarks.closeRounding;
      if (judgement.because === 'cut off') return remarks.closeCutOff;
      if (judgement.because === 'table') return remarks.closeTable;
      const text = judgement.because === 'few figures' ? remarks.closeFewFigures : remarks.wrongFigures;
      return filled(text, { figures: askedWords(judgement.asked) });
    }
    case 'follows':
      return filled(remarks.follows, { row: judgement.lookAt });
    case 'not yet':
      switch (judgement.question) {
        case 'unit of another kind':
          return unitQuestion(isBrief ? remarks.unitBrief : remarks.unitWanted, unit);
        case 'unit does not fit':
          return unitQuestion(remarks.unitEvidently, unit);
        case 'other mark':
          return remarks.otherMark;
        case 'sign':
          return remarks.signOfError;
        case 'negative':
          return remarks.negative;
        case 'one figure':
          return filled(remarks.oneFigure, { figures: askedWords(judgement.asked) });
        default:
          if (judgement.slips.length > 0) return slipsText(judgement.slips, [...special, name], { asks, isBrief });
          return isBrief ? remarks.notYetBrief : remarks.notYet;
      }
  }
}
