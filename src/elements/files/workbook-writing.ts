/** What writes the season's workbook: fetched when somebody asks for one. */
export { workbookSteps } from '../../exchange/workbook/season-to-workbook.ts';
export { writeWorkbook } from '../../exchange/workbook/write-workbook.ts';
export { workbookWords } from '../../language/en/workbook.ts';
