/** A rectangle filled with `plain`, and over it what each area asks for, later areas on top. */
export function filledWith<T, A extends { row: number; column: number; rows: number; columns: number }>({
  rows,
  columns,
  plain,
  areas,
  of,
}: {
  rows: number;
  columns: number;
  plain: T;
  areas: readonly A[];
  of: (area: A) => T;
}): T[][] {
  const filled = Array.from({ length: rows }, () => Array.from({ length: columns }, () => plain));
  for (const area of areas) {
    const value = of(area);
    for (let row = area.row; row < area.row + area.rows && row <= rows; row += 1) {
      for (let column = area.column; column < area.column + area.columns && column <= columns; column += 1) {
        const line = filled[row - 1];
        if (line !== undefined) line[column - 1] = value;
      }
    }
  }
  return filled;
}
