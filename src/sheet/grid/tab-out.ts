import type { SeasonBinding } from './season-binding.ts';

/**
 * Lets Tab leave the grid. A cell stands outside the tab order, and from such an element Chromium goes back to the first
 * control of the slot that the grid is in, when nothing behind the grid in that slot takes the focus. So the cell joins
 * the order for the moment in which the browser looks for what comes next.
 */
export function letTabOut(binding: SeasonBinding): void {
  const { rootWindow, rootDocument, rootElement } = binding.hot;
  const onKeydown = (event: KeyboardEvent) => {
    const focused = rootDocument.activeElement;
    if (event.key !== 'Tab' || event.defaultPrevented || focused === null || !rootElement.contains(focused)) return;
    focused.setAttribute('tabindex', '0');
    rootWindow.setTimeout(() => focused.setAttribute('tabindex', '-1'));
  };
  // On the window, where it comes after Handsontable's own handling.
  rootWindow.addEventListener('keydown', onKeydown);
  binding.onStop(() => rootWindow.removeEventListener('keydown', onKeydown));
}
