import { openDialog } from './dialogs.ts';
import { byId, element } from './element.ts';
import { type MenuLine, menuButtons } from './popupMenu.ts';
import { texts } from './texts.ts';

/** Buttons of the window itself: taking back, doing again, the menu of the selected rows, and what the keys do. */
export function showTools({
  step,
  rowLines,
}: {
  readonly step: (action: 'undo' | 'redo') => void;
  readonly rowLines: () => MenuLine[];
}): void {
  const button = (label: string, act: () => void): HTMLButtonElement => {
    const made = element('button', { type: 'button', class: 'menu-button' }, label);
    made.addEventListener('click', act);
    return made;
  };
  const rows = element('div', { class: 'menus' });
  menuButtons(rows, [{ label: texts.rowMenu, lines: rowLines }]);
  byId('tools').replaceChildren(
    button(texts.undo, () => step('undo')),
    button(texts.redo, () => step('redo')),
    rows,
    button(texts.keys, showKeys),
  );
}

function showKeys(): void {
  const list = element('dl', { class: 'keys' });
  for (const [keys, what] of texts.keyList) list.append(element('dt', {}, keys), element('dd', {}, what));
  const close = element('button', { type: 'button', class: 'act quiet' }, texts.closePanel);
  const dialog = openDialog({
    title: texts.keysTitle,
    content: [list, element('div', { class: 'answers' }, close)],
  });
  close.addEventListener('click', () => dialog.close());
}
