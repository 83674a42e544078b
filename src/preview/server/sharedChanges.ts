import type { PreviewHost, Seat } from '../view.ts';

/** What changed since a version, as text on its way to windows. */
interface SharedChange {
  /** The version that a window has once it knows this. */
  readonly version: number;
  readonly text: string;
}

/** Works out each change once for a seat and a version, however many windows of that seat wait for it. */
export function sharedChanges(host: PreviewHost): {
  since(seat: Seat, version: number): SharedChange;
  /** To be called when the workbook changed. */
  renew(): void;
} {
  const known = new Map<string, SharedChange>();
  return {
    since(seat, version) {
      const key = `${seat} ${version}`;
      const shared = known.get(key);
      if (shared) return shared;
      const change = host.changeSince(seat, version);
      const made = { version: change.version, text: JSON.stringify(change) };
      known.set(key, made);
      return made;
    },
    renew: () => known.clear(),
  };
}
