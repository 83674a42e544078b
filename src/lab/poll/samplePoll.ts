import { pollTexts } from '../texts/poll.ts';
import { sampleTexts } from '../texts/sample.ts';
import type { PollAnswer } from './pollAnswer.ts';

/** For each answer the place on the scale of its four marks, 0 for the most; a hyphen passes a statement over. */
const earlier = [
  ['1322', '2311', '2220', '1331', '0210'],
  ['2231', '1310', '2-21', '3320'],
];
const latest = [
  ['0110', '1210', '0011', '11-0', '2120', '0101'],
  ['1121', '0210', '2131', '1010', '0120'],
];

/** An invented poll of the invented school: two days, so that there is a change to see. */
export function samplePoll({
  today,
  dayBefore,
}: {
  readonly today: string;
  readonly dayBefore: string;
}): readonly PollAnswer[] {
  const { statements, scale, from } = pollTexts;
  const round = (day: string, marks: readonly (readonly string[])[], lines: readonly string[]): PollAnswer[] =>
    sampleTexts.classes.flatMap(({ name }, classAt) =>
      (marks[classAt] ?? []).map((places, index) => ({
        day,
        className: name,
        from: index % 3 === 2 ? from.student : from.team,
        marks: statements.map((_, place) => scale[Number(places.charAt(place))] ?? ''),
        openLine: (classAt === 0 ? lines[index] : '') ?? '',
      })),
    );
  return [...round(dayBefore, earlier, sampleTexts.pollBefore), ...round(today, latest, sampleTexts.poll)];
}
