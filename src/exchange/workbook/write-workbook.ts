/**
 * Sheets as an .xlsx file, written a piece at a time, so that a large season's never keeps a page waiting: the library that reads
 * workbooks writes one in a single task.
 */
import type { WorkbookContent } from './sheet-content.ts';
import { sheetXml } from './sheet-xml.ts';
import { sheetPath, workbookParts } from './workbook-parts.ts';
import { type ZipPart, zipped } from './zip-file.ts';

const NO_PAUSE = async (): Promise<void> => {};

/**
 * `pause` is awaited between pieces of a few milliseconds, so that a page stays at hand; left out, there is none.
 */
export function writeWorkbook(content: WorkbookContent, pause = NO_PAUSE): Promise<Uint8Array> {
  return zipped(partsOf(content), pause);
}

function* partsOf(content: WorkbookContent): Generator<ZipPart> {
  for (const [path, xml] of workbookParts(content)) yield { path, pieces: [xml] };
  for (const [index, sheet] of content.sheets.entries()) yield { path: sheetPath(index), pieces: sheetXml(sheet) };
}
