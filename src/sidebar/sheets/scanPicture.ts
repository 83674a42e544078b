import { svgElement } from '../page/svgElement.ts';
import { texts } from '../texts.ts';
import { scanPattern } from './scanPattern.ts';

/** The address of a class's sheet as a picture to scan: dark on white on every ground, or a camera does not read it. */
export function scanPicture({ name, address }: { readonly name: string; readonly address: string }): SVGSVGElement {
  const { size, path } = scanPattern(address);
  return svgElement(
    'svg',
    {
      class: 'scan-picture',
      viewBox: `0 0 ${size} ${size}`,
      role: 'img',
      'aria-label': texts.sheets.picture(name),
      'shape-rendering': 'crispEdges',
    },
    svgElement('rect', { width: size, height: size, fill: '#fff' }),
    svgElement('path', { d: path, fill: '#000' }),
  );
}
