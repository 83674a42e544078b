import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { glasswareSource } from '../../scripts/generate/glassware.ts';
import { reagentListSource } from '../../scripts/generate/reagentList.ts';
import { soluteListSource } from '../../scripts/generate/soluteList.ts';

const published = (name: string) => new URL(`../published/${name}`, import.meta.url).pathname;
const source = (name: string) => readFileSync(new URL(`../../src/${name}`, import.meta.url), 'utf8');

describe('generated lists', () => {
  it('say what the published tables say', () => {
    expect(source('measurement/glassware.generated.ts')).toBe(glasswareSource(published('glassware-tolerances.csv')));
    expect(source('lab/lesson/reagentList.generated.ts')).toBe(reagentListSource(published('reagents.csv')));
    expect(source('lab/lesson/soluteList.generated.ts')).toBe(soluteListSource(published('reagents.csv')));
  });
});
