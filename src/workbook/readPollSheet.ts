import type { PollAnswer } from '../lab/poll/pollAnswer.ts';
import { pollTexts } from '../lab/texts/poll.ts';
import type { CellValue } from '../measurement/cellValue.ts';
import { cellText } from './cellText.ts';
import { pollColumns as at, pollRows } from './layout.ts';

/** The rows of the Poll that somebody has answered, rows added below by hand included. */
export function readPollSheet(cells: readonly (readonly CellValue[])[]): readonly PollAnswer[] {
  const answers: PollAnswer[] = [];
  for (const line of cells.slice(pollRows.firstAnswer - 1)) {
    const text = (column: number) => cellText(line[column - 1]);
    const answer = {
      day: text(at.day),
      className: text(at.className),
      from: text(at.from),
      marks: pollTexts.statements.map((_, place) => text(at.firstStatement + place)),
      openLine: text(at.openLine),
    };
    if (answer.openLine !== '' || answer.marks.some((mark) => mark !== '')) answers.push(answer);
  }
  return answers;
}
