/** After so long without an answer people are told, so that nobody takes silence for a saved text. */
const patienceMs = 2000;

/** Whether answers are slow to come: from a while after the first that is waited for, until all have come. */
export function slowAnswers(changed: () => void): {
  readonly any: boolean;
  wait<T>(answer: Promise<T>): Promise<T>;
} {
  let slow = 0;
  return {
    get any(): boolean {
      return slow > 0;
    },
    async wait(answer) {
      let isSlow = false;
      const timer = setTimeout(() => {
        isSlow = true;
        slow += 1;
        if (slow === 1) changed();
      }, patienceMs);
      try {
        return await answer;
      } finally {
        clearTimeout(timer);
        if (isSlow) {
          slow -= 1;
          if (slow === 0) changed();
        }
      }
    },
  };
}
