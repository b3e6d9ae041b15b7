import { html, type LitElement, render, type TemplateResult } from 'lit';

/** Puts markup on the page for one test; `clearPage` takes it away again. */
export function onPage(content: TemplateResult): HTMLElement {
  const place = document.createElement('main');
  document.body.append(place);
  render(content, place);
  return place;
}

export function clearPage(): void {
  for (const place of document.querySelectorAll('main')) place.remove();
}

/** The element of that name in `place`, once it and all elements in it have nothing more to render. */
export async function settled<Name extends keyof HTMLElementTagNameMap>(
  place: ParentNode,
  name: Name,
): Promise<HTMLElementTagNameMap[Name]> {
  const element = place.querySelector(name);
  if (element === null) throw new Error(`there is no ${name}`);
  await quiet(element);
  return element;
}

/** Waits until an element, and what it holds, has rendered; what was never on the page is not drawn before it is. */
export async function quiet(element: Element): Promise<void> {
  const lit = element as Partial<LitElement> & Element;
  if (lit.hasUpdated === false && !lit.isConnected) return;
  while (lit.updateComplete !== undefined && !(await lit.updateComplete)) {
    // A controller asked for another round.
  }
  const inside = [...element.querySelectorAll('*'), ...(element.shadowRoot?.querySelectorAll('*') ?? [])];
  for (const child of inside) if (child.localName.startsWith('runnel-')) await quiet(child);
}

/** Waits until `holds` is true, and fails with `what` where it never is. */
export async function until(holds: () => boolean, what: string): Promise<void> {
  const end = performance.now() + 20_000;
  while (!holds()) {
    if (performance.now() > end) throw new Error(`waited in vain until ${what}`);
    await new Promise((resolve) => requestAnimationFrame(resolve));
  }
}

export { html };
