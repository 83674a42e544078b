import { HostException } from '../hostError.ts';
import { aText, constantValue, HostConstant, HostObject, part } from '../hostObject.ts';
import type { Metadata } from '../sheetState.ts';
import { metadataVisibilities } from './constants.ts';

export type HostMetadata = GoogleAppsScript.Spreadsheet.DeveloperMetadata;
type MetadataPart = Pick<HostMetadata, 'getId' | 'getKey' | 'getValue' | 'getVisibility' | 'setValue' | 'remove'>;

class MetadataStandIn extends HostObject implements MetadataPart {
  readonly kind_ = 'DeveloperMetadata';
  readonly #list: Metadata[];
  readonly #entry: Metadata;
  constructor(list: Metadata[], entry: Metadata) {
    super();
    this.#list = list;
    this.#entry = entry;
  }
  getId(): number {
    return this.#entry.id;
  }
  getKey(): string {
    return this.#entry.key;
  }
  getValue(): string | null {
    return this.#entry.value === '' ? null : this.#entry.value;
  }
  getVisibility(): GoogleAppsScript.Spreadsheet.DeveloperMetadataVisibility {
    return metadataVisibilities[
      this.#entry.visibility
    ] as unknown as GoogleAppsScript.Spreadsheet.DeveloperMetadataVisibility;
  }
  setValue(value: string): HostMetadata {
    this.#entry.value = aText(value, 'DeveloperMetadata.setValue');
    return part<HostMetadata>(this);
  }
  remove(): void {
    const index = this.#list.indexOf(this.#entry);
    if (index < 0) throw new HostException('The developer metadata no longer exists.');
    this.#list.splice(index, 1);
  }
}

let lastId = 0;

/** Adds an entry each time; keys need not be unique. */
export function addMetadata(list: Metadata[], key: string, valueOrVisibility?: unknown, visibility?: unknown): void {
  const onlyVisibility = valueOrVisibility instanceof HostConstant ? valueOrVisibility : undefined;
  const seen = onlyVisibility ?? visibility;
  lastId += 1;
  list.push({
    id: lastId,
    key: aText(key, 'addDeveloperMetadata'),
    value: onlyVisibility || valueOrVisibility === undefined ? '' : aText(valueOrVisibility, 'addDeveloperMetadata'),
    visibility: seen === undefined ? 'DOCUMENT' : constantValue(seen, metadataVisibilities, 'addDeveloperMetadata'),
  });
}

export const metadataOf = (list: Metadata[]): HostMetadata[] =>
  list.map((entry) => part<HostMetadata>(new MetadataStandIn(list, entry)));
