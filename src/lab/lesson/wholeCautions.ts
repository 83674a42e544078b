import { cautionPieces } from './cautionPieces.ts';
import type { TeamHandling } from './cautionWords.ts';

/**
 * All cautions for what a team handles, in plain words without codes, sources or how sure they are. For each form, the
 * strongest first: signal word, what it can do, and each piece of advice once. What a class reads once, and a team that
 * works on paper. The last line defers to the safety data sheet and local rules.
 */
export function wholeCautions(handling: TeamHandling): string {
  const { maker, blocks, last } = cautionPieces(handling);
  const lines = blocks.flatMap(({ head, effects, advice }) => [head, ...effects, advice.join(' ')]);
  return [...maker, ...lines, last].filter((line) => line !== '').join('\n');
}
