import { type Node, parse } from 'acorn';

const longestLine = 120;
const joined: readonly string[] = ['ObjectExpression', 'ArrayExpression', 'CallExpression', 'ObjectPattern'];

/**
 * The same code with lists, objects and calls in as few lines as fit, as people write them: esbuild gives each member a
 * line of its own, which makes the script longer for the host to read and for people to look through.
 */
export function inFewerLines(code: string): string {
  const edits: { start: number; end: number; text: string }[] = [];
  const visit = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return;
    if (Array.isArray(node)) {
      for (const item of node) visit(item);
      return;
    }
    const found = node as Node;
    const text = joined.includes(found.type) ? (oneLine(code, found) ?? fewLines(code, found)) : undefined;
    if (text !== undefined) edits.push({ start: found.start, end: found.end, text });
    else for (const below of Object.values(node)) visit(below);
  };
  visit(parse(code, { ecmaVersion: 2020, sourceType: 'script' }).body);
  let text = code;
  for (const edit of edits.sort((one, other) => other.start - one.start))
    text = text.slice(0, edit.start) + edit.text + text.slice(edit.end);
  return text;
}

/** On one line with what stands before and behind; undefined where that is too long, or where it stands so already. */
function oneLine(code: string, node: Node): string | undefined {
  const { start, end } = node;
  const text = code.slice(start, end);
  if (!text.includes('\n') || holdsLines(node) || /\/\/|\/\*/.test(text)) return undefined;
  const on = text
    .replace(/([{([])\n\s*/g, (_, open: string) => (open === '{' ? '{ ' : open))
    .replace(/\n\s*([)\]}])/g, (_, close: string) => (close === '}' ? ' }' : close))
    .replace(/\n\s*/g, ' ');
  const lineEnd = code.indexOf('\n', end);
  const behind = (lineEnd < 0 ? code.length : lineEnd) - end;
  return start - lineStart(code, start) + on.length + behind <= longestLine ? on : undefined;
}

interface Members {
  readonly elements?: readonly (Node | null)[];
  readonly properties?: readonly Node[];
}

/** Members that stand on one line each, side by side in lines that are filled; undefined for what holds anything longer. */
function fewLines(code: string, node: Node): string | undefined {
  const { elements, properties } = node as Node & Members;
  const members = (elements ?? properties ?? []).map((member) => member && code.slice(member.start, member.end));
  if (members.length < 2 || !code.slice(node.start, node.end).includes('\n')) return undefined;
  const texts = members.filter((text): text is string => text !== null && !text.includes('\n'));
  if (texts.length < members.length) return undefined;
  const indent = /^ */.exec(code.slice(lineStart(code, node.start)))?.[0] ?? '';
  const lines: string[] = [];
  for (const text of texts) {
    const last = lines[lines.length - 1];
    if (last !== undefined && last.length + 2 + text.length <= longestLine)
      lines[lines.length - 1] = `${last}, ${text}`;
    else lines.push(`${indent}  ${text}`);
  }
  const [open, close] = elements === undefined ? '{}' : '[]';
  return `${open}\n${lines.join(',\n')}\n${indent}${close}`;
}

const lineStart = (code: string, at: number): number => code.lastIndexOf('\n', at - 1) + 1;

/** Statements keep their lines, and so does a text that runs over several of them. */
function holdsLines(node: unknown): boolean {
  if (Array.isArray(node)) return node.some(holdsLines);
  if (typeof node !== 'object' || node === null) return false;
  const { type, value } = node as { type?: string; value?: { raw?: string } };
  if (type === 'BlockStatement' || (type === 'TemplateElement' && value?.raw?.includes('\n') === true)) return true;
  return Object.values(node).some(holdsLines);
}
