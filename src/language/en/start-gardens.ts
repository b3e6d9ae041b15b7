/** Names in the invented gardens that a plan can begin with. */
import { area } from '../area.ts';

export const startGardens = {
  weather:
    'An example’s weather, of New York, until your own is there: monthly means and rain days of 2012 to 2015 (NOAA); ETo by Hargreaves-Samani',
  notes: 'An invented garden to begin with: beds, plants and lines are made up. Put in your own.',
  keepers: (name: string) => `${name}’s bed`,
  names: { first: 'Ann', second: 'Ben', third: 'Cleo', fourth: 'Dev' },
  shared: 'Shared beds',
  tomatoes: 'Tomatoes',
  salad: 'Salad',
  beans: 'Beans',
  carrots: 'Carrots',
  squash: 'Squash',
  strawberries: 'Strawberries',
  herbs: 'Herbs',
  perennials: 'Perennials',
  hedge: 'Hedge',
  lavender: 'Lavender',
  hydrangea: 'Hydrangeas',
  pots: 'Pots of geraniums',
  baskets: 'Hanging baskets',
  bigPots: 'Large pots',
  /** As the plant list has them. */
  plants: {
    hydrangea: { name: 'hydrangea', botanical: 'Hydrangea macrophylla' },
    lavender: { name: 'lavender', botanical: 'Lavandula spp.' },
    boxwood: { name: 'boxwood', botanical: 'Buxus sempervirens' },
    geranium: { name: 'geranium', botanical: 'Pelargonium x hortorum' },
    petunia: { name: 'petunia', botanical: 'Petunia hybrids' },
  },
  zones: { beds: 'Beds', border: 'Border', hedge: 'Hedge', pots: 'Pots', main: 'Club main' },
};

export const startGardensWords = area('startGardens', startGardens);
