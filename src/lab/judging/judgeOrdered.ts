import { type CellValue, isBlank } from '../../measurement/cellValue.ts';
import { patternOnUse } from '../../measurement/patternOnUse.ts';
import { blockKey } from '../bench/blockKey.ts';
import type { Lettered, LettersOf } from '../bench/lettered.ts';
import { orderedActions } from '../bench/orderedActions.ts';
import { precautions } from '../bench/precautions.ts';
import type { OrderRule, Precaution, ProcedureAction } from '../bench/procedures/procedure.ts';
import { procedureByName } from '../bench/procedures.ts';
import type { OrderedStep } from '../lesson/activity.ts';
import { badGiven } from '../texts/feedback.ts';
import { orderTexts } from '../texts/ordering.ts';
import type { Surroundings } from './judgedRow.ts';
import type { RowCheck } from './rowCheck.ts';

const anyNumber = patternOnUse(String.raw`\p{N}`, 'u');
const allLetters = patternOnUse(String.raw`\p{L}`, 'gu');
const linkingWords = /\b(?:and|then|next)\b/g;

/** Letters of an entry such as “c a b”, “C, a → b” or “cab”, in order; undefined where something else stands among them. */
function lettersIn(entry: string): readonly string[] | undefined {
  const plain = entry.normalize('NFKC').toLowerCase();
  const linked = plain.replace(linkingWords, ' ');
  if (anyNumber().test(linked)) return undefined;
  const letters = linked.match(allLetters());
  return letters ?? undefined;
}

const brokenFirst = (rules: readonly OrderRule[], order: readonly string[]): OrderRule | undefined => {
  const place = (id: string) => order.indexOf(id);
  const isBroken = ({ before, after, unless }: OrderRule) =>
    place(after) < place(before) && !(unless !== undefined && place(unless.before) < place(unless.after));
  const broken = rules.filter(isBroken);
  for (const weight of ['safety', 'needed', 'advised'] as const) {
    const [earliest] = broken
      .filter((rule) => rule.weight === weight)
      .sort((one, other) => place(one.after) - place(other.after) || place(one.before) - place(other.before));
    if (earliest !== undefined) return earliest;
  }
  return undefined;
};

function lettersAmiss(entry: CellValue, actions: readonly Lettered<ProcedureAction>[]): string | readonly string[] {
  const known = actions.map(({ letter }) => letter);
  const letters = typeof entry === 'string' ? lettersIn(entry) : undefined;
  if (letters === undefined) return orderTexts.lettersOnly(known);
  const strange = letters.filter((letter, at) => !known.includes(letter) && letters.indexOf(letter) === at);
  // A stray letter or two are a slip of the finger; more of them are words.
  if (strange.length > 2) return orderTexts.wordsTyped(known);
  const missing = known.filter((letter) => !letters.includes(letter));
  const twice = known.filter((letter) => letters.indexOf(letter) !== letters.lastIndexOf(letter));
  if (strange.length > 0 || missing.length > 0 || twice.length > 0) {
    return orderTexts.lettersAmiss({ known, strange, missing, twice });
  }
  return letters;
}

/** What an order is judged with, beside the procedure. */
interface OrderSurroundings {
  /** Whose letters the entry is written in. */
  readonly letters?: LettersOf;
  /** What this team's substance asks for beyond what all teams need. */
  readonly precautions?: readonly Precaution[];
}

/**
 * Judges an order of lettered actions by which must come before which, since more than one order is right.
 * What to look at names the first pair that is out of order and asks for its reason; it never shows a whole order.
 */
export function judgeOrder(
  procedureName: string,
  entry: CellValue,
  { letters: whose = {}, precautions = [] }: OrderSurroundings = {},
): RowCheck {
  if (isBlank(entry)) return { status: 'blank', lookAt: '' };
  const { rules, reminders = {} } = procedureByName(procedureName);
  const actions = orderedActions(procedureName, whose);
  const letters = lettersAmiss(entry, actions);
  if (typeof letters === 'string') return { status: 'unreadable', lookAt: letters };
  const order = letters.map((letter) => actions.find((action) => action.letter === letter)?.item.id ?? '');
  const holding = rules.filter(({ when }) => when === undefined || precautions.includes(when));
  const broken = brokenFirst(holding, order);
  if (broken === undefined || broken.weight === 'advised') {
    const said = [orderTexts.works, ...precautions.map((one) => reminders[one]), broken?.ask];
    return { status: 'on target', lookAt: said.filter((text) => text !== undefined).join(' ') };
  }
  // In the order of the entry, so that the pair itself does not say more than the question does.
  const pair = {
    sooner: letters[order.indexOf(broken.after)] ?? '',
    later: letters[order.indexOf(broken.before)] ?? '',
  };
  return { status: 'not yet', lookAt: orderTexts.brokenPair({ ...pair, ask: broken.ask }) };
}

/**
 * Judges an order of letters by what the team handles. In a sheet whose letters are those of an older layout nothing can
 * be said of an order, so that nobody is told that a right one is wrong.
 */
export function judgeOrdered(
  step: OrderedStep,
  cell: CellValue,
  { givens, settings }: Pick<Surroundings, 'givens' | 'settings'>,
): RowCheck {
  if (settings.layout < procedureByName(step.procedure).sinceLayout) {
    return { status: isBlank(cell) ? 'blank' : 'unreadable', lookAt: orderTexts.buildAgain };
  }
  const found = precautions(step, { givens, decimalMark: settings.decimalMark });
  if (!found.ok) return { status: 'unreadable', lookAt: badGiven(found.error.argument) };
  return judgeOrder(step.procedure, cell, {
    letters: { step: step.id, key: blockKey(givens) },
    precautions: found.value,
  });
}
