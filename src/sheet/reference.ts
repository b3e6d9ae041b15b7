/** Names rows and cells of the sheet from outside: by ids, which outlast a change of the season. */
import type { Season } from '../engine/season/season.ts';
import type { SheetCell } from './sheet-cell.ts';
import { ETO_ROW, RAIN_ROW, type SheetRow, TOTAL_ROW } from './sheet-row.ts';
import type { WeatherKind } from './week-weather.ts';

/** A row, as a host's grid names it. */
export type RowReference = 'eto' | 'rain' | 'total' | { readonly zone: string; readonly planting?: string | undefined };

/** A part of the season that every view can point at. All left out = the whole garden. */
export interface CellReference {
  readonly zone?: string | undefined;
  readonly planting?: string | undefined;
  /** Of the whole garden, its weather alone. */
  readonly weather?: WeatherKind | undefined;
  /** Week of the season, from 0. */
  readonly week?: number | undefined;
}

/** The row that is referred to; undefined where the season has no such zone or planting. */
export function findRow(season: Season, reference: RowReference): SheetRow | undefined {
  if (reference === 'eto') return ETO_ROW;
  if (reference === 'rain') return RAIN_ROW;
  if (reference === 'total') return TOTAL_ROW;
  const zone = season.zones.find((candidate) => candidate.zone.id === reference.zone);
  if (zone === undefined) return undefined;
  if (reference.planting === undefined) return { kind: 'zone', zone, isOpen: undefined };
  const planting = zone.plantings.find((candidate) => candidate.planting.id === reference.planting);
  return planting === undefined ? undefined : { kind: 'planting', zone, planting };
}

export function rowReference(row: SheetRow): RowReference {
  if (row.kind === 'zone') return { zone: row.zone.zone.id };
  if (row.kind === 'planting') return { zone: row.zone.zone.id, planting: row.planting.planting.id };
  return row.kind;
}

export function cellReference({ row, column }: SheetCell): CellReference {
  const week = column.kind === 'week' ? column.week : undefined;
  if (row.kind === 'zone') return { zone: row.zone.zone.id, week };
  if (row.kind === 'eto' || row.kind === 'rain') return { weather: row.kind, week };
  if (row.kind !== 'planting') return { week };
  return { zone: row.zone.zone.id, planting: row.planting.planting.id, week };
}
