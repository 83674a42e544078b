import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { WorkbookView } from '../../../src/preview/view.ts';

const root = fileURLToPath(new URL('../../..', import.meta.url));
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
    ['--import', 'tsx', 'src/preview/server/serve.ts', '--no-open', '--file', join(folder, 'workbook.json'), ...args],
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
  it('builds the sample, keeps what was typed over a restart, and keeps an unreadable file aside', {
    timeout: 180_000,
  }, async () => {
    const first = serve('--port', '0');
    const url = await first.url();
    // The lines of the two windows may come one after the other.
    await expect.poll(first.said).toContain(`${url}/?seat=student`);
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

    writeFileSync(join(folder, 'workbook.json'), '{"form":1,"sheets":[');
    const fourth = serve('--port', '0');
    await fourth.url();
    expect(fourth.said()).toMatch(/could not be read .* a fresh one is built/);
    expect(readdirSync(folder).filter((name) => name.includes('unreadable'))).toHaveLength(1);
    fourth.child.kill('SIGINT');
    expect(await fourth.ended).toBe(0);

    const fifth = serve('--port', '0', '--fresh');
    expect(inputs(await workbook(await fifth.url()))).not.toContain('kept over a restart');
    expect(readdirSync(folder).filter((name) => name.includes('before'))).toHaveLength(1);
    fifth.child.kill('SIGINT');
    expect(await fifth.ended).toBe(0);
    expect(readdirSync(folder).filter((name) => /part|open/.test(name))).toEqual([]);
  });
  it.each([
    { args: ['--port', 'eighty'], says: 'expected a port from 0 to 65535 after --port, received “eighty”' },
    { args: ['--fancy'], says: 'Known are --fresh, --port N, --no-open and --file PATH' },
  ])('answers $args with one line', async ({ args, says }) => {
    const run = serve(...args);
    expect(await run.ended).toBe(1);
    expect(run.said().trim().split('\n')).toHaveLength(1);
    expect(run.said()).toContain(says);
  });
});
