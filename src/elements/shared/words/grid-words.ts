/** What stands around the grid; the sheet's own words are the sheet's. */
import { STATE_NAMES } from '../../../sheet/words.ts';

export const gridWords = {
  measure: 'Figures in a cell',
  measures: (volume: string) => ({ all: 'All', volume, minutes: 'Minutes', rain: 'Rain' }),
  gallons: 'Gallons',
  litres: 'Litres',
  unfoldAll: 'Unfold all',
  foldAll: 'Fold all',
  goTo: 'Go to',
  goToWhere: 'Go to…',
  thisWeek: 'This week',
  find: 'Find a zone or planting',
  state: 'Weeks that are',
  anyState: 'Any state',
  sort: 'Order',
  zone: 'Zone',
  season: 'Whole season',
  onPaper: (states: string) => `* entered by hand; ${states}`,
  showHidden: (parts: readonly string[]) => `Show ${parts.join(' and ')} hidden`,
  hiddenWeeks: (count: number) => (count === 1 ? '1 week' : `${count} weeks`),
  hiddenZones: (count: number) => (count === 1 ? '1 zone' : `${count} zones`),
  more: 'Find and sort',
  noMatch: 'No zone matches. Clear what you look for to see them all.',
  loading: 'Laying out the sheet…',
  failed: 'The sheet could not be loaded. Check the connection, then load the page again.',
  noKey: {
    title: 'The sheet needs a licence key',
    why: 'It stands on Handsontable, a spreadsheet component that asks every page for a key.',
    free: 'For your own garden, a club, or trying things out, its terms of non-commercial use and evaluation apply. Then write this where the page has the grid:',
    bought:
      'A business needs a key of its own from Handsontable, and so does whoever runs a garden for pay or for a council.',
  },
  key: {
    title: 'How to read the sheet',
    ground: 'Water in the week',
    states: STATE_NAMES,
    byHand: 'Entered by hand',
    run: 'Really run',
    closed: 'Closed',
    note: 'Note',
  },
} as const;
