import { deskSheetName } from '../../../workbook/scratchSheet.ts';
import { ask, type Work } from '../../file/ask.ts';
import type { Finding, Trial } from '../finding.ts';
import { selfCheckWords } from '../words.ts';

const { saw } = selfCheckWords;

/** Whether the teacher's part of the sidebar is open to whoever asks, and should be. */
export function* deskOpen({ role }: Trial): Work<Finding> {
  const name = 'desk';
  const answer = yield* ask('readBook', { kinds: [] });
  if (!answer.ok) {
    if (answer.problem.reason !== 'teacher') return { name, verdict: 'not tried', saw: answer.problem.message };
    return role === 'student'
      ? { name, verdict: 'expected', saw: saw.deskOut }
      : { name, verdict: 'different', saw: saw.deskTeacherOut };
  }
  const hasSheet = answer.value.sheets.some((sheet) => sheet.name === deskSheetName);
  if (!hasSheet) return { name, verdict: 'not tried', saw: saw.deskNone };
  return role === 'teacher'
    ? { name, verdict: 'expected', saw: saw.deskIn }
    : { name, verdict: 'different', saw: saw.deskStudentIn };
}
