import type { SheetsView } from '../../desk/views.ts';
import { copyText } from '../page/copyText.ts';
import { element } from '../page/element.ts';
import { field } from '../page/field.ts';
import { fold } from '../page/fold.ts';
import { texts } from '../texts.ts';
import { scanPicture } from './scanPicture.ts';

/** Where the students of one class find their sheet: to copy, to scan, to project. */
export function classLink(
  { name, address }: SheetsView['classes'][number],
  { id, project }: { readonly id: string; readonly project: () => void },
): HTMLElement {
  const { sheets: say } = texts;
  const link = field({
    id,
    label: say.addressOf(name),
    control: element('textarea', { rows: 2, readonly: true, spellcheck: 'false' }, address),
  });
  const place = fold(
    name,
    link.root,
    copyText(link.control as HTMLTextAreaElement, say.copy),
    element('div', { class: 'scan-place' }, scanPicture({ name, address })),
    element('button', { type: 'button', class: 'act two', onclick: project }, say.project(name)),
  );
  return place.root;
}
