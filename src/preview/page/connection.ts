import type { ChangeView, FunctionHelp, MenuView, Seat, WorkbookView } from '../view.ts';
import { texts } from './texts.ts';

export interface State {
  readonly view: WorkbookView;
  readonly menus: readonly MenuView[];
  readonly functions: readonly FunctionHelp[];
}
/** The server understood and said no. */
class Refused extends Error {}
/** The server could not be reached; nothing is known to have happened. */
export class Unreachable extends Error {}

export interface Connection {
  /** Asks the server to do something; calls go one after another, in the order they were made. */
  ask<T>(action: string, fields: object): Promise<T & { readonly change: ChangeView }>;
  /** Like `ask`, beside the others: for calls of a panel, which may take long. */
  askBeside<T>(action: string, fields: object): Promise<T & { readonly change: ChangeView }>;
}

/** Keeps the page in step with the server: reads everything once, then hears of changes, and begins again after a loss. */
export function connect(options: {
  readonly seat: Seat;
  readonly version: () => number;
  readonly onState: (state: State) => void;
  readonly onChange: (change: ChangeView) => void;
  readonly onLink: (link: 'open' | 'lost') => void;
  /** One line that every window shows until it is taken away, as when the workbook cannot be saved. */
  readonly onNotice: (notice: string | null) => void;
}): Connection {
  const { seat } = options;
  /** What this window did is known by this name, so that it takes back nothing of the others. */
  const own = crypto.randomUUID();
  let stream: EventSource | undefined;
  let link: 'open' | 'lost' | 'starting' = 'starting';
  let retry: number | undefined;
  let pause: number | undefined;

  async function answerTo(request: Promise<Response>): Promise<unknown> {
    let response: Response;
    let body: { message?: string };
    try {
      response = await request;
      body = (await response.json()) as { message?: string };
    } catch {
      throw new Unreachable(texts.unreachable);
    }
    if (!response.ok) throw new Refused(body.message ?? texts.refusedWithoutReason);
    return body;
  }
  const post = (action: string, fields: object): Promise<unknown> =>
    answerTo(
      fetch(`/api/${action}`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ seat, window: own, since: options.version(), ...fields }),
      }),
    ).catch((error: unknown) => {
      if (error instanceof Unreachable) lost();
      throw error;
    });

  function lost(): void {
    stream?.close();
    stream = undefined;
    if (link === 'lost') return;
    link = 'lost';
    options.onLink('lost');
    retry = window.setTimeout(begin, 700);
  }
  async function begin(): Promise<void> {
    window.clearTimeout(retry);
    try {
      const state = (await answerTo(fetch(`/api/state?seat=${seat}`))) as State;
      options.onState(state);
    } catch {
      if (link !== 'lost') {
        link = 'lost';
        options.onLink('lost');
      }
      retry = window.setTimeout(begin, 1500);
      return;
    }
    link = 'open';
    options.onLink('open');
    listen();
  }
  function listen(): void {
    stream?.close();
    stream = new EventSource(`/api/changes?seat=${seat}&since=${options.version()}`);
    stream.addEventListener('message', (event: MessageEvent<string>) =>
      options.onChange(JSON.parse(event.data) as ChangeView),
    );
    stream.addEventListener('notice', (event: MessageEvent<string>) =>
      options.onNotice(JSON.parse(event.data) as string | null),
    );
    stream.addEventListener('error', lost);
  }
  // A browser keeps few connections to one address; windows out of sight give theirs up and catch up when seen again.
  document.addEventListener('visibilitychange', () => {
    window.clearTimeout(pause);
    if (document.visibilityState === 'hidden') {
      pause = window.setTimeout(() => {
        stream?.close();
        stream = undefined;
      }, 5000);
    } else if (!stream && link === 'open') void begin();
  });
  void begin();

  let queue: Promise<unknown> = Promise.resolve();
  return {
    ask<T>(action: string, fields: object) {
      const answer = queue.then(() => post(action, fields));
      queue = answer.catch(() => undefined);
      return answer as Promise<T & { readonly change: ChangeView }>;
    },
    askBeside: <T>(action: string, fields: object) =>
      post(action, fields) as Promise<T & { readonly change: ChangeView }>,
  };
}
