import type { SeasonBinding } from './season-binding.ts';

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
