import type { LessonLine } from '../../desk/views.ts';
import { listed, texts } from '../texts.ts';

/** A lesson in a line of facts. */
export const lessonWords = ({ activity, substance, classes, begun }: LessonLine): string =>
  listed([classes.join(', '), substance, activity, texts.next.begun(begun)].filter((fact) => fact !== ''));
