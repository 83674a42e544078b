// How fast whole columns are answered by the script that is pushed, a function from each group over 1,000 and 5,000 rows,
// and a team's whole block. Each is asked once in a fresh context, as the host does, and its loading is left out. Beside
// it a plain loop over the same arithmetic with numbers already read, warm: what reading, checking and wording cost more.
// CPU time, the smallest of several rounds; rates are this machine's.
import { readFileSync } from 'node:fs';
import { setFlagsFromString } from 'node:v8';
import { createContext, runInContext, Script } from 'node:vm';
import { sampleBlock } from './sampleBlock.ts';

// What V8 compiled once, it would take again by its text.
setFlagsFromString('--no-compilation-cache');
const rounds = 5;
const loops = 200;
/** The host stops a cell function after 30 s; a long column should need no more than a tenth of that. */
const limitMs = 3000;
/** Five times the rows should take five times as long; more means that something grows faster than the range. */
const growthLimit = 1.6;

interface Column {
  readonly name: string;
  /** The call, with `rows`, an array of numbers from 0 up, in scope. */
  readonly call: string;
  /** The same arithmetic for one row `i`, into `sum`. */
  readonly plain: string;
}

const columns: readonly Column[] = [
  {
    name: 'MOLARMASS',
    call: 'MOLARMASS(rows.map((i) => [i % 2 ? "CuSO4·5H2O" : "KBr"]))',
    plain: 'i % 2 ? 63.546 + 32.06 + 9 * 15.999 + 10 * 1.008 : 39.0983 + 79.904',
  },
  {
    name: 'SOLUTEMASS',
    call: 'SOLUTEMASS("CuSO4·5H2O", rows.map((i) => [0.1 + i / 1e4]), rows.map((i) => [100 + i]))',
    plain: '249.677 * (0.1 + i / 1e4) * ((100 + i) / 1000)',
  },
  {
    name: 'DILUTIONVOLUME',
    call: 'DILUTIONVOLUME(2, rows.map((i) => [0.1 + i / 1e4]), rows.map((i) => [(100 + i) + " mL"]))',
    plain: '((0.1 + i / 1e4) * (100 + i)) / 2',
  },
  {
    name: 'CONVERTCONCENTRATION',
    call: 'CONVERTCONCENTRATION(rows.map((i) => [0.1 + i / 1e4]), "mol/L", "g/L", "KBr")',
    plain: '(0.1 + i / 1e4) * 119.0023',
  },
  {
    name: 'PERCENTERROR',
    call: 'PERCENTERROR(rows.map((i) => [1 + i / 1e4]), rows.map(() => [1.05]))',
    plain: '(Math.abs(1 + i / 1e4 - 1.05) / 1.05) * 100',
  },
  {
    name: 'ROUNDSIG',
    call: 'ROUNDSIG(rows.map((i) => [1 + i / 1e4]), 3)',
    plain: 'Number((1 + i / 1e4).toPrecision(3))',
  },
  {
    name: 'CHECKENTRY',
    call: 'CHECKENTRY(rows.map((i) => [String(1 + (i % 100) / 1000)]), rows.map(() => [1.05]), 2)',
    plain: 'Math.abs(Number(String(1 + (i % 100) / 1000)) - 1.05) / 1.05 <= 0.02 ? 1 : 0',
  },
];

const code = readFileSync('dist/Code.js', 'utf8');

const cpuMs = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** CPU time of a call in a fresh context, where nothing is compiled yet; every row must have its answer. */
function callMs(call: string, count: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds; round += 1) {
    const context = createContext({});
    runInContext(`${code}\nvar rows = Array.from({ length: ${count} }, (_, i) => i);`, context);
    const asked = new Script(call);
    const start = cpuMs();
    const answer = asked.runInContext(context) as readonly (readonly unknown[])[];
    least = Math.min(least, cpuMs() - start);
    const bad = answer.find((row) => row.some((cell) => cell === undefined || String(cell).startsWith('⚠')));
    if (answer.length !== count || bad) throw new Error(`${call}: ${answer.length} rows, ${JSON.stringify(bad)}`);
  }
  return least;
}

function plainMs(plain: string, count: number): number {
  const loop = new Script(
    `(() => { let sum = 0; for (let again = 0; again < ${loops}; again += 1) for (let i = 0; i < ${count}; i += 1) sum += ${plain}; return sum; })()`,
  );
  const context = createContext({});
  loop.runInContext(context);
  const start = cpuMs();
  loop.runInContext(context);
  return (cpuMs() - start) / loops;
}

let isWithin = true;
const rates = columns.flatMap(({ name, call, plain }) => {
  const taken = [1000, 5000].map((rows) => ({ name, rows, ms: callMs(call, rows), plain: plainMs(plain, rows) }));
  const [short, long] = taken;
  if (short && long) isWithin &&= long.ms <= limitMs && long.ms <= 5 * growthLimit * short.ms;
  return taken;
});
const block = sampleBlock();
const height = (block[3] as readonly unknown[]).length;
const blockCall = `CHECKTEAM(${block.map((cells) => JSON.stringify(cells)).join(', ')})`;
const blockMs = callMs(blockCall, height);
console.table([
  ...rates.map(({ name, rows, ms, plain }) => ({
    name,
    rows,
    ms: ms.toFixed(2),
    'µs a row': ((1000 * ms) / rows).toFixed(2),
    'plain loop, µs a row': ((1000 * plain) / rows).toFixed(4),
  })),
  {
    name: 'CHECKTEAM, a whole block',
    rows: height,
    ms: blockMs.toFixed(2),
    'µs a row': ((1000 * blockMs) / height).toFixed(0),
  },
]);
console.log(
  `wanted: 5,000 rows within ${limitMs} ms, and at most ${5 * growthLimit} times as long as 1,000: ${isWithin ? 'yes' : 'no'}`,
);
process.exitCode = isWithin ? 0 : 1;
