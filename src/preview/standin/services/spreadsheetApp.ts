import { HostObject, part } from '../hostObject.ts';
import {
  booleanCriteria,
  borderStyles,
  metadataVisibilities,
  protectionTypes,
  recalculationIntervals,
  validationCriteria,
  wrapStrategies,
} from './constants.ts';
import { RuleBuilderStandIn, ValidationBuilderStandIn } from './rules.ts';
import type { ScriptRun } from './scriptRun.ts';
import { SpreadsheetStandIn } from './spreadsheet.ts';
import { UiStandIn } from './ui.ts';

type App = GoogleAppsScript.Spreadsheet.SpreadsheetApp;
type AppPart = Pick<
  App,
  | 'getActiveSpreadsheet'
  | 'getActive'
  | 'getActiveSheet'
  | 'getActiveRange'
  | 'getUi'
  | 'flush'
  | 'newConditionalFormatRule'
  | 'newDataValidation'
>;

class Names extends HostObject {
  readonly kind_ = 'Enum';
  constructor(values: Readonly<Record<string, HostObject>>) {
    super();
    Object.assign(this, values);
  }
}

export class SpreadsheetAppStandIn extends HostObject implements AppPart {
  readonly kind_ = 'SpreadsheetApp';
  readonly ProtectionType = new Names(protectionTypes);
  readonly RecalculationInterval = new Names(recalculationIntervals);
  readonly DeveloperMetadataVisibility = new Names(metadataVisibilities);
  readonly BooleanCriteria = new Names(booleanCriteria);
  readonly DataValidationCriteria = new Names(validationCriteria);
  readonly WrapStrategy = new Names(wrapStrategies);
  readonly BorderStyle = new Names(borderStyles);
  readonly #run: ScriptRun;
  readonly #spreadsheet: SpreadsheetStandIn;
  constructor(run: ScriptRun) {
    super();
    this.#run = run;
    this.#spreadsheet = new SpreadsheetStandIn(run);
  }
  getActiveSpreadsheet(): GoogleAppsScript.Spreadsheet.Spreadsheet {
    return part<GoogleAppsScript.Spreadsheet.Spreadsheet>(this.#spreadsheet);
  }
  getActive(): GoogleAppsScript.Spreadsheet.Spreadsheet {
    return this.getActiveSpreadsheet();
  }
  getActiveSheet(): GoogleAppsScript.Spreadsheet.Sheet {
    return this.#spreadsheet.getActiveSheet();
  }
  getActiveRange(): GoogleAppsScript.Spreadsheet.Range {
    return this.#spreadsheet.getActiveRange();
  }
  getUi(): GoogleAppsScript.Base.Ui {
    return part<GoogleAppsScript.Base.Ui>(new UiStandIn(this.#run));
  }
  flush(): void {
    this.#run.book.settle();
  }
  newConditionalFormatRule(): GoogleAppsScript.Spreadsheet.ConditionalFormatRuleBuilder {
    return part<GoogleAppsScript.Spreadsheet.ConditionalFormatRuleBuilder>(new RuleBuilderStandIn());
  }
  newDataValidation(): GoogleAppsScript.Spreadsheet.DataValidationBuilder {
    return part<GoogleAppsScript.Spreadsheet.DataValidationBuilder>(new ValidationBuilderStandIn());
  }
}
