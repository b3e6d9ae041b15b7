/** XML as text. */

/** Signs that XML has no way to write, and `_x0041_`, which a spreadsheet would take for the letter of that number. */
const NOT_AS_IT_IS = /[&<>"]|_(?=x[\dA-Fa-f]{4}_)|(?![\t\n])\p{Cc}|[\ufffe\uffff]/gu;
const LONE_SURROGATE = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

const NAMED: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  '\r': '_x000D_',
  _: '_x005F_',
};

/** A text between tags, or of an attribute. */
export const escaped = (written: string): string =>
  written
    .replaceAll(LONE_SURROGATE, '\ufffd')
    .replaceAll(NOT_AS_IT_IS, (sign) => NAMED[sign] ?? (sign < ' ' || sign > '\ufffd' ? '' : sign));

type Attributes = Readonly<Record<string, string | number>>;

/** An element whose attributes are escaped; `content`: what is XML already. */
export function element(name: string, attributes: Attributes = {}, content = ''): string {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(String(value))}"`);
  return content === '' ? `<${name}${written.join('')}/>` : `<${name}${written.join('')}>${content}</${name}>`;
}

const DECLARATION = ['<?xml', 'version="1.0"', 'encoding="UTF-8"', 'standalone="yes"?>'].join(' ');

export const document = (root: string): string => `${DECLARATION}\n${root}`;
