import type { ChangeView, MenuView } from '../view.ts';
import type { Connection } from './connection.ts';
import { byId, element } from './element.ts';
import type { Grid } from './grid.ts';
import { createPanels, type PanelAddress } from './panel.ts';
import { menuButtons } from './popupMenu.ts';
import type { SheetInView } from './sheetInView.ts';
import { texts } from './texts.ts';
import type { Toasts } from './toasts.ts';

/** The menus of the script, what is chosen there, and the panels that it opens. */
export function createScriptMenus({
  connection,
  view,
  grid,
  toasts,
  apply,
  leaveCell,
}: {
  readonly connection: () => Connection;
  readonly view: SheetInView;
  readonly grid: Grid;
  readonly toasts: Toasts;
  readonly apply: (change: ChangeView) => void;
  readonly leaveCell: (then: () => void) => void;
}): { show(menus: readonly MenuView[]): void } {
  /** A script that is run from here is told which sheet is in front, as the host knows it. */
  const runScript = <T>(action: 'run' | 'choose', fields: object) =>
    connection().askBeside<T>(action, { ...fields, ...(view.sheet ? { sheet: view.id } : {}) });
  const panels = createPanels({
    async run(name, args) {
      const answer = await runScript<{ value: unknown; panel: PanelAddress | null }>('run', { name, args });
      apply(answer.change);
      return answer;
    },
    onFocusGrid: () => grid.focus(),
  });
  async function choose(run: string): Promise<void> {
    try {
      const answer = await runScript<{ panel: PanelAddress | null }>('choose', { run });
      apply(answer.change);
      if (answer.panel) panels.open(answer.panel);
    } catch (error) {
      toasts.complain(error);
    }
  }
  const chosen = (run: string) => (): void => leaveCell(() => void choose(run));
  return {
    show(menus) {
      menuButtons(
        byId('menus'),
        menus.map(({ title, items }) => ({
          label: title,
          lines: () => items.map((item) => (item ? { label: item.label, act: chosen(item.run) } : null)),
        })),
      );
      const [menu] = menus;
      const first = menu?.items[0];
      if (menu === undefined || !first) {
        byId('start').replaceChildren();
        return;
      }
      const start = element('button', { type: 'button', class: 'menu-button start-button' }, first.label);
      start.addEventListener('click', chosen(first.run));
      byId('start').replaceChildren(texts.startIn(menu.title), ' ', start);
    },
  };
}
