/** What stands around the sheet: the tools above it, the legend beneath, and the words on paper. */
import type { State } from '../../engine/season/season.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

const WEEKS = { one: 'week', other: 'weeks' };
const ZONES = { one: 'zone', other: 'zones' };

export const gridTools = {
  measure: 'Figures in a cell',
  /** The volume is named by its unit. */
  measures: { all: 'All', minutes: 'Minutes', rain: 'Rain' },
  /** Opens what can be done with the selected cells. */
  cellMenu: 'Cell menu',
  unfoldAll: 'Unfold all',
  foldAll: 'Fold all',
  atOnce: 'Weeks side by side',
  weeksAtOnce: ({ count }: Format, weeks: number) => count(weeks, WEEKS),
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

  legend: {
    title: 'How to read the sheet',
    /** Before the depths up to which each ground goes. */
    ground: ({ unit }: Format) => `Water in the week, up to (${unit('depth')})`,
    none: 'none',
    more: 'more',
    /** In a planting's cells. */
    share: '% of need',
    signs: {
      short: 'goes short',
      over: 'overwatered',
      closed: 'closed',
      skipped: 'skipped',
      'by-hand': 'set by hand',
      run: 'logged as run',
      noted: 'note',
      read: 'weather as read',
      usual: 'usual weather',
    },
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

export const gridToolsWords = area('gridTools', gridTools);
