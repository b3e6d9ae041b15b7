import { html } from 'lit';
import { describe, expect, it } from 'vitest';
import { paged } from '../../../../src/elements/shared/paper/page-breaks.ts';

const [first, second] = [html`first`, html`second`];

/** Rows of 10 px under headings of 10 px, on pages with 100 px of room above a foot of 5 px. */
function pages(under: readonly (typeof first)[], title = 0): readonly number[] {
  const blocks = under.map((heading) => ({ heading }));
  const px = blocks.map(() => 10);
  return paged(blocks, { title, blocks: px, headings: px, foot: 5 }, 105).map(({ length }) => length);
}

const rows = (heading: typeof first, count: number) => Array.from({ length: count }, () => heading);

// By hand: nine rows and their heading fill 100 px.
describe('blocks on pages', () => {
  it('fill a page, and go on under the same heading', () => {
    expect(pages(rows(first, 9))).toEqual([9]);
    expect(pages(rows(first, 12))).toEqual([9, 3]);
  });

  it('stay together under their heading where that takes no page more', () => {
    expect(pages([...rows(first, 6), ...rows(second, 6)])).toEqual([6, 6]);
    // 6 rows and a heading are 70 px; the second part of 13 rows begins there, as it takes two pages either way.
    expect(pages([...rows(first, 6), ...rows(second, 10)])).toEqual([8, 8]);
  });

  // By hand: 3 rows fill 30 of 35 px; the first line for notes, of 10 px, has no room, and the second, of 5 px, would have.
  it('leave out what is optional and all of it that follows, rather than begin a page with it', () => {
    const blocks = [{}, {}, {}, { isOptional: true }, { isOptional: true }];
    const heights = { title: 0, blocks: [10, 10, 10, 10, 5], headings: blocks.map(() => 0), foot: 0 };
    const count = (room: number) => paged(blocks, heights, room).map(({ length }) => length);
    expect(count(35)).toEqual([3]);
    expect(count(40)).toEqual([4]);
    expect(count(45)).toEqual([5]);
  });

  it('leave room for a title', () => {
    expect(pages(rows(first, 9), 20)).toEqual([7, 2]);
  });
});
