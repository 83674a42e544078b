import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { inject } from 'vitest';

type Pushed = 'dist/Code.js' | 'dist/Sidebar.html';

/**
 * A file as it would be pushed, from the sources as they are now. The first file of tests that asks builds both; the
 * others of the same run read them.
 */
export async function builtText(path: Pushed): Promise<string> {
  const place = (name: Pushed) => join(inject('built'), basename(name));
  if (!existsSync(place(path))) {
    const { builtFiles } = await import('../scripts/build.ts');
    const files = await builtFiles();
    for (const name of ['dist/Code.js', 'dist/Sidebar.html'] as const) {
      // Two that build at once write the same, and neither reads half of it.
      const own = `${place(name)}.${process.pid}`;
      writeFileSync(own, files[name] ?? '');
      renameSync(own, place(name));
    }
  }
  return readFileSync(place(path), 'utf8');
}
