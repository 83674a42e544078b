// What every custom-function call pays: loading the script in a fresh context. Compared in one run with a minified
// bundle of mathjs's create(all), the obvious other way to carry units. Prints ratios; times are this machine's.
import { readFileSync } from 'node:fs';
import { createContext, Script } from 'node:vm';
import { build } from 'esbuild';

const rounds = 41;
const limit = 0.15;

/** Loads a source in a fresh context and asks it something; the comment keeps V8 from reusing compiled code. */
function timed(source: string, question: string, round: number): { load: number; answer: number } {
  const context = createContext({});
  const start = performance.now();
  new Script(`${source}\n// ${round}`).runInContext(context);
  const loaded = performance.now();
  new Script(`${question} // ${round}`).runInContext(context);
  return { load: loaded - start, answer: performance.now() - start };
}

const median = (values: number[]) => values.sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;

export async function loading(): Promise<boolean> {
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
  const sources = [
    {
      name: 'dist/Code.js',
      text: readFileSync('dist/Code.js', 'utf8'),
      question: 'SOLUTEMASS("CuSO4·5H2O", 0.25, "0.5 L")',
    },
    {
      name: 'mathjs create(all), minified',
      text: outcome.outputFiles[0]?.text ?? '',
      question: 'math.evaluate("0.5 L to mL").toString()',
    },
  ];
  const taken = sources.map(() => ({ load: [] as number[], answer: [] as number[] }));
  for (let round = 0; round < rounds; round++) {
    sources.forEach(({ text, question }, place) => {
      const { load, answer } = timed(text, question, round);
      taken[place]?.load.push(load);
      taken[place]?.answer.push(answer);
    });
  }
  const rows = sources.map(({ name, text }, place) => ({
    name,
    kB: Math.round(text.length / 1024),
    'load ms (median)': Number(median(taken[place]?.load ?? []).toFixed(2)),
    'first answer ms': Number(median(taken[place]?.answer ?? []).toFixed(2)),
  }));
  console.table(rows);
  const ratio = (rows[0]?.['load ms (median)'] ?? 0) / (rows[1]?.['load ms (median)'] ?? 1);
  const answerRatio = (rows[0]?.['first answer ms'] ?? 0) / (rows[1]?.['first answer ms'] ?? 1);
  console.log(
    `loading, ours to mathjs: ${ratio.toFixed(3)} (wanted: at most ${limit}); to the first answer: ${answerRatio.toFixed(3)}`,
  );
  return ratio <= limit;
}

process.exitCode = (await loading()) ? 0 : 1;
