import { type Comment, type FunctionDeclaration, parse } from 'acorn';
import type { FunctionHelp } from '../view.ts';

export interface Declared {
  readonly name: string;
  readonly custom: boolean;
  readonly help: FunctionHelp;
}

let last: { readonly code: string; readonly functions: Declared[] } | undefined;

/**
 * The top-level function declarations of a script, with what the host's formula helper would show of each.
 * Refuses what the host's own parser refuses when a script is pushed: anything newer than ES2019, but for `?.` and `??`,
 * which stand in the host's own examples.
 */
export function declaredFunctions(code: string): Declared[] {
  // One script is opened again and again, and reading it takes as long as building half a class.
  if (last?.code !== code) last = { code, functions: readFunctions(code) };
  return last.functions;
}

function readFunctions(code: string): Declared[] {
  const comments: Comment[] = [];
  let program: ReturnType<typeof parse>;
  try {
    program = parse(code, {
      ecmaVersion: 2020,
      sourceType: 'script',
      onComment: comments,
      onToken: (token) => {
        const { type, loc } = token;
        // A number with an n behind it comes as what it stands for, which the types of the parser leave out.
        const isBig = typeof (token as { readonly value?: unknown }).value === 'bigint';
        if (type.label !== 'import' && !isBig) return;
        throw Object.assign(new Error('Unexpected token ILLEGAL'), { loc: loc?.start });
      },
      locations: true,
    });
  } catch (thrown) {
    const { message, loc } = thrown as { message: string; loc?: { line: number } };
    throw new Error(`Syntax error: ${message} line: ${loc?.line ?? '?'} file: Code.gs`);
  }
  const functions = program.body.filter((node): node is FunctionDeclaration => node.type === 'FunctionDeclaration');
  return functions.map((node) => {
    const nearest = comments.filter(({ end }) => end <= node.start).at(-1);
    const above = nearest?.type === 'Block' && /^\s*$/.test(code.slice(nearest.end, node.start)) ? nearest : undefined;
    const lines = (above?.value ?? '')
      .replace(/ @(?=[a-z])/g, '\n@')
      .split('\n')
      .map((line) => line.replace(/^\s*\*\s?/, '').trim());
    const tagAt = lines.findIndex((line) => line.startsWith('@'));
    const summary = (tagAt < 0 ? lines : lines.slice(0, tagAt)).filter(Boolean).join(' ');
    const about = new Map<string, string>();
    for (const line of lines) {
      const tag = /^@param\s+(?:\{[^}]*\}\s+)?([\w$]+)\s*(?:-\s*)?(.*)$/.exec(line);
      if (tag?.[1]) about.set(tag[1], tag[2] ?? '');
    }
    const names = node.params.map((parameter) => (parameter.type === 'Identifier' ? parameter.name : '…'));
    return {
      name: node.id.name,
      custom: lines.some((line) => line.startsWith('@customfunction')),
      help: {
        name: node.id.name.toUpperCase(),
        summary,
        arguments: names.map((name) => {
          const text = about.get(name) ?? '';
          return { name, about: text, optional: /\boptional\b/i.test(text) };
        }),
      },
    };
  });
}
