/** One zone through its season: week by week, needs to minutes to balance. */
import type { GardenSite, GardenZone, WeekChoice } from '../garden.ts';
import { splitIntoCycles } from '../soil/cycle-and-soak.ts';
import type { Weather } from '../weather.ts';
import { fewestOpenDays, openMasks } from './open-days.ts';
import { plantingDays } from './planting-days.ts';
import type { PlantingDemand } from './planting-demand.ts';
import { plantingStateOf } from './planting-state.ts';
import {
  MINUTES_ORIGINS,
  PLANTING_FIELDS as P,
  PLANTING_FIELD_COUNT,
  type PlantingSeason,
  ZONE_FIELD_COUNT,
  type ZoneSeason,
} from './season.ts';
import { type PlantingCourse, runWeek } from './week-balance.ts';
import { refillIsDue, type WeekNeed, weekNeed } from './week-need.ts';
import { type PlantingVoice, zoneMinutes } from './zone-minutes.ts';
import { sumZoneWeek } from './zone-sum.ts';

const COMPUTED = MINUTES_ORIGINS.indexOf('computed');
const HAND_SET = MINUTES_ORIGINS.indexOf('hand-set');
const RUN = MINUTES_ORIGINS.indexOf('run');
const CLOSED = MINUTES_ORIGINS.indexOf('closed');

/** `known` holds the demands of the zone's plantings, in order, where they are known from a run with the same ETo. */
export function zoneSeason(
  zone: GardenZone,
  site: GardenSite,
  weather: Weather,
  known?: readonly PlantingDemand[],
): ZoneSeason {
  const weeks = weather.days / 7;
  const members = zone.plantings.map((planting, place) => member(planting, { zone, site, weather }, known?.[place]));
  const season = {
    zone,
    weeks,
    figures: new Float64Array(ZONE_FIELD_COUNT * weeks),
    plantings: members.map(({ season: plantingSeason }) => plantingSeason),
  };
  const masks = openMasks(zone.wateringDays);
  for (let week = 0; week < weeks; week++) runZoneWeek(zone, season, members, masks, week);
  return season;
}

/** A planting with what is carried from week to week. */
interface Member {
  readonly season: PlantingSeason;
  readonly course: PlantingCourse;
  readonly need: WeekNeed;
  readonly voice: PlantingVoice;
}

function member(
  planting: GardenZone['plantings'][number],
  context: { readonly zone: GardenZone; readonly site: GardenSite; readonly weather: Weather },
  known: PlantingDemand | undefined,
): Member {
  const days = plantingDays(planting, context, known);
  const weeks = context.weather.days / 7;
  const figures = new Float64Array(PLANTING_FIELD_COUNT * weeks);
  const { areaM2 } = planting;
  return {
    season: { planting, days, weeks, figures },
    course: {
      days,
      rainMm: context.weather.rain.mm,
      areaM2,
      efficiency: context.zone.efficiency,
      weeks,
      figures,
      depletionMm: days.demand.startMm,
    },
    need: { neededMm: 0, minutesPerDay: 0, endGoalMm: 0 },
    voice: {
      plantingId: planting.id,
      hasShutOff: planting.hasShutOff,
      isPresent: false,
      minutesPerDay: 0,
      litresPerMinute: 0,
    },
  };
}

function runZoneWeek(
  zone: GardenZone,
  season: ZoneSeason,
  members: readonly Member[],
  masks: readonly number[],
  week: number,
): void {
  const choice = zone.choices.get(week);
  const dayCount = masks.length - 1;
  for (const each of members) assessNeed(each, week * 7, zone.wateringDays);
  const wanted = zoneMinutes(
    zone.rule,
    members.map(({ voice }) => voice),
  );
  const { origin, minutesPerDay, cycles } = decideMinutes(zone, choice, wanted, dayCount);
  const rounding =
    origin === COMPUTED ? Math.max(zone.timerStepMinutes, minutesPerDay - wanted) : zone.timerStepMinutes;
  for (const each of members) runMember(each, { week, masks, minutesPerDay, choice, rounding });
  sumZoneWeek(season, week, { origin, minutesPerDay, cycles, wanted, dayCount });
}

function assessNeed({ season, course, need, voice }: Member, start: number, mask: number): void {
  const { days } = course;
  weekNeed(days, start, mask, course.depletionMm, need);
  if (season.planting.watering === 'refill' && !refillIsDue(days, start, mask, course.depletionMm)) {
    need.neededMm = 0;
    need.minutesPerDay = 0;
    need.endGoalMm = Number.POSITIVE_INFINITY;
  }
  let netMm = 0;
  let present = false;
  for (let offset = 0; offset < 7; offset++) {
    const day = start + offset;
    if (((mask >> offset) & 1) === 0 || day < days.demand.first || day >= days.demand.end) continue;
    present = true;
    netMm += days.netMmPerMinute[day] as number;
  }
  voice.isPresent = present;
  voice.minutesPerDay = need.minutesPerDay;
  voice.litresPerMinute = netMm * course.areaM2;
}

interface Minutes {
  readonly origin: number;
  readonly minutesPerDay: number;
  readonly cycles: number;
}

/** What was really run wins over a closed week, that over a hand-set number, that over the calculation. */
function decideMinutes(zone: GardenZone, choice: WeekChoice | undefined, wanted: number, dayCount: number): Minutes {
  const given = (minutes: number, origin: number): Minutes => {
    const minutesPerDay = minutes / dayCount;
    return {
      origin,
      minutesPerDay,
      cycles: Math.ceil(minutesPerDay / zone.longestCycleMinutes) || (minutes > 0 ? 1 : 0),
    };
  };
  if (choice?.minutesRun !== undefined) return given(choice.minutesRun, RUN);
  if (choice?.closed) return { origin: CLOSED, minutesPerDay: 0, cycles: 0 };
  if (choice?.minutes !== undefined) return given(choice.minutes, HAND_SET);
  const { longestCycleMinutes, timerStepMinutes } = zone;
  const { cycles, minutes } = splitIntoCycles({ minutes: wanted, longestCycleMinutes, timerStepMinutes });
  return { origin: COMPUTED, minutesPerDay: minutes, cycles };
}

function runMember(
  { season, course, need }: Member,
  run: {
    readonly week: number;
    readonly masks: readonly number[];
    readonly minutesPerDay: number;
    readonly choice: WeekChoice | undefined;
    readonly rounding: number;
  },
): void {
  const { week, masks, minutesPerDay } = run;
  const { figures, weeks, areaM2, days } = course;
  const start = week * 7;
  const openDays = minutesPerDay > 0 ? openDaysOf(season, course, need, run) : 0;
  const mask = masks[openDays] as number;
  runWeek(course, week, minutesPerDay, mask);
  figures[P.neededMm * weeks + week] = need.neededMm;
  figures[P.neededLitres * weeks + week] = need.neededMm * areaM2;
  figures[P.minutesWanted * weeks + week] = need.minutesPerDay < Number.POSITIVE_INFINITY ? need.minutesPerDay : 0;
  const lastDay = Math.min(start + 7, days.demand.end) - 1;
  figures[P.state * weeks + week] = plantingStateOf(figures, weeks, week, {
    rawMm: days.demand.rawMm[lastDay] ?? 0,
    goalMm: need.endGoalMm,
    roundingMm: run.rounding * (days.netMmPerMinute[lastDay] ?? 0) * openDays,
  });
}

function openDaysOf(
  { planting }: PlantingSeason,
  course: PlantingCourse,
  need: WeekNeed,
  run: {
    readonly week: number;
    readonly masks: readonly number[];
    readonly minutesPerDay: number;
    readonly choice: WeekChoice | undefined;
  },
): number {
  const { masks } = run;
  if (!planting.hasShutOff) return masks.length - 1;
  const byHand = run.choice?.openDays?.get(planting.id);
  if (byHand !== undefined) return Math.min(byHand, masks.length - 1);
  if (need.minutesPerDay === 0) return 0;
  const { days, depletionMm } = course;
  return fewestOpenDays({ days, start: run.week * 7, depletionMm }, masks, run.minutesPerDay);
}
