import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type Plugin } from 'esbuild';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

/** The sidebar as one HTML text: its script and styles inside it, nothing fetched from anywhere. Tests may swap modules. */
export async function sidebarHtml({ plugins = [] }: { readonly plugins?: Plugin[] } = {}): Promise<string> {
  const outcome = await build({
    plugins,
    entryPoints: { script: join(root, 'src/sidebar/main.ts'), styles: join(root, 'src/sidebar/styles.css') },
    bundle: true,
    format: 'iife',
    target: ['es2021', 'chrome109', 'firefox115', 'safari15.4'],
    // The host strips what looks like a comment (`//`, `/*`) inside template literals of a page's script.
    supported: { 'template-literal': false },
    charset: 'utf8',
    platform: 'browser',
    minify: true,
    legalComments: 'none',
    outdir: root,
    write: false,
    logLevel: 'silent',
  });
  const complaint = outcome.warnings[0];
  if (complaint)
    throw new Error(`esbuild warned about ${complaint.location?.file ?? 'the sidebar'}: ${complaint.text}`);
  const text = (ending: string) => outcome.outputFiles.find(({ path }) => path.endsWith(ending))?.text.trim() ?? '';
  const script = withoutMarks(text('.js'));
  const styles = text('.css');
  if (script === '' || styles === '') throw new Error('The sidebar was bundled without its script or its styles.');
  if (/<\/style/i.test(styles)) throw new Error('The sidebar’s styles hold “</style”, which would end them early.');
  return [
    '<!DOCTYPE html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    // The host shows its own title; this one names the page for whoever opens it alone or listens to it.
    '<title>Labrow</title>',
    '<base target="_top">',
    `<style>${styles}</style>`,
    '</head>',
    '<body>',
    `<script>${script}</script>`,
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

/** The host would read `<?` as a template mark and the browser `</script` as the end: both may only come in strings. */
function withoutMarks(script: string): string {
  const safe = script
    .replace(/<\?/g, '<\\x3f')
    .replace(/<\/(script)/gi, '<\\/$1')
    .replace(/<!--/g, '<\\!--');
  try {
    new Function(safe);
  } catch {
    throw new Error('The sidebar’s script holds “<?” or “</script” outside a text, where it cannot be escaped.');
  }
  return safe;
}
