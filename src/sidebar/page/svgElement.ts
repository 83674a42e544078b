const namespace = 'http://www.w3.org/2000/svg';

/** Makes an element of a drawing. Strings become text nodes, as in `element`. */
export function svgElement<Tag extends keyof SVGElementTagNameMap>(
  tag: Tag,
  attributes: Readonly<Record<string, string | number | undefined>> = {},
  ...children: readonly (Node | string | false)[]
): SVGElementTagNameMap[Tag] {
  const made = document.createElementNS(namespace, tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== undefined) made.setAttribute(name, String(value));
  }
  for (const child of children) if (child !== false) made.append(child);
  return made;
}
