import { increasingRoot } from '../line/increasing-root.ts';
import { gammaCumulative } from './gamma-distribution.ts';
import { LEAST_RAIN_DAY_MM, rainDepths } from './rain-days.ts';

const USED_THRESHOLD_MM = 0.25;

/**
 * Days of a month with at least 0.25 mm (0.01 in) of rain, from its days with at least another threshold, mm, and its rain, mm:
 * many weather offices count days from 1 mm on.
 *
 * For a threshold above, it is the least number of days of which, when they share the month's rain by the distribution of
 * `rainDepths`, as many reach the threshold as are given; where no number does, the number of which the most do. For a threshold
 * below 0.25 mm, the same distribution says how many of the days given reach 0.25 mm. From 0.25 to 0.3 mm, which is one reading
 * of a gauge, the days are as given. Never more than the month has days, nor than its rain is enough for at 0.3 mm each; 0 where
 * none are given or no rain falls.
 *
 * The conversion is ours; the distribution is that of Geng, Penning de Vries and Supit 1986.
 */
export function rainDaysAtLeast025Mm(rainDays: number, thresholdMm: number, rainMm: number, monthDays: number): number {
  if (!(rainDays > 0 && rainMm > 0)) return 0;
  const most = Math.min(monthDays, rainMm / LEAST_RAIN_DAY_MM);
  const reaching = (days: number, mm: number): number => {
    const { shape, scaleMm } = rainDepths(rainMm / days);
    return days * (1 - gammaCumulative(mm / scaleMm, shape));
  };
  if (thresholdMm < USED_THRESHOLD_MM) {
    return Math.min(most, (rainDays * reaching(rainDays, USED_THRESHOLD_MM)) / reaching(rainDays, thresholdMm));
  }
  if (thresholdMm <= LEAST_RAIN_DAY_MM || rainDays >= most) return Math.min(most, rainDays);
  const missing = (days: number): number => reaching(days, thresholdMm) - rainDays;
  let best = rainDays;
  for (let low = rainDays; low < most; low += 1) {
    const high = Math.min(most, low + 1);
    if (missing(high) >= 0) return increasingRoot({ of: missing, low, high, tolerance: 1e-9 });
    if (missing(high) > missing(best)) best = high;
  }
  return best;
}
