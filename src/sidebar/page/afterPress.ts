/** What waits until a press has reached what it was meant for. */
let waiting: (() => void)[] = [];
let isPressing = false;

/** Called once for the page. */
export function watchPresses(): void {
  const begin = (): void => {
    isPressing = true;
  };
  // The click follows the release at once: what waited is done after it.
  const end = (): void => {
    setTimeout(() => {
      isPressing = false;
      const due = waiting;
      waiting = [];
      for (const run of due) run();
    });
  };
  document.addEventListener('pointerdown', begin, { capture: true });
  for (const name of ['pointerup', 'pointercancel']) document.addEventListener(name, end, { capture: true });
}

/**
 * Does at once what may move the page, or after a press that is under way: leaving a field and pressing a button are one
 * movement of the hand, and a button that moves in between would not be met.
 */
export function afterPress(run: () => void): void {
  if (isPressing) waiting.push(run);
  else run();
}
