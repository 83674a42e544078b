// `tsx scripts/bench/windows.ts [windows] [seconds] [entries a second]`: how long entries wait while many windows type at
// once, each as the page does: it knows what its stream has told it. Each minute a line says what memory is in use; under
// `node --expose-gc --import tsx` also what of it is left once all that is forgotten has gone.
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import { startServer } from '../../src/preview/server/server.ts';
import { openStandIn } from '../../src/preview/standin/openStandIn.ts';
import { buildSample } from '../buildSample.ts';
import { stop } from '../prepare.mjs';

const dist = join(dirname(fileURLToPath(import.meta.url)), '..', '..', 'dist');
const built = (name: string): string =>
  existsSync(join(dist, name))
    ? readFileSync(join(dist, name), 'utf8')
    : stop(`dist/${name} is missing. Run “npm run build” first.`);

const [windows = 30, seconds = 30, rate = 1] = process.argv.slice(2).map(Number);
const host = openStandIn({ code: built('Code.js'), sidebarHtml: built('Sidebar.html') });
buildSample(host, () => {});
const server = await startServer({ host });

const { version } = host.view('student');

/** Cells that take an entry: two left of where the results of a check begin, unit between, and free to type in. */
const entries = host.view('student').sheets.flatMap(({ id, cells }) => {
  const checks = new Map<number, number>();
  for (const [key, { spilled }] of Object.entries(cells)) {
    const [row = 0, column = 0] = key.split(',').map(Number);
    if (spilled) checks.set(row, Math.min(column, checks.get(row) ?? column));
  }
  return [...checks].flatMap(([row, check]) =>
    check > 2 && !cells[`${row},${check - 2}`]?.guarded ? [{ sheet: id, row, column: check - 2 }] : [],
  );
});
if (entries.length < windows) stop(`the sample has ${entries.length} cells to type in, for ${windows} windows.`);

/** Windows in a thread of their own, so that waiting for them does not hold up the server that is measured. */
const typing = `
const { parentPort, workerData } = require('node:worker_threads');
const { url, windows, seconds, rate, version, entries } = workerData;
const taken = [];
let lost = 0;
async function oneWindow(index) {
  const stream = await fetch(url + '/api/changes?seat=student&since=' + version);
  let since = version;
  const told = (at) => { since = Math.max(since, at); };
  (async () => {
    // Of each line its beginning is enough.
    let line = '';
    for await (const part of stream.body)
      for (const [place, piece] of Buffer.from(part).toString('latin1').split('\\n').entries()) {
        if (place > 0) {
          const found = /^data: \\{"version":(\\d+)/.exec(line);
          if (found) told(Number(found[1]));
          line = '';
        }
        line = (line + piece.slice(0, 60)).slice(0, 60);
      }
  })().catch(() => {});
  const entry = entries[Math.floor((index * entries.length) / windows)];
  const begin = Date.now() + (index * 1000) / windows / rate;
  for (let count = 0; count < seconds * rate; count += 1) {
    const due = begin + (count * 1000) / rate;
    await new Promise((settle) => setTimeout(settle, Math.max(0, due - Date.now())));
    const response = await fetch(url + '/api/type', {
      method: 'POST',
      headers: { origin: url, 'content-type': 'application/json' },
      body: JSON.stringify({ seat: 'student', window: 'w' + index, since, edits: [{ ...entry, text: String(index + count / 100) }] }),
    });
    const { change, refused } = await response.json();
    if (!response.ok || refused.length > 0) lost += 1;
    else told(change.version);
    taken.push(Date.now() - due);
  }
}
Promise.all(Array.from({ length: windows }, (_, index) => oneWindow(index))).then(() => parentPort.postMessage({ taken, lost }));
`;
const megabytes = (bytes: number): string => `${Math.round(bytes / 2 ** 20)} MB`;
let minutes = 0;
const memory = (): void => {
  // Node has it only where it was asked for.
  const collect = (globalThis as { readonly gc?: () => void }).gc;
  collect?.();
  const { rss, heapUsed } = process.memoryUsage();
  console.log(
    `minute ${minutes}: ${megabytes(rss)} resident, heap ${megabytes(heapUsed)}${collect ? ' after collecting' : ''}`,
  );
  minutes += 1;
};
memory();
const everyMinute = setInterval(memory, 60_000);
const cpuBefore = process.cpuUsage();
const worker = new Worker(typing, {
  eval: true,
  workerData: { url: server.url, windows, seconds, rate, version, entries },
});
worker.on('message', async ({ taken, lost }: { taken: number[]; lost: number }) => {
  const { user, system } = process.cpuUsage(cpuBefore);
  const sorted = taken.sort((one, other) => one - other);
  const at = (share: number): number => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
  console.log(
    `${windows} windows, ${rate} entries a second each, ${seconds} s: ${sorted.length} entries, ${lost} not taken. ` +
      `From the moment it was due to its answer: p50 ${Math.round(at(0.5))} ms, p95 ${Math.round(at(0.95))} ms, longest ${Math.round(at(1))} ms. ` +
      `CPU ${((user + system) / 1000 / sorted.length).toFixed(1)} ms an entry, windows included.`,
  );
  clearInterval(everyMinute);
  await worker.terminate();
  await server.close();
});
