/** One planting's week, laid open for its steps: figures, daily arrays, and the course of the week as the season ran it. */
import type { GardenPlanting, GardenZone } from '../../../engine/garden.ts';
import { type PlantingDays, plantingDays } from '../../../engine/season/planting-days.ts';
import { type PlantingVolume, plantingFigure } from '../../../engine/season/planting-week.ts';
import type { PLANTING_FIELDS, PlantingSeason, Season, ZoneSeason } from '../../../engine/season/season.ts';
import { setOut, type WeekCourse, weekCourse } from '../../../engine/season/week-course.ts';
import { noNeed, refillIsDue, type WeekNeed, weekNeed } from '../../../engine/season/week-need.ts';
import { zoneFigure } from '../../../engine/season/zone-week.ts';
import type { DaySpan } from '../day-span.ts';
import { weekdayName } from '../names.ts';
import { type CourseDay, courseDays } from './course-days.ts';

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
  /** Set out on the week with every watering day open. */
  readonly course: WeekCourse;
  /** What the week would ask for, whether or not a refill is due. */
  readonly need: WeekNeed;
  /** False for a planting that is watered deep and seldom and is left alone this week. */
  readonly isDue: boolean;
  /** Its days in the ground, as they were run. */
  readonly daily: readonly CourseDay[];
  at(field: PlantingField): number;
  /** The same of the week before. */
  before(field: PlantingField): number;
  /** Weekday of a day of the season. */
  dayName(place: number): string;
}

export function plantingCell(season: Season, zoneSeason: ZoneSeason, own: PlantingSeason, week: number): PlantingCell {
  const { zone } = zoneSeason;
  const { planting } = own;
  const days = plantingDays(own, { zone, site: season.garden.site, weather: season.weather });
  const at = (field: PlantingField) => plantingFigure(own, field, week);
  const course = weekCourse(days);
  setOut(course, 7 * week, zone.wateringDays, at('depletionStartMm'));
  const need = noNeed();
  weekNeed(course, need);
  const ground = { first: course.first, end: Math.max(course.first, course.end) };
  return {
    season,
    zoneSeason,
    zone,
    planting,
    week,
    days,
    ground,
    course,
    need,
    isDue: planting.watering === 'keep' || refillIsDue(course),
    daily: courseDays(course, zoneFigure(zoneSeason, 'minutesPerDay', week), at('openMask')),
    at,
    before: (field) => plantingFigure(own, field, week - 1),
    dayName: (place) => weekdayName(season.garden.span.firstDay + place),
  };
}
