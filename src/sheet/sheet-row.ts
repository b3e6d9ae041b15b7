/** What a row of the sheet stands for, with the part of the season it shows. */

import type { PlantingSeason, Season, ZoneSeason } from '../engine/season/season.ts';
import { STATES } from '../engine/season/season.ts';
import { zoneFigure, zoneState } from '../engine/season/zone-week.ts';
import type { SheetView, Sort } from './sheet-view.ts';

export interface EtoRow {
  readonly kind: 'eto';
}

export interface RainRow {
  readonly kind: 'rain';
}

export interface ZoneRow {
  readonly kind: 'zone';
  readonly zone: ZoneSeason;
  /** Whether its plantings show beneath it; undefined where they cannot. */
  readonly isOpen: boolean | undefined;
}

export interface PlantingRow {
  readonly kind: 'planting';
  readonly zone: ZoneSeason;
  readonly planting: PlantingSeason;
}

export interface TotalRow {
  readonly kind: 'total';
}

export type SheetRow = EtoRow | RainRow | ZoneRow | PlantingRow | TotalRow;

export const ETO_ROW: EtoRow = { kind: 'eto' };
export const RAIN_ROW: RainRow = { kind: 'rain' };
export const TOTAL_ROW: TotalRow = { kind: 'total' };

/** Weather on top, zones with their unfolded plantings, the total at the foot. Names are in the order of `locale`. */
export function seasonRows(season: Season, view: SheetView, locale?: string): readonly SheetRow[] {
  const zones = sorted(
    season.zones.filter((zone) => isShown(zone, view)),
    view.sort,
    locale,
  );
  return [ETO_ROW, RAIN_ROW, ...zones.flatMap((zone) => zoneRows(zone, view.open.has(zone.zone.id))), TOTAL_ROW];
}

/** The same for rows that stand for the same thing in two seasons. */
export function rowKey(row: SheetRow): string {
  if (row.kind === 'zone') return `zone/${row.zone.zone.id}/${row.isOpen}`;
  if (row.kind === 'planting') return `planting/${row.zone.zone.id}/${row.planting.planting.id}`;
  return row.kind;
}

function zoneRows(zone: ZoneSeason, isOpen: boolean): readonly SheetRow[] {
  const plantings: readonly SheetRow[] = isOpen
    ? zone.plantings.map((planting) => ({ kind: 'planting', zone, planting }))
    : [];
  return [{ kind: 'zone', zone, isOpen }, ...plantings];
}

function isShown(zone: ZoneSeason, { find, state, hiddenZones }: SheetView): boolean {
  return !hiddenZones.has(zone.zone.id) && isFound(zone, find) && isInState(zone, state);
}

function isFound({ zone }: ZoneSeason, find: string): boolean {
  const sought = find.trim().toLocaleLowerCase();
  const names = [zone.name, ...zone.plantings.map(({ name }) => name)];
  return sought === '' || names.some((name) => name.toLocaleLowerCase().includes(sought));
}

function isInState(zone: ZoneSeason, state: SheetView['state']): boolean {
  return state === undefined || weeksOf(zone).some((week) => zoneState(zone, week) === state);
}

function sorted(zones: readonly ZoneSeason[], sort: Sort, locale: string | undefined): readonly ZoneSeason[] {
  if (sort === 'plan') return zones;
  if (sort === 'name') return zones.toSorted((left, right) => left.zone.name.localeCompare(right.zone.name, locale));
  const rank = sort === 'volume' ? seasonLitres : weeksInTrouble;
  return zones.toSorted((left, right) => rank(right) - rank(left));
}

function seasonLitres(zone: ZoneSeason): number {
  return weeksOf(zone).reduce((sum, week) => sum + zoneFigure(zone, 'litres', week), 0);
}

/** Weeks dry count before weeks short, however many. */
function weeksInTrouble(zone: ZoneSeason): number {
  const weights = STATES.map((state) => ({ dry: zone.weeks + 1, short: 1 })[state as 'dry' | 'short'] ?? 0);
  return weeksOf(zone).reduce((sum, week) => sum + (weights[zoneFigure(zone, 'state', week)] ?? 0), 0);
}

function weeksOf({ weeks }: ZoneSeason): readonly number[] {
  return Array.from({ length: weeks }, (_, week) => week);
}
