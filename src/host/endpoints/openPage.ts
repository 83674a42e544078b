import type { Outcome } from '../calls.ts';
import { done, problem } from '../outcome.ts';
import { type PageName, pageNames } from '../pages.ts';
import { ui } from '../spreadsheet.ts';
import { hostWords } from '../words.ts';

const file = 'Sidebar';
const bodyStart = '<body>';
/** Room for a sheet of paper across; the host makes it smaller where the window is. */
const size = { width: 1000, height: 720 } as const;

/**
 * Opens a page to print or to project, or the sidebar again. The host shows one panel at a time, so the one that asked
 * goes. `about` is handed to the page as it is, such as the name of a class; the page finds it as data, never as markup.
 */
export function openPage(name: unknown, about: unknown = ''): Outcome<null> {
  const output = HtmlService.createHtmlOutputFromFile(file);
  if (name === 'sidebar') {
    ui().showSidebar(output.setTitle(hostWords.title));
    return done(null);
  }
  const page = pageNames.find((known) => known === name);
  if (page === undefined) return problem({ ...hostWords.pageUnknown, received: `“${String(name)}”` });
  const content = output.getContent();
  if (!content.includes(bodyStart)) return problem({ ...hostWords.pageUnknown, received: 'a page without a body' });
  const marked = content.replace(bodyStart, () => markedBody(page, typeof about === 'string' ? about : ''));
  ui().showModalDialog(
    HtmlService.createHtmlOutput(marked).setWidth(size.width).setHeight(size.height),
    hostWords.pageTitles[page],
  );
  return done(null);
}

const markedBody = (page: PageName, about: string): string =>
  `<body data-page="${page}" data-about="${escaped(about)}">`;

/** Names that people typed go into an attribute. */
const escaped = (text: string): string =>
  text.replace(/[&<>"']/g, (character) => `&#${character.charCodeAt(0)};`).replace(/\s+/g, ' ');
