/** A cell's figure as one would type it, and as it goes out into another spreadsheet: a bare number in the reader's locale. */
import { countDays } from '../../engine/season/days-mask.ts';
import { plantingFigure, plantingState } from '../../engine/season/planting-week.ts';
import type { Season } from '../../engine/season/season.ts';
import { zoneState } from '../../engine/season/zone-week.ts';
import { fromSi, type Quantity, type UnitSystem, unitOf } from '../../engine/units.ts';
import { WEEK_MEASURES, type WeekMeasure } from '../../engine/week-measures.ts';
import { formatPlainNumber } from '../../language/format/number.ts';
import { toSpreadsheetText } from '../../language/format/spreadsheet-text.ts';
import type { CellContext } from '../cells/cell-context.ts';
import { rowName } from '../cells/cell-name.ts';
import type { SheetCell } from '../sheet-cell.ts';
import type { PlantingRow, SheetRow, ZoneRow } from '../sheet-row.ts';
import { type GardenTotal, gardenWeek } from '../totals.ts';
import { weeklyWeather } from '../week-weather.ts';

export interface TextContext extends CellContext {
  readonly season: Season;
}

const DECIMALS: Readonly<Record<WeekMeasure, number>> = { volume: 2, minutes: 2, rain: 3 };

/** What stands in the editor when it opens on a cell. */
export function entryText(cell: SheetCell, context: TextContext): string {
  const { row, column } = cell;
  if (column.kind !== 'week') return '';
  if (row.kind !== 'planting') return copyText(cell, context);
  return row.planting.planting.hasShutOff
    ? formatPlainNumber(openDaysOf(row, column.week), context.format.reader.locale, 0)
    : '';
}

/** As set by hand, else as many as are named, whether the zone runs on them or not. */
function openDaysOf({ zone, planting }: PlantingRow, week: number): number {
  const byHand = zone.zone.choices.get(week)?.openDays?.get(planting.planting.id);
  return byHand ?? countDays(plantingFigure(planting, 'openMask', week));
}

/** As one would type it to enter the same in another cell, whatever that one shows. */
export function typedText(cell: SheetCell, context: TextContext): string {
  const text = entryText(cell, { ...context, measure: 'minutes' });
  if (text === '') return copyText(cell, context);
  return `${text} ${typedUnit(cell.row, context)}`;
}

/** As it is read in any language. */
function typedUnit({ kind }: SheetRow, { format }: TextContext): string {
  if (kind === 'zone') return 'min';
  return kind === 'planting' ? 'day' : unitOf('depth', format.reader.units).name;
}

/** What a copied cell becomes. */
export function copyText(cell: SheetCell, context: TextContext): string {
  const value = cellValue(cell, context);
  return typeof value === 'string'
    ? toSpreadsheetText(value)
    : formatPlainNumber(value, context.format.reader.locale, placesOf(cell.row, context));
}

/**
 * A cell's name, or its figure in the plan's unit. Where all three figures show it is the minutes: the one that is set.
 */
export function cellValue({ row, column }: SheetCell, context: TextContext): string | number {
  if (column.kind === 'name') return rowName(row, context.words);
  if (column.kind === 'week') return isOff(row, column.week) ? '' : weekValue(row, column.week, context);
  let total = 0;
  for (let week = 0; week < context.season.totals.weeks; week++) total += weekValue(row, week, context);
  return total;
}

function weekValue(row: SheetRow, week: number, { season, format, measure: shown }: TextContext): number {
  const { units } = format.reader;
  const measure = shown === 'all' ? 'minutes' : shown;
  if (row.kind === 'eto' || row.kind === 'rain') {
    const weather = weeklyWeather(row.kind, season.weather);
    return fromSi(weather.weeks[week]?.mm ?? 0, 'depth', units);
  }
  if (row.kind === 'total') {
    const { field, quantity } = GARDEN_TOTALS[measure];
    return inUnit(gardenWeek(season, week)[field], quantity, units);
  }
  return inUnit(figureOf(row, week, measure), WEEK_MEASURES[measure].quantity, units);
}

function isOff(row: SheetRow, week: number): boolean {
  if (row.kind === 'planting') return plantingState(row.planting, week) === 'off';
  return row.kind === 'zone' && zoneState(row.zone, week) === 'off';
}

function placesOf({ kind }: SheetRow, { measure }: TextContext): number {
  if (kind === 'eto' || kind === 'rain') return DECIMALS.rain;
  if (kind === 'total' && measure === 'rain') return DECIMALS.volume;
  return DECIMALS[measure === 'all' ? 'minutes' : measure];
}

/** Of the whole garden; rain as the water that it saved. */
const GARDEN_TOTALS: Readonly<
  Record<WeekMeasure, { readonly field: keyof GardenTotal; readonly quantity?: Quantity }>
> = {
  volume: { field: 'litres', quantity: 'volume' },
  minutes: { field: 'minutes' },
  rain: { field: 'savedLitres', quantity: 'volume' },
};

function figureOf(row: ZoneRow | PlantingRow, week: number, measure: WeekMeasure): number {
  const { ofZone, ofPlanting } = WEEK_MEASURES[measure];
  return row.kind === 'zone' ? ofZone(row.zone, week) : ofPlanting(row.planting, week, row.zone);
}

function inUnit(si: number, quantity: Quantity | undefined, units: UnitSystem): number {
  return quantity === undefined ? si : fromSi(si, quantity, units);
}
