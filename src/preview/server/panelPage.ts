import { panelSandbox } from '../panelSandbox.ts';

/** A panel brings its own scripts and styles inline, as on the host, and reaches nothing outside. */
export const panelPolicy = [
  "default-src 'none'",
  "script-src 'unsafe-inline'",
  "style-src 'unsafe-inline'",
  'img-src data: blob:',
  'font-src data:',
  "form-action 'none'",
  "base-uri 'none'",
  "frame-ancestors 'self'",
  `sandbox ${panelSandbox}`,
].join('; ');

/**
 * The panel's own HTML, unchanged, behind the script that answers for the host.
 * The script goes after the doctype: before it, the browser would fall back to its quirks mode.
 */
export function panelPage(panel: { readonly html: string; readonly shim: string; readonly origin: string }): string {
  const doctype = /^\s*<!doctype[^>]*>/i.exec(panel.html)?.[0] ?? '<!DOCTYPE html>';
  const rest = panel.html.replace(/^\s*<!doctype[^>]*>/i, '');
  // A closing tag inside the script's text would end the script early.
  const script = panel.shim.replace(/<\/(script)/gi, '<\\/$1');
  return `${doctype}<script>window.labrowPreviewOrigin=${JSON.stringify(panel.origin)};${script}</script>${rest}`;
}
