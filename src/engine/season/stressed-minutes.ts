/** Equal minutes of a week's waterings where some of its days are expected to be short of water. */
import { usedWaterMm } from '../soil/root-zone-day.ts';
import { expectedEtcMm, expectedRainOnMm, expectedRawMm, rootedOn } from './expected-days.ts';
import { tawOn } from './planting-demand.ts';
import { isAskingDay, type WeekOutlook } from './week-outlook.ts';

/** Newton's method ends after a few; by halving alone it would after so many. */
const MOST_STEPS = 100;
const PRECISION = 1e-12;

/**
 * Least minutes with which the days from a morning to the last watering leave no more than the goal, each with the use of its stress
 * (FAO-56 eq. 84). `mostMinutes`: the least if no day were short, which are enough.
 *
 * What the last day leaves is in straight pieces over the minutes, by Newton's method from above, and by halving where that leads out of what is
 * known to be too few and enough.
 */
export function stressedMinutes(
  outlook: WeekOutlook,
  morning: number,
  depletionMm: number,
  mostMinutes: number,
): number {
  const { days, last, goalMm } = outlook;
  let tooFew = 0;
  let enough = mostMinutes;
  let minutes = mostMinutes;
  for (let step = 0; step < MOST_STEPS; step++) {
    let leftMm = depletionMm;
    // What a minute more takes off what is left.
    let gainMm = 0;
    for (let day = morning; day <= last; day++) {
      const netMm = isAskingDay(outlook, day) ? (days.netMmPerMinute[day] as number) : 0;
      const rawMm = expectedRawMm(days, day);
      const tawMm = tawOn(days.demand, day);
      if (leftMm < 0) {
        leftMm = 0;
        gainMm = 0;
      }
      if (day > morning) leftMm += rootedOn(days, day);
      leftMm -= expectedRainOnMm(days, day) + minutes * netMm;
      gainMm += netMm;
      const usedMm = usedWaterMm(expectedEtcMm(days, day), leftMm, rawMm, tawMm);
      if (leftMm > rawMm) gainMm *= 1 - usedMm / (tawMm - leftMm);
      leftMm += usedMm;
    }
    const overMm = leftMm - goalMm;
    if (overMm > 0) tooFew = minutes;
    else enough = minutes;
    let next = Math.max(0, minutes + overMm / gainMm);
    if (Math.abs(next - minutes) <= PRECISION * minutes) return minutes;
    if (!(next >= tooFew && next < enough)) next = (tooFew + enough) / 2;
    minutes = next;
  }
  return enough;
}
