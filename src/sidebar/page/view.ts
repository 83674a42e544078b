/** One thing at a time: the page shows one view and tells it when it comes and goes. */
export interface View {
  readonly root: HTMLElement;
  enter(): void;
  leave(): void;
}
export type ViewName =
  | 'plan'
  | 'prepare'
  | 'sheets'
  | 'classNow'
  | 'particles'
  | 'poll'
  | 'teams'
  | 'record'
  | 'share'
  | 'help';
