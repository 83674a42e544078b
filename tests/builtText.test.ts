import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { builtText } from './builtText.ts';

const pushed = ['dist/Code.js', 'dist/Sidebar.html'] as const;
let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'labrow-built-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

it('hands out what the build makes, and builds once', async () => {
  // Nothing stands there yet, so it is built here.
  const files = new Map<string, string>();
  for (const path of pushed) files.set(path, await builtText(path, folder));
  for (const path of pushed) expect(await builtText(path)).toBe(files.get(path));
  writeFileSync(join(folder, 'Sidebar.html'), 'kept');
  expect(await builtText('dist/Sidebar.html', folder)).toBe('kept');

  // As `npm test` has built, before its first test.
  const ofRun = process.env.LABROW_BUILT ?? folder;
  if (ofRun === folder) {
    const { status, stderr } = spawnSync(process.execPath, ['--import', 'tsx', 'scripts/buildForTests.ts', folder]);
    expect([status, stderr.toString()]).toEqual([0, '']);
  }
  expect(readdirSync(ofRun).sort()).toEqual(['Code.js', 'Sidebar.html']);
  for (const path of pushed) expect(await builtText(path, ofRun)).toBe(files.get(path));
});
