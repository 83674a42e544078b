const secondsBetweenLooks = 20;

/** Looks again every so often while it is switched on and the page can be seen; never two looks at once. */
export function makeLookAgain(look: () => Promise<void>): { start(): void; stop(): void } {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let on = false;
  const plan = () => {
    clearTimeout(timer);
    if (on) timer = setTimeout(turn, secondsBetweenLooks * 1000);
  };
  const turn = async () => {
    if (document.visibilityState === 'visible') await look();
    plan();
  };
  return {
    start() {
      on = true;
      plan();
    },
    stop() {
      on = false;
      clearTimeout(timer);
    },
  };
}
