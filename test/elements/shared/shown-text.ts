/** All that a person reads or hears of a page: texts, what stands in fields, labels for screen readers, texts that styles put in. */

export interface ShownText {
  /** Where it stands, for whoever looks for it: `runnel-week p.task`, `runnel-plan input[aria-label]`. */
  readonly place: string;
  readonly text: string;
}

const READ_OUT = ['aria-label', 'aria-description', 'aria-valuetext', 'aria-roledescription', 'aria-placeholder'];
const ATTRIBUTES = [...READ_OUT, 'title', 'placeholder', 'alt', 'label', 'download'];
// What stands as code is to be written as it stands, in every language.
const UNREAD = new Set(['style', 'script', 'template', 'link', 'meta', 'title', 'code']);

export function shownTexts(root: ParentNode): readonly ShownText[] {
  return elementsIn(root).flatMap((element) => {
    if (UNREAD.has(element.localName)) return [];
    return [...textsOf(element), ...attributesOf(element), ...valuesOf(element), ...styledOf(element)];
  });
}

/** All elements, those in shadow roots too. */
function elementsIn(root: ParentNode): readonly Element[] {
  const own = root instanceof Element && root.shadowRoot !== null ? elementsIn(root.shadowRoot) : [];
  const below = [...root.querySelectorAll('*')].flatMap((each) => [
    each,
    ...(each.shadowRoot === null ? [] : elementsIn(each.shadowRoot)),
  ]);
  return [...(root instanceof Element ? [root] : []), ...own, ...below];
}

function textsOf(element: Element): readonly ShownText[] {
  const place = placeOf(element);
  return [...element.childNodes]
    .filter(({ nodeType }) => nodeType === Node.TEXT_NODE)
    .map(({ nodeValue }) => ({ place, text: nodeValue ?? '' }))
    .filter(({ text }) => text.trim() !== '');
}

function attributesOf(element: Element): readonly ShownText[] {
  return ATTRIBUTES.flatMap((name) => {
    const text = element.getAttribute(name);
    return text === null || text === '' ? [] : [{ place: `${placeOf(element)}[${name}]`, text }];
  });
}

/** What stands in a field; a choice is read by its options. */
function valuesOf(element: Element): readonly ShownText[] {
  const isField = element instanceof HTMLInputElement || element instanceof HTMLTextAreaElement;
  if (!isField || element.type === 'radio' || element.type === 'checkbox') return [];
  return element.value === '' ? [] : [{ place: `${placeOf(element)}.value`, text: element.value }];
}

function styledOf(element: Element): readonly ShownText[] {
  return ['::before', '::after'].flatMap((pseudo) => {
    const { content } = getComputedStyle(element, pseudo);
    const text = /^"(.*)"$/.exec(content)?.[1] ?? '';
    return text === '' ? [] : [{ place: `${placeOf(element)}${pseudo}`, text }];
  });
}

function placeOf(element: Element): string {
  const root = element.getRootNode();
  const host =
    root instanceof ShadowRoot ? root.host : element.parentElement?.closest(':is(runnel-grid, runnel-planner)');
  const classes = [...element.classList].map((name) => `.${name}`).join('');
  return `${host?.localName ?? ''} ${element.localName}${classes}`.trim();
}
