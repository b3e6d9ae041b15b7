/** The sheets that all zones read: the weather week by week, the months, and each planting's share of a month's rain. */
import type { Garden } from '../../../src/engine/garden.ts';
import type { Weather } from '../../../src/engine/weather.ts';
import { columnName, columnOf, type Row, rowOf, WEATHER_ROW } from './places.ts';

/** ETo, normal rain, and the rain read from a gauge, which is the row to type in. */
export function weatherSheet({ observed, span }: Garden, { eto, rain, firstDay }: Weather): Row[] {
  const { weeks } = span;
  const sum = (daily: Float64Array, week: number) =>
    daily.subarray(7 * week, 7 * week + 7).reduce((total, mm) => total + mm, 0);
  const rows: Row[] = [];
  rows[WEATHER_ROW.eto - 1] = rowOf([], weeks, (week) => sum(eto.mm, week));
  rows[WEATHER_ROW.normalRain - 1] = rowOf([], weeks, (week) => sum(rain.mm, week));
  rows[WEATHER_ROW.readRain - 1] = rowOf([], weeks, (week) => observed.weeks.get(firstDay + 7 * week)?.rainMm ?? null);
  return rows;
}

/** One row a month: its normal rain and its days. */
export function monthSheet({ site }: Garden, { months }: Weather): Row[] {
  return months.calendarMonth.map((month, place) => [
    site.climate.rainMm[month] ?? null,
    months.lengthDays[place] ?? null,
  ]);
}

/** Place of the month that holds a week's middle day, in the season's months. */
export function monthOfWeek({ months }: Weather, week: number): number {
  return months.starts.findLastIndex((start, month) => start <= 7 * week + 3 && month < months.calendarMonth.length);
}

/** One row a planting: each month's ETc, then the share of each month's rain that counts, by TR-21. */
export function shareRow(
  row: number,
  weather: Weather,
  season: { readonly etcRow: number; readonly factorCell: string },
): Row {
  const months = weather.months.calendarMonth.length;
  const monthsOfWeeks = Array.from({ length: weather.days / 7 }, (_, week) => monthOfWeek(weather, week));
  const etcs = Array.from({ length: months }, (_, month) => {
    const first = monthsOfWeeks.indexOf(month);
    if (first < 0) return 0;
    const last = monthsOfWeeks.lastIndexOf(month);
    const weeks = `Season!${columnOf(first)}${season.etcRow}:${columnOf(last)}${season.etcRow}`;
    return `=SUM(${weeks})/${7 * (last - first + 1)}*Months!$B$${month + 1}`;
  });
  const shares = Array.from({ length: months }, (_, month) => {
    const etc = `${columnName(month)}${row}`;
    const rain = `Months!$A$${month + 1}`;
    const relation = `Season!${season.factorCell}*(1.2525*${rain}^0.82416-2.9352)*10^(0.00095512*${etc})`;
    return `=IF(${rain}=0,0,MAX(0,MIN(${rain},${etc},${relation}))/${rain})`;
  });
  return [...etcs, ...shares];
}

/** Where that share lies, in the sheet Shares. */
export function shareCell(row: number, weather: Weather, week: number): string {
  const months = weather.months.calendarMonth.length;
  return `Shares!${columnName(months + monthOfWeek(weather, week))}${row}`;
}
