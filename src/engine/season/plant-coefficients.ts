/** What a planting uses as a share of reference ET, day by day. */
import type { DayNumber } from '../calendar.ts';
import type { GardenPlanting, PlantCoefficient } from '../garden.ts';
import { cropCoefficient } from '../plants/crop-coefficient.ts';
import { dayOfGrowth, growthCycle } from '../plants/growth-cycle.ts';
import { landscapeCoefficient } from '../plants/landscape-coefficient.ts';

/** ETc / ETo of a planting on a day: landscape or crop coefficient, times the establishing factor until its date. */
export function plantCoefficientOn(planting: GardenPlanting, day: DayNumber): number {
  const coefficients = new Float64Array(1);
  fillCoefficients(coefficients, planting, { firstDay: day, first: 0, end: 1 });
  return coefficients[0] as number;
}

export interface CoefficientDays {
  /** The day that place 0 stands for. */
  readonly firstDay: DayNumber;
  /** Places to fill; `end` is not. */
  readonly first: number;
  readonly end: number;
}

/** Fills in those of some days, place by place. */
export function fillCoefficients(
  coefficients: Float64Array,
  planting: Pick<GardenPlanting, 'coefficient' | 'establishing'>,
  days: CoefficientDays,
): void {
  const { coefficient, establishing } = planting;
  const { firstDay, first, end } = days;
  if (coefficient.kind === 'crop') fillCropCoefficients(coefficients, coefficient, days);
  else coefficients.fill(landscapeCoefficient(coefficient), first, end);
  if (establishing === undefined) return;
  const settled = Math.min(end, establishing.until - firstDay + 1);
  for (let index = first; index < settled; index++) {
    coefficients[index] = (coefficients[index] as number) * establishing.factor;
  }
}

type CropGrowth = Extract<PlantCoefficient, { kind: 'crop' }>;

/** One round of growth after another. */
function fillCropCoefficients(
  coefficients: Float64Array,
  crop: CropGrowth,
  { firstDay, first, end }: CoefficientDays,
): void {
  const { kcInitial: kcIni, kcMid, kcEnd } = crop;
  const [iniDays, devDays, midDays, lateDays] = crop.stageDays;
  const stages = { iniDays, devDays, midDays, lateDays };
  const kc = { kcIni, kcMid, kcEnd };
  let index = first;
  while (index < end) {
    const cycle = growthCycle(crop, firstDay + index);
    for (const until = Math.min(end, cycle.next - firstDay); index < until; index++) {
      coefficients[index] = cropCoefficient(dayOfGrowth(crop, cycle, firstDay + index), stages, kc);
    }
  }
}
