// `npm start`: installs on first use, builds, and serves the preview with the demo workbook.
import { prepare, runTypeScript, stop } from './prepare.mjs';

prepare();
if (runTypeScript('scripts/build.ts', ['--quiet']) !== 0) stop('the build failed; the lines above say where.');
process.exit(runTypeScript('scripts/serve.ts', process.argv.slice(2)));
