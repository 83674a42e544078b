import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createContext, runInContext } from 'node:vm';
import { type FunctionDeclaration, type Node, type ObjectExpression, parse } from 'acorn';
import { afterAll, describe, expect, it } from 'vitest';
import { sampleBlock } from '../../scripts/bench/sampleBlock.ts';
import { hostDoors } from '../../scripts/build/codeFile.ts';
import { pushedFiles } from '../../scripts/build/keepBuilt.ts';
import { partsOf } from '../../scripts/build/parts.ts';
import { rowTextsRead, without } from '../../scripts/build/withoutRowTexts.ts';
import { documents } from '../../scripts/build.ts';
import { generatedSources } from '../../scripts/generate/sources.ts';
import { callFunction } from '../../src/functions/callFunction.ts';
import { catalogue } from '../../src/functions/catalogue.ts';
import { callNames } from '../../src/host/calls.ts';
import { allActivities } from '../../src/lab/lesson/activities.ts';
import { numbersForTeams } from '../../src/lab/numbers/numbersForTeams.ts';
import { builtText } from '../builtText.ts';
import { startOf } from '../lab/otherActivities.ts';

const code = readFileSync('dist/Code.js', 'utf8');
/** What is typed `#x`, `static x` or `??=` fails this parser, as it may fail on the host. */
const program = parse(code, { ecmaVersion: 2020, sourceType: 'script' });
const declarations = program.body.filter((node): node is FunctionDeclaration => node.type === 'FunctionDeclaration');

interface PartRead {
  readonly name: string;
  readonly text: string;
  /** The line above it. */
  readonly about: string;
}

/** Parts as the script holds them: methods with a written name of the first object in its library. */
function readParts(): readonly PartRead[] {
  const library = program.body.find((node) => node.type === 'VariableDeclaration');
  const found: PartRead[] = [];
  const visit = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return;
    if ((node as Node).type === 'ObjectExpression' && found.length === 0) {
      for (const property of (node as ObjectExpression).properties) {
        if (property.type !== 'Property' || !property.method || property.key.type !== 'Literal') continue;
        if (property.value.type !== 'FunctionExpression') continue;
        const above = code.slice(0, property.start).trimEnd();
        found.push({
          name: String(property.key.value),
          text: code.slice(property.value.body.start, property.value.body.end),
          about: above.slice(above.lastIndexOf('\n') + 1),
        });
      }
    }
    for (const below of Object.values(node)) visit(below);
  };
  visit(library);
  return found;
}
const parts = readParts();

/** A place for the script where the host forbids code from text, as a school or the host may. */
const strictContext = (globals: object = {}) =>
  createContext(globals, { codeGeneration: { strings: false, wasm: false } });

/** The sources of each part, as it was put together. */
const sources = await partsOf(process.cwd(), hostDoors);

/** The comment that ends right above a node. */
const commentAbove = (node: Node) => /\/\*\*(?:(?!\*\/)[\s\S])*\*\/\n$/.exec(code.slice(0, node.start))?.[0] ?? '';

/** What the sources make now; under “npm test” that was built before the first test. */
const fromSources = {
  'dist/Code.js': await builtText('dist/Code.js'),
  'dist/Sidebar.html': await builtText('dist/Sidebar.html'),
};

describe('what is generated', () => {
  it('is current: building again changes nothing (npm run build puts it right)', async () => {
    const files = { ...(await generatedSources()), ...(await documents()), ...fromSources };
    const stale = Object.entries(files).filter(([path, text]) => readFileSync(path, 'utf8') !== text);
    expect(stale.map(([path]) => path)).toEqual([]);
  });
});

describe('what tests of the script and of the sidebar are given', () => {
  const folder = mkdtempSync(join(tmpdir(), 'labrow-built-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('is built where nothing stands yet, and once', async () => {
    let builds = 0;
    const build = async () => {
      builds += 1;
      return fromSources;
    };
    for (const path of pushedFiles) expect(await builtText(path, folder, build)).toBe(fromSources[path]);
    writeFileSync(join(folder, 'Sidebar.html'), 'kept');
    expect(await builtText('dist/Sidebar.html', folder, build)).toBe('kept');
    expect(builds).toBe(1);
  });
  it('is what the build makes, both under “npm test”, which has built before its first test, and without it', async () => {
    const ofRun = process.env.LABROW_BUILT ?? folder;
    if (ofRun === folder) {
      const { status, stderr } = spawnSync(process.execPath, ['--import', 'tsx', 'scripts/buildForTests.ts', folder]);
      expect([status, stderr.toString()]).toEqual([0, '']);
    }
    expect(readdirSync(ofRun).sort()).toEqual(['Code.js', 'Sidebar.html']);
    for (const path of pushedFiles) expect(await builtText(path, ofRun)).toBe(fromSources[path]);
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
      'selfCheckFromMenu',
    ]);
    expect(declarations.map(({ id }) => id?.name ?? '').filter((name) => !known.has(name))).toEqual([]);
    expect(declarations.length).toBe(known.size);
  });
  it('loads in a bare context, touches nothing, and answers', () => {
    const touched: string[] = [];
    // An object that notes every name that is looked up hides the language's own, so those come from another context.
    const language = runInContext('globalThis', createContext({})) as Record<string, unknown>;
    const bare = new Proxy<Record<string, unknown>>(
      {},
      {
        get(target, name) {
          if (typeof name === 'string' && !(name in target)) touched.push(name);
          return name in target ? target[name as string] : language[name as string];
        },
      },
    );
    const context = strictContext(bare);
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
    expect(Buffer.byteLength(code)).toBeLessThan(520_000);
  });
  it('makes no code from text', () => {
    const names: string[] = [];
    const visit = (node: unknown): void => {
      if (typeof node !== 'object' || node === null) return;
      const { type, name } = node as { type?: string; name?: string };
      if (type === 'Identifier' && (name === 'eval' || name === 'Function')) names.push(name);
      for (const below of Object.values(node)) visit(below);
    };
    visit(program);
    expect(names).toEqual([]);
    expect(() => runInContext('eval("1")', strictContext())).toThrow(/Code generation from strings/);
  });
  it('runs for a cell its own part and those it builds on, and no other', () => {
    const context = strictContext({ ran: [] });
    // Each part notes that it was run, in the first statement of its function.
    let marked = code;
    for (const { name, text } of parts) marked = marked.replace(text, () => `{ ran.push("${name}");${text.slice(1)}`);
    runInContext(marked, context);
    const ranBy = (call: string): string[] => {
      runInContext(`ran.length = 0; ${call}`, context);
      return Array.from(runInContext('ran', context) as string[]).sort();
    };
    expect(ranBy('MOLARMASS("KBr")')).toEqual(['MOLARMASS', 'base']);
    expect(ranBy('MOLARMASS("NaOH")')).toEqual([]);
    expect(ranBy('GRAMS("KBr", 1)')).toEqual(['GRAMS']);
    expect(ranBy('SOLUTEMASS("KBr", 0.25, "0.5 L")')).toEqual(['SOLUTEMASS']);
    // Each part that a first answer runs takes time before anything is worked out.
    const ranByBlock = ranBy(`CHECKTEAM(${sampleBlock().map((cells) => JSON.stringify(cells))})`);
    expect(ranByBlock).toContain('CHECKTEAM');
    expect(ranByBlock.length).toBeLessThanOrEqual(7);
    const edited = ranBy('onEdit({ range: { getColumn: () => 1, getLastColumn: () => 1 } })');
    expect(edited).toContain('onEdit');
    expect(edited).not.toContain('desk');
  });
  it('throws from a part as a cell needs it: an Error of its own realm, with its message', () => {
    const context = strictContext();
    runInContext(code, context);
    const said =
      'let said; try { MOLARMASS("nacl"); } catch (error) { said = [error instanceof Error, error.message]; } said';
    expect(Array.from(runInContext(said, context) as unknown[])).toEqual([
      true,
      '“nacl” needs a capital letter where each symbol begins. Did you mean NaCl?',
    ]);
  });
  it('answers and refuses every example of the reference as the sources do', () => {
    const context = strictContext();
    runInContext(code, context);
    const asked = (name: string, call: readonly unknown[]): string =>
      runInContext(
        `(() => { try { return JSON.stringify(${name}(...${JSON.stringify(call)})); } catch (error) { return error.message; } })()`,
        context,
      ) as string;
    for (const { name, examples, refuses, ...entry } of catalogue) {
      for (const { call } of examples) {
        expect(asked(name, call), name).toBe(JSON.stringify(entry.call.call({ name, ...entry }, call)));
      }
      for (const { call, says } of refuses) expect(asked(name, call), name).toContain(says);
    }
  });
});

describe('texts of rows, which the sidebar plans and sends', () => {
  it('are not in the script, and nothing in it reads them', () => {
    for (const { aim, extension, steps } of allActivities()) {
      const texts = [aim, extension, ...steps.flatMap(({ shown }) => shown)].filter((text) => typeof text === 'string');
      expect(texts.length).toBeGreaterThan(steps.length);
      expect(texts.filter((text) => text.length > 30 && code.includes(text))).toEqual([]);
    }
    // What a plan starts from is asked for in the sidebar alone.
    for (const { givens } of allActivities())
      for (const { about } of givens)
        if (about.length > 30) expect([about, code.includes(about)]).toEqual([about, false]);
    expect(rowTextsRead('const { recipe } = numbers;', ['lab/lesson/startingGivens'])).toEqual([
      'lab/lesson/startingGivens',
      'recipe',
    ]);
    expect(rowTextsRead('const { aim } = activity; activity.steps[0].shown;', ['lab/bench/letteredShown'])).toEqual([
      'lab/bench/letteredShown',
      'aim',
      '.shown',
    ]);
    for (const { name, text } of parts) {
      const modules = sources.find((part) => part.name === name)?.modules ?? [];
      expect(rowTextsRead(`(() => ${text});`, modules), name).toEqual([]);
    }
  });
  it('are left out with their commas, and only where nothing reads them', () => {
    const source =
      "const aim = 'x';\nexport const step = ({ id, aim }) => ({ aim, id, shown: [aim], name: { shown: 1 } });";
    expect(without(source, ['shown', 'aim'])).toBe(
      "const aim = 'x';\nexport const step = ({ id }) => ({ id, name: { } });",
    );
    expect(
      without("const numbers = { ion: 'a' };\nconst one = { numbers: { formula: 'f', ion: 'i' }, ion: 1 };", [
        'numbers.ion',
      ]),
    ).toBe("const numbers = { ion: 'a' };\nconst one = { numbers: { formula: 'f' }, ion: 1 };");
    expect(() => without('export const step = ({ id, aim }) => ({ id: aim });', ['aim'])).toThrow(/^aim is left out/);
  });
  it.each(allActivities().map(({ id }) => id))('change no check and no hint of “%s”', (id) => {
    const context = strictContext();
    runInContext(code, context);
    const activity = allActivities().find((one) => one.id === id);
    const numbers = numbersForTeams(startOf(id));
    const team = numbers.ok ? numbers.value.teams[0] : undefined;
    if (!activity || !team) throw new Error(`${id} has no team.`);
    const names = Object.keys(team.givens);
    const column = (first: string, cells: readonly unknown[]) => [[first], ...cells.map((cell) => [cell]), ['']];
    for (const entries of [
      () => '',
      () => 'abc',
      (place: number) => 'bacdefghij'.slice(place % 3),
      () => '0.25',
      () => '7',
    ]) {
      for (const level of [0, 1, 2, 3]) {
        const block = [
          [names],
          [names.map((name) => team.givens[name] ?? '')],
          [
            ['activity', id],
            ['layout', 99],
          ],
          column(
            '',
            activity.steps.map((step) => step.id),
          ),
          column(
            'entry',
            activity.steps.map((_, place) => entries(place)),
          ),
          column(
            '',
            activity.steps.map(() => level),
          ),
        ];
        const asked = `JSON.stringify(CHECKTEAM(...${JSON.stringify(block)}))`;
        expect(runInContext(asked, context)).toBe(JSON.stringify(callFunction('CHECKTEAM', block as never)));
      }
    }
  });
});

describe('parts of dist/Code.js', () => {
  it('hold every public function and the rooms of the host, each under a line that says what it is', () => {
    const names = parts.map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining([...catalogue.map(({ name }) => name), 'onOpen', 'onEdit', 'desk']));
    expect(new Set(names).size).toBe(names.length);
    for (const { name, about } of parts) expect(about.startsWith(`// Part ${name}`), name).toBe(true);
  });
  it('name only parts that stand above them, and repeat no module', () => {
    const above = new Set<string>();
    for (const { name, text } of parts) {
      for (const [, needed] of text.matchAll(/ = part\("([^"]+)"\)/g)) expect(above, name).toContain(needed);
      above.add(name);
    }
    const modules = sources.flatMap((part) => part.modules);
    expect(sources.map(({ name }) => name)).toEqual(parts.map(({ name }) => name));
    expect(modules).toEqual(expect.arrayContaining(['chemistry/ions', 'host/main', 'lab/judging/teamChecks']));
    expect(modules.length).toBeGreaterThan(300);
    expect(modules.filter((module, place) => modules.indexOf(module) !== place)).toEqual([]);
  });
  it('carry no engine, no Node and no mathjs, and import nothing', () => {
    for (const { name, text } of parts) {
      expect(text, name).not.toMatch(/hyperformula|node:|require\(|mathjs|chevrotain/i);
      expect(text, name).not.toMatch(/^\s*(import|export)\b/m);
    }
  });
});

describe('the syntax of dist/Code.js', () => {
  // googleworkspace/apps-script-samples, ai/standup-chat-app/main.js, has both `?.` and `??`.
  it('is that of ES2019 and, as in samples of the host itself, optional chaining and ??', () => {
    const newer: string[] = [];
    parse(code, {
      ecmaVersion: 2020,
      onToken: ({ type, start, end }) => {
        const text = code.slice(start, end);
        if (type.label === 'num' && text.endsWith('n')) newer.push(text);
      },
    });
    expect(newer).toEqual([]);
    expect(code).not.toMatch(/\bimport\(|\bglobalThis\b|\bexport \* as\b/);
  });
});

describe('what every load of dist/Code.js reads', () => {
  it('holds no pattern with a class of Unicode, which V8 works out for each literal that it passes', () => {
    const classes = (text: string) => {
      const found: string[] = [];
      parse(text, {
        ecmaVersion: 2020,
        onToken: ({ type, start, end }) => {
          const literal = text.slice(start, end);
          if (type.label === 'regexp' && /\\p\{/i.test(literal)) found.push(literal);
        },
      });
      return found;
    };
    expect(classes(code)).toEqual([]);
    expect(classes('var planted = /^\\p{L}/u;')).toEqual(['/^\\p{L}/u']);
  });
  it('has no named arrow at the top of a part, which V8 would read whole each time that the part is run', () => {
    const arrows = (text: string) => Array.from(text.matchAll(/^var (\w+) = \([^()]*\) => /gm), ([, name]) => name);
    expect(parts.flatMap(({ text }) => arrows(text))).toEqual([]);
    expect(arrows('var planted = (one) => one;')).toEqual(['planted']);
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
  it('holds no template literal, in which the host strips what looks like a comment', () => {
    const script = /<script>([\s\S]*)<\/script>/.exec(html)?.[1] ?? '';
    expect(script.length).toBeGreaterThan(10_000);
    const kinds = new Set<string>();
    const visit = (node: unknown): void => {
      if (typeof node !== 'object' || node === null) return;
      const { type } = node as { type?: string };
      if (typeof type === 'string') kinds.add(type);
      for (const below of Object.values(node)) visit(below);
    };
    visit(parse(script, { ecmaVersion: 2021, sourceType: 'script' }));
    expect(kinds).toContain('CallExpression');
    expect([...kinds].filter((kind) => /Template/.test(kind))).toEqual([]);
  });
});
