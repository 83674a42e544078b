/** Exact numbers of calls since the last reset. */
export class Counts {
  host: Record<string, number> = {};
  functions: Record<string, number> = {};

  countHost(name: string): void {
    this.host[name] = (this.host[name] ?? 0) + 1;
  }
  countFunction(name: string): void {
    this.functions[name] = (this.functions[name] ?? 0) + 1;
  }
  reset(): void {
    this.host = {};
    this.functions = {};
  }
}
