/**
 * Keeps the menu and what folds out of it within the window. The library turns a menu to the other side of the finger where
 * it does not fit, even where there is less room: on a phone it then begins beyond the edge.
 */
import type { Events } from 'handsontable/base';

/** What is needed of the library's own menu. */
interface Menu {
  readonly container: HTMLElement;
  addLocalHook(name: 'afterSubmenuOpen', hook: (menu: Menu) => void): void;
}

const GAP_PX = 6;

export function menuInWindow(): Partial<Events> {
  let heard: Menu | undefined;
  return {
    afterContextMenuShow(plugin) {
      const { menu } = plugin as unknown as { readonly menu: Menu };
      if (heard !== menu) menu.addLocalHook('afterSubmenuOpen', keepSoon);
      heard = menu;
      keepSoon(menu);
    },
  };
}

/** The library tells of a menu before it puts it in its place. */
function keepSoon({ container }: Menu): void {
  queueMicrotask(() => keepInWindow(container));
}

function keepInWindow(box: HTMLElement): void {
  const { defaultView } = box.ownerDocument;
  if (defaultView === null || !box.isConnected) return;
  const { left, right, top, bottom } = box.getBoundingClientRect();
  const { style, offsetLeft, offsetTop } = box;
  style.left = `${offsetLeft + shift(left, right, defaultView.innerWidth)}px`;
  style.top = `${offsetTop + shift(top, bottom, defaultView.innerHeight)}px`;
}

/** How far to move what lies from `start` to `end` so that all of it shows, or its start where it is longer than the window. */
function shift(start: number, end: number, room: number): number {
  const last = Math.max(GAP_PX, room - GAP_PX - (end - start));
  return Math.min(Math.max(start, GAP_PX), last) - start;
}
