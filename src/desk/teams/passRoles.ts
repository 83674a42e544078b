import { membersOn } from '../../lab/members/membersOn.ts';
import { membersText } from '../../lab/members/membersText.ts';
import { readMembers } from '../../lab/members/readMembers.ts';
import { shareRoles } from '../../lab/members/shareRoles.ts';
import { classCalled } from '../classes/classCalled.ts';
import type { Work } from '../file/ask.ts';
import type { File } from '../file/look.ts';
import { attempt, seenOf, writeCells } from '../file/writing.ts';
import { done, type Outcome } from '../outcome.ts';
import { whoCell } from './whoCell.ts';

const kinds = ['plan', 'class'] as const;

/** Passes the roles on in every team of a class whose roles are of another day; pressed twice it changes nothing more. */
export const passRoles = (file: File, className: unknown): Work<Outcome<{ readonly passed: number }>> =>
  attempt(file, kinds, function* (book) {
    const found = classCalled(book, className);
    if (!found.ok) return found;
    const { sheet, reading } = found.value;
    const day = book.today;
    const cells = reading.blocks.flatMap((block) => {
      const before = readMembers(block.who);
      if (before.members.length === 0 || before.day === day) return [];
      const { members } = membersOn(before, day);
      const now = membersText(shareRoles({ before, members, day, passOn: true }));
      return [whoCell({ sheet, block, now })];
    });
    if (cells.length === 0) return done({ passed: 0 });
    const written = yield* writeCells(file, { cells, seen: seenOf(sheet), kinds });
    return written.ok ? done({ passed: cells.length }) : written;
  });
