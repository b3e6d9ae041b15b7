/** What reads workbooks, with its library: fetched when one is first chosen. */
export { WorkbookError, workbookTexts } from '../../exchange/workbook/workbook-texts.ts';
