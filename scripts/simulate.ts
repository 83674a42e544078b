import { simulateChains } from './simulate/chains.ts';
import { simulateGenerated } from './simulate/generatedNumbers.ts';
import { rate, type Share, type SlipShare, simulate, tellsAnswer, total } from './simulate/simulation.ts';

const usage = 'npm run simulate -- [plans of each quantity, 170 unless given] [seed]';
const plansEach = Number(process.argv[2] ?? 170);
const seed = process.argv[3] ?? 'students';
if (!Number.isInteger(plansEach) || plansEach < 1) {
  console.error(`Expected a whole number of plans, 1 or more, received “${process.argv[2]}”. Type ${usage}.`);
  process.exit(1);
}

const missed: string[] = [];
const percent = (value: Share) => (value.of === 0 ? '—' : `${(100 * rate(value)).toFixed(2)} %`);
/** Prints a share beside what is demanded of it, and keeps it in mind where it falls short. */
function demand(what: string, value: Share, { least = 0, below = Infinity }: { least?: number; below?: number }): void {
  const holds = value.of > 0 && rate(value) >= least && rate(value) < below;
  const wanted = below < Infinity ? `below ${100 * below} %` : `at least ${100 * least} %`;
  if (!holds) missed.push(`${what}: ${percent(value)}, wanted ${wanted}`);
  console.log(`${holds ? '✓' : '✗'} ${what.padEnd(64)}${percent(value).padStart(9)} of ${value.of} (${wanted})`);
}
function printSlips(title: string, slips: readonly SlipShare[]): void {
  console.log(`\n${title.padEnd(49)}    named     alone   at two figures   cases  hidden   accuses at random`);
  for (const { quantity, id, named, alone, namedAtTwo, hidden, accused } of slips) {
    const figures = [percent(named).padStart(9), percent(alone).padStart(10), percent(namedAtTwo).padStart(17)];
    const counts = [named.of, hidden].map((number) => String(number).padStart(8)).join('');
    console.log(`${quantity.padEnd(18)}${id.padEnd(31)}${figures.join('')}${counts}${percent(accused).padStart(20)}`);
  }
  demand('the slip is among those named', total(slips.map(({ named }) => named)), { least: 0.99 });
  demand('alone, where no other gives the same figures', total(slips.map(({ alone }) => alone)), { least: 0.95 });
  console.log('\nslips that give the same figures as another, of how many');
  for (const { quantity, id, named, twins } of slips) {
    for (const [other, times] of twins) {
      if (20 * times >= named.of) console.log(`  ${quantity.padEnd(18)}${id} and ${other}: ${times} of ${named.of}`);
    }
  }
}
function printNear(title: string, near: ReadonlyMap<string, Share>): void {
  console.log(`\n${title}`);
  demand('three figures, all quantities', total([...near.values()]), { below: 0.005 });
  for (const [quantity, accused] of near) demand(`  ${quantity}`, accused, { below: 0.012 });
}
const none = (found: readonly string[], of: number): Share => ({ hits: of - found.length, of });

const started = performance.now();
const findings = simulate({ plansEach, seed });
console.log(`Simulated students over ${findings.plans} generated plans (seed “${seed}”)\n`);
demand('right answers, any permitted rounding, on target', findings.honest, { least: 1 });
demand('rounded to three figures in between, close at least', findings.roundedInBetween, { least: 1 });
printSlips('slip, typed to three figures', findings.slips);
console.log('\nA slip is hidden where it gives an answer that is right or close for these numbers.\n');
demand('random wrong numbers accused, four figures', findings.accused[4], { below: 0.005 });
demand('random wrong numbers accused, three figures', findings.accused[3], { below: 0.005 });
demand('random wrong numbers accused, two figures', findings.accused[2], { below: 0.015 });
console.log(`  random wrong numbers accused, one figure: ${percent(findings.accused[1])} of ${findings.accused[1].of}`);
console.log(
  `  right answers with one digit mistyped, accused: ${percent(findings.mistyped)} of ${findings.mistyped.of}`,
);
printNear('random numbers between 0.2 and 3.2 times the answer, accused', findings.accusedNear);
demand('texts free of the answer', none(findings.telling, findings.texts), { least: 1 });

const generated = simulateGenerated({ teams: Math.ceil(findings.plans / 25), seed });
printSlips(`${generated.teams} teams of ${generated.activities} activities`, generated.slips);
demand('right entries, each from the row above as typed, on target', none(generated.notOnTarget, generated.rows), {
  least: 1,
});
demand('every digit kept until it is typed, close at least', none(generated.spareDigits, generated.rows), { least: 1 });
for (const figures of [4, 3, 2] as const) {
  const below = figures === 2 ? 0.015 : 0.005;
  demand(`random wrong numbers in a block accused, ${figures} figures`, generated.accused[figures], { below });
}
printNear('the same in a block', generated.accusedNear);
console.log('\nslips of the activities themselves');
for (const { quantity, id, named, alone, hidden, accused } of generated.activitySlips) {
  demand(`${quantity}: ${id} is among those named (${hidden} hidden)`, named, { least: 0.99 });
  console.log(`    alone, where no other gives the same: ${percent(alone)} of ${alone.of}`);
  console.log(`    accuses a random number: ${percent(accused)} of ${accused.of}`);
}

const chains = simulateChains({ teams: findings.plans, seed, tellsAnswer });
console.log(`\neveryday activity, ${chains.teams} teams that go on from what they typed`);
demand('rows on target', none(chains.notOnTarget, chains.rows), { least: 1 });
demand('after a wrong amount, the mass follows and names its row', none(chains.notFollowing, chains.teams), {
  least: 1,
});
demand('checks and hints at level 3 free of the answer', none(chains.telling, 2 * chains.rows), { least: 1 });
console.log(`  one team's call: ${chains.millisecondsATeam.toFixed(2)} ms`);

for (const text of [
  ...findings.telling,
  ...generated.notOnTarget,
  ...generated.spareDigits,
  ...chains.notOnTarget,
  ...chains.notFollowing,
  ...chains.telling,
].slice(0, 10)) {
  console.log(`  ${text}`);
}
console.log(`\n${((performance.now() - started) / 1000).toFixed(1)} s`);
if (missed.length > 0) {
  console.error(`\nNot met:\n${missed.join('\n')}`);
  process.exit(1);
}
