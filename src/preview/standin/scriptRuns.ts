import vm from 'node:vm';
import type { FunctionHelp, Seat } from '../view.ts';
import type { Book } from './book.ts';
import { cellResult } from './cellResult.ts';
import type { Counts } from './counts.ts';
import type { declaredFunctions } from './declared.ts';
import type { Argument, ArgumentCell, CallOutcome, EngineCall } from './enginePlugins.ts';
import type { Mode } from './execution.ts';
import { HostException } from './hostError.ts';
import { hostFunctions } from './hostFunctions.ts';
import { HostConstant, HostObject } from './hostObject.ts';
import { refuseWithoutPermission } from './permissions.ts';
import { ScriptContext } from './scriptContext.ts';
import { dateOf } from './serial.ts';
import { LoggerStandIn, ScriptAppStandIn, SessionStandIn, UtilitiesStandIn } from './services/basics.ts';
import { HtmlServiceStandIn } from './services/html.ts';
import type { ScriptRun } from './services/scriptRun.ts';
import { SpreadsheetAppStandIn } from './services/spreadsheetApp.ts';
import { CacheServiceStandIn, LockServiceStandIn, PropertiesServiceStandIn } from './services/stores.ts';
import type { Troubles } from './troubles.ts';

/** Services that exist on the host and need a consent that the manifest does not ask for. */
class NotConsented extends HostObject {
  readonly kind_: string;
  readonly refuses_ = true;
  constructor(kind: string) {
    super();
    this.kind_ = kind;
  }
}
const notConsented = ['UrlFetchApp', 'DriveApp', 'GmailApp', 'MailApp', 'DocumentApp', 'CalendarApp', 'FormApp'];

/** An event of the host's simple triggers has this mode. */
export const limited = new HostConstant('LIMITED');
/** The host's own words are not documented. */
const scriptsAreOff = 'Stand-in: scripts are switched off for this account.';
const tooMany = 'There are too many scripts running simultaneously for this Google user account.';

export interface ScriptRunsOptions {
  readonly code: string;
  readonly declared: ReturnType<typeof declaredFunctions>;
  readonly counts: Counts;
  readonly clock: (() => Date) | undefined;
  readonly freshContexts: boolean;
  readonly allowCodeFromText: boolean;
  readonly book: () => Book;
  /** What a run sees of the workbook and its windows, besides which run it is. */
  readonly surroundings: Omit<
    ScriptRun,
    'book' | 'execution' | 'log' | 'sleep' | 'toast' | 'activated' | 'troubles'
  > & {
    toast(seat: Seat, message: string, title: string): void;
    activated(seat: Seat): void;
  };
  readonly troubles: Troubles;
  /** A run moved cells, so that kept positions mean something else. */
  readonly onMoved: () => void;
}

/** Runs of the script: from a cell, by a trigger, by a menu item or a panel; each in a context of its own. */
export class ScriptRuns {
  readonly triggerErrors: string[] = [];
  readonly logged: string[] = [];
  readonly #options: ScriptRunsOptions;
  readonly #script: vm.Script;
  readonly #names: ReadonlyMap<string, string>;
  readonly #failing = new Map<string, { times: number; words: string }>();
  /** Whose account functions in cells run on: the one at the keyboard. */
  atKeyboard: Seat = 'teacher';
  #cells: { context: ScriptContext; at: { sheet: number; row: number; column: number } } | undefined;

  constructor(options: ScriptRunsOptions) {
    this.#options = options;
    for (const { name, custom } of options.declared) {
      if (custom && hostFunctions.has(name.toUpperCase())) {
        throw new Error(`A custom function must not have the name of a built-in one, received ${name}.`);
      }
    }
    this.#names = new Map(options.declared.map(({ name }) => [name.toUpperCase(), name]));
    this.#script = new vm.Script(options.code, { filename: 'Code.gs' });
  }

  isDeclared(name: string): boolean {
    return this.#options.declared.some((one) => one.name === name);
  }
  get help(): readonly FunctionHelp[] {
    return this.#options.declared.filter(({ custom }) => custom).map((one) => one.help);
  }

  #newRun(mode: Mode, seat: Seat, held?: (() => void)[]): ScriptRun {
    const { toast, activated, ...surroundings } = this.#options.surroundings;
    return {
      ...surroundings,
      book: this.#options.book(),
      troubles: this.#options.troubles,
      execution: { mode, seat, panel: null, ...(held === undefined ? {} : { held }) },
      toast: (message, title) => toast(seat, message, title),
      activated,
      log: (line) => {
        this.logged.push(line);
        if (this.logged.length > 1000) this.logged.shift();
      },
      // Waiting would hold up the one process that plays the host; nothing else runs meanwhile that could be waited for.
      sleep: () => {},
    };
  }
  #load(run: ScriptRun): ScriptContext {
    const services: Record<string, HostObject> = {
      SpreadsheetApp: new SpreadsheetAppStandIn(run),
      LockService: new LockServiceStandIn(run),
      PropertiesService: new PropertiesServiceStandIn(run),
      CacheService: new CacheServiceStandIn(run),
      HtmlService: new HtmlServiceStandIn(run),
      Utilities: new UtilitiesStandIn(run),
      Session: new SessionStandIn(run),
      ScriptApp: new ScriptAppStandIn(),
      Logger: new LoggerStandIn(run, 'Logger'),
      console: new LoggerStandIn(run, 'console'),
      ...Object.fromEntries(notConsented.map((kind) => [kind, new NotConsented(kind)])),
    };
    const permit = (kind: string, member: string): void => refuseWithoutPermission(run.execution, kind, member);
    return new ScriptContext(this.#script, services, { ...this.#options, permit });
  }

  #contextForCells(call: EngineCall): ScriptContext {
    const sheet = this.#options.book().sheets.find(({ engine }) => engine === call.cell.sheet);
    const at = { sheet: sheet?.id ?? 0, row: call.cell.row + 1, column: call.cell.col + 1 };
    if (!this.#cells || this.#options.freshContexts) {
      const place = { ...at };
      const run = { ...this.#newRun('CUSTOM_FUNCTION', 'teacher'), callingCell: place };
      this.#cells = { context: this.#load(run), at: place };
    }
    Object.assign(this.#cells.at, at);
    return this.#cells.context;
  }

  /** Runs a function for a cell. */
  callFromCell(call: EngineCall): CallOutcome {
    const name = this.#names.get(call.name) ?? call.name;
    this.#options.counts.countFunction(name);
    if (this.#isOff(this.atKeyboard)) return { kind: 'error', message: scriptsAreOff };
    const failure = this.#failing.get(name);
    if (failure && failure.times > 0) {
      failure.times -= 1;
      return { kind: 'error', message: failure.words };
    }
    try {
      const context = this.#contextForCells(call);
      const handed = call.arguments.map((argument) => context.toScript(dated(argument)));
      return cellResult(context.call(name, handed));
    } catch (thrown) {
      const { name: kind, message, stack } = thrown as Error;
      const line = /Code\.gs:(\d+)/.exec(stack ?? '')?.[1];
      return { kind: 'error', message: `${kind}: ${message}${line ? ` (line ${line}).` : ''}` };
    }
  }
  #isOff(seat: Seat): boolean {
    return this.#options.troubles.scriptsOff?.includes(seat) ?? false;
  }
  /** Refuses what needs consent to whoever may run no script or has said no. */
  #refuseWithoutConsent(seat: Seat): void {
    if (this.#isOff(seat)) throw new HostException(scriptsAreOff);
    if (this.#options.troubles.consentRefused?.includes(seat)) {
      throw new HostException('Authorization is required to perform that action.');
    }
  }
  /** The next calls of a function from cells fail as the host does when too many scripts run. */
  fail(name: string, times: number, words = tooMany): void {
    this.#failing.set(name, { times, words });
  }

  /** One run in a fresh context; what it changed is worked out before its end. */
  execute<T>(mode: Mode, seat: Seat, body: (context: ScriptContext, run: ScriptRun) => T, held?: (() => void)[]): T {
    if (mode === 'FULL') this.#refuseWithoutConsent(seat);
    const book = this.#options.book();
    const run = this.#newRun(mode, seat, held);
    const { moves } = book.log;
    this.atKeyboard = seat;
    try {
      return body(this.#load(run), run);
    } finally {
      book.settle();
      if (book.log.moves !== moves) this.#options.onMoved();
    }
  }
  /** A simple trigger, where the script has it: what it throws is told nobody at the sheet. */
  trigger(
    name: 'onOpen' | 'onEdit',
    seat: Seat,
    event: (run: ScriptRun) => Record<string, unknown>,
    held?: (() => void)[],
  ): void {
    if (!this.isDeclared(name) || this.#isOff(seat)) return;
    if (name === 'onEdit' && this.#options.troubles.triggersOff) return;
    this.#noted(name, () =>
      this.execute('LIMITED', seat, (context, run) => context.call(name, [context.toScript(event(run))]), held),
    );
  }
  /** What a trigger wrote arrives. */
  arrive(held: readonly (() => void)[]): void {
    this.#noted('onEdit', () => {
      for (const write of held) write();
    });
  }
  #noted(name: string, work: () => void): void {
    try {
      work();
    } catch (thrown) {
      const error = thrown as Error;
      this.triggerErrors.push(`${name}: ${error.name}: ${error.message}`);
    }
  }
  /** Runs a menu item. */
  choose(seat: Seat, item: string): ScriptRun['execution']['panel'] {
    return this.execute('FULL', seat, (context, run) => {
      // Menu items may name methods of objects, such as `menu.open`.
      if (item.includes('.')) throw new HostException(`Script function not found: ${item}`);
      context.call(item, []);
      return run.execution.panel;
    });
  }
}

const dated = (argument: Argument): unknown =>
  Array.isArray(argument)
    ? (argument as readonly (readonly ArgumentCell[])[]).map((row) => row.map(datedCell))
    : datedCell(argument as ArgumentCell);
const datedCell = (cell: ArgumentCell): unknown => (typeof cell === 'object' ? dateOf(cell.date) : cell);
