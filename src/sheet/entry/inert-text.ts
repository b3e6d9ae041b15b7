/**
 * A name or note on its way into another program. A spreadsheet computes a text that begins with =, +, - or @ (or with a
 * tab or line break before one): an apostrophe in front keeps it text (OWASP, "CSV Injection").
 */
export function inertText(text: string): string {
  return /^\s*[=+\-@\uff1d\uff0b\uff0d\uff20]/u.test(text) || /^[\t\r\n]/.test(text) ? `'${text}` : text;
}
