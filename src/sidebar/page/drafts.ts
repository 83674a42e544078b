const memory = new Map<string, string>();

/** What is half typed, kept while the tab lives. A sandboxed or private page may refuse storage: memory then has to do. */
export const drafts = {
  keep(name: string, value: unknown): void {
    const text = JSON.stringify(value);
    memory.set(name, text);
    try {
      sessionStorage.setItem(name, text);
    } catch {
      // Refused or full: the copy in memory lasts as long as the page.
    }
  },
  read(name: string): unknown {
    let text: string | null | undefined;
    try {
      text = sessionStorage.getItem(name);
    } catch {
      text = undefined;
    }
    try {
      return JSON.parse(text ?? memory.get(name) ?? 'null');
    } catch {
      return null;
    }
  },
  drop(name: string): void {
    memory.delete(name);
    try {
      sessionStorage.removeItem(name);
    } catch {
      // Nothing was kept there.
    }
  },
};
