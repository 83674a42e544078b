import type { CautionLanguage } from './cautionLanguages/cautionLanguage.ts';
import { spanish } from './cautionLanguages/spanish.ts';

/** Languages in which cautions can stand beside the first, by the name that the Plan gives them. */
export const cautionLanguages: Readonly<Record<string, CautionLanguage>> = { Spanish: spanish };
