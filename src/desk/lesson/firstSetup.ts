import { defaultSettings, defaultShelf } from '../../lab/lesson/defaultSettings.ts';
import { sampleSetup } from '../../lab/lesson/sampleLesson.ts';
import type { Setup } from '../../lab/lesson/setup.ts';
import { deskWords } from '../words.ts';
import { freshTeamNames } from './freshTeamNames.ts';

const firstTeams = 6;

/** What the sidebar begins with in a file that has no lesson yet. */
export function firstSetup(decimalMark: 'point' | 'comma'): Setup {
  const setup = sampleSetup();
  return {
    activity: setup.activity,
    givens: setup.givens,
    ownNumbers: true,
    settings: { ...defaultSettings, activity: setup.activity, 'decimal mark': decimalMark },
    shelf: defaultShelf,
    classes: [
      {
        name: deskWords.classNumber(1),
        teams: freshTeamNames(firstTeams),
      },
    ],
  };
}
