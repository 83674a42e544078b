import { guideContent } from '../guides/guideContent.ts';
import { type GuideName, guides } from '../guides/guides.ts';
import { element } from '../page/element.ts';
import { viewHeading } from '../page/heading.ts';
import type { OpenedPage } from './openedPage.ts';

const isGuideName = (name: string): name is GuideName => Object.hasOwn(guides, name);

/** A guide on paper; opened without a name it is the teacher's. */
export function guidePage(about: string): OpenedPage {
  const guide = guides[isGuideName(about) ? about : 'teacher'];
  return {
    root: element('div', { class: 'view guide-page' }, viewHeading(guide.title), ...guideContent(guide, 'h2')),
  };
}
