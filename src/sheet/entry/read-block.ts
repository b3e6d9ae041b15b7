/** A block of entries as one step: what can be entered is, the rest is named. */
import type { Edit } from '../../plan/edits/edit.ts';
import type { SheetCell } from '../sheet-cell.ts';
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
  readonly changed: readonly SheetCell[];
  readonly refused: readonly RefusedEntry[];
}

/** `label` names the step in the history, with the number of cells for `%n`. */
export function readBlock(entries: readonly BlockEntry[], label: string, context: EntryContext): Block {
  const edits: Edit[] = [];
  const changed: SheetCell[] = [];
  const refused: RefusedEntry[] = [];
  for (const entry of entries) {
    const read = readEntry(entry.cell, entry.text, context);
    if (read.kind === 'edit') {
      edits.push(read.edit);
      changed.push(entry.cell);
    }
    if (read.kind === 'refused') refused.push({ ...entry, why: read.why });
  }
  const count = edits.length;
  const [only] = edits;
  const edit: Edit | undefined =
    count > 1 ? { type: 'together', label: label.replace('%n', String(count)), edits } : only;
  return { edit, changed, refused };
}
