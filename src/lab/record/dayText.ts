import { recordWords } from '../texts/record.ts';
import type { ClassFacts } from './classFacts.ts';
import { type RecordEntry, wordFields } from './recordEntry.ts';

export interface ClassText {
  readonly entry: RecordEntry;
  /** Left out where the text is to hold no names. */
  readonly names?: ClassFacts['names'];
}

/** The day in plain text, a paragraph for each class; lines without anything to say are left out. */
export function dayText({ day, classes }: { readonly day: string; readonly classes: readonly ClassText[] }): string {
  const paragraphs = classes.map((each) => classLines(each).join('\n'));
  return [recordWords.day(day), ...(paragraphs.length === 0 ? [recordWords.nothing] : paragraphs)].join('\n\n');
}

function classLines({ entry, names }: ClassText): readonly string[] {
  const { labels } = recordWords;
  const line = (label: string, words: string) =>
    words.trim() === '' ? [] : [`${capital(label)}: ${words.trim().replace(/\s*\n\s*/g, ' ')}`];
  const namesOf = (field: string): readonly string[] =>
    field === 'present' ? (names?.present ?? []) : field === 'finished' ? (names?.finished ?? []) : [];
  return [
    `${entry.className}: ${entry.activity}`,
    ...line(labels.aim, entry.aim),
    ...line(labels.substance, entry.substance),
    ...line(labels.concentrations, entry.concentrations),
    ...wordFields.flatMap((field) => {
      const some = namesOf(field);
      const words = line(labels[field], entry[field]);
      return words.map((text) => (some.length === 0 ? text : recordWords.named(text, some)));
    }),
    ...line(recordWords.absentLabel, (names?.absent ?? []).join(', ')),
    ...line(recordWords.missingLabel, recordWords.missing(names?.absentMembers ?? [])),
  ];
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
