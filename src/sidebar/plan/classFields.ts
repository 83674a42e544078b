import { deskWords } from '../../desk/words.ts';
import { afterPress } from '../page/afterPress.ts';
import { element } from '../page/element.ts';
import { type Field, field } from '../page/field.ts';
import { texts } from '../texts.ts';
import { classRow } from './classRow.ts';
import type { ClassDraft } from './planDraft.ts';
import { mostTeams, namesForCount, teamNames, teamsToStart } from './teamNames.ts';

export interface ClassParts {
  readonly classes: readonly ClassDraft[];
  /** Classes that the file has besides, where these are the new ones: of which there may be none. */
  readonly besides?: readonly ClassDraft[];
  readonly changed: (classes: readonly ClassDraft[]) => void;
  /** `check` says what is wrong with what stands in it, or nothing. */
  readonly register: (name: string, made: Field, check?: () => string) => void;
  /** Before the classes are drawn anew. */
  readonly forget: () => void;
}

const mostClasses = 12;

/** The classes of the day: how many, and for each a name, a number of teams and their names. */
export function classFields({ classes, besides, changed, register, forget }: ClassParts): HTMLElement {
  const least = besides === undefined ? 1 : 0;
  const others = besides ?? [];
  let current = [...classes];
  /** Classes taken off by a smaller number wait here, so that a larger one brings them back. */
  let setAside: readonly ClassDraft[] = [];
  const list = element('div', { class: 'classes' });
  const removed = element('div', { class: 'removed', role: 'status' });
  const countInput = element('input', { type: 'number', min: least, max: mostClasses, step: 1, value: current.length });
  const count = field({
    id: 'class-count',
    label: besides ? texts.next.newClasses : texts.plan.classCount,
    control: countInput,
  });
  const checkCount = () =>
    Number(countInput.value) === current.length ? '' : texts.plan.countRange(least, mostClasses);
  const tell = () => {
    countInput.value = String(current.length);
    changed(current);
  };
  const taken = (own?: number): readonly string[] =>
    [...current.filter((_, at) => at !== own), ...others].flatMap(({ teams }) => teamNames(teams));
  const draw = () => {
    forget();
    register('classes.count', count, checkCount);
    list.replaceChildren(
      ...current.map((one, index) =>
        classRow({
          index,
          number: others.length + index + 1,
          class: one,
          register,
          taken: () => taken(index),
          put: (part) => {
            current = current.map((before, at) => (at === index ? { ...before, ...part } : before));
            changed(current);
          },
          remove: current.length > least ? () => takeOut(index) : undefined,
        }),
      ),
    );
  };

  const takeOut = (index: number) => {
    const gone = current[index];
    if (!gone) return;
    current = current.filter((_, at) => at !== index);
    tell();
    draw();
    tellRemoved([gone], () => {
      current = [...current.slice(0, index), gone, ...current.slice(index)];
      tell();
      draw();
      list.querySelector<HTMLElement>(`#class-${index}-name`)?.focus();
    });
    removed.querySelector('button')?.focus();
  };
  const tellRemoved = (gone: readonly ClassDraft[], putBack: () => void) => {
    const names = gone.map(({ name }) => name.trim()).filter((name) => name !== '');
    removed.replaceChildren(
      element('p', {}, texts.plan.removed(names.join(', '))),
      element(
        'button',
        {
          type: 'button',
          class: 'act quiet',
          onclick: () => {
            removed.replaceChildren();
            putBack();
          },
        },
        texts.plan.putBack,
      ),
    );
  };
  const freshClass = (): ClassDraft => {
    const all = [...others, ...current];
    const names = all.map(({ name }) => name.trim().toLowerCase());
    let number = all.length + 1;
    while (names.includes(deskWords.classNumber(number).toLowerCase())) number += 1;
    const last = all[all.length - 1];
    const teams = last ? Math.min(Math.max(teamNames(last.teams).length, 1), mostTeams) : teamsToStart;
    return { name: deskWords.classNumber(number), teams: namesForCount(teams, { taken: taken() }).join('\n') };
  };
  const setCount = (wanted: number): void => {
    const gone = current.slice(wanted);
    current = current.slice(0, wanted);
    const back = setAside.slice(0, wanted - current.length);
    current = [...current, ...back];
    setAside = [...gone, ...setAside.slice(back.length)];
    while (current.length < wanted) current = [...current, freshClass()];
    changed(current);
    draw();
    if (gone.length === 0) removed.replaceChildren();
    else {
      tellRemoved(gone, () => {
        setCount(wanted + gone.length);
        countInput.value = String(current.length);
        countInput.focus();
      });
    }
  };
  countInput.addEventListener('input', () => {
    const wanted = Number(countInput.value);
    if (!Number.isInteger(wanted) || wanted < least || wanted > mostClasses) return;
    count.setProblem('');
    if (wanted !== current.length) setCount(wanted);
  });
  countInput.addEventListener('change', () => afterPress(() => count.setProblem(checkCount())));
  draw();
  return element('div', {}, element('div', { class: 'classes-count' }, count.root), list, removed);
}
