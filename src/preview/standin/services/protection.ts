import type { Area } from '../address.ts';
import { mayPass, owner, people } from '../guards.ts';
import { HostException } from '../hostError.ts';
import { aText, HostObject, own, part } from '../hostObject.ts';
import type { ProtectionState, SheetState } from '../sheetState.ts';
import { protectionTypes } from './constants.ts';
import { RangeStandIn } from './range.ts';
import type { ScriptRun } from './scriptRun.ts';

type HostProtection = GoogleAppsScript.Spreadsheet.Protection;
type HostRange = GoogleAppsScript.Spreadsheet.Range;
type HostUser = GoogleAppsScript.Base.User;

class UserStandIn extends HostObject implements Pick<HostUser, 'getEmail'> {
  readonly kind_ = 'User';
  readonly address_: string;
  constructor(address: string) {
    super();
    this.address_ = address;
  }
  getEmail(): string {
    return this.address_;
  }
}

type ProtectionPart = Pick<
  HostProtection,
  | 'getDescription'
  | 'setDescription'
  | 'getUnprotectedRanges'
  | 'setUnprotectedRanges'
  | 'isWarningOnly'
  | 'setWarningOnly'
  | 'remove'
  | 'getEditors'
  | 'removeEditor'
  | 'canDomainEdit'
  | 'setDomainEdit'
  | 'canEdit'
  | 'getRange'
  | 'getProtectionType'
> & { removeEditors(emailAddresses: string[]): HostProtection; addEditor(emailAddress: string): HostProtection };

export class ProtectionStandIn extends HostObject implements ProtectionPart {
  readonly kind_ = 'Protection';
  readonly #run: ScriptRun;
  readonly #sheet: SheetState;
  readonly #id: number;
  constructor(run: ScriptRun, sheet: SheetState, state: ProtectionState) {
    super();
    this.#run = run;
    this.#sheet = sheet;
    this.#id = state.id;
  }
  get #state(): ProtectionState {
    const state = this.#sheet.protections.find((protection) => protection.id === this.#id);
    if (!state) throw new HostException('The protection was removed.');
    return state;
  }
  #changed(): HostProtection {
    this.#run.book.restructure(this.#sheet);
    return part<HostProtection>(this);
  }
  #mayChange(): ProtectionState {
    const state = this.#state;
    if (!mayPass(state, this.#run.execution.seat)) {
      throw new HostException('You do not have permission to edit this protected range.');
    }
    return state;
  }
  getDescription(): string {
    return this.#state.description;
  }
  setDescription(description: string): HostProtection {
    this.#mayChange().description = aText(description, 'Protection.setDescription');
    return this.#changed();
  }
  getProtectionType(): GoogleAppsScript.Spreadsheet.ProtectionType {
    return protectionTypes[this.#state.kind] as unknown as GoogleAppsScript.Spreadsheet.ProtectionType;
  }
  getRange(): HostRange {
    const whole = { row: 1, column: 1, rows: this.#sheet.rows, columns: this.#sheet.columns };
    return part<HostRange>(new RangeStandIn(this.#run, this.#sheet, this.#state.area ?? whole));
  }
  getUnprotectedRanges(): HostRange[] {
    return this.#state.unprotected.map((area) => part<HostRange>(new RangeStandIn(this.#run, this.#sheet, area)));
  }
  setUnprotectedRanges(ranges: HostRange[]): HostProtection {
    const state = this.#mayChange();
    if (state.kind === 'RANGE') throw new HostException('Unprotected ranges can only be set on a protected sheet.');
    state.unprotected = ranges.map((range) => {
      const given = own(range, RangeStandIn, 'Protection.setUnprotectedRanges');
      if (given.sheet_ !== this.#sheet) throw new HostException('Unprotected ranges must be on the protected sheet.');
      return given.area_;
    });
    return this.#changed();
  }
  isWarningOnly(): boolean {
    return this.#state.warningOnly;
  }
  setWarningOnly(warningOnly: boolean): HostProtection {
    const state = this.#mayChange();
    state.warningOnly = warningOnly;
    // Editors no longer apply; switching it off again gives everybody back, as before anybody was taken off.
    state.editors = Object.values(people);
    return this.#changed();
  }
  remove(): void {
    this.#mayChange();
    this.#sheet.protections = this.#sheet.protections.filter((protection) => protection.id !== this.#id);
    this.#run.book.restructure(this.#sheet);
  }
  getEditors(): HostUser[] {
    return this.#state.editors.map((address) => part<HostUser>(new UserStandIn(address)));
  }
  #without(addresses: readonly unknown[]): HostProtection {
    const state = this.#mayChange();
    if (state.warningOnly) throw new HostException('Editors cannot be removed from a warning-only protection.');
    if (this.#run.troubles.editorsStay) throw new HostException('You cannot remove yourself as an editor.');
    const gone = addresses.map((user) => (user instanceof UserStandIn ? user.address_ : String(user)));
    // The owner and whoever runs this can never be taken off.
    const kept: readonly string[] = [people[owner], people[this.#run.execution.seat]];
    state.editors = state.editors.filter((address) => kept.includes(address) || !gone.includes(address));
    return this.#changed();
  }
  removeEditor(user: unknown): HostProtection {
    return this.#without([user]);
  }
  removeEditors(users: readonly unknown[]): HostProtection {
    if (!Array.isArray(users)) {
      throw new HostException("The parameters don't match the method signature for Protection.removeEditors.");
    }
    return this.#without(users);
  }
  addEditor(user: unknown): HostProtection {
    const state = this.#mayChange();
    const address = user instanceof UserStandIn ? user.address_ : String(user);
    if (!state.editors.includes(address)) state.editors.push(address);
    return this.#changed();
  }
  canEdit(): boolean {
    return mayPass(this.#state, this.#run.execution.seat);
  }
  // The file belongs to an account without a domain, where setDomainEdit throws.
  canDomainEdit(): boolean {
    return false;
  }
  setDomainEdit(_editable: boolean): HostProtection {
    throw new HostException('Domain edit cannot be changed: the file is not owned by a member of a domain.');
  }
}

const freeId = (sheet: SheetState): number => Math.max(0, ...sheet.protections.map(({ id }) => id)) + 1;

function added(run: ScriptRun, sheet: SheetState, of: Pick<ProtectionState, 'kind' | 'area'>): ProtectionState {
  const state: ProtectionState = {
    id: freeId(sheet),
    ...of,
    unprotected: [],
    description: '',
    warningOnly: false,
    editors: Object.values(people),
  };
  sheet.protections.push(state);
  run.book.restructure(sheet);
  return state;
}

/** Another protection each time, over any there may be already. */
export const protectRange = (run: ScriptRun, sheet: SheetState, area: Area): ProtectionState =>
  added(run, sheet, { kind: 'RANGE', area });

/** The sheet's one protection, there already or new. */
export const protectSheet = (run: ScriptRun, sheet: SheetState): ProtectionState =>
  sheet.protections.find(({ kind }) => kind === 'SHEET') ?? added(run, sheet, { kind: 'SHEET', area: undefined });
