import { readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const folder = join(dirname(fileURLToPath(import.meta.url)), '..', 'page');

/** Everything the browser gets, as text; `shim` is the script that stands before a panel's own HTML. */
export interface PageBundle {
  readonly html: string;
  readonly script: string;
  readonly style: string;
  readonly shim: string;
}

/** Bundles the page in memory. Nothing is written to disk, so nothing can be stale. */
export async function pageBundle(): Promise<PageBundle> {
  const settings = {
    bundle: true,
    write: false,
    format: 'iife',
    target: 'es2022',
    charset: 'utf8',
    logLevel: 'silent',
  } as const;
  const [html, page, style, shim] = await Promise.all([
    readFile(join(folder, 'index.html'), 'utf8'),
    build({ ...settings, entryPoints: [join(folder, 'main.ts')], sourcemap: 'inline' }),
    build({ ...settings, entryPoints: [join(folder, 'page.css')] }),
    build({ ...settings, entryPoints: [join(folder, 'bridge', 'shim.ts')], minify: true }),
  ]);
  const only = (name: string, files: readonly { readonly text: string }[]): string => {
    const [file] = files;
    if (!file || files.length !== 1)
      throw new Error(`Expected one bundled file for ${name}, received ${files.length}.`);
    return file.text;
  };
  return {
    html,
    script: only('the page', page.outputFiles),
    style: only('the style', style.outputFiles),
    shim: only('the bridge', shim.outputFiles),
  };
}
