const narrowest = 30;
const widest = 900;

/** Widths by column that somebody dragged in this window. They last as long as the window and change nothing for others. */
type OwnWidths = Readonly<Record<number, number>>;

export function createColumnWidths(store: Storage, seat: string) {
  const keyOf = (sheet: number): string => `labrow widths ${seat} ${sheet}`;
  const of = (sheet: number): OwnWidths => {
    try {
      return JSON.parse(store.getItem(keyOf(sheet)) ?? '{}') as OwnWidths;
    } catch {
      return {};
    }
  };
  return {
    of,
    /** Undefined gives back the width that the workbook has. */
    set(sheet: number, column: number, width: number | undefined): void {
      const { [column]: _, ...others } = of(sheet);
      const within = width === undefined ? undefined : Math.round(Math.min(widest, Math.max(narrowest, width)));
      store.setItem(keyOf(sheet), JSON.stringify(within === undefined ? others : { ...others, [column]: within }));
    },
  };
}
