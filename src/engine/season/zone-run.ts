/** A zone on its way through the season, day by day: what its mornings ask for, what it runs, what its plantings keep of it. */
import { forecastOn, type KnownForecast } from '../forecast.ts';
import type { DayRun, WeekChoice } from '../garden.ts';
import { nearestRun } from '../soil/cycle-and-soak.ts';
import { isReadDay, type Weather } from '../weather.ts';
import { type GivenMinutes, givenMinutes } from './given-minutes.ts';
import { openDaysMask, openMasks } from './open-days.ts';
import type { PlantingDays } from './planting-days.ts';
import { MINUTES_ORIGINS, type ZoneSeason } from './season.ts';
import { lookAhead, type WeekOutlook, weekOutlook } from './week-outlook.ts';
import {
  ask,
  isPresentOn,
  keepWeek,
  lookForRefill,
  minutesToFill,
  noteMissed,
  runDays,
  startWeek,
  type ZoneMember,
  zoneMember,
} from './zone-member.ts';
import type { MinutesRequest } from './zone-minutes.ts';
import { decideMorning, isDeciding, LEAST_MINUTES, type ZoneMorning } from './zone-morning.ts';
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
  readonly told: Told | undefined;
}

/** Told of every watering morning: its day, and what was decided anew. */
export type Told = (run: ZoneRun, day: number, decided: ZoneMorning | undefined) => void;

/** The zone's week so far, filled anew. */
export interface ZoneWeekRun {
  /** First day of the week, counted from the season's. */
  start: number;
  /** Days before this have been run through the balance. */
  ranUntil: number;
  /** Morning on which all was decided last. */
  decidedOn: number;
  /** The decision that stands until another one is made. */
  standing: ZoneMorning;
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

export interface ZoneStart {
  /** Those of its plantings, in order. */
  readonly days: readonly PlantingDays[];
  readonly weather: Weather;
  /** First week to run; the weeks before it are in the season's figures. */
  readonly from: number;
  readonly told?: Told;
}

const COMPUTED = MINUTES_ORIGINS.indexOf('computed');
const NOTHING: ZoneMorning = { wanted: 0, run: { cycles: 0, minutes: 0 } };

export function zoneRun(season: ZoneSeason, { days, weather, from, told }: ZoneStart): ZoneRun {
  const { zone } = season;
  const members = season.plantings.map((planting, index) => zoneMember(planting, days[index] as PlantingDays, from));
  return {
    season,
    weather,
    members,
    requests: members.map(({ request }) => request),
    masks: openMasks(zone.wateringDays),
    week: {
      start: 0,
      ranUntil: 0,
      decidedOn: 0,
      standing: NOTHING,
      minutes: new Float64Array(7),
      origin: COMPUTED,
      wanted: 0,
      decidedMask: 0,
      skippedMask: 0,
      idleMask: 0,
    },
    scratch: members.map(({ days: own }) => weekOutlook(own)),
    told,
  };
}

/** Fills in the week's figures of the zone and its plantings. */
export function runZoneWeek(run: ZoneRun, index: number): void {
  const { zone } = run.season;
  const start = index * 7;
  const choice = zone.choices.get(index);
  const given = givenMinutes(zone, choice, run.week.minutes);
  startZoneWeek(run, start, given);
  for (let day = start; day < start + 7; day++) {
    if ((zone.wateringDays >> (day - start)) & 1) runMorning(run, day, { choice, given });
  }
  runMembers(run, start + 7);
  endZoneWeek(run, index);
}

interface WeekGiven {
  readonly choice: WeekChoice | undefined;
  readonly given: GivenMinutes | undefined;
}

/** One watering morning: the days before it, what it asks for, and what it runs. */
function runMorning(run: ZoneRun, day: number, of: WeekGiven): void {
  const { weather, week } = run;
  runMembers(run, day);
  const isNews = hasNews(weather, week.decidedOn, day);
  if (isNews && weather.forecasts.length > 0) expect(run, week.start, day);
  const isAll = isNews || week.decidedMask === 0;
  const isWatered = anyoneWatered(run, day);
  const decided = isWatered ? decide(run, day, isAll) : undefined;
  if (decided !== undefined) {
    if (isAll) week.decidedOn = day;
    if (week.decidedMask === 0) week.wanted = decided.wanted;
    week.decidedMask |= 1 << (day - week.start);
  }
  if (isWatered) week.standing = decided ?? week.standing;
  if (of.given === undefined && isWatered) setMinutes(week, day);
  openShutOffs(run, day, of);
  noteLast(run, day);
  run.told?.(run, day, decided);
}

/** The number that stands, for a day of a computed week. */
function setMinutes(week: ZoneWeekRun, day: number): void {
  const { run, wanted } = week.standing;
  const bit = 1 << (day - week.start);
  week.minutes[day - week.start] = run.minutes;
  if (run.minutes > 0) return;
  week.idleMask |= bit;
  if (wanted > LEAST_MINUTES) week.skippedMask |= bit;
}

function startZoneWeek(run: ZoneRun, start: number, given: GivenMinutes | undefined): void {
  const { season, members, week } = run;
  const { wateringDays } = season.zone;
  week.start = start;
  week.ranUntil = start;
  week.decidedOn = start;
  week.standing = NOTHING;
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
  return members.some((member) => isPresentOn(member, day) && (member.days.netMmPerMinute[day] as number) > 0);
}

/** The morning decided anew; undefined where nothing is asked anew and the number of an earlier morning stands. */
function decide({ season, weather, members, requests }: ZoneRun, day: number, isAll: boolean): ZoneMorning | undefined {
  const forecast = forecastOn(weather.forecasts, day);
  const { rule } = season.zone;
  for (let at = 0; at < members.length; at++) askOn(members[at] as ZoneMember, day, isAll, forecast);
  const isAnew =
    isAll || members.some((member) => member.askedOn === day && isDeciding(rule, requests, member.request));
  return isAnew ? decideMorning(season.zone, members, requests, day) : undefined;
}

/** A request stands until all are made anew, but for the first of the week and those of a refill that is due or was. */
function askOn(member: ZoneMember, day: number, isAll: boolean, forecast: KnownForecast | undefined): void {
  const { request, season, days } = member;
  request.isPresent = isPresentOn(member, day);
  if (!request.isPresent) return;
  request.litresPerMinute = (days.netMmPerMinute[day] as number) * season.planting.areaM2;
  lookForRefill(member, day, forecast);
  const isFirst = member.firstAsked < 0;
  const isRefilling = member.fillingMm > 0 || (season.planting.watering === 'refill' && request.minutesPerDay > 0);
  if (!(isAll || isFirst || isRefilling)) return;
  ask(member, day);
  if (isFirst) member.firstAsked = request.minutesPerDay;
}

/** On a planting's first watering morning of the week: the days on which its shut-off is open. */
function openShutOffs(run: ZoneRun, day: number, { choice, given }: WeekGiven): void {
  const { members, masks, week, scratch, weather } = run;
  for (let at = 0; at < members.length; at++) {
    const member = members[at] as ZoneMember;
    const { planting } = member.season;
    if (!planting.hasShutOff || member.isOpened || !isPresentOn(member, day)) continue;
    member.isOpened = true;
    const ran = given?.runs === undefined ? (week.minutes[day - week.start] as number) : Math.max(...week.minutes);
    const byHand = choice?.openDays?.get(planting.id);
    const mask =
      byHand === undefined
        ? openDaysMask(member, scratch[at] as WeekOutlook, {
            masks,
            minutes: Math.max(ran, fillingMinutes(run, member)),
            day,
            forecast: forecastOn(weather.forecasts, day),
          })
        : (masks[Math.min(byHand, masks.length - 1)] as number);
    member.openMask |= mask & ~openGiven(given);
  }
}

/** What the zone will run for a refill that decides its minutes; 0 for any other planting. */
function fillingMinutes({ season, requests }: ZoneRun, { filling, days, request }: ZoneMember): number {
  if (filling === undefined || !isDeciding(season.zone.rule, requests, request)) return 0;
  const minutes = minutesToFill(filling.depletionMm, days.netMmPerMinute[filling.day] as number);
  return minutes < Number.POSITIVE_INFINITY ? nearestRun(minutes, season.zone, true).minutes : 0;
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

/** Runs the plantings up to a day of the week, that day not included. */
function runMembers({ members, week, weather }: ZoneRun, until: number): void {
  for (let at = 0; at < members.length; at++) {
    runDays(members[at] as ZoneMember, week.ranUntil, until, week.minutes, weather.rain.mm);
  }
  week.ranUntil = until;
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

function firstDayOf(mask: number): number {
  return 31 - Math.clz32(mask & -mask);
}

const NO_RUNS: ReadonlyMap<number, DayRun> = new Map();
