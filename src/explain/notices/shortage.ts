/** How much a planting goes short of water in some weeks, and why, week by week: one cause a week, so that none is told twice. */
import { LEAST_SHOWN_MM } from '../../engine/season/planting-state.ts';
import {
  MINUTES_ORIGINS,
  PLANTING_FIELDS as P,
  type PlantingSeason,
  STATES,
  ZONE_FIELDS as Z,
  type ZoneSeason,
} from '../../engine/season/season.ts';
import type { NoticeSeverity } from './severity.ts';

export type Shortage = {
  /** Demand that the plants could not meet, L. */
  readonly unmetLitres: number;
  /** Net water that would have brought it to its target, L. */
  readonly neededLitres: number;
  /** Net water that irrigation brought, L. */
  readonly netLitres: number;
  /** Days on which it was short of water. */
  readonly shortDays: number;
  /** Weeks that ended beyond the allowed depletion. */
  readonly dryWeeks: number;
};

/**
 * no-line: it needs water and no minutes would bring it any. closed: its zone is closed by hand. never-enough: it needs
 * more than its zone gives, open on every watering day, in at least half of the weeks in which it needs any. going-short:
 * anything else.
 */
export type ShortageCause = 'no-line' | 'closed' | 'never-enough' | 'going-short';

const DRY = STATES.indexOf('dry');
const SHORT = STATES.indexOf('short');
const CLOSED = MINUTES_ORIGINS.indexOf('closed');
const COMPUTED = MINUTES_ORIGINS.indexOf('computed');

/** A planting that needs more than its zone gives in fewer weeks only goes short. */
const LEAST_NEVER_ENOUGH_WEEKS = 2;

/** Sums over the weeks. */
export function shortageIn(own: PlantingSeason, weeks: readonly number[]): Shortage {
  const { areaM2 } = own.planting;
  const shortage = { unmetLitres: 0, neededLitres: 0, netLitres: 0, shortDays: 0, dryWeeks: 0 };
  for (const week of weeks) {
    const at = (field: number) => own.at(field, week);
    shortage.unmetLitres += areaM2 * (at(P.demandMm) - at(P.usedMm));
    shortage.neededLitres += areaM2 * at(P.neededMm);
    shortage.netLitres += areaM2 * at(P.irrigationNetMm);
    shortage.shortDays += at(P.shortDays);
    if (at(P.state) === DRY) shortage.dryWeeks++;
  }
  return shortage;
}

/** danger: some week ends dry; warning: demand goes unmet; note: only a target is missed. */
export function shortageSeverity({ dryWeeks, unmetLitres }: Shortage, areaM2: number): NoticeSeverity {
  if (dryWeeks > 0) return 'danger';
  return unmetLitres > LEAST_SHOWN_MM * areaM2 ? 'warning' : 'note';
}

/** Weeks of each cause, in order. */
export type ShortageWeeks = Readonly<Record<ShortageCause, readonly number[]>>;

/** A season is never changed, so the weeks are found once for all the kinds of notice that rest on them. */
const found = new WeakMap<PlantingSeason, ShortageWeeks>();

export function shortageWeeks(zone: ZoneSeason, own: PlantingSeason): ShortageWeeks {
  const known = found.get(own) ?? findWeeks(zone, own);
  found.set(own, known);
  return known;
}

function findWeeks(zone: ZoneSeason, own: PlantingSeason): ShortageWeeks {
  const byCause: Record<ShortageCause, number[]> = { 'no-line': [], closed: [], 'never-enough': [], 'going-short': [] };
  let weeksInNeed = 0;
  for (let week = 0; week < own.weeks; week++) {
    if (own.at(P.groundDays, week) === 0) continue;
    if (own.at(P.minutesWanted, week) > 0) weeksInNeed++;
    const cause = causeIn(zone, own, week);
    if (cause !== undefined) byCause[cause].push(week);
  }
  const neverEnough = byCause['never-enough'];
  if (neverEnough.length >= Math.max(LEAST_NEVER_ENOUGH_WEEKS, weeksInNeed / 2)) return byCause;
  const goingShort = [...byCause['going-short'], ...neverEnough].sort((left, right) => left - right);
  return { ...byCause, 'never-enough': [], 'going-short': goingShort };
}

function causeIn(zone: ZoneSeason, own: PlantingSeason, week: number): ShortageCause | undefined {
  const { weeks } = zone;
  const minutesWanted = own.at(P.minutesWanted, week);
  if (minutesWanted === 0 && own.at(P.neededMm, week) > LEAST_SHOWN_MM) return 'no-line';
  if (own.at(P.state, week) > SHORT) return undefined;
  const origin = zone.figures[Z.origin * weeks + week];
  if (origin === CLOSED) return 'closed';
  const minutesPerDay = zone.figures[Z.minutesPerDay * weeks + week] as number;
  if (origin !== COMPUTED || minutesWanted <= minutesPerDay) return 'going-short';
  const isSetByHand = zone.zone.choices.get(week)?.openDays?.has(own.planting.id) === true;
  return isSetByHand ? 'going-short' : 'never-enough';
}
