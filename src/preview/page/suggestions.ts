import type { FunctionHelp } from '../view.ts';
import { byId, element } from './element.ts';
import { formulaPlace } from './formulaPlace.ts';
import { texts } from './texts.ts';

/** What stands under the field being typed in: a message, help on the function at the caret, and a list to choose from. */
export interface Suggestions {
  /** True while there is a list to choose from. */
  readonly open: boolean;
  /** Item reached with the arrow keys. */
  readonly active: string | undefined;
  readonly kind: 'functions' | 'choices' | undefined;
  message(text: string | undefined): void;
  forFormula(field: HTMLTextAreaElement): void;
  forChoices(field: HTMLTextAreaElement, choices: readonly string[], filter: string): void;
  move(step: 1 | -1): void;
  /** Item to take now: the one reached, or the first of a list of functions. */
  taken(): string | undefined;
  closeList(): void;
  place(field: HTMLElement): void;
  hide(): void;
}

export function createSuggestions(options: {
  readonly functions: () => readonly FunctionHelp[];
  readonly onPick: (item: string) => void;
}): Suggestions {
  const message = element('p', { class: 'field-message', id: 'field-message', hidden: true });
  const help = element('div', { class: 'call-help', id: 'call-help', hidden: true });
  const list = element('ul', { role: 'listbox', id: 'field-list', class: 'field-list', hidden: true });
  const box = element('div', { class: 'under-field', hidden: true }, message, help, list);
  byId('desk').append(box);
  let items: readonly string[] = [];
  let active = -1;
  let kind: 'functions' | 'choices' | undefined;
  let field: HTMLTextAreaElement | undefined;
  let closedFor = '';

  function refresh(): void {
    box.hidden = message.hidden && help.hidden && list.hidden;
    if (!field) return;
    field.setAttribute('aria-describedby', 'field-message call-help');
    field.setAttribute('aria-autocomplete', 'list');
    if (list.hidden) {
      field.removeAttribute('aria-controls');
      field.removeAttribute('aria-activedescendant');
    } else field.setAttribute('aria-controls', 'field-list');
    self.place(field);
  }
  function showList(next: readonly string[], label: string, about: (item: string) => string): void {
    items = next;
    active = -1;
    list.setAttribute('aria-label', label);
    list.replaceChildren(
      ...items.map((item, index) => {
        const line = element(
          'li',
          { role: 'option', id: `field-item-${index}`, 'aria-selected': 'false' },
          about(item) ? element('b', {}, item) : item,
        );
        if (about(item)) line.append(' ', element('span', { class: 'soft' }, about(item)));
        line.addEventListener('mousedown', (event) => {
          event.preventDefault();
          options.onPick(item);
        });
        return line;
      }),
    );
    list.hidden = items.length === 0;
  }
  function dropList(): void {
    items = [];
    active = -1;
    list.hidden = true;
  }
  function showHelp(name: string, argument: number): void {
    const found = options.functions().find((entry) => entry.name === name);
    help.hidden = !found;
    if (!found) return;
    const at = Math.min(argument, found.arguments.length - 1);
    const signature = element('p', { class: 'signature' }, `${found.name}(`);
    for (const [index, entry] of found.arguments.entries()) {
      if (index > 0) signature.append(', ');
      const shown = entry.optional ? `[${entry.name}]` : entry.name;
      signature.append(index === at ? element('mark', {}, shown) : shown);
    }
    signature.append(')');
    const current = found.arguments[at];
    help.replaceChildren(signature);
    if (current) {
      const optional = current.optional ? ` (${texts.optionalMark})` : '';
      help.append(element('p', {}, element('b', {}, `${current.name}${optional}: `), current.about));
    }
    help.append(element('p', { class: 'soft' }, found.summary));
  }

  const self: Suggestions = {
    get open() {
      return !list.hidden;
    },
    get active() {
      return items[active];
    },
    get kind() {
      return list.hidden ? undefined : kind;
    },
    message(text) {
      message.textContent = text ?? '';
      message.hidden = !text;
      refresh();
    },
    forFormula(next) {
      field = next;
      kind = 'functions';
      const place = formulaPlace(next.value, next.selectionStart);
      const typed = place?.name?.text.toUpperCase() ?? '';
      const found = typed === '' ? [] : options.functions().filter(({ name }) => name.startsWith(typed));
      if (closedFor !== '' && closedFor !== typed) closedFor = '';
      const shown = closedFor === typed && typed !== '' ? [] : found.slice(0, 8);
      showList(
        shown.map(({ name }) => name),
        texts.functionsList,
        (item) => options.functions().find(({ name }) => name === item)?.summary ?? '',
      );
      const exact = found.length === 1 && found[0]?.name === typed ? typed : undefined;
      const call = exact ? { name: exact, argument: 0 } : place?.call;
      if (call && (exact !== undefined || shown.length === 0)) showHelp(call.name, call.argument);
      else help.hidden = true;
      refresh();
    },
    forChoices(next, choices, filter) {
      field = next;
      kind = 'choices';
      help.hidden = true;
      const wanted = filter.trim().toLowerCase();
      const found = choices.filter((choice) => choice.toLowerCase().includes(wanted));
      showList(found, texts.choose, () => '');
      refresh();
    },
    move(step) {
      if (list.hidden || items.length === 0) return;
      list.children[active]?.setAttribute('aria-selected', 'false');
      active = active < 0 ? (step > 0 ? 0 : items.length - 1) : (active + step + items.length) % items.length;
      const line = list.children[active];
      line?.setAttribute('aria-selected', 'true');
      line?.scrollIntoView({ block: 'nearest' });
      field?.setAttribute('aria-activedescendant', `field-item-${active}`);
    },
    taken: () => (list.hidden ? undefined : (items[active] ?? (kind === 'functions' ? items[0] : undefined))),
    closeList() {
      if (field && kind === 'functions') {
        closedFor = formulaPlace(field.value, field.selectionStart)?.name?.text.toUpperCase() ?? '';
      }
      dropList();
      refresh();
    },
    place(beside) {
      if (box.hidden) return;
      const { left, bottom, top, width: least } = beside.getBoundingClientRect();
      box.style.minWidth = kind === 'choices' ? `${Math.min(least, 300)}px` : '';
      box.style.maxWidth = `${Math.min(460, window.innerWidth - 16)}px`;
      const { width, height } = box.getBoundingClientRect();
      box.style.left = `${Math.max(8, Math.min(left, window.innerWidth - width - 8))}px`;
      const below = bottom + 4;
      box.style.top = `${below + height > window.innerHeight - 4 && top > height + 8 ? top - height - 4 : below}px`;
    },
    hide() {
      field = undefined;
      closedFor = '';
      message.hidden = true;
      message.textContent = '';
      help.hidden = true;
      dropList();
      box.hidden = true;
    },
  };
  return self;
}
