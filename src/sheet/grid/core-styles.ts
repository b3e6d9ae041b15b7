/**
 * Handsontable's own stylesheet as one that can be adopted. The library carries it in its script and writes it into a
 * <style> in the page, which a strict content security policy refuses and which comes after the first measurement. Here
 * it is taken from a grid in a document that is never shown, on its way into that document's head.
 */
import type Handsontable from 'handsontable/base';

type GridClass = { readonly Core: new (root: HTMLElement, settings: Handsontable.GridSettings) => Handsontable.Core };

/** Undefined where this version of the library no longer lets itself be read so: then it has to inject its style itself. */
export function coreStyles(library: GridClass): CSSStyleSheet | undefined {
  const inert = document.implementation.createHTMLDocument();
  let text = '';
  // Nothing more is wanted of that grid: it is given up half made, before anything outside could know of it.
  const catchStyle = (style: HTMLElement) => {
    text = style.textContent ?? '';
    throw new Error('the style has been taken');
  };
  Object.defineProperty(inert, 'head', { value: { appendChild: catchStyle } });
  const root = inert.createElement('div');
  inert.body.append(root);
  try {
    // A direction of its own keeps it from asking for a computed style, which there is none of in this document.
    new library.Core(root, { layoutDirection: 'ltr', injectCoreCss: true, theme: 'none' }).destroy();
  } catch {
    // Taken, or not to be had.
  }
  if (text === '') return undefined;
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(text);
  return sheet;
}

/**
 * The menu is a grid of the library's own making, and would write the style that is adopted already into the page once
 * more, against a strict policy. It looks for an element of this name first, whatever its kind; an empty <style> would
 * break such a policy too.
 */
export function keepFromInjecting(into: Document): void {
  const id = 'handsontable-core-styles';
  if (into.getElementById(id) !== null) return;
  const placeholder = into.createElement('meta');
  placeholder.id = id;
  into.head.append(placeholder);
}
