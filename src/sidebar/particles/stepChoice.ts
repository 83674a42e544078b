import { choice } from '../page/choice.ts';
import { field } from '../page/field.ts';
import { texts } from '../texts.ts';

/** Which dilution of a row of flasks is drawn; nothing to choose where there is one. */
export function stepChoice({
  steps,
  step,
  chosen,
}: {
  readonly steps: number;
  readonly step: number;
  readonly chosen: (step: number) => void;
}): readonly HTMLElement[] {
  if (steps < 2) return [];
  const { particles } = texts;
  const select = choice(
    Array.from({ length: steps }, (_, index) => ({
      value: String(index + 1),
      label: index === 0 ? particles.firstStep : particles.laterStep(index + 1),
    })),
    String(step),
  );
  select.addEventListener('change', () => chosen(Number(select.value)));
  return [field({ id: 'particles-step', label: particles.pickStep, control: select }).root];
}
