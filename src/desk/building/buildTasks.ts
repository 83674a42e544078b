import { freeName } from '../../workbook/freeName.ts';
import type { Lesson } from '../../workbook/lesson.ts';
import { classNames, teamsOf } from '../../workbook/planWorkbook.ts';
import { newSheetNames } from '../../workbook/sheetNames.ts';
import type { SheetRole } from '../../workbook/workbook.ts';
import { type ClassInFile, classesInFile } from '../classes/classesInFile.ts';
import type { Book } from '../file/book.ts';
import { stampOf } from '../file/dayIn.ts';
import { sheetInUse, sheetToRead } from '../file/sheets.ts';
import { deskWords } from '../words.ts';
import { type BuildNote, type BuildTask, type BuildWish, noteIn, roleName } from './buildNote.ts';

/** The note of a build that is about to begin: every sheet that is to be made or looked over, and how it will be called. */
export function newNote(
  book: Book,
  { lesson, wish }: { readonly lesson: Lesson; readonly wish: BuildWish },
): BuildNote {
  const earlier = noteIn(book);
  const all = tasksFor(book, lesson);
  const joining =
    wish.joins === undefined
      ? all
      : tasksJoining(book, { all, lesson, ...wish.joins, isPractice: wish.practice !== undefined });
  // What an earlier build has left undone is done as well.
  const undone = (earlier?.tasks.slice(earlier.done) ?? []).map(taskName);
  const tasks = all.filter((task) => joining.includes(task) || undone.includes(taskName(task)));
  const isFirst = !book.sheets.some(({ tag, kept }) => tag !== null || kept);
  return {
    version: 2,
    wish,
    tasks,
    done: 0,
    stamp: earlier?.stamp ?? stampOf(book),
    names: namesFor({ book, tasks, earlier, lesson }),
    // A build that is begun again goes by its beginning.
    emptySheet: earlier === undefined ? (isFirst ? book.emptySheet : null) : earlier.emptySheet,
    shownBefore: earlier === undefined ? (isFirst ? null : book.activeSheet) : earlier.shownBefore,
    made: earlier?.made ?? false,
  };
}

const taskName = ({ role, aside }: BuildTask): string => JSON.stringify([roleName(role), aside ?? null]);

function tasksFor(book: Book, lesson: Lesson): readonly BuildTask[] {
  const { buildLabels: say } = deskWords;
  const inFile = classesInFile(book).filter(({ sheet }) => sheet !== undefined);
  const wanted = classNames(lesson).map((name) => ({ name, keys: teamsOf(lesson, name).map(({ key }) => key) }));
  const found = sheetsFor(wanted, inFile);
  const taken = inFile.map(({ id }) => id);
  const classes = wanted.map(({ name, keys }, index): BuildTask => {
    // A new class may be called as another one was when its sheet was made.
    const id = found[index]?.id ?? freeName(name, taken);
    taken.push(id);
    return { role: { kind: 'class', className: id }, label: name, keys };
  });
  const gone = inFile.filter((one) => !found.includes(one));
  return [
    { role: { kind: 'plan' }, label: say.plan },
    { role: { kind: 'help' }, label: say.help },
    { role: { kind: 'prepare' }, label: say.prepare },
    ...classes,
    ...gone.map(
      ({ id, name, sheet }): BuildTask => ({
        role: { kind: 'class', className: id },
        label: say.putAside(name),
        aside: sheet?.id ?? 0,
      }),
    ),
    { role: { kind: 'progress' }, label: say.progress },
    { role: { kind: 'poll' }, label: say.poll },
  ];
}

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
  const isOwn = ({ keys: own, aside }: BuildTask) =>
    aside === undefined && own?.some((key) => keys.includes(key)) === true;
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
  for (const { role, label, aside } of tasks) {
    if (aside === undefined) names[roleName(role)] = promised[roleName(role)] ?? freshName(role, label);
  }
  return names;
}

/** The name that the sheet of a role has, or will have. */
export const nameOf = (book: Book, note: BuildNote, role: SheetRole): string => {
  const sheet = sheetToRead(book, role);
  return sheet?.tag?.name ?? sheet?.name ?? note.names[roleName(role)] ?? role.className ?? role.kind;
};
