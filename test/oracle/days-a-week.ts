/**
 * How often a zone wants water in a month: for each planting that is kept, or refilled where none is kept, its water at hand (what is readily available, FAO-56 eq. 82 and 83 with
 * p of the day's use) over what it uses in a day, on the day of the month's weeks on which that lasts shortest. In a pot so many whole days may lie between
 * two waterings. In the ground two more, where it lasts one: a watering brings its own day's use too, and the day before the next may use more than is left at
 * hand when it begins. The days a week are the fewest that keep to that, spread over the days that are allowed, of which the timer's longest runs
 * bring a week's use. Runs a day are the most that any week of the month has, on the zone's own days where those are enough, else on the proposed ones.
 */
import type { Garden, GardenPlanting, GardenZone } from '../../src/engine/garden.ts';
import { yearMonthOf } from './calendar.ts';
import { mostUsual } from './month-masks.ts';
import { NearTies } from './near-ties.ts';
import { maskOf } from './open-days.ts';
import type { PlantingFacts } from './planting-facts.ts';
import { sufficientRun } from './rounding.ts';
import { runsOn } from './runs-a-day.ts';
import { daysFrom, isInMask, wateringDayCount, wateringMask, weekOf } from './watering-days.ts';

export interface DaysAWeek {
  readonly daysAWeek: number;
  /** Equal runs that the zone's plantings together want, as far as the timer starts so often. */
  readonly startsADay: number;
  readonly plantingId: string;
  readonly isInContainer: boolean;
  readonly waterAtHandMm: number;
  readonly dailyUseMm: number;
  /** Of a day's longest runs. */
  readonly mostWateringMm: number;
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
      .flatMap((facts) => scarcest(garden, zone, facts, month))
      .map((most) => ({ ...most, daysAWeek: fewestDays(allowed, most), isEnough: isEnough(allowed, planned, most) }));
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

/** What a planting asks of the days. */
interface Asking {
  readonly isInContainer: boolean;
  readonly lastsDays: number;
  readonly dailyUseMm: number;
  readonly mostWateringMm: number;
}

/** The day of the weeks of a month on which a planting's water at hand lasts shortest. */
function scarcest({ span }: Garden, zone: GardenZone, facts: PlantingFacts, month: number) {
  const { planting, storesIn, days, leachingFraction } = facts;
  const isOfMonth = (index: number) => yearMonthOf(span.firstDay + 7 * weekOf(index) + 3).month === month;
  const longest = sufficientRun(MINUTES_PER_DAY, { ...zone, runsADay: 1 }, new NearTies()).minutes;
  const found = days
    .map((day, index) => ({ ...day, index }))
    .filter(({ inGround, expectedEtcMm, index }) => inGround && expectedEtcMm > 0 && isOfMonth(index))
    .map(({ expectedRawMm, expectedEtcMm, netMmPerMinute, index }) => {
      const { share, isPot } = storesIn(weekOf(index));
      // The rest of its ground is empty when it matters: the wetted part bears all.
      const dailyUseMm = expectedEtcMm / share;
      const mostWateringMm = (longest * netMmPerMinute * (1 - leachingFraction)) / share;
      const lastsDays = expectedRawMm / dailyUseMm;
      return {
        plantingId: planting.id,
        isInContainer: isPot,
        waterAtHandMm: expectedRawMm,
        dailyUseMm,
        mostWateringMm,
        lastsDays,
      };
    })
    .sort((one, other) => one.lastsDays - other.lastsDays);
  return found.slice(0, 1);
}

const MINUTES_PER_DAY = 1440;
const ROUNDING = 1e-9;

/** Days from a watering to the next. */
function mostApart({ isInContainer, lastsDays }: Asking): number {
  const whole = Math.floor(lastsDays + ROUNDING);
  if (whole === 0) return 1;
  return isInContainer ? whole : 2 + whole;
}

/** Whether the longest runs of so many days bring what a week takes; nobody asks where no line lies. */
function bringEnough(days: number, { dailyUseMm, mostWateringMm }: Asking): boolean {
  return mostWateringMm === 0 || days + ROUNDING >= (7 * dailyUseMm) / mostWateringMm;
}

/** The fewest days of a week, spread over those allowed, that lie no further apart than they may and bring enough. */
function fewestDays(allowed: number, asking: Asking): number {
  const all = wateringDayCount(allowed);
  for (let days = 1; days < all; days++) {
    if (bringEnough(days, asking) && longestGap(maskOf(allowed, days)) <= mostApart(asking)) return days;
  }
  return all;
}

/** Where even all that are allowed are too few, as many and as close as those. */
function isEnough(allowed: number, planned: number, asking: Asking): boolean {
  if (planned === 0 || allowed === 0) return allowed === 0;
  const days = wateringDayCount(planned);
  const isOften = bringEnough(days, asking) || days >= wateringDayCount(allowed);
  return isOften && longestGap(planned) <= Math.max(longestGap(allowed), mostApart(asking));
}

/** Days from a watering to the next, the week's last and the next week's first included. */
function longestGap(mask: number): number {
  const offsets = [0, 1, 2, 3, 4, 5, 6].filter((offset) => (mask & (1 << offset)) !== 0);
  return Math.max(...offsets.map((offset, place) => (offsets[place + 1] ?? (offsets[0] ?? 0) + 7) - offset));
}
