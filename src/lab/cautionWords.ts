import type { Cautions } from '../chemistry/cautions.ts';
import { cautionTexts } from '../chemistry/cautionTexts.ts';
import { readFormula } from '../chemistry/readFormula.ts';
import { type HandledForm, type Handling, handledForms } from './handledForms.ts';
import { tickTexts } from './texts/ticks.ts';

type Lines = Cautions['statements'];

/**
 * The cautions for what a team handles, short enough for a cell. For each form in which it does, the strongest first: the
 * signal word, what it can do, and each piece of advice once. The last line defers to the safety data sheet and local
 * rules. Never empty, and never says that a thing is safe.
 */
export function cautionWords({
  studentsDilute,
  ...handling
}: Omit<Handling, 'formula'> & {
  /** Staff pour from the bottle of a concentrated reagent where this is false. */
  readonly studentsDilute: boolean;
}): string {
  const { substance, givens } = handling;
  const formula = readFormula(givens[substance.formula]);
  const maker =
    substance.massPercent === undefined ? [] : [studentsDilute ? tickTexts.withTeacher : tickTexts.staffOnly];
  if (!formula.ok) return [...maker, tickTexts.noFormula].join('\n');
  const forms = handledForms({ ...handling, formula: formula.value });
  const blocks = forms.flatMap((form, place) => {
    const { listing, statements } = form.cautions;
    const own = statements.slice(listing === 'another hydrate' && place > 0 ? 1 : 0, -1);
    // What is said of the substance and not of its strength need not be said again.
    return blockOf(formula.value.text, form, place === 0 ? own : own.filter(({ advice }) => advice !== schoolAdvice));
  });
  return [...maker, ...blocks, deferringOf(forms)].filter((line) => line !== '').join('\n');
}

const { schoolAdvice } = cautionTexts;
const deferringOf = ([form]: readonly HandledForm[]): string =>
  form?.cautions.statements[form.cautions.statements.length - 1]?.advice ?? '';

function blockOf(written: string, { words, cautions: { listing, name, signalWord } }: HandledForm, lines: Lines) {
  const advice = new Set(lines.flatMap((line) => line.advice.split(/(?<=\.) /)));
  const isUnlisted = listing === 'unlisted';
  const what = isUnlisted || words === '' ? [name || written] : [name, words];
  return [
    `${what.join(', ')}${isUnlisted ? '' : `: ${signalWord || tickTexts.noSignal}`}`,
    ...lines.map(({ text }) => text),
    [...advice].filter((line) => line !== '').join(' '),
  ];
}
