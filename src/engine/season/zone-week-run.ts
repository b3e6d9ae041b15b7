/** A zone's week, morning by morning: what they ask for, what the zone runs, what its plantings keep of it. */
import { forecastOn } from '../forecast.ts';
import { isReadDay, type Weather } from '../weather.ts';
import { type GivenMinutes, givenMinutes } from './given-minutes.ts';
import { startShare } from './member-share.ts';
import { keepWeek, runDays } from './member-week.ts';
import { openMasks } from './open-days.ts';
import { ZONE_FIELDS as Z } from './season.ts';
import { heldMask } from './week-masks.ts';
import { lookAhead, spanWeek } from './week-outlook.ts';
import { runsNeeded, weekTimer } from './week-timer.ts';
import { ask, growOn, isPresentOn, lookForRefill, noteMissed, startWeek, type ZoneMember } from './zone-member.ts';
import { decideMorning, isDeciding, LEAST_MINUTES, NOTHING_WANTED, type ZoneMorning } from './zone-morning.ts';
import { COMPUTED, type ZoneRun } from './zone-run.ts';
import { openLogged, openShutOffs, type WeekGiven } from './zone-shut-offs.ts';
import { cutLitres, sumZoneWeek } from './zone-sum.ts';

/** Fills in the week's figures of the zone and its plantings. What a cut leaves is of what would run if nothing were cut. */
export function runZoneWeek(run: ZoneRun, index: number, cutShare = run.season.figures.at(Z.cutShare, index)): void {
  const { week, told } = run;
  week.cutShare = 0;
  week.uncut = undefined;
  if (cutShare > 0) {
    run.told = undefined;
    const states = run.members.map(({ stores, fillingMm, grownOn }) => ({ stores: { ...stores }, fillingMm, grownOn }));
    runWeek(run, index);
    for (const [at, state] of states.entries()) Object.assign(run.members[at] as ZoneMember, state);
    run.told = told;
    week.uncut = week.minutes.slice();
    week.cutShare = cutShare;
  }
  runWeek(run, index);
}

function runWeek(run: ZoneRun, index: number): void {
  const { zone } = run.season;
  const start = index * 7;
  const choice = zone.choices.get(index);
  const mask = heldMask(zone, index);
  const given = givenMinutes(mask || zone.wateringDays, choice, run.week.minutes);
  const of = { choice, given };
  startZoneWeek(run, start, mask, given);
  for (let day = start; day < start + 7; day++) {
    if ((mask >> (day - start)) & 1) runMorning(run, day, of);
  }
  runMembers(run, start + 7);
  endZoneWeek(run);
}

/** One watering morning: the days before it, what it asks for, and what it runs. */
function runMorning(run: ZoneRun, day: number, of: WeekGiven): void {
  const { weather, week } = run;
  runMembers(run, day);
  const isNews = hasNews(weather, week.decidedOn, day);
  if (isNews && hasNews(weather, week.lookedOn, day)) expect(run, day, day);
  for (const member of run.members) growOn(member, day);
  const isAll = isNews || week.decidedMask === 0;
  const isWatered = anyoneWatered(run, day);
  const decided = isWatered ? decide(run, day, isAll) : undefined;
  if (decided !== undefined) {
    if (isAll) week.decidedOn = day;
    if (week.decidedMask === 0) week.wanted = decided.wanted;
    week.decidedMask |= 1 << (day - week.start);
  }
  if (isWatered) week.standing = decided ?? week.standing;
  if (isWatered && !(((of.given?.mask ?? 0) >> (day - week.start)) & 1)) setMinutes(run, day);
  openShutOffs(run, day, of, isWatered);
  noteLast(run, day);
  run.told?.(run, day, decided);
}

/** The number that stands, for a day of a computed week. */
function setMinutes({ week, season }: ZoneRun, day: number): void {
  const { run, wanted } = week.standing;
  const bit = 1 << (day - week.start);
  const asked = week.uncut?.[day - week.start] ?? run.minutes;
  const left = minutesLeft(asked, week.cutShare, season.zone.timerStepMinutes);
  week.minutes[day - week.start] = left;
  week.cutMinutes[day - week.start] = asked - left;
  if (left > 0) return;
  week.idleMask |= bit;
  if (wanted > LEAST_MINUTES) week.skippedMask |= bit;
}

/** Minutes of a morning that a cut leaves: whole steps of the timer. */
function minutesLeft(minutes: number, cutShare: number, stepMinutes: number): number {
  if (cutShare === 0) return minutes;
  return Math.floor((minutes * (1 - cutShare)) / stepMinutes + LEAST_MINUTES) * stepMinutes;
}

function startZoneWeek(run: ZoneRun, start: number, mask: number, given: GivenMinutes | undefined): void {
  const { members, week, season } = run;
  week.figures = season.figures.arrayOf(start / 7);
  week.at = season.figures.startOf(start / 7);
  if (week.mask !== mask) run.masks = openMasks(mask);
  week.mask = mask;
  week.start = start;
  week.ranUntil = start;
  week.decidedOn = start;
  week.standing = NOTHING_WANTED;
  week.origin = given?.origin ?? COMPUTED;
  week.wanted = 0;
  week.cutMinutes.fill(0);
  week.decidedMask = 0;
  week.skippedMask = 0;
  week.idleMask = 0;
  if (given === undefined) week.minutes.fill(0);
  for (const member of members) {
    startShare(member, start / 7);
    startWeek(member, start / 7);
  }
  setRuns(run);
  expect(run, start, start + firstDayOf(mask));
  openLogged(run, given);
}

/** As many runs a day as the plantings need, at most the timer's starts. */
function setRuns({ season, members, week }: ZoneRun): void {
  let runs = 1;
  for (const { days } of members) runs = Math.max(runs, runsNeeded(days, week));
  runs = Math.min(runs, season.zone.startsADay);
  if (runs !== week.timer.runsADay) week.timer = weekTimer(season.zone, runs);
  for (const member of members) {
    member.parts = runs;
    member.outlook.afterRuns = member.demand.isInContainer ? 1 / runs : 0;
  }
}

/** Looks ahead from a day with what is known on a morning. */
function expect({ week, weather, members }: ZoneRun, from: number, morning: number): void {
  const { start, mask } = week;
  const forecast = forecastOn(weather.forecasts, morning);
  // Its first morning looks again.
  const isLater = from === start && hasNews(weather, from, morning);
  week.lookedOn = from;
  for (const { outlook, stores } of members) {
    // Only a forecast, or how dry the ground is that lines do not wet, makes it another.
    if (from > start && weather.forecasts.length === 0 && outlook.days.projectedMm === undefined) continue;
    outlook.dryFrom = from;
    outlook.dryMm = stores.dryMm;
    if (isLater && outlook.days.projectedMm) spanWeek(outlook, start, mask);
    else lookAhead(outlook, start, mask, forecast);
  }
}

/** Whether a day was read, or a forecast issued, since the morning on which all was decided. */
function hasNews(weather: Weather, decidedOn: number, day: number): boolean {
  for (let before = decidedOn; before < day; before++) if (isReadDay(weather, before)) return true;
  const latest = forecastOn(weather.forecasts, day);
  return latest !== undefined && latest.issued > decidedOn;
}

/** The same since the week's first morning; of the day before the week, whether it was read. */
function hasWeekNews(weather: Weather, start: number, day: number): boolean {
  return hasNews(weather, start, day) || isReadDay(weather, start - 1);
}

function anyoneWatered({ members }: ZoneRun, day: number): boolean {
  return members.some((member) => isPresentOn(member, day) && (member.days.netMmPerMinute[day] as number) > 0);
}

/** The morning decided anew; undefined where nothing is asked anew and the number of an earlier morning stands. */
function decide(
  { season, week, weather, members, requests }: ZoneRun,
  day: number,
  isAll: boolean,
): ZoneMorning | undefined {
  const { rule } = season.zone;
  for (const member of members) {
    member.asksAlone = member.mayAskAlone && hasWeekNews(weather, week.start, day);
    askOn(member, day, isAll);
  }
  let isAnew = isAll;
  for (const { askedOn, request } of members) isAnew ||= askedOn === day && isDeciding(rule, requests, request);
  return isAnew ? decideMorning(season.zone, week.timer, members, requests, day) : undefined;
}

/** A request stands until all are made anew, but for the first of the week and those of a refill that is due or was. */
function askOn(member: ZoneMember, day: number, isAll: boolean): void {
  const { request, days } = member;
  request.isPresent = isPresentOn(member, day);
  if (!request.isPresent) return;
  request.litresPerMinute = (days.netMmPerMinute[day] as number) * member.areaM2;
  lookForRefill(member, day);
  const isFirst = member.firstAsked < 0;
  const isRefilling = member.fillingMm > 0 || (member.isRefill && request.minutesPerDay > 0);
  if (!(isAll || isFirst || isRefilling || member.asksAlone)) return;
  ask(member, day);
  if (isFirst) member.firstAsked = request.minutesPerDay;
}

function noteLast({ members, week }: ZoneRun, day: number): void {
  for (const member of members) {
    if (member.outlook.last === day) noteMissed(member, week.minutes[day - week.start] as number);
  }
}

/** Runs the plantings up to a day of the week, that day not included. */
function runMembers({ members, week, weather }: ZoneRun, until: number): void {
  for (const member of members) runDays(member, week.ranUntil, until, week.minutes, weather.rain.mm);
  week.ranUntil = until;
}

function endZoneWeek(run: ZoneRun): void {
  const { season, members, week } = run;
  let minutes = 0;
  for (let day = 0; day < 7; day++) minutes += week.minutes[day] as number;
  if (minutes > 0) week.skippedMask = week.idleMask;
  week.figures[week.at + Z.cutLitres] = week.cutShare && cutLitres(members, week);
  for (const member of members) {
    if (minutes === 0) member.openMask = 0;
    keepWeek(member, season.zone);
  }
  sumZoneWeek(run);
}

function firstDayOf(mask: number): number {
  return mask === 0 ? 0 : 31 - Math.clz32(mask & -mask);
}
