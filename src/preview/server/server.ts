import { randomUUID } from 'node:crypto';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { PanelView, PreviewHost, Seat } from '../view.ts';
import { type PageBundle, pageBundle } from './pageBundle.ts';
import { panelPage, panelPolicy } from './panelPage.ts';
import {
  BadRequest,
  readArea,
  readEdits,
  readFields,
  readList,
  readSeat,
  readText,
  readWhole,
  readWindow,
} from './requests.ts';
import { sharedChanges } from './sharedChanges.ts';

export interface PreviewServerOptions {
  readonly host: PreviewHost;
  /** Wanted port; a free one is taken where it is in use or not given. */
  readonly port?: number;
  /** The page, where several servers share one bundle. */
  readonly bundle?: PageBundle;
  /** Answered to whoever asks whether this preview is the one that holds a workbook's file. */
  readonly claim?: string;
}
export interface PreviewServer {
  /** Address of the teacher's window, such as `http://127.0.0.1:4317`. */
  readonly url: string;
  readonly port: number;
  /** Shows one line in every window until it is taken away again. */
  setNotice(notice: string | undefined): void;
  close(): Promise<void>;
}

/** A panel as the browser sees it: where its frame is read from. */
interface PanelAddress {
  readonly address: string;
  readonly title: string;
  readonly kind: PanelView['kind'];
  readonly width: number | null;
  readonly height: number | null;
}

/** A window that hears of changes, and the version that it was told last. */
interface Listener {
  readonly seat: Seat;
  version: number;
  readonly response: ServerResponse;
}
type Fields = Readonly<Record<string, unknown>>;

const address = '127.0.0.1';
const largestBody = 4 * 1024 * 1024;
const panelsKept = 12;
const pagePolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data:",
  "connect-src 'self'",
  "frame-src 'self'",
  "form-action 'none'",
  "base-uri 'none'",
  "frame-ancestors 'none'",
].join('; ');
/** On the host the first menu click asks for consent; students of a shared file work without giving any. */
const needsConsent = 'Menus and the sidebar ask for consent, which students do not give. Use the teacher’s window.';
const emblem =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 16 16"><path d="M5 1h6v11a3 3 0 0 1-6 0z" fill="#ddf1f3" stroke="#0b5c6b" stroke-width="1.5"/><path d="M5 4h3M5 7h4M5 10h3" stroke="#0b5c6b"/></svg>';

async function readBody(request: IncomingMessage): Promise<string> {
  const tooLarge = new BadRequest(
    413,
    `Expected at most ${largestBody / 1024 / 1024} MB in one go. Paste fewer rows at a time.`,
  );
  if (Number(request.headers['content-length'] ?? 0) > largestBody) throw tooLarge;
  const parts: Buffer[] = [];
  let length = 0;
  for await (const part of request as AsyncIterable<Buffer>) {
    length += part.length;
    if (length > largestBody) throw tooLarge;
    parts.push(part);
  }
  return Buffer.concat(parts).toString('utf8');
}

/** Takes the wanted port, or any free one where that is in use. */
function listen(server: ReturnType<typeof createServer>, wanted: number): Promise<number> {
  return new Promise((settle, fail) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      if (wanted !== 0 && (error.code === 'EADDRINUSE' || error.code === 'EACCES')) settle(listen(server, 0));
      else fail(error);
    });
    server.listen(wanted, address, () => {
      server.removeAllListeners('error');
      settle((server.address() as AddressInfo).port);
    });
  });
}

/**
 * Serves the grid, its changes and the panels of one host on the loopback address only.
 *
 * Every request must name this address in its Host header (a page elsewhere that points its own name here is refused),
 * and every request that changes something must come from this very page by its Origin header.
 */
export async function startServer(options: PreviewServerOptions): Promise<PreviewServer> {
  const { host } = options;
  const bundle = options.bundle ?? (await pageBundle());
  const panels = new Map<string, string>();
  const listeners = new Set<Listener>();
  const changes = sharedChanges(host);
  let notice: string | undefined;
  let origins: readonly string[] = [];

  function panelAddress(panel: PanelView | null | undefined): PanelAddress | null {
    if (!panel) return null;
    const id = randomUUID();
    panels.set(id, panel.html);
    for (const old of panels.keys()) {
      if (panels.size <= panelsKept) break;
      panels.delete(old);
    }
    const { title, kind, width = null, height = null } = panel;
    return { address: `/panel/${id}`, title, kind, width, height };
  }

  function sendChange(listener: Listener): void {
    // A window that is behind is sent nothing more until it has read what it was sent; then it skips to the newest.
    if (listener.response.writableNeedDrain) return;
    const { version, text } = changes.since(listener.seat, listener.version);
    listener.version = version;
    listener.response.write(`data: ${text}\n\n`);
  }
  const noticeEvent = (): string => `event: notice\ndata: ${JSON.stringify(notice ?? null)}\n\n`;
  let waiting = false;
  const stopListening = host.onChange(() => {
    changes.renew();
    // One edit may report several changes; the browser gets them as one.
    if (waiting) return;
    waiting = true;
    setImmediate(() => {
      waiting = false;
      for (const listener of listeners) sendChange(listener);
    });
  });
  // Keeps idle streams open, and finds those whose window has gone.
  const pulse = setInterval(() => {
    for (const { response } of listeners) response.write(': still here\n\n');
  }, 20_000);
  pulse.unref();

  const rows = ({ sheet, row, count }: Fields): [number, number, number] => [
    readWhole('sheet', sheet, 0),
    readWhole('row', row, 1),
    readWhole('count', count, 1),
  ];
  /** A script asks which sheet is active: the one that its window has in front. */
  const takeFront = (seat: Seat, sheet: unknown): void => {
    if (sheet !== undefined) host.front?.(seat, readWhole('sheet', sheet, 0));
  };
  const actions: Readonly<Record<string, (fields: Fields, seat: Seat, window: string) => object>> = {
    type: ({ edits }, seat, window) => host.type(seat, readEdits(edits), window),
    undo: (_fields, seat, window) => host.undo(seat, window),
    redo: (_fields, seat, window) => host.redo(seat, window),
    'insert-rows': (fields, seat, window) => {
      host.insertRows(seat, ...rows(fields), window);
      return {};
    },
    'delete-rows': (fields, seat, window) => {
      host.deleteRows(seat, ...rows(fields), window);
      return {};
    },
    'sort-rows': ({ sheet, area, column, ascending }, seat, window) => {
      host.sortRows(
        seat,
        readWhole('sheet', sheet, 0),
        readArea(area),
        readWhole('column', column, 1),
        ascending !== false,
        window,
      );
      return {};
    },
    choose: ({ run, sheet }, seat) => {
      takeFront(seat, sheet);
      return { panel: panelAddress(host.choose(seat, readText('run', run))) };
    },
    run: ({ name, args, sheet }, seat) => {
      takeFront(seat, sheet);
      const value = host.run(seat, readText('name', name), readList('args', args)) ?? null;
      return { value, panel: panelAddress(host.takePanel?.(seat)) };
    },
  };

  async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const at = new URL(request.url ?? '/', origins[0]);
    const send = (type: string, text: string, headers: Readonly<Record<string, string>> = {}): void => {
      response.writeHead(200, { 'content-type': `${type}; charset=utf-8`, ...headers });
      response.end(request.method === 'HEAD' ? undefined : text);
    };
    const json = (value: object): void => send('application/json', JSON.stringify(value));

    if (!origins.includes(`http://${request.headers.host ?? ''}`)) {
      throw new BadRequest(403, `This preview answers at ${origins[0]} only.`);
    }
    const fetchedFrom = request.headers['sec-fetch-site'];
    const own = fetchedFrom === undefined || fetchedFrom === 'same-origin' || fetchedFrom === 'none';

    if (request.method === 'POST') {
      if (!own || !origins.includes(request.headers.origin ?? '')) {
        throw new BadRequest(403, 'Changes are taken from the preview’s own page only.');
      }
      if (!/^application\/json\b/i.test(request.headers['content-type'] ?? '')) {
        throw new BadRequest(
          415,
          `Expected application/json, received ${request.headers['content-type'] ?? 'nothing'}.`,
        );
      }
      const name = at.pathname.replace(/^\/api\//, '');
      const action = at.pathname.startsWith('/api/') && Object.hasOwn(actions, name) ? actions[name] : undefined;
      if (!action) throw new BadRequest(404, `There is nothing at ${at.pathname}.`);
      const fields = readFields(await readBody(request));
      const seat = readSeat(fields.seat);
      if (seat === 'student' && (name === 'choose' || name === 'run')) throw new BadRequest(403, needsConsent);
      const since = readWhole('since', fields.since ?? 0, 0);
      let result: object;
      try {
        result = action(fields, seat, readWindow(fields.window, seat));
      } catch (error) {
        if (error instanceof BadRequest) throw error;
        throw new BadRequest(422, error instanceof Error ? error.message : String(error));
      }
      const answered = JSON.stringify(result).slice(1, -1);
      const { text } = changes.since(seat, since);
      return send('application/json', `{${answered}${answered && ','}"change":${text}}`);
    }
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      throw new BadRequest(405, `Expected GET or POST, received ${request.method}.`);
    }
    switch (at.pathname) {
      case '/':
        return send('text/html', bundle.html, { 'content-security-policy': pagePolicy });
      case '/page.js':
        return send('text/javascript', bundle.script);
      case '/page.css':
        return send('text/css', bundle.style);
      case '/favicon.ico':
      case '/emblem.svg':
        return send('image/svg+xml', emblem);
      case '/api/alive':
        return json({ claim: options.claim ?? null });
      case '/api/state':
      case '/api/changes': {
        if (!own) throw new BadRequest(403, 'The workbook is shown to the preview’s own page only.');
        const seat = readSeat(at.searchParams.get('seat'));
        if (at.pathname === '/api/state') {
          const menus = seat === 'teacher' ? host.menus(seat) : [];
          return json({ view: host.view(seat), menus, functions: host.functions() });
        }
        const version = readWhole('since', Number(at.searchParams.get('since') ?? Number.NaN), 0);
        response.writeHead(200, { 'content-type': 'text/event-stream', connection: 'keep-alive' });
        const listener = { seat, version, response };
        listeners.add(listener);
        response.on('close', () => listeners.delete(listener));
        response.on('drain', () => {
          if (changes.since(seat, listener.version).version > listener.version) sendChange(listener);
        });
        response.write(noticeEvent());
        return sendChange(listener);
      }
    }
    const panel = panels.get(at.pathname.replace(/^\/panel\//, ''));
    if (at.pathname.startsWith('/panel/') && panel !== undefined) {
      const text = panelPage({ html: panel, shim: bundle.shim, origin: `http://${request.headers.host}` });
      return send('text/html', text, { 'content-security-policy': panelPolicy });
    }
    throw new BadRequest(404, `There is nothing at ${at.pathname}.`);
  }

  const server = createServer((request, response) => {
    response.setHeader('cache-control', 'no-store');
    response.setHeader('x-content-type-options', 'nosniff');
    response.setHeader('referrer-policy', 'no-referrer');
    response.setHeader('cross-origin-resource-policy', 'same-origin');
    answer(request, response).catch((error: unknown) => {
      if (response.headersSent) return response.destroy();
      const status = error instanceof BadRequest ? error.status : 500;
      const message = error instanceof Error ? error.message : String(error);
      // What was not read of a refused body must not be taken for the next request.
      if (!request.complete) response.setHeader('connection', 'close');
      response.writeHead(status, { 'content-type': 'application/json; charset=utf-8' });
      return response.end(JSON.stringify({ message }));
    });
  });
  const port = await listen(server, options.port ?? 0);
  const url = `http://${address}:${port}`;
  origins = [url, `http://localhost:${port}`];
  host.servedAt(`${url}/?seat=student`);

  return {
    url,
    port,
    setNotice(next) {
      if (next === notice) return;
      notice = next;
      for (const { response } of listeners) response.write(noticeEvent());
    },
    close: () =>
      new Promise((settle) => {
        stopListening();
        clearInterval(pulse);
        for (const { response } of listeners) response.end();
        server.close(() => settle());
        server.closeAllConnections();
      }),
  };
}
