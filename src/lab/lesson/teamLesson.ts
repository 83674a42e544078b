import type { CellValue } from '../../measurement/cellValue.ts';
import { withEvidenceSteps } from './activities/evidenceSteps.ts';
import { withSafetySteps } from './activities/safetySteps.ts';
import { activityById } from './activities.ts';
import type { Activity } from './activity.ts';
import type { GivenCells } from './givenCells.ts';
import { type LessonSettings, readLessonSettings } from './lessonSettings.ts';
import { teamGivens } from './teamGivens.ts';

/** What the rows of one block have in common, read from its cells. */
export interface TeamLesson {
  readonly settings: LessonSettings;
  /**
   * With the rows that a teacher may add, since what stands in a sheet is checked whatever the settings say by now. Undefined
   * where the settings name none that is known: steps are bare quantities then.
   */
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
  const activity = activityById(settings.activity, settings);
  return {
    settings,
    activity: activity && withEvidenceSteps(withSafetySteps(activity)),
    givens: teamGivens(givenNames, givenValues),
  };
}
