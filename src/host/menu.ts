import { continueBuild } from './build.ts';
import { checkAgain } from './endpoints/checkAgain.ts';
import { startSample } from './endpoints/startSample.ts';
import { guarded } from './outcome.ts';
import { openSpreadsheet, ui } from './spreadsheet.ts';
import { hostWords } from './words.ts';

/** Menu: opens the sidebar. */
export function openSidebar_(): void {
  ui().showSidebar(HtmlService.createHtmlOutputFromFile('Sidebar').setTitle(hostWords.title));
}

/** Menu: builds the invented class in one go; the host gives a menu item six minutes. */
export function buildSampleFromMenu_(): void {
  let state = guarded(startSample);
  while (state.ok && !state.value.finished) state = guarded(continueBuild);
  tell(state.ok ? hostWords.sampleBuilt : state.problem.message);
}

/** Menu: enters again the checks that did not finish. */
export function checkAgainFromMenu_(): void {
  const outcome = guarded(checkAgain);
  tell(outcome.ok ? hostWords.checkedAgain(outcome.value.renewed) : outcome.problem.message);
}

const tell = (message: string): void => {
  openSpreadsheet().toast(message, hostWords.title);
};
