/** Runs one planting through one week of the root-zone balance (FAO-56 eq. 84 to 88) and keeps its figures. */
import { grossIrrigation } from '../application/run-time.ts';
import { endDepletionMm, isShort, usedWaterMm } from '../soil/root-zone-day.ts';
import { daysMask } from './days-mask.ts';
import type { PlantingDays } from './planting-days.ts';
import { PLANTING_FIELDS as P } from './season.ts';

/** A planting on its way through the season. */
export interface PlantingCourse {
  readonly days: PlantingDays;
  /** All rain that falls, by day. */
  readonly rainMm: Float64Array;
  readonly efficiency: number;
  readonly weeks: number;
  readonly figures: Float64Array;
  /** Depletion now, mm: its start until the planting is in the ground, then changed as the weeks go by. */
  depletionMm: number;
}

/** `openMask` holds the days on which its line runs `minutesPerDay`, bit 0 = the week's first day. */
export function runWeek(course: PlantingCourse, week: number, minutesPerDay: number, openMask: number): void {
  const { days, rainMm, weeks, figures } = course;
  const { soakedMm, netMmPerMinute } = days;
  const { etcMm, rawMm, tawMm, first: ground, end: groundEnd } = days.demand;
  const start = week * 7;
  const first = Math.max(start, ground);
  const end = Math.min(start + 7, groundEnd);
  if (first >= end) return;

  const depletionStart = course.depletionMm;
  let depletion = depletionStart;
  let demand = 0;
  let used = 0;
  let rain = 0;
  let soaked = 0;
  let net = 0;
  let drained = 0;
  let irrigationDrained = 0;
  let shortDays = 0;
  let openDays = 0;
  for (let day = first; day < end; day++) {
    const etc = etcMm[day] as number;
    const raw = rawMm[day] as number;
    const rainIn = soakedMm[day] as number;
    const open = (openMask >> (day - start)) & 1;
    const irrigation = open * minutesPerDay * (netMmPerMinute[day] as number);
    const brought = rainIn + irrigation;
    const use = usedWaterMm(etc, depletion, raw, tawMm, brought);
    if (isShort(depletion, raw)) shortDays++;
    depletion = endDepletionMm(depletion, use, brought);
    if (depletion < 0) {
      drained -= depletion;
      irrigationDrained += Math.min(irrigation, -depletion);
      depletion = 0;
    }
    openDays += open;
    demand += etc;
    used += use;
    rain += rainMm[day] as number;
    soaked += rainIn;
    net += irrigation;
  }
  course.depletionMm = depletion;

  figures[P.demandMm * weeks + week] = demand;
  figures[P.usedMm * weeks + week] = used;
  figures[P.rainMm * weeks + week] = rain;
  figures[P.rainSoakedMm * weeks + week] = soaked;
  figures[P.rainDrainedMm * weeks + week] = drained - irrigationDrained;
  figures[P.irrigationNetMm * weeks + week] = net;
  figures[P.irrigationGrossMm * weeks + week] = grossIrrigation(net, course.efficiency);
  figures[P.irrigationDrainedMm * weeks + week] = irrigationDrained;
  figures[P.depletionStartMm * weeks + week] = depletionStart;
  figures[P.depletionEndMm * weeks + week] = depletion;
  figures[P.openDays * weeks + week] = openDays;
  figures[P.openMask * weeks + week] = openMask & daysMask(first - start, end - start);
  figures[P.shortDays * weeks + week] = shortDays;
  figures[P.groundDays * weeks + week] = end - first;
}
