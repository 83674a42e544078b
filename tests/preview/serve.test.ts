import { type ChildProcess, spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { WorkbookView } from '../../src/preview/view.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
let folder = '';
const running = new Set<ChildProcess>();
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'labrow-serve-'));
});
afterEach(() => {
  for (const child of running) child.kill('SIGKILL');
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Run {
  readonly child: ChildProcess;
  readonly said: () => string;
  readonly ended: Promise<number | null>;
  url(): Promise<string>;
}
function serve(...args: readonly string[]): Run {
  const child = spawn(
    process.execPath,
    ['--import', 'tsx', 'scripts/serve.ts', '--no-open', '--file', join(folder, 'workbook.json'), ...args],
    { cwd: root, env: { ...process.env, CI: '1' } },
  );
  running.add(child);
  let said = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream?.on('data', (part: Buffer) => {
      said += part.toString('utf8');
    });
  }
  const ended = new Promise<number | null>((settle) => {
    // Closed, and not only exited: by then all that it said has come.
    child.on('close', (code) => {
      running.delete(child);
      settle(code);
    });
  });
  return {
    child,
    said: () => said,
    ended,
    async url() {
      await expect.poll(() => said, { timeout: 60_000, interval: 50 }).toMatch(/teacher’s window {2}http\S+\//);
      return /teacher’s window {2}(http\S+)\//.exec(said)?.[1] ?? '';
    },
  };
}
const workbook = async (url: string): Promise<WorkbookView> =>
  ((await (await fetch(`${url}/api/state?seat=student`)).json()) as { view: WorkbookView }).view;
const inputs = ({ sheets }: WorkbookView): string[] =>
  sheets.flatMap(({ cells }) => Object.values(cells).map(({ input }) => input));

describe('serve', () => {
  it('keeps an unreadable file aside and builds the sample, and keeps what was typed over a restart', {
    timeout: 180_000,
  }, async () => {
    writeFileSync(join(folder, 'workbook.json'), '{"form":1,"sheets":[');
    const first = serve('--port', '0');
    const url = await first.url();
    // The lines of the two windows may come one after the other.
    await expect.poll(first.said).toContain(`${url}/?seat=student`);
    expect(first.said()).toMatch(/could not be read .* a fresh one is built/);
    expect(readdirSync(folder).filter((name) => name.includes('unreadable'))).toHaveLength(1);
    const built = await workbook(url);
    expect(built.sheets.length).toBeGreaterThan(2);
    const sheet = built.sheets.at(-1);
    const edit = { sheet: sheet?.id, row: sheet?.rows, column: sheet?.columns, text: 'kept over a restart' };
    const answer = await fetch(`${url}/api/type`, {
      method: 'POST',
      headers: { origin: url, 'content-type': 'application/json' },
      body: JSON.stringify({ seat: 'teacher', since: 0, edits: [edit] }),
    });
    expect(answer.status).toBe(200);

    const second = serve('--port', '0');
    expect(await second.ended).toBe(1);
    expect(second.said()).toContain(`open in another preview, at ${url}`);

    first.child.kill('SIGINT');
    expect(await first.ended).toBe(0);

    const third = serve('--port', '0');
    const again = await workbook(await third.url());
    expect(third.said()).not.toContain('building');
    expect(again.sheets.map(({ name }) => name)).toEqual(built.sheets.map(({ name }) => name));
    expect(inputs(again)).toContain('kept over a restart');
    third.child.kill('SIGTERM');
    expect(await third.ended).toBe(0);

    // Without a sample, which the first has built.
    const fourth = serve('--port', '0', '--fresh', '--empty');
    expect(inputs(await workbook(await fourth.url()))).not.toContain('kept over a restart');
    expect(readdirSync(folder).filter((name) => name.includes('before'))).toHaveLength(1);
    fourth.child.kill('SIGINT');
    expect(await fourth.ended).toBe(0);
    expect(readdirSync(folder).filter((name) => /part|open/.test(name))).toEqual([]);
  });
  const type = (url: string, text: string): Promise<Response> =>
    fetch(`${url}/api/type`, {
      method: 'POST',
      headers: { origin: url, 'content-type': 'application/json' },
      body: JSON.stringify({ seat: 'teacher', since: 0, edits: [{ sheet: 0, row: 1, column: 1, text }] }),
    });
  it('starts without a sample, past the claim of a preview that was killed', { timeout: 90_000 }, async () => {
    const path = join(folder, 'empty.json');
    writeFileSync(`${path}.open`, JSON.stringify({ pid: process.pid, url: 'http://127.0.0.1:1', id: 'killed' }));
    const run = serve('--port', '0', '--empty', '--file', path);
    const { sheets } = await workbook(await run.url());
    expect(sheets.map(({ cells }) => Object.keys(cells))).toEqual([[]]);
    expect(run.said()).not.toContain('building');
    run.child.kill('SIGINT');
    expect(await run.ended).toBe(0);
  });
  /** What a window hears of. */
  async function heard(url: string): Promise<() => string> {
    const { body } = await fetch(`${url}/api/changes?seat=student&since=1`);
    let text = '';
    void (async () => {
      for await (const part of body as unknown as AsyncIterable<Uint8Array>) text += Buffer.from(part).toString('utf8');
    })().catch(() => undefined);
    return () => text;
  }
  it('tells every window while the workbook cannot be saved, does not end with work that is nowhere else, and ends by itself once it is saved', {
    timeout: 90_000,
  }, async () => {
    const path = join(folder, 'stuck.json');
    const run = serve('--port', '0', '--empty', '--file', path);
    const url = await run.url();
    // A folder in the place of the part that is written first: as good as a full disk, and for every user.
    const inTheWay = `${path}.${run.child.pid}.part`;
    const windows = await Promise.all([heard(url), heard(url)]);
    mkdirSync(join(inTheWay, 'full'), { recursive: true });
    expect((await type(url, 'kept after all')).status).toBe(200);
    for (const one of windows)
      await expect
        .poll(one)
        .toMatch(/event: notice\ndata: "The workbook is not saved: .*Keep this window open until then/);
    rmSync(inTheWay, { recursive: true });
    for (const one of windows) await expect.poll(one).toMatch(/not saved: [\s\S]*event: notice\ndata: null/);
    expect(run.said()).toContain('saved again');
    expect(readFileSync(path, 'utf8')).toContain('kept after all');
    mkdirSync(join(inTheWay, 'full'), { recursive: true });
    expect((await type(url, 'nowhere else')).status).toBe(200);
    await expect.poll(() => run.said().split('The workbook is not saved').length).toBeGreaterThan(2);
    run.child.kill('SIGINT');
    await expect.poll(run.said, { timeout: 30_000 }).toContain('Ctrl+C once more');
    expect(run.child.exitCode).toBeNull();
    rmSync(inTheWay, { recursive: true });
    expect(await run.ended).toBe(0);
    expect(readFileSync(path, 'utf8')).toContain('nowhere else');
  });
  it('says in one line where nothing can be kept', async () => {
    writeFileSync(join(folder, 'a file'), '');
    const run = serve('--empty', '--file', join(folder, 'a file', 'workbook.json'));
    expect(await run.ended).toBe(1);
    expect(run.said().trim().split('\n')).toHaveLength(1);
    expect(run.said()).toContain('Name another file with --file');
  });
  it.each([
    { args: ['--port', 'eighty'], says: 'expected a port from 0 to 65535 after --port, received “eighty”' },
    { args: ['--fancy'], says: 'Known are --fresh, --empty, --port N, --no-open and --file PATH' },
  ])('answers $args with one line', async ({ args, says }) => {
    const run = serve(...args);
    expect(await run.ended).toBe(1);
    expect(run.said().trim().split('\n')).toHaveLength(1);
    expect(run.said()).toContain(says);
  });
});
