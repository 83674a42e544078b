import type { Block } from './cellName.ts';

/** Dragging the small square at the corner of the selected block: down to the row that is to be filled last. */
export function handleDrag(
  table: HTMLElement,
  options: {
    readonly block: () => Block;
    readonly rowAt: (target: EventTarget | null) => number | undefined;
    readonly rowElement: (row: number) => HTMLElement | undefined;
    readonly filled: (lastRow: number) => void;
  },
): { start(event: MouseEvent): boolean } {
  let from: Block | undefined;
  let last = 0;
  const mark = (to: number, on: boolean): void => {
    for (let row = (from?.bottom ?? 0) + 1; row <= to; row += 1) {
      options.rowElement(row)?.classList.toggle('filling', on);
    }
  };
  table.addEventListener('mouseover', (event) => {
    const row = options.rowAt(event.target);
    if (!from || row === undefined) return;
    mark(last, false);
    last = row;
    mark(last, true);
  });
  window.addEventListener('mouseup', () => {
    if (!from) return;
    mark(last, false);
    const { bottom } = from;
    from = undefined;
    if (last > bottom) options.filled(last);
  });
  return {
    start(event) {
      if (event.button !== 0 || !(event.target as HTMLElement).matches('.fill-handle')) return false;
      event.preventDefault();
      from = options.block();
      last = from.bottom;
      return true;
    },
  };
}

/** Dragging the right edge of a column's heading; a double click gives the column its own width back. */
export function gripDrag(
  table: HTMLElement,
  options: {
    readonly width: (column: number) => number;
    readonly column: (column: number) => HTMLElement | undefined;
    readonly resized: (column: number, width: number | undefined) => void;
  },
): { start(event: MouseEvent): boolean } {
  let drag: { readonly column: number; readonly x: number; readonly width: number } | undefined;
  const columnOf = (target: EventTarget | null): number | undefined => {
    const grip = (target as HTMLElement).closest('.width-grip');
    const column = Number(grip?.closest<HTMLElement>('th')?.dataset.column);
    return grip && column ? column : undefined;
  };
  window.addEventListener('mousemove', (event) => {
    const shown = drag && options.column(drag.column);
    if (drag && shown) shown.style.width = `${Math.max(30, drag.width + event.clientX - drag.x)}px`;
  });
  window.addEventListener('mouseup', (event) => {
    if (!drag) return;
    const { column, x, width } = drag;
    drag = undefined;
    if (event.clientX !== x) options.resized(column, width + event.clientX - x);
  });
  table.addEventListener('dblclick', (event) => {
    const column = columnOf(event.target);
    if (column !== undefined) options.resized(column, undefined);
  });
  return {
    start(event) {
      const column = event.button === 0 ? columnOf(event.target) : undefined;
      if (column === undefined) return false;
      event.preventDefault();
      drag = { column, x: event.clientX, width: options.width(column) };
      return true;
    },
  };
}
