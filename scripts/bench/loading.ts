// What a cell waits for: loading the script in a fresh context and its first answer there, together, since cost that is
// moved from one to the other helps nobody. Compared in one run with a minified bundle of mathjs's create(all) and its
// first unit answer, the obvious other way to carry units. CPU time, since a busy
// machine stretches the clock; the smallest of many interleaved rounds, since noise only adds. Ratios are what counts.
// V8 keeps what it compiled, by text and across contexts; that is switched off, since the host may start from nothing.
import { readFileSync } from 'node:fs';
import { setFlagsFromString } from 'node:v8';
import { createContext, Script } from 'node:vm';
import { build } from 'esbuild';
import { sampleBlock } from './sampleBlock.ts';

setFlagsFromString('--no-compilation-cache');
const rounds = 25;

interface Contender {
  readonly name: string;
  readonly text: string;
  readonly question: string;
  /** Load and first answer, to those of mathjs, at most. */
  readonly limit?: number;
}

const cpuMs = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** Loads a source in a fresh context and asks it something. */
function timed({ text, question }: Contender): { load: number; answer: number } {
  const context = createContext({});
  const start = cpuMs();
  new Script(text).runInContext(context);
  const loaded = cpuMs();
  const answer = new Script(question).runInContext(context);
  if (answer === undefined) throw new Error(`${question} has no answer.`);
  return { load: loaded - start, answer: cpuMs() - start };
}

async function mathjsBundle(): Promise<string> {
  const outcome = await build({
    stdin: {
      contents: "import { create, all } from 'mathjs'; globalThis.math = create(all);",
      resolveDir: process.cwd(),
    },
    bundle: true,
    minify: true,
    format: 'iife',
    target: 'es2019',
    write: false,
  });
  return outcome.outputFiles[0]?.text ?? '';
}

const ours = readFileSync(process.argv[2] ?? 'dist/Code.js', 'utf8');
const block = sampleBlock()
  .map((cells) => JSON.stringify(cells))
  .join(', ');
const mathjs = {
  name: 'mathjs: 0.5 L to mL',
  text: await mathjsBundle(),
  question: 'math.evaluate("0.5 L to mL").toString()',
};
const contenders: readonly Contender[] = [
  mathjs,
  { name: 'MOLARMASS', text: ours, question: 'MOLARMASS("CuSO4·5H2O")', limit: 0.07 },
  { name: 'SOLUTEMASS', text: ours, question: 'SOLUTEMASS("CuSO4·5H2O", 0.25, "0.5 L")', limit: 0.07 },
  { name: 'CHECKTEAM, a whole block', text: ours, question: `CHECKTEAM(${block})`, limit: 0.18 },
];

const taken = contenders.map(() => ({ load: [] as number[], answer: [] as number[] }));
for (let round = 0; round < rounds; round += 1) {
  contenders.forEach((contender, place) => {
    const { load, answer } = timed(contender);
    taken[place]?.load.push(load);
    taken[place]?.answer.push(answer);
  });
}
const least = (values: readonly number[] = []): number => Math.min(...values);
const rows = contenders.map(({ name, text }, place) => ({
  name,
  kB: Math.round(Buffer.byteLength(text) / 1024),
  'load ms': least(taken[place]?.load),
  'load and first answer ms': least(taken[place]?.answer),
}));
const other = rows[0] as (typeof rows)[number];
const toMathjs = (row: (typeof rows)[number]): number =>
  row['load and first answer ms'] / other['load and first answer ms'];
console.table(
  rows.map((row, place) => ({
    ...row,
    'load ms': row['load ms'].toFixed(2),
    'load and first answer ms': row['load and first answer ms'].toFixed(2),
    'load, to mathjs': (row['load ms'] / other['load ms']).toFixed(3),
    'both, to mathjs': toMathjs(row).toFixed(3),
    'wanted at most': contenders[place]?.limit ?? '',
  })),
);
const missed = rows.filter((row, place) => toMathjs(row) > (contenders[place]?.limit ?? Number.POSITIVE_INFINITY));
for (const { name } of missed) console.log(`${name} takes longer than wanted.`);
process.exitCode = missed.length > 0 ? 1 : 0;
