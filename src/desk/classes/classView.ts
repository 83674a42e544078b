import { isExitStep } from '../../lab/exit/exitStep.ts';
import { exitSteps } from '../../lab/exit/exitSteps.ts';
import { seatsOf } from '../../lab/exit/seatsOf.ts';
import { activityById } from '../../lab/lesson/activities.ts';
import { decimalMarkOf } from '../../lab/lesson/lessonSettings.ts';
import { isPractice, isTeam } from '../../lab/lesson/practice.ts';
import { activityInUse } from '../../workbook/activityInUse.ts';
import { inTodaysColumns } from '../../workbook/classCells.ts';
import { classNow } from '../../workbook/classNow.ts';
import { classColumns as at } from '../../workbook/layout.ts';
import { obstaclesIn } from '../../workbook/obstaclesIn.ts';
import { percentErrors } from '../../workbook/percentErrors.ts';
import { words } from '../../workbook/words.ts';
import { checksAreWritten } from '../../workbook/writtenChecks.ts';
import type { Book } from '../file/book.ts';
import { cellsOf } from '../file/sheets.ts';
import { planInFile } from '../lesson/planInFile.ts';
import { done, type Outcome } from '../outcome.ts';
import { absentKeys } from '../teams/absentKeys.ts';
import { membersView } from '../teams/membersView.ts';
import type { ClassView } from '../views.ts';
import { deskWords } from '../words.ts';
import { badGivenOf } from './badGivenOf.ts';
import { classCalled } from './classCalled.ts';
import { classInFront } from './classInFront.ts';
import { exitCounts } from './exitCounts.ts';

/** The class now, for the teacher's eyes: teams by steps, whom to talk to first and why. */
export function classView(book: Book, className: unknown): Outcome<ClassView> {
  const found = classCalled(book, className);
  if (!found.ok) return found;
  const { reading, sheet, name, lesson } = found.value;
  const inFile = planInFile(lesson.book);
  if (inFile.state === 'unreadable') return { ok: false, problem: inFile.problem };
  const plan = inFile.state === 'there' ? inFile.reading : undefined;
  const activity = activityById(plan?.setup.activity ?? '');
  const steps = activity === undefined || plan === undefined ? [] : activityInUse(activity, plan).steps;
  const exit = activity && plan ? exitSteps(activity, seatsOf(plan.setup.settings)) : [];
  const titles = new Map([...steps, ...exit].map(({ id, title }) => [id, title]));
  const told = steps.filter(({ kind }) => kind === 'told').map(({ id }) => id);
  const { today, now } = book;
  const absent = absentKeys(plan, today);
  const formulas = new Set(sheet.formulaEntries);
  const errors = percentErrors(
    { ...reading, blocks: reading.blocks.filter(isTeam) },
    {
      steps,
      decimalMark: decimalMarkOf(plan?.setup.settings ?? {}),
    },
  );
  const { talkFirst, sayToClass, notYetKnown } = classNow({
    reading,
    titles,
    told,
    ticked: steps.filter(({ kind }) => kind === 'ticked').map(({ id }) => id),
    badGivens: new Map(
      inFile.state === 'there'
        ? reading.blocks.flatMap((block) => {
            const words = badGivenOf(block, inFile);
            return words === undefined ? [] : [[block.key, words] as const];
          })
        : [],
    ),
    absent,
    extension: activity?.extension ?? '',
    now,
  });
  const isClosed = reading.blocks.some(({ key }) => plan?.closed.includes(key) === true);
  const scored = (step: string) => !told.includes(step) && !isExitStep(step);
  const counts = activity && plan ? exitCounts(reading, { plan, activity, formulas }) : undefined;
  const inFront = classInFront(book);
  const cells = inTodaysColumns(cellsOf(sheet));
  /** What stands above the boxes of a team. */
  const toldAbove = (row: number) => cells[row - 1]?.[at.task - 1];
  const ofOne = checksAreWritten(cellsOf(sheet));
  const inTheWay = reading.blocks.flatMap(({ team, ...block }) =>
    obstaclesIn(block, cellsOf(sheet)).map(({ cell, text }) => deskWords.inTheWay({ cell, text, team, ofOne })),
  );
  return done({
    className: name,
    ...(inFront === undefined ? {} : { inFront }),
    clock: book.clock,
    ...(isClosed ? { closed: true } : {}),
    stepCount: steps.filter(({ kind }) => kind !== 'told').length,
    teams: reading.blocks.map((block) => ({
      team: block.team,
      key: block.key,
      ...(isPractice(block) ? { practice: true as const } : {}),
      ...(absent.includes(block.key) ? { absent: true } : {}),
      ...(toldAbove(block.headingRow) === words.class.numbersChanged ? { numbersChanged: true as const } : {}),
      members: membersView(block.who, today).members,
      done: block.steps.filter(({ step, check }) => scored(step) && check === 'on target').length,
      steps: block.steps.map(({ row, step, check, entry, lookAt, tries, helpWanted, who }) => ({
        id: step,
        title: titles.get(step) ?? step,
        check,
        entry,
        lookAt,
        tries,
        helpWanted,
        who,
        isFormula: formulas.has(row),
      })),
    })),
    talkFirst,
    sayToClass,
    notYetKnown,
    ...(inTheWay.length > 0 ? { inTheWay } : {}),
    ...(counts === undefined ? {} : { exit: counts }),
    ...(errors === undefined ? {} : { percentErrors: errors }),
  });
}
