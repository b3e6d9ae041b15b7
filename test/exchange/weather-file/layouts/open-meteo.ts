/** Files and answers in the Open-Meteo layout, of made days. */
import { isoDate } from '../../../../src/engine/calendar.ts';
import { FLAGGED, isInGap, MADE_DAYS } from './made-days.ts';

/** The layout has no flags and no traces: the rejected high is null; a gap has its days, without figures. */
export function openMeteoAnswer({ us = false } = {}): Record<string, unknown> {
  const degrees = (celsius: number) => (us ? Number((celsius * 1.8 + 32).toFixed(1)) : celsius);
  const known = <Value>(index: number, value: Value) => (isInGap(index) ? null : value);
  return {
    latitude: 47.45,
    longitude: -122.3,
    elevation: 130,
    utc_offset_seconds: -25_200,
    timezone: 'America/Los_Angeles',
    daily_units: {
      time: 'iso8601',
      temperature_2m_max: us ? '°F' : '°C',
      temperature_2m_min: us ? '°F' : '°C',
      precipitation_sum: us ? 'inch' : 'mm',
      et0_fao_evapotranspiration: us ? 'inch' : 'mm',
      wind_speed_10m_max: 'km/h',
    },
    daily: {
      time: MADE_DAYS.map(({ day }) => isoDate(day)),
      temperature_2m_max: MADE_DAYS.map(({ maxTemperatureC }, index) =>
        index === FLAGGED ? null : known(index, degrees(maxTemperatureC)),
      ),
      temperature_2m_min: MADE_DAYS.map(({ minTemperatureC }, index) => known(index, degrees(minTemperatureC))),
      precipitation_sum: MADE_DAYS.map(({ rainMm }, index) =>
        known(index, us ? Number((rainMm / 25.4).toFixed(3)) : rainMm),
      ),
      et0_fao_evapotranspiration: MADE_DAYS.map((_, index) => known(index, us ? 0.2 : 5.08)),
      wind_speed_10m_max: MADE_DAYS.map(() => 31),
    },
  };
}

/** The same as the CSV that the layout has. */
export function openMeteoCsvText(): string {
  const { latitude, longitude, elevation, timezone, daily, daily_units } = openMeteoAnswer() as {
    readonly [field: string]: string | number;
  } & {
    readonly daily: Readonly<Record<string, readonly (string | number | null)[]>>;
    readonly daily_units: Readonly<Record<string, string>>;
  };
  const names = Object.keys(daily);
  const headings = names.map((name) => (name === 'time' ? name : `${name} (${daily_units[name]})`));
  const rows = MADE_DAYS.map((_, row) => names.map((name) => daily[name]?.[row] ?? (row % 2 ? 'NaN' : '')).join(','));
  return [
    'latitude,longitude,elevation,utc_offset_seconds,timezone,timezone_abbreviation',
    `${latitude},${longitude},${elevation},-25200,${timezone},GMT-7`,
    '',
    headings.join(','),
    ...rows,
    '',
  ].join('\n');
}
