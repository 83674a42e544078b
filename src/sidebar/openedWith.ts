/** What this page was opened with: what it is about, and the lesson that the page before spoke of. */
export function openedWith(): { readonly about: string; readonly lesson: string | undefined } {
  const [about = '', lesson] = (document.body.dataset.about ?? '').split('\n');
  return { about, lesson };
}
