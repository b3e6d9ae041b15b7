/** A planting's week day by day, by the root-zone balance in words. */
import type { WeekCourse } from '../../../engine/season/week-course.ts';
import { rootZoneDay } from '../../../engine/soil/root-zone-day.ts';

export interface CourseDay {
  /** Day of the season. */
  readonly place: number;
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

/** Days in the ground with so many minutes on the days of `mask`, bit 0 = the week's first day. */
export function courseDays(course: WeekCourse, minutesPerDay: number, mask: number): readonly CourseDay[] {
  const { days, start, first, end } = course;
  const { etcMm, rawMm, tawMm } = days.demand;
  const daily: CourseDay[] = [];
  let startMm = course.depletionMm;
  for (let place = first; place < end; place++) {
    const isOpen = (mask >> (place - start)) & 1;
    const given = {
      etcMm: etcMm[place] as number,
      rawMm: rawMm[place] as number,
      tawMm,
      irrigationMm: isOpen * minutesPerDay * (days.netMmPerMinute[place] as number),
    };
    const soakedMm = days.soakedMm[place] as number;
    const { depletionMm: endMm, ...outcome } = rootZoneDay({ ...given, depletionMm: startMm, rainMm: soakedMm });
    daily.push({ place, ...given, soakedMm, startMm, endMm, ...outcome });
    startMm = endMm;
  }
  return daily;
}
