import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A folder for what is built once for all tests of a run, from the sources as they are now; gone when the run ends. */
export function builtFolder() {
  const folder = mkdtempSync(join(tmpdir(), 'labrow-tests-'));
  process.on('exit', () => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
