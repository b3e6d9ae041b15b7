/** What a page holds beside the kit's elements: divs that stand for one, misspelt names, and open shadow roots. */
import { noSuchElementText } from '../elements/shared/page-language.ts';
import { warnDeveloper } from '../elements/shared/warn-developer.ts';
import { ELEMENT_LOADERS } from './element-loaders.ts';
import { fillPlainDiv } from './fill-plain-div.ts';

const TAGS = [...ELEMENT_LOADERS.keys()];
const PREFIX = 'runnel-';

/** `enter` is called with the open shadow root of an element of the page's own, once that is defined. */
export async function lookCloser(element: HTMLElement, enter: (root: ShadowRoot) => void): Promise<void> {
  const { localName, dataset } = element;
  const name = dataset['runnel'];
  const isOfKit = localName.startsWith(PREFIX);
  if (name !== undefined && ELEMENT_LOADERS.has(PREFIX + name)) fillPlainDiv(element);
  else if (name !== undefined || (isOfKit && element.matches(':not(:defined)'))) sayMisspelt(element);
  if (isOfKit) return;
  // Its shadow root comes with its definition.
  if (localName.includes('-')) await customElements.whenDefined(localName);
  if (element.shadowRoot !== null) enter(element.shadowRoot);
}

/** Says what there is instead: where the element stands, before what it holds, and in the console. */
function sayMisspelt(element: HTMLElement): void {
  const name = element.dataset['runnel'];
  const what = name === undefined ? `<${element.localName}>` : `data-runnel="${name}"`;
  const known = TAGS.map((tag) => (name === undefined ? `<${tag}>` : tag.slice(PREFIX.length))).join(', ');
  const text = noSuchElementText(element, what, known);
  if (element.firstChild?.textContent === text) return;
  element.prepend(text);
  warnDeveloper(element, `there is no ${what}. There is only: ${known}.`);
}
