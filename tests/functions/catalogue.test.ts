import { HyperFormula } from 'hyperformula';
import { describe, expect, it } from 'vitest';
import { declarations } from '../../scripts/generate/declarations.ts';
import { referencePage, signature } from '../../scripts/generate/reference.ts';
import { callFunction } from '../../src/functions/callFunction.ts';
import { catalogue } from '../../src/functions/catalogue.ts';
import { entries } from '../../src/functions/entries.ts';
import type { FunctionEntry } from '../../src/functions/entry.ts';
import { callText } from './callText.ts';
import { expectCells } from './expectCells.ts';
import { hostFunctionNames } from './hostFunctionNames.ts';

describe('catalogue', () => {
  it('has every function that cells can call, in the same order', () => {
    expect(catalogue.map(({ name }) => name)).toEqual(entries.map(({ name }) => name));
  });
  it('keeps names, order of arguments and what is optional', async () => {
    const lines = catalogue.map((entry) => `${signature(entry)}\n`).join('');
    await expect(lines).toMatchFileSnapshot('publicFunctions.txt');
  });
  it('names no function twice, none with an underscore at its end, none like a built-in of the host', () => {
    const names = catalogue.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    expect(names.filter((name) => !/^[A-Z]+$/.test(name))).toEqual([]);
    const engine = HyperFormula.getRegisteredFunctionNames('enGB');
    expect(engine.length).toBeGreaterThan(300);
    expect(names.filter((name) => engine.includes(name) || hostFunctionNames.includes(name))).toEqual([]);
  });
  it('has the optional arguments last, each with a name of its own', () => {
    for (const { name, arguments: taken } of catalogue) {
      const optional = taken.map((argument) => Boolean('optional' in argument && argument.optional));
      expect([name, [...optional].sort((a, b) => Number(a) - Number(b))]).toEqual([name, optional]);
      expect(new Set(taken.map((argument) => argument.name)).size).toBe(taken.length);
      expect(taken.filter((argument) => !/^[a-z]+(_[a-z0-9]+)*$/.test(argument.name))).toEqual([]);
    }
  });
  it('describes each function in one sentence and each argument without a full stop', () => {
    for (const { summary, arguments: taken } of catalogue) {
      expect(summary).toMatch(/^[A-Z][^.]*\.$/);
      expect(taken.filter(({ about }) => /\.$/.test(about)).map(({ name }) => name)).toEqual([]);
    }
  });

  it('says once what each argument is: in the entry where a message needs it, else in the help, which Code.js leaves out', () => {
    const told: readonly string[] = ['text', 'substance', 'row', 'column', 'table'];
    for (const { name, arguments: taken } of entries as readonly FunctionEntry[]) {
      const inEntry = taken.filter(({ about }) => about !== undefined).map((argument) => argument.name);
      const needed = taken.filter(({ kind, optional }) => told.includes(kind) && !optional);
      expect([name, inEntry]).toEqual([name, needed.map((argument) => argument.name)]);
      const found = catalogue.find((one) => one.name === name);
      expect([name, ...inEntry, ...Object.keys(found?.about ?? {})].sort()).toEqual(
        [name, ...taken.map((argument) => argument.name)].sort(),
      );
      expect(found?.arguments.map(({ about }) => about.length > 0)).toEqual(taken.map(() => true));
    }
  });

  const examples = catalogue.flatMap((entry) => entry.examples.map((example) => ({ entry, ...example })));
  it.each(examples.map((example) => ({ ...example, text: callText(example.entry.name, example.call) })))(
    'gives what its reference shows for $text',
    ({ entry, call, gives }) => expectCells(callFunction(entry.name, call), gives),
  );

  const refused = catalogue.flatMap((entry) => entry.refuses.map((example) => ({ entry, ...example })));
  it.each(refused.map((example) => ({ ...example, text: callText(example.entry.name, example.call) })))(
    'refuses $text as its reference shows',
    ({ entry, call, says }) => {
      expect(() => callFunction(entry.name, call)).toThrow(new Error(says));
    },
  );
});

describe('declarations', () => {
  const text = declarations(catalogue);
  it('writes one plain function for each entry, with its help right above', () => {
    for (const { name, summary, arguments: taken } of catalogue) {
      const names = taken.map((argument) => argument.name).join(', ');
      expect(text).toContain(
        ` * @customfunction\n */\nfunction ${name}(${names}) {\n  return Labrow.callFunction_('${name}', [${names}]);\n}`,
      );
      expect(text).toContain(`/**\n * ${summary}\n`);
    }
    expect(text.match(/@customfunction/g)).toHaveLength(catalogue.length);
  });
  it('says in words which arguments are optional, since the host marks none', () => {
    const optional = catalogue.flatMap(({ arguments: taken }) => taken.filter((argument) => argument.optional));
    expect(text.match(/ optional: /g)).toHaveLength(optional.length);
  });
  it('holds no markup and no line over 240 characters', () => {
    expect(text).not.toMatch(/<\w/);
    expect(text.split('\n').filter((line) => line.length > 240)).toEqual([]);
  });
});

describe('referencePage', () => {
  const text = referencePage(catalogue);
  it('shows every function with its signature, its source and a result', () => {
    for (const entry of catalogue) {
      const from = text.indexOf(`### \`${signature(entry)}\``);
      expect(from).toBeGreaterThanOrEqual(0);
      const section = text.slice(from, text.indexOf('### ', from + 5) < 0 ? undefined : text.indexOf('### ', from + 5));
      expect(section).toContain('Source: ');
      expect(section).toContain(' gives');
    }
  });
});
