/** Less water in some weeks: the minutes of every zone, or of one, by the same share, in whole steps of its timer. */
import { MINUTES_ORIGINS, type Season, ZONE_FIELDS as Z, type ZoneSeason } from '../../engine/season/season.ts';
import { computeSeason } from '../../plan/compute-season.ts';
import { tryEdit } from '../../plan/edits/apply-edit.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { weekFirstDay } from '../../plan/season-weeks.ts';
import type { RemedyCandidate } from './remedy.ts';
import { seasonMinutes } from './season-minutes.ts';

const RUN = MINUTES_ORIGINS.indexOf('run');

/** What is kept back in one week is asked for in the next: so many times the weeks are looked through again. */
const MOST_ROUNDS = 12;

/** Weeks that ask too much, and the share of its minutes that each may keep, 0..1. */
export type SharesToKeep = (season: Season) => ReadonlyMap<number, number>;

export interface CutLimits {
  /** Left out: minutes of every zone are cut. */
  readonly onlyZone?: string;
  /** Left out: until no week asks too much. */
  readonly mostRounds?: number;
}

/**
 * Minutes by hand where a week asks too much, until none does; a step for each look. What really ran stays. Where the soil's pauses or a tank
 * come into it the shares are no exact science.
 */
export function* fewerMinutes(
  plan: Plan,
  season: Season,
  sharesOf: SharesToKeep,
  { onlyZone, mostRounds = MOST_ROUNDS }: CutLimits = {},
): Generator<RemedyCandidate | undefined, void> {
  const set = new Map<string, Extract<Edit, { type: 'set-minutes' }>>();
  let now = season;
  for (let round = 0; round < mostRounds; round += 1) {
    const shares = sharesOf(now);
    const zones = onlyZone === undefined ? now.zones : now.zones.filter(({ zone }) => zone.id === onlyZone);
    const cuts = zones.flatMap((zone) => cutsOf(plan, zone, shares));
    if (cuts.length === 0) break;
    for (const cut of cuts) set.set(`${cut.week} ${cut.zone}`, cut);
    const result = tryEdit(plan, togetherOf([...set.values()]));
    if (!result.ok) return;
    now = computeSeason(result.plan, now);
    yield undefined;
  }
  if (set.size === 0) return;
  const cuts = [...set.values()];
  yield {
    kind: 'fewer-minutes',
    zoneIds: [...new Set(cuts.map(({ zone }) => zone))],
    weeks: new Set(cuts.map(({ week }) => week)).size,
    minutesLess: seasonMinutes(season) - seasonMinutes(now),
    edit: togetherOf(cuts),
  };
}

function togetherOf(edits: readonly Edit[]): Edit {
  return { type: 'together', action: 'cut-minutes', edits };
}

function cutsOf(plan: Plan, { zone, figures }: ZoneSeason, shares: ReadonlyMap<number, number>) {
  const cuts: Extract<Edit, { type: 'set-minutes' }>[] = [];
  for (const [week, share] of shares) {
    const perDay = figures.at(Z.minutesPerDay, week);
    const days = figures.at(Z.minutes, week) / perDay;
    const wanted = wholeSteps(zone, perDay * share);
    if (!(wanted < perDay) || figures.at(Z.origin, week) === RUN) continue;
    cuts.push({ type: 'set-minutes', zone: zone.id, week: weekFirstDay(plan.season, week), minutes: wanted * days });
  }
  return cuts;
}

function wholeSteps({ timerStepMinutes: step }: ZoneSeason['zone'], minutes: number): number {
  return Math.max(0, Math.floor(minutes / step + 1e-9)) * step;
}
