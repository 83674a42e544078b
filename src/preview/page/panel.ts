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

/**
 * The one sidebar or dialog of this window: opening another closes it, as on the host. Its frame has no origin of its
 * own, so messages are known by the frame that they come from, and nothing else is listened to.
 */
export function createPanels(options: {
  readonly run: (name: string, args: readonly unknown[]) => Promise<{ value: unknown; panel: PanelAddress | null }>;
  readonly onFocusGrid: () => void;
}): Panels {
  const aside = byId('panel');
  let frame: HTMLIFrameElement | undefined;
  let closeNow: ((refocus: boolean) => void) | undefined;

  function makeFrame(panel: PanelAddress): HTMLIFrameElement {
    const made = element('iframe', {
      sandbox: panelSandbox,
      src: panel.address,
      title: panel.title,
      allow: 'clipboard-write',
    });
    made.addEventListener('load', () => made.focus(), { once: true });
    return made;
  }
  window.addEventListener('message', (event) => {
    const source = frame?.contentWindow;
    // A frame without an origin calls itself “null”; anything else is not our panel.
    if (!source || event.source !== source || event.origin !== 'null') return;
    const message = readPanelMessage(event.data);
    if (!message) return;
    if (message.labrow === 'close') closeNow?.(true);
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

  const panels: Panels = {
    open(panel) {
      closeNow?.(false);
      const made = makeFrame(panel);
      frame = made;
      if (panel.kind === 'sidebar') {
        const close = element('button', { type: 'button', class: 'close' }, texts.closePanel);
        close.addEventListener('click', () => closeNow?.(true));
        aside.replaceChildren(
          element('div', { class: 'panel-top' }, element('h2', { id: 'panel-title' }, panel.title), close),
          made,
        );
        aside.hidden = false;
        document.body.classList.add('with-panel');
        closeNow = (refocus) => {
          closeNow = undefined;
          frame = undefined;
          aside.hidden = true;
          aside.replaceChildren();
          document.body.classList.remove('with-panel');
          if (refocus) options.onFocusGrid();
        };
        return;
      }
      made.style.width = `${panel.width ?? 600}px`;
      made.style.height = `${panel.height ?? 420}px`;
      const close = element('button', { type: 'button', class: 'act quiet' }, texts.closePanel);
      const dialog = openDialog({
        title: panel.title,
        className: 'panel-dialog',
        content: [made, element('div', { class: 'answers' }, close)],
        onClose: () => {
          if (frame === made) {
            frame = undefined;
            closeNow = undefined;
          }
        },
      });
      close.addEventListener('click', () => dialog.close());
      closeNow = () => dialog.close();
    },
  };
  return panels;
}
