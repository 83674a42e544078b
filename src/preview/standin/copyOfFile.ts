interface SavedSheet {
  readonly metadata: readonly unknown[];
  readonly protections: readonly { readonly warningOnly: boolean }[];
}

/** What a copy of a file leaves behind; which of it the host leaves behind is documented nowhere. */
export interface LeftBehind {
  readonly tags?: boolean;
  readonly protections?: boolean;
}

/**
 * A saved workbook as *Make a copy* hands it on: properties never come along, since the copy's script is another; marks
 * and protections do unless they are said to be left behind. Open it with a `fileId` of its own.
 */
export function copyOfFile(saved: string, { tags = false, protections = false }: LeftBehind = {}): string {
  const { sheets, metadata, ...rest } = JSON.parse(saved) as {
    readonly sheets: readonly SavedSheet[];
    readonly metadata: readonly unknown[];
  };
  return JSON.stringify({
    ...rest,
    properties: { document: [], script: [], teacher: [], student: [] },
    metadata: tags ? [] : metadata,
    sheets: sheets.map((sheet) => ({
      ...sheet,
      metadata: tags ? [] : sheet.metadata,
      protections: protections ? [] : sheet.protections,
    })),
  });
}
