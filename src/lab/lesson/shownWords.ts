import { isBareNumber } from '../../measurement/isBareNumber.ts';
import type { Given, Shown, Step } from './activity.ts';

interface TeamNumbers {
  /** A team's own values, as typed. */
  readonly values: Readonly<Record<string, string>>;
  readonly givens: readonly Given[];
}

/**
 * The line under a step's title with the team's own values in it, as the class sheet shows it: the unit after a value is
 * left out where the value was typed with one of its own.
 */
export const shownWords = ({ shown }: Pick<Step, 'shown'>, team: TeamNumbers): string =>
  shown.map((piece, place) => pieceWords({ piece, before: shown[place - 1] }, team)).join('');

const typedFor = (name: string, { values }: TeamNumbers): string => (values[name] ?? '').trim();

function pieceWords({ piece, before }: { piece: Shown; before: Shown | undefined }, team: TeamNumbers): string {
  if (typeof piece === 'string') return typeof before === 'object' ? following(piece, before.given, team) : piece;
  const value = typedFor(piece.given, team);
  return value === '' ? '' : `${piece.before ?? ''}${value}${following(piece.after ?? '', piece.given, team)}`;
}

/** Words after a value, without the unit that they begin with where the value has one. */
function following(words: string, name: string, team: TeamNumbers): string {
  const unit = team.givens.find((given) => given.name === name)?.unit ?? '';
  const start = ` ${unit}`;
  if (unit === '' || !words.startsWith(start) || /^[\w/]/.test(words.slice(start.length))) return words;
  const typed = typedFor(name, team);
  return typed === '' || isBareNumber(typed) ? words : words.slice(start.length);
}
