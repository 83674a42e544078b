/** What a panel's frame and the page say to each other. */
export type PanelMessage =
  | { readonly labrow: 'run'; readonly id: number; readonly name: string; readonly args: readonly unknown[] }
  | { readonly labrow: 'close' }
  | { readonly labrow: 'focus' };

export type PageMessage =
  | { readonly labrow: 'value'; readonly id: number; readonly value: unknown }
  | { readonly labrow: 'failed'; readonly id: number; readonly message: string };

export function readPanelMessage(value: unknown): PanelMessage | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  const { labrow, id, name, args } = value as Record<string, unknown>;
  if (labrow === 'close' || labrow === 'focus') return { labrow };
  if (labrow === 'run' && typeof id === 'number' && typeof name === 'string' && Array.isArray(args)) {
    return { labrow, id, name, args };
  }
  return undefined;
}
