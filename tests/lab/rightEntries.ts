import type { Activity, CalculatedStep, MeasuredStep } from '../../src/lab/activity.ts';
import { letteredOptions } from '../../src/lab/checkChoice.ts';
import { expectedValue } from '../../src/lab/expectedValue.ts';
import { orderedActions } from '../../src/lab/orderedActions.ts';
import { prepareStep } from '../../src/lab/prepareStep.ts';
import { procedureByName } from '../../src/lab/procedures.ts';
import type { NumberName } from '../../src/lab/quantities/quantityEntry.ts';
import { quantities } from '../../src/lab/quantities.ts';
import { questionByName } from '../../src/lab/questions.ts';
import { spanOver } from '../../src/lab/worked.ts';

/** Right entries of every step by id: numbers to three figures (percent error to two), readings a little above the plan. */
export function rightEntries(activity: Activity, givens: Readonly<Record<string, string>>): Record<string, string> {
  const entries: Record<string, string> = {};
  const calculated = (step: CalculatedStep): string => {
    const cells: Record<string, string | undefined> = {};
    const numbers: Partial<Record<NumberName, number>> = {};
    for (const [name, source] of Object.entries(step.takes)) {
      if ('given' in source) cells[name] = givens[source.given];
      else numbers[name as NumberName] = Number(entries[source.entryOf]);
    }
    const prepared = prepareStep(quantities[step.quantity], cells, { numbers });
    if (!prepared.ok) throw new Error(`${activity.id}, ${step.id}: ${prepared.error.argument} ${prepared.error.code}`);
    const { asked, quantity } = prepared.value;
    const { middle } = spanOver(prepared.value, quantity.relation);
    return 'decimals' in asked ? middle.toFixed(asked.decimals) : String(Number(middle.toPrecision(asked.figures)));
  };
  const expected = ({ id, expects }: MeasuredStep): number => {
    if (typeof expects === 'string') return Number(entries[expects]);
    if ('given' in expects) return Number(givens[expects.given]);
    const found = expectedValue(expects, { givens, decimalMark: 'point' });
    if (!found.ok) throw new Error(`${activity.id}, ${id}: ${found.error.argument} ${found.error.code}`);
    return found.value;
  };
  for (const step of activity.steps) {
    switch (step.kind) {
      case 'calculated':
        entries[step.id] = calculated(step);
        break;
      case 'measured':
        entries[step.id] = (expected(step) * 1.004).toFixed(step.unit === 'g' ? 2 : 5);
        break;
      case 'ordered':
        entries[step.id] = procedureByName(step.procedure)
          .actions.map(({ id }) => orderedActions(step.procedure).find(({ item }) => item.id === id)?.letter)
          .join(' ');
        break;
      case 'chosen': {
        const { right } = questionByName(step.question);
        entries[step.id] = letteredOptions(step.question).find(({ item }) => item.id === right.id)?.letter ?? '';
        break;
      }
      case 'ticked':
        entries[step.id] = `yes, ${givens[step.substance.formula]}`;
        break;
      case 'told':
        entries[step.id] = 'The ions are spread out.';
        break;
    }
  }
  return entries;
}
