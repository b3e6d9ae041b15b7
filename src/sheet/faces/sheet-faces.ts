/** The faces of one sheet, each made once: a block of the season that stays the same keeps its faces. */
import type { Season } from '../../engine/season/season.ts';
import type { SheetColumn } from '../sheet-column.ts';
import type { SheetRow } from '../sheet-row.ts';
import { gardenSeason, gardenWeek } from '../totals/garden-total.ts';
import { weeklyWeather } from '../week-weather.ts';
import { type CellFace, fitted } from './cell-face.ts';
import { nameFace } from './name-face.ts';
import { plantingFace, plantingSeasonFace } from './planting-face.ts';
import type { Reading } from './reading.ts';
import { totalFace } from './total-face.ts';
import { weatherFace, weatherSeasonFace } from './weather-face.ts';
import { zoneFace, zoneSeasonFace } from './zone-face.ts';

type Faces = (CellFace | undefined)[];

export class SheetFaces {
  readonly #reading: Reading;
  /** By the object whose change makes a row's faces stale; a week's place is its number, the season's the last. */
  readonly #made = new WeakMap<object, Faces>();

  constructor(reading: Reading) {
    this.#reading = reading;
  }

  face(season: Season, row: SheetRow, column: SheetColumn): CellFace {
    const weeks = season.garden.span.weeks;
    const place = column.kind === 'week' ? column.week : column.kind === 'season' ? weeks : weeks + 1;
    const block = column.kind === 'name' ? row : blockOf(season, row);
    let faces = this.#made.get(block);
    if (faces === undefined) {
      faces = [];
      this.#made.set(block, faces);
    }
    let face = faces[place];
    if (face === undefined) {
      face = fitted(this.#make(season, row, column));
      faces[place] = face;
    }
    return face;
  }

  #make(season: Season, row: SheetRow, column: SheetColumn): CellFace {
    if (column.kind === 'name') return nameFace(row, this.#reading);
    const week = column.kind === 'week' ? column.week : undefined;
    const reading = this.#reading;
    switch (row.kind) {
      case 'eto':
      case 'rain': {
        const weather = weeklyWeather(row.kind, season.weather);
        return week === undefined
          ? weatherSeasonFace(row.kind, weather, reading)
          : weatherFace(row.kind, weather, week, reading);
      }
      case 'zone':
        return week === undefined ? zoneSeasonFace(row.zone, reading) : zoneFace(row.zone, week, reading);
      case 'planting':
        return week === undefined
          ? plantingSeasonFace(row.zone, row.planting, reading)
          : plantingFace(row.zone, row.planting, week, reading);
      case 'total':
        return week === undefined
          ? totalFace(gardenSeason(season), reading)
          : totalFace(gardenWeek(season, week), reading);
    }
  }
}

function blockOf(season: Season, row: SheetRow): object {
  switch (row.kind) {
    case 'eto':
    case 'rain':
      return season.weather[row.kind];
    case 'zone':
      return row.zone;
    case 'planting':
      return row.planting;
    case 'total':
      return season;
  }
}
