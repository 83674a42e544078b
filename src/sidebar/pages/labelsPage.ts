import type { PreparationView } from '../../desk/views.ts';
import { writtenFormula } from '../../lab/particles/writtenFormula.ts';
import { askDesk } from '../askDesk.ts';
import { choice } from '../page/choice.ts';
import { element } from '../page/element.ts';
import { field } from '../page/field.ts';
import { pictogramRow } from '../page/pictogramRow.ts';
import { texts } from '../texts.ts';
import type { OpenedPage } from './openedPage.ts';
import { readingPage } from './readingPage.ts';

type Label = PreparationView['labels'][number];

/** Labels, several on a sheet of paper; the date is filled in and may be changed, initials are written by hand. */
export const labelsPage = (): OpenedPage =>
  readingPage({
    title: texts.pages.labels.title,
    className: 'labels-page',
    read: () => askDesk('readPreparation'),
    draw: drawn,
  });

function drawn({ labels, date }: PreparationView): readonly HTMLElement[] {
  const words = texts.pages.labels;
  const groups = [...new Set(labels.map(({ whose }) => groupOf(whose)))];
  const which = choice(
    [{ value: '', label: words.all }, ...groups.map((group) => ({ value: group, label: group }))],
    '',
  );
  const day = element('input', { type: 'text', value: date, maxlength: 40, autocomplete: 'off' });
  const sheets = element('div', {});
  const draw = () => {
    const chosen = labels.filter(({ whose }) => which.value === '' || groupOf(whose) === which.value);
    // Labels of one size stand together, so that rows of them can be cut straight through.
    sheets.replaceChildren(
      ...[false, true].flatMap((small) => {
        const some = chosen.filter((label) => isSmall(label) === small);
        return some.length === 0
          ? []
          : [
              element(
                'ul',
                { class: small ? 'labels small' : 'labels' },
                ...some.flatMap((label) => Array.from({ length: label.copies }, () => labelItem(label, day.value))),
              ),
            ];
      }),
    );
  };
  which.addEventListener('change', draw);
  day.addEventListener('input', draw);
  draw();
  return [
    element(
      'div',
      { class: 'not-on-paper label-choices' },
      element('p', { class: 'hint' }, words.about),
      field({ id: 'label-group', label: words.which, control: which }).root,
      field({ id: 'label-date', label: words.date, control: day }).root,
    ),
    sheets,
  ];
}

/** mL: a label for a vessel up to this size leaves out what there is no room for; the bulb of a 100 mL flask is about 6 cm wide. */
const smallVessel = 100;
const isSmall = ({ vesselMl }: Label): boolean => vesselMl !== undefined && vesselMl <= smallVessel;

/** Labels of one class are printed together. */
const groupOf = (whose: string): string => whose.split(' · ')[0] ?? whose;

function labelItem(label: Label, date: string): HTMLElement {
  const words = texts.pages.labels;
  const {
    name,
    formula,
    strength,
    signalWord,
    isSignalUnknown,
    statements,
    pictograms,
    advice,
    deferring,
    whose,
    also,
  } = label;
  return element(
    'li',
    { class: 'label' },
    element(
      'p',
      { class: 'label-name' },
      name === formula ? writtenFormula(formula) : `${name}, ${writtenFormula(formula)}`,
    ),
    element('p', { class: 'label-strength' }, strength),
    (signalWord !== '' || isSignalUnknown) &&
      element('p', { class: 'label-signal' }, signalWord === '' ? words.noSignal : signalWord),
    pictograms.length > 0 && pictogramRow(pictograms),
    element('ul', {}, ...statements.map((statement) => element('li', {}, statement))),
    // On a small label the second signal word has to do.
    also !== undefined &&
      [also.signalWord, ...(isSmall(label) ? [] : also.statements)].join('') !== '' &&
      element(
        'p',
        { class: 'label-also', lang: also.tag },
        also.signalWord !== '' && element('strong', {}, also.signalWord),
        ' ',
        ...(isSmall(label) ? [] : [also.statements.join(' ')]),
      ),
    advice.length > 0 && !isSmall(label) && element('p', {}, advice.join(' ')),
    element('p', { class: 'label-deferring' }, deferring),
    also !== undefined && !isSmall(label) && element('p', { class: 'label-deferring', lang: also.tag }, also.deferring),
    element(
      'p',
      { class: 'label-foot' },
      element('span', {}, whose),
      element('span', {}, words.made(date)),
      element('span', {}, `${words.initials} `, element('span', { class: 'blank-line' })),
    ),
  );
}
