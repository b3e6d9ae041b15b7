import { sheetStyles } from './sheet.styles.ts';

let own: CSSStyleSheet | undefined;

/** Gives a document the sheet's styles, once. `others` come before them. */
export function adoptSheetStyles(into: Document | ShadowRoot, ...others: readonly (CSSStyleSheet | undefined)[]): void {
  if (own === undefined) {
    own = new CSSStyleSheet();
    own.replaceSync(sheetStyles);
  }
  for (const sheet of [...others, own]) {
    if (sheet !== undefined && !into.adoptedStyleSheets.includes(sheet)) into.adoptedStyleSheets.push(sheet);
  }
}
