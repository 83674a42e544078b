import type { SheetView } from '../view.ts';
import { byId, element } from './element.ts';

/** Sheet tabs at the top. Arrow keys go along them, Enter or Space opens one. */
export function createTabs(onOpen: (sheet: number) => void): {
  show(sheets: readonly SheetView[], current: number): void;
} {
  const list = byId('tabs');
  list.addEventListener('keydown', (event) => {
    const tabs = [...list.querySelectorAll<HTMLElement>('[role=tab]')];
    const at = tabs.indexOf(document.activeElement as HTMLElement);
    const steps: Readonly<Record<string, number>> = {
      ArrowRight: at + 1,
      ArrowLeft: at - 1,
      Home: 0,
      End: tabs.length - 1,
    };
    const to = steps[event.key];
    if (to === undefined || at < 0) return;
    event.preventDefault();
    tabs[(to + tabs.length) % tabs.length]?.focus();
  });
  return {
    show(sheets, current) {
      const focusedId = (document.activeElement as HTMLElement | null)?.closest<HTMLElement>('[role=tab]')?.dataset
        .sheet;
      list.replaceChildren(
        ...sheets.map((sheet) => {
          const selected = sheet.id === current;
          const tab = element(
            'button',
            {
              type: 'button',
              role: 'tab',
              id: `tab-${sheet.id}`,
              'data-sheet': sheet.id,
              'aria-selected': String(selected),
              'aria-controls': 'sheet',
              tabindex: selected ? 0 : -1,
            },
            sheet.name,
          );
          if (sheet.tabColor) {
            const dot = element('i', { class: 'tab-colour', 'aria-hidden': 'true' });
            dot.style.background = sheet.tabColor;
            tab.prepend(dot);
          }
          tab.addEventListener('click', () => onOpen(sheet.id));
          return tab;
        }),
      );
      byId('sheet').setAttribute('aria-labelledby', `tab-${current}`);
      const wanted = [...list.querySelectorAll<HTMLElement>('[role=tab]')].find(
        (tab) => tab.dataset.sheet === focusedId,
      );
      wanted?.focus();
      const shown = document.getElementById(`tab-${current}`);
      // Not scrollIntoView, which would move the page as well.
      if (shown) {
        const { offsetLeft, offsetWidth } = shown;
        if (offsetLeft < list.scrollLeft) list.scrollLeft = offsetLeft - 12;
        else if (offsetLeft + offsetWidth > list.scrollLeft + list.clientWidth) {
          list.scrollLeft = offsetLeft + offsetWidth - list.clientWidth + 12;
        }
      }
    },
  };
}
