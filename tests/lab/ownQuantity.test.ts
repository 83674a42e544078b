import { execFile } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));
const run = promisify(execFile);

/** A block of the page for contributors: a whole file, or lines for a place in one. */
interface Block {
  readonly section: string;
  readonly file: string;
  readonly place: 'whole' | 'top' | { readonly after: string };
  readonly text: string;
}

/** The steps that the page names, section by section. */
function blocks(): readonly Block[] {
  const page = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8');
  const [, chapter = ''] = page.split('## Add a quantity, a recipe and an activity over both');
  return (chapter.split(/\n## /)[0] ?? '').split('\n### ').flatMap((part) => {
    const section = part.split('\n')[0] ?? '';
    const found = part.matchAll(/```ts\n\/\/ ([\w/.]+\.ts)(?:, (at the top|after “(.+?)”))?\n([\s\S]*?)```/g);
    return [...found].map(([, file = '', where, after, text = '']): Block => {
      const place = where === undefined ? 'whole' : after === undefined ? 'top' : { after };
      return { section, file, place, text };
    });
  });
}

/** Does in a copy of the sources what a block says. */
function follow({ file, place, text }: Block, copy: string): void {
  const path = join(copy, file);
  if (place === 'whole') {
    expect(existsSync(path), `${file} is new`).toBe(false);
    writeFileSync(path, text);
    return;
  }
  const before = readFileSync(path, 'utf8');
  if (place === 'top') {
    writeFileSync(path, text + before);
    return;
  }
  const parts = before.split(place.after);
  expect(parts, `${file} has “${place.after}” once`).toHaveLength(2);
  writeFileSync(path, `${parts[0]}${place.after}\n${text.replace(/\n$/, '')}${parts[1]}`);
}

describe('a quantity, a recipe and an activity of a department’s own, as the page for contributors has them', () => {
  let copy = '';
  beforeAll(() => {
    copy = mkdtempSync(join(tmpdir(), 'own-quantity-'));
    for (const part of ['src', 'scripts', 'tests/lab', 'tests/published', 'tests/tsconfig.json', 'tsconfig.json']) {
      // What pushes is installed among the scripts, and is no source.
      cpSync(join(root, part), join(copy, part), { recursive: true, filter: (path) => !path.endsWith('node_modules') });
    }
    cpSync(join(root, 'package.json'), join(copy, 'package.json'));
    symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));
    for (const block of blocks()) follow(block, copy);
  }, 120_000);
  afterAll(() => {
    rmSync(copy, { recursive: true, force: true });
  });

  it.each([
    ['A quantity', 6],
    ['A recipe', 2],
    ['An activity', 2],
  ])('%s touches at most %i files', (name, most) => {
    const files = new Set(blocks().flatMap(({ section, file }) => (section.startsWith(name) ? [file] : [])));
    expect(files.size).toBeGreaterThan(1);
    expect(files.size).toBeLessThanOrEqual(most);
  });

  it('adds a quantity with two slips', () => {
    const [entry] = blocks().filter(({ file }) => file.startsWith('src/lab/quantities/'));
    expect(entry?.text.match(/\{ id: '/g)).toHaveLength(2);
  });

  it('compiles', async () => {
    const outcome = await run(process.execPath, [join(root, 'node_modules/typescript-7/bin/tsc'), '-p', copy]).catch(
      (error: { readonly stdout: string }) => error,
    );
    expect(outcome.stdout).toBe('');
  }, 300_000);

  it('passes the tests of quantities, slips, hints, feedback and activities', async () => {
    const files = ['quantities', 'slips', 'feedbackTexts', 'activities'].map((name) => `tests/lab/${name}.test.ts`);
    const { VITEST: _inner, ...env } = process.env;
    const outcome = await run(
      process.execPath,
      [
        ...[join(root, 'node_modules/vitest/vitest.mjs'), 'run', '--root', copy, '--testTimeout', '120000'],
        ...['--no-isolate', '--maxWorkers', '1', ...files],
      ],
      { env },
    ).catch((error: { readonly stdout: string; readonly stderr: string }) => error);
    expect(`${outcome.stdout}\n${outcome.stderr}`).not.toMatch(/FAIL|Error/);
    expect(outcome.stdout).toMatch(/4 passed/);
  }, 300_000);

  it('gives twelve teams numbers of their own, a list of what to prepare, and names the slips', async () => {
    const from = <Module>(file: string) => import(/* @vite-ignore */ join(copy, 'src/lab', file)) as Promise<Module>;
    const { activityById } = await from<typeof import('../../src/lab/lesson/activities.ts')>('lesson/activities.ts');
    const { numbersForTeams } =
      await from<typeof import('../../src/lab/numbers/numbersForTeams.ts')>('numbers/numbersForTeams.ts');
    const { defaultSettings, defaultShelf } =
      await from<typeof import('../../src/lab/lesson/defaultSettings.ts')>('lesson/defaultSettings.ts');
    const { startingGivens } =
      await from<typeof import('../../src/lab/lesson/startingGivens.ts')>('lesson/startingGivens.ts');
    const { dayPreparation } = await from<typeof import('../../src/lab/preparation/dayPreparation.ts')>(
      'preparation/dayPreparation.ts',
    );
    const { preparationRows } = await from<typeof import('../../src/lab/preparation/preparationRows.ts')>(
      'preparation/preparationRows.ts',
    );
    const { judgeTeam } = await from<typeof import('../../src/lab/judging/judgeTeam.ts')>('judging/judgeTeam.ts');

    const activity = activityById('sugar water');
    if (activity === undefined) throw new Error('the activity was not added');
    const names = Array.from({ length: 6 }, (_, at) => `Team ${at + 1}`);
    const setup = {
      activity: activity.id,
      givens: startingGivens(activity),
      ownNumbers: true,
      settings: { ...defaultSettings, activity: activity.id },
      shelf: defaultShelf,
      classes: [
        { name: 'Fern class', teams: names },
        { name: 'Moss class', teams: names },
      ],
    };
    const numbers = numbersForTeams(setup);
    if (!numbers.ok) throw new Error(numbers.error.advice);
    const { teams, remarks } = numbers.value;
    expect(new Set(teams.map(({ givens }) => JSON.stringify(givens))).size).toBe(12);
    expect(remarks).toEqual([]);
    for (const { givens } of teams) expect(Number(givens['mass of solute'])).toBeLessThanOrEqual(15);

    const day = dayPreparation({ activity, teams, shelf: defaultShelf, settings: setup.settings });
    const grams = teams.reduce((sum, { givens }) => sum + Number(givens['mass of solute']), 0);
    expect(day.solids).toMatchObject([{ formula: 'C12H22O11', teams: 12, grams: Number(grams.toFixed(2)) }]);
    expect(day.balance).toMatchObject({ weighings: 24 });
    const sections = new Set(preparationRows(day, 'point').map(({ section }) => section));
    for (const section of ['solids', 'lay', 'balance', 'cautions']) expect([...sections]).toContain(section);

    for (const { givens } of teams) {
      const [part, whole] = [Number(givens['mass of solute']), Number(givens['mass of solution'])];
      const judged = (entry: number) =>
        judgeTeam({
          givenNames: Object.keys(givens),
          givenValues: Object.values(givens),
          settings: [['activity', activity.id]],
          steps: ['mass fraction'],
          entries: [entry.toPrecision(3)],
        })[0];
      expect(judged((100 * part) / whole)?.status).toBe('on target');
      expect(judged((100 * part) / (whole - part))?.slips).toEqual(['water-as-whole']);
      expect(judged((100 * whole) / part)?.slips).toEqual(['parts-swapped']);
    }
  }, 120_000);
});
