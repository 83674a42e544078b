import { describe, expect, it } from 'vitest';
import { namesForCount, teamNames } from '../../src/sidebar/plan/teamNames.ts';

describe('teamNames', () => {
  it('reads one name a line and drops blank lines', () => {
    expect(teamNames(' Basalt \n\n Rose   Quartz\n')).toEqual(['Basalt', 'Rose Quartz']);
  });
});
describe('namesForCount', () => {
  it('adds names that are not taken', () => {
    expect(namesForCount(3, { typed: ['Quartz'] })).toEqual(['Quartz', 'Basalt', 'Granite']);
  });
  it('brings back names that were set aside before it makes new ones', () => {
    expect(namesForCount(2, { typed: ['A'], setAside: ['Ours'] })).toEqual(['A', 'Ours']);
  });
  it('gives no class a name that another one has', () => {
    const first = namesForCount(8);
    const second = namesForCount(8, { taken: first });
    const third = namesForCount(40, { taken: [...first, ...second] });
    expect(new Set([...first, ...second, ...third].map((name) => name.toLowerCase())).size).toBe(56);
    expect(second).not.toContain('Team 1');
  });
  it('gives forty different names', () => {
    expect(new Set(namesForCount(40)).size).toBe(40);
  });
});
