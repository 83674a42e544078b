import { recordLabels } from './recordLabels.ts';

const teams = (number: number) => (number === 1 ? '1 team' : `${number} teams`);
const list = (parts: readonly string[]) => parts.join(', ');

const people = (number: number) => (number === 1 ? '1 person' : `${number} people`);

/** Words of the day's record. Counts and plain words; names come only in the text that is copied. */
export const recordWords = {
  ofTeams: ({ some, all }: { some: number; all: number }) => `${some} of ${teams(all)}`,
  absent: (number: number) => `${teams(number)} absent`,
  peopleAbsent: (number: number) => `${people(number)} absent`,
  concentration: ({ name, from, to, unit }: { name: string; from: string; to: string; unit: string }) =>
    `${name} ${from === to ? from : `${from} to ${to}`} ${unit}`.trim(),
  substance: ({ formula, name }: { formula: string; name: string }) => (name === '' ? formula : `${name}, ${formula}`),
  and: list,
  allFinished: (number: number) =>
    number === 1 ? 'The team finished every step.' : `All ${number} teams finished every step.`,
  someFinished: (number: number) => `${teams(number)} finished every step.`,
  mended: ({ teams: some, title }: { teams: number; title: string }) =>
    `${teams(some)} found ${some === 1 ? 'a slip of its own' : 'slips of their own'} and put ${
      some === 1 ? 'it' : 'them'
    } right without help, ${some === 1 ? 'at' : 'most at'} “${title}”.`,
  wentWell: (titles: readonly string[]) => `Right at the first try in every team: ${list(titles)}.`,
  mostTries: (row: { title: string; tries: number; teams: number; goesOn: boolean }) =>
    `Most attempts${row.goesOn ? ' since the lesson began' : ''}: “${row.title}”, ${row.tries} in ${teams(row.teams)}.`,
  slip: ({ teams: some, words }: { teams: number; words: string }) => `${teams(some)} ${words}.`,
  notRight: ({ teams: some, title }: { teams: number; title: string }) =>
    `${teams(some)} ${some === 1 ? 'has' : 'have'} no right value yet for “${title}”.`,
  /** Where teams go on, most of them first. */
  goOnAt: (places: readonly { title: string; teams: number }[]) =>
    `${list(
      places.map(({ title, teams: some }, index) =>
        index === 0 ? `${teams(some)} ${some === 1 ? 'continues' : 'continue'} at “${title}”` : `${some} at “${title}”`,
      ),
    )}.`,
  stillToRead: (some: number) => `${teams(some)} still ${some === 1 ? 'has' : 'have'} to read the cautions.`,
  wasAbsent: (some: number) =>
    some === 1
      ? '1 team was absent and goes on in its own rows.'
      : `${teams(some)} were absent and go on in their own rows.`,
  absentLabel: 'absent',
  missingLabel: 'not here',
  missing: (teams: readonly { team: string; names: readonly string[] }[]) =>
    list(teams.map(({ team, names }) => `${list(names)} (${team})`)),
  day: (day: string) => `Record of ${day}`,
  nothing: 'No class has entries today.',
  named: (words: string, names: readonly string[]) => `${words} (${list(names)})`,
  labels: recordLabels,
} as const;
