/** The tables of a file that a person chose, whichever way a spreadsheet wrote it; or what the file is instead. */
import { fetchPart } from '../shared/fetch-part.ts';

/** One text, or one for each sheet of a workbook; `not-fetched`: what reads workbooks could not be had. */
export type TextFile =
  | { readonly texts: readonly string[]; readonly isWorkbook: boolean }
  | { readonly not: NotATable | 'not-fetched' };

/** Why a file holds no table. */
export type NotATable = 'empty' | 'large' | 'workbook' | 'plan' | 'other' | 'unreadable';

/** A garden of five thousand zones with all its figures is smaller. */
const MOST_BYTES = 50_000_000;

export async function readTextFile(file: Blob): Promise<TextFile> {
  if (file.size > MOST_BYTES) return { not: 'large' };
  try {
    const bytes = new Uint8Array(await file.arrayBuffer());
    return isWorkbook(bytes) ? await workbookFile(bytes) : textFile(decoded(bytes));
  } catch {
    // It was moved or closed off since it was chosen.
    return { not: 'unreadable' };
  }
}

async function workbookFile(bytes: Uint8Array): Promise<TextFile> {
  const work = await fetchPart(() => import('./workbook-work.ts'));
  if (work === undefined) return { not: 'not-fetched' };
  try {
    const texts = await work.workbookTexts(bytes);
    return texts.length === 0 ? { not: 'empty' } : { texts, isWorkbook: true };
  } catch (error) {
    if (error instanceof work.WorkbookError) return { not: 'workbook' };
    throw error;
  }
}

/** The same for a text that was pasted. */
export function textFile(text: string): TextFile {
  if (text.trim() === '') return { not: 'empty' };
  if (/^\s*[{[]/.test(text)) return { not: 'plan' };
  return text.includes('\0') || /^\s*(<|%PDF)/.test(text) ? { not: 'other' } : { texts: [text], isWorkbook: false };
}

/** A zip archive, as .xlsx and .ods are, or the older .xls (a compound file). */
function isWorkbook(bytes: Uint8Array): boolean {
  const begins = (...signature: number[]) => signature.every((byte, at) => bytes[at] === byte);
  return begins(0x50, 0x4b, 0x03, 0x04) || begins(0xd0, 0xcf, 0x11, 0xe0);
}

/** UTF-8, or UTF-16 by its byte order mark; what is neither was written on an older Windows. */
function decoded(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
