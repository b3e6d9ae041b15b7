/** The sheet's words, in one place. */
import type { MinutesOrigin, State } from '../engine/season/season.ts';
import type { Measure, Sort } from './sheet-view.ts';

export const STATE_NAMES: Readonly<Record<State, string>> = {
  dry: 'Dry',
  short: 'Short',
  over: 'Over',
  met: 'Met',
  closed: 'Closed',
  off: 'Off',
};

/** What a state says of a week, within a sentence. */
export const STATE_WORDS: Readonly<Record<State, string>> = {
  dry: 'dry: beyond the allowed depletion at the week’s end',
  short: 'short of water on some days',
  over: 'over: more than the soil can hold',
  met: 'need met',
  closed: 'closed by hand',
  off: 'nothing in the ground',
};

/** What is added to a week's minutes that were not computed. */
export const ORIGIN_WORDS: Readonly<Record<MinutesOrigin, string>> = {
  computed: '',
  'hand-set': ' set by hand',
  run: ' really run',
  closed: '',
};

export const MEASURE_NAMES: Readonly<Record<Measure, string>> = {
  all: 'All three',
  volume: 'Gallons',
  minutes: 'Minutes',
  rain: 'Rain credited',
};

export const SORT_NAMES: Readonly<Record<Sort, string>> = {
  plan: 'As in the plan',
  name: 'By name',
  volume: 'Most water first',
  trouble: 'Dry and short first',
};

export const ETO_NAME = 'Reference ET';
export const RAIN_NAME = 'Rain';
export const TOTAL_NAME = 'Whole garden';
export const SEASON_NAME = 'Season';
export const ZONE_NAME = 'Zone';

/** Joins what is there into one sentence. */
export function sentence(...parts: readonly (string | false | undefined)[]): string {
  return `${parts.filter((part) => part !== '' && part !== false && part !== undefined).join('; ')}.`;
}
