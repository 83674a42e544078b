import type { Book } from '../file/book.ts';
import { type LessonInFile, lessonsInUse } from '../lesson/lessonsInFile.ts';
import { type ClassInFile, classesInFile } from './classesInFile.ts';

/** A class of the file with the lesson that it is at. */
export interface ClassInUse extends ClassInFile {
  readonly lesson: LessonInFile;
}

/** Every class of every lesson in use: twice, where it goes from one lesson to the next and is at both. */
export const classesOfLessons = (book: Book): readonly ClassInUse[] =>
  lessonsInUse(book).flatMap((lesson) => classesInFile(lesson.book).map((one) => ({ ...one, lesson })));

/**
 * Every class of every lesson in use. While a class goes from one lesson to the next it is at both: the one whose sheet
 * stands, and of two the later, comes first.
 */
export const classesInUse = (book: Book): readonly ClassInUse[] => {
  const all = classesOfLessons(book);
  const stands = ({ sheet }: ClassInFile): boolean => sheet?.tag?.state === 'built';
  return all.filter((one) => {
    const others = all.filter(({ name, lesson }) => name === one.name && lesson.id !== one.lesson.id);
    const later = others.filter((other) => all.indexOf(other) > all.indexOf(one));
    return stands(one) ? !later.some(stands) : others.length === 0 || (!others.some(stands) && later.length === 0);
  });
};
