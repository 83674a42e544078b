import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { BrowserContext } from 'playwright-core';

const path = createRequire(import.meta.url).resolve('inter-ui/variable/InterVariable.woff2');
let bytes: string | undefined;

/**
 * Draws every page and frame of a context in one font that comes with the tests, so that no width depends on the fonts
 * of the machine. It is handed over as bytes: a page that may load nothing has it too.
 */
export async function bringFont(context: BrowserContext): Promise<void> {
  bytes ??= readFileSync(path).toString('base64');
  await context.addInitScript((font) => {
    const family = 'Font of the tests';
    // Every page and frame runs this: letter by letter through a callback it would take longer than most pages do.
    const letters = atob(font);
    const file = new Uint8Array(letters.length);
    for (let index = 0; index < letters.length; index += 1) file[index] = letters.charCodeAt(index);
    const face = new FontFace(family, file.buffer, { weight: '100 900' });
    document.fonts.add(face);
    const sheet = new CSSStyleSheet();
    // Letters as wide as the font says, whatever the machine does to fit them to its screen.
    const style = `font-family: "${family}" !important; text-rendering: geometricPrecision !important`;
    sheet.replaceSync(`*, ::before, ::after, ::placeholder, ::marker { ${style}; }`);
    document.adoptedStyleSheets.push(sheet);
  }, bytes);
}
