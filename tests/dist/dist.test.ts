import { readFileSync } from 'node:fs';
import { createContext, runInContext } from 'node:vm';
import { type FunctionDeclaration, type Node, parse } from 'acorn';
import { describe, expect, it } from 'vitest';
import { builtFiles } from '../../scripts/build.ts';
import { generatedSources } from '../../scripts/generate/sources.ts';
import { catalogue } from '../../src/functions/catalogue.ts';
import { callNames } from '../../src/host/calls.ts';

const code = readFileSync('dist/Code.js', 'utf8');
/** What is typed `#x`, `static x`, `?.`, `??` or `10n` fails this parser, as it may fail on the host. */
const program = parse(code, { ecmaVersion: 2019, sourceType: 'script' });
const declarations = program.body.filter((node): node is FunctionDeclaration => node.type === 'FunctionDeclaration');

/** The comment that ends right above a node. */
const commentAbove = (node: Node) => /\/\*\*(?:(?!\*\/)[\s\S])*\*\/\n$/.exec(code.slice(0, node.start))?.[0] ?? '';

describe('what is generated', () => {
  it('is current: building again changes nothing (npm run build puts it right)', async () => {
    const files = { ...(await generatedSources()), ...(await builtFiles()) };
    const stale = Object.entries(files).filter(([path, text]) => readFileSync(path, 'utf8') !== text);
    expect(stale.map(([path]) => path)).toEqual([]);
  });
});

describe('dist/Code.js', () => {
  it('has one declaration for each public function, with its arguments in order and its help above', () => {
    for (const entry of catalogue) {
      const declaration = declarations.find(({ id }) => id?.name === entry.name);
      if (!declaration) throw new Error(`${entry.name} has no declaration`);
      const names = declaration.params.map((parameter) => (parameter.type === 'Identifier' ? parameter.name : '?'));
      expect(names).toEqual(entry.arguments.map(({ name }) => name));
      const comment = commentAbove(declaration);
      expect(comment).toContain('@customfunction');
      for (const { name } of entry.arguments) expect(comment).toMatch(new RegExp(`@param \\{[^}]+\\} ${name} `));
    }
  });
  it('declares nothing else but triggers, menu items and the calls of the sidebar', () => {
    const known = new Set<string>([
      ...catalogue.map(({ name }) => name),
      ...callNames,
      'onOpen',
      'onInstall',
      'onEdit',
      'openSidebar',
      'buildSampleFromMenu',
      'checkAgainFromMenu',
    ]);
    expect(declarations.map(({ id }) => id?.name ?? '').filter((name) => !known.has(name))).toEqual([]);
    expect(declarations.length).toBe(known.size);
  });
  it('loads in a bare context, touches nothing, and answers', () => {
    const touched: string[] = [];
    const bare = new Proxy<Record<string, unknown>>(
      {},
      {
        get(target, name) {
          if (typeof name === 'string' && !(name in target)) touched.push(name);
          return target[name as string];
        },
      },
    );
    const context = createContext(bare);
    runInContext(code, context);
    const added = Object.keys(bare).filter((name) => !declarations.some(({ id }) => id?.name === name));
    expect(added).toEqual(['Labrow']);
    expect(
      touched.filter((name) => /App$|Service$|^Utilities$|^Session$|^console$|^process$|^require$/.test(name)),
    ).toEqual([]);
    expect(runInContext('MOLARMASS("KBr")', context)).toBeCloseTo(119.002, 3);
    expect(runInContext('typeof setTimeout + typeof URL + typeof TextEncoder', context)).toBe(
      'undefinedundefinedundefined',
    );
  });
  it('carries no engine, no Node and no mathjs', () => {
    expect(code).not.toMatch(/hyperformula|node:|require\(|mathjs|chevrotain/i);
  });
  it('is not minified and stays small enough to load at every call', () => {
    expect(code.split('\n').length).toBeGreaterThan(2000);
    expect(code.length).toBeLessThan(420_000);
  });
});

describe('dist/Sidebar.html', () => {
  const html = readFileSync('dist/Sidebar.html', 'utf8');
  it('asks nothing of the network and holds no template marks', () => {
    expect(html.startsWith('<!DOCTYPE html>')).toBe(true);
    expect(html).not.toContain('<?');
    expect(html).not.toMatch(/(src|href)="https?:/);
    expect(html).not.toMatch(/@import|url\(https?:/);
  });
});
