/** Pages of their own beside the sidebar, to print or to project; each is a view of the same file, opened with a mark. */
export const pageNames = [
  'preparation',
  'labels',
  'key',
  'paper',
  'period',
  'done',
  'particles',
  'links',
  'cover',
  'guide',
  'trial',
] as const;
export type PageName = (typeof pageNames)[number];
