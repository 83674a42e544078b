import { randomUUID } from 'node:crypto';
import { HostException } from '../hostError.ts';
import { aNumber, aText, HostObject } from '../hostObject.ts';
import { formatDate } from './formatDate.ts';
import type { ScriptRun } from './scriptRun.ts';

export class UtilitiesStandIn extends HostObject {
  readonly kind_ = 'Utilities';
  readonly #run: ScriptRun;
  constructor(run: ScriptRun) {
    super();
    this.#run = run;
  }
  getUuid(): string {
    return randomUUID();
  }
  formatDate(date: unknown, timeZone: string, format: string): string {
    if (!(date instanceof Date)) {
      throw new HostException("The parameters don't match the method signature for Utilities.formatDate.");
    }
    return formatDate(date, aText(timeZone, 'Utilities.formatDate'), aText(format, 'Utilities.formatDate'));
  }
  sleep(milliseconds: number): void {
    this.#run.sleep(aNumber(milliseconds, 'Utilities.sleep'));
  }
}

/** Whose address it is needs another consent, which the permissions refuse before these are reached. */
export class SessionStandIn extends HostObject {
  readonly kind_ = 'Session';
  readonly #run: ScriptRun;
  constructor(run: ScriptRun) {
    super();
    this.#run = run;
  }
  getScriptTimeZone(): string {
    return Intl.DateTimeFormat().resolvedOptions().timeZone;
  }
  getActiveUserLocale(): string {
    return this.#run.book.locale.tag.slice(0, 2);
  }
  getActiveUser(): never {
    throw new HostException('You do not have permission to call Session.getActiveUser.');
  }
  getEffectiveUser(): never {
    throw new HostException('You do not have permission to call Session.getEffectiveUser.');
  }
}

export class ScriptAppStandIn extends HostObject {
  readonly kind_ = 'ScriptApp';
  getScriptId(): string {
    return 'stand-in-script';
  }
}

export class LoggerStandIn extends HostObject {
  readonly kind_: string;
  readonly #run: ScriptRun;
  constructor(run: ScriptRun, kind: 'Logger' | 'console') {
    super();
    this.#run = run;
    this.kind_ = kind;
  }
  log(...parts: unknown[]): void {
    this.#run.log(parts.map(String).join(' '));
  }
  info(...parts: unknown[]): void {
    this.log(...parts);
  }
  warn(...parts: unknown[]): void {
    this.log(...parts);
  }
  error(...parts: unknown[]): void {
    this.log(...parts);
  }
}
