/** A cell's figure as one would type it, and as it goes out into another spreadsheet: a bare number in the reader's locale. */
import { plantingFigure, plantingState } from '../../engine/season/planting-week.ts';
import type { Season } from '../../engine/season/season.ts';
import { zoneFigure, zoneState } from '../../engine/season/zone-week.ts';
import { fromSi, type UnitSystem, unitOf } from '../../engine/units.ts';
import { toSpreadsheetText } from '../../language/format/spreadsheet-text.ts';
import { rowName } from '../cell-name.ts';
import type { SheetCell } from '../sheet-cell.ts';
import type { PlantingRow, SheetRow, ZoneRow } from '../sheet-row.ts';
import type { Measure } from '../sheet-view.ts';
import { gardenWeek } from '../totals/garden-total.ts';
import { weeklyWeather } from '../week-weather.ts';

export interface TextContext {
  readonly season: Season;
  readonly units: UnitSystem;
  readonly measure: Measure;
  readonly locale: string;
}

const PLACES = { volume: 2, minutes: 2, rain: 3 } as const;

type OneMeasure = Exclude<Measure, 'all'>;

/** What stands in the editor when it opens on a cell. */
export function entryText(cell: SheetCell, context: TextContext): string {
  const { row, column } = cell;
  if (column.kind !== 'week') return '';
  if (row.kind !== 'planting') return copyText(cell, context);
  return row.planting.planting.hasShutOff
    ? plainNumber(plantingFigure(row.planting, 'openDays', column.week), context.locale, 0)
    : '';
}

/** As one would type it to enter the same in another cell, whatever that one shows. */
export function typedText(cell: SheetCell, context: TextContext): string {
  const text = entryText(cell, { ...context, measure: 'minutes' });
  if (text === '') return copyText(cell, context);
  if (cell.row.kind === 'zone') return `${text} min`;
  return cell.row.kind === 'planting' ? `${text} days` : `${text} ${unitOf('depth', context.units).name}`;
}

/** What a copied cell becomes. */
export function copyText(cell: SheetCell, context: TextContext): string {
  const value = cellValue(cell, context);
  return typeof value === 'string'
    ? toSpreadsheetText(value)
    : plainNumber(value, context.locale, placesOf(cell.row, context));
}

/**
 * A cell's name, or its figure in the plan's unit. Where all three figures show it is the minutes: the one that is set.
 */
export function cellValue({ row, column }: SheetCell, context: TextContext): string | number {
  if (column.kind === 'name') return rowName(row);
  if (column.kind === 'week') return isOff(row, column.week) ? '' : weekValue(row, column.week, context);
  let total = 0;
  for (let week = 0; week < context.season.totals.weeks; week++) total += weekValue(row, week, context);
  return total;
}

function weekValue(row: SheetRow, week: number, { season, units, measure: shown }: TextContext): number {
  const measure = shown === 'all' ? 'minutes' : shown;
  if (row.kind === 'eto' || row.kind === 'rain') {
    const weather = weeklyWeather(row.kind, season.weather);
    return fromSi(weather.weeks[week]?.mm ?? 0, 'depth', units);
  }
  if (row.kind === 'total') {
    const total = gardenWeek(season, week)[TOTAL_FIELD_OF[measure]];
    return measure === 'minutes' ? total : fromSi(total, 'volume', units);
  }
  return inUnit(figureOf(row, week, measure), measure, units);
}

function isOff(row: SheetRow, week: number): boolean {
  if (row.kind === 'planting') return plantingState(row.planting, week) === 'off';
  return row.kind === 'zone' && zoneState(row.zone, week) === 'off';
}

function placesOf({ kind }: SheetRow, { measure }: TextContext): number {
  if (kind === 'eto' || kind === 'rain') return PLACES.rain;
  if (kind === 'total' && measure === 'rain') return PLACES.volume;
  return PLACES[measure === 'all' ? 'minutes' : measure];
}

const TOTAL_FIELD_OF = { volume: 'litres', minutes: 'minutes', rain: 'savedLitres' } as const;
const ZONE_FIELD_OF = { volume: 'litres', minutes: 'minutes', rain: 'rainCreditMm' } as const;

function figureOf(row: ZoneRow | PlantingRow, week: number, measure: OneMeasure): number {
  if (row.kind === 'zone') {
    return zoneFigure(row.zone, ZONE_FIELD_OF[measure], week);
  }
  const { planting } = row;
  if (measure === 'volume') return plantingFigure(planting, 'litres', week);
  if (measure === 'rain')
    return plantingFigure(planting, 'rainSoakedMm', week) - plantingFigure(planting, 'rainDrainedMm', week);
  return zoneFigure(row.zone, 'minutesPerDay', week) * plantingFigure(planting, 'openDays', week);
}

function inUnit(si: number, measure: OneMeasure, units: UnitSystem): number {
  if (measure === 'minutes') return si;
  return fromSi(si, measure === 'volume' ? 'volume' : 'depth', units);
}

const formats = new Map<string, Intl.NumberFormat>();

function plainNumber(value: number, locale: string, places: number): string {
  const key = `${locale} ${places}`;
  let format = formats.get(key);
  if (format === undefined) {
    format = new Intl.NumberFormat(locale, {
      useGrouping: false,
      maximumFractionDigits: places,
      signDisplay: 'negative',
    });
    formats.set(key, format);
  }
  return format.format(value);
}
