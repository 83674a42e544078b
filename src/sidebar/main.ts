// The sidebar's page: reads the lesson once, then shows one view at a time. Opened with a mark, it is one page to print or project.
import type { Problem } from '../desk/outcome.ts';
import type { LessonView } from '../desk/views.ts';
import { askAfresh, askDesk } from './askDesk.ts';
import { makeChecksHere } from './checks/makeChecksHere.ts';
import { classNowView } from './classNow/classNowView.ts';
import { helpView } from './help/helpView.ts';
import { openedWith } from './openedWith.ts';
import { watchPresses } from './page/afterPress.ts';
import { element } from './page/element.ts';
import { viewHeading } from './page/heading.ts';
import { navigation, viewNames } from './page/navigation.ts';
import { problemNotice } from './page/notice.ts';
import type { Page } from './page/page.ts';
import type { View, ViewName } from './page/view.ts';
import { waiting } from './page/waiting.ts';
import { startPage } from './pages/startPage.ts';
import { particlesView } from './particles/particlesView.ts';
import { makeBuilder } from './plan/builder.ts';
import { planView } from './plan/planView.ts';
import { pollView } from './poll/pollView.ts';
import { prepareView } from './prepare/prepareView.ts';
import { makeDue } from './record/due.ts';
import { recordView } from './record/recordView.ts';
import { startSelfCheck } from './selfCheck/selfCheckView.ts';
import { shareView } from './share/shareView.ts';
import { sheetsView } from './sheets/sheetsView.ts';
import { teamsView } from './teams/teamsView.ts';
import { texts } from './texts.ts';

/** The view that the sidebar is opened with, such as the one that a page to print was opened from. */
const viewAskedFor = (): ViewName | undefined =>
  isSampleAskedFor() ? 'plan' : viewNames.find((name) => name === openedWith().about);

/** Whoever is kept out of the teacher’s part reads what works all the same, and who can let a colleague in. */
const problemWords = ({ message, reason }: Problem): string =>
  reason === 'teacher' ? `${message} ${texts.calls.notTeacher}` : message;

/** Opened from the menu to build the sample class. */
const isSampleAskedFor = (): boolean => openedWith().about === 'sample';

function start(): void {
  const main = element('main', {});
  const opening = element('p', { class: 'waiting', role: 'status' });
  const builder = makeBuilder({
    next: () => askDesk('continueBuild'),
    // The last step has read the whole file: nothing more is asked.
    finishing: async () => {
      const outcome = await askDesk('readLesson');
      if (outcome.ok) lesson = outcome.value;
    },
  });
  let lesson: LessonView | undefined;
  let views: Partial<Record<ViewName, View>> = { prepare: prepareView(), particles: particlesView(), help: helpView() };
  let current: ViewName | undefined;

  const nav = navigation((name) => show(name));
  const due = makeDue({ isBuilt: () => lesson?.built === true, write: () => show('record') });

  const checksHere = makeChecksHere({ isOn: () => lesson?.worksOutChecks === true });

  function show(name: ViewName): void {
    const view = views[name];
    if (current) views[current]?.leave();
    current = name;
    due.quiet(name === 'record');
    nav.mark(name);
    if (!view) {
      // Asked for before the lesson was read, or after reading it failed.
      void open(name);
      return;
    }
    main.replaceChildren(view.root);
    window.scrollTo(0, 0);
    view.enter();
  }

  let reading: Promise<boolean> | undefined;
  async function open(wanted?: ViewName): Promise<void> {
    main.replaceChildren(viewHeading(texts.title), opening);
    reading ??= readLesson().finally(() => {
      reading = undefined;
    });
    const read = await reading;
    const name = wanted ?? (lesson?.built && !lesson.building ? 'classNow' : 'plan');
    // Somebody may have gone to Help meanwhile.
    if (current !== undefined && current !== wanted) return;
    if (read) show(name);
  }
  async function refresh(): Promise<Problem | undefined> {
    const outcome = await askAfresh('readLesson');
    if (!outcome.ok) return outcome.problem;
    lesson = outcome.value;
    return undefined;
  }
  async function readLesson(): Promise<boolean> {
    const outcome = await waiting(opening, texts.opening, askDesk('readLesson'));
    if (!outcome.ok) {
      if (current === 'help') return false;
      const wanted = current ?? viewAskedFor();
      main.replaceChildren(
        viewHeading(texts.title),
        problemNotice(problemWords(outcome.problem), { label: texts.tryAgain, run: () => void open(wanted) }),
      );
      return false;
    }
    lesson = outcome.value;
    if (lesson.building) builder.found(lesson.building);
    const page: Page = {
      get lesson() {
        return lesson ?? outcome.value;
      },
      show,
      refresh,
    };
    views = {
      ...views,
      plan: planView(page, builder),
      classNow: classNowView(page),
      poll: pollView(page),
      teams: teamsView(builder),
      record: recordView(page, due),
      share: shareView(builder),
      sheets: sheetsView(),
    };
    due.look();
    checksHere.look();
    return true;
  }

  document.body.append(nav.root, checksHere.root, due.root, main);
  const asked = viewAskedFor();
  if (asked !== undefined) nav.mark(asked);
  void open(asked).then(() => {
    if (isSampleAskedFor() && lesson !== undefined) void builder.start(() => askDesk('startSample'), true);
  });
}

watchPresses();
if (openedWith().about === 'self-check') startSelfCheck();
else if (!startPage()) start();
