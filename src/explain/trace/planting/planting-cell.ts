/** One planting's week with all that its steps read: figures, daily arrays, its days as they were run, its watering mornings. */
import type { DayNumber } from '../../../engine/calendar.ts';
import { forecastOn } from '../../../engine/forecast.ts';
import type { GardenPlanting, GardenZone } from '../../../engine/garden.ts';
import { balanceDay, growRoots, runBalance } from '../../../engine/season/balance-day.ts';
import type { RainKeeper } from '../../../engine/season/kept-rain.ts';
import { type PlantingDays, plantingDays, wetDays } from '../../../engine/season/planting-days.ts';
import { isWettedAlone, tawOn } from '../../../engine/season/planting-demand.ts';
import { plantingFigure } from '../../../engine/season/planting-week.ts';
import type { PLANTING_FIELDS, PlantingSeason, Season, ZoneSeason } from '../../../engine/season/season.ts';
import type { PlantingVolume } from '../../../engine/season/volume-depths.ts';
import { timerOf } from '../../../engine/season/week-timer.ts';
import { shareIn, wetAnew } from '../../../engine/season/wetted-week.ts';
import { meanDepletionMm } from '../../../engine/season/zone-member.ts';
import { zoneMornings } from '../../../engine/season/zone-season.ts';
import { minutesOnDay } from '../../../engine/season/zone-week.ts';
import { stressCoefficient } from '../../../engine/soil/root-zone-day.ts';
import { type Stores, storesOf } from '../../../engine/soil/two-stores.ts';
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
  /** After rain and irrigation, before the day's use; may be below 0. */
  readonly wateredMm: number;
  readonly ks: number;
  readonly usedMm: number;
  readonly drainedMm: number;
  readonly endMm: number;
  /** Equal parts of the day in which a container is watered. */
  readonly parts: number;
  /** After what came, wherever its roots draw on. */
  readonly isShort: boolean;
  /** Its roots are in the wetted ground alone. */
  readonly isWettedAlone: boolean;
  /** Of the ground that its lines wet, and of the rest, mm over each. */
  readonly wetted: StoreDay;
  readonly dry: StoreDay;
  /** What the wetted ground had to give of the day's demand, mm over it. */
  readonly askedOfWettedMm: number;
}

/** A part of the ground on a day, mm over that part. */
export interface StoreDay {
  readonly startMm: number;
  /** After rain and irrigation; may be below 0. */
  readonly wateredMm: number;
  readonly fromMm: number;
  readonly irrigationMm: number;
  readonly endMm: number;
}

export function plantingCell(season: Season, zoneSeason: ZoneSeason, own: PlantingSeason, week: number): PlantingCell {
  const { zone } = zoneSeason;
  const { planting, demand } = own;
  const days = weekDays(season, zoneSeason, own, week);
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

/** A planting's days as the week has them. */
export function weekDays(season: Season, { zone }: ZoneSeason, own: PlantingSeason, week: number): PlantingDays {
  const days = plantingDays(own, { zone, site: season.garden.site, weather: season.weather });
  wetDays(days, own.planting, week);
  return days;
}

type WithoutDays = Omit<PlantingCell, 'daily' | 'mornings'>;

type AtStart = Pick<PlantingCell, 'planting' | 'days' | 'week' | 'before'>;

/** At the week's start, wetted as in the week. */
export function startStores({ planting, days: { demand }, week, before }: AtStart): Stores {
  if (demand.first >= 7 * week) return storesOf(demand.startMm, demand.startMm);
  const stores = storesOf(before('wettedEndMm'), before('dryEndMm'));
  wetAnew(stores, shareIn(planting, week - 1), shareIn(planting, week));
  return stores;
}

function dailyOf(cell: WithoutDays): readonly CellDay[] {
  const { zoneSeason, days, ground, week, at, dayOf } = cell;
  const { demand } = days;
  const { etcMm, rawMm } = demand;
  const stores = startStores(cell);
  const { runsADay } = timerOf(zoneSeason, week);
  const daily: CellDay[] = [];
  for (let index = ground.first; index < ground.end; index++) {
    const ran = minutesOnDay(zoneSeason, index);
    const minutes = isInMask(at('openMask'), index - 7 * week) ? ran : 0;
    const given = {
      etcMm: etcMm[index] as number,
      rawMm: rawMm[index] as number,
      // The rest passes straight through.
      irrigationMm: (1 - demand.leachingFraction) * minutes * (days.netMmPerMinute[index] as number),
      soakedMm: days.soakedMm[index] as number,
    };
    const { irrigationMm, soakedMm } = given;
    const tawMm = tawOn(demand, index);
    growRoots({ demand, stores }, index);
    const startMm = meanDepletionMm({ stores, days });
    const { wettedMm, dryMm } = stores;
    const parts = ran > 0 ? runsADay : 1;
    const wateredMm = startMm - soakedMm - irrigationMm;
    const ks = stressCoefficient(wateredMm, given.rawMm, tawMm);
    runBalance({ demand, stores }, index, { ...balanceDay(), ...given, share: demand.share, parts });
    const { usedMm, isShort, rainDrainedMm, irrigationDrainedMm } = stores;
    const drainedMm = rainDrainedMm + irrigationDrainedMm;
    const endMm = meanDepletionMm({ stores, days });
    const onWettedMm = irrigationMm / demand.share;
    daily.push({
      ...{ index, day: dayOf(index), minutes, ...given, tawMm, startMm, wateredMm, ks, usedMm, drainedMm, endMm },
      parts,
      isShort,
      isWettedAlone: isWettedAlone(demand, index),
      wetted: {
        startMm: wettedMm,
        wateredMm: wettedMm - soakedMm - onWettedMm,
        fromMm: stores.fromWettedMm,
        irrigationMm: onWettedMm,
        endMm: stores.wettedMm,
      },
      dry: {
        startMm: dryMm,
        wateredMm: dryMm - soakedMm,
        fromMm: stores.fromDryMm,
        irrigationMm: 0,
        endMm: stores.dryMm,
      },
      askedOfWettedMm: stores.askedOfWettedMm,
    });
  }
  return daily;
}

function morningsOf({ season, zoneSeason, zone, own, days, week }: WithoutDays): readonly PlantingMorning[] {
  const { garden, weather } = season;
  const ownIndex = zoneSeason.plantings.indexOf(own);
  return zoneMornings({ zone, site: garden.site, weather }, zoneSeason, week).flatMap((morning) => {
    const told = morning.plantings[ownIndex];
    if (!told?.isPresent) return [];
    const { day: index, minutes, plantings } = morning;
    const forecast = forecastOn(weather.forecasts, index);
    const outlook = outlookOn(days, { week, zone, forecast, ahead: told.ahead });
    const isLooked = plantings.some(({ netMm }) => netMm > 0);
    return [{ ...told, index, minutes, isLooked, forecast, outlook, zone: morning }];
  });
}

/** Whether lines wet a part of its ground, so that it is kept as two stores. */
export function isParted({ days }: Pick<PlantingCell, 'days'>): boolean {
  return days.demand.share < 1;
}

/** Whether the day of the week `offset`, 0 = its first, is in a mask of days. */
export function isInMask(mask: number, offset: number): boolean {
  return ((mask >> offset) & 1) === 1;
}
