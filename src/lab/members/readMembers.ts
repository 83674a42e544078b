import { roles } from '../lesson/roles.ts';
import { membersTexts } from '../texts/members.ts';
import type { TeamMembers } from './teamMembers.ts';

/** A line that ends in a date says of which day the roles are. */
const dayLine = /^[^:]*?(\d{4}-\d{2}-\d{2})$/;
const absence = /^(?:(?:is )?(?:not here|absent|away)(?: today)?)$/i;
/** How people write the four roles, in the order of `roles`. */
const spellings = [
  /^calc(?:ulat(?:es?|ing|or))?$/i,
  /^writ(?:es?|ing|er)$/i,
  /^(?:(?:runs?|running) )?(?:the )?bench$/i,
  /^record(?:s|ing|er)?$/i,
] as const;

interface Draft {
  name: string;
  absent: boolean;
  roles: string[];
}

/** Whether a cell still says what it is for, in today's words or in those of earlier sheets. */
export const isInvitation = (words: string): boolean =>
  [membersTexts.heading, membersTexts.earlierHeading].some((one) => one.toLowerCase() === words.toLowerCase());

/**
 * Reads the cell of a team leniently: names between commas, semicolons or lines, each with or without what the person
 * does behind a colon, a dash or in brackets. Whatever is no name, role or absence stays as the person’s own words.
 */
export function readMembers(cell: string): TeamMembers {
  const members: Draft[] = [];
  let day = '';
  for (const part of cell.split(/[\r\n,;]+/)) {
    const piece = part.trim();
    if (piece === '' || isInvitation(piece)) continue;
    const dated = dayLine.exec(piece)?.[1];
    const last = members[members.length - 1];
    if (dated !== undefined) day = dated;
    else if (last !== undefined && isKnown(piece)) say(last, piece);
    else {
      const { name, said } = nameAndWords(piece);
      const member: Draft = { name, absent: false, roles: [] };
      members.push(member);
      say(member, said);
    }
  }
  return { members, day };
}

/** The role of ours that these words mean. */
const roleIn = (words: string): string | undefined => roles[spellings.findIndex((spelling) => spelling.test(words))];

const isKnown = (words: string): boolean =>
  absence.test(words) || roleIn(words) !== undefined || words.toLowerCase() === membersTexts.helps;

function nameAndWords(piece: string): { readonly name: string; readonly said: string } {
  const split = /^(.+?)(?:\s*:|\s+[-–—]\s)\s*(.*)$/.exec(piece) ?? /^(.+?)\s*\(([^)]*)\)$/.exec(piece);
  if (split !== null) return { name: (split[1] ?? '').trim(), said: (split[2] ?? '').trim() };
  // “Ana calculates” without any mark: the name ends where a word that we know begins.
  for (let space = piece.indexOf(' '); space > 0; space = piece.indexOf(' ', space + 1)) {
    const said = piece.slice(space + 1).trim();
    if (isKnown(said)) return { name: piece.slice(0, space).trim(), said };
  }
  return { name: piece, said: '' };
}

function say(member: Draft, said: string): void {
  if (said === '') return;
  if (absence.test(said)) {
    member.absent = true;
    return;
  }
  const parts = said.split(/\s+and\s+|\s*[&/+]\s*/i);
  const each = parts.every((part) => roleIn(part) !== undefined) ? parts : [said];
  for (const part of each) {
    const role = roleIn(part) ?? part;
    if (!member.roles.includes(role)) member.roles.push(role);
  }
}
