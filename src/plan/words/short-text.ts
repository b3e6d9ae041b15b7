const LONGEST = 40;

/** At most 40 characters, cut between characters. */
export function shortText(text: string, longest = LONGEST): string {
  if (text.length <= longest) return text;
  return `${Array.from(text.slice(0, 2 * longest))
    .slice(0, longest)
    .join('')}…`;
}
