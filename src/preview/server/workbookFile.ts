import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { basename, dirname, extname, join } from 'node:path';

/** The file that a preview's workbook lives in, so that a restart loses nothing. */
export interface WorkbookFile {
  /** What was saved last; undefined where there is no file yet. */
  read(): string | undefined;
  /** Moves the file out of the way under a dated name and returns that name; it is never overwritten. */
  keepAside(why?: 'unreadable' | 'before'): string;
  /** Saves shortly after the last of several changes. */
  saveSoon(workbook: () => string): void;
  /** Saves what is still waiting, now. */
  saveNow(): void;
  /** Claims the file for this process; returns the address of another preview that holds it, if one does. */
  claim(): { readonly heldBy: string } | undefined;
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

/**
 * @param options - `path` of the file; `delayMs` between a change and the save; `onError` hears of a save that failed,
 * which is tried again with the next change and at the end.
 */
export function workbookFile(options: {
  readonly path: string;
  readonly delayMs?: number;
  readonly onError?: (message: string) => void;
}): WorkbookFile {
  const { path, delayMs = 400 } = options;
  const claimPath = `${path}.open`;
  let timer: NodeJS.Timeout | undefined;
  let waiting: (() => string) | undefined;
  let claimed = false;

  function write(text: string): void {
    mkdirSync(dirname(path), { recursive: true });
    const beside = `${path}.${process.pid}.part`;
    const file = openSync(beside, 'w');
    try {
      const bytes = Buffer.from(text, 'utf8');
      for (let done = 0; done < bytes.length; ) done += writeSync(file, bytes, done);
      // Renamed before its content reached the disk, a file could come out empty after a power cut.
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(beside, path);
  }
  function saveNow(): void {
    clearTimeout(timer);
    timer = undefined;
    if (!waiting) return;
    try {
      write(waiting());
      waiting = undefined;
    } catch (error) {
      options.onError?.(`The workbook could not be saved to ${path}: ${(error as Error).message}`);
    }
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
  const writeClaim = (url: string): void => writeFileSync(claimPath, JSON.stringify({ pid: process.pid, url }));

  return {
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
    claim() {
      mkdirSync(dirname(path), { recursive: true });
      if (existsSync(claimPath)) {
        try {
          const { pid, url } = JSON.parse(readFileSync(claimPath, 'utf8')) as { pid: number; url: string };
          if (Number.isInteger(pid) && pid !== process.pid && isRunning(pid)) return { heldBy: String(url) };
        } catch {
          // A claim that was cut short holds nothing.
        }
      }
      writeClaim('');
      claimed = true;
      return undefined;
    },
    noteAddress: writeClaim,
    release() {
      if (claimed) rmSync(claimPath, { force: true });
      claimed = false;
    },
  };
}
