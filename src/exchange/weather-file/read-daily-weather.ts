/** A CSV of daily weather (date, rain, lowest and highest temperature) as days of the engine. */
import { dayNumber, isIsoDate, isoDate } from '../../engine/calendar.ts';
import type { DailyWeather } from '../../engine/climate/monthly-normals.ts';
import { type Quantity, toSi, type UnitSystem, unitOf } from '../../engine/units.ts';
import { boundsOf } from '../../plan/schema/quantity.ts';
import type { RowFault } from '../csv/imported.ts';
import { readHeading } from '../csv/read-heading.ts';
import { numberIn, readTable, type Table } from '../csv/read-table.ts';

export interface DailyWeatherFile {
  readonly days: readonly FileDay[];
  readonly faults: readonly RowFault[];
  /** The units that the figures were read in: those of the heading, or else those given. */
  readonly units: WeatherUnits;
}

/** A day, with the line that it stands on. */
export interface FileDay extends DailyWeather {
  readonly line: number;
}

/** Undefined for a column that is not there. */
export interface WeatherUnits {
  readonly rain: UnitSystem | undefined;
  readonly min: UnitSystem | undefined;
  readonly max: UnitSystem | undefined;
}

/** Words that head a column, in lower case, letters only, without their unit; of two columns the one named first here. */
const HEADINGS = {
  date: ['date', 'day'],
  rain: ['rain', 'rainfall', 'raintotal', 'totalrain', 'precipitation', 'prcp', 'precip'],
  min: ['tempmin', 'tmin', 'mintemp', 'mintemperature', 'temperaturemin', 'low', 'lowest', 'min'],
  max: ['tempmax', 'tmax', 'maxtemp', 'maxtemperature', 'temperaturemax', 'high', 'highest', 'max'],
} as const;
type Column = keyof typeof HEADINGS;
type Reading = Exclude<Column, 'date'>;

const QUANTITIES = { rain: 'depth', min: 'temperature', max: 'temperature' } as const satisfies Record<
  Reading,
  Quantity
>;

const NAMES: Readonly<Record<Reading, string>> = {
  rain: 'rain',
  min: 'a lowest temperature',
  max: 'a highest temperature',
};

/**
 * Reads the rows that can be read and names those that cannot; it is for the caller to ask before it keeps a part.
 * Columns are found by their heading, in any order, others are ignored; a blank is a missing reading. A column whose
 * heading names its unit is in that, as in `Rain (mm)`; any other in the unit system given: in and °F, or mm and °C.
 */
export function readDailyWeather(text: string, units: UnitSystem): DailyWeatherFile {
  return dailyWeatherIn(readTable(text), units);
}

/** The same from a table that is read already. */
export function dailyWeatherIn({ header, rows }: Table, units: UnitSystem): DailyWeatherFile {
  const columns = weatherColumns(header);
  const unitsOf = (reading: Reading) => columns[reading] && (columns[reading].units ?? units);
  const read: WeatherUnits = { rain: unitsOf('rain'), min: unitsOf('min'), max: unitsOf('max') };
  if (columns.date === undefined || !hasReading(columns)) {
    const expected = 'a heading for the date and one at least of rain, lowest and highest temperature';
    const faults = [{ line: 1, value: header.join(', ').slice(0, 80), expected }];
    return { days: [], faults, units: read };
  }
  const days = new Map<number, FileDay>();
  const faults: RowFault[] = [];
  for (const { line, cells } of rows) {
    const day = readRow(cells, columns, read);
    const before = 'day' in day ? days.get(day.day)?.line : undefined;
    if ('expected' in day) faults.push({ line, ...day });
    else if (before === undefined) days.set(day.day, { ...day, line });
    else faults.push({ line, value: isoDate(day.day), expected: `each day once: line ${before} has it too` });
  }
  return { days: [...days.values()], faults, units: read };
}

interface ColumnPlace {
  readonly place: number;
  /** Undefined where the heading names none. */
  readonly units: UnitSystem | undefined;
}

export type WeatherColumns = { readonly [Name in Column]?: ColumnPlace };

/** Where the columns of daily weather stand in a table with these headings. */
export function weatherColumns(header: readonly string[]): WeatherColumns {
  const headings = header.map(readHeading);
  const found = (Object.keys(HEADINGS) as Column[]).flatMap((column) => {
    const places = HEADINGS[column].map((known) => headings.findIndex(({ word }) => word === known));
    const place = places.find((each) => each >= 0) ?? -1;
    return place < 0 ? [] : [[column, { place, units: headings[place]?.units }] as const];
  });
  return Object.fromEntries(found);
}

export function hasReading({ rain, min, max }: WeatherColumns): boolean {
  return rain !== undefined || min !== undefined || max !== undefined;
}

type Refusal = Omit<RowFault, 'line'>;

function readRow(row: readonly string[], columns: WeatherColumns, units: WeatherUnits): DailyWeather | Refusal {
  const cell = (column: Column) => row[columns[column]?.place ?? -1] ?? '';
  const date = cell('date').slice(0, 10);
  if (!isIsoDate(date)) return { value: cell('date'), expected: 'a day as year-month-day, such as 2027-04-05' };
  for (const reading of ['rain', 'min', 'max'] as const) {
    const system = units[reading];
    const refused = system && refusal(cell(reading), reading, system);
    if (refused !== undefined) return refused;
  }
  const inSi = (reading: Reading) => {
    const [value, system] = [numberIn(cell(reading)), units[reading]];
    return value === undefined || system === undefined ? undefined : toSi(value, QUANTITIES[reading], system);
  };
  const [min, max] = [inSi('min'), inSi('max')];
  if (min !== undefined && max !== undefined && max < min) {
    return { value: `${cell('min')}, ${cell('max')}`, expected: 'a highest temperature that is not below the lowest' };
  }
  return { day: dayNumber(date), rainMm: inSi('rain'), minTemperatureC: min, maxTemperatureC: max };
}

/** Why a cell is no such reading; undefined where it is one or blank. */
function refusal(text: string, reading: Reading, units: UnitSystem): Refusal | undefined {
  const value = numberIn(text);
  const quantity = QUANTITIES[reading];
  const [low, high] = boundsOf(quantity, units);
  if (value === undefined || (value >= low && value <= high)) return undefined;
  const span = `from ${Math.ceil(low)} to ${Math.floor(high)} ${unitOf(quantity, units).name}`;
  return { value: text, expected: `${NAMES[reading]} ${span}, with a point as decimal mark` };
}
