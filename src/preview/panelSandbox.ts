/** What a panel's frame may do, in the attribute and in the response both, so that opening its address alone gains nothing. */
export const panelSandbox = [
  'allow-scripts',
  'allow-forms',
  'allow-popups',
  'allow-popups-to-escape-sandbox',
  'allow-modals',
  'allow-downloads',
].join(' ');
