// How long 40 teams wait for their numbers, and how different these are. Times are this machine's.

import { sampleSetup } from '../../src/lab/lesson/sampleLesson.ts';
import { numbersForTeams } from '../../src/lab/numbers/numbersForTeams.ts';

const rounds = 15;
const limitMs = 1000;

const classes = ['first', 'second', 'third', 'fourth'].map((name) => ({
  name,
  teams: Array.from({ length: 10 }, (_, at) => `team ${at + 1}`),
}));

const taken: number[] = [];
const different: number[] = [];
const givenUp: number[] = [];
for (let round = 0; round < rounds; round += 1) {
  const setup = sampleSetup();
  const start = performance.now();
  const result = numbersForTeams({ ...setup, classes, settings: { ...setup.settings, seed: String(round) } });
  taken.push(performance.now() - start);
  if (!result.ok) throw new Error(result.error.advice);
  different.push(new Set(result.value.teams.map(({ givens }) => Object.values(givens).join())).size);
  givenUp.push(result.value.remarks.length);
}
taken.sort((one, other) => one - other);
const median = taken[rounds >> 1] ?? Number.NaN;
console.table({
  'ms (median)': Math.round(median),
  'ms (slowest)': Math.round(taken[rounds - 1] ?? Number.NaN),
  'different sets of 40 (fewest)': Math.min(...different),
  'remarks on what was given up (most)': Math.max(...givenUp),
});
console.log(`wanted: below ${limitMs} ms for 40 teams, every set different`);
process.exitCode = median < limitMs && Math.min(...different) === 40 ? 0 : 1;
