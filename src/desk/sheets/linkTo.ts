/** Address of a sheet in a file: whoever opens it has that sheet in front. A place that the file’s own address names goes. */
export const linkTo = (fileAddress: string, sheetId: number): string =>
  `${fileAddress.replace(/#.*$/, '')}#gid=${sheetId}`;
