const teams = (number: number) => (number === 1 ? '1 team' : `${number} teams`);
const list = (parts: readonly string[]) => parts.join(', ');

/** Words of the day's record. Counts and plain words; names come only in the text that is copied. */
export const recordWords = {
  ofTeams: ({ some, all }: { some: number; all: number }) => `${some} of ${teams(all)}`,
  absent: (number: number) => `${teams(number)} absent`,
  wentWell: (titles: readonly string[]) => `Every team on target: ${list(titles)}.`,
  mostTries: (rows: readonly { title: string; tries: number }[]) =>
    `Most attempts: ${list(rows.map(({ title, tries }) => `${title} (${tries})`))}.`,
  stillOpen: (matches: readonly { words: string; teams: number }[]) =>
    `To clear up: ${list(matches.map(({ words, teams: some }) => `${teams(some)} gave ${words}`))}.`,
  goOnAt: ({ title, teams: some }: { title: string; teams: number }) =>
    `${teams(some)} ${some === 1 ? 'continues' : 'continue'} at “${title}”.`,
  absentLabel: 'absent',
  missingLabel: 'not here',
  missing: (teams: readonly { team: string; names: readonly string[] }[]) =>
    list(teams.map(({ team, names }) => `${list(names)} (${team})`)),
  day: (day: string) => `Record of ${day}`,
  nothing: 'No class has entries today.',
  named: (words: string, names: readonly string[]) => `${words} (${list(names)})`,
  labels: {
    day: 'day',
    className: 'class',
    activity: 'activity',
    aim: 'aim',
    present: 'present',
    finished: 'finished',
    wentWell: 'what went well',
    hard: 'what was hard',
    poll: 'poll',
    next: 'next time',
    notes: 'in your own words',
  },
} as const;
