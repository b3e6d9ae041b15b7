/** Runs one planting through one week of the root-zone balance (FAO-56 eq. 84 to 88, as `rootZoneDay`) and keeps its figures. */
import type { PlantingDays } from './planting-days.ts';
import { PLANTING_FIELDS as F } from './season.ts';

export interface PlantingCourse {
  readonly days: PlantingDays;
  readonly rainMm: Float64Array;
  readonly areaM2: number;
  readonly efficiency: number;
  readonly weeks: number;
  readonly figures: Float64Array;
  /** Depletion now, mm: its start until the planting is in the ground, then changed as the weeks go by. */
  depletionMm: number;
}

/** `openMask` holds the days on which its line runs `minutesPerDay`, bit 0 = the week's first day. */
export function runWeek(course: PlantingCourse, week: number, minutesPerDay: number, openMask: number): void {
  const { days, rainMm, areaM2, efficiency, weeks, figures } = course;
  const { soakedMm, netMmPerMinute } = days;
  const { etcMm, rawMm, tawMm, first: ground, end: groundEnd } = days.demand;
  const start = week * 7;
  const first = start > ground ? start : ground;
  const end = start + 7 < groundEnd ? start + 7 : groundEnd;
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
    const irrigation = open === 1 ? minutesPerDay * (netMmPerMinute[day] as number) : 0;
    const brought = rainIn + irrigation;
    let use = etc;
    if (depletion > raw) {
      use = (etc * (tawMm > depletion ? tawMm - depletion : 0)) / (tawMm - raw);
      shortDays++;
    }
    const present = tawMm - depletion + brought;
    if (use > present) use = present;
    depletion += use - brought;
    if (depletion < 0) {
      drained -= depletion;
      irrigationDrained += irrigation < -depletion ? irrigation : -depletion;
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

  const gross = net / efficiency;
  const rainDrained = drained - irrigationDrained;
  const place = (field: number) => field * weeks + week;
  figures[place(F.demandMm)] = demand;
  figures[place(F.usedMm)] = used;
  figures[place(F.rainMm)] = rain;
  figures[place(F.rainSoakedMm)] = soaked;
  figures[place(F.rainDrainedMm)] = rainDrained;
  figures[place(F.irrigationGrossMm)] = gross;
  figures[place(F.irrigationNetMm)] = net;
  figures[place(F.irrigationDrainedMm)] = irrigationDrained;
  figures[place(F.depletionStartMm)] = depletionStart;
  figures[place(F.depletionEndMm)] = depletion;
  figures[place(F.openDays)] = openDays;
  figures[place(F.openMask)] = openMask;
  figures[place(F.shortDays)] = shortDays;
  figures[place(F.groundDays)] = end - first;
  figures[place(F.litres)] = gross * areaM2;
  figures[place(F.rainLitres)] = rain * areaM2;
  figures[place(F.demandLitres)] = demand * areaM2;
  figures[place(F.usedLitres)] = used * areaM2;
  figures[place(F.rainStayedLitres)] = (soaked - rainDrained) * areaM2;
  figures[place(F.irrigationStayedLitres)] = (net - irrigationDrained) * areaM2;
  figures[place(F.drainedLitres)] = drained * areaM2;
  figures[place(F.lostLitres)] = (rain - soaked + gross - net) * areaM2;
  figures[place(F.storageLitres)] = (depletionStart - depletion) * areaM2;
}
