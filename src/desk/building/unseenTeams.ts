import { isTeam } from '../../lab/lesson/practice.ts';
import type { ClassSetup, Setup, TeamPlan } from '../../lab/lesson/setup.ts';
import type { PlanReading } from '../../workbook/readLesson.ts';
import { plainName } from './plainName.ts';

/** Whether a line was added by somebody else since the plan that is built was begun: that one does not say that it goes. */
export const isUnseen =
  (knows: readonly string[] | undefined) =>
  (line: TeamPlan): boolean =>
    knows !== undefined && isTeam(line) && !knows.includes(line.key);

/**
 * What is to be built with the teams and classes that stand in the Plan and that it has never heard of: they stay. A class
 * that goes on under another name has them under that one; what both have added under one name is one and the same.
 */
export function withUnseen({
  setup,
  before,
  now,
  knows,
}: {
  readonly setup: Setup;
  /** The lines as they stand. */
  readonly before: PlanReading;
  /** The lines that the plan has seen, under the names that they are to have. */
  readonly now: PlanReading;
  readonly knows: readonly string[] | undefined;
}): { readonly setup: Setup; readonly before: PlanReading } {
  const unseen = isUnseen(knows);
  let { classes } = setup;
  const teams = before.teams.map((line): TeamPlan => {
    const seen = now.teams.find(({ key }) => key === line.key);
    if (seen !== undefined) return seen;
    const { className, team } = unseen(line) ? placeOf(line, { before, now, classes }) : line;
    if (unseen(line)) classes = withTeam(classes, { className, team });
    return { ...line, className, team };
  });
  return { setup: { ...setup, classes }, before: { ...before, teams } };
}

type Name = Pick<TeamPlan, 'className' | 'team'>;

function placeOf(
  { className, team }: Name,
  {
    before,
    now,
    classes,
  }: { readonly before: PlanReading; readonly now: PlanReading; readonly classes: readonly ClassSetup[] },
): Name {
  const alike = (one: string) => (other: string) => plainName(one) === plainName(other);
  const keys = before.teams.flatMap((line) => (line.className === className ? [line.key] : []));
  const renamed = now.teams.find(({ key }) => keys.includes(key))?.className;
  const name = renamed ?? classes.map((one) => one.name).find(alike(className)) ?? className;
  const there = classes.find((one) => one.name === name)?.teams.find(alike(team));
  return { className: name, team: there ?? team };
}

function withTeam(classes: readonly ClassSetup[], { className, team }: Name): readonly ClassSetup[] {
  if (!classes.some(({ name }) => name === className)) return [...classes, { name: className, teams: [team] }];
  return classes.map((one) =>
    one.name === className && !one.teams.includes(team) ? { ...one, teams: [...one.teams, team] } : one,
  );
}
