import { notLoadedText } from '../elements/shared/page-language.ts';
import { ELEMENT_LOADERS } from './element-loaders.ts';

const TAGS = [...ELEMENT_LOADERS.keys()].join();

/** Every element below `root`, itself included, that a selector fits. */
function find(root: Element | Document | ShadowRoot, selector: string): readonly HTMLElement[] {
  const below = [...root.querySelectorAll<HTMLElement>(selector)];
  return root instanceof HTMLElement && root.matches(selector) ? [root, ...below] : below;
}

/** Whether an element may stand for one of the kit, be misspelt, or have a shadow root. */
function isOdd({ localName, dataset, shadowRoot }: HTMLElement): boolean {
  if (dataset?.['runnel'] !== undefined) return true;
  return !ELEMENT_LOADERS.has(localName) && (shadowRoot !== null || localName.includes('-'));
}

/** Defines the elements that a page holds, now and later, and no others; in open shadow roots too. */
export function watchPage(page: Document): void {
  const asked = new Map<string, Promise<unknown>>();
  const entered = new WeakSet<Node>();

  const load = async (element: HTMLElement): Promise<void> => {
    const { localName: tag } = element;
    const isFirst = !asked.has(tag);
    const loading = asked.get(tag) ?? Promise.resolve(ELEMENT_LOADERS.get(tag)?.());
    asked.set(tag, loading);
    try {
      await loading;
    } catch (error) {
      element.textContent = notLoadedText(element);
      if (isFirst) throw error;
    }
  };

  const enter = (root: Document | ShadowRoot): void => {
    if (entered.has(root)) return;
    entered.add(root);
    observer.observe(root, { childList: true, subtree: true });
    welcome(root);
  };

  const lookAt = async (odd: readonly HTMLElement[]): Promise<void> => {
    const { lookCloser } = await import('./look-closer.ts');
    for (const element of odd) void lookCloser(element, enter);
  };

  const welcome = (root: Element | Document | ShadowRoot): void => {
    for (const element of find(root, TAGS)) void load(element);
    const odd = find(root, '*').filter(isOdd);
    if (odd.length > 0) void lookAt(odd);
  };

  const observer = new MutationObserver((records) => {
    for (const { addedNodes } of records) {
      for (const node of addedNodes) {
        // What the spreadsheet draws is its own, and much.
        const sheet = node.parentElement?.closest('runnel-grid') ?? null;
        if (node instanceof Element && node.isConnected && sheet === null) welcome(node);
      }
    }
  });
  enter(page);
}
