import type { Outcome, PageWish } from './calls.ts';
import { done, problem } from './outcome.ts';
import { type PageName, pageNames } from './pages.ts';
import { ui } from './spreadsheet.ts';
import { hostWords } from './words.ts';

const file = 'Sidebar';
const bodyStart = '<body>';
/** Room for a sheet of paper across; the host makes it smaller where the window is. */
const size = { width: 1000, height: 720 } as const;

/**
 * Opens a page to print or to project, or the sidebar again. The host shows one panel at a time, so the one that asked
 * goes. `about` is handed to the page as it is, such as the name of a class, and to the sidebar the view to open with; the
 * page finds it as data, never as markup.
 */
export function openPage({ page: name, about: handed }: PageWish): Outcome<null> {
  const output = HtmlService.createHtmlOutputFromFile(file);
  if (name === 'sidebar') {
    const opened =
      handed === '' ? output : HtmlService.createHtmlOutput(withMark(output.getContent(), { name, about: handed }));
    ui().showSidebar(opened.setTitle(hostWords.title));
    return done(null);
  }
  const page = pageNames.find((known) => known === name);
  if (page === undefined) return problem({ ...hostWords.pageUnknown, received: `“${String(name)}”` });
  const content = output.getContent();
  if (!content.includes(bodyStart))
    return problem({ ...hostWords.pageUnknown, received: `“${page}” with any content` });
  const marked = HtmlService.createHtmlOutput(withMark(content, { name: page, about: handed }));
  ui().showModalDialog(marked.setWidth(size.width).setHeight(size.height), hostWords.pageTitles[page]);
  return done(null);
}

const withMark = (
  content: string,
  { name, about }: { readonly name: PageName | 'sidebar'; readonly about: string },
): string => content.replace(bodyStart, () => `<body data-page="${name}" data-about="${escaped(about)}">`);

/** Names that people typed go into an attribute. The end of a line is kept: the page reads one thing on each. */
const escaped = (text: string): string =>
  text.replace(/[^\S\n]+/g, ' ').replace(/[&<>"'\n]/g, (character) => `&#${character.charCodeAt(0)};`);
