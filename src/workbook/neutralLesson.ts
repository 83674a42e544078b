import { withExitNumbers } from '../lab/exit/exitNumbers.ts';
import { seatsOf } from '../lab/exit/seatsOf.ts';
import type { Activity } from '../lab/lesson/activity.ts';
import { defaultSettings } from '../lab/lesson/defaultSettings.ts';
import { isTeam } from '../lab/lesson/practice.ts';
import { type Settings, settingNames, type TeamPlan } from '../lab/lesson/setup.ts';
import type { Lesson } from './lesson.ts';
import { classNames } from './planWorkbook.ts';
import type { PlanReading } from './readLesson.ts';
import { settingOptions } from './settingOptions.ts';
import { words } from './words.ts';

/** A number with its unit or sign, which is all that a setting without a list of options holds. */
const number = /^[\d.,]+( ?[%a-z]{1,3})?$/i;

/**
 * The lesson as it may be given on: settings, shelf and numbers as they are, with counted names in place of those of
 * classes and teams, keys of our own, and nothing of what people added to the Plan besides. For a new term classes and
 * teams keep their names. Practice stays behind.
 */
export function neutralLesson(
  { teams: lines, ...reading }: PlanReading,
  activity: Activity,
  { keepsNames = false } = {},
): Lesson {
  const nameOfClass = (name: string, number: number) => (keepsNames ? name : words.share.className(number));
  const nameOfTeam = (name: string, number: number) => (keepsNames ? name : words.share.team(number));
  const ofTeams = lines.filter(isTeam);
  const classes = classNames({ teams: ofTeams });
  const givenNames = activity.givens.map(({ name }) => name);
  const teamsSoFar = classes.map(() => 0);
  const teams = ofTeams.map((line): TeamPlan => {
    const place = classes.indexOf(line.className);
    const teamNumber = (teamsSoFar[place] ?? 0) + 1;
    teamsSoFar[place] = teamNumber;
    const givens: Record<string, string> = {};
    for (const name of givenNames) givens[name] = line.givens[name] ?? '';
    return {
      key: `c${place + 1}-t${teamNumber}`,
      className: nameOfClass(line.className, place + 1),
      team: nameOfTeam(line.team, teamNumber),
      givens,
    };
  });
  const givens: Record<string, string> = {};
  for (const name of givenNames) givens[name] = reading.setup.givens[name] ?? '';
  const settings = plainSettings(reading.setup.settings, activity);
  return {
    setup: {
      ...reading.setup,
      givens,
      settings,
      classes: classes.map((name, index) => ({
        name: nameOfClass(name, index + 1),
        teams: ofTeams
          .filter(({ className }) => className === name)
          .map(({ team }, place) => nameOfTeam(team, place + 1)),
      })),
    },
    activity,
    teams: withExitNumbers(teams, { activity, settings, seats: seatsOf(settings) }),
    givenNames,
    invented: false,
  };
}

/** Settings whose value is one of the options or a number; anything else that was typed there becomes the usual value. */
function plainSettings(settings: Settings, activity: Activity): Settings {
  const plain: Record<string, string> = {};
  for (const name of settingNames) {
    const value = settings[name];
    const options = settingOptions[name];
    const fits = options === undefined ? number.test(value) : options.includes(value);
    plain[name] = fits ? value : defaultSettings[name];
  }
  plain.activity = activity.id;
  return plain as Settings;
}
