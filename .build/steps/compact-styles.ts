/** Styles without what is there for who reads their source: line breaks, indents, comments, spaces that part nothing. */
export function withCompactStyles(styles: string): string {
  return styles
    .replaceAll(/\/\*.*?\*\//gs, '')
    .replaceAll(/\s*\n\s*/g, '\n')
    .replaceAll(/ ?([{};])\n/g, '$1')
    .replaceAll(/;?\n?\}/g, '}')
    .replaceAll('\n', ' ')
    .replaceAll(/([{};])([\w-]+): /g, '$1$2:')
    .replaceAll(/("[^"]*"|'[^']*')|, /g, (_, quoted?: string) => quoted ?? ',');
}
