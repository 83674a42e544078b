import { quoted } from '../../errors/quoted.ts';
import { failure, type Result, success } from '../../errors/result.ts';
import { type CellValue, isBlank } from '../../measurement/cellValue.ts';
import type { Grams, Millilitres } from '../../measurement/quantity.ts';
import { readQuantity, type TypedQuantity } from '../../measurement/readQuantity.ts';
import { volumetricTolerance } from '../../measurement/volumetricTolerance.ts';
import { decimalMarkOf } from '../lesson/lessonSettings.ts';
import type { SettingName } from '../lesson/setup.ts';
import { usualTools } from '../lesson/usualTools.ts';
import { toleranceTexts } from '../texts/readings.ts';
import { decimalText } from './decimalText.ts';

/** Cells of the settings by name; a blank one stands for what a lesson starts with. */
export type SettingCells = Readonly<Record<string, CellValue>>;

/** A tool that a reading depends on, with what it holds or carries. */
export type ToolUsed =
  | { readonly tool: 'balance'; readonly mass: Grams }
  | { readonly tool: 'flask' | 'pipette'; readonly volume: Millilitres };

export interface ReadingTolerance {
  /** In the unit of the reading: how far from what is expected is still accepted. */
  readonly limit: number;
  /** How the limit came about, in words for the Plan; never what is expected. */
  readonly words: string;
}

const settingCell = (settings: SettingCells, name: keyof typeof usualTools): CellValue =>
  isBlank(settings[name]) ? usualTools[name] : settings[name];

const badSetting = (name: SettingName, wanted: { readonly expected: string; readonly received: CellValue }) =>
  failure({
    code: 'lesson-setting',
    argument: name,
    expected: wanted.expected,
    received: quoted(wanted.received),
  });

/** A share as printed: 2, 2 % and 2,5 % are 2 and 2.5 percent of what is expected. */
function allowancePercent(settings: SettingCells): Result<number> {
  const name = 'allowance for technique';
  const cell = settingCell(settings, name);
  const typed = /^\s*(\d+(?:[.,]\d+)?)\s*%?\s*$/.exec(String(cell))?.[1]?.replace(',', '.');
  const percent = Number(typed);
  return typed !== undefined && percent <= 50
    ? success(percent)
    : badSetting(name, { expected: 'a percentage from 0 to 50, such as 2 %,', received: cell });
}

function glassware(settings: SettingCells): Result<{ glassClass: 'A' | 'B'; standard: 'ISO' | 'ASTM' }> {
  const classCell = settingCell(settings, 'glassware class');
  const standardCell = settingCell(settings, 'glassware standard');
  const glassClass = String(classCell).trim().toUpperCase();
  const standard = String(standardCell).trim().toUpperCase();
  if (glassClass !== 'A' && glassClass !== 'B' && glassClass !== 'AS') {
    return badSetting('glassware class', { expected: 'A or B', received: classCell });
  }
  if (standard !== 'ISO' && standard !== 'ASTM') {
    return badSetting('glassware standard', { expected: 'ISO or ASTM', received: standardCell });
  }
  return success({ glassClass: glassClass === 'B' ? 'B' : 'A', standard });
}

/** How finely the balance reads, in g, with the place of its last digit. Taken as ± that much at each reading. */
export function balanceReadability(settings: SettingCells): Result<TypedQuantity> {
  const cell = settingCell(settings, 'balance');
  const read = readQuantity(cell, 'mass', 'balance');
  return read.ok && read.value.value > 0
    ? success(read.value)
    : badSetting('balance', { expected: 'how finely the balance reads, such as 0.01 g,', received: cell });
}

/** Enough figures to compare, without the tail of binary arithmetic. */
const short = (value: number, settings: SettingCells): string =>
  decimalText(Number(value.toPrecision(3)), decimalMarkOf(settings));

interface Part {
  /** Standard uncertainty over the value. */
  readonly relative: number;
  readonly words: string;
}

function toolPart(used: ToolUsed, settings: SettingCells): Result<Part> {
  if (used.tool === 'balance') {
    const readability = balanceReadability(settings);
    if (!readability.ok) return readability;
    const tolerance = readability.value.value;
    // Tare and load are two readings, each rectangular.
    const uncertainty = (tolerance / Math.sqrt(3)) * Math.SQRT2;
    return success({ relative: uncertainty / used.mass, words: toleranceTexts.balance(short(tolerance, settings)) });
  }
  const kind = glassware(settings);
  if (!kind.ok) return kind;
  const { tolerance, readAt, confirmed } = volumetricTolerance({
    vessel: used.tool,
    volume: used.volume,
    ...kind.value,
  });
  const note = [
    readAt === used.volume ? '' : toleranceTexts.readAt(short(readAt, settings)),
    confirmed ? '' : toleranceTexts.fromMemory,
  ].join('');
  return success({
    relative: tolerance / Math.sqrt(3) / used.volume,
    words: toleranceTexts[used.tool]({
      size: short(used.volume, settings),
      tolerance: short(tolerance, settings),
      note,
    }),
  });
}

/**
 * How far a reading may lie from what is expected: 2·u + allowance, where u is the root sum of squares of the tools'
 * relative standard uncertainties. Tolerances are half-widths of rectangular distributions; the balance counts twice.
 *
 * @returns In the unit of `expected`. Fails with `lesson-setting` where a setting cannot be read.
 * Source: JCGM 100:2008, 4.3.7 and 5.1.6.
 */
export function readingTolerance(
  {
    expected,
    tools,
    techniqueShare = 1,
  }: {
    readonly expected: number;
    readonly tools: readonly ToolUsed[];
    /** Part of the allowance for technique that counts. */
    readonly techniqueShare?: number | undefined;
  },
  settings: SettingCells,
): Result<ReadingTolerance> {
  const percent = allowancePercent(settings);
  if (!percent.ok) return percent;
  const counted = percent.value * techniqueShare;
  const parts: Part[] = [];
  for (const used of tools) {
    const part = toolPart(used, settings);
    if (!part.ok) return part;
    parts.push(part.value);
  }
  const relative = Math.sqrt(parts.reduce((sum, part) => sum + part.relative ** 2, 0));
  return success({
    limit: Math.abs(expected) * (2 * relative + counted / 100),
    words: toleranceTexts.whole({
      tools: parts.map(({ words }) => words).join(' and '),
      percent: short(counted, settings),
    }),
  });
}
