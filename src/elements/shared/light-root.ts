import type { LitElement } from 'lit';

/**
 * For an element that renders in light DOM: itself, without the words that stood in it for pages whose scripts do not run. What the
 * parser still adds of them, to an element that was defined before it was read to its end, goes once the page is read.
 */
export function lightRoot(element: LitElement): HTMLElement {
  const end = document.createComment('');
  element.replaceChildren(end);
  element.renderOptions.renderBefore = end;
  if (document.readyState === 'loading') {
    document.addEventListener('DOMContentLoaded', () => removeAfter(end), { once: true });
  }
  return element;
}

function removeAfter(end: ChildNode): void {
  while (end.nextSibling !== null) end.nextSibling.remove();
}
