// `npm start` ends here: serves the built script over the stand-in, with the workbook kept in a file that git ignores.
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { hasDisplay, openBrowser } from '../src/preview/server/openBrowser.ts';
import type { PreviewServer } from '../src/preview/server/server.ts';
import { type WorkbookFile, workbookFile, writeFailure } from '../src/preview/server/workbookFile.ts';
import type { StandIn } from '../src/preview/standin/openStandIn.ts';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const usualPort = 4390;
const minuteMs = 60_000;

function say(line: string): void {
  console.log(`labrow: ${line}`);
}
function stop(line: string): never {
  console.error(`\nlabrow: ${line}`);
  process.exit(1);
}

interface Wanted {
  /** A new workbook; the one so far is kept beside it. */
  readonly fresh: boolean;
  /** The new one holds no sample. */
  readonly empty: boolean;
  readonly port: number;
  readonly open: boolean;
  readonly path: string;
}
function readWanted(args: readonly string[]): Wanted {
  let values: { fresh?: boolean; empty?: boolean; port?: string; 'no-open'?: boolean; file?: string };
  try {
    ({ values } = parseArgs({
      args: [...args],
      options: {
        fresh: { type: 'boolean' },
        empty: { type: 'boolean' },
        port: { type: 'string' },
        'no-open': { type: 'boolean' },
        file: { type: 'string' },
      },
    }));
  } catch (error) {
    return stop(
      `${(error as Error).message.split('. ')[0]}. Known are --fresh, --empty, --port N, --no-open and --file PATH.`,
    );
  }
  const port = values.port === undefined ? usualPort : Number(values.port);
  if (!Number.isInteger(port) || port < 0 || port > 65535) {
    stop(`expected a port from 0 to 65535 after --port, received “${values.port}”.`);
  }
  const path = values.file === undefined ? join(root, '.preview', 'workbook.json') : resolve(values.file);
  const empty = values.empty === true;
  return { fresh: empty || values.fresh === true, empty, port, open: values['no-open'] !== true, path };
}

function readBuilt(name: string): string {
  const path = join(root, 'dist', name);
  if (!existsSync(path)) stop(`dist/${name} is missing. Run “npm run build”, then start again.`);
  return readFileSync(path, 'utf8');
}

/** The workbook as it was left, or a fresh one with the sample class. A file that cannot be read is kept, never overwritten. */
async function openWorkbook(file: WorkbookFile, { fresh, empty }: Wanted): Promise<StandIn> {
  const { openStandIn } = await import('../src/preview/standin/openStandIn.ts');
  const built = { code: readBuilt('Code.js'), sidebarHtml: readBuilt('Sidebar.html'), name: 'Labrow preview' };
  const shown = (path: string): string => relative(process.cwd(), path) || path;
  const saved = file.read();
  if (saved !== undefined && !fresh) {
    try {
      const host = openStandIn({ ...built, saved });
      const { length } = host.unreadCells;
      if (length > 0) {
        say(`${length} cells could not be read and hold as text what was kept of them: ${host.unreadCells.join(', ')}`);
      }
      return host;
    } catch (error) {
      const kept = file.keepAside();
      const reason = error instanceof Error ? error.message : String(error);
      say(`the kept workbook could not be read (${reason}). It is now ${shown(kept)}, and a fresh one is built.`);
    }
  } else if (saved !== undefined) {
    say(`the workbook so far is now ${shown(file.keepAside('before'))}.`);
  }
  const host = openStandIn(built);
  if (empty) {
    file.saveSoon(() => host.save());
    return host;
  }
  say('building the sample class …');
  const { buildSample } = await import('./buildSample.ts');
  buildSample(host, ({ done, total, label }) => {
    file.stillStarting();
    if (process.stdout.isTTY) process.stdout.write(`\r\u001b[Klabrow: ${done} of ${total}  ${label}`);
  });
  if (process.stdout.isTTY) process.stdout.write('\r\u001b[K');
  // The empty sheet that every new file begins with only stands in the way of trying things out.
  const blank = host.book.sheets.find((sheet) => sheet.cells.size === 0);
  if (blank && host.book.sheets.length > 1) host.book.removeSheet(blank);
  file.saveSoon(() => host.save());
  return host;
}

const wanted = readWanted(process.argv.slice(2));
let server: PreviewServer | undefined;
const file = workbookFile({
  path: wanted.path,
  onTrouble(trouble) {
    say(trouble ?? 'the workbook is saved again.');
    server?.setNotice(trouble && `${trouble} It is tried again every few seconds. Keep this window open until then.`);
    if (trouble === undefined && ending) finish(0);
  },
});
process.on('exit', () => file.release());

let ending = false;
function finish(code: number): void {
  const done = server?.close() ?? Promise.resolve();
  done.finally(() => process.exit(code));
}
/** Ends, but not with work that is nowhere else: that is said first, and only a second request ends all the same. */
function end(code: number): void {
  if (ending) process.exit(1);
  ending = true;
  if (file.saveNow() === undefined) {
    finish(code);
    return;
  }
  say(
    'it goes on until the workbook is saved, and ends then. Ctrl+C once more ends it now, without what is not saved.',
  );
}
process.on('SIGINT', () => end(0));
process.on('SIGTERM', () => end(0));
process.on('SIGHUP', () => end(0));
process.on('uncaughtException', (error) => {
  console.error(`\nlabrow: the preview stopped. ${error.stack ?? error.message}`);
  file.saveNow();
  finish(1);
});

async function claimFile(): Promise<void> {
  const held = await file
    .claim()
    .catch((error: unknown): never =>
      stop(
        `the workbook cannot be kept in ${dirname(wanted.path)}: ${writeFailure(error)}. Name another file with --file.`,
      ),
    );
  if (!held) return;
  const where = held.heldBy ? `, at ${held.heldBy}` : ', which is just starting';
  stop(
    `this workbook is open in another preview${where}. Use that one, or end it with Ctrl+C first. If there is none, delete ${held.path}.`,
  );
}
/** Engine, script and server are loaded only once nothing stands in the way: whoever mistyped an option hears so at once. */
async function start(): Promise<void> {
  await claimFile();
  const host = await openWorkbook(file, wanted);
  host.onChange(() => file.saveSoon(() => host.save()));
  setInterval(() => host.tick(), minuteMs).unref();
  const { startServer } = await import('../src/preview/server/server.ts');
  server = await startServer({ host, port: wanted.port, claim: file.claimId });
  file.noteAddress(server.url);
  if (wanted.port !== 0 && server.port !== wanted.port) {
    say(`port ${wanted.port} is taken, so a free one is used.`);
  }
  say(`teacher’s window  ${server.url}/`);
  say(`student’s window  ${server.url}/?seat=student`);
  say('everything stays on this computer. Ctrl+C ends it; the workbook is kept for next time.');
  if (wanted.open && hasDisplay()) openBrowser(`${server.url}/`);
}
start().catch((error: unknown) => {
  console.error(`\nlabrow: ${error instanceof Error ? error.message : String(error)}`);
  file.saveNow();
  finish(1);
});
