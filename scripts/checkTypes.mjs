// Checks the types of every project, each with all that it imports, with the compiler that was written anew for speed; the
// one before it is here for the tool that checks imports between rooms (see DEVELOPERS.md).
import { join } from 'node:path';
import { root, run } from './prepare.mjs';
import { projects } from './projects.mjs';

const tsc = join(root, 'node_modules/typescript-7/bin/tsc');
const broken = projects.filter((project) => run(process.execPath, [tsc, '-p', project, '--pretty']) !== 0);
process.exitCode = broken.length === 0 ? 0 : 1;
