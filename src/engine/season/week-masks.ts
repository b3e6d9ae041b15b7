/** On which days a zone waters, week by week, as masks: bit 0 = the week's first day. */
import type { GardenZone } from '../garden.ts';
import type { Weather } from '../weather.ts';
import { originOf } from './given-minutes.ts';
import { shareIn, type WettedPlanting } from './wetted-week.ts';
import { COMPUTED } from './zone-run.ts';

export type WateringDays = Pick<GardenZone, 'wateringDays' | 'wateringDaysByWeek'>;

/** 0 where a restriction leaves none. */
export function weekMask({ wateringDays, wateringDaysByWeek }: WateringDays, week: number): number {
  return wateringDaysByWeek?.[week] ?? wateringDays;
}

/** The same, but for a week that a person set, ran or closed: what ran did run, on the usual days where a restriction leaves none. */
export function heldMask(zone: WateringDays & Pick<GardenZone, 'choices'>, week: number): number {
  return weekMask(zone, week) || (originOf(zone.choices.get(week) ?? {}) === COMPUTED ? 0 : zone.wateringDays);
}

export function isSameDays(one: WateringDays, other: WateringDays): boolean {
  const [left, right] = [one.wateringDaysByWeek, other.wateringDaysByWeek];
  return one.wateringDays === other.wateringDays && (left === right || left?.join() === right?.join());
}

/** For each month of the season its watering days, as `usualByMonth`: what rain its roots keep hangs on them. */
export function monthMasks(zone: WateringDays, weather: Pick<Weather, 'months' | 'days'>): readonly number[] {
  return usualByMonth((week) => weekMask(zone, week), weather);
}

/** For each month of the season the share of its ground that a planting's lines wet, as `usualByMonth`; undefined where all weeks have one. */
export function wettedShareByMonth(
  planting: WettedPlanting,
  weather: Pick<Weather, 'months' | 'days'>,
): readonly number[] | undefined {
  return planting.wettedShareByWeek && usualByMonth((week) => shareIn(planting, week), weather);
}

/**
 * For each month of the season what most of its weeks have, the first of them where several do. A week belongs to the calendar month of
 * its fourth day; a month without a week has that of the nearest month, of two of the later.
 */
function usualByMonth(
  ofWeek: (week: number) => number,
  { months, days }: Pick<Weather, 'months' | 'days'>,
): readonly number[] {
  const { starts, calendarMonth } = months;
  const counts = calendarMonth.map(() => new Map<number, number>());
  for (let week = 0; week < days / 7; week++) {
    const index = starts.findLastIndex((start) => start <= 7 * week + 3);
    const ofMonth = counts[calendarMonth.indexOf(calendarMonth[index] as number)];
    ofMonth?.set(ofWeek(week), (ofMonth.get(ofWeek(week)) ?? 0) + 1);
  }
  const nearest = (month: number) => {
    for (let away = 0; away <= 6; away++) {
      for (const near of [month + away, month - away + 12]) {
        const ofMonth = counts[calendarMonth.indexOf(near % 12)];
        if (ofMonth?.size) return [...ofMonth].reduce((most, each) => (each[1] > most[1] ? each : most))[0];
      }
    }
    return ofWeek(0);
  };
  return calendarMonth.map(nearest);
}
