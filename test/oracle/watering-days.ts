/** On which days a zone waters, and which of them matter to a planting. Days are counted from the season's first. */
import type { GardenZone } from '../../src/engine/garden.ts';

/** `mask` has a bit for each day of the week, bit 0 = the week's first day. */
export function isInMask(mask: number, day: number): boolean {
  return (mask & (1 << (day % 7))) !== 0;
}

export function wateringDayCount(mask: number): number {
  return [0, 1, 2, 3, 4, 5, 6].filter((offset) => isInMask(mask, offset)).length;
}

/** Days in order, both ends included. */
export function daysFrom(first: number, last: number): readonly number[] {
  const days: number[] = [];
  for (let day = first; day <= last; day++) days.push(day);
  return days;
}

/**
 * Of the days of a week, those on which the zone waters; none where a restriction leaves none. Such a week that a person set, closed or ran
 * has the zone's usual days.
 */
export function wateringMask(zone: GardenZone, week: number): number {
  const mask = allowedMask(zone, week);
  return mask === 0 && isGiven(zone, week) ? zone.wateringDays : mask;
}

/** Where only some runs are written down the rest of the week is computed. */
function isGiven({ choices }: GardenZone, week: number): boolean {
  const { minutes, minutesRun, closed, runs, runsAreSome } = choices.get(week) ?? {};
  const isLogged = runs !== undefined && runsAreSome !== true;
  return minutes !== undefined || minutesRun !== undefined || closed === true || isLogged;
}

/** The same, whatever a person did. */
export function allowedMask({ wateringDays, wateringDaysByWeek }: GardenZone, week: number): number {
  return wateringDaysByWeek?.[week] ?? wateringDays;
}

/** Whether a zone waters on a day. */
export type Watering = (day: number) => boolean;

export function wateringOf(zone: GardenZone): Watering {
  return (day) => isInMask(wateringMask(zone, weekOf(day)), day);
}

/** As it looks in a week: on its own days, and later on the days that are allowed, whatever is set or run then. */
export function plannedIn(zone: GardenZone, week: number): Watering {
  return (day) => isInMask(weekOf(day) === week ? wateringMask(zone, week) : allowedMask(zone, weekOf(day)), day);
}

export function weekOf(day: number): number {
  return Math.floor(day / 7);
}

/** Days on which a planting is in the ground, on which of them it asks for nothing, and on which a line brings it water. */
interface Stay {
  readonly days: readonly StayDay[];
}

interface StayDay {
  readonly inGround: boolean;
  readonly isResting: boolean;
  readonly netMmPerMinute: number;
}

/** Whether it is one of the days on which it may ask. */
export function mayAsk(day: Pick<StayDay, 'inGround' | 'isResting'> | undefined): boolean {
  return day?.inGround === true && !day.isResting;
}

/** The last day, from a day of the week on, on which the zone waters, the planting may ask and a line brings it water. */
export function lastReached({ days }: Stay, waters: Watering, from: number): number | undefined {
  return restOfWeek(from).findLast((day) => waters(day) && mayAsk(days[day]) && (days[day]?.netMmPerMinute ?? 0) > 0);
}

/** The week's last watering of a planting: where no line reaches it on any watering day, the last of them in the ground. */
export function lastWatering({ days }: Stay, waters: Watering, week: number): number | undefined {
  const isItsOwn = (day: number) => waters(day) && mayAsk(days[day]);
  return lastReached({ days }, waters, 7 * week) ?? restOfWeek(7 * week).findLast(isItsOwn);
}

/** The next watering day of a planting, or else its last day in the ground, or its last before it rests; not beyond the season. */
export function nextWatering({ days }: Stay, waters: Watering, after: number): number {
  const inGround = daysFrom(after + 1, days.length - 1).filter((day) => days[day]?.inGround === true);
  const rest = inGround.findIndex((day) => days[day]?.isResting === true);
  const later = rest < 0 ? inGround : inGround.slice(0, rest);
  return later.find(waters) ?? later.at(-1) ?? after;
}

function restOfWeek(from: number): readonly number[] {
  return daysFrom(from, from - (from % 7) + 6);
}
