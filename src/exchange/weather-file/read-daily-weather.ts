/** A CSV of daily weather (date, rain, lowest and highest temperature) as days of the engine. */
import { dayNumber, isIsoDate } from '../../engine/calendar.ts';
import type { DailyWeather } from '../../engine/climate/monthly-normals.ts';
import { toSi, type UnitSystem } from '../../engine/units.ts';
import type { RowFault } from '../csv/imported.ts';
import { numberIn, readTable } from '../csv/read-table.ts';

export interface DailyWeatherFile {
  readonly days: readonly DailyWeather[];
  readonly faults: readonly RowFault[];
}

/** Words that head a column, in lower case, letters only. */
const HEADINGS = {
  date: ['date', 'day'],
  rain: ['rain', 'rainfall', 'precipitation', 'prcp', 'precip'],
  min: ['tempmin', 'tmin', 'mintemp', 'mintemperature', 'low', 'lowest'],
  max: ['tempmax', 'tmax', 'maxtemp', 'maxtemperature', 'high', 'highest'],
} as const;
type Column = keyof typeof HEADINGS;

/**
 * Reads the rows that can be read and names those that cannot; it is for the caller to ask before it keeps a part.
 * Columns are found by their heading, in any order, others are ignored; a blank is a missing reading. Values are in the
 * unit system given: in and °F, or mm and °C.
 */
export function readDailyWeather(text: string, units: UnitSystem): DailyWeatherFile {
  const { header, rows } = readTable(text);
  const places = columnPlaces(header);
  if (
    places.date === undefined ||
    (places.rain === undefined && places.min === undefined && places.max === undefined)
  ) {
    const expected = 'a heading for the date and one at least of rain, lowest and highest temperature';
    return { days: [], faults: [{ line: 1, value: header.join(', ').slice(0, 80), expected }] };
  }
  const days: DailyWeather[] = [];
  const faults: RowFault[] = [];
  for (const { line, cells } of rows) {
    const read = readRow(cells, places, units);
    if ('expected' in read) faults.push({ line, ...read });
    else days.push(read);
  }
  return { days, faults };
}

function columnPlaces(header: readonly string[]): Partial<Record<Column, number>> {
  const words = header.map((word) => word.toLowerCase().replaceAll(/[^a-z]/g, ''));
  const place = (column: Column) => words.findIndex((word) => (HEADINGS[column] as readonly string[]).includes(word));
  const found = (Object.keys(HEADINGS) as Column[]).map((column) => [column, place(column)] as const);
  return Object.fromEntries(found.filter(([, at]) => at >= 0));
}

type Refusal = Omit<RowFault, 'line'>;

function readRow(
  row: readonly string[],
  places: Partial<Record<Column, number>>,
  units: UnitSystem,
): DailyWeather | Refusal {
  const cell = (column: Column) => (places[column] === undefined ? '' : (row[places[column]] ?? ''));
  const date = cell('date').slice(0, 10);
  if (!isIsoDate(date)) return { value: cell('date'), expected: 'a day as year-month-day, such as 2027-04-05' };
  const rain = numberIn(cell('rain'));
  if (rain !== undefined && !(rain >= 0)) return { value: cell('rain'), expected: 'rain of 0 or more' };
  const [min, max] = [numberIn(cell('min')), numberIn(cell('max'))];
  if (Number.isNaN(min)) return { value: cell('min'), expected: 'a number for the lowest temperature' };
  if (Number.isNaN(max)) return { value: cell('max'), expected: 'a number for the highest temperature' };
  if (min !== undefined && max !== undefined && max < min) {
    return { value: `${cell('min')}, ${cell('max')}`, expected: 'a highest temperature that is not below the lowest' };
  }
  return {
    day: dayNumber(date),
    rainMm: rain === undefined ? undefined : toSi(rain, 'depth', units),
    minTemperatureC: min === undefined ? undefined : toSi(min, 'temperature', units),
    maxTemperatureC: max === undefined ? undefined : toSi(max, 'temperature', units),
  };
}
