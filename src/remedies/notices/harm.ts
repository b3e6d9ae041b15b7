/** What harm a change does beside the good that it is made for. */

import { fieldByWeek } from '../../engine/season/field-by-week.ts';
import { type Season, SUPPLY_FIELDS } from '../../engine/season/season.ts';
import { type FoundNotice, plantingsOf } from '../../explain/notices/notice.ts';
import { foundLike } from '../../explain/notices/notices-of.ts';
import { canCarry } from '../mix/can-carry.ts';
import { lossesBetween } from './losses.ts';
import { minutesForbidden } from './minutes-forbidden.ts';
import { NOTICE_REMEDIES } from './notice-remedies.ts';
import { problemOf } from './problem.ts';
import type { RemediedKind } from './remedied-kinds.ts';
import type { NoticeInPlan, Remedy, RemedyChange, RemedyKind, Trade } from './remedy.ts';
import { type LitresOf, lackingLitres, sumOver, unmetLitres, wastedLitres } from './trouble.ts';

/** Kinds that bind the garden's water as a whole. */
const SUPPLY_KINDS = ['allowance-exceeded', 'tank-dry'] as const;

type InSeason = Pick<NoticeInPlan<RemediedKind>, 'season' | 'notice'>;

/** What changes the water that lines ask for. */
const LAYS_ANEW: ReadonlySet<RemedyKind> = new Set([
  'other-emitters',
  'other-runs',
  'own-zone',
  'own-zone-and-days',
  'shut-off',
  'shut-weeks',
]);

/** Other plantings may go short by so much of what is mended, or of the garden's demand, and no more: rule of this kit. */
const MOST_OF_MENDED = 0.1;
const MOST_OF_DEMAND = 0.001;
/** What is not enough already may become so much worse: rounding. */
const ROUNDING = 0.01;
const ROUNDING_MINUTES = 0.5;

/**
 * Too much where something is newly wrong, the hours or the water of the garden suffice less, a source or a line does not carry it, or
 * other plantings go short. Where water is saved and plantings lose less than that: what the trade costs.
 *
 * Less water for all is what an allowance asks for: what comes of that is told beside it. So it is with hours that do not suffice, as
 * long as nothing is in danger.
 */
export function harmOf({ season, notice }: NoticeInPlan<RemediedKind>, remedy: Remedy): 'none' | 'too-much' | Trade {
  const { seasonWith, sideEffects } = remedy;
  const isRationing = remedy.kind === 'fewer-minutes';
  if (isRationing && notice.kind === 'allowance-exceeded') return 'none';
  if (isRationing && notice.kind === 'window-too-short') {
    return sideEffects.some(({ severity }) => severity === 'danger') ? 'too-much' : 'none';
  }
  const isFeasible =
    sideEffects.length === 0 &&
    !suppliesLess({ season, notice }, seasonWith) &&
    (!laysAnew(remedy) || isCarried(season, seasonWith));
  if (!isFeasible) return 'too-much';
  if (NOTICE_REMEDIES[notice.kind].ofPlanting === wastedLitres) return costOfSaving({ season, notice }, remedy);
  return othersLackMore({ season, notice }, remedy) ? 'too-much' : 'none';
}

function laysAnew(change: RemedyChange): boolean {
  return change.kind === 'together' ? change.parts.some(laysAnew) : LAYS_ANEW.has(change.kind);
}

/** Its hours on any day, or its water. */
function suppliesLess({ season, notice }: InSeason, next: Season): boolean {
  const before = minutesForbidden(season);
  return (
    minutesForbidden(next).some((minutes, index) => minutes > (before[index] as number) + ROUNDING_MINUTES) ||
    SUPPLY_KINDS.some((kind) => kind !== notice.kind && amount(next, kind) > amount(season, kind) * (1 + ROUNDING))
  );
}

function isCarried(season: Season, seasonWith: Season): boolean {
  return canCarry(
    season,
    seasonWith,
    seasonWith.zones.map(({ zone }) => zone.id),
  );
}

/** How much of a kind there is in a season; what the mains make up for is none. */
function amount(season: Season, kind: (typeof SUPPLY_KINDS)[number]): number {
  return foundLike(kind, season)
    .filter((found): found is FoundNotice<typeof kind> => found.kind === kind && found.severity !== 'note')
    .reduce((sum, found) => sum + problemOf(found), 0);
}

/**
 * None where what plantings lose is little beside what is saved. They lose where they lack more and use less, both: one that was filled to the
 * brim by chance may come to its goal later; and not what is less than a step of the timer.
 */
function costOfSaving({ season, notice }: InSeason, remedy: Remedy): 'none' | 'too-much' | Trade {
  const { remaining, seasonWith } = remedy;
  const savedLitres = (1 - remaining) * problemOf(notice);
  const losses = lossesBetween(season, seasonWith);
  const beyondStep = losses.reduce((sum, { litresBeyondStep }) => sum + litresBeyondStep, 0);
  const unmet = Math.min(moreOf(unmetLitres, season, seasonWith), beyondStep);
  const lost = Math.min(moreOf(lackingLitres, season, seasonWith), unmet);
  if (lost <= MOST_OF_MENDED * savedLitres && unmet <= savedLitres) return 'none';
  const lostLitres = losses.reduce((sum, { litres }) => sum + litres, 0);
  return lostLitres > savedLitres
    ? 'too-much'
    : { savedLitres, lostLitres, plantingIds: losses.map(({ plantingId }) => plantingId) };
}

function moreOf(litresOf: LitresOf, season: Season, next: Season, but: readonly string[] = []): number {
  const litresIn = (of: Season) => sumOver(of, litresOf, (id) => !but.includes(id));
  return litresIn(next) - litresIn(season);
}

function othersLackMore({ season, notice }: InSeason, { remaining, seasonWith }: Remedy): boolean {
  const isOfPlanting = NOTICE_REMEDIES[notice.kind].ofPlanting !== undefined;
  const more = moreOf(lackingLitres, season, seasonWith, isOfPlanting ? plantingsOf(notice) : []);
  return (
    more > (isOfPlanting ? MOST_OF_MENDED * (1 - remaining) * problemOf(notice) : MOST_OF_DEMAND * demandLitres(season))
  );
}

function demandLitres({ totals }: Season): number {
  return fieldByWeek(totals.figures, SUPPLY_FIELDS.demandLitres).reduce((sum, litres) => sum + litres, 0);
}
