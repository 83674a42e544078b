type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

/** One element with its attributes and content; text is never read as markup. */
export function element<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...content: readonly (Node | string)[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value === undefined || value === false) continue;
    made.setAttribute(name, value === true ? '' : String(value));
  }
  made.append(...content);
  return made;
}

/** An element of the page by id; a missing one is a slip in index.html. */
export function byId<T extends HTMLElement = HTMLElement>(id: string): T {
  const found = document.getElementById(id);
  if (!found) throw new Error(`index.html has no element with the id ${id}.`);
  return found as T;
}
