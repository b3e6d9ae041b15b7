/** Pointer and touch: the button that folds a zone's plantings out, and the second tap that opens a cell. */
import { FOLD_CLASS } from './render-cell.ts';
import type { SeasonBinding } from './season-binding.ts';

/** Folds out and in by the button of the name; on the keyboard Enter on the name does it. */
export function foldOnClick(binding: SeasonBinding): void {
  const { hot, setting } = binding;
  const onClick = (event: Event) => {
    const button = (event.target as Element).closest(`.${FOLD_CLASS}`);
    const td = button?.closest('td');
    if (!td) return;
    const at = hot.getCoords(td);
    const row = at === null || at.row === null ? undefined : binding.row(at.row);
    if (row?.kind === 'zone') setting.sheet.setOpen(row.zone.zone.id, row.isOpen !== true);
  };
  hot.rootElement.addEventListener('click', onClick);
  binding.onStop(() => hot.rootElement.removeEventListener('click', onClick));
}

/** Under a finger the first tap selects a cell and the next one opens it: a double tap is hard to do on purpose. */
export function openOnSecondTap(binding: SeasonBinding): void {
  const { hot } = binding;
  let tapped: Element | undefined;
  const onPointerDown = (event: PointerEvent) => {
    const td = (event.target as Element).closest('td');
    tapped = event.pointerType === 'touch' && td !== null && isSelected(td) ? td : undefined;
  };
  const onClick = (event: MouseEvent) => {
    const td = (event.target as Element).closest('td.runnel-cell');
    if (td === null || td !== tapped) return;
    // The key that opens a cell, so that all that is asked before a cell opens is asked here as well.
    td.dispatchEvent(new KeyboardEvent('keydown', { key: 'F2', code: 'F2', keyCode: 113, bubbles: true }));
    // What is typed then takes the place of what stands there: a caret is hard to move with a finger.
    const editor = hot.getActiveEditor() as { readonly TEXTAREA?: HTMLTextAreaElement } | undefined;
    hot.rootWindow.setTimeout(() => editor?.TEXTAREA?.select());
  };
  const isSelected = (td: HTMLTableCellElement) => {
    const at = hot.getCoords(td);
    const [row, column] = hot.getSelectedLast() ?? [];
    return at !== null && at.row === row && at.col === column && hot.isListening();
  };
  // While the tap is still on its way down, before Handsontable has moved its selection.
  hot.rootElement.addEventListener('pointerdown', onPointerDown, true);
  hot.rootElement.addEventListener('click', onClick);
  binding.onStop(() => {
    hot.rootElement.removeEventListener('pointerdown', onPointerDown, true);
    hot.rootElement.removeEventListener('click', onClick);
  });
}
