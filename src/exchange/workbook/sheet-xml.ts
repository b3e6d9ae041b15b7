/** A sheet as it stands in the file (ECMA-376, part 1, 18.3.1), a piece at a time. */
import { rowXml } from './cell-xml.ts';
import { RELATIONS, SPREADSHEET } from './namespaces.ts';
import { columnName, type SheetContent } from './sheet-content.ts';
import { ONLY_RELATION } from './workbook-parts.ts';
import { document, element } from './xml.ts';

/** Letters of rows that are given out at once. */
const PIECE_LETTERS = 1 << 15;

export function* sheetXml(sheet: SheetContent): Generator<string> {
  const root = document(element('worksheet', { xmlns: SPREADSHEET, 'xmlns:r': RELATIONS }, ' '));
  const [open] = root.split(' </worksheet>');
  let piece = `${open}${before(sheet)}<sheetData>`;
  for (const [index, row] of sheet.rows.entries()) {
    piece += rowXml(row, index);
    if (piece.length < PIECE_LETTERS) continue;
    yield piece;
    piece = '';
  }
  yield `${piece}</sheetData>${after(sheet)}</worksheet>`;
}

function before({ isUpright, frozen, widths }: SheetContent): string {
  const columns = widths.map((width, index) =>
    element('col', { min: index + 1, max: index + 1, width, customWidth: 1 }),
  );
  return [
    ...(isUpright ? [element('sheetPr', {}, element('pageSetUpPr', { fitToPage: 1 }))] : []),
    element('sheetViews', {}, element('sheetView', { workbookViewId: 0 }, paneXml(frozen))),
    element('sheetFormatPr', { defaultRowHeight: 15 }),
    element('cols', {}, columns.join('')),
  ].join('');
}

function paneXml({ rows, columns }: SheetContent['frozen']): string {
  if (rows + columns === 0) return '';
  const pane = rows === 0 ? 'topRight' : columns === 0 ? 'bottomLeft' : 'bottomRight';
  return element('pane', {
    ...(columns > 0 && { xSplit: columns }),
    ...(rows > 0 && { ySplit: rows }),
    topLeftCell: `${columnName(columns)}${rows + 1}`,
    activePane: pane,
    state: 'frozen',
  });
}

function after({ isUpright, choice, chart }: SheetContent): string {
  const orientation = isUpright ? 'portrait' : 'landscape';
  return [
    ...(choice === undefined ? [] : [validation(choice)]),
    element('pageMargins', { left: 0.5, right: 0.5, top: 0.6, bottom: 0.6, header: 0.3, footer: 0.3 }),
    element('pageSetup', { orientation, ...(isUpright && { fitToWidth: 1, fitToHeight: 0 }) }),
    '<headerFooter><oddFooter>&amp;L&amp;A&amp;R&amp;P / &amp;N</oddFooter></headerFooter>',
    ...(chart === undefined ? [] : [element('drawing', { 'r:id': ONLY_RELATION })]),
  ].join('');
}

function validation({ range, most }: NonNullable<SheetContent['choice']>): string {
  const one = element(
    'dataValidation',
    { type: 'whole', operator: 'between', showErrorMessage: 1, sqref: range },
    `<formula1>1</formula1><formula2>${most}</formula2>`,
  );
  return element('dataValidations', { count: 1 }, one);
}
