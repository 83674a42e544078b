import { checkAgain } from './checkAgain.ts';
import { openPage } from './openPage.ts';
import { guarded } from './outcome.ts';
import { openSpreadsheet, ui } from './spreadsheet.ts';
import { hostWords } from './words.ts';

/** Menu: opens the sidebar. */
export function openSidebar_(): void {
  ui().showSidebar(HtmlService.createHtmlOutputFromFile('Sidebar').setTitle(hostWords.title));
}

/** Menu: opens the sidebar, which builds the invented class. */
export const buildSampleFromMenu_ = (): void => openFor('sample');

/** Menu: opens the sidebar, which tries out what this file and this account let the script do. */
export const selfCheckFromMenu_ = (): void => openFor('self-check');

function openFor(about: string): void {
  const outcome = guarded(() => openPage({ page: 'sidebar', about }));
  if (!outcome.ok) tell(outcome.problem.message);
}

/** Menu: enters again the checks that failed. */
export function checkAgainFromMenu_(): void {
  const outcome = guarded(checkAgain);
  tell(outcome.ok ? hostWords.checkedAgain(outcome.value) : outcome.problem.message);
}

const tell = (message: string): void => {
  openSpreadsheet().toast(message, hostWords.title);
};
