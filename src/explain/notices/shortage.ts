/** How much a planting goes short of water in some weeks, and why, week by week: one cause a week, so that none is told twice. */

import { countDays } from '../../engine/season/days-mask.ts';
import { LEAST_SHOWN_MM } from '../../engine/season/planting-state.ts';
import {
  MINUTES_ORIGINS,
  PLANTING_FIELDS as P,
  type PlantingSeason,
  type Season,
  STATES,
  ZONE_FIELDS as Z,
  type ZoneSeason,
} from '../../engine/season/season.ts';
import { weekMask } from '../../engine/season/week-masks.ts';
import { isReadDay } from '../../engine/weather.ts';
import { computedMinutes, mostMinutes } from './timer-minutes.ts';

export type Shortage = {
  /** Demand that the plants could not meet, L. */
  readonly unmetLitres: number;
  /** Demand of those weeks, L. */
  readonly demandLitres: number;
  /** Net water that would have brought them to their goals, L. */
  readonly neededLitres: number;
  /** Net water that irrigation brought, L. */
  readonly netLitres: number;
  /** Net water missing to their goals at the ends of the weeks that were short, added up, L. */
  readonly missingLitres: number;
  /** Days on which a planting was short of water, and weeks that it ended beyond its allowed depletion: of the worst one. */
  readonly shortDays: number;
  readonly dryWeeks: number;
};

/**
 * no-line: it needs water and no line brings any. closed: its zone is closed by hand. by-hand: minutes or open days set by hand are too
 * few. as-run: what really ran was too little. cut: its zone gave up water in a cut. restricted: water may run on no day of the week. beyond-timer, shut-off, left-behind: it asks for more than its zone runs, because
 * the timer cannot, because it hangs on others behind its shut-off, or by the zone's rule. few-days: it gets what it asks for and dries out
 * between waterings. dry-spell: the days that were read were drier than expected. short: anything else.
 */
export type ShortageCause =
  | 'no-line'
  | 'closed'
  | 'by-hand'
  | 'as-run'
  | 'cut'
  | 'restricted'
  | 'beyond-timer'
  | 'shut-off'
  | 'left-behind'
  | 'few-days'
  | 'dry-spell'
  | 'short';

const DRY = STATES.indexOf('dry');
const SHORT = STATES.indexOf('short');
const CLOSED = MINUTES_ORIGINS.indexOf('closed');
const HAND_SET = MINUTES_ORIGINS.indexOf('hand-set');
const RUN = MINUTES_ORIGINS.indexOf('run');
const ROUNDING_MINUTES = 1e-6;

/** Sums over a planting's weeks. */
export function shortageIn(own: PlantingSeason, weeks: readonly number[]): Shortage {
  const { areaM2 } = own.planting;
  const mm = { unmet: 0, demand: 0, needed: 0, net: 0, missing: 0 };
  let shortDays = 0;
  let dryWeeks = 0;
  for (const week of weeks) {
    const at = (field: number) => own.at(field, week);
    mm.unmet += at(P.demandMm) - at(P.usedMm);
    mm.demand += at(P.demandMm);
    mm.needed += at(P.neededMm);
    mm.net += at(P.irrigationNetMm);
    mm.missing += missingMm(own, week);
    shortDays += at(P.shortDays);
    if (at(P.state) === DRY) dryWeeks++;
  }
  return {
    unmetLitres: areaM2 * mm.unmet,
    demandLitres: areaM2 * mm.demand,
    neededLitres: areaM2 * mm.needed,
    netLitres: areaM2 * mm.net,
    missingLitres: areaM2 * mm.missing,
    shortDays,
    dryWeeks,
  };
}

/** Of several plantings. */
export function shortageOfAll(each: readonly Shortage[]): Shortage {
  const sum = (of: (shortage: Shortage) => number) => each.reduce((total, shortage) => total + of(shortage), 0);
  return {
    unmetLitres: sum(({ unmetLitres }) => unmetLitres),
    demandLitres: sum(({ demandLitres }) => demandLitres),
    neededLitres: sum(({ neededLitres }) => neededLitres),
    netLitres: sum(({ netLitres }) => netLitres),
    missingLitres: sum(({ missingLitres }) => missingLitres),
    shortDays: Math.max(0, ...each.map(({ shortDays }) => shortDays)),
    dryWeeks: Math.max(0, ...each.map(({ dryWeeks }) => dryWeeks)),
  };
}

/** What a short week leaves missing to its goal, mm: of a refill that is still due, all that it is dry. */
function missingMm(own: PlantingSeason, week: number): number {
  if (own.at(P.state, week) > SHORT) return 0;
  return own.at(P.fillingMm, week) > 0 ? own.at(P.depletionEndMm, week) : own.at(P.missedMm, week);
}

/** Weeks of each cause, in order. */
export type ShortageWeeks = Readonly<Partial<Record<ShortageCause, readonly number[]>>>;

/** A season is never changed, so the weeks are found once for all the kinds of notice that rest on them. */
const found = new WeakMap<PlantingSeason, ShortageWeeks>();

export function shortageWeeks(season: Season, zone: ZoneSeason, own: PlantingSeason): ShortageWeeks {
  const known = found.get(own) ?? findWeeks(season, zone, own);
  found.set(own, known);
  return known;
}

function findWeeks(season: Season, zone: ZoneSeason, own: PlantingSeason): ShortageWeeks {
  const byCause: Partial<Record<ShortageCause, number[]>> = {};
  let before: ShortageCause | undefined;
  for (let week = 0; week < own.weeks; week++) {
    const cause = own.at(P.groundDays, week) === 0 ? undefined : causeIn({ season, zone, own, week }, before);
    if (cause !== undefined) {
      const weeks = byCause[cause] ?? [];
      weeks.push(week);
      byCause[cause] = weeks;
    }
    before = cause;
  }
  return byCause;
}

interface PlantingWeekIn {
  readonly season: Season;
  readonly zone: ZoneSeason;
  readonly own: PlantingSeason;
  readonly week: number;
}

/** `before`: the cause of the week before, which may last into this one. */
function causeIn(of: PlantingWeekIn, before: ShortageCause | undefined): ShortageCause | undefined {
  const { zone, own, week } = of;
  const hasLine = own.at(P.flowLpm, week) > 0 || own.at(P.irrigationNetMm, week) > 0;
  const isShort = own.at(P.state, week) <= SHORT;
  if (!hasLine && (isShort || own.at(P.neededMm, week) > LEAST_SHOWN_MM)) return 'no-line';
  if (!isShort) return undefined;
  return causeOfChoices(zone, own, week) ?? causeOfMinutes(zone, own, week) ?? causeBetween(of, before);
}

/** Where somebody decided how long, or how often, it is watered: a person, or who gives the water. */
function causeOfChoices(zone: ZoneSeason, own: PlantingSeason, week: number): ShortageCause | undefined {
  const at = (field: number) => zone.figures.at(field, week);
  const origin = at(Z.origin);
  if (origin === CLOSED) return 'closed';
  if (origin === RUN) return 'as-run';
  if (origin === HAND_SET && computedMinutes(zone, week) > at(Z.minutesPerDay) + ROUNDING_MINUTES) return 'by-hand';
  const openDays = zone.zone.choices.get(week)?.openDays?.get(own.planting.id);
  if (openDays !== undefined && openDays < countDays(weekMask(zone.zone, week))) return 'by-hand';
  if (at(Z.cutShare) > 0) return 'cut';
  return weekMask(zone.zone, week) === 0 ? 'restricted' : undefined;
}

/** Where it asks for more than its zone runs, by more than rounding explains, or became due after it was asked and was not filled. */
function causeOfMinutes({ zone, figures }: ZoneSeason, own: PlantingSeason, week: number): ShortageCause | undefined {
  const at = (field: number) => figures.at(field, week);
  const given = at(Z.minutesPerDay);
  const asked = own.at(P.minutesWanted, week);
  const isMinutes = asked > given + zone.timerStepMinutes + ROUNDING_MINUTES;
  const isLate = asked === 0 && own.at(P.fillingMm, week) > 0;
  if (!isMinutes && !isLate) return undefined;
  if (isLate && !own.planting.hasShutOff && zone.rule.kind === 'thirstiest') return undefined;
  if (
    isMinutes &&
    at(Z.minutesWanted) > given + zone.timerStepMinutes &&
    given >= mostMinutes(zone) - ROUNDING_MINUTES
  ) {
    return 'beyond-timer';
  }
  return own.planting.hasShutOff ? 'shut-off' : 'left-behind';
}

/** Where it got what it asked for. */
function causeBetween(of: PlantingWeekIn, before: ShortageCause | undefined): ShortageCause {
  const { own, week } = of;
  const first = Math.max(7 * week, own.demand.first);
  const isDryAtStart = own.at(P.depletionStartMm, week) > (own.demand.rawMm[first] as number) + LEAST_SHOWN_MM;
  if (isDryAtStart) return before ?? 'short';
  if (passesBetweenWaterings(of)) return 'few-days';
  if (wasRead(of)) return 'dry-spell';
  return own.at(P.demandMm, week) - own.at(P.usedMm, week) > LEAST_SHOWN_MM ? 'few-days' : 'short';
}

/** Whether, filled to the brim at one watering, it is expected to pass its allowed depletion before the next. */
function passesBetweenWaterings({ zone, own, week }: PlantingWeekIn): boolean {
  const { expectedEtcMm, expectedRawMm, first, end } = own.demand;
  let usedMm = Number.NEGATIVE_INFINITY;
  for (let day = Math.max(first, 7 * week - 7); day < Math.min(end, 7 * week + 7); day++) {
    if (day >= 7 * week && usedMm > (expectedRawMm[day] as number)) return true;
    usedMm = (weekMask(zone.zone, Math.floor(day / 7)) >> (day % 7)) & 1 ? 0 : usedMm + (expectedEtcMm[day] as number);
  }
  return false;
}

/** Whether a day of the week, or of the one before it, was read. */
function wasRead({ season: { weather }, week }: PlantingWeekIn): boolean {
  for (let day = Math.max(0, 7 * week - 7); day < 7 * week + 7; day++) if (isReadDay(weather, day)) return true;
  return false;
}
