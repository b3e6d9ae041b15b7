/** A CSV of daily weather (date, rain, lowest and highest temperature) as days of the engine. */
import { dayNumber, isIsoDate, isoDate } from '../../engine/calendar.ts';
import type { DailyWeather } from '../../engine/climate/monthly-normals.ts';
import { type Quantity, toSi, type UnitSystem } from '../../engine/units.ts';
import { boundsOf } from '../../plan/schema/quantity.ts';
import type { RowFault, RowFaultReason } from '../csv/imported.ts';
import { bareWord, headingWords, readHeading } from '../csv/read-heading.ts';
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

const COLUMNS = ['date', 'rain', 'min', 'max'] as const;
type Column = (typeof COLUMNS)[number];
type Reading = Exclude<Column, 'date'>;

const QUANTITIES = { rain: 'depth', min: 'temperature', max: 'temperature' } as const satisfies Record<
  Reading,
  Quantity
>;

/**
 * Reads the rows that can be read and names those that cannot; it is for the caller to ask before it keeps a part.
 * Columns are found by their heading, in any order, others are ignored; a blank is a missing reading. A column whose
 * heading names its unit is in that, as in `Rain (mm)`; any other in the unit system given: in and °F, or mm and °C.
 * `locale`: BCP 47, whose language the headings may be in; English ones are always read.
 */
export function readDailyWeather(text: string, units: UnitSystem, locale = 'en'): DailyWeatherFile {
  return dailyWeatherIn(readTable(text), units, locale);
}

/** The same from a table that is read already. */
export function dailyWeatherIn({ header, rows }: Table, units: UnitSystem, locale: string): DailyWeatherFile {
  const columns = weatherColumns(header, locale);
  const unitsOf = (reading: Reading) => columns[reading] && (columns[reading].units ?? units);
  const read: WeatherUnits = { rain: unitsOf('rain'), min: unitsOf('min'), max: unitsOf('max') };
  if (columns.date === undefined || !hasReading(columns)) {
    const fault: RowFault = { code: 'weather-headings', line: 1, value: header.join(', ').slice(0, 80) };
    return { days: [], faults: [fault], units: read };
  }
  const days = new Map<number, FileDay>();
  const faults: RowFault[] = [];
  for (const { line, cells } of rows) {
    const day = readRow(cells, columns, read);
    const before = 'day' in day ? days.get(day.day)?.line : undefined;
    if ('code' in day) faults.push({ line, ...day });
    else if (before === undefined) days.set(day.day, { ...day, line });
    else faults.push({ code: 'date-twice', line, value: isoDate(day.day), before });
  }
  return { days: [...days.values()], faults, units: read };
}

interface ColumnFound {
  readonly index: number;
  /** Undefined where the heading names none. */
  readonly units: UnitSystem | undefined;
}

export type WeatherColumns = { readonly [Name in Column]?: ColumnFound };

/** Where the columns of daily weather stand in a table with these headings. */
export function weatherColumns(header: readonly string[], locale: string): WeatherColumns {
  const words = headingWords(locale);
  const headings = header.map((heading) => readHeading(heading, locale));
  const found = COLUMNS.flatMap((column) => {
    const names = words.flatMap(({ weather }) => weather[column]).map(bareWord);
    const indexes = names.map((name) => headings.findIndex(({ word }) => word === name));
    const index = indexes.find((each) => each >= 0) ?? -1;
    return index < 0 ? [] : [[column, { index, units: headings[index]?.units }] as const];
  });
  return Object.fromEntries(found);
}

export function hasReading({ rain, min, max }: WeatherColumns): boolean {
  return rain !== undefined || min !== undefined || max !== undefined;
}

type Refusal = RowFaultReason & { readonly value: string };

/** What a day is written like. */
const EXAMPLE_DAY = '2027-04-05';

function readRow(row: readonly string[], columns: WeatherColumns, units: WeatherUnits): DailyWeather | Refusal {
  const cell = (column: Column) => row[columns[column]?.index ?? -1] ?? '';
  const date = cell('date').slice(0, 10);
  if (!isIsoDate(date)) return { code: 'date', value: cell('date'), example: EXAMPLE_DAY };
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
    return { code: 'high-below-low', value: `${cell('min')}, ${cell('max')}` };
  }
  return { day: dayNumber(date), rainMm: inSi('rain'), minTemperatureC: min, maxTemperatureC: max };
}

/** Why a cell is no such reading; undefined where it is one or blank. */
function refusal(text: string, reading: Reading, units: UnitSystem): Refusal | undefined {
  const value = numberIn(text);
  const quantity = QUANTITIES[reading];
  const [low, high] = boundsOf(quantity, units);
  if (value === undefined || (value >= low && value <= high)) return undefined;
  return { code: reading === 'rain' ? 'rain' : 'temperature', value: text, low, high, units };
}
