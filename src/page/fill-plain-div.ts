import { ELEMENT_LOADERS } from './element-loaders.ts';

/**
 * Attributes that a plain `<div>` may set, as `data-` and the name. A list and not all of them: an author who may not
 * write scripts may write `data-onclick`.
 */
const SETTINGS = ['from-link', 'license-key', 'locale', 'measure', 'read-only', 'scope', 'src', 'storage-key', 'today'];

/** What a plain `<div>` asks for, or nothing: `data-runnel="week"` asks for a `runnel-week`. */
function tagOf(div: HTMLElement): string | undefined {
  const tag = `runnel-${div.dataset['runnel']}`;
  return ELEMENT_LOADERS.has(tag) ? tag : undefined;
}

/** An empty paragraph or a line break, which an editor put there. */
function isStray(node: Node): boolean {
  if (node instanceof HTMLBRElement) return true;
  const isEmptyWrapper = node instanceof HTMLParagraphElement && node.querySelector(':scope > :not(br)') === null;
  return (isEmptyWrapper || node instanceof Text) && (node.textContent ?? '').trim() === '';
}

/**
 * Puts the element that a `<div data-runnel="…" data-src="…">` stands for into it, for sites whose editor strips unknown
 * tags. A plan takes over what the div holds, without stray paragraphs and line breaks; in any other element's place
 * whatever stood there was meant for the time before. A div is filled once, by however many copies of the script.
 */
export function fillPlainDiv(div: HTMLElement): void {
  const tag = tagOf(div);
  if (tag === undefined || div.querySelector(`:scope > ${tag}`) !== null) return;
  const element = document.createElement(tag);
  for (const name of SETTINGS) {
    const value = div.getAttribute(`data-${name}`);
    if (value !== null) element.setAttribute(name, value);
  }
  if (tag === 'runnel-plan') element.append(...[...div.childNodes].filter((node) => !isStray(node)));
  div.replaceChildren(element);
}
