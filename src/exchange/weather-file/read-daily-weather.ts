/** A CSV of daily weather (date, rain, lowest and highest temperature) as days of the engine. */
import { type DayNumber, dayNumber, isoDate } from '../../engine/calendar.ts';
import { runThrough } from '../../engine/run-through.ts';
import { type Quantity, toSi, type UnitSystem } from '../../engine/units.ts';
import { boundsOf } from '../../plan/schema/quantity.ts';
import { hourlyFault } from '../csv/hourly-fault.ts';
import type { Refusal, RowFault } from '../csv/imported.ts';
import { readDay } from '../csv/read-day.ts';
import { bareWord, type Heading, type HeadingUnit, headingWords, readHeading } from '../csv/read-heading.ts';
import { numberIn, readTable, type Table, tooManyCells } from '../csv/read-table.ts';
import { isStretchEnd } from '../csv/stretch.ts';
import {
  type DecimalMark,
  dayOrderSteps,
  decimalSteps,
  type FormChoice,
  type FormQuestion,
  type TableForm,
} from '../csv/table-form.ts';

export interface DailyWeatherFile {
  /** How the file was read. */
  readonly form: TableForm;
  /** What could be read in two ways: until it is said, no day is read. */
  readonly asked: readonly FormQuestion[];
  readonly days: readonly FileDay[];
  readonly faults: readonly RowFault[];
  /** The units that the figures were read in: those of the heading, or else those given. */
  readonly units: WeatherUnits;
}

/** What a gauge and a thermometer give of a day; a reading may be missing. */
interface DailyWeather {
  readonly day: DayNumber;
  readonly rainMm?: number | undefined;
  readonly minTemperatureC?: number | undefined;
  readonly maxTemperatureC?: number | undefined;
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
 * `locale`: BCP 47, whose language the headings may be in; English ones are always read. Separator, decimal mark and the order of
 * days are told from the whole file; `choice` says what it leaves open, and is asked for where there are two readings.
 */
export function readDailyWeather(
  text: string,
  units: UnitSystem,
  locale = 'en',
  choice: FormChoice = {},
): DailyWeatherFile {
  return runThrough(dailyWeatherSteps(readTable(text), units, locale, choice));
}

/** The same from a table that is read already, with pauses. */
export function* dailyWeatherSteps(
  table: Table,
  units: UnitSystem,
  locale: string,
  choice: FormChoice,
): Generator<void, DailyWeatherFile> {
  const { header, rows, separator } = table;
  const columns = weatherColumns(header, locale);
  const unitsOf = (reading: Reading) => columns[reading] && (columns[reading].units ?? units);
  const read: WeatherUnits = { rain: unitsOf('rain'), min: unitsOf('min'), max: unitsOf('max') };
  if (columns.date === undefined || !hasReading(columns)) {
    const fault: RowFault = { code: 'weather-headings', line: 1, value: header.join(', ').slice(0, 80) };
    return { form: { separator, decimal: '.' }, asked: [], days: [], faults: [fault], units: read };
  }
  const { form, asked } = yield* formOf(table, columns, choice);
  const unclear = headingFaults(header, columns, locale);
  if (unclear.length > 0 || asked.length > 0) return { form, asked, days: [], faults: unclear, units: read };
  const hourly = yield* hourlyFault(rows, columns.date.index, form);
  if (hourly !== undefined) return { form, asked, days: [], faults: [hourly], units: read };
  return { form, asked, ...(yield* daysOf(table, columns, read, form)), units: read };
}

function* daysOf(
  { header, rows }: Table,
  columns: WeatherColumns,
  units: WeatherUnits,
  form: TableForm,
): Generator<void, Pick<DailyWeatherFile, 'days' | 'faults'>> {
  const days = new Map<number, FileDay>();
  const faults: RowFault[] = [];
  for (const [index, row] of rows.entries()) {
    if (isStretchEnd(index)) yield;
    const { line } = row;
    const day = tooManyCells(row, header, form) ?? readRow(row.cells, columns, units, form);
    const before = 'day' in day ? days.get(day.day)?.line : undefined;
    if ('code' in day) faults.push({ line, ...day });
    else if (before === undefined) days.set(day.day, { ...day, line });
    else faults.push({ code: 'date-twice', line, value: isoDate(day.day), before });
  }
  return { days: [...days.values()], faults };
}

/** How the figures and days of a table are written, as its reader says or as it shows. */
function* formOf(
  { rows, separator }: Table,
  columns: WeatherColumns,
  choice: FormChoice,
): Generator<void, Pick<DailyWeatherFile, 'form' | 'asked'>> {
  const cellsOf = function* (...which: readonly Column[]): Generator<string> {
    const indexes = which.flatMap((column) => columns[column]?.index ?? []);
    for (const { cells } of rows) for (const index of indexes) yield cells[index] ?? '';
  };
  const decimal = choice.decimal ?? (yield* decimalSteps(cellsOf('rain', 'min', 'max'), separator)).answer;
  const days = choice.days ?? (yield* dayOrderSteps(cellsOf('date'))).answer;
  const asked: FormQuestion[] = [];
  if (decimal === undefined) asked.push('decimal');
  if (days === undefined) asked.push('days');
  return { form: { separator, decimal: decimal ?? '.', days }, asked };
}

/** Columns of which it is not clear what they hold. */
function headingFaults(header: readonly string[], columns: WeatherColumns, locale: string): readonly RowFault[] {
  const headings = header.map((heading) => readHeading(heading, locale));
  return COLUMNS.flatMap((column): readonly RowFault[] => {
    const { index = -1, isUnitWrong = false } = columns[column] ?? {};
    const value = header[index] ?? '';
    const other = headings.findIndex(({ word }, at) => at !== index && word === headings[index]?.word);
    const reading = column === 'rain' ? 'rain' : 'temperature';
    return [
      ...(index >= 0 && other >= 0 ? [{ code: 'column-twice', line: 1, value: header[other] ?? '' } as const] : []),
      ...(isUnitWrong ? [{ code: 'heading-unit', line: 1, value, reading } as const] : []),
    ];
  });
}

interface ColumnFound {
  readonly index: number;
  /** Undefined where the heading names none. */
  readonly units: UnitSystem | undefined;
  /** It names one that is none of what the column is of. */
  readonly isUnitWrong: boolean;
}

export type WeatherColumns = { readonly [Name in Column]?: ColumnFound };

const SYSTEM_OF: Readonly<Record<'depth' | 'temperature', Partial<Record<HeadingUnit, UnitSystem>>>> = {
  depth: { mm: 'metric', in: 'us' },
  temperature: { '°C': 'metric', '°F': 'us' },
};

/** Where the columns of daily weather stand in a table with these headings. */
export function weatherColumns(header: readonly string[], locale: string): WeatherColumns {
  const words = headingWords(locale);
  const headings = header.map((heading) => readHeading(heading, locale));
  const found = COLUMNS.flatMap((column) => {
    const names = words.flatMap(({ weather }) => weather[column]).map(bareWord);
    const firstOf = (ofName: (heading: Heading, name: string) => boolean) =>
      names.map((name) => headings.findIndex((heading) => ofName(heading, name))).find((each) => each >= 0) ?? -1;
    const whole = firstOf(({ word }, name) => word === name);
    const index = whole >= 0 ? whole : firstOf(({ beforeBrackets }, name) => beforeBrackets === name);
    const unit = headings[index]?.unit;
    const units = column === 'date' || unit === undefined ? undefined : SYSTEM_OF[QUANTITIES[column]][unit];
    const isUnitWrong = column !== 'date' && (whole < 0 || (unit !== undefined && units === undefined));
    return index < 0 ? [] : [[column, { index, units, isUnitWrong }] as const];
  });
  return Object.fromEntries(found);
}

export function hasReading({ rain, min, max }: WeatherColumns): boolean {
  return rain !== undefined || min !== undefined || max !== undefined;
}

/** What a day is written like. */
const EXAMPLE_DAY = '2027-04-05';

function readRow(
  row: readonly string[],
  columns: WeatherColumns,
  units: WeatherUnits,
  { decimal, days = 'year-month-day' }: TableForm,
): DailyWeather | Refusal {
  const cell = (column: Column) => row[columns[column]?.index ?? -1] ?? '';
  const date = readDay(cell('date'), days);
  if (date === undefined) return { code: 'date', value: cell('date'), example: EXAMPLE_DAY };
  for (const reading of ['rain', 'min', 'max'] as const) {
    const system = units[reading];
    const refused = system && refusal(cell(reading), reading, system, decimal);
    if (refused !== undefined) return refused;
  }
  const inSi = (reading: Reading) => {
    const [value, system] = [numberIn(cell(reading), decimal), units[reading]];
    return value === undefined || system === undefined ? undefined : toSi(value, QUANTITIES[reading], system);
  };
  const [min, max] = [inSi('min'), inSi('max')];
  if (min !== undefined && max !== undefined && max < min) {
    return { code: 'high-below-low', value: `${cell('min')}, ${cell('max')}` };
  }
  return { day: dayNumber(date.day), rainMm: inSi('rain'), minTemperatureC: min, maxTemperatureC: max };
}

/** Why a cell is no such reading; undefined where it is one or blank. */
function refusal(text: string, reading: Reading, units: UnitSystem, decimal: DecimalMark): Refusal | undefined {
  const value = numberIn(text, decimal);
  const quantity = QUANTITIES[reading];
  const [low, high] = boundsOf(quantity, units);
  if (value === undefined || (value >= low && value <= high)) return undefined;
  return { code: reading === 'rain' ? 'rain' : 'temperature', value: text, low, high, units };
}
