/** A block of cells as text with tabs, as spreadsheets read it. */

/** A cell that holds a tab, a line break or begins with a quote is quoted, with its quotes doubled, so that it stays one cell. */
export function blockText(block: readonly (readonly unknown[])[]): string {
  return block.map((cells) => cells.map((cell) => cellOf(String(cell ?? ''))).join('\t')).join('\n');
}

function cellOf(text: string): string {
  return needsQuotes(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

export function needsQuotes(text: string): boolean {
  return /^"|[\t\r\n]/.test(text);
}
