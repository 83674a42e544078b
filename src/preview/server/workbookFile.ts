import { randomUUID } from 'node:crypto';
import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { basename, dirname, extname, join } from 'node:path';

interface ClaimHeld {
  /** Its address; empty while it is starting. */
  readonly heldBy: string;
  /** The file that says so. */
  readonly path: string;
}

/** The file that a preview's workbook lives in, so that a restart loses nothing. */
export interface WorkbookFile {
  /** What was saved last; undefined where there is no file yet. */
  read(): string | undefined;
  /** Moves the file out of the way under a dated name and returns that name; it is never overwritten. */
  keepAside(why?: 'unreadable' | 'before'): string;
  /** Saves shortly after the last of several changes. */
  saveSoon(workbook: () => string): void;
  /** Saves what is still waiting, now; says why where it cannot. */
  saveNow(): string | undefined;
  /** Claims the file for this process; says who holds it, if another preview that is alive does. */
  claim(): Promise<ClaimHeld | undefined>;
  /** Known to whoever asks this preview whether it holds the file. */
  readonly claimId: string;
  /** Says that this preview is alive though it answers nobody yet. */
  stillStarting(): void;
  /** Notes where this preview answers, for whoever starts a second one. */
  noteAddress(url: string): void;
  release(): void;
}

const isRunning = (pid: number): boolean => {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // Not allowed to signal it means that it is there.
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
};

/** What a failed write means, in a few words. */
export function writeFailure(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  if (code === 'ENOSPC') return 'the disk is full';
  if (code === 'EDQUOT') return 'your share of the disk is used up';
  if (code === 'EROFS' || code === 'EACCES' || code === 'EPERM') return 'nothing may be written in that folder';
  return message;
}

/** Does the preview at this address hold the claim? One that takes the call and is too busy to answer is alive. */
async function answers(url: string, id: string): Promise<boolean> {
  try {
    const response = await fetch(`${url}/api/alive`, { signal: AbortSignal.timeout(answerMs) });
    return ((await response.json()) as { claim?: unknown }).claim === id;
  } catch (error) {
    return (error as Error).name === 'TimeoutError';
  }
}
const answerMs = 5000;
/** A preview that builds its sample says so at every step; silent for so long, it is none. */
const startingMs = 60_000;
const againMs = 3000;

/**
 * @param options - `path` of the file; `delayMs` between a change and the save; `onTrouble` hears why a save failed, and
 * nothing once it went well again. What failed is tried again by itself, and at the end.
 */
export function workbookFile(options: {
  readonly path: string;
  readonly delayMs?: number;
  readonly againMs?: number;
  readonly onTrouble?: (trouble: string | undefined) => void;
}): WorkbookFile {
  const { path, delayMs = 400 } = options;
  const claimPath = `${path}.open`;
  const claimId = randomUUID();
  let timer: NodeJS.Timeout | undefined;
  let waiting: (() => string) | undefined;
  let claimed = false;
  let troubled = false;

  function write(text: string): void {
    mkdirSync(dirname(path), { recursive: true });
    const beside = `${path}.${process.pid}.part`;
    const file = openSync(beside, 'w');
    try {
      try {
        const bytes = Buffer.from(text, 'utf8');
        for (let done = 0; done < bytes.length; ) done += writeSync(file, bytes, done);
        // Renamed before its content reached the disk, a file could come out empty after a power cut.
        fsyncSync(file);
      } finally {
        closeSync(file);
      }
      renameSync(beside, path);
    } catch (error) {
      // Half a file beside the workbook helps nobody, least of all on a full disk.
      try {
        rmSync(beside, { force: true });
      } catch {
        // What stands there is none of ours.
      }
      throw error;
    }
  }
  function saveNow(): string | undefined {
    clearTimeout(timer);
    timer = undefined;
    if (!waiting) return undefined;
    let trouble: string | undefined;
    try {
      write(waiting());
      waiting = undefined;
    } catch (error) {
      trouble = `The workbook is not saved: ${writeFailure(error)} (${path}).`;
      timer = setTimeout(saveNow, options.againMs ?? againMs);
      timer.unref();
    }
    if (trouble !== undefined || troubled) options.onTrouble?.(trouble);
    troubled = trouble !== undefined;
    return trouble;
  }
  function unusedName(why: string): string {
    const stamp = new Date().toISOString().slice(0, 19).replace(/:/g, '-');
    const extension = extname(path);
    const stem = join(dirname(path), `${basename(path, extension)}-${why}-${stamp}`);
    for (let number = 1; ; number += 1) {
      const name = `${stem}${number === 1 ? '' : `-${number}`}${extension}`;
      if (!existsSync(name)) return name;
    }
  }
  const writeClaim = (url: string): void =>
    writeFileSync(claimPath, JSON.stringify({ pid: process.pid, url, id: claimId }));
  /** Whoever holds the file now. A claim outlives a preview that was killed, and its process number is given away again. */
  async function holder(): Promise<string | undefined> {
    if (!existsSync(claimPath)) return undefined;
    let claim: { pid?: unknown; url?: unknown; id?: unknown };
    try {
      claim = JSON.parse(readFileSync(claimPath, 'utf8')) as typeof claim;
    } catch {
      // A claim that was cut short holds nothing.
      return undefined;
    }
    const { pid, url, id } = claim;
    if (typeof pid !== 'number' || pid === process.pid || !isRunning(pid)) return undefined;
    if (typeof url === 'string' && /^http:\/\/127\.0\.0\.1:\d+$/.test(url)) {
      return (await answers(url, String(id))) ? url : undefined;
    }
    return Date.now() - statSync(claimPath).mtimeMs < startingMs ? '' : undefined;
  }

  return {
    claimId,
    read: () => (existsSync(path) ? readFileSync(path, 'utf8') : undefined),
    keepAside(why = 'unreadable') {
      const name = unusedName(why);
      renameSync(path, name);
      return name;
    },
    saveSoon(workbook) {
      waiting = workbook;
      timer ??= setTimeout(saveNow, delayMs);
    },
    saveNow,
    async claim() {
      mkdirSync(dirname(path), { recursive: true });
      const heldBy = await holder();
      if (heldBy !== undefined) return { heldBy, path: claimPath };
      writeClaim('');
      claimed = true;
      return undefined;
    },
    stillStarting() {
      const now = new Date();
      if (claimed) utimesSync(claimPath, now, now);
    },
    noteAddress: writeClaim,
    release() {
      if (claimed) rmSync(claimPath, { force: true });
      claimed = false;
    },
  };
}
