import type { CSSResult } from 'lit';

/**
 * Gives styles to the page or shadow root around an element in light DOM, or to the shadow root itself; once, however
 * often they are asked for.
 */
export function adoptStyles(node: Node, styles: CSSResult): void {
  const root = node.getRootNode();
  const sheet = styles.styleSheet;
  if (sheet === undefined || !(root instanceof Document || root instanceof ShadowRoot)) return;
  if (!root.adoptedStyleSheets.includes(sheet)) root.adoptedStyleSheets.push(sheet);
}
