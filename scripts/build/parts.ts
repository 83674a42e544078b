import { readdirSync } from 'node:fs';
import { basename, dirname, join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import {
  type ArrowFunctionExpression,
  type ImportDeclaration,
  type Node,
  parse,
  type VariableDeclaration,
} from 'acorn';
import { build, type Metafile, type Plugin } from 'esbuild';
import { rowTextsRead, withoutRowTexts } from './withoutRowTexts.ts';

/** A piece of the script: a function that runs when something first asks for it. */
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

/** Modules that stand together in one chunk, by path from the project folder. */
interface Groups {
  readonly base: readonly string[];
  readonly lesson: readonly string[];
}

/** What most calls of a cell function need. */
export const base = 'base';

/**
 * Splits the script by who needs what: esbuild puts every set of modules that is needed by the same doors into one
 * chunk, so a cell function compiles its own chunks and no others. A door is a cell function or a room of the host.
 * Each chunk costs as much as some 2,000 characters, so what is needed together anyhow is made one.
 */
export async function partsOf(root: string, hostDoors: Readonly<Record<string, string>>): Promise<readonly Part[]> {
  const cells = await cellDoors(root);
  const doors = [
    ...cells,
    ...Object.entries(hostDoors).map(([name, path]) => ({ name, source: `export * from './${path}';` })),
  ];
  const groups = groupsOf((await bundled(root, doors)).metafile.inputs, cells);
  const together = doors.map(({ name, source }) => {
    const isLesson = /^(CHECKTEAM|CHECKSTEP|HINTSTEP|desk)$/.test(name);
    // An import for its effects keeps a module in the same chunk as the others; bodyOf takes it out again.
    const grouped = [...groups.base, ...(isLesson ? groups.lesson : [])].map((path) => `import './${path}';`);
    return { name, source: [...grouped, source].join('\n') };
  });
  const { metafile, outputFiles } = await bundled(root, together);
  const doorNames = new Set(doors.map(({ name }) => name));
  const chunks = outputFiles.map(({ path, text }) => {
    const inputs = Object.keys(metafile.outputs[relative(root, path)]?.inputs ?? {}).filter(
      (module) => !module.startsWith('door:'),
    );
    const modules = inputs.map(moduleName);
    const door = basename(path, '.js');
    const grouped = (Object.entries(groups) as [string, readonly string[]][]).find(([, group]) =>
      inputs.some((input) => group.includes(input)),
    );
    // A chunk without modules of ours holds what esbuild adds for older syntax.
    const name = doorNames.has(door) ? door : (grouped?.[0] ?? modules[modules.length - 1] ?? 'helpers');
    return { file: basename(path), text, modules, name };
  });
  for (const { name, text, modules } of chunks) {
    const read = rowTextsRead(text, modules);
    if (read.length > 0) throw new Error(`${name} reads ${read.join(', ')}, which is left out of the script.`);
  }
  const nameOf = (file: string) => chunks.find((chunk) => chunk.file === file)?.name ?? file;
  const parts = chunks.map(({ name, text, modules }) => ({ name, modules, body: bodyOf(text, nameOf) }));
  if (new Set(parts.map(({ name }) => name)).size < parts.length) throw new Error('Two parts have the same name.');
  return inOrder(parts);
}

async function bundled(root: string, doors: readonly Door[]) {
  const outcome = await build({
    entryPoints: doors.map(({ name }) => ({ in: `door:${name}`, out: name })),
    plugins: [doorsOf(root, doors), withoutRowTexts],
    bundle: true,
    splitting: true,
    format: 'esm',
    target: 'es2019',
    // Newer, but the host's own samples have both, in one file: googleworkspace/apps-script-samples,
    // ai/standup-chat-app/main.js.
    supported: { 'optional-chain': true, 'nullish-coalescing': true },
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
  return outcome;
}

/**
 * The base: modules below the lesson that half of the cell functions need, and small ones that several need, as long as
 * they build on nothing else. The lesson: what checking a step and checking a block both need, and no other cell does.
 */
function groupsOf(inputs: Metafile['inputs'], cells: readonly Door[]): Groups {
  const needed = (path: string, into: Set<string> = new Set()): Set<string> => {
    for (const { path: below } of inputs[path]?.imports ?? []) {
      if (into.has(below)) continue;
      into.add(below);
      needed(below, into);
    }
    return into;
  };
  const neededBy = new Map(cells.map(({ name }) => [name, needed(`door:${name}`)]));
  const users = (path: string) => cells.filter(({ name }) => neededBy.get(name)?.has(path)).map(({ name }) => name);
  const small = 2500;
  const mayBeBase = (path: string): boolean => {
    const count = users(path).length;
    const isBelow = /^src\/(errors|measurement|chemistry|functions)\//.test(path);
    return isBelow && (count >= cells.length / 2 || (count >= 2 && (inputs[path]?.bytes ?? small) < small));
  };
  const paths = Object.keys(inputs).sort();
  const inBase = paths.filter((path) => mayBeBase(path) && [...needed(path)].every(mayBeBase));
  const inLesson = paths.filter((path) => {
    const by = users(path);
    const isShared = by.includes('CHECKTEAM') && by.includes('CHECKSTEP');
    return isShared && by.every((name) => /^(CHECKTEAM|CHECKSTEP|HINTSTEP)$/.test(name)) && !inBase.includes(path);
  });
  return { base: inBase, lesson: inLesson };
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

interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/**
 * Turns a chunk's imports into requests for parts, its exports into what it returns, and its arrows into functions. Above
 * the modules of a folder its name stands, as in `// From chemistry`: each is named after what it holds. What esbuild notes
 * for itself goes.
 */
function bodyOf(chunk: string, nameOf: (file: string) => string): string {
  const program = parse(chunk, { ecmaVersion: 2020, sourceType: 'module' });
  const edits: Edit[] = [];
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
    else edits.push(...asFunctions(node, chunk));
  }
  const changed = reassigned(program, new Set(exported));
  // Parts hand over values when they are compiled; one that changes later would be stale in the others.
  if (changed) throw new Error(`${changed} is exported and changed after that; export a function that reads it.`);
  let body = chunk;
  for (const { start, end, text } of edits.reverse()) body = body.slice(0, start) + text + body.slice(end);
  let above = '';
  return withoutRemarks(body)
    .trim()
    .replace(/^\/\/ ((?:src|node_modules)\/\S+)\n/gm, (_, path: string) => {
      const folder = dirname(moduleName(path));
      if (folder === above) return '';
      above = folder;
      return `// From ${folder}\n`;
    })
    .replace(/\/\* @__PURE__ \*\/ /g, '');
}

/**
 * The remarks that esbuild leaves where they stand within an expression go as all others do. Each has lines of its own;
 * what has to be kept of a licence does not begin like them.
 */
const withoutRemarks = (body: string): string => {
  const remarks: Edit[] = [];
  parse(body, {
    ecmaVersion: 2020,
    sourceType: 'script',
    allowReturnOutsideFunction: true,
    onComment(isBlock, text, start, end) {
      const lineStart = body.lastIndexOf('\n', start) + 1;
      const isAlone = body.slice(lineStart, start).trim() === '' && body[end] === '\n';
      const isLegal = /@license|@preserve|copyright/i.test(text);
      if (isBlock && text.startsWith('*') && isAlone && !isLegal)
        remarks.push({ start: lineStart, end: end + 1, text: '' });
    },
  });
  return remarks.reduceRight((rest, { start, end }) => rest.slice(0, start) + rest.slice(end), body);
};

/**
 * Arrows that stand in no other function, as functions: V8 passes over the body of a function in a part until it is
 * called, but reads the body of an arrow each time that the part is run. A declaration where the arrow has a name.
 */
function asFunctions(node: unknown, chunk: string): Edit[] {
  if (Array.isArray(node)) return node.flatMap((item) => asFunctions(item, chunk));
  if (typeof node !== 'object' || node === null) return [];
  const { type } = node as { type?: string };
  if (type === 'FunctionDeclaration' || type === 'FunctionExpression') return [];
  if (type === 'ArrowFunctionExpression') return functionFor(node as ArrowFunctionExpression, 'function', chunk);
  if (type === 'VariableDeclaration') {
    const { declarations, start, end } = node as VariableDeclaration;
    const [only, another] = declarations;
    if (only?.init?.type === 'ArrowFunctionExpression' && only.id.type === 'Identifier' && another === undefined) {
      return functionFor(only.init, `function ${only.id.name}`, chunk).map((edit) => ({ ...edit, start, end }));
    }
  }
  return Object.values(node).flatMap((below) => asFunctions(below, chunk));
}

function functionFor(arrow: ArrowFunctionExpression, head: string, chunk: string): Edit[] {
  // An arrow has the `this` of what stands around it.
  if (arrow.async || holdsThis(arrow.body)) return [];
  const argumentsTaken = arrow.params.map(({ start, end }) => chunk.slice(start, end)).join(', ');
  const { body: inside } = arrow;
  const isObject = inside.type === 'ObjectExpression';
  const from = isObject ? inside.start : chunk.lastIndexOf('=>', inside.start) + 2;
  const body = chunk.slice(from, isObject ? inside.end : arrow.end).trim();
  const block = arrow.expression ? `{ return ${body}; }` : body;
  return [{ start: arrow.start, end: arrow.end, text: `${head}(${argumentsTaken}) ${block}` }];
}

function holdsThis(node: unknown): boolean {
  if (Array.isArray(node)) return node.some(holdsThis);
  if (typeof node !== 'object' || node === null) return false;
  const { type } = node as { type?: string };
  return type === 'ThisExpression' || Object.values(node).some(holdsThis);
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
