import type { SheetWords } from '../../language/en/sheet.ts';
import type { Format } from '../../language/format/format.ts';
import type { WeekCalendar } from '../../language/format/week-calendar.ts';
import type { Measure } from '../sheet-view.ts';

/** How the cells of one sheet are written. A new one is made whenever any of it changes. */
export interface CellContext {
  readonly measure: Measure;
  readonly format: Format;
  readonly calendar: WeekCalendar;
  readonly words: SheetWords;
  /** Week of the season that today lies in. */
  readonly thisWeek: number | undefined;
}
