/** The sheet's words, in one place. */
import type { FaultText } from '../language/describe-fault.ts';
import type { Measure } from './sheet-view.ts';

/** Which figure of a cell goes out when it is copied. */
export const FIGURE_NAMES: Readonly<Record<Measure, string>> = {
  all: 'minutes',
  volume: 'volume of water',
  minutes: 'minutes',
  rain: 'rain credited',
};

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
