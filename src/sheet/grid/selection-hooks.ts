/** The selection in the grid and what all views point at follow each other. */
import type { Events } from 'handsontable/base';
import { sameData } from '../../plan/same-data.ts';
import { type CellReference, cellReference } from '../reference.ts';
import type { SheetRow } from '../sheet-row.ts';
import type { SeasonBinding } from './season-binding.ts';

export class SheetSelection {
  readonly #binding: SeasonBinding;
  #selected: CellReference | undefined;
  #isMoving = false;

  constructor(binding: SeasonBinding) {
    this.#binding = binding;
  }

  get hooks(): Partial<Events> {
    return {
      afterSelectionEnd: () => this.#tell(),
      afterDeselect: () => this.#binding.callout.hide(),
      afterSelection: () => this.#binding.callout.hide(),
    };
  }

  /** Moves the grid's selection to what another view points at; the focus stays where it is. */
  moveTo(reference: CellReference): void {
    if (sameData(this.#selected, reference)) return;
    this.#selected = reference;
    const at = this.#find(reference);
    if (at === undefined) return;
    const { hot } = this.#binding;
    const { activeElement } = hot.rootDocument;
    this.#isMoving = true;
    hot.scrollViewportTo({ row: at.row, col: at.column });
    hot.selectCell(at.row, at.column, at.row, at.column, true, false);
    this.#isMoving = false;
    const moved = hot.rootDocument.activeElement;
    if (moved === activeElement || !(moved instanceof hot.rootWindow.HTMLElement)) return;
    if (activeElement instanceof hot.rootWindow.HTMLElement && activeElement !== hot.rootDocument.body) {
      activeElement.focus({ preventScroll: true });
    } else moved.blur();
  }

  #tell(): void {
    const { hot, setting } = this.#binding;
    const range = hot.getSelectedRangeActive();
    if (this.#isMoving || range === undefined) return;
    const { row, col } = range.highlight;
    const cell = this.#binding.cell(Math.max(0, row ?? 0), Math.max(0, col ?? 0));
    if (cell === undefined) return;
    const { week, ...rowOnly } = cellReference(cell);
    // A whole column points at its week alone.
    const reference = (row ?? 0) < 0 ? { week } : (col ?? 0) < 0 ? rowOnly : { ...rowOnly, week };
    if (sameData(this.#selected, reference)) return;
    this.#selected = reference;
    setting.onSelect?.(reference);
  }

  #find({
    zone,
    planting,
    weather,
    week,
  }: CellReference): { readonly row: number; readonly column: number } | undefined {
    const binding = this.#binding;
    const isZone = (row: SheetRow) => row.kind === 'zone' && row.zone.zone.id === zone;
    const isPlanting = (row: SheetRow) =>
      row.kind === 'planting' && row.zone.zone.id === zone && row.planting.planting.id === planting;
    if (zone === undefined && week === undefined) return undefined;
    const row =
      (planting === undefined ? undefined : binding.visualRow(isPlanting)) ??
      binding.visualRow(zone === undefined ? ({ kind }) => kind === (weather ?? 'total') : isZone);
    const column =
      week === undefined
        ? (binding.visualColumn({ kind: 'name' }) ?? binding.visualColumn({ kind: 'week', week: 0 }))
        : binding.visualColumn({ kind: 'week', week });
    return row === undefined || column === undefined ? undefined : { row, column };
  }
}
