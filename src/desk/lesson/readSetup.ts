import { activityById } from '../../lab/lesson/activities.ts';
import { defaultSettings } from '../../lab/lesson/defaultSettings.ts';
import { type ClassSetup, type Setup, settingNames } from '../../lab/lesson/setup.ts';
import { done, type Outcome, problem } from '../outcome.ts';
import { deskWords } from '../words.ts';

const longestName = 60;
const mostTeams = 200;

/** Checks what came over the bridge from the sidebar, which anybody with the file can call with anything. */
export function readSetup(given: unknown): Outcome<Setup> {
  const { setupProblems: words } = deskWords;
  if (!isRecord(given)) return problem({ ...words.shape, received: typeof given });
  const { activity, givens, settings, shelf, classes, ownNumbers } = given;
  const plan = typeof activity === 'string' ? activityById(activity) : undefined;
  if (plan === undefined) return problem({ ...words.activity, received: said(activity) }, 'activity');
  if (!isRecord(givens) || !isRecord(settings) || !isRecord(shelf) || !Array.isArray(classes)) {
    return problem({ ...words.shape, received: 'a part of it' });
  }

  const readGivens: Record<string, string> = {};
  for (const { name, optional, fromTable } of plan.givens) {
    const value = textOf(givens[name]);
    // An ion can be named only where the substance gives ions; making the numbers finds out.
    if (value === '' && optional !== true && fromTable !== true && name !== plan.numbers.ion) {
      return problem({ ...words.given, where: name, received: 'a blank' }, `givens.${name}`);
    }
    readGivens[name] = value;
  }
  const readSettings: Record<string, string> = {};
  for (const name of settingNames) readSettings[name] = textOf(settings[name]) || defaultSettings[name];
  readSettings.activity = plan.id;

  const flasksMl = sizes(shelf.flasksMl);
  if (flasksMl === undefined)
    return problem({ ...words.sizes, where: 'flasks', received: said(shelf.flasksMl) }, 'shelf.flasksMl');
  const pipettesMl = sizes(shelf.pipettesMl);
  if (pipettesMl === undefined) {
    return problem({ ...words.sizes, where: 'pipettes', received: said(shelf.pipettesMl) }, 'shelf.pipettesMl');
  }
  const { balanceReadabilityG, balanceMaxG } = shelf;
  if (!isSize(balanceReadabilityG)) {
    return problem({ ...words.balance, received: said(balanceReadabilityG) }, 'shelf.balanceReadabilityG');
  }
  if (!isSize(balanceMaxG)) return problem({ ...words.balance, received: said(balanceMaxG) }, 'shelf.balanceMaxG');

  const readClasses = classesOf(classes);
  if (!readClasses.ok) return readClasses;
  return done({
    activity: plan.id,
    givens: readGivens,
    ownNumbers: ownNumbers === true,
    settings: readSettings as Setup['settings'],
    shelf: { flasksMl, pipettesMl, balanceReadabilityG, balanceMaxG },
    classes: readClasses.value,
  });
}

function classesOf(classes: readonly unknown[]): Outcome<readonly ClassSetup[]> {
  const { setupProblems: words } = deskWords;
  const read: ClassSetup[] = [];
  const classNames: string[] = [];
  let count = 0;
  for (const entry of classes) {
    const name = isRecord(entry) ? nameOf(entry.name) : '';
    const teams = isRecord(entry) && Array.isArray(entry.teams) ? entry.teams.map(nameOf) : [];
    if (name === '') return problem({ ...words.className, received: 'a blank' }, 'classes');
    if (classNames.includes(name.toLowerCase()))
      return problem({ ...words.classTwice, received: `“${name}”` }, 'classes');
    classNames.push(name.toLowerCase());
    if (teams.length === 0) return problem({ ...words.noTeams, where: name, received: 'none' }, 'classes');
    const blankTeam = teams.includes('');
    if (blankTeam) return problem({ ...words.teamName, where: name, received: 'a blank' }, 'classes');
    const twice = teams.find((team, index) => teams.indexOf(team) !== index);
    if (twice !== undefined) return problem({ ...words.teamTwice, where: name, received: `“${twice}”` }, 'classes');
    count += teams.length;
    read.push({ name, teams });
  }
  if (read.length === 0) return problem({ ...words.noClasses, received: 'none' }, 'classes');
  if (count > mostTeams) return problem({ ...words.tooMany, received: String(count) }, 'classes');
  return done(read);
}

const isRecord = (given: unknown): given is Record<string, unknown> =>
  typeof given === 'object' && given !== null && !Array.isArray(given);

const textOf = (given: unknown): string =>
  typeof given === 'string' ? given.trim() : typeof given === 'number' && Number.isFinite(given) ? String(given) : '';

/** Names stand in one line of a cell. */
const nameOf = (given: unknown): string => textOf(given).replace(/\s+/g, ' ').slice(0, longestName).trim();

const isSize = (given: unknown): given is number => typeof given === 'number' && Number.isFinite(given) && given > 0;

const sizes = (given: unknown): readonly number[] | undefined =>
  Array.isArray(given) && given.length > 0 && given.every(isSize) ? given : undefined;

const said = (given: unknown): string => (given === undefined || given === null ? 'nothing' : `“${String(given)}”`);
