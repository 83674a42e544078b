import { readFormula } from '../../chemistry/readFormula.ts';
import { tickTexts } from '../texts/ticks.ts';
import type { TeamHandling } from './cautionWords.ts';
import { type HandledForm, handledForms } from './handledForms.ts';

/** One form of the substance: what it is called and its signal word, what it can do, and what to do about it. */
export interface CautionPiece {
  readonly head: string;
  readonly effects: readonly string[];
  /** Sentences, each said once. */
  readonly advice: readonly string[];
}

interface WholeCautions {
  /** Who makes it, or what to do where the formula cannot be read; empty where nothing of the kind is to be said. */
  readonly maker: readonly string[];
  readonly blocks: readonly CautionPiece[];
  /** Defers to the safety data sheet and local rules. */
  readonly last: string;
}

/** All cautions for what a team handles, the strongest form first, in pieces. */
export function cautionPieces({ studentsDilute, ...handling }: TeamHandling): WholeCautions {
  const { substance, givens } = handling;
  const formula = readFormula(givens[substance.formula]);
  const maker =
    substance.massPercent === undefined ? [] : [studentsDilute ? tickTexts.withTeacher : tickTexts.staffOnly];
  if (!formula.ok) return { maker: [...maker, tickTexts.noFormula], blocks: [], last: '' };
  const forms = handledForms({ ...handling, formula: formula.value });
  const said = new Set<string>();
  const [last = ''] = forms.flatMap(({ cautions: { statements } }) =>
    statements.filter(({ about }) => about === 'deferring').map(({ advice }) => advice),
  );
  return { maker, blocks: forms.map((form) => blockOf(form, formula.value.text, said)), last };
}

/** What holds of the substance in every form is said once; `said` collects it. */
function blockOf({ words, cautions }: HandledForm, written: string, said: Set<string>): CautionPiece {
  const { listing, name, signalWord, verdict, statements } = cautions;
  const own = statements.filter(({ about, plain }) => {
    if (about === 'deferring') return false;
    if (about !== 'use' && about !== 'form') return true;
    return !said.has(plain) && said.add(plain);
  });
  const advice = new Set(own.flatMap((statement) => statement.advice.split(/(?<=\.) /)));
  const what = [name || written, words].filter((part) => part !== '').join(', ');
  const signal = signalWord || (verdict === 'hazards' || verdict === 'none' ? '' : tickTexts.noSignal);
  return {
    head: listing === 'unlisted' || signal === '' ? `${what}:` : `${what}: ${signal}`,
    effects: own.map(({ plain }) => plain).filter((line) => line !== ''),
    advice: [...advice].filter((line) => line !== ''),
  };
}
