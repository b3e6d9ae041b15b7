import { render, type TemplateResult } from 'lit';

interface Updating {
  readonly updateComplete: Promise<unknown>;
}

const isUpdating = (element: Element): element is Element & Updating => 'updateComplete' in element;

/** Renders `template` into a fresh holder in the page, which the end of the test takes away, and gives its first element, updated. */
export async function fixture<E extends Element>(template: TemplateResult): Promise<E> {
  const holder = document.createElement('div');
  document.body.append(holder);
  holders.add(holder);
  render(template, holder);
  const element = holder.firstElementChild;
  if (element === null) throw new Error('The template of a fixture begins with an element.');
  if (isUpdating(element)) await element.updateComplete;
  return element as E;
}

const holders = new Set<HTMLElement>();

afterEach(() => {
  for (const holder of holders) holder.remove();
  holders.clear();
});
