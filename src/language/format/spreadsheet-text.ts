/** Names and notes on their way into a spreadsheet and back: text that it would compute stays text. */

/**
 * What a spreadsheet takes for the beginning of a formula: =, +, - or @, also full width, whatever space stands before it; or a
 * tab or line break (OWASP, "CSV Injection"). Apostrophes before it count, so that a text that begins with one comes back as it was.
 */
export const FORMULA_START = /^'*\s*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r\n]/;

/** A text as it goes out: `=1+1` becomes `'=1+1`, `'=1` becomes `''=1`; any other stays as it is. */
export function toSpreadsheetText(text: string): string {
  return FORMULA_START.test(text) ? `'${text}` : text;
}

/** The text that was written by `toSpreadsheetText`. */
export function fromSpreadsheetText(text: string): string {
  return text.startsWith("'") && FORMULA_START.test(text.slice(1)) ? text.slice(1) : text;
}
