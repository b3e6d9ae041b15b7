const GAP_PX = 6;

/** Puts a box below an element, or above it where there is no room, and inside the window either way. */
export function positionBeside(box: HTMLElement, anchor: Element): void {
  const { defaultView } = box.ownerDocument;
  if (defaultView === null) return;
  const at = anchor.getBoundingClientRect();
  const { offsetWidth: width, offsetHeight: height } = box;
  const origin = box.offsetParent?.getBoundingClientRect() ?? new DOMRect(-defaultView.scrollX, -defaultView.scrollY);
  const fitsBelow = at.bottom + GAP_PX + height <= defaultView.innerHeight;
  const top = fitsBelow ? at.bottom + GAP_PX : Math.max(GAP_PX, at.top - GAP_PX - height);
  const left = startInside(at.left, width, defaultView.innerWidth);
  box.style.top = `${top - origin.top}px`;
  box.style.left = `${left - origin.left}px`;
}

/** Where what would begin at `start` begins so that all of it shows, or its start where it is longer than the room. */
export function startInside(start: number, length: number, room: number): number {
  return Math.max(GAP_PX, Math.min(start, room - length - GAP_PX));
}
