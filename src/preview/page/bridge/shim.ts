// Runs inside a panel's frame before the panel's own scripts and answers for the host's `google.script`.
import { bridgeValue } from './bridgeValue.ts';
import type { PageMessage, PanelMessage } from './messages.ts';

type Success = (value: unknown, userObject?: unknown) => void;
type Failure = (error: Error, userObject?: unknown) => void;
interface Call {
  readonly success: Success | undefined;
  readonly failure: Failure | undefined;
  readonly userObject: unknown;
}

const frame = window as unknown as { labrowPreviewOrigin: string; google: unknown };
const page = window.parent;
const origin = frame.labrowPreviewOrigin;
/** The host runs ten calls of a page at once; the others wait. */
const atOnce = 10;

const running = new Map<number, Call>();
const waiting: { readonly message: PanelMessage; readonly id: number; readonly call: Call }[] = [];
let lastId = 0;

const send = (message: PanelMessage): void => page.postMessage(message, origin);

function startWaiting(): void {
  while (running.size < atOnce) {
    const next = waiting.shift();
    if (!next) return;
    running.set(next.id, next.call);
    send(next.message);
  }
}

window.addEventListener('message', (event: MessageEvent<PageMessage>) => {
  if (event.source !== page || event.origin !== origin) return;
  const message = event.data;
  const call = running.get(message?.id);
  if (!call) return;
  running.delete(message.id);
  startWaiting();
  if (message.labrow === 'value') call.success?.(message.value, call.userObject);
  else {
    const error = new Error(message.message);
    error.name = 'ScriptError';
    if (call.failure) call.failure(error, call.userObject);
    else console.error(`Uncaught ${message.message}`);
  }
});

const formFields = (value: unknown): unknown =>
  value instanceof HTMLFormElement
    ? Object.fromEntries(
        [...new FormData(value)].map(([name, field]) => [name, typeof field === 'string' ? field : field.name]),
      )
    : value;

function runner(call: Call): unknown {
  return new Proxy(Object.freeze({}), {
    get(_target, name) {
      if (typeof name !== 'string' || name === 'then') return undefined;
      if (name === 'withSuccessHandler') return (success: Success) => runner({ ...call, success });
      if (name === 'withFailureHandler') return (failure: Failure) => runner({ ...call, failure });
      if (name === 'withUserObject') return (userObject: unknown) => runner({ ...call, userObject });
      return (...given: unknown[]): void => {
        const args = given.length === 1 ? [formFields(given[0])] : given;
        const legal = args.map((value, index) => bridgeValue(value, `argument ${index + 1} of ${name}`));
        lastId += 1;
        waiting.push({ id: lastId, call, message: { labrow: 'run', id: lastId, name, args: legal } });
        startWaiting();
      };
    },
  });
}

frame.google = Object.freeze({
  script: Object.freeze({
    run: runner({ success: undefined, failure: undefined, userObject: undefined }),
    host: Object.freeze({
      close: () => send({ labrow: 'close' }),
      setHeight: () => {},
      setWidth: () => {},
      editor: Object.freeze({ focus: () => send({ labrow: 'focus' }) }),
    }),
  }),
});
