/**
 * The search for remedies, one candidate a step, so that a page can pause it between any two. It is at an end when the
 * generator returns; to give it up, stop asking.
 */

import { CATALOGUE } from '../../engine/line/catalogue.data.ts';
import type { Catalogue } from '../../engine/line/catalogue.ts';
import type { ZoneComparison } from '../../engine/mix/compare-zone.ts';
import { countDays } from '../../engine/season/days-mask.ts';
import type { Season } from '../../engine/season/season.ts';
import { weekMask } from '../../engine/season/week-masks.ts';
import { seasonBuffers } from '../../engine/season/zone-season.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { canCarry } from './can-carry.ts';
import { type BeforeRemedy, type Evaluated, evaluate } from './evaluate.ts';
import { cutCandidates } from './kinds/cut.ts';
import { driplineCandidates } from './kinds/dripline.ts';
import { pairsOf, sameDriplineTwice } from './kinds/pairs.ts';
import { ruleCandidates } from './kinds/rule.ts';
import { runCountCandidates } from './kinds/run-count.ts';
import { shutOffCandidates } from './kinds/shut-off.ts';
import { singleEmitterCandidates } from './kinds/single-emitters.ts';
import { mixContext } from './mix-context.ts';
import { type MixFigures, mixFigures } from './mix-figures.ts';
import { areAlike } from './own-minutes.ts';
import { isWorthwhile, leastWorth, ranked } from './rank.ts';
import type { MixCandidate, MixChange, MixRemedy } from './remedy.ts';

export interface MixSearchInput {
  readonly plan: Plan;
  /** Of that plan. */
  readonly season: Season;
  readonly zoneId: string;
  /** Left out: the kit's own. */
  readonly catalogue?: Catalogue | undefined;
  /** Of the zone as it is, where it is known already. */
  readonly comparison?: ZoneComparison | undefined;
}

export interface MixRemedies {
  /** The zone as it is: the line against which the others are measured. */
  readonly before: MixFigures;
  /** Best first; each beats leaving the zone as it is. */
  readonly remedies: readonly MixRemedy[];
  /** What each other rule would come to, worthwhile or not. */
  readonly rules: readonly MixRemedy[];
  /** Whether the plantings ask for the same, so that there is nothing to mend. */
  readonly areAlike: boolean;
  /** Candidates that were worked out. */
  readonly tried: number;
}

/** Pairs are made of so many of the best single changes, at most two of one planting. */
const BEST_SINGLES = 8;
const BEST_OF_ONE = 2;

/** More pairs than these would hide the simple changes. */
const MOST_PAIRS = 3;

/** Yields the number of candidates worked out so far. Throws a RangeError for a zone that is not in the season. */
export function* searchMixRemedies(input: MixSearchInput): Generator<number, MixRemedies> {
  const { plan, season, zoneId, catalogue = CATALOGUE } = input;
  const context = mixContext(plan, season, zoneId, catalogue, input.comparison);
  const { zone } = context.zoneSeason;
  const before: BeforeRemedy = {
    plan,
    season,
    zoneId,
    figures: mixFigures(season, [zoneId]),
    buffers: seasonBuffers(),
  };
  const nothing = { before: before.figures, remedies: [], rules: [], tried: 0 };
  // A step of the timer on each of the week's watering days.
  const stepMinutes = (week: number) => zone.timerStepMinutes * countDays(weekMask(zone, week));
  if (areAlike(context.needs, stepMinutes)) return { ...nothing, areAlike: true };

  const search: Search = { before, best: new Map(), tried: 0 };
  const rules = yield* workOut(ruleCandidates(context), search);
  const singles = [...rules];
  for (const candidatesOf of SINGLE_FAMILIES) singles.push(...(yield* workOut(candidatesOf(context), search)));
  yield* workOut([...pairsOf(bestSingles(singles)), ...sameDriplineTwice(context)], search);
  return {
    ...nothing,
    remedies: listed([...search.best.values()], before.figures),
    rules: rules.map(({ remedy }) => remedy),
    areAlike: false,
    tried: search.tried,
  };
}

const SINGLE_FAMILIES = [
  shutOffCandidates,
  cutCandidates,
  runCountCandidates,
  singleEmitterCandidates,
  driplineCandidates,
] as const;

interface Search {
  readonly before: BeforeRemedy;
  /** The best of each group; see `groupOf`. */
  readonly best: Map<string, MixRemedy>;
  tried: number;
}

interface Single {
  readonly candidate: MixCandidate;
  readonly remedy: MixRemedy;
}

/** Works out candidates one by one and keeps the best of each group; returns all that the plan would take. */
function* workOut(candidates: readonly MixCandidate[], search: Search): Generator<number, readonly Single[]> {
  const singles: Single[] = [];
  for (const candidate of candidates) {
    const evaluated = evaluate(candidate, search.before);
    if (evaluated !== undefined) {
      singles.push({ candidate, remedy: evaluated.remedy });
      keepIfBest(evaluated, search);
    }
    search.tried += 1;
    yield search.tried;
  }
  return singles;
}

/** Of several sizes for one planting only the best is kept: a list of all would hide the rest. */
function keepIfBest({ remedy, season }: Evaluated, { before, best }: Search): void {
  const group = remedy.changes.map(groupOf).join(' and ');
  const rival = best.get(group);
  const { figures } = before;
  if (!isWorthwhile(figures, remedy.after)) return;
  if (rival !== undefined && ranked([rival, remedy], figures)[0] === rival) return;
  if (canCarry(before.season, season, remedy.zoneIds)) best.set(group, remedy);
}

function groupOf(change: MixChange): string {
  return 'plantingId' in change ? `${change.kind} ${change.plantingId}` : change.kind;
}

function bestSingles(singles: readonly Single[]): readonly MixCandidate[] {
  const taken = new Map<string, number>();
  return singles
    .filter(({ remedy }) => remedy.worthLitres > 0)
    .toSorted((one, other) => other.remedy.worthLitres - one.remedy.worthLitres)
    .filter(({ candidate: { changes } }) => {
      const part = changes.map((change) => ('plantingId' in change ? change.plantingId : change.kind)).join();
      taken.set(part, (taken.get(part) ?? 0) + 1);
      return (taken.get(part) ?? 0) <= BEST_OF_ONE;
    })
    .slice(0, BEST_SINGLES)
    .map(({ candidate }) => candidate);
}

/** Ranked, with the few best pairs, and none that one of its halves equals. */
function listed(remedies: readonly MixRemedy[], before: MixFigures): readonly MixRemedy[] {
  const singles = new Map(
    remedies.flatMap((each) => (each.changes.length === 1 ? [[groupOf(each.changes[0] as MixChange), each]] : [])),
  );
  let pairs = 0;
  return ranked(remedies, before).filter(({ changes, worthLitres }) => {
    if (changes.length === 1) return true;
    const halves = changes.map((change) => singles.get(groupOf(change))?.worthLitres ?? 0);
    if (worthLitres - Math.max(...halves) < leastWorth(before)) return false;
    pairs += 1;
    return pairs <= MOST_PAIRS;
  });
}
