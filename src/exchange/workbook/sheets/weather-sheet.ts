/** Rain and reference ET of each week, which a person may change, and where they come from. */
import { weekSum } from '../../../engine/weather.ts';
import { originsOf, type ReadingKind } from '../../csv/reading-origins.ts';
import { type CellContent, mine, type SheetContent, text } from '../sheet-content.ts';
import { plainRow, rowNames, summedRow, valuesOf, weekly, weekSheet } from './week-rows.ts';
import type { Writing } from './writing.ts';

export interface WeatherSheet {
  readonly content: SheetContent;
  /** By week, in the plan's unit. */
  readonly rain: readonly number[];
  readonly eto: readonly number[];
}

/** Rows, from 0. */
export const RAIN_ROW = 1;
export const ETO_ROW = 2;

export function weatherSheet(writing: Writing): WeatherSheet {
  const { season, names, csv, format, amount } = writing;
  const { weather, garden } = season;
  const cellsOf = (mm: Float64Array): CellContent[] =>
    weekly(garden.span.weeks, (week) => mine(amount(weekSum(mm, week), 'depth'), 'depth'));
  const unit = format.unit('depth');
  const sum = (cells: readonly CellContent[]) => valuesOf(cells).reduce((total, value) => total + value, 0);
  const rain = cellsOf(weather.rain.mm);
  const eto = cellsOf(weather.eto.mm);
  const row = (at: number, measure: string, cells: readonly CellContent[]) =>
    summedRow(rowNames({ measure, unit, isMine: true }, writing), { row: at, kind: 'depth', cells, byDay: sum(cells) });
  const fromRow = (measure: string, kind: ReadingKind) =>
    plainRow(
      rowNames({ measure }, writing),
      weekly(garden.span.weeks, (week) => text(originsOf(season, kind, week, format))),
    );
  return {
    content: weekSheet(
      names.weather,
      [
        row(RAIN_ROW, csv.more.rainFell, rain),
        row(ETO_ROW, csv.more.eto, eto),
        fromRow(csv.more.rainFrom, 'rain'),
        fromRow(csv.more.etoFrom, 'eto'),
      ],
      writing,
    ),
    rain: valuesOf(rain),
    eto: valuesOf(eto),
  };
}
