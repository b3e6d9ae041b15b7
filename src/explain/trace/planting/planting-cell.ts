/** One planting's week with all that its steps read: figures, daily arrays, and the course of the week as the season ran it. */
import type { DayNumber } from '../../../engine/calendar.ts';
import type { GardenPlanting, GardenZone } from '../../../engine/garden.ts';
import { type PlantingDays, plantingDays } from '../../../engine/season/planting-days.ts';
import { type PlantingVolume, plantingFigure } from '../../../engine/season/planting-week.ts';
import type { PLANTING_FIELDS, PlantingSeason, Season, ZoneSeason } from '../../../engine/season/season.ts';
import { startCourse, type WeekCourse, weekCourse } from '../../../engine/season/week-course.ts';
import { noNeed, refillIsDue, type WeekNeed, weekNeed } from '../../../engine/season/week-need.ts';
import { zoneFigure } from '../../../engine/season/zone-week.ts';
import { rootZoneDay } from '../../../engine/soil/root-zone-day.ts';
import type { DaySpan } from '../day-span.ts';

export type PlantingField = keyof typeof PLANTING_FIELDS | PlantingVolume;

export interface PlantingCell {
  readonly season: Season;
  readonly zoneSeason: ZoneSeason;
  readonly zone: GardenZone;
  readonly planting: GardenPlanting;
  readonly week: number;
  readonly days: PlantingDays;
  /** Its days in the ground in this week; empty where there is none. */
  readonly ground: DaySpan;
  /** The week with every watering day open. */
  readonly course: WeekCourse;
  /** What the week would ask for, whether or not a refill is due. */
  readonly need: WeekNeed;
  /** False for a planting that is watered deep and infrequently and is left alone this week. */
  readonly isDue: boolean;
  /** Minutes that its zone runs on a watering day. */
  readonly minutesPerDay: number;
  /** Its days in the ground, as they were run. */
  readonly daily: readonly CourseDay[];
  at(field: PlantingField): number;
  /** The same of the week before. */
  before(field: PlantingField): number;
  /** The calendar's day of a day of the season. */
  dayOf(index: number): DayNumber;
}

/** A planting's day by the root-zone balance, mm. */
export interface CourseDay {
  /** From the season's first day. */
  readonly index: number;
  readonly day: DayNumber;
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
  const { planting } = own;
  const days = plantingDays(own, { zone, site: season.garden.site, weather: season.weather });
  const at = (field: PlantingField) => plantingFigure(own, field, week);
  const course = weekCourse(days);
  startCourse(course, 7 * week, zone.wateringDays, at('depletionStartMm'));
  const need = noNeed();
  weekNeed(course, need);
  const minutesPerDay = zoneFigure(zoneSeason, 'minutesPerDay', week);
  const dayOf = (index: number) => season.garden.span.firstDay + index;
  return {
    season,
    zoneSeason,
    zone,
    planting,
    week,
    days,
    ground: { first: course.first, end: Math.max(course.first, course.end) },
    course,
    need,
    isDue: planting.watering === 'keep' || refillIsDue(course),
    minutesPerDay,
    daily: courseDays({ course, dayOf }, minutesPerDay, at('openMask')),
    at,
    before: (field) => plantingFigure(own, field, week - 1),
    dayOf,
  };
}

/** Days in the ground with so many minutes on the days of `mask`, bit 0 = the week's first day. */
export function courseDays(
  { course, dayOf }: Pick<PlantingCell, 'course' | 'dayOf'>,
  minutesPerDay: number,
  mask: number,
): readonly CourseDay[] {
  const { days, start, first, end } = course;
  const { etcMm, rawMm, tawMm } = days.demand;
  const daily: CourseDay[] = [];
  let startMm = course.depletionMm;
  for (let index = first; index < end; index++) {
    const given = {
      etcMm: etcMm[index] as number,
      rawMm: rawMm[index] as number,
      tawMm,
      irrigationMm: isOpenOn(mask, index - start) ? minutesPerDay * (days.netMmPerMinute[index] as number) : 0,
    };
    const soakedMm = days.soakedMm[index] as number;
    const { depletionMm: endMm, ...outcome } = rootZoneDay({ ...given, depletionMm: startMm, rainMm: soakedMm });
    daily.push({ index, day: dayOf(index), ...given, soakedMm, startMm, endMm, ...outcome });
    startMm = endMm;
  }
  return daily;
}

/** Whether the day of the week `offset`, 0 = its first, is in a mask of days. */
export function isOpenOn(mask: number, offset: number): boolean {
  return ((mask >> offset) & 1) === 1;
}

/** Sum of a figure of some days. */
export function totalOf(daily: readonly CourseDay[], field: 'etcMm' | 'soakedMm'): number {
  return daily.reduce((sum, day) => sum + day[field], 0);
}
