import { cruise, type ICruiseResult } from 'dependency-cruiser';
import { describe, expect, it } from 'vitest';
import configuration from '../../.dependency-cruiser.mjs';

async function look(folder: string): Promise<ICruiseResult> {
  const { forbidden, options } = configuration;
  const outcome = await cruise([folder], { ...options, validate: true, ruleSet: { forbidden: forbidden ?? [] } });
  return outcome.output as ICruiseResult;
}

const broken = (result: ICruiseResult) =>
  result.summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} → ${to}`);

describe('rooms', () => {
  it('import only what stands below them', async () => {
    const result = await look('src');
    expect(broken(result)).toEqual([]);
    expect(result.summary.totalCruised).toBeGreaterThan(40);
  });
  it('are watched: a planted import is caught', async () => {
    expect(broken(await look('tests/rooms/fixture/src'))).toEqual([
      'errors-reaches-too-far: tests/rooms/fixture/src/errors/planted.ts → tests/rooms/fixture/src/chemistry/mass.ts',
    ]);
  });
});
