import { HostException } from './hostError.ts';

// The sixteen basic colour names of CSS; anything else is written as a hexadecimal number.
const named: Readonly<Record<string, string>> = {
  aqua: '#00ffff',
  black: '#000000',
  blue: '#0000ff',
  fuchsia: '#ff00ff',
  gray: '#808080',
  green: '#008000',
  lime: '#00ff00',
  maroon: '#800000',
  navy: '#000080',
  olive: '#808000',
  purple: '#800080',
  red: '#ff0000',
  silver: '#c0c0c0',
  teal: '#008080',
  white: '#ffffff',
  yellow: '#ffff00',
};

/** A colour as `#rrggbb`; null takes the colour away. Refuses what the host does not know as a colour. */
export function colour(value: unknown): string | undefined {
  if (value === null || value === undefined || value === '') return undefined;
  const text = String(value).toLowerCase();
  if (/^#[0-9a-f]{6}$/.test(text)) return text;
  if (/^#[0-9a-f]{3}$/.test(text)) return `#${[...text.slice(1)].map((digit) => digit + digit).join('')}`;
  const known = named[text];
  if (known) return known;
  throw new HostException(`Invalid argument: color (${String(value)})`);
}
