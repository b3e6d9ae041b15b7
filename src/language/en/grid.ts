/** What stands around the sheet: the tools above it, the legend beneath, the page without a key, and the words on paper. */
import type { State } from '../../engine/season/season.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

const WEEKS = { one: 'week', other: 'weeks' };
const ZONES = { one: 'zone', other: 'zones' };

export const grid = {
  measure: 'Figures in a cell',
  /** The volume is named by its unit. */
  measures: { all: 'All', minutes: 'Minutes', rain: 'Rain' },
  unfoldAll: 'Unfold all',
  foldAll: 'Fold all',
  goTo: 'Go to',
  goToWhere: 'Go to…',
  thisWeek: 'This week',
  more: 'Find and sort',
  find: 'Find a zone or planting',
  state: 'Weeks that are',
  anyState: 'Any state',
  sort: 'Order',
  sorts: {
    plan: 'As in the plan',
    name: 'By name',
    volume: 'Most water first',
    trouble: 'Dry and short first',
  },
  showHidden: {
    weeks: ({ count }: Format, weeks: number) => `Show ${count(weeks, WEEKS)} hidden`,
    zones: ({ count }: Format, zones: number) => `Show ${count(zones, ZONES)} hidden`,
    both: ({ count, list }: Format, weeks: number, zones: number) =>
      `Show ${list([count(weeks, WEEKS), count(zones, ZONES)])} hidden`,
  },
  noMatch: 'No zone matches. Clear the search.',
  loading: 'Laying out the sheet…',
  inShadow: 'The sheet must stand in the page itself.',
  failed: 'The sheet could not be loaded. Check the connection, then load the page again.',

  noKey: {
    title: 'The sheet needs a license key.',
    why: 'It uses Handsontable, a spreadsheet that asks every page for a key.',
    free: 'For your own garden, a club, or trying things out, its terms of non-commercial use and evaluation apply. Then write:',
    /** Markup, as the page's owner copies it. */
    example: '<runnel-grid license-key="non-commercial-and-evaluation"></runnel-grid>',
    bought:
      'A business needs a key of its own from Handsontable, and so does anyone who runs a garden for pay or for a council.',
  },

  legend: {
    title: 'How to read the sheet',
    ground: 'Water in the week',
    deepest: ({ quantity }: Format, mm: number) => `${quantity(mm, 'depth')} or more`,
    byHand: 'Set by hand',
    run: 'Logged as run',
    note: 'Note',
  },

  paper: {
    zone: 'Zone',
    wholeSeason: 'Whole season',
    /** By which a state is marked where no sign is drawn. */
    letters: { dry: 'D', short: 'S', over: 'O', closed: 'C' } satisfies Partial<Record<State, string>>,
    letterOf: (letter: string, state: string) => `${letter} ${state}`,
    /** Beneath the table; `letters` say what each letter stands for. */
    legend: (letters: readonly string[]) => `* set by hand; ${letters.join('; ')}`,
  },
};

export const gridWords = area('grid', grid, { noKey: { title: 'The sheet needs a licence key.' } });
