/** The one file that names SpreadsheetApp: everything else works on what it hands over. */
export type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
export type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
export type Rule = GoogleAppsScript.Spreadsheet.ConditionalFormatRule;
export type Validation = GoogleAppsScript.Spreadsheet.DataValidation;
export type SheetProtection = GoogleAppsScript.Spreadsheet.Protection;

export const openSpreadsheet = (): Spreadsheet => SpreadsheetApp.getActiveSpreadsheet();

export const ui = () => SpreadsheetApp.getUi();

/** Lets pending writes arrive: before reading what functions made of them, and before a lock is given back. */
export const settle = (): void => SpreadsheetApp.flush();

/** A dropdown that offers and does not refuse: nothing a person types is turned away. */
export const choiceOf = (options: readonly string[], help: string): Validation =>
  SpreadsheetApp.newDataValidation()
    .requireValueInList([...options], true)
    .setAllowInvalid(true)
    .setHelpText(help)
    .build();

export const stateRuleOf = ({
  startsWith,
  background,
  color,
  ranges,
}: {
  startsWith: string;
  background: string;
  color: string;
  ranges: GoogleAppsScript.Spreadsheet.Range[];
}): Rule =>
  SpreadsheetApp.newConditionalFormatRule()
    .whenTextStartsWith(startsWith)
    .setBackground(background)
    .setFontColor(color)
    .setRanges(ranges)
    .build();

/** Is this rule one that `stateRuleOf` makes for that text? */
export const isStateRule = (rule: Rule, startsWith: string): boolean => {
  const condition = rule.getBooleanCondition();
  return (
    condition !== null &&
    condition.getCriteriaType() === SpreadsheetApp.BooleanCriteria.TEXT_STARTS_WITH &&
    condition.getCriteriaValues()[0] === startsWith
  );
};

export const sheetProtections = (sheet: Sheet): SheetProtection[] =>
  sheet.getProtections(SpreadsheetApp.ProtectionType.SHEET);

/** What becomes of a text that is longer than its cell. */
export const wrapOf = ({ wrap, clip }: { readonly wrap: boolean; readonly clip?: boolean }) =>
  SpreadsheetApp.WrapStrategy[wrap ? 'WRAP' : clip === true ? 'CLIP' : 'OVERFLOW'];

/** A line around each cell: a place to type in. */
export const boxAround = (cells: GoogleAppsScript.Spreadsheet.RangeList, colour: string): void => {
  cells.setBorder(true, true, true, true, true, true, colour, SpreadsheetApp.BorderStyle.SOLID);
};

/** So that what depends on the time of day moves on by itself. */
export const recalculateEveryMinute = (spreadsheet: Spreadsheet): void => {
  spreadsheet.setRecalculationInterval(SpreadsheetApp.RecalculationInterval.MINUTE);
};

/** Metadata that travels with the document, for any script that may open it. */
export const documentVisibility = () => SpreadsheetApp.DeveloperMetadataVisibility.DOCUMENT;
