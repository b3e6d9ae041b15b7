/** The size of a planting: the words in which it is typed, small letters, and what is said of it. */
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

export const sizes = {
  times: ['x', 'by'] as readonly string[],
  rows: ['rows', 'row'] as readonly string[],
  across: ['across', 'wide', 'spread', 'each', 'diameter'] as readonly string[],
  apart: ['apart', 'between'] as readonly string[],
  containers: [
    'pots',
    'pot',
    'baskets',
    'basket',
    'boxes',
    'box',
    'containers',
    'container',
    'tubs',
    'tub',
    'planters',
    'planter',
    'troughs',
    'trough',
  ] as readonly string[],
  baskets: ['baskets', 'basket'] as readonly string[],
  /** Stand between a number and its size, and say nothing. */
  fillers: ['of', 'each', 'a', 'across', 'wide', 'hanging', 'window'] as readonly string[],
  plants: ['plants', 'plant', 'shrubs', 'shrub', 'trees', 'tree', 'bushes', 'bush'] as readonly string[],
  /** What a number alone is in, of the spread of a plant. */
  length: { us: 'ft', metric: 'm' },

  /** Of its field. */
  field: {
    label: 'Size',
    examples: {
      us: 'such as 4 x 12 ft · 9 x 3 ft across · 3 rows 12 ft · 6 pots 18 in · 2 pots 5 gal · 96 sq ft',
      metric: 'such as 1.2 x 4 m · 9 x 90 cm across · 3 rows 4 m · 6 pots 45 cm · 2 pots 20 L · 9 m²',
    },
  },
  notRead: 'Not read. Write it like one of these, one bed a row.',
  missing: 'Type how large it is.',
  /** Behind a number of pots or plants. */
  eachMissing: {
    us: 'Say how large each is, too, such as 4 pots 14 in, or 9 x 3 ft across.',
    metric: 'Say how large each is, too, such as 4 pots 35 cm, or 9 x 90 cm across.',
  },
  /** Of one pot or box, L. */
  holds: ({ quantity }: Format, litres: number) => `Each holds about ${quantity(litres, 'volume')}.`,
  covers: ({ quantity }: Format, areaM2: number) => `It covers ${quantity(areaM2, 'area')}.`,
  /** As it is shown, and can be typed again. */
  text: {
    bed: ({ number }: Format, length: number, width: number, unit: string) =>
      `${number(length, 2)} × ${number(width, 2)} ${unit}`,
    /** `length`, `apart`: with their units; how far rows are apart may not be known. */
    rows: ({ count }: Format, rows: number, length: string, apart: string) =>
      `${count(rows, { one: 'row', other: 'rows' })} of ${length}${apart === '' ? '' : `, ${apart} apart`}`,
    /** `length`, `width`: of one, with their units. */
    boxes: ({ count }: Format, boxes: number, length: string, width: string) =>
      `${count(boxes, { one: 'box', other: 'boxes' })} ${length} × ${width}`,
    holding: ({ number }: Format, pots: number, volume: number, unit: string) =>
      `${number(pots)} × ${number(volume, 1)} ${unit}`,
    canopy: ({ number }: Format, plants: number, across: number, unit: string) =>
      `${number(plants)} × ${number(across, 1)} ${unit} across`,
    area: ({ number }: Format, size: number, unit: string) => `${number(size, 1)} ${unit}`,
  },
};

export const sizesWords = area('sizes', sizes);
