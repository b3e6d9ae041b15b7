/** A zone on its way through the season, week by week: needs to minutes to balance to sums. */
import { grossIrrigation } from '../application/run-time.ts';
import type { WeekChoice } from '../garden.ts';
import { daysMask } from './days-mask.ts';
import { type EarlierWeeks, wasRunAlike } from './earlier-weeks.ts';
import { fewestOpenDays, openMasks } from './open-days.ts';
import type { PlantingDays } from './planting-days.ts';
import { plantingStateOf, type WeekLimits } from './planting-state.ts';
import { PLANTING_FIELDS as P, type PlantingSeason, type ZoneSeason } from './season.ts';
import { type PlantingCourse, runWeek } from './week-balance.ts';
import { startCourse, type WeekCourse, weekCourse } from './week-course.ts';
import { decideMinutes } from './week-minutes.ts';
import { noNeed, refillIsDue, type WeekNeed, weekNeed } from './week-need.ts';
import { type MinutesRequest, minutesRequest, zoneMinutes } from './zone-minutes.ts';
import { sumZoneWeek } from './zone-sum.ts';

export interface ZoneRun {
  readonly season: ZoneSeason;
  readonly members: readonly Member[];
  readonly requests: readonly MinutesRequest[];
  readonly masks: readonly number[];
  /** Of its plantings, in order. */
  readonly figures: readonly Float64Array[];
}

/** A planting with what is carried from week to week. */
interface Member {
  readonly season: PlantingSeason;
  readonly course: PlantingCourse;
  readonly week: WeekCourse;
  readonly need: WeekNeed;
  readonly request: MinutesRequest;
  /** Its figures are there already, and hold for every week that is run as it was. */
  readonly before: EarlierWeeks | undefined;
  readonly limits: WeekLimits;
}

export interface ZoneStart {
  /** Those of its plantings, in order. */
  readonly days: readonly PlantingDays[];
  readonly rainMm: Float64Array;
  /** First week to run; the weeks before it are in the season's figures. */
  readonly from: number;
  /** Of each planting, in order, where its figures hold them. */
  readonly before?: readonly (EarlierWeeks | undefined)[];
}

export function zoneRun(season: ZoneSeason, { days, rainMm, from, before = [] }: ZoneStart): ZoneRun {
  const { zone } = season;
  const members = season.plantings.map((planting, index): Member => {
    const { weeks, figures, demand } = planting;
    const ofDay = days[index] as PlantingDays;
    const isThere = demand.first < from * 7;
    const depletionMm = isThere ? (figures[P.depletionEndMm * weeks + from - 1] as number) : demand.startMm;
    return {
      season: planting,
      course: { days: ofDay, rainMm, efficiency: zone.efficiency, weeks, figures, depletionMm },
      week: weekCourse(ofDay),
      need: noNeed(),
      request: minutesRequest(planting.planting),
      before: before[index],
      limits: { rawMm: 0, goalMm: Number.POSITIVE_INFINITY, roundingMm: 0 },
    };
  });
  return {
    season,
    members,
    requests: members.map(({ request }) => request),
    masks: openMasks(zone.wateringDays),
    figures: members.map(({ course }) => course.figures),
  };
}

/** Fills in the week's figures of the zone and its plantings. */
export function runZoneWeek({ season, members, requests, masks, figures }: ZoneRun, week: number): void {
  const { zone } = season;
  const choice = zone.choices.get(week);
  // By place: over a season, an iterator for each week takes longer than what is done with it.
  const { length } = members;
  for (let at = 0; at < length; at++) assessNeed(members[at] as Member, week * 7, zone.wateringDays);
  const minutes = decideMinutes(zone, choice, zoneMinutes(zone.rule, requests), masks.length - 1);
  for (let at = 0; at < length; at++) {
    const each = members[at] as Member;
    const openDays = openDaysOf(each, masks, choice, minutes.minutesPerDay);
    runMember(each, week, minutes.minutesPerDay, masks[openDays] as number);
    keepOutcome(each, week, minutes.roundingMinutes);
  }
  sumZoneWeek(season, figures, week, minutes);
}

function runMember(
  { course, before, week: { start, first, end } }: Member,
  week: number,
  minutesPerDay: number,
  mask: number,
): void {
  if (before !== undefined && first < end) {
    const openMask = mask & daysMask(first - start, end - start);
    const { weeks, figures, depletionMm } = course;
    if (wasRunAlike(before, weeks, week, { depletionMm, minutesPerDay, openMask })) {
      course.depletionMm = figures[P.depletionEndMm * weeks + week] as number;
      return;
    }
  }
  runWeek(course, week, minutesPerDay, mask);
}

function assessNeed(member: Member, start: number, mask: number): void {
  const { course, week, need, request } = member;
  const { planting } = member.season;
  startCourse(week, start, mask, course.depletionMm);
  weekNeed(week, need);
  if (planting.watering === 'refill' && !refillIsDue(week)) {
    need.neededMm = 0;
    need.minutesPerDay = 0;
  }
  member.limits.goalMm = planting.watering === 'keep' ? week.endGoalMm : Number.POSITIVE_INFINITY;
  request.isPresent = week.last >= 0;
  request.minutesPerDay = need.minutesPerDay;
  request.litresPerMinute = need.netMmPerMinute * planting.areaM2;
}

function openDaysOf(
  { season: { planting }, week, need }: Member,
  masks: readonly number[],
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

/** `roundingMinutes`: those a watering day by which rounding up may exceed the need. */
function keepOutcome({ season, course, limits, need }: Member, week: number, roundingMinutes: number): void {
  const { figures, weeks, days } = course;
  const isInGround = (figures[P.groundDays * weeks + week] as number) > 0;
  const lastDay = Math.min(week * 7 + 7, days.demand.end) - 1;
  const netMmPerMinute = isInGround ? (days.netMmPerMinute[lastDay] as number) : 0;
  figures[P.neededMm * weeks + week] = need.neededMm;
  figures[P.minutesWanted * weeks + week] = need.minutesPerDay < Number.POSITIVE_INFINITY ? need.minutesPerDay : 0;
  figures[P.flowLpm * weeks + week] = grossIrrigation(netMmPerMinute, course.efficiency) * season.planting.areaM2;
  limits.rawMm = days.demand.rawMm[lastDay] ?? 0;
  limits.roundingMm = roundingMinutes * (figures[P.openDays * weeks + week] as number) * netMmPerMinute;
  figures[P.state * weeks + week] = plantingStateOf(figures, weeks, week, limits);
}
