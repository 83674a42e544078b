import { departmentGuide } from './departmentGuide.ts';
import type { Guide } from './guide.ts';
import { studentGuide } from './studentGuide.ts';
import { teacherGuide } from './teacherGuide.ts';

/** The pages for people, by the name that a printed one is opened with. A translation replaces the three files. */
export const guides = {
  teacher: teacherGuide,
  students: studentGuide,
  department: departmentGuide,
} satisfies Readonly<Record<string, Guide>>;

export type GuideName = keyof typeof guides;
export const guideNames = Object.keys(guides) as readonly GuideName[];
