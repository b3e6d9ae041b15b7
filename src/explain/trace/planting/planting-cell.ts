/** One planting's week with all that its steps read: figures, daily arrays, and its days as the season ran them. */
import type { DayNumber } from '../../../engine/calendar.ts';
import type { GardenPlanting, GardenZone } from '../../../engine/garden.ts';
import { type PlantingDays, plantingDays } from '../../../engine/season/planting-days.ts';
import { type PlantingVolume, plantingFigure } from '../../../engine/season/planting-week.ts';
import type { PLANTING_FIELDS, PlantingSeason, Season, ZoneSeason } from '../../../engine/season/season.ts';
import { ZONE_FIELDS } from '../../../engine/season/season.ts';
import { rootZoneDay } from '../../../engine/soil/root-zone-day.ts';
import type { DaySpan } from '../day-span.ts';

export type PlantingField = keyof typeof PLANTING_FIELDS | PlantingVolume;

export interface PlantingCell {
  readonly season: Season;
  readonly zoneSeason: ZoneSeason;
  readonly zone: GardenZone;
  readonly planting: GardenPlanting;
  readonly own: PlantingSeason;
  readonly week: number;
  readonly days: PlantingDays;
  /** Its days in the ground in this week; empty where there is none. */
  readonly ground: DaySpan;
  /** Its days in the ground, as they were run. */
  readonly daily: readonly CellDay[];
  at(field: PlantingField): number;
  /** The same of the week before. */
  before(field: PlantingField): number;
  /** The calendar's day of a day of the season. */
  dayOf(index: number): DayNumber;
}

/** A planting's day by the root-zone balance, mm. */
export interface CellDay {
  /** From the season's first day. */
  readonly index: number;
  readonly day: DayNumber;
  /** Minutes that it was watered: those of its zone on a day on which its line is open. */
  readonly minutes: number;
  readonly etcMm: number;
  readonly rawMm: number;
  readonly tawMm: number;
  readonly soakedMm: number;
  readonly irrigationMm: number;
  readonly startMm: number;
  readonly ks: number;
  readonly usedMm: number;
  readonly drainedMm: number;
  readonly endMm: number;
}

export function plantingCell(season: Season, zoneSeason: ZoneSeason, own: PlantingSeason, week: number): PlantingCell {
  const { zone } = zoneSeason;
  const { planting, demand } = own;
  const days = plantingDays(own, { zone, site: season.garden.site, weather: season.weather });
  const at = (field: PlantingField) => plantingFigure(own, field, week);
  const first = Math.max(7 * week, demand.first);
  const cell = {
    season,
    zoneSeason,
    zone,
    planting,
    own,
    week,
    days,
    ground: { first, end: Math.max(first, Math.min(7 * week + 7, demand.end)) },
    at,
    before: (field: PlantingField) => plantingFigure(own, field, week - 1),
    dayOf: (index: number) => season.garden.span.firstDay + index,
  };
  return { ...cell, daily: dailyOf(cell) };
}

function dailyOf({ zoneSeason, days, ground, week, at, dayOf }: Omit<PlantingCell, 'daily'>): readonly CellDay[] {
  const { etcMm, rawMm, tawMm } = days.demand;
  const daily: CellDay[] = [];
  let startMm = at('depletionStartMm');
  for (let index = ground.first; index < ground.end; index++) {
    const minutes = isOpenOn(at('openMask'), index - 7 * week) ? minutesOfDay(zoneSeason, index) : 0;
    const given = {
      etcMm: etcMm[index] as number,
      rawMm: rawMm[index] as number,
      tawMm,
      irrigationMm: minutes * (days.netMmPerMinute[index] as number),
    };
    const soakedMm = days.soakedMm[index] as number;
    const { depletionMm: endMm, ...outcome } = rootZoneDay({ ...given, depletionMm: startMm, rainMm: soakedMm });
    daily.push({ index, day: dayOf(index), minutes, ...given, soakedMm, startMm, endMm, ...outcome });
    startMm = endMm;
  }
  return daily;
}

/** Minutes that a zone runs on a day of the season. */
export function minutesOfDay({ figures, weeks }: ZoneSeason, index: number): number {
  return figures[(ZONE_FIELDS.minutesDay0 + (index % 7)) * weeks + Math.floor(index / 7)] as number;
}

/** Whether the day of the week `offset`, 0 = its first, is in a mask of days. */
export function isOpenOn(mask: number, offset: number): boolean {
  return ((mask >> offset) & 1) === 1;
}
