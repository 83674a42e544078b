import type { Asked } from './asked.ts';
import type { Judgement } from './judgeEntry.ts';
import type { QuantityEntry } from './quantities/quantityEntry.ts';
import type { QuantityName } from './quantities.ts';
import type { Unreadable } from './readEntry.ts';
import {
  decimalWords,
  figureWords,
  remarks,
  type SlipId,
  type SlipText,
  slipTexts,
  unreadableTexts,
} from './texts/feedback.ts';

/** Puts words in place of the names in braces. */
export const filled = (text: string, words: Readonly<Record<string, string>>): string =>
  text.replace(/\{(\w+)\}/g, (whole, name: string) => words[name] ?? whole);

const slipText = (id: SlipId, quantity: QuantityName): SlipText => {
  const text: SlipText & { readonly in?: Partial<Record<QuantityName, SlipText>> } = slipTexts[id];
  return text.in?.[quantity] ?? text;
};

/** One slip is named alone; several are named together, and every question fits. */
function slipsText(slips: readonly SlipId[], quantity: QuantityName): string {
  const texts = slips.map((id) => slipText(id, quantity));
  return filled(texts.length === 1 ? remarks.oneFits : remarks.severalFit, {
    fits: texts.map(({ fits }) => fits).join(', or '),
    ask: texts.map(({ ask }) => ask).join(' '),
  });
}

const askedWords = (asked: Asked): string =>
  ('decimals' in asked ? decimalWords[asked.decimals] : figureWords[asked.figures]) ?? remarks.figuresAsked;

const unitQuestion = (text: string, unit: string): string => (unit === '' ? remarks.unitNone : filled(text, { unit }));

export const unreadableText = (because: Unreadable): string => unreadableTexts[because];

/** What an entry's row says: about the work, without a digit of the answer. */
export function feedbackText(judgement: Judgement, { name, unit }: QuantityEntry): string {
  switch (judgement.status) {
    case 'blank':
      return remarks.blank;
    case 'unreadable':
      return unreadableText(judgement.because);
    case 'on target':
      return remarks.onTarget;
    case 'close': {
      if (judgement.because === 'rounding') return remarks.closeRounding;
      if (judgement.because === 'cut off') return remarks.closeCutOff;
      if (judgement.because === 'planned for made') return remarks.closePlanned;
      const text = judgement.because === 'few figures' ? remarks.closeFewFigures : remarks.wrongFigures;
      return filled(text, { figures: askedWords(judgement.asked) });
    }
    case 'follows':
      return filled(remarks.follows, { row: judgement.lookAt });
    case 'not yet':
      switch (judgement.question) {
        case 'unit of another kind':
          return unitQuestion(remarks.unitWanted, unit);
        case 'unit does not fit':
          return unitQuestion(remarks.unitEvidently, unit);
        case 'sign':
          return remarks.signOfError;
        case 'negative':
          return remarks.negative;
        case 'one figure':
          return filled(remarks.oneFigure, { figures: askedWords(judgement.asked) });
        default:
          return judgement.slips.length > 0 ? slipsText(judgement.slips, name) : remarks.notYet;
      }
  }
}
