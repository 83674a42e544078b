import type { Validation } from './sheetState.ts';
import type { Content } from './typed.ts';

/** Why a cell's validation refuses what was typed; undefined where it lets it pass. */
export function validationRefusal(
  validation: Validation | undefined,
  content: Content | undefined,
): string | undefined {
  if (!validation || validation.allowInvalid || !content || content.kind === 'formula') return undefined;
  if (fits(validation, content)) return undefined;
  return validation.help ?? 'The data you entered violates the data validation rules set on this cell.';
}

function fits(validation: Validation, content: Exclude<Content, { kind: 'formula' }>): boolean {
  const text = content.kind === 'text' ? content.text : String(content.value);
  const number = content.kind === 'number' ? content.value : Number.NaN;
  switch (validation.kind) {
    case 'list':
      return (validation.options ?? []).some((option) => option.toLowerCase() === text.trim().toLowerCase());
    case 'checkbox':
      return content.kind === 'boolean';
    case 'number-between':
      return number >= (validation.low ?? 0) && number <= (validation.high ?? 0);
    case 'number-at-least':
      return number >= (validation.low ?? 0);
    case 'number-at-most':
      return number <= (validation.high ?? 0);
  }
}
