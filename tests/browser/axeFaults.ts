import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

interface Axe {
  run(
    where: Document,
    how: unknown,
  ): Promise<{ violations: { id: string; nodes: { html: string; failureSummary: string }[] }[] }>;
}

/** What axe finds wrong in a page, with where: by rules of these tags, or by all that it has for everybody. */
export async function axeFaults(page: Page, runOnly?: readonly string[]): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe);
  return page.evaluate(async (tags) => {
    const { axe } = window as unknown as { axe: Axe };
    const { violations } = await axe.run(document, {
      ...(tags === undefined ? {} : { runOnly: tags }),
      // Of what is in order no list is drawn up. Of media the length is looked up; no rule in use asks for style sheets.
      preload: { assets: ['media'] },
      resultTypes: ['violations'],
    });
    return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html} ${node.failureSummary}`));
  }, runOnly);
}
