import type { TeamView } from '../../desk/views.ts';
import { element } from '../page/element.ts';
import { tube } from '../page/tube.ts';
import { peopleWords } from '../teams/peopleWords.ts';
import { texts } from '../texts.ts';
import { rowState } from './rowState.ts';
import { stateBadge } from './stateBadge.ts';
import { stepNotes } from './stepNotes.ts';

interface TeamItemParts {
  readonly stepCount: number;
  /** Place in the list, from 0. */
  readonly index: number;
  readonly isOpen: boolean;
  readonly toggled: (isOpen: boolean) => void;
  readonly goToRows: () => void;
}

/** A team as a tube with its number, which unfolds to its steps. */
export function teamItem(team: TeamView, { stepCount, index, isOpen, toggled, goToRows }: TeamItemParts): HTMLElement {
  const isComplete = team.done >= stepCount && stepCount > 0;
  const details = element(
    'details',
    { open: isOpen },
    element(
      'summary',
      { id: `team-${index}` },
      element('span', { class: 'team-name' }, team.team),
      element(
        'span',
        { class: 'gauge' },
        tube({ done: team.done, steps: stepCount }),
        element(
          'span',
          { class: 'of' },
          element('span', { 'aria-hidden': 'true' }, texts.classNow.ofSteps(team.done, stepCount)),
          element('span', { class: 'spoken' }, texts.classNow.ofStepsSpoken(team.done, stepCount)),
        ),
      ),
      team.absent === true && element('span', { class: 'away' }, texts.classNow.absent),
      team.numbersChanged && element('span', { class: 'away' }, texts.classNow.numbersChanged),
    ),
    team.members !== undefined && team.members.length > 0 && element('p', { class: 'hint' }, peopleWords(team.members)),
    isComplete && element('p', { class: 'hint' }, texts.classNow.ready),
    element('ol', { class: 'steps' }, ...team.steps.map(stepItem)),
    element(
      'button',
      { type: 'button', class: 'act quiet', id: `team-${index}-go`, onclick: goToRows },
      texts.classNow.goToRows(team.team),
    ),
  );
  details.addEventListener('toggle', () => toggled(details.open));
  return element('li', {}, details);
}

const stepItem = (step: TeamView['steps'][number]): HTMLElement =>
  element(
    'li',
    {},
    element(
      'div',
      { class: 'step-line' },
      element('span', { class: 'step-title' }, step.title),
      stateBadge(rowState(step)),
    ),
    step.entry.trim() !== '' && element('p', { class: 'entered' }, texts.classNow.entered(step.entry)),
    step.lookAt.trim() !== '' && element('p', { class: 'look-at' }, step.lookAt),
    step.isFormula === true && element('p', {}, texts.classNow.isFormula),
    stepNotes(step) !== '' && element('p', { class: 'tries' }, stepNotes(step)),
  );
