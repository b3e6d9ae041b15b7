/** Names a row of the sheet from outside. */
import type { Season } from '../engine/season/season.ts';
import { ETO_ROW, RAIN_ROW, type SheetRow, TOTAL_ROW } from './sheet-row.ts';

export type RowPlace = 'eto' | 'rain' | 'total' | { readonly zone: string; readonly planting?: string | undefined };

/** The row that a place names in this season; undefined where the season has no such zone or planting. */
export function rowAt(season: Season, place: RowPlace): SheetRow | undefined {
  if (place === 'eto') return ETO_ROW;
  if (place === 'rain') return RAIN_ROW;
  if (place === 'total') return TOTAL_ROW;
  const zone = season.zones.find((candidate) => candidate.zone.id === place.zone);
  if (zone === undefined) return undefined;
  if (place.planting === undefined) return { kind: 'zone', zone, isOpen: undefined };
  const planting = zone.plantings.find((candidate) => candidate.planting.id === place.planting);
  return planting === undefined ? undefined : { kind: 'planting', zone, planting };
}

export function placeOfRow(row: SheetRow): RowPlace {
  if (row.kind === 'zone') return { zone: row.zone.zone.id };
  if (row.kind === 'planting') return { zone: row.zone.zone.id, planting: row.planting.planting.id };
  return row.kind;
}
