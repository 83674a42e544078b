import { colour } from '../colour.ts';
import { HostException } from '../hostError.ts';
import { aNumber, aText, HostObject, own, part } from '../hostObject.ts';
import type { Condition, Rule, Validation } from '../sheetState.ts';
import { booleanCriteria, validationCriteria } from './constants.ts';
import { RangeStandIn } from './range.ts';
import type { ScriptRun } from './scriptRun.ts';

type RuleBuilder = GoogleAppsScript.Spreadsheet.ConditionalFormatRuleBuilder;
type HostRule = GoogleAppsScript.Spreadsheet.ConditionalFormatRule;
type HostRange = GoogleAppsScript.Spreadsheet.Range;
type ValidationBuilder = GoogleAppsScript.Spreadsheet.DataValidationBuilder;
type HostValidation = GoogleAppsScript.Spreadsheet.DataValidation;

type HostCondition = GoogleAppsScript.Spreadsheet.BooleanCondition;

const criteriaOf: Readonly<Record<Condition['kind'], keyof typeof booleanCriteria>> = {
  'text-starts-with': 'TEXT_STARTS_WITH',
  'text-ends-with': 'TEXT_ENDS_WITH',
  'text-equal': 'TEXT_EQUAL_TO',
  'text-contains': 'TEXT_CONTAINS',
  'text-does-not-contain': 'TEXT_DOES_NOT_CONTAIN',
  formula: 'CUSTOM_FORMULA',
  empty: 'CELL_EMPTY',
  'not-empty': 'CELL_NOT_EMPTY',
  'number-between': 'NUMBER_BETWEEN',
  'number-equal': 'NUMBER_EQUAL_TO',
  'number-greater': 'NUMBER_GREATER_THAN',
  'number-less': 'NUMBER_LESS_THAN',
};

class ConditionStandIn extends HostObject implements Pick<HostCondition, 'getCriteriaType' | 'getCriteriaValues'> {
  readonly kind_ = 'BooleanCondition';
  readonly #condition: Condition;
  constructor(condition: Condition) {
    super();
    this.#condition = condition;
  }
  getCriteriaType(): GoogleAppsScript.Spreadsheet.BooleanCriteria {
    return booleanCriteria[criteriaOf[this.#condition.kind]] as unknown as GoogleAppsScript.Spreadsheet.BooleanCriteria;
  }
  getCriteriaValues(): unknown[] {
    const { text, low, high } = this.#condition;
    return [text, low, high].filter((value) => value !== undefined);
  }
}

export class RuleStandIn extends HostObject implements Pick<HostRule, 'getRanges' | 'getBooleanCondition' | 'copy'> {
  readonly kind_ = 'ConditionalFormatRule';
  readonly rule_: Rule;
  readonly ranges_: readonly RangeStandIn[];
  constructor(rule: Rule, ranges: readonly RangeStandIn[]) {
    super();
    this.rule_ = rule;
    this.ranges_ = ranges;
  }
  getRanges(): HostRange[] {
    return this.ranges_.map((range) => part<HostRange>(range));
  }
  getBooleanCondition(): HostCondition {
    return part<HostCondition>(new ConditionStandIn(this.rule_.condition));
  }
  copy(): RuleBuilder {
    return part<RuleBuilder>(new RuleBuilderStandIn(this));
  }
}

type RuleBuilderPart = Pick<
  RuleBuilder,
  | 'whenTextStartsWith'
  | 'whenTextEndsWith'
  | 'whenTextEqualTo'
  | 'whenTextContains'
  | 'whenTextDoesNotContain'
  | 'whenFormulaSatisfied'
  | 'whenCellEmpty'
  | 'whenCellNotEmpty'
  | 'whenNumberBetween'
  | 'whenNumberEqualTo'
  | 'whenNumberGreaterThan'
  | 'whenNumberLessThan'
  | 'setBackground'
  | 'setFontColor'
  | 'setBold'
  | 'setItalic'
  | 'setStrikethrough'
  | 'setUnderline'
  | 'setRanges'
  | 'build'
>;

export class RuleBuilderStandIn extends HostObject implements RuleBuilderPart {
  readonly kind_ = 'ConditionalFormatRuleBuilder';
  #condition: Condition | undefined;
  #looks: Omit<Rule, 'condition' | 'areas'> = {};
  #ranges: readonly RangeStandIn[] = [];
  constructor(from?: RuleStandIn) {
    super();
    if (!from) return;
    const { condition, areas: _, ...looks } = from.rule_;
    this.#condition = condition;
    this.#looks = looks;
    this.#ranges = from.ranges_;
  }
  #when(condition: Condition): RuleBuilder {
    this.#condition = condition;
    return part<RuleBuilder>(this);
  }
  #look(looks: Omit<Rule, 'condition' | 'areas'>): RuleBuilder {
    this.#looks = { ...this.#looks, ...looks };
    return part<RuleBuilder>(this);
  }
  whenTextStartsWith(text: string): RuleBuilder {
    return this.#when({ kind: 'text-starts-with', text: aText(text, `${this.kind_}.whenTextStartsWith`) });
  }
  whenTextEndsWith(text: string): RuleBuilder {
    return this.#when({ kind: 'text-ends-with', text: aText(text, `${this.kind_}.whenTextEndsWith`) });
  }
  whenTextEqualTo(text: string): RuleBuilder {
    return this.#when({ kind: 'text-equal', text: aText(text, `${this.kind_}.whenTextEqualTo`) });
  }
  whenTextContains(text: string): RuleBuilder {
    return this.#when({ kind: 'text-contains', text: aText(text, `${this.kind_}.whenTextContains`) });
  }
  whenTextDoesNotContain(text: string): RuleBuilder {
    return this.#when({ kind: 'text-does-not-contain', text: aText(text, `${this.kind_}.whenTextDoesNotContain`) });
  }
  whenFormulaSatisfied(formula: string): RuleBuilder {
    if (!aText(formula, `${this.kind_}.whenFormulaSatisfied`).startsWith('=')) {
      throw new HostException('Conditional format rule cannot use a formula that does not begin with =.');
    }
    return this.#when({ kind: 'formula', text: formula });
  }
  whenCellEmpty(): RuleBuilder {
    return this.#when({ kind: 'empty' });
  }
  whenCellNotEmpty(): RuleBuilder {
    return this.#when({ kind: 'not-empty' });
  }
  whenNumberBetween(start: number, end: number): RuleBuilder {
    const method = `${this.kind_}.whenNumberBetween`;
    return this.#when({ kind: 'number-between', low: aNumber(start, method), high: aNumber(end, method) });
  }
  whenNumberEqualTo(number: number): RuleBuilder {
    return this.#when({ kind: 'number-equal', low: aNumber(number, `${this.kind_}.whenNumberEqualTo`) });
  }
  whenNumberGreaterThan(number: number): RuleBuilder {
    return this.#when({ kind: 'number-greater', low: aNumber(number, `${this.kind_}.whenNumberGreaterThan`) });
  }
  whenNumberLessThan(number: number): RuleBuilder {
    return this.#when({ kind: 'number-less', low: aNumber(number, `${this.kind_}.whenNumberLessThan`) });
  }
  setBackground(color: string | null): RuleBuilder {
    const read = colour(color);
    return this.#look(read ? { background: read } : {});
  }
  setFontColor(color: string | null): RuleBuilder {
    const read = colour(color);
    return this.#look(read ? { color: read } : {});
  }
  setBold(bold: boolean | null): RuleBuilder {
    return this.#look({ bold: bold === true });
  }
  setItalic(italic: boolean | null): RuleBuilder {
    return this.#look({ italic: italic === true });
  }
  setStrikethrough(strike: boolean | null): RuleBuilder {
    return this.#look({ strike: strike === true });
  }
  setUnderline(underline: boolean | null): RuleBuilder {
    return this.#look({ underline: underline === true });
  }
  setRanges(ranges: HostRange[]): RuleBuilder {
    if (!Array.isArray(ranges))
      throw new HostException(`The parameters don't match the method signature for ${this.kind_}.setRanges.`);
    this.#ranges = ranges.map((range) => own(range, RangeStandIn, `${this.kind_}.setRanges`));
    return part<RuleBuilder>(this);
  }
  build(): HostRule {
    if (!this.#condition) throw new HostException('Conditional format rule must have a condition.');
    if (!this.#ranges.length) throw new HostException('Conditional format rule must have at least one range.');
    const areas = this.#ranges.map((range) => range.area_);
    return part<HostRule>(new RuleStandIn({ condition: this.#condition, areas, ...this.#looks }, this.#ranges));
  }
}

export class ValidationStandIn
  extends HostObject
  implements Pick<HostValidation, 'getAllowInvalid' | 'getHelpText' | 'getCriteriaType' | 'getCriteriaValues'>
{
  readonly kind_ = 'DataValidation';
  readonly validation_: Validation;
  constructor(validation: Validation) {
    super();
    this.validation_ = validation;
  }
  getAllowInvalid(): boolean {
    return this.validation_.allowInvalid;
  }
  getHelpText(): string {
    // The host gives null where there is none, which its typings leave out.
    return this.validation_.help ?? (null as unknown as string);
  }
  getCriteriaType(): GoogleAppsScript.Spreadsheet.DataValidationCriteria {
    const names = {
      list: 'VALUE_IN_LIST',
      checkbox: 'CHECKBOX',
      'number-between': 'NUMBER_BETWEEN',
      'number-at-least': 'NUMBER_GREATER_THAN_OR_EQUAL_TO',
      'number-at-most': 'NUMBER_LESS_THAN_OR_EQUAL_TO',
    } as const;
    const criterion = validationCriteria[names[this.validation_.kind]];
    return criterion as unknown as GoogleAppsScript.Spreadsheet.DataValidationCriteria;
  }
  getCriteriaValues(): unknown[] {
    const { options, dropdown, low, high } = this.validation_;
    if (options) return [[...options], dropdown ?? true];
    return [low, high].filter((end) => end !== undefined);
  }
}

type ValidationBuilderPart = Pick<
  ValidationBuilder,
  | 'requireValueInList'
  | 'requireCheckbox'
  | 'requireNumberBetween'
  | 'requireNumberGreaterThanOrEqualTo'
  | 'requireNumberLessThanOrEqualTo'
  | 'setAllowInvalid'
  | 'setHelpText'
  | 'build'
>;

export class ValidationBuilderStandIn extends HostObject implements ValidationBuilderPart {
  readonly kind_ = 'DataValidationBuilder';
  #validation: Omit<Validation, 'allowInvalid'> | undefined;
  // The host's default: a warning, no refusal.
  #allowInvalid = true;
  #help: string | undefined;
  #require(validation: Omit<Validation, 'allowInvalid'>): ValidationBuilder {
    this.#validation = validation;
    return part<ValidationBuilder>(this);
  }
  requireValueInList(values: string[], showDropdown = true): ValidationBuilder {
    if (!Array.isArray(values))
      throw new HostException(`The parameters don't match the method signature for ${this.kind_}.requireValueInList.`);
    if (values.length > 500)
      throw new HostException('The list of values for data validation may hold 500 values at most.');
    const options = values.map((value) => aText(value, `${this.kind_}.requireValueInList`));
    return this.#require({ kind: 'list', options, dropdown: showDropdown });
  }
  requireCheckbox(): ValidationBuilder {
    return this.#require({ kind: 'checkbox' });
  }
  requireNumberBetween(start: number, end: number): ValidationBuilder {
    const method = `${this.kind_}.requireNumberBetween`;
    return this.#require({ kind: 'number-between', low: aNumber(start, method), high: aNumber(end, method) });
  }
  requireNumberGreaterThanOrEqualTo(number: number): ValidationBuilder {
    return this.#require({
      kind: 'number-at-least',
      low: aNumber(number, `${this.kind_}.requireNumberGreaterThanOrEqualTo`),
    });
  }
  requireNumberLessThanOrEqualTo(number: number): ValidationBuilder {
    return this.#require({
      kind: 'number-at-most',
      high: aNumber(number, `${this.kind_}.requireNumberLessThanOrEqualTo`),
    });
  }
  setAllowInvalid(allowInvalidData: boolean): ValidationBuilder {
    this.#allowInvalid = allowInvalidData;
    return part<ValidationBuilder>(this);
  }
  setHelpText(helpText: string): ValidationBuilder {
    this.#help = aText(helpText, `${this.kind_}.setHelpText`);
    return part<ValidationBuilder>(this);
  }
  build(): HostValidation {
    if (!this.#validation) throw new HostException('Data validation must have a criterion.');
    const help = this.#help === undefined ? {} : { help: this.#help };
    return part<HostValidation>(
      new ValidationStandIn({ ...this.#validation, allowInvalid: this.#allowInvalid, ...help }),
    );
  }
}

/** The host's rule for each of ours, with its ranges. */
export const rulesOf = (run: ScriptRun, sheet: number): RuleStandIn[] => {
  const state = run.book.sheet(sheet);
  return state.rules.map(
    (rule) =>
      new RuleStandIn(
        rule,
        rule.areas.map((area) => new RangeStandIn(run, state, area)),
      ),
  );
};
