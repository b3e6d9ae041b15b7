import { readFileSync } from 'node:fs';
import { type DayNumber, dayNumber } from '../../../src/engine/calendar.ts';

/** Degrees north, of the airport where the weather was measured. */
export const SEATTLE_LATITUDE_DEG = 47.45;

export interface SeattleDay {
  readonly day: DayNumber;
  readonly rainMm: number;
  readonly minTemperatureC: number;
  readonly maxTemperatureC: number;
}

/** Daily weather of Seattle, 2012 to 2015: data/seattle-weather.csv of vega-datasets (BSD-3-Clause; NOAA origin). */
export function seattleWeather(): readonly SeattleDay[] {
  const file = new URL(import.meta.resolve('vega-datasets/data/seattle-weather.csv'));
  const [header, ...lines] = readFileSync(file, 'utf8').trim().split(/\r?\n/);
  if (header !== 'date,precipitation,temp_max,temp_min,wind,weather') throw new Error(`unexpected columns: ${header}`);
  return lines.map((line) => {
    const [date = '', rain, warmest, coldest] = line.split(',');
    return Object.freeze({
      day: dayNumber(date),
      rainMm: Number(rain),
      minTemperatureC: Number(coldest),
      maxTemperatureC: Number(warmest),
    });
  });
}
