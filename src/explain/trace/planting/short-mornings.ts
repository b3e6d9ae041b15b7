/** Mornings that expect plants to use less on a day of their week than they would: which, and on which days. */
import {
  expectedEtcMm,
  expectedRainOnMm,
  expectedRawMm,
  isAskingDay,
  rootedOn,
} from '../../../engine/season/expected-days.ts';
import { tawOn } from '../../../engine/season/planting-demand.ts';
import type { WeekOutlook } from '../../../engine/season/week-outlook.ts';
import { usedWaterMm } from '../../../engine/soil/root-zone-day.ts';
import type { PlantingMorning } from './planting-morning.ts';

/** Whether it asks for fewer minutes than if no day were short. */
export function isForShortDays({ index, depletionMm, outlook }: PlantingMorning): boolean {
  const { changeMm, gainMm, laterMinutes, easyMinutes, goalMm, start } = outlook;
  const of = (byDay: readonly number[]) => byDay[index - start] as number;
  const gain = of(gainMm);
  const ofMorning = (depletionMm + of(changeMm) - goalMm) / gain;
  return outlook.days.demand.isWhole === true && gain > 0 && Math.max(ofMorning, of(laterMinutes)) > of(easyMinutes);
}

/** Days up to the week's last watering, by the expected balance with so many minutes on each watering day. */
export function shortDaysWith(
  outlook: WeekOutlook,
  from: number,
  depletionMm: number,
  minutes: number,
): readonly number[] {
  const { days, last } = outlook;
  const short: number[] = [];
  let leftMm = depletionMm;
  for (let day = from; day <= last; day++) {
    if (day > from) leftMm = Math.max(0, leftMm) + rootedOn(days, day);
    if (isAskingDay(outlook, day)) leftMm -= minutes * (days.netMmPerMinute[day] as number);
    leftMm -= expectedRainOnMm(days, day);
    const rawMm = expectedRawMm(days, day);
    const etcMm = expectedEtcMm(days, day);
    const usedMm = usedWaterMm(etcMm, leftMm, rawMm, tawOn(days.demand, day));
    if (usedMm < etcMm) short.push(day);
    leftMm += usedMm;
  }
  return short;
}
