import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, inject, it } from 'vitest';
import { builtFiles } from '../scripts/build.ts';
import { builtText } from './builtText.ts';

it('hands out what the build makes, and builds once', async () => {
  const files = await builtFiles();
  for (const path of ['dist/Code.js', 'dist/Sidebar.html'] as const) {
    expect(await builtText(path)).toBe(files[path]);
  }
  const place = join(inject('built'), 'Sidebar.html');
  writeFileSync(place, 'kept');
  try {
    expect(await builtText('dist/Sidebar.html')).toBe('kept');
  } finally {
    writeFileSync(place, files['dist/Sidebar.html'] ?? '');
  }
});
