import type { Execution } from './execution.ts';
import { HostException } from './hostError.ts';

const scopes = 'https://www.googleapis.com/auth/';
const document = [
  'Spreadsheet',
  'Sheet',
  'Range',
  'RangeList',
  'Protection',
  'NamedRange',
  'DeveloperMetadata',
  'DeveloperMetadataFinder',
  'DeveloperMetadataLocation',
];
const reading = /^(get|is|can|offset|toString|createDeveloperMetadataFinder|find|with)/;
const opensWindow = ['showSidebar', 'showModalDialog', 'showModelessDialog', 'showDialog', 'alert', 'prompt'];
/** Services that a function in a cell may use, besides reading its own workbook. */
const inCells = ['SpreadsheetApp', 'LockService', 'Lock', 'CacheService', 'Cache', 'PropertiesService', 'Properties'];
const harmless = ['Utilities', 'HtmlService', 'HtmlOutput', 'Logger', 'console', 'User'];

/** Refuses what the host refuses in this kind of run, before the call is made. */
export function refuseWithoutPermission(execution: Execution, kind: string, member: string): void {
  if (kind === 'Session' && /User$/.test(member)) {
    throw new HostException(
      `You do not have permission to call Session.${member}. Required permissions: ${scopes}userinfo.email`,
    );
  }
  if (execution.mode === 'FULL') return;
  if (kind === 'Ui' && opensWindow.includes(member)) {
    throw new HostException(
      `You do not have permission to call Ui.${member}. Required permissions: ${scopes}script.container.ui`,
    );
  }
  if (execution.mode === 'LIMITED') return;
  if (kind === 'SpreadsheetApp' && member === 'getUi') {
    throw new HostException('Cannot call SpreadsheetApp.getUi() from this context.');
  }
  if (document.includes(kind)) {
    if (reading.test(member)) return;
    throw new HostException(`You do not have permission to call ${member}`);
  }
  if (kind === 'PropertiesService' && member !== 'getUserProperties') {
    throw new HostException(`You do not have permission to call PropertiesService.${member}`);
  }
  if (kind === 'Properties' && /^(set|delete)/.test(member)) {
    throw new HostException(`You do not have permission to call ${member}`);
  }
  if (kind === 'Session' && /^(getScriptTimeZone|getActiveUserLocale)$/.test(member)) return;
  if (inCells.includes(kind) || harmless.includes(kind) || /Builder$|^(Enum|ConditionalFormatRule)$/.test(kind)) return;
  throw new HostException(`You do not have permission to call ${kind}.${member}`);
}
