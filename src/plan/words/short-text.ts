const LONGEST = 40;

/** At most 40 characters, cut between characters. What an edit of plain JavaScript names may be no text: it is written as one. */
export function shortText(named: string, longest = LONGEST): string {
  const text = String(named);
  if (text.length <= longest) return text;
  return `${Array.from(text.slice(0, 2 * longest))
    .slice(0, longest)
    .join('')}…`;
}
