import { membersTexts } from '../texts/members.ts';
import type { Member } from './teamMembers.ts';

/** One person and what they do, or that they are not here. */
export function memberWords({ name, absent, roles }: Member): string {
  const said = [...(absent ? [membersTexts.absent] : []), ...roles];
  return said.length === 0 ? name : `${name}: ${said.join(', ')}`;
}
