/** Folders with compiler settings of their own; each file of ours belongs to one of them. */
export const projects = ['tests', 'scripts', 'src/preview', 'src/host', 'src/sidebar', '.', 'src/preview/page'];
