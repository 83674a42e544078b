import { describe, expect, it } from 'vitest';
import { namesForCount, teamNames } from '../../src/sidebar/plan/teamNames.ts';

describe('teamNames', () => {
  it('reads one name a line and drops blank lines', () => {
    expect(teamNames(' Basalt \n\n Rose   Quartz\n')).toEqual(['Basalt', 'Rose Quartz']);
  });
});
describe('namesForCount', () => {
  it('adds names that are not taken', () => {
    expect(namesForCount(3, ['Quartz'])).toEqual(['Quartz', 'Basalt', 'Granite']);
  });
  it('brings back names that were set aside before it makes new ones', () => {
    expect(namesForCount(2, ['A'], ['Ours'])).toEqual(['A', 'Ours']);
  });
  it('gives forty different names', () => {
    expect(new Set(namesForCount(40, [])).size).toBe(40);
  });
});
