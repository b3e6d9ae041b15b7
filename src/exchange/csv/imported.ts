/** What an imported file would change, to be looked at before anything is kept. */
import type { DayNumber } from '../../engine/calendar.ts';
import type { UnitSystem } from '../../engine/units.ts';
import type { SettableRun } from '../../explain/settable-minutes.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { FormQuestion, TableForm } from './table-form.ts';

export interface ImportPreview {
  /** How the table was read. */
  readonly form: TableForm;
  /** What a person has to say first: until then nothing is read. */
  readonly asked: readonly FormQuestion[];
  /** One step of history that keeps all changes; nothing where there is none. */
  readonly edit: Edit | undefined;
  readonly changes: readonly ImportChange[];
  readonly faults: readonly RowFault[];
}

/**
 * What a figure of a file says: minutes of a zone's week, set by hand or really run, that it is closed, or its note; rain and reference
 * ET of a week; or a day's rain, lowest and highest temperature.
 */
export type ImportReading =
  | 'minutes'
  | 'minutesRun'
  | 'closed'
  | 'note'
  | 'weekRain'
  | 'weekEto'
  | 'rain'
  | 'minTemperature'
  | 'maxTemperature';

/** One figure: what it is, what stands there and what would, in the plan's unit; undefined = computed or from the normals. */
export interface ImportChange {
  readonly reading: ImportReading;
  /** Zone by name; left out for the weather. */
  readonly zone?: string | undefined;
  /** ISO day: the week's first, or the day of an observation. */
  readonly day: string;
  readonly from: number | string | undefined;
  /** A text for a note; 0 for a zone that is closed. */
  readonly to: number | string;
  /** Minutes of the week as the table has them, and what the timer can be set to, where that is another figure, `to`. */
  readonly written?: number;
  readonly timer?: SettableRun & { readonly stepMinutes: number };
}

/** A row that could not be read: its line in the file (the headings are line 1), what stands there, and what is wrong with it. */
export type RowFault = Refusal & { readonly line: number };

/** The same without its line. */
export type Refusal = RowFaultReason & { readonly value: string };

export type RowFaultReason =
  /** No heading for the zone, or none for a week of the season; `weekStart`: a heading that would do. */
  | { readonly code: 'minutes-headings'; readonly weekStart: string }
  /** No heading for the date, or none for a reading. */
  | { readonly code: 'weather-headings' }
  /** Another column is of the same. */
  | { readonly code: 'column-twice' }
  /** The heading names a unit that is none of what the column is of; `reading`: what that is. */
  | { readonly code: 'heading-unit'; readonly reading: 'rain' | 'temperature' }
  /** So many cells, of which the last have no heading. */
  | { readonly code: 'too-many-cells'; readonly cells: number; readonly headings: number }
  /** The file has several times of a day. */
  | { readonly code: 'hourly' }
  | { readonly code: 'week-twice' | 'week-outside' | 'zone-unknown' }
  /** As many zones have the name. */
  | { readonly code: 'zone-shared'; readonly zones: number }
  /** The line that has the zone, or the day, already. */
  | { readonly code: 'zone-twice' | 'date-twice'; readonly before: number }
  /** Outside 0 to `most` minutes. */
  | { readonly code: 'minutes'; readonly most: number }
  /** Minutes set by hand would change nothing: the week is closed, or what really ran is noted. */
  | { readonly code: 'week-closed' | 'week-run'; readonly weekStart: DayNumber }
  /** Each day of the week has a reading of its own, which a total would not change. */
  | { readonly code: 'read-by-day'; readonly weekStart: DayNumber }
  /** More than a note may hold. */
  | { readonly code: 'note-long'; readonly most: number }
  /** No day as year-month-day; `example`: one that is. */
  | { readonly code: 'date'; readonly example: string }
  /** Outside the bounds, which are in the units that the column was read in. */
  | {
      readonly code: 'rain' | 'eto' | 'temperature';
      readonly low: number;
      readonly high: number;
      readonly units: UnitSystem;
    }
  /** Alone, or together with what the plan has of that day. */
  | { readonly code: 'high-below-low' | 'high-below-low-of-day' };
