import { describe, expect, it } from 'vitest';
import { sidebarHtml } from '../../scripts/build/sidebar.ts';

const html = await sidebarHtml();

describe('sidebarHtml', () => {
  it('is one page that fetches nothing and holds no template mark', () => {
    expect(html.startsWith('<!DOCTYPE html>\n')).toBe(true);
    expect(html).toContain('<base target="_top">');
    expect(html).not.toContain('<?');
    expect(html.match(/<\/script/gi)).toHaveLength(1);
    expect(html).not.toMatch(/<link|<img|<iframe|\bsrc=|@import|url\(/);
  });
  it('never makes markup out of text', () => {
    expect(html).not.toMatch(/innerHTML|outerHTML|insertAdjacentHTML|document\.write/);
  });
  it('stays below 900 kB: the desk, the judge, the arithmetic with units, the self-check and the guides', () => {
    expect(html.length).toBeLessThan(900_000);
  });
  it('comes out the same twice', async () => {
    expect(await sidebarHtml()).toBe(html);
  });
});
