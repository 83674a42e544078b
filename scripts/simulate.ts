import { simulateChains } from './simulate/chains.ts';
import { rate, type Share, simulate, tellsAnswer } from './simulate/simulation.ts';

const plans = Number(process.argv[2] ?? 2200);
const seed = process.argv[3] ?? 'students';
const percent = (value: Share) => (value.of === 0 ? '—' : `${(100 * rate(value)).toFixed(2)} %`);
const started = performance.now();
const findings = simulate({ plans, seed });
console.log(`Simulated students over ${findings.plans} generated plans (seed “${seed}”)\n`);
console.log(`right answers on target      ${percent(findings.honest)} of ${findings.honest.of}`);
console.log(
  `rounded in between, at least close ${percent(findings.roundedInBetween)} of ${findings.roundedInBetween.of}`,
);
console.log(
  '\nslip, typed to three figures                       named    alone   named at two figures   cases   hidden',
);
for (const { quantity, id, named, alone, namedAtTwo, hidden } of findings.slips) {
  console.log(
    `${quantity.padEnd(18)}${id.padEnd(31)}${percent(named).padStart(9)}${percent(alone).padStart(10)}${percent(namedAtTwo).padStart(14)}${String(named.of).padStart(15)}${String(hidden).padStart(8)}`,
  );
}
const all = (pickShare: (line: (typeof findings.slips)[number]) => Share): Share =>
  findings.slips
    .map(pickShare)
    .reduce((sum, { hits, of }) => ({ hits: sum.hits + hits, of: sum.of + of }), { hits: 0, of: 0 });
console.log(
  `${'all slips'.padEnd(49)}${percent(all(({ named }) => named)).padStart(9)}${percent(all(({ alone }) => alone)).padStart(10)}${percent(all(({ namedAtTwo }) => namedAtTwo)).padStart(14)}`,
);
console.log('\nrandom wrong numbers that a slip is named for');
for (const figures of [4, 3, 2, 1] as const)
  console.log(`  ${figures} figures  ${percent(findings.accused[figures])} of ${findings.accused[figures].of}`);
console.log(`right answers with one mistyped digit: ${percent(findings.mistyped)} of ${findings.mistyped.of}`);
console.log(`texts that hold the answer: ${findings.telling.length} of ${findings.texts}`);
for (const text of findings.telling.slice(0, 5)) console.log(`  ${text}`);
const chains = simulateChains({ teams: plans, seed, tellsAnswer });
console.log(`\neveryday activity, ${chains.teams} teams that type to the figures asked and go on from what they typed`);
console.log(`  rows on target: ${chains.rows - chains.notOnTarget.length} of ${chains.rows}`);
console.log(
  `  after a wrong amount, the mass follows and names the row: ${chains.teams - chains.notFollowing.length} of ${chains.teams}`,
);
console.log(`  checks and hints that hold the answer: ${chains.telling.length}`);
console.log(`  one team's call: ${chains.millisecondsATeam.toFixed(2)} ms`);
for (const line of [
  ...chains.notOnTarget.slice(0, 5),
  ...chains.notFollowing.slice(0, 5),
  ...chains.telling.slice(0, 5),
])
  console.log(`  ${line}`);
console.log(`\n${((performance.now() - started) / 1000).toFixed(1)} s`);
