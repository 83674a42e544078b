/** A page to print or to project. */
export interface OpenedPage {
  readonly root: HTMLElement;
  /** Called once the page stands in the document. */
  enter?(): void;
  /** A page to project has no print button. */
  readonly isProjected?: true;
}
