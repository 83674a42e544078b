/** A page to print or to project. */
export interface OpenedPage {
  readonly root: HTMLElement;
  /** Called once the page stands in the document. */
  enter?(): void;
  /** A page to project has no print button. */
  readonly isProjected?: true;
  /** What stands in place of the way back to the sidebar. */
  readonly close?: { readonly label: string; readonly run: () => void };
}
