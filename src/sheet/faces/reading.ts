import type { SheetFormat } from '../sheet-format.ts';
import type { Measure } from '../sheet-view.ts';
import type { WeekCalendar } from '../week-calendar.ts';

/** How the faces of one sheet are written. A new one is made whenever any of it changes. */
export interface Reading {
  readonly measure: Measure;
  readonly format: SheetFormat;
  readonly calendar: WeekCalendar;
}
