/** What the sheet's menu, its form for notes and its callouts say, and what is announced of a change. */
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

const DAYS = { one: 'day', other: 'days' };
const CELLS = { one: 'cell', other: 'cells' };

export const sheetActions = {
  menu: {
    close: 'Close for the week',
    open: 'Open for the week',
    logRun: 'Log minutes as run',
    shutOff: 'Shut-off open on…',
    openOn: ({ count }: Format, days: number) => count(days, DAYS),
    note: 'Note…',
    why: 'Why is this so?',
    copy: 'Copy',
    copyAs: 'Copy as…',
    measures: { volume: 'Volume of water', minutes: 'Minutes', rain: 'Rain counted' },
    hideWeeks: ({ plural }: Format, weeks: number) =>
      plural(weeks, { one: 'Hide this week', other: 'Hide these weeks' }),
    hideZones: ({ plural }: Format, zones: number) =>
      plural(zones, { one: 'Hide this zone', other: 'Hide these zones' }),
    showAll: 'Show everything hidden',
  },

  note: {
    title: (cell: string) => `Note: ${cell}`,
    save: 'Save note',
    cancel: 'Cancel',
  },

  /** Of an edit that was not taken. */
  refused: (where: string, value: string, expected: string) => `${where}: ${value}; expected ${expected}.`,
  /** Of several cells some of which stay as they were. */
  partly: ({ number, count, plural }: Format, changed: number, of: number, refused: number) =>
    `${number(changed)} of ${count(of, CELLS)} changed; ${plural(refused, {
      one: `${number(refused)} stays as it was`,
      other: `${number(refused)} stay as they were`,
    })}.`,
  /** Cells by their names, with the sentence that says why they stay. */
  stays: (cells: readonly string[], why: string) => `${cells.join('; ')}: ${why}`,
  /** The same where `more` cells are not named. */
  stayWithMore: ({ number }: Format, cells: readonly string[], more: number, why: string) =>
    `${cells.join('; ')} and ${number(more)} more: ${why}`,
  moreReasons: ({ number, plural }: Format, more: number) =>
    plural(more, { one: `And ${number(more)} more reason.`, other: `And ${number(more)} more reasons.` }),
  beyond: ({ number, plural }: Format, cells: number) =>
    plural(cells, {
      one: `${number(cells)} cell lies beyond the end of the sheet and was not pasted.`,
      other: `${number(cells)} cells lie beyond the end of the sheet and were not pasted.`,
    }),
  cellGone: (typed: string) => `“${typed}” was not entered: its cell is gone.`,

  announced: {
    changed: ({ count }: Format, cells: number) => `${count(cells, CELLS)} changed.`,
    undo: 'Undone.',
    redo: 'Redone.',
    copied: {
      all: ({ count }: Format, cells: number) => `${count(cells, CELLS)} copied as minutes.`,
      volume: ({ count }: Format, cells: number) => `${count(cells, CELLS)} copied as volume of water.`,
      minutes: ({ count }: Format, cells: number) => `${count(cells, CELLS)} copied as minutes.`,
      rain: ({ count }: Format, cells: number) => `${count(cells, CELLS)} copied as rain counted.`,
    },
    /** What happened, and what came of it. */
    withFigures: (happened: string, figures: string) => `${happened} ${figures}`,
  },
};

export type SheetActionsWords = typeof sheetActions;

export const sheetActionsWords = area('sheetActions', sheetActions);
