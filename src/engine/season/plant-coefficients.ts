/** What a planting uses as a share of reference ET, day by day. */
import type { DayNumber } from '../calendar.ts';
import type { GardenPlanting, PlantCoefficient, RestSpan } from '../garden.ts';
import { cropCoefficient } from '../plants/crop-coefficient.ts';
import { dayOfGrowth, growthCycle } from '../plants/growth-cycle.ts';
import { landscapeCoefficient } from '../plants/landscape-coefficient.ts';

/**
 * ETc / ETo of a planting on a day: landscape or crop coefficient, times the establishing factor until its date; 0 without leaves and
 * in frozen ground, a simplification of this kit (FAO-56 ch. 11 leaves frozen ground a little).
 */
export function plantCoefficientOn(planting: GardenPlanting, day: DayNumber): number {
  const coefficients = new Float64Array(1);
  fillCoefficients(coefficients, planting, { firstDay: day, first: 0, end: 1 });
  return coefficients[0] as number;
}

export interface CoefficientDays {
  /** The day that index 0 stands for. */
  readonly firstDay: DayNumber;
  /** Indices to fill; `end` is not one of them. */
  readonly first: number;
  readonly end: number;
}

/** Fills in those of some days. */
export function fillCoefficients(
  coefficients: Float64Array,
  planting: Pick<GardenPlanting, 'coefficient' | 'establishing' | 'rest'>,
  days: CoefficientDays,
): void {
  const { coefficient, establishing, rest = [] } = planting;
  const { firstDay, first, end } = days;
  if (coefficient.kind === 'crop') fillCropCoefficients(coefficients, coefficient, days);
  else coefficients.fill(landscapeCoefficient(coefficient) * (coefficient.mulchFactor ?? 1), first, end);
  if (establishing !== undefined) {
    const settled = Math.min(end, establishing.until - firstDay + 1);
    for (let index = first; index < settled; index++) {
      coefficients[index] = (coefficients[index] as number) * establishing.factor;
    }
  }
  for (const span of rest) {
    // Bulbs that are left to dry still use what is there.
    if (span.kind !== 'dry-down') fillSpan(coefficients, 0, span, days);
  }
}

/** Fills in one value on those of some days that lie in a span. */
export function fillSpan(
  values: Float64Array | Uint8Array,
  value: number,
  { from, to }: Pick<RestSpan, 'from' | 'to'>,
  { firstDay, first, end }: CoefficientDays,
): void {
  values.fill(value, Math.max(first, from - firstDay), Math.max(first, Math.min(end, to + 1 - firstDay)));
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
