/** What the trace says around its steps. */
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

export const trace = {
  title: 'Why this number?',
  choose: 'Select a cell in the grid, and every step that leads to its number appears here.',
  /** Minutes, and irrigation in L, of a zone's week. */
  whyZone: ({ minutes, quantity }: Format, run: number, litres: number) =>
    `Why ${minutes(run)}, ${quantity(litres, 'volume')}?`,
  why: ({ quantity }: Format, litres: number) => `Why ${quantity(litres, 'volume')}?`,
  /** In mm. */
  whyWeather: {
    eto: ({ quantity }: Format, mm: number) => `Why ${quantity(mm, 'depth')} of reference ET?`,
    rain: ({ quantity }: Format, mm: number) => `Why ${quantity(mm, 'depth')} of rain?`,
  },
  wholeGarden: 'Whole garden',
  whose: 'For',
  wholeZone: 'The whole zone',
  steps: 'Steps, in the order they are worked out',
  formula: 'Formula',
  source: 'Source',
};

export const traceWords = area('trace', trace);
