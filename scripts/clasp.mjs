// `npm run clasp -- login`: what speaks with the host, in the version that is locked in scripts/push. It is half of all
// packages and only a push needs it, so it is installed when it is first asked for.
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { install, prepare, root, run } from './prepare.mjs';

/** Runs clasp in the project and returns its exit code. @param {readonly string[]} args */
export function clasp(args) {
  const folder = join(root, 'scripts/push');
  install(folder, 'what a push needs (once)');
  const program = join(folder, 'node_modules/@google/clasp/build/src/index.js');
  return run(process.execPath, [program, ...args]);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  prepare();
  process.exit(clasp(process.argv.slice(2)));
}
