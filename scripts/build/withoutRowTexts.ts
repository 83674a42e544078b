import { readFileSync } from 'node:fs';
import {
  type MemberExpression,
  type Node,
  type ObjectExpression,
  type ObjectPattern,
  type Property,
  parse,
} from 'acorn';
import { type Plugin, transformSync } from 'esbuild';

/**
 * What activities, and the procedures and questions in them, hold for the rows of a sheet. The sidebar plans the sheet and
 * sends it, so the script, which only checks what stands there, never reads these; each call of a cell would load them.
 */
const lesson = ['shown', 'aim', 'extension', 'period'] as const;
/** What plans are made from, and the numbers in them. */
const plan = ['about', 'start', 'fromTable', 'optional', 'recipe', 'numbers.ion', 'numbers.takes'] as const;
const bench = ['stem', 'leftovers', 'text'] as const;
const places = [
  { folder: /[\\/]lab[\\/]lesson[\\/]activities[\\/]\w+\.ts$/, names: [...lesson, ...plan] },
  { folder: /[\\/]lab[\\/]bench[\\/](?:procedures|questions)[\\/]\w+\.ts$/, names: bench },
] as const;

/** Leaves the texts of rows out of the sources that hold them, before anything is bundled. */
export const withoutRowTexts: Plugin = {
  name: 'without texts of rows',
  setup({ onLoad }) {
    for (const { folder, names } of places) {
      onLoad({ filter: folder }, ({ path }) => {
        const { code } = transformSync(readFileSync(path, 'utf8'), { loader: 'ts', target: 'es2022', charset: 'utf8' });
        return { contents: without(code, names), loader: 'js' };
      });
    }
  },
};

/**
 * Code without the properties of these names, or of `outer.inner` without those called inner in the object of that name;
 * refuses to leave anything out that the code itself still speaks of.
 */
export function without(code: string, names: readonly string[]): string {
  const edits: { readonly start: number; readonly end: number }[] = [];
  const outerOf = new Map<Node, string>();
  visit(parse(code, { ecmaVersion: 2022, sourceType: 'module' }), (node) => {
    if (node.type === 'Property') outerOf.set((node as Property).value, nameOf(node));
    if (node.type !== 'ObjectExpression' && node.type !== 'ObjectPattern') return true;
    const { properties } = node as ObjectExpression | ObjectPattern;
    const outer = outerOf.get(node) ?? '';
    const stays = properties.filter((property) => {
      const name = nameOf(property);
      return !names.includes(name) && !names.includes(`${outer}.${name}`);
    });
    for (const [place, property] of properties.entries()) {
      if (stays.includes(property)) continue;
      const above = stays.filter(({ end }) => end <= property.start).pop();
      const isLast = !stays.some(({ start }) => start > property.start);
      // With the comma behind it, or the one in front where nothing stays behind it.
      if (isLast) edits.push({ start: above?.end ?? node.start + 1, end: property.end });
      else edits.push({ start: property.start, end: properties[place + 1]?.start ?? property.end });
    }
    return true;
  });
  const outer = edits.filter((edit) => !edits.some((other) => other !== edit && isWithin(edit, other)));
  let rest = code;
  for (const { start, end } of outer.sort((one, other) => other.start - one.start)) {
    rest = rest.slice(0, start) + rest.slice(end);
  }
  const declared = new Set<string>();
  visit(parse(rest, { ecmaVersion: 2022, sourceType: 'module' }), (node) => {
    const { id } = node as { readonly id?: { readonly name?: string } | null };
    if (node.type === 'VariableDeclarator' && id?.name !== undefined) declared.add(id.name);
    return true;
  });
  visit(parse(rest, { ecmaVersion: 2022, sourceType: 'module' }), (node) => {
    const { name = '' } = node as { readonly name?: string };
    if (node.type !== 'Identifier' || !names.includes(name) || declared.has(name)) return true;
    throw new Error(`${name} is left out of what holds it and still read:\n${rest}`);
  });
  return rest;
}

/** Read what has too common a name to be looked for: the texts of options, and what a given is about and starts from. */
const readers = ['lab/bench/letteredShown', 'lab/lesson/startingGivens', 'lab/numbers/startNumbers'];

/** What a part of the script still reads of what is left out; nothing, unless more of the sheet is worked out in it. */
export function rowTextsRead(body: string, modules: readonly string[]): string[] {
  const found = modules.filter((module) => readers.includes(module));
  const gone: readonly string[] = [...lesson, ...bench.filter((name) => name !== 'text'), 'fromTable', 'recipe'];
  visit(parse(body, { ecmaVersion: 2022, sourceType: 'module' }), (node) => {
    if (node.type === 'MemberExpression') {
      const { computed, property } = node as MemberExpression;
      const { name = '' } = property as { readonly name?: string };
      if (!computed && gone.includes(name)) found.push(`.${name}`);
    }
    if (node.type === 'ObjectPattern')
      found.push(...(node as ObjectPattern).properties.map(nameOf).filter((name) => gone.includes(name)));
    return true;
  });
  return found;
}

const isWithin = (inner: { start: number; end: number }, outer: { start: number; end: number }): boolean =>
  inner.start >= outer.start && inner.end <= outer.end;

function nameOf(property: Node): string {
  const { type, computed, key } = property as Property;
  return type !== 'Property' || computed ? '' : String((key as { name?: string; value?: unknown }).name ?? '');
}

/** Every node, outermost first. */
function visit(node: unknown, look: (node: Node) => boolean): void {
  if (Array.isArray(node)) for (const item of node) visit(item, look);
  if (typeof node !== 'object' || node === null || Array.isArray(node)) return;
  if (typeof (node as Node).type === 'string' && !look(node as Node)) return;
  for (const below of Object.values(node)) visit(below, look);
}
