import Big from 'big.js';
import { molarMass } from '../../chemistry/molarMass.ts';
import { readFormula } from '../../chemistry/readFormula.ts';
import type { SoluteView } from '../../desk/views.ts';
import { errorText } from '../../errors/errorText.ts';
import { afterPress } from '../page/afterPress.ts';
import { choice } from '../page/choice.ts';
import { element } from '../page/element.ts';
import { type Field, field } from '../page/field.ts';
import { texts } from '../texts.ts';
import { cautionWords } from './cautionWords.ts';

interface SolutePick {
  readonly formula: string;
  readonly other: boolean;
}
export interface SoluteParts {
  readonly solutes: readonly SoluteView[];
  readonly pick: SolutePick;
  readonly picked: (pick: SolutePick) => void;
  /** The substance stands for now: picked, or typed to its end. */
  readonly settled: () => void;
}

const otherValue = 'another';

/** Two decimals, rounded as the decimal that it stands for: 55.845 has no exact binary form and would fall short. */
export const roundedMass = (gramsPerMole: number): string => new Big(gramsPerMole.toPrecision(12)).toFixed(2);

/** The substance: picked from the list, or typed as a formula; with what to know before planning with it. */
export function soluteFields({ solutes, pick, picked, settled }: SoluteParts): {
  readonly root: HTMLElement;
  readonly active: () => Field;
} {
  let typed = pick.other ? pick.formula : '';
  const indexOf = (formula: string) => solutes.findIndex((solute) => solute.formula === formula);
  const listed = indexOf(pick.formula);
  // Positions, not formulas, are the option values: a formula that somebody types can then never be mistaken for ours.
  const select = choice(
    [
      { value: 'none', label: texts.plan.pickSolute },
      ...solutes.map(({ name, formula }, index) => ({ value: `solute ${index}`, label: `${name} · ${formula}` })),
      { value: otherValue, label: texts.plan.otherFormula },
    ],
    pick.other ? otherValue : listed < 0 ? 'none' : `solute ${listed}`,
  );
  const input = element('input', {
    type: 'text',
    value: typed,
    autocomplete: 'off',
    spellcheck: 'false',
    autocapitalize: 'off',
  });
  const list = field({ id: 'solute', label: texts.plan.solute, control: select });
  const formula = field({ id: 'formula', label: texts.plan.formula, hint: texts.plan.formulaHint, control: input });
  const caution = element('div', { class: 'caution', role: 'status' });

  const chosen = (): SoluteView | undefined =>
    select.value === otherValue ? solutes[indexOf(typed.trim())] : solutes[Number(select.value.replace('solute ', ''))];
  const showCaution = () => {
    const solute = chosen();
    const words = cautionWords(solute?.formula ?? (select.value === otherValue ? typed : ''));
    if (!words) {
      caution.replaceChildren();
      caution.classList.remove('strong');
      return;
    }
    const planner = solute?.caution || words.planner;
    caution.replaceChildren(
      ...(planner === '' ? [] : [element('p', {}, element('strong', {}, texts.plan.plannerCaution), ` ${planner}`)]),
      ...(words.signalWord === '' ? [] : [element('p', {}, element('strong', {}, words.signalWord))]),
      element('ul', {}, ...words.statements.map((statement) => element('li', {}, statement))),
      element('p', { class: 'defer' }, texts.plan.defer),
      element(
        'details',
        {},
        element('summary', {}, texts.plan.cautionsMore),
        ...(words.advice === '' ? [] : [element('p', {}, words.advice)]),
        element('p', {}, texts.plan.asInBottle),
      ),
    );
    caution.classList.add('strong');
  };
  const tell = () => {
    const other = select.value === otherValue;
    picked({ other, formula: other ? typed : (chosen()?.formula ?? '') });
  };
  select.addEventListener('change', () => {
    list.setProblem('');
    const other = select.value === otherValue;
    formula.root.hidden = !other;
    tell();
    settled();
    showCaution();
    if (other) input.focus();
  });
  input.addEventListener('input', () => {
    typed = input.value;
    formula.setProblem('');
    formula.setMeaning('');
    tell();
  });
  const showFormula = () => {
    if (typed.trim() === '') return formula.setMeaning('');
    const read = readFormula(typed);
    const mass = read.ok ? molarMass(read.value) : read;
    formula.setMeaning(mass.ok ? texts.plan.molarMass(roundedMass(mass.value)) : '');
    formula.setProblem(mass.ok ? '' : errorText(mass.error));
  };
  input.addEventListener('change', () =>
    afterPress(() => {
      showFormula();
      showCaution();
      settled();
    }),
  );
  formula.root.hidden = !pick.other;
  showFormula();
  showCaution();
  return {
    root: element('div', { class: 'solute' }, list.root, formula.root, caution),
    active: () => (select.value === otherValue ? formula : list),
  };
}
