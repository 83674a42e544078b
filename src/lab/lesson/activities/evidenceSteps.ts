import type { Activity, MeasuredStep, Step, ToldStep, WeighingStep } from '../activity.ts';

/** A mass is read twice and worked out; volumes are read from glass that is filled to a mark, with nothing to subtract. */
const isWeighed = (step: Step): step is MeasuredStep => step.kind === 'measured' && step.instrument === 'balance';

const weighing = (
  { id, period }: MeasuredStep,
  when: WeighingStep['when'],
  { title, shown }: Pick<WeighingStep, 'title' | 'shown'>,
): WeighingStep => ({
  kind: 'weighing',
  id: `${id} ${when}`,
  when,
  of: id,
  title,
  unit: 'g',
  shown,
  period,
  bench: true,
});

const seen = (
  { period }: Step,
  evidence: 'words' | 'link',
  { id, title, shown }: Pick<ToldStep, 'id' | 'title' | 'shown'>,
): ToldStep => ({ kind: 'told', id, title, evidence, unit: '', shown, period, bench: false });

const weighed = (step: MeasuredStep): readonly Step[] => [
  weighing(step, 'empty', { title: 'Empty', shown: ['The empty boat, beaker or dish on the balance. If tared: 0.'] }),
  weighing(step, 'loaded', { title: 'Loaded', shown: ['The same with your substance in it, every figure shown.'] }),
  { ...step, shown: ['Loaded − empty, from the two rows above. ', ...step.shown], from: 'weighings' },
];

const toldSteps = (step: Step): readonly ToldStep[] => [
  seen(step, 'words', { id: 'seen', title: 'What you saw', shown: ['One thing that you saw while you worked.'] }),
  seen(step, 'link', {
    id: 'picture',
    title: 'Picture link',
    shown: ['A link to a picture or recording; no faces or voices needed.'],
  }),
];

/**
 * The activity with rows for what the team saw: both readings of the balance before the mass that is worked from them, and
 * behind the last row of the bench an observation and a link.
 */
export function withEvidenceSteps(activity: Activity): Activity {
  const { steps } = activity;
  const last = steps.map(({ bench }) => bench).lastIndexOf(true);
  return {
    ...activity,
    steps: steps.flatMap((step, place): readonly Step[] => [
      ...(isWeighed(step) ? weighed(step) : [step]),
      ...(place === last ? toldSteps(step) : []),
    ]),
  };
}
