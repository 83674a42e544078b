import { askAfresh, askDesk } from '../askDesk.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';

const minutesBetweenLooks = 10;

/**
 * A quiet line for a class of today that has gone and has no row in the Record. It never interrupts: it comes and goes by
 * itself.
 */
export interface Due {
  readonly root: HTMLElement;
  look(): void;
  /** While the record itself is open the line would say what is in plain sight. */
  quiet(isQuiet: boolean): void;
}

export function makeDue({ isBuilt, write }: { readonly isBuilt: () => boolean; readonly write: () => void }): Due {
  const words = element('span', {});
  const root = element(
    'aside',
    { class: 'due', 'aria-label': texts.due.label, hidden: true },
    words,
    ' ',
    element('button', { type: 'button', class: 'act quiet', onclick: write }, texts.due.write),
  );
  let classes: readonly string[] = [];
  let isQuiet = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let nextInMinutes = minutesBetweenLooks;
  const draw = () => {
    root.hidden = isQuiet || classes.length === 0;
    words.textContent = texts.due.missing(classes);
  };
  const look = async (ask: typeof askAfresh = askAfresh): Promise<void> => {
    clearTimeout(timer);
    if (isBuilt() && document.visibilityState === 'visible') {
      const outcome = await ask('recordDue');
      // What cannot be told just now is told next time.
      if (outcome.ok) {
        classes = outcome.value.due;
        nextInMinutes = outcome.value.nextInMinutes ?? minutesBetweenLooks;
      }
      draw();
    }
    clearTimeout(timer);
    timer = setTimeout(() => void look(), Math.min(nextInMinutes, minutesBetweenLooks) * 60_000);
  };
  return {
    root,
    look: () => void look(askDesk),
    quiet(quiet) {
      if (isQuiet && !quiet) void look(askDesk);
      isQuiet = quiet;
      draw();
    },
  };
}
