/** Text and values of any size in a few words. */

const LONGEST = 40;

/** At most 40 characters, cut between characters. */
export function shortText(text: string, longest = LONGEST): string {
  if (text.length <= longest) return text;
  return `${Array.from(text.slice(0, 2 * longest))
    .slice(0, longest)
    .join('')}…`;
}

/** What stands somewhere in a document, as it is written; what is large by its kind. */
export function valueInWords(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'string') return `“${shortText(value)}”`;
  if (value === null || typeof value === 'number' || typeof value === 'boolean') return String(value);
  if (Array.isArray(value)) return listInWords(value);
  return typeof value === 'object' ? 'a group of fields' : `a ${typeof value}`;
}

function listInWords(list: readonly unknown[]): string {
  if (list.length === 0) return 'an empty list';
  const isShort = list.length <= 7 && list.every((item) => typeof item !== 'object' || item === null);
  return isShort ? shortText(list.map((item) => String(item)).join(', ')) : `a list of ${list.length}`;
}
