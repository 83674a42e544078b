import { errorText } from '../errors/errorText.ts';
import { quoted } from '../errors/quoted.ts';
import { ownHint } from '../lab/hints/ownHint.ts';
import type { CellValue } from '../measurement/cellValue.ts';
import { cellText } from './cellText.ts';
import { words } from './words.ts';

/** Links of the Help sheet that no team is shown, since they are no web addresses: in words for people, line by line. */
export function linkProblems(cells: readonly (readonly CellValue[])[]): readonly string[] {
  const { help } = words;
  const heading = cells.findIndex((line) => cellText(line[0]) === help.step && cellText(line[3]) === help.link);
  if (heading < 0) return [];
  const problems: string[] = [];
  for (const line of cells.slice(heading + 1)) {
    const [step, level, , link] = line.map(cellText);
    if (step === undefined || step === '' || link === undefined || link === '') continue;
    if (ownHint([line], { stepId: step, level: Number(level) }).link !== '') continue;
    problems.push(
      errorText({
        code: 'plan-line',
        argument: help.where({ step, level: level ?? '' }),
        received: `${quoted(link)} is not ${help.linkExpected}`,
        advice: help.linkAdvice,
      }),
    );
  }
  return problems;
}
