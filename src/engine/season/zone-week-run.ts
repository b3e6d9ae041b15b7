/** A zone's week, morning by morning: what they ask for, what the zone runs, what its plantings keep of it. */
import { forecastOn, type KnownForecast } from '../forecast.ts';
import { isReadDay, type Weather } from '../weather.ts';
import { type GivenMinutes, givenMinutes } from './given-minutes.ts';
import { keepWeek, runDays } from './member-week.ts';
import { lookAhead } from './week-outlook.ts';
import { ask, isPresentOn, lookForRefill, noteMissed, startWeek, type ZoneMember } from './zone-member.ts';
import { decideMorning, isDeciding, LEAST_MINUTES, type ZoneMorning } from './zone-morning.ts';
import { COMPUTED, NOTHING_WANTED, type ZoneRun, type ZoneWeekRun } from './zone-run.ts';
import { openLogged, openShutOffs, type WeekGiven } from './zone-shut-offs.ts';
import { sumZoneWeek } from './zone-sum.ts';

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
  openShutOffs(run, day, of, isWatered);
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
  week.standing = NOTHING_WANTED;
  week.origin = given?.origin ?? COMPUTED;
  week.wanted = 0;
  week.decidedMask = 0;
  week.skippedMask = 0;
  week.idleMask = 0;
  if (given === undefined) week.minutes.fill(0);
  expect(run, start, start + firstDayOf(wateringDays));
  for (let at = 0; at < members.length; at++) startWeek(members[at] as ZoneMember);
  openLogged(run, given);
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
  const latest = forecastOn(weather.forecasts, day);
  return latest !== undefined && latest.issued > decidedOn;
}

function anyoneWatered({ members }: ZoneRun, day: number): boolean {
  for (let at = 0; at < members.length; at++) {
    const member = members[at] as ZoneMember;
    if (isPresentOn(member, day) && (member.days.netMmPerMinute[day] as number) > 0) return true;
  }
  return false;
}

/** The morning decided anew; undefined where nothing is asked anew and the number of an earlier morning stands. */
function decide({ season, weather, members, requests }: ZoneRun, day: number, isAll: boolean): ZoneMorning | undefined {
  const forecast = forecastOn(weather.forecasts, day);
  const { rule } = season.zone;
  for (let at = 0; at < members.length; at++) askOn(members[at] as ZoneMember, day, isAll, forecast);
  let isAnew = isAll;
  for (let at = 0; at < members.length && !isAnew; at++) {
    const { askedOn, request } = members[at] as ZoneMember;
    isAnew = askedOn === day && isDeciding(rule, requests, request);
  }
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
  let hasRun = false;
  for (let day = 0; day < 7; day++) if ((week.minutes[day] as number) > 0) hasRun = true;
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
