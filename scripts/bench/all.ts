// Every benchmark, each in a process of its own, so that none is measured in what another left behind.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const benches = ['loading', 'ranges', 'numbers'] as const;

const missed = benches.filter((name) => {
  console.log(`\n${name}`);
  const path = fileURLToPath(new URL(`./${name}.ts`, import.meta.url));
  return spawnSync(process.execPath, ['--import', 'tsx', path], { stdio: 'inherit' }).status !== 0;
});
if (missed.length > 0) console.log(`\nmissed what was wanted: ${missed.join(', ')}`);
process.exitCode = missed.length > 0 ? 1 : 0;
