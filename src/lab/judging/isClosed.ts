import type { CellValue } from '../../measurement/cellValue.ts';
import { blockKey } from '../bench/blockKey.ts';
import type { TeamLesson } from '../lesson/teamLesson.ts';

/** The setting that names the teams of classes that were closed at the bell, by their keys. */
export const closedSetting = 'closed at the bell';

/** Between keys, which may have spaces and commas in them. */
const between = ';';

/** The keys that the setting names. */
export const closedKeys = (cell: CellValue): readonly string[] =>
  String(cell ?? '')
    .split(between)
    .map((key) => key.trim())
    .filter((key) => key !== '');

export const closedText = (keys: readonly string[]): string => keys.join(`${between} `);

/** Whether the lesson is over for the team of a block, until its class goes on. */
export const isClosed = ({ settings, givens }: Pick<TeamLesson, 'settings' | 'givens'>): boolean =>
  closedKeys(settings.cells[closedSetting]).includes(blockKey(givens));
