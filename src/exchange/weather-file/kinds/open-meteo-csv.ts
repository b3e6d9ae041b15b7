/**
 * A CSV of the Open-Meteo layout: a table of places, an empty line, then the days, each heading with its unit in brackets. With several
 * places, `location_id` stands first in both.
 */

import { type RowStep, rowSteps } from '../../csv/row-steps.ts';
import { choosePlace } from '../file-places.ts';
import {
  type FilePlace,
  unreadFile,
  type WeatherFile,
  type WeatherFileChoice,
  type WeatherFileLayout,
} from '../weather-file.ts';
import { openMeteoDays, type Series } from './open-meteo-days.ts';

/** The table of places may have been cut off. */
export const openMeteoCsv: WeatherFileLayout = {
  kind: 'open-meteo-csv',
  isLike: (start) =>
    /^"?(location_id"?,"?)?latitude"?,"?longitude"?,"?elevation/.test(start) ||
    /^"?(location_id"?,"?)?time"?,.*(_sum|_2m_max|_2m_min|evapotranspiration) \(/.test(start),
  read,
};

function* read(text: string, choice: WeatherFileChoice): Generator<void, WeatherFile> {
  const file = unreadFile('open-meteo-csv');
  const rows: RowStep[] = [];
  const headings: number[] = [];
  for (const step of rowSteps(text)) {
    for (const row of step) if (rows.push(row) > 0 && row.cells.includes('time')) headings.push(rows.length - 1);
    yield;
  }
  // A second table is of hours.
  const [at = -1, hours] = headings;
  const header = rows[at]?.cells ?? [];
  const days = rows.slice(at + 1, hours);
  const idColumn = header.indexOf('location_id');
  const chosen = choosePlace(placesIn(at < 0 ? [] : rows.slice(0, at)), choice);
  if (at < 0) return { ...file, ...chosen, refused: { code: 'layout', what: 'time' } };
  if (chosen.asked.length > 0) return { ...file, ...chosen };
  const own = idColumn < 0 ? days : days.filter(({ cells }) => cells[idColumn] === chosen.place?.id);
  const timeColumn = header.indexOf('time');
  const series = header.map((heading, column): Series => {
    const [, name = heading, unit = ''] = /^(\S+) \((.*)\)$/.exec(heading) ?? [];
    return { name, unit, at: (row) => own[row]?.cells[column] };
  });
  const written = own.map(({ cells }) => cells[timeColumn]);
  return { ...file, ...chosen, ...(yield* openMeteoDays(written, series)) };
}

function placesIn(rows: readonly RowStep[]): readonly FilePlace[] {
  const [header, ...places] = rows.map(({ cells }) => cells);
  return places.map((cells, index) => {
    const cell = (name: string) => cells[header?.indexOf(name) ?? -1];
    const number = (name: string) => {
      const value = Number(cell(name) || Number.NaN);
      return Number.isFinite(value) ? value : undefined;
    };
    return {
      id: cell('location_id') ?? String(index),
      name: undefined,
      latitudeDeg: number('latitude'),
      longitudeDeg: number('longitude'),
      elevationM: number('elevation'),
      timeZone: cell('timezone') || undefined,
    };
  });
}
