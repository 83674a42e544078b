import { mkdirSync, renameSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';

export const pushedFiles = ['dist/Code.js', 'dist/Sidebar.html'] as const;
export type PushedFile = (typeof pushedFiles)[number];

/** Where a pushed file stands in a folder of built files. */
export const builtPlace = (folder: string, name: PushedFile): string => join(folder, basename(name));

/** Puts what would be pushed into a folder. Two that build at once write the same, and neither reads half of it. */
export function keepBuilt(folder: string, files: Readonly<Record<PushedFile, string>>): void {
  mkdirSync(folder, { recursive: true });
  for (const name of pushedFiles) {
    const own = `${builtPlace(folder, name)}.${process.pid}`;
    writeFileSync(own, files[name]);
    renameSync(own, builtPlace(folder, name));
  }
}
