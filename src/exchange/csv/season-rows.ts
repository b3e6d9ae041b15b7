/** What rows of a season's table are made of. */
import type { DayNumber } from '../../engine/calendar.ts';
import type { Season } from '../../engine/season/season.ts';
import type { Reader } from '../../language/reader.ts';

export type Row = (string | number)[];

/** For whom, and which weeks. */
export interface Written {
  readonly reader: Reader;
  readonly season: Season;
  readonly weeks: readonly number[];
  readonly today: DayNumber | undefined;
}

/** Decimals that are kept: more than any screen shows, few enough to read. */
const DECIMALS = 3;

export function textRow(names: readonly string[], text: (week: number) => string, { weeks }: Written): Row {
  return [...names, '', ...weeks.map(text), ''];
}

/** Of figures that do not add up. `names`: with the unit. */
export function plainRow(names: readonly string[], figure: (week: number) => number | '', { weeks }: Written): Row {
  return [...names, ...weeks.map(figure), ''];
}

export function round(value: number): number {
  return Number(value.toFixed(DECIMALS));
}
