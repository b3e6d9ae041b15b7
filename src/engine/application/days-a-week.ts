/** How often a zone has to be watered so that its plants last from one watering to the next. */
import { monthOfWeek, weekdayOf } from '../calendar.ts';
import type { Garden } from '../garden.ts';
import { countDays, daysOfMask } from '../season/days-mask.ts';
import { openMasks } from '../season/open-days.ts';
import { targetOn } from '../season/planting-demand.ts';
import type { PlantingSeason, Season, ZoneSeason } from '../season/season.ts';
import { heldMask, weekMask } from '../season/week-masks.ts';
import { shareIn } from '../season/wetted-week.ts';
import { isUnrestricted } from '../supply/restrictions.ts';
import { type RunsNeed, runsNeed } from './runs-need.ts';

/** Of one zone in one calendar month. */
export interface DaysAWeek {
  readonly zoneId: string;
  /** 0 = January. */
  readonly month: number;
  /** Fewest watering days a week that fit, within those that are allowed. */
  readonly daysAWeek: number;
  /** Times a day: the most that its season runs on these days, within the starts of the timer. */
  readonly startsADay: number;
  /** Whose need it is. */
  readonly plantingId: string;
  /** On the day of the month on which it lasts least: what it may use after a watering, mm, and what it uses in a day, mm. */
  readonly waterAtHandMm: number;
  readonly dailyUseMm: number;
  /** Days a week on which water may run, as in most weeks of the month. */
  readonly allowedDays: number;
  /** Those days, bit 0 = the week's first. */
  readonly allowedMask: number;
  /** The zone's own watering days, as in most weeks of the month. */
  readonly plannedMask: number;
  /** Whether those do: no two lie further apart than the days that fit, or than all that are allowed where none fit. */
  readonly isEnough: boolean;
}

const ROUNDING_DAYS = 1e-9;

/**
 * For every zone and month of the season with a planting that a line waters. A week belongs to the month of its fourth day.
 *
 * Water at hand over daily use is how many days a filling lasts (USDA-NRCS National Engineering Handbook, part 652, irrigation frequency =
 * net depth / peak daily use; from memory): readily available water (FAO-56 eq. 82 and 83) less the room that watering leaves for
 * rain, on the scarcest day of the month. The fewest days fit of which no two, spread over the allowed ones as the season
 * spreads them, lie further apart. Plantings that are kept decide; those that are refilled where there is no other.
 */
export function daysAWeek(season: Season): readonly DaysAWeek[] {
  return season.zones.flatMap((zone) => zoneDaysAWeek(season, zone));
}

/** The same of one zone. */
export function zoneDaysAWeek({ garden }: Pick<Season, 'garden'>, zone: ZoneSeason): readonly DaysAWeek[] {
  return [...monthsOf(garden)].flatMap(([month, weeks]) => {
    const allowed = mostUsual(weeks.map((week) => allowedMask(garden, week)));
    const planned = mostUsual(weeks.map((week) => weekMask(zone.zone, week)));
    const found = deciding(zone, weeks).map((scarcest) => fitting(zone, { month, allowed, planned }, scarcest));
    const [first, ...others] = found;
    if (first === undefined) return [];
    const fit = others.reduce((most, each) => (asksMore(each, most) ? each : most), first);
    const need = runsNeedIn({ garden }, zone, fit);
    return [{ ...fit, startsADay: Math.min(zone.zone.startsADay, need?.runs ?? 1) }];
  });
}

/** Whose need of runs a day counts in the month of `fit`: on the days that it proposes, or on the zone's own where those do. */
export function runsNeedIn(
  { garden }: Pick<Season, 'garden'>,
  zone: ZoneSeason,
  fit: DaysThatFit,
): RunsNeed | undefined {
  const proposed = fit.isEnough ? undefined : openMasks(fit.allowedMask)[fit.daysAWeek];
  const weeks = monthsOf(garden).get(fit.month) ?? [];
  return runsNeed(zone, garden.span.firstDay, weeks, (week) => proposed ?? heldMask(zone.zone, week));
}

/** Weeks of each calendar month, in the order of the season. */
function monthsOf({ span }: Garden): ReadonlyMap<number, readonly number[]> {
  const months = new Map<number, number[]>();
  for (let week = 0; week < span.weeks; week++) {
    const month = monthOfWeek(span.firstDay + 7 * week);
    const weeks = months.get(month) ?? [];
    weeks.push(week);
    months.set(month, weeks);
  }
  return months;
}

/** Days of a week on which window and restrictions let water run, bit 0 = its first. */
function allowedMask({ span, supply }: Garden, week: number): number {
  let mask = 0;
  for (let offset = 0; offset < 7; offset++) {
    const day = span.firstDay + 7 * week + offset;
    const isInWindow = (supply.windowWeekdays >> weekdayOf(day)) & 1;
    if (isInWindow && isUnrestricted(supply.restrictions, day)) mask |= 1 << offset;
  }
  return mask;
}

/** The first of those that stand most often. */
function mostUsual(masks: readonly number[]): number {
  const times = (mask: number) => masks.filter((other) => other === mask).length;
  return masks.reduce((most, mask) => (times(mask) > times(most) ? mask : most));
}

interface Scarcest {
  readonly plantingId: string;
  readonly waterAtHandMm: number;
  readonly dailyUseMm: number;
}

function deciding({ plantings }: ZoneSeason, weeks: readonly number[]): readonly Scarcest[] {
  const watered = plantings.filter(({ planting }) => planting.flows.some(({ flowLph }) => flowLph > 0));
  const of = (watering: 'keep' | 'refill') =>
    watered.filter(({ planting }) => planting.watering === watering).flatMap((own) => scarcestDay(own, weeks) ?? []);
  const kept = of('keep');
  return kept.length > 0 ? kept : of('refill');
}

/** The day on which its water lasts least; undefined where it uses none. */
function scarcestDay({ planting, demand }: PlantingSeason, weeks: readonly number[]): Scarcest | undefined {
  let scarcest: Scarcest | undefined;
  for (const week of weeks) {
    for (let day = Math.max(7 * week, demand.first); day < Math.min(7 * week + 7, demand.end); day++) {
      // Where its lines wet a part of the ground, that part is to last alone.
      const dailyUseMm = (demand.expectedEtcMm[day] as number) / shareIn(planting, week);
      const roomMm = planting.watering === 'refill' || day < demand.targetFrom ? 0 : targetOn(demand, day);
      const waterAtHandMm = Math.max(0, (demand.expectedRawMm[day] as number) - roomMm);
      const lasts = waterAtHandMm / dailyUseMm;
      if (dailyUseMm > 0 && (scarcest === undefined || lasts < scarcest.waterAtHandMm / scarcest.dailyUseMm))
        scarcest = { plantingId: planting.id, waterAtHandMm, dailyUseMm };
    }
  }
  return scarcest;
}

interface MonthDays {
  readonly month: number;
  /** Masks. */
  readonly allowed: number;
  readonly planned: number;
}

type DaysThatFit = Omit<DaysAWeek, 'startsADay'>;

function fitting({ zone }: ZoneSeason, { month, allowed, planned }: MonthDays, scarcest: Scarcest): DaysThatFit {
  const { waterAtHandMm, dailyUseMm } = scarcest;
  const lastsDays = waterAtHandMm / dailyUseMm;
  const most = Math.max(1, Math.floor(lastsDays + ROUNDING_DAYS));
  const allowedDays = countDays(allowed);
  const fits = openMasks(allowed).findIndex((mask) => mask !== 0 && longestGap(mask) <= most);
  const widest = fits < 0 ? longestGap(allowed) : most;
  return {
    zoneId: zone.id,
    month,
    daysAWeek: fits < 0 ? allowedDays : fits,
    ...scarcest,
    allowedDays,
    allowedMask: allowed,
    plannedMask: planned,
    isEnough: allowed === 0 || (planned !== 0 && longestGap(planned) <= widest),
  };
}

/** Most days from one watering to the next, round the week. */
function longestGap(mask: number): number {
  const days = daysOfMask(mask);
  return Math.max(...days.map((day, at) => (days[at + 1] ?? (days[0] as number) + 7) - day));
}

function asksMore(one: DaysThatFit, other: DaysThatFit): boolean {
  const lasts = ({ waterAtHandMm, dailyUseMm }: DaysThatFit) => waterAtHandMm / dailyUseMm;
  return one.daysAWeek > other.daysAWeek || (one.daysAWeek === other.daysAWeek && lasts(one) < lasts(other));
}
