// 100,000 random and mutated texts through the readers: no crash, no hang, no number out of nonsense. Then texts of
// 50,000 characters, as many as a cell holds, through every public function: which call takes longest.
import { fuzzReaders } from './fuzz/fuzzReaders.ts';
import { longTexts } from './fuzz/longTexts.ts';

const [texts = 100_000, seed = 20_261_125] = process.argv.slice(2).map(Number);
const report = fuzzReaders({ texts, seed });
console.log(
  `${report.texts} texts with seed ${seed}: ${report.formulas} read as formulas, ${report.numbers} as numbers, ` +
    `${report.quantities} as quantities and ${report.entries} as entries of some kind, the rest answered with errors; slowest ${report.slowestMs.toFixed(1)} ms; ` +
    `${report.failures.length} failures`,
);
for (const failure of report.failures.slice(0, 40)) console.error(failure);
const long = longTexts(50_000);
console.log(`${long.calls} calls with 50,000 characters in one place; the slowest, in ms of the processor:`);
for (const { call, ms } of long.slowest) console.log(`${ms.toFixed(1).padStart(7)}  ${call}`);
for (const failure of long.failures.slice(0, 40)) console.error(failure);
if (report.failures.length + long.failures.length > 0) process.exitCode = 1;
