/**
 * An answer of the Open-Meteo layout: `latitude`, `longitude`, `elevation`, `timezone`, `daily_units`, `daily` with `time` and one array a
 * variable; a list of such for several places; `error` and `reason` where something is wrong.
 */
import { choosePlace } from '../file-places.ts';
import {
  type FilePlace,
  unreadFile,
  type WeatherFile,
  type WeatherFileChoice,
  type WeatherFileLayout,
} from '../weather-file.ts';
import { openMeteoDays, type Series } from './open-meteo-days.ts';

export const openMeteoJson: WeatherFileLayout = {
  kind: 'open-meteo-json',
  isLike: (start) => /^\s*[[{]/.test(start),
  read,
};

type Fields = Readonly<Record<string, unknown>>;

function* read(text: string, choice: WeatherFileChoice): Generator<void, WeatherFile> {
  let answer: unknown;
  try {
    answer = JSON.parse(text);
  } catch {
    return { ...unreadFile('open-meteo-json'), refused: { code: 'layout', what: 'JSON' } };
  }
  yield;
  return yield* readAnswer(answer, choice);
}

/** The same from an answer that is parsed already. */
export function* readAnswer(answer: unknown, choice: WeatherFileChoice): Generator<void, WeatherFile> {
  const file = unreadFile('open-meteo-json');
  const all = (Array.isArray(answer) ? answer : [answer]).map(fieldsOf);
  const wrong = all.find(({ error }) => error === true);
  if (wrong !== undefined)
    return { ...file, refused: { code: 'service', reason: String(wrong['reason'] ?? '').slice(0, 200) } };
  const places = all.map(placeOf);
  const chosen = choosePlace(places, choice);
  if (chosen.asked.length > 0) return { ...file, ...chosen };
  const { daily, daily_units: units, hourly } = all[places.indexOf(chosen.place as FilePlace)] ?? {};
  const { time, ...columns } = fieldsOf(daily);
  if (!Array.isArray(time)) {
    const isHourly = Array.isArray(fieldsOf(hourly)['time']);
    return { ...file, ...chosen, refused: isHourly ? { code: 'hourly' } : { code: 'layout', what: 'daily.time' } };
  }
  const unlike = Object.entries(columns).find(([, values]) => !Array.isArray(values) || values.length !== time.length);
  if (unlike !== undefined) return { ...file, ...chosen, refused: { code: 'layout', what: `daily.${unlike[0]}` } };
  const series = Object.entries(columns).map(([name, values]): Series => {
    const unit = fieldsOf(units)[name];
    return { name, unit: typeof unit === 'string' ? unit : '', at: (row) => (values as readonly unknown[])[row] };
  });
  return { ...file, ...chosen, ...(yield* openMeteoDays(time, series)) };
}

const fieldsOf = (value: unknown): Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Fields) : {};

function placeOf({ latitude, longitude, elevation, timezone, location_id: id }: Fields, index: number): FilePlace {
  return {
    id: String(id ?? index),
    name: undefined,
    latitudeDeg: numberIn(latitude),
    longitudeDeg: numberIn(longitude),
    elevationM: numberIn(elevation),
    timeZone: typeof timezone === 'string' && timezone !== 'GMT' ? timezone : undefined,
  };
}

const numberIn = (value: unknown): number | undefined =>
  typeof value === 'number' && Number.isFinite(value) ? value : undefined;
