import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { workbookFile } from '../../../src/preview/server/workbookFile.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'labrow-file-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));
const path = (): string => join(folder, 'kept', 'workbook.json');

describe('workbookFile', () => {
  it('gives back what was saved', () => {
    const file = workbookFile({ path: path() });
    expect(file.read()).toBeUndefined();
    file.saveSoon(() => '{"a":1}');
    file.saveNow();
    expect(workbookFile({ path: path() }).read()).toBe('{"a":1}');
  });
  it('saves once for many changes, with the latest', async () => {
    let asked = 0;
    const file = workbookFile({ path: path(), delayMs: 20 });
    for (let change = 0; change < 50; change += 1) {
      file.saveSoon(() => {
        asked += 1;
        return String(change);
      });
    }
    await expect.poll(() => file.read()).toBe('49');
    expect(asked).toBe(1);
  });
  it('leaves the old file whole where a save fails, says so, and saves later', () => {
    const said: string[] = [];
    const file = workbookFile({ path: path(), onError: (message) => said.push(message) });
    file.saveSoon(() => 'old');
    file.saveNow();
    let broken = true;
    file.saveSoon(() => {
      if (broken) throw new Error('no room');
      return 'new';
    });
    file.saveNow();
    expect([file.read(), said.length, said[0]?.includes('no room')]).toEqual(['old', 1, true]);
    broken = false;
    file.saveNow();
    expect(file.read()).toBe('new');
  });
  it('leaves no part of a file behind', () => {
    const file = workbookFile({ path: path() });
    file.saveSoon(() => 'x'.repeat(300_000));
    file.saveNow();
    expect(readdirSync(join(folder, 'kept'))).toEqual(['workbook.json']);
  });
  it('keeps an unreadable file under a dated name, also twice in one second', () => {
    const file = workbookFile({ path: path() });
    for (const text of ['first', 'second']) {
      file.saveSoon(() => text);
      file.saveNow();
      expect(file.keepAside()).toMatch(/workbook-unreadable-\d{4}-\d\d-\d\dT[\d-]+\.json$/);
    }
    const kept = readdirSync(join(folder, 'kept')).map((name) => readFileSync(join(folder, 'kept', name), 'utf8'));
    expect(kept.sort()).toEqual(['first', 'second']);
  });
  it('is claimed by one running preview at a time', () => {
    const file = workbookFile({ path: path() });
    expect(file.claim()).toBeUndefined();
    file.release();
    writeFileSync(`${path()}.open`, JSON.stringify({ pid: process.ppid, url: 'http://127.0.0.1:1' }));
    expect(file.claim()).toEqual({ heldBy: 'http://127.0.0.1:1' });
    writeFileSync(`${path()}.open`, '{"pid":');
    expect(file.claim()).toBeUndefined();
    file.release();
  });
});
