import { correction, generate } from 'lean-qr/nano';

/** Light modules that must stand around the pattern, or a camera does not find it (ISO/IEC 18004, from memory). */
const quietModules = 4;

/** A scannable pattern as a drawing: one square of side `size`, and the path of its dark modules, one unit each. */
export interface ScanPattern {
  readonly size: number;
  readonly path: string;
}

/** The pattern that a camera reads as this address, with room around it, and with a quarter to spare for dirt and glare. */
export function scanPattern(address: string): ScanPattern {
  const code = generate(address, { minCorrectionLevel: correction.Q });
  let path = '';
  for (let y = 0; y < code.size; y += 1) {
    for (let x = 0; x < code.size; x += 1) {
      if (!code.get(x, y)) continue;
      const from = x;
      while (code.get(x + 1, y)) x += 1;
      path += `M${from + quietModules} ${y + quietModules}h${x + 1 - from}v1h-${x + 1 - from}z`;
    }
  }
  return { size: code.size + 2 * quietModules, path };
}
