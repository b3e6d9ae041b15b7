/** A zone on its way through the season: its plantings, and its week so far. */
import type { Weather } from '../weather.ts';
import type { ExpectedDays } from './expected-days.ts';
import { openMasks } from './open-days.ts';
import type { PlantingDays } from './planting-days.ts';
import { MINUTES_ORIGINS, type ZoneSeason } from './season.ts';
import { type WeekOutlook, weekOutlook } from './week-outlook.ts';
import { type WeekTimer, weekTimer } from './week-timer.ts';
import { type ZoneMember, zoneMember } from './zone-member.ts';
import type { MinutesRequest } from './zone-minutes.ts';
import { NOTHING_WANTED, type ZoneMorning } from './zone-morning.ts';

export interface ZoneRun {
  readonly season: ZoneSeason;
  readonly weather: Weather;
  readonly members: readonly ZoneMember[];
  readonly requests: readonly MinutesRequest[];
  /** For each k from 0: the k of the week's watering days on which a shut-off is open. */
  masks: readonly number[];
  readonly week: ZoneWeekRun;
  readonly scratch: WeekOutlook;
  told: Told | undefined;
}

/** Told of every watering morning: its day, and what was decided anew. */
export type Told = (run: ZoneRun, day: number, decided: ZoneMorning | undefined) => void;

/** The zone's week so far, filled anew. */
export interface ZoneWeekRun {
  /** What its figures lie in: `ZONE_FIELDS` from `at` on. */
  figures: Float64Array;
  at: number;
  /** First day of the week, counted from the season's. */
  start: number;
  /** Its watering days, bit 0 = its first. */
  mask: number;
  /** Days before this have been run through the balance. */
  ranUntil: number;
  /** Morning on which all was decided last. */
  decidedOn: number;
  /** Day from which somebody looked ahead last. */
  lookedOn: number;
  /** The decision that stands until another one is made. */
  standing: ZoneMorning;
  /** By day of the week. */
  readonly minutes: Float64Array;
  /** What a cut takes of a morning's minutes, by day of the week. */
  readonly cutMinutes: Float64Array;
  timer: WeekTimer;
  /** Share of its minutes that a cut takes off, 0 to 1. */
  cutShare: number;
  /** Of a cut week: what it would run if nothing were cut, by day. */
  uncut: Float64Array | undefined;
  /** Index into MINUTES_ORIGINS. */
  origin: number;
  /** Of the first watering morning, before rounding. */
  wanted: number;
  decidedMask: number;
  skippedMask: number;
  /** Watering days decided to be without a run. */
  idleMask: number;
}

export interface ZoneStart {
  /** Those of its plantings, in order. */
  readonly days: readonly PlantingDays[];
  readonly weather: Weather;
  /** First week to run; the weeks before it are in the season's figures. */
  readonly from: number;
  readonly told?: Told;
  /** A zone that is done with: what its weeks filled in is used again. */
  readonly lent?: ZoneRun | undefined;
}

/** Index into MINUTES_ORIGINS. */
export const COMPUTED = MINUTES_ORIGINS.indexOf('computed');

export function zoneRun(season: ZoneSeason, { days, weather, from, told, lent }: ZoneStart): ZoneRun {
  const { zone } = season;
  const members = season.plantings.map((planting, index) =>
    zoneMember(planting, days[index] as PlantingDays, from, zone.wateringDaysByWeek, lent?.members[index]),
  );
  const week = lent?.week ?? {
    figures: season.figures.block,
    at: 0,
    start: 0,
    mask: zone.wateringDays,
    ranUntil: 0,
    lookedOn: 0,
    decidedOn: 0,
    standing: NOTHING_WANTED,
    minutes: new Float64Array(7),
    cutMinutes: new Float64Array(7),
    timer: weekTimer(zone, 1),
    cutShare: 0,
    uncut: undefined,
    origin: COMPUTED,
    wanted: 0,
    decidedMask: 0,
    skippedMask: 0,
    idleMask: 0,
  };
  week.timer = weekTimer(zone, 1);
  return {
    season,
    weather,
    members,
    requests: members.map(({ request }) => request),
    masks: lent?.masks ?? openMasks(zone.wateringDays),
    week,
    scratch: lent?.scratch ?? weekOutlook(days[0]?.asked as ExpectedDays),
    told,
  };
}
