import { parse } from 'acorn';
import type { PublicFunction } from '../../src/functions/entry.ts';
import { declarations } from '../generate/declarations.ts';
import { inFewerLines } from './inFewerLines.ts';
import { base, type Part, partsOf } from './parts.ts';

/** Rooms of the host that are compiled on their own: a menu or a counted try should not wait for the desk. */
export const hostDoors = { onOpen: 'src/host/onOpen.ts', onEdit: 'src/host/onEdit.ts', desk: 'src/host/main.ts' };

/** Top-level declarations that are no cell functions: triggers, menu items; what the sidebar may call comes besides. */
const doors = [
  ['onOpen', 'event', 'onOpen', 'Adds the menu when the file is opened.'],
  ['onInstall', 'event', 'onOpen', 'Adds the menu when the add-on is installed.'],
  ['onEdit', 'event', 'onEdit', 'Counts tries in the row that was edited.'],
  ['openSidebar', '', 'desk', 'Menu: opens the sidebar.'],
  ['buildSampleFromMenu', '', 'desk', 'Menu: builds an invented class to try.'],
  ['checkAgainFromMenu', '', 'desk', 'Menu: enters again the checks that did not finish.'],
  ['selfCheckFromMenu', '', 'desk', 'Menu: tries out what this file lets the script do.'],
] as const;

/** The script as it is pushed: parts as text, what compiles them, and the declarations that the host reads. */
export async function codeFile(
  root: string,
  { catalogue, callNames }: { catalogue: readonly PublicFunction[]; callNames: readonly string[] },
): Promise<string> {
  const parts = await partsOf(root, hostDoors);
  const code = [
    '// Labrow. Built by “npm run build” from src/; change the sources, not this file. MIT licence.',
    '"use strict";',
    library(parts),
    '',
    '// Cell functions.',
    declarations(catalogue).trim(),
    '',
    '// Triggers and menu items; last of all what the sidebar calls.',
    ...doors.map(
      ([name, argument, part, about]) =>
        `/** ${about} */\nfunction ${name}(${argument}) {\n  return Labrow.part_("${part}").${name}_(${argument});\n}\n`,
    ),
    callNames
      .map(
        (name) => `function ${name}(...request) {\n  return Labrow.part_("desk").endpoints_.${name}(...request);\n}\n`,
      )
      .join('\n'),
  ].join('\n');
  return withTabs(inFewerLines(code));
}

/**
 * The same code indented by tabs: every second space in front of a line goes, a twentieth of what the host reads at each
 * call. Lines inside a text that runs over several of them stay as they are.
 */
function withTabs(code: string): string {
  const texts: { from: number; to: number }[] = [];
  const program = parse(code, {
    ecmaVersion: 2020,
    sourceType: 'script',
    onToken: ({ type, start, end }) => {
      if (type.label === 'template') texts.push({ from: start, to: end });
    },
  });
  if (program.body.length === 0) throw new Error('The script holds nothing.');
  let at = 0;
  let text = 0;
  return code
    .split('\n')
    .map((line) => {
      const start = at;
      at += line.length + 1;
      while ((texts[text]?.to ?? Number.POSITIVE_INFINITY) < start) text += 1;
      const isWithin = (texts[text]?.from ?? Number.POSITIVE_INFINITY) < start;
      return isWithin ? line : line.replace(/^(?: {2})+/, (indent) => '\t'.repeat(indent.length / 2));
    })
    .join('\n');
}

/**
 * Each part is a function that is called once, when something first asks for it. Loading passes over its body without
 * compiling it, and no code is made from text: what is pushed is what runs, line by line, for whoever reads it.
 */
function library(parts: readonly Part[]): string {
  if (parts[0]?.name !== base) throw new Error(`The first part is ${parts[0]?.name}; the base must build on no other.`);
  return `
var Labrow = (() => {
  // The host loads this file at every call of a cell function, and a call needs few of the parts. Each is a function that
  // is run when it is first asked for, and sees nothing but the host and, by part(name), what other parts give.
  const parts = {
${parts.map(method).join('\n')}
  };
  const given = {};
  /** What a part gives. */
  const part_ = (name) => {
    if (!(name in given)) given[name] = parts[name](part_);
    return given[name];
  };
  return { part_, callFunction_: (name, cells) => part_(name).entry.call(cells) };
})();`;
}

const method = (part: Part): string => `// ${about(part)}\n"${part.name}"(part) {\n${part.body}\n},`;

/** What a part holds, in one line. */
function about({ name, modules }: Part): string {
  const others = modules.filter((module) => module !== name);
  const most = 6;
  const listed = others.slice(0, most).join(', ');
  return `Part ${name}${listed && `: ${listed}`}${others.length > most ? ` and ${others.length - most} more` : ''}`;
}
