// Checks the types of every project in one process: what several of them read is read once, and each file is checked by
// the project that it belongs to, not again by all that import it. `npm run deep` checks those as well.
import { join, relative } from 'node:path';
import ts from 'typescript';
import { root } from './prepare.mjs';
import { projects } from './projects.mjs';

/** Files as read, by name and by all that decides how they are read. @type {Map<string, ts.SourceFile | undefined>} */
const read = new Map();

/** @param {string} folder */
function check(folder) {
  const path = join(root, folder, 'tsconfig.json');
  const { config, error } = ts.readConfigFile(path, ts.sys.readFile);
  const { options, fileNames, errors } = ts.parseJsonConfigFileContent(config, ts.sys, join(root, folder));
  const host = ts.createCompilerHost(options);
  const readFile = host.getSourceFile;
  host.getSourceFile = (name, how, ...rest) => {
    const key = [name, options.target, JSON.stringify(how)].join('\n');
    if (!read.has(key)) read.set(key, readFile(name, how, ...rest));
    return read.get(key);
  };
  const program = ts.createProgram({ rootNames: fileNames, options, host });
  const own = new Set(fileNames);
  const found = [
    ...(error ? [error] : []),
    ...errors,
    ...program.getOptionsDiagnostics(),
    ...program.getGlobalDiagnostics(),
    ...fileNames.flatMap((name) => {
      const file = program.getSourceFile(name);
      return file ? [...program.getSyntacticDiagnostics(file), ...program.getSemanticDiagnostics(file)] : [];
    }),
  ];
  const imported = program.getSourceFiles().map(({ fileName }) => fileName);
  return {
    found,
    own,
    imported: imported.filter((name) => /\.ts$/.test(name) && !/\/node_modules\/|\.d\.ts$/.test(name)),
  };
}

const checked = projects.map(check);
const found = checked.flatMap((one) => one.found);
const unchecked = new Set(
  checked.flatMap(({ imported }) => imported).filter((name) => !checked.some(({ own }) => own.has(name))),
);
const shown = { getCanonicalFileName: String, getCurrentDirectory: () => root, getNewLine: () => '\n' };
if (found.length > 0)
  console.log(ts.formatDiagnosticsWithColorAndContext(ts.sortAndDeduplicateDiagnostics(found), shown));
for (const name of unchecked)
  console.log(`${relative(root, name)} belongs to no project, so nothing checks its types.`);
const files = checked.reduce((sum, { own }) => sum + own.size, 0);
if (files === 0) console.log('No file was checked.');
process.exitCode = found.length > 0 || unchecked.size > 0 || files === 0 ? 1 : 0;
