import type { GridRoom } from './grid-sizes.ts';

/** The room that a page gives a sheet: `box` stands in an element that is as high as the sheet may be. */
export function roomOf(box: HTMLElement): GridRoom {
  return {
    widthPx: (box.parentElement ?? box).clientWidth,
    heightPx: (box.parentElement ?? box).clientHeight,
    textPx: Number.parseFloat(getComputedStyle(box).fontSize),
    scrollbarPx: scrollbarPx(box.ownerDocument),
    isTouched: matchMedia('(pointer: coarse)').matches,
  };
}

const measured = new WeakMap<Document, number>();

/** What a scrollbar takes of what it stands in; nothing where the system lays it over. */
function scrollbarPx(page: Document): number {
  const known = measured.get(page);
  if (known !== undefined) return known;
  const probe = page.createElement('div');
  probe.style.cssText = 'position: absolute; inline-size: 99px; block-size: 99px; overflow: scroll; visibility: hidden';
  page.body.append(probe);
  const px = probe.offsetHeight - probe.clientHeight;
  probe.remove();
  measured.set(page, px);
  return px;
}

/** Tells one size of an element from another. */
export function sizeOf({ clientWidth, clientHeight }: HTMLElement): string {
  return `${clientWidth} x ${clientHeight}`;
}
