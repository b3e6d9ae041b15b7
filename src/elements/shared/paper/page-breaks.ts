/** Which blocks of a sheet stand on which page. */
import type { PaperBlock } from './paper-block.ts';

/** As measured, px; of blocks and of the headings above them in the order of the blocks. */
export interface Heights {
  readonly title: number;
  readonly blocks: readonly number[];
  readonly headings: readonly number[];
  readonly foot: number;
}

type Block = Pick<PaperBlock, 'heading' | 'isOptional'>;

/**
 * As many blocks on a page as there is room for above its foot, px; a heading is not left without one. What stands under one heading
 * stays on one page where that takes no page more.
 */
export function paged<Paper extends Block>(
  blocks: readonly Paper[],
  heights: Heights,
  room: number,
): readonly (readonly Paper[])[] {
  const free = room - heights.foot;
  const filled = pagesOf(blocks, heights, free, () => 0);
  const whole = pagesOf(blocks, heights, free, (at) => heightUnder(blocks, heights, at, free));
  return whole.length > filled.length ? filled : whole;
}

/** Of a heading and all that stands under it where a block begins that and a page has room for it, else 0. */
function heightUnder(blocks: readonly Block[], heights: Heights, first: number, free: number): number {
  const heading = blocks[first]?.heading;
  if (heading === undefined || blocks[first - 1]?.heading === heading) return 0;
  let height = heights.headings[first] ?? 0;
  for (let at = first; at < blocks.length && blocks[at]?.heading === heading; at++) height += heights.blocks[at] ?? 0;
  return height > free ? 0 : height;
}

/** `together`: the least room that there must be for a block to stand on a page that others stand on, px. */
function pagesOf<Paper extends Block>(
  blocks: readonly Paper[],
  heights: Heights,
  free: number,
  together: (at: number) => number,
): readonly (readonly Paper[])[] {
  const pages: Paper[][] = [[]];
  let used = heights.title;
  let isFull = false;
  for (const [at, block] of blocks.entries()) {
    const page = pages.at(-1) as Paper[];
    const onNew = (heights.blocks[at] ?? 0) + (heights.headings[at] ?? 0);
    const onThis = page.at(-1)?.heading === block.heading ? (heights.blocks[at] ?? 0) : onNew;
    if (isFull && block.isOptional === true) continue;
    if (page.length === 0 || used + Math.max(onThis, together(at)) <= free) {
      page.push(block);
      used += onThis;
    } else if (block.isOptional !== true) {
      pages.push([block]);
      used = onNew;
    } else isFull = true;
  }
  return pages;
}
