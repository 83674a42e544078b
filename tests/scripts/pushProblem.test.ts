import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { pushProblem } from '../../scripts/pushProblem.mjs';

const ours = ['Code.js', 'Sidebar.html', 'appsscript.json'];
let above: string;
let root: string;
beforeEach(() => {
  above = mkdtempSync(join(tmpdir(), 'labrow-push-'));
  root = join(above, 'labrow');
  mkdirSync(join(root, 'dist'), { recursive: true });
});
afterEach(() => rmSync(above, { recursive: true }));
const write = (path: string, text: string) => writeFileSync(join(root, path), text);
const named = '// from clasp\n{"scriptId": "x", "rootDir": "dist"}';

describe('before a push', () => {
  it('says how to name a script project where none is', () => {
    expect(pushProblem(root, ours)).toMatch(/no script project is named yet\. Run “npm run clasp -- login”, then/);
  });
  it('names a .clasp.json in a folder above, which stops clasp from making one here', () => {
    writeFileSync(join(above, '.clasp.json'), '{}');
    expect(pushProblem(root, ours)).toContain(join(above, '.clasp.json'));
    write('.clasp.json', named);
    expect(pushProblem(root, ours)).toBeUndefined();
  });
  it.each([
    ['{"scriptId": "x"}', 'sends the folder “.”'],
    ['{"scriptId": "x", "rootDir": "src"}', 'sends the folder “src”'],
    ['{"scriptId": ', 'cannot be read'],
  ])('refuses %s', (text, says) => {
    write('.clasp.json', text);
    expect(pushProblem(root, ours)).toContain(says);
  });
  it('takes srcDir for rootDir, as clasp does', () => {
    write('.clasp.json', '{"scriptId": "x", "srcDir": "./dist"}');
    expect(pushProblem(root, ours)).toBeUndefined();
  });
  it('names what else lies in dist and would be sent, such as a script that was fetched', () => {
    write('.clasp.json', named);
    for (const name of ours) write(`dist/${name}`, '');
    expect(pushProblem(root, ours)).toBeUndefined();
    write('dist/Code.gs', 'function myFunction() {}');
    expect(pushProblem(root, ours)).toContain('dist holds Code.gs');
  });
});

describe('the files that are pushed', () => {
  it('are those that the build writes, so that a fetched manifest never stays', () => {
    const build = readFileSync('scripts/build.ts', 'utf8');
    for (const name of ours) expect(build).toContain(`'dist/${name}'`);
    expect(JSON.parse(readFileSync('appsscript.json', 'utf8')).oauthScopes).toHaveLength(2);
  });
});
