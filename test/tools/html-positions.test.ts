import { expect, it } from 'vitest';
import { htmlPositions } from './html-positions.ts';

const named = (quasis: readonly string[]) => {
  const { pieces, holes } = htmlPositions(quasis);
  return {
    pieces: pieces.map(({ text, attribute }) => [attribute, text]),
    holes: holes.map(({ attribute }) => attribute),
  };
};

it('tells text from attributes, over the gaps of values', () => {
  expect(named(['<p class="a ', ' b" title=', '>One ', ' two</p>'])).toEqual({
    pieces: [
      ['class', 'a '],
      ['class', ' b'],
      [undefined, 'One '],
      [undefined, ' two'],
    ],
    holes: ['class', 'title', undefined],
  });
});

it('tells a value between attributes, which is no text', () => {
  expect(named(['<input ', ' hidden /> after'])).toEqual({ pieces: [[undefined, ' after']], holes: [''] });
});

it('passes over comments and over attributes without a value', () => {
  expect(named(["<!-- a > b --><option disabled value='it'>c</option>"])).toEqual({
    pieces: [
      ['value', 'it'],
      [undefined, 'c'],
    ],
    holes: [],
  });
});
