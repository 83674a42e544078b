import { decimalMarkOf } from '../../lab/lesson/lessonSettings.ts';
import { proposedSolutes } from '../../lab/lesson/solutes.ts';
import { layoutVersion } from '../../workbook/layout.ts';
import { linkProblems } from '../../workbook/linkProblems.ts';
import { checksComeFromSidebar } from '../../workbook/writtenChecks.ts';
import { noteIn, stateOf } from '../building/buildNote.ts';
import { classesInUse } from '../classes/classesInUse.ts';
import { classInFront } from '../classes/classInFront.ts';
import type { Book, BookSheet } from '../file/book.ts';
import { cellsOf, sheetInUse } from '../file/sheets.ts';
import { done, type Outcome } from '../outcome.ts';
import type { LessonView } from '../views.ts';
import { deskWords } from '../words.ts';
import { activityViews } from './activityViews.ts';
import { firstSetup } from './firstSetup.ts';
import { lessonLine } from './lessonLine.ts';
import { type LessonInFile, lessonShown, lessonsInUse, sheetsAway } from './lessonsInFile.ts';
import { planInFile } from './planInFile.ts';

/** The lesson as the Plan has it now, edits by hand included, and what the sidebar can offer. */
export function lessonView(file: Book, chosen?: string): Outcome<LessonView> {
  const note = noteIn(file);
  const inFront = classInFront(file);
  const shown = lessonShown(file, chosen);
  const book = shown?.book ?? file;
  const offer = {
    lesson: shown?.id ?? '',
    lessons: lessonsInUse(file).map(lessonLine),
    awayCount: new Set(sheetsAway(file).map(({ lesson }) => lesson)).size,
    worksOutChecks: lessonsInUse(file).some(fromSidebar),
    activities: activityViews(),
    solutes: proposedSolutes(),
    classes: classesInUse(file)
      .filter(({ sheet }) => sheet?.tag?.state === 'built')
      .map(({ name }) => name),
    ...(inFront === undefined ? {} : { inFront }),
    ...(note === undefined ? {} : { building: stateOf(note) }),
  };
  const plan = planInFile(book);
  if (plan.state === 'unreadable') return { ok: false, problem: plan.problem };
  if (plan.state === 'none') {
    const { decimalMark } = book;
    return done({ ...offer, built: false, setup: firstSetup(decimalMark), keys: [], decimalMark, problems: [] });
  }
  const { setup, teams, problems } = plan.reading;
  const help = sheetInUse(book, { kind: 'help' });
  return done({
    ...offer,
    built: offer.classes.length > 0,
    setup,
    keys: teams.map(({ key }) => key),
    decimalMark: decimalMarkOf(plan.reading.setup.settings),
    problems: [
      ...(book.sheets.some(isOlder) ? [deskWords.olderSheets] : []),
      ...problems,
      ...(help === undefined ? [] : linkProblems(cellsOf(help))),
    ],
  });
}

const fromSidebar = ({ book }: LessonInFile): boolean => {
  const plan = planInFile(book);
  return plan.state === 'there' && checksComeFromSidebar(plan.reading.setup.settings);
};

const isOlder = ({ tag }: BookSheet): boolean =>
  tag?.kind === 'class' && tag.state === 'built' && tag.layout < layoutVersion;
