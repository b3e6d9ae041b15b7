/** Collects figures day by day, takes none that is physically impossible, and counts what it leaves out. */
import type { DayNumber } from '../../engine/calendar.ts';
import type { DailyRecord, RecordReading } from '../../engine/record/daily-record.ts';
import { MOST_IN_A_DAY_MM } from '../../plan/packed-days.ts';
import { boundsOf } from '../../plan/schema/quantity.ts';
import { isStretchEnd } from '../csv/stretch.ts';
import { areMisprints } from './misread.ts';
import type { LeftOut, LeftOutCause, WeatherFileRefusal } from './weather-file.ts';

/** Least and greatest that a day can have, in the engine's units. */
const BOUNDS: Readonly<Record<RecordReading, readonly [number, number]>> = {
  rainMm: [0, MOST_IN_A_DAY_MM.rain],
  etoMm: [0, MOST_IN_A_DAY_MM.eto],
  minTemperatureC: boundsOf('temperature', 'metric'),
  maxTemperatureC: boundsOf('temperature', 'metric'),
  dewPointC: boundsOf('temperature', 'metric'),
  maxHumidityPercent: [0, 100],
  minHumidityPercent: [0, 100],
  meanHumidityPercent: [0, 100],
  windMs: boundsOf('windSpeed', 'metric'),
  radiationMj: [0, 50],
  sunshineHours: [0, 24],
};

/** A file with days further apart than this has one of them wrong: years of weather records. */
const MOST_DAYS = 400 * 366;

interface Column {
  readonly values: Map<DayNumber, number>;
  impossible: number;
}

export interface RecordBuilt {
  readonly record: DailyRecord | undefined;
  readonly leftOut: readonly LeftOut[];
  readonly refused: WeatherFileRefusal | undefined;
}

const leftOutKey = (cause: LeftOutCause, reading: RecordReading): string => [cause, reading].join();

export class RecordBuilder {
  readonly #columns = new Map<RecordReading, Column>();
  readonly #leftOut = new Map<string, { -readonly [Key in keyof LeftOut]: LeftOut[Key] }>();
  #first = Number.POSITIVE_INFINITY;
  #last = Number.NEGATIVE_INFINITY;

  /** The day is in the file, whether anything of it can be taken or not. */
  meet(day: DayNumber): void {
    this.#first = Math.min(this.#first, day);
    this.#last = Math.max(this.#last, day);
  }

  /** The file has such a reading. */
  column(reading: RecordReading): Column {
    const known = this.#columns.get(reading) ?? { values: new Map(), impossible: 0 };
    this.#columns.set(reading, known);
    return known;
  }

  /** `value`: in the engine's unit. `text`: as the file writes it. */
  put(day: DayNumber, reading: RecordReading, value: number, text: string): void {
    this.meet(day);
    const column = this.column(reading);
    const [low, high] = BOUNDS[reading];
    const before = column.values.get(day);
    if (Number.isNaN(value)) this.leaveOut('unread', day, reading, text);
    else if (value < low || value > high) {
      column.impossible += 1;
      this.leaveOut('impossible', day, reading, text);
    } else if (before === undefined) column.values.set(day, value);
    else if (before !== value) this.leaveOut('twice', day, reading, text);
  }

  /** Too little rain to measure. */
  putTrace(day: DayNumber, text: string): void {
    this.put(day, 'rainMm', 0, text);
    this.leaveOut('trace', day, 'rainMm', text);
  }

  leaveOut(cause: LeftOutCause, day: DayNumber, reading: RecordReading, text: string): void {
    this.meet(day);
    const key = leftOutKey(cause, reading);
    const known = this.#leftOut.get(key);
    if (known === undefined) this.#leftOut.set(key, { cause, reading, count: 1, first: { day, text } });
    else known.count += 1;
  }

  /** All that was collected, with pauses; a column without any figure is left away. */
  *finish(): Generator<void, RecordBuilt> {
    const refused = this.#wrongUnits();
    yield* this.#leaveOutSwapped();
    const leftOut = [...this.#leftOut.values()];
    const dayCount = this.#last - this.#first + 1;
    const isEmpty = [...this.#columns.values()].every(({ values }) => values.size === 0);
    if (refused !== undefined) return { record: undefined, leftOut, refused };
    if (isEmpty || dayCount > MOST_DAYS) return { record: undefined, leftOut, refused: { code: 'no-days' } };
    const columns: [RecordReading, Float64Array][] = [];
    for (const [reading, { values }] of this.#columns) {
      if (values.size === 0) continue;
      const days = new Float64Array(dayCount).fill(Number.NaN);
      let put = 0;
      for (const [day, value] of values) {
        if (isStretchEnd(put++)) yield;
        days[day - this.#first] = value;
      }
      columns.push([reading, days]);
    }
    const record = { firstDay: this.#first, dayCount, columns: Object.fromEntries(columns) };
    return { record, leftOut, refused };
  }

  #wrongUnits(): WeatherFileRefusal | undefined {
    for (const [reading, { values, impossible }] of this.#columns) {
      const first = this.#leftOut.get(leftOutKey('impossible', reading))?.first;
      if (first === undefined || areMisprints(impossible, values.size + impossible)) continue;
      return { code: 'wrong-units', reading, day: first.day, value: first.text };
    }
    return undefined;
  }

  *#leaveOutSwapped(): Generator<void> {
    const lows = this.#columns.get('minTemperatureC')?.values;
    const highs = this.#columns.get('maxTemperatureC')?.values;
    let seen = 0;
    for (const [day, low] of lows ?? []) {
      if (isStretchEnd(seen++)) yield;
      const high = highs?.get(day);
      if (high === undefined || high >= low) continue;
      lows?.delete(day);
      highs?.delete(day);
      this.leaveOut('high-below-low', day, 'maxTemperatureC', `${high.toFixed(1)} < ${low.toFixed(1)}`);
    }
  }
}
