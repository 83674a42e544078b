import { element } from './element.ts';

/** A message as it is shown: what it says first, and quietly after it the line of the script that the host appends. */
export function messageParts(message: string): readonly (Node | string)[] {
  const [, said, line] = /^([\s\S]*?)( \(line \d+\)\.?)$/.exec(message) ?? [];
  return said !== undefined && line ? [said, element('span', { class: 'script-line' }, line)] : [message];
}
