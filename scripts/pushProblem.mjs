import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';

const config = '.clasp.json';
const howToBegin =
  'Run “npm run clasp -- login”, then “npm run clasp -- create-script --type sheets --title Labrow --rootDir dist”; ' +
  `for a script that exists write ${config} with {"scriptId": "…", "rootDir": "dist"}.`;

/**
 * Why the script must not be pushed from a project folder as it stands, with what to do; undefined where it may. What is
 * pushed takes the place of everything in the script project, so nothing but our own files may lie where it is read from.
 *
 * @param {string} root project folder
 * @param {readonly string[]} ours names of the files in `dist` that are pushed
 * @returns {string | undefined}
 */
export function pushProblem(root, ours) {
  const own = join(root, config);
  if (!existsSync(own)) {
    const above = claspAbove(root);
    return above === undefined
      ? `no script project is named yet. ${howToBegin}`
      : `${above} belongs to another script project, and stops clasp from making one in this folder. Move this folder out of there, or that file away. Then: ${howToBegin}`;
  }
  const said = sourceFolder(readFileSync(own, 'utf8'));
  if (said === undefined) return `${config} cannot be read. Delete it and begin again: ${howToBegin}`;
  if (resolve(root, said) !== join(root, 'dist')) {
    return `${config} sends the folder “${said}”, and only “dist” is to be sent. Write "rootDir": "dist" there.`;
  }
  const dist = join(root, 'dist');
  const others = existsSync(dist)
    ? readdirSync(dist).filter((name) => /\.(js|gs|ts|html|json)$/.test(name) && !ours.includes(name))
    : [];
  return others.length === 0
    ? undefined
    : `dist holds ${others.join(', ')}, which would be sent as well. Move it away; create-script may have fetched it.`;
}

/** The nearest file of clasp's in a folder above. @param {string} root @returns {string | undefined} */
function claspAbove(root) {
  for (let folder = dirname(root); ; folder = dirname(folder)) {
    const path = join(folder, config);
    if (existsSync(path)) return path;
    if (dirname(folder) === folder) return undefined;
  }
}

/** @param {string} text @returns {string | undefined} */
function sourceFolder(text) {
  try {
    // The file may hold comments.
    const { rootDir, srcDir } = JSON.parse(text.replace(/^\s*\/\/.*$/gm, ''));
    return String(srcDir || rootDir || '.');
  } catch {
    return undefined;
  }
}
