/** Days on which a planting asks for no water: without leaves, in frozen ground, left to dry before harvest. */
import { civilDate, type DayNumber, dayNumberOf, daysInMonth } from '../../engine/calendar.ts';
import type { RestSpan } from '../../engine/garden.ts';
import { DRY_DOWN_DAYS } from '../../engine/plants/dry-down.data.ts';
import { isAnnualCrop } from '../../engine/plants/find-crop.ts';
import type { PlanPlanting } from '../schema/plan-schema.ts';

export interface RestContext {
  /** First and last day in the ground, of the season. */
  readonly from: DayNumber;
  readonly to: DayNumber;
  /** Last day in the ground. */
  readonly lastDay: DayNumber;
  /** Months whose ground is frozen, bit 0 = January. */
  readonly frozenMonths: number;
}

/** In order, none over another: frozen ground before leafless months, both before a dry-down. Undefined where there is none. */
export function restOf(
  planting: Pick<PlanPlanting, 'need' | 'inGround' | 'leaflessMonths' | 'dryDownDays'>,
  { from, to, lastDay, frozenMonths }: RestContext,
): readonly RestSpan[] | undefined {
  const leafless = (planting.leaflessMonths ?? []).reduce((mask, month) => mask | (1 << (month - 1)), 0);
  const dryFrom = lastDay + 1 - dryDownDays(planting);
  const spans: RestSpan[] = [];
  const add = (first: DayNumber, last: DayNumber, kind: RestSpan['kind']) => {
    const before = spans.at(-1);
    if (first > last) return;
    if (before?.kind === kind && before.to === first - 1) spans[spans.length - 1] = { ...before, to: last };
    else spans.push({ from: first, to: last, kind });
  };
  if ((frozenMonths | leafless) === 0) add(Math.max(from, dryFrom), to, 'dry-down');
  else
    for (let first = from; first <= to; ) {
      const { month, year } = civilDate(first);
      const last = Math.min(to, dayNumberOf({ year, month, dayOfMonth: 1 }) + daysInMonth(year, month) - 1);
      const isIn = (months: number) => ((months >> month) & 1) === 1;
      if (isIn(frozenMonths)) add(first, last, 'frozen');
      else if (isIn(leafless)) add(first, last, 'leafless');
      else add(Math.max(first, dryFrom), last, 'dry-down');
      first = last + 1;
    }
  return spans.length > 0 ? spans : undefined;
}

/** An annual crop's, and of any planting that is pulled on a day that the plan names. */
function dryDownDays({ need, inGround, dryDownDays: typed }: Parameters<typeof restOf>[0]): number {
  const isAnnual = need.kind === 'crop' && isAnnualCrop(need.crop);
  if (!isAnnual && inGround?.to === undefined) return 0;
  return typed ?? (need.kind === 'crop' ? (DRY_DOWN_DAYS[need.crop] ?? 0) : 0);
}

/** Months whose normal lowest temperature is below freezing, bit 0 = January; none where the normals have no temperatures. */
export function frozenMonthsOf(minTemperatureC: readonly number[] | undefined): number {
  return (minTemperatureC ?? []).reduce((mask, lowest, month) => (lowest < 0 ? mask | (1 << month) : mask), 0);
}
