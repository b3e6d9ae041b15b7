/** All that a cell of the season shows, in words. Made when it is wanted: held for every cell it would weigh more than the figures. */
import type { Season } from '../../engine/season/season.ts';
import { nameFace } from '../faces/name-face.ts';
import type { Reading } from '../faces/reading.ts';
import type { SheetCell } from '../sheet-cell.ts';
import { gardenSeason, gardenWeek } from '../totals/garden-total.ts';
import { weeklyWeather } from '../week-weather.ts';
import { plantingSeasonSentence, plantingSentence } from './planting-sentence.ts';
import { totalSentence } from './total-sentence.ts';
import { weatherSeasonSentence, weatherSentence } from './weather-sentence.ts';
import { zoneSeasonSentence, zoneSentence } from './zone-sentence.ts';

export function cellSentence(season: Season, { row, column }: SheetCell, reading: Reading): string {
  if (column.kind === 'name') {
    const { name, detail } = nameFace(row, reading);
    return `${name}: ${detail}.`;
  }
  const week = column.kind === 'week' ? column.week : undefined;
  switch (row.kind) {
    case 'eto':
    case 'rain': {
      const weather = weeklyWeather(row.kind, season.weather);
      return week === undefined
        ? weatherSeasonSentence(row.kind, weather, reading)
        : weatherSentence(row.kind, weather, week, reading);
    }
    case 'zone':
      return week === undefined ? zoneSeasonSentence(row.zone, reading) : zoneSentence(row.zone, week, reading);
    case 'planting':
      return week === undefined
        ? plantingSeasonSentence(row.zone, row.planting, reading)
        : plantingSentence(row.zone, row.planting, week, reading);
    case 'total':
      return week === undefined
        ? totalSentence(gardenSeason(season), 'whole season', reading)
        : totalSentence(gardenWeek(season, week), reading.calendar.words(week), reading);
  }
}
