import type { Guide, GuidePart } from '../../src/sidebar/guides/guide.ts';

/** The guides of the sidebar in Markdown, under headings of the second level. */
export const guideText = (guides: readonly Guide[]): string =>
  guides.map(({ title, about, parts }) => [`## ${title}`, about, ...parts.map(partText)].join('\n\n')).join('\n\n');

const partText = ({ title, steps = [], lines = [], picture }: GuidePart): string =>
  [
    `**${title}.**`,
    ...(steps.length > 0 ? [steps.map((step, index) => `${index + 1}. ${step}`).join('\n')] : []),
    ...(lines.length > 0 ? [lines.map((line) => `- ${line}`).join('\n')] : []),
    ...(picture ? [`![${picture.shows}](scripts/screenshots/${picture.file})`] : []),
  ].join('\n\n');
