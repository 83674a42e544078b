import { describe, expect, it } from 'vitest';
import type { Guide } from '../../src/sidebar/guides/guide.ts';
import { guides } from '../../src/sidebar/guides/guides.ts';
import { texts } from '../../src/sidebar/texts.ts';
import { words } from '../../src/workbook/words.ts';

const said = ({ about, parts }: Guide): readonly string[] => [
  about,
  ...parts.flatMap(({ title, steps = [], lines = [] }) => [title, ...steps, ...lines]),
];
const quotedIn = (guide: Guide): readonly string[] =>
  said(guide).flatMap((line) => [...line.matchAll(/“([^”]+)”/g)].map(([, name = '']) => name));

/** What stands on buttons, tabs and headings, with the first word of those that say more. */
const named = new Set([
  ...Object.values(texts.views),
  ...[...words.class.headings].flatMap((name) => [name, name.split(' ')[0]]),
  texts.classNow.close,
  ...Object.values(texts.states).map(({ word }) => word),
  texts.plan.safety,
  texts.next.button,
  texts.next.earlier,
  texts.sheets.linksTitle,
  texts.teams.practice.title,
  texts.teams.ownHelp.summary({ level: '', hasTask: false }),
  texts.pages.cover.title,
  texts.plan.exitQuestions,
  texts.plan.checks,
  texts.plan.checksFrom,
  texts.plan.checksFroms.sidebar,
  texts.plan.sample.out,
]);
const headings = Object.values(guides).flatMap(({ parts }) => parts.map(({ title }) => title));
const known = new Set([...named, ...headings].map((name) => String(name).toLowerCase()));

describe('a guide', () => {
  it.each(Object.entries(guides))('for %s names only what stands on the screen', (_, guide) => {
    expect(quotedIn(guide).filter((name) => !known.has(name.toLowerCase()))).toEqual([]);
  });

  it.each(Object.entries(guides))('for %s keeps to lines that are read in one go', (_, guide) => {
    expect(said(guide).filter((line) => line.split(/\s+/).length > 55)).toEqual([]);
  });

  it('for students fits half a page', () => {
    expect(said(guides.students).join(' ').split(/\s+/).length).toBeLessThanOrEqual(230);
  });
});
