import type { FunctionHelp } from '../view.ts';
import { cellName, type Place } from './cellName.ts';
import { byId, element } from './element.ts';
import { createSuggestions } from './suggestions.ts';
import { texts } from './texts.ts';

/** A cell being typed in. It is the reader's until they keep it or leave it; nothing from elsewhere touches its text. */
export interface Session {
  readonly sheet: number;
  place: Place;
  /** What the cell held when typing began. */
  before: string;
  /** Opened by typing over the cell: the arrow keys then keep the text and move on. */
  quick: boolean;
  readonly choices: readonly string[] | undefined;
  /** An earlier entry that goes on from what was typed; left out where none is to be offered. */
  readonly offers: ((typed: string) => string | undefined) | undefined;
}
export interface EditorEvents {
  keep(text: string, move: { readonly rows: number; readonly columns: number } | undefined): void;
  leave(): void;
  /** Somebody put the focus into the line above the grid. */
  lineFocused(): void;
}
export interface Editor {
  readonly session: Session | undefined;
  readonly text: string;
  open(
    session: Session,
    options: {
      readonly text: string;
      readonly where: 'cell' | 'line';
      readonly message?: string;
      readonly list?: boolean;
    },
  ): void;
  message(text: string | undefined): void;
  /** Puts the field back over its cell after the sheet was drawn or scrolled. */
  reposition(): void;
  close(): void;
  focus(): void;
  /** Inserts a reference to a cell where a formula wants one; true if it did. */
  pointAt(name: string): boolean;
  /** What the line above the grid shows while nobody types. */
  rest(options: { readonly text: string; readonly readOnly: boolean }): void;
}

const arrows: Readonly<Record<string, { readonly rows: number; readonly columns: number }>> = {
  ArrowUp: { rows: -1, columns: 0 },
  ArrowDown: { rows: 1, columns: 0 },
  ArrowLeft: { rows: 0, columns: -1 },
  ArrowRight: { rows: 0, columns: 1 },
};

export function createEditor(options: {
  readonly container: HTMLElement;
  readonly cellElement: (place: Place) => HTMLElement | undefined;
  readonly functions: () => readonly FunctionHelp[];
  readonly events: EditorEvents;
}): Editor {
  const { events } = options;
  const line = byId<HTMLTextAreaElement>('cell-text');
  const field = element('textarea', {
    class: 'cell-field',
    rows: 1,
    spellcheck: 'false',
    autocomplete: 'off',
    autocapitalize: 'off',
    hidden: true,
  });
  options.container.append(field);
  let session: Session | undefined;
  let focused: HTMLTextAreaElement = field;
  let shownText = '';

  const suggestions = createSuggestions({ functions: options.functions, onPick: take });

  function take(item: string): void {
    if (!session) return;
    if (suggestions.kind === 'choices') {
      write(item);
      events.keep(item, undefined);
      return;
    }
    const { value, selectionStart } = focused;
    const typed = /[A-Za-z0-9_.]*$/.exec(value.slice(0, selectionStart))?.[0] ?? '';
    const after = value.slice(selectionStart);
    const opening = after.startsWith('(') ? '' : '(';
    const before = `${value.slice(0, selectionStart - typed.length)}${item}`;
    write(before + opening + after);
    focused.focus();
    focused.setSelectionRange(before.length + 1, before.length + 1);
    suggest();
  }
  /** One text in both fields; the caret of the one being typed in is left alone. */
  function write(text: string): void {
    shownText = text;
    for (const one of [field, line]) if (one.value !== text) one.value = text;
    fitFields();
  }
  function fitFields(): void {
    line.rows = Math.min(4, line.value.split('\n').length);
    if (field.hidden || !session) return;
    const td = options.cellElement(session.place);
    if (!td) return;
    const base = options.container.getBoundingClientRect();
    const at = td.getBoundingClientRect();
    field.style.left = `${at.left - base.left + options.container.scrollLeft}px`;
    field.style.top = `${at.top - base.top + options.container.scrollTop}px`;
    const most = Math.max(at.width, Math.min(460, options.container.clientWidth - 60));
    const longest = Math.max(...field.value.split('\n').map((part) => part.length));
    field.style.width = `${Math.min(most, Math.max(at.width, longest * 8.6 + 30))}px`;
    field.style.height = '0';
    field.style.height = `${Math.max(at.height, field.scrollHeight + 4)}px`;
    suggestions.place(focused);
  }
  function suggest(): void {
    if (!session) return;
    if (focused.value.startsWith('=')) suggestions.forFormula(focused);
    else if (session.choices) {
      const untouched = focused.value === session.before;
      suggestions.forChoices(focused, session.choices, untouched ? '' : focused.value);
    } else suggestions.closeList();
  }

  /** The rest of an earlier entry stands marked behind what was typed: whoever types on or presses Delete is rid of it. */
  function offer(one: HTMLTextAreaElement): void {
    const typed = one.value;
    const offered = session?.offers?.(typed);
    if (offered === undefined) return;
    write(offered);
    one.setSelectionRange(typed.length, offered.length);
  }

  for (const one of [field, line]) {
    one.addEventListener('input', (event) => {
      focused = one;
      if (!session) events.lineFocused();
      suggestions.message(undefined);
      write(one.value);
      suggest();
      const isTyped = event instanceof InputEvent && event.inputType === 'insertText' && !event.isComposing;
      if (isTyped && one.selectionEnd === one.value.length) offer(one);
    });
    one.addEventListener('focus', () => {
      focused = one;
    });
    for (const kind of ['click', 'keyup'] as const) {
      one.addEventListener(kind, () => {
        if (session && one.value.startsWith('=') && !suggestions.active) suggestions.forFormula(one);
      });
    }
    // Who puts the caret somewhere means to go on in the text.
    one.addEventListener('mousedown', () => {
      if (session) session.quick = false;
    });
    one.addEventListener('keydown', (event) => {
      if (!session || event.isComposing) return;
      const back = event.shiftKey ? -1 : 1;
      if (event.key === 'Enter' && event.altKey) {
        one.setRangeText('\n', one.selectionStart, one.selectionEnd, 'end');
        write(one.value);
      } else if (event.key === 'Enter') {
        if (suggestions.active) take(suggestions.active);
        else events.keep(one.value, { rows: back, columns: 0 });
      } else if (event.key === 'Tab') {
        const taken = suggestions.taken();
        if (taken !== undefined && !event.shiftKey) take(taken);
        else events.keep(one.value, { rows: 0, columns: back });
      } else if (event.key === 'Escape') {
        if (suggestions.kind === 'functions') suggestions.closeList();
        else events.leave();
      } else if ((event.key === 'ArrowDown' || event.key === 'ArrowUp') && suggestions.open) {
        suggestions.move(event.key === 'ArrowDown' ? 1 : -1);
      } else if (arrows[event.key] && session.quick && !one.value.startsWith('=') && !event.shiftKey) {
        events.keep(one.value, arrows[event.key]);
      } else if (event.key === 'ArrowDown' && event.altKey && session.choices) suggest();
      else return;
      event.preventDefault();
      event.stopPropagation();
    });
  }
  line.addEventListener('focus', () => {
    if (!session) events.lineFocused();
  });
  options.container.addEventListener('scroll', () => suggestions.place(focused), { passive: true });
  window.addEventListener('resize', () => fitFields());

  const editor: Editor = {
    get session() {
      return session;
    },
    get text() {
      return session ? focused.value : shownText;
    },
    open(next, { text, where, message, list = true }) {
      session = next;
      const name = cellName(next.place);
      field.setAttribute('aria-label', texts.editing(name));
      field.hidden = false;
      // The field stands where the cell was, so the cell is no stop of its own meanwhile.
      options.cellElement(next.place)?.setAttribute('tabindex', '-1');
      line.readOnly = false;
      focused = where === 'line' ? line : field;
      write(text);
      if (document.activeElement !== focused) {
        focused.focus({ preventScroll: where === 'cell' });
        focused.setSelectionRange(text.length, text.length);
      }
      suggestions.message(message);
      if (list) suggest();
      fitFields();
    },
    message(text) {
      suggestions.message(text);
      suggestions.place(focused);
    },
    reposition: fitFields,
    close() {
      if (session) options.cellElement(session.place)?.setAttribute('tabindex', '0');
      session = undefined;
      field.hidden = true;
      suggestions.hide();
    },
    focus() {
      focused.focus({ preventScroll: true });
    },
    pointAt(name) {
      if (!session?.place || !focused.value.startsWith('=')) return false;
      const caret = focused.selectionStart;
      const before = focused.value.slice(0, caret);
      const pointed = /([=(,;+\-*/^&<>:]\s*)(\$?[A-Z]{1,3}\$?\d+)?$/.exec(before);
      if (!pointed) return false;
      const from = caret - (pointed[2]?.length ?? 0);
      focused.setRangeText(name, from, focused.selectionEnd, 'end');
      write(focused.value);
      focused.focus({ preventScroll: true });
      suggest();
      return true;
    },
    rest({ text, readOnly }) {
      if (session) return;
      shownText = text;
      line.value = text;
      line.readOnly = readOnly;
      line.rows = Math.min(4, text.split('\n').length);
    },
  };
  return editor;
}
