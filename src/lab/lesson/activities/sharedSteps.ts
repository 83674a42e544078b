import { letteredShown } from '../../bench/letteredShown.ts';
import type { CalculatedStep, ChosenStep, MeasuredStep, OrderedStep, TickedStep, ToldStep } from '../activity.ts';

/** Says how pure the solid is, where the team has been given that. */
export const purityShown = { given: 'purity', before: ' The solid is ', after: ' % pure.' } as const;

/** What most steps of a kind have in common; an activity adds its own names of givens and steps. */
export const calculated = (step: Omit<CalculatedStep, 'kind' | 'bench'>): CalculatedStep => ({
  ...step,
  kind: 'calculated',
  bench: false,
});

export const measured = (step: Omit<MeasuredStep, 'kind' | 'bench'>): MeasuredStep => ({
  ...step,
  kind: 'measured',
  bench: true,
});

export const told = (step: Pick<ToldStep, 'id' | 'title' | 'shown' | 'period'>): ToldStep => ({
  ...step,
  kind: 'told',
  unit: '',
  bench: false,
});

/** First row of every block: the aim, and the cautions beside it to read and tick. */
export const cautionsRead = ({
  aim,
  substance,
}: Pick<TickedStep, 'substance'> & { readonly aim: string }): TickedStep => ({
  id: 'cautions read',
  title: 'Aim and cautions',
  unit: '',
  shown: [`${aim}\nRead the cautions, then choose “yes, `, { given: substance.formula }, '”.'],
  period: 1,
  kind: 'ticked',
  bench: false,
  substance,
});

/** Puts the lettered actions in the line under the title, since people answer with their letters. */
export const ordered = (step: Pick<OrderedStep, 'id' | 'title' | 'procedure' | 'handles' | 'period'>): OrderedStep => ({
  ...step,
  kind: 'ordered',
  unit: '',
  bench: true,
  shown: letteredShown({ ...step, kind: 'ordered' }),
});

/** Puts the question and its lettered answers in the line under the title. */
export const chosen = (step: Pick<ChosenStep, 'id' | 'title' | 'question' | 'period'>): ChosenStep => ({
  ...step,
  kind: 'chosen',
  unit: '',
  bench: false,
  shown: letteredShown({ ...step, kind: 'chosen' }),
});
