// 100,000 random and mutated texts through the readers: no crash, no hang, no number out of nonsense.
import { fuzzReaders } from './fuzz/fuzzReaders.ts';

const [texts = 100_000, seed = 20_261_125] = process.argv.slice(2).map(Number);
const report = fuzzReaders({ texts, seed });
console.log(
  `${report.texts} texts with seed ${seed}: ${report.formulas} read as formulas, ${report.numbers} as numbers, ` +
    `${report.quantities} as quantities of some kind, the rest answered with errors; slowest ${report.slowestMs.toFixed(1)} ms; ` +
    `${report.failures.length} failures`,
);
for (const failure of report.failures.slice(0, 40)) console.error(failure);
if (report.failures.length > 0) process.exitCode = 1;
