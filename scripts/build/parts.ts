import { readdirSync } from 'node:fs';
import { basename, join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type ImportDeclaration, type Node, parse } from 'acorn';
import { build, type Plugin } from 'esbuild';

/** A piece of the script that is kept as text and compiled when something first asks for it. */
export interface Part {
  readonly name: string;
  /** Modules in it, by path from src, in the order they stand in. */
  readonly modules: readonly string[];
  /** Body of a function that takes `part`, by which it asks for the parts it builds on, and returns what it exports. */
  readonly body: string;
}

interface Door {
  readonly name: string;
  readonly source: string;
}

/**
 * Splits the script by who needs what: esbuild puts every set of modules that is needed by the same doors into one
 * chunk, so a cell function compiles its own chunks and no others. A door is a cell function or a room of the host.
 */
export async function partsOf(root: string, hostDoors: Readonly<Record<string, string>>): Promise<readonly Part[]> {
  const doors = [
    ...(await cellDoors(root)),
    ...Object.entries(hostDoors).map(([name, path]) => ({ name, source: `export * from './${path}';` })),
  ];
  const outcome = await build({
    entryPoints: doors.map(({ name }) => ({ in: `door:${name}`, out: name })),
    plugins: [doorsOf(root, doors)],
    bundle: true,
    splitting: true,
    format: 'esm',
    target: 'es2019',
    charset: 'utf8',
    platform: 'neutral',
    mainFields: ['module', 'main'],
    legalComments: 'inline',
    absWorkingDir: root,
    outdir: join(root, 'dist'),
    metafile: true,
    write: false,
    logLevel: 'silent',
  });
  const complaint = outcome.warnings[0];
  if (complaint) throw new Error(`esbuild warned about ${complaint.location?.file ?? 'a part'}: ${complaint.text}`);
  const chunks = outcome.outputFiles.map(({ path, text }) => {
    const modules = Object.keys(outcome.metafile.outputs[relative(root, path)]?.inputs ?? {}).filter(
      (module) => !module.startsWith('door:'),
    );
    return { file: basename(path), text, modules: modules.map(moduleName) };
  });
  const doorNames = new Set(doors.map(({ name }) => name));
  const nameOf = new Map(
    chunks.map(({ file, modules }) => {
      const door = basename(file, '.js');
      // A chunk without modules of ours holds what esbuild adds for older syntax.
      return [file, doorNames.has(door) ? door : (modules[modules.length - 1] ?? 'helpers')];
    }),
  );
  const parts = chunks.map(({ file, text, modules }) => ({
    name: nameOf.get(file) ?? file,
    modules,
    body: bodyOf(text, (chunk) => nameOf.get(chunk) ?? chunk),
  }));
  if (new Set(parts.map(({ name }) => name)).size < parts.length) throw new Error('Two parts have the same name.');
  return inOrder(parts);
}

const moduleName = (path: string): string =>
  path
    .replace(/^src\//, '')
    .replace(/^.*node_modules\//, '')
    .replace(/\.(ts|m?js)$/, '');

/** One door for each cell function, named like it; its entry is exported as `entry`, without the help. */
async function cellDoors(root: string): Promise<Door[]> {
  const folder = 'src/functions/entries';
  const doors: Door[] = [];
  for (const file of readdirSync(join(root, folder)).sort()) {
    const exported: Record<string, unknown> = await import(pathToFileURL(join(root, folder, file)).href);
    for (const [key, value] of Object.entries(exported)) {
      const { name, compute } = value as { name?: unknown; compute?: unknown };
      if (typeof name !== 'string' || typeof compute !== 'function') continue;
      doors.push({ name, source: `export { ${key} as entry } from './${folder}/${file}';` });
    }
  }
  return doors;
}

const doorsOf = (root: string, doors: readonly Door[]): Plugin => ({
  name: 'doors',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^door:/ }, ({ path }) => ({ path: path.slice('door:'.length), namespace: 'door' }));
    onLoad({ filter: /./, namespace: 'door' }, ({ path }) => ({
      contents: doors.find(({ name }) => name === path)?.source ?? '',
      resolveDir: root,
    }));
  },
});

/** Turns a chunk's imports into requests for parts, and its exports into what it returns. */
function bodyOf(chunk: string, nameOf: (file: string) => string): string {
  const program = parse(chunk, { ecmaVersion: 2019, sourceType: 'module' });
  const edits: { start: number; end: number; text: string }[] = [];
  const exported: string[] = [];
  for (const node of program.body) {
    if (node.type === 'ImportDeclaration') {
      edits.push({ start: node.start, end: node.end, text: requestOf(node, nameOf) });
    } else if (node.type === 'ExportNamedDeclaration') {
      const names = node.specifiers.map(({ local, exported: outside }) => [plainName(local), plainName(outside)]);
      exported.push(...names.map(([local]) => local ?? ''));
      const fields = names.map(([local, outside]) => (local === outside ? local : `${outside}: ${local}`));
      edits.push({ start: node.start, end: node.end, text: `return { ${fields.join(', ')} };` });
    } else if (/^Export/.test(node.type)) throw new Error(`A part cannot hold ${node.type}.`);
  }
  const changed = reassigned(program, new Set(exported));
  // Parts hand over values when they are compiled; one that changes later would be stale in the others.
  if (changed) throw new Error(`${changed} is exported and changed after that; export a function that reads it.`);
  let body = chunk;
  for (const { start, end, text } of edits.reverse()) body = body.slice(0, start) + text + body.slice(end);
  return body.trim();
}

function requestOf({ source, specifiers }: ImportDeclaration, nameOf: (file: string) => string): string {
  // Imported for its effects only: nothing at the top level of a module has any, so it need not be compiled.
  if (specifiers.length === 0) return '';
  const name = nameOf(basename(String(source.value)));
  const fields = specifiers.map((specifier) => {
    if (specifier.type !== 'ImportSpecifier') throw new Error(`${name} is imported whole; name what is used of it.`);
    const [inside, outside] = [plainName(specifier.local), plainName(specifier.imported)];
    return inside === outside ? inside : `${outside}: ${inside}`;
  });
  return `const { ${fields.join(', ')} } = part("${name}");`;
}

const plainName = (node: Node & { name?: string; value?: unknown }): string => node.name ?? String(node.value);

/** A name of these that is given a value anywhere but in its declaration. */
function reassigned(node: unknown, names: ReadonlySet<string>): string | undefined {
  if (Array.isArray(node)) {
    for (const item of node) {
      const found = reassigned(item, names);
      if (found) return found;
    }
    return undefined;
  }
  if (typeof node !== 'object' || node === null) return undefined;
  const { type, left, argument } = node as { type?: string; left?: { name?: string }; argument?: { name?: string } };
  const target =
    type === 'AssignmentExpression' ? left?.name : type === 'UpdateExpression' ? argument?.name : undefined;
  if (target !== undefined && names.has(target)) return target;
  return reassigned(Object.values(node), names);
}

/** What others build on first, and refuses a circle, which no order could compile. */
function inOrder(parts: readonly Part[]): readonly Part[] {
  const byName = new Map(parts.map((part) => [part.name, part]));
  const placed = new Set<Part>();
  const place = (part: Part, above: readonly Part[]): void => {
    if (above.includes(part))
      throw new Error(`Parts build on each other: ${above.map(({ name }) => name).join(' → ')}`);
    if (placed.has(part)) return;
    for (const [, name] of part.body.matchAll(/^const \{[^}]*\} = part\("([^"]+)"\);$/gm)) {
      const needed = byName.get(name ?? '');
      if (needed) place(needed, [...above, part]);
    }
    placed.add(part);
  };
  for (const name of [...byName.keys()].sort()) place(byName.get(name) as Part, []);
  return [...placed];
}
