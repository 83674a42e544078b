/** What the script notes about the file for itself, read at most once in a run. */
export interface FileStore {
  readonly read: (key: string) => string;
  readonly write: (key: string, value: string) => void;
  readonly remove: (key: string) => void;
  readonly clear: () => void;
}

export function fileStore(): FileStore {
  let properties: GoogleAppsScript.Properties.Properties | undefined;
  let values: Record<string, string> | undefined;
  const store = () => {
    properties ??= PropertiesService.getDocumentProperties();
    return properties;
  };
  const all = () => {
    values ??= store().getProperties();
    return values;
  };
  return {
    read: (key) => all()[key] ?? '',
    write: (key, value) => {
      if (all()[key] === value) return;
      store().setProperty(key, value);
      values = { ...all(), [key]: value };
    },
    remove: (key) => {
      store().deleteProperty(key);
      const { [key]: _, ...others } = all();
      values = others;
    },
    clear: () => {
      store().deleteAllProperties();
      values = {};
    },
  };
}
