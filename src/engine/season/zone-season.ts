/** One zone through its season, week by week: needs to minutes to balance. */
import type { GardenZone, WeekChoice } from '../garden.ts';
import { fewestOpenDays, openMasks } from './open-days.ts';
import { type DayRoom, dayRoom, plantingDays, type ZoneContext } from './planting-days.ts';
import type { PlantingDemand } from './planting-demand.ts';
import { plantingStateOf } from './planting-state.ts';
import {
  PLANTING_FIELDS as P,
  PLANTING_FIELD_COUNT,
  type PlantingSeason,
  ZONE_FIELD_COUNT,
  type ZoneSeason,
} from './season.ts';
import { type PlantingCourse, runWeek } from './week-balance.ts';
import { setOut, type WeekCourse, weekCourse } from './week-course.ts';
import { decideMinutes, type WeekMinutes } from './week-minutes.ts';
import { noNeed, refillIsDue, type WeekNeed, weekNeed } from './week-need.ts';
import { type PlantingVoice, plantingVoice, zoneMinutes } from './zone-minutes.ts';
import { sumZoneWeek } from './zone-sum.ts';

/** Daily arrays lent to one zone after another: place p to its p-th planting. */
export type ZoneRoom = DayRoom[];

/** `known` holds the demands of the zone's plantings, in order, where they are known from a run with the same ETo. */
export function zoneSeason(context: ZoneContext, room: ZoneRoom, known?: readonly PlantingDemand[]): ZoneSeason {
  const { zone, weather } = context;
  const weeks = weather.days / 7;
  const figures = new Float64Array((ZONE_FIELD_COUNT + zone.plantings.length * PLANTING_FIELD_COUNT) * weeks);
  const members = zone.plantings.map((planting, place) => {
    room[place] ??= dayRoom(weather.days);
    const days = plantingDays(planting, context, known?.[place], room[place]);
    const start = (ZONE_FIELD_COUNT + place * PLANTING_FIELD_COUNT) * weeks;
    const own = figures.subarray(start, start + PLANTING_FIELD_COUNT * weeks);
    const rainMm = weather.rain.mm;
    const course = { days, rainMm, efficiency: zone.efficiency, weeks, figures: own, depletionMm: days.demand.startMm };
    const season = { planting, demand: days.demand, weeks, figures: own };
    return { season, course, week: weekCourse(days), need: noNeed(), voice: plantingVoice(planting) };
  });
  const season: ZoneSeason = {
    zone,
    weeks,
    figures: figures.subarray(0, ZONE_FIELD_COUNT * weeks),
    plantings: members.map((member) => member.season),
  };
  const run = { zone, members, voices: members.map(({ voice }) => voice), masks: openMasks(zone.wateringDays) };
  for (let week = 0; week < weeks; week++) sumZoneWeek(season, week, runZoneWeek(run, week));
  return season;
}

/** A planting with what is carried from week to week. */
interface Member {
  readonly season: PlantingSeason;
  readonly course: PlantingCourse;
  readonly week: WeekCourse;
  readonly need: WeekNeed;
  readonly voice: PlantingVoice;
}

interface ZoneRun {
  readonly zone: GardenZone;
  readonly members: readonly Member[];
  readonly voices: readonly PlantingVoice[];
  readonly masks: readonly number[];
}

function runZoneWeek(run: ZoneRun, week: number): WeekMinutes {
  const { zone, members, voices, masks } = run;
  const choice = zone.choices.get(week);
  for (const member of members) assessNeed(member, week * 7, zone.wateringDays);
  const minutes = decideMinutes(zone, choice, zoneMinutes(zone.rule, voices), masks.length - 1);
  for (const member of members) {
    const goalMm = member.season.planting.watering === 'keep' ? member.week.endGoalMm : Number.POSITIVE_INFINITY;
    const openDays = openDaysOf(member, run, choice, minutes.minutesPerDay);
    runWeek(member.course, week, minutes.minutesPerDay, masks[openDays] as number);
    keepOutcome(member, week, { goalMm, roundingMinutes: minutes.roundingMinutes });
  }
  return minutes;
}

function assessNeed({ season: { planting }, course, week, need, voice }: Member, start: number, mask: number): void {
  setOut(week, start, mask, course.depletionMm);
  weekNeed(week, need);
  if (planting.watering === 'refill' && !refillIsDue(week)) {
    need.neededMm = 0;
    need.minutesPerDay = 0;
  }
  voice.isPresent = week.last >= 0;
  voice.minutesPerDay = need.minutesPerDay;
  voice.litresPerMinute = need.netMmPerMinute * planting.areaM2;
}

function openDaysOf(
  { season: { planting }, week, need }: Member,
  { masks }: ZoneRun,
  choice: WeekChoice | undefined,
  minutesPerDay: number,
): number {
  if (minutesPerDay === 0) return 0;
  if (!planting.hasShutOff) return masks.length - 1;
  const byHand = choice?.openDays?.get(planting.id);
  if (byHand !== undefined) return Math.min(byHand, masks.length - 1);
  const asks = need.minutesPerDay > 0 && need.minutesPerDay < Number.POSITIVE_INFINITY;
  return asks ? fewestOpenDays(week, masks, minutesPerDay) : 0;
}

function keepOutcome(
  { season, course, need }: Member,
  week: number,
  { goalMm, roundingMinutes }: { readonly goalMm: number; readonly roundingMinutes: number },
): void {
  const { figures, weeks, days } = course;
  const isInGround = (figures[P.groundDays * weeks + week] as number) > 0;
  const lastDay = Math.min(week * 7 + 7, days.demand.end) - 1;
  const netMmPerMinute = isInGround ? (days.netMmPerMinute[lastDay] as number) : 0;
  figures[P.neededMm * weeks + week] = need.neededMm;
  figures[P.minutesWanted * weeks + week] = need.minutesPerDay < Number.POSITIVE_INFINITY ? need.minutesPerDay : 0;
  figures[P.flowLpm * weeks + week] = (netMmPerMinute / course.efficiency) * season.planting.areaM2;
  figures[P.state * weeks + week] = plantingStateOf(figures, weeks, week, {
    rawMm: days.demand.rawMm[lastDay] ?? 0,
    goalMm,
    roundingMm: roundingMinutes * (figures[P.openDays * weeks + week] as number) * netMmPerMinute,
  });
}
