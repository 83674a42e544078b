import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Folder of this one run for what `builtText` has built. */
    built: string;
  }
}

/**
 * Gives a run of the tests one folder, empty at the start and gone at the end, so that nothing in it can be stale. The
 * runs of one `npm test` share the folder that it has made in the same way.
 */
export default function globalSetup(project: TestProject): () => void {
  const shared = process.env.LABROW_BUILT;
  const folder = shared ?? mkdtempSync(join(tmpdir(), 'labrow-tests-'));
  project.provide('built', folder);
  if (shared !== undefined) return () => {};
  return () => rmSync(folder, { recursive: true, force: true });
}
