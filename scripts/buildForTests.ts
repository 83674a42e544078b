// Builds what would be pushed into a folder that a run of tests has made for it, so that its processes need not each.

import { keepBuilt } from './build/keepBuilt.ts';
import { pushedTexts } from './build.ts';

const [folder] = process.argv.slice(2);
if (folder === undefined) throw new Error('Expected the folder to build into, received none.');
keepBuilt(folder, await pushedTexts());
