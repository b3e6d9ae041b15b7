/** Lines of a calendar file (RFC 5545, 3.1). */

/** Octets of a line, its end not counted. */
const LONGEST_LINE = 75;

/** A property, folded so that no line is longer than 75 octets; a character is never parted. Ends as every line does. */
export function contentLine(property: string, value: string): string {
  const text = `${property}:${value}`;
  const lines: string[] = [];
  let start = 0;
  let octets = 0;
  for (let at = 0; at < text.length; ) {
    const code = text.codePointAt(at) as number;
    const size = octetsOf(code);
    if (octets + size > LONGEST_LINE) {
      lines.push(text.slice(start, at));
      start = at;
      // The space that says that a line goes on is its first octet.
      octets = 1;
    }
    octets += size;
    at += code > 0xffff ? 2 : 1;
  }
  return `${[...lines, text.slice(start)].join('\r\n ')}\r\n`;
}

/** Of a character in UTF-8. */
function octetsOf(code: number): number {
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x10000 ? 3 : 4;
}

/** All but tabs and line breaks. */
const CONTROLS = /(?![\t\n])\p{Cc}/gu;

/** A text as a value (3.3.11): its marks escaped, its line breaks written as `\n`, other controls left out. */
export function textValue(text: string): string {
  return text
    .replaceAll(/\r\n?|[\u0085\u2028\u2029]/g, '\n')
    .replaceAll(CONTROLS, '')
    .replaceAll(/[\\;,]/g, '\\$&')
    .replaceAll('\n', '\\n');
}

/** An instant in UTC (3.3.5), ms since 1970: `20270601T120000Z`. */
export function instantValue(instant: number): string {
  const at = new Date(Math.round(instant / 1000) * 1000).toISOString();
  return `${at.slice(0, 19).replaceAll(/[-:]/g, '')}Z`;
}
