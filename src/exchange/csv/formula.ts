/**
 * What a spreadsheet takes for the beginning of a formula, whatever follows and on however many lines. An apostrophe before
 * it keeps it a text; a text that begins with one all the same gets another, so that it comes back as it was.
 */
export const FORMULA = /^'*\s*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r\n]/;
