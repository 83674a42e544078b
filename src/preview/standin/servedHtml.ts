import { type Node, parse } from 'acorn';

/**
 * A page as the host serves it, with a fault of the host in it: inside a template literal of a script, what looks like a
 * comment is stripped, from `//` to the end of the line and from `/*` to its end. A link there takes the rest of its line
 * along, and with it the script.
 */
export function servedHtml(html: string): string {
  const known = served.get(html);
  if (known !== undefined) return known;
  const text = html.replace(
    /(<script\b[^>]*>)([\s\S]*?)(<\/script>)/gi,
    (_, start: string, script: string, end: string) => `${start}${withoutComments(script)}${end}`,
  );
  const [oldest] = served.keys();
  if (served.size >= mostPages && oldest !== undefined) served.delete(oldest);
  served.set(html, text);
  return text;
}

/** A page is opened again and again, and reading its script is most of what that costs. */
const served = new Map<string, string>();
const mostPages = 8;

function withoutComments(script: string): string {
  // Most scripts have none, and reading one of a page's size takes a while.
  if (!script.includes('`')) return script;
  let served = script;
  // From the last to the first, so that places of those before stay as they are.
  for (const { start, end } of literalTexts(script).reverse()) {
    const text = served.slice(start, end);
    const mark = /\/\/|\/\*/.exec(text);
    if (mark === null) continue;
    const from = start + mark.index;
    const ending = mark[0] === '//' ? /$/m : /\*\//;
    const found = ending.exec(served.slice(from));
    const to = found === null ? served.length : from + found.index + found[0].length;
    served = served.slice(0, from) + served.slice(to);
  }
  return served;
}

/** Where the texts of template literals stand; none in a script that cannot be read, which fails in the browser anyhow. */
function literalTexts(script: string): { start: number; end: number }[] {
  const found: { start: number; end: number }[] = [];
  const visit = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return;
    const { type, start, end } = node as Partial<Node>;
    if (type === 'TemplateElement' && start !== undefined && end !== undefined) found.push({ start, end });
    for (const below of Object.values(node)) visit(below);
  };
  try {
    visit(parse(script, { ecmaVersion: 2022, sourceType: 'script' }));
  } catch {
    return [];
  }
  return found.sort((one, other) => one.start - other.start);
}
