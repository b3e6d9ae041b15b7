/** A log of a gauge or a station: a table with a heading for the day and for rain, low or high. */
import type { RecordReading } from '../../../engine/record/daily-record.ts';
import type { UnitSystem } from '../../../engine/units.ts';
import type { RowFault } from '../../csv/imported.ts';
import { numberIn, type Table, type TableRow, tableSteps } from '../../csv/read-table.ts';
import { isStretchEnd } from '../../csv/stretch.ts';
import { areMisprints } from '../misread.ts';
import {
  dailyWeatherSteps,
  type FileDay,
  hasReading,
  type WeatherColumns,
  type WeatherUnits,
  weatherColumns,
} from '../read-daily-weather.ts';
import { RecordBuilder } from '../record-builder.ts';
import {
  type FileUnits,
  unreadFile,
  type WeatherFile,
  type WeatherFileChoice,
  type WeatherFileLayout,
  type WeatherFileRefusal,
  type WeatherQuestion,
} from '../weather-file.ts';
import { unitsBySize } from './units-by-size.ts';

export const plainLog: WeatherFileLayout = {
  kind: 'log',
  isLike: (start) => start.includes('\n'),
  read,
};

/** A figure that says nothing but that there was a trace of rain. */
const TRACE = /^(t|tr|trace)$/i;

function* read(text: string, choice: WeatherFileChoice, locale: string): Generator<void, WeatherFile> {
  const file = unreadFile('log');
  const table = yield* tableSteps(text);
  const columns = weatherColumns(table.header, locale);
  if (columns.date === undefined || !hasReading(columns)) return { ...file, refused: { code: 'no-days' } };
  const unnamed = yield* unnamedUnits(table, columns, choice);
  const { rows, traces } = yield* withoutTraces(table, columns);
  const read = yield* dailyWeatherSteps({ ...table, rows }, unnamed?.system ?? 'metric', locale, choice);
  yield;
  if (read.faults.some(({ code }) => code === 'hourly')) return { ...file, refused: { code: 'hourly' } };
  const asked: readonly WeatherQuestion[] = [...(unnamed === undefined ? (['units'] as const) : []), ...read.asked];
  if (asked.length > 0) return { ...file, asked };
  const finished = yield* (yield* builderOf(read.days, traces)).finish();
  const wrong = yield* wrongUnits(read.faults, table.rows.length);
  const refused = wrong === undefined ? {} : { record: undefined, refused: wrong };
  return { ...file, faults: read.faults, units: unitsOf(read.units, columns, unnamed), ...finished, ...refused };
}

/** The units of columns whose heading names none; undefined where they have to be asked for. */
function* unnamedUnits(
  table: Table,
  columns: WeatherColumns,
  choice: WeatherFileChoice,
): Generator<void, FileUnits | undefined> {
  const named = [columns.rain, columns.min, columns.max].filter((column) => column !== undefined);
  if (named.every(({ units }) => units !== undefined)) return { system: 'metric', by: 'file' };
  if (choice.units !== undefined) return { system: choice.units, by: 'choice' };
  const system = yield* unitsBySize(figuresIn(table, columns));
  return system && { system, by: 'size' };
}

/** Rows with 0 in place of a trace of rain, and the lines where one stood. */
function* withoutTraces(
  { rows }: Table,
  { rain }: WeatherColumns,
): Generator<void, { readonly rows: readonly TableRow[]; readonly traces: readonly number[] }> {
  const at = rain?.index ?? -1;
  const traces: number[] = [];
  const bare: TableRow[] = [];
  for (const [index, row] of rows.entries()) {
    if (isStretchEnd(index)) yield;
    const isTrace = TRACE.test(row.cells[at] ?? '');
    if (isTrace) traces.push(row.line);
    bare.push(isTrace ? { ...row, cells: row.cells.with(at, '0') } : row);
  }
  return { rows: bare, traces };
}

function* builderOf(days: readonly FileDay[], traces: readonly number[]): Generator<void, RecordBuilder> {
  const builder = new RecordBuilder();
  for (const [index, { day, rainMm, minTemperatureC, maxTemperatureC }] of days.entries()) {
    if (isStretchEnd(index)) yield;
    builder.meet(day);
    for (const [reading, value] of Object.entries({ rainMm, minTemperatureC, maxTemperatureC })) {
      if (value !== undefined) builder.put(day, reading as RecordReading, value, '');
    }
  }
  const lines = new Set(traces);
  for (const [index, { day, line }] of days.entries()) {
    if (isStretchEnd(index)) yield;
    if (lines.has(line)) builder.leaveOut('trace', day, 'rainMm', 'T');
  }
  return builder;
}

function unitsOf(
  read: WeatherUnits,
  { rain, min, max }: WeatherColumns,
  unnamed: FileUnits | undefined,
): WeatherFile['units'] {
  const of = (system: UnitSystem | undefined, column: WeatherColumns['rain']): FileUnits | undefined =>
    system && { system, by: column?.units === undefined ? (unnamed?.by ?? 'choice') : 'file' };
  return { depth: of(read.rain, rain), temperature: of(read.max ?? read.min, max ?? min) };
}

/** Where many rows have a number that no day has, its unit is another. */
function* wrongUnits(faults: readonly RowFault[], rows: number): Generator<void, WeatherFileRefusal | undefined> {
  let first: RowFault | undefined;
  let beyond = 0;
  for (const [index, fault] of faults.entries()) {
    if (isStretchEnd(index)) yield;
    if (fault.code !== 'rain' && fault.code !== 'temperature') continue;
    if (Number.isNaN(numberIn(fault.value))) continue;
    first ??= fault;
    beyond++;
  }
  if (first === undefined || areMisprints(beyond, rows)) return undefined;
  const reading = first.code === 'rain' ? 'rainMm' : 'maxTemperatureC';
  return { code: 'wrong-units', reading, day: undefined, value: first.value };
}

function* figuresIn({ rows }: Table, { rain, min, max }: WeatherColumns) {
  for (const { cells } of rows) {
    const cell = (column: WeatherColumns['rain']) => cells[column?.index ?? -1] ?? '';
    yield { element: 'PRCP', text: cell(rain) };
    yield { element: 'TMIN', text: cell(min) };
    yield { element: 'TMAX', text: cell(max) };
  }
}
