/** A zone on its way through the season, day by day: what its mornings ask for, what it runs, what its plantings keep of it. */
import { forecastOn } from '../forecast.ts';
import type { DayRun, WeekChoice } from '../garden.ts';
import { isReadDay, type Weather } from '../weather.ts';
import { type GivenMinutes, givenMinutes } from './given-minutes.ts';
import { fewestOpenDays, openMasks } from './open-days.ts';
import type { PlantingDays } from './planting-days.ts';
import { MINUTES_ORIGINS, type ZoneSeason } from './season.ts';
import { lookAhead, type WeekOutlook, weekOutlook } from './week-outlook.ts';
import {
  ask,
  isPresentOn,
  keepWeek,
  lookForRefill,
  noteMissed,
  runDays,
  startWeek,
  type ZoneMember,
  zoneMember,
} from './zone-member.ts';
import type { MinutesRequest } from './zone-minutes.ts';
import { decideMorning, LEAST_MINUTES, type ZoneMorning } from './zone-morning.ts';
import { sumZoneWeek } from './zone-sum.ts';

export interface ZoneRun {
  readonly season: ZoneSeason;
  readonly weather: Weather;
  readonly members: readonly ZoneMember[];
  readonly requests: readonly MinutesRequest[];
  /** For each k from 0: the k of the watering days on which a shut-off is open. */
  readonly masks: readonly number[];
  readonly week: ZoneWeekRun;
  readonly scratch: readonly WeekOutlook[];
  readonly told: ((morning: ToldMorning) => void) | undefined;
}

/** The zone's week so far, filled anew. */
export interface ZoneWeekRun {
  /** By day of the week. */
  readonly minutes: Float64Array;
  /** Index into MINUTES_ORIGINS. */
  origin: number;
  /** Of the first watering morning, before rounding. */
  wanted: number;
  decidedMask: number;
  skippedMask: number;
  /** Watering days decided to be without a run. */
  idleMask: number;
}

/** A watering morning as it was decided. */
export interface ToldMorning {
  /** Counted from the season's first day. */
  readonly day: number;
  /** Minutes of that day; a given week's are the given ones. */
  readonly minutes: number;
  /** Decided anew, from what was known that morning; else the number of an earlier morning stands. */
  readonly decided: ZoneMorning | undefined;
  /** In the zone's order. */
  readonly plantings: readonly ToldPlanting[];
}

export interface ToldPlanting {
  readonly isPresent: boolean;
  /** At the morning's start, mm. */
  readonly depletionMm: number;
  readonly goalMm: number;
  /** Expected demand less rain from this day to the end of the week's last watering day, mm. */
  readonly changeMm: number;
  /** Net depth of a minute on each watering day from this on, mm. */
  readonly gainMm: number;
  /** Infinity where no line brings any. */
  readonly minutesAsked: number;
  readonly isDue: boolean;
  readonly openMask: number;
}

export interface ZoneStart {
  /** Those of its plantings, in order. */
  readonly days: readonly PlantingDays[];
  readonly weather: Weather;
  /** First week to run; the weeks before it are in the season's figures. */
  readonly from: number;
  /** Told of every watering morning. */
  readonly told?: (morning: ToldMorning) => void;
}

const COMPUTED = MINUTES_ORIGINS.indexOf('computed');

export function zoneRun(season: ZoneSeason, { days, weather, from, told }: ZoneStart): ZoneRun {
  const { zone } = season;
  const members = season.plantings.map((planting, index) => zoneMember(planting, days[index] as PlantingDays, from));
  return {
    season,
    weather,
    members,
    requests: members.map(({ request }) => request),
    masks: openMasks(zone.wateringDays),
    week: { minutes: new Float64Array(7), origin: COMPUTED, wanted: 0, decidedMask: 0, skippedMask: 0, idleMask: 0 },
    scratch: members.map(({ days: own }) => weekOutlook(own)),
    told,
  };
}

/** Fills in the week's figures of the zone and its plantings. */
export function runZoneWeek(run: ZoneRun, index: number): void {
  const { season, weather, week } = run;
  const { zone } = season;
  const start = index * 7;
  const choice = zone.choices.get(index);
  const given = givenMinutes(zone, choice, week.minutes);
  startZoneWeek(run, start, given);
  let ranUntil = start;
  let decidedOn = start;
  let standing: ZoneMorning = NOTHING;
  for (let day = start; day < start + 7; day++) {
    const bit = 1 << (day - start);
    if ((zone.wateringDays & bit) === 0) continue;
    runMembers(run, ranUntil, day);
    ranUntil = day;
    const isNews = hasNews(weather, decidedOn, day);
    if (isNews && weather.forecasts.length > 0) expect(run, start, day);
    const isAll = isNews || week.decidedMask === 0;
    const morning = anyoneWatered(run, day) ? decide(run, day, isAll) : NOTHING;
    if (morning !== undefined && morning !== NOTHING) {
      if (isAll) decidedOn = day;
      if (week.decidedMask === 0) week.wanted = morning.wanted;
      week.decidedMask |= bit;
    }
    standing = morning ?? standing;
    if (given === undefined) {
      week.minutes[day - start] = standing.run.minutes;
      if (standing.run.minutes === 0 && standing !== NOTHING) {
        week.idleMask |= bit;
        if (standing.wanted > LEAST_MINUTES) week.skippedMask |= bit;
      }
    }
    openShutOffs(run, day, { choice, given });
    noteLast(run, day);
    run.told?.(told(run, day, morning));
  }
  runMembers(run, ranUntil, start + 7);
  endZoneWeek(run, index);
}

function startZoneWeek(run: ZoneRun, start: number, given: GivenMinutes | undefined): void {
  const { season, members, week } = run;
  const { wateringDays } = season.zone;
  week.origin = given?.origin ?? COMPUTED;
  week.wanted = 0;
  week.decidedMask = 0;
  week.skippedMask = 0;
  week.idleMask = 0;
  if (given === undefined) week.minutes.fill(0);
  expect(run, start, start + firstDayOf(wateringDays));
  for (let at = 0; at < members.length; at++) {
    const member = members[at] as ZoneMember;
    startWeek(member);
    const { id, hasShutOff } = member.season.planting;
    for (const [day, { open }] of given?.runs ?? NO_RUNS) {
      if (!hasShutOff || open?.has(id)) member.openMask |= 1 << day;
    }
    if (!hasShutOff) member.openMask |= wateringDays;
  }
}

/** Looks ahead with what is known on a morning. */
function expect({ season, weather, members }: ZoneRun, start: number, morning: number): void {
  const forecast = forecastOn(weather.forecasts, morning);
  for (let at = 0; at < members.length; at++) {
    lookAhead((members[at] as ZoneMember).outlook, start, season.zone.wateringDays, forecast);
  }
}

/** Whether a day was read, or a forecast issued, since the morning on which all was decided. */
function hasNews(weather: Weather, decidedOn: number, day: number): boolean {
  for (let before = decidedOn; before < day; before++) if (isReadDay(weather, before)) return true;
  return weather.forecasts.some(({ issued }) => issued > decidedOn && issued <= day);
}

function anyoneWatered({ members }: ZoneRun, day: number): boolean {
  return members.some(
    (member) => isPresentOn(member, day) && (member.outlook.gainMm[day - member.outlook.start] as number) > 0,
  );
}

/** The morning decided anew; undefined where nothing is asked anew and the number of an earlier morning stands. */
function decide({ season, weather, members, requests }: ZoneRun, day: number, isAll: boolean): ZoneMorning | undefined {
  const forecast = forecastOn(weather.forecasts, day);
  let isAnew = isAll;
  for (let at = 0; at < members.length; at++) {
    const member = members[at] as ZoneMember;
    const { request, outlook } = member;
    request.isPresent = isPresentOn(member, day);
    if (!request.isPresent) continue;
    request.litresPerMinute = (outlook.gainMm[day - outlook.start] as number) * member.season.planting.areaM2;
    const isDue = lookForRefill(member, day, forecast);
    const isFirst = member.firstAsked < 0;
    if (!(isAll || isFirst || isDue || isJustFilled(member))) continue;
    ask(member, day);
    if (isFirst) member.firstAsked = request.minutesPerDay;
    isAnew = true;
  }
  return isAnew ? decideMorning(season.zone, members, requests, day) : undefined;
}

function isJustFilled({ season, request, fillingMm }: ZoneMember): boolean {
  const { watering, hasShutOff } = season.planting;
  return watering === 'refill' && !hasShutOff && fillingMm === 0 && request.minutesPerDay > 0;
}

/** On a planting's first watering morning of the week: the days on which its shut-off is open. */
function openShutOffs(
  run: ZoneRun,
  day: number,
  { choice, given }: { readonly choice: WeekChoice | undefined; readonly given: GivenMinutes | undefined },
): void {
  const { members, masks, week, scratch, weather } = run;
  for (let at = 0; at < members.length; at++) {
    const member = members[at] as ZoneMember;
    const { planting } = member.season;
    if (!planting.hasShutOff || member.isOpened || !isPresentOn(member, day)) continue;
    member.isOpened = true;
    if (member.firstAsked < 0) member.firstAsked = 0;
    const minutes =
      given?.runs === undefined ? (week.minutes[day - member.outlook.start] as number) : Math.max(...week.minutes);
    const byHand = choice?.openDays?.get(planting.id);
    const count =
      byHand === undefined
        ? fewestOpenDays(member, scratch[at] as WeekOutlook, {
            masks,
            minutes,
            day,
            forecast: forecastOn(weather.forecasts, day),
          })
        : Math.min(byHand, masks.length - 1);
    member.openMask |= (masks[count] as number) & ~openGiven(given);
  }
}

/** Days whose open shut-offs were logged. */
function openGiven(given: GivenMinutes | undefined): number {
  let mask = 0;
  for (const [day, { open }] of given?.runs ?? NO_RUNS) if (open !== undefined) mask |= 1 << day;
  return mask;
}

function noteLast({ members, week, weather }: ZoneRun, day: number): void {
  for (let at = 0; at < members.length; at++) {
    const member = members[at] as ZoneMember;
    if (member.outlook.last !== day) continue;
    noteMissed(member, week.minutes[day - member.outlook.start] as number, forecastOn(weather.forecasts, day));
  }
}

function runMembers({ members, week, weather }: ZoneRun, from: number, until: number): void {
  for (let at = 0; at < members.length; at++) {
    runDays(members[at] as ZoneMember, from, until, week.minutes, weather.rain.mm);
  }
}

function endZoneWeek({ season, members, week }: ZoneRun, index: number): void {
  const { zone } = season;
  const hasRun = week.minutes.some((minutes) => minutes > 0);
  if (hasRun) week.skippedMask = week.idleMask;
  for (let at = 0; at < members.length; at++) {
    const member = members[at] as ZoneMember;
    if (!hasRun) member.openMask = 0;
    keepWeek(member, index, zone);
  }
  sumZoneWeek(season, members, index, week);
}

function told({ members, week }: ZoneRun, day: number, decided: ZoneMorning | undefined): ToldMorning {
  return {
    day,
    minutes: week.minutes[day % 7] as number,
    decided: decided === NOTHING ? undefined : decided,
    plantings: members.map((member): ToldPlanting => {
      const { outlook, request } = member;
      const at = day - outlook.start;
      const isPresent = isPresentOn(member, day);
      return {
        isPresent,
        depletionMm: member.depletionMm,
        goalMm: outlook.goalMm,
        changeMm: isPresent ? (outlook.changeMm[at] as number) : 0,
        gainMm: isPresent ? (outlook.gainMm[at] as number) : 0,
        minutesAsked: isPresent ? request.minutesPerDay : 0,
        isDue: ((member.dueMask >> at) & 1) === 1,
        openMask: member.openMask,
      };
    }),
  };
}

function firstDayOf(mask: number): number {
  return 31 - Math.clz32(mask & -mask);
}

const NO_RUNS: ReadonlyMap<number, DayRun> = new Map();
const NOTHING: ZoneMorning = { wanted: 0, run: { cycles: 0, minutes: 0 } };
