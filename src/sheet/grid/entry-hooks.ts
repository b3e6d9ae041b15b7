/** What is typed, pasted, dragged or deleted in the season's cells goes to the plan as edits; the grid's data stay the sheet's. */
import type Handsontable from 'handsontable/base';
import type { Events } from 'handsontable/base';
import type { Block, BlockEntry } from '../entry/read-block.ts';
import { bindingOf } from './bindings.ts';
import type { SeasonBinding } from './season-binding.ts';

interface Coords {
  readonly row: number;
  readonly column: number;
}

const STEP_LABELS: Readonly<Record<string, string>> = {
  'CopyPaste.paste': 'Paste %n cells',
  'CopyPaste.cut': 'Cut %n cells',
  'Autofill.fill': 'Fill %n cells',
};

/** Refusals that are told one by one; the rest are counted. */
const MOST_TOLD = 4;

export function entryHooks(binding: SeasonBinding): Partial<Events> {
  const { sheet } = binding.setting;
  return {
    beforeChange(changes, source) {
      const entries: (BlockEntry & Coords)[] = [];
      for (const [at, change] of changes.entries()) {
        if (change === null) continue;
        const [row, prop, , value] = change;
        const column = binding.hot.propToCol(prop as string);
        const cell = typeof column === 'number' ? binding.cell(row, column) : undefined;
        if (cell === undefined) continue;
        entries.push({ cell, row, column, text: textOf(value, sheet.state.locale) });
        changes[at] = null;
      }
      if (entries.length > 0) enterBlock(binding, entries, STEP_LABELS[source ?? ''] ?? 'Change %n cells');
    },
    beforeBeginEditing(row, column) {
      const cell = binding.cell(row, column);
      if (cell === undefined) return undefined;
      if (cell.column.kind === 'name' && cell.row.kind === 'zone' && cell.row.isOpen !== undefined) {
        sheet.setOpen(cell.row.zone.zone.id, !cell.row.isOpen);
        return false;
      }
      const why = sheet.whyFixed(cell);
      if (why !== undefined) binding.callout.show(row, column, [why]);
      return why === undefined ? undefined : false;
    },
    afterBeginEditing() {
      binding.callout.hide();
    },
  };
}

/** Enters a typed text; `everywhere` puts it into every selected cell. False where it was refused. */
export function enterText(hot: Handsontable.Core, at: Coords, text: string, everywhere: boolean): boolean {
  const binding = bindingOf(hot);
  const cell = binding?.cell(at.row, at.column);
  if (binding === undefined || cell === undefined) return true;
  if (everywhere) {
    const entries = selectedCells(binding).map((place) => ({ ...place, text }));
    return enterBlock(binding, entries, 'Change %n cells').refused.length === 0;
  }
  const entry = binding.setting.sheet.read(cell, text);
  if (entry.kind === 'refused') binding.callout.show(at.row, at.column, [entry.why]);
  if (entry.kind === 'edit') binding.setting.onEdit(entry.edit);
  return entry.kind !== 'refused';
}

/** The season's cells within the selection. */
export function selectedCells(binding: SeasonBinding): readonly (Coords & { readonly cell: BlockEntry['cell'] })[] {
  return (binding.hot.getSelectedRange() ?? []).flatMap((range) => {
    const { row: top, col: left } = range.getTopStartCorner();
    const { row: bottom, col: right } = range.getBottomEndCorner();
    const found: (Coords & { cell: BlockEntry['cell'] })[] = [];
    for (let row = Math.max(0, top ?? 0); row <= (bottom ?? -1); row++) {
      for (let column = Math.max(0, left ?? 0); column <= (right ?? -1); column++) {
        const cell = binding.cell(row, column);
        if (cell !== undefined) found.push({ row, column, cell });
      }
    }
    return found;
  });
}

function enterBlock(binding: SeasonBinding, entries: readonly (BlockEntry & Coords)[], label: string): Block {
  const { sheet, onEdit } = binding.setting;
  const wanted = entries.length === 1 ? entries : entries.filter(({ cell, text }) => !isIdle(binding, cell, text));
  const block = sheet.readBlock(wanted, label);
  if (block.edit !== undefined) onEdit(block.edit);
  const [first] = block.refused;
  if (first !== undefined) {
    const at = wanted.find(({ cell }) => cell === first.cell) ?? { row: 0, column: 0 };
    binding.callout.show(at.row, at.column, refusalLines(binding, block, wanted.length));
  }
  return block;
}

/** Emptying a cell that holds nothing to empty is no mistake when many are emptied at once. */
function isIdle(binding: SeasonBinding, cell: BlockEntry['cell'], text: string): boolean {
  return text === '' && binding.setting.sheet.whyFixed(cell) !== undefined;
}

function refusalLines(binding: SeasonBinding, { refused, count }: Block, of: number): readonly string[] {
  const { sheet } = binding.setting;
  if (of === 1) return refused.map(({ why }) => why);
  const byReason = new Map<string, string[]>();
  for (const { cell, why } of refused) byReason.set(why, [...(byReason.get(why) ?? []), sheet.nameOf(cell)]);
  const told = [...byReason].slice(0, MOST_TOLD).map(([why, names]) => {
    const rest = names.length - 2;
    return `${names.slice(0, 2).join('; ')}${rest > 0 ? ` and ${rest} more` : ''}: ${why}`;
  });
  const untold = byReason.size - told.length;
  return [
    `${count} of ${of} cells changed; ${refused.length} stay as they were.`,
    ...told,
    ...(untold > 0 ? [`And ${untold} more reasons.`] : []),
  ];
}

function textOf(value: unknown, locale: string): string {
  if (value === null || value === undefined) return '';
  if (typeof value !== 'number') return String(value);
  return new Intl.NumberFormat(locale, { useGrouping: false, maximumFractionDigits: 6 }).format(value);
}
