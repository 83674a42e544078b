import { expect, it } from 'vitest';
import { type DeskAnswer, type DeskArguments, type DeskCall, workFor } from '../../src/desk/acts.ts';
import type { Outcome } from '../../src/desk/outcome.ts';
import { runWork } from '../../src/desk/runWork.ts';
import type { BuildState } from '../../src/desk/views.ts';
import { defaultSettings, defaultShelf } from '../../src/lab/lesson/defaultSettings.ts';
import type { Setup } from '../../src/lab/lesson/setup.ts';
import { drawn } from '../../src/preview/standin/drawn.ts';
import { classColumns as at, planColumns } from '../../src/workbook/layout.ts';
import { cases, seed } from '../depth.ts';
import { copyOf, type PaperFile, type PaperSheet, paperFile, valueIn } from './paperFile.ts';

/** How many acts a file lives; each life begins with an empty file. */
const actsInLife = 24;

const solutes = [
  { formula: 'KBr', ion: 'Br-' },
  { formula: 'KCl', ion: 'Cl-' },
] as const;
const stock = ({ formula, ion }: (typeof solutes)[number]) => ({
  activity: 'stock and dilution',
  givens: {
    formula,
    'stock molarity': '0.300',
    flask: '200',
    'target molarity': '0.120',
    'target volume': '50',
    ion,
    purity: '',
  },
});
const plans = [
  ...solutes.map(stock),
  { activity: 'solution from a solid', givens: { formula: 'NaHCO3', molarity: '0.250', flask: '200', ion: 'Na+' } },
];
const steps = ['molar mass', 'moles of solute', 'mass of solute'] as const;
const teamsFor = (name: string) => [`Otter of ${name}`, `Heron of ${name}`];

/** Something that people wrote and nobody has agreed to lose, and where it has to stand. */
interface Written {
  readonly text: string;
  readonly stands: (sheet: PaperSheet) => boolean;
}

/** A file that lives through acts drawn from a seed; after each, all that people wrote is looked for. */
class Life {
  readonly file: PaperFile = paperFile();
  readonly done: Record<string, number> = {};
  readonly refused: Record<string, number> = {};
  stops = 0;
  /** By place: a new text in a cell takes the place of the old one. */
  readonly #written = new Map<string, Written>();
  readonly #chance: () => number;
  #day = 2;
  #texts = 0;
  #deck: number[] = [];

  constructor(start: number) {
    this.#chance = drawn(start);
  }

  below(count: number): number {
    return Math.floor(this.#chance() * count);
  }
  pick<T>(items: readonly T[]): T | undefined {
    return items[this.below(items.length)];
  }
  /** Kinds of acts in an order drawn anew once all had their turn. */
  next(): number {
    if (this.#deck.length === 0) this.#deck = Array.from({ length: 22 }, (_, kind) => kind);
    return this.#deck.splice(this.below(this.#deck.length), 1)[0] ?? 0;
  }
  /** Names nothing else in a file can be called by chance. */
  text(kind: string): string {
    this.#texts += 1;
    return `${kind}${this.#texts}z`;
  }
  get classes() {
    return valueIn(this.file.call('readLessons')).classes;
  }
  setup(names: readonly string[]): Setup {
    const plan = this.pick(plans) ?? stock(solutes[0]);
    const seen = this.file.call('readTeams');
    const seats = seen.ok ? seen.value.classes : [];
    const teams = (name: string) =>
      seats.find((one) => one.name === name)?.teams.flatMap(({ key, team }) => (/^practice/.test(key) ? [] : [team])) ??
      teamsFor(name);
    return {
      ...plan,
      ownNumbers: this.below(2) === 0,
      settings: {
        ...defaultSettings,
        activity: plan.activity,
        seed: String(1 + this.below(9)),
        'exit questions': this.pick(['0', '2']) ?? '0',
      },
      shelf: { ...defaultShelf, flasksMl: [50, 100, 200, 250] },
      classes: names.map((name) => ({ name, teams: teams(name) })),
    };
  }

  /** A build by one press, or stopped at some call of the script and pressed again: the file is the same in the end. */
  press<Name extends DeskCall>(name: Name, ...about: DeskArguments<Name>): void {
    const { file } = this;
    const whole = copyOf(file);
    const first = (whole.call as (...given: unknown[]) => Outcome<BuildState>)(name, ...about);
    if (!first.ok) {
      this.refused[name] = (this.refused[name] ?? 0) + 1;
      // What is refused or asked about has written nothing.
      const written = differences(whole, file);
      if (written.length > 0) throw new Error(`${name} was refused and wrote: ${written.join(' ; ')}`);
      return;
    }
    whole.finish(first);
    const until = this.below(12);
    const isLost = this.below(2) === 0;
    if (stopped(file, { until, isLost, name, about })) this.stops += 1;
    // Whoever has not heard that a practice or a second lesson of the day is there gets another: that press is left out.
    if ((name !== 'addPractice' && name !== 'nextLesson') || differences(file, whole).length > 0) {
      const again = (file.call as (...given: unknown[]) => Outcome<BuildState>)(name, ...about);
      // A team, class or lesson that stands already is named, and asks for nothing more.
      if (again.ok) file.finish(again);
      else
        expect([name, until, isLost, again.problem.message, file.state.note]).toEqual([
          name,
          until,
          isLost,
          again.problem.message,
          '',
        ]);
    }
    const found = differences(file, whole);
    if (found.length > 0)
      throw new Error(`${name} stopped at ${until}, ${isLost ? 'lost' : 'not sent'}: ${found.join(' ; ')}`);
    this.done[name] = (this.done[name] ?? 0) + 1;
  }

  count(name: string): void {
    this.done[name] = (this.done[name] ?? 0) + 1;
  }
  /** One act; what it changes on purpose is no longer looked for. */
  act(): void {
    const { file } = this;
    const classes = this.classes;
    const one = this.pick(classes);
    if (one === undefined) {
      this.press('startBuild', this.setup(['Ash', 'Elm']));
      return;
    }
    const kind = this.next();
    if (kind < 6) {
      this.type(one.name, kind);
      return;
    }
    const count = (name: string) => this.count(name);
    if (kind === 6) {
      this.#day += 1;
      const today = new Date(Date.UTC(2026, 2, this.#day, 10));
      Object.assign(file.state, { today: today.toISOString().slice(0, 10), now: today.getTime() });
      count('next day');
    } else if (kind === 7) {
      const names = classes.map(({ name }) => name).filter((_, index) => index === 0 || this.below(2) === 0);
      this.press('nextLesson', this.setup(names), {}, { sameDay: this.below(3) > 0 });
    } else if (kind === 8) {
      const away = this.pick(valueIn(file.call('readLessons')).away);
      // All of its classes, or one of them.
      const some = this.below(2) === 0 ? [] : [away?.classes.slice(0, 1)];
      if (away !== undefined) this.press('openEarlier', away.id, ...some);
    } else if (kind === 9) this.press('startBuild', valueIn(file.call('readLesson')).setup);
    else if (kind === 10 && one.teams.length < 5)
      this.press('addTeam', one.name, `Wren ${one.teams.length} of ${one.name}`);
    else if (kind === 11 && classes.length < 4) {
      const name = ['Oak', 'Yew'].find((free) => classes.every((other) => other.name !== free));
      if (name !== undefined) this.press('addClass', name, teamsFor(name));
    } else if (kind === 12 && one.teams.length < 6) this.press('addPractice', one.name);
    else if (kind === 13) {
      if (file.call('closeClass', one.name, this.below(2) === 0).ok) count('closeClass');
    } else if (kind === 14) this.record();
    else if (kind === 15) {
      if (file.call('writePrepareSheet', true).ok) count('writePrepareSheet');
    } else if (kind === 16) this.rename();
    else if (kind === 17) this.renameByHand();
    else if (kind === 18) this.buildFromBefore();
    else if (kind === 19) this.leaveOut();
    else if (kind === 20) this.aboutPeople();
    else if (kind === 21 && file.call('hideTeachersSheets').ok) count('hideTeachersSheets');
  }

  /** The lesson that a page shows, with the name of one class or team changed. */
  rename(): void {
    const { setup } = valueIn(this.file.call('readLesson'));
    const which = this.below(setup.classes.length);
    const team = this.below(2) === 0 ? this.below(setup.classes[which]?.teams.length ?? 0) : undefined;
    const classes = setup.classes.map((one, index) => {
      if (index !== which) return one;
      return team === undefined
        ? { ...one, name: this.text(one.name.slice(0, 3)) }
        : { ...one, teams: one.teams.map((name, place) => (place === team ? this.text(name.slice(0, 5)) : name)) };
    });
    this.press('startBuild', { ...setup, classes }, this.below(3) === 0 ? {} : { names: 'same' });
    this.count('name in the sidebar');
  }
  /** Somebody gives a class or a team another name in the Plan itself, and the lesson is built as it stands then. */
  renameByHand(): void {
    const { lesson } = valueIn(this.file.call('readLesson'));
    const sheet = this.#planOf(lesson || undefined);
    const isTeam = (line: PaperSheet['cells'][number]) => /^c\d+-t/.test(String(line[planColumns.key - 1] ?? ''));
    const line = this.pick(sheet?.cells.filter(isTeam) ?? []);
    if (sheet === undefined || line === undefined) return;
    const { team, className } = planColumns;
    const column = this.below(2) === 0 ? team : className;
    const before = line[column - 1];
    const text = this.text(String(before).slice(0, 4));
    sheet.cells.forEach((one, index) => {
      if (isTeam(one) && (column === team ? one === line : one[column - 1] === before))
        this.file.put(sheet.name, index + 1, column, text);
    });
    this.count('name by hand');
    this.press('startBuild', valueIn(this.file.call('readLesson')).setup);
  }
  /** A plan is built that a window began to type before another one added a team: that one stays. */
  buildFromBefore(): void {
    const { setup, keys } = valueIn(this.file.call('readLesson'));
    const name = this.pick(setup.classes)?.name ?? '';
    const team = this.text('Late');
    this.press('addTeam', name, team);
    const built = this.done.startBuild;
    this.press('startBuild', setup, {}, keys);
    const teams = this.classes.flatMap((one) => (one.name === name ? one.teams : []));
    if (this.done.startBuild !== built && !teams.includes(team))
      throw new Error(`${team} of ${name} is gone: ${teams.join(', ')}`);
    this.count('plan from before');
  }
  /** A team is taken out of the plan: what people typed for it goes with a yes that counts it, and not without. */
  leaveOut(): void {
    const { setup, lesson } = valueIn(this.file.call('readLesson'));
    const from = this.pick(setup.classes.filter(({ teams }) => teams.length > 1));
    const team = this.pick(from?.teams ?? []);
    if (from === undefined || team === undefined) return;
    const key = valueIn(this.file.call('readTeams'))
      .classes.find(({ name }) => name === from.name)
      ?.teams.find((one) => one.team === team)?.key;
    const classes = setup.classes.map((one) =>
      one === from ? { ...one, teams: one.teams.filter((other) => other !== team) } : one,
    );
    const wanted = { ...setup, classes };
    const asked = this.file.call('startBuild', wanted);
    if (asked.ok) this.file.finish(asked);
    const question = asked.ok ? undefined : asked.problem.question;
    if (question?.about !== 'typed') this.count('left out');
    else if (question.where.some((one) => one.team !== team))
      throw new Error(`Asked about ${JSON.stringify(question.where)} where ${team} goes.`);
    else if (this.below(2) === 0) this.count('left out, no');
    else {
      this.press('startBuild', wanted, { setAside: question.cells });
      for (const place of [...this.#written.keys()])
        if (place.startsWith(`${lesson || undefined} ${key} `) && !place.endsWith('number'))
          this.#written.delete(place);
      this.count('left out, yes');
    }
  }
  /** Who is here, who does what, and help of a team’s own. */
  aboutPeople(): void {
    const { file } = this;
    const shown = this.pick(valueIn(file.call('readTeams')).classes);
    const team = this.pick(shown?.teams ?? []);
    if (shown === undefined || team === undefined) return;
    const extension = this.text('task');
    const acts = {
      setAbsent: () => file.call('setAbsent', team.key, this.below(2) === 0),
      setOwnHelp: () => file.call('setOwnHelp', team.key, { level: String(this.below(4)), extension }),
      passRoles: () => file.call('passRoles', shown.name),
      showExitChecks: () => file.call('showExitChecks', shown.name, this.below(2) === 0),
    };
    const name = this.pick(Object.keys(acts) as (keyof typeof acts)[]) ?? 'setAbsent';
    const isDone = acts[name]().ok;
    this.count(isDone ? name : `${name}, refused`);
    if (!isDone || name !== 'setOwnHelp') return;
    const lesson = this.classes.find((one) => one.name === shown.name)?.lesson || undefined;
    this.#written.set(`${lesson} ${team.key} task number`, {
      text: extension,
      stands: (sheet) =>
        this.#isPlan(sheet, lesson) &&
        sheet.cells.some((line) => line[planColumns.key - 1] === team.key && line.includes(extension)),
    });
  }

  /** Somebody types: an entry, help wanted, a name, people of a team, or a number in the Plan. */
  type(className: string, kind: number): void {
    const sheet = this.file.state.sheets.find(
      ({ tag, kept, cells }) => !kept && tag?.kind === 'class' && tag.state === 'built' && this.#isOf(className, cells),
    );
    if (sheet === undefined) return;
    const lesson = sheet.tag?.lesson;
    const keys = [...new Set(sheet.cells.map((line) => String(line[at.key - 1] ?? '')))].filter((key) => /-/.test(key));
    const key = this.pick(keys) ?? '';
    const step = this.pick(steps) ?? steps[0];
    const isClass = (other: PaperSheet) => other.tag?.kind === 'class' && other.tag.lesson === lesson;
    const put = (what: string, column: number, stepId: string) => {
      const row = sheet.cells.findIndex(
        (line) => (line[at.key - 1] ?? '') === key && (line[at.step - 1] ?? '') === stepId,
      );
      if (row < 0) return;
      const text = this.text(what);
      this.file.put(sheet.name, row + 1, column, text);
      if (column === at.entry) this.file.put(sheet.name, row + 1, at.lastEntry, { date: this.file.state.now });
      this.#written.set(`${lesson} ${key} ${stepId} ${column}`, {
        text,
        stands: (other) =>
          isClass(other) &&
          other.cells.some(
            (line) =>
              line[at.key - 1] === key &&
              (line[at.step - 1] ?? '') === stepId &&
              String(line[column - 1] ?? '').includes(text),
          ),
      });
      this.done[what] = (this.done[what] ?? 0) + 1;
    };
    if (kind < 3) put('entry', at.entry, step);
    else if (kind === 3) put('who', at.who, step);
    else if (kind === 4) put('people', at.who, '');
    else this.number(lesson, key);
  }
  #isOf(className: string, cells: PaperSheet['cells']): boolean {
    const keys = this.classes.find(({ name }) => name === className)?.keys ?? [];
    return cells.some((line) => keys.includes(String(line[at.key - 1] ?? '')));
  }
  #isPlan({ tag, name }: PaperSheet, lesson: string | undefined): boolean {
    return tag === null ? name.startsWith('Plan') : tag.kind === 'plan' && tag.lesson === lesson;
  }
  #planOf(lesson: string | undefined): PaperSheet | undefined {
    return this.file.state.sheets.find((one) => one.tag?.state === 'built' && this.#isPlan(one, lesson));
  }
  /** A number of a team is changed in the Plan by hand: it stands in its line, or in a Plan that is kept. */
  number(lesson: string | undefined, key: string): void {
    const sheet = this.#planOf(lesson);
    const row = sheet?.cells.findIndex((line) => line[planColumns.key - 1] === key) ?? -1;
    if (sheet === undefined || row < 0) return;
    this.#texts += 1;
    const text = `0.3${String(this.#texts).padStart(4, '0')}`;
    this.file.put(sheet.name, row + 1, planColumns.firstGiven + 1, text);
    this.#written.set(`${lesson} ${key} number`, {
      text,
      stands: (other) =>
        this.#isPlan(other, lesson) &&
        other.cells.some((line) => line[planColumns.key - 1] === key && line[planColumns.firstGiven] === text),
    });
    this.done.number = (this.done.number ?? 0) + 1;
  }
  record(): void {
    const shown = this.pick(valueIn(this.file.call('readRecord')).classes);
    if (shown === undefined) return;
    const notes = this.text('note');
    const base = shown.saved ?? null;
    const { day, className, activity, substance } = shown.proposal;
    const entry = { ...(base ?? shown.proposal), notes };
    valueIn(this.file.call('saveRecord', [{ entry, base }]));
    this.#written.set(`record ${day} ${className} ${activity} ${substance}`, {
      text: notes,
      stands: ({ tag, cells }) =>
        tag?.kind === 'record' && cells.some((line) => line.includes(notes) && line.includes(className)),
    });
    this.done.saveRecord = (this.done.saveRecord ?? 0) + 1;
  }

  /** What people wrote and what is nowhere where it belongs. */
  get lost(): readonly string[] {
    return [...this.#written].flatMap(([place, { text, stands }]) =>
      this.file.state.sheets.some(stands) ? [] : [`${place}: ${text}`],
    );
  }
  /** Cells that students see and that hold an answer: of molar masses and masses, which nobody gave them. */
  get told(): readonly string[] {
    const key = this.file.call('readKey');
    if (!key.ok) return [];
    const answers = key.value.teams.flatMap(({ lines }) =>
      lines.flatMap(({ unit, answer }) =>
        /^g(\/mol)?$/.test(unit) && /\d\.\d/.test(answer) && answer.length > 3 ? [answer] : [],
      ),
    );
    expect(answers.length).toBeGreaterThan(0);
    return this.file.state.sheets
      .filter(({ tag }) => tag !== null && tag.kind !== 'plan')
      .flatMap(({ name, cells }) =>
        cells.flat().flatMap((cell) => {
          const words = typeof cell === 'object' ? [] : String(cell).split(/[^\d.]+/);
          return answers.some((answer) => words.includes(answer)) ? [`${name}: ${String(cell)}`] : [];
        }),
      );
  }
}

/** What a file holds, apart from the numbers of its sheets. */
const inFile = ({ state }: PaperFile) => {
  const withoutIds = state.sheets.map(({ id, ...sheet }) =>
    JSON.stringify(sheet, (_, value) => (value === id ? 'this sheet' : value)),
  );
  return [...withoutIds, state.note === '' ? 'at rest' : 'building'];
};

/** Sheets in which two files differ, with the first place of each. */
function differences(one: PaperFile, other: PaperFile): readonly string[] {
  const [here, there] = [inFile(one), inFile(other)];
  return Array.from({ length: Math.max(here.length, there.length) }, (_, index) => index).flatMap((index) => {
    const [left = 'nothing', right = 'nothing'] = [here[index], there[index]];
    if (left === right) return [];
    const from = [...left].findIndex((letter, place) => letter !== right[place]);
    const part = (text: string) => text.slice(Math.max(0, from - 60), from + 60);
    return [`${left.slice(0, 90)} … ${part(left)} | ${part(right)}`];
  });
}

/** Presses once from a page that is closed at some call of the script: before it arrives, or before it is answered. */
function stopped<Name extends DeskCall>(
  file: PaperFile,
  { until, isLost, name, about }: { until: number; isLost: boolean; name: Name; about: DeskArguments<Name> },
): boolean {
  const page = { book: undefined };
  let calls = 0;
  const closed = new Error('The page was closed.');
  const answer = (asked: Parameters<PaperFile['answer']>[0]) => {
    calls += 1;
    if (calls > until && isLost) file.answer(asked);
    if (calls > until) throw closed;
    return file.answer(asked);
  };
  try {
    let state = valueIn(runWork(workFor(page, name, about), answer) as DeskAnswer<Name> & Outcome<BuildState>);
    while (!state.finished) state = valueIn(runWork(workFor(page, 'continueBuild', []), answer));
    return false;
  } catch (error) {
    if (error !== closed) throw error;
    return true;
  }
}

/** What a long run has gone through. */
const everything = [
  'startBuild',
  'nextLesson',
  'openEarlier',
  'entry',
  'number',
  'name by hand',
  'plan from before',
  'left out, yes',
  'saveRecord',
  'showExitChecks',
  'stops',
];

it('days drawn by chance lose nothing that people wrote, tell no answer, and end alike wherever a press was stopped', () => {
  const acts = cases({ short: 24, deep: 20_000 });
  const done: Record<string, number> = {};
  const odd: string[] = [];
  for (let life = 0; life * actsInLife < acts; life += 1) {
    const one = new Life(seed + life);
    for (let act = 0; act < actsInLife; act += 1) {
      try {
        one.act();
        odd.push(...one.lost.map((what) => `life ${life}, act ${act}, lost: ${what}`));
        if (act % 13 === 12) odd.push(...one.told.map((what) => `life ${life}, act ${act}, told: ${what}`));
      } catch (error) {
        odd.push(`life ${life}, act ${act}: ${String(error).slice(0, 1500)}`);
      }
      if (odd.length > 0) odd.push(`LABROW_SEED=${seed + life} begins with this life`);
      if (odd.length > 0) break;
    }
    for (const [name, times] of Object.entries({ ...one.done, stops: one.stops }))
      done[name] = (done[name] ?? 0) + times;
    for (const [name, times] of Object.entries(one.refused))
      done[`${name}, refused`] = (done[`${name}, refused`] ?? 0) + times;
    if (odd.length > 0) break;
  }
  expect(odd).toEqual([]);
  if (process.env.LABROW_DEEP === '1') console.log(JSON.stringify(done));
  // A short run cannot have everything in it.
  for (const name of acts < 480 ? ['startBuild', 'entry', 'stops'] : everything)
    expect([name, (done[name] ?? 0) > 0]).toEqual([name, true]);
}, 7_200_000);
