import { readFormula } from '../../chemistry/readFormula.ts';
import { tickTexts } from '../texts/ticks.ts';
import type { TeamHandling } from './cautionWords.ts';
import { type HandledForm, handledForms } from './handledForms.ts';

/**
 * All cautions for what a team handles, in plain words without codes, sources or how sure they are. For each form, the
 * strongest first: signal word, what it can do, and each piece of advice once. What a class reads once, and a team that
 * works on paper. The last line defers to the safety data sheet and local rules.
 */
export function wholeCautions({ studentsDilute, ...handling }: TeamHandling): string {
  const { substance, givens } = handling;
  const formula = readFormula(givens[substance.formula]);
  const maker =
    substance.massPercent === undefined ? [] : [studentsDilute ? tickTexts.withTeacher : tickTexts.staffOnly];
  if (!formula.ok) return [...maker, tickTexts.noFormula].join('\n');
  const forms = handledForms({ ...handling, formula: formula.value });
  const said = new Set<string>();
  const blocks = forms.flatMap((form) => blockOf(form, formula.value.text, said));
  const [last = ''] = forms.flatMap(({ cautions: { statements } }) =>
    statements.filter(({ about }) => about === 'deferring').map(({ advice }) => advice),
  );
  return [...maker, ...blocks, last].filter((line) => line !== '').join('\n');
}

/** What holds of the substance in every form is said once; `said` collects it. */
function blockOf({ words, cautions }: HandledForm, written: string, said: Set<string>): readonly string[] {
  const { listing, name, signalWord, verdict, statements } = cautions;
  const own = statements.filter(({ about, plain }) => {
    if (about === 'deferring') return false;
    if (about !== 'use' && about !== 'form') return true;
    return !said.has(plain) && said.add(plain);
  });
  const advice = new Set(own.flatMap((statement) => statement.advice.split(/(?<=\.) /)));
  const what = [name || written, words].filter((part) => part !== '').join(', ');
  const signal = signalWord || (verdict === 'hazards' || verdict === 'none' ? '' : tickTexts.noSignal);
  return [
    listing === 'unlisted' || signal === '' ? `${what}:` : `${what}: ${signal}`,
    ...own.map(({ plain }) => plain),
    [...advice].filter((line) => line !== '').join(' '),
  ];
}
