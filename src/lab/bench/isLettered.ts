import type { ChosenStep, OrderedStep, SafetyStep, Step } from '../lesson/activity.ts';

/** Whether a step is answered with letters, which differ from team to team. */
export const isLettered = <S extends Pick<Step, 'kind'>>(
  step: S,
): step is S & { readonly kind: (OrderedStep | ChosenStep | SafetyStep)['kind'] } =>
  step.kind === 'ordered' || step.kind === 'chosen' || step.kind === 'safety';
