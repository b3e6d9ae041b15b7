/**
 * How often a zone wants water in a month: for each planting that is kept, or refilled where none is kept, its water at hand (what is readily available, FAO-56 eq. 82 and 83 with
 * p of the day's use, less the room that is left for rain) over what it uses in a day, on the day of the month's weeks on which that lasts shortest. So
 * many whole days may lie between two waterings; the days a week are the fewest that keep to that, spread over the days that are allowed. Runs a day
 * are the most that any week of the month has, on the zone's own days where those are enough, else on the proposed ones.
 */
import type { Garden, GardenPlanting, GardenZone } from '../../src/engine/garden.ts';
import { yearMonthOf } from './calendar.ts';
import { mostUsual } from './month-masks.ts';
import { NearTies } from './near-ties.ts';
import { maskOf } from './open-days.ts';
import type { PlantingDay, PlantingFacts } from './planting-facts.ts';
import { runsOn } from './runs-a-day.ts';
import { daysFrom, isInMask, wateringDayCount, wateringMask, weekOf } from './watering-days.ts';

export interface DaysAWeek {
  readonly daysAWeek: number;
  /** Equal runs that the zone's plantings together want, as far as the timer starts so often. */
  readonly startsADay: number;
  readonly plantingId: string;
  readonly waterAtHandMm: number;
  readonly dailyUseMm: number;
  /** Whether the zone's own days lie no further apart than that allows, or than all allowed days do where those are too few. */
  readonly isEnough: boolean;
}

/** `month` 0 is January; `allowed` is the mask of a week's days on which water may run. Undefined where nothing that a line waters grows. */
export function daysAWeek(
  garden: Garden,
  zone: GardenZone,
  plantings: readonly PlantingFacts[],
  { month, allowed, planned }: { readonly month: number; readonly allowed: number; readonly planned: number },
): DaysAWeek | undefined {
  const askingOf = (watering: GardenPlanting['watering']) =>
    plantings
      .filter(({ planting }) => planting.watering === watering && planting.flows.some(({ flowLph }) => flowLph > 0))
      .flatMap((facts) => scarcest(garden, facts, month))
      .map(({ lastsDays, ...rest }) => {
        const asked = { daysAWeek: fewestDays(allowed, lastsDays), isEnough: isEnough(allowed, planned, lastsDays) };
        return { ...rest, ...asked, lastsDays };
      });
  const kept = askingOf('keep');
  const [most] = (kept.length > 0 ? kept : askingOf('refill')).sort(
    (one, other) => other.daysAWeek - one.daysAWeek || one.lastsDays - other.lastsDays,
  );
  if (most === undefined) return undefined;
  const { lastsDays, ...rest } = most;
  const ties = new NearTies();
  const runs = weeksOf(garden, month).map((week) => {
    const mask = rest.isEnough ? wateringMask(zone, week) : maskOf(allowed, rest.daysAWeek);
    return runsOn(zone, plantings, { week, mask }, ties);
  });
  return { ...rest, startsADay: Math.max(...runs) };
}

/** A week belongs to the month of its fourth day. */
function weeksOf({ span }: Garden, month: number): readonly number[] {
  return daysFrom(0, span.weeks - 1).filter((week) => yearMonthOf(span.firstDay + 7 * week + 3).month === month);
}

/** The mask that most weeks of a calendar month have of days on which window and restrictions let water run, the first where several do. */
export function allowedIn(garden: Garden, month: number): number {
  const { span, supply } = garden;
  const masks = weeksOf(garden, month).map((week) =>
    [0, 1, 2, 3, 4, 5, 6].reduce((mask, offset) => {
      const date = span.firstDay + 7 * week + offset;
      const inForce = (supply.restrictions ?? []).filter(({ from, to }) => {
        return (from === undefined || from <= date) && (to === undefined || date <= to);
      });
      const named = [supply.windowWeekdays, ...inForce.map(({ weekdays }) => weekdays)];
      const isAllowed = named.every((weekdays) => isInMask(weekdays, sinceMonday(date)));
      return isAllowed ? mask + 2 ** offset : mask;
    }, 0),
  );
  return mostUsual(masks);
}

/** 0 is Monday. */
function sinceMonday(date: number): number {
  return (new Date(date * 86_400_000).getUTCDay() + 6) % 7;
}

/** The day of the weeks of a month on which a planting's water at hand lasts shortest. */
function scarcest({ span }: Garden, { planting, storesIn, days }: PlantingFacts, month: number) {
  const isOfMonth = (index: number) => yearMonthOf(span.firstDay + 7 * weekOf(index) + 3).month === month;
  const found = days
    .map((day, index) => ({ ...day, index }))
    .filter(({ inGround, expectedEtcMm, index }) => inGround && expectedEtcMm > 0 && isOfMonth(index))
    .map((day) => {
      const waterAtHandMm = waterAtHand(planting, day);
      // The rest of its ground is empty when it matters: the wetted part bears all.
      const dailyUseMm = day.expectedEtcMm / storesIn(weekOf(day.index)).share;
      return { plantingId: planting.id, waterAtHandMm, dailyUseMm, lastsDays: waterAtHandMm / dailyUseMm };
    })
    .sort((one, other) => one.lastsDays - other.lastsDays);
  return found.slice(0, 1);
}

/** A refill leaves no room for rain. */
function waterAtHand({ watering }: GardenPlanting, { expectedRawMm, targetMm }: PlantingDay): number {
  return watering === 'refill' ? expectedRawMm : Math.max(0, expectedRawMm - targetMm);
}

/** The fewest days of a week, spread over those allowed, between which no more than whole days of water at hand lie. */
function fewestDays(allowed: number, lastsDays: number): number {
  const most = Math.max(1, Math.floor(lastsDays + 1e-9));
  const all = wateringDayCount(allowed);
  for (let days = 1; days < all; days++) if (longestGap(maskOf(allowed, days)) <= most) return days;
  return all;
}

function isEnough(allowed: number, planned: number, lastsDays: number): boolean {
  if (planned === 0 || allowed === 0) return allowed === 0;
  return longestGap(planned) <= Math.max(longestGap(allowed), Math.floor(lastsDays + 1e-9), 1);
}

/** Days from a watering to the next, the week's last and the next week's first included. */
function longestGap(mask: number): number {
  const offsets = [0, 1, 2, 3, 4, 5, 6].filter((offset) => (mask & (1 << offset)) !== 0);
  return Math.max(...offsets.map((offset, place) => (offsets[place + 1] ?? (offsets[0] ?? 0) + 7) - offset));
}
