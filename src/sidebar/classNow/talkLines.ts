import type { ClassView } from '../../desk/views.ts';
import { texts } from '../texts.ts';

/** Whom to talk to, in order: the heading of each card and the reason under it. */
export const talkLines = (talkFirst: ClassView['talkFirst']) =>
  talkFirst.map(({ team, reason, ready }, index) => ({
    heading: ready
      ? texts.classNow.talkReady(team)
      : index === 0
        ? texts.classNow.talkTo(team)
        : texts.classNow.talkThen(team),
    reason,
  }));
