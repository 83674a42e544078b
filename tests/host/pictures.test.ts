import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { drawnFrom, drawnFromFile } from '../../scripts/shots/drawnFrom.ts';
import { builtText } from '../builtText.ts';

const code = await builtText('dist/Code.js');

it('the pictures of the README show what is there now', { timeout: 600_000 }, () => {
  const then = JSON.parse(readFileSync(`scripts/screenshots/${drawnFromFile}`, 'utf8')) as Record<string, string>;
  const now = drawnFrom({ code, sidebarHtml: '<p>sidebar</p>' });
  const changed = [...new Set([...Object.keys(then), ...Object.keys(now)])].filter((part) => then[part] !== now[part]);
  expect(changed, `Run “npm run shots”, since these look different by now: ${changed.join(', ')}.`).toEqual([]);
});
