import type { PreparationView } from '../../desk/views.ts';
import { fitted } from '../../lab/lesson/periodPlan.ts';
import { askDesk } from '../askDesk.ts';
import { element } from '../page/element.ts';
import { field } from '../page/field.ts';
import { texts } from '../texts.ts';
import type { OpenedPage } from './openedPage.ts';
import { readingPage } from './readingPage.ts';

const longest = 300;

/** The period in minutes, step by step, in a total that the teacher types. */
export const periodPage = (): OpenedPage =>
  readingPage({
    title: texts.pages.period.title,
    className: 'period-page',
    read: () => askDesk('readPreparation'),
    draw: ({ periods, activity, aim }) => [
      element('p', { class: 'clock' }, activity),
      element('p', {}, aim),
      ...periods.map((plan, index) => periodSection(plan, periods.length === 1 ? 0 : index + 1)),
    ],
  });

function periodSection(plan: PreparationView['periods'][number], number: number): HTMLElement {
  const words = texts.pages.period;
  const total = element('input', { type: 'number', min: 1, max: longest, step: 1, value: plan.minutes });
  const minutes = field({
    id: `minutes-${number}`,
    label: words.total,
    control: total,
    unit: words.unit,
    hint: words.hint,
  });
  const body = element('tbody', {});
  const draw = () => {
    const typed = Number(total.value);
    const isFit = Number.isInteger(typed) && typed >= plan.lines.length && typed <= longest;
    minutes.setProblem(isFit ? '' : words.outside({ least: plan.lines.length, most: longest, received: total.value }));
    if (!isFit) return;
    let from = 0;
    body.replaceChildren(
      ...fitted(plan, typed).lines.map((line) => {
        const start = from;
        from += line.minutes;
        return element(
          'tr',
          {},
          element('td', {}, words.span(start, from)),
          element('th', { scope: 'row' }, line.title),
          element('td', {}, String(line.minutes)),
        );
      }),
    );
  };
  total.addEventListener('input', draw);
  draw();
  return element(
    'section',
    {},
    element('h2', {}, number === 0 ? words.one : words.numbered(number)),
    element('div', { class: 'not-on-paper' }, minutes.root),
    element(
      'table',
      { class: 'paper-table' },
      element(
        'thead',
        {},
        element('tr', {}, ...words.headings.map((heading) => element('th', { scope: 'col' }, heading))),
      ),
      body,
    ),
  );
}
