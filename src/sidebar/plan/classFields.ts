import { element } from '../page/element.ts';
import { type Field, field } from '../page/field.ts';
import { texts } from '../texts.ts';
import type { ClassDraft } from './planDraft.ts';
import { mostTeams, namesForCount, teamNames, teamsToStart } from './teamNames.ts';

export interface ClassParts {
  readonly classes: readonly ClassDraft[];
  readonly changed: (classes: readonly ClassDraft[]) => void;
  readonly register: (name: string, made: Field) => void;
}

/** The classes of the day: a name, a number of teams and their names for each. */
export function classFields({ classes, changed, register }: ClassParts): HTMLElement {
  let current = [...classes];
  const list = element('div', { class: 'classes' });
  const removed = element('div', { class: 'removed', role: 'status' });
  const tell = () => changed(current);
  const put = (index: number, part: Partial<ClassDraft>) => {
    current = current.map((one, at) => (at === index ? { ...one, ...part } : one));
    tell();
  };

  const fieldset = ({ name, teams }: ClassDraft, index: number): HTMLElement => {
    const nameInput = element('input', { type: 'text', value: name, autocomplete: 'off' });
    const nameField = field({ id: `class-${index}-name`, label: texts.plan.className, control: nameInput });
    const countInput = element('input', {
      type: 'number',
      min: 1,
      max: mostTeams,
      step: 1,
      value: teamNames(teams).length,
    });
    const countField = field({ id: `class-${index}-count`, label: texts.plan.teamCount, control: countInput });
    const teamsInput = element('textarea', {
      rows: Math.min(Math.max(teamNames(teams).length, 3), 8),
      spellcheck: 'false',
    });
    teamsInput.value = teams;
    const teamsField = field({ id: `class-${index}-teams`, label: texts.plan.teamNames, control: teamsInput });
    register(`classes.${index}.name`, nameField);
    register(`classes.${index}.count`, countField);
    register(`classes.${index}.teams`, teamsField);

    // Names taken off by a smaller number wait here, so that a larger one brings them back.
    let setAside: readonly string[] = [];
    nameInput.addEventListener('input', () => {
      nameField.setProblem('');
      put(index, { name: nameInput.value });
      remove.textContent = texts.plan.removeClass(nameInput.value.trim() || texts.plan.classNumber(index + 1));
    });
    countInput.addEventListener('change', () => {
      const count = Number(countInput.value);
      const fits = Number.isInteger(count) && count >= 1 && count <= mostTeams;
      countField.setProblem(fits ? '' : texts.plan.teamCountRange(mostTeams));
      if (!fits) return;
      const before = teamNames(teamsInput.value);
      const after = namesForCount(count, before, setAside);
      setAside = [...before.slice(count), ...setAside.filter((one) => !after.includes(one))];
      teamsInput.value = after.join('\n');
      teamsInput.rows = Math.min(Math.max(after.length, 3), 8);
      teamsField.setProblem('');
      put(index, { teams: teamsInput.value });
    });
    teamsInput.addEventListener('input', () => {
      teamsField.setProblem('');
      countInput.value = String(teamNames(teamsInput.value).length);
      countField.setProblem('');
      put(index, { teams: teamsInput.value });
    });
    const remove = element(
      'button',
      { type: 'button', class: 'act quiet', onclick: () => takeOut(index) },
      texts.plan.removeClass(name.trim() || texts.plan.classNumber(index + 1)),
    );
    return element(
      'fieldset',
      {},
      element('legend', {}, texts.plan.classNumber(index + 1)),
      nameField.root,
      countField.root,
      teamsField.root,
      current.length > 1 && remove,
    );
  };
  const draw = () => list.replaceChildren(...current.map(fieldset));

  const takeOut = (index: number) => {
    const gone = current[index];
    if (!gone) return;
    current = current.filter((_, at) => at !== index);
    tell();
    draw();
    const back = element(
      'button',
      {
        type: 'button',
        class: 'act quiet',
        onclick: () => {
          current = [...current.slice(0, index), gone, ...current.slice(index)];
          tell();
          draw();
          removed.replaceChildren();
          list.querySelector<HTMLElement>(`#class-${index}-name`)?.focus();
        },
      },
      texts.plan.putBack,
    );
    removed.replaceChildren(
      element('p', {}, texts.plan.removed(gone.name.trim() || texts.plan.classNumber(index + 1))),
      back,
    );
    back.focus();
  };
  const freshName = (): string => {
    if (current.length === 0) return texts.plan.firstClass;
    const taken = current.map(({ name }) => name.trim().toLowerCase());
    let number = current.length + 1;
    while (taken.includes(texts.plan.nextClass(number).toLowerCase())) number += 1;
    return texts.plan.nextClass(number);
  };
  const add = element(
    'button',
    {
      type: 'button',
      class: 'act quiet',
      onclick: () => {
        const last = current[current.length - 1];
        const count = last ? Math.max(teamNames(last.teams).length, 1) : teamsToStart;
        current = [...current, { name: freshName(), teams: namesForCount(Math.min(count, mostTeams), []).join('\n') }];
        tell();
        draw();
        const name = list.querySelector<HTMLInputElement>(`#class-${current.length - 1}-name`);
        name?.focus();
        name?.select();
      },
    },
    texts.plan.addClass,
  );
  draw();
  return element('div', {}, list, removed, add);
}
