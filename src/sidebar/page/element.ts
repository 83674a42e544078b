type Child = Node | string | null | undefined | false;
type Attribute = string | number | boolean | undefined | ((event: Event) => void);

/**
 * Makes an element. Strings become text nodes, so that nothing people typed is ever read as markup; a function under a
 * name such as `onclick` is added as a listener.
 */
export function element<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Readonly<Record<string, Attribute>> = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[Tag] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === 'function') made.addEventListener(name.slice(2), value);
    else if (value === true) made.setAttribute(name, '');
    else if (value !== undefined && value !== false) made.setAttribute(name, String(value));
  }
  for (const child of children) if (child || child === '') made.append(child);
  return made;
}
