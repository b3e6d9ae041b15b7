/** Equal minutes of a week's waterings where on some of its days plants are expected to use less than they would. */
import { usedWaterMm } from '../soil/root-zone-day.ts';
import {
  type AskingWeek,
  type ExpectedDays,
  expectedEtcMm,
  expectedRainOnMm,
  expectedRawMm,
  isAskingDay,
  rootedOn,
} from './expected-days.ts';
import { tawOn } from './planting-demand.ts';

/** From a morning of a week to its last watering, as `WeekOutlook`. */
interface DaysAhead extends AskingWeek {
  readonly days: ExpectedDays;
  readonly last: number;
  readonly goalMm: number;
}

/** By halving alone it would take about so many. */
const MOST_STEPS = 100;
const PRECISION = 1e-12;

/** After the last watering day, mm: what is missing, below 0 what drains, and what a minute more would take off it. */
const end = { leftMm: 0, gainMm: 0 };

/**
 * Least minutes with which the days from a morning to the last watering leave no more than the goal, each with the use of its stress
 * (FAO-56 eq. 84) and drained at its end (eq. 88). `mostMinutes`: enough if all plants used all that they would, and so enough.
 *
 * Over the minutes, what is left is made of straight pieces that rise less steeply the drier it is, but where a day begins to drain: Newton's
 * method from above finds it in a few steps, and halving where that leads out of what is known to be too few and enough.
 */
export function stressedMinutes(outlook: DaysAhead, morning: number, depletionMm: number, mostMinutes: number): number {
  let tooFew = 0;
  let enough = mostMinutes;
  let minutes = mostMinutes;
  for (let step = 0; step < MOST_STEPS; step++) {
    runExpected(outlook, morning, depletionMm, minutes);
    const overMm = end.leftMm - outlook.goalMm;
    if (overMm > 0) tooFew = minutes;
    else enough = minutes;
    let next = Math.max(0, minutes + overMm / end.gainMm);
    if (Math.abs(next - minutes) <= PRECISION * minutes) return minutes;
    if (!(next >= tooFew && next < enough)) next = (tooFew + enough) / 2;
    minutes = next;
  }
  return enough;
}

/** The days as `rootZoneDay` has them, as they are expected; the last is not drained. */
function runExpected(outlook: DaysAhead, morning: number, depletionMm: number, minutes: number): void {
  const { days, last } = outlook;
  let leftMm = depletionMm;
  let gainMm = 0;
  for (let day = morning; day <= last; day++) {
    const etcMm = expectedEtcMm(days, day);
    const tawMm = tawOn(days.demand, day);
    if (day > morning) leftMm += rootedOn(days, day);
    leftMm -= expectedRainOnMm(days, day);
    if (isAskingDay(outlook, day)) {
      const netMm = days.netMmPerMinute[day] as number;
      leftMm -= minutes * netMm;
      gainMm += netMm;
    }
    const usedMm = usedWaterMm(etcMm, leftMm, expectedRawMm(days, day), tawMm);
    // Of what is there the same share is used, whatever the minutes.
    if (usedMm < etcMm) gainMm *= 1 - usedMm / (tawMm - leftMm);
    leftMm += usedMm;
    if (leftMm < 0 && day < last) leftMm = gainMm = 0;
  }
  end.leftMm = leftMm;
  end.gainMm = gainMm;
}
