// Puts very long texts of every kind into each argument of every public function and says how long the answer takes.
import { callFunction } from '../../src/functions/callFunction.ts';
import { catalogue } from '../../src/functions/catalogue.ts';
import type { CellArgument } from '../../src/functions/entry.ts';
import { allActivities } from '../../src/lab/lesson/activities.ts';

/** Pieces that are repeated to the length wanted: each is what some reader goes through in a loop of its own. */
const pieces = [
  '9', '1 ', '1,', '1.', "1'", '0.', ' ', '\t', '\u00a0', '\u200b', '\n', 'x', 'x ', 'H', 'h', 'H2', 'C1', '0', 'NaCl', '(', ')', '[', '()',
  '·', '·H2O', ' x 5H2O', ',5H2O', '1/2', 'e', 'e-', '1e', '^', '^2-', '+', '-', '−', '⁻', '⁹', '₂', '½', '×10', ' x 10-3 ', '*10^(', '%', '% ', '=', '=1+',
  '?', ':', '1:', '~', 'about ', 'ca. ', 'µ', 'mol', 'mol/', 'mol L-1 ', ' per ', 'g ', 'g KBr ', 'a, ', 'a→', 'and then ', 'because ', '⚠', '🧂', 'é', '"', '{argument}',
  '$&', '\\', '#N/A', '_', 'formula', 'molarity ', 'TRUE', '_ _', ' % ', 'w/w', '2026-', 'ＡＢ', 'ﷺ',
]; // biome-ignore format: one list, read as such

const repeated = (piece: string, length: number): string =>
  piece.repeat(Math.ceil(length / piece.length)).slice(0, length);

/** Letters of which no two are alike. */
const unlike = (length: number): string =>
  Array.from({ length }, (_, at) => String.fromCodePoint(0x4e00 + (at % 20_000))).join('');

export interface LongTexts {
  readonly calls: number;
  /** Slowest calls first: what was called, and ms. */
  readonly slowest: readonly { readonly call: string; readonly ms: number }[];
  readonly failures: readonly string[];
}

/** Every place of a call where one cell can hold the text: an argument, or each cell of a range. */
function placesOf(call: readonly CellArgument[]): ((text: string) => CellArgument[])[] {
  return call.flatMap((argument, place) => {
    const put = (changed: (text: string) => CellArgument) => (text: string) =>
      call.map((other, at) => (at === place ? changed(text) : other));
    if (!Array.isArray(argument)) return [put((text) => text)];
    return argument.flatMap((row: unknown, rowAt: number) =>
      (Array.isArray(row) ? row : [row]).map((_, columnAt) =>
        put(
          (text) =>
            argument.map((other: unknown, at: number) => {
              if (at !== rowAt) return other;
              return Array.isArray(other) ? other.map((cell, cellAt) => (cellAt === columnAt ? text : cell)) : text;
            }) as CellArgument,
        ),
      ),
    );
  });
}

/** Of the processor, so that other work on the machine does not count. */
const cpuMs = ({ user, system }: NodeJS.CpuUsage): number => (user + system) / 1000;

const isDeliberate = (thrown: unknown): boolean => thrown instanceof Error && thrown.name === 'Error';

export function longTexts(length: number): LongTexts {
  const took: { call: string; ms: number }[] = [];
  const failures: string[] = [];
  for (const { name, arguments: taken, examples } of catalogue) {
    const full = taken.map((_, at) => examples[0].call[at]);
    for (const [placeAt, put] of placesOf(full).entries()) {
      for (const piece of pieces) {
        const text = repeated(piece, length);
        // A prefix that makes it begin as a number does, and one as a formula does.
        for (const before of ['', '7.14 g ', 'KBr']) {
          const began = process.cpuUsage();
          try {
            callFunction(name, put(before + text));
          } catch (thrown) {
            if (!isDeliberate(thrown)) failures.push(`${name} ${placeAt} ${JSON.stringify(piece)}: ${String(thrown)}`);
          }
          took.push({
            call: `${name} place ${placeAt + 1}: ${JSON.stringify(before + piece)}…`,
            ms: cpuMs(process.cpuUsage(began)),
          });
        }
      }
    }
  }
  for (const { id, steps } of allActivities()) {
    for (const { id: step } of steps) {
      for (const text of [...pieces.map((piece) => repeated(piece, length)), unlike(length)]) {
        for (const before of ['', '7.14 g ', 'b', 'yes, KBr ']) {
          const began = process.cpuUsage();
          callFunction('CHECKTEAM', [
            [['formula', 'molarity']],
            [['KBr', '0.3']],
            [['activity', id]],
            [[''], [step]],
            [[''], [before + text]],
          ]);
          took.push({
            call: `CHECKTEAM ${id}, ${step}: ${JSON.stringify(before + text.slice(0, 12))}…`,
            ms: cpuMs(process.cpuUsage(began)),
          });
        }
      }
    }
  }
  took.sort((one, other) => other.ms - one.ms);
  return { calls: took.length, slowest: took.slice(0, 5), failures };
}
