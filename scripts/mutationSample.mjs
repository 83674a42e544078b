import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Lines that hold nothing to change. */
const idle = /^\s*($|\/\/|\/?\*|import\b|export \*|[})\]];?,?$)/;

/** A number from 0 to 1 that is always the same for one text (FNV-1a). @param {string} text */
const drawn = (text) => {
  let hash = 0x811c9dc5;
  for (const letter of text) hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 0x01000193) >>> 0;
  return hash / 2 ** 32;
};

/**
 * So many lines of a room, always the same ones, as places for the mutation tester: what stands within one of them is
 * changed. A room that is not there has none.
 *
 * @param {string} folder
 * @param {{ lines: number, seed: number }} sample
 */
export function mutationSample(folder, { lines, seed }) {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.ts$/.test(name) && !/\.generated\.ts$|[Ww]ords\.ts$|Texts?\.ts$/.test(name))
    .sort()
    .flatMap((name) => {
      const path = join(folder, name).replaceAll('\\', '/');
      return readFileSync(path, 'utf8')
        .split('\n')
        .flatMap((text, index) => (idle.test(text) ? [] : [`${path}:${index + 1}-${index + 1}`]));
    })
    .map((place) => ({ place, at: drawn(`${seed} ${place}`) }))
    .sort((one, other) => one.at - other.at)
    .slice(0, lines)
    .map(({ place }) => place)
    .sort();
}
