/** A block of entries as one step: what can be entered is, the rest is named. */
import type { BatchAction, Edit } from '../../plan/edits/edit.ts';
import type { SheetCell } from '../sheet-cell.ts';
import { editDoubt } from './doubt.ts';
import type { EntryContext } from './entry.ts';
import { readEntry } from './read-entry.ts';

export interface BlockEntry {
  readonly cell: SheetCell;
  readonly text: string;
}

export interface RefusedEntry extends BlockEntry {
  readonly why: string;
}

export interface Block {
  /** One step of history; undefined where nothing changes. */
  readonly edit: Edit | undefined;
  /** What to ask before it is sent; undefined where nothing of it is odd. */
  readonly doubt: string | undefined;
  readonly changed: readonly SheetCell[];
  readonly refused: readonly RefusedEntry[];
  /** What became of entries that are not taken as they were typed. */
  readonly remarked: readonly { readonly cell: SheetCell; readonly remark: string }[];
}

/** `action`: what is done to the cells, where it is done to several. */
export function readBlock(entries: readonly BlockEntry[], action: BatchAction, context: EntryContext): Block {
  const edits: Edit[] = [];
  const changed: SheetCell[] = [];
  const refused: RefusedEntry[] = [];
  const remarked: { cell: SheetCell; remark: string }[] = [];
  for (const entry of entries) {
    const read = readEntry(entry.cell, entry.text, context);
    if (read.kind === 'edit') {
      edits.push(read.edit);
      changed.push(entry.cell);
    }
    if (read.kind !== 'refused' && read.remark !== undefined) remarked.push({ cell: entry.cell, remark: read.remark });
    if (read.kind === 'refused') refused.push({ ...entry, why: read.why });
  }
  const [only] = edits;
  const edit: Edit | undefined = edits.length > 1 ? { type: 'together', action, edits } : only;
  return { edit, doubt: edit && editDoubt(edit, context), changed, refused, remarked };
}
