/**
 * Copies the text of a field. Frames of the host often may not use the clipboard; the older way is not bound by that. `by`
 * says which way did it; where none did, the text stays marked for copying by hand.
 */
export async function copyOut(control: HTMLTextAreaElement): Promise<'clipboard' | 'older way' | 'nothing'> {
  try {
    await navigator.clipboard.writeText(control.value);
    return 'clipboard';
  } catch {
    control.focus();
    control.select();
    try {
      return document.execCommand('copy') ? 'older way' : 'nothing';
    } catch {
      return 'nothing';
    }
  }
}
