/** A text of somebody's in which controls show: a tab as ⇥, a line break as ↵, any other as �. */
export function visibleText(text: string): string {
  return text
    .replaceAll('\t', '⇥')
    .replaceAll(/\r\n|[\n\r\u2028\u2029]/g, '↵')
    .replaceAll(/[\p{Cc}]/gu, '\ufffd');
}
