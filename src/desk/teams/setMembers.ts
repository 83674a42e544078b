import { membersText } from '../../lab/members/membersText.ts';
import { readMembers } from '../../lab/members/readMembers.ts';
import { shareRoles } from '../../lab/members/shareRoles.ts';
import { membersTexts } from '../../lab/texts/members.ts';
import { teamBlock } from '../classes/teamBlock.ts';
import type { Work } from '../file/ask.ts';
import { type File, known, look } from '../file/look.ts';
import { seenOf, writeCells } from '../file/writing.ts';
import { done, type Outcome, problem } from '../outcome.ts';
import type { TeamMembersView } from '../views.ts';
import { deskWords } from '../words.ts';
import { membersView } from './membersView.ts';
import { whoCell } from './whoCell.ts';

const longestName = 40;
const mostMembers = 8;
const kinds = ['plan', 'class'] as const;

/**
 * Says who is in a team and who of them is absent today, and shares the roles among the others. One cell is written. What
 * somebody wrote into that cell since the sidebar showed it is left alone.
 */
export function* setMembers(
  file: File,
  className: unknown,
  key: unknown,
  wish: unknown,
): Work<Outcome<TeamMembersView>> {
  const { members: say } = deskWords;
  const read = readWish(wish);
  if (read === undefined) return problem({ ...say.shape, received: typeof wish });
  const book = yield* known(file, kinds);
  if (!book.ok) return book;
  const found = teamBlock(book.value, { className, key });
  if (!found.ok) return found;
  const { sheet, block } = found.value;
  const names = readMembers(read.names).members.map(({ name }) => name);
  const where = say.namesIn(block.team);
  if (names.length > mostMembers)
    return problem({ ...say.tooMany(mostMembers), where, received: String(names.length) }, 'names');
  const long = names.find((name) => name.length > longestName);
  if (long !== undefined) return problem({ ...say.long(longestName), where, received: `“${long}”` }, 'names');
  const twice = names.find((name, index) => names.indexOf(name) < index);
  if (twice !== undefined) return problem({ ...say.twice, where, received: say.sameTwice(twice) }, 'names');

  const day = book.value.today;
  const before = readMembers(read.base);
  const text = membersText(
    shareRoles({
      before,
      members: names.map((name) => ({ name, absent: read.absent.includes(name) })),
      day,
      passOn: before.day !== '' && before.day !== day,
    }),
  );
  if (block.who !== read.base) {
    // The same press once more, whose answer was lost: what it wanted stands there.
    return block.who === text ? done(membersView(text, day)) : problem(say.changed, 'names');
  }
  const cell = whoCell({ sheet, block, now: text === '' ? membersTexts.heading : text });
  const written = yield* writeCells(file, { cells: [cell], seen: seenOf(sheet), kinds });
  if (written.ok) return done(membersView(text, day));
  if (written.problem.reason !== 'changed') return written;
  // Read anew, so that the next look shows whose words stand there; what was typed in the sidebar stays there.
  const again = yield* look(file, kinds);
  return again.ok ? problem(say.changed, 'names') : again;
}

interface Wish {
  readonly names: string;
  readonly absent: readonly string[];
  readonly base: string;
}

function readWish(wish: unknown): Wish | undefined {
  if (typeof wish !== 'object' || wish === null) return undefined;
  const { names, absent, base } = wish as Record<string, unknown>;
  if (typeof names !== 'string' || typeof base !== 'string' || !Array.isArray(absent)) return undefined;
  return { names, base, absent: absent.map(String) };
}
