import { HostException } from '../hostError.ts';
import { aText, constantValue, HostConstant, HostObject, part } from '../hostObject.ts';
import type { Metadata } from '../sheetState.ts';
import { metadataVisibilities } from './constants.ts';

export type HostMetadata = GoogleAppsScript.Spreadsheet.DeveloperMetadata;
type HostFinder = GoogleAppsScript.Spreadsheet.DeveloperMetadataFinder;
type HostLocation = GoogleAppsScript.Spreadsheet.DeveloperMetadataLocation;
type HostSheet = GoogleAppsScript.Spreadsheet.Sheet;
type MetadataPart = Pick<
  HostMetadata,
  'getId' | 'getKey' | 'getValue' | 'getVisibility' | 'getLocation' | 'setKey' | 'setValue' | 'remove'
>;

/** Entries that are kept in one place, with the sheet that they belong to: none for those of the whole file. */
export interface MetadataPlace {
  readonly list: Metadata[];
  readonly sheet: () => HostSheet | null;
}

class MetadataStandIn extends HostObject implements MetadataPart {
  readonly kind_ = 'DeveloperMetadata';
  readonly #place: MetadataPlace;
  readonly #entry: Metadata;
  constructor(place: MetadataPlace, entry: Metadata) {
    super();
    this.#place = place;
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
  getLocation(): HostLocation {
    return part<HostLocation>(new LocationStandIn(this.#place));
  }
  setKey(key: string): HostMetadata {
    this.#entry.key = aText(key, 'DeveloperMetadata.setKey');
    return part<HostMetadata>(this);
  }
  setValue(value: string): HostMetadata {
    this.#entry.value = aText(value, 'DeveloperMetadata.setValue');
    return part<HostMetadata>(this);
  }
  remove(): void {
    const { list } = this.#place;
    const index = list.indexOf(this.#entry);
    if (index < 0) throw new HostException('The developer metadata no longer exists.');
    list.splice(index, 1);
  }
}

class LocationStandIn extends HostObject implements Pick<HostLocation, 'getSheet'> {
  readonly kind_ = 'DeveloperMetadataLocation';
  readonly #place: MetadataPlace;
  constructor(place: MetadataPlace) {
    super();
    this.#place = place;
  }
  getSheet(): HostSheet | null {
    return this.#place.sheet();
  }
}

/** Searches the whole file: its own entries and those of its sheets. */
export class FinderStandIn extends HostObject implements Pick<HostFinder, 'withKey' | 'find'> {
  readonly kind_ = 'DeveloperMetadataFinder';
  readonly #places: () => readonly MetadataPlace[];
  readonly #key: string | undefined;
  constructor(places: () => readonly MetadataPlace[], key?: string) {
    super();
    this.#places = places;
    this.#key = key;
  }
  withKey(key: string): HostFinder {
    return part<HostFinder>(new FinderStandIn(this.#places, aText(key, 'DeveloperMetadataFinder.withKey')));
  }
  find(): HostMetadata[] {
    return this.#places()
      .flatMap(metadataOf)
      .filter((entry) => this.#key === undefined || entry.getKey() === this.#key);
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

export const metadataOf = (place: MetadataPlace): HostMetadata[] =>
  place.list.map((entry) => part<HostMetadata>(new MetadataStandIn(place, entry)));
