/**
 * A template with its places filled: `{name}` by the text of that name, in one pass, so that braces in what a person typed
 * stay as they are. A sentence begins with a capital, whatever fills its first place.
 */
export const filledText = (template: string, fillings: Readonly<Record<string, string | undefined>>): string =>
  template
    .replace(/\{(\w+)\}/g, (_, name: string) => fillings[name] ?? '')
    .replace(/^[a-z]/, (letter) => letter.toUpperCase());
