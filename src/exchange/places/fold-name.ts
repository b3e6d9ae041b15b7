/** Letters that do not fall apart into a plain one and a mark. */
const PLAIN: Readonly<Record<string, string>> = {
  ß: 'ss',
  ø: 'o',
  æ: 'ae',
  œ: 'oe',
  ł: 'l',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  ı: 'i',
  ə: 'e',
};
const PLAIN_LETTERS = new RegExp(`[${Object.keys(PLAIN).join('')}]`, 'g');

/** A name as names are compared: small letters without accents, one blank where anything else stands. */
export function foldName(name: string): string {
  return name
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(PLAIN_LETTERS, (letter) => PLAIN[letter] ?? letter)
    .replaceAll(/['\u2019`]/g, '')
    .replaceAll(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}
