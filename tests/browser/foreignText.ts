import type { Page } from 'playwright-core';

interface Node {
  readonly nodeId: number;
  readonly nodeName: string;
  readonly nodeType: number;
  readonly children?: readonly Node[];
  readonly pseudoElements?: readonly Node[];
  readonly contentDocument?: Node;
}

const elementsIn = (node: Node): readonly Node[] => [
  ...(node.nodeType === 1 ? [node] : []),
  ...[
    ...(node.children ?? []),
    ...(node.pseudoElements ?? []),
    ...(node.contentDocument ? [node.contentDocument] : []),
  ].flatMap(elementsIn),
];

/** Which texts of a page and its frames were drawn with which font of the machine, and how many with the tests' own. */
export async function foreignText(page: Page): Promise<{ readonly own: number; readonly foreign: readonly string[] }> {
  const client = await page.context().newCDPSession(page);
  await client.send('DOM.enable');
  await client.send('CSS.enable');
  const { root } = (await client.send('DOM.getDocument', { depth: -1, pierce: true })) as { root: Node };
  let own = 0;
  const foreign: string[] = [];
  for (const { nodeId, nodeName } of elementsIn(root)) {
    const { fonts } = await client.send('CSS.getPlatformFontsForNode', { nodeId });
    own += fonts.filter(({ isCustomFont }) => isCustomFont).length;
    const others = fonts.filter(({ isCustomFont }) => !isCustomFont).map(({ familyName }) => familyName);
    if (others.length === 0) continue;
    const { outerHTML } = await client.send('DOM.getOuterHTML', { nodeId });
    foreign.push(`${nodeName} in ${others.join(', ')}: ${outerHTML.slice(0, 200)}`);
  }
  await client.detach();
  return { own, foreign };
}
