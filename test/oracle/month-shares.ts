/** Share of each month's normal rain that counts for a planting, by a relation of the month. */
import type { GardenPlanting, RainRule } from '../../src/engine/garden.ts';
import { daysIn, yearMonthOf } from './calendar.ts';
import type { DemandDay } from './planting-facts.ts';
import { effectiveRain, type MonthlyMethod } from './rain.ts';
import { wateringDayCount } from './watering-days.ts';

/** By `monthName`; months in which the planting is not in the ground are left out. */
export type MonthShares = ReadonlyMap<string, number>;

interface Growing {
  readonly planting: GardenPlanting;
  readonly wateringDays: number;
  readonly demand: readonly DemandDay[];
}

/** The same month of another year is another month. */
export function monthName(date: number): string {
  const { year, month } = yearMonthOf(date);
  return `${year}/${month}`;
}

/** The days in the ground, month by month. */
export function daysByMonth<Day extends DemandDay>(days: readonly Day[]): ReadonlyMap<string, readonly Day[]> {
  const months = new Map<string, Day[]>();
  for (const day of days.filter(({ inGround }) => inGround)) {
    const name = monthName(day.date);
    months.set(name, [...(months.get(name) ?? []), day]);
  }
  return months;
}

export function monthShares(
  rule: RainRule & { readonly method: MonthlyMethod },
  monthlyRainMm: readonly number[],
  growing: Growing,
): MonthShares {
  return new Map(
    [...daysByMonth(growing.demand)].map(([name, days]) => [name, shareOf(rule, monthlyRainMm, growing, days)]),
  );
}

/** The month is reckoned as if its days in the ground were all of it; without a watering day, all that is readily available is drawn. */
function shareOf(
  rule: RainRule & { readonly method: MonthlyMethod },
  monthlyRainMm: readonly number[],
  { planting, wateringDays }: Growing,
  days: readonly DemandDay[],
): number {
  const month = yearMonthOf(days[0]?.date ?? Number.NaN);
  const rainMm = monthlyRainMm[month.month] ?? Number.NaN;
  if (rainMm === 0) return 0;
  const etcMm = mean(days.map(({ expectedEtcMm }) => expectedEtcMm));
  const rawMm = mean(days.map(({ expectedRawMm }) => expectedRawMm));
  const waterings = wateringDayCount(wateringDays);
  const drawnMm = planting.watering === 'refill' || waterings === 0 ? rawMm : Math.min(rawMm, (etcMm * 7) / waterings);
  return effectiveRain(rule, { rainMm, etcMm: etcMm * daysIn(month), storageMm: drawnMm }) / rainMm;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
