import { afterPress } from '../page/afterPress.ts';
import { element } from '../page/element.ts';
import { type Field, field } from '../page/field.ts';
import { texts } from '../texts.ts';
import type { ClassDraft } from './planDraft.ts';
import { mostTeams, namesForCount, teamNames } from './teamNames.ts';

interface ClassRowParts {
  readonly index: number;
  /** Which class of the file it is, counted from 1. */
  readonly number: number;
  readonly class: ClassDraft;
  readonly register: (name: string, made: Field, check?: () => string) => void;
  /** Names of teams in the other classes. */
  readonly taken: () => readonly string[];
  readonly put: (part: Partial<ClassDraft>) => void;
  /** Undefined for the only class. */
  readonly remove: (() => void) | undefined;
}

/** Lines of the field with the teams' names: always as many, so that nothing moves while somebody types. */
const nameLines = 6;

/** One class of the plan: its name, how many teams, and their names folded below. */
export function classRow({ index, number, class: begun, register, taken, put, remove }: ClassRowParts): HTMLElement {
  const { plan } = texts;
  const nameInput = element('input', { type: 'text', value: begun.name, autocomplete: 'off' });
  const name = field({ id: `class-${index}-name`, label: plan.className, control: nameInput });
  const countInput = element('input', {
    type: 'number',
    min: 1,
    max: mostTeams,
    step: 1,
    value: teamNames(begun.teams).length,
  });
  const count = field({ id: `class-${index}-count`, label: plan.teamCount, control: countInput });
  const teamsInput = element('textarea', { rows: nameLines, spellcheck: 'false' });
  teamsInput.value = begun.teams;
  const teams = field({ id: `class-${index}-teams`, label: plan.teamNames, control: teamsInput });
  register(`classes.${index}.name`, name);
  const checkCount = () =>
    Number(countInput.value) === teamNames(teamsInput.value).length ? '' : plan.countRange(1, mostTeams);
  register(`classes.${index}.count`, count, checkCount);
  register(`classes.${index}.teams`, teams);
  const called = element('span', { class: 'fold-set' });
  const tellNames = () => {
    called.textContent = teamNames(teamsInput.value).join(', ');
  };
  const removeLabel = () => plan.removeClass(nameInput.value.trim() || plan.classNumber(number));
  const removal = remove && element('button', { type: 'button', class: 'act quiet', onclick: remove }, removeLabel());

  /** Names taken off by a smaller number wait here, so that a larger one brings them back. */
  let setAside: readonly string[] = [];
  const setCount = (wanted: number) => {
    const before = teamNames(teamsInput.value);
    const after = namesForCount(wanted, { typed: before.slice(0, wanted), setAside, taken: taken() });
    setAside = [...before.slice(wanted), ...setAside.filter((one) => !after.includes(one))];
    teamsInput.value = after.join('\n');
    teams.setProblem('');
    tellNames();
    put({ teams: teamsInput.value });
  };
  nameInput.addEventListener('input', () => {
    name.setProblem('');
    put({ name: nameInput.value });
    if (removal) removal.textContent = removeLabel();
  });
  countInput.addEventListener('input', () => {
    const wanted = Number(countInput.value);
    if (!Number.isInteger(wanted) || wanted < 1 || wanted > mostTeams) return;
    count.setProblem('');
    setCount(wanted);
  });
  countInput.addEventListener('change', () => afterPress(() => count.setProblem(checkCount())));
  teamsInput.addEventListener('input', () => {
    teams.setProblem('');
    countInput.value = String(teamNames(teamsInput.value).length);
    count.setProblem('');
    tellNames();
    put({ teams: teamsInput.value });
  });
  tellNames();
  return element(
    'fieldset',
    { class: 'class-row' },
    element('legend', {}, plan.classNumber(number)),
    element('div', { class: 'side-by-side' }, name.root, count.root),
    element('details', { class: 'team-names' }, element('summary', {}, plan.teamNamesFold, ' ', called), teams.root),
    removal,
  );
}
