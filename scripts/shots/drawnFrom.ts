import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { workFor } from '../../src/desk/acts.ts';
import { runWork } from '../../src/desk/runWork.ts';
import { texts } from '../../src/sidebar/texts.ts';
import { layoutVersion } from '../../src/workbook/layout.ts';
import { sampleAtWork, shown } from './sampleAtWork.ts';

/** Stands beside the pictures: what they were drawn from. */
export const drawnFromFile = 'drawnFrom.json';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

const sum = (value: unknown): string =>
  createHash('sha256')
    .update(typeof value === 'string' ? value : JSON.stringify(value))
    .digest('hex')
    .slice(0, 16);

/** Every style sheet and page of a room, in the order of their names. */
const stylesOf = (folder: string): string =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(css|html)$/.test(name))
    .sort()
    .map((name) => readFileSync(join(root, folder, name), 'utf8'))
    .join('\n');

/**
 * What the pictures of the README are drawn from, part by part, each as a sum: the same on every machine and in every
 * font. Two sums that differ mean that a picture may show what is no longer so.
 */
export function drawnFrom(files: { readonly code: string; readonly sidebarHtml: string }): Record<string, string> {
  const host = sampleAtWork({ ...files, clock: () => new Date('2026-03-02T10:00:00Z') });
  const { sheets } = host.view('student');
  const classNow = runWork(workFor({ book: undefined }, 'readClass', [shown.className]), ({ call, wish }) =>
    host.run('teacher', call, wish === undefined ? [layoutVersion] : [layoutVersion, wish]),
  );
  if (!classNow.ok) throw new Error(classNow.problem.message);
  const sheet = sheets.find(({ name }) => name === shown.className);
  if (sheet === undefined) throw new Error(`The sample has no sheet ${shown.className}.`);
  const { id: _, ...drawn } = sheet;
  return {
    // The time of day beside a check is that of the machine's place, and is another in every picture.
    'the class sheet': sum(JSON.stringify(drawn).replace(/"\d\d:\d\d"/g, '"time"')),
    'names of sheets': sum(sheets.map(({ name }) => name)),
    'the class in the sidebar': sum([classNow.value.teams, texts.moments, texts.views, texts.classNow]),
    'style of the preview': sum(stylesOf('src/preview/page')),
    'style of the sidebar': sum(stylesOf('src/sidebar')),
  };
}
