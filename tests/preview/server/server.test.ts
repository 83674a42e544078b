import { request } from 'node:http';
import { createServer } from 'node:net';
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type PageBundle, pageBundle } from '../../../src/preview/server/pageBundle.ts';
import { type PreviewServer, startServer } from '../../../src/preview/server/server.ts';
import type { ChangeView, WorkbookView } from '../../../src/preview/view.ts';
import { FakeHost } from '../fakeHost.ts';

let bundle: PageBundle;
let host: FakeHost;
let server: PreviewServer;
beforeAll(async () => {
  bundle = await pageBundle();
});
beforeEach(async () => {
  host = new FakeHost([{ name: 'Plan', cells: { '1,1': { text: 'Plan' } } }]);
  server = await startServer({ host, bundle });
  return () => server.close();
});

type Answer = {
  status: number;
  body: Record<string, unknown> & { message?: string };
  headers: Record<string, unknown>;
};
/** Node's own client, since fetch does not let a test set Host or Origin. */
function ask(
  path: string,
  options: { method?: string; headers?: Record<string, string>; body?: string } = {},
): Promise<Answer> {
  return new Promise((settle, fail) => {
    const { method = 'GET', headers = {}, body } = options;
    const asked = request(`${server.url}${path}`, { method, headers }, (response) => {
      let text = '';
      response.setEncoding('utf8');
      response.on('data', (part: string) => {
        text += part;
      });
      response.on('end', () => {
        const json = String(response.headers['content-type']).includes('json');
        settle({
          status: response.statusCode ?? 0,
          body: json ? JSON.parse(text) : { text },
          headers: response.headers,
        });
      });
    });
    asked.on('error', fail);
    asked.end(body);
  });
}
const post = (action: string, fields: object, headers: Record<string, string> = {}): Promise<Answer> =>
  ask(`/api/${action}`, {
    method: 'POST',
    headers: { origin: server.url, 'content-type': 'application/json', ...headers },
    body: JSON.stringify({ seat: 'teacher', since: 0, ...fields }),
  });
const edit = { sheet: 1, row: 2, column: 3, text: '0.400' };

describe('startServer', () => {
  it('answers on the loopback address with a page that may load nothing from elsewhere', async () => {
    const { status, headers, body } = await ask('/');
    expect(status).toBe(200);
    expect(server.url).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/);
    expect(headers['content-security-policy']).toContain("default-src 'none'");
    expect(headers['content-security-policy']).not.toMatch(/unsafe|https?:/);
    expect(String(body.text)).not.toMatch(/(src|href)="(https?:)?\/\//);
  });
  it('takes a free port where the wanted one is in use', async () => {
    const taken = createServer();
    await new Promise<void>((settle) => taken.listen(0, '127.0.0.1', settle));
    const port = (taken.address() as { port: number }).port;
    const other = await startServer({ host, bundle, port });
    expect(other.port).not.toBe(port);
    await other.close();
    await new Promise((settle) => taken.close(settle));
  });
  it('shows the workbook, menus and functions to its own page', async () => {
    host.menuLines = [{ title: 'Labrow', items: [null, { label: 'Open', run: 'open' }] }];
    expect((await ask('/api/state?seat=student')).body.menus).toEqual([]);
    const { body } = await ask('/api/state?seat=teacher');
    expect((body.view as WorkbookView).sheets[0]?.cells['1,1']?.text).toBe('Plan');
    expect(body.menus).toEqual(host.menuLines);
  });
  it('passes on what was typed and answers with what changed', async () => {
    const { status, body } = await post('type', { seat: 'student', since: 1, edits: [edit] });
    expect(status).toBe(200);
    expect(host.asked).toEqual([{ seat: 'student', what: 'type', args: [edit] }]);
    const { cells } = body.change as ChangeView;
    expect(cells).toEqual([{ sheet: 1, cells: { '2,3': { text: '0.400', input: '0.400' } } }]);
  });
  it('hands back what the host refused, with its reason', async () => {
    host.refuse = () => 'This cell is locked.';
    const { body } = await post('type', { edits: [edit] });
    expect(body.refused).toEqual([{ edit, reason: 'This cell is locked.' }]);
  });
  it('tells both seats of a change at once', async () => {
    const streams = await Promise.all(
      ['teacher', 'student'].map((seat) => fetch(`${server.url}/api/changes?seat=${seat}&since=1`)),
    );
    const heard = streams.map(async ({ body }) => {
      let text = '';
      for await (const part of body as unknown as AsyncIterable<Uint8Array>) {
        text += Buffer.from(part).toString('utf8');
        if (text.includes('0.400')) return true;
      }
      return false;
    });
    await post('type', { edits: [edit] });
    expect(await Promise.all(heard)).toEqual([true, true]);
  });
  it('tells a window that comes late what it missed', async () => {
    await post('type', { edits: [edit] });
    const { body } = await fetch(`${server.url}/api/changes?seat=teacher&since=1`);
    const reader = (body as ReadableStream<Uint8Array>).getReader();
    expect(Buffer.from((await reader.read()).value ?? []).toString('utf8')).toContain('0.400');
    await reader.cancel();
  });
  it('serves a panel behind the bridge, its HTML unchanged and cut off from everything else', async () => {
    const html = '<!DOCTYPE html><html><body><p id="x">£ µ</p><script>1</script></body></html>';
    host.panel = { title: 'The class now', html, kind: 'sidebar' };
    const { body } = await post('choose', { run: 'open' });
    const panel = body.panel as { address: string; title: string };
    const page = await ask(panel.address);
    const text = String(page.body.text);
    expect(text.startsWith('<!DOCTYPE html><script>')).toBe(true);
    expect(text.endsWith(html.replace('<!DOCTYPE html>', ''))).toBe(true);
    expect(page.headers['content-security-policy']).toMatch(/default-src 'none'.*sandbox allow-scripts/);
    expect(page.headers['content-security-policy']).not.toContain('allow-same-origin');
  });
  it('runs a call of a panel and passes on what it throws in one line', async () => {
    host.answer = (name, args) => {
      if (name === 'fails') throw new Error('Expected a class, received “9”.');
      return { name, args };
    };
    expect((await post('run', { name: 'readClass', args: ['a'] })).body.value).toEqual({
      name: 'readClass',
      args: ['a'],
    });
    const { status, body } = await post('run', { name: 'fails', args: [] });
    expect([status, body.message]).toEqual([422, 'Expected a class, received “9”.']);
  });
  it('does rows and undo', async () => {
    await post('insert-rows', { sheet: 1, row: 2, count: 3 });
    await post('delete-rows', { sheet: 1, row: 4, count: 1 });
    await post('sort-rows', {
      sheet: 1,
      area: { row: 2, column: 1, rows: 3, columns: 2 },
      column: 2,
      ascending: false,
    });
    expect(host.asked.map(({ what, args }) => [what, ...args])).toEqual([
      ['insertRows', 1, 2, 3],
      ['deleteRows', 1, 4, 1],
      ['sortRows', 1, { row: 2, column: 1, rows: 3, columns: 2 }, 2, false, 'teacher'],
    ]);
    expect((await post('undo', {})).body.done).toBe(true);
    expect((await post('redo', {})).body.done).toBe(true);
  });

  it('hands the host each window by a name of its own', async () => {
    await post('insert-rows', { sheet: 1, row: 2, count: 3, window: 'one' });
    await post('sort-rows', { sheet: 1, area: { row: 2, column: 1, rows: 3, columns: 2 }, column: 2, window: 'two' });
    expect(host.asked.at(-1)?.args.at(-1)).toBe('teacher two');
    for (const window of ['', 'x'.repeat(65), 7]) expect((await post('undo', { window })).status).toBe(400);
  });
  it('says whether it is the preview that holds a workbook', async () => {
    expect((await ask('/api/alive')).body).toEqual({ claim: null });
    const other = await startServer({ host, bundle, claim: 'mine' });
    expect(await (await fetch(`${other.url}/api/alive`)).json()).toEqual({ claim: 'mine' });
    await other.close();
  });

  describe('with many windows', () => {
    /** One window: what it was sent, and whether it reads. */
    interface Heard {
      readonly versions: () => number[];
      readonly reads: (on: boolean) => void;
      readonly end: () => void;
    }
    function window(seat: string): Promise<Heard> {
      return new Promise((settle, fail) => {
        const asked = request(`${server.url}/api/changes?seat=${seat}&since=1`, (response) => {
          const versions: number[] = [];
          // Of each line its beginning is enough: kept whole, megabytes would be searched again and again.
          let line = '';
          response.setEncoding('utf8');
          response.on('data', (part: string) => {
            for (const [index, piece] of part.split('\n').entries()) {
              if (index > 0) {
                const version = /^data: \{"version":(\d+)/.exec(line)?.[1];
                if (version) versions.push(Number(version));
                line = '';
              }
              line = (line + piece.slice(0, 60)).slice(0, 60);
            }
          });
          settle({
            versions: () => versions,
            reads: (on) => (on ? response.resume() : response.pause()),
            end: () => asked.destroy(),
          });
        });
        asked.on('error', fail);
        asked.end();
      });
    }
    it('works out a change once for a seat and version', async () => {
      const windows = await Promise.all(
        Array.from({ length: 12 }, (_, index) => window(index < 8 ? 'student' : 'teacher')),
      );
      const asked: string[] = [];
      const { changeSince } = host;
      host.changeSince = (seat, version) => {
        asked.push(`${seat} ${version}`);
        return changeSince.call(host, seat, version);
      };
      const { body } = await post('type', { edits: [edit], since: 1 });
      expect((body.change as ChangeView).version).toBe(2);
      for (const one of windows) await expect.poll(() => one.versions().at(-1)).toBe(2);
      await post('type', { edits: [edit], since: 2 });
      for (const one of windows) await expect.poll(() => one.versions().at(-1)).toBe(3);
      expect(asked.sort()).toEqual(['student 1', 'student 2', 'teacher 1', 'teacher 2']);
      for (const one of windows) one.end();
    });
    it('lets one that is behind skip to the newest', async () => {
      const [slow, quick] = await Promise.all([window('student'), window('student')]);
      slow.reads(false);
      const changes = 40;
      for (let count = 0; count < changes; count += 1) {
        host.set(1, 5, 5, { text: `${count} ${'x'.repeat(1_000_000)}` });
        await expect.poll(() => quick.versions().at(-1)).toBe(count + 2);
      }
      slow.reads(true);
      await expect.poll(() => slow.versions().at(-1), { timeout: 10_000 }).toBe(changes + 1);
      expect(slow.versions().length).toBeLessThan(changes / 2);
      expect(quick.versions()).toHaveLength(changes + 1);
      for (const one of [slow, quick]) one.end();
    });
  });

  describe('refuses', () => {
    it('a name that was pointed at this address', async () => {
      for (const path of ['/', '/api/state?seat=teacher', '/page.js']) {
        expect((await ask(path, { headers: { host: 'elsewhere.example' } })).status).toBe(403);
      }
    });
    it.each([
      { what: 'another site', headers: { origin: 'https://elsewhere.example' } },
      { what: 'a page without an origin', headers: { origin: 'null' } },
      { what: 'another port of this machine', headers: { origin: 'http://127.0.0.1:1' } },
      { what: 'a cross-site request', headers: { 'sec-fetch-site': 'cross-site' } },
    ])('changes from $what', async ({ headers }) => {
      expect((await post('type', { edits: [edit] }, headers)).status).toBe(403);
      expect(host.asked).toEqual([]);
    });
    it('changes that name no origin', async () => {
      const answer = await ask('/api/undo', {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: '{}',
      });
      expect(answer.status).toBe(403);
    });
    it('what needs consent from a student’s window', async () => {
      expect((await post('choose', { seat: 'student', run: 'openSidebar' })).status).toBe(403);
      expect((await post('run', { seat: 'student', name: 'startSample', args: [] })).status).toBe(403);
      expect(host.asked).toEqual([]);
    });
    it('a form’s own content type', async () => {
      expect((await post('type', { edits: [edit] }, { 'content-type': 'text/plain' })).status).toBe(415);
    });
    it('a body over the limit, before it is read', async () => {
      const answer = await post('type', { edits: [{ ...edit, text: 'x'.repeat(5 * 1024 * 1024) }] }).catch(
        () => undefined,
      );
      // The refusal may cut the connection while the client is still sending.
      if (answer) expect(answer.status).toBe(413);
      expect(host.asked).toEqual([]);
    });
    it('a body over the limit that does not give its length', async () => {
      const answer = await ask('/api/type', {
        method: 'POST',
        headers: { origin: server.url, 'content-type': 'application/json', 'transfer-encoding': 'chunked' },
        body: 'x'.repeat(5 * 1024 * 1024),
      }).catch(() => undefined);
      if (answer) expect(answer.status).toBe(413);
      expect((await ask('/')).status).toBe(200);
    });
    it.each([
      { action: 'type', fields: { edits: 'B5' }, says: 'Expected edits to be a list, received "B5".' },
      {
        action: 'type',
        fields: { edits: [{ ...edit, row: 0 }] },
        says: 'Expected row to be a whole number of at least 1, received 0.',
      },
      { action: 'type', fields: { edits: [{ ...edit, text: 5 }] }, says: 'Expected text to be text, received 5.' },
      {
        action: 'undo',
        fields: { seat: 'visitor' },
        says: 'Expected seat to be teacher or student, received "visitor".',
      },
      { action: 'run', fields: { args: [] }, says: 'Expected name to be text, received nothing.' },
    ])('$action with $fields in one line', async ({ action, fields, says }) => {
      const { status, body } = await post(action, fields);
      expect([status, body.message]).toEqual([400, says]);
    });
    it('what is no JSON, what is not there and other methods', async () => {
      const headers = { origin: server.url, 'content-type': 'application/json' };
      expect((await ask('/api/type', { method: 'POST', headers, body: '{"edits' })).status).toBe(400);
      expect((await post('constructor', {})).status).toBe(404);
      expect((await ask('/panel/unknown')).status).toBe(404);
      expect((await ask('/../package.json')).status).toBe(404);
      expect((await ask('/', { method: 'PUT' })).status).toBe(405);
    });
  });
});
