// Stands in for `src/sidebar/askDesk.ts` in the page that browser tests open: answers come by the name of what is asked.
import type { DeskAnswer, DeskArguments, DeskCall, ViewCall } from '../../src/desk/acts.ts';
import { patience, sendToScript } from '../../src/sidebar/callHost.ts';

const slow: readonly DeskCall[] = ['startBuild', 'startSample', 'continueBuild', 'addTeam', 'addClass', 'emptyCopy'];

export const askDesk = <Name extends DeskCall>(name: Name, ...about: DeskArguments<Name>): Promise<DeskAnswer<Name>> =>
  sendToScript(name, about, slow.includes(name) ? patience.slow : patience.quick) as Promise<DeskAnswer<Name>>;

export const askAfresh = askDesk;

/** What was asked is new each time, unless a test has views look again behind what they show. */
export const isStale = (_: ViewCall): boolean => (window as { fake?: { stale?: boolean } }).fake?.stale === true;
