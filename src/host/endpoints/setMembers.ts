import { membersText } from '../../lab/members/membersText.ts';
import { readMembers } from '../../lab/members/readMembers.ts';
import { shareRoles } from '../../lab/members/shareRoles.ts';
import { membersTexts } from '../../lab/texts/members.ts';
import type { Outcome, TeamMembersView } from '../calls.ts';
import { dayOf } from '../dayOf.ts';
import { membersView } from '../membersView.ts';
import { done, problem } from '../outcome.ts';
import { openSpreadsheet } from '../spreadsheet.ts';
import { teamBlock } from '../teamBlock.ts';
import { hostWords } from '../words.ts';
import { writeMembers } from '../writeMembers.ts';

const longestName = 40;
const mostMembers = 8;

/**
 * Says who is in a team and who of them is absent today, and shares the roles among the others. One cell is written, and
 * no lock is taken for it, so that nobody's typing and no count of tries waits. What somebody wrote into that cell since
 * the sidebar read it is left alone.
 */
export function setMembers(className: unknown, key: unknown, wish: unknown): Outcome<TeamMembersView> {
  const { members: say } = hostWords;
  const read = readWish(wish);
  if (read === undefined) return problem({ ...say.shape, received: typeof wish });
  const spreadsheet = openSpreadsheet();
  const found = teamBlock({ spreadsheet, className, key });
  if (!found.ok) return found;
  const { sheet, block } = found.value;
  const { who, headingRow } = block;
  if (who !== read.base) return problem(say.changed, 'names');

  const names = readMembers(read.names).members.map(({ name }) => name);
  const where = say.namesIn(block.team);
  if (names.length > mostMembers)
    return problem({ ...say.tooMany(mostMembers), where, received: String(names.length) }, 'names');
  const long = names.find((name) => name.length > longestName);
  if (long !== undefined) return problem({ ...say.long(longestName), where, received: `“${long}”` }, 'names');
  const twice = names.find((name, index) => names.indexOf(name) < index);
  if (twice !== undefined) return problem({ ...say.twice, where, received: say.sameTwice(twice) }, 'names');

  const day = dayOf(spreadsheet, Date.now());
  const before = readMembers(who);
  const team = shareRoles({
    before,
    members: names.map((name) => ({ name, absent: read.absent.includes(name) })),
    day,
    passOn: before.day !== '' && before.day !== day,
  });
  const text = membersText(team);
  writeMembers(sheet, { headingRow, text: text === '' ? membersTexts.heading : text });
  return done(membersView(text, day));
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
