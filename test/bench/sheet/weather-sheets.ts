/** The sheets that all zones read: the weather week by week, and each planting's share of a month's rain. */
import type { Garden } from '../../../src/engine/garden.ts';
import type { Weather } from '../../../src/engine/weather.ts';
import { columnName, type Row, rowOf, WEATHER_ROW } from './places.ts';

/** ETo, normal rain, and the rain read from a gauge, which is the row to type in. */
export function weatherSheet({ observed, span }: Garden, { eto, rain, firstDay }: Weather): Row[] {
  const { weeks } = span;
  const sum = (daily: Float64Array, week: number) =>
    daily.subarray(7 * week, 7 * week + 7).reduce((total, mm) => total + mm, 0);
  const rows: Row[] = [];
  rows[WEATHER_ROW.eto - 1] = rowOf([], weeks, (week) => sum(eto.mm, week));
  rows[WEATHER_ROW.normalRain - 1] = rowOf([], weeks, (week) => sum(rain.expectedMm, week));
  rows[WEATHER_ROW.readRain - 1] = rowOf([], weeks, (week) => observed.weeks.get(firstDay + 7 * week)?.rainMm ?? null);
  return rows;
}

/** Place of the month that holds a week's middle day, in the season's months. */
export function monthOfWeek({ months }: Weather, week: number): number {
  return months.starts.findLastIndex((start, month) => start <= 7 * week + 3 && month < months.calendarMonth.length);
}

/** Where a planting's share lies in the sheet Shares, of which each row has a planting's shares month by month. */
export function shareCell(row: number, weather: Weather, week: number): string {
  return `Shares!${columnName(monthOfWeek(weather, week))}${row}`;
}
