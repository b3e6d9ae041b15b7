/** What an imported file would change, to be looked at before anything is kept. */
import type { Edit } from '../../plan/edits/edit.ts';

export interface ImportPreview {
  /** One step of history that keeps all changes; nothing where there is none. */
  readonly edit: Edit | undefined;
  readonly changes: readonly ImportChange[];
  readonly faults: readonly RowFault[];
}

/** What a figure of a file says: minutes of a week, or a day's rain, lowest and highest temperature. */
export type ImportReading = 'minutes' | 'rain' | 'minTemperature' | 'maxTemperature';

/** One figure: what it is, what stands there and what would, in the plan's unit; undefined = computed or from the normals. */
export interface ImportChange {
  readonly reading: ImportReading;
  /** Zone by name; left out for the weather. */
  readonly zone?: string | undefined;
  /** ISO day: the week's first, or the day of an observation. */
  readonly day: string;
  readonly from: number | undefined;
  readonly to: number;
}

/** A row that could not be read: its line in the file (the header is line 1) and what is wrong, in words. */
export interface RowFault {
  readonly line: number;
  readonly value: string;
  readonly expected: string;
}
