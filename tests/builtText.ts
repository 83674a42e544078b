import { existsSync, readFileSync } from 'node:fs';
import { inject } from 'vitest';
import { builtPlace, keepBuilt, type PushedFile } from '../scripts/build/keepBuilt.ts';

/**
 * A file as it would be pushed, from the sources as they are now. Under `npm test` all of it was built before the first
 * test; else the first file of tests that asks builds it, and the others of the same run read it.
 */
export async function builtText(
  path: PushedFile,
  folder = inject('built'),
  build = async () => (await import('../scripts/build.ts')).pushedTexts(),
): Promise<string> {
  const place = builtPlace(folder, path);
  if (!existsSync(place)) keepBuilt(folder, await build());
  return readFileSync(place, 'utf8');
}
