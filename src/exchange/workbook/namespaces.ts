/** Names of the kinds of XML in an .xlsx file (ECMA-376). */
export const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';
export const RELATIONS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
export const SPREADSHEET = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
export const DRAWING = 'http://schemas.openxmlformats.org/drawingml/2006';
