import { notLoadedText } from '../elements/shared/page-language.ts';
import { ELEMENT_LOADERS } from './element-loaders.ts';
import { fillPlainDiv } from './fill-plain-div.ts';
import { sayAllMisspelt } from './misspelt.ts';

const TAGS = [...ELEMENT_LOADERS.keys()].join();

/** Every element of the kit below `root`, itself included, and every plain div that stands for one. */
function find(root: Element | Document, selector: string): readonly HTMLElement[] {
  const below = [...root.querySelectorAll<HTMLElement>(selector)];
  return root instanceof HTMLElement && root.matches(selector) ? [root, ...below] : below;
}

/** Defines the elements that a page holds, now and later, and no others. Sees what lies in the page, not in shadow roots. */
export function watchPage(page: Document): void {
  const asked = new Set<string>();

  const load = async (tag: string): Promise<void> => {
    if (asked.has(tag)) return;
    asked.add(tag);
    try {
      await ELEMENT_LOADERS.get(tag)?.();
    } catch (error) {
      for (const element of page.querySelectorAll(tag)) element.textContent = notLoadedText(element);
      throw error;
    }
  };

  const welcome = (root: Element | Document): void => {
    for (const div of find(root, '[data-runnel]')) fillPlainDiv(div);
    for (const { localName } of find(root, TAGS)) void load(localName);
    sayAllMisspelt((selector) => find(root, selector));
  };

  const observer = new MutationObserver((records) => {
    for (const { addedNodes } of records) {
      for (const node of addedNodes) if (node instanceof Element && node.isConnected) welcome(node);
    }
  });
  observer.observe(page, { childList: true, subtree: true });
  welcome(page);
}
