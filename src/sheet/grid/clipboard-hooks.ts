/** Copying gives bare numbers in the shown measure and unit; a block pasted back in means what it meant where it was copied. */
import type { Events } from 'handsontable/base';
import { sheetActionsWords } from '../../language/en/sheet-actions.ts';
import { blockText, needsQuotes } from '../entry/block-text.ts';
import type { SheetCell } from '../sheet-cell.ts';
import type { Measure } from '../sheet-view.ts';
import type { SeasonBinding } from './season-binding.ts';

/** A block as it went out, and as one would type it to get the same again. */
interface Copied {
  readonly block: string;
  readonly entries: readonly (readonly string[])[];
}

/** What the next copy shows, where a menu asked for one figure. */
const askedFor = new WeakMap<SeasonBinding, Measure>();

/** Copies the selection as it is shown, or as one figure. */
export function copySelection(binding: SeasonBinding, measure?: Measure): void {
  if (measure !== undefined) askedFor.set(binding, measure);
  (binding.hot.getPlugin('copyPaste') as unknown as { copy(): void }).copy();
  askedFor.delete(binding);
}

export function clipboardHooks(binding: SeasonBinding): Partial<Events> {
  const { sheet } = binding.setting;
  const words = () => sheetActionsWords(sheet.reader.language);
  let copied: Copied | undefined;
  return {
    beforeCopy(data, ranges) {
      const measure = askedFor.get(binding) ?? sheet.view.measure;
      const entries = data.map((line) => line.map(textOf));
      let count = 0;
      forEachCell(binding, ranges, (cell, line, at) => {
        (data[line] as unknown[])[at] = sheet.copyText(cell, measure);
        (entries[line] as string[])[at] = sheet.typedText(cell);
        count++;
      });
      copied = { block: blockOf(data), entries };
      if (data.some((line) => line.some((cell) => needsQuotes(textOf(cell))))) quoteAfterCopy(binding, data);
      if (count > 0) binding.callout.announce(words().announced.copied[measure](sheet.format, count));
      return undefined;
    },
    beforePaste(data, ranges) {
      if (copied !== undefined && blockOf(data) === copied.block) {
        for (const [line, texts] of copied.entries.entries()) data[line]?.splice(0, texts.length, ...texts);
      }
      const beyond = cutToSheet(binding, data, ranges);
      const [{ startRow = 0, startCol = 0 } = {}] = ranges;
      if (beyond === 0) return;
      binding.callout.showSoon(Math.max(0, startRow), Math.max(0, startCol), [words().beyond(sheet.format, beyond)]);
    },
  };
}

/** The library has put the cells on the clipboard once the event gets to the window: as text, each as it is. */
function quoteAfterCopy({ hot }: SeasonBinding, data: readonly (readonly unknown[])[]): void {
  const { rootWindow } = hot;
  const quote = ({ clipboardData }: ClipboardEvent) => clipboardData?.setData('text/plain', blockText(data));
  rootWindow.addEventListener('copy', quote);
  setTimeout(() => rootWindow.removeEventListener('copy', quote));
}

/**
 * Takes out what would lie beyond the last row or column, which the library does not bear; gives how many cells that is. A
 * host's grid may have more rows to come.
 */
function cutToSheet({ hot, setting }: SeasonBinding, data: unknown[][], ranges: Ranges): number {
  const [{ startRow = 0, startCol = 0 } = {}] = ranges;
  const cells = () => data.reduce((sum, line) => sum + line.length, 0);
  const before = cells();
  if (setting.rowOf === undefined) data.splice(Math.max(0, hot.countRows() - Math.max(0, startRow)));
  for (const line of data) line.splice(Math.max(0, hot.countCols() - Math.max(0, startCol)));
  return before - cells();
}

const blockOf = (data: readonly (readonly unknown[])[]): string =>
  data.map((line) => line.map(textOf).join('\t')).join('\n');

const textOf = (value: unknown): string => String(value ?? '');

type Ranges = Parameters<NonNullable<Events['beforeCopy']>>[1];

/** Copied data hold each row and column of the ranges once, in order. */
function forEachCell(
  binding: SeasonBinding,
  ranges: Ranges,
  visit: (cell: SheetCell, line: number, at: number) => void,
): void {
  const rows = spread(ranges.map(({ startRow, endRow }) => [startRow, endRow]));
  const columns = spread(ranges.map(({ startCol, endCol }) => [startCol, endCol]));
  for (const [line, row] of rows.entries()) {
    for (const [at, column] of columns.entries()) {
      const cell = binding.cell(row, column);
      if (cell !== undefined) visit(cell, line, at);
    }
  }
}

function spread(spans: readonly (readonly [number, number])[]): readonly number[] {
  const all = spans.flatMap(([start, end]) => Array.from({ length: end - start + 1 }, (_, offset) => start + offset));
  return [...new Set(all)].sort((left, right) => left - right);
}
