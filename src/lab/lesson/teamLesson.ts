import type { CellValue } from '../../measurement/cellValue.ts';
import { activityById } from './activities.ts';
import type { Activity } from './activity.ts';
import type { GivenCells } from './givenCells.ts';
import { type LessonSettings, readLessonSettings } from './lessonSettings.ts';
import { teamGivens } from './teamGivens.ts';

/** What the rows of one block have in common, read from its cells. */
export interface TeamLesson {
  readonly settings: LessonSettings;
  /** Undefined where the settings name none that is known: steps are bare quantities then. */
  readonly activity: Activity | undefined;
  readonly givens: GivenCells;
}

/** Reads a lesson once for everything that is said of a block. */
export function readTeamLesson({
  givenNames,
  givenValues,
  settings: table,
}: {
  readonly givenNames: readonly CellValue[];
  readonly givenValues: readonly CellValue[];
  readonly settings: readonly (readonly CellValue[])[];
}): TeamLesson {
  const settings = readLessonSettings(table);
  return {
    settings,
    activity: activityById(settings.activity, settings),
    givens: teamGivens(givenNames, givenValues),
  };
}
