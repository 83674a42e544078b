import type { Problem } from '../../desk/outcome.ts';
import type { Setup } from '../../lab/lesson/setup.ts';
import { element } from '../page/element.ts';
import type { Field } from '../page/field.ts';
import { unfold } from '../page/fold.ts';
import { problemNotice } from '../page/notice.ts';
import { texts } from '../texts.ts';
import type { PlanEditor } from './planEditor.ts';
import { type FieldProblem, readPlan } from './readPlan.ts';

/** What needs another look: beside its field, with one line for all of them and the first field in focus. */
export interface PlanProblems {
  readonly summary: HTMLElement;
  /** Where a question or a problem without a field stands. */
  readonly result: HTMLElement;
  /** The plan to send, or undefined where a field needs another look. */
  ready(): Setup | undefined;
  /** What the desk or the host has found. */
  show(problem: Problem, again: () => void): void;
}

export function planProblems(editor: PlanEditor): PlanProblems {
  const { fields } = editor;
  const summary = element('p', { class: 'summary', role: 'alert' });
  const result = element('div', {});
  const showAll = (problems: readonly FieldProblem[]): void => {
    const placed = problems.map(({ field: name, message }) => ({ made: fieldFor(fields, name), message }));
    for (const { made, message } of placed) {
      if (made === undefined) continue;
      made.setProblem(message);
      unfold(made.control);
    }
    // Top of the page first, whatever order the problems came in.
    const first = placed
      .flatMap(({ made }) => (made ? [made] : []))
      .sort((a, b) => (a.control.compareDocumentPosition(b.control) & Node.DOCUMENT_POSITION_FOLLOWING ? -1 : 1))[0];
    const homeless = placed.filter(({ made }) => !made).map(({ message }) => message);
    summary.textContent = first ? texts.plan.needLook(problems.length, first.label) : homeless.join(' ');
    first?.control.focus();
  };
  return {
    summary,
    result,
    ready() {
      for (const made of new Set(fields.values())) made.setProblem('');
      summary.textContent = '';
      result.replaceChildren();
      const plan = readPlan(editor.draft, editor.activity());
      const untaken = [...editor.checks].flatMap(([field, check]) => {
        const message = check();
        return message === '' ? [] : [{ field, message }];
      });
      if ('setup' in plan && untaken.length === 0) return plan.setup;
      showAll([...untaken, ...('problems' in plan ? plan.problems : [])]);
      return undefined;
    },
    show({ field, message }, again) {
      if (field !== undefined && fieldFor(fields, field)) showAll([{ field, message }]);
      else result.replaceChildren(problemNotice(message, { label: texts.tryAgain, run: again }));
    },
  };
}

/** The field of that name, or the nearest one that holds it: `classes.0` has its name, `settings.balance` the balance. */
function fieldFor(fields: ReadonlyMap<string, Field>, name: string): Field | undefined {
  const exact = fields.get(name);
  if (exact) return exact;
  if (name === 'settings.balance') return fields.get('shelf.balanceReadabilityG');
  const inside = [...fields.entries()].find(([key]) => key.startsWith(`${name}.`));
  return inside?.[1];
}
