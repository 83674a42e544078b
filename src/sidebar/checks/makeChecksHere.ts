import { askDesk } from '../askDesk.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';

/** From one look to the next, so that a check is there within fifteen seconds of its entry where a look takes six. */
const secondsToNextLook = 8;
/** After a look that took longer than that, so that a slow host is not asked without a pause. */
const shortestPause = 2;

/**
 * Works out the checks of all classes while the sidebar is open, in a file where no formula does, and says so with the time
 * of the last look. It never interrupts, and tries again by itself.
 */
export interface ChecksHere {
  readonly root: HTMLElement;
  /** Looks now, and from then on again and again while the file asks for it. */
  look(): void;
}

export function makeChecksHere({ isOn }: { readonly isOn: () => boolean }): ChecksHere {
  const { checksHere: say } = texts;
  const words = element('span', {});
  const root = element('aside', { class: 'due', 'aria-label': say.label, hidden: true }, words);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let working = false;
  let last = '';
  const tell = (text: string): void => {
    if (words.textContent !== text) words.textContent = text;
  };
  async function work(): Promise<void> {
    const outcome = await askDesk('workOutChecks');
    if (outcome.ok) {
      const { clock, inTheWay } = outcome.value;
      last = clock;
      tell([say.worked(last), ...(inTheWay === undefined ? [] : [say.inTheWay(inTheWay)])].join(' '));
    } else tell(say.failed({ last, problem: outcome.problem.message }));
  }
  async function look(): Promise<void> {
    clearTimeout(timer);
    if (working) return;
    working = true;
    const begun = Date.now();
    root.hidden = !isOn();
    // A tab that nobody sees is slowed down by the browser; it goes on all the same, since students wait.
    if (isOn()) await work();
    working = false;
    const left = secondsToNextLook * 1000 - (Date.now() - begun);
    timer = setTimeout(() => void look(), Math.max(shortestPause * 1000, left));
  }
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void look();
  });
  return { root, look: () => void look() };
}
