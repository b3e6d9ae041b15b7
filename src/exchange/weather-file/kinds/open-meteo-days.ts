/** Days of the Open-Meteo layout, from a CSV or a JSON answer alike. */
import { type DayNumber, dayNumber, isIsoDate } from '../../../engine/calendar.ts';
import { isStretchEnd } from '../../csv/stretch.ts';
import { RecordBuilder } from '../record-builder.ts';
import type { FileUnits, WeatherFile, WeatherFileRefusal } from '../weather-file.ts';
import { OPEN_METEO_VARIABLES, type OpenMeteoColumn, systemOfUnit } from './open-meteo-columns.ts';

/** One series of the answer: its name, its unit, and what stands there for each day. */
export interface Series {
  readonly name: string;
  readonly unit: string;
  readonly at: (row: number) => unknown;
}

/** Rows between two pauses. */
const ROWS_AT_A_STRETCH = 400;

export type DaysRead = Pick<WeatherFile, 'record' | 'leftOut' | 'refused' | 'units'>;

type Known = Series & OpenMeteoColumn;

/** `days`: the texts of `time`. A unit that a variable cannot have refuses the file. */
export function* openMeteoDays(days: readonly unknown[], series: readonly Series[]): Generator<void, DaysRead> {
  const known = series.flatMap((each): readonly Known[] => {
    const variable = OPEN_METEO_VARIABLES[each.name];
    return variable === undefined ? [] : [{ ...each, variable }];
  });
  const refused = yield* refusalOf(days, known);
  if (refused !== undefined) {
    return { record: undefined, leftOut: [], units: { depth: undefined, temperature: undefined }, refused };
  }
  const builder = new RecordBuilder();
  for (const [row, written] of days.entries()) {
    if (row % ROWS_AT_A_STRETCH === 0) yield;
    const day = dayNumber(written as string);
    builder.meet(day);
    for (const each of known) putValue(each, row, day, builder);
  }
  return { ...(yield* builder.finish()), units: unitsOf(known) };
}

function* refusalOf(
  days: readonly unknown[],
  known: readonly Known[],
): Generator<void, WeatherFileRefusal | undefined> {
  let noDay: WeatherFileRefusal | undefined;
  for (const [row, day] of days.entries()) {
    if (isStretchEnd(row)) yield;
    if (typeof day === 'string' && /^\d{4}-\d{2}-\d{2}T/.test(day)) return { code: 'hourly' };
    if (typeof day !== 'string' || !isIsoDate(day)) noDay ??= { code: 'layout', what: String(day) };
  }
  const noUnit = known.find(({ variable, unit }) => variable.toSi(0, unit) === undefined);
  return noUnit === undefined ? noDay : { code: 'layout', what: `${noUnit.name} (${noUnit.unit})` };
}

function putValue({ variable, unit, at }: Known, row: number, day: DayNumber, builder: RecordBuilder): void {
  const value = at(row);
  if (isMissing(value)) return;
  const number = typeof value === 'number' ? value : numberOf(value);
  builder.put(day, variable.reading, variable.toSi(number, unit) ?? Number.NaN, String(value));
}

const isMissing = (value: unknown): boolean =>
  value === null || value === undefined || value === '' || (typeof value === 'string' && /^(nan|null)$/i.test(value));

const numberOf = (value: unknown): number =>
  typeof value === 'string' && /^-?(\d+\.?\d*|\.\d+)(e-?\d+)?$/i.test(value) ? Number(value) : Number.NaN;

function unitsOf(columns: readonly Known[]): WeatherFile['units'] {
  const of = (...names: readonly string[]): FileUnits | undefined => {
    const column = columns.find(({ name }) => names.includes(name));
    return column && { system: systemOfUnit(column.unit), by: 'file' };
  };
  return {
    depth: of('precipitation_sum', 'et0_fao_evapotranspiration'),
    temperature: of('temperature_2m_max', 'temperature_2m_min'),
  };
}
