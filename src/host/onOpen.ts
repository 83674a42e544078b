import { ui } from './spreadsheet.ts';
import { hostWords } from './words.ts';

/** Adds the menu, and nothing else: before anybody has given consent the host allows no more. */
export function onOpen_(): void {
  const { menu, title } = hostWords;
  ui()
    .createMenu(title)
    .addItem(menu.openSidebar, 'openSidebar')
    .addItem(menu.buildSample, 'buildSampleFromMenu')
    .addItem(menu.checkAgain, 'checkAgainFromMenu')
    .addItem(menu.selfCheck, 'selfCheckFromMenu')
    .addToUi();
}

export const onInstall_ = (): void => onOpen_();
