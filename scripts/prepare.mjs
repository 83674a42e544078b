// Runs before anything is installed, so it uses only what Node brings.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const oldestNode = 20;

/** Ends the run with one line that says what to do. @param {string} line @returns {never} */
export function stop(line) {
  console.error(`\nlabrow: ${line}`);
  process.exit(1);
}

/** Runs a command in the project and returns its exit code. @param {string} command @param {string[]} args */
export function run(command, args) {
  const outcome = spawnSync(command, args, { cwd: root, stdio: 'inherit' });
  return outcome.status ?? 1;
}

/** Runs a script written in TypeScript. @param {string} script @param {string[]} args */
export function runTypeScript(script, args = []) {
  return run(process.execPath, ['--import', 'tsx', join(root, script), ...args]);
}

/** The npm that started us, or the one beside Node. @param {string[]} args @param {string} [folder] */
function npm(args, folder = root) {
  const npmScript = process.env.npm_execpath;
  const [command, before] = npmScript?.endsWith('.js')
    ? [process.execPath, [npmScript]]
    : [process.platform === 'win32' ? 'npm.cmd' : 'npm', []];
  return spawnSync(command, [...before, ...args], {
    cwd: folder,
    encoding: 'utf8',
    shell: command.endsWith('.cmd'),
    stdio: ['ignore', 'ignore', 'pipe'],
  });
}

// Without a network npm would try for minutes before it says so.
const briefly = ['--fetch-retries=1', '--fetch-retry-mintimeout=2000', '--fetch-retry-maxtimeout=5000'];

/** Checks Node and installs the locked packages when they are missing or out of date. */
export function prepare() {
  const major = Number(process.versions.node.split('.')[0]);
  if (major < oldestNode) {
    stop(
      `needs Node ${oldestNode} or later, and this is ${process.versions.node}. Install a newer Node and run it again.`,
    );
  }
  install(root, 'what it needs (once, half a minute or so)');
}

/**
 * Installs the locked packages of a folder when they are missing or out of date.
 * @param {string} folder @param {string} what
 */
export function install(folder, what) {
  const lock = createHash('sha256')
    .update(readFileSync(join(folder, 'package-lock.json')))
    .digest('hex');
  const stamp = join(folder, 'node_modules', '.labrow-lock');
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === lock) return;
  console.log(`labrow: installing ${what} …`);
  const outcome = npm(['ci', '--ignore-scripts', '--no-audit', '--no-fund', ...briefly], folder);
  if (outcome.error || outcome.status !== 0) {
    const said = outcome.stderr ?? String(outcome.error);
    const offline = /ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ETIMEDOUT|ENETUNREACH|network/i.test(said);
    stop(
      offline
        ? 'could not reach the package registry. Connect to the network and run it again; it is needed the first time only.'
        : `the packages could not be installed. npm said: ${
            said
              .trim()
              .split('\n')
              .find((line) => line.trim()) ?? 'nothing'
          }`,
    );
  }
  mkdirSync(dirname(stamp), { recursive: true });
  writeFileSync(stamp, lock);
}
