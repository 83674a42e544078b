import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

/** Identifiers on the Open Source Initiative's list that our packages use (opensource.org/licenses, from memory). */
const approved = new Set([
  '0BSD',
  'Apache-2.0',
  'BlueOak-1.0.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'GPL-3.0-only',
  'ISC',
  'MIT',
  'MPL-2.0',
  'OFL-1.1',
  'Python-2.0',
]);

/**
 * Packages whose own field names no single identifier; the licence file of this version was read, and the words that decide
 * are here. Both belong to what a push needs, which is installed only then.
 */
const readByHand: Readonly<Record<string, { version: string; licence: string; says: RegExp }>> = {
  'url-template': {
    version: '2.0.8',
    licence: 'BSD-3-Clause',
    says: /name of the author may not be used to endorse or promote/,
  },
  fuzzy: { version: '0.1.3', licence: 'MIT', says: /Permission is hereby granted, free of charge/ },
};

interface Manifest {
  name: string;
  license?: string;
  licenses?: { type: string }[];
}

/** Folders of all packages below a node_modules folder, nested ones too. */
function packageFolders(modules: string): string[] {
  if (!existsSync(modules)) return [];
  return readdirSync(modules, { withFileTypes: true })
    .filter((entry) => (entry.isDirectory() || entry.isSymbolicLink()) && !entry.name.startsWith('.'))
    .flatMap((entry) => {
      const folder = join(modules, entry.name);
      if (entry.name.startsWith('@')) return packageFolders(folder);
      return [folder, ...packageFolders(join(folder, 'node_modules'))];
    })
    .filter((folder) => existsSync(join(folder, 'package.json')));
}

/** True where an expression such as `(MIT OR CC0-1.0)` can be met with approved licences only. */
function isApproved(expression: string): boolean {
  const text = expression.replace(/[()]/g, '');
  return text.split(' OR ').some((choice) => choice.split(' AND ').every((one) => approved.has(one.trim())));
}

function licenceOf(folder: string): string {
  const manifest = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as Manifest;
  const byHand = readByHand[manifest.name];
  if (byHand) {
    const file = readdirSync(folder).find((name) => /^licen[cs]e/i.test(name)) ?? '';
    return byHand.says.test(readFileSync(join(folder, file), 'utf8')) ? byHand.licence : 'changed since it was read';
  }
  return manifest.license ?? manifest.licenses?.map(({ type }) => type).join(' OR ') ?? 'none named';
}

describe('installed packages', () => {
  const folders = ['', 'scripts/push/', 'scripts/mutation/'].flatMap((folder) =>
    packageFolders(`${folder}node_modules`),
  );
  it('are all under licences the OSI has approved', () => {
    expect(folders.length).toBeGreaterThan(120);
    const refused = folders
      .map((folder) => ({ folder, licence: licenceOf(folder) }))
      .filter(({ licence }) => !isApproved(licence))
      .map(({ folder, licence }) => `${folder}: ${licence}`);
    expect(refused).toEqual([]);
  });
  it('would be refused under another licence', () => {
    expect(['CC-BY-3.0', 'CC0-1.0', 'UNLICENSED', 'MIT AND CC-BY-3.0', 'SEE LICENSE IN x'].map(isApproved)).toEqual([
      false,
      false,
      false,
      false,
      false,
    ]);
    expect(isApproved('(MIT OR CC0-1.0)')).toBe(true);
  });
});

describe('what stands in for a package of browser tables', () => {
  const load = createRequire(import.meta.url);
  const browserslist = load('../../scripts/substitutes/browserslist') as (queries?: unknown) => readonly string[];
  it('says that there are none to whoever asks for none', () => {
    expect(browserslist([])).toEqual([]);
  });
  it('answers nobody who asks for some with an empty list', () => {
    for (const queries of [undefined, 'defaults', ['last 2 versions']])
      expect(() => browserslist(queries)).toThrow(/scripts\/substitutes\/browserslist knows none/);
  });
});

describe.each(['package-lock.json', 'scripts/push/package-lock.json', 'scripts/mutation/package-lock.json'])(
  '%s',
  (path) => {
    const lock = JSON.parse(readFileSync(path, 'utf8')) as {
      packages: Record<string, { version?: string; resolved?: string; license?: string; link?: boolean }>;
    };
    it('names no download address', () => {
      const addresses = Object.values(lock.packages).flatMap(({ resolved }) =>
        resolved && /:\/\//.test(resolved) ? [resolved] : [],
      );
      expect(addresses).toEqual([]);
    });
    it('holds approved licences for other machines too', () => {
      const packages = Object.entries(lock.packages).filter(
        ([place, { link }]) => place.includes('node_modules/') && !link,
      );
      expect(packages.length).toBeGreaterThan(120);
      const refused = packages
        .filter(([place, { version, license = 'none named' }]) => {
          const byHand = readByHand[place.replace(/^.*node_modules\//, '')];
          return byHand === undefined ? !isApproved(license) : byHand.version !== version;
        })
        .map(([place, { version, license }]) => `${place} ${version}: ${license}`);
      expect(refused).toEqual([]);
    });
    it('pins the packages it is asked for exactly', () => {
      const manifest = JSON.parse(readFileSync(path.replace('package-lock', 'package'), 'utf8')) as {
        dependencies?: Record<string, string>;
        devDependencies?: Record<string, string>;
      };
      const asked = Object.entries({ ...manifest.dependencies, ...manifest.devDependencies });
      expect(asked.length).toBeGreaterThan(0);
      expect(asked.filter(([, version]) => !/^(npm:[a-z]+@)?\d+\.\d+\.\d+$|^file:/.test(version))).toEqual([]);
    });
  },
);
