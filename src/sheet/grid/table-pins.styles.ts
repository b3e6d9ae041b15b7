/**
 * What the sheet's tables are to a browser, whatever a page makes of tables: many sites let them scroll as blocks, or stack their cells on
 * narrow screens, and then the sheet shows nothing. Headings beneath a wider one stay hidden.
 */
const PARTS = {
  table: 'table',
  colgroup: 'table-column-group',
  col: 'table-column',
  thead: 'table-header-group',
  tbody: 'table-row-group',
  tr: 'table-row',
};

const displays = Object.entries(PARTS).map(
  ([part, display]) => `
.runnel-sheet .handsontable ${part} {
  display: ${display} !important;
  float: none !important;
}
`,
);

export const tablePins = `${displays.join('')}
.runnel-sheet .handsontable :is(th, td):not(.hiddenHeader:not(:first-of-type)) {
  display: table-cell !important;
  float: none !important;
  min-inline-size: 0 !important;
  max-inline-size: none !important;
}

.runnel-sheet .handsontable .hiddenHeader:not(:first-of-type) {
  display: none !important;
}

.runnel-sheet .handsontable table.htCore {
  overflow: visible !important;
  table-layout: fixed !important;
  inline-size: 0 !important;
  min-inline-size: 0 !important;
  max-inline-size: none !important;
  margin: 0 !important;
  border-collapse: separate !important;
  border-spacing: 0 !important;
  float: none !important;
}

.runnel-sheet .handsontable :is(th, td)::before {
  content: none !important;
}
`;
