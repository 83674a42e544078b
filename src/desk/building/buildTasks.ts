import { freeName } from '../../workbook/freeName.ts';
import type { Lesson } from '../../workbook/lesson.ts';
import { classNames, teamsOf } from '../../workbook/planWorkbook.ts';
import { newSheetNames } from '../../workbook/sheetNames.ts';
import type { SheetRole } from '../../workbook/workbook.ts';
import { type ClassInFile, classesInFile } from '../classes/classesInFile.ts';
import { classesOfLessons } from '../classes/classesInUse.ts';
import type { Book } from '../file/book.ts';
import { stampOf } from '../file/dayIn.ts';
import { sheetInUse, sheetToRead } from '../file/sheets.ts';
import { begunOn, lessonBook, lessonsInUse, ofLesson, sheetsOfLesson } from '../lesson/lessonsInFile.ts';
import { sampleLessons } from '../lesson/sampleLessons.ts';
import { deskWords } from '../words.ts';
import { bookOpened } from './bookOpened.ts';
import { type BuildNote, type BuildTask, type BuildWish, type LeavingTask, noteIn, roleName } from './buildNote.ts';

/** The note of a build that is about to begin: every sheet that is to be made or looked over, and how it will be called. */
export function newNote(
  file: Book,
  { lesson, wish }: { readonly lesson: Lesson; readonly wish: BuildWish },
): BuildNote {
  const id = wish.lesson ?? '';
  const book = bookOpened(file, wish);
  const limited = lessonBook(book, id);
  const earlier = noteIn(book);
  // Teams of classes that were put away keep their lines in the Plan, and have no sheet here.
  const teams = lesson.teams.filter(({ key }) => limited.away?.includes(key) !== true);
  const own = { ...lesson, teams };
  const all = tasksFor({ book, limited, lesson: own, wish });
  const joining =
    wish.joins === undefined
      ? all
      : tasksJoining(book, { all, lesson, ...wish.joins, isPractice: wish.practice !== undefined });
  // What an earlier build has left undone is done as well.
  const undone = (earlier?.tasks.slice(earlier.done) ?? []).map(taskName);
  const tasks = all.filter((task) => joining.includes(task) || undone.includes(taskName(task)));
  const isFirst = !file.sheets.some(({ tag, kept }) => tag !== null || kept);
  return {
    version: 2,
    wish,
    tasks,
    done: 0,
    stamp: earlier?.stamp ?? stampOf(book),
    names: namesFor({ book, tasks, earlier, lesson: own }),
    // A build that is begun again goes by its beginning.
    emptySheet: earlier === undefined ? (isFirst ? book.emptySheet : null) : earlier.emptySheet,
    shownBefore: earlier === undefined ? (isFirst ? null : book.activeSheet) : earlier.shownBefore,
    made: earlier?.made ?? false,
  };
}

const taskName = ({ role, aside, leaves }: BuildTask): string =>
  JSON.stringify([roleName(role), aside ?? leaves?.sheet ?? null]);

function tasksFor({
  book,
  limited,
  lesson,
  wish,
}: {
  readonly book: Book;
  readonly limited: Book;
  readonly lesson: Lesson;
  readonly wish: BuildWish;
}): readonly BuildTask[] {
  const { buildLabels: say } = deskWords;
  const of = wish.lesson ?? '';
  const inFile = classesInFile(limited).filter(({ sheet }) => sheet !== undefined);
  const going = classesLeaving(book, wish);
  const wanted = classNames(lesson).map((name) => ({ name, keys: teamsOf(lesson, name).map(({ key }) => key) }));
  const found = sheetsFor(wanted, inFile);
  const taken = inFile.map(({ id }) => id);
  const classes = wanted.flatMap(({ name, keys }, index): readonly BuildTask[] => {
    const before = going.filter((one) => one.name === name || one.id === found[index]?.id);
    // A new class may be called as another one was when its sheet was made.
    const id = found[index]?.id ?? freeName(before[0]?.id ?? name, taken);
    taken.push(id);
    const role = ofLesson({ kind: 'class', className: id }, of);
    return [
      { role, label: name, keys },
      ...before.map(
        ({ id: className, lesson: old, sheet }): BuildTask => ({
          role: ofLesson({ kind: 'class', className }, old.id),
          label: say.putAway(name),
          leaves: leaving(book, { sheet: sheet?.id ?? 0, lesson: old.id, instead: role }),
        }),
      ),
    ];
  });
  const gone = inFile.filter((one) => !found.includes(one));
  return [
    { role: ofLesson({ kind: 'plan' }, of), label: say.plan },
    { role: { kind: 'help' }, label: say.help },
    { role: ofLesson({ kind: 'prepare' }, of), label: say.prepare },
    ...classes,
    ...gone.map(
      ({ id, name, sheet }): BuildTask => ({
        role: ofLesson({ kind: 'class', className: id }, of),
        label: say.putAside(name),
        aside: sheet?.id ?? 0,
      }),
    ),
    ...lessonsLeft(book, { going, of }),
    ...(wish.removesSample === true ? removals(book, of) : []),
    { role: { kind: 'progress' }, label: say.progress },
    { role: { kind: 'poll' }, label: say.poll },
  ];
}

/** Classes that go over to the lesson from another one. */
const classesLeaving = (book: Book, { from = [], lesson: of = '' }: BuildWish) =>
  classesOfLessons(book).filter(
    ({ lesson, sheet, name, id }) =>
      lesson.id !== of && sheet !== undefined && (from.includes(name) || from.includes(id)),
  );

const leaving = (
  book: Book,
  { sheet, lesson, instead }: { readonly sheet: number; readonly lesson: string; readonly instead: SheetRole },
): LeavingTask => {
  const tab = deskWords.nameBefore(book.sheets.find(({ id }) => id === sheet)?.name ?? '');
  return { sheet, keptName: deskWords.awayName(tab, begunOn(lesson)), instead, tab };
};

/** Plan and Prepare of lessons at which no class is left. */
function lessonsLeft(
  book: Book,
  { going, of }: { readonly going: ReturnType<typeof classesLeaving>; readonly of: string },
): readonly BuildTask[] {
  const ids = going.map(({ sheet }) => sheet?.id);
  const left = lessonsInUse(book).filter(
    ({ id, book: own }) =>
      id !== of &&
      going.some(({ lesson }) => lesson.id === id) &&
      classesInFile(own).every(({ sheet }) => sheet === undefined || ids.includes(sheet.id)),
  );
  const staying = lessonsInUse(book).find(({ id }) => id === of)?.book;
  return left.flatMap(({ id, book: own }) =>
    (['plan', 'prepare'] as const).flatMap((kind): readonly BuildTask[] => {
      const sheet = sheetInUse(own, { kind })?.id;
      if (sheet === undefined) return [];
      const leaves = leaving(book, { sheet, lesson: id, instead: ofLesson({ kind }, of) });
      const stays = staying === undefined ? undefined : sheetInUse(staying, { kind })?.name;
      // One that comes back bears the day of its lesson until then.
      const tab = stays === undefined ? undefined : deskWords.nameBefore(stays);
      return [
        {
          role: ofLesson({ kind }, id),
          label: deskWords.buildLabels.putAway(deskWords.buildLabels[kind]),
          leaves: { ...leaves, tab: plainerTab(leaves.tab, tab) },
        },
      ];
    }),
  );
}

/** Of two tabs that differ by their number the lower; a name of its own stays with the sheet that stays. */
function plainerTab(leaves: string, stays = leaves): string {
  const [one, other] = [leaves, stays].map((name) => /^(.*?)(?: (\d+))?$/.exec(name));
  if (one?.[1] !== other?.[1]) return stays;
  return Number(one?.[2] ?? 1) < Number(other?.[2] ?? 1) ? leaves : stays;
}

/** Every sheet of the sample, in use or put away; Progress is made anew, since its parts are gone. */
const removals = (book: Book, of: string): readonly BuildTask[] => [
  ...sampleLessons(book).flatMap((id) =>
    sheetsOfLesson(book, id).flatMap(({ id: sheet, tag, name }): readonly BuildTask[] => {
      if (tag === null) return [];
      const { kind, className } = tag;
      const instead = ofLesson({ kind }, of);
      const leaves = {
        sheet,
        tab: kind === 'class' ? name : plainerTab(name, sheetInUse(book, instead)?.name),
        ...(kind === 'class' ? {} : { instead }),
      };
      const role = ofLesson({ kind, ...(className === undefined ? {} : { className }) }, id);
      return [{ role, label: deskWords.buildLabels.remove(name), leaves }];
    }),
  ),
  ...[sheetInUse(book, { kind: 'progress' })].flatMap((sheet): readonly BuildTask[] =>
    sheet === undefined
      ? []
      : [
          {
            role: { kind: 'progress' },
            label: deskWords.buildLabels.remove(sheet.name),
            leaves: { sheet: sheet.id, tab: sheet.name },
          },
        ],
  ),
];

/** Which sheet each class has: by its teams' keys or, where none of them stands anywhere, by its name. */
function sheetsFor(
  wanted: readonly { readonly name: string; readonly keys: readonly string[] }[],
  inFile: readonly ClassInFile[],
): readonly (ClassInFile | undefined)[] {
  const used = new Set<ClassInFile>();
  const take = (is: (one: ClassInFile) => boolean): ClassInFile | undefined => {
    const one = inFile.find((candidate) => !used.has(candidate) && is(candidate));
    if (one !== undefined) used.add(one);
    return one;
  };
  const byKeys = wanted.map(({ keys }) =>
    take(({ reading }) => reading?.blocks.some(({ key }) => keys.includes(key)) === true),
  );
  return wanted.map(({ name }, index) => byKeys[index] ?? take((one) => one.name === name));
}

/**
 * Who joins in mid-lesson touches the Plan, one class and Progress; the Poll where a class is new to it. Prepare says by
 * itself that its list is of an earlier Plan. Practice is in no count, so not in Progress either.
 */
function tasksJoining(
  book: Book,
  {
    all,
    className,
    lesson,
    isPractice,
  }: {
    readonly all: readonly BuildTask[];
    readonly className: string;
    readonly lesson: Lesson;
    readonly isPractice: boolean;
  },
): readonly BuildTask[] {
  const keys = teamsOf(lesson, className).map(({ key }) => key);
  const isOwn = ({ keys: own }: BuildTask) => own?.some((key) => keys.includes(key)) === true;
  const isNew = all.some((task) => isOwn(task) && sheetInUse(book, task.role) === undefined);
  return all.filter((task) => {
    const { kind } = task.role;
    if (kind === 'class') return isOwn(task);
    return kind === 'poll' ? isNew : kind === 'plan' || (kind === 'progress' && !isPractice);
  });
}

function namesFor({
  book,
  tasks,
  earlier,
  lesson,
}: {
  book: Book;
  tasks: readonly BuildTask[];
  earlier: BuildNote | undefined;
  lesson: Lesson;
}): Readonly<Record<string, string>> {
  const promised = { ...earlier?.names };
  for (const { tag, name } of book.sheets) {
    if (tag !== null) promised[roleName(tag)] = tag.name ?? name;
  }
  const fresh = newSheetNames(classNames(lesson), [...book.sheets.map(({ name }) => name), ...Object.values(promised)]);
  const freshName = ({ kind }: SheetRole, label: string): string =>
    kind === 'class' ? (fresh.classes[label] ?? label) : kind === 'record' || kind === 'key' ? label : fresh[kind];
  const names: Record<string, string> = {};
  for (const { role, label, aside, leaves } of tasks) {
    if ((aside ?? leaves) === undefined) names[roleName(role)] = promised[roleName(role)] ?? freshName(role, label);
  }
  return names;
}

/** The name that the sheet of a role has, or will have. */
export const nameOf = (book: Book, note: BuildNote, role: SheetRole): string => {
  const sheet = sheetToRead(book, role);
  return sheet?.tag?.name ?? sheet?.name ?? note.names[roleName(role)] ?? role.className ?? role.kind;
};
