/** A row of a sheet as it stands in the file (ECMA-376, part 1, 18.3.1.4 and 18.3.1.73). */
import { type CellContent, columnName, type Row } from './sheet-content.ts';
import { styleNumber } from './styles-xml.ts';
import { element, escaped } from './xml.ts';

/** `index`: of the row, from 0. */
export function rowXml(row: Row, index: number): string {
  let cells = '';
  for (let column = 0; column < row.length; column += 1) {
    const cell = row[column];
    if (cell !== undefined) cells += cellXml(cell, `${columnName(column)}${index + 1}`, styleNumber(cell.style));
  }
  return cells === '' ? '' : element('row', { r: index + 1 }, cells);
}

/** Blanks at the ends are part of the text. */
const KEPT = { 'xml:space': 'preserve' };

function cellXml(cell: NonNullable<CellContent>, ref: string, style: number): string {
  if ('text' in cell) {
    return element('c', { r: ref, s: style, t: 'inlineStr' }, `<is>${element('t', KEPT, escaped(cell.text))}</is>`);
  }
  if ('result' in cell) {
    return element(
      'c',
      { r: ref, s: style, t: 'str' },
      `<f>${escaped(cell.formula)}</f><v>${escaped(cell.result)}</v>`,
    );
  }
  const computed = cell.formula === undefined ? '' : `<f>${escaped(cell.formula)}</f>`;
  return element('c', { r: ref, s: style }, `${computed}<v>${cell.value}</v>`);
}
