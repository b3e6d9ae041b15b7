/**
 * The watering days, and the wetted share, by which the rain of a calendar month is reckoned: those that most weeks of the month have, of the whole
 * season; the first of them where several have as many. A month that no week has takes those of the nearest that has some, the later of two.
 */
import type { GardenZone, SeasonSpan } from '../../src/engine/garden.ts';
import { yearMonthOf } from './calendar.ts';
import { allowedMask } from './watering-days.ts';

export function monthMasks(zone: GardenZone, span: SeasonSpan): (month: number) => number {
  return usualByMonth(span, (week) => allowedMask(zone, week));
}

/** What most weeks have, by calendar month, 0 to 11. A week belongs to the month of its fourth day. */
export function usualByMonth(
  { firstDay, weeks }: SeasonSpan,
  ofWeek: (week: number) => number,
): (month: number) => number {
  const ofMonth = new Map<number, number[]>();
  for (let week = 0; week < weeks; week++) {
    const { month } = yearMonthOf(firstDay + 7 * week + 3);
    ofMonth.set(month, [...(ofMonth.get(month) ?? []), ofWeek(week)]);
  }
  const usual = Array.from({ length: 12 }, (_, month) => {
    const near = [0, 1, 2, 3, 4, 5, 6].flatMap((away) => [month + away, month - away]);
    const known = near.map((each) => ofMonth.get((each + 24) % 12)).find((masks) => masks !== undefined) ?? [];
    return mostUsual(known);
  });
  return (month) => usual[month] ?? Number.NaN;
}

/** The first of those that stand most often; 0 where there is none. */
export function mostUsual(masks: readonly number[]): number {
  const count = (mask: number) => masks.filter((each) => each === mask).length;
  return masks.reduce((found, mask) => (count(mask) > count(found) ? mask : found), masks[0] ?? 0);
}
