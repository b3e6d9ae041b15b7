import type { CSSResult } from 'lit';

/** Gives the page, or the shadow root, around an element in light DOM its styles; once, however many elements ask. */
export function adoptStyles(element: Element, styles: CSSResult): void {
  const root = element.getRootNode();
  const sheet = styles.styleSheet;
  if (sheet === undefined || !(root instanceof Document || root instanceof ShadowRoot)) return;
  if (!root.adoptedStyleSheets.includes(sheet)) root.adoptedStyleSheets.push(sheet);
}
