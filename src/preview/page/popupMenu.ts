import { byId, element } from './element.ts';

/** One line of a menu; null is a line between groups. */
export type MenuLine = { readonly label: string; readonly keys?: string; readonly act: () => void } | null;

let openNow: { readonly close: (refocus: boolean) => void } | undefined;

/** Opens a menu by its button or at a point. Arrow keys, Home, End, a first letter, Enter and Escape work as in any menu. */
export function openMenu(options: {
  readonly label: string;
  readonly lines: readonly MenuLine[];
  readonly at: { readonly x: number; readonly y: number };
  readonly button?: HTMLElement;
  readonly onClose?: (refocus: boolean) => void;
  readonly onSide?: (step: 1 | -1) => void;
}): void {
  openNow?.close(false);
  const menu = element('div', { role: 'menu', class: 'menu', 'aria-label': options.label });
  const items: HTMLElement[] = [];
  for (const line of options.lines) {
    if (line === null) {
      menu.append(element('div', { role: 'separator' }));
      continue;
    }
    const item = element('div', { role: 'menuitem', tabindex: -1 }, element('span', {}, line.label));
    if (line.keys) item.append(element('kbd', { 'aria-hidden': 'true' }, line.keys));
    item.addEventListener('click', () => {
      close(true);
      line.act();
    });
    items.push(item);
    menu.append(item);
  }
  byId('desk').append(menu);
  const { width, height } = menu.getBoundingClientRect();
  menu.style.left = `${Math.max(4, Math.min(options.at.x, window.innerWidth - width - 4))}px`;
  menu.style.top = `${Math.max(4, Math.min(options.at.y, window.innerHeight - height - 4))}px`;
  options.button?.setAttribute('aria-expanded', 'true');

  const outside = (event: Event): void => {
    if (!menu.contains(event.target as Node)) close(false);
  };
  function close(refocus: boolean): void {
    if (!menu.isConnected) return;
    openNow = undefined;
    document.removeEventListener('mousedown', outside, true);
    window.removeEventListener('resize', leave);
    window.removeEventListener('blur', leave);
    menu.remove();
    options.button?.setAttribute('aria-expanded', 'false');
    if (refocus) options.button?.focus();
    options.onClose?.(refocus);
  }
  const leave = (): void => close(false);
  menu.addEventListener('keydown', (event) => {
    const at = items.indexOf(document.activeElement as HTMLElement);
    const to = (index: number): void => items[(index + items.length) % items.length]?.focus();
    if (event.key === 'ArrowDown') to(at + 1);
    else if (event.key === 'ArrowUp') to(at < 0 ? items.length - 1 : at - 1);
    else if (event.key === 'Home') to(0);
    else if (event.key === 'End') to(items.length - 1);
    else if (event.key === 'Escape') close(true);
    else if (event.key === 'Tab') {
      close(true);
      return;
    } else if (event.key === 'Enter' || event.key === ' ') items[at]?.click();
    else if ((event.key === 'ArrowRight' || event.key === 'ArrowLeft') && options.onSide) {
      close(false);
      options.onSide(event.key === 'ArrowRight' ? 1 : -1);
    } else if (event.key.length === 1) {
      const letter = event.key.toLowerCase();
      const found = [...items.slice(at + 1), ...items.slice(0, at + 1)].find((item) =>
        item.textContent?.toLowerCase().startsWith(letter),
      );
      found?.focus();
    } else return;
    event.preventDefault();
    event.stopPropagation();
  });
  document.addEventListener('mousedown', outside, true);
  window.addEventListener('resize', leave);
  // A press inside a panel's frame is not seen here, but takes the focus away.
  window.addEventListener('blur', leave);
  openNow = { close };
  items[0]?.focus();
}

/** Buttons that open menus, side by side; the arrow keys go from one to the next. */
export function menuButtons(
  container: HTMLElement,
  menus: readonly { readonly label: string; readonly lines: () => readonly MenuLine[] }[],
): void {
  const buttons = menus.map(({ label }) =>
    element(
      'button',
      { type: 'button', 'aria-haspopup': 'menu', 'aria-expanded': 'false', class: 'menu-button' },
      label,
    ),
  );
  const open = (index: number): void => {
    const at = (index + menus.length) % menus.length;
    const [menu, button] = [menus[at], buttons[at]];
    if (!menu || !button) return;
    const { left, bottom } = button.getBoundingClientRect();
    openMenu({
      label: menu.label,
      lines: menu.lines(),
      at: { x: left, y: bottom + 4 },
      button,
      ...(menus.length > 1 ? { onSide: (step: 1 | -1) => open(at + step) } : {}),
    });
  };
  for (const [index, button] of buttons.entries()) {
    button.addEventListener(
      'mousedown',
      (event) => {
        // Without this the press would close the open menu and the click open it again.
        if (button.getAttribute('aria-expanded') === 'true') {
          event.stopPropagation();
          event.preventDefault();
          openNow?.close(true);
          button.dataset.closing = 'true';
        }
      },
      true,
    );
    button.addEventListener('click', () => {
      if (button.dataset.closing) delete button.dataset.closing;
      else open(index);
    });
    button.addEventListener('keydown', (event) => {
      if (event.key === 'ArrowDown') open(index);
      else if (event.key === 'ArrowRight') buttons[(index + 1) % buttons.length]?.focus();
      else if (event.key === 'ArrowLeft') buttons[(index + buttons.length - 1) % buttons.length]?.focus();
      else return;
      event.preventDefault();
    });
  }
  container.replaceChildren(...buttons);
}
