/** One planting's week with all that its steps read: figures, daily arrays, its days as they were run, its watering mornings. */
import type { DayNumber } from '../../../engine/calendar.ts';
import { forecastOn } from '../../../engine/forecast.ts';
import type { GardenPlanting, GardenZone } from '../../../engine/garden.ts';
import type { RainKeeper } from '../../../engine/season/kept-rain.ts';
import { type PlantingDays, plantingDays } from '../../../engine/season/planting-days.ts';
import { type PlantingVolume, plantingFigure } from '../../../engine/season/planting-week.ts';
import {
  type PLANTING_FIELDS,
  type PlantingSeason,
  type Season,
  ZONE_FIELDS,
  type ZoneSeason,
} from '../../../engine/season/season.ts';
import { zoneMornings } from '../../../engine/season/zone-season.ts';
import { rootZoneDay } from '../../../engine/soil/root-zone-day.ts';
import type { DaySpan } from '../day-span.ts';
import { outlookOn, type PlantingMorning } from './planting-morning.ts';

export type PlantingField = keyof typeof PLANTING_FIELDS | PlantingVolume;

export interface PlantingCell {
  readonly season: Season;
  readonly zoneSeason: ZoneSeason;
  readonly zone: GardenZone;
  readonly planting: GardenPlanting;
  readonly own: PlantingSeason;
  /** What the share of the normals' rain that counts hangs on. */
  readonly keeper: RainKeeper;
  readonly week: number;
  readonly days: PlantingDays;
  /** Its days in the ground in this week; empty where there is none. */
  readonly ground: DaySpan;
  /** Its days in the ground, as they were run. */
  readonly daily: readonly CellDay[];
  /** Watering mornings of the zone on which it is in the ground, up to its last watering of the week. */
  readonly mornings: readonly PlantingMorning[];
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
  const first = Math.max(7 * week, demand.first);
  const cell = {
    season,
    zoneSeason,
    zone,
    planting,
    own,
    keeper: { demand, isRefill: planting.watering === 'refill', wateringDays: zone.wateringDays },
    week,
    days,
    ground: { first, end: Math.max(first, Math.min(7 * week + 7, demand.end)) },
    at: (field: PlantingField) => plantingFigure(own, field, week),
    before: (field: PlantingField) => plantingFigure(own, field, week - 1),
    dayOf: (index: number) => season.garden.span.firstDay + index,
  };
  return { ...cell, daily: dailyOf(cell), mornings: morningsOf(cell) };
}

type WithoutDays = Omit<PlantingCell, 'daily' | 'mornings'>;

function dailyOf({ zoneSeason, days, ground, week, at, dayOf }: WithoutDays): readonly CellDay[] {
  const { etcMm, rawMm, tawMm } = days.demand;
  const daily: CellDay[] = [];
  let startMm = at('depletionStartMm');
  for (let index = ground.first; index < ground.end; index++) {
    const minutes = isInMask(at('openMask'), index - 7 * week) ? minutesOfDay(zoneSeason, index) : 0;
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

function morningsOf({ season, zoneSeason, zone, own, days, week }: WithoutDays): readonly PlantingMorning[] {
  const { garden, weather } = season;
  const place = zoneSeason.plantings.indexOf(own);
  return zoneMornings({ zone, site: garden.site, weather }, zoneSeason, week).flatMap((morning) => {
    const told = morning.plantings[place];
    if (!told?.isPresent) return [];
    const { day: index, minutes, plantings } = morning;
    const forecast = forecastOn(weather.forecasts, index);
    const outlook = outlookOn(days, { week, mask: zone.wateringDays, forecast });
    const isLooked = plantings.some(({ netMm }) => netMm > 0);
    return [{ ...told, index, minutes, isLooked, forecast, outlook, zone: morning }];
  });
}

/** Minutes that a zone runs on a day of the season. */
export function minutesOfDay({ figures, weeks }: ZoneSeason, index: number): number {
  return figures[(ZONE_FIELDS.minutesDay0 + (index % 7)) * weeks + Math.floor(index / 7)] as number;
}

/** Whether the day of the week `offset`, 0 = its first, is in a mask of days. */
export function isInMask(mask: number, offset: number): boolean {
  return ((mask >> offset) & 1) === 1;
}
