import { layoutVersion } from '../../workbook/layout.ts';
import type { Finding, Role, Verdict } from './finding.ts';
import { type QuestionName, questions, selfCheckWords } from './words.ts';

export const questionNames = Object.keys(questions) as readonly QuestionName[];

type Answers = Readonly<Partial<Record<QuestionName, 'yes' | 'no'>>>;

/** What a person answered, as findings like the others; what was left out is none. */
export function answered(answers: Answers): readonly Finding[] {
  const { asked } = selfCheckWords;
  return questionNames.flatMap((name) => {
    const answer = answers[name];
    if (answer === undefined) return [];
    const verdict: Verdict = answer === questions[name].expected ? 'expected' : 'different';
    return [{ name, verdict, saw: asked.answer(asked[answer]) }];
  });
}

/** Words of a probe or of a question. */
export const wordsOf = (name: Finding['name']) =>
  name in questions
    ? questions[name as QuestionName]
    : selfCheckWords.probes[name as keyof typeof selfCheckWords.probes];

/** Without these no check answers, whatever else is as it should be. */
const needed: readonly Finding['name'][] = ['sheet', 'functions', 'spill'];

/** The report as plain text, to be read, kept or pasted as it is. */
export function reportText({
  findings,
  role,
  day,
}: {
  readonly findings: readonly Finding[];
  readonly role: Role;
  /** Year-month-day. */
  readonly day: string;
}): string {
  const say = selfCheckWords;
  const count = (verdict: Verdict) => findings.filter((finding) => finding.verdict === verdict).length;
  const isDifferent = ({ verdict }: Finding) => verdict === 'different';
  const inGeneral = findings.some((finding) => isDifferent(finding) && needed.includes(finding.name))
    ? say.inGeneral.notReady
    : findings.some(isDifferent)
      ? say.inGeneral.look
      : say.inGeneral.ready;
  const unanswered = questionNames.filter((name) => !findings.some((finding) => finding.name === name));
  return [
    say.heading,
    say.ranOn(day, say.roles[role], layoutVersion),
    say.counts(count('expected'), count('different'), count('not tried')),
    inGeneral,
    '',
    ...findings.flatMap((finding, index) => {
      const { title, means, advice } = wordsOf(finding.name);
      const line = `${index + 1}. ${title}: ${say.verdicts[finding.verdict]}. ${finding.saw}`;
      return isDifferent(finding) ? [line, `   ${say.means} ${means}`, `   ${say.advice} ${advice}`] : [line];
    }),
    ...(unanswered.length === 0 ? [] : [say.asked.unanswered(unanswered.map((name) => questions[name].title))]),
    '',
    say.nothingHeld,
  ].join('\n');
}
