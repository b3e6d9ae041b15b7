/** The menu of a cell: within the window, over nothing that it hides, and back to the cell when it closes. */
import type { Events } from 'handsontable/base';
import { startInside } from './popup-position.ts';
import type { SeasonBinding } from './season-binding.ts';

/** What is needed of the library's own menu. */
interface Menu {
  readonly container: HTMLElement;
  addLocalHook(name: 'afterSubmenuOpen', hook: (menu: Menu) => void): void;
}

export function menuHooks({ hot, callout }: SeasonBinding): Partial<Events> {
  let heard: Menu | undefined;
  return {
    // What stands beside a cell would lie on top of it.
    beforeContextMenuShow: () => callout.hide(),
    // The keyboard goes back to the cell, unless what was chosen took it elsewhere.
    afterContextMenuHide() {
      hot.rootWindow.setTimeout(() => {
        if (hot.isDestroyed) return;
        // On Escape the menu still has it, and is about to lose it.
        if (hot.rootDocument.activeElement?.matches('body, .htContextMenu'))
          hot.getFocusManager().focusOnHighlightedCell();
      });
    },
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

/**
 * The library turns a menu to the other side of the finger where it does not fit, even where there is less room: on a phone
 * it then begins beyond the edge.
 */
function keepInWindow(box: HTMLElement): void {
  const { defaultView } = box.ownerDocument;
  if (defaultView === null || !box.isConnected) return;
  const { left, top, width, height } = box.getBoundingClientRect();
  const { style, offsetLeft, offsetTop } = box;
  style.left = `${offsetLeft - left + startInside(left, width, defaultView.innerWidth)}px`;
  style.top = `${offsetTop - top + startInside(top, height, defaultView.innerHeight)}px`;
}
