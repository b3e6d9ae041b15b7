/** What is typed, pasted, dragged or deleted in the season's cells goes to the plan as edits; the grid's data stay the sheet's. */
import type Handsontable from 'handsontable/base';
import type { Events } from 'handsontable/base';
import { sheetActionsWords } from '../../language/en/sheet-actions.ts';
import { formatPlainNumber } from '../../language/format/number.ts';
import type { BatchAction, Edit } from '../../plan/edits/edit.ts';
import { sameData } from '../../plan/same-data.ts';
import type { Block, BlockEntry } from '../entry/read-block.ts';
import { bindingOf } from './bindings.ts';
import type { SeasonBinding } from './season-binding.ts';

type Changes = Parameters<NonNullable<Events['beforeChange']>>[0];

interface Coords {
  readonly row: number;
  readonly column: number;
}

/** What a change of cells is, by the source that the grid names. */
const ACTIONS: Readonly<Record<string, BatchAction>> = {
  'CopyPaste.paste': 'paste-cells',
  'CopyPaste.cut': 'cut-cells',
  'Autofill.fill': 'fill-cells',
};

/** Refusals that are told one by one; the rest are counted. */
const MOST_TOLD = 4;
/** Cells that are named for one reason; the rest are counted. */
const MOST_NAMED = 2;

export function entryHooks(binding: SeasonBinding): Partial<Events> {
  const { sheet } = binding.setting;
  return {
    beforeChange(changes, source) {
      const entries = takeOurs(binding, changes);
      const refusal = enterBlock(binding, entries, ACTIONS[source ?? ''] ?? 'change-cells');
      if (refusal) binding.callout.showSoon(refusal.row, refusal.column, refusal.lines);
    },
    // What is dragged over other cells is what one would type to get the same.
    beforeAutofill(data, source) {
      const { row: top, col: left } = source.getTopStartCorner();
      return data.map((line, down) =>
        line.map((value, along) => {
          const cell = binding.cell((top ?? 0) + down, (left ?? 0) + along);
          return cell === undefined ? value : sheet.typedText(cell);
        }),
      );
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
    beforeKeyDown(event) {
      if (event.key === 'Escape') binding.callout.hide();
    },
  };
}

/** Takes the season's cells out of what is about to change in the grid's own data. */
function takeOurs(binding: SeasonBinding, changes: Changes): readonly (BlockEntry & Coords)[] {
  const entries: (BlockEntry & Coords)[] = [];
  for (const [at, change] of changes.entries()) {
    if (change === null) continue;
    const [row, prop, , value] = change;
    const column = binding.hot.propToCol(prop as string);
    const cell = typeof column === 'number' ? binding.cell(row, column) : undefined;
    if (cell === undefined) continue;
    entries.push({ cell, row, column, text: textOf(value, binding.setting.sheet.reader.locale) });
    changes[at] = null;
  }
  return entries;
}

/** Puts one text into every selected cell. */
export function enterEverywhere(binding: SeasonBinding, text: string, action: BatchAction): void {
  const refusal = enterBlock(
    binding,
    selectedCells(binding).map((at) => ({ ...at, text })),
    action,
  );
  if (refusal) binding.callout.showSoon(refusal.row, refusal.column, refusal.lines);
}

/** The cell as it was when somebody began to type, and the plan that it lay in. */
export interface TypedInto {
  readonly cell: BlockEntry['cell'];
  readonly documentId: number | undefined;
}

export interface TypedText {
  readonly text: string;
  readonly into: TypedInto | undefined;
  /** Puts it into every selected cell. */
  readonly everywhere: boolean;
}

/**
 * Enters a typed text where it was meant to go, whatever stands there by now. Gone with its zone, or with its plan where
 * another was opened meanwhile, it is not entered. Lines that say why, where it was refused.
 */
export function enterText(
  hot: Handsontable.Core,
  at: Coords,
  { text, into, everywhere }: TypedText,
): readonly string[] | undefined {
  const binding = bindingOf(hot);
  if (binding === undefined || into === undefined) return undefined;
  const { sheet } = binding.setting;
  const cell = sheet.state.documentId === into.documentId ? sheet.now(into.cell) : undefined;
  if (cell === undefined) {
    binding.callout.showSoon(at.row, at.column, [sheetActionsWords(sheet.reader.language).cellGone(text)]);
    return undefined;
  }
  const cells = everywhere ? selectedCells(binding) : [{ ...at, cell }];
  return enterBlock(
    binding,
    cells.map((at) => ({ ...at, text })),
    'change-cells',
  )?.lines;
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

/** What was refused, with the cell to say it beside. */
interface Refusal extends Coords {
  readonly lines: readonly string[];
}

function enterBlock(
  binding: SeasonBinding,
  entries: readonly (BlockEntry & Coords)[],
  action: BatchAction,
): Refusal | undefined {
  const { sheet } = binding.setting;
  const wanted = entries.length === 1 ? entries : entries.filter(({ cell, text }) => !isIdle(binding, cell, text));
  const block = sheet.readBlock(wanted, action);
  const [start] = wanted;
  const doubt = newDoubt(binding, block);
  if (doubt !== undefined && start !== undefined) return { row: start.row, column: start.column, lines: [doubt] };
  const refused = binding.edit(block.edit, block.changed);
  if (refused !== undefined && start !== undefined) return { row: start.row, column: start.column, lines: refused };
  remark(binding, block, wanted);
  const [first] = block.refused;
  const at = first && wanted.find(({ cell }) => cell === first.cell);
  return at && { row: at.row, column: at.column, lines: refusalLines(binding, block, wanted.length) };
}

/** The edit of each sheet that was asked about last: entered once more it is taken. */
const doubted = new WeakMap<object, Edit>();

function newDoubt({ setting: { sheet } }: SeasonBinding, { edit, doubt }: Block): string | undefined {
  if (edit === undefined || doubt === undefined || sameData(edit, doubted.get(sheet))) return undefined;
  doubted.set(sheet, edit);
  return doubt;
}

/** Says beside the first cell what became of entries that are not taken as they were typed. */
function remark(binding: SeasonBinding, { remarked }: Block, entries: readonly (BlockEntry & Coords)[]): void {
  const at = entries.find(({ cell }) => cell === remarked[0]?.cell);
  const lines = remarked.slice(0, MOST_TOLD).map((each) => each.remark);
  if (at !== undefined) binding.callout.showSoon(at.row, at.column, lines);
}

/** Emptying a cell that holds nothing to empty is no mistake when many are emptied at once. */
function isIdle(binding: SeasonBinding, cell: BlockEntry['cell'], text: string): boolean {
  return text === '' && binding.setting.sheet.whyFixed(cell) !== undefined;
}

function refusalLines(binding: SeasonBinding, { refused, changed }: Block, of: number): readonly string[] {
  const { sheet } = binding.setting;
  const { format } = sheet;
  const words = sheetActionsWords(sheet.reader.language);
  if (of === 1) return refused.map(({ why }) => why);
  const byReason = new Map<string, string[]>();
  for (const { cell, why } of refused) byReason.set(why, [...(byReason.get(why) ?? []), sheet.nameOf(cell)]);
  const told = [...byReason].slice(0, MOST_TOLD).map(([why, names]) => {
    const named = names.slice(0, MOST_NAMED);
    const more = names.length - named.length;
    return more === 0 ? words.stays(named, why) : words.stayWithMore(format, named, more, why);
  });
  const untold = byReason.size - told.length;
  return [
    words.partly(format, changed.length, of, refused.length),
    ...told,
    ...(untold > 0 ? [words.moreReasons(format, untold)] : []),
  ];
}

function textOf(value: unknown, locale: string): string {
  if (value === null || value === undefined) return '';
  if (typeof value !== 'number') return String(value);
  return formatPlainNumber(value, locale, 6);
}
