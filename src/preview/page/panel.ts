import { panelSandbox } from '../panelSandbox.ts';
import { type PageMessage, readPanelMessage } from './bridge/messages.ts';
import { openDialog } from './dialogs.ts';
import { byId, element } from './element.ts';
import { texts } from './texts.ts';

/** A panel as the server describes it; its HTML is read from the address by the frame itself. */
export interface PanelAddress {
  readonly address: string;
  readonly title: string;
  readonly kind: 'sidebar' | 'dialog';
  readonly width: number | null;
  readonly height: number | null;
}
export interface Panels {
  open(panel: PanelAddress): void;
}

type Kind = PanelAddress['kind'];
interface OpenPanel {
  readonly frame: HTMLIFrameElement;
  close(refocus: boolean): void;
}

/**
 * The sidebar and the dialog of this window: of each kind there is one, and another of its kind takes its place. As on the
 * host a dialog lies over the sidebar, which goes on underneath, and stays until it is closed, whatever opens there
 * meanwhile. A frame has no origin of its own, so messages are known by the frame that they come from, and nothing else is
 * listened to.
 */
export function createPanels(options: {
  readonly run: (name: string, args: readonly unknown[]) => Promise<{ value: unknown; panel: PanelAddress | null }>;
  readonly onFocusGrid: () => void;
}): Panels {
  const aside = byId('panel');
  const open: Partial<Record<Kind, OpenPanel>> = {};

  function makeFrame(panel: PanelAddress): HTMLIFrameElement {
    const made = element('iframe', {
      sandbox: panelSandbox,
      src: panel.address,
      title: panel.title,
      allow: 'clipboard-write',
    });
    made.addEventListener(
      'load',
      () => {
        // Under a dialog nothing else takes the keys.
        if (open.dialog === undefined || open.dialog.frame === made) made.focus();
      },
      { once: true },
    );
    return made;
  }
  window.addEventListener('message', (event) => {
    const from = [open.sidebar, open.dialog].find(
      (one) => one !== undefined && one.frame.contentWindow === event.source,
    );
    const source = from?.frame.contentWindow;
    // A frame without an origin calls itself “null”; anything else is not our panel.
    if (!from || !source || event.origin !== 'null') return;
    const message = readPanelMessage(event.data);
    if (!message) return;
    if (message.labrow === 'close') from.close(true);
    else if (message.labrow === 'focus') options.onFocusGrid();
    else {
      const reply = (answer: PageMessage): void => source.postMessage(answer, '*');
      options.run(message.name, message.args).then(
        ({ value, panel }) => {
          reply({ labrow: 'value', id: message.id, value });
          if (panel) panels.open(panel);
        },
        (error: unknown) =>
          reply({ labrow: 'failed', id: message.id, message: error instanceof Error ? error.message : String(error) }),
      );
    }
  });

  function openSidebar(panel: PanelAddress): OpenPanel {
    const frame = makeFrame(panel);
    const opened: OpenPanel = {
      frame,
      close(refocus) {
        if (open.sidebar !== opened) return;
        delete open.sidebar;
        aside.hidden = true;
        aside.replaceChildren();
        document.body.classList.remove('with-panel');
        if (refocus) options.onFocusGrid();
      },
    };
    const close = element('button', { type: 'button', class: 'close' }, texts.closePanel);
    close.addEventListener('click', () => opened.close(true));
    aside.replaceChildren(
      element('div', { class: 'panel-top' }, element('h2', { id: 'panel-title' }, panel.title), close),
      frame,
    );
    aside.hidden = false;
    document.body.classList.add('with-panel');
    return opened;
  }

  function openOver(panel: PanelAddress): OpenPanel {
    const frame = makeFrame(panel);
    frame.style.width = `${panel.width ?? 600}px`;
    frame.style.height = `${panel.height ?? 420}px`;
    const close = element('button', { type: 'button', class: 'act quiet' }, texts.closePanel);
    const dialog = openDialog({
      title: panel.title,
      className: 'panel-dialog',
      content: [frame, element('div', { class: 'answers' }, close)],
      onClose: () => {
        if (open.dialog === opened) delete open.dialog;
      },
    });
    const opened: OpenPanel = { frame, close: () => dialog.close() };
    close.addEventListener('click', () => dialog.close());
    return opened;
  }

  const panels: Panels = {
    open(panel) {
      open[panel.kind]?.close(false);
      open[panel.kind] = panel.kind === 'sidebar' ? openSidebar(panel) : openOver(panel);
    },
  };
  return panels;
}
