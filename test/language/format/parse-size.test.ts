import { describe, expect, it } from 'vitest';
import { parseContainerSize } from '../../../src/language/format/parse-container-size.ts';
import { parsePlantCount, parseSize } from '../../../src/language/format/parse-size.ts';
import { readerFor } from '../../../src/language/reader.ts';

const us = readerFor('en-US', 'us');
const metric = readerFor('en-GB', 'metric');

describe('a size as people say it', () => {
  it.each([
    ['4 x 12 ft', { kind: 'bed', length: 4, width: 12 }],
    ['4x12', { kind: 'bed', length: 4, width: 12 }],
    ['4 × 12 ft', { kind: 'bed', length: 4, width: 12 }],
    ['4 by 12 ft', { kind: 'bed', length: 4, width: 12 }],
    ['18 in x 6 ft', { kind: 'bed', length: 1.5, width: 6 }],
    ['9 x 3 ft across', { kind: 'canopy', count: 9, diameter: 36 }],
    ['9 x 3 across', { kind: 'canopy', count: 9, diameter: 36 }],
    ['9 shrubs 3 ft', { kind: 'canopy', count: 9, diameter: 36 }],
    ['3 rows 12 ft', { kind: 'rows', rows: 3, length: 12 }],
    ['3 rows of 12 ft, 15 in apart', { kind: 'rows', rows: 3, length: 12, apart: 15 }],
    ['96 sq ft', { kind: 'area', area: 96 }],
    ['96', { kind: 'area', area: 96 }],
  ])('%s', (typed, extent) => {
    expect(parseSize(typed, us)).toEqual(extent);
  });

  it.each([
    ['1,2 x 4 m', undefined],
    ['1.2 x 4 m', { kind: 'bed', length: 1.2, width: 4 }],
    ['9 x 90 cm across', { kind: 'canopy', count: 9, diameter: 90 }],
    ['9 m2', { kind: 'area', area: 9 }],
  ])('%s in metric units', (typed, extent) => {
    expect(parseSize(typed, metric)).toEqual(extent);
  });

  it.each(['', 'big', '4 x', '4 x 5 x 6 ft', '0 sq ft', 'x'])('%j is none', (typed) => {
    expect(parseSize(typed, us)).toBeUndefined();
  });
});

describe('the size of a pot, a basket or a box', () => {
  // A gallon is 3.785 L; the forms of pots are from memory, so that what one holds is only asked to be what is typed.
  it.each([
    ['6 pots 18 in', { kind: 'canopy', count: 6, diameter: 18 }, { volume: 12.3, opening: 18 }, 'width'],
    ['6 pots 18', { kind: 'canopy', count: 6, diameter: 18 }, { volume: 12.3, opening: 18 }, 'width'],
    ['2 baskets of 14 in', { kind: 'canopy', count: 2, diameter: 14 }, { volume: 2.5, opening: 14 }, 'width'],
    ['6 pots 5 gal', { kind: 'canopy', count: 6, diameter: 13 }, { volume: 5 }, 'volume'],
    ['6 x 5 gal pots', { kind: 'canopy', count: 6, diameter: 13 }, { volume: 5 }, 'volume'],
    ['6 × 5 gal', { kind: 'canopy', count: 6, diameter: 13 }, { volume: 5 }, 'volume'],
    ['a 5-gallon pot', { kind: 'canopy', count: 1, diameter: 13 }, { volume: 5 }, 'volume'],
    ['2 boxes 36 x 8 in', { kind: 'rows', rows: 2, length: 3, apart: 8 }, { volume: 10, count: 2 }, 'sides'],
    ['2 boxes 3 ft × 8 in', { kind: 'rows', rows: 2, length: 3, apart: 8 }, { volume: 10, count: 2 }, 'sides'],
  ])('%s', (typed, extent, container, by) => {
    expect(parseContainerSize(typed, us)).toEqual({ extent, container, by, isBasket: typed.includes('basket') });
  });

  it.each([
    ['2 pots 20 L', { kind: 'canopy', count: 2, diameter: 35 }, { volume: 20 }],
    ['2 pots 20 litres', { kind: 'canopy', count: 2, diameter: 35 }, { volume: 20 }],
    ['1 box 60 x 20', { kind: 'rows', rows: 1, length: 0.6, apart: 20 }, { volume: 24, count: 1 }],
  ])('%s in metric units', (typed, extent, container) => {
    expect(parseContainerSize(typed, metric)).toMatchObject({ extent, container });
  });

  it.each(['', '4 x 12 ft', '9 x 3 ft across', '96 sq ft', '6 pots', 'pots', '3 rows 12 ft'])('%j is none', (typed) => {
    expect(parseContainerSize(typed, us)).toBeUndefined();
  });

  it('is no size of what grows in the ground, and plants may be counted alone', () => {
    expect(parseSize('6 pots 5 gal', us)).toBeUndefined();
    expect(['9 plants', '9 shrubs 3 ft', '9', '0 plants'].map((typed) => parsePlantCount(typed, us))).toEqual([
      9,
      undefined,
      undefined,
      undefined,
    ]);
  });
});
