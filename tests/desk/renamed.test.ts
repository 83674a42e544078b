import { describe, expect, it } from 'vitest';
import { renamed } from '../../src/desk/building/renamed.ts';
import type { ClassSetup } from '../../src/lab/lesson/setup.ts';
import type { PlanReading } from '../../src/workbook/readLesson.ts';

const line = (key: string, className: string, team: string) => ({ key, className, team, givens: {} });
const before = {
  teams: [line('k1', 'Fern class', 'Otter'), line('k2', 'Fern class', 'Heron'), line('k3', 'Moss class', 'Newt')],
} as unknown as PlanReading;
const classes = (fern: readonly string[], name = 'Fern class'): readonly ClassSetup[] => [
  { name, teams: fern },
  { name: 'Moss class', teams: ['Newt'] },
];
const asked = (
  given: readonly ClassSetup[],
  isSame: (keys: readonly string[]) => boolean | undefined = () => undefined,
) => {
  const { before: after, unsure } = renamed({ before, classes: given, isSame });
  return { names: after.teams.map(({ key, className, team }) => `${key} ${className} ${team}`), unsure };
};
const unchanged = ['k1 Fern class Otter', 'k2 Fern class Heron', 'k3 Moss class Newt'];

describe('renamed', () => {
  it('asks nothing where nothing is called otherwise, where somebody is gone, and where somebody is new', () => {
    for (const teams of [['Otter', 'Heron'], ['Heron'], ['Otter', 'Heron', 'Wren']])
      expect(asked(classes(teams))).toEqual({ names: unchanged, unsure: [] });
  });
  it('takes other case and other spaces for a corrected name', () => {
    expect(asked(classes(['otter ', 'Heron'], 'Fern Class'))).toEqual({
      names: ['k1 Fern Class otter ', 'k2 Fern Class Heron', 'k3 Moss class Newt'],
      unsure: [],
    });
  });
  it('asks about any other name in the place of one that is gone', () => {
    expect(asked(classes(['Otters', 'Heron'])).unsure).toEqual([
      { kind: 'team', from: 'Otter', to: 'Otters', className: 'Fern class' },
    ]);
    expect(asked(classes(['Otter', 'Heron'], 'Third period')).unsure).toEqual([
      { kind: 'class', from: 'Fern class', to: 'Third period', className: 'Third period' },
    ]);
  });
  it('goes by the answer: the same keeps its key, somebody else does not', () => {
    const both = classes(['Otters', 'Heron'], 'Third period');
    expect(asked(both, () => true)).toEqual({
      names: ['k1 Third period Otters', 'k2 Third period Heron', 'k3 Moss class Newt'],
      unsure: [],
    });
    expect(asked(both, () => false)).toEqual({ names: unchanged, unsure: [] });
  });
  it('says of whom it asks by their keys', () => {
    const keys: string[][] = [];
    asked(classes(['Otters', 'Heron'], 'Third period'), (given) => {
      keys.push([...given]);
      return true;
    });
    expect(keys).toEqual([['k1', 'k2'], ['k1']]);
  });
});
