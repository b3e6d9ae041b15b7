/** The sheet's words, in one place. */
import type { MinutesOrigin, State } from '../engine/season/season.ts';
import type { FaultText } from '../language/describe-fault.ts';
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

/** Which figure of a cell goes out when it is copied. */
export const FIGURE_NAMES: Readonly<Record<Measure, string>> = {
  all: 'minutes',
  volume: 'volume of water',
  minutes: 'minutes',
  rain: 'rain credited',
};

export const SORT_NAMES: Readonly<Record<Sort, string>> = {
  plan: 'As in the plan',
  name: 'By name',
  volume: 'Most water first',
  trouble: 'Dry and short first',
};

/** Of the editor while it is on no cell. */
export const ENTRY_NAME = 'Entry';

export const ETO_NAME = 'Reference ET';
export const RAIN_NAME = 'Rain';
export const TOTAL_NAME = 'Whole garden';
export const ZONE_NAME = 'Zone';
export const MONTH_NAME = 'Month';
/** One above the other over the column of totals. */
export const WHOLE_NAME = 'Whole';
export const SEASON_NAME = 'season';

export const MENU_WORDS = {
  giveBack: 'Give back to the calculation',
  close: 'Close for the week',
  open: 'Open for the week',
  logRun: 'Log these minutes as run',
  shutOff: 'Shut-off open on…',
  openOn: (days: number) => (days === 1 ? '1 day' : `${days} days`),
  note: 'Note…',
  why: 'Why is this so?',
  copy: 'Copy',
  copyAs: 'Copy as…',
  measures: { volume: 'Volume of water', minutes: 'Minutes', rain: 'Rain credited' },
  hideWeeks: (count: number) => (count === 1 ? 'Hide this week' : 'Hide these weeks'),
  hideZones: (count: number) => (count === 1 ? 'Hide this zone' : 'Hide these zones'),
  showAll: 'Show all that is hidden',
} as const;

export const NOTE_WORDS = { title: 'Note', save: 'Keep the note', cancel: 'Cancel' } as const;

export const SPOKEN = {
  changed: (count: number) => `${count} cells changed.`,
  beyond: (count: number) =>
    `${count === 1 ? '1 cell lies' : `${count} cells lie`} beyond the end of the sheet and ${count === 1 ? 'was' : 'were'} not pasted.`,
  refused: ({ where, value, expected }: FaultText) => `${where}: ${value}; expected ${expected}.`,
  typedIntoAnother: (text: string) => `“${text}” was not entered: its cell is gone.`,
  undo: 'Undone.',
  redo: 'Redone.',
  copied: (count: number, figure: string) => `${count === 1 ? '1 cell' : `${count} cells`} copied as ${figure}.`,
} as const;

/** Joins what is there into one sentence. */
export function sentence(...parts: readonly (string | false | undefined)[]): string {
  return `${parts.filter((part) => part !== '' && part !== false && part !== undefined).join('; ')}.`;
}
