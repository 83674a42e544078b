import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { workbookFile, writeFailure } from '../../../src/preview/server/workbookFile.ts';

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
  it('leaves the old file whole where a save fails, says so, and saves later by itself', async () => {
    const said: (string | undefined)[] = [];
    const file = workbookFile({ path: path(), againMs: 20, onTrouble: (trouble) => said.push(trouble) });
    file.saveSoon(() => 'old');
    expect(file.saveNow()).toBeUndefined();
    let broken = true;
    file.saveSoon(() => {
      if (broken) throw Object.assign(new Error('ENOSPC: no space left'), { code: 'ENOSPC' });
      return 'new';
    });
    expect(file.saveNow()).toBe(`The workbook is not saved: the disk is full (${path()}).`);
    expect([file.read(), said[0]]).toEqual(['old', file.saveNow()]);
    broken = false;
    await expect.poll(() => file.read()).toBe('new');
    expect(said.at(-1)).toBeUndefined();
  });
  it('leaves no part of a file where the save fails half way', () => {
    const file = workbookFile({ path: path() });
    // A folder where the file should be: written beside it, but not put in its place.
    mkdirSync(path(), { recursive: true });
    file.saveSoon(() => 'x');
    expect(file.saveNow()).toContain('The workbook is not saved');
    expect(readdirSync(join(folder, 'kept'))).toEqual(['workbook.json']);
  });
  it.each([
    { code: 'ENOSPC', says: 'the disk is full' },
    { code: 'EDQUOT', says: 'your share of the disk is used up' },
    { code: 'EROFS', says: 'nothing may be written in that folder' },
    { code: 'EACCES', says: 'nothing may be written in that folder' },
    { code: 'EPERM', says: 'nothing may be written in that folder' },
  ])('says in a few words what $code means', ({ code, says }) => {
    expect(writeFailure(Object.assign(new Error(code), { code }))).toBe(says);
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
});

describe('the claim of a workbook file', () => {
  const claimed = (claim: object | string): void => {
    mkdirSync(join(folder, 'kept'), { recursive: true });
    writeFileSync(`${path()}.open`, typeof claim === 'string' ? claim : JSON.stringify(claim));
  };
  /** A server that answers as a preview does which holds the claim of this name. */
  async function alive(claim: string): Promise<{ url: string; close: () => void }> {
    const server = createServer((_request, response) => response.end(JSON.stringify({ claim })));
    await new Promise<void>((settle) => server.listen(0, '127.0.0.1', settle));
    return { url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`, close: () => server.close() };
  }
  it('is taken, and given back at the end', async () => {
    const file = workbookFile({ path: path() });
    expect(await file.claim()).toBeUndefined();
    expect(existsSync(`${path()}.open`)).toBe(true);
    file.release();
    expect(existsSync(`${path()}.open`)).toBe(false);
  });
  it('is held by a preview that says so itself, and names its file', async () => {
    const other = await alive('theirs');
    claimed({ pid: process.ppid, url: other.url, id: 'theirs' });
    expect(await workbookFile({ path: path() }).claim()).toEqual({ heldBy: other.url, path: `${path()}.open` });
    other.close();
  });
  it('is not held by a process that got the number of one that was killed', async () => {
    claimed({ pid: process.ppid, url: 'http://127.0.0.1:1', id: 'gone' });
    expect(await workbookFile({ path: path() }).claim()).toBeUndefined();
    const another = await alive('of another workbook');
    claimed({ pid: process.ppid, url: another.url, id: 'gone' });
    expect(await workbookFile({ path: path() }).claim()).toBeUndefined();
    another.close();
    claimed({ pid: process.ppid, url: 'file:///etc/hosts', id: 'gone' });
    const longAgo = new Date(0);
    utimesSync(`${path()}.open`, longAgo, longAgo);
    expect(await workbookFile({ path: path() }).claim()).toBeUndefined();
    claimed('{"pid":');
    expect(await workbookFile({ path: path() }).claim()).toBeUndefined();
  });
  it('is held by a preview that is starting, as long as it says so', async () => {
    claimed({ pid: process.ppid, url: '', id: 'starting' });
    expect(await workbookFile({ path: path() }).claim()).toMatchObject({ heldBy: '' });
    const longAgo = new Date(0);
    utimesSync(`${path()}.open`, longAgo, longAgo);
    const file = workbookFile({ path: path() });
    expect(await file.claim()).toBeUndefined();
    utimesSync(`${path()}.open`, longAgo, longAgo);
    file.stillStarting();
    claimed({ ...JSON.parse(readFileSync(`${path()}.open`, 'utf8')), pid: process.ppid });
    expect(await workbookFile({ path: path() }).claim()).toMatchObject({ heldBy: '' });
  });
});
